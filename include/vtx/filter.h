/* Filters in service: pressure drop at any flow, how loaded the element is, when to change it.
 *
 * Not what a filter keeps back: purity.h. Its place among the other parts of a line: chain.h.
 * See also: trend.h for the date from several readings, compressor.h for what a pascal of pressure drop costs in power. */
#ifndef VTX_FILTER_H
#define VTX_FILTER_H

#include <vtx/chain_element.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* How the resistance of an element grows with the dirt it has met. */
enum vtx_filter_growth {
    VTX_FILTER_CAKE = 460,    /* evenly: dust settles on the surface */
    VTX_FILTER_CLOGGING = 461 /* by a constant share in equal times: pores close; the earlier and so the careful answer */
};

/* A filter as its data sheet gives it: clean (a coalescing element wetted), at one flow. */
typedef struct vtx_filter {
    double rated_flow;    /* kg/s, 1e-9..1e4; no default */
    double rated_density; /* kg/m3, 0.1..1000, of the compressed air at that rating; no default */
    double clean_drop;    /* Pa, 1..1e6; default 1e4 (common practice, no source) */
    double medium_share;  /* 0.05..1, of the clean drop: in the medium, in proportion to the flow; the rest in the housing, by its square; default 0.7 (no source) */
    double change_drop;   /* Pa, above clean_drop..1e7, at the rated flow; default 5e4: 0.35 to 0.7 bar in common practice (no source) */
    double reserved[4];   /* 0 */
} vtx_filter;

/* Sets the defaults; rated_flow and rated_density are 0 and must be given.
 *
 * filter  out
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_filter_init(vtx_filter *filter);

/* Pressure drop at another flow and density, with a loaded element.
 *
 * filter     in
 * density    in   kg/m3  0.1..1000, of the compressed air there
 * mass_flow  in   kg/s   0..1e4
 * loading    in   -      0.01..1e4, resistance of the medium over that of the clean one: 1 when clean
 * drop       out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the drop would exceed 1e8 Pa)
 * accuracy  10 to 20 % away from the rated flow (common practice, no source); for drops small against the pressure
 * source    medium: Darcy's law, drop in proportion to the volume flow; housing: in proportion to density times volume flow squared
 */
VTX_API vtx_status vtx_filter_drop(const vtx_filter *filter, double density, double mass_flow, double loading, double *drop);

/* Loading of the element, from a reading of the pressure drop.
 *
 * filter     in
 * density    in   kg/m3  0.1..1000
 * mass_flow  in   kg/s   1e-9..1e4
 * drop       in   Pa     0.01..1e8
 * loading    out  -      1 when clean; below 1 the element is torn or missing, or a gauge is wrong
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the clean housing alone would cost more)
 * accuracy  as good as the readings: the flow counts as much as the drop
 * source    vtx_filter_drop, solved for the loading
 */
VTX_API vtx_status vtx_filter_loading(const vtx_filter *filter, double density, double mass_flow, double drop, double *loading);

/* A reading of the pressure drop carried to another flow: what the same element would show there, so that readings of different days compare.
 *
 * filter             in
 * density            in   kg/m3  0.1..1000, of the compressed air at the reading
 * mass_flow          in   kg/s   1e-9..1e4, at the reading
 * drop               in   Pa     0.01..1e8, the reading
 * flow_uncertainty   in   kg/s   0..1e4, standard
 * drop_uncertainty   in   Pa     0..1e8, standard
 * reference_density  in   kg/m3  0.1..1000, of the compressed air at the other flow
 * reference_flow     in   kg/s   1e-9..1e4
 * reference_drop     out  Pa
 * uncertainty        out  Pa     standard; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the clean housing alone would cost more)
 * accuracy  that of the split between medium and housing: at most the difference of flow and its square; first order in the uncertainties
 * source    vtx_filter_loading, then vtx_filter_drop; JCGM 100:2008, equation 10
 * note      what trend.h needs: its limit is then the change_drop, at the rated flow and density
 */
VTX_API vtx_status vtx_filter_drop_at_reference(const vtx_filter *filter, double density, double mass_flow, double drop, double flow_uncertainty,
                                                double drop_uncertainty, double reference_density, double reference_flow,
                                                double *reference_drop, double *uncertainty);

/* Loading at which the element is due: the drop at the rated flow reaches change_drop.
 *
 * filter   in
 * loading  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact
 * source    vtx_filter_drop, solved for the loading
 */
VTX_API vtx_status vtx_filter_loading_when_due(const vtx_filter *filter, double *loading);

/* The filter with its loaded element as a part of a supply: what loading takes from the pressure at the cooler, by chain.h.
 *
 * filter         in
 * loading        in   -  0.01..1e4
 * chain_element  out
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also where vtx_chain_filter refuses the rating)
 * accuracy  as vtx_filter_drop
 * source    vtx_chain_filter, its laminar part times the loading
 */
VTX_API vtx_status vtx_filter_element(const vtx_filter *filter, double loading, vtx_chain_element *chain_element);

/* Time left until an element is due, from how far it has come.
 *
 * growth        in   -  VTX_FILTER_CAKE or VTX_FILTER_CLOGGING
 * service_time  in   s  1..1e9, since it was clean, running time alone
 * loading       in   -  0.01..1e4, now
 * loading_due   in   -  above 1..1e4, from vtx_filter_loading_when_due
 * time_left     out  s  negative: overdue by that
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also beyond 1e12 s), NO_SOLUTION (no growth seen yet)
 * accuracy  an extrapolation: before a third of the way a factor of 2 is good (no source); read again
 * source    loading = 1 + a t (cake), exp(a t) (clogging)
 */
VTX_API vtx_status vtx_filter_time_left(int32_t growth, double service_time, double loading, double loading_due, double *time_left);

/* Running time after which a new element is cheaper than the power its growing pressure drop costs.
 *
 * element_cost        in   currency    1e-6..1e9, with the work of changing it
 * drop_rate           in   Pa/s        1e-12..1e3, growth of the pressure drop
 * power_per_pressure  in   W/Pa        1e-9..1e6, from vtx_power_per_pressure
 * energy_price        in   currency/J  1e-15..1
 * interval            out  s
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also beyond 1e12 s)
 * accuracy  exact for even growth and a compressor whose pressure follows the drop
 * source    least (element_cost + power cost)/t: t = sqrt(2 element_cost/(energy_price power_per_pressure drop_rate))
 * note      change at whichever comes first, this or vtx_filter_time_left
 */
VTX_API vtx_status vtx_filter_economic_interval(double element_cost, double drop_rate, double power_per_pressure, double energy_price,
                                                double *interval);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_filter_drop_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride, const double *density,
        ptrdiff_t density_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *loading,
        ptrdiff_t loading_stride, double *drop, ptrdiff_t drop_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_filter_loading_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride,
        const double *density, ptrdiff_t density_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *drop, ptrdiff_t drop_stride, double *loading, ptrdiff_t loading_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_filter_drop_at_reference_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride,
        const double *density, ptrdiff_t density_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *drop, ptrdiff_t drop_stride, const double *flow_uncertainty, ptrdiff_t flow_uncertainty_stride,
        const double *drop_uncertainty, ptrdiff_t drop_uncertainty_stride, const double *reference_density,
        ptrdiff_t reference_density_stride, const double *reference_flow, ptrdiff_t reference_flow_stride,
        double *reference_drop, ptrdiff_t reference_drop_stride, double *uncertainty, ptrdiff_t uncertainty_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_filter_loading_when_due_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride,
        double *loading, ptrdiff_t loading_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_filter_element_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride,
        const double *loading, ptrdiff_t loading_stride, vtx_chain_element *chain_element,
        ptrdiff_t chain_element_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_filter_time_left_batch(size_t n, int32_t growth, const double *service_time,
        ptrdiff_t service_time_stride, const double *loading, ptrdiff_t loading_stride, const double *loading_due,
        ptrdiff_t loading_due_stride, double *time_left, ptrdiff_t time_left_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_filter_economic_interval_batch(size_t n, const double *element_cost, ptrdiff_t element_cost_stride,
        const double *drop_rate, ptrdiff_t drop_rate_stride, const double *power_per_pressure,
        ptrdiff_t power_per_pressure_stride, const double *energy_price, ptrdiff_t energy_price_stride,
        double *interval, ptrdiff_t interval_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
