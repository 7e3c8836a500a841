/* What the elements of a chain do to the air, and the march through them. */
#include "../media/air_kernel.h"
#include "chain_kernel.h"
#include "conductance_kernel.h"
#include "filter_kernel.h"
#include "valve_kernel.h"

/* Square laws start in proportion to the pressure difference below this share of the pressure: 0.7 Pa at 7 bar. */
#define REGULAR_SHARE 1e-6

/* Below this share of the pressure ahead an outlet that never chokes is taken as choked. */
#define OUTLET_SHARE_MIN 1e-3

/* Pa: a march far beyond choking ends here, and nothing is divided by less. */
#define MARCH_PRESSURE_MIN 1e-3

/* A filter that takes more has been asked too much. */
#define FILTER_SHARE_MAX 0.5

#define PLENTY 50.0 /* headroom of an element that has no limit */

struct chain make_chain(const vtx_chain_element *elements, size_t count, double temperature)
{
    struct chain c = { .elements = elements, .count = count, .viscosity = dilute_air_viscosity(temperature) };
    vtx_gas_init(&c.gas);
    return c;
}

/* ---- what the elements do ---- */

/* Ends a passage of simple law: choked_share of the pressure ahead is left when just choked, loss is taken below that. */
static struct passage simple_passage(const struct stream *s, double capacity, double loss, double choked_share)
{
    struct passage p = { loss, 0, -1, s->temperature, 0 };
    if (s->mass_flow > capacity) {
        const double ratio = capacity / s->mass_flow;
        p.loss = s->pressure - s->pressure * choked_share * square(ratio);
        p.headroom = capacity > 0 ? log(ratio) : -PLENTY;
    } else {
        p.loss = smaller(loss, s->pressure * (1 - choked_share));
        p.headroom = capacity < s->mass_flow * exp(PLENTY) ? log(capacity / s->mass_flow) : PLENTY;
    }
    p.static_loss = p.loss;
    return p;
}

/* The start of a square law: loss/(share p) = x solves a x + b x^2 = flow over the flow at x = 1, with the law's own slope there. */
static double regular_loss(double pressure, double flow_share, double index)
{
    const double a = 2 - index, b = index - 1;
    return pressure * REGULAR_SHARE * 2 * flow_share / (a + sqrt(square(a) + 4 * b * flow_share));
}

static double nearly(double pressure) { return pressure * (1 - REGULAR_SHARE); }

static vtx_component component_of(const vtx_chain_element *e)
{
    vtx_component c;
    memset(&c, 0, sizeof c);
    c.critical_ratio = e->critical_ratio;
    c.subsonic_index = e->subsonic_index;
    c.cracking_pressure = e->cracking_pressure;
    return c;
}

static struct passage pass_conductance(const vtx_chain_element *e, const struct stream *s)
{
    int32_t sonic;
    const vtx_component component = component_of(e);
    const double p = s->pressure;
    const double span = larger(subsonic_span(&component, p), 0);
    const double choked_share = larger(smaller(e->critical_ratio, 1 - e->cracking_pressure / p), OUTLET_SHARE_MIN);
    const double capacity = p > e->cracking_pressure ? conductance_slope(e->conductance, s->temperature) * p : 0;
    double loss = e->cracking_pressure;
    if (capacity > 0)
        loss += span_share(&component, s->mass_flow / capacity) * span;
    if (loss < REGULAR_SHARE * p && !(e->cracking_pressure > 0))
        loss = regular_loss(p, s->mass_flow / (capacity * component_share(&component, p, nearly(p), &sonic)), e->subsonic_index);
    return simple_passage(s, capacity, loss, choked_share);
}

static struct passage pass_orifice(const struct chain *c, const vtx_chain_element *e, const struct stream *s)
{
    int32_t sonic;
    const double p = s->pressure, gamma = c->gas.heat_capacity_ratio;
    const double capacity = e->effective_area * orifice_choked_flux(&c->gas, p, s->temperature);
    double loss = p * pressure_loss(gamma, subsonic_drop(gamma, square(smaller(s->mass_flow / capacity, 1))));
    if (loss < REGULAR_SHARE * p)
        loss = regular_loss(p, s->mass_flow / (e->effective_area * orifice_flux(&c->gas, p, s->temperature, nearly(p), &sonic)), 0.5);
    return simple_passage(s, capacity, loss, critical_pressure_ratio(gamma));
}

static struct passage pass_valve(const struct chain *c, const vtx_chain_element *e, const struct stream *s)
{
    int32_t sonic;
    vtx_valve valve;
    memset(&valve, 0, sizeof valve);
    valve.pressure_ratio_factor = e->pressure_ratio_factor;
    const struct valve_law law = valve_law_of(c->gas.heat_capacity_ratio, &valve, e->flow_coefficient);
    const double p = s->pressure;
    const double scale = valve_scale(&law, &c->gas, p, s->temperature);
    const double most = smaller(law.x_choked, 1 - OUTLET_SHARE_MIN);
    const double capacity = scale * cubic(sqrt(most / law.x_choked));
    double loss = p * law.x_choked * square(cubic_root(smaller(s->mass_flow / scale, 1)));
    if (loss < REGULAR_SHARE * p)
        loss = regular_loss(p, s->mass_flow / valve_mass_flow(&c->gas, &law, p, s->temperature, nearly(p), &sonic), 0.5);
    return simple_passage(s, capacity, loss, 1 - most);
}

static struct passage pass_filter(const struct chain *c, const vtx_chain_element *e, const struct stream *s)
{
    const struct filter_law law = { e->laminar_loss, e->turbulent_loss };
    const double p = s->pressure, volume = specific_gas_constant(&c->gas) * s->temperature / p; /* m3/kg */
    const double capacity = filter_flow(&law, FILTER_SHARE_MAX * p / volume);
    double loss = s->mass_flow < capacity ? filter_drop(&law, volume, s->mass_flow) : p * FILTER_SHARE_MAX;
    if (loss < REGULAR_SHARE * p && !(law.laminar > 0))
        loss = regular_loss(p, s->mass_flow / filter_flow(&law, REGULAR_SHARE * p / volume), 0.5);
    return simple_passage(s, capacity, loss, 1 - FILTER_SHARE_MAX);
}

/* The lower of the regulated pressure and what passes wide open. */
static struct passage pass_regulator(const vtx_chain_element *e, const struct stream *s)
{
    const double p = s->pressure;
    const struct passage open = pass_conductance(e, s);
    const double least = e->set_pressure * OUTLET_SHARE_MIN;
    const double droop_limit = (e->set_pressure - least) / larger(e->droop, e->set_pressure * 1e-12);
    const double ratio = smaller(droop_limit / larger(s->mass_flow, droop_limit * 1e-6), 1);
    const double regulated = ratio < 1 ? least * square(ratio) : e->set_pressure - e->droop * s->mass_flow;
    struct passage result = open;
    result.loss = larger(open.loss, p - regulated);
    result.static_loss = result.loss;
    if (ratio < 1)
        result.headroom = smaller(open.headroom, log(ratio));
    else if (open.headroom > 0 && s->mass_flow > 0)
        result.headroom = smaller(open.headroom, smaller(log(droop_limit / s->mass_flow), PLENTY));
    return result;
}

struct pipe chain_pipe(const struct chain *c, const vtx_chain_element *e)
{
    struct pipe q = { .gamma = c->gas.heat_capacity_ratio, .specific_gas_constant = specific_gas_constant(&c->gas) };
    q.diameter = e->diameter;
    q.area = bore_area(e->diameter);
    q.slenderness = e->length / e->diameter;
    q.minor_loss = e->minor_loss;
    q.relative_roughness = e->roughness / e->diameter;
    q.viscosity = c->viscosity;
    q.isothermal = e->law == VTX_LINE_ISOTHERMAL;
    return q;
}

/* A pipe_capacity that does not converge leaves no number: the chain's search then fails on it. */
static struct passage pass_line(const struct chain *c, const vtx_chain_element *e, const struct stream *s, int is_capacity)
{
    const struct pipe q = chain_pipe(c, e);
    struct passage p = { 0, 0, 0, s->temperature, PLENTY };
    double capacity = 0, ratio = 1;
    if (s->mass_flow < REST_FLOW)
        return p;
    struct pipe_flow flow = pipe_forward(&q, s->pressure, s->temperature, s->mass_flow);
    if (is_capacity) {
        flow = pipe_choked(&q, s->pressure, s->temperature, s->mass_flow);
        p.headroom = 0;
    } else if (flow.spare > 0) {
        const double loss = pipe_scale(&q) * pipe_loss(&q, s->mass_flow, flow.speed_share);
        p.headroom = smaller(loss > 1e-60 ? 0.5 * log1p(flow.spare / loss) : PLENTY, PLENTY);
    } else {
        const vtx_status status = pipe_capacity(&q, s->pressure, s->temperature, &capacity);
        flow = pipe_choked(&q, s->pressure, s->temperature, capacity);
        ratio = status == VTX_OK ? smaller(capacity / s->mass_flow, 1) : quiet_nan();
        p.headroom = log(ratio);
    }
    p.outlet_drop = pipe_outlet_drop(&q, &flow);
    const double stagnation = pipe_stagnation_loss(&q, &flow), all = pipe_pressure_loss(&q, &flow), kept = square(ratio);
    p.loss = s->pressure * ((1 - kept) - kept * expm1(-stagnation));
    p.static_loss = s->pressure * ((1 - kept) - kept * expm1(-all));
    if (q.isothermal)
        p.temperature = s->temperature * (1 - flow.drop) / (1 - p.outlet_drop);
    return p;
}

struct passage chain_pass(const struct chain *c, size_t position, const struct stream *s, int is_capacity)
{
    const vtx_chain_element *e = chain_element_at(c, position);
    const struct passage none = { 0, 0, -1, s->temperature, PLENTY };
    switch (e->kind) {
    case VTX_CHAIN_LINE: return pass_line(c, e, s, is_capacity);
    case VTX_CHAIN_CONDUCTANCE:
    case VTX_CHAIN_COUPLING: return pass_conductance(e, s);
    case VTX_CHAIN_ORIFICE: return pass_orifice(c, e, s);
    case VTX_CHAIN_VALVE: return pass_valve(c, e, s);
    case VTX_CHAIN_FILTER: return pass_filter(c, e, s);
    case VTX_CHAIN_REGULATOR: return pass_regulator(e, s);
    default: return none;
    }
}

struct stream chain_behind(const struct chain *c, size_t position, const struct stream *s, const struct passage *passage,
                           double pressure)
{
    const vtx_chain_element *e = chain_element_at(c, position);
    struct stream behind = { larger(pressure, MARCH_PRESSURE_MIN), passage->temperature, s->mass_flow, s->paths };
    if (e->kind == VTX_CHAIN_MANIFOLD) {
        const double ways = c->reversed ? 1 / e->ways : e->ways;
        behind.mass_flow /= ways;
        behind.paths *= ways;
    }
    return behind;
}

/* ---- the march ---- */

struct chain_end chain_march(const struct chain *c, size_t position, const struct stream *start)
{
    struct chain_end end = { 0, 0, start->temperature, start->mass_flow, PLENTY, position };
    struct stream s = *start;
    const double deepest = start->pressure - MARCH_PRESSURE_MIN;
    for (; position < chain_length(c); position++) {
        const struct passage p = chain_pass(c, position, &s, 0);
        if (p.headroom < end.headroom && end.headroom >= 0) {
            end.headroom = p.headroom;
            end.tightest = position;
        }
        end.lost_static = smaller(end.lost + p.static_loss, deepest);
        end.lost = smaller(end.lost + p.loss, deepest);
        s = chain_behind(c, position, &s, &p, start->pressure - end.lost);
    }
    end.temperature = s.temperature;
    end.mass_flow = s.mass_flow;
    return end;
}
