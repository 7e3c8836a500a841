/* Moist air of a given enthalpy or entropy. */
#include "process_kernel.h"

/* The wish, and how the search reads it off a mixture. */
struct balance {
    int32_t model;
    double pressure, total_water, wanted, tolerance;
    int entropy; /* else enthalpy */
};

static inline double excess(const struct balance *b, const struct moist_mixture *m)
{
    return (b->entropy ? m->entropy : m->enthalpy) - b->wanted;
}

/* J/(kg K): how enthalpy grows with temperature while vapour and condensate keep up their equilibrium. The latent heat is that of
 * water at its own saturation, within 2 % of the mixture's: the search corrects it from its own steps. */
static double equilibrium_heat_capacity(const struct moist_mixture *m)
{
    const double latent = m->phase == PHASE_ICE ? 2.834e6 : 2.501e6 - 2370 * (m->temperature - triple_temperature);
    const double log_slope = latent * water_molar_mass / (gas_constant * square(m->temperature));
    if (m->phase == PHASE_NONE)
        return m->heat_capacity;
    return m->heat_capacity + latent * m->humidity_ratio / (1 - m->vapour_fraction) * log_slope;
}

static inline double slope(const struct balance *b, const struct moist_mixture *m)
{
    const double capacity = equilibrium_heat_capacity(m);
    return b->entropy ? capacity / m->temperature : capacity;
}

/* Between low and high, whose excess has opposite signs once they have been visited. */
struct search {
    double low, high;
    int low_known, high_known, triple_point_known;
    double temperature, excess, slope; /* of the last visit in the present phase; slope 0 before it */
    int32_t phase;
};

/* Newton's step with the slope scaled to the last secant and bent by its change: where two visits lie in one phase the error
 * left is of the fourth order in their distance. */
static double next_temperature(const struct search *s, const struct moist_mixture *m, double e, double c)
{
    const double back = s->temperature - m->temperature;
    double step;
    if (s->slope > 0 && s->phase == m->phase && back != 0) {
        const double scale = within((s->excess - e) / back / (0.5 * (c + s->slope)), 0.5, 2);
        const double bend = (s->slope - c) / back;
        step = -e / (c * scale);
        step /= within(1 + 0.5 * bend / c * step, 0.5, 2);
    } else {
        step = -e / c;
    }
    return m->temperature + step;
}

/* Liquid and ice meet at 273.16 K with a gap between their values where water is condensed. Returns 1 when the wish lies in it. */
static int lies_at_triple_point(const struct balance *b, struct search *s, struct moist_mixture *out)
{
    struct moist_mixture ice;
    s->triple_point_known = 1;
    moist_equilibrium_over(b->model, b->pressure, triple_temperature, b->total_water, PHASE_LIQUID, out);
    const double over_liquid = excess(b, out);
    if (over_liquid < 0) {
        s->low = triple_temperature;
        s->low_known = 1;
        return 0;
    }
    moist_equilibrium_over(b->model, b->pressure, triple_temperature, b->total_water, PHASE_ICE, &ice);
    const double over_ice = excess(b, &ice);
    if (over_ice > 0) {
        s->high = triple_temperature;
        s->high_known = 1;
        return 0;
    }
    if (over_liquid > over_ice)
        moist_between(out, &ice, over_liquid / (over_liquid - over_ice), out);
    return 1;
}

/* Where too little water is present to condense at 273.16 K at all, the gap does not exist. */
static int has_triple_gap(const struct balance *b)
{
    return b->total_water * b->pressure > 0.6 * triple_pressure;
}

static vtx_status find(const struct balance *b, double start, struct moist_mixture *out)
{
    struct search s = { moist_temperature_min(b->model, b->pressure), MOIST_TEMPERATURE_MAX, 0, 0, 0, 0, 0, 0, 0 };
    double temperature = within(start, s.low, s.high);
    s.triple_point_known = !has_triple_gap(b);
    for (int i = 0; i < 80; i++) {
        moist_equilibrium(b->model, b->pressure, temperature, b->total_water, out);
        const double e = excess(b, out), c = slope(b, out);
        if (fabs(e) <= b->tolerance)
            return VTX_OK;
        if ((e > 0 && temperature <= s.low) || (e < 0 && temperature >= s.high))
            return VTX_OUT_OF_RANGE;
        const int stalled = s.low_known && s.high_known && s.slope > 0 && fabs(e) > 0.5 * fabs(s.excess);
        double next = next_temperature(&s, out, e, c);
        if (e > 0) {
            s.high = temperature;
            s.high_known = 1;
        } else {
            s.low = temperature;
            s.low_known = 1;
        }
        s.temperature = temperature;
        s.excess = e;
        s.slope = c;
        s.phase = out->phase;
        if (stalled || (next <= s.low && s.low_known) || (next >= s.high && s.high_known))
            next = 0.5 * (s.low + s.high);
        if (!s.triple_point_known && (next < triple_temperature) != (temperature < triple_temperature)
            && lies_at_triple_point(b, &s, out))
            return VTX_OK;
        temperature = within(next, s.low, s.high);
    }
    return VTX_NOT_CONVERGED;
}

vtx_status moist_of_enthalpy(int32_t model, double pressure, double total_water, double enthalpy, double start, struct moist_mixture *out)
{
    const struct balance b = { model, pressure, total_water, enthalpy, ENTHALPY_TOLERANCE, 0 };
    return find(&b, start, out);
}

vtx_status moist_of_entropy(int32_t model, double pressure, double total_water, double entropy, double start, struct moist_mixture *out)
{
    const struct balance b = { model, pressure, total_water, entropy, ENTROPY_TOLERANCE, 1 };
    return find(&b, start, out);
}

/* Starts from the perfect gas. */
vtx_status moist_expand(int32_t model, const struct moist_mixture *inlet, double outlet_pressure, struct moist_mixture *out)
{
    const double moles = (1 / moist_air_molar_mass + inlet->humidity_ratio / water_molar_mass);
    const double exponent = gas_constant * moles / equilibrium_heat_capacity(inlet);
    const double start = inlet->temperature * exp(exponent * log(outlet_pressure / inlet->pressure));
    return moist_of_entropy(model, outlet_pressure, inlet->total_water, inlet->entropy, start, out);
}

/* Starts from the Joule-Thomson drop of dry air, 2.3 K/MPa at 293 K and falling with the square of temperature. */
vtx_status moist_throttle(int32_t model, const struct moist_mixture *inlet, double outlet_pressure, struct moist_mixture *out)
{
    const double coefficient = model == VTX_AIR_REAL ? 2.3e-6 * square(293.15 / inlet->temperature) : 0;
    const double start = inlet->temperature - coefficient * (inlet->pressure - outlet_pressure);
    return moist_of_enthalpy(model, outlet_pressure, inlet->total_water, inlet->enthalpy, start, out);
}
