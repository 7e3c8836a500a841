/* Control and shut-off valves by Kv: gas flow of IEC 60534-2-1, with reducers on both sides.
 *
 * Not pneumatic components with sonic conductance (conductance.h).
 * See also: flow_coefficient.h for Cv, effective area and conductance.
 *
 * Kv is the number of the trade: m3/h of water at 1 bar. Constants follow from that definition; the rounded ones of the standard
 * differ from it and from each other by up to 0.15 %. With reducers the expansion factor counts them in, as the edition of 2011 does;
 * the earlier rule finds a Kv up to some per cent larger. */
#ifndef VTX_VALVE_H
#define VTX_VALVE_H

#include <vtx/isentropic.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* A valve and the pipes it sits in. */
typedef struct vtx_valve {
    double flow_coefficient;      /* Kv  1e-6..1e5, m3/h of water at 1 bar */
    double pressure_ratio_factor; /* -   0.1..1, xT: (p1-p2)/p1 at choking with air */
    double size;                  /* m   0.002..2 nominal bore, or 0: no reducers */
    double inlet_pipe;            /* m   bore ahead, at least the size; not read when size is 0 */
    double outlet_pipe;           /* m   bore behind, at least the size; not read when size is 0 */
    double reserved[4];           /* zero */
} vtx_valve;

/* Kv 1, xT 0.7, no reducers.
 *
 * valve     out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_valve_init(vtx_valve *valve);

/* Highest outlet over inlet pressure at which a valve without reducers is choked.
 *
 * gamma                  in   -  1.01..1.7
 * pressure_ratio_factor  in   -  0.1..1     xT
 * ratio                  out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (never choked: gamma/1.4 times xT reaches 1)
 * accuracy  rounding
 * source    IEC 60534-2-1:2011, x = F_gamma xT
 */
VTX_API vtx_status vtx_valve_critical_ratio(double gamma, double pressure_ratio_factor, double *ratio);

/* Mass flow of gas through a valve.
 *
 * gas                in   -
 * valve              in   -                    with reducers up to a Kv of 0.0407 times the size in mm squared, beyond OUT_OF_RANGE
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..inlet     above the inlet pressure is BAD_ARGUMENT
 * mass_flow          out  kg/s
 * choked             out  -     1 when choked, else 0; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  the standard claims 5 % for turbulent flow without reducers
 * source    IEC 60534-2-1:2011, compressible fluids, fittings, choking (form of Y from memory); constants from the definition of Kv
 */
VTX_API vtx_status vtx_valve_mass_flow(const vtx_gas *gas, const vtx_valve *valve, double inlet_pressure, double inlet_temperature,
                                       double outlet_pressure, double *mass_flow, int32_t *choked);

/* Kv with which a valve passes a mass flow.
 *
 * gas                   in   -
 * valve                 in   -                  its flow_coefficient is not read
 * mass_flow             in   kg/s  0..1e4
 * inlet_pressure        in   Pa    1e3..1e8
 * inlet_temperature     in   K     50..1000
 * outlet_pressure       in   Pa    1e3..inlet
 * flow_coefficient      out  Kv    0 for no flow
 * attainable_mass_flow  out  kg/s  of the largest Kv that the size allows, or of Kv 1e5; also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (Kv below 1e-6), NO_SOLUTION (Kv beyond 1e5 or beyond what the size allows), NOT_CONVERGED
 * accuracy  the flow with this Kv is the wanted one within 1e-13 relative
 * source    as vtx_valve_mass_flow
 */
VTX_API vtx_status vtx_valve_flow_coefficient(const vtx_gas *gas, const vtx_valve *valve, double mass_flow, double inlet_pressure,
                                              double inlet_temperature, double outlet_pressure, double *flow_coefficient,
                                              double *attainable_mass_flow);

/* Pressure behind a valve; at the choked flow the highest of those that give it.
 *
 * gas                   in   -
 * valve                 in   -
 * mass_flow             in   kg/s  0..1e4
 * inlet_pressure        in   Pa    1e3..1e8
 * inlet_temperature     in   K     50..1000
 * outlet_pressure       out  Pa
 * attainable_mass_flow  out  kg/s  choked flow, or flow into a vacuum if the valve never chokes; also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (outlet below 1e3 Pa), NO_SOLUTION (more than attainable)
 * accuracy  exact inverse of vtx_valve_mass_flow, closed form
 * source    as vtx_valve_mass_flow
 */
VTX_API vtx_status vtx_valve_outlet_pressure(const vtx_gas *gas, const vtx_valve *valve, double mass_flow, double inlet_pressure,
                                             double inlet_temperature, double *outlet_pressure, double *attainable_mass_flow);

/* Pressure ahead of a valve.
 *
 * gas                in   -
 * valve              in   -
 * mass_flow          in   kg/s  0..1e4
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..1e8
 * inlet_pressure     out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (inlet above 1e8 Pa), NOT_CONVERGED
 * accuracy  the flow at this pressure is the wanted one within 1e-12 relative
 * source    as vtx_valve_mass_flow
 */
VTX_API vtx_status vtx_valve_inlet_pressure(const vtx_gas *gas, const vtx_valve *valve, double mass_flow, double inlet_temperature,
                                            double outlet_pressure, double *inlet_pressure);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_valve_critical_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *pressure_ratio_factor, ptrdiff_t pressure_ratio_factor_stride, double *ratio,
        ptrdiff_t ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_valve_mass_flow_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_valve *valve,
        ptrdiff_t valve_stride, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked,
        ptrdiff_t choked_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_valve_flow_coefficient_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const vtx_valve *valve, ptrdiff_t valve_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *flow_coefficient, ptrdiff_t flow_coefficient_stride, double *attainable_mass_flow,
        ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_valve_outlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const vtx_valve *valve, ptrdiff_t valve_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *attainable_mass_flow, ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_valve_inlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_valve *valve,
        ptrdiff_t valve_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
