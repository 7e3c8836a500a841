/* Heat of the cut and what temperature does to part and tool. */
#include <math.h>

#include "figures.h"
#include "report.h"
#include "spot_more.h"

/* Assumed geometry of the orthogonal model; common practice, no source. */
static const double shear_angle = 0.44, rake_angle = 0.09, shear_energy = 0.75;

/* The handbook's shares, widened by the shear-zone model where there is a chip to speak of. */
static vtx_status partition_of(const struct spot_cut *c, vtx_heat_partition *handbook, vtx_heat_partition *model, int *modelled)
{
    vtx_material_properties m;
    double number;
    vtx_status status = vtx_handbook_heat_partition(c->process, handbook);
    *modelled = c->speed > 0 && vtx_material(c->material, &m) == VTX_OK
        && vtx_thermal_number(m.density.typical, m.heat_capacity.typical, m.conductivity.typical, c->speed, c->chip_thickness, &number) == VTX_OK
        && vtx_orthogonal_heat_partition(number, shear_angle, rake_angle, shear_energy, model) == VTX_OK;
    return status;
}

/* Least and most of each share, over both partitions and the range of power. */
struct cut_heat {
    vtx_heat_partition handbook, model, both;
    vtx_cutting_energy energy;
    double low, typical, high; /* W */
    vtx_cutting_heat least, most;
    int modelled;
};

static int heat_of(const struct spot_cut *c, struct cut_heat *h)
{
    const double rate = c->removal_rate * c->share_of_time;
    if (vtx_specific_cutting_energy(c->process, c->material, c->hardness, c->chip_thickness, &h->energy) != VTX_OK
        || vtx_cutting_power(h->energy.low, rate, &h->low) != VTX_OK || vtx_cutting_power(h->energy.typical, rate, &h->typical) != VTX_OK
        || vtx_cutting_power(h->energy.high, rate, &h->high) != VTX_OK || partition_of(c, &h->handbook, &h->model, &h->modelled) != VTX_OK)
        return 0;
    h->both = h->handbook;
    if (h->modelled)
        vtx_combined_heat_partition(&h->handbook, &h->model, &h->both);
    return vtx_cutting_heat_flows(&h->both, h->low, &h->least) == VTX_OK && vtx_cutting_heat_flows(&h->both, h->high, &h->most) == VTX_OK;
}

static void print_shares(const struct cut_heat *h, double wish)
{
    say("  into the work          %.0f to %.0f %% by the handbook", 100 * noted("work_share_low", h->handbook.work_low),
        100 * noted("work_share_high", h->handbook.work_high));
    if (h->modelled)
        say(", %.0f to %.0f %% by the shear-zone model", 100 * noted("work_share_by_model_low", h->model.work_low),
            100 * noted("work_share_by_model_high", h->model.work_high));
    say(": %.0f to %.0f W\n", noted("work_heat_low", h->least.work_low), noted("work_heat_high", h->most.work_high));
    say("  into the tool          %.0f to %.0f %%: %.0f to %.0f W; the chips carry away %.0f to %.0f W\n",
        100 * noted("tool_share_low", h->both.tool_low),
        100 * noted("tool_share_high", h->both.tool_high), noted("tool_heat_low", h->least.tool_low), noted("tool_heat_high", h->most.tool_high),
        noted("chip_heat_low", h->least.chip_low), noted("chip_heat_high", h->most.chip_high));
    say("  within a jet's reach   %.0f to %.0f W, work and tool from outside; not the contact of chip and tool\n",
        noted("reachable_heat_low", h->least.reachable_low),
        noted("reachable_heat_high", h->most.reachable_high));
    say("  the wish of %.0f W       %s\n", wish,
        wish >= h->most.reachable_high ? "covers all of that"
            : wish >= h->least.reachable_low ? "lies inside: enough for some of these cuts, not for the hottest" : "is less than any of it: wish for more");
}

void spot_print_cut(const struct spot_job *s)
{
    const struct spot_cut *c = &s->cut;
    struct cut_heat h;
    if (c->removal_rate <= 0)
        return;
    figures_section("cut");
    say("\nHEAT OF THE CUT (%s of %s)\n", noted_text("process", c->process_name), noted_text("material", c->material_name));
    say("  removes                %.1f mm3/s, %.0f %% of the time\n",
        1e9 * noted("removal_rate", c->removal_rate), 100 * noted("share_of_time", c->share_of_time));
    if (!heat_of(c, &h)) {
        say("  no published energy for this process and material%s\n", c->hardness > 0 ? "" : ": a hardness may help");
        return;
    }
    say("  energy                 %.2f J/mm3, %.2f to %.2f%s\n", 1e-9 * noted("energy", h.energy.typical), 1e-9 * noted("energy_low", h.energy.low),
        1e-9 * noted("energy_high", h.energy.high), h.energy.from_memory ? "; figures from memory: take the range, not the middle" : "");
    say("  power, all of it heat  %.0f W on average, %.0f to %.0f W (sharp to worn tool, spread of the sources)\n", noted("power", h.typical),
        noted("power_low", h.low), noted("power_high", h.high));
    print_shares(&h, s->requirements.capacity);
    if (c->material == VTX_MATERIAL_MAGNESIUM || c->material == VTX_MATERIAL_TITANIUM)
        say("  DANGER                 chips and dust of %s burn: do not blow them about, no sparks, the right extinguisher at hand\n",
            c->material_name);
}

/* Still air on a bare shank, W/(m2 K); common practice, no source. Hotter than this radiation and holder take more than the air does. */
static const double still_air = 10, still_air_to = 473.15;

static vtx_status tool_base(const struct spot_tool *t, double film_coefficient, double air_temperature, double heat, double *temperature)
{
    vtx_tool tool;
    vtx_tool_temperatures settled;
    vtx_material_properties m;
    vtx_tool_init(&tool);
    vtx_material(t->material, &m);
    tool.length = t->length;
    tool.perimeter = 3.14159265358979323846 * t->diameter;
    tool.section = tool.tip_section = 0.25 * tool.perimeter * t->diameter;
    tool.conductivity = m.conductivity.typical;
    tool.film_coefficient = film_coefficient;
    const vtx_status status = vtx_tool_temperature(&tool, heat, air_temperature, &settled);
    *temperature = settled.base_temperature;
    return status;
}

static void print_tool(const struct spot_job *s, const vtx_job *job)
{
    struct cut_heat h;
    vtx_operating_point p;
    vtx_work w;
    double jet_low, jet_high, still_low, still_high;
    if (s->tool.material == 0 || s->cut.removal_rate <= 0 || !heat_of(&s->cut, &h) || job->duty.face_area <= 0 || job->duty.standoff <= 0
        || vtx_job_evaluate(job, &p, &w) != VTX_OK)
        return;
    if (tool_base(&s->tool, w.film_coefficient, w.jet_temperature, h.least.tool_low, &jet_low) != VTX_OK
        || tool_base(&s->tool, w.film_coefficient, w.jet_temperature, h.most.tool_high, &jet_high) != VTX_OK)
        return;
    say("  the tool               of %s settles at %s to %s behind its edge\n"
        "                         when the jet plays on all of it", s->tool.material_name,
        report_temperature(noted("tool_in_jet_low", jet_low)), report_temperature(noted("tool_in_jet_high", jet_high)));
    if (tool_base(&s->tool, still_air, job->site.temperature, h.least.tool_low, &still_low) == VTX_OK
        && tool_base(&s->tool, still_air, job->site.temperature, h.most.tool_high, &still_high) == VTX_OK)
        say(",\n                         without the jet in still air at %s to %s%s; what the holder takes is not counted", report_temperature(still_low),
            still_high > still_air_to ? "hotter than " : "", report_temperature(fmin(still_high, still_air_to)));
    say("\n");
}

static void print_softening(const struct spot_part *p)
{
    vtx_softening soft;
    vtx_material_properties m;
    if (vtx_softening_margin(p->material, p->hottest, &soft) == VTX_OK) {
        say("  hottest place          %s\n", report_temperature(noted("hottest_place", p->hottest)));
        if (isfinite(soft.loaded_margin))
            say("  softens under load     at %s: margin %s\n", report_temperature(noted("softens_under_load_at", soft.loaded_limit)),
                report_difference(noted("margin_under_load", soft.loaded_margin)));
        if (isfinite(soft.light_margin))
            say("  softens lightly held   at %s: margin %s\n", report_temperature(noted("softens_lightly_held_at", soft.light_limit)),
                report_difference(noted("margin_lightly_held", soft.light_margin)));
        say("  verdict                %s; burrs and smearing begin earlier, grades differ by 10 K\n",
            noted_code("too_hot", soft.exceeded) ? "TOO HOT: cool more, or cut less" : "within the limits");
    } else if (vtx_material(p->material, &m) == VTX_OK && isfinite(m.melting_temperature.low)) {
        say("  softening              far from melting at %s; hardness and temper suffer earlier\n",
            report_temperature(noted("melts_at", m.melting_temperature.low)));
    }
}

/* From the room to the target and to the hottest place, and at its worst if the cold stream got all of it. */
static void print_growth(const struct spot_job *s, const vtx_operating_point *point)
{
    const struct spot_part *p = &s->part;
    vtx_material_properties m;
    double warm, cold;
    if (p->length <= 0 || vtx_material(p->material, &m) != VTX_OK
        || vtx_thermal_growth(m.expansion.typical, p->length, s->job.duty.target_temperature - s->job.site.temperature, &warm) != VTX_OK
        || vtx_thermal_growth(m.expansion.typical, p->length, point->cold_temperature - s->job.site.temperature, &cold) != VTX_OK)
        return;
    say("  growth of %.0f mm       %+.3f mm at the target temperature, %+.3f mm if it took the cold outlet's (against the room's)\n",
        1e3 * noted("length", p->length),
        1e3 * noted("growth_at_target", warm), 1e3 * noted("growth_at_cold_outlet", cold));
    say("                         measure it when it is as warm as the room again\n");
}

void spot_print_part(const struct spot_job *s, const vtx_job *job, const vtx_operating_point *point)
{
    if (s->part.material == 0)
        return;
    figures_section("part");
    say("\nTHE PART (%s)%s\n", noted_text("material", s->part.material_name), s->tool.material ? " AND THE TOOL" : "");
    print_softening(&s->part);
    print_growth(s, point);
    print_tool(s, job);
}
