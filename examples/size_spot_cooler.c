/* Sizes a spot cooler for a job: which one, how to set it, what air it takes, what freezes, what to beware of. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "figures.h"
#include "report.h"
#include "spot_job.h"
#include "spot_more.h"

enum { EXIT_MET = 0, EXIT_NOT_MET = 1, EXIT_INPUT = 2, EXIT_LIBRARY = 3 };

static void print_help(void)
{
    printf("size_spot_cooler [--json] [--units both|si|us] [JOB.ini]\n\n"
           "Sizes a vortex-tube spot cooler for the job in the file, or for a built-in job when no file is given.\n"
           "--json writes the figures of the report for programs, in SI units (K, Pa absolute, W, kg/s, m3/s, s, m), by the library's codes.\n"
           "--show-job prints the built-in job as a file to start from; --version the version.\n\n"
           "Keys of a job file, each value with its unit:\n%s%s\n"
           "Exit codes: %d a cooler of the list meets the wish, %d none does, %d the call or the job file is not accepted\n"
           "(each complaint says file, line, section, key and what was expected), %d the library refused what it was asked.\n",
           spot_job_keys, spot_section_keys, EXIT_MET, EXIT_NOT_MET, EXIT_INPUT, EXIT_LIBRARY);
}

static const char *humidity_kind_text(int32_t kind)
{
    return kind == VTX_SUPPLY_DEW_POINT ? "pressure dew point" : kind == VTX_SUPPLY_FROST_POINT ? "pressure frost point" : "humidity ratio";
}

static void print_job(const struct spot_job *s)
{
    const vtx_job *j = &s->job;
    double humidity_ratio = 0;
    vtx_supply_humidity_ratio(&j->supply, j->setting.model, &humidity_ratio);
    figures_section("job");
    say("THE JOB AS UNDERSTOOD\n");
    say("  work              %s\n", noted_text("work", s->work));
    say("  site              ");
    if (isfinite(s->altitude))
        say("%.0f m above sea level, ", noted("altitude", s->altitude));
    say("barometer %s, room %s, %.0f %% relative humidity\n", report_absolute(noted("barometer", j->site.pressure)),
        report_temperature(noted("room_temperature", j->site.temperature)), 100 * noted("room_relative_humidity", j->site.relative_humidity));
    say("  supply            %s, that is %s, at %s\n", report_gauge(j->supply.pressure, j->site.pressure),
        report_absolute(noted("supply_pressure", j->supply.pressure)), report_temperature(noted("supply_temperature", j->supply.temperature)));
    say("  water in it       %.3f g/kg of dry air, from its %s",
        1000 * noted("humidity_ratio", humidity_ratio), noted_text("humidity_given_as", humidity_kind_text(j->supply.humidity_kind)));
    if (j->supply.humidity_kind != VTX_SUPPLY_HUMIDITY_RATIO)
        say(" of %s", report_temperature(noted("supply_humidity", j->supply.humidity)));
    say("\n  wish              take %s from work that may have %s", report_power(noted("heat", s->requirements.capacity)),
        report_temperature(noted("target_temperature", j->duty.target_temperature)));
    if (s->requirements.cold_temperature > 0)
        say(", cold outlet at %s or colder", report_temperature(noted("cold_outlet_at_most", s->requirements.cold_temperature)));
    say("\n");
    if (s->requirements.air_flow > 0)
        say("  compressor spares %s of free air\n", report_flow(noted("spare_air_flow", s->requirements.air_flow)));
    say("  free air means    %s: %s, %s, %.0f %% relative humidity\n",
        noted_text("reference_state", s->reference), report_absolute(s->coolers[0].reference_pressure),
        report_temperature(s->coolers[0].reference_temperature), 100 * s->coolers[0].reference_humidity);
    say("  judged by         the %s of the tube's efficiency band\n",
        s->requirements.question == VTX_QUESTION_SIZING ? "careful (low) side" : "typical value");
}

static void print_verdict(const struct spot_job *s, size_t i, const vtx_verdict *v)
{
    const char *starved = v->advisories & VTX_ADVISORY_STARVED ? ": the line starves it" : "";
    const struct report_column flow = report_flows();
    figures_row("coolers");
    say("  %-10s %5.*f %-7s", noted_text("name", s->names[i]), flow.digits,
        report_cell(&flow, noted("rated_free_air_flow", s->coolers[i].rated_free_air_flow)), flow.unit);
    noted_code("failed", v->failed);
    if (v->failed == VTX_FAILED_OPERATION) {
        say("does not work on this supply\n");
        return;
    }
    say("%8.2f  %20s  %18s   ", noted("cold_fraction", v->cold_fraction), report_temperature(noted("cold_temperature", v->cold_temperature)),
        report_power(noted("cooling_at_target", v->capacity)));
    noted("short_by", v->short_by);
    switch (v->failed) {
    case VTX_FAILED_NONE:
        say("meets the wish, number %d %s\n", (int)noted_code("rank", v->rank), s->costs[i] >= 0 ? "by cost" : "by air drawn");
        break;
    case VTX_FAILED_COLD_TEMPERATURE: say("not cold enough, %s too warm at best%s\n", report_difference(v->short_by), starved); break;
    case VTX_FAILED_CAPACITY: say("too little cooling, %s short%s\n", report_power(v->short_by), starved); break;
    case VTX_FAILED_FACE_HEAT: say("its jet takes %s too little out of the face\n", report_power(v->short_by)); break;
    case VTX_FAILED_AIR_FLOW: say("draws %s more than the compressor spares\n", report_flow(v->short_by)); break;
    case VTX_FAILED_NOISE: say("%.0f dB too loud\n", v->short_by); break;
    case VTX_FAILED_NOISE_TIME:
        say("too loud for the hours beside it, %.1f h short by %s\n", v->short_by / 3600, spot_noise_rule_name(s->requirements.noise_rule));
        break;
    default: say("may freeze its own feed, %s short\n", report_difference(v->short_by)); break;
    }
}

static void print_table(const struct spot_job *s, const vtx_cooler *cooler, double chosen)
{
    vtx_job job = s->job;
    vtx_operating_point p;
    job.cooler = *cooler;
    job.setting.held = VTX_HELD_COLD_FRACTION;
    const struct report_column t = report_temperatures(), w = report_powers(), m = report_mass_flows();
    say("\nWHAT THE VALVE DOES (tube at low, typical and high efficiency; * the setting above)\n");
    say("   cold                cold outlet, %s              hot outlet   cold air %24s, %s\n", t.unit, "cooling at target", w.unit);
    say("  fraction        low  typical     high                  %s %8s      low  typical     high\n", t.unit, m.unit);
    for (int i = 0; i <= 8; i++) {
        double mu = 0.1 * (i + 1);
        const int is_chosen = i == 8;
        if (is_chosen)
            mu = chosen;
        if (mu < cooler->cold_fraction_min - 1e-9 || mu > cooler->cold_fraction_max + 1e-9)
            continue;
        job.setting.cold_fraction = fmin(fmax(mu, cooler->cold_fraction_min), cooler->cold_fraction_max);
        if (vtx_job_evaluate(&job, &p, NULL) != VTX_OK)
            continue;
        figures_row("settings");
        say("  %c %5.2f   %9.1f%9.1f%9.1f   %18.1f%9.2f%9.0f%9.0f%9.0f\n", is_chosen ? '*' : ' ', noted("cold_fraction", mu),
            report_cell(&t, noted("cold_temperature_high", p.cold_temperature_high)), report_cell(&t, noted("cold_temperature", p.cold_temperature)),
            report_cell(&t, noted("cold_temperature_low", p.cold_temperature_low)), report_cell(&t, noted("hot_temperature", p.hot_temperature)),
            report_cell(&m, noted("cold_mass_flow", p.cold_mass_flow)), report_cell(&w, noted("cooling_at_target_low", p.target_capacity_low)),
            report_cell(&w, noted("cooling_at_target", p.target_capacity)), report_cell(&w, noted("cooling_at_target_high", p.target_capacity_high)));
    }
}

/* The same job on air that is saturated where it enters the line: what a failed dryer does. */
static void print_failed_dryer(const vtx_job *job, const vtx_operating_point *p)
{
    vtx_job wet = *job;
    vtx_operating_point q;
    wet.supply.humidity_kind = VTX_SUPPLY_DEW_POINT;
    wet.supply.humidity = wet.supply.temperature;
    wet.supply.humidity_pressure = 0;
    if (vtx_job_evaluate(&wet, &q, NULL) != VTX_OK)
        return;
    say("  if the dryer fails (air saturated at the supply): %.2f g/kg of water, of which %.2f g/kg condense in the tube;\n"
        "  the cold outlet warms by %s to %s and carries %.0f g of ice an hour\n",
        1000 * noted("wet_humidity_ratio", q.humidity_ratio), 1000 * noted("wet_condensed", q.condensed),
        report_difference(q.cold_temperature - p->cold_temperature), report_temperature(noted("wet_cold_temperature", q.cold_temperature)),
        3.6e6 * noted("wet_ice_flow", q.ice_flow));
}

static void print_water(const vtx_job *job, const vtx_operating_point *p)
{
    figures_section("water");
    say("\nWATER IN THE AIR\n");
    if (isfinite(p->cold_saturation_point))
        say("  the feed's water freezes or condenses at the cold outlet below   %s\n",
            report_temperature(noted("cold_saturation_point", p->cold_saturation_point)));
    else
        say("  the feed is dry\n");
    say("  cold outlet, typical %s; the best tube of its kind could reach %s\n", report_temperature(noted("cold_temperature", p->cold_temperature)),
        report_temperature(noted("coldest_temperature", p->coldest_temperature)));
    if (p->condensed > 0)
        say("  verdict: it snows inside. %.2f g/kg of water condense%s; the typical outlet is warmer for it.\n",
            1000 * noted("condensed", p->condensed),
            p->ice_flow > 0 ? " as ice" : "");
    if (p->ice_flow > 0)
        say("           %.0f g of ice an hour can build up in the nozzle: dry the air further before running it for long.\n",
            3.6e6 * noted("ice_flow", p->ice_flow));
    else if (isfinite(p->cold_saturation_point) && p->coldest_temperature < p->cold_saturation_point)
        say("  verdict: dry enough for a typical tube, not for the best: if flow fades after minutes, suspect ice.\n");
    else if (p->condensed <= 0)
        say("  verdict: dry enough for this outlet.\n");
    print_failed_dryer(job, p);
    if (p->advisories & VTX_ADVISORY_STATIC_FREEZING)
        say("  note: in the sonic throat of the inlet nozzle the air is at %s for an instant; feed water can freeze there first.\n",
            report_temperature(noted("throat_temperature", p->throat_temperature)));
}

/* What a metre of the bare cold tube collects, and the cover of aged foam that keeps it dry. */
static void print_cover(const struct spot_job *s, const vtx_operating_point *p)
{
    vtx_room room;
    vtx_covered_tube tube;
    vtx_dry_cover cover;
    vtx_tube_surface bare;
    if (s->cold_tube <= 0)
        return;
    vtx_room_init(&room);
    vtx_covered_tube_init(&tube);
    room.pressure = s->job.site.pressure;
    room.temperature = s->job.site.temperature;
    room.relative_humidity = s->job.site.relative_humidity;
    tube.outside_diameter = s->cold_tube;
    tube.inside_diameter = 0.7 * s->cold_tube; /* does not count: the wall is as cold as the gas */
    tube.wall_conductivity = 15;
    if (vtx_tube_in_room(&room, &tube, p->cold_temperature, &bare) == VTX_OK && bare.deposit > 0)
        say("  bare, a metre of the %.0f mm cold tube collects %.0f g of %s an hour and takes up %.0f W\n", 1e3 * s->cold_tube,
            3.6e6 * noted("bare_tube_deposit", bare.deposit), bare.surface_temperature < 273.15 ? "frost" : "water",
            noted("bare_tube_heat_gain", bare.heat_gain));
    const vtx_status status = vtx_cover_to_stay_dry(&room, &tube, p->cold_temperature, 0.5, &cover);
    if (status == VTX_OK && cover.thickness > 0)
        say("  insulation: %s of closed-cell foam, sealed against vapour, keeps its outside dry at the typical outlet\n",
            report_length(noted("insulation_thickness", cover.thickness)));
    else if (status == VTX_NO_SOLUTION)
        say("  insulation: no thickness keeps its outside dry in so humid a room\n");
}

/* A finger on the bare metal of the nozzle and of the hot end, each as bad as the band of tubes makes it. */
static void print_touch(const vtx_operating_point *p)
{
    vtx_skin skin;
    vtx_material_properties steel;
    vtx_touch cold, hot;
    vtx_skin_init(&skin);
    if (vtx_material(VTX_MATERIAL_STAINLESS_304, &steel) != VTX_OK
        || vtx_touch_surface(&skin, VTX_CONTACT_METAL, steel.effusivity.typical, p->coldest_temperature, 10, &cold) != VTX_OK
        || vtx_touch_surface(&skin, VTX_CONTACT_METAL, steel.effusivity.typical, p->hot_temperature_high, 10, &hot) != VTX_OK)
        return;
    say("  touch: bare skin, 10 s on the steel of the cold end at its coldest, %s, %s;\n"
        "         on the hot end at its hottest, %s, %s (screening values)\n",
        report_temperature(p->coldest_temperature), cold.criterion == VTX_TOUCH_FROSTBITE ? "risks frostbite"
            : cold.criterion == VTX_TOUCH_NUMBNESS ? "numbs it" : cold.criterion == VTX_TOUCH_PAIN ? "hurts" : "is harmless",
        report_temperature(p->hot_temperature_high),
        hot.criterion == VTX_TOUCH_BURN ? "burns" : hot.criterion == VTX_TOUCH_MAY_BURN ? "may burn" : "does not burn");
}

static void print_surroundings(const struct spot_job *s, const vtx_operating_point *p)
{
    figures_section("surroundings");
    say("\nAROUND THE NOZZLE\n");
    say("  room air sweats below %s", report_temperature(noted("room_dew_point", p->ambient_dew_point)));
    if (isfinite(p->ambient_frost_point))
        say(" and frosts below %s", report_temperature(noted("room_frost_point", p->ambient_frost_point)));
    say("\n");
    if (p->advisories & VTX_ADVISORY_FROSTING)
        say("  verdict: a bare nozzle and cold tube can be as cold as %s and collect frost: insulate them, keep water off electrics.\n",
            report_temperature(noted("coldest_temperature", p->coldest_temperature)));
    else if (p->advisories & VTX_ADVISORY_SWEATING)
        say("  verdict: a bare nozzle sweats; insulate it or catch the drip.\n");
    else
        say("  verdict: stays dry at %.0f %% relative humidity.\n", 100 * s->job.site.relative_humidity);
    print_cover(s, p);
    print_touch(p);
}

static void print_cautions(const vtx_job *job, const vtx_operating_point *p)
{
    figures_section("cautions");
    say("\nCAUTIONS\n"
        "  Compressed air injures: never aim it at people; shut off, vent and lock out before opening anything.\n"
        "  Eye and ear protection; guards against chips. The sound level is on the cooler's own data sheet.\n"
        "  Do not blow about dusts that burn (magnesium, titanium, fine aluminium) and keep frost water off live parts.\n"
        "  An iced outlet sends all air to the hot end and lets pressure rise: shut off and vent before you clear it.\n");
    spot_print_dead_end(job, p);
    if (p->advisories & VTX_ADVISORY_TOUCH_COLD)
        say("  Cold parts can be at %s: bare skin freezes to metal.\n", report_temperature(noted("coldest_temperature", p->coldest_temperature)));
    say("  The hot outlet can reach %s: guard it.\n", report_temperature(noted("hot_temperature_high", p->hot_temperature_high)));
    say("  Local codes and licensed practice come before this report, which rests on %s.\n",
        p->advisories & VTX_ADVISORY_UNCALIBRATED ? "an uncalibrated curve: tubes differ by a factor of two"
                                                  : "the efficiencies that the job file states");
}

/* The element of the line that costs most, if it is a hose or pipe, with the next wider bore of the trade. */
static void print_wider_bore(const struct spot_job *s, const vtx_job *job, int costliest, const vtx_operating_point *p)
{
    vtx_job wider = *job;
    vtx_operating_point q;
    const double bore = job->line[costliest].diameter;
    vtx_bore next;
    if (job->line[costliest].kind != VTX_CHAIN_LINE || vtx_bore_at_least(VTX_BORE_HOSE_METRIC, 1.15 * bore, &next) != VTX_OK)
        return;
    wider.line[costliest].diameter = next.diameter;
    if (vtx_job_evaluate(&wider, &q, NULL) != VTX_OK)
        return;
    say("  a wider %s, %s instead of %s, would bring %s to the cooler: cold outlet %s, cooling %s instead of %s\n",
        s->element_names[costliest], report_length(noted("wider_bore", next.diameter)), report_length(bore),
        report_gauge(noted("wider_bore_inlet_pressure", q.inlet_pressure), job->site.pressure),
        report_temperature(noted("wider_bore_cold_temperature", q.cold_temperature)),
        report_power(noted("wider_bore_cooling_at_target", q.target_capacity)), report_power(p->target_capacity));
}

static void print_line(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *p)
{
    vtx_chain_state state;
    vtx_chain_joint joints[9];
    if (job->elements == 0)
        return;
    say("\nTHE LINE\n");
    const vtx_status status = vtx_chain_outlet_pressure(job->line, (size_t)job->elements, p->mass_flow * job->running, job->supply.pressure,
                                                        job->supply.temperature, &state, joints);
    if (status != VTX_OK) {
        say("  an element is choked: the line passes no more than this, whatever the cooler could draw\n");
        return;
    }
    say("  start                  %s\n", report_gauge(joints[0].stagnation_pressure, job->site.pressure));
    for (int i = 0; i < job->elements; i++) {
        figures_row("line_elements");
        say("  behind %-15s %s, costs %s, %.0f %% of the line's loss%s\n", noted_text("name", s->element_names[i]),
            report_gauge(noted("pressure_behind", joints[i + 1].stagnation_pressure), job->site.pressure),
            report_loss(noted("pressure_loss", joints[i + 1].pressure_loss)), 100 * noted("share_of_loss", joints[i + 1].share),
            noted_code("choked", joints[i + 1].choked) ? ", choked" : "");
    }
    figures_section("line");
    say("  the line takes %s of the supply%s\n", report_pressure_drop(noted("pressure_loss", state.pressure_loss)),
        p->advisories & VTX_ADVISORY_STARVED ? ": more than a tenth, the cooler is starved" : "");
    if (state.costliest_element >= 0)
        print_wider_bore(s, job, state.costliest_element, p);
}

/* What stands in the way, and how near the list comes. */
static int print_failure(const struct spot_job *s, const vtx_chosen_cooler *c)
{
    figures_section("verdict");
    say("\nVERDICT: no cooler of the list meets the wish.\n");
    if (c->attainable_index >= 0)
        say("  most cooling among those cold enough: %s, from %s\n", report_power(noted("attainable_cooling_at_target", c->attainable_capacity)),
            noted_text("attainable_cooler", s->names[c->attainable_index]));
    say("  coldest outlet of all: %s\n", report_temperature(noted("attainable_cold_temperature", c->attainable_temperature)));
    say("  ways out: more pressure, a warmer limit for the outlet, several coolers, less heat, a larger cooler.\n");
    return EXIT_NOT_MET;
}

static void print_choice(const struct spot_job *s, const vtx_chosen_cooler *c, const vtx_verdict *v, const vtx_operating_point *p)
{
    const double need = s->requirements.capacity;
    figures_section("verdict");
    say("\nVERDICT: take cooler %s, set to a cold fraction of %.2f.\n", noted_text("cooler", s->names[c->index]), noted("cold_fraction", c->cold_fraction));
    say("  cold outlet       %s typical, %s to %s over the band of tubes\n", report_temperature(noted("cold_temperature", p->cold_temperature)),
        report_temperature(noted("cold_temperature_low", p->cold_temperature_low)),
        report_temperature(noted("cold_temperature_high", p->cold_temperature_high)));
    say("  cooling at target %s typical (%.0f to %.0f W), %.1f times the wish\n", report_power(noted("cooling_at_target", p->target_capacity)),
        noted("cooling_at_target_low", p->target_capacity_low), noted("cooling_at_target_high", p->target_capacity_high), p->target_capacity / need);
    say("  relative to inlet %s, the figure of most data sheets\n", report_power(noted("cooling_at_inlet", p->capacity)));
    say("  what binds        %s\n",
        s->requirements.cold_temperature > 0 && v->cold_temperature > s->requirements.cold_temperature - 0.01
            ? "the cold outlet's limit: a higher cold fraction would cool more but less cold"
            : "nothing of the wish: the cold fraction is that of most cooling");
    if (p->target_capacity_low < need)
        say("  at the low end of the band it falls %s short: measure one point of your own tube before you rely on it\n",
            report_power(need - p->target_capacity_low));
    say("  valve             hot valve at %.2f times its rated opening; close it to raise the cold fraction\n",
        noted("valve_opening", p->valve_opening));
    say("\nAIR\n  draws             %s of free air (%.2f g/s), %.2f g/s of it cold\n", report_flow(noted("free_air_flow", p->free_air_flow)),
        1000 * noted("mass_flow", p->mass_flow), 1000 * noted("cold_mass_flow", p->cold_mass_flow));
    say("  isentropic efficiency of the cold outlet %.2f; Joule-Thomson cooling of the real gas makes %s of the drop\n",
        noted("isentropic_efficiency", p->isentropic_efficiency), report_difference(noted("joule_thomson_drop", p->joule_thomson_drop)));
}

static int print_report(const struct spot_job *s)
{
    static vtx_verdict verdicts[JOB_COOLERS_MAX];
    vtx_chosen_cooler chosen;
    vtx_operating_point point;
    vtx_job job = s->job;
    vtx_status status = spot_choose(s, verdicts, &chosen);
    if (status != VTX_OK && status != VTX_NO_SOLUTION) {
        fprintf(stderr, "the library refuses this job: %s\n", vtx_status_text(status));
        return EXIT_LIBRARY;
    }
    say("libvtx %s: spot cooler sizing\n\n", noted_text("libvtx", vtx_version()));
    print_job(s);
    spot_print_cut(s);
    say("\nCOOLERS OF THE LIST, each at the setting of most cooling that keeps the outlet cold enough\n");
    say("  name        rated flow   fraction           cold outlet   cooling at target\n");
    for (size_t i = 0; i < s->cooler_count; i++)
        print_verdict(s, i, &verdicts[i]);
    if (status == VTX_NO_SOLUTION)
        return print_failure(s, &chosen);
    job.cooler = s->coolers[chosen.index];
    job.setting.cold_fraction = chosen.cold_fraction;
    status = vtx_job_evaluate(&job, &point, NULL);
    if (status != VTX_OK) {
        fprintf(stderr, "the library refuses the chosen cooler: %s\n", vtx_status_text(status));
        return EXIT_LIBRARY;
    }
    print_choice(s, &chosen, &verdicts[chosen.index], &point);
    print_line(s, &job, &point);
    print_table(s, &job.cooler, point.cold_fraction);
    spot_print_valve_left_alone(&job, &point);
    spot_print_work(s, &job);
    spot_print_part(s, &job, &point);
    print_water(&job, &point);
    print_surroundings(s, &point);
    spot_print_plant(s, &job, &point);
    spot_print_noise_and_cost(s, &job, &point);
    spot_print_ways(s, &job);
    spot_print_worth(&job);
    print_cautions(&job, &point);
    return EXIT_MET;
}

int main(int count, char **words)
{
    static struct spot_job spot;
    const char *file = NULL;
    int wants_json = 0;
    for (int i = 1; i < count; i++) {
        if (strcmp(words[i], "--help") == 0 || strcmp(words[i], "-h") == 0) {
            print_help();
            return EXIT_SUCCESS;
        } else if (strcmp(words[i], "--version") == 0) {
            printf("size_spot_cooler, libvtx %s\n", vtx_version());
            return EXIT_SUCCESS;
        } else if (strcmp(words[i], "--show-job") == 0) {
            fputs(spot_job_default, stdout);
            return EXIT_SUCCESS;
        } else if (strcmp(words[i], "--json") == 0) {
            wants_json = 1;
        } else if (strcmp(words[i], "--units") == 0 && i + 1 < count
                   && (strcmp(words[i + 1], "both") == 0 || strcmp(words[i + 1], "si") == 0 || strcmp(words[i + 1], "us") == 0)) {
            i++;
            report_choose(*words[i] == 'b' ? REPORT_BOTH : *words[i] == 's' ? REPORT_SI : REPORT_US);
        } else if (words[i][0] == '-' || file) {
            fprintf(stderr, "size_spot_cooler: \"%s\" is not understood; see --help\n", words[i]);
            return EXIT_INPUT;
        } else {
            file = words[i];
        }
    }
    if (spot_job_read(&spot, file))
        return EXIT_INPUT;
    if (wants_json)
        figures_to_json();
    const int code = print_report(&spot);
    figures_end(code);
    return code;
}
