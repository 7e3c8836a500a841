/* Physical constants that several rooms share. Internal. One constant, one definition: look here first. */
#ifndef VTX_CONSTANTS_H
#define VTX_CONSTANTS_H

/* J/(mol K), exact since the SI of 2019 (15324 after the last digit is left out, as in the tables that quote it). */
static const double gas_constant = 8.314462618;

/* kg/mol. Lemmon, Jacobsen, Penoncello, Friend 2000: 28.9586 for their air; 28.9655 with today's carbon dioxide (Park et al. 2004). */
static const double dry_air_molar_mass = 0.0289655;

/* kg/mol, dry air of ASHRAE RP-1485 (Herrmann, Kretzschmar, Gatley 2009) and of the handbooks since 2009: the air of moist_air.h,
 * whose humidity ratios would shift by 2e-5 with the other one. */
static const double moist_air_molar_mass = 0.028966;

/* kg/mol, IAPWS R6-95(2018). */
static const double water_molar_mass = 0.018015268;

/* K and Pa, IAPWS R14-08(2011). */
static const double triple_temperature = 273.16;
static const double triple_pressure = 611.657;

/* K and Pa at which dry air has enthalpy and entropy zero: 0 degC and the standard atmosphere. */
static const double ice_point = 273.15;
static const double standard_atmosphere = 101325;

/* K, of degC below zero as a conversion makes them: the number 233.15 lies a rounding above 273.15 - 40, and a range that began there
 * would refuse -40 degC. */
#define BELOW_ZERO(celsius) (273.15 - (celsius))

#endif
