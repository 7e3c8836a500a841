/* The equilibrium of moist air in either model. */
#include "moist_ideal.h"
#include "moist_real.h"

static double mass_ratio(int32_t model)
{
    return model == VTX_AIR_IDEAL ? ideal_mass_ratio : water_molar_mass / moist_air_molar_mass;
}

double moist_humidity_ratio(int32_t model, double vapour_fraction)
{
    return mass_ratio(model) * vapour_fraction / (1 - vapour_fraction);
}

double moist_vapour_fraction(int32_t model, double humidity_ratio) { return humidity_ratio / (mass_ratio(model) + humidity_ratio); }

double moist_saturation_fraction(int32_t model, double pressure, double temperature, int32_t phase)
{
    if (model == VTX_AIR_IDEAL)
        return smaller(1, pure_saturation_pressure(temperature, phase) / pressure);
    const struct real_temperature t = plain_temperature(temperature);
    return real_saturation_fraction(&t, pressure, phase);
}

double moist_saturation_temperature(int32_t model, double pressure, double vapour_fraction, int32_t phase)
{
    if (model == VTX_AIR_IDEAL)
        return pure_saturation_temperature(vapour_fraction * pressure, phase);
    return real_saturation_temperature(pressure, vapour_fraction, phase);
}

/* Above the triple point there is no ice to search for, far below 233.15 K no liquid: no enhancement factor leaves 0.8..3. */
static int is_far_beyond(double partial_pressure, int32_t phase)
{
    return phase == PHASE_ICE ? partial_pressure > 3 * triple_pressure : partial_pressure < 0.8 * SUPERCOOLED_PRESSURE_MIN;
}

double moist_dew_or_frost_point(int32_t model, double pressure, double vapour_fraction, int32_t phase)
{
    const double low = phase == PHASE_ICE ? moist_temperature_min(model, pressure) : SUPERCOOLED_TEMPERATURE_MIN;
    const double high = phase == PHASE_ICE ? triple_temperature : MOIST_TEMPERATURE_MAX;
    /* What rounding may add at an end of the range. */
    const double rounding = 1e-9;
    if (vapour_fraction <= 0 || is_far_beyond(vapour_fraction * pressure, phase))
        return quiet_nan();
    const double temperature = moist_saturation_temperature(model, pressure, vapour_fraction, phase);
    if (temperature < low - rounding || temperature > high + rounding)
        return quiet_nan();
    return within(temperature, low, high);
}

double moist_condensate_enthalpy(int32_t model, double pressure, double temperature, int32_t phase)
{
    if (model == VTX_AIR_IDEAL)
        return ideal_condensate_enthalpy(temperature - ice_point, phase);
    const struct real_temperature t = real_temperature(temperature);
    return real_condensate(&t, pressure, phase).enthalpy / water_molar_mass;
}

static void ideal_equilibrium(double pressure, double temperature, double total_water, int32_t phase, struct moist_mixture *out)
{
    const double saturated = pure_saturation_pressure(temperature, phase);
    /* Equation 20 solved for the total pressure below which all of this water can be vapour. */
    if (total_water * (pressure - saturated) <= ideal_mass_ratio * saturated * (1 + humidity_rounding))
        ideal_mixture(pressure, temperature, total_water, total_water, PHASE_NONE, out);
    else
        ideal_mixture(pressure, temperature, total_water, ideal_mass_ratio * saturated / (pressure - saturated), phase, out);
}

/* Half of Raoult's fraction is below saturation wherever the model is used, so that dry air is spared the search. */
static void real_equilibrium(double pressure, double temperature, double total_water, int32_t phase, struct moist_mixture *out)
{
    const struct real_temperature t = total_water == 0 ? dry_temperature(temperature) : real_temperature(temperature);
    const double x = moist_vapour_fraction(VTX_AIR_REAL, total_water);
    if (2 * x * pressure > pure_saturation_pressure(temperature, phase)) {
        const double saturated = real_saturation_fraction(&t, pressure, phase);
        if (x > saturated * (1 + humidity_rounding)) {
            real_mixture(&t, pressure, total_water, saturated, phase, out);
            return;
        }
    }
    real_mixture(&t, pressure, total_water, x, PHASE_NONE, out);
}

void moist_equilibrium_over(int32_t model, double pressure, double temperature, double total_water, int32_t phase,
                            struct moist_mixture *out)
{
    (model == VTX_AIR_IDEAL ? ideal_equilibrium : real_equilibrium)(pressure, temperature, total_water, phase, out);
}

void moist_equilibrium(int32_t model, double pressure, double temperature, double total_water, struct moist_mixture *out)
{
    moist_equilibrium_over(model, pressure, temperature, total_water, stable_phase(temperature), out);
}

void moist_vapour(int32_t model, double pressure, double temperature, double humidity_ratio, struct moist_mixture *out)
{
    if (model == VTX_AIR_IDEAL) {
        ideal_mixture(pressure, temperature, humidity_ratio, humidity_ratio, PHASE_NONE, out);
        return;
    }
    const struct real_temperature t = humidity_ratio == 0 ? dry_temperature(temperature) : real_temperature(temperature);
    real_mixture(&t, pressure, humidity_ratio, moist_vapour_fraction(model, humidity_ratio), PHASE_NONE, out);
}

static double between(double from, double to, double share) { return from + share * (to - from); }

void moist_between(const struct moist_mixture *liquid, const struct moist_mixture *ice, double share, struct moist_mixture *out)
{
    struct moist_mixture m = *liquid;
    m.humidity_ratio = between(liquid->humidity_ratio, ice->humidity_ratio, share);
    m.vapour_fraction = between(liquid->vapour_fraction, ice->vapour_fraction, share);
    m.condensed = between(liquid->condensed, ice->condensed, share);
    m.frozen_share = share;
    m.enthalpy = between(liquid->enthalpy, ice->enthalpy, share);
    m.entropy = between(liquid->entropy, ice->entropy, share);
    m.volume = between(liquid->volume, ice->volume, share);
    m.heat_capacity = between(liquid->heat_capacity, ice->heat_capacity, share);
    m.phase = share <= 0 ? PHASE_LIQUID : share >= 1 ? PHASE_ICE : PHASE_BOTH;
    m.advisories |= ice->advisories;
    *out = m;
}
