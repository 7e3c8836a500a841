/* Searches on the march through a chain: flow between two ends, largest flow, start pressure of a flow. */
#include "chain_kernel.h"
#include "secant.h"

/* Of the logarithm of flow or pressure, which is itself rounded to some 1e-15. */
#define CHAIN_TOLERANCE 4e-15

/* Carries a step across the limit that it aims at, rounding included. */
#define ROUNDING_MARGIN 1e-13

/* How close an end pressure must come that no start pressure can raise further. */
#define SATURATED 1e-13

/* ---- flow at given ends ---- */

struct flow_search {
    const struct chain *chain;
    const struct chain_demand *demand;
    double pressure, temperature;
    int stops_at_choking;
    size_t tightest; /* of the last mismatch */
};

static struct chain_end march_at(const struct flow_search *f, double mass_flow)
{
    const struct stream start = { f->pressure, f->temperature, mass_flow, 1 };
    return chain_march(f->chain, 0, &start);
}

/* What the chain loses and the demand's rise above its value at rest: both start small, nothing cancels. */
static double used_up(const struct flow_search *f, const struct chain_end *end)
{
    const double lost = f->demand->open_end ? end->lost_static : end->lost;
    if (!f->demand->need)
        return lost;
    return lost + larger(f->demand->need(end->mass_flow, f->demand->context) - f->demand->outlet_pressure, 0);
}

static double available(const struct flow_search *f) { return f->pressure - f->demand->outlet_pressure; }

/* Rising with the logarithm of flow. NaN where the flow does not pass, if the search is to stop there. */
static double flow_mismatch(double x, void *context)
{
    struct flow_search *f = context;
    const struct chain_end end = march_at(f, exp(x));
    f->tightest = end.tightest;
    if (f->stops_at_choking && end.headroom < 0)
        return quiet_nan();
    return log(larger(used_up(f, &end), 1e-300) / available(f));
}

static double lack_of_headroom(double x, void *context)
{
    struct flow_search *f = context;
    return -march_at(f, exp(x)).headroom;
}

/* A flow of the right order: the tightest element alone, by the law of a nozzle. */
static double first_guess(const struct flow_search *f)
{
    const struct chain *c = f->chain;
    const struct stream start = { f->pressure, f->temperature, 1, 1 };
    const double ratio = f->demand->outlet_pressure / f->pressure;
    double least = MASS_FLOW_MAX, paths = 1;
    for (size_t k = 0; k < chain_length(c); k++) {
        const vtx_chain_element *e = chain_element_at(c, k);
        if (e->kind == VTX_CHAIN_LINE) {
            struct pipe q = chain_pipe(c, e);
            q.friction_factor = 0.02;
            least = smaller(least, paths * pipe_choked_flow(&q, f->pressure, f->temperature, 1));
        } else if (e->kind == VTX_CHAIN_MANIFOLD) {
            paths *= c->reversed ? 1 / e->ways : e->ways;
        } else {
            struct passage p = chain_pass(c, k, &start, 0);
            least = smaller(least, paths * exp(p.headroom));
        }
    }
    return 0.7 * least * sqrt((1 - ratio) * (1 + ratio));
}

/* The largest flow that passes, from one that does not. Each round first lowers it to what the element in its way passes. */
static vtx_status search_capacity(struct flow_search *f, double high, double *x)
{
    double low = high, lack = lack_of_headroom(high, f), lack_high = lack;
    if (!(lack > 0))
        return VTX_OUT_OF_RANGE;
    for (size_t round = 0; lack > 0 && round <= 2 * chain_length(f->chain); round++) {
        high = low;
        lack_high = lack;
        low = high - lack - ROUNDING_MARGIN;
        lack = lack_of_headroom(low, f);
    }
    if (lack > 0)
        return VTX_NOT_CONVERGED;
    const double slope = (lack_high - lack) / (high - low);
    return secant_root(lack_of_headroom, f, low - lack / slope, slope, low, high, CHAIN_TOLERANCE, MAY_HAVE_KINKS, x);
}

/* The flow between rest and the largest that passes. */
static vtx_status search_below_capacity(struct flow_search *f, double too_much, double *x, size_t *choked)
{
    const vtx_status status = search_capacity(f, too_much, x);
    f->stops_at_choking = 0;
    if (status == VTX_OUT_OF_RANGE) /* nothing chokes below the ceiling of flows */
        return secant_root(flow_mismatch, f, log(first_guess(f)), 2, log(REST_FLOW), too_much, CHAIN_TOLERANCE, MAY_HAVE_KINKS, x);
    if (status != VTX_OK)
        return VTX_NOT_CONVERGED;
    const double over = flow_mismatch(*x, f);
    *choked = f->tightest;
    if (!(over > 0))
        return VTX_OK;
    *choked = CHAIN_NONE;
    return secant_root(flow_mismatch, f, *x - 0.5 * over, 2, log(REST_FLOW), *x, CHAIN_TOLERANCE, MAY_HAVE_KINKS, x);
}

/* Without choking a search along the mismatch. Where that meets a flow that does not pass, the largest that does is found; if it
 * still leaves pressure over, the chain is choked and that is the flow. */
static vtx_status search_flow(struct flow_search *f, double *x, size_t *choked)
{
    const double ceiling = log(1e3 * MASS_FLOW_MAX);
    f->stops_at_choking = 1;
    vtx_status status = secant_root(flow_mismatch, f, log(first_guess(f)), 2, log(REST_FLOW), ceiling, CHAIN_TOLERANCE, MAY_HAVE_KINKS, x);
    if (status == VTX_NOT_CONVERGED)
        *x = ceiling;
    return status == VTX_OUT_OF_RANGE || status == VTX_NOT_CONVERGED ? search_below_capacity(f, *x, x, choked) : status;
}

vtx_status chain_flow(const struct chain *c, double pressure, double temperature, const struct chain_demand *demand, double *mass_flow,
                      size_t *choked)
{
    struct flow_search f = { .chain = c, .demand = demand, .pressure = pressure, .temperature = temperature };
    const struct chain_end rest = march_at(&f, 0); /* costs little: at rest most elements do nothing */
    double x;
    *mass_flow = 0;
    *choked = CHAIN_NONE;
    if (!(available(&f) > used_up(&f, &rest)))
        return VTX_OK;
    const vtx_status status = search_flow(&f, &x, choked);
    if (status == VTX_NO_SOLUTION) /* so little that it is rest, or without anything in the way */
        return flow_mismatch(log(MASS_FLOW_MAX), &f) < 0 ? VTX_OUT_OF_RANGE : VTX_OK;
    if (status != VTX_OK)
        return VTX_NOT_CONVERGED;
    *mass_flow = exp(x);
    return *mass_flow > MASS_FLOW_MAX ? VTX_OUT_OF_RANGE : VTX_OK;
}

vtx_status chain_capacity(const struct chain *c, double pressure, double temperature, double too_much, double *mass_flow, size_t *choked)
{
    struct flow_search f = { .chain = c, .pressure = pressure, .temperature = temperature };
    double x;
    const vtx_status status = search_capacity(&f, log(too_much), &x);
    if (status != VTX_OK)
        return status;
    *mass_flow = exp(x);
    *choked = march_at(&f, *mass_flow).tightest;
    return VTX_OK;
}

/* ---- start pressure at given flow ---- */

struct start_search {
    const struct chain *chain;
    size_t position;
    struct stream start;
    double end_pressure;
    int open_end;
    double low;
    double slack;
};

static struct chain_end march_from(struct start_search *f, double x)
{
    f->start.pressure = f->low * exp(x);
    return chain_march(f->chain, f->position, &f->start);
}

static double start_mismatch(double x, void *context)
{
    struct start_search *f = context;
    const struct chain_end end = march_from(f, x);
    return log((f->start.pressure - (f->open_end ? end.lost_static : end.lost)) / f->end_pressure) + f->slack;
}

static double start_lack(double x, void *context) { return -march_from(context, x).headroom; }

/* Pressures squared differ by what the flow wants, more or less: one march tells how much. */
static double first_start(struct start_search *f, double top)
{
    const double x = smaller(0.7, top);
    const struct chain_end end = march_from(f, x);
    return within(0.5 * log1p(2 * end.lost * exp(x) / f->low), 0, top);
}

vtx_status chain_start_pressure(const struct chain *c, size_t position, const struct stream *start, double end_pressure, int open_end,
                                double low, double high, double *pressure, size_t *choked)
{
    struct start_search f = { c, position, *start, end_pressure, open_end, low, 0 };
    const double top = log(high / low), margin = start_mismatch(top, &f);
    double x = 0;
    *choked = CHAIN_NONE;
    *pressure = high;
    /* Behind a regulator at work the end pressure no longer depends on the start. If it is the wanted one, the least start is
     * found where the end comes close to it. */
    f.slack = fabs(margin) < SATURATED ? SATURATED : 0;
    if (margin + f.slack < 0)
        return VTX_NO_SOLUTION;
    if (start_mismatch(0, &f) < 0
        && secant_root(start_mismatch, &f, first_start(&f, top), 1.5, 0, top, CHAIN_TOLERANCE, MAY_HAVE_KINKS, &x) != VTX_OK)
        return VTX_NOT_CONVERGED;
    if (start_lack(x, &f) > 0) {
        if (start_lack(top, &f) > 0)
            return VTX_NO_SOLUTION;
        if (find_root(start_lack, &f, x, top, CHAIN_TOLERANCE, &x) != VTX_OK)
            return VTX_NOT_CONVERGED;
        *choked = march_from(&f, x).tightest;
    }
    *pressure = smaller(low * exp(x), high);
    return VTX_OK;
}
