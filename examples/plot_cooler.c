/* Writes a gnuplot script with its data: capacity and cold temperature over cold fraction with the tube's band and the chosen setting, and
 * a performance map over pressure. Piped into gnuplot it makes an SVG: plot_cooler | gnuplot > cooler.svg */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "spot_job.h"

enum { STEPS = 60 };

/* The cooler that size_spot_cooler takes, or the first of the list. */
static void choose(const struct spot_job *s, vtx_job *job, const char **name)
{
    static vtx_verdict verdicts[JOB_COOLERS_MAX];
    vtx_chosen_cooler chosen;
    size_t index = 0;
    *job = s->job;
    if (spot_choose(s, verdicts, &chosen) == VTX_OK) {
        index = (size_t)chosen.index;
        job->setting.cold_fraction = chosen.cold_fraction;
    } else {
        job->setting.cold_fraction = s->coolers[0].rated_cold_fraction;
    }
    job->cooler = s->coolers[index];
    *name = s->names[index];
}

static void print_curves(const vtx_job *chosen)
{
    vtx_job job = *chosen;
    vtx_operating_point p;
    const double low = job.cooler.cold_fraction_min, high = job.cooler.cold_fraction_max;
    printf("$curves << END\n");
    for (int i = 0; i <= STEPS; i++) {
        job.setting.cold_fraction = fmin(low + (high - low) * i / STEPS, high);
        if (vtx_job_evaluate(&job, &p, NULL) == VTX_OK)
            printf("%.4f %.3f %.3f %.3f %.2f %.2f %.2f\n", job.setting.cold_fraction, p.cold_temperature - 273.15, p.cold_temperature_low - 273.15,
                   p.cold_temperature_high - 273.15, p.target_capacity, p.target_capacity_low, p.target_capacity_high);
    }
    printf("END\n$chosen << END\n");
    if (vtx_job_evaluate(chosen, &p, NULL) == VTX_OK)
        printf("%.4f %.3f %.2f\n", p.cold_fraction, p.cold_temperature - 273.15, p.target_capacity);
    printf("END\n");
}

static void print_map(const vtx_job *chosen)
{
    vtx_job job = *chosen;
    vtx_operating_point p;
    const double low = job.cooler.cold_fraction_min, high = job.cooler.cold_fraction_max;
    printf("$map << END\n");
    for (int bar = 2; bar <= 10; bar++) {
        job.supply.pressure = job.site.pressure + 1e5 * bar;
        for (int i = 0; i <= STEPS / 2; i++) {
            job.setting.cold_fraction = fmin(low + (high - low) * 2 * i / STEPS, high);
            if (vtx_job_evaluate(&job, &p, NULL) == VTX_OK)
                printf("%d %.4f %.3f %.2f\n", bar, job.setting.cold_fraction, p.cold_temperature - 273.15, p.target_capacity);
        }
        printf("\n\n");
    }
    printf("END\n");
}

int main(int count, char **words)
{
    static struct spot_job spot;
    vtx_job job;
    const char *name;
    if (count > 2 || (count > 1 && words[1][0] == '-')) {
        printf("plot_cooler [JOB.ini] | gnuplot > cooler.svg\n\nPlots the cooler that size_spot_cooler would choose for the job. Exit codes: 0, or 2 when the\n"
               "job file is not accepted.\n");
        return count > 1 && strcmp(words[1], "--help") == 0 ? EXIT_SUCCESS : 2;
    }
    if (spot_job_read(&spot, count > 1 ? words[1] : NULL))
        return 2;
    choose(&spot, &job, &name);
    print_curves(&job);
    print_map(&job);
    printf("set terminal svg size 900,1100 background 'white'\nset multiplot layout 3,1 title 'cooler %s, band of the tube efficiency shaded'\n"
           "set grid\nset xlabel 'cold fraction'\nset key bottom right\n"
           "set ylabel 'cold outlet, degC'\n"
           "plot $curves using 1:3:4 with filledcurves fillcolor rgb '#d0d8e8' title 'band', $curves using 1:2 with lines lw 2 title 'typical', "
           "$chosen using 1:2 with points pt 7 ps 1.2 title 'chosen'\n"
           "set ylabel 'cooling at target, W'\n"
           "plot $curves using 1:6:7 with filledcurves fillcolor rgb '#d0d8e8' title 'band', $curves using 1:5 with lines lw 2 title 'typical', "
           "$chosen using 1:3 with points pt 7 ps 1.2 title 'chosen'\n"
           "set xlabel 'cold outlet, degC'\nset key outside right\n"
           "plot for [i=0:8] $map index i using 3:4 with lines title sprintf('%%d bar(g)', i + 2)\nunset multiplot\n",
           name);
    return EXIT_SUCCESS;
}
