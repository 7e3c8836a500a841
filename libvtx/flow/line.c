/* Hoses and pipes: checks, results, and the search for a bore. */
#include <vtx/line.h>

#include "../base/root.h"
#include "../media/air_kernel.h"
#include "line_kernel.h"

#define WANTED_FLOW_MIN 1e-9

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
    status = worse(status, check_amount(line->roughness, RELATIVE_ROUGHNESS_MAX * BORE_MAX));
    status = worse(status, check_amount(line->minor_loss, LINE_MINOR_LOSS_MAX));
    status = worse(status, check_optional(line->friction_factor, 1e-4, 10));
    return worse(status, check_optional(line->viscosity, VISCOSITY_MIN, VISCOSITY_MAX));
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
    vtx_status status = worse(check_gas(gas), worse(check_wall(line), require(are_zero(line->reserved, ARRAY_LENGTH(line->reserved)))));
    if (unread != DIAMETER_UNREAD)
        status = worse(status, check_diameter(line, line->diameter));
    if (unread != LENGTH_UNREAD)
        status = worse(status, check_amount(line->length, LINE_LENGTH_MAX));
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
        status = find_root(choking_mismatch, c, x, widest, PIPE_TOLERANCE, &x);
    else if (bore_mismatch(x, c) < 0)
        return VTX_OUT_OF_RANGE;
    if (status == VTX_OK && bore_mismatch(x, c) > 0)
        status = find_root(bore_mismatch, c, x, widest, PIPE_TOLERANCE, &x);
    *diameter = status == VTX_OK ? exp(x) : 0;
    return status == VTX_NO_SOLUTION ? VTX_NOT_CONVERGED : status;
}

/* ---- results ---- */

struct line_end {
    double temperature, stagnation_temperature, mach, velocity;
};

static struct line_end describe_end(const struct pipe *p, double drop, double stagnation_temperature)
{
    struct line_end end = { .stagnation_temperature = stagnation_temperature };
    end.temperature = stagnation_temperature * (1 - drop);
    end.mach = mach_of_drop(p->gamma, drop);
    end.velocity = end.mach * sqrt(p->gamma * p->specific_gas_constant * end.temperature);
    return end;
}

/* Air at rest: no friction factor but a given one. */
static struct pipe_flow flow_in(const struct pipe *p, double pressure, double temperature, vtx_line_state *state)
{
    const struct pipe_flow rest = { 0, 0, 0, 1 };
    state->advisories = state->choked ? VTX_ADVISORY_CHOKED : 0;
    state->friction_factor = p->friction_factor;
    if (state->mass_flow < REST_FLOW && !(p->friction_factor > 0)) {
        state->friction_factor = quiet_nan();
        state->advisories = VTX_ADVISORY_FIELD_UNAVAILABLE;
    } else if (!(p->friction_factor > 0)) {
        state->friction_factor = friction_times_reynolds(state->reynolds, p->relative_roughness) / state->reynolds;
    }
    if (state->mass_flow < REST_FLOW)
        return rest;
    return state->choked ? pipe_choked(p, pressure, temperature, state->mass_flow)
                         : pipe_forward(p, pressure, temperature, state->mass_flow);
}

static void describe(const struct pipe *p, double pressure, double temperature, double mass_flow, double capacity, vtx_line_state *state)
{
    state->mass_flow = mass_flow;
    state->attainable_mass_flow = capacity;
    state->diameter = p->diameter;
    state->length = p->slenderness * p->diameter;
    state->reynolds = reynolds_number(mass_flow, p->diameter, p->viscosity);
    state->choked = pipe_is_choked(mass_flow, capacity);
    const struct pipe_flow flow = flow_in(p, pressure, temperature, state);
    const struct line_end in = describe_end(p, flow.drop, p->static_inlet ? temperature / (1 - flow.drop) : temperature);
    const double outlet_drop = pipe_outlet_drop(p, &flow);
    const struct line_end out = describe_end(p, outlet_drop, p->isothermal ? in.temperature / (1 - outlet_drop) : in.stagnation_temperature);
    const double to_stagnation = exp(pipe_inlet_loss(p, &flow));
    state->inlet_pressure = p->static_inlet ? pressure : pressure / to_stagnation;
    state->inlet_stagnation_pressure = p->static_inlet ? pressure * to_stagnation : pressure;
    state->inlet_temperature = in.temperature;
    state->inlet_stagnation_temperature = in.stagnation_temperature;
    state->inlet_mach = in.mach;
    state->inlet_velocity = in.velocity;
    state->outlet_pressure = pressure + pressure * expm1(-pipe_pressure_loss(p, &flow));
    state->outlet_stagnation_pressure = state->inlet_stagnation_pressure * exp(-pipe_stagnation_loss(p, &flow));
    state->outlet_temperature = out.temperature;
    state->outlet_stagnation_temperature = out.stagnation_temperature;
    state->outlet_mach = out.mach;
    state->outlet_velocity = out.velocity;
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
static vtx_status refuse_flow(const struct pipe *p, double pressure, double temperature, double outlet_pressure, double *first,
                              vtx_line_state *state)
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
    struct bore_search c = { make_pipe(gas, line, BORE_MAX, line->length, inlet_temperature), line, mass_flow, inlet_pressure,
                             inlet_temperature, log1p((inlet_pressure - outlet_pressure) / outlet_pressure) };
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
    const double friction = pipe_friction_between(&p, mass_flow, inlet_pressure, inlet_temperature, outlet_pressure) - p.minor_loss;
    if (!(friction >= 0))
        return refuse_flow(&p, inlet_pressure, inlet_temperature, outlet_pressure, length, state);
    p.slenderness = 1;
    p.minor_loss = 0;
    p.slenderness = friction / pipe_loss(&p, mass_flow, 1);
    p.minor_loss = line->minor_loss;
    const double found = p.slenderness * p.diameter;
    if (!(found <= LINE_LENGTH_MAX))
        return fail(length, state, VTX_OUT_OF_RANGE);
    return answer(&p, inlet_pressure, inlet_temperature, mass_flow, -1, found, length, state);
}
