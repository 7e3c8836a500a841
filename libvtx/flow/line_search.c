/* Flow and inlet pressure of a pipe: searches on its forward flow, and that flow taken backwards. */
#include "line_kernel.h"
#include "secant.h"

/* Logarithm of flow over a guess that is surely not off by more. */
#define WIDE 40.0

/* ---- choking ---- */

struct capacity_search {
    const struct pipe *pipe;
    double pressure, temperature, reference;
};

static double capacity_mismatch(double x, void *context)
{
    const struct capacity_search *c = context;
    const double mass_flow = c->reference * exp(x);
    return log(mass_flow / pipe_choked_flow(c->pipe, c->pressure, c->temperature, mass_flow));
}

/* The mismatch rises with the logarithm of flow, with a slope between 0.5 (laminar) and 2 (transition). */
vtx_status pipe_capacity(const struct pipe *p, double pressure, double temperature, double *mass_flow)
{
    struct pipe guess = *p;
    double x;
    guess.friction_factor = p->friction_factor > 0 ? p->friction_factor : 0.02;
    struct capacity_search c = { p, pressure, temperature, pipe_choked_flow(&guess, pressure, temperature, 1) };
    *mass_flow = c.reference;
    if (p->friction_factor > 0 || !(p->slenderness > 0))
        return VTX_OK;
    const vtx_status status = secant_root(capacity_mismatch, &c, 0, 0.9, -WIDE, WIDE, PIPE_TOLERANCE, IS_SMOOTH, &x);
    *mass_flow = status == VTX_OK ? c.reference * exp(x) : 0;
    return status;
}

/* ---- mass flow between two pressures ---- */

struct flow_search {
    const struct pipe *pipe;
    double pressure, temperature, wanted_loss, estimate, capacity;
};

static double flow_mismatch(double x, void *context)
{
    const struct flow_search *c = context;
    const struct pipe_flow flow = x < 0 ? pipe_forward(c->pipe, c->pressure, c->temperature, c->capacity * exp(x))
                                        : pipe_choked(c->pipe, c->pressure, c->temperature, c->capacity);
    return log(pipe_pressure_loss(c->pipe, &flow) / c->wanted_loss);
}

/* In logarithms the loss is nearly straight over flow; at the capacity it is above what is wanted. */
static vtx_status search_flow(struct flow_search *c, double start, double *mass_flow)
{
    double x;
    const vtx_status status = secant_root(flow_mismatch, c, start, 2, -2 * WIDE, 0, PIPE_TOLERANCE, IS_SMOOTH, &x);
    *mass_flow = status == VTX_OK ? c->capacity * exp(x) : 0;
    return status;
}

/* The isothermal law between two pressures in a few closed steps: nothing but its friction and its inlet head go with the flow. For the
 * adiabatic law a start. 0 near choking: where the end runs fast, or a little more flow takes much more pressure. */
static double estimate_flow(const struct pipe *p, double pressure, double temperature, double wanted_loss)
{
    enum { ROUNDS = 3 };
    const double density_root = p->area * pressure / sqrt(p->specific_gas_constant * temperature);
    const double head = p->static_inlet ? 0 : 1, cooling = (p->gamma - 1) / (2 * p->gamma);
    double friction = (p->friction_factor > 0 ? p->friction_factor : 0.02) * p->slenderness + p->minor_loss, loss = wanted_loss, mass_flow = 0;
    for (int i = 0; i < ROUNDS; i++) {
        const double fall = expm1(-2 * loss), share = -fall / (friction + 2 * loss + head * (i == 0));
        if (!(1 + fall > 0.02) || !(share < (p->isothermal ? 0.4 : 0.25) * (1 + fall)))
            return 0;
        loss = wanted_loss - head * log1p(cooling * share) / (2 * cooling);
        if (!(loss > 0))
            return 0;
        mass_flow = density_root * sqrt(share * (1 + head * cooling * share)) * (head > 0 ? exp(loss - wanted_loss) : 1);
        if (p->friction_factor > 0 && p->static_inlet)
            break;
        friction = pipe_loss(p, mass_flow, 1);
    }
    return mass_flow;
}

/* Far from choking the capacity is not needed. */
static double slow_mismatch(double x, void *context)
{
    const struct flow_search *c = context;
    const struct pipe_flow flow = pipe_forward(c->pipe, c->pressure, c->temperature, c->estimate * exp(x));
    return flow.spare > 0.3 * flow.speed_share ? log(pipe_pressure_loss(c->pipe, &flow) / c->wanted_loss) : quiet_nan();
}

static vtx_status search_slow_flow(struct flow_search *c, double *mass_flow)
{
    double x;
    c->estimate = estimate_flow(c->pipe, c->pressure, c->temperature, c->wanted_loss);
    if (!(c->estimate > REST_FLOW))
        return VTX_NO_SOLUTION;
    const vtx_status status = secant_root(slow_mismatch, c, 0, 1.9, -WIDE, WIDE, PIPE_TOLERANCE, IS_SMOOTH, &x);
    if (status == VTX_OK)
        *mass_flow = c->estimate * exp(x);
    return status;
}

/* capacity is below zero where it was not needed. */
vtx_status pipe_mass_flow(const struct pipe *p, double pressure, double temperature, double outlet_pressure, double *capacity,
                          double *mass_flow)
{
    struct flow_search c = { .pipe = p, .pressure = pressure, .temperature = temperature,
                             .wanted_loss = log1p((pressure - outlet_pressure) / outlet_pressure) };
    *capacity = -1;
    *mass_flow = 0;
    if (!(c.wanted_loss > 0) || search_slow_flow(&c, mass_flow) == VTX_OK)
        return VTX_OK;
    const vtx_status status = pipe_capacity(p, pressure, temperature, capacity);
    if (status != VTX_OK)
        return status;
    c.capacity = *mass_flow = *capacity;
    const struct pipe_flow choked = pipe_choked(p, pressure, temperature, c.capacity);
    const double choked_loss = pipe_pressure_loss(p, &choked);
    if (c.wanted_loss >= choked_loss)
        return VTX_OK;
    return search_flow(&c, 0.5 * log(expm1(-2 * c.wanted_loss) / expm1(-2 * choked_loss)), mass_flow);
}

/* ---- inlet pressure and length: the outlet is known first ---- */

/* Speed share at an outlet of known static pressure, at most the choked 1. The temperature is the one that the law keeps constant.
 * Adiabatic: flux sqrt(R T0)/p = sqrt(c drop)/(1 - drop) is a quadratic in sqrt(drop). */
static double outlet_speed_share(const struct pipe *p, double mass_flow, double pressure, double temperature)
{
    const double flux = mass_flow / p->area * sqrt(p->specific_gas_constant * temperature) / pressure;
    if (p->isothermal)
        return smaller(square(flux), 1);
    const double c = 2 * p->gamma / (p->gamma - 1);
    return smaller(square(2 * flux / (sqrt(c) + sqrt(c + 4 * square(flux)))) / sonic_drop(p->gamma), 1);
}

/* What the law keeps constant over the inlet temperature as the line knows it. */
static double kept_temperature(const struct pipe *p, double drop)
{
    if (p->isothermal)
        return p->static_inlet ? 1 : 1 - drop;
    return p->static_inlet ? 1 / (1 - drop) : 1;
}

enum { TEMPERATURE_ROUNDS = 60, PRESSURE_ROUNDS = 3 };

/* The pipe's law taken backwards from the outlet. Only where the kept temperature is not the known one must it be repeated; the
 * error then shrinks fivefold or more each time. */
static double backward_inlet_pressure(const struct pipe *p, double mass_flow, double temperature, double outlet_pressure, int *choked)
{
    const double excess = pipe_scale(p) * pipe_loss(p, mass_flow, 1);
    double ratio = 1, drop = 0;
    for (int i = 0; i < TEMPERATURE_ROUNDS; i++) {
        const double outlet = outlet_speed_share(p, mass_flow, outlet_pressure, temperature * ratio);
        *choked = outlet >= 1;
        drop = pipe_drop(p, 1 / (1 + log_excess_above(excess + log_excess((1 - outlet) / outlet))));
        const double before = ratio;
        ratio = kept_temperature(p, drop);
        if (fabs(ratio - before) <= DBL_EPSILON)
            break;
    }
    return mass_flow / pipe_mass_flow_at(p, 1, temperature, drop);
}

/* A small loss keeps its relative precision only if it is added to the outlet pressure at the end. Slow flow: the loss goes
 * with the inlet pressure to the power -2, or -1 where it is laminar. */
double pipe_inlet_pressure(const struct pipe *p, double mass_flow, double temperature, double outlet_pressure)
{
    int choked = 0;
    double pressure = outlet_pressure;
    if (mass_flow < REST_FLOW)
        return outlet_pressure;
    if (outlet_speed_share(p, mass_flow, outlet_pressure, temperature) > 1e-40)
        pressure = backward_inlet_pressure(p, mass_flow, temperature, outlet_pressure, &choked);
    for (int i = 0; i < PRESSURE_ROUNDS && !choked; i++) {
        const struct pipe_flow flow = pipe_forward(p, pressure, temperature, mass_flow);
        const double loss = pipe_pressure_loss(p, &flow);
        if (loss > 0.1 || flow.speed_share > 0.1)
            break;
        const double now = log1p((pressure - outlet_pressure) / outlet_pressure);
        pressure = outlet_pressure + outlet_pressure * expm1(now + (loss - now) / (1 + 2 * loss));
    }
    return pressure;
}

double pipe_friction_between(const struct pipe *p, double mass_flow, double pressure, double temperature, double outlet_pressure)
{
    const struct pipe_flow inlet = { pipe_inlet_drop(p, pressure, temperature, mass_flow), 0, 0, 0 };
    const double share = pipe_speed_share(p, inlet.drop);
    const double outlet = outlet_speed_share(p, mass_flow, outlet_pressure, temperature * kept_temperature(p, inlet.drop));
    const double total = log1p((pressure - outlet_pressure) / outlet_pressure) - (p->static_inlet ? 0 : pipe_inlet_loss(p, &inlet));
    double growth = -log(share);
    if (!(share < 1))
        return -1;
    if (outlet < 1) {
        const double outlet_drop = pipe_drop(p, outlet);
        growth = 2 * (total - (p->isothermal ? 0 : log1p((outlet_drop - inlet.drop) / (1 - outlet_drop))));
    }
    return (-expm1(-growth) - share * growth) / (share * pipe_scale(p));
}
