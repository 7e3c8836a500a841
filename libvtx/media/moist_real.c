/* Real moist air: the gas, its saturation over liquid and ice, and the two together. */
#include "moist_real.h"

/* Dry air by the shorter way, to the same bits. */
struct real_gas real_gas(const struct real_temperature *t, double pressure, double x)
{
    return x == 0 ? real_gas_inline(t, pressure, 0, 1) : real_gas_inline(t, pressure, x, 0);
}

double real_density(const struct real_temperature *t, double pressure, double x)
{
    const struct virials *v = &t->virials;
    return virial_density(pressure / t->rt, mixed_second(v->aa.value, v->aw.value, v->ww.value, x),
                          mixed_third(v->aaa.value, v->aaw.value, v->aww.value, v->www.value, x));
}

double real_enthalpy(const struct real_temperature *t, double pressure, double x)
{
    const struct mixture_virials m = mixture_virials(&t->virials, x);
    const double d = virial_density(pressure / t->rt, m.b.value, m.c.value);
    return (1 - x) * ideal_enthalpy(&dry_air_heat, air_enthalpy_zero, t->temperature)
           + x * ideal_enthalpy(&water_heat, water_enthalpy_zero, t->temperature)
           + t->rt * d * (m.b.value - m.b.first + d * (m.c.value - 0.5 * m.c.first));
}

/* Liquid from 233.15 K, ice to 273.16 K. */
struct condensate real_condensate(const struct real_temperature *t, double pressure, int32_t phase)
{
    return condensate_at(phase == PHASE_ICE ? ice_saturation(t->temperature) : liquid_saturation(t->temperature), pressure,
                         t->temperature, caloric_volume(t->temperature, phase), &t->virials,
                         water_ideal_part(t->temperature, t->logarithm));
}

double real_condensate_enthalpy(const struct real_temperature *t, double pressure, int32_t phase)
{
    const struct saturation s = phase == PHASE_ICE ? ice_saturation(t->temperature) : liquid_saturation(t->temperature);
    const struct virial volume = caloric_volume(t->temperature, phase);
    const double density = virial_density(s.pressure / t->rt, t->virials.ww.value, t->virials.www.value);
    return condensate_enthalpy(s, density, pressure, t->temperature, volume, &t->virials,
                               ideal_enthalpy(&water_heat, water_enthalpy_zero, t->temperature));
}

/* Per kg of dry air: gas with the fraction x and, beyond it, condensate of one phase. */
void real_mixture(const struct real_temperature *t, double pressure, double total_water, double x, int32_t phase,
                  struct moist_mixture *out)
{
    /* before the gas, which waits for the fraction that was found last */
    const struct condensate none = { 0, 0, 0, 0 }, c = phase == PHASE_NONE ? none : real_condensate(t, pressure, phase);
    const struct real_gas gas = real_gas(t, pressure, x);
    const double air = (1 - x) * moist_air_molar_mass;
    const double gas_mass = air + x * water_molar_mass;
    memset(out, 0, sizeof *out);
    out->pressure = pressure;
    out->temperature = t->temperature;
    out->total_water = total_water;
    out->vapour_fraction = x;
    out->humidity_ratio = phase == PHASE_NONE ? total_water : x * water_molar_mass / air;
    out->enthalpy = gas.enthalpy / air;
    out->entropy = gas.entropy / air;
    out->gas_volume = gas.volume / air;
    out->volume = out->gas_volume;
    out->heat_capacity = gas.heat_capacity / air;
    out->gas_heat_capacity = gas.heat_capacity / gas_mass;
    out->sound_speed = gas.sound_speed;
    out->compressibility = gas.compressibility;
    out->phase = phase;
    out->advisories = moist_extrapolated(pressure, t->temperature);
    if (phase == PHASE_NONE)
        return;
    const double condensed = total_water - out->humidity_ratio, moles = condensed / water_molar_mass;
    out->condensed = condensed;
    out->frozen_share = phase == PHASE_ICE;
    out->enthalpy += moles * c.enthalpy;
    out->entropy += moles * c.entropy;
    out->volume += moles * c.volume;
    out->heat_capacity += moles * c.heat_capacity;
    out->advisories |= phase == PHASE_ICE ? VTX_ADVISORY_FREEZING : VTX_ADVISORY_CONDENSING;
}
