/* Humidity measures of moist air: from any of them to the mixture, and from a mixture to any of them. */
#include "moist_ideal.h"
#include "moist_real.h"

/* What a caller's own rounding may put above saturation and still be saturated. */
static const double excess_allowed = 1e-12;

/* kg vapour per m3 of gas. */
static double absolute_humidity(const struct moist_mixture *m) { return m->humidity_ratio / m->gas_volume; }

/* A mixture whose vapour is x and that carries nothing else; x may not exceed the limit over liquid, nor the range of the model. */
static vtx_status vapour_mixture(int32_t model, double pressure, double temperature, double x, double limit, struct moist_mixture *out)
{
    if (!(x >= 0) || x > limit * (1 + excess_allowed) || x > 1)
        return VTX_BAD_ARGUMENT;
    x = smaller(x, limit);
    const double ratio = x < 1 ? moist_humidity_ratio(model, x) : 2 * MOIST_WATER_MAX;
    if (ratio > MOIST_WATER_MAX)
        return VTX_OUT_OF_RANGE;
    if (model == VTX_AIR_IDEAL) {
        ideal_mixture(pressure, temperature, ratio, ratio, PHASE_NONE, out);
        return VTX_OK;
    }
    const struct real_temperature t = real_temperature(temperature);
    real_mixture(&t, pressure, ratio, x, PHASE_NONE, out);
    return VTX_OK;
}

vtx_status moist_fraction_of_saturation(int32_t model, double pressure, double at, int32_t phase, double *x)
{
    const double high = phase == PHASE_ICE ? triple_temperature : MOIST_TEMPERATURE_MAX;
    const double low = phase == PHASE_ICE ? moist_temperature_min(model, pressure) : SUPERCOOLED_TEMPERATURE_MIN;
    const vtx_status status = check_positive(at, low, high);
    if (status != VTX_OK)
        return status;
    *x = moist_saturation_fraction(model, pressure, at, phase);
    return require(*x < 1);
}

/* The gas's volume hardly depends on how much vapour there is: a fixed point on the mole fraction. */
static vtx_status fraction_of_absolute_humidity(int32_t model, double pressure, double temperature, double value, double limit, double *x)
{
    struct moist_mixture m;
    vtx_status status = check_amount(value, 1e3);
    if (status != VTX_OK)
        return status;
    if (model == VTX_AIR_IDEAL) {
        *x = value * ideal_air_gas_constant / ideal_mass_ratio * temperature / pressure;
        return VTX_OK;
    }
    const struct real_temperature t = real_temperature(temperature);
    const double most = smaller(limit, MOIST_WATER_MAX / (MOIST_WATER_MAX + water_molar_mass / moist_air_molar_mass));
    double fraction = value * t.rt / (water_molar_mass * pressure);
    for (int i = 0; i < 60; i++) {
        const double at = smaller(fraction, most);
        real_mixture(&t, pressure, 0, at, PHASE_NONE, &m);
        const double next = value * m.gas_volume * moist_air_molar_mass * (1 - at) / water_molar_mass;
        const double change = next - fraction;
        fraction = next;
        if (fabs(change) <= 1e-15 * next)
            break;
    }
    *x = fraction;
    return VTX_OK;
}

static vtx_status from_wet_bulb(int32_t model, double pressure, double temperature, double wet_bulb, double limit, struct moist_mixture *out)
{
    vtx_status status = check_positive(wet_bulb, moist_temperature_min(model, pressure) - 1, MOIST_TEMPERATURE_MAX);
    if (status != VTX_OK)
        return status;
    if (temperature >= triple_temperature && wet_bulb > temperature * (1 + excess_allowed))
        return VTX_BAD_ARGUMENT;
    if (moist_saturation_fraction(model, pressure, wet_bulb, stable_phase(wet_bulb)) >= 1)
        return VTX_BAD_ARGUMENT;
    const double most = limit < 1 ? smaller(1.01 * moist_humidity_ratio(model, limit), MOIST_WATER_MAX) : MOIST_WATER_MAX;
    const double ratio = moist_humidity_ratio_of_wet_bulb(model, pressure, temperature, wet_bulb, most);
    /* Below 150 K all the vapour that air can hold lies within the rounding of the wet bulb: 3e-9 K. */
    const double rounding = 1e-12;
    const double x = ratio < 0 && ratio > -rounding ? 0 : ratio < 0 ? -1 : moist_vapour_fraction(model, ratio);
    return vapour_mixture(model, pressure, temperature, x > limit && x < limit + rounding ? limit : x, limit, out);
}

vtx_status moist_from_humidity(int32_t model, double pressure, double temperature, int32_t property, double value,
                               struct moist_mixture *out)
{
    struct moist_limits limits;
    double x = 0;
    vtx_status status = VTX_OK;
    if (property == VTX_HUMIDITY_RATIO) {
        status = moist_check_water(value);
        if (status == VTX_OK)
            moist_equilibrium(model, pressure, temperature, value, out);
        return status;
    }
    moist_limits(model, pressure, temperature, &limits);
    if (property == VTX_WET_BULB)
        return from_wet_bulb(model, pressure, temperature, value, limits.liquid, out);
    if (property == VTX_RELATIVE_HUMIDITY)
        x = value * limits.liquid;
    else if (property == VTX_RELATIVE_HUMIDITY_ICE)
        x = value * limits.ice;
    else if (property == VTX_VAPOUR_FRACTION)
        x = value;
    else if (property == VTX_ABSOLUTE_HUMIDITY)
        status = fraction_of_absolute_humidity(model, pressure, temperature, value, limits.liquid, &x);
    else
        status = moist_fraction_of_saturation(model, pressure, value, property == VTX_DEW_POINT ? PHASE_LIQUID : PHASE_ICE, &x);
    return status == VTX_OK ? vapour_mixture(model, pressure, temperature, x, limits.liquid, out) : status;
}

static double dew_point(int32_t model, const struct moist_mixture *m, int32_t phase)
{
    if (m->phase == phase || m->phase == PHASE_BOTH)
        return m->temperature;
    return moist_dew_or_frost_point(model, m->pressure, m->vapour_fraction, phase);
}

double moist_property(int32_t model, const struct moist_mixture *air, int32_t property)
{
    struct moist_limits limits;
    int32_t advisories = 0;
    switch (property) {
    case VTX_HUMIDITY_RATIO: return air->humidity_ratio;
    case VTX_DEW_POINT: return dew_point(model, air, PHASE_LIQUID);
    case VTX_FROST_POINT: return dew_point(model, air, PHASE_ICE);
    case VTX_WET_BULB: return moist_wet_bulb(model, air, &advisories);
    case VTX_VAPOUR_FRACTION: return air->vapour_fraction;
    case VTX_ABSOLUTE_HUMIDITY: return absolute_humidity(air);
    case VTX_TEMPERATURE: return air->temperature;
    case VTX_ENTHALPY: return air->enthalpy;
    case VTX_ENTROPY: return air->entropy;
    case VTX_VOLUME: return air->volume;
    default: break;
    }
    moist_limits(model, air->pressure, air->temperature, &limits);
    return air->vapour_fraction / (property == VTX_RELATIVE_HUMIDITY ? limits.liquid : limits.ice);
}

void moist_state(int32_t model, const struct moist_mixture *air, vtx_moist_air *state)
{
    struct moist_limits limits;
    moist_limits(model, air->pressure, air->temperature, &limits);
    memset(state, 0, sizeof *state);
    state->pressure = air->pressure;
    state->temperature = air->temperature;
    state->humidity_ratio = air->humidity_ratio;
    state->vapour_fraction = air->vapour_fraction;
    state->relative_humidity = air->vapour_fraction / limits.liquid;
    state->relative_humidity_ice = air->vapour_fraction / limits.ice;
    state->dew_point = dew_point(model, air, PHASE_LIQUID);
    state->frost_point = dew_point(model, air, PHASE_ICE);
    state->advisories = air->advisories | limits.advisories;
    state->wet_bulb = moist_wet_bulb(model, air, &state->advisories);
    state->enthalpy = air->enthalpy;
    state->entropy = air->entropy;
    state->volume = air->volume;
    state->density = (1 + air->total_water) / air->volume;
    state->absolute_humidity = absolute_humidity(air);
    state->condensed = air->condensed;
    state->frozen_share = air->frozen_share;
    state->heat_capacity = air->gas_heat_capacity;
    state->sound_speed = air->sound_speed;
    state->compressibility = air->compressibility;
    state->enhancement_factor = limits.enhancement_factor;
    state->condensed_phase = air->phase;
    if (air->temperature < triple_temperature && air->vapour_fraction > limits.ice * (1 + excess_allowed))
        state->advisories |= VTX_ADVISORY_SUPERSATURATED_OVER_ICE;
    if (!is_finite(state->dew_point) || !is_finite(state->frost_point) || !is_finite(state->wet_bulb))
        state->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}
