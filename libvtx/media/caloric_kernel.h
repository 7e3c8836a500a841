/* Enthalpies of pure liquid water and ice by their own equations. Internal: moist air's condensate is in condensate.h. */
#ifndef VTX_CALORIC_KERNEL_H
#define VTX_CALORIC_KERNEL_H

#include "../base/numeric.h"

/* J/kg with the zero of IAPWS; kg/m3. */
double water_enthalpy(double temperature);
double water_density(double temperature);
double ice_enthalpy(double pressure, double temperature);

/* Below it the equation of the liquid's density bends away from any measurement, K. */
#define LIQUID_DENSITY_TEMPERATURE_MIN BELOW_ZERO(20)

#endif
