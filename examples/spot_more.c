/* Further parts of the sizing report: the work and its rivals, noise, cost. */
#include "spot_more.h"

#include <math.h>

#include "report.h"

static void print_liquid(const vtx_liquid *l, const vtx_comparison *c)
{
    if (l->film_coefficient <= 0)
        return;
    printf("  liquid instead         %.1f kg/min at %s with %.0f W/(m2 K) would take %s,\n", 60 * l->mass_flow,
           report_temperature(l->temperature), l->film_coefficient, report_power(c->liquid_heat));
    printf("                         %.1f times the jet's, and warm by %s\n", c->liquid_heat / c->cooler_heat,
           report_difference(c->liquid_temperature_rise));
    if (c->liquid_heat > c->cooler_heat)
        printf("                         dry air is then for work that must stay dry or clean, or clouds or crazes in a liquid\n");
}

static void print_plain_air(const struct spot_job *s, const vtx_job *job)
{
    vtx_comparison c;
    if (vtx_compare_plain_air(job, &s->liquid, &c) != VTX_OK)
        return;
    printf("  plain air instead      the same air blown plainly at %s would take %s from the face\n", report_temperature(c.plain_temperature),
           report_power(c.plain_heat));
    if (c.plain_air_better)
        printf("  verdict                plain air wins at this face temperature: a vortex tube is the worse buy here\n");
    else
        printf("  verdict                the vortex tube wins at this face temperature\n");
    if (isfinite(c.plain_share_for_equal))
        printf("                         plain air takes the same heat with %.1f times the air\n", c.plain_share_for_equal);
    if (isfinite(c.crossover_temperature))
        printf("                         on faces above %s plain air takes more heat\n", report_temperature(c.crossover_temperature));
    print_liquid(&s->liquid, &c);
}

void spot_print_work(const struct spot_job *s, const vtx_job *job)
{
    vtx_operating_point p;
    vtx_work w;
    if (job->duty.face_area <= 0 || job->duty.standoff <= 0 || vtx_job_evaluate(job, &p, &w) != VTX_OK)
        return;
    printf("\nAT THE WORK (%.0f cm2 of face, %s from the nozzle)\n", 1e4 * job->duty.face_area, report_length(job->duty.standoff));
    printf("  jet                    %.0f m/s at the nozzle, %s on its axis at the work, mixed with room air\n", w.jet_velocity,
           report_temperature(w.jet_temperature));
    printf("  heat taken             %s typical (%.0f to %.0f W) from the face at %s; film coefficient %.0f W/(m2 K)\n",
           report_power(w.heat_removed), w.heat_removed_low, w.heat_removed_high, report_temperature(job->duty.target_temperature),
           w.film_coefficient);
    printf("  face under the heat    settles at %s typical, if all %.0f W enter through it\n", report_temperature(w.face_temperature),
           job->duty.heat_load);
    if (w.heat_removed < s->requirements.capacity)
        printf("  beware                 the air could carry the heat away, but this jet on this face takes only part of it:\n"
               "                         a larger face, a second outlet or a closer nozzle help; a larger cooler does little\n");
    else if (w.heat_removed_low < s->requirements.capacity)
        printf("  beware                 with a tube at the low end of the band the face gives %s too little: measure one point of your own tube\n",
               report_power(s->requirements.capacity - w.heat_removed_low));
    if (isfinite(w.exposure_time))
        printf("  the part               is down to the target after %.0f s (%.0f to %.0f s)\n", w.exposure_time, w.exposure_time_low,
               w.exposure_time_high);
    if (w.advisories & VTX_ADVISORY_NOT_LUMPED)
        printf("                         its inside lags behind its surface\n");
    printf("  chip clearing          %.1f kPa on the axis at the work\n", 1e-3 * w.impact_pressure);
    print_plain_air(s, job);
    if (w.advisories & VTX_ADVISORY_OUTSIDE_CORRELATION)
        printf("  note                   beyond the data of the jet correlations: take these figures as +-30 %%\n");
}

/* By the rule of the job file, or NIOSH's, the strictest of the common ones but for the EU's lower action value. */
static void print_permissible_time(const struct spot_job *s, double level)
{
    const int32_t rule = s->requirements.noise_rule ? s->requirements.noise_rule : VTX_NOISE_RULE_NIOSH;
    double time, attenuation;
    if (vtx_noise_rule_time(rule, level, &time) != VTX_OK)
        return;
    printf("  by %s a day beside it may have %.1f h of it", spot_noise_rule_name(rule), time / 3600);
    if (s->requirements.noise_time > 0)
        printf(", %.1f h are wanted", s->requirements.noise_time / 3600);
    printf("%s\n", level >= VTX_EU_LOWER_ACTION_LEVEL ? "; from 80 dB(A) hearing protection must be on offer (2003/10/EC)" : "");
    if (vtx_attenuation_needed(level, 0, VTX_EU_LOWER_ACTION_LEVEL, &attenuation) == VTX_OK && attenuation > 0)
        printf("  a muffler, hood or distance worth %.0f dB brings it below 80 dB(A)\n", ceil(attenuation));
}

void spot_print_noise_and_cost(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    const vtx_cooler *c = &job->cooler;
    double level, energy, cost, carbon;
    if (c->noise_level > 0 && s->operator_distance > 0
        && vtx_level_at_distance(c->noise_level, c->noise_distance, s->operator_distance, &level) == VTX_OK) {
        level += 10 * log10(job->running);
        printf("\nNOISE\n  %.0f dB(A) at %.1f m from the stated level, free field; add 3 to 5 dB between walls\n", level, s->operator_distance);
        print_permissible_time(s, level);
    }
    if (s->specific_power > 0
        && vtx_air_use_cost(s->specific_power, p->free_air_flow * job->running, s->hours, s->price / 3.6e6, s->carbon / 3.6e6, &energy, &cost,
                            &carbon)
            == VTX_OK) {
        printf("\nWHAT THE AIR COSTS\n  %.0f kWh and %.0f a year for %.0f h at the stated price; shut off between cuts, it halves with half the time\n",
               energy / 3.6e6, cost, s->hours / 3600);
        if (s->carbon > 0)
            printf("  %.0f kg of carbon dioxide a year at the stated rate\n", carbon);
    }
}
