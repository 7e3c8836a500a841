/* Other ways to meet the wish, what happens when nobody touches the valve, and what the figures are worth. */
#include <math.h>
#include <string.h>

#include "figures.h"
#include "report.h"
#include "spot_more.h"

/* The wish that the cooler was chosen for. */
static int32_t wish_of(const struct spot_job *s) { return s->requirements.face_heat > 0 ? VTX_WISHED_HEAT_REMOVED : VTX_WISHED_CAPACITY; }

static const char *quantity_text(int32_t sought, double barometer, double value)
{
    static char texts[4][40];
    static int next;
    char *text = texts[next = (next + 1) % 4];
    if (isnan(value))
        return "cannot";
    switch (sought) {
    case VTX_SOUGHT_SUPPLY_PRESSURE: return report_gauge(value, barometer);
    case VTX_SOUGHT_HUMIDITY: return report_temperature(value);
    case VTX_SOUGHT_BORE:
    case VTX_SOUGHT_STANDOFF: return report_length(value);
    case VTX_SOUGHT_LENGTH: snprintf(text, sizeof texts[0], "%.1f m", value); break;
    case VTX_SOUGHT_RUNNING: snprintf(text, sizeof texts[0], "%.1f coolers", value); break;
    case VTX_SOUGHT_INLET_AREA: snprintf(text, sizeof texts[0], "%.2f times", value); break;
    default: snprintf(text, sizeof texts[0], "%.2f", value); break;
    }
    return text;
}

static const char *limit_text(int32_t limit)
{
    switch (limit) {
    case VTX_LIMIT_WISH: return "the wish itself";
    case VTX_LIMIT_RANGE_LOW: return "the lowest value searched: even that is enough";
    case VTX_LIMIT_RANGE_HIGH: return "the highest value searched: even that is enough";
    default: return "the cooler";
    }
}

/* One row: the quantity for the careful, the typical and the best tube, and what binds; or how near it comes. */
static void print_way(const vtx_job *job, const char *name, int32_t sought, int32_t wished, double wanted, int element)
{
    const double barometer = job->site.pressure;
    vtx_request request;
    vtx_sizing z;
    if (vtx_request_init(job, sought, wished, wanted, &request) != VTX_OK)
        return;
    request.element = element;
    const vtx_status status = vtx_size(job, &request, &z);
    figures_row("ways");
    noted_text("what", name);
    noted_code("sought", sought);
    noted_code("status", status);
    if (status == VTX_OK)
        say("  %-34s %-24s %-24s %-24s %s\n", name, quantity_text(sought, barometer, noted("careful", z.value_low)),
            quantity_text(sought, barometer, noted("typical", z.value)), quantity_text(sought, barometer, noted("best", z.value_high)),
            limit_text(noted_code("limit", z.limit)));
    else if (status == VTX_NO_SOLUTION)
        say("  %-34s out of reach, best at %s; what binds: %s\n", name, quantity_text(sought, barometer, noted("attainable", z.attainable_value)),
            noted_code("attainable_limit", z.attainable_limit) == VTX_LIMIT_COOLER ? "the cooler" : "the end of the range searched");
}

static int longest_of(const vtx_job *job)
{
    int found = -1;
    for (int i = 0; i < job->elements; i++)
        if (job->line[i].kind == VTX_CHAIN_LINE && (found < 0 || job->line[i].length > job->line[found].length))
            found = i;
    return found;
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
    say("  dryness                a pressure frost point of %s or lower keeps even the best tube free of ice",
        report_temperature(noted("frost_point_to_ask", z.value)));
    if (vtx_water_class_to_ask(z.value, &asked) == VTX_OK)
        say(": ask for ISO 8573-1 water class %d", (int)noted_code("water_class", asked));
    say("\n");
}

/* Temperature and capacity at once, by pressure and cold fraction: the least that does both. */
static void print_pair(const struct spot_job *s, const vtx_job *job)
{
    vtx_request pressure, fraction;
    vtx_sizing p, f;
    if (s->requirements.cold_temperature <= 0
        || vtx_request_init(job, VTX_SOUGHT_SUPPLY_PRESSURE, wish_of(s), s->requirements.capacity, &pressure) != VTX_OK
        || vtx_request_init(job, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_COLD_TEMPERATURE, s->requirements.cold_temperature, &fraction) != VTX_OK
        || vtx_size_pair(job, &pressure, &fraction, &p, &f) != VTX_OK)
        return;
    say("  both wishes at once    just come true at %s and a cold fraction of %.2f\n",
        report_gauge(noted("supply_pressure_for_both", p.value), job->site.pressure),
        noted("cold_fraction_for_both", f.value));
}

void spot_print_ways(const struct spot_job *s, const vtx_job *job)
{
    const double heat = s->requirements.capacity;
    const int line = longest_of(job), has_face = job->duty.face_area > 0 && job->duty.standoff > 0;
    say("\nHOW FAR IT COULD GO (one thing changed, the others as above; tube at the low end of its band, typical, at the high end)\n");
    say("  what just does                     %-24s %-24s %-24s what binds\n", "careful", "typical", "best");
    if (s->requirements.cold_temperature > 0)
        print_way(job, "cold fraction for that cold outlet", VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_COLD_TEMPERATURE, s->requirements.cold_temperature, 0);
    print_way(job, "supply pressure for the heat", VTX_SOUGHT_SUPPLY_PRESSURE, wish_of(s), heat, 0);
    print_way(job, "inlet nozzle's area for it", VTX_SOUGHT_INLET_AREA, wish_of(s), heat, 0);
    if (line >= 0) {
        print_way(job, "hose or pipe bore for it", VTX_SOUGHT_BORE, wish_of(s), heat, line);
        print_way(job, "hose or pipe length for it", VTX_SOUGHT_LENGTH, wish_of(s), heat, line);
    }
    if (has_face)
        print_way(job, "distance from nozzle to work", VTX_SOUGHT_STANDOFF, VTX_WISHED_HEAT_REMOVED, heat, 0);
    print_way(job, "coolers at once, heat from each", VTX_SOUGHT_RUNNING, wish_of(s), heat, 0);
    if (s->requirements.air_flow > 0)
        print_way(job, "supply pressure within spare air", VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_AIR_FLOW, s->requirements.air_flow, 0);
    if (job->duty.mass > 0 && s->exposure > 0)
        print_way(job, "supply pressure for the cycle time", VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_EXPOSURE_TIME, s->exposure, 0);
    figures_section("what_else_it_takes");
    print_pair(s, job);
    print_dryness(job);
}

static void print_untouched(const vtx_job *job, const char *what)
{
    vtx_operating_point p;
    const vtx_status status = vtx_job_evaluate(job, &p, NULL);
    const struct report_column t = report_temperatures(), w = report_powers(), f = report_flows();
    figures_row("valve_left_alone");
    noted_code("status", status);
    if (status == VTX_OK)
        say("  %-34s %8.2f%12.1f%16.0f%14.*f%s\n", noted_text("what_changes", what), noted("cold_fraction", p.cold_fraction),
            report_cell(&t, noted("cold_temperature", p.cold_temperature)), report_cell(&w, noted("cooling_at_target", p.target_capacity)), f.digits,
            report_cell(&f, noted("free_air_flow", p.free_air_flow)),
            p.advisories & VTX_ADVISORY_EFFICIENCY_ASSUMED ? "   efficiency assumed unchanged" : "");
    else
        say("  %-34s does not work\n", noted_text("what_changes", what));
}

/* Inlet nozzle, hot valve and outlets as openings in series and parallel: pressure, flow and cold fraction follow together. */
void spot_print_valve_left_alone(const vtx_job *job, const vtx_operating_point *point)
{
    const struct report_column t = report_temperatures(), w = report_powers(), f = report_flows();
    vtx_job held = *job, other;
    char cold[24], cooling[24], drawn[24];
    if (!isfinite(point->valve_opening))
        return;
    held.setting.held = VTX_HELD_VALVE_OPENING;
    held.setting.valve_opening = point->valve_opening;
    say("\nIF NOBODY TOUCHES THE VALVE AFTERWARDS\n");
    snprintf(cold, sizeof cold, "cold, %s", t.unit);
    snprintf(cooling, sizeof cooling, "cooling, %s", w.unit);
    snprintf(drawn, sizeof drawn, "air, %s", f.unit);
    say("  %-34s %8s%12s%16s%14s\n", "what changes", "fraction", cold, cooling, drawn);
    print_untouched(&held, "nothing");
    other = held;
    other.supply.pressure -= 1e5;
    print_untouched(&other, "supply or regulator 1 bar lower");
    other = held;
    other.supply.pressure += 1e5;
    print_untouched(&other, "supply or regulator 1 bar higher");
    other = held;
    other.running += 1;
    print_untouched(&other, "one more cooler on the line");
    other = held;
    other.setting.cold_back_pressure += 2e4;
    print_untouched(&other, "0.2 bar behind the cold outlet");
    other = held;
    other.setting.hot_back_pressure += 2e4;
    print_untouched(&other, "0.2 bar behind the hot outlet");
    other = held;
    other.cooler.inlet_area_factor *= 1.25;
    print_untouched(&other, "inlet nozzle a quarter larger");
}

/* In the order of enum vtx_input. */
static const struct {
    const char *name, *text;
} inputs[] = {
    { "share_of_supply_pressure", "the supply pressure" },
    { "share_of_supply_temperature", "the supply temperature" },
    { "share_of_supply_humidity", "the supply's humidity" },
    { "share_of_site_pressure", "the barometer" },
    { "share_of_site_temperature", "the room's temperature" },
    { "share_of_site_humidity", "the room's humidity" },
    { "share_of_rated_flow", "the cooler's rated flow" },
    { "share_of_setting", "the cold fraction" },
    { "share_of_tube_efficiency", "one operating point of your own tube: its efficiency" },
    { "share_of_coldest_fraction", "the tube's coldest cold fraction" },
    { "share_of_target_temperature", "the target temperature" },
    { "share_of_line_loss", "the losses of the line" },
};
enum { INPUTS = sizeof inputs / sizeof inputs[0], SHOWN = 4 };

/* The inputs that matter most, in falling order. */
static void print_sensitivities(const vtx_figure_uncertainty *f)
{
    int shown[INPUTS] = { 0 };
    for (int k = 0; k < SHOWN; k++) {
        int largest = -1;
        for (int i = 0; i < INPUTS; i++)
            if (!shown[i] && (largest < 0 || f->share[i] > f->share[largest]))
                largest = i;
        shown[largest] = 1;
        if (f->share[largest] < 0.005)
            return;
        say("      %3.0f %% of the variance from %s\n", 100 * noted(inputs[largest].name, f->share[largest]), inputs[largest].text);
    }
}

void spot_print_worth(const vtx_job *job)
{
    static const struct {
        const char *name;
        int32_t figure;
    } figures[] = { { "cold outlet", VTX_WISHED_COLD_TEMPERATURE }, { "cooling at target", VTX_WISHED_CAPACITY } };
    vtx_input_uncertainty u;
    vtx_figure_uncertainty f;
    vtx_second_order second;
    vtx_input_uncertainty_init(&u);
    say("\nWHAT THE FIGURES ARE WORTH (95 %%, with ordinary gauges)\n");
    for (size_t i = 0; i < sizeof figures / sizeof figures[0]; i++) {
        if (vtx_job_uncertainty(job, &u, figures[i].figure, &f) != VTX_OK)
            continue;
        const double half = 1.96 * f.standard_uncertainty;
        figures_row("uncertainties");
        noted_text("figure", figures[i].name);
        noted("half_width_95", half);
        say("  %-18s +- %s\n", figures[i].name, i == 0 ? report_difference(half) : report_power(half));
        print_sensitivities(&f);
        if (f.advisories & VTX_ADVISORY_POORLY_DETERMINED && vtx_job_second_order(job, &u, figures[i].figure, &second) == VTX_OK
            && isfinite(second.standard_uncertainty))
            say("      bent over that width: with second-order terms +- %s\n",
                i == 0 ? report_difference(1.96 * second.standard_uncertainty) : report_power(1.96 * second.standard_uncertainty));
        if (i == 0)
            say("  what to measure    %s\n", inputs[noted_code("measure_next", f.measure_next) - VTX_INPUT_SUPPLY_PRESSURE].text);
    }
}
