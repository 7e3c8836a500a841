/* Physical constants that several rooms share. Internal. One constant, one definition: look here first. */
#ifndef VTX_CONSTANTS_H
#define VTX_CONSTANTS_H

/* J/(mol K), exact since the SI of 2019 (15324 after the last digit is left out, as in the tables that quote it). */
static const double gas_constant = 8.314462618;

/* kg/mol. Lemmon, Jacobsen, Penoncello, Friend 2000: 28.9586 for their air; 28.9655 with today's carbon dioxide (Park et al. 2004). */
static const double dry_air_molar_mass = 0.0289655;

#endif
