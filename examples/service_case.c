/* From a job file with readings to records of the library. */
#include "service_case.h"

#include <math.h>
#include <string.h>

const char service_case_keys[] =
    "  [service]  cooler = 600                          which [cooler NAME] it is; may be left out when there is only one\n"
    "             cold fraction = 0.6                   as it was set when all was well, or valve opening = 1 (1: as rated)\n"
    "             complaint = text                      optional\n"
    "             date = 2026-11-03                     of the readings; needed with [visit N]\n"
    "             [supply] and [site] tell what was usual when all was well. Up to 3 K warmer or 0.2 bar less, or colder air or more pressure,\n"
    "             count as the air of the day and not as a fault.\n";

static void choose_cooler(struct job_file *f, struct service_case *c)
{
    const char *name = job_text(f, "service", "cooler");
    const struct spot_job *s = &c->spot;
    if (!name && s->cooler_count == 1)
        return;
    for (size_t i = 0; name && i < s->cooler_count; i++)
        if (strcmp(name, s->names[i]) == 0) {
            c->chosen = i;
            return;
        }
    job_complain(f, "service", "cooler", name ? "no section [cooler NAME] describes it" : "missing: several coolers are described");
}

static void read_setting(struct job_file *f, struct service_case *c)
{
    vtx_cooler_setting *setting = &c->job.setting;
    const int by_opening = job_has(f, "service", "valve opening");
    if (by_opening == job_has(f, "service", "cold fraction"))
        job_complain(f, "service", "cold fraction", "give one of cold fraction, valve opening: as it was set when all was well");
    setting->held = by_opening ? VTX_HELD_VALVE_OPENING : VTX_HELD_COLD_FRACTION;
    job_quantity(f, "service", "cold fraction", VTX_DIMENSION_NUMBER, 0, &setting->cold_fraction);
    job_quantity(f, "service", "valve opening", VTX_DIMENSION_NUMBER, 0, &setting->valve_opening);
}

static void read_service(struct job_file *f, struct service_case *c)
{
    const char *complaint = job_text(f, "service", "complaint");
    snprintf(c->complaint, sizeof c->complaint, "%s", complaint ? complaint : "not stated");
    choose_cooler(f, c);
    c->job = c->spot.job;
    c->job.cooler = c->spot.coolers[c->chosen];
    read_setting(f, c);
    c->stated = c->job;
}

/* What stays when something fails is the valve, not the cold fraction. Says so where the file can still be named. */
static void hold_valve(struct job_file *f, struct service_case *c)
{
    vtx_operating_point p;
    char text[JOB_TEXT_MAX];
    const vtx_status status = vtx_job_evaluate(&c->job, &p, NULL);
    if (status == VTX_OK && isfinite(p.valve_opening)) {
        c->job.setting.valve_opening = p.valve_opening;
        c->job.setting.held = VTX_HELD_VALVE_OPENING;
        return;
    }
    snprintf(text, sizeof text, "the cooler described here cannot run healthily: %s",
             status == VTX_OK ? "no opening of the valve gives this cold fraction" : vtx_status_text(status));
    job_complain(f, "service", "cold fraction", text);
}

/* Weather and the switching of compressors: common practice, no source. Beyond is a fault, or a wrong reading. */
static const double coldest = -25, warmest = 3;         /* K against the description */
static const double lowest = -0.2e5, highest = 1.5e5; /* Pa */

/* Better air than described is no fault, nor is a little worse: the healthy cooler is then reckoned with what there is. */
static void take_air_of_the_day(struct service_case *c)
{
    const int t = VTX_READ_INLET_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE, p = 0;
    vtx_supply *supply = &c->job.supply;
    const double warmer = c->readings.value[t] - supply->temperature, higher = c->readings.value[p] - supply->pressure;
    c->described = c->job;
    if (fabs(warmer) > 2 * c->readings.uncertainty[t] && warmer > coldest && warmer < warmest) {
        c->warmer_supply = warmer;
        supply->temperature += warmer;
    }
    if (fabs(higher) > 2 * c->readings.uncertainty[p] && higher > lowest && higher < highest) {
        c->higher_supply = higher;
        if (supply->humidity_pressure <= 0)
            supply->humidity_pressure = supply->pressure; /* the dew point was read there */
        supply->pressure += higher;
    }
}

int service_case_read(struct service_case *c, const char *name)
{
    static struct job_file file;
    memset(c, 0, sizeof *c);
    c->file = name ? name : "built-in case";
    if (job_open(&file, name ? name : "(built-in case)", name ? NULL : service_case_default) != 0)
        return file.faults;
    spot_job_take(&c->spot, &file);
    read_service(&file, c);
    instruments_read(&file, &c->instruments);
    thermometers_read(&file, c->job.site.temperature, &c->thermometers);
    if (file.faults == 0)
        hold_valve(&file, c);
    if (file.faults == 0)
        baseline_read(&file, &c->instruments, &c->thermometers, &c->job, &c->baseline);
    if (readings_read(&file, "readings", &c->job.cooler, &c->instruments, &c->as_read) < 2)
        job_complain(&file, "readings", "cold temperature", "two or more readings are needed; see --help for their keys");
    c->readings = c->as_read;
    readings_correct(&file, "readings", &c->thermometers, &c->readings);
    visits_read(&file, &c->spot, &c->job.cooler, &c->instruments, &c->thermometers, &c->readings, &c->history);
    take_air_of_the_day(c);
    c->stated.cooler = c->job.cooler;
    goal_read(&file, &c->goal);
    quotation_read(&file, &c->job, &c->quotation);
    return job_close(&file);
}
