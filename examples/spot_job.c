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
    "\n"
    "[duty]\n"
    "work = drilling 8 mm holes into an acrylic cover\n"
    "target temperature = 50 degC\n"
    "heat = 90 W\n"
    "cold outlet at most = 0 degC\n"
    "compressor can spare = 1500 l/min\n"
    "judge by = typical tube\n"
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
    "[cooler 300]\n"
    "rated free air flow = 300 l/min\n"
    "[cooler 600]\n"
    "rated free air flow = 600 l/min\n"
    "[cooler 1200]\n"
    "rated free air flow = 1200 l/min\n"
    "[cooler 2000]\n"
    "rated free air flow = 2000 l/min\n";

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
    "  [duty]     target temperature = 50 degC          what the work may have\n"
    "             heat = 90 W                           to be taken from the work at that temperature\n"
    "             work = text                           optional\n"
    "             cold outlet at most = 0 degC          optional\n"
    "             compressor can spare = 1500 l/min     optional, free air at the coolers' reference state\n"
    "             judge by = typical tube               or careful side: which tube efficiency must meet the wish\n"
    "             valve = as set by the library         optional, or held at rated opening\n"
    "  [coolers]  what all coolers share; [cooler NAME] what one has, NAME as you like\n"
    "             rated free air flow = 300 l/min\n"
    "             reference state = ISO 8778            or ISO 1217, ISO 2533, DIN 1343: what free air means\n"
    "             rated pressure = 7 bar(g)             gauge zero here: 101.325 kPa, as on data sheets\n"
    "             rated temperature = 20 degC\n"
    "             rated cold fraction = 0.6\n"
    "             lowest cold fraction, highest cold fraction, cold outlets\n"
    "             tube efficiency = 0.28, lowest tube efficiency, highest tube efficiency (of your own readings)\n"
    "             noise level = 75 dB, noise distance = 1 m\n";

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
    for (size_t i = 0; i < sizeof kinds / sizeof kinds[0]; i++)
        if (job_has(f, "supply", kinds[i].key)) {
            job_quantity(f, "supply", kinds[i].key, kinds[i].dimension, 1, &supply->humidity);
            supply->humidity_kind = kinds[i].kind;
            given++;
        }
    if (given != 1)
        job_complain(f, "supply", "pressure dew point", "give one of pressure dew point, pressure frost point, humidity ratio");
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
    job_quantity(f, "duty", "cold outlet at most", VTX_DIMENSION_TEMPERATURE, 0, &s->requirements.cold_temperature);
    job_quantity(f, "duty", "compressor can spare", VTX_DIMENSION_VOLUME_FLOW, 0, &s->requirements.air_flow);
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
        if (f->faults == 0 && vtx_cooler_inlet_area(&s->coolers[i], &area) != VTX_OK)
            job_complain(f, sections[i], "rated free air flow", "this description contradicts itself or is beyond what the library covers");
    }
    s->cooler_count = (size_t)count;
}

int spot_job_read(struct spot_job *s, const char *name)
{
    static struct job_file file;
    memset(s, 0, sizeof *s);
    vtx_job_init(&s->job);
    if (job_open(&file, name ? name : "(built-in job)", name ? NULL : spot_job_default) != 0)
        return file.faults;
    read_site(&file, s);
    read_supply(&file, s);
    read_duty(&file, s);
    read_coolers(&file, s);
    return job_close(&file);
}
