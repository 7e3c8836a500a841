/* Further parts of the sizing report: the work and its rivals, noise, cost. */
#include "spot_more.h"

#include <math.h>

#include "figures.h"
#include "report.h"

static void print_liquid(const vtx_liquid *l, const vtx_comparison *c)
{
    if (l->film_coefficient <= 0)
        return;
    say("  liquid instead         %.1f kg/min at %s with %.0f W/(m2 K) would take %s,\n", 60 * l->mass_flow,
        report_temperature(l->temperature), l->film_coefficient, report_power(noted("liquid_heat", c->liquid_heat)));
    say("                         %.1f times the jet's, and warm by %s\n", c->liquid_heat / c->cooler_heat,
        report_difference(noted("liquid_temperature_rise", c->liquid_temperature_rise)));
    if (c->liquid_heat > c->cooler_heat)
        say("                         dry air is then for work that must stay dry or clean, or clouds or crazes in a liquid\n");
}

static void print_plain_air(const struct spot_job *s, const vtx_job *job)
{
    vtx_comparison c;
    if (vtx_compare_plain_air(job, &s->liquid, &c) != VTX_OK)
        return;
    say("  plain air instead      the same air blown plainly at %s would take %s from the face\n",
        report_temperature(noted("plain_air_temperature", c.plain_temperature)),
        report_power(noted("plain_air_heat", c.plain_heat)));
    if (noted_code("plain_air_better", c.plain_air_better))
        say("  verdict                plain air wins at this face temperature: a vortex tube is the worse buy here\n");
    else
        say("  verdict                the vortex tube wins at this face temperature\n");
    if (isfinite(c.plain_share_for_equal))
        say("                         plain air takes the same heat with %.1f times the air\n",
            noted("plain_air_share_for_equal", c.plain_share_for_equal));
    if (isfinite(c.crossover_temperature))
        say("                         on faces above %s plain air takes more heat\n",
            report_temperature(noted("crossover_temperature", c.crossover_temperature)));
    print_liquid(&s->liquid, &c);
}

void spot_print_work(const struct spot_job *s, const vtx_job *job)
{
    vtx_operating_point p;
    vtx_work w;
    if (job->duty.face_area <= 0 || job->duty.standoff <= 0 || vtx_job_evaluate(job, &p, &w) != VTX_OK)
        return;
    figures_section("work");
    say("\nAT THE WORK (%.0f cm2 of face, %s from the nozzle)\n", 1e4 * noted("face_area", job->duty.face_area),
        report_length(noted("standoff", job->duty.standoff)));
    say("  jet                    %.0f m/s at the nozzle, %s on its axis at the work, mixed with room air\n", noted("jet_velocity", w.jet_velocity),
        report_temperature(noted("jet_temperature", w.jet_temperature)));
    say("  heat taken             %s typical (%.0f to %.0f W) from the face at %s; film coefficient %.0f W/(m2 K)\n",
        report_power(noted("heat_removed", w.heat_removed)), noted("heat_removed_low", w.heat_removed_low), noted("heat_removed_high", w.heat_removed_high),
        report_temperature(job->duty.target_temperature), noted("film_coefficient", w.film_coefficient));
    say("  face under the heat    settles at %s typical, if all %.0f W enter through it\n",
        report_temperature(noted("face_temperature", w.face_temperature)),
        job->duty.heat_load);
    if (w.heat_removed < s->requirements.capacity)
        say("  beware                 the air could carry the heat away, but this jet on this face takes only part of it:\n"
            "                         a larger face, a second outlet or a closer nozzle help; a larger cooler does little\n");
    else if (w.heat_removed_low < s->requirements.capacity)
        say("  beware                 with a tube at the low end of the band the face gives %s too little: measure one point of your own tube\n",
            report_power(s->requirements.capacity - w.heat_removed_low));
    if (isfinite(w.exposure_time))
        say("  the part               is down to the target after %.0f s (%.0f to %.0f s)\n", noted("exposure_time", w.exposure_time),
            noted("exposure_time_low", w.exposure_time_low), noted("exposure_time_high", w.exposure_time_high));
    if (w.advisories & VTX_ADVISORY_NOT_LUMPED)
        say("                         its inside lags behind its surface\n");
    say("  chip clearing          %.1f kPa on the axis at the work\n", 1e-3 * noted("impact_pressure", w.impact_pressure));
    print_plain_air(s, job);
    if (w.advisories & VTX_ADVISORY_OUTSIDE_CORRELATION)
        say("  note                   beyond the data of the jet correlations: take these figures as +-30 %%\n");
}

/* By the rule of the job file, or NIOSH's, the strictest of the common ones but for the EU's lower action value. */
static void print_permissible_time(const struct spot_job *s, double level)
{
    const int32_t rule = s->requirements.noise_rule ? s->requirements.noise_rule : VTX_NOISE_RULE_NIOSH;
    double time, attenuation;
    if (vtx_noise_rule_time(rule, level, &time) != VTX_OK)
        return;
    say("  by %s %.1f h a day beside it are allowed", noted_text("noise_rule", spot_noise_rule_name(rule)), noted("allowed_time", time) / 3600);
    if (s->requirements.noise_time > 0)
        say(", %.1f h are wanted", s->requirements.noise_time / 3600);
    say("%s\n", level >= VTX_EU_LOWER_ACTION_LEVEL ? "; from 80 dB(A) hearing protection must be on offer (2003/10/EC)" : "");
    if (vtx_attenuation_needed(level, 0, VTX_EU_LOWER_ACTION_LEVEL, &attenuation) == VTX_OK && attenuation > 0)
        say("  a muffler, hood or distance worth %.0f dB brings it below 80 dB(A)\n", ceil(noted("attenuation_to_80_dBA", attenuation)));
}

void spot_print_noise_and_cost(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    const vtx_cooler *c = &job->cooler;
    double level, energy, cost, carbon;
    if (c->noise_level > 0 && s->operator_distance > 0
        && vtx_level_at_distance(c->noise_level, c->noise_distance, s->operator_distance, &level) == VTX_OK) {
        level += 10 * log10(job->running);
        figures_section("noise");
        say("\nNOISE\n  %.0f dB(A) at %.1f m from the stated level, free field; add 3 to 5 dB between walls\n", noted("level_dBA", level),
            noted("operator_distance", s->operator_distance));
        print_permissible_time(s, level);
    }
    if (s->specific_power > 0
        && vtx_air_use_cost(s->specific_power, p->free_air_flow * job->running, s->hours, s->price / 3.6e6, s->carbon / 3.6e6, &energy, &cost,
                            &carbon)
            == VTX_OK) {
        figures_section("air_cost");
        say("\nWHAT THE AIR COSTS\n  %.0f kWh and %.0f of the stated price's currency a year for %.0f h; shut off between cuts, it halves with half the time\n",
            
            noted("energy_a_year", energy) / 3.6e6, noted("cost_a_year", cost), noted("running_time_a_year", s->hours) / 3600);
        if (s->carbon > 0)
            say("  %.0f kg of carbon dioxide a year at the stated rate\n", noted("carbon_dioxide_a_year", carbon));
    }
}
