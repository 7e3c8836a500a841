/* Restrictions of one coefficient: nozzle or orifice of a constant discharge coefficient, and ISO 6358 conductance.
 *
 * Not sharp edges, whose coefficient rises (sharp_orifice.h), not valves by Kv (valve.h), not pipes (line.h).
 * See also: chain.h for several in a row.
 *
 * Pressures and temperatures are absolute stagnation values upstream, static pressure downstream. Outlet pressure above
 * inlet pressure is BAD_ARGUMENT, equal pressures give no flow. Each inverse is the exact inverse of its forward law. */
#ifndef VTX_RESTRICTION_H
#define VTX_RESTRICTION_H

#include <vtx/isentropic.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Mass flow through a nozzle or orifice.
 *
 * gas                    in   -
 * area                   in   m2    1e-12..10     of the throat
 * discharge_coefficient  in   -     0.01..1.1     1 ideal nozzle, 0.97 rounded, 0.6 to 0.85 sharp
 * inlet_pressure         in   Pa    1e3..1e8
 * inlet_temperature      in   K     50..1000
 * outlet_pressure        in   Pa    1e3..inlet
 * mass_flow              out  kg/s
 * choked                 out  -     1 at and below the critical pressure ratio, else 0; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  7e-16 relative of the formula, down to equal pressures; air is a perfect gas to 0.06 % at 1 bar and 0.4 % at 8 bar; the coefficient is rarely known to 2 %
 * note      real air, choked: multiply the coefficient by vtx_air_critical_flow_factor over vtx_critical_flow_function
 * source    NACA Report 1135 (1953), equations 43 to 45
 */
VTX_API vtx_status vtx_orifice_mass_flow(const vtx_gas *gas, double area, double discharge_coefficient, double inlet_pressure,
                                         double inlet_temperature, double outlet_pressure, double *mass_flow, int32_t *choked);

/* Area of a nozzle or orifice that passes a mass flow.
 *
 * gas                    in   -
 * mass_flow              in   kg/s  0..1e4
 * discharge_coefficient  in   -     0.01..1.1
 * inlet_pressure         in   Pa    1e3..1e8
 * inlet_temperature      in   K     50..1000
 * outlet_pressure        in   Pa    1e3..inlet
 * area                   out  m2    0 for no flow
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (area outside 1e-12..10), NO_SOLUTION (flow wanted between equal pressures)
 * accuracy  rounding; exact inverse of vtx_orifice_mass_flow
 * source    as vtx_orifice_mass_flow
 */
VTX_API vtx_status vtx_orifice_area(const vtx_gas *gas, double mass_flow, double discharge_coefficient, double inlet_pressure,
                                    double inlet_temperature, double outlet_pressure, double *area);

/* Pressure behind a nozzle or orifice that passes a mass flow; at the choked flow the critical pressure, the highest of those that give it.
 *
 * gas                    in   -
 * mass_flow              in   kg/s  0..1e4
 * area                   in   m2    1e-12..10
 * discharge_coefficient  in   -     0.01..1.1
 * inlet_pressure         in   Pa    1e3..1e8
 * inlet_temperature      in   K     50..1000
 * outlet_pressure        out  Pa
 * attainable_mass_flow   out  kg/s  choked flow, also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (outlet below 1e3 Pa), NO_SOLUTION (more than the choked flow)
 * accuracy  the flow at this pressure is the wanted one within 1e-14 relative, if the pressure drop is above 1e-9 of the pressure
 * source    as vtx_orifice_mass_flow
 */
VTX_API vtx_status vtx_orifice_outlet_pressure(const vtx_gas *gas, double mass_flow, double area, double discharge_coefficient,
                                               double inlet_pressure, double inlet_temperature, double *outlet_pressure,
                                               double *attainable_mass_flow);

/* Pressure ahead of a nozzle or orifice that passes a mass flow.
 *
 * gas                    in   -
 * mass_flow              in   kg/s  0..1e4
 * area                   in   m2    1e-12..10
 * discharge_coefficient  in   -     0.01..1.1
 * inlet_temperature      in   K     50..1000
 * outlet_pressure        in   Pa    1e3..1e8
 * inlet_pressure         out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (inlet above 1e8 Pa)
 * accuracy  rounding; exact inverse of vtx_orifice_mass_flow, closed form
 * source    as vtx_orifice_mass_flow
 */
VTX_API vtx_status vtx_orifice_inlet_pressure(const vtx_gas *gas, double mass_flow, double area, double discharge_coefficient,
                                              double inlet_temperature, double outlet_pressure, double *inlet_pressure);

/* Mass flow of air through a part of known sonic conductance, exponent 0.5 and no cracking pressure (ISO 6358 of 1989).
 *
 * conductance        in   m3/(s Pa)  1e-14..1    1 dm3/(s bar) = 1e-8; at the reference density 1.185 kg/m3
 * critical_ratio     in   -          0..0.99     b of the part, typically 0.1 to 0.5
 * inlet_pressure     in   Pa         1e3..1e8
 * inlet_temperature  in   K          50..1000
 * outlet_pressure    in   Pa         1e3..inlet
 * mass_flow          out  kg/s
 * choked             out  -          1 at and below the critical ratio, else 0; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  rounding; parts follow the law within a few per cent
 * source    ISO 6358:1989 and ISO 8778, equations and reference density from memory
 */
VTX_API vtx_status vtx_conductance_mass_flow(double conductance, double critical_ratio, double inlet_pressure,
                                             double inlet_temperature, double outlet_pressure, double *mass_flow, int32_t *choked);

/* Sonic conductance that passes a mass flow.
 *
 * mass_flow          in   kg/s       0..1e4
 * critical_ratio     in   -          0..0.99
 * inlet_pressure     in   Pa         1e3..1e8
 * inlet_temperature  in   K          50..1000
 * outlet_pressure    in   Pa         1e3..inlet
 * conductance        out  m3/(s Pa)  0 for no flow
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (conductance outside 1e-14..1), NO_SOLUTION (flow wanted between equal pressures)
 * accuracy  rounding; exact inverse of vtx_conductance_mass_flow
 * source    as vtx_conductance_mass_flow
 */
VTX_API vtx_status vtx_conductance_for_mass_flow(double mass_flow, double critical_ratio, double inlet_pressure,
                                                 double inlet_temperature, double outlet_pressure, double *conductance);

/* Pressure behind a part of known sonic conductance; at the choked flow the highest of those that give it.
 *
 * mass_flow             in   kg/s       0..1e4
 * conductance           in   m3/(s Pa)  1e-14..1
 * critical_ratio        in   -          0..0.99
 * inlet_pressure        in   Pa         1e3..1e8
 * inlet_temperature     in   K          50..1000
 * outlet_pressure       out  Pa
 * attainable_mass_flow  out  kg/s       choked flow, also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (outlet below 1e3 Pa), NO_SOLUTION (more than the choked flow)
 * accuracy  rounding; exact inverse of vtx_conductance_mass_flow, closed form
 * source    as vtx_conductance_mass_flow
 */
VTX_API vtx_status vtx_conductance_outlet_pressure(double mass_flow, double conductance, double critical_ratio, double inlet_pressure,
                                                   double inlet_temperature, double *outlet_pressure, double *attainable_mass_flow);

/* Pressure ahead of a part of known sonic conductance.
 *
 * mass_flow          in   kg/s       0..1e4
 * conductance        in   m3/(s Pa)  1e-14..1
 * critical_ratio     in   -          0..0.99
 * inlet_temperature  in   K          50..1000
 * outlet_pressure    in   Pa         1e3..1e8
 * inlet_pressure     out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (inlet above 1e8 Pa)
 * accuracy  rounding; exact inverse of vtx_conductance_mass_flow, closed form
 * source    as vtx_conductance_mass_flow
 */
VTX_API vtx_status vtx_conductance_inlet_pressure(double mass_flow, double conductance, double critical_ratio,
                                                  double inlet_temperature, double outlet_pressure, double *inlet_pressure);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_orifice_mass_flow_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *area,
        ptrdiff_t area_stride, const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked, ptrdiff_t choked_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_orifice_area_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *mass_flow,
        ptrdiff_t mass_flow_stride, const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *area, ptrdiff_t area_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_orifice_outlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *area, ptrdiff_t area_stride,
        const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *attainable_mass_flow,
        ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_orifice_inlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *area, ptrdiff_t area_stride,
        const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conductance_mass_flow_batch(size_t n, const double *conductance, ptrdiff_t conductance_stride,
        const double *critical_ratio, ptrdiff_t critical_ratio_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *mass_flow,
        ptrdiff_t mass_flow_stride, int32_t *choked, ptrdiff_t choked_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conductance_for_mass_flow_batch(size_t n, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *critical_ratio, ptrdiff_t critical_ratio_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *conductance,
        ptrdiff_t conductance_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conductance_outlet_pressure_batch(size_t n, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *conductance, ptrdiff_t conductance_stride, const double *critical_ratio,
        ptrdiff_t critical_ratio_stride, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *attainable_mass_flow, ptrdiff_t attainable_mass_flow_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_conductance_inlet_pressure_batch(size_t n, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *conductance, ptrdiff_t conductance_stride, const double *critical_ratio,
        ptrdiff_t critical_ratio_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
