/* Reads the optional sections of a sizing job. */
#include "spot_sections.h"

#include <math.h>
#include <string.h>

const char spot_section_keys[] =
    "  [machining] optional: what makes the heat. material = acrylic (see a refusal for the list), hardness = 180 (HB)\n"
    "             process = drilling        diameter, feed (a revolution), spindle speed = 1500 1/min\n"
    "             process = turning         cutting speed, feed, depth\n"
    "             process = milling         diameter, width, depth, feed per tooth, teeth, spindle speed\n"
    "             process = grinding        width, depth, table speed\n"
    "             cutting share of time = 40 %          optional\n"
    "  [part]     optional: what the temperature does to it. material (that of [machining] when not given), length = 200 mm,\n"
    "             hottest place = 60 degC (the target temperature when not given)\n"
    "  [tool]     optional: material = high speed steel or carbide, diameter, length (out of the holder)\n"
    "  [compressor] optional: free air delivery, full load power, receiver volume, cut in pressure, cut out pressure,\n"
    "             leakage, other demand, lowest pressure (that the net may fall to)\n"
    "  [liquid]   optional, to compare with: film coefficient = 2000 W/(m2.K), mass flow = 3 kg/min, temperature, specific heat\n";

static const struct {
    const char *name;
    int32_t material;
} materials[] = {
    { "acrylic", VTX_MATERIAL_PMMA },
    { "polycarbonate", VTX_MATERIAL_PC },
    { "nylon 6", VTX_MATERIAL_PA6 },
    { "nylon 66", VTX_MATERIAL_PA66 },
    { "acetal", VTX_MATERIAL_POM },
    { "ABS", VTX_MATERIAL_ABS },
    { "PEEK", VTX_MATERIAL_PEEK },
    { "PTFE", VTX_MATERIAL_PTFE },
    { "PP", VTX_MATERIAL_PP },
    { "PE-HD", VTX_MATERIAL_PE_HD },
    { "PE-LD", VTX_MATERIAL_PE_LD },
    { "PVC", VTX_MATERIAL_PVC },
    { "aluminium", VTX_MATERIAL_ALUMINIUM },
    { "carbon steel", VTX_MATERIAL_CARBON_STEEL },
    { "alloy steel", VTX_MATERIAL_ALLOY_STEEL },
    { "stainless 304", VTX_MATERIAL_STAINLESS_304 },
    { "stainless 316", VTX_MATERIAL_STAINLESS_316 },
    { "titanium", VTX_MATERIAL_TITANIUM },
    { "nickel alloy", VTX_MATERIAL_NICKEL },
    { "brass", VTX_MATERIAL_BRASS },
    { "cast iron", VTX_MATERIAL_CAST_IRON },
    { "magnesium", VTX_MATERIAL_MAGNESIUM },
    { "copper", VTX_MATERIAL_COPPER },
};
enum { MATERIALS = sizeof materials / sizeof materials[0] };

static int32_t read_material(struct job_file *f, const char *section, int required, const char **name)
{
    const char *names[MATERIALS + 1] = { NULL };
    for (int i = 0; i < MATERIALS; i++)
        names[i] = materials[i].name;
    const int found = job_word(f, section, "material", required, names);
    if (found < 0)
        return 0;
    *name = materials[found].name;
    return materials[found].material;
}

static double length_of(struct job_file *f, const char *key)
{
    double value = (double)NAN;
    job_quantity(f, "machining", key, VTX_DIMENSION_LENGTH, 1, &value);
    return value;
}

static double spindle_of(struct job_file *f)
{
    double value = (double)NAN;
    job_quantity(f, "machining", "spindle speed", VTX_DIMENSION_FREQUENCY, 1, &value);
    return value;
}

static double velocity_of(struct job_file *f, const char *key)
{
    double value = (double)NAN;
    job_quantity(f, "machining", key, VTX_DIMENSION_VELOCITY, 1, &value);
    return value;
}

static const double pi_value = 3.14159265358979323846;

static vtx_status read_turning(struct job_file *f, struct spot_cut *c)
{
    c->speed = velocity_of(f, "cutting speed");
    c->chip_thickness = length_of(f, "feed");
    return vtx_turning_removal(c->speed, c->chip_thickness, length_of(f, "depth"), &c->removal_rate);
}

static vtx_status read_milling(struct job_file *f, struct spot_cut *c)
{
    const double turns = spindle_of(f);
    double teeth = (double)NAN;
    job_quantity(f, "machining", "teeth", VTX_DIMENSION_NUMBER, 1, &teeth);
    c->speed = pi_value * length_of(f, "diameter") * turns;
    c->chip_thickness = length_of(f, "feed per tooth");
    return vtx_milling_removal(length_of(f, "width"), length_of(f, "depth"), c->chip_thickness, teeth, turns, &c->removal_rate);
}

/* Mean speed over the area, two thirds of that at the rim; two lips share the feed. */
static vtx_status read_drilling(struct job_file *f, struct spot_cut *c)
{
    const double diameter = length_of(f, "diameter"), feed = length_of(f, "feed"), turns = spindle_of(f);
    c->speed = pi_value * diameter * turns * 2 / 3;
    c->chip_thickness = 0.5 * feed;
    return vtx_drilling_removal(diameter, feed, turns, &c->removal_rate);
}

static vtx_status read_grinding(struct job_file *f, struct spot_cut *c)
{
    return vtx_grinding_removal(length_of(f, "depth"), length_of(f, "width"), velocity_of(f, "table speed"), &c->removal_rate);
}

void spot_cut_read(struct job_file *f, struct spot_cut *c)
{
    static const char *const processes[] = { "turning", "milling", "drilling", "grinding", NULL };
    static vtx_status (*const read[])(struct job_file *, struct spot_cut *) = { read_turning, read_milling, read_drilling, read_grinding };
    const int faults = f->faults;
    *c = (struct spot_cut){ .share_of_time = 1 };
    if (!job_has(f, "machining", "process"))
        return;
    const int process = job_word(f, "machining", "process", 1, processes);
    c->material = read_material(f, "machining", 1, &c->material_name);
    job_quantity(f, "machining", "hardness", VTX_DIMENSION_NUMBER, 0, &c->hardness);
    job_quantity(f, "machining", "cutting share of time", VTX_DIMENSION_NUMBER, 0, &c->share_of_time);
    if (process < 0)
        return;
    c->process = VTX_PROCESS_TURNING + process;
    c->process_name = processes[process];
    if (read[process](f, c) != VTX_OK && f->faults == faults)
        job_complain(f, "machining", "process", "its numbers are beyond what the library covers");
    if (!(c->share_of_time > 0 && c->share_of_time <= 1))
        job_complain(f, "machining", "cutting share of time", "more than 0 and no more than 100 % is expected");
}

void spot_part_read(struct job_file *f, double target_temperature, int32_t material, const char *material_name, struct spot_part *p)
{
    *p = (struct spot_part){ .material = material, .material_name = material_name, .hottest = target_temperature };
    if (job_has(f, "part", "material"))
        p->material = read_material(f, "part", 0, &p->material_name);
    job_quantity(f, "part", "length", VTX_DIMENSION_LENGTH, 0, &p->length);
    job_quantity(f, "part", "hottest place", VTX_DIMENSION_TEMPERATURE, 0, &p->hottest);
    if (p->material == 0 && (job_has(f, "part", "length") || job_has(f, "part", "hottest place")))
        job_complain(f, "part", "material", "missing");
}

void spot_tool_read(struct job_file *f, struct spot_tool *t)
{
    static const char *const tools[] = { "high speed steel", "carbide", NULL };
    vtx_fin fin;
    const int faults = f->faults;
    *t = (struct spot_tool){ 0 };
    if (!job_has(f, "tool", "material"))
        return;
    const int found = job_word(f, "tool", "material", 1, tools);
    job_quantity(f, "tool", "diameter", VTX_DIMENSION_LENGTH, 1, &t->diameter);
    job_quantity(f, "tool", "length", VTX_DIMENSION_LENGTH, 1, &t->length);
    if (f->faults > faults)
        return;
    t->material = found == 0 ? VTX_MATERIAL_HIGH_SPEED_STEEL : VTX_MATERIAL_CARBIDE;
    t->material_name = tools[found];
    if (vtx_fin_of_bar(10, pi_value * t->diameter, pi_value / 4 * t->diameter * t->diameter, 50, t->length, &fin) != VTX_OK)
        job_complain(f, "tool", "diameter", "its numbers are beyond what the library covers");
}

void spot_plant_read(struct job_file *f, const vtx_site *site, struct spot_plant *p)
{
    vtx_compressor *c = &p->compressor;
    vtx_compressor_duty duty;
    const int faults = f->faults;
    memset(p, 0, sizeof *p);
    vtx_compressor_init(c);
    if (!job_has(f, "compressor", "free air delivery"))
        return;
    c->intake_pressure = site->pressure;
    job_quantity(f, "compressor", "free air delivery", VTX_DIMENSION_VOLUME_FLOW, 1, &c->free_air_delivery);
    job_quantity(f, "compressor", "full load power", VTX_DIMENSION_POWER, 1, &c->full_load_power);
    job_quantity(f, "compressor", "receiver volume", VTX_DIMENSION_VOLUME, 1, &c->receiver_volume);
    job_pressure(f, "compressor", "cut in pressure", 1, &c->cut_in_pressure);
    job_pressure(f, "compressor", "cut out pressure", 1, &c->cut_out_pressure);
    job_quantity(f, "compressor", "leakage", VTX_DIMENSION_VOLUME_FLOW, 0, &c->leakage);
    job_quantity(f, "compressor", "other demand", VTX_DIMENSION_VOLUME_FLOW, 0, &p->other_demand);
    p->lowest_pressure = c->cut_in_pressure;
    job_pressure(f, "compressor", "lowest pressure", 0, &p->lowest_pressure);
    if (f->faults == faults && vtx_compressor_at_demand(c, p->other_demand, &duty) != VTX_OK)
        job_complain(f, "compressor", "free air delivery", "this description contradicts itself or is beyond what the library covers");
}

void spot_liquid_read(struct job_file *f, vtx_liquid *l)
{
    vtx_liquid_init(l);
    if (!job_has(f, "liquid", "film coefficient"))
        return;
    job_quantity(f, "liquid", "film coefficient", VTX_DIMENSION_HEAT_TRANSFER, 1, &l->film_coefficient);
    job_quantity(f, "liquid", "mass flow", VTX_DIMENSION_MASS_FLOW, 1, &l->mass_flow);
    job_quantity(f, "liquid", "temperature", VTX_DIMENSION_TEMPERATURE, 0, &l->temperature);
    job_quantity(f, "liquid", "specific heat", VTX_DIMENSION_HEAT_CAPACITY, 0, &l->specific_heat);
}

static const char *const noise_rules[] = { "OSHA formula", "OSHA table", "NIOSH", "EU lower action", "EU upper action", "EU limit", NULL };

const char *spot_noise_rule_name(int32_t rule) { return noise_rules[rule - VTX_NOISE_RULE_OSHA_FORMULA]; }

void spot_noise_read(struct job_file *f, vtx_requirements *r)
{
    const int rule = job_word(f, "duty", "noise rule", 0, noise_rules);
    r->noise_rule = rule < 0 ? 0 : VTX_NOISE_RULE_OSHA_FORMULA + rule;
    job_quantity(f, "duty", "hours beside it", VTX_DIMENSION_TIME, 0, &r->noise_time);
    if (r->noise_time > 0 && rule < 0)
        job_complain(f, "duty", "noise rule", "missing: the hours need a rule to be judged by");
    if (r->noise_time > 86400)
        job_complain(f, "duty", "hours beside it", "a day has 24 h");
}
