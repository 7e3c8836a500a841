/* A pipe with friction in forward direction, without checks: from mass flow to the state at both ends. Internal.
 *
 * Losses are logarithms of pressure ratios, sums of positive terms, so that a loss of 1e-15 has full precision. */
#ifndef VTX_LINE_KERNEL_H
#define VTX_LINE_KERNEL_H

#include "fanno_kernel.h"
#include "friction_kernel.h"
#include "restriction_kernel.h"

#define LINE_LENGTH_MAX 1e5
#define LINE_MINOR_LOSS_MAX 1e4

/* A line as its flow sees it. */
struct pipe {
    double gamma, specific_gas_constant;
    double diameter, area, slenderness; /* length/diameter */
    double minor_loss, relative_roughness, viscosity;
    double friction_factor; /* 0: Churchill */
    int isothermal, static_inlet;
};

/* drop = 1 - T/T0 and speed_share at the inlet, their growth to the outlet; spare <= 0 when the flow does not pass. */
struct pipe_flow {
    double drop, speed_share, growth, spare;
};

static inline double pipe_speed_share(const struct pipe *p, double drop)
{
    return p->isothermal ? 2 * p->gamma / (p->gamma - 1) * drop / (1 - drop) : drop / sonic_drop(p->gamma);
}

static inline double pipe_drop(const struct pipe *p, double speed_share)
{
    if (!p->isothermal)
        return sonic_drop(p->gamma) * speed_share;
    const double x = (p->gamma - 1) / (2 * p->gamma) * speed_share;
    return x / (1 + x);
}

/* Mass flow whose inlet runs at this drop. */
static inline double pipe_mass_flow_at(const struct pipe *p, double pressure, double temperature, double drop)
{
    const double flux = p->area * pressure * sqrt(2 * p->gamma / (p->gamma - 1) * drop / (p->specific_gas_constant * temperature));
    return p->static_inlet ? flux / sqrt(1 - drop) : flux * exp(log1p(-drop) / (p->gamma - 1));
}

/* Inverse of the above; beyond Mach 1 the drop at Mach 1. */
static inline double pipe_inlet_drop(const struct pipe *p, double pressure, double temperature, double mass_flow)
{
    const double flux = mass_flow / p->area * sqrt(p->specific_gas_constant * temperature) / pressure;
    if (!p->static_inlet)
        return subsonic_drop(p->gamma, square(flux / critical_flow_function(p->gamma)));
    const double x = (p->gamma - 1) / (2 * p->gamma) * square(flux);
    return smaller(x / (1 + x), sonic_drop(p->gamma));
}

/* A few molecules an hour: below this a line is at rest, and nothing is divided by its Reynolds number. */
#define REST_FLOW 1e-30

/* f L/D + sum K, times something that goes with flow squared. mass_flow above REST_FLOW. */
static inline double pipe_loss(const struct pipe *p, double mass_flow, double times)
{
    if (p->friction_factor > 0)
        return (p->friction_factor * p->slenderness + p->minor_loss) * times;
    const double reynolds = reynolds_number(mass_flow, p->diameter, p->viscosity);
    const double friction = friction_times_reynolds(reynolds, p->relative_roughness) * p->slenderness;
    return friction * (times / reynolds) + p->minor_loss * times;
}

static inline double pipe_scale(const struct pipe *p) { return p->isothermal ? 1 : fanno_scale(p->gamma); }

/* mass_flow above REST_FLOW. */
static inline struct pipe_flow pipe_forward(const struct pipe *p, double pressure, double temperature, double mass_flow)
{
    struct pipe_flow flow;
    const double drop = pipe_inlet_drop(p, pressure, temperature, mass_flow);
    flow.speed_share = smaller(pipe_speed_share(p, drop), 1);
    flow.drop = smaller(drop, pipe_drop(p, 1));
    flow.spare = speed_growth(flow.speed_share, pipe_scale(p) * pipe_loss(p, mass_flow, flow.speed_share), &flow.growth);
    return flow;
}

/* The flow that chokes the line. Found from the mass flow, its end would be off by the root of the rounding. */
static inline struct pipe_flow pipe_choked(const struct pipe *p, double pressure, double temperature, double capacity)
{
    struct pipe_flow flow = pipe_forward(p, pressure, temperature, capacity);
    flow.growth = -log(flow.speed_share);
    flow.spare = 0;
    return flow;
}

static inline int pipe_is_choked(double mass_flow, double capacity) { return mass_flow >= capacity * (1 - LIMIT_ROUNDING); }

static inline double pipe_outlet_drop(const struct pipe *p, const struct pipe_flow *flow)
{
    if (!p->isothermal)
        return smaller(flow->drop * exp(flow->growth), sonic_drop(p->gamma));
    return pipe_drop(p, smaller(flow->speed_share * exp(flow->growth), 1));
}

/* ln(stagnation/static) at the inlet. */
static inline double pipe_inlet_loss(const struct pipe *p, const struct pipe_flow *flow)
{
    return -p->gamma / (p->gamma - 1) * log1p(-flow->drop);
}

/* ln(static pressure at the inlet/static pressure at the outlet). */
static inline double pipe_static_loss(const struct pipe *p, const struct pipe_flow *flow)
{
    if (p->isothermal)
        return flow->growth / 2;
    return flow->growth / 2 + log1p(flow->drop * expm1(flow->growth) / (1 - pipe_outlet_drop(p, flow)));
}

/* ln(inlet pressure as the line knows it/static pressure at the outlet). */
static inline double pipe_pressure_loss(const struct pipe *p, const struct pipe_flow *flow)
{
    return pipe_static_loss(p, flow) + (p->static_inlet ? 0 : pipe_inlet_loss(p, flow));
}

/* ln(stagnation pressure at the inlet/stagnation pressure at the outlet): never negative. */
static inline double pipe_stagnation_loss(const struct pipe *p, const struct pipe_flow *flow)
{
    const double k = p->gamma;
    const double rise = flow->drop * expm1(flow->growth);
    if (p->isothermal)
        return larger(flow->growth / 2 - k / (k - 1) * log1p(rise), 0);
    return larger(flow->growth / 2 + log1p(-rise / (1 - flow->drop)) / (k - 1), 0);
}

/* Flow that chokes a line whose friction is that of the given flow. */
static inline double pipe_choked_flow(const struct pipe *p, double pressure, double temperature, double mass_flow)
{
    const double excess = pipe_scale(p) * pipe_loss(p, mass_flow, 1);
    return pipe_mass_flow_at(p, pressure, temperature, pipe_drop(p, 1 / (1 + log_excess_above(excess))));
}

/* Relative, in mass flow or bore. */
#define PIPE_TOLERANCE 1e-15

/* The most that passes: OK, NOT_CONVERGED. */
vtx_status pipe_capacity(const struct pipe *p, double pressure, double temperature, double *mass_flow);

/* Mass flow between two pressures, and the most that passes, below zero when it was not needed: OK, NOT_CONVERGED. */
vtx_status pipe_mass_flow(const struct pipe *p, double pressure, double temperature, double outlet_pressure, double *capacity,
                          double *mass_flow);

/* Inlet pressure that a flow needs. */
double pipe_inlet_pressure(const struct pipe *p, double mass_flow, double temperature, double outlet_pressure);

/* f L/D + sum K that takes up the pressure; negative when the flow does not even pass without. */
double pipe_friction_between(const struct pipe *p, double mass_flow, double pressure, double temperature, double outlet_pressure);

#endif
