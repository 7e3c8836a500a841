/* Does the line starve the coolers? Pressure at each joint for each cooler of a job file, and what costs most. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "report.h"
#include "spot_job.h"

static void print_help(void)
{
    printf("line_check [JOB.ini]\n\nLets each cooler of a job file of size_spot_cooler (or of the built-in job) draw its air through the [line] sections and\n"
           "prints what reaches it. Exit codes: 0 no cooler is starved, 1 some are (more than a tenth of the absolute pressure lost),\n"
           "2 job file not accepted or without a line, 3 the library refused.\n");
}

static void print_joints(const struct spot_job *s, const vtx_job *job, double flow)
{
    vtx_chain_state state;
    vtx_chain_joint joint[9];
    if (vtx_chain_outlet_pressure(job->line, (size_t)job->elements, flow, job->supply.pressure, job->supply.temperature, &state, joint) != VTX_OK) {
        printf("      an element is choked: no more passes whatever the cooler draws\n");
        return;
    }
    for (int i = 1; i <= job->elements; i++) {
        printf("      behind %-15s %-24s loses %6.3f bar %4.0f %%", s->element_names[i - 1],
               report_gauge(joint[i].stagnation_pressure, job->site.pressure), 1e-5 * joint[i].pressure_loss, 100 * joint[i].share);
        if (isfinite(joint[i].velocity))
            printf("   %4.0f m/s", joint[i].velocity);
        printf("%s\n", i - 1 == state.costliest_element ? "   <- costs most" : "");
    }
}

static int check(const struct spot_job *s)
{
    vtx_job job = s->job;
    int starved = 0;
    printf("LINE from %s, %s\n", report_gauge(job.supply.pressure, job.site.pressure), report_temperature(job.supply.temperature));
    for (size_t i = 0; i < s->cooler_count; i++) {
        vtx_operating_point p, free_line;
        vtx_work w;
        vtx_job alone;
        job.cooler = s->coolers[i];
        job.setting.cold_fraction = job.cooler.rated_cold_fraction;
        alone = job;
        alone.elements = 0;
        if (vtx_job_evaluate(&job, &p, &w) != VTX_OK || vtx_job_evaluate(&alone, &free_line, NULL) != VTX_OK) {
            printf("\n  %s: next to nothing reaches it\n", s->names[i]);
            starved++;
            continue;
        }
        printf("\n  %s: draws %s, gets %s%s\n", s->names[i], report_flow(p.free_air_flow), report_gauge(p.inlet_pressure, job.site.pressure),
               p.advisories & VTX_ADVISORY_STARVED ? ": starved" : "");
        print_joints(s, &job, w.supply_flow);
        printf("      cold outlet %s instead of %s, cooling %s instead of %s without the line\n", report_temperature(p.cold_temperature),
               report_temperature(free_line.cold_temperature), report_power(p.target_capacity), report_power(free_line.target_capacity));
        starved += (p.advisories & VTX_ADVISORY_STARVED) != 0;
    }
    printf("\nVERDICT: %d of %d coolers are starved.\n", starved, (int)s->cooler_count);
    printf("\nCAUTIONS\n  A hose that comes loose under pressure whips: restrain it, and vent before uncoupling. Use hose and fittings rated above the\n"
           "  highest pressure the compressor can reach. Local codes and licensed practice come first.\n");
    return starved > 0;
}

int main(int count, char **words)
{
    static struct spot_job spot;
    if (count > 1 && (strcmp(words[1], "--help") == 0 || strcmp(words[1], "-h") == 0)) {
        print_help();
        return EXIT_SUCCESS;
    }
    if (count > 2 || (count > 1 && words[1][0] == '-')) {
        fprintf(stderr, "line_check: not understood; see --help\n");
        return 2;
    }
    if (spot_job_read(&spot, count > 1 ? words[1] : NULL))
        return 2;
    if (spot.job.elements == 0) {
        fprintf(stderr, "%s: [line 1] kind: missing; this program needs a line\n", count > 1 ? words[1] : "(built-in job)");
        return 2;
    }
    return check(&spot);
}
