/* Is the air dry enough for the job? Water from the compressor to the cold outlet, and what dryness to ask for. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "report.h"
#include "spot_job.h"

static void print_help(void)
{
    printf("dry_air_check [JOB.ini]\n\nFollows the water from the compressor's intake to the cold outlet, for the site, supply and coldest wanted outlet\n"
           "([duty] cold outlet at most; without it the coldest outlet of a typical tube) of a job file of size_spot_cooler,\n"
           "or of the built-in job. Exit codes: 0 dry enough, 1 not dry enough, 2 job file not accepted, 3 the library refused.\n");
}

static int print_treatment(const struct spot_job *s)
{
    const vtx_job *j = &s->job;
    vtx_air_treatment t;
    vtx_treated_air air;
    vtx_air_treatment_init(&t);
    t.free_air = s->requirements.air_flow > 0 ? s->requirements.air_flow : 0.01;
    t.intake_pressure = j->site.pressure;
    t.intake_temperature = j->site.temperature;
    t.intake_relative_humidity = j->site.relative_humidity;
    t.aftercooler_pressure = t.dryer_pressure = j->supply.pressure;
    t.aftercooler_temperature = j->site.temperature + 12;
    t.receiver_temperature = j->site.temperature + 5;
    t.dryer_point = j->supply.humidity_kind == VTX_SUPPLY_HUMIDITY_RATIO ? 276.15 : j->supply.humidity;
    if (t.dryer_point < 273.16)
        t.dryer = VTX_DRYER_DESICCANT;
    if (vtx_treat_air(&t, &air) != VTX_OK)
        return 0;
    printf("FROM THE COMPRESSOR (room air; aftercooler 12 K and receiver 5 K above the room: common practice, no source)\n");
    printf("  arrives with the intake air   %.2f kg of water in 8 h, for %s of free air\n", 28800 * air.intake_water, report_flow(t.free_air));
    printf("  drained at the aftercooler    %.2f kg, at the receiver %.2f kg, at the dryer %.2f kg\n", 28800 * air.aftercooler_condensate,
           28800 * air.receiver_condensate, 28800 * air.dryer_water);
    printf("  goes on to the coolers        %.2f kg in 8 h\n\n", 28800 * air.delivered_water);
    return 1;
}

/* The outlet that must not freeze: the wanted one, or the coldest of the first cooler that works here. */
static vtx_status coldest_wanted(const struct spot_job *s, double *temperature, double *cold_flow)
{
    vtx_job job = s->job;
    vtx_operating_point p;
    vtx_status status = VTX_OUT_OF_RANGE;
    for (size_t i = 0; i < s->cooler_count && status != VTX_OK; i++) {
        job.cooler = s->coolers[i];
        job.setting.cold_fraction = fmax(0.3, job.cooler.cold_fraction_min);
        status = vtx_job_evaluate(&job, &p, NULL);
    }
    if (status == VTX_OK) {
        *cold_flow = p.cold_mass_flow;
        *temperature = s->requirements.cold_temperature > 0 ? s->requirements.cold_temperature : p.cold_temperature;
    }
    return status;
}

/* What dryness for the outlet alone leaves out. */
static void print_pipe_and_best_tube(const struct spot_job *s, double outlet_point)
{
    const double supply = s->job.supply.pressure;
    double needed;
    printf("  in a pipe colder than that    water condenses on the way");
    if (s->coldest_pipe > 0 && vtx_pressure_dew_point_needed(VTX_AIR_REAL, supply, supply, s->coldest_pipe, 10, &needed) == VTX_OK
        && needed < outlet_point)
        printf(": the coldest one, %s, asks for %s (10 K of margin)", report_temperature(s->coldest_pipe), report_temperature(needed));
    printf("\n  a better tube                 of the same kind gets colder: \"dryness\" in size_spot_cooler's report keeps even that free of ice\n");
}

static int check(const struct spot_job *s)
{
    const vtx_job *j = &s->job;
    double humidity_ratio, cold, flow, content;
    vtx_feed_water w;
    vtx_status status = vtx_supply_humidity_ratio(&j->supply, VTX_AIR_REAL, &humidity_ratio);
    if (status == VTX_OK)
        status = coldest_wanted(s, &cold, &flow);
    if (status == VTX_OK)
        status = vtx_feed_freezing(VTX_AIR_REAL, j->supply.pressure, j->supply.temperature, VTX_HUMIDITY_RATIO, humidity_ratio, j->site.pressure,
                                   cold, flow, 3, &w);
    if (status != VTX_OK) {
        fprintf(stderr, "the library refuses this job: %s\n", vtx_status_text(status));
        return 3;
    }
    print_treatment(s);
    printf("IN THE SUPPLY\n  water %.3f g/kg of dry air; condenses or freezes in the line below %s\n", 1000 * humidity_ratio,
           report_temperature(w.feed_point));
    if (vtx_water_content(VTX_AIR_REAL, j->supply.pressure, w.feed_point, 1e5, 293.15, &content) == VTX_OK)
        printf("  %.3f g/m3 at 20 degC, 1 bar, the reference state of ISO 8573-1\n", 1000 * content);
    printf("\nAT THE COLD OUTLET\n  wanted                        %s\n", report_temperature(cold));
    printf("  the feed's water comes out below %s: margin %s\n", report_temperature(w.coldest_temperature), report_difference(w.margin));
    if (w.ice_rate > 0)
        printf("  ice                           %.1f g/h in a cold stream of %.2f g/s\n", 3.6e6 * w.ice_rate, 1000 * flow);
    printf("  with a margin of 3 K ask for a pressure %s of %s", w.required_point < 273.16 ? "frost point" : "dew point",
           report_temperature(w.required_point));
    printf(", ISO 8573-1 water class %d%s\n", (int)w.required_class, w.required_class == 0 ? " (by agreement)" : "");
    print_pipe_and_best_tube(s, w.required_point);
    printf("  to keep the inlet nozzle's throat free too: %s\n", report_temperature(w.throat_required_point));
    printf("\nVERDICT: %s\n", w.margin >= 3 ? "dry enough for this outlet."
           : w.margin >= 0 ? "just dry enough, without the usual margin of 3 K." : "not dry enough: ice will build up and block the outlet.");
    printf("\nCAUTIONS\n  A blocked outlet sends all air to the hot end. Shut off, vent and lock out before clearing ice or opening a dryer or filter.\n"
           "  Condensate from compressors carries oil: local rules say where it may go. Local codes and licensed practice come first.\n");
    return w.margin >= 0 ? 0 : 1;
}

int main(int count, char **words)
{
    static struct spot_job spot;
    if (count > 1 && (strcmp(words[1], "--help") == 0 || strcmp(words[1], "-h") == 0)) {
        print_help();
        return EXIT_SUCCESS;
    }
    if (count > 2 || (count > 1 && words[1][0] == '-')) {
        fprintf(stderr, "dry_air_check: not understood; see --help\n");
        return 2;
    }
    return spot_job_read(&spot, count > 1 ? words[1] : NULL) ? 2 : check(&spot);
}
