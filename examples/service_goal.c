/* The section [goal]. */
#include "service_goal.h"

#include <math.h>
#include <string.h>

const char goal_keys[] =
    "  [goal]     optional, what the hot valve is to be set for; one of\n"
    "             cold temperature = -12 degC           at the cold outlet, at most\n"
    "             cold fraction = 0.6\n"
    "             cooling = 150 W                       at least, at the target temperature of [duty]\n"
    "             most cooling = wanted\n"
    "             valve turns from shut = 1.5           optional, how it stands now: the turn is then told in turns\n"
    "             probe time constant = 10 s, cold end mass = 150 g, cold end specific heat = 380 J/(kg K): optional, how long to wait\n";

static const struct {
    const char *key;
    int32_t goal, dimension;
} wishes[] = {
    { "cold temperature", VTX_GOAL_COLD_TEMPERATURE, VTX_DIMENSION_TEMPERATURE },
    { "cold fraction", VTX_GOAL_COLD_FRACTION, VTX_DIMENSION_NUMBER },
    { "cooling", VTX_GOAL_CAPACITY, VTX_DIMENSION_POWER },
    { "most cooling", VTX_GOAL_MOST_CAPACITY, 0 },
};

static void read_wish(struct job_file *f, size_t i, struct service_goal *g)
{
    static const char *const wanted[] = { "wanted", NULL };
    const int faults = f->faults;
    double value = 1;
    if (wishes[i].dimension)
        job_quantity(f, "goal", wishes[i].key, wishes[i].dimension, 1, &value);
    else
        job_word(f, "goal", wishes[i].key, 1, wanted);
    if (f->faults == faults && vtx_valve_goal_init(wishes[i].goal, value, &g->goal) != VTX_OK)
        job_complain(f, "goal", wishes[i].key, "is beyond what the library covers");
}

void goal_read(struct job_file *f, struct service_goal *g)
{
    const char *section;
    int given = 0;
    memset(g, 0, sizeof *g);
    g->metal_heat = 380;
    if (job_sections(f, "goal", &section, 1) == 0)
        return;
    g->is_stated = 1;
    for (size_t i = 0; i < sizeof wishes / sizeof wishes[0]; i++)
        if (job_has(f, "goal", wishes[i].key)) {
            read_wish(f, i, g);
            given++;
        }
    if (given != 1)
        job_complain(f, "goal", "cold temperature", "give one of cold temperature, cold fraction, cooling, most cooling");
    job_quantity(f, "goal", "valve turns from shut", VTX_DIMENSION_NUMBER, 0, &g->turns);
    job_quantity(f, "goal", "probe time constant", VTX_DIMENSION_TIME, 0, &g->probe_time_constant);
    job_quantity(f, "goal", "cold end mass", VTX_DIMENSION_MASS, 0, &g->metal_mass);
    job_quantity(f, "goal", "cold end specific heat", VTX_DIMENSION_HEAT_CAPACITY, 0, &g->metal_heat);
    if (g->turns < 0 || g->probe_time_constant < 0 || g->metal_mass < 0 || g->metal_heat <= 0)
        job_complain(f, "goal", "valve turns from shut", "turns, times, masses and heat capacities must be above 0");
}
