/* Pneumatic components by ISO 6358: sonic conductance, critical ratio, subsonic index, cracking pressure; two in series or side by side.
 *
 * Not whole supply lines (chain.h) and not Kv or Cv (valve.h); the short form of two coefficients is in restriction.h.
 * See also: flow_coefficient.h to turn areas, Kv and Cv into conductance. */
#ifndef VTX_CONDUCTANCE_H
#define VTX_CONDUCTANCE_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What a data sheet by ISO 6358 says of a component. */
typedef struct vtx_component {
    double sonic_conductance; /* m3/(s Pa)  1e-14..1, C at 1.185 kg/m3; 1 dm3/(s bar) = 1e-8 */
    double critical_ratio;    /* -          0..0.99, b */
    double subsonic_index;    /* -          0.2..1, m; 0.5 in the edition of 1989 */
    double cracking_pressure; /* Pa         0..1e6, pressure difference at which the component opens */
    double reserved[4];       /* zero */
} vtx_component;

/* 1 dm3/(s bar), critical ratio 0.3, index 0.5, no cracking pressure.
 *
 * component  out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_component_init(vtx_component *component);

/* Mass flow of air through a component.
 *
 * component          in   -
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..inlet   above the inlet pressure is BAD_ARGUMENT
 * mass_flow          out  kg/s  0 up to the cracking pressure
 * choked             out  -     1 at and below the critical ratio, else 0; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also when the critical ratio lies within the cracking pressure)
 * accuracy  rounding; parts follow the law within a few per cent
 * source    ISO 6358-1:2013 and ISO 8778, equations and reference density from memory
 */
VTX_API vtx_status vtx_component_mass_flow(const vtx_component *component, double inlet_pressure, double inlet_temperature,
                                           double outlet_pressure, double *mass_flow, int32_t *choked);

/* Sonic conductance with which a component passes a mass flow.
 *
 * component          in   -           its sonic_conductance is not read
 * mass_flow          in   kg/s        0..1e4
 * inlet_pressure     in   Pa          1e3..1e8
 * inlet_temperature  in   K           50..1000
 * outlet_pressure    in   Pa          1e3..inlet
 * conductance        out  m3/(s Pa)   0 for no flow
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (flow wanted through a closed component)
 * accuracy  exact inverse of vtx_component_mass_flow
 * source    as vtx_component_mass_flow
 */
VTX_API vtx_status vtx_component_conductance(const vtx_component *component, double mass_flow, double inlet_pressure,
                                             double inlet_temperature, double outlet_pressure, double *conductance);

/* Pressure behind a component; at the choked flow the highest of those that give it, without flow the one at which it opens.
 *
 * component             in   -
 * mass_flow             in   kg/s  0..1e4
 * inlet_pressure        in   Pa    1e3..1e8
 * inlet_temperature     in   K     50..1000
 * outlet_pressure       out  Pa
 * attainable_mass_flow  out  kg/s  choked flow, also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (outlet below 1e3 Pa), NO_SOLUTION (more than the choked flow)
 * accuracy  exact inverse of vtx_component_mass_flow as far as a pressure difference beyond the cracking pressure can be told from it
 * source    as vtx_component_mass_flow
 */
VTX_API vtx_status vtx_component_outlet_pressure(const vtx_component *component, double mass_flow, double inlet_pressure,
                                                 double inlet_temperature, double *outlet_pressure, double *attainable_mass_flow);

/* Pressure ahead of a component.
 *
 * component          in   -
 * mass_flow          in   kg/s  0..1e4
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..1e8
 * inlet_pressure     out  Pa    without flow the one at which the component opens
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (inlet above 1e8 Pa, or critical ratio within the cracking pressure), NOT_CONVERGED
 * accuracy  as vtx_component_outlet_pressure
 * source    as vtx_component_mass_flow
 */
VTX_API vtx_status vtx_component_inlet_pressure(const vtx_component *component, double mass_flow, double inlet_temperature,
                                                double outlet_pressure, double *inlet_pressure);

/* Sonic conductance and critical ratio of two components in series, index 0.5, no cracking pressure.
 *
 * upstream_conductance      in   m3/(s Pa)  1e-14..1
 * upstream_critical_ratio   in   -          0..0.99
 * downstream_conductance    in   m3/(s Pa)  1e-14..1
 * downstream_critical_ratio in   -          0..0.99
 * conductance               out  m3/(s Pa)
 * critical_ratio            out  -          of the law that stands for the pair, exact near equal pressures; may be null
 * choking_ratio             out  -          outlet over inlet pressure where the pair really chokes; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  conductance and choking ratio exact; the flow by conductance and critical ratio within 2.6 % of full flow
 *           of a direct solution, though the choking ratio lies up to 0.24 lower or 0.14 higher than the critical ratio
 * source    ISO 6358-3; Beater, Pneumatic Drives (2007) (closed forms from memory, choking ratio derived)
 */
VTX_API vtx_status vtx_conductance_in_series(double upstream_conductance, double upstream_critical_ratio, double downstream_conductance,
                                             double downstream_critical_ratio, double *conductance, double *critical_ratio,
                                             double *choking_ratio);

/* Sonic conductance and critical ratio of two components side by side.
 *
 * first_conductance      in   m3/(s Pa)  1e-14..1
 * first_critical_ratio   in   -          0..0.99
 * second_conductance     in   m3/(s Pa)  1e-14..1
 * second_critical_ratio  in   -          0..0.99
 * conductance            out  m3/(s Pa)  exact
 * critical_ratio         out  -          gives the right flow close to no pressure difference; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  critical ratio approximate
 * source    Beater, Pneumatic Drives (2007) (from memory)
 */
VTX_API vtx_status vtx_conductance_in_parallel(double first_conductance, double first_critical_ratio, double second_conductance,
                                               double second_critical_ratio, double *conductance, double *critical_ratio);

/* Sonic conductance and critical ratio of a smooth tube or hose.
 *
 * diameter        in   m          0.002..0.05   bore
 * length          in   m          0..100
 * conductance     out  m3/(s Pa)
 * critical_ratio  out  -          may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  conductance 1 to 7 % below Fanno flow with smooth-wall friction, bores 4 to 13 mm, 1 to 10 m; line.h is better
 * source    fit quoted in Beater, Pneumatic Drives (2007) (from memory)
 */
VTX_API vtx_status vtx_tube_conductance(double diameter, double length, double *conductance, double *critical_ratio);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_component_mass_flow_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked, ptrdiff_t choked_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_component_conductance_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *conductance,
        ptrdiff_t conductance_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_component_outlet_pressure_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *attainable_mass_flow,
        ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_component_inlet_pressure_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conductance_in_series_batch(size_t n, const double *upstream_conductance,
        ptrdiff_t upstream_conductance_stride, const double *upstream_critical_ratio,
        ptrdiff_t upstream_critical_ratio_stride, const double *downstream_conductance,
        ptrdiff_t downstream_conductance_stride, const double *downstream_critical_ratio,
        ptrdiff_t downstream_critical_ratio_stride, double *conductance, ptrdiff_t conductance_stride,
        double *critical_ratio, ptrdiff_t critical_ratio_stride, double *choking_ratio,
        ptrdiff_t choking_ratio_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conductance_in_parallel_batch(size_t n, const double *first_conductance,
        ptrdiff_t first_conductance_stride, const double *first_critical_ratio,
        ptrdiff_t first_critical_ratio_stride, const double *second_conductance, ptrdiff_t second_conductance_stride,
        const double *second_critical_ratio, ptrdiff_t second_critical_ratio_stride, double *conductance,
        ptrdiff_t conductance_stride, double *critical_ratio, ptrdiff_t critical_ratio_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_tube_conductance_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride,
        const double *length, ptrdiff_t length_stride, double *conductance, ptrdiff_t conductance_stride,
        double *critical_ratio, ptrdiff_t critical_ratio_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
