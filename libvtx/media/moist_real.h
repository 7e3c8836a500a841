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
          { v.aaa.value, 0, 0 }, { v.aaw.value, 0, 0 }, { v.aww.value, 0, 0 }, { v.www.value, 0, 0 }, v.wwww }
    };
    return t;
}

/* The same for air that holds no water: what depends on water is left out, and zero. */
static inline struct real_temperature dry_temperature(double temperature)
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

struct real_gas real_gas(const struct real_temperature *t, double pressure, double x);

double real_saturation_fraction(const struct real_temperature *t, double pressure, int32_t phase);
double real_saturation_temperature(double pressure, double x, int32_t phase);
struct condensate real_condensate(const struct real_temperature *t, double pressure, int32_t phase);
void real_mixture(const struct real_temperature *t, double pressure, double total_water, double x, int32_t phase,
                  struct moist_mixture *out);

#endif
