/* Normal shocks of a perfect gas, without checks. Internal.
 *
 * NACA Report 1135 (1953), equations 93 to 100, in z = M^2 - 1 so that weak shocks keep their digits. */
#ifndef VTX_SHOCK_KERNEL_H
#define VTX_SHOCK_KERNEL_H

#include <vtx/shock.h>

#include "isentropic_kernel.h"

/* M^2 - 1 without cancellation. */
static inline double excess(double mach) { return (mach - 1) * (mach + 1); }

static inline double pressure_rise(double gamma, double z) { return 2 * gamma / (gamma + 1) * z; }

/* Density ratio less 1. */
static inline double density_rise(double gamma, double z) { return 2 * z / ((gamma + 1) + (gamma - 1) * z); }

/* Temperature ratio less 1. */
static inline double temperature_rise(double gamma, double z)
{
    return 2 * (gamma - 1) / square(gamma + 1) * (gamma * (1 + z) + 1) * z / (1 + z);
}

/* The formula is its own inverse. */
static inline double other_mach(double gamma, double z)
{
    return sqrt(((gamma + 1) + (gamma - 1) * z) / ((gamma + 1) + 2 * gamma * z));
}

/* -ln of the stagnation pressure ratio. */
static inline double stagnation_loss(double gamma, double z)
{
    return (log1p(pressure_rise(gamma, z)) - gamma * log1p(density_rise(gamma, z))) / (gamma - 1);
}

/* -ln of p1 over pt2: from rest behind the shock to the static pressure ahead. */
static inline double pitot_logarithm(double gamma, double z)
{
    return gamma / (gamma - 1) * log1p(0.5 * (gamma - 1) * (1 + z)) - stagnation_loss(gamma, z);
}

#endif
