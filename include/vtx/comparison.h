/* The vortex tube against its rivals: the same compressed air blown plainly, and a liquid.
 *
 * Not a price comparison: air_cost.h turns air into money.
 * See also: job.h for the forward pass, impingement.h for the film coefficients. */
#ifndef VTX_COMPARISON_H
#define VTX_COMPARISON_H

#include <vtx/job.h>

#ifdef __cplusplus
extern "C" {
#endif

/* A face cooled by the cooler, by a plain blast of the same air, and by a liquid. */
typedef struct vtx_comparison {
    double cooler_heat;              /* W, out of the face at the duty's target temperature, typical tube */
    double cooler_heat_low;          /* W, tube at the low end of its band */
    double cooler_heat_high;         /* W, tube at the high end */
    double cooler_coefficient;       /* W/(m2 K) */
    double plain_heat;               /* W, plain blast of all the air the cooler draws, from the same outlets */
    double plain_coefficient;        /* W/(m2 K) */
    double plain_temperature;        /* K, of the plain jet's total temperature: the supply throttled to the room */
    double plain_flow_for_equal;     /* kg/s of plain air that takes the cooler's heat; NaN with FIELD_UNAVAILABLE where no flow searched does */
    double plain_share_for_equal;    /* -, the same over the cooler's inlet flow: below 1 plain air is the better buy */
    double crossover_temperature;    /* K, face temperature above which plain air takes more heat; NaN with FIELD_UNAVAILABLE outside 150..1500 K */
    double liquid_heat;              /* W, by the caller's liquid */
    double liquid_temperature_rise;  /* K, of that liquid */
    int32_t plain_air_better;        /* 1 when the plain blast takes more heat at the target temperature than the typical tube, else 0 */
    int32_t advisories;              /* PLAIN_AIR_BETTER, and those of jets and point */
} vtx_comparison;

/* A liquid that could do the job instead. A coefficient of 0: no liquid. */
typedef struct vtx_liquid {
    double film_coefficient; /* W/(m2 K), the caller's: flood 1e3..1e4, mist 1e2..1e3 by common practice, no source */
    double temperature;      /* K, supply */
    double mass_flow;        /* kg/s */
    double specific_heat;    /* J/(kg K) */
    double reserved[4];      /* 0 */
} vtx_liquid;

/* No liquid; water's specific heat of 4180 J/(kg K), 293.15 K, 0.05 kg/s for when one is added.
 *
 * liquid    out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_liquid_init(vtx_liquid *liquid);

/* Heat out of a face by cooler, plain air and liquid.
 *
 * job        in   -   its duty needs face_area and standoff
 * liquid     in   -
 * comparison out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION, NOT_CONVERGED
 * advisory  PLAIN_AIR_BETTER, FIELD_UNAVAILABLE, those of vtx_job_evaluate
 * accuracy  film coefficients 15 to 20 % each, but their ratio better: the same correlation serves both jets
 * source    impingement.h for both jets; throttle of process.h; liquid: a stream along a face of one temperature
 * note      the warmer the face, the more plain air gains: it has all the flow, the vortex tube the colder part of it
 */
VTX_API vtx_status vtx_compare_plain_air(const vtx_job *job, const vtx_liquid *liquid, vtx_comparison *comparison);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_compare_plain_air_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_liquid *liquid,
        ptrdiff_t liquid_stride, vtx_comparison *comparison, ptrdiff_t comparison_stride, int32_t *status,
        size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
