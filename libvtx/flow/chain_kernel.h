/* The march through a chain, without checks: from mass flow at one end to the pressure at the other. Internal.
 *
 * chain_march answers for every flow from rest upwards, and its end pressure is continuous, positive, never rises with flow and
 * never falls with the start pressure, also where the flow is more than an element can pass: that element's outlet then follows
 *   its outlet pressure when just choked, times (capacity/flow)^2,
 * which is no state of any air, but lets a search cross the choking point. headroom tells: below zero the flow does not pass. */
#ifndef VTX_CHAIN_KERNEL_H
#define VTX_CHAIN_KERNEL_H

#include <vtx/chain.h>
#include <vtx/line.h>

#include "line_kernel.h"

/* No element. */
#define CHAIN_NONE SIZE_MAX

struct chain {
    const vtx_chain_element *elements;
    size_t count;
    const vtx_chain_element *consumer; /* one more element at the end, or null */
    int reversed;                      /* the flow enters at the last element */
    const vtx_chain_element *replacement; /* stands in for elements[replaced], or null */
    size_t replaced;
    vtx_gas gas;
    double viscosity; /* of the air that enters */
};

/* Air at rest for the books, between two elements. */
struct stream {
    double pressure, temperature; /* stagnation */
    double mass_flow, paths;      /* of one path; how many there are */
};

/* What an element does to a stream. */
struct passage {
    double loss;        /* of stagnation pressure, Pa */
    double static_loss; /* from the stagnation pressure ahead to the static pressure at the outlet; of lines only more than loss */
    double outlet_drop; /* 1 - T/T0 at the outlet of a line, else below 0 */
    double temperature; /* stagnation, behind */
    double headroom;    /* about ln(capacity/flow); exact below 0, where the flow does not pass */
};

/* The end of a march. */
struct chain_end {
    double lost;        /* stagnation pressure, Pa, from the start */
    double lost_static; /* to the static pressure just inside the end */
    double temperature; /* stagnation */
    double mass_flow;   /* of one path */
    double headroom;    /* of the tightest element; below 0 of the first that does not pass the flow: ln(capacity/flow) */
    size_t tightest;    /* that element, counted along the flow */
};

/* Stagnation pressure that what follows the chain needs to take a flow (of one path): must not fall with flow. */
typedef double chain_need(double mass_flow, void *context);

/* What follows. need null: outlet_pressure whatever the flow. open_end: it meets the static pressure of the last line. */
struct chain_demand {
    chain_need *need;
    void *context;
    double outlet_pressure; /* at rest */
    int open_end;
};

struct chain make_chain(const vtx_chain_element *elements, size_t count, double temperature);

/* The viscosity of cold air is not covered. */
static inline vtx_status check_chain_temperature(double temperature) { return check_positive(temperature, 150, FLOW_TEMPERATURE_MAX); }

vtx_status check_chain_element(const vtx_chain_element *element);

static inline size_t chain_length(const struct chain *c) { return c->count + (c->consumer != NULL); }

static inline const vtx_chain_element *chain_element_at(const struct chain *c, size_t position)
{
    if (position == c->count)
        return c->consumer;
    const size_t index = c->reversed ? c->count - 1 - position : position;
    return c->replacement && index == c->replaced ? c->replacement : &c->elements[index];
}

/* Common practice, no source: a supply should not take more than a tenth of the absolute pressure at its start. */
static inline int chain_starves(double pressure_loss, double inlet_pressure) { return pressure_loss > 0.1 * inlet_pressure; }

/* Closed to flow from its outlet to its inlet. */
static inline int chain_is_one_way(const vtx_chain_element *e)
{
    return e->kind == VTX_CHAIN_REGULATOR || e->cracking_pressure > 0;
}

/* A line of the chain. */
struct pipe chain_pipe(const struct chain *c, const vtx_chain_element *e);

/* Through the element at a position, counted along the flow. is_capacity: the flow is known to be the most that passes; a line's
 * end is then sonic exactly, not to the root of the rounding. */
struct passage chain_pass(const struct chain *c, size_t position, const struct stream *stream, int is_capacity);

/* The stream behind an element that leaves this pressure. */
struct stream chain_behind(const struct chain *c, size_t position, const struct stream *stream, const struct passage *passage,
                           double pressure);

/* From a position to the end. */
struct chain_end chain_march(const struct chain *c, size_t position, const struct stream *start);

/* Flow of one path at the start that meets the demand; 0 where the chain stays closed. choked: element that limits it, or CHAIN_NONE.
 *
 * OK, OUT_OF_RANGE (above 1e4 kg/s), NOT_CONVERGED */
vtx_status chain_flow(const struct chain *c, double pressure, double temperature, const struct chain_demand *demand, double *mass_flow,
                      size_t *choked);

/* The most that passes from this start, found from a flow that does not.
 *
 * OK, OUT_OF_RANGE (that flow passes), NOT_CONVERGED */
vtx_status chain_capacity(const struct chain *c, double pressure, double temperature, double too_much, double *mass_flow, size_t *choked);

/* Start pressure between low and high with which a flow meets an end pressure; the lowest that passes when that is more.
 *
 * OK, NO_SOLUTION (not even high), NOT_CONVERGED */
vtx_status chain_start_pressure(const struct chain *c, size_t position, const struct stream *start, double end_pressure, int open_end,
                                double low, double high, double *pressure, size_t *choked);

#endif
