/* Compressed air in a hose or pipe: flow, pressures, smallest bore and longest length, with friction, fittings and choking.
 *
 * Not several parts in a row (chain.h), not supersonic flow (fanno.h).
 * See also: friction.h for friction factors and fittings, bore.h for standard bores and roughness.
 *
 * The line is one of constant bore. Its loss coefficients act as if spread along it. The outlet pressure is the static
 * pressure at the open end or in the vessel behind it; below the pressure at which the end turns sonic it has no effect. */
#ifndef VTX_LINE_H
#define VTX_LINE_H

#include <vtx/isentropic.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What the wall does to the gas. The two laws are a per cent or two apart, more when the end is nearly sonic. */
enum vtx_line_law {
    VTX_LINE_ADIABATIC = 270, /* no heat through the wall, stagnation temperature constant (Fanno): short and fast */
    VTX_LINE_ISOTHERMAL = 271 /* static temperature constant: long and slow */
};

/* Where inlet pressure and temperature are known. */
enum vtx_line_inlet {
    VTX_INLET_STAGNATION = 272, /* in the vessel, header or fitting ahead, at rest */
    VTX_INLET_STATIC = 273      /* at a tapping in the line itself */
};

/* A line. Whichever of diameter and length a call looks for is not read. */
typedef struct vtx_line {
    double diameter;        /* m     1e-4..2, bore */
    double length;          /* m     0..1e5 */
    double roughness;       /* m     0..0.1 diameter */
    double minor_loss;      /* -     0..1e4, sum of loss coefficients of inlet and fittings; not the open end, which is in the law */
    double friction_factor; /* -     0: Churchill's, from the flow; else Darcy's, 1e-4..10, taken as constant */
    double viscosity;       /* Pa s  0: that of dry air at the inlet temperature; else 1e-7..1e-2 */
    double reserved[4];     /* zero */
    int32_t law;            /* of vtx_line_law */
    int32_t inlet;          /* of vtx_line_inlet */
} vtx_line;

/* A line and the flow in it. */
typedef struct vtx_line_state {
    double mass_flow;                     /* kg/s */
    double diameter;                      /* m    bore */
    double length;                        /* m */
    double inlet_pressure;                /* Pa   static, just inside */
    double inlet_stagnation_pressure;     /* Pa */
    double inlet_temperature;             /* K    static */
    double inlet_stagnation_temperature;  /* K */
    double inlet_mach;                    /* - */
    double inlet_velocity;                /* m/s */
    double outlet_pressure;               /* Pa   static, just inside; above the pressure outside when choked */
    double outlet_stagnation_pressure;    /* Pa */
    double outlet_temperature;            /* K    static */
    double outlet_stagnation_temperature; /* K */
    double outlet_mach;                   /* -    1 choked; 1/sqrt(gamma) choked by the isothermal law */
    double outlet_velocity;               /* m/s */
    double reynolds;                      /* - */
    double friction_factor;               /* -    Darcy's; NaN at rest (VTX_ADVISORY_FIELD_UNAVAILABLE) */
    double attainable_mass_flow;          /* kg/s the most this line passes from these inlet conditions */
    int32_t choked;                       /* -    1 when the end is sonic, else 0 */
    int32_t advisories;                   /* -    bits of vtx_advisory */
} vtx_line_state;

/* A line without size: diameter and length 0, hose roughness 1.5e-6 m, inlet loss 0.5, friction from the flow, dry air,
 * adiabatic, inlet conditions at rest.
 *
 * line      out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_line_init(vtx_line *line);

/* Mass flow through a line between two pressures.
 *
 * gas                in   -
 * line               in   -
 * inlet_pressure     in   Pa    1e3..1e8     stagnation or static, as the line says
 * inlet_temperature  in   K     50..1000     likewise
 * outlet_pressure    in   Pa    1e3..inlet
 * mass_flow          out  kg/s
 * state              out  -     everything else about the flow; may be null
 *
 * status    OK, BAD_ARGUMENT (also an outlet above the inlet), OUT_OF_RANGE, NOT_CONVERGED
 * advisory  CHOKED, FIELD_UNAVAILABLE
 * accuracy  1e-14 relative, 1e-13 once in 400000 random lines; the friction law is good for 5 %, half of that in the flow
 * source    adiabatic: Fanno, see fanno.h; isothermal: Crane TP-410, from memory, with the acceleration term
 * caution   a hose end under pressure whips when it comes loose
 */
VTX_API vtx_status vtx_line_mass_flow(const vtx_gas *gas, const vtx_line *line, double inlet_pressure, double inlet_temperature,
                                      double outlet_pressure, double *mass_flow, vtx_line_state *state);

/* Static pressure at the end of a line that passes a mass flow; at the choked flow the highest that gives it.
 *
 * gas                in   -
 * line               in   -
 * mass_flow          in   kg/s  0..1e4
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    out  Pa
 * state              out  -     may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also an outlet below 1e3 Pa), NOT_CONVERGED, NO_SOLUTION (more than the choked flow,
 *           which stands in attainable_mass_flow)
 * advisory  CHOKED, FIELD_UNAVAILABLE
 * accuracy  exact inverse of vtx_line_mass_flow, within 1e-10 of the flow
 * source    as vtx_line_mass_flow
 */
VTX_API vtx_status vtx_line_outlet_pressure(const vtx_gas *gas, const vtx_line *line, double mass_flow, double inlet_pressure,
                                            double inlet_temperature, double *outlet_pressure, vtx_line_state *state);

/* Pressure that a line needs at its inlet to pass a mass flow.
 *
 * gas                in   -
 * line               in   -
 * mass_flow          in   kg/s  0..1e4
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..1e8
 * inlet_pressure     out  Pa    stagnation or static, as the line says
 * state              out  -     may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also an inlet above 1e8 Pa), NOT_CONVERGED
 * advisory  CHOKED, FIELD_UNAVAILABLE
 * accuracy  exact inverse of vtx_line_mass_flow, within 1e-10 of the flow
 * source    as vtx_line_mass_flow
 */
VTX_API vtx_status vtx_line_inlet_pressure(const vtx_gas *gas, const vtx_line *line, double mass_flow, double inlet_temperature,
                                           double outlet_pressure, double *inlet_pressure, vtx_line_state *state);

/* Smallest bore that passes a mass flow between two pressures.
 *
 * gas                in   -
 * line               in   -     its diameter is not read
 * mass_flow          in   kg/s  1e-9..1e4
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..inlet
 * diameter           out  m     1e-4..2; bore.h has the next standard size
 * state              out  -     may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (bore below 1e-4 m or ten times the roughness), NOT_CONVERGED, NO_SOLUTION (not even 2
 *           m, whose flow stands in attainable_mass_flow)
 * advisory  CHOKED
 * accuracy  exact inverse of vtx_line_mass_flow, within 1e-10 of the flow
 * source    as vtx_line_mass_flow
 */
VTX_API vtx_status vtx_line_diameter(const vtx_gas *gas, const vtx_line *line, double mass_flow, double inlet_pressure,
                                     double inlet_temperature, double outlet_pressure, double *diameter, vtx_line_state *state);

/* Longest line that passes a mass flow between two pressures.
 *
 * gas                in   -
 * line               in   -     its length is not read
 * mass_flow          in   kg/s  1e-9..1e4
 * inlet_pressure     in   Pa    1e3..1e8
 * inlet_temperature  in   K     50..1000
 * outlet_pressure    in   Pa    1e3..inlet
 * length             out  m
 * state              out  -     may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (length above 1e5 m), NOT_CONVERGED, NO_SOLUTION (not even without length;
 *           attainable_mass_flow holds the flow of that)
 * advisory  CHOKED
 * accuracy  exact inverse of vtx_line_mass_flow, within 1e-10 of the flow
 * source    as vtx_line_mass_flow
 */
VTX_API vtx_status vtx_line_length(const vtx_gas *gas, const vtx_line *line, double mass_flow, double inlet_pressure,
                                   double inlet_temperature, double outlet_pressure, double *length, vtx_line_state *state);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_line_mass_flow_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *mass_flow, ptrdiff_t mass_flow_stride, vtx_line_state *state,
        ptrdiff_t state_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_line_outlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        double *outlet_pressure, ptrdiff_t outlet_pressure_stride, vtx_line_state *state, ptrdiff_t state_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_line_inlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, vtx_line_state *state, ptrdiff_t state_stride,
        int32_t *status, size_t *failed);
VTX_API vtx_status vtx_line_diameter_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *diameter, ptrdiff_t diameter_stride,
        vtx_line_state *state, ptrdiff_t state_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_line_length_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *length, ptrdiff_t length_stride,
        vtx_line_state *state, ptrdiff_t state_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
