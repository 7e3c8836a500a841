/* Moist air of a given enthalpy or entropy: what expansions, streams and mixtures are found by. Unchecked. Internal. */
#ifndef VTX_PROCESS_KERNEL_H
#define VTX_PROCESS_KERNEL_H

#include "moist_kernel.h"

/* How far the enthalpy or entropy of what is found may lie from the wish: rounding of the state functions, 1e-9 K. */
#define ENTHALPY_TOLERANCE 1e-6 /* J/kg dry air */
#define ENTROPY_TOLERANCE 3e-9  /* J/(kg K) dry air */

/* The equilibrium at pressure with total_water that has the enthalpy or entropy; at 273.16 K a mixture of liquid and ice where
 * neither alone has it. `start` is a guess of the temperature, anything within the range of the kernel.
 *
 * OK, OUT_OF_RANGE (colder or hotter than the kernel covers at this pressure), NOT_CONVERGED (never seen) */
vtx_status moist_of_enthalpy(int32_t model, double pressure, double total_water, double enthalpy, double start, struct moist_mixture *out);
vtx_status moist_of_entropy(int32_t model, double pressure, double total_water, double entropy, double start, struct moist_mixture *out);

/* What leaves an expansion without and with full loss of work, from an inlet in equilibrium. */
vtx_status moist_expand(int32_t model, const struct moist_mixture *inlet, double outlet_pressure, struct moist_mixture *out);
vtx_status moist_throttle(int32_t model, const struct moist_mixture *inlet, double outlet_pressure, struct moist_mixture *out);

#endif
