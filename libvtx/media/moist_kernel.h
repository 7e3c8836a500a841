/* Moist air as a mixture in equilibrium, unchecked: what processes, streams and states are built on. Internal.
 *
 * Callers check pressure and temperature with moist_check and the total water with moist_check_water; inside those ranges every
 * result is finite. Amounts are per kg of dry air. */
#ifndef VTX_MOIST_KERNEL_H
#define VTX_MOIST_KERNEL_H

#include <vtx/moist_air.h>

#include "water_kernel.h"

#define MOIST_TEMPERATURE_MIN 100.0
#define MOIST_TEMPERATURE_MAX 473.15
#define MOIST_PRESSURE_MIN 1e3
#define MOIST_PRESSURE_MAX 5e6
#define MOIST_WATER_MAX 10.0

/* An excess over saturation of this share is rounding, not water. */
static const double humidity_rounding = 1e-14;

/* The numbers of the public field condensed_phase. */
enum moist_phase { PHASE_NONE = 0, PHASE_LIQUID = 1, PHASE_ICE = 2, PHASE_BOTH = 3 };

struct moist_mixture {
    double pressure;
    double temperature;
    double total_water;
    double humidity_ratio; /* of the vapour */
    double vapour_fraction;
    double condensed;
    double frozen_share;      /* of the condensed */
    double enthalpy;          /* J/kg, condensate included */
    double entropy;           /* J/(kg K), condensate included */
    double volume;            /* m3/kg, condensate included */
    double gas_volume;        /* m3/kg */
    double heat_capacity;     /* J/(kg K) at constant pressure, condensate included, nothing changing phase */
    double gas_heat_capacity; /* J/(kg K), per kg of moist gas */
    double sound_speed;       /* of the gas */
    double compressibility;   /* of the gas */
    int32_t phase;
    int32_t advisories;
};

/* Lowest temperature of a model at a pressure. REAL stops well before dry air itself could condense or its virial series turn back:
 * pressure <= 0.4 MPa (temperature / 100 K)^4. */
static inline double moist_temperature_min(int32_t model, double pressure)
{
    return model == VTX_AIR_REAL ? 100 * sqrt(sqrt(larger(pressure, 0.4e6) / 0.4e6)) : MOIST_TEMPERATURE_MIN;
}

/* OK, BAD_ARGUMENT or OUT_OF_RANGE for the ranges of a model. */
static inline vtx_status moist_check(int32_t model, double pressure, double temperature)
{
    vtx_status status = require(model == VTX_AIR_IDEAL || model == VTX_AIR_REAL);
    status = worse(status, check_positive(pressure, MOIST_PRESSURE_MIN, MOIST_PRESSURE_MAX));
    status = worse(status, check_positive(temperature, MOIST_TEMPERATURE_MIN, MOIST_TEMPERATURE_MAX));
    if (status == VTX_OK && temperature < moist_temperature_min(model, pressure))
        return VTX_OUT_OF_RANGE;
    return status;
}

static inline vtx_status moist_check_water(double total_water) { return check_amount(total_water, MOIST_WATER_MAX); }

/* Outside these the REAL model's coefficients were not fitted or not tested. */
static inline int32_t moist_extrapolated(double pressure, double temperature)
{
    return pressure < 0.01e6 || pressure > 2e6 || temperature < 173.15 || temperature > 373.15 ? VTX_ADVISORY_EXTRAPOLATED : 0;
}

static inline int32_t stable_phase(double temperature) { return temperature < triple_temperature ? PHASE_ICE : PHASE_LIQUID; }

/* Pure water's saturation over a phase, both ways; beyond the phase's own range the formulas run on far enough for a search. */
static inline double pure_saturation_pressure(double temperature, int32_t phase)
{
    return phase == PHASE_ICE ? ice_sublimation_pressure(temperature) : over_liquid_pressure(temperature);
}

static inline double pure_saturation_temperature(double pressure, int32_t phase)
{
    if (phase == PHASE_ICE)
        return ice_sublimation_temperature(within(pressure, ICE_SUBLIMATION_PRESSURE_MIN, 2 * triple_pressure));
    return liquid_saturation_temperature(within(pressure, 0.5 * SUPERCOOLED_PRESSURE_MIN, WATER_PRESSURE_MAX));
}

/* Equilibrium at pressure and temperature: what exceeds saturation over the stable phase condenses (at 273.16 K liquid). */
void moist_equilibrium(int32_t model, double pressure, double temperature, double total_water, struct moist_mixture *out);

/* The same over a phase that the caller chooses, for the two ends of the mixed state at 273.16 K. */
void moist_equilibrium_over(int32_t model, double pressure, double temperature, double total_water, int32_t phase,
                            struct moist_mixture *out);

/* Nothing condenses: all water is vapour, metastable where it exceeds saturation. */
void moist_vapour(int32_t model, double pressure, double temperature, double humidity_ratio, struct moist_mixture *out);

/* Between two equilibria at the same pressure, temperature (273.16 K) and total water, over liquid and over ice: share of the way
 * to ice. Enthalpy, entropy and volume are linear in share, so a balance finds it as (h - h_liquid) / (h_ice - h_liquid). */
void moist_between(const struct moist_mixture *liquid, const struct moist_mixture *ice, double share, struct moist_mixture *out);

/* Mole fraction of water at saturation over a phase; 1 where the water's own saturation pressure reaches the pressure. */
double moist_saturation_fraction(int32_t model, double pressure, double temperature, int32_t phase);

/* Temperature at which the mole fraction saturates over a phase: dew point (liquid) or frost point (ice). For vapour fractions
 * above 0; the caller judges whether the temperature lies where the phase exists. */
double moist_saturation_temperature(int32_t model, double pressure, double vapour_fraction, int32_t phase);

/* The same, NaN where the phase does not exist there or no vapour does: below 233.15 K (liquid), above 273.16 K (ice). */
double moist_dew_or_frost_point(int32_t model, double pressure, double vapour_fraction, int32_t phase);

/* Mole fraction that a dew or frost point stands for. OK, BAD_ARGUMENT (at or above boiling no fraction does), OUT_OF_RANGE */
vtx_status moist_fraction_of_saturation(int32_t model, double pressure, double point, int32_t phase, double *vapour_fraction);

/* Humidity ratio of air that has a wet bulb; below zero when the air would have to be drier than dry, above most (the ratio at
 * saturation over liquid) when it would have to be wetter than wet. */
double moist_humidity_ratio_of_wet_bulb(int32_t model, double pressure, double temperature, double wet_bulb, double most);

/* The mixture that a humidity measure (vtx_moist_property 10 to 17, finite value) describes at a checked pressure and temperature.
 * OK, BAD_ARGUMENT, OUT_OF_RANGE */
vtx_status moist_from_humidity(int32_t model, double pressure, double temperature, int32_t property, double value,
                               struct moist_mixture *out);

/* All that is public of that mixture. */
vtx_status moist_state_of_humidity(int32_t model, double pressure, double temperature, int32_t property, double value,
                                   vtx_moist_air *state);

/* One humidity measure from another. OK, BAD_ARGUMENT, OUT_OF_RANGE (the result may then be NaN) */
vtx_status moist_convert_humidity(int32_t model, double pressure, double temperature, int32_t property, double value, int32_t wanted,
                                  double *result);

/* One property (vtx_moist_property 10 to 21) of a mixture, NaN where it has no meaning there. The humidity ratio is the vapour's. */
double moist_property(int32_t model, const struct moist_mixture *air, int32_t property);

/* All that is public of a mixture. */
void moist_state(int32_t model, const struct moist_mixture *air, vtx_moist_air *state);

/* J/kg, of liquid or ice at pressure and temperature, as it enters the mixture's enthalpy. */
double moist_condensate_enthalpy(int32_t model, double pressure, double temperature, int32_t phase);

/* kg water per kg dry air of a mole fraction, and back. */
double moist_humidity_ratio(int32_t model, double vapour_fraction);
double moist_vapour_fraction(int32_t model, double humidity_ratio);

#endif
