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

/* Starts from the perfect gas with the heat capacity of dry air half way, 0.286 R/cp of the low-pressure limit. */
vtx_status real_feed_expand(double cold_pressure, struct real_feed *feed)
{
    const struct moist_mixture *inlet = &feed->inlet;
    struct knot gas = { inlet->temperature, inlet->enthalpy, inlet->entropy, inlet->heat_capacity };
    feed->cold_pressure = cold_pressure;
    if (inlet->phase != PHASE_NONE)
        gas = gas_at(inlet->pressure, inlet->temperature, inlet->humidity_ratio);
    feed->isentropic = gas;
    if (cold_pressure == inlet->pressure)
        return VTX_OK;
    const double exponent = gas_constant / moist_air_molar_mass / gas.heat_capacity;
    const double guess = gas.temperature * exp(exponent * log(cold_pressure / inlet->pressure));
    vtx_status status = gas_of_entropy(cold_pressure, inlet->humidity_ratio, gas.entropy, guess, &feed->isentropic);
    feed->work = larger(gas.enthalpy - feed->isentropic.enthalpy, 0);
    return status;
}

static void heated_beyond(double step, struct moist_mixture *m)
{
    m->temperature += step;
    m->enthalpy += m->heat_capacity * step;
    m->entropy += m->heat_capacity * log1p(step / (m->temperature - step));
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
