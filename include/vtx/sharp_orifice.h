/* Sharp-edged orifices: the discharge coefficient rises as the pressure ratio falls, and the flow with it beyond choking.
 *
 * Not rounded nozzles (restriction.h with a constant coefficient), not valves (valve.h).
 * See also: isentropic.h for vtx_gas. */
#ifndef VTX_SHARP_ORIFICE_H
#define VTX_SHARP_ORIFICE_H

#include <vtx/isentropic.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* How the coefficient follows the pressure ratio. */
enum vtx_sharp_edge_law {
    VTX_SHARP_EDGE_PERRY = 242,  /* a polynomial fitted to air, 0.600 to 0.841 */
    VTX_SHARP_EDGE_JOBSON = 243  /* momentum theory, 0.6 without compression to 0.866, any gas */
};

/* Discharge coefficient of a sharp-edged orifice by the polynomial named after Perry.
 *
 * pressure_ratio  in   -  0..1   outlet over inlet; outside is BAD_ARGUMENT
 * coefficient     out  -         to be used with the flow function that stays constant below the critical ratio
 *
 * status    OK, BAD_ARGUMENT
 * accuracy  about 2 % of measured flows of air
 * source    J. A. Perry, Trans. ASME 71 (1949) 757 (citation and the polynomial's signs from memory)
 */
VTX_API vtx_status vtx_perry_coefficient(double pressure_ratio, double *coefficient);

/* Contraction coefficient of a sharp-edged orifice by momentum theory.
 *
 * gamma           in   -  1.01..1.7
 * incompressible  in   -  0.5..0.7    coefficient without compression, 0.6 for a sharp edge; above 1 is BAD_ARGUMENT
 * pressure_ratio  in   -  0..1        outlet over inlet; outside is BAD_ARGUMENT
 * coefficient     out  -              used as vtx_perry_coefficient
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  1 % of vtx_perry_coefficient above a ratio of 0.2, 3 % at 0
 * note      the momentum argument is for edges: with rounded ones, above 0.7, it would make the coefficient fall first
 * source    D. A. Jobson, Proc. IMechE 169 (1955) 767, derived again from the momentum balance
 */
VTX_API vtx_status vtx_jobson_coefficient(double gamma, double incompressible, double pressure_ratio, double *coefficient);

/* Mass flow through a sharp-edged orifice.
 *
 * gas                in   -
 * law                in   -                    of vtx_sharp_edge_law; Jobson with 0.6
 * area               in   m2    1e-12..10      of the hole
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..inlet     above the inlet pressure is BAD_ARGUMENT
 * mass_flow          out  kg/s
 * choked             out  -     1 when the jet is sonic; the flow still rises with falling outlet pressure; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  about 2 %
 * source    as the coefficients
 */
VTX_API vtx_status vtx_sharp_orifice_mass_flow(const vtx_gas *gas, int32_t law, double area, double inlet_pressure,
                                               double inlet_temperature, double outlet_pressure, double *mass_flow, int32_t *choked);

/* Area of a sharp-edged orifice that passes a mass flow.
 *
 * gas                in   -
 * law                in   -                 of vtx_sharp_edge_law
 * mass_flow          in   kg/s  0..1e4
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..inlet
 * area               out  m2    0 for no flow
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (area outside 1e-12..10), NO_SOLUTION (flow wanted between equal pressures)
 * accuracy  exact inverse of vtx_sharp_orifice_mass_flow
 * source    as the coefficients
 */
VTX_API vtx_status vtx_sharp_orifice_area(const vtx_gas *gas, int32_t law, double mass_flow, double inlet_pressure,
                                          double inlet_temperature, double outlet_pressure, double *area);

/* Pressure behind a sharp-edged orifice that passes a mass flow.
 *
 * gas                   in   -
 * law                   in   -                 of vtx_sharp_edge_law
 * mass_flow             in   kg/s  0..1e4
 * area                  in   m2    1e-12..10
 * inlet_pressure        in   Pa    1e3..1e8
 * inlet_temperature     in   K     50..1000
 * outlet_pressure       out  Pa
 * attainable_mass_flow  out  kg/s  flow into a vacuum, also with NO_SOLUTION; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (outlet below 1e3 Pa), NO_SOLUTION (more than the flow into a vacuum), NOT_CONVERGED
 * accuracy  the flow at this pressure is the wanted one within 1e-12 relative
 * source    as the coefficients
 */
VTX_API vtx_status vtx_sharp_orifice_outlet_pressure(const vtx_gas *gas, int32_t law, double mass_flow, double area,
                                                     double inlet_pressure, double inlet_temperature, double *outlet_pressure,
                                                     double *attainable_mass_flow);

/* Pressure ahead of a sharp-edged orifice that passes a mass flow.
 *
 * gas                in   -
 * law                in   -                 of vtx_sharp_edge_law
 * mass_flow          in   kg/s  0..1e4
 * area               in   m2    1e-12..10
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..1e8
 * inlet_pressure     out  Pa
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (inlet above 1e8 Pa), NOT_CONVERGED
 * accuracy  the flow at this pressure is the wanted one within 1e-12 relative
 * source    as the coefficients
 */
VTX_API vtx_status vtx_sharp_orifice_inlet_pressure(const vtx_gas *gas, int32_t law, double mass_flow, double area,
                                                    double inlet_temperature, double outlet_pressure, double *inlet_pressure);

/* Expansibility factor of a metering orifice in a pipe: compressible over incompressible flow at the same pressure difference.
 *
 * gamma           in   -   1.01..1.7
 * diameter_ratio  in   -   0.1..0.75     bore over pipe
 * inlet_pressure  in   Pa  1e3..1e8
 * outlet_pressure in   Pa  0.75 of the inlet..inlet   lower is OUT_OF_RANGE
 * factor          out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  the standard gives 3.5 (p1-p2)/(gamma p1) per cent
 * source    ISO 5167-2:2003, 5.3.2.2
 */
VTX_API vtx_status vtx_orifice_expansibility(double gamma, double diameter_ratio, double inlet_pressure, double outlet_pressure,
                                             double *factor);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_perry_coefficient_batch(size_t n, const double *pressure_ratio, ptrdiff_t pressure_ratio_stride,
        double *coefficient, ptrdiff_t coefficient_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_jobson_coefficient_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *incompressible, ptrdiff_t incompressible_stride, const double *pressure_ratio,
        ptrdiff_t pressure_ratio_stride, double *coefficient, ptrdiff_t coefficient_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_sharp_orifice_mass_flow_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, int32_t law,
        const double *area, ptrdiff_t area_stride, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked,
        ptrdiff_t choked_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_sharp_orifice_area_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, int32_t law,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *area, ptrdiff_t area_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_sharp_orifice_outlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, int32_t law,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *area, ptrdiff_t area_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *attainable_mass_flow, ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_sharp_orifice_inlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, int32_t law,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *area, ptrdiff_t area_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_orifice_expansibility_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *diameter_ratio, ptrdiff_t diameter_ratio_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *factor, ptrdiff_t factor_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
