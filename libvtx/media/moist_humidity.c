/* Humidity measures of moist air: from any of them to the vapour, and from the vapour to any of them. */
#include "moist_place.h"

/* What a caller's own rounding may put above saturation and still be saturated. */
static const double excess_allowed = 1e-12;

double reference_fraction(struct moist_place *place, int32_t phase)
{
    double *known = phase == PHASE_ICE ? &place->over_ice : &place->over_liquid;
    if (*known == 0) {
        const double ideal = pure_saturation_pressure(place->at.temperature, phase) / place->pressure;
        *known = place->model == VTX_AIR_IDEAL || ideal >= 1 ? ideal : real_saturation_fraction(&place->at, place->pressure, phase);
    }
    return *known;
}

/* Vapour may not exceed saturation over liquid. Half of Raoult's fraction is below that wherever the model is used, so that dry air
 * is spared the search. */
static vtx_status limit_to_liquid(struct moist_place *place, double *x)
{
    if (!(*x >= 0) || *x > 1)
        return VTX_BAD_ARGUMENT;
    if (2 * *x * place->pressure < pure_saturation_pressure(place->at.temperature, PHASE_LIQUID))
        return VTX_OK;
    const double limit = reference_fraction(place, PHASE_LIQUID);
    if (*x > limit * (1 + excess_allowed))
        return VTX_BAD_ARGUMENT;
    *x = smaller(*x, limit);
    return VTX_OK;
}

static vtx_status vapour_of_relative_humidity(struct moist_place *place, int32_t phase, double value, double *x)
{
    const double reference = reference_fraction(place, phase);
    *x = value * reference;
    if (!(*x >= 0) || *x > 1 || (phase == PHASE_LIQUID && value > 1 + excess_allowed))
        return VTX_BAD_ARGUMENT;
    if (phase == PHASE_ICE && value > 1)
        return limit_to_liquid(place, x);
    *x = value > 1 ? reference : *x;
    return VTX_OK;
}

vtx_status moist_fraction_of_saturation(int32_t model, double pressure, double point, int32_t phase, double *vapour_fraction)
{
    const double high = phase == PHASE_ICE ? triple_temperature : MOIST_TEMPERATURE_MAX;
    const double low = phase == PHASE_ICE ? moist_temperature_min(model, pressure) : SUPERCOOLED_TEMPERATURE_MIN;
    const vtx_status status = check_positive(point, low, high);
    if (status != VTX_OK)
        return status;
    *vapour_fraction = moist_saturation_fraction(model, pressure, point, phase);
    return require(*vapour_fraction < 1);
}

/* A dew point may not lie above the air's temperature; a frost point may, as far as supercooled liquid holds its vapour back. */
static vtx_status vapour_of_point(struct moist_place *place, int32_t phase, double value, double *x)
{
    const double temperature = place->at.temperature;
    const vtx_status status = moist_fraction_of_saturation(place->model, place->pressure, value, phase, x);
    if (status != VTX_OK || value <= temperature)
        return status;
    if (phase == PHASE_LIQUID && value > temperature * (1 + excess_allowed))
        return VTX_BAD_ARGUMENT;
    return limit_to_liquid(place, x);
}

/* The gas's volume hardly depends on how much vapour there is: a fixed point on the mole fraction, short of more than can be. */
static vtx_status vapour_of_absolute_humidity(struct moist_place *place, double value, double *x)
{
    const double temperature = place->at.temperature, pressure = place->pressure;
    const vtx_status status = check_amount(value, 1e3);
    if (status != VTX_OK)
        return status;
    if (place->model == VTX_AIR_IDEAL) {
        *x = value * ideal_air_gas_constant / ideal_mass_ratio * temperature / pressure;
        return limit_to_liquid(place, x);
    }
    const double most = smaller(reference_fraction(place, PHASE_LIQUID), 1);
    double fraction = value * place->at.rt / (water_molar_mass * pressure);
    for (int i = 0; i < 60; i++) {
        const double next = value / (water_molar_mass * real_density(&place->at, pressure, smaller(fraction, most)));
        const double change = next - fraction;
        fraction = next;
        if (fabs(change) <= 1e-15 * next)
            break;
    }
    *x = fraction;
    return limit_to_liquid(place, x);
}

static vtx_status vapour_of_wet_bulb(struct moist_place *place, double wet_bulb, double *x)
{
    /* Below 150 K all the vapour that air can hold lies within the rounding of the wet bulb: 3e-9 K. */
    const double rounding = 1e-12;
    const double temperature = place->at.temperature;
    const vtx_status status = check_positive(wet_bulb, moist_temperature_min(place->model, place->pressure) - 1, MOIST_TEMPERATURE_MAX);
    if (status != VTX_OK)
        return status;
    if (temperature >= triple_temperature && wet_bulb > temperature * (1 + excess_allowed))
        return VTX_BAD_ARGUMENT;
    if (pure_saturation_pressure(wet_bulb, stable_phase(wet_bulb)) >= place->pressure)
        return VTX_BAD_ARGUMENT;
    const double limit = reference_fraction(place, PHASE_LIQUID);
    const double most = limit < 1 ? smaller(1.01 * moist_humidity_ratio(place->model, limit), MOIST_WATER_MAX) : MOIST_WATER_MAX;
    const double ratio = humidity_ratio_of_wet_bulb(place, wet_bulb, most);
    if (ratio < -rounding)
        return VTX_BAD_ARGUMENT;
    *x = moist_vapour_fraction(place->model, larger(ratio, 0));
    if (*x > limit + rounding)
        return VTX_BAD_ARGUMENT;
    *x = smaller(*x, limit);
    return VTX_OK;
}

static vtx_status vapour_of_total_water(struct moist_place *place, double total, double *x, int *condenses)
{
    const vtx_status status = moist_check_water(total);
    const int32_t phase = stable_phase(place->at.temperature);
    if (status != VTX_OK)
        return status;
    *x = moist_vapour_fraction(place->model, total);
    if (2 * *x * place->pressure > pure_saturation_pressure(place->at.temperature, phase)) {
        const double reference = reference_fraction(place, phase);
        *condenses = *x > reference * (1 + humidity_rounding);
        *x = *condenses ? reference : *x;
    }
    return VTX_OK;
}

vtx_status vapour_of_humidity(struct moist_place *place, int32_t property, double value, double *x, int *condenses)
{
    vtx_status status;
    *condenses = 0;
    switch (property) {
    case VTX_HUMIDITY_RATIO: return vapour_of_total_water(place, value, x, condenses);
    case VTX_RELATIVE_HUMIDITY: status = vapour_of_relative_humidity(place, PHASE_LIQUID, value, x); break;
    case VTX_RELATIVE_HUMIDITY_ICE:
        status = vapour_of_relative_humidity(place, stable_phase(place->at.temperature), value, x);
        break;
    case VTX_DEW_POINT: status = vapour_of_point(place, PHASE_LIQUID, value, x); break;
    case VTX_FROST_POINT: status = vapour_of_point(place, PHASE_ICE, value, x); break;
    case VTX_WET_BULB: status = vapour_of_wet_bulb(place, value, x); break;
    case VTX_VAPOUR_FRACTION:
        *x = value;
        status = limit_to_liquid(place, x);
        break;
    default: status = vapour_of_absolute_humidity(place, value, x); break;
    }
    if (status == VTX_OK && *x > 0.9 && *x > moist_vapour_fraction(place->model, MOIST_WATER_MAX))
        return VTX_OUT_OF_RANGE;
    return status;
}

void vapour_mixture(struct moist_place *place, double x, struct moist_mixture *out)
{
    const double ratio = moist_humidity_ratio(place->model, x);
    if (place->model == VTX_AIR_IDEAL)
        ideal_mixture(place->pressure, place->at.temperature, ratio, ratio, PHASE_NONE, out);
    else
        real_mixture(&place->at, place->pressure, ratio, x, PHASE_NONE, out);
}

static vtx_status mixture_of_humidity(struct moist_place *place, int32_t property, double value, struct moist_mixture *out)
{
    int condenses;
    double x;
    const vtx_status status = vapour_of_humidity(place, property, value, &x, &condenses);
    if (status != VTX_OK)
        return status;
    if (property == VTX_HUMIDITY_RATIO)
        moist_equilibrium(place->model, place->pressure, place->at.temperature, value, out);
    else
        vapour_mixture(place, x, out);
    return VTX_OK;
}

vtx_status moist_from_humidity(int32_t model, double pressure, double temperature, int32_t property, double value,
                               struct moist_mixture *out)
{
    struct moist_place place;
    put_moist_place(&place, model, pressure, temperature);
    return mixture_of_humidity(&place, property, value, out);
}

/* Of a gas that is saturated because it carries condensate the points are its temperature. */
static double dew_point(struct moist_place *place, double x, int32_t phase, int32_t condensed)
{
    if (condensed == phase || condensed == PHASE_BOTH)
        return place->at.temperature;
    return moist_dew_or_frost_point(place->model, place->pressure, x, phase);
}

/* One humidity measure of a gas with the fraction x of vapour, which carries the condensed phase or none. */
static double humidity_measure(struct moist_place *place, double x, int32_t condensed, int32_t property)
{
    const int32_t stable = stable_phase(place->at.temperature);
    int32_t advisories = 0;
    switch (property) {
    case VTX_HUMIDITY_RATIO: return moist_humidity_ratio(place->model, x);
    case VTX_RELATIVE_HUMIDITY: return x / reference_fraction(place, PHASE_LIQUID);
    case VTX_RELATIVE_HUMIDITY_ICE: return x / reference_fraction(place, stable);
    case VTX_DEW_POINT: return dew_point(place, x, PHASE_LIQUID, condensed);
    case VTX_FROST_POINT: return dew_point(place, x, PHASE_ICE, condensed);
    case VTX_WET_BULB: return condensed != PHASE_NONE ? place->at.temperature : wet_bulb_of_vapour(place, x, &advisories);
    case VTX_VAPOUR_FRACTION: return x;
    default: break;
    }
    if (place->model == VTX_AIR_IDEAL)
        return x * place->pressure * ideal_mass_ratio / (ideal_air_gas_constant * place->at.temperature);
    return x * water_molar_mass * real_density(&place->at, place->pressure, x);
}

vtx_status moist_convert_humidity(int32_t model, double pressure, double temperature, int32_t property, double value, int32_t wanted,
                                  double *result)
{
    struct moist_place place;
    int condenses;
    double x;
    put_measured_place(&place, model, pressure, temperature, property == VTX_WET_BULB || wanted == VTX_WET_BULB);
    const vtx_status status = vapour_of_humidity(&place, property, value, &x, &condenses);
    if (status != VTX_OK)
        return status;
    *result = humidity_measure(&place, x, condenses ? stable_phase(temperature) : PHASE_NONE, wanted);
    return is_finite(*result) ? VTX_OK : VTX_OUT_OF_RANGE;
}

double moist_property(int32_t model, const struct moist_mixture *air, int32_t property)
{
    switch (property) {
    case VTX_HUMIDITY_RATIO: return air->humidity_ratio;
    case VTX_VAPOUR_FRACTION: return air->vapour_fraction;
    case VTX_TEMPERATURE: return air->temperature;
    case VTX_ENTHALPY: return air->enthalpy;
    case VTX_ENTROPY: return air->entropy;
    case VTX_VOLUME: return air->volume;
    default: break;
    }
    struct moist_place place;
    put_measured_place(&place, model, air->pressure, air->temperature, property == VTX_WET_BULB);
    return humidity_measure(&place, air->vapour_fraction, air->phase, property);
}

static void state_at(struct moist_place *place, const struct moist_mixture *air, vtx_moist_air *state)
{
    const int32_t model = place->model;
    const int32_t stable = stable_phase(air->temperature);
    const double x = air->vapour_fraction, pure = pure_saturation_pressure(air->temperature, stable);
    const double over_liquid = reference_fraction(place, PHASE_LIQUID);
    const double over_stable = stable == PHASE_ICE ? reference_fraction(place, PHASE_ICE) : over_liquid;
    const int limited = model == VTX_AIR_REAL && pure >= air->pressure;
    memset(state, 0, sizeof *state);
    state->pressure = air->pressure;
    state->temperature = air->temperature;
    state->humidity_ratio = air->humidity_ratio;
    state->vapour_fraction = x;
    state->relative_humidity = x / over_liquid;
    state->relative_humidity_ice = x / over_stable;
    state->dew_point = dew_point(place, x, PHASE_LIQUID, air->phase);
    state->frost_point = dew_point(place, x, PHASE_ICE, air->phase);
    state->advisories = air->advisories | (limited ? VTX_ADVISORY_ENHANCEMENT_LIMITED : 0);
    state->wet_bulb = air->phase != PHASE_NONE ? air->temperature : wet_bulb_of_vapour(place, x, &state->advisories);
    state->enthalpy = air->enthalpy;
    state->entropy = air->entropy;
    state->volume = air->volume;
    state->density = (1 + air->total_water) / air->volume;
    state->absolute_humidity = air->humidity_ratio / air->gas_volume;
    state->condensed = air->condensed;
    state->frozen_share = air->frozen_share;
    state->heat_capacity = air->gas_heat_capacity;
    state->sound_speed = air->sound_speed;
    state->compressibility = air->compressibility;
    state->enhancement_factor = model == VTX_AIR_IDEAL || limited ? 1 : over_stable * air->pressure / pure;
    state->condensed_phase = air->phase;
    if (stable == PHASE_ICE && x > over_stable * (1 + excess_allowed))
        state->advisories |= VTX_ADVISORY_SUPERSATURATED_OVER_ICE;
    if (!is_finite(state->dew_point) || !is_finite(state->frost_point) || !is_finite(state->wet_bulb))
        state->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

void moist_state(int32_t model, const struct moist_mixture *air, vtx_moist_air *state)
{
    struct moist_place place;
    put_moist_place(&place, model, air->pressure, air->temperature);
    state_at(&place, air, state);
}

vtx_status moist_state_of_humidity(int32_t model, double pressure, double temperature, int32_t property, double value,
                                   vtx_moist_air *state)
{
    struct moist_place place;
    struct moist_mixture air;
    put_moist_place(&place, model, pressure, temperature);
    const vtx_status status = mixture_of_humidity(&place, property, value, &air);
    if (status == VTX_OK)
        state_at(&place, &air, state);
    return status;
}
