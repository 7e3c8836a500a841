/* Normal shocks of a perfect gas: what a supersonic stream loses when it slows down at once.
 *
 * Not oblique shocks and not the loss-free relations (isentropic.h).
 * See also: jet.h for what leaves a choked outlet. */
#ifndef VTX_SHOCK_H
#define VTX_SHOCK_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Mach number behind a normal shock.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1..50      ahead of the shock; below 1 is BAD_ARGUMENT: no shock
 * downstream_mach  out  -  0.37..1
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    NACA Report 1135 (1953), normal shock relations, equations 93 to 100
 */
VTX_API vtx_status vtx_shock_downstream_mach(double gamma, double mach, double *downstream_mach);

/* Static pressure behind over ahead of a normal shock.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1..50      ahead of the shock; below 1 is BAD_ARGUMENT: no shock
 * ratio  out  -  1 or more
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    NACA Report 1135 (1953), normal shock relations, equations 93 to 100
 */
VTX_API vtx_status vtx_shock_pressure_ratio(double gamma, double mach, double *ratio);

/* Density behind over ahead of a normal shock; also velocity ahead over behind.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1..50      ahead of the shock; below 1 is BAD_ARGUMENT: no shock
 * ratio  out  -  1..(gamma+1)/(gamma-1)
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    NACA Report 1135 (1953), normal shock relations, equations 93 to 100
 */
VTX_API vtx_status vtx_shock_density_ratio(double gamma, double mach, double *ratio);

/* Static temperature behind over ahead of a normal shock.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1..50      ahead of the shock; below 1 is BAD_ARGUMENT: no shock
 * ratio  out  -  1 or more
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding
 * source    NACA Report 1135 (1953), normal shock relations, equations 93 to 100
 */
VTX_API vtx_status vtx_shock_temperature_ratio(double gamma, double mach, double *ratio);

/* Stagnation pressure behind over ahead of a normal shock.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1..50      ahead of the shock; below 1 is BAD_ARGUMENT: no shock
 * ratio  out  -  0..1
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding, times gamma/(gamma-1)
 * source    NACA Report 1135 (1953), normal shock relations, equations 93 to 100
 */
VTX_API vtx_status vtx_shock_stagnation_ratio(double gamma, double mach, double *ratio);

/* Static pressure ahead of a normal shock over the stagnation pressure behind it, which a probe in the stream reads.
 *
 * gamma  in   -  1.01..1.7
 * mach   in   -  1..50      ahead of the shock; below 1 is BAD_ARGUMENT: no shock
 * ratio  out  -  0..critical pressure ratio
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding, times gamma/(gamma-1)
 * source    NACA Report 1135 (1953), normal shock relations, equations 93 to 100
 */
VTX_API vtx_status vtx_shock_pitot_ratio(double gamma, double mach, double *ratio);

/* Mach number ahead of a normal shock, from the Mach number behind it.
 *
 * gamma  in   -  1.01..1.7
 * downstream_mach  in   -  0..1   above 1 is BAD_ARGUMENT, at or below sqrt((gamma-1)/(2 gamma)) NO_SOLUTION
 * mach   out  -  1..50      beyond 50 is OUT_OF_RANGE
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION
 * accuracy  inverse of vtx_shock_downstream_mach, closed form
 * source    as vtx_shock_downstream_mach
 */
VTX_API vtx_status vtx_shock_mach_for_downstream_mach(double gamma, double downstream_mach, double *mach);

/* Mach number ahead of a normal shock, from the ratio of vtx_shock_pressure_ratio.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  1..   below 1 is BAD_ARGUMENT
 * mach   out  -  1..50      beyond 50 is OUT_OF_RANGE
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  inverse of vtx_shock_pressure_ratio, closed form
 * source    as vtx_shock_pressure_ratio
 */
VTX_API vtx_status vtx_shock_mach_for_pressure_ratio(double gamma, double ratio, double *mach);

/* Mach number ahead of a normal shock, from the ratio of vtx_shock_density_ratio.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  1..   below 1 is BAD_ARGUMENT, at or above (gamma+1)/(gamma-1) NO_SOLUTION
 * mach   out  -  1..50      beyond 50 is OUT_OF_RANGE
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION
 * accuracy  inverse of vtx_shock_density_ratio, closed form
 * source    as vtx_shock_density_ratio
 */
VTX_API vtx_status vtx_shock_mach_for_density_ratio(double gamma, double ratio, double *mach);

/* Mach number ahead of a normal shock, from the ratio of vtx_shock_temperature_ratio.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  1..   below 1 is BAD_ARGUMENT
 * mach   out  -  1..50      beyond 50 is OUT_OF_RANGE
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  inverse of vtx_shock_temperature_ratio, closed form
 * source    as vtx_shock_temperature_ratio
 */
VTX_API vtx_status vtx_shock_mach_for_temperature_ratio(double gamma, double ratio, double *mach);

/* Mach number ahead of a normal shock, from the ratio of vtx_shock_stagnation_ratio.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  0..1   0 and above 1 are BAD_ARGUMENT
 * mach   out  -  1..50      beyond 50 is OUT_OF_RANGE
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  inverse of vtx_shock_stagnation_ratio, within 1e-12 relative of the ratio; close to 1 the Mach number is open to 1e-5, because the loss is of third order
 * source    as vtx_shock_stagnation_ratio
 */
VTX_API vtx_status vtx_shock_mach_for_stagnation_ratio(double gamma, double ratio, double *mach);

/* Mach number ahead of a normal shock, from the ratio of vtx_shock_pitot_ratio.
 *
 * gamma  in   -  1.01..1.7
 * ratio  in   -  0..critical   0 and above 1 are BAD_ARGUMENT, above the critical pressure ratio NO_SOLUTION: the stream is subsonic
 * mach   out  -  1..50      beyond 50 is OUT_OF_RANGE
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * accuracy  inverse of vtx_shock_pitot_ratio, within 1e-12 relative of the ratio
 * source    as vtx_shock_pitot_ratio
 */
VTX_API vtx_status vtx_shock_mach_for_pitot_ratio(double gamma, double ratio, double *mach);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_shock_downstream_mach_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *downstream_mach, ptrdiff_t downstream_mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_shock_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_shock_density_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_shock_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_shock_stagnation_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_shock_pitot_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_shock_mach_for_downstream_mach_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *downstream_mach, ptrdiff_t downstream_mach_stride, double *mach, ptrdiff_t mach_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_shock_mach_for_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_shock_mach_for_density_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_shock_mach_for_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_shock_mach_for_stagnation_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_shock_mach_for_pitot_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
