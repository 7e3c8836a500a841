/* Wear by the visit: the inlet nozzle's area and the tube's efficiency together, from one set of readings of a cooler in service.
 *
 * Not a search for the cause (diagnosis.h): two things are taken to change, both at once, and nothing else.
 * See also: trend.h for the date at which either crosses a limit. */
#ifndef VTX_WEAR_H
#define VTX_WEAR_H

#include <vtx/diagnosis.h>
#include <vtx/uncertainty.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What one visit's readings show. Uncertainties are standard ones. */
typedef struct vtx_wear {
    double inlet_area_factor;             /* -, inlet nozzle's area over that of the rated one; NaN when the readings do not see it */
    double inlet_area_factor_uncertainty; /* - */
    double peak_efficiency;               /* -, of the tube; NaN when the readings do not see it */
    double peak_efficiency_uncertainty;   /* - */
    double correlation;                   /* -, of the two errors */
    double cold_fraction;                 /* -, by the fit */
    double cold_fraction_uncertainty;     /* - */
    double valve_opening;                 /* -, by the fit: moves only as far as its uncertainty allows */
    double chi_square;                    /* of readings and description together */
    double probability;                   /* -, chance of a larger one; NaN without freedom */
    int32_t freedom;                      /* readings less what is fitted without a hold */
    int32_t readings;                     /* how many were given */
    int32_t advisories;                   /* bits of enum vtx_advisory */
    int32_t spare;                        /* 0 */
} vtx_wear;

/* Nozzle and efficiency fitted to one visit's readings.
 *
 * job          in   -   the cooler as it was; its valve opening is held, found from the cold fraction when that is what the job holds
 * uncertainty  in   -   of the description; supply pressure, supply temperature and tube efficiency are not looked at where the readings
 *                       tell. Set to 0 what is the same at every visit (rated flow, coldest fraction, line loss, a sealed valve): it
 *                       shifts all visits alike, and a trend does not feel it
 * readings     in   -   two or more
 * wear         out  -
 *
 * status    OK, BAD_ARGUMENT (also fewer than two readings), OUT_OF_RANGE, NO_SOLUTION (the readings see neither), NOT_CONVERGED
 * advisory  MODEL_MISFIT (probability below 0.01: something else is wrong, see diagnosis.h), FIELD_UNAVAILABLE, those of the operating point found
 * accuracy  without noise 1e-8. With ordinary instruments 95 % intervals hold area and efficiency in 95.4 % of 2000 draws, and the date by
 *           trend.h from six visits in 94.8 % of 1000 (tests/cooler/test_wear.c)
 * source    least squares on the forward pass, what is known beforehand as further readings
 * note      the nozzle is seen by a flow meter, or by the pressures at both ends of a line; the efficiency by a cold or hot thermometer
 * caution   shut off, vent and lock out before opening anything; cold and hot ends hurt skin, jets and noise eyes and ears
 */
VTX_API vtx_status vtx_find_wear(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings, vtx_wear *wear);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_find_wear_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, vtx_wear *wear, ptrdiff_t wear_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
