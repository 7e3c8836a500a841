/* Chains between two pressures: the searches of chain_kernel.c, and the books of every joint. */
#include "../base/root.h"
#include "chain_kernel.h"

/* An element with no more headroom than this is choked: what lies behind it decides its outlet. */
#define CHOKED_HEADROOM 1e-14

/* A demand may be exactly what an earlier call found to be the most. */
#define CAPACITY_ROUNDING 1e-12


/* ---- checks ---- */

static vtx_status check_chain(const vtx_chain_element *elements, size_t count)
{
    vtx_status status = require(elements && count > 0);
    for (size_t k = 0; status != VTX_BAD_ARGUMENT && k < count; k++)
        status = worse(status, check_chain_element(&elements[k]));
    return status;
}

static vtx_status check_air(double pressure, double temperature)
{
    return worse(check_flow_pressure(pressure), check_chain_temperature(temperature));
}

static vtx_status fail(vtx_chain_state *state, vtx_chain_joint *joints, size_t count, vtx_status status)
{
    for (size_t k = 0; joints && k <= count; k++)
        POISON_STRUCT(&joints[k], vtx_chain_joint, choked, status);
    return POISON_STRUCT(state, vtx_chain_state, costliest_element, status);
}

static vtx_status refuse(vtx_chain_state *state, vtx_chain_joint *joints, size_t count, double attainable)
{
    fail(state, joints, count, VTX_NO_SOLUTION);
    state->attainable_mass_flow = attainable;
    return VTX_NO_SOLUTION;
}

/* ---- the books ---- */

/* Where results go: joints may be null; sign is -1 when the flow is reversed. */
struct books {
    vtx_chain_state *state;
    vtx_chain_joint *joints;
    double sign;
};

/* Bore that a joint's static state belongs to, 0 where none is known. */
static double bore_at(const struct chain *c, size_t position, int choked_ahead)
{
    const double ahead = position > 0 && !choked_ahead ? chain_element_at(c, position - 1)->diameter : 0;
    if (ahead > 0 || position >= chain_length(c))
        return ahead;
    return chain_element_at(c, position)->diameter;
}

/* drop of the static state, or below 0 where it is not known: no bore, or one too small for this flow. */
static double drop_in_bore(const struct chain *c, const struct stream *s, double bore)
{
    if (!(bore > 0))
        return -1;
    const double flux = s->mass_flow / bore_area(bore);
    const double share = square(flux / orifice_choked_flux(&c->gas, s->pressure, s->temperature));
    return share <= 1 ? subsonic_drop(c->gas.heat_capacity_ratio, share) : -1;
}

static vtx_chain_joint *joint_at(const struct chain *c, const struct books *b, size_t position)
{
    return &b->joints[c->reversed ? c->count - position : position];
}

static void write_joint(const struct chain *c, const struct books *b, size_t position, const struct stream *s, double drop)
{
    const double gamma = c->gas.heat_capacity_ratio, nan = quiet_nan();
    const int known = drop >= 0;
    const double x = larger(drop, 0);
    vtx_chain_joint *joint = joint_at(c, b, position);
    memset(joint, 0, sizeof *joint);
    joint->stagnation_pressure = s->pressure;
    joint->stagnation_temperature = s->temperature;
    joint->static_pressure = known ? s->pressure - s->pressure * pressure_loss(gamma, x) : nan;
    joint->static_temperature = known ? s->temperature * (1 - x) : nan;
    joint->mach = known ? mach_of_drop(gamma, x) : nan;
    joint->velocity = known ? b->sign * sqrt(2 * gamma / (gamma - 1) * specific_gas_constant(&c->gas) * s->temperature * x) : nan;
    joint->mass_flow = b->sign * s->mass_flow;
    joint->paths = s->paths;
    joint->advisories = known ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE;
}

/* An element's loss stands at the joint behind it, as the elements are numbered. Its joints must be written. */
static void note_element(const struct chain *c, const struct books *b, size_t position, double loss, int choked)
{
    const size_t index = c->reversed ? c->count - 1 - position : position;
    vtx_chain_state *state = b->state;
    if (choked && state->choked_element < 0)
        state->choked_element = (int32_t)index;
    if (position >= c->count)
        return;
    state->pressure_loss += loss;
    if (loss > state->largest_loss) {
        state->largest_loss = loss;
        state->costliest_element = (int32_t)index;
    }
    if (b->joints) {
        b->joints[index + 1].pressure_loss = loss;
        b->joints[index + 1].choked = choked;
        b->joints[index + 1].advisories |= choked ? VTX_ADVISORY_CHOKED : 0;
    }
}

/* The two ends of the elements in flow direction. */
struct ends {
    struct stream from, to;
    double to_drop; /* below 0 when the last element is no line */
};

static void write_state(const struct chain *c, const struct books *b, const struct ends *e)
{
    vtx_chain_state *state = b->state;
    const struct stream *inlet = c->reversed ? &e->to : &e->from, *outlet = c->reversed ? &e->from : &e->to;
    const double to_static = e->to.pressure - e->to.pressure * pressure_loss(c->gas.heat_capacity_ratio, larger(e->to_drop, 0));
    state->mass_flow = state->attainable_mass_flow = b->sign * inlet->mass_flow;
    state->inlet_pressure = c->reversed ? to_static : inlet->pressure;
    state->inlet_temperature = inlet->temperature;
    state->outlet_pressure = c->reversed ? outlet->pressure : to_static;
    state->outlet_stagnation_pressure = outlet->pressure;
    state->outlet_temperature = outlet->temperature;
    state->largest_share = state->pressure_loss > 0 ? state->largest_loss / state->pressure_loss : 0;
    state->choked = state->choked_element >= 0;
    state->advisories |= (state->choked ? VTX_ADVISORY_CHOKED : 0) | (c->reversed ? VTX_ADVISORY_REVERSED_FLOW : 0);
    for (size_t k = 0; b->joints && k <= c->count; k++) {
        b->joints[k].share = state->pressure_loss > 0 ? b->joints[k].pressure_loss / state->pressure_loss : 0;
        state->advisories |= b->joints[k].advisories & VTX_ADVISORY_FIELD_UNAVAILABLE;
    }
}

static void open_books(const struct books *b)
{
    memset(b->state, 0, sizeof *b->state);
    b->state->costliest_element = b->state->choked_element = -1;
}

/* How the walk ends. known 0: the end pressure is what arrives. */
struct goal {
    double end_pressure;
    int known, open_end;
    size_t choked; /* element known to be choked, or CHAIN_NONE */
};

/* Stagnation pressure behind a choked element: what the rest needs, but never more than the element leaves when just choked.
 * What chokes next on the way, if anything, is noted in the goal. */
static vtx_status pressure_behind(const struct chain *c, size_t position, const struct stream *s, const struct passage *p,
                                  struct goal *goal, double *pressure)
{
    const double most = s->pressure - p->loss;
    const struct stream behind = chain_behind(c, position, s, p, most);
    *pressure = most;
    goal->choked = CHAIN_NONE;
    if (!goal->known || (position + 1 == chain_length(c) && p->outlet_drop >= 0 && goal->open_end))
        return VTX_OK;
    *pressure = smaller(goal->end_pressure, most);
    if (position + 1 == chain_length(c) || goal->end_pressure >= most)
        return VTX_OK;
    const vtx_status status = chain_start_pressure(c, position + 1, &behind, goal->end_pressure, goal->open_end, goal->end_pressure, most,
                                                   pressure, &goal->choked);
    return status == VTX_NO_SOLUTION ? VTX_OK : status; /* within rounding of most */
}

/* From end to end at a flow that passes, writing the books. */
static vtx_status walk(const struct chain *c, const struct books *b, const struct stream *start, struct goal goal)
{
    struct stream s = *start;
    struct ends ends = { *start, *start, -1 };
    open_books(b);
    if (b->joints)
        write_joint(c, b, 0, &s, drop_in_bore(c, &s, bore_at(c, 0, 0)));
    for (size_t position = 0; position < chain_length(c); position++) {
        struct passage p = chain_pass(c, position, &s, 0);
        const int choked = p.headroom < CHOKED_HEADROOM || position == goal.choked;
        const double before = s.pressure;
        if (choked)
            p = chain_pass(c, position, &s, 1);
        double pressure = s.pressure - p.loss;
        const vtx_status status = choked ? pressure_behind(c, position, &s, &p, &goal, &pressure) : VTX_OK;
        if (status != VTX_OK)
            return status;
        s = chain_behind(c, position, &s, &p, pressure);
        if (position < c->count) {
            const int is_last = position + 1 == chain_length(c);
            const int own_drop = p.outlet_drop >= 0 && (!choked || is_last);
            ends.to = s;
            ends.to_drop = own_drop ? p.outlet_drop : -1;
            if (b->joints)
                write_joint(c, b, position + 1, &s, own_drop ? p.outlet_drop : drop_in_bore(c, &s, bore_at(c, position + 1, choked)));
        }
        note_element(c, b, position, before - s.pressure, choked);
    }
    write_state(c, b, &ends);
    return VTX_OK;
}

/* ---- rest ---- */

/* Up to the first closed element the air stands at the inlet's pressure, behind the last at the outlet's; between two at the inlet
 * side's, regulated. Where none is closed the pressures are equal. */
static void write_rest(const struct chain *c, const struct books *b, double inlet_pressure, double inlet_temperature,
                       double outlet_pressure, double outlet_temperature)
{
    struct stream s = { inlet_pressure, inlet_temperature, 0, 1 };
    size_t last = CHAIN_NONE;
    open_books(b);
    for (size_t k = 0; k < c->count; k++)
        last = chain_is_one_way(&c->elements[k]) ? k : last;
    struct ends ends = { s, s, -1 };
    if (b->joints)
        write_joint(c, b, 0, &s, 0);
    for (size_t k = 0; k < c->count; k++) {
        const struct passage p = chain_pass(c, k, &s, 0);
        const int behind_all = last == CHAIN_NONE || k >= last;
        s = chain_behind(c, k, &s, &p, behind_all ? outlet_pressure : s.pressure - p.loss);
        s.temperature = behind_all && last != CHAIN_NONE ? outlet_temperature : s.temperature;
        if (b->joints)
            write_joint(c, b, k + 1, &s, 0);
    }
    ends.to = s;
    write_state(c, b, &ends);
}

/* ---- the questions ---- */

static int ends_with_line(const struct chain *c) { return chain_element_at(c, chain_length(c) - 1)->kind == VTX_CHAIN_LINE; }

static double all_ways(const struct chain *c)
{
    double ways = 1;
    for (size_t k = 0; k < c->count; k++)
        ways *= c->elements[k].kind == VTX_CHAIN_MANIFOLD ? c->elements[k].ways : 1;
    return ways;
}

static int is_closed_backwards(const struct chain *c)
{
    for (size_t k = 0; k < c->count; k++)
        if (chain_is_one_way(&c->elements[k]))
            return 1;
    return 0;
}

/* Flow along c, which may be reversed, from a pressure to a lower one; *at_rest when there is none. */
static vtx_status solve(const struct chain *c, const struct books *b, double pressure, double temperature, double end_pressure,
                        int *at_rest)
{
    const struct chain_demand demand = { .outlet_pressure = end_pressure, .open_end = ends_with_line(c) };
    struct goal goal = { end_pressure, 1, demand.open_end, CHAIN_NONE };
    struct stream start = { pressure, temperature, 0, c->reversed ? all_ways(c) : 1 };
    const vtx_status status = chain_flow(c, pressure, temperature, &demand, &start.mass_flow, &goal.choked);
    *at_rest = status == VTX_OK && !(start.mass_flow > 0);
    return status != VTX_OK || *at_rest ? status : walk(c, b, &start, goal);
}

vtx_status vtx_chain_mass_flow(const vtx_chain_element *elements, size_t count, double inlet_pressure, double inlet_temperature,
                               double outlet_pressure, double outlet_temperature, vtx_chain_state *state, vtx_chain_joint *joints)
{
    vtx_status status = worse(require(state != NULL), check_chain(elements, count));
    int at_rest = 1;
    status = worse(status, worse(check_air(inlet_pressure, inlet_temperature), check_air(outlet_pressure, outlet_temperature)));
    if (status != VTX_OK)
        return fail(state, joints, count, status);
    const int reversed = outlet_pressure > inlet_pressure;
    struct chain c = make_chain(elements, count, reversed ? outlet_temperature : inlet_temperature);
    struct books b = { state, joints, reversed ? -1 : 1 };
    c.reversed = reversed;
    if (reversed && !is_closed_backwards(&c))
        status = solve(&c, &b, outlet_pressure, outlet_temperature, inlet_pressure, &at_rest);
    else if (!reversed)
        status = solve(&c, &b, inlet_pressure, inlet_temperature, outlet_pressure, &at_rest);
    if (status != VTX_OK)
        return fail(state, joints, count, status);
    if (at_rest) {
        c.reversed = 0;
        b.sign = 1;
        write_rest(&c, &b, inlet_pressure, inlet_temperature, outlet_pressure, outlet_temperature);
    }
    return VTX_OK;
}

vtx_status vtx_chain_outlet_pressure(const vtx_chain_element *elements, size_t count, double mass_flow, double inlet_pressure,
                                     double inlet_temperature, vtx_chain_state *state, vtx_chain_joint *joints)
{
    vtx_status status = worse(require(state != NULL), check_chain(elements, count));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_air(inlet_pressure, inlet_temperature)));
    if (status != VTX_OK)
        return fail(state, joints, count, status);
    const struct chain c = make_chain(elements, count, inlet_temperature);
    const struct books b = { state, joints, 1 };
    struct stream start = { inlet_pressure, inlet_temperature, mass_flow, 1 };
    struct goal goal = { 0, 0, 0, CHAIN_NONE };
    if (chain_march(&c, 0, &start).headroom < 0) {
        double most;
        if (chain_capacity(&c, inlet_pressure, inlet_temperature, mass_flow, &most, &goal.choked) != VTX_OK)
            return fail(state, joints, count, VTX_NOT_CONVERGED);
        if (mass_flow > most * (1 + CAPACITY_ROUNDING))
            return refuse(state, joints, count, most);
        start.mass_flow = most;
    }
    status = walk(&c, &b, &start, goal);
    if (status == VTX_OK && state->outlet_pressure < FLOW_PRESSURE_MIN)
        status = VTX_OUT_OF_RANGE;
    return status == VTX_OK ? VTX_OK : fail(state, joints, count, status);
}

/* What passes at the highest pressure, for the caller whose wish is beyond it. */
static vtx_status refuse_inlet(const struct chain *c, const struct books *b, double temperature, double outlet_pressure)
{
    const struct chain_demand demand = { .outlet_pressure = outlet_pressure, .open_end = ends_with_line(c) };
    double most;
    size_t choked;
    const vtx_status status = chain_flow(c, FLOW_PRESSURE_MAX, temperature, &demand, &most, &choked);
    return status == VTX_OK ? refuse(b->state, b->joints, c->count, most) : fail(b->state, b->joints, c->count, status);
}

vtx_status vtx_chain_inlet_pressure(const vtx_chain_element *elements, size_t count, double mass_flow, double inlet_temperature,
                                    double outlet_pressure, vtx_chain_state *state, vtx_chain_joint *joints)
{
    vtx_status status = worse(require(state != NULL), check_chain(elements, count));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_air(outlet_pressure, inlet_temperature)));
    if (status != VTX_OK)
        return fail(state, joints, count, status);
    const struct chain c = make_chain(elements, count, inlet_temperature);
    const struct books b = { state, joints, 1 };
    struct goal goal = { outlet_pressure, 1, ends_with_line(&c), CHAIN_NONE };
    struct stream start = { outlet_pressure, inlet_temperature, mass_flow, 1 };
    status = chain_start_pressure(&c, 0, &start, outlet_pressure, goal.open_end, outlet_pressure, FLOW_PRESSURE_MAX, &start.pressure,
                                  &goal.choked);
    if (status == VTX_NO_SOLUTION)
        return refuse_inlet(&c, &b, inlet_temperature, outlet_pressure);
    if (status == VTX_OK)
        status = walk(&c, &b, &start, goal);
    return status == VTX_OK ? VTX_OK : fail(state, joints, count, status);
}

vtx_status vtx_chain_feed(const vtx_chain_element *elements, size_t count, const vtx_chain_element *consumer, double inlet_pressure,
                          double inlet_temperature, double outlet_pressure, vtx_chain_state *state, vtx_chain_joint *joints)
{
    vtx_status status = worse(require(state != NULL), worse(check_chain(elements, count), check_chain_element(consumer)));
    int at_rest;
    status = worse(status, worse(check_air(inlet_pressure, inlet_temperature), check_flow_pressure(outlet_pressure)));
    status = worse(status, require(!(outlet_pressure > inlet_pressure)));
    if (status != VTX_OK)
        return fail(state, joints, count, status);
    struct chain c = make_chain(elements, count, inlet_temperature);
    const struct books b = { state, joints, 1 };
    c.consumer = consumer;
    status = solve(&c, &b, inlet_pressure, inlet_temperature, outlet_pressure, &at_rest);
    if (status != VTX_OK)
        return fail(state, joints, count, status);
    if (at_rest)
        write_rest(&c, &b, inlet_pressure, inlet_temperature, outlet_pressure, inlet_temperature);
    if (chain_starves(state->pressure_loss, inlet_pressure))
        state->advisories |= VTX_ADVISORY_STARVED;
    return VTX_OK;
}

/* ---- a bore for a wish ---- */

struct bore_search {
    struct chain chain;
    vtx_chain_element line;
    struct stream start;
    double wanted_pressure;
};

static struct chain_end march_with_bore(struct bore_search *f, double x)
{
    f->line.diameter = exp(x);
    return chain_march(&f->chain, 0, &f->start);
}

static double bore_mismatch(double x, void *context)
{
    struct bore_search *f = context;
    return log((f->start.pressure - march_with_bore(f, x).lost) / f->wanted_pressure);
}

static double bore_headroom(double x, void *context) { return march_with_bore(context, x).headroom; }

/* The bore that meets the pressure, or where the flow does not pass that yet, the bore that passes it. */
static vtx_status search_bore(struct bore_search *f, double least, double *diameter)
{
    const double widest = log(BORE_MAX);
    double x = log(least);
    if (bore_mismatch(widest, f) < 0 || bore_headroom(widest, f) < 0)
        return VTX_NO_SOLUTION;
    if (bore_mismatch(x, f) >= 0 && bore_headroom(x, f) >= 0)
        return VTX_OUT_OF_RANGE;
    if (bore_mismatch(x, f) < 0 && find_root(bore_mismatch, f, x, widest, 1e-15, &x) != VTX_OK)
        return VTX_NOT_CONVERGED;
    if (bore_headroom(x, f) < 0 && find_root(bore_headroom, f, x, widest, 1e-15, &x) != VTX_OK)
        return VTX_NOT_CONVERGED;
    *diameter = exp(x);
    return VTX_OK;
}

vtx_status vtx_chain_line_diameter(const vtx_chain_element *elements, size_t count, size_t line, double mass_flow, double inlet_pressure,
                                   double inlet_temperature, double wanted_pressure, double *diameter)
{
    struct bore_search f;
    vtx_status status = require(diameter && elements && line < count && elements[line].kind == VTX_CHAIN_LINE);
    if (status != VTX_OK)
        return poison(diameter, status);
    f.line = elements[line];
    f.line.diameter = BORE_MAX;
    for (size_t k = 0; k < count; k++)
        status = worse(status, check_chain_element(k == line ? &f.line : &elements[k]));
    status = worse(status, worse(check_positive(mass_flow, 1e-9, MASS_FLOW_MAX), check_air(inlet_pressure, inlet_temperature)));
    status = worse(status, check_flow_pressure(wanted_pressure));
    if (status != VTX_OK)
        return poison(diameter, status);
    f.chain = make_chain(elements, count, inlet_temperature);
    f.chain.replacement = &f.line;
    f.chain.replaced = line;
    f.start = (struct stream){ inlet_pressure, inlet_temperature, mass_flow, 1 };
    f.wanted_pressure = wanted_pressure;
    status = search_bore(&f, larger(BORE_MIN, f.line.roughness / RELATIVE_ROUGHNESS_MAX), diameter);
    return status == VTX_OK ? VTX_OK : poison(diameter, status);
}
