/* Real moist air: the gas, its saturation over liquid and ice, and the two together. */
#include "moist_real.h"

struct real_gas real_gas(const struct real_temperature *t, double pressure, double x)
{
    const double y = 1 - x, log_t = t->logarithm;
    const struct ideal_part air = dry_air_ideal_part(t->temperature, log_t);
    const struct ideal_part water = water_ideal_part(t->temperature, log_t);
    const struct mixture_virials m = mixture_virials(&t->virials, x);
    const double b = m.b.value, bt = m.b.first, btt = m.b.second, c = m.c.value, ct = m.c.first, ctt = m.c.second;
    const double q = pressure / t->rt, d = virial_density(q, b, c), v = 1 / d;
    const struct fourth_part fourth = fourth_part(t->virials.wwww, q, x);
    const double r = gas_constant, atmospheres = d * t->rt / standard_atmosphere;
    /* x ln x tends to 0 with x: no jump and no NaN at dry air or steam. */
    const double mixing = (y > 0 ? y * log(y * atmospheres) : 0) + (x > 0 ? x * log(x * atmospheres) : 0);
    /* dp/dT over r d, and r t over dp/dd. */
    const double heated = 1 + d * (b + bt + d * (c + ct)), yielding = 1 / (1 + d * (2 * b + 3 * d * c));
    const double cv = y * air.heat_capacity + x * water.heat_capacity - r * (1 + d * (2 * bt + btt + d * (ct + 0.5 * ctt)));
    const double volume_first = v * heated * yielding + fourth.volume_first;  /* T dv/dT */
    const double volume_fall = q * square(v) * yielding - fourth.volume_rise; /* -p dv/dp */
    const double molar_mass = y * moist_air_molar_mass + x * water_molar_mass;
    struct real_gas gas;
    gas.volume = v + fourth.volume;
    gas.compressibility = q * gas.volume;
    gas.enthalpy = y * air.enthalpy + x * water.enthalpy + t->rt * d * (b - bt + d * (c - 0.5 * ct))
                   + fourth_enthalpy(t->virials.wwww, q, x, t->rt);
    gas.entropy = y * air.entropy + x * water.entropy - r * (mixing + d * (b + bt + 0.5 * d * (c + ct))) + fourth.entropy;
    gas.heat_capacity = cv + r * square(heated) * yielding + fourth.heat_capacity;
    gas.cv = gas.heat_capacity - r * q * square(volume_first) / volume_fall;
    gas.sound_speed = gas.volume * sqrt(gas.heat_capacity * pressure / (gas.cv * volume_fall * molar_mass));
    gas.joule_thomson = (volume_first - gas.volume) / gas.heat_capacity;
    return gas;
}

double real_density(const struct real_temperature *t, double pressure, double x)
{
    const struct virials *v = &t->virials;
    const double q = pressure / t->rt;
    const double density = virial_density(q, mixed_second(v->aa.value, v->aw.value, v->ww.value, x),
                                          mixed_third(v->aaa.value, v->aaw.value, v->aww.value, v->www.value, x));
    return density / (1 + density * fourth_volume(v->wwww, q, x));
}

double real_enthalpy(const struct real_temperature *t, double pressure, double x)
{
    const struct mixture_virials m = mixture_virials(&t->virials, x);
    const double q = pressure / t->rt, d = virial_density(q, m.b.value, m.c.value);
    return (1 - x) * ideal_enthalpy(dry_air_heat, air_enthalpy_zero, t->temperature)
           + x * ideal_enthalpy(water_heat, water_enthalpy_zero, t->temperature)
           + t->rt * d * (m.b.value - m.b.first + d * (m.c.value - 0.5 * m.c.first))
           + fourth_enthalpy(t->virials.wwww, q, x, t->rt);
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
                               ideal_enthalpy(water_heat, water_enthalpy_zero, t->temperature));
}

/* Per kg of dry air: gas with the fraction x and, beyond it, condensate of one phase. */
void real_mixture(const struct real_temperature *t, double pressure, double total_water, double x, int32_t phase,
                  struct moist_mixture *out)
{
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
    const struct condensate c = real_condensate(t, pressure, phase);
    const double condensed = total_water - out->humidity_ratio, moles = condensed / water_molar_mass;
    out->condensed = condensed;
    out->frozen_share = phase == PHASE_ICE;
    out->enthalpy += moles * c.enthalpy;
    out->entropy += moles * c.entropy;
    out->volume += moles * c.volume;
    out->heat_capacity += moles * c.heat_capacity;
    out->advisories |= phase == PHASE_ICE ? VTX_ADVISORY_FREEZING : VTX_ADVISORY_CONDENSING;
}
