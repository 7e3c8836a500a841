/* Moist air as a mixture of ideal gases. */
#include "moist_ideal.h"

/* J/(kg K) of vapour at its own pressure. The zero is liquid water at the triple point: evaporation there by the model's own
 * enthalpies. */
static double vapour_entropy(double vapour_pressure, double temperature)
{
    const double celsius = triple_temperature - ice_point;
    const double evaporation = ideal_vapour_enthalpy(celsius) - ideal_condensate_enthalpy(celsius, PHASE_LIQUID);
    return evaporation / triple_temperature + ideal_vapour_heat_capacity * log(temperature / triple_temperature)
           - ideal_air_gas_constant / ideal_mass_ratio * log(vapour_pressure / triple_pressure);
}

/* The entropy of the condensate is the one that puts it in equilibrium with its vapour at saturation. */
static void add_condensate(double temperature, double condensed, int32_t phase, struct moist_mixture *out)
{
    const double celsius = temperature - ice_point;
    const double enthalpy = ideal_condensate_enthalpy(celsius, phase);
    const double evaporation = ideal_vapour_enthalpy(celsius) - enthalpy;
    const double saturated = vapour_entropy(pure_saturation_pressure(temperature, phase), temperature);
    out->condensed = condensed;
    out->frozen_share = phase == PHASE_ICE;
    out->enthalpy += condensed * enthalpy;
    out->entropy += condensed * (saturated - evaporation / temperature);
    out->volume += condensed * (phase == PHASE_ICE ? ideal_ice_volume : ideal_liquid_volume);
    out->heat_capacity += condensed * (phase == PHASE_ICE ? ideal_ice_heat_capacity : ideal_liquid_heat_capacity);
    out->advisories |= phase == PHASE_ICE ? VTX_ADVISORY_FREEZING : VTX_ADVISORY_CONDENSING;
}

void ideal_mixture(double pressure, double temperature, double total_water, double humidity_ratio, int32_t phase,
                   struct moist_mixture *out)
{
    const double w = humidity_ratio, celsius = temperature - ice_point;
    const double x = w / (ideal_mass_ratio + w);
    const double gas_constant_of_mixture = ideal_air_gas_constant * (1 + w / ideal_mass_ratio);
    const double heat_capacity = ideal_air_heat_capacity + w * ideal_vapour_heat_capacity;
    memset(out, 0, sizeof *out);
    out->pressure = pressure;
    out->temperature = temperature;
    out->total_water = total_water;
    out->humidity_ratio = w;
    out->vapour_fraction = x;
    out->enthalpy = ideal_air_heat_capacity * celsius + w * ideal_vapour_enthalpy(celsius);
    out->entropy = ideal_air_heat_capacity * log(temperature / ice_point)
                   - ideal_air_gas_constant * log((1 - x) * pressure / standard_atmosphere)
                   + (w > 0 ? w * vapour_entropy(x * pressure, temperature) : 0);
    out->gas_volume = gas_constant_of_mixture * temperature / pressure;
    out->volume = out->gas_volume;
    out->heat_capacity = heat_capacity;
    out->gas_heat_capacity = heat_capacity / (1 + w);
    out->sound_speed = sqrt(heat_capacity / (heat_capacity - gas_constant_of_mixture) * gas_constant_of_mixture / (1 + w) * temperature);
    out->compressibility = 1;
    out->phase = phase;
    if (phase != PHASE_NONE)
        add_condensate(temperature, total_water - w, phase, out);
}
