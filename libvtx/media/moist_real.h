/* Real moist air by the virial equation of state, over liquid or ice in true equilibrium. Internal to the moist_air room. */
#ifndef VTX_MOIST_REAL_H
#define VTX_MOIST_REAL_H

#include "condensate.h"
#include "moist_kernel.h"

/* What depends on temperature alone. */
struct real_temperature {
    double temperature;
    double logarithm; /* of the temperature */
    double rt;
    struct virials virials;
};

static inline struct real_temperature real_temperature(double temperature)
{
    const double logarithm = log(temperature);
    const struct real_temperature t = { temperature, logarithm, gas_constant * temperature, virials_at(temperature, logarithm) };
    return t;
}

/* The same without derivatives, which are zero: enough for density and saturation. */
static inline struct real_temperature plain_temperature(double temperature)
{
    const double logarithm = log(temperature);
    const struct virials v = virials_at(temperature, logarithm);
    const struct real_temperature t = {
        temperature, logarithm, gas_constant * temperature,
        { { v.aa.value, 0, 0 }, { v.aw.value, 0, 0 }, { v.ww.value, 0, 0 },
          { v.aaa.value, 0, 0 }, { v.aaw.value, 0, 0 }, { v.aww.value, 0, 0 }, { v.www.value, 0, 0 } }
    };
    return t;
}

/* The same for air that holds no water: what depends on water is left out, and zero. */
static ALWAYS_INLINE struct real_temperature dry_temperature(double temperature)
{
    struct real_temperature t = { temperature, log(temperature), gas_constant * temperature, { .aa = { 0, 0, 0 } } };
    const struct broken_powers p = broken_powers(t.logarithm);
    dry_air_virials(temperature, &p, &t.virials);
    return t;
}

/* The gas phase, molar. */
struct real_gas {
    double volume;
    double enthalpy;
    double entropy;
    double heat_capacity;
    double cv;
    double sound_speed;
    double compressibility;
    double joule_thomson; /* K/Pa */
};

/* Of saturation, and of energy and entropy. */
static ALWAYS_INLINE struct virial condensed_volume(double temperature, int32_t phase)
{
    return phase == PHASE_ICE ? ice_molar_volume(temperature) : liquid_molar_volume(temperature);
}

static inline struct virial caloric_volume(double temperature, int32_t phase)
{
    return phase == PHASE_ICE ? caloric_ice_volume(temperature) : caloric_liquid_volume(temperature);
}

/* mol/m3. */
double real_density(const struct real_temperature *t, double pressure, double x);

/* J/mol, the enthalpies alone. */
double real_condensate_enthalpy(const struct real_temperature *t, double pressure, int32_t phase);
double real_enthalpy(const struct real_temperature *t, double pressure, double x);

/* dry, a constant: x is 0. */
static ALWAYS_INLINE struct ideal_part ideal_mixture_part(const struct real_temperature *t, double x, int dry)
{
    const struct ideal_part air = dry_air_ideal_part(t->temperature, t->logarithm);
    if (dry)
        return air;
    const double y = 1 - x;
    const struct ideal_part water = water_ideal_part(t->temperature, t->logarithm);
    const struct ideal_part both = { y * air.enthalpy + x * water.enthalpy, y * air.entropy + x * water.entropy,
                                     y * air.heat_capacity + x * water.heat_capacity };
    return both;
}

/* x ln x tends to 0 with x: no jump and no NaN at dry air or steam. */
static ALWAYS_INLINE double mixing_part(double atmospheres, double x, int dry)
{
    if (dry)
        return log(atmospheres);
    const double y = 1 - x, least = 1e-300; /* of less the product may be zero */
    return (y > least ? y * log(y * atmospheres) : 0) + (x > least ? x * log(x * atmospheres) : 0);
}

/* Inline, for those who need a part of it, and dry, a constant, where x is 0. */
static ALWAYS_INLINE struct real_gas real_gas_inline(const struct real_temperature *t, double pressure, double x, int dry)
{
    const struct mixture_virials of_air = { t->virials.aa, t->virials.aaa };
    const struct mixture_virials m = dry ? of_air : mixture_virials(&t->virials, x);
    const struct ideal_part ideal = ideal_mixture_part(t, x, dry);
    const double b = m.b.value, bt = m.b.first, btt = m.b.second, c = m.c.value, ct = m.c.first, ctt = m.c.second;
    const double q = pressure / t->rt, d = virial_density(q, b, c), v = 1 / d;
    const double r = gas_constant, mixing = mixing_part(d * t->rt / standard_atmosphere, x, dry);
    /* dp/dT over r d, and r t over dp/dd. */
    const double heated = 1 + d * (b + bt + d * (c + ct)), yielding = 1 / (1 + d * (2 * b + 3 * d * c));
    const double volume_first = v * heated * yielding;   /* T dv/dT */
    const double volume_fall = q * square(v) * yielding; /* -p dv/dp */
    const double molar_mass = (1 - x) * moist_air_molar_mass + x * water_molar_mass;
    struct real_gas gas;
    gas.volume = v;
    gas.compressibility = q * gas.volume;
    gas.enthalpy = ideal.enthalpy + t->rt * d * (b - bt + d * (c - 0.5 * ct));
    gas.entropy = ideal.entropy - r * (mixing + d * (b + bt + 0.5 * d * (c + ct)));
    gas.cv = ideal.heat_capacity - r * (1 + d * (2 * bt + btt + d * (ct + 0.5 * ctt)));
    gas.heat_capacity = gas.cv + r * square(heated) * yielding;
    gas.sound_speed = gas.volume * sqrt(gas.heat_capacity * pressure / (gas.cv * volume_fall * molar_mass));
    gas.joule_thomson = (volume_first - gas.volume) / gas.heat_capacity;
    return gas;
}

struct real_gas real_gas(const struct real_temperature *t, double pressure, double x);

/* ln of the enhancement factor, within a few hundredths of it: for starts. */
double rough_log_enhancement(double temperature, double pressure, double partial);

double real_saturation_fraction(const struct real_temperature *t, double pressure, int32_t phase);
double real_saturation_temperature(double pressure, double x, int32_t phase);
struct condensate real_condensate(const struct real_temperature *t, double pressure, int32_t phase);
void real_mixture(const struct real_temperature *t, double pressure, double total_water, double x, int32_t phase,
                  struct moist_mixture *out);

#endif
