/* Hoses and pipes: every question is a search on, or an inversion of, the forward flow of line_kernel.h. */
#include <vtx/line.h>

#include "../media/air_kernel.h"
#include "line_kernel.h"
#include "secant.h"

#define LENGTH_MAX 1e5
#define MINOR_LOSS_MAX 1e4
#define WANTED_FLOW_MIN 1e-9

/* Relative, in mass flow or bore. */
#define LINE_TOLERANCE 1e-15

/* Logarithm of flow over a guess that is surely not off by more. */
#define WIDE 40.0

vtx_status vtx_line_init(vtx_line *line)
{
    if (!line)
        return VTX_BAD_ARGUMENT;
    memset(line, 0, sizeof *line);
    line->roughness = 1.5e-6;
    line->minor_loss = 0.5;
    line->law = VTX_LINE_ADIABATIC;
    line->inlet = VTX_INLET_STAGNATION;
    return VTX_OK;
}

/* ---- description and checks ---- */

static void set_size(struct pipe *p, const vtx_line *line, double diameter, double length)
{
    p->diameter = diameter;
    p->area = bore_area(diameter);
    p->slenderness = length / diameter;
    p->relative_roughness = line->roughness / diameter;
}

static struct pipe make_pipe(const vtx_gas *gas, const vtx_line *line, double diameter, double length, double inlet_temperature)
{
    struct pipe p;
    p.gamma = gas->heat_capacity_ratio;
    p.specific_gas_constant = specific_gas_constant(gas);
    p.minor_loss = line->minor_loss;
    p.friction_factor = line->friction_factor;
    p.viscosity = line->viscosity > 0 ? line->viscosity : dilute_air_viscosity(inlet_temperature);
    p.isothermal = line->law == VTX_LINE_ISOTHERMAL;
    p.static_inlet = line->inlet == VTX_INLET_STATIC;
    set_size(&p, line, diameter, length);
    return p;
}

static vtx_status check_optional(double x, double low, double high)
{
    const vtx_status status = check_amount(x, high);
    return status == VTX_OK && x > 0 && x < low ? VTX_OUT_OF_RANGE : status;
}

static vtx_status check_wall(const vtx_line *line)
{
    vtx_status status = require(line->law == VTX_LINE_ADIABATIC || line->law == VTX_LINE_ISOTHERMAL);
    status = worse(status, require(line->inlet == VTX_INLET_STAGNATION || line->inlet == VTX_INLET_STATIC));
    status = worse(status, worse(check_amount(line->roughness, RELATIVE_ROUGHNESS_MAX * BORE_MAX), check_amount(line->minor_loss, MINOR_LOSS_MAX)));
    return worse(status, worse(check_optional(line->friction_factor, 1e-4, 10), check_optional(line->viscosity, VISCOSITY_MIN, VISCOSITY_MAX)));
}

static vtx_status check_diameter(const vtx_line *line, double diameter)
{
    const vtx_status status = check_positive(diameter, BORE_MIN, BORE_MAX);
    return status == VTX_OK && line->roughness > RELATIVE_ROUGHNESS_MAX * diameter ? VTX_OUT_OF_RANGE : status;
}

enum unread { ALL_READ, DIAMETER_UNREAD, LENGTH_UNREAD };

static vtx_status check_line(const vtx_gas *gas, const vtx_line *line, enum unread unread)
{
    if (!line)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_gas(gas), check_wall(line));
    if (unread != DIAMETER_UNREAD)
        status = worse(status, check_diameter(line, line->diameter));
    if (unread != LENGTH_UNREAD)
        status = worse(status, check_amount(line->length, LENGTH_MAX));
    return status;
}

static vtx_status check_state(double pressure, double temperature)
{
    return worse(check_flow_pressure(pressure), check_flow_temperature(temperature));
}

static vtx_status check_outlet(double inlet_pressure, double outlet_pressure)
{
    return worse(check_flow_pressure(outlet_pressure), require(!(outlet_pressure > inlet_pressure)));
}

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
    const vtx_status status = secant_root(capacity_mismatch, &c, 0, 0.9, -WIDE, WIDE, LINE_TOLERANCE, IS_SMOOTH, &x);
    *mass_flow = status == VTX_OK ? c.reference * exp(x) : 0;
    return status;
}

/* ---- mass flow between two pressures ---- */

struct flow_search {
    const struct pipe *pipe;
    double pressure, temperature, wanted_loss, capacity;
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
    const vtx_status status = secant_root(flow_mismatch, c, start, 2, -2 * WIDE, 0, LINE_TOLERANCE, IS_SMOOTH, &x);
    *mass_flow = status == VTX_OK ? c->capacity * exp(x) : 0;
    return status;
}

static vtx_status pipe_mass_flow(const struct pipe *p, double pressure, double temperature, double outlet_pressure, double *capacity,
                                 double *mass_flow)
{
    struct flow_search c = { p, pressure, temperature, log1p((pressure - outlet_pressure) / outlet_pressure), 0 };
    const vtx_status status = pipe_capacity(p, pressure, temperature, &c.capacity);
    *capacity = c.capacity;
    *mass_flow = 0;
    if (status != VTX_OK || !(c.wanted_loss > 0))
        return status;
    const struct pipe_flow choked = pipe_choked(p, pressure, temperature, c.capacity);
    const double choked_loss = pipe_pressure_loss(p, &choked);
    *mass_flow = c.capacity;
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
static double pipe_inlet_pressure(const struct pipe *p, double mass_flow, double temperature, double outlet_pressure)
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

/* f L/D + sum K that takes up the pressure; negative when the flow does not even pass without. */
static double friction_between(const struct pipe *p, double mass_flow, double pressure, double temperature, double outlet_pressure)
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

/* ---- bore ---- */

struct bore_search {
    struct pipe pipe;
    const vtx_line *line;
    double mass_flow, pressure, temperature, wanted_loss;
};

static struct pipe_flow flow_in_bore(double x, struct bore_search *c)
{
    set_size(&c->pipe, c->line, exp(x), c->line->length);
    return pipe_forward(&c->pipe, c->pressure, c->temperature, c->mass_flow);
}

/* Above zero when the flow chokes in this bore. */
static double choking_mismatch(double x, void *context)
{
    struct bore_search *c = context;
    const struct pipe_flow flow = flow_in_bore(x, c);
    const double loss = pipe_scale(&c->pipe) * pipe_loss(&c->pipe, c->mass_flow, flow.speed_share);
    return loss > 0 ? -flow.spare / (flow.spare + 2 * loss) : -flow.spare;
}

static double bore_mismatch(double x, void *context)
{
    struct bore_search *c = context;
    const struct pipe_flow flow = flow_in_bore(x, c);
    return log(pipe_pressure_loss(&c->pipe, &flow) / c->wanted_loss);
}

/* No flow passes a bore in which it would start at its choking speed. */
static double bore_floor(const struct bore_search *c)
{
    struct pipe unit = c->pipe;
    unit.area = 1;
    const double area = c->mass_flow / pipe_mass_flow_at(&unit, c->pressure, c->temperature, pipe_drop(&unit, 1));
    return larger(sqrt(area * (4 / pi)), larger(BORE_MIN, c->line->roughness / RELATIVE_ROUGHNESS_MAX));
}

/* First the bore that chokes, if the floor does; then, if its end is still above the outlet pressure, a wider one. */
static vtx_status pipe_bore(struct bore_search *c, double *diameter)
{
    const double floor = bore_floor(c), widest = log(BORE_MAX);
    double x = log(floor);
    vtx_status status = VTX_OK;
    if (!(x < widest) || choking_mismatch(widest, c) > 0 || bore_mismatch(widest, c) > 0)
        return VTX_NO_SOLUTION;
    if (choking_mismatch(x, c) > 0)
        status = find_root(choking_mismatch, c, x, widest, LINE_TOLERANCE, &x);
    else if (bore_mismatch(x, c) < 0)
        return VTX_OUT_OF_RANGE;
    if (status == VTX_OK && bore_mismatch(x, c) > 0)
        status = find_root(bore_mismatch, c, x, widest, LINE_TOLERANCE, &x);
    *diameter = status == VTX_OK ? exp(x) : 0;
    return status == VTX_NO_SOLUTION ? VTX_NOT_CONVERGED : status;
}

/* ---- results ---- */

static void describe_end(const struct pipe *p, double drop, double stagnation_temperature, double *temperature, double *mach, double *velocity)
{
    *temperature = stagnation_temperature * (1 - drop);
    *mach = mach_of_drop(p->gamma, drop);
    *velocity = *mach * sqrt(p->gamma * p->specific_gas_constant * *temperature);
}

static void describe_rest(const struct pipe *p, double pressure, double temperature, struct pipe_flow *flow, vtx_line_state *state)
{
    memset(flow, 0, sizeof *flow);
    flow->spare = 1;
    state->friction_factor = p->friction_factor > 0 ? p->friction_factor : quiet_nan();
    state->advisories = p->friction_factor > 0 ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE;
    state->inlet_pressure = pressure;
    state->inlet_stagnation_temperature = temperature;
}

static void describe(const struct pipe *p, double pressure, double temperature, double mass_flow, double capacity, vtx_line_state *state)
{
    struct pipe_flow flow;
    state->mass_flow = mass_flow;
    state->attainable_mass_flow = capacity;
    state->diameter = p->diameter;
    state->length = p->slenderness * p->diameter;
    state->reynolds = reynolds_number(mass_flow, p->diameter, p->viscosity);
    state->choked = pipe_is_choked(mass_flow, capacity);
    if (mass_flow >= REST_FLOW) {
        flow = state->choked ? pipe_choked(p, pressure, temperature, mass_flow) : pipe_forward(p, pressure, temperature, mass_flow);
        state->friction_factor = p->friction_factor > 0
            ? p->friction_factor : friction_times_reynolds(state->reynolds, p->relative_roughness) / state->reynolds;
        state->advisories = state->choked ? VTX_ADVISORY_CHOKED : 0;
    } else {
        describe_rest(p, pressure, temperature, &flow, state);
    }
    const double to_stagnation = exp(pipe_inlet_loss(p, &flow));
    const double outlet_drop = pipe_outlet_drop(p, &flow);
    state->inlet_pressure = p->static_inlet ? pressure : pressure / to_stagnation;
    state->inlet_stagnation_pressure = p->static_inlet ? pressure * to_stagnation : pressure;
    state->inlet_stagnation_temperature = p->static_inlet ? temperature / (1 - flow.drop) : temperature;
    describe_end(p, flow.drop, state->inlet_stagnation_temperature, &state->inlet_temperature, &state->inlet_mach, &state->inlet_velocity);
    state->outlet_stagnation_temperature = p->isothermal ? state->inlet_temperature / (1 - outlet_drop) : state->inlet_stagnation_temperature;
    describe_end(p, outlet_drop, state->outlet_stagnation_temperature, &state->outlet_temperature, &state->outlet_mach, &state->outlet_velocity);
    state->outlet_pressure = pressure + pressure * expm1(-pipe_pressure_loss(p, &flow));
    state->outlet_stagnation_pressure = state->inlet_stagnation_pressure * exp(-pipe_stagnation_loss(p, &flow));
}

static vtx_status fail(double *first, vtx_line_state *state, vtx_status status)
{
    POISON_STRUCT(state, vtx_line_state, choked, status);
    return poison(first, status);
}

static vtx_status refuse(double *first, vtx_line_state *state, double attainable)
{
    fail(first, state, VTX_NO_SOLUTION);
    if (state)
        state->attainable_mass_flow = attainable;
    return VTX_NO_SOLUTION;
}

/* ---- the five questions ---- */

/* Gives the answer, and the state when it is wanted; only that needs the capacity, below zero when it is not known yet. */
static vtx_status answer(const struct pipe *p, double pressure, double temperature, double mass_flow, double capacity, double found,
                         double *output, vtx_line_state *state)
{
    if (state && capacity < 0 && pipe_capacity(p, pressure, temperature, &capacity) != VTX_OK)
        return fail(output, state, VTX_NOT_CONVERGED);
    if (state)
        describe(p, pressure, temperature, mass_flow, capacity, state);
    *output = found;
    return VTX_OK;
}

vtx_status vtx_line_mass_flow(const vtx_gas *gas, const vtx_line *line, double inlet_pressure, double inlet_temperature,
                              double outlet_pressure, double *mass_flow, vtx_line_state *state)
{
    double found, capacity;
    vtx_status status = worse(require(mass_flow != NULL), check_line(gas, line, ALL_READ));
    status = worse(status, worse(check_state(inlet_pressure, inlet_temperature), check_outlet(inlet_pressure, outlet_pressure)));
    if (status != VTX_OK)
        return fail(mass_flow, state, status);
    const struct pipe p = make_pipe(gas, line, line->diameter, line->length, inlet_temperature);
    if (pipe_mass_flow(&p, inlet_pressure, inlet_temperature, outlet_pressure, &capacity, &found) != VTX_OK)
        return fail(mass_flow, state, VTX_NOT_CONVERGED);
    return answer(&p, inlet_pressure, inlet_temperature, found, capacity, found, mass_flow, state);
}

/* Near choking only the capacity tells on which side of it the flow is; farther away it is not needed. */
static vtx_status pipe_outlet_pressure(const struct pipe *p, double pressure, double temperature, double mass_flow, double *capacity,
                                       double *outlet_pressure)
{
    struct pipe_flow flow;
    *outlet_pressure = pressure;
    if (mass_flow < REST_FLOW)
        return VTX_OK;
    flow = pipe_forward(p, pressure, temperature, mass_flow);
    if (flow.spare < 1e-9) {
        if (pipe_capacity(p, pressure, temperature, capacity) != VTX_OK)
            return VTX_NOT_CONVERGED;
        if (mass_flow > *capacity * (1 + LIMIT_ROUNDING))
            return VTX_NO_SOLUTION;
        if (pipe_is_choked(mass_flow, *capacity))
            flow = pipe_choked(p, pressure, temperature, mass_flow);
    }
    *outlet_pressure = pressure + pressure * expm1(-pipe_pressure_loss(p, &flow));
    return *outlet_pressure < FLOW_PRESSURE_MIN ? VTX_OUT_OF_RANGE : VTX_OK;
}

vtx_status vtx_line_outlet_pressure(const vtx_gas *gas, const vtx_line *line, double mass_flow, double inlet_pressure,
                                    double inlet_temperature, double *outlet_pressure, vtx_line_state *state)
{
    double found, capacity = -1;
    vtx_status status = worse(require(outlet_pressure != NULL), check_line(gas, line, ALL_READ));
    status = worse(status, worse(check_state(inlet_pressure, inlet_temperature), check_amount(mass_flow, MASS_FLOW_MAX)));
    if (status != VTX_OK)
        return fail(outlet_pressure, state, status);
    const struct pipe p = make_pipe(gas, line, line->diameter, line->length, inlet_temperature);
    status = pipe_outlet_pressure(&p, inlet_pressure, inlet_temperature, mass_flow, &capacity, &found);
    if (status == VTX_NO_SOLUTION)
        return refuse(outlet_pressure, state, capacity);
    if (status != VTX_OK)
        return fail(outlet_pressure, state, status);
    return answer(&p, inlet_pressure, inlet_temperature, mass_flow, capacity, found, outlet_pressure, state);
}

vtx_status vtx_line_inlet_pressure(const vtx_gas *gas, const vtx_line *line, double mass_flow, double inlet_temperature,
                                   double outlet_pressure, double *inlet_pressure, vtx_line_state *state)
{
    vtx_status status = worse(require(inlet_pressure != NULL), check_line(gas, line, ALL_READ));
    status = worse(status, worse(check_state(outlet_pressure, inlet_temperature), check_amount(mass_flow, MASS_FLOW_MAX)));
    if (status != VTX_OK)
        return fail(inlet_pressure, state, status);
    const struct pipe p = make_pipe(gas, line, line->diameter, line->length, inlet_temperature);
    const double found = pipe_inlet_pressure(&p, mass_flow, inlet_temperature, outlet_pressure);
    if (!(found <= FLOW_PRESSURE_MAX))
        return fail(inlet_pressure, state, VTX_OUT_OF_RANGE);
    return answer(&p, found, inlet_temperature, mass_flow, -1, found, inlet_pressure, state);
}

/* What a pipe in reach would pass, for the caller whose wish is out of it. */
static vtx_status refuse_flow(const struct pipe *p, double pressure, double temperature, double outlet_pressure, double *first, vtx_line_state *state)
{
    double capacity, attainable = 0;
    if (pipe_mass_flow(p, pressure, temperature, outlet_pressure, &capacity, &attainable) != VTX_OK)
        return fail(first, state, VTX_NOT_CONVERGED);
    return refuse(first, state, attainable);
}

vtx_status vtx_line_diameter(const vtx_gas *gas, const vtx_line *line, double mass_flow, double inlet_pressure,
                             double inlet_temperature, double outlet_pressure, double *diameter, vtx_line_state *state)
{
    double found;
    vtx_status status = worse(require(diameter != NULL), check_line(gas, line, DIAMETER_UNREAD));
    status = worse(status, worse(check_state(inlet_pressure, inlet_temperature), check_outlet(inlet_pressure, outlet_pressure)));
    status = worse(status, check_positive(mass_flow, WANTED_FLOW_MIN, MASS_FLOW_MAX));
    if (status != VTX_OK)
        return fail(diameter, state, status);
    struct bore_search c = { make_pipe(gas, line, BORE_MAX, line->length, inlet_temperature), line, mass_flow, inlet_pressure, inlet_temperature,
                             log1p((inlet_pressure - outlet_pressure) / outlet_pressure) };
    status = c.wanted_loss > 0 ? pipe_bore(&c, &found) : VTX_NO_SOLUTION;
    if (status == VTX_NO_SOLUTION) {
        set_size(&c.pipe, line, BORE_MAX, line->length);
        return refuse_flow(&c.pipe, inlet_pressure, inlet_temperature, outlet_pressure, diameter, state);
    }
    if (status != VTX_OK)
        return fail(diameter, state, status);
    set_size(&c.pipe, line, found, line->length);
    return answer(&c.pipe, inlet_pressure, inlet_temperature, mass_flow, -1, found, diameter, state);
}

vtx_status vtx_line_length(const vtx_gas *gas, const vtx_line *line, double mass_flow, double inlet_pressure,
                           double inlet_temperature, double outlet_pressure, double *length, vtx_line_state *state)
{
    vtx_status status = worse(require(length != NULL), check_line(gas, line, LENGTH_UNREAD));
    status = worse(status, worse(check_state(inlet_pressure, inlet_temperature), check_outlet(inlet_pressure, outlet_pressure)));
    status = worse(status, check_positive(mass_flow, WANTED_FLOW_MIN, MASS_FLOW_MAX));
    if (status != VTX_OK)
        return fail(length, state, status);
    struct pipe p = make_pipe(gas, line, line->diameter, 0, inlet_temperature);
    const double friction = friction_between(&p, mass_flow, inlet_pressure, inlet_temperature, outlet_pressure) - p.minor_loss;
    if (!(friction >= 0))
        return refuse_flow(&p, inlet_pressure, inlet_temperature, outlet_pressure, length, state);
    p.slenderness = 1;
    p.minor_loss = 0;
    p.slenderness = friction / pipe_loss(&p, mass_flow, 1);
    p.minor_loss = line->minor_loss;
    const double found = p.slenderness * p.diameter;
    if (!(found <= LENGTH_MAX))
        return fail(length, state, VTX_OUT_OF_RANGE);
    return answer(&p, inlet_pressure, inlet_temperature, mass_flow, -1, found, length, state);
}
