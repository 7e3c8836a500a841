/* The perfect gas of VTX_AIR_IDEAL in the tube layer. Internal. */
#ifndef VTX_TUBE_PERFECT_AIR_H
#define VTX_TUBE_PERFECT_AIR_H

/* Dry air near room temperature, rounded as text books do. */
static const double perfect_air_heat_capacity = 1006;  /* J/(kg K) */
static const double perfect_air_gas_constant = 287.05; /* J/(kg K) */

#endif
