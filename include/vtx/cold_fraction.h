/* The cold fraction of a running tube, measured: from thermometers, from flow meters, from the openings. With uncertainty.
 *
 * Not the cold fraction to choose (setting.h).
 * See also: laws.h for the plain perfect-gas formula, calibration.h for what to do with several readings.
 *
 * Uncertainties are standard ones (one standard deviation), independent of each other, carried through to first order
 * (JCGM 100:2008). */
#ifndef VTX_COLD_FRACTION_H
#define VTX_COLD_FRACTION_H

#include <vtx/separation.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Which two flows were measured. */
enum vtx_flow_pair {
    VTX_FLOWS_INLET_AND_COLD = 310,
    VTX_FLOWS_INLET_AND_HOT = 311,
    VTX_FLOWS_COLD_AND_HOT = 312
};

/* Cold fraction from the three stagnation temperatures, by the energy balance of an adiabatic tube: (hh - h0) / (hh - hc).
 *
 * model                    in   -     enum vtx_air_model; IDEAL knows no Joule-Thomson drop and reads real air 0.02..0.04 low at 8 bar
 * inlet_pressure           in   Pa    as vtx_tube_separate
 * inlet_temperature        in   K     150..450
 * humidity_ratio           in   -     0..0.2
 * cold_pressure            in   Pa    as vtx_tube_separate
 * cold_temperature         in   K     50..1000
 * hot_pressure             in   Pa    as vtx_tube_separate
 * hot_temperature          in   K     50..1000
 * inlet_uncertainty        in   K     0..100
 * cold_uncertainty         in   K     0..100
 * hot_uncertainty          in   K     0..100
 * cold_fraction            out  -
 * uncertainty              out  -     may be null
 *
 * status    OK, BAD_ARGUMENT (also: the inlet's enthalpy does not lie between the outlets'), OUT_OF_RANGE, NOT_CONVERGED
 * accuracy  first-order; a common error of all three thermometers cancels and is not in it
 * note      a hot end that loses heat makes the cold fraction read low: 10 % of the hot side's heat is 0.02 at 0.7
 * caution   outlets can burn or freeze skin; probes in the stream see its dynamic temperature too
 * source    first law; propagation of uncertainty: JCGM 100:2008, equation 10
 */
VTX_API vtx_status vtx_cold_fraction_from_thermometers(int32_t model, double inlet_pressure, double inlet_temperature,
                                                       double humidity_ratio, double cold_pressure, double cold_temperature,
                                                       double hot_pressure, double hot_temperature, double inlet_uncertainty,
                                                       double cold_uncertainty, double hot_uncertainty, double *cold_fraction,
                                                       double *uncertainty);

/* Cold fraction from two mass flows.
 *
 * pair                in   -     enum vtx_flow_pair: what the first and the second flow are
 * first_flow          in   kg/s  1e-9..100
 * second_flow         in   kg/s  0..100   of an inlet at most the inlet's flow, else BAD_ARGUMENT
 * first_uncertainty   in   kg/s  0..100
 * second_uncertainty  in   kg/s  0..100
 * cold_fraction       out  -
 * uncertainty         out  -     may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  first-order
 * note      mass flows: volumetric readings need each stream's own state (standard_flow.h)
 * source    definition; JCGM 100:2008, equation 10
 */
VTX_API vtx_status vtx_cold_fraction_from_flows(int32_t pair, double first_flow, double second_flow, double first_uncertainty,
                                                double second_uncertainty, double *cold_fraction, double *uncertainty);

/* Three measured flows made to balance, each moved in proportion to its variance. */
typedef struct vtx_flow_balance {
    double cold_fraction;  /* -     after the adjustment */
    double uncertainty;    /* -     of the cold fraction */
    double inlet_flow;     /* kg/s  adjusted */
    double cold_flow;      /* kg/s  adjusted */
    double hot_flow;       /* kg/s  adjusted */
    double imbalance;      /* kg/s  inlet minus outlets, as measured */
    double discrepancy;    /* -     imbalance over its standard uncertainty; beyond 2.6 less than 1 % likely */
    int32_t advisories;    /* MODEL_MISFIT: discrepancy beyond 2.6, a meter is wrong or air leaks */
    int32_t spare;         /* 0 */
} vtx_flow_balance;

/* Cold fraction from all three mass flows, by least squares under the mass balance.
 *
 * inlet_flow         in   kg/s  1e-9..100
 * cold_flow          in   kg/s  0..100
 * hot_flow           in   kg/s  0..100
 * inlet_uncertainty  in   kg/s  1e-15..100
 * cold_uncertainty   in   kg/s  1e-15..100
 * hot_uncertainty    in   kg/s  1e-15..100
 * balance            out  -
 *
 * status    OK, BAD_ARGUMENT (also: the balanced cold fraction is outside 0..1), OUT_OF_RANGE
 * accuracy  exact for independent normal errors
 * source    weighted least squares with one linear condition (textbook)
 */
VTX_API vtx_status vtx_cold_fraction_from_three_flows(double inlet_flow, double cold_flow, double hot_flow, double inlet_uncertainty,
                                                      double cold_uncertainty, double hot_uncertainty, vtx_flow_balance *balance);

/* Two independent estimates of a cold fraction joined by their variances.
 *
 * first_fraction      in   -     0..1
 * first_uncertainty   in   -     1e-12..1
 * second_fraction     in   -     0..1
 * second_uncertainty  in   -     1e-12..1
 * cold_fraction       out  -
 * uncertainty         out  -     may be null
 * discrepancy         out  -     difference over its standard uncertainty, first minus second; beyond +-2.6 they contradict; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  exact for independent normal errors
 * note      thermometers below meters (negative, thermometers first) points to a hot end losing heat
 * source    weighted mean (textbook)
 */
VTX_API vtx_status vtx_cold_fraction_combined(double first_fraction, double first_uncertainty, double second_fraction,
                                              double second_uncertainty, double *cold_fraction, double *uncertainty,
                                              double *discrepancy);

/* The openings of a tube around its swirl chamber, as effective areas: area times discharge coefficient. */
typedef struct vtx_openings {
    double inlet_area;         /* m2  1e-9..0.1   all inlet nozzles together */
    double cold_area;          /* m2  1e-9..0.1   cold orifice; found by a flow test it holds what the swirl costs there */
    double hot_area;           /* m2  0..0.1      hot valve; 0 is shut */
    double inlet_uncertainty;  /* -   0..1        relative standard uncertainty of inlet_area; default 0.03 */
    double cold_uncertainty;   /* -   0..1        of cold_area; default 0.05 */
    double hot_uncertainty;    /* -   0..1        of hot_area; default 0.05 */
    double reserved[4];        /* -   0 */
} vtx_openings;

/* Areas unset (NaN), which every call refuses until they are given; uncertainties 3, 5 and 5 %.
 *
 * openings  out  -
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  the uncertainties are an assumption, no source
 * source    none
 */
VTX_API vtx_status vtx_openings_init(vtx_openings *openings);

/* What the openings let through. */
typedef struct vtx_opening_flow {
    double cold_fraction;         /* -     */
    double cold_uncertainty;      /* -     standard, from the areas and from the tube's band */
    double mass_flow;             /* kg/s  inlet */
    double mass_flow_uncertainty; /* kg/s  standard, from the areas */
    double chamber_pressure;      /* Pa    between inlet nozzle and outlets */
    double cold_temperature;      /* K     */
    double hot_temperature;       /* K     */
    int32_t advisories;           /* CHOKED: the inlet nozzle is; UNCALIBRATED, EXTRAPOLATED */
    int32_t spare;                /* 0 */
} vtx_opening_flow;

/* Cold fraction that the openings give, by flow balance of the swirl chamber: inlet nozzle in series with the two outlets, which
 * are parallel: cold orifice and hot valve. Each is a perfect-gas orifice at its own stream's temperature.
 *
 * tube               in   -
 * openings           in   -
 * model              in   -     enum vtx_air_model
 * inlet_pressure     in   Pa    as vtx_tube_separate
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2
 * cold_pressure      in   Pa    as vtx_tube_separate
 * hot_pressure       in   Pa    as vtx_tube_separate
 * flow               out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (an outlet would draw air in), NOT_CONVERGED
 * accuracy  mass balances to 1e-12; as a prediction no better than the areas, and the swirl's pressure gradient between rim and
 *           core is only what cold_area holds of it
 * advisory  CHOKED, UNCALIBRATED, EXTRAPOLATED
 * source    mass balance; orifices of restriction.h; JCGM 100:2008, equation 10
 */
VTX_API vtx_status vtx_cold_fraction_from_openings(const vtx_tube *tube, const vtx_openings *openings, int32_t model,
                                                   double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                                   double cold_pressure, double hot_pressure, vtx_opening_flow *flow);

/* Effective area of the hot valve that gives a wanted cold fraction.
 *
 * tube               in   -
 * openings           in   -     its hot_area is not used, but must be valid
 * model              in   -     enum vtx_air_model
 * inlet_pressure     in   Pa    as vtx_tube_separate
 * inlet_temperature  in   K     150..450
 * humidity_ratio     in   -     0..0.2
 * cold_pressure      in   Pa    as vtx_tube_separate
 * hot_pressure       in   Pa    as vtx_tube_separate
 * cold_fraction      in   -     0..1   0 is OUT_OF_RANGE: the cold orifice always passes air
 * hot_area           out  m2
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the cold orifice passes too much or too little at any valve opening),
 *           NOT_CONVERGED
 * accuracy  exact inverse of vtx_cold_fraction_from_openings, 1e-10
 * source    as there
 */
VTX_API vtx_status vtx_hot_area_for_cold_fraction(const vtx_tube *tube, const vtx_openings *openings, int32_t model,
                                                  double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                                  double cold_pressure, double hot_pressure, double cold_fraction,
                                                  double *hot_area);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_cold_fraction_from_thermometers_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, const double *hot_temperature,
        ptrdiff_t hot_temperature_stride, const double *inlet_uncertainty, ptrdiff_t inlet_uncertainty_stride,
        const double *cold_uncertainty, ptrdiff_t cold_uncertainty_stride, const double *hot_uncertainty,
        ptrdiff_t hot_uncertainty_stride, double *cold_fraction, ptrdiff_t cold_fraction_stride, double *uncertainty,
        ptrdiff_t uncertainty_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cold_fraction_from_flows_batch(size_t n, int32_t pair, const double *first_flow,
        ptrdiff_t first_flow_stride, const double *second_flow, ptrdiff_t second_flow_stride,
        const double *first_uncertainty, ptrdiff_t first_uncertainty_stride, const double *second_uncertainty,
        ptrdiff_t second_uncertainty_stride, double *cold_fraction, ptrdiff_t cold_fraction_stride,
        double *uncertainty, ptrdiff_t uncertainty_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cold_fraction_from_three_flows_batch(size_t n, const double *inlet_flow, ptrdiff_t inlet_flow_stride,
        const double *cold_flow, ptrdiff_t cold_flow_stride, const double *hot_flow, ptrdiff_t hot_flow_stride,
        const double *inlet_uncertainty, ptrdiff_t inlet_uncertainty_stride, const double *cold_uncertainty,
        ptrdiff_t cold_uncertainty_stride, const double *hot_uncertainty, ptrdiff_t hot_uncertainty_stride,
        vtx_flow_balance *balance, ptrdiff_t balance_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cold_fraction_combined_batch(size_t n, const double *first_fraction, ptrdiff_t first_fraction_stride,
        const double *first_uncertainty, ptrdiff_t first_uncertainty_stride, const double *second_fraction,
        ptrdiff_t second_fraction_stride, const double *second_uncertainty, ptrdiff_t second_uncertainty_stride,
        double *cold_fraction, ptrdiff_t cold_fraction_stride, double *uncertainty, ptrdiff_t uncertainty_stride,
        double *discrepancy, ptrdiff_t discrepancy_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_cold_fraction_from_openings_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        const vtx_openings *openings, ptrdiff_t openings_stride, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
        vtx_opening_flow *flow, ptrdiff_t flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_hot_area_for_cold_fraction_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        const vtx_openings *openings, ptrdiff_t openings_stride, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *hot_area, ptrdiff_t hot_area_stride,
        int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
