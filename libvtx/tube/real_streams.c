/* Separation of real moist air: enthalpies by the curve, temperatures by equilibrium. */
#include "real_streams.h"

#include "laws_kernel.h"
#include "real_feed.h"

/* One call's knowledge; enthalpies per kg dry air. */
struct separation {
    const vtx_tube *tube;
    struct real_feed feed;
    double total_water, cold_fraction;
    double water_fraction; /* mole fraction of all water, were it vapour */
    struct outlet { double pressure, saturation_temperature; /* of all water, roughly; 0 until it is needed */ } cold, hot;
    struct knot throttle; /* at the cold pressure */
    int throttle_condenses;
    double cold_ambient, hot_ambient, cold_remainder, hot_remainder;
};

static int is_dry(const struct separation *s) { return s->feed.inlet.phase == PHASE_NONE; }

/* Saturation of all water over the phase that forms there, to 0.1 K at 0.1 MPa and a few kelvin at 5 MPa. The enhancement factor of air,
 * ln f = 3.6e-8/Pa p near 0 degC and growing e-fold per 90 K colder, is that of the virial model; only starts and clear cases
 * rest on it. */
static double rough_saturation_temperature(double x, double pressure)
{
    const int32_t phase = x * pressure < triple_pressure ? PHASE_ICE : PHASE_LIQUID;
    const double pure = pure_saturation_temperature(x * pressure, phase);
    return pure_saturation_temperature(x * pressure * exp(-3.6e-8 * pressure * exp((triple_temperature - pure) / 90)), phase);
}

/* Half of Raoult's fraction is below saturation: what has less vapour needs no closer look. */
static int is_far_from_saturation(const struct separation *s, const struct outlet *o, double temperature)
{
    const double x = s->water_fraction, t = within(temperature, MOIST_TEMPERATURE_MIN, MOIST_TEMPERATURE_MAX);
    return x == 0 || 2 * x * o->pressure <= pure_saturation_pressure(t, stable_phase(t));
}

static void keep_gas(const struct separation *s, double pressure, const struct knot *k, struct moist_mixture *m)
{
    memset(m, 0, sizeof *m);
    m->pressure = pressure;
    m->temperature = k->temperature;
    m->total_water = m->humidity_ratio = s->total_water;
    m->enthalpy = k->enthalpy;
    m->entropy = k->entropy;
    m->heat_capacity = k->heat_capacity;
    m->advisories = moist_extrapolated(pressure, k->temperature);
}

/* Where supersaturated gas at `gas` ends up over a phase: cp (T - gas) = L w (1 - psat(T)/psat(Ts)), as the enhancement factor hardly
 * changes. Starts from the closed form of an exponential psat. */
static double warmed_over(const struct separation *s, double saturated, double gas, int32_t phase)
{
    const double lift = latent_heat(phase) * s->total_water / s->feed.isentropic.heat_capacity;
    const double reference = pure_saturation_pressure(saturated, stable_phase(saturated));
    double temperature = saturated - (saturated - gas) / (1 + 0.085 * lift);
    for (int i = 0; i < 4; i++) {
        const double left = pure_saturation_pressure(temperature, phase) / reference;
        const double slope = latent_heat(phase) * water_molar_mass / (gas_constant * square(temperature));
        temperature -= (temperature - gas - lift * (1 - left)) / (1 + lift * slope * left);
        temperature = within(temperature, gas, saturated);
    }
    return temperature;
}

static double warmed_by_condensing(const struct separation *s, double saturated, double gas)
{
    const double over_ice = warmed_over(s, saturated, gas, PHASE_ICE);
    if (saturated < triple_temperature || over_ice < triple_temperature)
        return smaller(over_ice, triple_temperature);
    return larger(warmed_over(s, saturated, gas, PHASE_LIQUID), triple_temperature);
}

/* Below, near or not surely above saturation, as far as the rough one tells. */
static int may_condense(const struct separation *s, struct outlet *o, double temperature)
{
    const double doubt = 0.3 + 1.5e-6 * o->pressure; /* K */
    if (is_far_from_saturation(s, o, temperature - doubt))
        return 0;
    if (o->saturation_temperature == 0)
        o->saturation_temperature = rough_saturation_temperature(s->water_fraction, o->pressure);
    return temperature < o->saturation_temperature + doubt;
}

static vtx_status equilibrium_stream(const struct separation *s, struct outlet *o, double enthalpy, double vapour, struct moist_mixture *m)
{
    const int condenses = may_condense(s, o, vapour) && vapour < o->saturation_temperature;
    return real_stream_of(o->pressure, s->total_water, enthalpy,
                          condenses ? warmed_by_condensing(s, o->saturation_temperature, vapour) : vapour, m);
}

/* start: a guess of the temperature if all water were vapour. What surely stays vapour is found as a gas. */
static vtx_status find_stream(const struct separation *s, struct outlet *o, double enthalpy, double start, struct moist_mixture *m)
{
    const double near_end = 5; /* K, of the media layer's range */
    const double guess = larger(start, MOIST_TEMPERATURE_MIN);
    struct knot k;
    if (!is_dry(s) || guess > MOIST_TEMPERATURE_MAX - near_end || may_condense(s, o, guess))
        return equilibrium_stream(s, o, enthalpy, guess, m);
    vtx_status status = gas_of_enthalpy(o->pressure, s->total_water, enthalpy, guess, &k);
    if (status != VTX_OK)
        return equilibrium_stream(s, o, enthalpy, guess, m);
    if (k.temperature < guess && may_condense(s, o, k.temperature))
        return equilibrium_stream(s, o, enthalpy, k.temperature, m);
    keep_gas(s, o->pressure, &k, m);
    return VTX_OK;
}

static struct knot knot_of(const struct moist_mixture *m)
{
    return (struct knot){ m->temperature, m->enthalpy, m->entropy, m->heat_capacity };
}

/* The feed, were it all vapour, at an enthalpy and the cold pressure: to some 0.1 K near the inlet's enthalpy. The Joule-Thomson drop
 * of dry air is 2.25 K/MPa at 293 K and falls with the square of temperature. */
static double vapour_temperature(const struct separation *s, double enthalpy)
{
    const struct moist_mixture *inlet = &s->feed.inlet;
    const double capacity = s->feed.isentropic.heat_capacity + 1860 * inlet->condensed;
    return inlet->temperature - (inlet->enthalpy - enthalpy + 2.45e6 * inlet->condensed) / capacity -
           2.25e-6 * square(293.15 / inlet->temperature) * (inlet->pressure - s->cold.pressure);
}

/* Behind a throttle to the cold pressure; of a dry feed also the upper end of its isobar. */
static vtx_status find_throttle(struct separation *s)
{
    struct moist_mixture m = s->feed.inlet;
    vtx_status status = VTX_OK;
    if (s->cold.pressure != m.pressure)
        status = find_stream(s, &s->cold, m.enthalpy, vapour_temperature(s, m.enthalpy), &m);
    s->throttle = knot_of(&m);
    s->throttle_condenses = m.phase != PHASE_NONE;
    return status;
}

static vtx_status find_ambient(struct separation *s)
{
    const vtx_tube *t = s->tube;
    struct moist_mixture m;
    vtx_status status = VTX_OK;
    s->cold_remainder = leak_remainder(t->cold_leak, s->cold_fraction);
    s->hot_remainder = leak_remainder(t->hot_leak, 1 - s->cold_fraction);
    if (t->cold_leak != 0) {
        status = real_stream_at(s->cold.pressure, t->ambient_temperature, s->total_water, &m);
        s->cold_ambient = m.enthalpy;
    }
    if (status == VTX_OK && t->hot_leak != 0) {
        status = real_stream_at(s->hot.pressure, t->ambient_temperature, s->total_water, &m);
        s->hot_ambient = m.enthalpy;
    }
    return status;
}

/* Both streams of one efficiency: enthalpies before and after the leak, then states. */
struct pair {
    double cold_heat, hot_heat; /* J/kg dry air of the stream, gained */
    struct moist_mixture cold, hot;
};

/* known: a pair found before, to start from, or null. */
static double guess_cold(const struct separation *s, double enthalpy, const struct pair *known)
{
    if (!is_dry(s) || s->throttle_condenses)
        return vapour_temperature(s, enthalpy);
    if (!known || known->cold.phase != PHASE_NONE)
        return between_knots(&s->feed.isentropic, &s->throttle, enthalpy);
    const struct knot middle = knot_of(&known->cold);
    return enthalpy < middle.enthalpy ? between_knots(&s->feed.isentropic, &middle, enthalpy) : between_knots(&middle, &s->throttle, enthalpy);
}

static double guess_hot(const struct separation *s, double enthalpy, const struct pair *known)
{
    const struct knot near = known ? knot_of(&known->hot) : s->throttle;
    const double throttled = s->feed.inlet.pressure - s->cold.pressure, gained = s->hot.pressure - s->cold.pressure;
    const double drop = throttled > 0 ? (s->feed.inlet.temperature - s->throttle.temperature) / throttled : 0;
    return beyond_knot(&near, enthalpy) + (known ? 0 : drop * gained);
}

static vtx_status cold_stream_at(struct separation *s, double efficiency, const struct pair *known, struct pair *p)
{
    const double cold = s->feed.inlet.enthalpy - efficiency * cold_shape(s->tube->coldest_fraction, s->cold_fraction) * s->feed.work;
    p->cold_heat = s->cold_remainder == 1 ? 0 : (s->cold_ambient - cold) * (1 - s->cold_remainder);
    return find_stream(s, &s->cold, cold + p->cold_heat, guess_cold(s, cold + p->cold_heat, known), &p->cold);
}

static vtx_status hot_stream_at(struct separation *s, double efficiency, const struct pair *known, struct pair *p)
{
    const double hot = s->feed.inlet.enthalpy + efficiency * hot_shape(s->tube->coldest_fraction, s->cold_fraction) * s->feed.work;
    p->hot_heat = s->hot_remainder == 1 ? 0 : (s->hot_ambient - hot) * (1 - s->hot_remainder);
    return find_stream(s, &s->hot, hot + p->hot_heat, guess_hot(s, hot + p->hot_heat, known), &p->hot);
}

static vtx_status separate_at(struct separation *s, double efficiency, const struct pair *known, struct pair *p)
{
    const vtx_status status = cold_stream_at(s, efficiency, known, p);
    return status == VTX_OK ? hot_stream_at(s, efficiency, known, p) : status;
}

static void report(const struct separation *s, const struct pair *typical, const struct pair *weak, const struct pair *strong,
                   vtx_streams *out)
{
    const struct moist_mixture *inlet = &s->feed.inlet;
    const double mu = s->cold_fraction, per_air = 1 / (1 + s->total_water);
    out->cold_temperature = typical->cold.temperature;
    out->hot_temperature = typical->hot.temperature;
    out->cold_temperature_low = smaller(strong->cold.temperature, typical->cold.temperature);
    out->cold_temperature_high = larger(weak->cold.temperature, typical->cold.temperature);
    out->hot_temperature_low = smaller(weak->hot.temperature, typical->hot.temperature);
    out->hot_temperature_high = larger(strong->hot.temperature, typical->hot.temperature);
    out->cold_fraction = mu;
    out->heat_gain = mu * typical->cold_heat * per_air;
    out->heat_loss = (1 - mu) * -typical->hot_heat * per_air;
    out->entropy_generation = (mu * (typical->cold.entropy - inlet->entropy) + (1 - mu) * (typical->hot.entropy - inlet->entropy)) * per_air
                              + (out->heat_loss - out->heat_gain) / s->tube->ambient_temperature;
    const double drop = inlet->temperature - out->isentropic_temperature;
    out->isentropic_efficiency = drop > 0 ? (inlet->temperature - out->cold_temperature) / drop : quiet_nan();
    out->joule_thomson_drop = inlet->temperature - out->throttle_temperature;
    out->condensed = typical->cold.condensed;
    out->condensed_low = smaller(weak->cold.condensed, typical->cold.condensed);
    out->condensed_high = larger(strong->cold.condensed, typical->cold.condensed);
    out->frozen_share = typical->cold.frozen_share;
    out->hot_condensed = typical->hot.condensed;
    out->hot_frozen_share = typical->hot.frozen_share;
    out->condensed_phase = typical->cold.phase;
    out->advisories |= inlet->advisories | typical->cold.advisories | typical->hot.advisories | weak->cold.advisories |
                       strong->cold.advisories | strong->hot.advisories | (drop > 0 ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE);
}

vtx_status separate_real(const vtx_tube *tube, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                         double cold_pressure, double hot_pressure, double cold_fraction, vtx_streams *out, double other_efficiency,
                         double *other_cold_temperature)
{
    struct separation s = { .tube = tube, .total_water = humidity_ratio,
                            .water_fraction = moist_vapour_fraction(VTX_AIR_REAL, humidity_ratio), .cold_fraction = cold_fraction,
                            .cold = { cold_pressure, 0 }, .hot = { hot_pressure, 0 } };
    struct pair typical, weak, strong;
    const double log_ratio = log_pressure_ratio(inlet_pressure, cold_pressure), gain = efficiency_gain(tube, log_ratio);
    vtx_status status = real_feed_at(inlet_pressure, inlet_temperature, humidity_ratio, &s.feed);
    if (status == VTX_OK)
        status = real_feed_expand(cold_pressure, &s.feed);
    if (status == VTX_OK)
        status = find_throttle(&s);
    if (status == VTX_OK)
        status = find_ambient(&s);
    if (status == VTX_OK)
        status = separate_at(&s, smaller(gain * tube->peak_efficiency, 1), NULL, &typical);
    if (status == VTX_OK)
        status = separate_at(&s, smaller(gain * tube->efficiency_low, 1), &typical, &weak);
    if (status == VTX_OK)
        status = separate_at(&s, smaller(gain * tube->efficiency_high, 1), &typical, &strong);
    if (status == VTX_OK && other_cold_temperature) {
        struct pair other;
        status = cold_stream_at(&s, smaller(gain * other_efficiency, 1), NULL, &other);
        *other_cold_temperature = status == VTX_OK ? other.cold.temperature : 0;
    }
    if (status != VTX_OK)
        return status;
    out->isentropic_temperature = s.feed.isentropic_temperature;
    out->throttle_temperature = s.throttle.temperature;
    out->advisories = curve_advisories(tube, log_ratio, cold_fraction) | throat_advisory(inlet_pressure, inlet_temperature, s.water_fraction, cold_pressure) |
                      (gain * tube->efficiency_high > 1 ? VTX_ADVISORY_SECOND_LAW_LIMITED : 0);
    report(&s, &typical, &weak, &strong, out);
    return VTX_OK;
}
