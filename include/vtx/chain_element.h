/* The parts of a compressed-air supply, as elements to be put in a row: hose, pipe, coupling, valve, filter, regulator.
 *
 * Not their flow: chain.h lets the air through.
 * See also: line.h, conductance.h, restriction.h and valve.h for the laws, bore.h for bores, friction.h for fittings. */
#ifndef VTX_CHAIN_ELEMENT_H
#define VTX_CHAIN_ELEMENT_H

#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Kinds of element, and what is read of vtx_chain_element besides the port bore. */
enum vtx_chain_kind {
    VTX_CHAIN_LINE = 280,        /* diameter, length, roughness, minor_loss, law */
    VTX_CHAIN_CONDUCTANCE = 281, /* conductance, critical_ratio, subsonic_index, cracking_pressure */
    VTX_CHAIN_COUPLING = 282,    /* as a conductance */
    VTX_CHAIN_ORIFICE = 283,     /* effective_area */
    VTX_CHAIN_VALVE = 284,       /* flow_coefficient, pressure_ratio_factor */
    VTX_CHAIN_FILTER = 285,      /* laminar_loss, turbulent_loss */
    VTX_CHAIN_REGULATOR = 286,   /* set_pressure, droop; conductance and critical_ratio wide open */
    VTX_CHAIN_MANIFOLD = 287     /* ways: behind it the flow divides into so many equal paths, of which one is followed */
};

/* One element. The constructors below set what its kind needs; other numbers stay 0. */
typedef struct vtx_chain_element {
    double diameter;              /* m          bore of a line, 1e-4..2; port bore of the others, 0 where not known */
    double length;                /* m          0..1e5 */
    double roughness;             /* m          0..0.1 diameter */
    double minor_loss;            /* -          0..1e4, sum of loss coefficients; not the open end of a line, which is in the law */
    double conductance;           /* m3/(s Pa)  1e-14..1, sonic, at 1.185 kg/m3; 1 dm3/(s bar) = 1e-8 */
    double critical_ratio;        /* -          0..0.99, b */
    double subsonic_index;        /* -          0.2..1, m */
    double cracking_pressure;     /* Pa         0..1e6; above 0 the element is a check valve, closed to reversed flow */
    double effective_area;        /* m2         1e-12..10, area times discharge coefficient */
    double flow_coefficient;      /* Kv         1e-6..1e5, m3/h of water at 1 bar */
    double pressure_ratio_factor; /* -          0.1..1, xT */
    double laminar_loss;          /* Pa kg/m3 s/kg     0..1e12, part of density times pressure loss that goes with mass flow */
    double turbulent_loss;        /* Pa kg/m3 (s/kg)2  0..1e15, part of it that goes with mass flow squared */
    double set_pressure;          /* Pa         1e3..1e8, absolute, at no flow */
    double droop;                 /* Pa s/kg    0..1e12, fall of the outlet pressure with mass flow */
    double ways;                  /* -          1..1e4, paths running at once; need not be whole */
    double reserved[4];           /* zero */
    int32_t kind;                 /* of vtx_chain_kind */
    int32_t law;                  /* of vtx_line_law, line only */
} vtx_chain_element;

/* No element yet: all numbers 0, subsonic index 0.5, xT 0.7, one way, adiabatic, kind 0, which every call refuses.
 *
 * element   out  -
 *
 * status    OK, BAD_ARGUMENT
 */
VTX_API vtx_status vtx_chain_element_init(vtx_chain_element *element);

/* A hose: smooth wall, loss 0.5 for its inlet, adiabatic.
 *
 * diameter  in   m  1e-4..2   bore
 * length    in   m  0..1e5
 * element   out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  roughness 1.5e-6 m from memory; barbed ends narrower than the bore are couplings of their own
 * source    line.h
 * caution   a hose end under pressure whips when it comes loose
 */
VTX_API vtx_status vtx_chain_hose(double diameter, double length, vtx_chain_element *element);

/* A pipe with its fittings, adiabatic.
 *
 * diameter    in   m  1e-4..2          bore
 * length      in   m  0..1e5
 * roughness   in   m  0..0.1 diameter  4.6e-5 steel, 1.5e-4 galvanised
 * minor_loss  in   -  0..1e4           sum of loss coefficients, see vtx_fitting_loss
 * element     out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as line.h
 * source    line.h
 */
VTX_API vtx_status vtx_chain_pipe(double diameter, double length, double roughness, double minor_loss, vtx_chain_element *element);

/* A part whose data sheet gives sonic conductance and critical ratio.
 *
 * conductance     in   m3/(s Pa)  1e-14..1   1 dm3/(s bar) = 1e-8
 * critical_ratio  in   -          0..0.99
 * element         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as conductance.h
 * source    ISO 6358, see conductance.h
 */
VTX_API vtx_status vtx_chain_conductance(double conductance, double critical_ratio, vtx_chain_element *element);

/* A quick coupling with its plug, of known nominal bore only.
 *
 * nominal_diameter  in   m  0.002..0.05   bore the coupling is sold by: 0.0063 for 1/4 in, 0.0072 for the common DN 7.2
 * element           out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  a factor of 1.5; take conductance and critical ratio from a data sheet where there is one
 * source    common practice, no source: half the nominal area effective, critical ratio 0.3; within the 3 to 6 dm3/(s bar) of 1/4
 *           in bodies
 * caution   a coupling under pressure throws its plug: vent first, or use one that vents itself
 */
VTX_API vtx_status vtx_chain_coupling(double nominal_diameter, vtx_chain_element *element);

/* A nozzle or orifice of constant discharge coefficient.
 *
 * area                   in   m2  1e-12..10
 * discharge_coefficient  in   -   0.01..1.1
 * element                out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as restriction.h
 * source    restriction.h
 */
VTX_API vtx_status vtx_chain_orifice(double area, double discharge_coefficient, vtx_chain_element *element);

/* A valve of known Kv, without reducers.
 *
 * flow_coefficient       in   Kv  1e-6..1e5   m3/h of water at 1 bar
 * pressure_ratio_factor  in   -   0.1..1      xT; 0.7 for many valves, 0.4 for open ball valves
 * element                out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  as valve.h
 * source    IEC 60534-2-1, see valve.h
 */
VTX_API vtx_status vtx_chain_valve(double flow_coefficient, double pressure_ratio_factor, vtx_chain_element *element);

/* A filter from one point of its data sheet.
 *
 * pressure_loss     in   Pa    1..1e6        at the rated point; at most half the inlet pressure
 * mass_flow         in   kg/s  1e-9..1e4     at the rated point
 * inlet_pressure    in   Pa    1e3..1e8      at the rated point
 * temperature       in   K     150..1000     at the rated point
 * laminar_share     in   -     0..1          part of that loss that goes with flow, the rest with flow squared; 0.5 when not known
 * element           out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  the rated point exactly; a clogged element loses several times as much (common practice: change at 0.35 to 0.7 bar)
 * source    pressure loss = (laminar_loss flow + turbulent_loss flow^2)/inlet density, as vtx_filter_drop; the share is common
 *           practice, no source
 * note      a filter that would take more than half of its inlet pressure counts as choked there
 */
VTX_API vtx_status vtx_chain_filter(double pressure_loss, double mass_flow, double inlet_pressure, double temperature, double laminar_share,
                                    vtx_chain_element *element);

/* A pressure regulator: its outlet falls with flow, and never lies above what it passes wide open.
 *
 * set_pressure    in   Pa         1e3..1e8   absolute, at no flow
 * rated_droop     in   Pa         0..1e7     fall of the outlet pressure at the rated flow; 0.2e5 to 0.7e5 are common, no source
 * rated_flow      in   kg/s       1e-9..1e4
 * conductance     in   m3/(s Pa)  1e-14..1   wide open
 * critical_ratio  in   -          0..0.99    wide open
 * element         out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  5 % of the set pressure; the rise of a few per cent of a fall in supply pressure is not modelled
 * source    outlet = smaller of set pressure - droop flow and ISO 6358 wide open; closed to reversed flow
 * note      set_pressure is absolute: the gauge reading plus the ambient pressure
 */
VTX_API vtx_status vtx_chain_regulator(double set_pressure, double rated_droop, double rated_flow, double conductance, double critical_ratio,
                                       vtx_chain_element *element);

/* A manifold that feeds equal branches: what stands behind it in the chain is one branch.
 *
 * branches      in   -  1..1e4   whole or not
 * simultaneity  in   -  above 0 to 1   share of them that runs at once; never fewer than one branch
 * element       out  -
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE
 * accuracy  no pressure loss of its own: give its fittings to the lines beside it
 * source    conservation of mass
 */
VTX_API vtx_status vtx_chain_manifold(double branches, double simultaneity, vtx_chain_element *element);

/* Batch forms: rules in batch.h. Written by build-aux/generate. */
VTX_API vtx_status vtx_chain_hose_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride, const double *length,
        ptrdiff_t length_stride, vtx_chain_element *element, ptrdiff_t element_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_chain_pipe_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride, const double *length,
        ptrdiff_t length_stride, const double *roughness, ptrdiff_t roughness_stride, const double *minor_loss,
        ptrdiff_t minor_loss_stride, vtx_chain_element *element, ptrdiff_t element_stride, int32_t *status,
        size_t *failed);
VTX_API vtx_status vtx_chain_conductance_batch(size_t n, const double *conductance, ptrdiff_t conductance_stride,
        const double *critical_ratio, ptrdiff_t critical_ratio_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_chain_coupling_batch(size_t n, const double *nominal_diameter, ptrdiff_t nominal_diameter_stride,
        vtx_chain_element *element, ptrdiff_t element_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_chain_orifice_batch(size_t n, const double *area, ptrdiff_t area_stride,
        const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_chain_valve_batch(size_t n, const double *flow_coefficient, ptrdiff_t flow_coefficient_stride,
        const double *pressure_ratio_factor, ptrdiff_t pressure_ratio_factor_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_chain_filter_batch(size_t n, const double *pressure_loss, ptrdiff_t pressure_loss_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *temperature, ptrdiff_t temperature_stride,
        const double *laminar_share, ptrdiff_t laminar_share_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_chain_regulator_batch(size_t n, const double *set_pressure, ptrdiff_t set_pressure_stride,
        const double *rated_droop, ptrdiff_t rated_droop_stride, const double *rated_flow,
        ptrdiff_t rated_flow_stride, const double *conductance, ptrdiff_t conductance_stride,
        const double *critical_ratio, ptrdiff_t critical_ratio_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed);
VTX_API vtx_status vtx_chain_manifold_batch(size_t n, const double *branches, ptrdiff_t branches_stride,
        const double *simultaneity, ptrdiff_t simultaneity_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed);
/* End of the batch forms. */

#ifdef __cplusplus
}
#endif

#endif
