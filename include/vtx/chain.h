/* Compressed air through lines, couplings, valves, filters and regulators in a row: what flow passes and what pressure arrives.
 *
 * Not real air: a perfect gas of 0.0289655 kg/mol and ratio 1.4, whose 0.2 K/bar of Joule-Thomson cooling is left out.
 * See also: chain_element.h for the elements, line.h and conductance.h for single ones.
 *
 * Rules of all calls here:
 *   elements[0] is at the inlet, a vessel or header at rest; every pressure inside is passed on as stagnation pressure.
 *   The outlet pressure is the static pressure of what the last element blows into; only a line has an end whose stagnation
 *   pressure lies above it. To feed something that keeps the velocity, ask for the stagnation pressure, or use vtx_chain_feed.
 *   joints, where not null, has count + 1 places: joint 0 is the inlet, joint i what leaves element i - 1.
 *   Below a pressure difference of one millionth the flow of elements that follow a square law is made to start in proportion
 *   to the difference, so that its slope is finite at rest.
 *   A choked element passes its flow whatever lies behind it; the stagnation pressure behind it is the one that the rest needs. */
#ifndef VTX_CHAIN_H
#define VTX_CHAIN_H

#include <vtx/chain_element.h>
#include <vtx/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* The air between two elements. Static values belong to the bore of the element before the joint, or if that has none or is
 * choked, of the one behind; they are NaN where neither bore is known (VTX_ADVISORY_FIELD_UNAVAILABLE). */
typedef struct vtx_chain_joint {
    double stagnation_pressure;    /* Pa */
    double static_pressure;        /* Pa */
    double stagnation_temperature; /* K */
    double static_temperature;     /* K */
    double mach;                   /* -    never negative */
    double velocity;               /* m/s  negative when the flow is reversed */
    double mass_flow;              /* kg/s in one path; times paths it is the same at all joints */
    double paths;                  /* -    equal paths the flow is divided into here */
    double pressure_loss;          /* Pa   stagnation pressure lost in the element before this joint, 0 at joint 0 */
    double share;                  /* -    part of the loss of all elements, 0 at rest */
    int32_t choked;                /* -    1 when the element before this joint is choked, else 0 */
    int32_t advisories;            /* -    bits of vtx_advisory */
} vtx_chain_joint;

/* The chain as a whole. */
typedef struct vtx_chain_state {
    double mass_flow;                  /* kg/s at the inlet, all paths; negative when the flow is reversed */
    double inlet_pressure;             /* Pa   stagnation */
    double inlet_temperature;          /* K    stagnation */
    double outlet_pressure;            /* Pa   static, just inside the end; above the pressure outside when a line is choked there */
    double outlet_stagnation_pressure; /* Pa   at the end */
    double outlet_temperature;         /* K    stagnation, at the end */
    double pressure_loss;              /* Pa   stagnation pressure lost in all elements, never negative */
    double largest_loss;               /* Pa   of one element */
    double largest_share;              /* -    of one element, 0 at rest */
    double attainable_mass_flow;       /* kg/s with NO_SOLUTION the most that passes; otherwise the mass flow */
    int32_t costliest_element;         /* -    index of the element with the largest loss, -1 at rest */
    int32_t choked_element;            /* -    index of the first choked element in flow direction, -1 none */
    int32_t choked;                    /* -    1 when an element is choked, else 0 */
    int32_t advisories;                /* -    bits of vtx_advisory */
} vtx_chain_state;

/* Mass flow between two pressures, in either direction.
 *
 * elements            in   -
 * count               in   -     1 or more
 * inlet_pressure      in   Pa    1e3..1e8   stagnation
 * inlet_temperature   in   K     150..1000
 * outlet_pressure     in   Pa    1e3..1e8   above the inlet pressure the flow is negative
 * outlet_temperature  in   K     150..1000  of the air that comes back then
 * state               out  -
 * joints              out  -     count + 1 of them; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also a flow above 1e4 kg/s), NOT_CONVERGED
 * advisory  CHOKED, REVERSED_FLOW, FIELD_UNAVAILABLE
 * accuracy  1e-12 of the flow; pressures behind an element that is nearly choked are as sensitive to it as they are in the shop;
 *           parts follow their laws within a few per cent
 * source    the laws of the elements in series; mass and stagnation temperature go on from joint to joint
 * note      regulators and check valves do not let flow back: 0 then, and between pressures that leave them closed
 */
VTX_API vtx_status vtx_chain_mass_flow(const vtx_chain_element *elements, size_t count, double inlet_pressure, double inlet_temperature,
                                       double outlet_pressure, double outlet_temperature, vtx_chain_state *state, vtx_chain_joint *joints);

/* Pressure at the end of a chain that passes a mass flow; where an element just chokes, the highest.
 *
 * elements           in   -
 * count              in   -     1 or more
 * mass_flow          in   kg/s  0..1e4     at the inlet
 * inlet_pressure     in   Pa    1e3..1e8   stagnation
 * inlet_temperature  in   K     150..1000
 * state              out  -
 * joints             out  -     count + 1 of them; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (also an end below 1e3 Pa), NOT_CONVERGED, NO_SOLUTION (more than passes;
 *           attainable_mass_flow holds the most)
 * advisory  CHOKED, FIELD_UNAVAILABLE
 * accuracy  rounding of the elements' laws
 * source    the laws of the elements in series; mass and stagnation temperature go on from joint to joint
 */
VTX_API vtx_status vtx_chain_outlet_pressure(const vtx_chain_element *elements, size_t count, double mass_flow, double inlet_pressure,
                                             double inlet_temperature, vtx_chain_state *state, vtx_chain_joint *joints);

/* Pressure that a chain needs at its inlet to pass a mass flow against an outlet pressure.
 *
 * elements           in   -
 * count              in   -     1 or more
 * mass_flow          in   kg/s  0..1e4     at the inlet
 * inlet_temperature  in   K     150..1000
 * outlet_pressure    in   Pa    1e3..1e8
 * state              out  -     the answer is its inlet_pressure
 * joints             out  -     count + 1 of them; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED, NO_SOLUTION (not even 1e8 Pa would do, as when a regulator is set too
 *           low; the most it passes stands in attainable_mass_flow)
 * advisory  CHOKED, FIELD_UNAVAILABLE
 * accuracy  1e-12 relative, exact inverse of vtx_chain_mass_flow
 * source    the laws of the elements in series; mass and stagnation temperature go on from joint to joint
 */
VTX_API vtx_status vtx_chain_inlet_pressure(const vtx_chain_element *elements, size_t count, double mass_flow, double inlet_temperature,
                                            double outlet_pressure, vtx_chain_state *state, vtx_chain_joint *joints);

/* A chain that feeds one consumer, or as many as its manifolds have ways: what pressure reaches it.
 *
 * elements           in   -
 * count              in   -     1 or more
 * consumer           in   -     the last element, with its effective area, conductance or Kv
 * inlet_pressure     in   Pa    1e3..1e8   stagnation
 * inlet_temperature  in   K     150..1000
 * outlet_pressure    in   Pa    1e3..inlet behind the consumer
 * state              out  -     of the supply alone, which ends at the consumer; choked_element is count when only that chokes
 * joints             out  -     count + 1 of them; may be null
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE, NOT_CONVERGED
 * advisory  CHOKED, STARVED (the supply takes more than a tenth of the pressure: common practice, no source), FIELD_UNAVAILABLE
 * accuracy  as vtx_chain_mass_flow
 * source    the laws of the elements in series; mass and stagnation temperature go on from joint to joint
 */
VTX_API vtx_status vtx_chain_feed(const vtx_chain_element *elements, size_t count, const vtx_chain_element *consumer, double inlet_pressure,
                                  double inlet_temperature, double outlet_pressure, vtx_chain_state *state, vtx_chain_joint *joints);

/* Smallest bore of one line in a chain with which a wanted stagnation pressure arrives at a wanted mass flow.
 *
 * elements             in   -
 * count                in   -     1 or more
 * line                 in   -     index of the line whose bore is sought; its diameter is not read
 * mass_flow            in   kg/s  1e-9..1e4   at the inlet
 * inlet_pressure       in   Pa    1e3..1e8    stagnation
 * inlet_temperature    in   K     150..1000
 * wanted_pressure      in   Pa    1e3..1e8    stagnation, at the end
 * diameter             out  m     1e-4..2
 *
 * status    OK, BAD_ARGUMENT, OUT_OF_RANGE (the least bore is enough), NOT_CONVERGED, NO_SOLUTION (no bore of this line is enough)
 * accuracy  1e-12 relative
 * source    the laws of the elements in series; mass and stagnation temperature go on from joint to joint
 */
VTX_API vtx_status vtx_chain_line_diameter(const vtx_chain_element *elements, size_t count, size_t line, double mass_flow, double inlet_pressure,
                                           double inlet_temperature, double wanted_pressure, double *diameter);

#ifdef __cplusplus
}
#endif

#endif
