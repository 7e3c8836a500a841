/* Adiabatic flow of a perfect gas with friction in a pipe of constant bore: the Fanno relations and their inverses.
 *
 * Not a pipe with its own friction factor, pressures and choking: line.h is that, on these relations.
 * See also: isentropic.h for vtx_mach_branch; the ratio of stagnation pressures below is the area ratio of that page. */
#ifndef VTX_FANNO_H
#define VTX_FANNO_H

#include <vtx/isentropic.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Friction that brings a flow to Mach 1, as Darcy friction factor times length over bore.
 *
 * gamma   in   -  1.01..1.7
 * mach    in   -  1e-4..50
 * length  out  -  f L/D; loss coefficients of fittings add to it
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  2e-15 relative, also next to Mach 1
 * source    Fanno relation, for example Shapiro 1953, chapter 6, from memory; closed form
 */
VTX_API vtx_status vtx_fanno_length(double gamma, double mach, double *length);

/* Mach number whose friction to Mach 1 is given: inverse of vtx_fanno_length.
 *
 * gamma   in   -  1.01..1.7
 * length  in   -  0..1e8     f L/D to Mach 1
 * branch  in   -  of vtx_mach_branch
 * mach    out  -  1e-4..50
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (mach), NO_SOLUTION (supersonic: no Mach number has so much friction ahead; 0.8215 at
 *           gamma 1.4)
 * accuracy  4e-15 relative; not iterated to a tolerance, two steps at most
 * source    as vtx_fanno_length; y - 1 - ln y = 2 gamma/(gamma+1) f L/D with y = (choking velocity/velocity)^2
 */
VTX_API vtx_status vtx_fanno_mach(double gamma, double length, int32_t branch, double *mach);

/* Mach number at the end of a pipe from that at its beginning.
 *
 * gamma        in   -  1.01..1.7
 * inlet_mach   in   -  1e-4..50   the outlet stays on its side of 1
 * length       in   -  0..1e8     f L/D plus loss coefficients
 * outlet_mach  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the pipe is longer than the flow can bear: it chokes, or a shock moves in)
 * accuracy  1e-14 relative
 * source    as vtx_fanno_length
 */
VTX_API vtx_status vtx_fanno_outlet_mach(double gamma, double inlet_mach, double length, double *outlet_mach);

/* Static temperature over that at Mach 1.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1e-4..50
 * ratio  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    as vtx_fanno_length
 */
VTX_API vtx_status vtx_fanno_temperature_ratio(double gamma, double mach, double *ratio);

/* Mach number from the static temperature over that at Mach 1.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  above 0, below (gamma+1)/2
 * mach   out  -  1e-4..50
 *
 * status    OK, BAD_ARGUMENT (ratio at or above its limit), OUT_OF_RANGE
 * accuracy  rounding of the closed form; a ratio near its limit fixes a small Mach number poorly
 * source    as vtx_fanno_length
 */
VTX_API vtx_status vtx_fanno_mach_from_temperature(double gamma, double ratio, double *mach);

/* Static pressure over that at Mach 1.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1e-4..50
 * ratio  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    as vtx_fanno_length
 */
VTX_API vtx_status vtx_fanno_pressure_ratio(double gamma, double mach, double *ratio);

/* Mach number from the static pressure over that at Mach 1.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  above 0
 * mach   out  -  1e-4..50
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding of the closed form
 * source    as vtx_fanno_length
 */
VTX_API vtx_status vtx_fanno_mach_from_pressure(double gamma, double ratio, double *mach);

/* Velocity over that at Mach 1, which is also the density at Mach 1 over the density.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1e-4..50
 * ratio  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    as vtx_fanno_length
 */
VTX_API vtx_status vtx_fanno_velocity_ratio(double gamma, double mach, double *ratio);

/* Mach number from the velocity over that at Mach 1.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  above 0, below sqrt((gamma+1)/(gamma-1))
 * mach   out  -  1e-4..50
 *
 * status    OK, BAD_ARGUMENT (ratio at or above its limit), OUT_OF_RANGE
 * accuracy  rounding of the closed form
 * source    as vtx_fanno_length
 */
VTX_API vtx_status vtx_fanno_mach_from_velocity(double gamma, double ratio, double *mach);

/* Stagnation pressure over that at Mach 1: what friction costs for good. Equal to the isentropic area ratio A/A*.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1e-4..50
 * ratio  out  -  1 or more
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1e-14 relative
 * source    as vtx_fanno_length
 */
VTX_API vtx_status vtx_fanno_stagnation_pressure_ratio(double gamma, double mach, double *ratio);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_fanno_length_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *length, ptrdiff_t length_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_fanno_mach_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *length,
        ptrdiff_t length_stride, int32_t branch, double *mach, ptrdiff_t mach_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_fanno_outlet_mach_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_mach, ptrdiff_t inlet_mach_stride, const double *length, ptrdiff_t length_stride,
        double *outlet_mach, ptrdiff_t outlet_mach_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_fanno_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_fanno_mach_from_temperature_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_fanno_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_fanno_mach_from_pressure_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_fanno_velocity_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_fanno_mach_from_velocity_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_fanno_stagnation_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
