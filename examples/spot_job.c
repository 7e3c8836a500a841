/* From the keys of a job file to records of the library. */
#include "spot_job.h"

#include <math.h>
#include <string.h>

/* The scenario: a hole drilled into a plastic cover, in a shop at 240 m, on a line with a refrigerated dryer. */
const char spot_job_default[] =
    "[site]\n"
    "altitude = 240 m\n"
    "temperature = 23 degC\n"
    "relative humidity = 55 %\n"
    "\n"
    "[supply]\n"
    "pressure = 6.3 bar(g)\n"
    "temperature = 25 degC\n"
    "pressure dew point = 4 degC\n"
    "coldest pipe = 8 degC\n"
    "oil at most = 0.01 g/h\n"
    "dirt at most = 0.02 g/h\n"
    "\n"
    "[line 1]\n"
    "kind = filter\n"
    "pressure loss = 0.1 bar\n"
    "at free air flow = 600 l/min\n"
    "at pressure = 7 bar(g)\n"
    "[line 2]\n"
    "kind = quick coupling\n"
    "nominal bore = 7.2 mm\n"
    "[line 3]\n"
    "kind = hose\n"
    "bore = 6.3 mm\n"
    "length = 8 m\n"
    "[line 4]\n"
    "kind = quick coupling\n"
    "nominal bore = 7.2 mm\n"
    "\n"
    "[duty]\n"
    "work = drilling 8 mm holes into an acrylic cover\n"
    "target temperature = 50 degC\n"
    "heat = 60 W\n"
    "face area = 25 cm2\n"
    "standoff = 25 mm\n"
    "cold outlet at most = -6 degC\n"
    "compressor can spare = 1500 l/min\n"
    "judge by = typical tube\n"
    "operator distance = 0.8 m\n"
    "hours beside it = 4 h\n"
    "noise rule = NIOSH\n"
    "cold tube = 12 mm\n"
    "\n"
    "[machining]\n"
    "process = drilling\n"
    "material = acrylic\n"
    "diameter = 8 mm\n"
    "feed = 0.2 mm\n"
    "spindle speed = 2400 1/min\n"
    "cutting share of time = 40 %\n"
    "\n"
    "[tool]\n"
    "material = high speed steel\n"
    "diameter = 8 mm\n"
    "length = 60 mm\n"
    "\n"
    "[part]\n"
    "length = 200 mm\n"
    "hottest place = 70 degC\n"
    "\n"
    "[liquid]\n"
    "film coefficient = 2000 W/(m2.K)\n"
    "mass flow = 2 kg/min\n"
    "temperature = 23 degC\n"
    "\n"
    "[compressor]\n"
    "free air delivery = 2400 l/min\n"
    "full load power = 15 kW\n"
    "receiver volume = 500 l\n"
    "cut in pressure = 6.3 bar(g)\n"
    "cut out pressure = 7.3 bar(g)\n"
    "leakage = 200 l/min\n"
    "other demand = 700 l/min\n"
    "lowest pressure = 5.5 bar(g)\n"
    "\n"
    "[costs]\n"
    "specific power = 6.5 kW/(m3/min)\n"
    "running time = 1500 h\n"
    "price of a kWh = 0.20\n"
    "carbon of a kWh = 0.4 kg\n"
    "\n"
    "[coolers]\n"
    "reference state = ISO 8778\n"
    "rated pressure = 7 bar(g)\n"
    "rated temperature = 20 degC\n"
    "rated cold fraction = 0.6\n"
    "lowest cold fraction = 0.2\n"
    "highest cold fraction = 0.8\n"
    "\n"
    "[cooler 120]\n"
    "rated free air flow = 120 l/min\n"
    "noise level = 72 dB(A)\n"
    "[cooler 300]\n"
    "rated free air flow = 300 l/min\n"
    "noise level = 76 dB(A)\n"
    "[cooler 600]\n"
    "rated free air flow = 600 l/min\n"
    "noise level = 79 dB(A)\n"
    "[cooler 1200]\n"
    "rated free air flow = 1200 l/min\n"
    "noise level = 83 dB(A)\n"
    "[cooler 2000]\n"
    "rated free air flow = 2000 l/min\n"
    "noise level = 86 dB(A)\n";

const char spot_job_keys[] =
    "  [site]     altitude = 240 m, or barometer = 98.5 kPa(a)\n"
    "             temperature = 23 degC\n"
    "             relative humidity = 55 %\n"
    "  [supply]   pressure = 6.3 bar(g)                gauge zero is the site's barometer\n"
    "             temperature = 25 degC\n"
    "             one of  pressure dew point = 4 degC     over liquid water\n"
    "                     pressure frost point = -40 degC over ice: what a dryer below 0 degC shows\n"
    "                     humidity ratio = 0.6 g/kg\n"
    "             humidity read at = 7 bar(g)           optional: where the dew or frost point was read\n"
    "             coldest pipe = 5 degC                 optional: the coldest the pipes on the way get\n"
    "             oil at most, dirt at most = 0.01 g/h  optional: what one cooler may blow at the work\n"
    "  [line N]   optional, N = 1, 2, ... in the order of the flow, 8 at the most: what stands between supply and cooler\n"
    "             kind = hose                bore, length\n"
    "             kind = pipe                bore, length, roughness, loss coefficient\n"
    "             kind = quick coupling      nominal bore, or conductance = 4 dm3/(s.bar) and critical ratio = 0.3\n"
    "             kind = component           conductance, critical ratio\n"
    "             kind = valve               kv = 1.2, xt = 0.7\n"
    "             kind = filter              pressure loss = 0.1 bar, at free air flow = 600 l/min, at pressure = 7 bar(g),\n"
    "                                        change at = 0.5 bar (pressure loss at that flow, optional)\n"
    "             kind = regulator           set pressure = 5 bar(g), droop = 0.3 bar, at free air flow, conductance, critical ratio\n"
    "             coolers on the line = 2 in [duty] when several blow at once\n"
    "  [duty]     target temperature = 50 degC          what the work may have\n"
    "             heat = 60 W                           to be taken from the work at that temperature\n"
    "             work = text                           optional\n"
    "             cold outlet at most = -6 degC         optional\n"
    "             compressor can spare = 1500 l/min     optional, free air at the coolers' reference state\n"
    "             judge by = typical tube               or careful side: which tube efficiency must meet the wish\n"
    "             face area = 25 cm2, standoff = 25 mm  optional: the face the air blows at, from how far; it must take the heat too\n"
    "             part mass, part specific heat, part start temperature, part conductivity, part half thickness,\n"
    "             part cycle time: optional\n"
    "             operator distance = 0.8 m             optional, to the ear\n"
    "             hours beside it = 4 h                 optional: what the operator must be allowed, by the noise rule\n"
    "             noise rule = NIOSH                    or OSHA formula, OSHA table, EU lower action, EU upper action, EU limit\n"
    "             cold tube = 12 mm                     optional: outside diameter, for its insulation\n"
    "             valve = as set by the library         optional, or held at rated opening\n"
    "  [costs]    optional: specific power = 6.5 kW/(m3/min), running time = 1500 h a year, price of a kWh = 0.20,\n"
    "             carbon of a kWh = 0.4 kg (optional)\n"
    "  [coolers]  what all coolers share; [cooler NAME] what one has, NAME as you like\n"
    "             rated free air flow = 300 l/min\n"
    "             reference state = ISO 8778            or ISO 1217, ISO 2533, DIN 1343: what free air means\n"
    "             rated pressure = 7 bar(g)             gauge zero here: 101.325 kPa, as on data sheets\n"
    "             rated temperature = 20 degC\n"
    "             rated cold fraction = 0.6\n"
    "             lowest cold fraction, highest cold fraction, cold outlets\n"
    "             tube efficiency = 0.28, lowest tube efficiency, highest tube efficiency (of your own readings)\n"
    "             noise level = 75 dB, noise distance = 1 m\n"
    "             cost = 250                            optional, of each: the list is then ranked by it instead of the air drawn\n";

/* Sections of the same file that diagnose_cooler reads. */
static const char *const service_sections[] = { "service", "readings", "instruments", "when new", "cold thermometer", "hot thermometer", "goal",
                                                "quoted point", "visit ", "limits", NULL };

static const char *const references[] = { "ISO 2533", "ISO 8778", "DIN 1343", "ISO 1217", NULL };
static const int32_t reference_names[] = { VTX_REFERENCE_ISO_2533, VTX_REFERENCE_ISO_8778, VTX_REFERENCE_DIN_1343,
                                           VTX_REFERENCE_ISO_1217 };

static void read_site(struct job_file *f, struct spot_job *s)
{
    double temperature = 293.15, humidity = 0.5, barometer = (double)NAN;
    s->altitude = (double)NAN;
    job_quantity(f, "site", "temperature", VTX_DIMENSION_TEMPERATURE, 1, &temperature);
    job_quantity(f, "site", "relative humidity", VTX_DIMENSION_NUMBER, 1, &humidity);
    if (job_has(f, "site", "barometer")) {
        if (job_has(f, "site", "altitude"))
            job_complain(f, "site", "altitude", "give either the altitude or the barometer");
        job_pressure(f, "site", "barometer", 1, &barometer);
        s->job.site.pressure = barometer;
        s->job.site.temperature = temperature;
        s->job.site.relative_humidity = humidity;
    } else {
        job_quantity(f, "site", "altitude", VTX_DIMENSION_LENGTH, 1, &s->altitude);
        if (isfinite(s->altitude) && vtx_site_at_altitude(s->altitude, temperature, humidity, &s->job.site) != VTX_OK)
            job_complain(f, "site", "altitude", "altitude, temperature or humidity is beyond what the library covers");
    }
    f->barometer = s->job.site.pressure;
}

static void read_supply(struct job_file *f, struct spot_job *s)
{
    static const struct {
        const char *key;
        int32_t kind, dimension;
    } kinds[] = {
        { "pressure dew point", VTX_SUPPLY_DEW_POINT, VTX_DIMENSION_TEMPERATURE },
        { "pressure frost point", VTX_SUPPLY_FROST_POINT, VTX_DIMENSION_TEMPERATURE },
        { "humidity ratio", VTX_SUPPLY_HUMIDITY_RATIO, VTX_DIMENSION_MASS_RATIO },
    };
    vtx_supply *supply = &s->job.supply;
    int given = 0;
    job_pressure(f, "supply", "pressure", 1, &supply->pressure);
    job_quantity(f, "supply", "temperature", VTX_DIMENSION_TEMPERATURE, 1, &supply->temperature);
    job_pressure(f, "supply", "humidity read at", 0, &supply->humidity_pressure);
    job_quantity(f, "supply", "oil at most", VTX_DIMENSION_MASS_FLOW, 0, &s->oil);
    job_quantity(f, "supply", "dirt at most", VTX_DIMENSION_MASS_FLOW, 0, &s->dirt);
    job_quantity(f, "supply", "coldest pipe", VTX_DIMENSION_TEMPERATURE, 0, &s->coldest_pipe);
    for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
        if (job_has(f, "supply", kinds[i].key)) {
            job_quantity(f, "supply", kinds[i].key, kinds[i].dimension, 1, &supply->humidity);
            supply->humidity_kind = kinds[i].kind;
            given++;
        }
    if (given != 1)
        job_complain(f, "supply", "pressure dew point", "give one of pressure dew point, pressure frost point, humidity ratio");
}

/* Mass flow of a free-air flow as data sheets of line parts mean it: ISO 8778. */
static double mass_flow_of(double free_air_flow)
{
    double pressure, temperature, humidity, mass_flow = (double)NAN;
    vtx_reference_state(VTX_REFERENCE_ISO_8778, &pressure, &temperature, &humidity);
    vtx_mass_flow_from_standard(VTX_AIR_REAL, pressure, temperature, humidity, free_air_flow, &mass_flow, NULL);
    return mass_flow;
}

static double larger_of(double a, double b) { return a > b ? a : b; }

static double density_at(double pressure, double temperature)
{
    vtx_dry_air air;
    return vtx_dry_air_at(pressure, temperature, &air) == VTX_OK ? air.density : (double)NAN;
}

static vtx_status read_conductance(struct job_file *f, const char *section, vtx_chain_element *element)
{
    double conductance = (double)NAN, critical_ratio = (double)NAN;
    job_quantity(f, section, "conductance", VTX_DIMENSION_CONDUCTANCE, 1, &conductance);
    job_quantity(f, section, "critical ratio", VTX_DIMENSION_NUMBER, 1, &critical_ratio);
    return vtx_chain_conductance(conductance, critical_ratio, element);
}

static vtx_status read_pipe(struct job_file *f, const char *section, int hose, vtx_chain_element *element)
{
    double bore = (double)NAN, length = (double)NAN, roughness = 4.6e-5, loss = 0.5;
    job_quantity(f, section, "bore", VTX_DIMENSION_LENGTH, 1, &bore);
    job_quantity(f, section, "length", VTX_DIMENSION_LENGTH, 1, &length);
    if (hose)
        return vtx_chain_hose(bore, length, element);
    job_quantity(f, section, "roughness", VTX_DIMENSION_LENGTH, 0, &roughness);
    job_quantity(f, section, "loss coefficient", VTX_DIMENSION_NUMBER, 0, &loss);
    return vtx_chain_pipe(bore, length, roughness, loss, element);
}

static vtx_status read_coupling(struct job_file *f, const char *section, vtx_chain_element *element)
{
    double bore = (double)NAN;
    if (job_has(f, section, "conductance"))
        return read_conductance(f, section, element);
    job_quantity(f, section, "nominal bore", VTX_DIMENSION_LENGTH, 1, &bore);
    return vtx_chain_coupling(bore, element);
}

static vtx_status read_valve(struct job_file *f, const char *section, vtx_chain_element *element)
{
    double kv = (double)NAN, xt = 0.7;
    job_quantity(f, section, "kv", VTX_DIMENSION_NUMBER, 1, &kv);
    job_quantity(f, section, "xt", VTX_DIMENSION_NUMBER, 0, &xt);
    return vtx_chain_valve(kv, xt, element);
}

static vtx_status read_filter(struct job_file *f, const char *section, double temperature, vtx_filter *filter, vtx_chain_element *element)
{
    double loss = (double)NAN, flow = (double)NAN, pressure = (double)NAN;
    job_quantity(f, section, "pressure loss", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1, &loss);
    job_quantity(f, section, "at free air flow", VTX_DIMENSION_VOLUME_FLOW, 1, &flow);
    job_pressure(f, section, "at pressure", 1, &pressure);
    vtx_filter_init(filter);
    filter->clean_drop = loss;
    filter->medium_share = 0.5;
    filter->change_drop = larger_of(filter->change_drop, 2 * loss);
    job_quantity(f, section, "change at", VTX_DIMENSION_PRESSURE_DIFFERENCE, 0, &filter->change_drop);
    filter->rated_flow = mass_flow_of(flow);
    filter->rated_density = density_at(pressure, temperature);
    if (filter->change_drop <= loss)
        job_complain(f, section, "change at", "more than the clean pressure loss is expected");
    return vtx_chain_filter(loss, filter->rated_flow, pressure, temperature, filter->medium_share, element);
}

static vtx_status read_regulator(struct job_file *f, const char *section, vtx_chain_element *element)
{
    double set = (double)NAN, droop = (double)NAN, flow = (double)NAN, conductance = (double)NAN, critical_ratio = (double)NAN;
    job_pressure(f, section, "set pressure", 1, &set);
    job_quantity(f, section, "droop", VTX_DIMENSION_PRESSURE_DIFFERENCE, 1, &droop);
    job_quantity(f, section, "at free air flow", VTX_DIMENSION_VOLUME_FLOW, 1, &flow);
    job_quantity(f, section, "conductance", VTX_DIMENSION_CONDUCTANCE, 1, &conductance);
    job_quantity(f, section, "critical ratio", VTX_DIMENSION_NUMBER, 1, &critical_ratio);
    return vtx_chain_regulator(set, droop, mass_flow_of(flow), conductance, critical_ratio, element);
}

static const char *const line_kinds[] = { "hose", "pipe", "quick coupling", "component", "valve", "filter", "regulator", NULL };

static void read_element(struct job_file *f, struct spot_job *s, const char *section, int place)
{
    vtx_chain_element *element = &s->job.line[place];
    const int faults = f->faults;
    const int kind = job_word(f, section, "kind", 1, line_kinds);
    vtx_status status = VTX_OK;
    switch (kind) {
    case 0:
    case 1: status = read_pipe(f, section, kind == 0, element); break;
    case 2: status = read_coupling(f, section, element); break;
    case 3: status = read_conductance(f, section, element); break;
    case 4: status = read_valve(f, section, element); break;
    case 5: status = read_filter(f, section, s->job.supply.temperature, &s->filters[place], element); break;
    case 6: status = read_regulator(f, section, element); break;
    default: return;
    }
    if (status != VTX_OK && f->faults == faults)
        job_complain(f, section, "kind", "its numbers are beyond what the library covers");
    snprintf(s->element_names[place], sizeof s->element_names[place], "%s", line_kinds[kind]);
}

static void read_line(struct job_file *f, struct spot_job *s)
{
    const char *sections[9];
    char expected[JOB_TEXT_MAX];
    const int count = job_sections(f, "line ", sections, 9);
    for (int i = 0; i < count; i++) {
        snprintf(expected, sizeof expected, "line %d", i + 1);
        if (i >= 8 || strcmp(sections[i], expected) != 0) {
            job_complain(f, sections[i], "kind", "sections of the line are [line 1], [line 2] ... in this order, [line 8] the last");
            return;
        }
        read_element(f, s, sections[i], i);
    }
    s->job.elements = count;
}

static void read_costs(struct job_file *f, struct spot_job *s)
{
    if (!job_has(f, "costs", "specific power"))
        return;
    job_quantity(f, "costs", "specific power", VTX_DIMENSION_ENERGY_DENSITY, 1, &s->specific_power);
    job_quantity(f, "costs", "running time", VTX_DIMENSION_TIME, 1, &s->hours);
    job_quantity(f, "costs", "price of a kWh", VTX_DIMENSION_NUMBER, 1, &s->price);
    job_quantity(f, "costs", "carbon of a kWh", VTX_DIMENSION_MASS, 0, &s->carbon);
}

static void read_duty(struct job_file *f, struct spot_job *s)
{
    static const char *const sides[] = { "typical tube", "careful side", NULL };
    static const char *const valves[] = { "as set by the library", "held at rated opening", NULL };
    const char *work = job_text(f, "duty", "work");
    const int side = job_word(f, "duty", "judge by", 1, sides);
    vtx_requirements_init(side == 1 ? VTX_QUESTION_SIZING : VTX_QUESTION_TYPICAL, &s->requirements);
    snprintf(s->work, sizeof s->work, "%s", work ? work : "not named");
    job_quantity(f, "duty", "target temperature", VTX_DIMENSION_TEMPERATURE, 1, &s->job.duty.target_temperature);
    job_quantity(f, "duty", "heat", VTX_DIMENSION_POWER, 1, &s->requirements.capacity);
    job_quantity(f, "duty", "face area", VTX_DIMENSION_AREA, 0, &s->job.duty.face_area);
    job_quantity(f, "duty", "standoff", VTX_DIMENSION_LENGTH, 0, &s->job.duty.standoff);
    job_quantity(f, "duty", "part mass", VTX_DIMENSION_MASS, 0, &s->job.duty.mass);
    job_quantity(f, "duty", "part specific heat", VTX_DIMENSION_HEAT_CAPACITY, 0, &s->job.duty.specific_heat);
    job_quantity(f, "duty", "part start temperature", VTX_DIMENSION_TEMPERATURE, 0, &s->job.duty.start_temperature);
    job_quantity(f, "duty", "part conductivity", VTX_DIMENSION_CONDUCTIVITY, 0, &s->job.duty.conductivity);
    job_quantity(f, "duty", "part half thickness", VTX_DIMENSION_LENGTH, 0, &s->job.duty.half_thickness);
    job_quantity(f, "duty", "part cycle time", VTX_DIMENSION_TIME, 0, &s->exposure);
    job_quantity(f, "duty", "operator distance", VTX_DIMENSION_LENGTH, 0, &s->operator_distance);
    job_quantity(f, "duty", "cold tube", VTX_DIMENSION_LENGTH, 0, &s->cold_tube);
    job_quantity(f, "duty", "cold outlet at most", VTX_DIMENSION_TEMPERATURE, 0, &s->requirements.cold_temperature);
    job_quantity(f, "duty", "compressor can spare", VTX_DIMENSION_VOLUME_FLOW, 0, &s->requirements.air_flow);
    job_quantity(f, "duty", "coolers on the line", VTX_DIMENSION_NUMBER, 0, &s->job.running);
    spot_noise_read(f, &s->requirements);
    if (s->operator_distance > 0)
        s->requirements.noise_distance = s->operator_distance;
    if (job_word(f, "duty", "valve", 0, valves) == 1)
        s->job.setting.held = VTX_HELD_VALVE_OPENING;
}

/* A key of [cooler NAME], or else of [coolers]. */
static const char *section_of(const struct job_file *f, const char *own, const char *key)
{
    return job_has(f, own, key) ? own : "coolers";
}

static void own_or_shared(struct job_file *f, const char *own, const char *key, int32_t dimension, int required, double *value)
{
    job_quantity(f, section_of(f, own, key), key, dimension, required, value);
}

static void read_cooler(struct job_file *f, const char *own, struct spot_job *s, vtx_cooler *c)
{
    const double barometer = f->barometer;
    int reference;
    vtx_cooler_init(c);
    own_or_shared(f, own, "rated free air flow", VTX_DIMENSION_VOLUME_FLOW, 1, &c->rated_free_air_flow);
    f->barometer = 101325; /* a data sheet knows no site */
    job_pressure(f, section_of(f, own, "rated pressure"), "rated pressure", 1, &c->rated_pressure);
    f->barometer = barometer;
    own_or_shared(f, own, "rated temperature", VTX_DIMENSION_TEMPERATURE, 1, &c->rated_temperature);
    own_or_shared(f, own, "rated cold fraction", VTX_DIMENSION_NUMBER, 1, &c->rated_cold_fraction);
    own_or_shared(f, own, "lowest cold fraction", VTX_DIMENSION_NUMBER, 0, &c->cold_fraction_min);
    own_or_shared(f, own, "highest cold fraction", VTX_DIMENSION_NUMBER, 0, &c->cold_fraction_max);
    own_or_shared(f, own, "noise level", VTX_DIMENSION_LEVEL, 0, &c->noise_level);
    own_or_shared(f, own, "noise distance", VTX_DIMENSION_LENGTH, 0, &c->noise_distance);
    own_or_shared(f, own, "tube efficiency", VTX_DIMENSION_NUMBER, 0, &c->tube.peak_efficiency);
    own_or_shared(f, own, "lowest tube efficiency", VTX_DIMENSION_NUMBER, 0, &c->tube.efficiency_low);
    own_or_shared(f, own, "highest tube efficiency", VTX_DIMENSION_NUMBER, 0, &c->tube.efficiency_high);
    if (job_has(f, section_of(f, own, "tube efficiency"), "tube efficiency"))
        c->tube.basis = VTX_TUBE_CALIBRATED;
    job_integer(f, section_of(f, own, "cold outlets"), "cold outlets", 0, 1, 8, &c->outlets);
    reference = job_word(f, section_of(f, own, "reference state"), "reference state", 1, references);
    if (reference < 0)
        return;
    s->reference = references[reference];
    vtx_reference_state(reference_names[reference], &c->reference_pressure, &c->reference_temperature, &c->reference_humidity);
}

static void read_coolers(struct job_file *f, struct spot_job *s)
{
    const char *sections[JOB_COOLERS_MAX];
    const int count = job_sections(f, "cooler ", sections, JOB_COOLERS_MAX);
    double area;
    if (count == 0)
        job_complain(f, "cooler NAME", "rated free air flow", "at least one section [cooler NAME] is needed");
    for (int i = 0; i < count; i++) {
        snprintf(s->names[i], sizeof s->names[i], "%s", sections[i] + strlen("cooler "));
        read_cooler(f, sections[i], s, &s->coolers[i]);
        s->costs[i] = -1;
        job_quantity(f, sections[i], "cost", VTX_DIMENSION_NUMBER, 0, &s->costs[i]);
        if (f->faults == 0 && vtx_cooler_inlet_area(&s->coolers[i], &area) != VTX_OK)
            job_complain(f, sections[i], "rated free air flow", "this description contradicts itself or is beyond what the library covers");
    }
    s->cooler_count = (size_t)count;
}

void spot_job_take(struct spot_job *s, struct job_file *file)
{
    memset(s, 0, sizeof *s);
    vtx_job_init(&s->job);
    read_site(file, s);
    read_supply(file, s);
    read_line(file, s);
    read_duty(file, s);
    read_costs(file, s);
    spot_cut_read(file, &s->cut);
    spot_part_read(file, s->job.duty.target_temperature, s->cut.material, s->cut.material_name, &s->part);
    spot_tool_read(file, &s->tool);
    spot_plant_read(file, &s->job.site, &s->plant);
    spot_liquid_read(file, &s->liquid);
    s->job.duty.heat_load = s->requirements.capacity;
    if (s->job.duty.face_area > 0 && s->job.duty.standoff > 0)
        s->requirements.face_heat = s->requirements.capacity;
    read_coolers(file, s);
}

int spot_job_read(struct spot_job *s, const char *name)
{
    static struct job_file file;
    if (job_open(&file, name ? name : "(built-in job)", name ? NULL : spot_job_default) != 0)
        return file.faults;
    spot_job_take(s, &file);
    for (int i = 0; service_sections[i]; i++)
        job_pass_over(&file, service_sections[i]);
    return job_close(&file);
}

static const double *costs_of(const struct spot_job *s)
{
    for (size_t i = 0; i < s->cooler_count; i++)
        if (s->costs[i] < 0)
            return NULL;
    return s->costs;
}

vtx_status spot_choose(const struct spot_job *s, vtx_verdict verdicts[], vtx_chosen_cooler *chosen)
{
    const double *costs = costs_of(s);
    vtx_status status = vtx_rank_coolers(&s->job, s->coolers, s->cooler_count, costs, &s->requirements, verdicts);
    if (status == VTX_OK)
        status = vtx_smallest_cooler(&s->job, s->coolers, s->cooler_count, &s->requirements, chosen);
    for (size_t i = 0; status == VTX_OK && costs && i < s->cooler_count; i++)
        if (verdicts[i].rank == 1) {
            chosen->index = (int32_t)i;
            chosen->cold_fraction = verdicts[i].cold_fraction;
            chosen->cost = verdicts[i].cost;
        }
    return status;
}
