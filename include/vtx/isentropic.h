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
 * accuracy  5e-16 relative of the formula for pressure ratios above 0.1; the real gas differs, see process.h
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
 * accuracy  6e-16 relative of the formula, by a polynomial
 * source    NACA Report 1135 (1953), equation 44 at Mach 1
 */
VTX_API vtx_status vtx_critical_pressure_ratio(double gamma, double *ratio);

/* Mass flow function of a choked loss-free nozzle: mass flow = area p0 / sqrt(R T0) times this.
 *
 * gamma     in   -  1.01..1.7
 * function  out  -  0.684731 at 1.4
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  6e-16 relative of the formula, by a polynomial; C* of ISO 9300 for a perfect gas, air at 8 bar has 0.4 % more: vtx_air_critical_flow_factor
 * source    ISO 9300 (definition), sqrt(gamma) (2/(gamma+1))^((gamma+1)/(2(gamma-1)))
 */
VTX_API vtx_status vtx_critical_flow_function(double gamma, double *function);

/* Velocity of a full isentropic expansion from rest.
 *
 * gas                in   -
 * inlet_pressure     in   Pa   1e3..1e8     stagnation
 * inlet_temperature  in   K    50..1000     stagnation
 * outlet_pressure    in   Pa   1e3..inlet   above the inlet pressure is BAD_ARGUMENT
 * velocity           out  m/s  supersonic below the critical pressure ratio: only a converging and diverging nozzle reaches it
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    energy equation, NACA Report 1135 (1953), equation 43
 */
VTX_API vtx_status vtx_isentropic_velocity(const vtx_gas *gas, double inlet_pressure, double inlet_temperature, double outlet_pressure,
                                           double *velocity);

/* Speed of sound.
 *
 * gas          in   -
 * temperature  in   K    50..1000   static
 * speed        out  m/s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    sqrt(gamma R T)
 */
VTX_API vtx_status vtx_gas_sound_speed(const vtx_gas *gas, double temperature, double *speed);

/* Static over stagnation temperature at a Mach number.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  0..50
 * ratio  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    NACA Report 1135 (1953), equation 43
 */
VTX_API vtx_status vtx_isentropic_temperature_ratio(double gamma, double mach, double *ratio);

/* Static over stagnation pressure at a Mach number.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  0..50
 * ratio  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding times gamma/(gamma-1) times the logarithm of the temperature ratio
 * source    NACA Report 1135 (1953), equation 44
 */
VTX_API vtx_status vtx_isentropic_pressure_ratio(double gamma, double mach, double *ratio);

/* Static over stagnation density at a Mach number.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  0..50
 * ratio  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_isentropic_pressure_ratio
 * source    NACA Report 1135 (1953), equation 45
 */
VTX_API vtx_status vtx_isentropic_density_ratio(double gamma, double mach, double *ratio);

/* Flow area over the throat area of sonic flow, A/A*, at a Mach number.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1e-9..50    0 would need an infinite area: BAD_ARGUMENT
 * ratio  out  -  1 or more
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as vtx_isentropic_pressure_ratio
 * source    NACA Report 1135 (1953), equation 80
 */
VTX_API vtx_status vtx_isentropic_area_ratio(double gamma, double mach, double *ratio);

/* Mach number of a static over stagnation temperature.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  0..1         0 and above 1 are BAD_ARGUMENT, below that of Mach 50 is OUT_OF_RANGE
 * mach   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact inverse of vtx_isentropic_temperature_ratio, closed form
 * source    NACA Report 1135 (1953), equation 43
 */
VTX_API vtx_status vtx_mach_for_temperature_ratio(double gamma, double ratio, double *mach);

/* Mach number of a static over stagnation pressure.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  0..1         0 and above 1 are BAD_ARGUMENT, below that of Mach 50 is OUT_OF_RANGE
 * mach   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact inverse of vtx_isentropic_pressure_ratio, closed form
 * source    NACA Report 1135 (1953), equation 44
 */
VTX_API vtx_status vtx_mach_for_pressure_ratio(double gamma, double ratio, double *mach);

/* Mach number of a static over stagnation density.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  0..1         0 and above 1 are BAD_ARGUMENT, below that of Mach 50 is OUT_OF_RANGE
 * mach   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact inverse of vtx_isentropic_density_ratio, closed form
 * source    NACA Report 1135 (1953), equation 45
 */
VTX_API vtx_status vtx_mach_for_density_ratio(double gamma, double ratio, double *mach);

/* Mach number at an area ratio A/A*, on the branch named.
 *
 * gamma   in   -  1.01..1.7
 * branch  in   -              VTX_BRANCH_SUBSONIC or VTX_BRANCH_SUPERSONIC
 * ratio   in   -  1..         below 1 is BAD_ARGUMENT, beyond that of Mach 1e-9 or 50 OUT_OF_RANGE
 * mach    out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  the area ratio of this Mach number is the wanted one within 1e-12 relative; close to Mach 1 that leaves 1e-7 of the Mach number open
 * source    NACA Report 1135 (1953), equation 80, solved
 */
VTX_API vtx_status vtx_mach_for_area_ratio(double gamma, int32_t branch, double ratio, double *mach);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_isentropic_temperature_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *outlet_temperature, ptrdiff_t outlet_temperature_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_critical_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, double *ratio,
        ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_critical_flow_function_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, double *function,
        ptrdiff_t function_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_isentropic_velocity_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *velocity, ptrdiff_t velocity_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_gas_sound_speed_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *temperature,
        ptrdiff_t temperature_stride, double *speed, ptrdiff_t speed_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_isentropic_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_isentropic_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_isentropic_density_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_isentropic_area_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_mach_for_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_mach_for_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_mach_for_density_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_mach_for_area_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, int32_t branch,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
