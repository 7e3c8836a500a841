/* Water that freezes in the cold stream: where it starts, how much ice there is.
 *
 * Not what the ice then blocks: plugging of the cold end is a larger effect that nothing here models.
 * See also: separation.h for the streams, drying.h for the dryness to ask for, surface.h for frost from the room's air. */
#ifndef VTX_ICING_H
#define VTX_ICING_H

#include <vtx/separation.h>

#ifdef __cplusplus
extern "C" {
#endif

/* The cold fractions at which the cold outlet carries ice. */
typedef struct vtx_icing {
    double fog_temperature;      /* K      cold outlet at which the first liquid or ice forms; NaN when the feed is dry */
    double ice_temperature;      /* K      cold outlet at which the first ice forms, at most 273.16; NaN when the feed is dry */
    double icing_from;           /* -      lowest cold fraction with ice, typical tube; NaN when there is none */
    double icing_to;             /* -      highest cold fraction with ice, typical tube; NaN when there is none */
    double widest_from;          /* -      icing_from with efficiency_high; NaN when there is none */
    double widest_to;            /* -      icing_to with efficiency_high; NaN when there is none */
    double coldest_temperature;  /* K      coldest outlet of the typical tube, with its ice */
    double most_ice;             /* kg/kg  ice per kg dry air in that outlet */
    int32_t advisories;          /* bits of enum vtx_advisory: FREEZING when the typical tube can ice, FIELD_UNAVAILABLE, ... */
    int32_t spare;               /* 0 */
} vtx_icing;

/* Where in the cold fraction the feed's own water freezes in the cold outlet. Real air.
 *
 * tube               in   -     for a safe answer that of vtx_tube_for_question with VTX_QUESTION_FREEZING
 * inlet_pressure     in   Pa    1e4..5e6
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2   kg water per kg dry air in the feed
 * cold_pressure      in   Pa    1e3..inlet pressure; above it BAD_ARGUMENT
 * icing              out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  frost and dew points of moist_air.h; the tube's band decides the rest
 * advisory  FREEZING, UNCALIBRATED, FIELD_UNAVAILABLE, STATIC_FREEZING (in a sonic throat before the outlet)
 * note      the cold outlet need not be where it freezes first: air in a sonic inlet nozzle is at 0.833 of the inlet's temperature, static
 * source    inverse of vtx_tube_separate
 */
VTX_API vtx_status vtx_icing_range(const vtx_tube *tube, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                   double cold_pressure, vtx_icing *icing);

/* Mass flows of ice and of liquid water in the cold stream.
 *
 * streams          in   -     result of vtx_tube_separate
 * humidity_ratio   in   -     0..0.2   of the feed, as it went in there
 * inlet_mass_flow  in   kg/s  0..100   of moist air
 * ice_flow         out  kg/s  times 3600: kg per hour
 * liquid_flow      out  kg/s  may be null
 *
 * status    OK, BAD_ARGUMENT (also streams that are no result), OUT_OF_RANGE
 * accuracy  exact for the streams
 * source    mass balance
 */
VTX_API vtx_status vtx_cold_condensate_flow(const vtx_streams *streams, double humidity_ratio, double inlet_mass_flow, double *ice_flow,
                                            double *liquid_flow);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_icing_range_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, vtx_icing *icing, ptrdiff_t icing_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cold_condensate_flow_batch(size_t n, const vtx_streams *streams, ptrdiff_t streams_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *inlet_mass_flow,
        ptrdiff_t inlet_mass_flow_stride, double *ice_flow, ptrdiff_t ice_flow_stride, double *liquid_flow,
        ptrdiff_t liquid_flow_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
