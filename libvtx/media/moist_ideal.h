/* Moist air by the handbook's ideal-gas relations: ASHRAE Handbook Fundamentals 2017, chapter 1. Internal. */
#ifndef VTX_MOIST_IDEAL_H
#define VTX_MOIST_IDEAL_H

#include "moist_kernel.h"

/* Ratio of the molar masses, equation 20; gas constant of dry air, J/(kg K), equation 26; heat capacities of dry air and vapour,
 * J/(kg K), and the vapour's enthalpy at 0 degC, J/kg, equation 30. */
static const double ideal_mass_ratio = 0.621945;
static const double ideal_air_gas_constant = 287.042;
static const double ideal_air_heat_capacity = 1006;
static const double ideal_vapour_heat_capacity = 1860;
static const double ideal_vapour_enthalpy_zero = 2501e3;

/* Condensate: heat capacity and enthalpy at 0 degC of equation 30's supplement for fog; those of the wet bulb's equations 33 and 35
 * differ a little there and are kept. */
static const double ideal_liquid_heat_capacity = 4190;
static const double ideal_ice_heat_capacity = 2100;
static const double ideal_ice_enthalpy_zero = -333.4e3;

/* m3/kg; the handbook leaves the condensate's volume out, the density of fog needs it. */
static const double ideal_liquid_volume = 1e-3;
static const double ideal_ice_volume = 1 / 916.7;

static inline double ideal_vapour_enthalpy(double celsius) { return ideal_vapour_enthalpy_zero + ideal_vapour_heat_capacity * celsius; }

static inline double ideal_condensate_enthalpy(double celsius, int32_t phase)
{
    return phase == PHASE_ICE ? ideal_ice_enthalpy_zero + ideal_ice_heat_capacity * celsius : ideal_liquid_heat_capacity * celsius;
}

void ideal_mixture(double pressure, double temperature, double total_water, double humidity_ratio, int32_t phase,
                   struct moist_mixture *out);

#endif
