/* Dry air as a real gas and its transport properties, unchecked. Internal. */
#ifndef VTX_AIR_KERNEL_H
#define VTX_AIR_KERNEL_H

#include "moist_real.h"

/* What Lemmon and Jacobsen 2004 reduce by: K, and mol/m3. */
static const double transport_temperature = 132.6312;
static const double transport_density = 10447.7;

/* Pa s, at no density: equations 2 to 4, from the molar mass of their own air in g/mol and its size in nm. */
static inline double dilute_air_viscosity(double temperature)
{
    const double l = log(temperature / 103.3);
    const double collision = exp(0.431 + l * (-0.4623 + l * (0.08406 + l * (0.005341 - 0.00331 * l))));
    return 1e-6 * 0.0266958 * sqrt(28.9586 * temperature) / (square(0.36) * collision);
}

/* Pa s; density in mol/m3. Equation 5, table 3. */
static inline double air_viscosity(double temperature, double density)
{
    const double log_tau = log(transport_temperature / temperature), d = density / transport_density;
    const double d4 = square(square(d)), d8 = square(d4);
    const double residual = 10.72 * exp(0.2 * log_tau) * d + 1.122 * exp(0.05 * log_tau) * d4 + 0.002019 * exp(2.4 * log_tau) * d8 * d
                            - exp(-d) * (8.876 * exp(0.6 * log_tau) * d + 0.02916 * exp(3.6 * log_tau) * d8);
    return dilute_air_viscosity(temperature) + 1e-6 * residual;
}

/* W/(m K); density in mol/m3. Equations 6 to 8, table 4, without the critical enhancement. */
static inline double air_conductivity(double temperature, double density)
{
    const double log_tau = log(transport_temperature / temperature), d = density / transport_density;
    const double d2 = square(d), d7 = d * d2 * square(d2);
    const double dilute = 1.308e6 * dilute_air_viscosity(temperature) + 1.405 * exp(-1.1 * log_tau) - 1.036 * exp(-0.3 * log_tau);
    const double residual = 8.743 * exp(0.1 * log_tau) * d + 14.76 * d2
                            + exp(-d2) * (-16.62 * exp(0.5 * log_tau) * d2 * d + 3.793 * exp(2.7 * log_tau) * d7
                                          - 6.142 * exp(0.3 * log_tau) * d7 - 0.3778 * exp(1.3 * log_tau) * square(d2) * d7);
    return 1e-3 * (dilute + residual);
}

/* mol/m3 */
static inline double dry_air_density(double pressure, double temperature)
{
    struct virials v;
    const struct broken_powers p = broken_powers(log(temperature));
    dry_air_virials(temperature, &p, &v);
    return virial_density(pressure / (gas_constant * temperature), v.aa.value, v.aaa.value);
}

#endif
