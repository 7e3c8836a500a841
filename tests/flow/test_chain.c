/* Chains: against direct solutions of two and three elements, and under every failure that users of flow libraries report. */
#include <fenv.h>

#include <vtx/chain.h>
#include <vtx/conductance.h>
#include <vtx/isentropic.h>
#include <vtx/line.h>
#include <vtx/restriction.h>
#include <vtx/valve.h>

#include "../harness/harness.h"
#include "../../libvtx/flow/chain_kernel.h"

static int chain_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    vtx_chain_element e[2];
    vtx_chain_state state;
    vtx_chain_joint joints[3];
    if (strncmp(row->quantity, "series", 6) == 0) {
        EXPECT_OK(vtx_chain_conductance(x[0], x[1], &e[0]));
        EXPECT_OK(vtx_chain_conductance(x[2], x[3], &e[1]));
        EXPECT_OK(vtx_chain_mass_flow(e, 2, 7e5, 293.15, 1e4, 293.15, &state, joints));
        *actual = row->quantity[7] == 'c' ? state.mass_flow / (1.185 * 7e5) : joints[1].stagnation_pressure / 7e5;
        return 1;
    }
    if (strcmp(row->quantity, "coupling_conductance") == 0) {
        EXPECT_OK(vtx_chain_coupling(x[0], &e[0]));
        return *actual = e[0].conductance, 1;
    }
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("chain.csv", chain_row, 5); }

/* ---- direct solutions ---- */

/* Bisects a decreasing function to the last bit. */
static double bisect(double (*f)(double x, const void *context), const void *context, double low, double high)
{
    for (int i = 0; i < 2000; i++) {
        const double middle = 0.5 * (low + high);
        if (middle <= low || middle >= high)
            break;
        if (f(middle, context) > 0)
            low = middle;
        else
            high = middle;
    }
    return 0.5 * (low + high);
}

/* A conductance, then an orifice: which pressure between them makes the two flows equal? */
struct pair {
    double conductance, ratio, area, inlet_pressure, temperature, outlet_pressure;
};

static double pair_flow(const struct pair *p, double between)
{
    vtx_gas gas;
    double flow = (double)NAN;
    EXPECT_OK(vtx_gas_init(&gas));
    EXPECT_OK(vtx_orifice_mass_flow(&gas, p->area, 1, between, p->temperature, p->outlet_pressure, &flow, NULL));
    return flow;
}

static double pair_difference(double between, const void *context)
{
    const struct pair *p = context;
    double first = (double)NAN;
    EXPECT_OK(vtx_conductance_mass_flow(p->conductance, p->ratio, p->inlet_pressure, p->temperature, between, &first, NULL));
    return first - pair_flow(p, between);
}

static void two_elements_equal_a_direct_solution(void)
{
    struct random_state r;
    random_seed(&r, 41);
    for (int i = 0; i < 500; i++) {
        struct pair p = { random_log_uniform(&r, 1e-9, 1e-7), random_uniform(&r, 0.1, 0.6), random_log_uniform(&r, 2e-7, 2e-5),
                          random_uniform(&r, 2e5, 1e6), random_uniform(&r, 270, 330), 0 };
        vtx_chain_element e[2];
        vtx_chain_state state;
        vtx_chain_joint joints[3];
        p.outlet_pressure = random_uniform(&r, 1e5, 0.999 * p.inlet_pressure);
        EXPECT_OK(vtx_chain_conductance(p.conductance, p.ratio, &e[0]));
        EXPECT_OK(vtx_chain_orifice(p.area, 1, &e[1]));
        EXPECT_OK(vtx_chain_mass_flow(e, 2, p.inlet_pressure, p.temperature, p.outlet_pressure, 293.15, &state, joints));
        const double between = bisect(pair_difference, &p, p.outlet_pressure, p.inlet_pressure);
        EXPECT_NEAR(state.mass_flow, pair_flow(&p, between), 1e-9);
        EXPECT_NEAR(joints[1].stagnation_pressure, between, 1e-9);
    }
}

/* A hose, a valve and a nozzle: which flow arrives at the outlet pressure? */
struct trio {
    vtx_gas gas;
    vtx_line hose;
    vtx_valve valve;
    double area, inlet_pressure, temperature, outlet_pressure;
    double behind_hose, behind_valve;
};

static double trio_excess(double flow, const void *context)
{
    struct trio t = *(const struct trio *)context;
    vtx_line_state state;
    double p;
    if (vtx_line_outlet_pressure(&t.gas, &t.hose, flow, t.inlet_pressure, t.temperature, &p, &state) != VTX_OK
        || vtx_valve_outlet_pressure(&t.gas, &t.valve, flow, state.outlet_stagnation_pressure, t.temperature, &p, NULL) != VTX_OK
        || vtx_orifice_outlet_pressure(&t.gas, flow, t.area, 0.9, p, t.temperature, &p, NULL) != VTX_OK)
        return -1;
    return p - t.outlet_pressure;
}

static void three_elements_equal_a_direct_solution(void)
{
    struct random_state r;
    int unchoked = 0;
    random_seed(&r, 42);
    for (int i = 0; i < 300; i++) {
        struct trio t;
        vtx_chain_element e[3];
        vtx_chain_state state;
        vtx_chain_joint joints[4];
        EXPECT_OK(vtx_gas_init(&t.gas));
        EXPECT_OK(vtx_line_init(&t.hose));
        EXPECT_OK(vtx_valve_init(&t.valve));
        t.hose.diameter = random_uniform(&r, 0.005, 0.02);
        t.hose.length = random_log_uniform(&r, 0.5, 50);
        t.valve.flow_coefficient = random_log_uniform(&r, 0.1, 5);
        t.area = random_log_uniform(&r, 1e-6, 1e-4);
        t.inlet_pressure = random_uniform(&r, 2e5, 1e6);
        t.temperature = random_uniform(&r, 270, 330);
        t.outlet_pressure = random_uniform(&r, 1e5, 0.999 * t.inlet_pressure);
        EXPECT_OK(vtx_chain_hose(t.hose.diameter, t.hose.length, &e[0]));
        EXPECT_OK(vtx_chain_valve(t.valve.flow_coefficient, 0.7, &e[1]));
        EXPECT_OK(vtx_chain_orifice(t.area, 0.9, &e[2]));
        EXPECT_OK(vtx_chain_mass_flow(e, 3, t.inlet_pressure, t.temperature, t.outlet_pressure, 293.15, &state, joints));
        EXPECT_NEAR(state.mass_flow, bisect(trio_excess, &t, 0, 1), 1e-9);
        if (!state.choked) {
            vtx_line_state hose;
            double p = (double)NAN;
            EXPECT_OK(vtx_line_outlet_pressure(&t.gas, &t.hose, state.mass_flow, t.inlet_pressure, t.temperature, &p, &hose));
            EXPECT_NEAR(joints[1].stagnation_pressure, hose.outlet_stagnation_pressure, 1e-12);
            EXPECT_NEAR(joints[1].static_pressure, hose.outlet_pressure, 1e-12);
            EXPECT_NEAR(joints[1].mach, hose.outlet_mach, 1e-12);
            EXPECT_NEAR(joints[1].velocity, hose.outlet_velocity, 1e-12);
            EXPECT_NEAR(joints[0].static_pressure, hose.inlet_pressure, 1e-12);
            EXPECT_NEAR(joints[0].static_temperature, hose.inlet_temperature, 1e-12);
            EXPECT_NEAR(joints[3].stagnation_pressure, t.outlet_pressure, 1e-11);
            unchoked++;
        }
    }
    EXPECT(unchoked > 50 && unchoked < 290);
}

/* Crosswise: one line alone is the line of line.h, by both laws, open at its end. */
static void a_chain_of_one_line_is_that_line(void)
{
    for (int32_t law = VTX_LINE_ADIABATIC; law <= VTX_LINE_ISOTHERMAL; law++)
        for (double outlet = 1e5; outlet < 7e5; outlet += 3.7e4) {
            vtx_gas gas;
            vtx_line line;
            vtx_line_state hose;
            vtx_chain_element e;
            vtx_chain_state state;
            double flow;
            EXPECT_OK(vtx_gas_init(&gas));
            EXPECT_OK(vtx_line_init(&line));
            line.diameter = 0.0063;
            line.length = 8;
            line.law = law;
            EXPECT_OK(vtx_chain_hose(0.0063, 8, &e));
            e.law = law;
            EXPECT_OK(vtx_line_mass_flow(&gas, &line, 7e5, 293.15, outlet, &flow, &hose));
            EXPECT_OK(vtx_chain_mass_flow(&e, 1, 7e5, 293.15, outlet, 293.15, &state, NULL));
            EXPECT_NEAR(state.mass_flow, flow, 1e-12);
            EXPECT_NEAR(state.outlet_pressure, hose.outlet_pressure, 1e-11);
            EXPECT_NEAR(state.outlet_stagnation_pressure, hose.outlet_stagnation_pressure, 1e-11);
            EXPECT_NEAR(state.outlet_temperature, hose.outlet_stagnation_temperature, 1e-12);
            EXPECT(state.choked == hose.choked);
        }
}

/* ---- random chains ---- */

enum { ELEMENTS_MAX = 12, RANDOM_CHAINS = 10000 };

static vtx_status random_element(struct random_state *r, vtx_chain_element *e)
{
    const double u = random_uniform(r, 0, 1);
    vtx_status status;
    switch ((int)random_uniform(r, 0, 8.999)) {
    case 0:
    case 1:
        status = vtx_chain_hose(random_log_uniform(r, 2e-3, 0.03), random_log_uniform(r, 0.01, 100), e);
        e->law = u < 0.3 ? VTX_LINE_ISOTHERMAL : VTX_LINE_ADIABATIC;
        return status;
    case 2:
        return vtx_chain_pipe(random_log_uniform(r, 5e-3, 0.1), random_log_uniform(r, 0.1, 500), 4.6e-5, u < 0.5 ? 0 : random_log_uniform(r, 0.1, 50), e);
    case 3:
        status = vtx_chain_conductance(random_log_uniform(r, 1e-9, 1e-6), u < 0.1 ? 0 : random_uniform(r, 0, 0.7), e);
        e->subsonic_index = u > 0.7 ? random_uniform(r, 0.2, 1) : 0.5;
        e->cracking_pressure = u > 0.5 && u < 0.55 ? random_log_uniform(r, 1e2, 1e5) : 0;
        return status;
    case 4: return vtx_chain_coupling(random_log_uniform(r, 0.002, 0.03), e);
    case 5: return vtx_chain_orifice(random_log_uniform(r, 1e-8, 1e-3), u < 0.5 ? 0.6 : 1, e);
    case 6: return vtx_chain_valve(random_log_uniform(r, 0.01, 100), random_uniform(r, 0.1, 1), e);
    case 7: return vtx_chain_filter(random_log_uniform(r, 1e3, 1e5), random_log_uniform(r, 1e-3, 1), 8e5, 293, u < 0.2 ? 0 : u, e);
    default:
        if (u < 0.5)
            return vtx_chain_regulator(random_log_uniform(r, 1.5e5, 9e5), u < 0.1 ? 0 : random_log_uniform(r, 1e3, 2e5), random_log_uniform(r, 1e-3, 0.1),
                                       random_log_uniform(r, 1e-9, 1e-6), random_uniform(r, 0, 0.6), e);
        return vtx_chain_manifold(random_log_uniform(r, 1, 50), random_uniform(r, 0.01, 1), e);
    }
}

struct random_chain {
    vtx_chain_element elements[ELEMENTS_MAX];
    size_t count;
    double inlet_pressure, inlet_temperature, outlet_pressure, outlet_temperature;
};

static void make_random_chain(struct random_state *r, struct random_chain *c)
{
    const double u = random_uniform(r, 0, 1);
    do {
        c->count = 1 + (size_t)random_uniform(r, 0, ELEMENTS_MAX - 0.01);
        for (size_t k = 0; k < c->count; k++)
            EXPECT_OK(random_element(r, &c->elements[k]));
    } while (c->elements[0].kind == VTX_CHAIN_MANIFOLD && c->count < 3); /* nothing but manifolds would pass any flow */
    const double p = c->inlet_pressure = random_log_uniform(r, 1.1e5, 2e6);
    c->inlet_temperature = random_uniform(r, 250, 330);
    c->outlet_temperature = random_uniform(r, 250, 330);
    c->outlet_pressure = u < 0.5 ? random_uniform(r, 1e5, p) : u < 0.6 ? p * (1 - random_log_uniform(r, 1e-12, 0.1)) : u < 0.65 ? p
                       : u < 0.8 ? random_uniform(r, 1e3, p) : random_log_uniform(r, 1e5, 2e6);
}

static vtx_status solve(const struct random_chain *c, vtx_chain_state *state, vtx_chain_joint *joints)
{
    return vtx_chain_mass_flow(c->elements, c->count, c->inlet_pressure, c->inlet_temperature, c->outlet_pressure, c->outlet_temperature, state, joints);
}

/* The first law that the joints break, or null. */
static const char *fault_of_joints(const struct random_chain *c, const vtx_chain_state *s, const vtx_chain_joint *joints)
{
    const double direction = s->mass_flow < 0 ? -1 : 1;
    double share = 0;
    if (s->mass_flow * (c->inlet_pressure - c->outlet_pressure) < 0)
        return "flow against the pressure";
    for (size_t k = 0; k <= c->count; k++) {
        const vtx_chain_joint *j = &joints[k];
        if (!(fabs(j->mass_flow * j->paths - s->mass_flow) <= 1e-12 * fabs(s->mass_flow)))
            return "mass is not conserved";
        if (!(j->stagnation_pressure > 0 && j->stagnation_temperature > 0) || j->static_pressure > j->stagnation_pressure)
            return "static pressure above stagnation pressure";
        if (k > 0 && s->mass_flow != 0 && direction * (j->stagnation_pressure - joints[k - 1].stagnation_pressure) > 0)
            return "stagnation pressure rises along the flow";
        if (j->pressure_loss < 0 || j->velocity * direction < 0)
            return "negative loss or backward velocity";
        share += j->share;
    }
    return s->mass_flow != 0 && s->pressure_loss > 0 && fabs(share - 1) > 1e-12 ? "shares do not add up to 1" : NULL;
}

static double march_end(const struct random_chain *c, const vtx_chain_joint *joints, int reversed, double factor, double *headroom)
{
    struct chain chain = make_chain(c->elements, c->count, reversed ? c->outlet_temperature : c->inlet_temperature);
    const vtx_chain_joint *from = &joints[reversed ? c->count : 0];
    const struct stream start = { from->stagnation_pressure, from->stagnation_temperature, fabs(from->mass_flow) * factor, 1 };
    chain.reversed = reversed;
    const struct chain_end end = chain_march(&chain, 0, &start);
    *headroom = end.headroom;
    return start.pressure - (c->elements[reversed ? 0 : c->count - 1].kind == VTX_CHAIN_LINE ? end.lost_static : end.lost);
}

/* The flow is right to 1e-12: a little less leaves too much pressure at the end, a little more too little, or does not pass. The end
 * pressure itself can be less well known than that: near choking it goes with the root of the distance. */
static const char *fault_of_end(const struct random_chain *c, const vtx_chain_state *s, const vtx_chain_joint *joints)
{
    const int reversed = s->mass_flow < 0;
    const double wanted = reversed ? c->inlet_pressure : c->outlet_pressure, end = reversed ? s->inlet_pressure : s->outlet_pressure;
    const vtx_chain_element *last = &c->elements[reversed ? 0 : c->count - 1];
    double room_below, room_above;
    if (s->mass_flow == 0)
        return NULL;
    const double below = march_end(c, joints, reversed, 1 - 1e-12, &room_below);
    const double above = march_end(c, joints, reversed, 1 + 1e-12, &room_above);
    if (room_below < 0 || below < wanted * (1 - 1e-12))
        return "a flow that does not arrive";
    if (room_above >= 0 && above > wanted * (1 + 1e-12))
        return "more flow would arrive";
    if (end < wanted * (1 - 1e-7) || (end > wanted * (1 + 1e-7) && !(s->choked && last->kind == VTX_CHAIN_LINE)))
        return "another end pressure is stated";
    return NULL;
}

static void random_chains_are_solved_and_keep_the_laws(void)
{
    struct random_state r;
    int choked = 0, reversed = 0, at_rest = 0;
    random_seed(&r, 43);
    for (int i = 0; i < RANDOM_CHAINS; i++) {
        struct random_chain c;
        vtx_chain_state state;
        vtx_chain_joint joints[ELEMENTS_MAX + 1];
        char text[120];
        make_random_chain(&r, &c);
        feclearexcept(FE_ALL_EXCEPT);
        const vtx_status status = solve(&c, &state, joints);
        const char *fault = fetestexcept(FE_ALL_EXCEPT) & ~(FE_INEXACT | FE_UNDERFLOW) ? "floating-point flag" : status ? "status" : NULL;
        fault = fault ? fault : fault_of_joints(&c, &state, joints);
        fault = fault ? fault : fault_of_end(&c, &state, joints);
        snprintf(text, sizeof text, "chain %d: %s", i, fault ? fault : "");
        expect_true(!fault, text, __FILE__, __LINE__);
        if (fault)
            return;
        choked += state.choked;
        reversed += state.mass_flow < 0;
        at_rest += state.mass_flow == 0;
    }
    EXPECT(choked > RANDOM_CHAINS / 10 && reversed > RANDOM_CHAINS / 50 && at_rest > RANDOM_CHAINS / 50);
}

static int has_regulator(const struct random_chain *c)
{
    for (size_t k = 0; k < c->count; k++)
        if (c->elements[k].kind == VTX_CHAIN_REGULATOR)
            return 1;
    return 0;
}

/* Flow from both ends, outlet pressure from flow, inlet pressure from flow. Behind a regulator at work no inlet pressure is singled
 * out by the flow, or only just: there the flow is what must return. */
static void flow_and_pressures_are_inverses(void)
{
    struct random_state r;
    double worst_outlet = 0, worst_inlet = 0;
    int tried = 0;
    random_seed(&r, 44);
    for (int i = 0; i < RANDOM_CHAINS / 2; i++) {
        struct random_chain c;
        vtx_chain_state state, outlet, inlet;
        make_random_chain(&r, &c);
        if (solve(&c, &state, NULL) != VTX_OK || !(state.mass_flow > 1e-9) || has_regulator(&c))
            continue;
        tried++;
        const vtx_status status = vtx_chain_outlet_pressure(c.elements, c.count, state.mass_flow, c.inlet_pressure, c.inlet_temperature, &outlet, NULL);
        EXPECT(status == VTX_OK || (status == VTX_OUT_OF_RANGE && c.outlet_pressure < 1.1e3));
        if (!state.choked)
            worst_outlet = fmax(worst_outlet, fabs(outlet.outlet_pressure / c.outlet_pressure - 1));
        EXPECT_OK(vtx_chain_inlet_pressure(c.elements, c.count, state.mass_flow, c.inlet_temperature, c.outlet_pressure, &inlet, NULL));
        worst_inlet = fmax(worst_inlet, fabs(inlet.inlet_pressure / c.inlet_pressure - 1));
    }
    EXPECT(tried > RANDOM_CHAINS / 8);
    EXPECT(worst_outlet < 1e-9);
    EXPECT(worst_inlet < 1e-10);
}

/* What the searches, and any above this room, rely on. Flows from rest to far beyond choking, start pressures over a decade. */
static void the_march_is_monotone_and_continuous_beyond_choking(void)
{
    struct random_state r;
    random_seed(&r, 45);
    for (int i = 0; i < 300; i++) {
        struct random_chain c;
        make_random_chain(&r, &c);
        const struct chain chain = make_chain(c.elements, c.count, c.inlet_temperature);
        struct stream s = { c.inlet_pressure, c.inlet_temperature, 0, 1 };
        double before = 0;
        for (s.mass_flow = 1e-9; s.mass_flow < 10; s.mass_flow *= 1.07) {
            const struct chain_end end = chain_march(&chain, 0, &s);
            EXPECT(end.lost >= before - 4e-16 * s.pressure && end.lost_static >= end.lost && end.lost < s.pressure);
            before = end.lost;
        }
        s.mass_flow = random_log_uniform(&r, 1e-5, 0.1);
        double end_before = 0;
        for (s.pressure = c.inlet_pressure; s.pressure < 10 * c.inlet_pressure; s.pressure *= 1.05) {
            const double end = s.pressure - chain_march(&chain, 0, &s).lost;
            EXPECT(end >= end_before * (1 - 1e-12) - 4e-16 * s.pressure);
            end_before = end;
        }
    }
}

static void nothing_jumps_where_an_element_chokes(void)
{
    struct random_state r;
    int seen = 0;
    random_seed(&r, 46);
    for (int i = 0; i < 1000; i++) {
        struct random_chain c;
        double most;
        size_t tightest;
        make_random_chain(&r, &c);
        const struct chain chain = make_chain(c.elements, c.count, c.inlet_temperature);
        const vtx_status status = chain_capacity(&chain, c.inlet_pressure, c.inlet_temperature, 1e4, &most, &tightest);
        EXPECT(status == VTX_OK || status == VTX_OUT_OF_RANGE); /* a manifold into many wide lines passes even that */
        if (status != VTX_OK)
            continue;
        seen++;
        const struct stream below = { c.inlet_pressure, c.inlet_temperature, most * (1 - 1e-13), 1 };
        const struct stream above = { c.inlet_pressure, c.inlet_temperature, most * (1 + 1e-13), 1 };
        const struct chain_end e1 = chain_march(&chain, 0, &below), e2 = chain_march(&chain, 0, &above);
        EXPECT(e1.headroom >= 0 && e2.headroom < 0);
        /* The end pressure goes with the root of the distance to choking, and with the root of that root where a second element
         * is as close to it: 7e-4. A jump would be of the order of the critical ratio. */
        EXPECT_WITHIN((c.inlet_pressure - e1.lost) / (c.inlet_pressure - e2.lost), 1, 5e-3);
    }
    EXPECT(seen > 900);
}

/* ---- direction and rest ---- */

static void make_supply(vtx_chain_element *e)
{
    EXPECT_OK(vtx_chain_filter(1e4, 0.02, 8e5, 293.15, 0.5, &e[0]));
    EXPECT_OK(vtx_chain_coupling(0.0072, &e[1]));
    EXPECT_OK(vtx_chain_hose(0.0063, 8, &e[2]));
    EXPECT_OK(vtx_chain_coupling(0.0072, &e[3]));
}

/* The chain turned round between exchanged ends passes the same flow backwards. */
static void reversed_ends_reverse_the_flow(void)
{
    vtx_chain_element e[4], turned[4];
    vtx_chain_state there, back;
    vtx_chain_joint j1[5], j2[5];
    make_supply(e);
    for (int k = 0; k < 4; k++)
        turned[k] = e[3 - k];
    for (double outlet = 1e5; outlet < 7e5; outlet += 7.7e4) {
        EXPECT_OK(vtx_chain_mass_flow(e, 4, 7e5, 300, outlet, 280, &there, j1));
        EXPECT_OK(vtx_chain_mass_flow(turned, 4, outlet, 280, 7e5, 300, &back, j2));
        EXPECT_NEAR(back.mass_flow, -there.mass_flow, 1e-15);
        EXPECT(back.advisories & VTX_ADVISORY_REVERSED_FLOW && !(there.advisories & VTX_ADVISORY_REVERSED_FLOW));
        EXPECT(back.costliest_element == 3 - there.costliest_element);
        EXPECT(back.choked == there.choked && (!there.choked || back.choked_element == 3 - there.choked_element));
        for (int k = 0; k <= 4; k++)
            EXPECT_NEAR(j2[4 - k].stagnation_pressure, j1[k].stagnation_pressure, 1e-14);
        for (int k = 0; k < 4; k++)
            EXPECT_NEAR(j2[4 - k].pressure_loss, j1[k + 1].pressure_loss, 1e-12);
    }
}

/* Parts of square law alone: the flow starts in proportion, with a finite slope, the same both ways, and joins the law smoothly. */
static void the_flow_starts_in_proportion_to_the_difference(void)
{
    vtx_chain_element e[4];
    vtx_chain_state s;
    EXPECT_OK(vtx_chain_coupling(0.0072, &e[0]));
    EXPECT_OK(vtx_chain_valve(1, 0.7, &e[1]));
    EXPECT_OK(vtx_chain_orifice(1e-5, 0.8, &e[2]));
    EXPECT_OK(vtx_chain_filter(1e4, 0.02, 8e5, 293.15, 0, &e[3]));
    for (size_t k = 0; k < 4; k++) {
        EXPECT_OK(vtx_chain_mass_flow(&e[k], 1, 7e5, 293.15, 7e5 - 1e-4, 293.15, &s, NULL));
        const double slope = s.mass_flow / 1e-4;
        EXPECT_OK(vtx_chain_mass_flow(&e[k], 1, 7e5, 293.15, 7e5 - 1e-6, 293.15, &s, NULL));
        EXPECT_NEAR(s.mass_flow / 1e-6, slope, 2e-4);
        EXPECT_OK(vtx_chain_mass_flow(&e[k], 1, 7e5 - 1e-4, 293.15, 7e5, 293.15, &s, NULL));
        EXPECT_NEAR(s.mass_flow / 1e-4, -slope, 1e-9);
        /* Value and slope on both sides of the join at 0.7 Pa. */
        double flow[4];
        for (int i = 0; i < 4; i++) {
            EXPECT_OK(vtx_chain_mass_flow(&e[k], 1, 7e5, 293.15, 7e5 - 0.7 * (0.9985 + 0.001 * i), 293.15, &s, NULL));
            flow[i] = s.mass_flow;
        }
        EXPECT_NEAR(flow[3] - flow[2], flow[1] - flow[0], 3e-3);
        EXPECT_NEAR(flow[2] - flow[1], flow[1] - flow[0], 3e-3);
    }
    double before = -1;
    for (double difference = -10; difference <= 10; difference += 0.05) {
        EXPECT_OK(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 7e5 - difference, 293.15, &s, NULL));
        EXPECT(s.mass_flow > before);
        before = s.mass_flow;
    }
}

static void equal_pressures_give_rest_everywhere(void)
{
    vtx_chain_element e[4];
    vtx_chain_state s;
    vtx_chain_joint j[5];
    make_supply(e);
    EXPECT_OK(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 7e5, 280, &s, j));
    EXPECT(s.mass_flow == 0 && s.costliest_element == -1 && s.choked_element == -1 && s.largest_share == 0 && s.advisories == 0);
    for (int k = 0; k <= 4; k++)
        EXPECT(j[k].stagnation_pressure == 7e5 && j[k].static_pressure == 7e5 && j[k].mach == 0 && j[k].velocity == 0 && j[k].pressure_loss == 0);
    EXPECT_OK(vtx_chain_outlet_pressure(e, 4, 0, 7e5, 293.15, &s, j));
    EXPECT(s.outlet_pressure == 7e5 && s.mass_flow == 0 && j[2].stagnation_pressure == 7e5);
    EXPECT_OK(vtx_chain_inlet_pressure(e, 4, 0, 293.15, 6e5, &s, j));
    EXPECT(s.inlet_pressure == 6e5);
    for (double flow = 1e-3; flow > 1e-320; flow /= 100) {
        EXPECT_OK(vtx_chain_outlet_pressure(e, 4, flow, 7e5, 293.15, &s, NULL));
        EXPECT(s.outlet_pressure <= 7e5 && s.outlet_pressure > 6.9e5);
    }
    for (double difference = 1e4; difference > 1e-9; difference /= 10) {
        EXPECT_OK(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 7e5 - difference, 293.15, &s, NULL));
        EXPECT(s.mass_flow >= 0 && s.mass_flow < 0.02);
    }
}

static void closed_elements_let_nothing_back(void)
{
    vtx_chain_element e[2];
    vtx_chain_state s;
    vtx_chain_joint j[3];
    EXPECT_OK(vtx_chain_regulator(6e5, 5e4, 0.02, 6e-8, 0.3, &e[0]));
    EXPECT_OK(vtx_chain_hose(0.008, 3, &e[1]));
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 3e5, 293.15, 5e5, 280, &s, j));
    EXPECT(s.mass_flow == 0 && j[0].stagnation_pressure == 3e5 && j[1].stagnation_pressure == 5e5 && j[2].stagnation_pressure == 5e5);
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 8e5, 293.15, 6.5e5, 280, &s, j)); /* above the set pressure */
    EXPECT(s.mass_flow == 0 && s.choked == 0 && j[1].stagnation_pressure == 6.5e5 && j[1].stagnation_temperature == 280);
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 8e5, 293.15, 5.9e5, 280, &s, j));
    EXPECT(s.mass_flow > 0);
    EXPECT_OK(vtx_chain_conductance(4e-8, 0.3, &e[0]));
    e[0].cracking_pressure = 2e4;
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 6e5, 293.15, 5.9e5, 280, &s, j)); /* below cracking */
    EXPECT(s.mass_flow == 0);
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 6e5, 293.15, 7e5, 280, &s, j));
    EXPECT(s.mass_flow == 0);
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 6e5, 293.15, 5.7e5, 280, &s, j));
    EXPECT(s.mass_flow > 0 && j[1].pressure_loss > 2e4);
}

/* ---- choking ---- */

static void an_element_chokes_anywhere_in_the_chain(void)
{
    for (size_t place = 0; place < 5; place++) {
        vtx_chain_element e[5];
        vtx_chain_state s;
        vtx_chain_joint j[6];
        double most = 0;
        for (size_t k = 0; k < 5; k++)
            EXPECT_OK(k % 2 ? vtx_chain_hose(0.01, 2, &e[k]) : vtx_chain_conductance(2e-7, 0.3, &e[k]));
        EXPECT_OK(vtx_chain_conductance(1e-8, 0.25, &e[place]));
        for (double outlet = 1.2e5; outlet > 1e3; outlet *= 0.8) {
            EXPECT_OK(vtx_chain_mass_flow(e, 5, 7e5, 293.15, outlet, 293.15, &s, j));
            EXPECT(s.choked == 1 && s.choked_element == (int32_t)place && s.costliest_element == (int32_t)place);
            EXPECT(most == 0 || fabs(s.mass_flow / most - 1) < 1e-12);
            EXPECT(j[place + 1].choked == 1 && (s.advisories & VTX_ADVISORY_CHOKED));
            EXPECT_NEAR(s.mass_flow, 1.185 * 1e-8 * j[place].stagnation_pressure, 1e-9);
            EXPECT(j[5].stagnation_pressure >= outlet * (1 - 1e-12) || e[4].kind == VTX_CHAIN_LINE);
            most = s.mass_flow;
        }
        EXPECT_OK(vtx_chain_mass_flow(e, 5, 7e5, 293.15, 4e5, 293.15, &s, j));
        EXPECT(s.choked == 0 && s.choked_element == -1 && s.mass_flow < most);
    }
}

/* Two equal restrictions: the second chokes first; a smaller one ahead of it chokes too once the end is low enough. */
static void two_elements_choke_together(void)
{
    vtx_chain_element e[3];
    vtx_chain_state s;
    vtx_chain_joint j[4];
    EXPECT_OK(vtx_chain_conductance(1e-8, 0.4, &e[0]));
    EXPECT_OK(vtx_chain_hose(0.01, 1, &e[1]));
    EXPECT_OK(vtx_chain_conductance(4e-8, 0.4, &e[2]));
    EXPECT_OK(vtx_chain_mass_flow(e, 3, 8e5, 293.15, 1.5e5, 293.15, &s, j));
    EXPECT(j[1].choked == 1 && j[3].choked == 0);
    EXPECT_NEAR(j[3].stagnation_pressure, 1.5e5, 1e-12);
    EXPECT_OK(vtx_chain_mass_flow(e, 3, 8e5, 293.15, 1e4, 293.15, &s, j));
    EXPECT(j[1].choked == 1 && j[3].choked == 1 && s.choked_element == 0);
    EXPECT_NEAR(s.mass_flow, 1.185 * 1e-8 * 8e5, 1e-12);
    EXPECT_NEAR(j[2].stagnation_pressure, s.mass_flow / (1.185 * 4e-8), 1e-10);
    EXPECT_NEAR(j[3].stagnation_pressure, 1e4, 1e-12);
    EXPECT_OK(vtx_chain_conductance(1e-8, 0.4, &e[2]));
    EXPECT_OK(vtx_chain_mass_flow(e, 3, 8e5, 293.15, 1e4, 293.15, &s, j));
    EXPECT(j[1].choked == 0 && j[3].choked == 1 && s.choked_element == 2);
}

static void demand_above_the_most_has_no_solution_but_an_attainable_flow(void)
{
    vtx_chain_element e[4];
    vtx_chain_state s, again;
    vtx_chain_joint j[5];
    make_supply(e);
    EXPECT_OK(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 2e3, 293.15, &s, NULL));
    EXPECT(s.choked == 1);
    const double most = s.mass_flow;
    EXPECT_STATUS(vtx_chain_outlet_pressure(e, 4, most * 1.0001, 7e5, 293.15, &s, j), VTX_NO_SOLUTION);
    EXPECT_NEAR(s.attainable_mass_flow, most, 1e-12);
    EXPECT(isnan(s.mass_flow) && s.choked == -1 && s.costliest_element == -1 && isnan(j[0].stagnation_pressure) && j[4].advisories == -1);
    EXPECT_STATUS(vtx_chain_outlet_pressure(e, 4, 100, 7e5, 293.15, &s, j), VTX_NO_SOLUTION);
    EXPECT_NEAR(s.attainable_mass_flow, most, 1e-12);
    EXPECT_OK(vtx_chain_outlet_pressure(e, 4, s.attainable_mass_flow, 7e5, 293.15, &again, j));
    EXPECT(again.choked == 1);
    EXPECT_OK(vtx_chain_regulator(3e5, 5e4, 0.02, 6e-8, 0.3, &e[1]));
    EXPECT_STATUS(vtx_chain_inlet_pressure(e, 4, 0.01, 293.15, 2.9e5, &s, j), VTX_NO_SOLUTION);
    EXPECT(s.attainable_mass_flow > 0 && s.attainable_mass_flow < 0.01);
}

/* ---- the elements ---- */

static void a_regulator_holds_its_line_until_it_is_wide_open(void)
{
    vtx_chain_element e;
    vtx_chain_state s;
    double open;
    EXPECT_OK(vtx_chain_regulator(6e5, 5e4, 0.02, 6e-8, 0.3, &e));
    for (double flow = 0; flow < 0.045; flow += 0.001) {
        EXPECT_OK(vtx_chain_outlet_pressure(&e, 1, flow, 7e5, 293.15, &s, NULL));
        EXPECT_OK(vtx_conductance_outlet_pressure(flow, 6e-8, 0.3, 7e5, 293.15, &open, NULL));
        EXPECT_NEAR(s.outlet_pressure, fmin(6e5 - 5e4 * flow / 0.02, open), 1e-13);
    }
    EXPECT_OK(vtx_chain_outlet_pressure(&e, 1, 0.01, 5e5, 293.15, &s, NULL)); /* fed below its setting */
    EXPECT_OK(vtx_conductance_outlet_pressure(0.01, 6e-8, 0.3, 5e5, 293.15, &open, NULL));
    EXPECT_NEAR(s.outlet_pressure, open, 1e-13);
    EXPECT_OK(vtx_chain_mass_flow(&e, 1, 7e5, 293.15, 1e5, 293.15, &s, NULL));
    EXPECT(s.choked == 1);
    EXPECT_NEAR(s.mass_flow, 1.185 * 6e-8 * 7e5, 1e-12);
    EXPECT_OK(vtx_chain_regulator(2e5, 5e4, 0.01, 6e-7, 0.3, &e)); /* its droop is the limit */
    EXPECT_OK(vtx_chain_mass_flow(&e, 1, 7e5, 293.15, 1e5, 293.15, &s, NULL));
    EXPECT_NEAR(s.mass_flow, 0.02, 1e-12);
}

static void a_filter_passes_its_rated_point(void)
{
    for (double share = 0; share <= 1; share += 0.25) {
        vtx_chain_element e;
        vtx_chain_state s;
        EXPECT_OK(vtx_chain_filter(1.5e4, 0.03, 7e5, 300, share, &e));
        EXPECT_OK(vtx_chain_outlet_pressure(&e, 1, 0.03, 7e5, 300, &s, NULL));
        EXPECT_NEAR(s.pressure_loss, 1.5e4, 1e-12);
        EXPECT_OK(vtx_chain_outlet_pressure(&e, 1, 0.015, 7e5, 300, &s, NULL));
        EXPECT_NEAR(s.pressure_loss, 1.5e4 * (share / 2 + (1 - share) / 4), 1e-12);
        EXPECT_OK(vtx_chain_mass_flow(&e, 1, 7e5, 300, 1e5, 300, &s, NULL));
        EXPECT(s.choked == 1);
        EXPECT_OK(vtx_chain_outlet_pressure(&e, 1, s.mass_flow, 7e5, 300, &s, NULL));
        EXPECT_NEAR(s.outlet_pressure, 3.5e5, 1e-12);
    }
}

static void elements_follow_their_own_rooms(void)
{
    vtx_chain_element e;
    vtx_chain_state s;
    vtx_component part;
    vtx_valve valve;
    vtx_gas gas;
    double p;
    EXPECT_OK(vtx_gas_init(&gas));
    EXPECT_OK(vtx_component_init(&part));
    EXPECT_OK(vtx_valve_init(&valve));
    part.sonic_conductance = 5e-8;
    part.critical_ratio = 0.2;
    part.subsonic_index = 0.6;
    part.cracking_pressure = 1e4;
    EXPECT_OK(vtx_chain_conductance(5e-8, 0.2, &e));
    e.subsonic_index = 0.6;
    e.cracking_pressure = 1e4;
    EXPECT_OK(vtx_chain_outlet_pressure(&e, 1, 0.025, 7e5, 310, &s, NULL));
    EXPECT_OK(vtx_component_outlet_pressure(&part, 0.025, 7e5, 310, &p, NULL));
    EXPECT_NEAR(s.outlet_pressure, p, 1e-14);
    valve.flow_coefficient = 2;
    EXPECT_OK(vtx_chain_valve(2, 0.7, &e));
    EXPECT_OK(vtx_chain_outlet_pressure(&e, 1, 0.06, 7e5, 310, &s, NULL));
    EXPECT_OK(vtx_valve_outlet_pressure(&gas, &valve, 0.06, 7e5, 310, &p, NULL));
    EXPECT_NEAR(s.outlet_pressure, p, 1e-13);
    EXPECT_OK(vtx_chain_orifice(1e-5, 0.8, &e));
    EXPECT_OK(vtx_chain_outlet_pressure(&e, 1, 0.012, 7e5, 310, &s, NULL));
    EXPECT_OK(vtx_orifice_outlet_pressure(&gas, 0.012, 1e-5, 0.8, 7e5, 310, &p, NULL));
    EXPECT_NEAR(s.outlet_pressure, p, 1e-14);
}

/* Six branches of which half run are three branches; three branches are one of three times the size. */
static void a_manifold_divides_the_flow(void)
{
    vtx_chain_element e[3], same[2], consumer;
    vtx_chain_state s, t;
    vtx_chain_joint j[4];
    EXPECT_OK(vtx_chain_hose(0.012, 10, &e[0]));
    EXPECT_OK(vtx_chain_manifold(6, 0.5, &e[1]));
    EXPECT_OK(vtx_chain_conductance(3e-8, 0.3, &e[2]));
    EXPECT_OK(vtx_chain_orifice(3e-6, 0.9, &consumer));
    EXPECT_OK(vtx_chain_feed(e, 3, &consumer, 7e5, 293.15, 1e5, &s, j));
    same[0] = e[0];
    EXPECT_OK(vtx_chain_conductance(9e-8, 0.3, &same[1]));
    EXPECT_OK(vtx_chain_orifice(9e-6, 0.9, &consumer));
    EXPECT_OK(vtx_chain_feed(same, 2, &consumer, 7e5, 293.15, 1e5, &t, NULL));
    EXPECT_NEAR(s.mass_flow, t.mass_flow, 1e-12);
    EXPECT_NEAR(s.outlet_pressure, t.outlet_pressure, 1e-12);
    EXPECT(j[0].paths == 1 && j[1].paths == 1 && j[2].paths == 3 && j[3].paths == 3);
    EXPECT_NEAR(j[3].mass_flow, s.mass_flow / 3, 1e-14);
    EXPECT_OK(vtx_chain_manifold(6, 0.01, &e[1])); /* one runs when any does */
    EXPECT(e[1].ways == 1);
    /* Every further branch costs the others pressure. */
    double before = 7e5;
    EXPECT_OK(vtx_chain_orifice(3e-6, 0.9, &consumer));
    for (double running = 1; running < 30; running++) {
        EXPECT_OK(vtx_chain_manifold(running, 1, &e[1]));
        EXPECT_OK(vtx_chain_feed(e, 3, &consumer, 7e5, 293.15, 1e5, &s, j));
        EXPECT(s.outlet_pressure < before);
        before = s.outlet_pressure;
    }
    EXPECT(s.advisories & VTX_ADVISORY_STARVED);
    /* Backwards the paths run together. */
    EXPECT_OK(vtx_chain_mass_flow(e, 3, 2e5, 293.15, 3e5, 293.15, &s, j));
    EXPECT(s.mass_flow < 0 && j[3].paths == 29);
    EXPECT_NEAR(j[0].mass_flow, 29 * j[3].mass_flow, 1e-14);
}

static void feeding_a_consumer_is_one_more_element(void)
{
    vtx_chain_element e[5], consumer;
    vtx_chain_state s, t;
    vtx_chain_joint j[5], k[6];
    make_supply(e);
    for (double area = 1e-7; area < 2e-4; area *= 1.7) {
        EXPECT_OK(vtx_chain_orifice(area, 1, &consumer));
        e[4] = consumer;
        EXPECT_OK(vtx_chain_feed(e, 4, &consumer, 7e5, 293.15, 1e5, &s, j));
        EXPECT_OK(vtx_chain_mass_flow(e, 5, 7e5, 293.15, 1e5, 293.15, &t, k));
        EXPECT(s.mass_flow == t.mass_flow && s.choked == t.choked && s.choked_element == t.choked_element);
        for (int i = 0; i <= 4; i++)
            EXPECT(j[i].stagnation_pressure == k[i].stagnation_pressure);
        EXPECT(s.outlet_stagnation_pressure == j[4].stagnation_pressure);
        EXPECT_NEAR(s.pressure_loss, 7e5 - s.outlet_stagnation_pressure, 1e-12);
        EXPECT(!(s.advisories & VTX_ADVISORY_STARVED) == !(s.pressure_loss > 7e4));
        EXPECT(s.costliest_element >= 0 && s.costliest_element < 4);
    }
}

/* What a room above this one couples to a chain: any need that rises with flow, here that of a nozzle, and it must give the flow
 * of the nozzle as an element; choked or not. */
struct nozzle {
    double area, outlet_pressure;
};

static double nozzle_need(double mass_flow, void *context)
{
    const struct nozzle *n = context;
    vtx_gas gas;
    double pressure = (double)NAN;
    EXPECT_OK(vtx_gas_init(&gas));
    EXPECT_OK(vtx_orifice_inlet_pressure(&gas, mass_flow, n->area, 1, 293.15, n->outlet_pressure, &pressure));
    return pressure;
}

static void a_need_that_rises_with_flow_is_met(void)
{
    vtx_chain_element e[4], consumer;
    vtx_chain_state s;
    make_supply(e);
    const struct chain c = make_chain(e, 4, 293.15);
    for (double outlet = 2e4; outlet < 7e5; outlet *= 1.5)
        for (double area = 1e-7; area < 1e-3; area *= 3) {
            struct nozzle n = { area, outlet };
            const struct chain_demand demand = { nozzle_need, &n, outlet, 0 };
            double flow;
            size_t choked;
            EXPECT_OK(vtx_chain_orifice(area, 1, &consumer));
            EXPECT_OK(vtx_chain_feed(e, 4, &consumer, 7e5, 293.15, outlet, &s, NULL));
            EXPECT_OK(chain_flow(&c, 7e5, 293.15, &demand, &flow, &choked));
            EXPECT_NEAR(flow, s.mass_flow, 1e-11);
            EXPECT((choked != CHAIN_NONE) == (s.choked_element >= 0 && s.choked_element < 4));
        }
}

static void total_temperature_stays_unless_a_wall_heats(void)
{
    vtx_chain_element e[4];
    vtx_chain_state s;
    vtx_chain_joint j[5];
    make_supply(e);
    EXPECT_OK(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 1e5, 280, &s, j));
    for (int k = 0; k <= 4; k++)
        EXPECT(j[k].stagnation_temperature == 293.15 && !(j[k].static_temperature > 293.15));
    e[2].law = VTX_LINE_ISOTHERMAL;
    EXPECT_OK(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 1e5, 280, &s, j));
    EXPECT(j[2].stagnation_temperature == 293.15 && j[3].stagnation_temperature > 293.15 && j[3].stagnation_temperature < 320);
    EXPECT(j[4].stagnation_temperature == j[3].stagnation_temperature);
}

static void a_wider_line_brings_the_wanted_pressure(void)
{
    vtx_chain_element e[4];
    vtx_chain_state s;
    double bore;
    make_supply(e);
    EXPECT_OK(vtx_chain_outlet_pressure(e, 4, 0.006, 7e5, 293.15, &s, NULL));
    EXPECT(s.costliest_element == 2 && s.outlet_stagnation_pressure < 6.4e5);
    e[2].diameter = (double)NAN;
    EXPECT_OK(vtx_chain_line_diameter(e, 4, 2, 0.006, 7e5, 293.15, 6.5e5, &bore));
    e[2].diameter = bore;
    EXPECT(bore > 0.0063 && bore < 0.01);
    EXPECT_OK(vtx_chain_outlet_pressure(e, 4, 0.006, 7e5, 293.15, &s, NULL));
    EXPECT_NEAR(s.outlet_stagnation_pressure, 6.5e5, 1e-12);
    EXPECT_STATUS(vtx_chain_line_diameter(e, 4, 2, 0.006, 7e5, 293.15, 6.998e5, &bore), VTX_NO_SOLUTION);
    EXPECT(isnan(bore));
    EXPECT_STATUS(vtx_chain_line_diameter(e, 4, 1, 0.006, 7e5, 293.15, 6.5e5, &bore), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_chain_line_diameter(e, 4, 4, 0.006, 7e5, 293.15, 6.5e5, &bore), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_chain_line_diameter(e, 4, 2, 1e-9, 7e5, 293.15, 1e3, &bore), VTX_OUT_OF_RANGE);
    /* A choked chain wants the bore that passes the flow at all. */
    EXPECT_OK(vtx_chain_line_diameter(&e[2], 1, 0, 0.006, 7e5, 293.15, 1e3, &bore));
    e[2].diameter = bore;
    EXPECT_OK(vtx_chain_mass_flow(&e[2], 1, 7e5, 293.15, 1e3, 293.15, &s, NULL));
    EXPECT_NEAR(s.mass_flow, 0.006, 1e-10);
}

static void a_thousand_elements_are_no_trouble(void)
{
    static vtx_chain_element e[1000];
    static vtx_chain_joint j[1001];
    vtx_chain_element whole;
    vtx_chain_state s, t;
    for (int k = 0; k < 1000; k++)
        EXPECT_OK(vtx_chain_pipe(0.02, 0.1, 4.6e-5, 0, &e[k]));
    EXPECT_OK(vtx_chain_pipe(0.02, 100, 4.6e-5, 0, &whole));
    for (double outlet = 1e5; outlet < 7e5; outlet += 1e5) {
        EXPECT_OK(vtx_chain_mass_flow(e, 1000, 7e5, 293.15, outlet, 293.15, &s, j));
        EXPECT_OK(vtx_chain_mass_flow(&whole, 1, 7e5, 293.15, outlet, 293.15, &t, NULL));
        EXPECT_NEAR(s.mass_flow, t.mass_flow, 1e-9);
    }
}

static void unknown_bores_leave_static_values_open(void)
{
    vtx_chain_element e[2];
    vtx_chain_state s;
    vtx_chain_joint j[3];
    EXPECT_OK(vtx_chain_conductance(4e-8, 0.3, &e[0]));
    EXPECT_OK(vtx_chain_conductance(4e-8, 0.3, &e[1]));
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 7e5, 293.15, 5e5, 293.15, &s, j));
    EXPECT(isnan(j[1].static_pressure) && isnan(j[1].mach) && j[1].advisories == VTX_ADVISORY_FIELD_UNAVAILABLE);
    EXPECT(s.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE && s.outlet_pressure > 0);
    e[0].diameter = 0.01;
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 7e5, 293.15, 5e5, 293.15, &s, j));
    EXPECT(j[1].static_pressure < j[1].stagnation_pressure && j[1].mach > 0.01 && j[1].mach < 0.3);
    e[0].diameter = 1e-3; /* no such flow fits */
    EXPECT_OK(vtx_chain_mass_flow(e, 2, 7e5, 293.15, 5e5, 293.15, &s, j));
    EXPECT(isnan(j[1].mach));
}

static void expect_refused(vtx_status status, vtx_status wanted, const vtx_chain_state *s, const vtx_chain_joint *j)
{
    EXPECT_STATUS(status, wanted);
    EXPECT(isnan(s->mass_flow) && isnan(s->attainable_mass_flow) && s->choked == -1 && s->advisories == -1);
    for (int k = 0; k < 5; k++)
        EXPECT(isnan(j[k].stagnation_pressure) && isnan(j[k].share) && j[k].choked == -1);
}

static void wrong_chains_are_refused_and_poisoned(void)
{
    vtx_chain_element e[4], good[4];
    vtx_chain_state s;
    vtx_chain_joint j[5];
    make_supply(good);
    memcpy(e, good, sizeof e);
    EXPECT_STATUS(vtx_chain_mass_flow(e, 0, 7e5, 293.15, 1e5, 293.15, &s, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_chain_mass_flow(NULL, 4, 7e5, 293.15, 1e5, 293.15, &s, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 1e5, 293.15, NULL, j), VTX_BAD_ARGUMENT);
    expect_refused(vtx_chain_mass_flow(e, 4, (double)NAN, 293.15, 1e5, 293.15, &s, j), VTX_BAD_ARGUMENT, &s, j);
    expect_refused(vtx_chain_mass_flow(e, 4, 293.15, 7e5, 1e5, 293.15, &s, j), VTX_OUT_OF_RANGE, &s, j);
    expect_refused(vtx_chain_outlet_pressure(e, 4, -1, 7e5, 293.15, &s, j), VTX_BAD_ARGUMENT, &s, j);
    expect_refused(vtx_chain_inlet_pressure(e, 4, 2e4, 293.15, 1e5, &s, j), VTX_OUT_OF_RANGE, &s, j);
    expect_refused(vtx_chain_feed(e, 4, NULL, 7e5, 293.15, 1e5, &s, j), VTX_BAD_ARGUMENT, &s, j);
    expect_refused(vtx_chain_feed(e, 4, e, 1e5, 293.15, 7e5, &s, j), VTX_BAD_ARGUMENT, &s, j);
    EXPECT_OK(vtx_chain_element_init(&e[1]));
    expect_refused(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 1e5, 293.15, &s, j), VTX_BAD_ARGUMENT, &s, j);
    for (size_t field = 0; field < offsetof(vtx_chain_element, reserved) / sizeof(double); field++)
        for (int k = 0; k < 4; k++) {
            memcpy(e, good, sizeof e);
            double *number = (double *)(void *)((char *)&e[k] + field * sizeof(double));
            *number = (double)NAN;
            const vtx_status status = vtx_chain_mass_flow(e, 4, 7e5, 293.15, 1e5, 293.15, &s, j);
            EXPECT(status == VTX_BAD_ARGUMENT || (status == VTX_OK && !isnan(s.mass_flow)));
        }
    memcpy(e, good, sizeof e);
    e[2].law = 0;
    expect_refused(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 1e5, 293.15, &s, j), VTX_BAD_ARGUMENT, &s, j);
    memcpy(e, good, sizeof e);
    e[0].laminar_loss = e[0].turbulent_loss = 0;
    expect_refused(vtx_chain_mass_flow(e, 4, 7e5, 293.15, 1e5, 293.15, &s, j), VTX_BAD_ARGUMENT, &s, j);
    EXPECT_OK(vtx_chain_manifold(3, 1, &e[0]));
    EXPECT_STATUS(vtx_chain_mass_flow(e, 1, 7e5, 293.15, 1e5, 293.15, &s, NULL), VTX_OUT_OF_RANGE); /* nothing in the way */
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "two elements equal a direct solution", two_elements_equal_a_direct_solution },
    { "three elements equal a direct solution", three_elements_equal_a_direct_solution },
    { "a chain of one line is that line", a_chain_of_one_line_is_that_line },
    { "random chains are solved and keep the laws", random_chains_are_solved_and_keep_the_laws },
    { "flow and pressures are inverses", flow_and_pressures_are_inverses },
    { "the march is monotone and continuous beyond choking", the_march_is_monotone_and_continuous_beyond_choking },
    { "nothing jumps where an element chokes", nothing_jumps_where_an_element_chokes },
    { "reversed ends reverse the flow", reversed_ends_reverse_the_flow },
    { "the flow starts in proportion to the difference", the_flow_starts_in_proportion_to_the_difference },
    { "equal pressures give rest everywhere", equal_pressures_give_rest_everywhere },
    { "closed elements let nothing back", closed_elements_let_nothing_back },
    { "an element chokes anywhere in the chain", an_element_chokes_anywhere_in_the_chain },
    { "two elements choke together", two_elements_choke_together },
    { "demand above the most has no solution but an attainable flow", demand_above_the_most_has_no_solution_but_an_attainable_flow },
    { "a regulator holds its line until it is wide open", a_regulator_holds_its_line_until_it_is_wide_open },
    { "a filter passes its rated point", a_filter_passes_its_rated_point },
    { "elements follow their own rooms", elements_follow_their_own_rooms },
    { "a manifold divides the flow", a_manifold_divides_the_flow },
    { "feeding a consumer is one more element", feeding_a_consumer_is_one_more_element },
    { "a need that rises with flow is met", a_need_that_rises_with_flow_is_met },
    { "total temperature stays unless a wall heats", total_temperature_stays_unless_a_wall_heats },
    { "a wider line brings the wanted pressure", a_wider_line_brings_the_wanted_pressure },
    { "a thousand elements are no trouble", a_thousand_elements_are_no_trouble },
    { "unknown bores leave static values open", unknown_bores_leave_static_values_open },
    { "wrong chains are refused and poisoned", wrong_chains_are_refused_and_poisoned },
};
TEST_SUITE(chain, tests);
