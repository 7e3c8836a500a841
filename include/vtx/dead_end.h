/* What a blocked opening can do: dead-end pressure, and the limit for air that people clean with.
 *
 * Not a judgement of the work place: eye protection, chip guards and local rules stay with those who know it.
 * See also: restriction.h for effective areas, units.h for gauge pressure. */
#ifndef VTX_DEAD_END_H
#define VTX_DEAD_END_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* 29 CFR 1910.242(b): air for cleaning below 30 psi above ambient, in pascal (1 psi is 6894.757293168361 Pa). */
#define VTX_CLEANING_AIR_LIMIT (30 * 6894.757293168361)

/* Static pressure behind a blocked outlet, when the air still gets out somewhere else: through the hot valve of a vortex tube,
 * through the side holes of a safety nozzle.
 *
 * gamma              in   -   1.01..1.7, 1.4 for air
 * feed_area          in   m2  1e-12..10, effective (area times discharge coefficient) of all that feeds the space behind the outlet
 * relief_area        in   m2  0..10, effective, of all that stays open; 0 when nothing does: the full supply pressure
 * supply_pressure    in   Pa  ambient_pressure..1e8, absolute
 * ambient_pressure   in   Pa  1e3..1e8
 * dead_end_pressure  out  Pa  absolute
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  two nozzles in series, equal stagnation temperatures: as good as the areas, 2 to 5 %
 * source    mass balance of two orifices (restriction.h)
 * caution   an opening pressed against skin can drive air into the body at any pressure in this range
 */
VTX_API vtx_status vtx_dead_end_pressure(double gamma, double feed_area, double relief_area, double supply_pressure,
                                         double ambient_pressure, double *dead_end_pressure);

/* Supply pressure at which the dead-end pressure reaches a given value.
 *
 * gamma              in   -   1.01..1.7
 * feed_area          in   m2  1e-12..10, effective
 * relief_area        in   m2  0..10, effective
 * ambient_pressure   in   Pa  1e3..1e8
 * dead_end_pressure  in   Pa  ambient_pressure..1e8, absolute
 * supply_pressure    out  Pa  absolute
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the supply would exceed 1e10 Pa)
 * accuracy  as vtx_dead_end_pressure
 * source    as vtx_dead_end_pressure, closed form
 */
VTX_API vtx_status vtx_dead_end_supply_pressure(double gamma, double feed_area, double relief_area, double ambient_pressure,
                                                double dead_end_pressure, double *supply_pressure);

/* A dead-end pressure against the limit for cleaning air. */
typedef struct vtx_dead_end {
    double gauge_pressure;       /* Pa above ambient */
    double margin;               /* Pa, limit less gauge pressure */
    int32_t cleaning_permitted;  /* 1: below the limit, with chip guards and eye protection; else 0 */
    int32_t advisories;          /* DEAD_END_PRESSURE when it is not below the limit */
} vtx_dead_end;

/* Whether air from an opening may be used for cleaning, as far as its pressure goes.
 *
 * dead_end_pressure  in   Pa  ambient_pressure..1e8, absolute, static, with the opening blocked
 * ambient_pressure   in   Pa  1e3..1e8
 * verdict            out
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact: the limit itself is not permitted
 * source    29 CFR 1910.242(b), read as the static pressure of the blocked opening
 * advisory  DEAD_END_PRESSURE
 * note      not a limit on the supply: a nozzle that cannot be dead-ended above it may be fed with more
 * caution   never blow at people or clothing; wear eye protection; chips fly
 */
VTX_API vtx_status vtx_cleaning_air_verdict(double dead_end_pressure, double ambient_pressure, vtx_dead_end *verdict);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_dead_end_pressure_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *feed_area, ptrdiff_t feed_area_stride, const double *relief_area, ptrdiff_t relief_area_stride,
        const double *supply_pressure, ptrdiff_t supply_pressure_stride, const double *ambient_pressure,
        ptrdiff_t ambient_pressure_stride, double *dead_end_pressure, ptrdiff_t dead_end_pressure_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_dead_end_supply_pressure_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *feed_area, ptrdiff_t feed_area_stride, const double *relief_area, ptrdiff_t relief_area_stride,
        const double *ambient_pressure, ptrdiff_t ambient_pressure_stride, const double *dead_end_pressure,
        ptrdiff_t dead_end_pressure_stride, double *supply_pressure, ptrdiff_t supply_pressure_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cleaning_air_verdict_batch(size_t n, const double *dead_end_pressure,
        ptrdiff_t dead_end_pressure_stride, const double *ambient_pressure, ptrdiff_t ambient_pressure_stride,
        vtx_dead_end *verdict, ptrdiff_t verdict_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
