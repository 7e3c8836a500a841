/* The section [quoted point]. */
#include "service_quotation.h"

#include <math.h>
#include <string.h>

static const char section[] = "quoted point";

const char quotation_keys[] =
    "  [quoted point]  optional, what was promised of this cooler; one of\n"
    "             cold temperature = -20 degC           at most\n"
    "             temperature drop = 38 K               at least, from the inlet to the cold outlet\n"
    "             capacity = 180 W                      at least, against the inlet temperature\n"
    "             cooling at target = 260 W             at least, against the target temperature\n"
    "             air consumption = 400 l/min           at most, free air at the coolers' reference state\n"
    "             tolerance = 1 K                       optional, what the contract allows beyond it\n"
    "             risk = 5 %                            optional, of a wrong verdict at the limit\n"
    "             and the state it was promised for: inlet pressure = 7 bar(g), inlet temperature = 20 degC, cold fraction = 0.6,\n"
    "             one of pressure dew point, pressure frost point, humidity ratio\n"
    "             barometer = 101.325 kPa(a), target temperature = 40 degC: optional\n";

static const struct {
    const char *key;
    int32_t quantity, side, dimension, difference;
} promises[] = {
    { "cold temperature", VTX_QUOTED_COLD_TEMPERATURE, VTX_TOLERANCE_UPPER, VTX_DIMENSION_TEMPERATURE, VTX_DIMENSION_TEMPERATURE_DIFFERENCE },
    { "temperature drop", VTX_QUOTED_TEMPERATURE_DROP, VTX_TOLERANCE_LOWER, VTX_DIMENSION_TEMPERATURE_DIFFERENCE,
      VTX_DIMENSION_TEMPERATURE_DIFFERENCE },
    { "capacity", VTX_QUOTED_CAPACITY, VTX_TOLERANCE_LOWER, VTX_DIMENSION_POWER, VTX_DIMENSION_POWER },
    { "cooling at target", VTX_QUOTED_TARGET_CAPACITY, VTX_TOLERANCE_LOWER, VTX_DIMENSION_POWER, VTX_DIMENSION_POWER },
    { "air consumption", VTX_QUOTED_AIR_CONSUMPTION, VTX_TOLERANCE_UPPER, VTX_DIMENSION_VOLUME_FLOW, VTX_DIMENSION_VOLUME_FLOW },
};

static void read_promise(struct job_file *f, size_t i, vtx_quotation *q)
{
    double value = (double)NAN;
    job_quantity(f, section, promises[i].key, promises[i].dimension, 1, &value);
    if (isnan(value))
        return;
    if (vtx_quotation_init(promises[i].quantity, promises[i].side, value, q) != VTX_OK) {
        job_complain(f, section, promises[i].key, "is beyond what the library covers");
        return;
    }
    job_quantity(f, section, "tolerance", promises[i].difference, 0, &q->tolerance);
    job_quantity(f, section, "risk", VTX_DIMENSION_NUMBER, 0, &q->consumer_risk);
    if (q->tolerance < 0)
        job_complain(f, section, "tolerance", "must not be below 0");
    if (!(q->consumer_risk > 0 && q->consumer_risk < 0.5))
        job_complain(f, section, "risk", "must be above 0 and below 50 %");
}

static void read_humidity(struct job_file *f, vtx_supply *supply)
{
    static const struct {
        const char *key;
        int32_t kind, dimension;
    } kinds[] = {
        { "pressure dew point", VTX_SUPPLY_DEW_POINT, VTX_DIMENSION_TEMPERATURE },
        { "pressure frost point", VTX_SUPPLY_FROST_POINT, VTX_DIMENSION_TEMPERATURE },
        { "humidity ratio", VTX_SUPPLY_HUMIDITY_RATIO, VTX_DIMENSION_MASS_RATIO },
    };
    int given = 0;
    for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
        if (job_has(f, section, kinds[i].key)) {
            job_quantity(f, section, kinds[i].key, kinds[i].dimension, 1, &supply->humidity);
            supply->humidity_kind = kinds[i].kind;
            given++;
        }
    if (given != 1)
        job_complain(f, section, "pressure dew point", "give one of pressure dew point, pressure frost point, humidity ratio");
}

static void read_state(struct job_file *f, vtx_job *job)
{
    const double barometer = f->barometer;
    vtx_supply_init(&job->supply);
    vtx_site_init(&job->site);
    vtx_cooler_setting_init(&job->setting);
    job->elements = 0;
    job->running = 1;
    job_pressure(f, section, "barometer", 0, &job->site.pressure);
    f->barometer = job->site.pressure;
    job_pressure(f, section, "inlet pressure", 1, &job->supply.pressure);
    f->barometer = barometer;
    job_quantity(f, section, "inlet temperature", VTX_DIMENSION_TEMPERATURE, 1, &job->supply.temperature);
    job_quantity(f, section, "cold fraction", VTX_DIMENSION_NUMBER, 1, &job->setting.cold_fraction);
    job_quantity(f, section, "target temperature", VTX_DIMENSION_TEMPERATURE, 0, &job->duty.target_temperature);
    read_humidity(f, &job->supply);
}

void quotation_read(struct job_file *f, const vtx_job *tested, struct service_quotation *q)
{
    const char *name;
    vtx_operating_point p;
    const int faults = f->faults;
    int given = 0;
    memset(q, 0, sizeof *q);
    if (job_sections(f, section, &name, 1) == 0)
        return;
    q->is_stated = 1;
    q->job = *tested;
    read_state(f, &q->job);
    for (size_t i = 0; i < sizeof promises / sizeof promises[0]; i++)
        if (job_has(f, section, promises[i].key)) {
            read_promise(f, i, &q->quotation);
            given++;
        }
    if (given != 1)
        job_complain(f, section, "cold temperature",
                     "give one of cold temperature, temperature drop, capacity, cooling at target, air consumption");
    if (f->faults == faults && vtx_job_evaluate(&q->job, &p, NULL) != VTX_OK)
        job_complain(f, section, "cold fraction", "the cooler cannot be reckoned at this state: beyond what the library covers");
}
