/* Real moist air on its way through the tube. */
#include "real_feed.h"

vtx_status real_feed_at(double inlet_pressure, double inlet_temperature, double humidity_ratio, struct real_feed *feed)
{
    memset(feed, 0, sizeof *feed);
    if (inlet_temperature < moist_temperature_min(VTX_AIR_REAL, inlet_pressure))
        return VTX_OUT_OF_RANGE;
    moist_equilibrium(VTX_AIR_REAL, inlet_pressure, inlet_temperature, humidity_ratio, &feed->inlet);
    return VTX_OK;
}

/* Where the working gas ends up when its vapour condenses at constant entropy: vapour supersaturated S-fold gives L/T - R ln S.
 * Rough for much water; the search that starts here is bracketed. */
static double warmed_at_constant_entropy(const struct real_feed *f)
{
    const struct knot *gas = &f->isentropic;
    const double vapour_pressure = f->inlet.vapour_fraction * f->cold_pressure, specific = gas_constant / water_molar_mass;
    double temperature = gas->temperature;
    for (int i = 0; i < 4; i++) {
        const int32_t phase = stable_phase(temperature);
        const double saturated = smaller(pure_saturation_pressure(temperature, phase), vapour_pressure);
        const double condensed = f->inlet.humidity_ratio * (1 - saturated / vapour_pressure);
        const double given = latent_heat(phase) / temperature - specific * log(vapour_pressure / saturated);
        const double next = gas->temperature * exp(condensed * larger(given, 0) / gas->heat_capacity);
        temperature = smaller(i == 0 ? next : 0.5 * (temperature + next), f->inlet.temperature);
    }
    return temperature;
}

/* Expansion in equilibrium; half of Raoult's fraction is below saturation, so that little vapour needs no closer look. */
static vtx_status expand_in_equilibrium(struct real_feed *f, double *enthalpy)
{
    const struct moist_mixture *inlet = &f->inlet;
    const double gas = f->isentropic.temperature;
    struct moist_mixture m;
    struct knot k;
    vtx_status status;
    if (inlet->phase == PHASE_NONE &&
        2 * inlet->vapour_fraction * f->cold_pressure <= pure_saturation_pressure(gas, stable_phase(gas))) {
        status = gas_of_entropy(f->cold_pressure, inlet->humidity_ratio, inlet->entropy, gas, &k);
        f->isentropic_temperature = k.temperature;
        *enthalpy = k.enthalpy;
        return status;
    }
    status = moist_of_entropy(VTX_AIR_REAL, f->cold_pressure, inlet->total_water, inlet->entropy, warmed_at_constant_entropy(f), &m);
    f->isentropic_temperature = m.temperature;
    *enthalpy = m.enthalpy;
    return status;
}

/* Starts from the perfect gas. */
vtx_status real_feed_expand(double cold_pressure, struct real_feed *f)
{
    const struct moist_mixture *inlet = &f->inlet;
    const double w = inlet->humidity_ratio;
    struct knot gas = { inlet->temperature, inlet->enthalpy, inlet->entropy, inlet->heat_capacity };
    double equilibrium;
    f->cold_pressure = cold_pressure;
    f->isentropic = gas;
    f->isentropic_temperature = inlet->temperature;
    if (cold_pressure == inlet->pressure)
        return VTX_OK;
    if (inlet->total_water > 0)
        gas = working_gas_at(inlet->pressure, inlet->temperature, w);
    const double exponent = gas_constant * (1 / moist_air_molar_mass + w / water_molar_mass) / gas.heat_capacity;
    const double guess = gas.temperature * exp(exponent * log(cold_pressure / inlet->pressure));
    vtx_status status = working_gas_of_entropy(cold_pressure, w, gas.entropy, guess, &f->isentropic);
    if (status != VTX_OK)
        return status;
    f->work = larger(gas.enthalpy - f->isentropic.enthalpy, 0);
    f->isentropic_temperature = f->isentropic.temperature;
    f->isentropic.enthalpy = inlet->enthalpy - f->work;
    if (inlet->total_water == 0)
        return VTX_OK;
    status = expand_in_equilibrium(f, &equilibrium);
    f->work = smaller(f->work, larger(inlet->enthalpy - equilibrium, 0));
    return status;
}

static void heated_beyond(double step, struct moist_mixture *m)
{
    m->entropy += m->heat_capacity * log1p(step / m->temperature);
    m->temperature += step;
    m->enthalpy += m->heat_capacity * step;
    m->advisories |= VTX_ADVISORY_EXTRAPOLATED;
}

vtx_status real_stream_at(double pressure, double temperature, double total_water, struct moist_mixture *out)
{
    if (temperature < moist_temperature_min(VTX_AIR_REAL, pressure))
        return VTX_OUT_OF_RANGE;
    moist_equilibrium(VTX_AIR_REAL, pressure, smaller(temperature, MOIST_TEMPERATURE_MAX), total_water, out);
    if (temperature > MOIST_TEMPERATURE_MAX)
        heated_beyond(temperature - MOIST_TEMPERATURE_MAX, out);
    return VTX_OK;
}

vtx_status real_stream_of(double pressure, double total_water, double enthalpy, double start, struct moist_mixture *out)
{
    vtx_status status = moist_of_enthalpy(VTX_AIR_REAL, pressure, total_water, enthalpy, start, out);
    if (status == VTX_OUT_OF_RANGE && enthalpy > out->enthalpy) {
        moist_equilibrium(VTX_AIR_REAL, pressure, MOIST_TEMPERATURE_MAX, total_water, out);
        heated_beyond((enthalpy - out->enthalpy) / out->heat_capacity, out);
        status = VTX_OK;
    }
    return status;
}
