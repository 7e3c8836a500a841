/* Perfect-gas flow without losses: what a nozzle's pressures do to temperature, velocity and area.
 *
 * Not real air: no condensation, no Joule-Thomson cooling (process.h has both); not shocks (shock.h).
 * See also: restriction.h for mass flow through nozzles, orifices and valves. */
#ifndef VTX_ISENTROPIC_H
#define VTX_ISENTROPIC_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* A perfect gas. vtx_gas_init makes it dry air. */
typedef struct vtx_gas {
    double molar_mass;          /* kg/mol   0.001..0.5 */
    double heat_capacity_ratio; /* -        1.01..1.7, cp/cv */
    double compressibility;     /* -        0.1..2, 1 for a perfect gas: p v = Z R T / M at the inlet state */
    double reserved[4];         /* zero */
} vtx_gas;

/* Branches of the relations that have two: a nozzle of one area ratio runs below or above the speed of sound. */
enum vtx_mach_branch {
    VTX_BRANCH_SUBSONIC = 240,
    VTX_BRANCH_SUPERSONIC = 241
};

/* Dry air: 0.0289655 kg/mol, ratio 1.4, compressibility 1.
 *
 * gas       out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_gas_init(vtx_gas *gas);

/* Temperature after an expansion without loss of a perfect gas, constant heat capacity.
 *
 * gamma               in   -   1.01..1.7     ratio of heat capacities
 * inlet_pressure      in   Pa  1e3..1e8      absolute, stagnation
 * inlet_temperature   in   K   50..1000      stagnation
 * outlet_pressure     in   Pa  1e3..inlet    above the inlet pressure is BAD_ARGUMENT
 * outlet_temperature  out  K
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding, 4e-16 relative for pressure ratios above 0.1; the real gas differs, see process.h
 * source    NACA Report 1135 (1953), equations 43 and 44
 */
VTX_API vtx_status vtx_isentropic_temperature(double gamma, double inlet_pressure, double inlet_temperature, double outlet_pressure,
                                              double *outlet_temperature);

/* Highest outlet over inlet pressure at which a loss-free nozzle is choked.
 *
 * gamma     in   -  1.01..1.7
 * ratio     out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    NACA Report 1135 (1953), equation 44 at Mach 1
 */
VTX_API vtx_status vtx_critical_pressure_ratio(double gamma, double *ratio);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_isentropic_temperature_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *outlet_temperature, ptrdiff_t outlet_temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_critical_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, double *ratio,
        ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
