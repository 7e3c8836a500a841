/* A goal met by the hot valve alone. */
#include "turn.h"

#include "../base/root.h"
#include "wish.h"

/* Step in the logarithm of the opening for second differences. */
static const double curvature_step = 0.02;

vtx_status check_goal(const vtx_valve_goal *g)
{
    if (!g || (g->branch != VTX_BRANCH_MORE_COLD_AIR && g->branch != VTX_BRANCH_LESS_COLD_AIR) || !are_zero(g->reserved, ARRAY_LENGTH(g->reserved)))
        return VTX_BAD_ARGUMENT;
    switch (g->goal) {
    case VTX_GOAL_COLD_TEMPERATURE: return check_positive(g->wanted, 50, 500);
    case VTX_GOAL_COLD_FRACTION: return check_share(g->wanted);
    case VTX_GOAL_CAPACITY: return check_range(g->wanted, -1e6, 1e6);
    case VTX_GOAL_MOST_CAPACITY: return VTX_OK;
    default: return VTX_BAD_ARGUMENT;
    }
}

int goal_state(const vtx_valve_goal *g)
{
    if (g->goal == VTX_GOAL_COLD_TEMPERATURE)
        return VTX_READ_COLD_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE;
    return g->goal == VTX_GOAL_COLD_FRACTION ? STATE_COLD_FRACTION : STATE_CAPACITY;
}

struct turning {
    const struct service_fit *fit;
    double x[PARAMETERS_MAX];
    int state;
};

static double figure_at(double opening, void *context)
{
    struct turning *t = context;
    double state[STATES];
    t->x[0] = log(opening / t->fit->job.setting.valve_opening) / t->fit->unit[0];
    return service_fit_state(t->fit, t->x, state) == VTX_OK ? state[t->state] : quiet_nan();
}

static double shortfall_at(double log_opening, void *context)
{
    const double figure = figure_at(exp(log_opening), context);
    return is_finite(figure) ? -figure : 0.1 * DBL_MAX;
}

static int32_t limit_of(const struct valve_range *range, double opening)
{
    if (opening <= range->low * (1 + 1e-7))
        return VTX_LIMIT_RANGE_LOW;
    return opening >= range->high * (1 - 1e-7) ? VTX_LIMIT_RANGE_HIGH : VTX_LIMIT_COOLER;
}

static vtx_status find_most(struct turning *t, const struct valve_range *range, struct turn_target *target)
{
    double log_opening;
    const vtx_status status = find_minimum(shortfall_at, t, log(range->low), log(range->high), 1e-9, &log_opening);
    if (status != VTX_OK)
        return status;
    target->opening = target->best_opening = within(exp(log_opening), range->low, range->high);
    target->figure = target->best_figure = figure_at(target->opening, t);
    target->limit = target->best_limit = limit_of(range, target->opening);
    return is_finite(target->figure) ? VTX_OK : VTX_OUT_OF_RANGE;
}

/* What is behind the hot outlet may keep the cold fraction above the wanted one however far the valve is opened. */
static vtx_status wide_open(struct turning *t, const vtx_job *job, double wanted, struct turn_target *target)
{
    struct valve_range range;
    const vtx_status status = valve_range_of(job, &range);
    if (status != VTX_OK)
        return status;
    target->best_opening = range.high;
    target->best_figure = figure_at(range.high, t);
    target->best_limit = VTX_LIMIT_RANGE_HIGH;
    return is_finite(target->best_figure) && target->best_figure > wanted ? VTX_NO_SOLUTION : VTX_OUT_OF_RANGE;
}

/* The forward pass with the cold fraction held names the opening at once. */
static vtx_status find_fraction(struct turning *t, const vtx_job *job, double wanted, struct turn_target *target)
{
    const double nearest = within(wanted, job->cooler.cold_fraction_min, job->cooler.cold_fraction_max);
    target->best_opening = opening_at_cold_fraction(job, nearest);
    if (!is_finite(target->best_opening) || !(target->best_opening > 0))
        return wide_open(t, job, wanted, target);
    target->best_figure = figure_at(target->best_opening, t);
    target->best_limit = wanted > nearest ? VTX_LIMIT_RANGE_LOW : wanted < nearest ? VTX_LIMIT_RANGE_HIGH : VTX_LIMIT_WISH;
    target->opening = target->best_opening;
    target->figure = target->best_figure;
    target->limit = VTX_LIMIT_WISH;
    return wanted == nearest ? VTX_OK : VTX_NO_SOLUTION;
}

static vtx_status find_wish(struct turning *t, const struct valve_range *range, const vtx_valve_goal *goal, struct turn_target *target)
{
    const struct wish wish = { .figure = figure_at, .context = t, .wanted = goal->wanted, .low = range->low, .high = range->high,
                               .tolerance = 1e-13 * range->high, .sense = goal->goal == VTX_GOAL_COLD_TEMPERATURE ? WISH_AT_MOST : WISH_AT_LEAST,
                               .choice = goal->branch == VTX_BRANCH_MORE_COLD_AIR ? WISH_LOWEST : WISH_HIGHEST,
                               .logarithmic = range->high > 20 * range->low };
    struct wish_answer answer;
    const vtx_status status = search_wish(&wish, &answer);
    if (status != VTX_OK && status != VTX_NO_SOLUTION)
        return status;
    target->opening = answer.x;
    target->figure = answer.figure;
    target->limit = answer.met_at_end ? limit_of(range, answer.x) : VTX_LIMIT_WISH;
    target->best_opening = answer.best_x;
    target->best_figure = answer.best;
    target->best_limit = limit_of(range, answer.best_x);
    return status;
}

vtx_status find_target(struct service_fit *f, const double *x, const vtx_valve_goal *goal, struct turn_target *target)
{
    const vtx_job job = service_fit_job(f, x);
    struct turning t = { .fit = f, .state = goal_state(goal) };
    struct valve_range range;
    memcpy(t.x, x, sizeof t.x);
    if (goal->goal == VTX_GOAL_COLD_FRACTION)
        return find_fraction(&t, &job, goal->wanted, target);
    const vtx_status status = valve_range_of(&job, &range);
    if (status != VTX_OK)
        return status;
    return goal->goal == VTX_GOAL_MOST_CAPACITY ? find_most(&t, &range, target) : find_wish(&t, &range, goal, target);
}

static vtx_status figure_gradient(struct service_fit *f, const double *x, double log_opening, int state, double *gradient)
{
    double moved[PARAMETERS_MAX], states[STATES], all[STATES * PARAMETERS_MAX];
    memcpy(moved, x, sizeof moved);
    moved[0] = log_opening / f->unit[0];
    const vtx_status status = service_fit_gradient(f, moved, states, all);
    if (status == VTX_OK)
        memcpy(gradient, &all[state * PARAMETERS_MAX], PARAMETERS_MAX * sizeof *gradient);
    return status;
}

/* At a wish the figure stays: d ln o = -F_k/F_o. At a summit its slope stays 0: -F_ok/F_oo. At an end of the range the opening stays. */
vtx_status target_gradient(struct service_fit *f, const double *x, const vtx_valve_goal *goal, const struct turn_target *target, double *gradient)
{
    const double at = log(target->opening / f->job.setting.valve_opening);
    const int state = goal_state(goal), summit = target->limit == VTX_LIMIT_COOLER;
    double below[PARAMETERS_MAX], above[PARAMETERS_MAX];
    vtx_status status = figure_gradient(f, x, at - (summit ? curvature_step : 0), state, below);
    if (status == VTX_OK && summit)
        status = figure_gradient(f, x, at + curvature_step, state, above);
    if (status != VTX_OK)
        return status;
    const double by_opening = summit ? (above[0] - below[0]) : below[0];
    const int moves = target->limit == VTX_LIMIT_WISH || summit;
    memset(gradient, 0, PARAMETERS_MAX * sizeof *gradient);
    for (size_t k = 1; k < f->parameters && moves && fabs(by_opening) > 1e-12; k++)
        gradient[k] = -(summit ? above[k] - below[k] : below[k]) / by_opening;
    gradient[0] = -1;
    return VTX_OK;
}

vtx_status turn_gradient(struct service_fit *f, const double *x, const vtx_valve_goal *goal, double *gradient)
{
    struct turn_target target;
    const vtx_status status = find_target(f, x, goal, &target);
    if (status == VTX_NO_SOLUTION)
        return figure_gradient(f, x, x[0] * f->unit[0], goal_state(goal), gradient);
    return status == VTX_OK ? target_gradient(f, x, goal, &target, gradient) : status;
}
