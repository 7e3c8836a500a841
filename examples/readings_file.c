/* Readings and instruments from a job file. */
#include "readings_file.h"

#include <math.h>
#include <string.h>

const char *const readings_names[READINGS] = { "supply pressure",  "inlet pressure", "inlet temperature", "cold temperature",
                                               "hot temperature", "inlet flow",     "cold flow",         "cold pressure" };

const char readings_keys[] =
    "  [readings]  two or more of these, each where it was read while the cooler ran steadily:\n"
    "             supply pressure = 6.3 bar(g)          at the start of the line, ahead of [line 1]\n"
    "             inlet pressure = 5.9 bar(g)           directly at the cooler\n"
    "             inlet temperature = 24 degC           of the air at the cooler's inlet\n"
    "             cold temperature = -12 degC           of the cold outlet's air\n"
    "             hot temperature = 62 degC             of the hot outlet's air\n"
    "             inlet flow = 560 l/min                of this cooler, free air at the coolers' reference state; or inlet mass flow = 40 kg/h\n"
    "             cold flow = 330 l/min                 likewise; or cold mass flow = 24 kg/h\n"
    "             cold pressure = 0.1 bar(g)            directly behind the tube's cold outlet, ahead of what is screwed on it\n"
    "             flows read at = DIN 1343              optional: the state that a flow meter's litres mean; ISO 8778, ISO 1217, ISO 2533\n"
    "  [instruments]  optional, what the instruments are good to (+-):\n"
    "             stated as = limits of error           or standard uncertainties, or 95 % intervals: what the figures here mean\n"
    "             pressure gauges = 0.1 bar, thermometers = 1 K, flow meters = 3 %\n"
    "             or of one instrument under the name of its reading: cold temperature = 0.5 K, inlet flow = 2 %\n"
    "             thermometer class = Pt100 class B     instead of thermometers; Pt100 class A, type K class 1, type T class 1\n"
    "             cannot be read = inlet flow, cold flow   optional: no meter, no tapping; these are then not asked for\n"
    "             without all this: standard uncertainties of 0.07 bar, 0.5 K and 1 % of the flow\n"
    "  [cold thermometer], [hot thermometer]  optional, for a probe in fast air:\n"
    "             probe = bare                          or shielded, smooth laminar, smooth turbulent\n"
    "             air speed = 60 m/s, air speed good to = 6 m/s (standard; without it a tenth of the speed)\n"
    "             room air in the jet = 10 %            past the jet's core the probe is in mixed air\n"
    "             read after = 40 s, time constant = 10 s, read before at = 23 degC: a probe that had not settled\n";

static int is_pressure(int i)
{
    const int32_t code = VTX_READ_SUPPLY_PRESSURE + i;
    return code == VTX_READ_SUPPLY_PRESSURE || code == VTX_READ_INLET_PRESSURE || code == VTX_READ_COLD_PRESSURE;
}

static int is_flow(int i) { return VTX_READ_SUPPLY_PRESSURE + i == VTX_READ_INLET_FLOW || VTX_READ_SUPPLY_PRESSURE + i == VTX_READ_COLD_FLOW; }

static int32_t dimension_of_uncertainty(int i)
{
    return is_pressure(i) ? VTX_DIMENSION_PRESSURE_DIFFERENCE : is_flow(i) ? VTX_DIMENSION_NUMBER : VTX_DIMENSION_TEMPERATURE_DIFFERENCE;
}

/* What a stated figure is divided by to become a standard uncertainty: rectangular limits, itself, normal 95 %. */
static double divisor_of(struct job_file *f)
{
    static const char *const meanings[] = { "limits of error", "standard uncertainties", "95 % intervals", NULL };
    const int meaning = job_word(f, "instruments", "stated as", 0, meanings);
    return meaning == 1 ? 1 : meaning == 2 ? 1.96 : sqrt(3);
}

/* Key of one instrument or of its kind. */
static void read_instrument(struct job_file *f, const char *key, int32_t dimension, double divisor, double *uncertainty)
{
    double stated = (double)NAN;
    job_quantity(f, "instruments", key, dimension, 0, &stated);
    if (isnan(stated))
        return;
    if (stated <= 0)
        job_complain(f, "instruments", key, "must be above 0");
    else
        *uncertainty = stated / divisor;
}

/* Names of readings with commas between them. */
static void read_missing(struct job_file *f, struct instruments *in)
{
    const char *text = job_text(f, "instruments", "cannot be read");
    while (text && *text) {
        const size_t length = strcspn(text, ",");
        int found = -1;
        for (int i = 0; i < READINGS; i++)
            if (strlen(readings_names[i]) == length && strncmp(text, readings_names[i], length) == 0)
                found = i;
        if (found < 0) {
            job_complain(f, "instruments", "cannot be read", "names of readings with commas between them are expected");
            return;
        }
        in->is_missing[found] = 1;
        text += length;
        text += strspn(text, ", ");
    }
}

void instruments_read(struct job_file *f, struct instruments *in)
{
    static const char *const classes[] = { "type K class 1", "type T class 1", "Pt100 class A", "Pt100 class B", NULL };
    const double divisor = divisor_of(f);
    vtx_service_readings ordinary;
    vtx_service_readings_init(&ordinary);
    memset(in, 0, sizeof *in);
    const int class_of = job_word(f, "instruments", "thermometer class", 0, classes);
    if (class_of >= 0)
        in->thermometer = VTX_THERMOMETER_K1 + class_of;
    if (class_of >= 0 && job_has(f, "instruments", "thermometers"))
        job_complain(f, "instruments", "thermometer class", "give either thermometers or thermometer class");
    read_missing(f, in);
    in->drop = 2e3;
    read_instrument(f, "filter pressure drop", VTX_DIMENSION_PRESSURE_DIFFERENCE, divisor, &in->drop);
    for (int i = 0; i < READINGS; i++) {
        const char *kind = is_pressure(i) ? "pressure gauges" : is_flow(i) ? "flow meters" : "thermometers";
        in->uncertainty[i] = is_flow(i) ? 0.01 : ordinary.uncertainty[i];
        read_instrument(f, kind, dimension_of_uncertainty(i), divisor, &in->uncertainty[i]);
        in->is_own[i] = job_has(f, "instruments", readings_names[i]);
        read_instrument(f, readings_names[i], dimension_of_uncertainty(i), divisor, &in->uncertainty[i]);
    }
}

static double time_not_followed(struct job_file *f, const char *section)
{
    double elapsed = (double)NAN, constant = (double)NAN, share = 0;
    if (!job_has(f, section, "read after"))
        return 0;
    job_quantity(f, section, "read after", VTX_DIMENSION_TIME, 1, &elapsed);
    job_quantity(f, section, "time constant", VTX_DIMENSION_TIME, 1, &constant);
    if (isfinite(elapsed) && isfinite(constant) && vtx_unsettled_share(constant, elapsed, &share) != VTX_OK)
        job_complain(f, section, "read after", "times must be above 0");
    if (share > 0.9)
        job_complain(f, section, "read after", "far too early: the probe has hardly moved; read again later");
    return share;
}

static void read_thermometer(struct job_file *f, const char *section, int i, double room_temperature, struct thermometers *t)
{
    static const char *const kinds[] = { "smooth laminar", "smooth turbulent", "bare", "shielded", NULL };
    vtx_probe *probe = &t->probe[i];
    int kind;
    if (!job_has(f, section, "probe"))
        return;
    t->is_stated[i] = 1;
    vtx_probe_init(probe);
    probe->room_temperature = probe->start_temperature = room_temperature;
    kind = job_word(f, section, "probe", 1, kinds);
    if (kind >= 0)
        vtx_recovery_factor(VTX_PROBE_LAMINAR + kind, 0.71, &probe->recovery_factor, &probe->recovery_uncertainty);
    job_quantity(f, section, "air speed", VTX_DIMENSION_VELOCITY, 1, &probe->air_speed);
    probe->air_speed_uncertainty = 0.1 * probe->air_speed;
    job_quantity(f, section, "air speed good to", VTX_DIMENSION_VELOCITY, 0, &probe->air_speed_uncertainty);
    job_quantity(f, section, "room air in the jet", VTX_DIMENSION_NUMBER, 0, &probe->entrained_share);
    probe->entrained_uncertainty = 0.25 * probe->entrained_share;
    probe->unsettled_share = time_not_followed(f, section);
    probe->unsettled_uncertainty = 0.25 * probe->unsettled_share;
    job_quantity(f, section, "read before at", VTX_DIMENSION_TEMPERATURE, 0, &probe->start_temperature);
}

void thermometers_read(struct job_file *f, double room_temperature, struct thermometers *t)
{
    memset(t, 0, sizeof *t);
    read_thermometer(f, "cold thermometer", VTX_READ_COLD_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE, room_temperature, t);
    read_thermometer(f, "hot thermometer", VTX_READ_HOT_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE, room_temperature, t);
}

void readings_correct(struct job_file *f, const char *section, const struct thermometers *t, vtx_service_readings *r)
{
    vtx_corrected_temperature corrected;
    for (int i = 0; i < READINGS; i++) {
        if (!t->is_stated[i] || isnan(r->value[i]))
            continue;
        if (vtx_probe_correct(&t->probe[i], r->value[i], r->uncertainty[i], &corrected) != VTX_OK) {
            job_complain(f, section, readings_names[i], "cannot be corrected for what the thermometer's section says");
            continue;
        }
        r->value[i] = corrected.temperature;
        r->uncertainty[i] = corrected.uncertainty;
    }
}

/* The state that litres of free air mean: the coolers' own, or the one named. */
static void read_meter_state(struct job_file *f, const char *section, const vtx_cooler *cooler, double state[3])
{
    static const char *const names[] = { "ISO 2533", "ISO 8778", "DIN 1343", "ISO 1217", NULL };
    static const int32_t codes[] = { VTX_REFERENCE_ISO_2533, VTX_REFERENCE_ISO_8778, VTX_REFERENCE_DIN_1343, VTX_REFERENCE_ISO_1217 };
    const int named = job_word(f, section, "flows read at", 0, names);
    state[0] = cooler->reference_pressure;
    state[1] = cooler->reference_temperature;
    state[2] = cooler->reference_humidity;
    if (named >= 0)
        vtx_reference_state(codes[named], &state[0], &state[1], &state[2]);
}

static void read_flow(struct job_file *f, const char *section, const char *key, const double state[3], double *mass_flow)
{
    char by_mass[JOB_TEXT_MAX];
    double flow = (double)NAN;
    snprintf(by_mass, sizeof by_mass, "%.*s mass flow", (int)strcspn(key, " "), key);
    if (job_has(f, section, by_mass) && job_has(f, section, key))
        job_complain(f, section, by_mass, "give the flow once, by volume or by mass");
    job_quantity(f, section, by_mass, VTX_DIMENSION_MASS_FLOW, 0, mass_flow);
    job_quantity(f, section, key, VTX_DIMENSION_VOLUME_FLOW, 0, &flow);
    if (isfinite(flow))
        vtx_mass_flow_from_standard(VTX_AIR_REAL, state[0], state[1], state[2], flow, mass_flow, NULL);
}

static void read_one(struct job_file *f, const char *section, int i, const double state[3], double *value)
{
    const char *key = readings_names[i];
    if (is_pressure(i))
        job_pressure(f, section, key, 0, value);
    else if (is_flow(i))
        read_flow(f, section, key, state, value);
    else
        job_quantity(f, section, key, VTX_DIMENSION_TEMPERATURE, 0, value);
    if (*value <= 0)
        job_complain(f, section, key, "must be above 0");
}

double instruments_uncertainty(const struct instruments *in, int i, double value)
{
    double by_class;
    if (is_flow(i))
        return in->uncertainty[i] * value;
    if (!is_pressure(i) && in->thermometer && !in->is_own[i]
        && vtx_thermometer_uncertainty(in->thermometer, value, &by_class, NULL) == VTX_OK)
        return by_class;
    return in->uncertainty[i];
}

int readings_read(struct job_file *f, const char *section, const vtx_cooler *cooler, const struct instruments *in, vtx_service_readings *r)
{
    double state[3];
    int count = 0;
    vtx_service_readings_init(r);
    read_meter_state(f, section, cooler, state);
    for (int i = 0; i < READINGS; i++) {
        read_one(f, section, i, state, &r->value[i]);
        if (isnan(r->value[i])) {
            r->uncertainty[i] = in->is_missing[i] ? (double)NAN : r->uncertainty[i];
            continue;
        }
        r->uncertainty[i] = instruments_uncertainty(in, i, r->value[i]);
        count++;
    }
    return count;
}
