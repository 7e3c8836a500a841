/* Further parts of the sizing report. */
#include "spot_more.h"

#include <math.h>

#include "report.h"

static void print_plain_air(const vtx_job *job)
{
    vtx_liquid none;
    vtx_comparison c;
    vtx_liquid_init(&none);
    if (vtx_compare_plain_air(job, &none, &c) != VTX_OK)
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
    print_plain_air(job);
    if (w.advisories & VTX_ADVISORY_OUTSIDE_CORRELATION)
        printf("  note                   beyond the data of the jet correlations: take these figures as +-30 %%\n");
}

void spot_print_noise_and_cost(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    const vtx_cooler *c = &job->cooler;
    double level, time, energy, cost;
    if (c->noise_level > 0 && s->operator_distance > 0
        && vtx_level_at_distance(c->noise_level, c->noise_distance, s->operator_distance, &level) == VTX_OK) {
        level += 10 * log10(job->running);
        printf("\nNOISE\n  %.0f dB(A) at %.1f m from the stated level, free field; add 3 to 5 dB between walls\n", level, s->operator_distance);
        if (level < VTX_EU_LOWER_ACTION_LEVEL)
            printf("  below the EU's lower action level of 80 dB(A) for a whole shift\n");
        else if (vtx_niosh_permissible_time(level, &time) == VTX_OK) {
            if (time >= 8 * 3600)
                printf("  bearable for a whole shift of 8 h by NIOSH's rule");
            else
                printf("  permissible %.1f h a day by NIOSH's rule", time / 3600);
            printf("; from 80 dB(A) hearing protection must be on offer (2003/10/EC)\n");
        }
    }
    if (s->specific_power > 0
        && vtx_air_use_cost(s->specific_power, p->free_air_flow * job->running, s->hours, s->price / 3.6e6, 0, &energy, &cost, NULL) == VTX_OK)
        printf("\nWHAT THE AIR COSTS\n  %.0f kWh and %.0f a year for %.0f h at the stated price; shut off between cuts, it halves with half the time\n",
               energy / 3.6e6, cost, s->hours / 3600);
}

/* The wish that the cooler was chosen for. */
static int32_t wish_of(const struct spot_job *s) { return s->requirements.face_heat > 0 ? VTX_WISHED_HEAT_REMOVED : VTX_WISHED_CAPACITY; }

static void print_pressure(const struct spot_job *s, const vtx_job *job)
{
    vtx_request request;
    vtx_sizing z;
    if (vtx_request_init(job, VTX_SOUGHT_SUPPLY_PRESSURE, wish_of(s), s->requirements.capacity, &request) != VTX_OK)
        return;
    const vtx_status status = vtx_size(job, &request, &z);
    if (status == VTX_OK)
        printf("  supply pressure        %s would just take the heat at this setting, though less cold%s\n", report_gauge(z.value, job->site.pressure),
               z.limit == VTX_LIMIT_WISH ? "" : ", or even less");
    else if (status == VTX_NO_SOLUTION)
        printf("  supply pressure        even %s gives %s only\n", report_gauge(z.attainable_value, job->site.pressure),
               report_power(z.attainable_figure));
}

static void print_dryness(const vtx_job *job)
{
    vtx_job drier = *job;
    vtx_request request;
    vtx_sizing z;
    int32_t asked;
    drier.supply.humidity_kind = VTX_SUPPLY_FROST_POINT;
    drier.supply.humidity = 233.15;
    if (vtx_request_init(&drier, VTX_SOUGHT_HUMIDITY, VTX_WISHED_FREEZING_MARGIN, 0, &request) != VTX_OK
        || vtx_size(&drier, &request, &z) != VTX_OK)
        return;
    printf("  dryness                a pressure frost point of %s or lower keeps even the best tube free of ice", report_temperature(z.value));
    if (vtx_water_class_to_ask(z.value, &asked) == VTX_OK)
        printf(": ask for ISO 8573-1 water class %d", (int)asked);
    printf("\n");
}

static void print_hose(const struct spot_job *s, const vtx_job *job)
{
    vtx_request request;
    vtx_sizing z;
    if (vtx_request_init(job, VTX_SOUGHT_LENGTH, wish_of(s), s->requirements.capacity, &request) != VTX_OK
        || vtx_size(job, &request, &z) != VTX_OK)
        return;
    printf("  hose                   could be %s%.0f m long before the heat is no longer met, though less cold\n",
           z.limit == VTX_LIMIT_WISH ? "" : "over ", z.value);
}

void spot_print_ways(const struct spot_job *s, const vtx_job *job)
{
    printf("\nHOW FAR IT COULD GO\n");
    print_pressure(s, job);
    print_hose(s, job);
    print_dryness(job);
}

static const char *const input_texts[] = { "the supply pressure", "the supply temperature", "the supply's humidity", "the barometer",
                                           "the room's temperature", "the room's humidity", "the cooler's rated flow", "the cold fraction",
                                           "one operating point of your own tube: its efficiency", "the tube's coldest cold fraction",
                                           "the target temperature", "the losses of the line" };

void spot_print_worth(const vtx_job *job)
{
    static const struct {
        const char *name;
        int32_t figure;
    } figures[] = { { "cold outlet", VTX_WISHED_COLD_TEMPERATURE }, { "cooling at target", VTX_WISHED_CAPACITY } };
    vtx_input_uncertainty u;
    vtx_figure_uncertainty f;
    vtx_input_uncertainty_init(&u);
    printf("\nWHAT THE FIGURES ARE WORTH (95 %%, with ordinary gauges)\n");
    for (size_t i = 0; i < sizeof figures / sizeof figures[0]; i++) {
        if (vtx_job_uncertainty(job, &u, figures[i].figure, &f) != VTX_OK)
            continue;
        const double half = 1.96 * f.standard_uncertainty;
        printf("  %-18s +- %s, %.0f %% of the variance from %s\n", figures[i].name, i == 0 ? report_difference(half) : report_power(half),
               100 * f.share[f.measure_next - VTX_INPUT_SUPPLY_PRESSURE], input_texts[f.measure_next - VTX_INPUT_SUPPLY_PRESSURE]);
        if (i == 0)
            printf("  what to measure    %s\n", input_texts[f.measure_next - VTX_INPUT_SUPPLY_PRESSURE]);
    }
}
