/* How far to turn the hot valve, and whether it is worth it. */
#include <vtx/commissioning.h>

#include "job_pass.h"
#include "turn.h"

/* The state before and after the turn. */
struct turned {
    double state[STATES];
    double gradient[STATES * PARAMETERS_MAX];
    int32_t advisories;
};

static vtx_status turn_to(struct setting_fit *s, double opening, struct turned *after)
{
    struct service_fit *f = &s->service;
    double x[PARAMETERS_MAX];
    vtx_operating_point p;
    memcpy(x, s->x, sizeof x);
    x[0] = log(opening / f->job.setting.valve_opening) / f->unit[0];
    vtx_status status = service_fit_gradient(f, x, after->state, after->gradient);
    const vtx_job job = service_fit_job(f, x);
    if (status == VTX_OK)
        status = job_pass(&job, &p, NULL);
    after->advisories = status == VTX_OK ? p.advisories : 0;
    return status;
}

static double deviation_of(const struct setting_fit *s, const double *gradient, int state)
{
    return derived_deviation(&s->service.fit, &gradient[state * PARAMETERS_MAX]);
}

/* Both readings of an instrument are uncertain. */
static double visibility_of(const struct setting_fit *s, const struct turned *after)
{
    const struct evidence *e = &s->service.evidence;
    double sum = 0;
    for (int i = 0; i < READINGS; i++)
        if (e->given[i])
            sum += 0.5 * square((after->state[i] - s->state[i]) / e->uncertainty[i]);
    return sqrt(sum);
}

/* By the figure itself within its uncertainty, or because no turn at all is within the interval of the ratio. More cold or more capacity
 * than wanted is no reason to turn. */
static int reached(const vtx_valve_goal *goal, double figure, double deviation, double log_ratio, double log_deviation)
{
    const double doubt = normal_two_sided_95 * deviation;
    if (fabs(log_ratio) <= normal_two_sided_95 * log_deviation)
        return 1;
    switch (goal->goal) {
    case VTX_GOAL_COLD_TEMPERATURE: return figure <= goal->wanted + doubt;
    case VTX_GOAL_CAPACITY: return figure >= goal->wanted - doubt;
    case VTX_GOAL_COLD_FRACTION: return fabs(figure - goal->wanted) <= doubt;
    default: return 0;
    }
}

static void fill_advice(const struct setting_fit *s, const vtx_valve_goal *goal, const struct turn_target *target, const struct turned *after,
                        double log_deviation, vtx_valve_advice *a)
{
    const int state = goal_state(goal);
    const double now = service_fit_job(&s->service, s->x).setting.valve_opening, ratio = target->opening / now;
    a->opening_ratio = ratio;
    a->ratio_low = ratio * exp(-normal_two_sided_95 * smaller(log_deviation, 100));
    a->ratio_high = ratio * exp(normal_two_sided_95 * smaller(log_deviation, 100));
    a->present_opening = now;
    a->new_opening = target->opening;
    a->present_figure = s->state[state];
    a->present_uncertainty = setting_deviation(s, state);
    a->new_figure = after->state[state];
    a->new_uncertainty = deviation_of(s, after->gradient, state);
    a->new_cold_fraction = after->state[STATE_COLD_FRACTION];
    a->visibility = visibility_of(s, after);
    for (int i = 0; i < READINGS; i++) {
        a->predicted[i] = after->state[i];
        a->predicted_uncertainty[i] = deviation_of(s, after->gradient, i);
    }
    a->attainable_figure = target->best_figure;
    a->attainable_opening = target->best_opening;
    a->attainable_ratio = target->best_opening / now;
    a->limit = target->limit;
    a->attainable_limit = target->best_limit;
    if (reached(goal, a->present_figure, a->present_uncertainty, log(ratio), log_deviation))
        a->turn = VTX_TURN_REACHED;
    else if (a->visibility < normal_two_sided_95)
        a->turn = VTX_TURN_UNSEEN;
    else
        a->turn = ratio > 1 ? VTX_TURN_OPEN : VTX_TURN_CLOSE;
}

static vtx_status fail(vtx_valve_advice *a, vtx_status status, const struct setting_fit *s, const struct turn_target *target)
{
    POISON_STRUCT(a, vtx_valve_advice, turn, status);
    if (status == VTX_NO_SOLUTION && target) {
        a->attainable_figure = target->best_figure;
        a->attainable_opening = target->best_opening;
        a->attainable_ratio = target->best_opening / service_fit_job(&s->service, s->x).setting.valve_opening;
        a->attainable_limit = target->best_limit;
    }
    return status;
}

static vtx_status advise(struct setting_fit *s, const vtx_valve_goal *goal, vtx_valve_advice *a)
{
    struct turn_target target;
    struct turned after;
    double gradient[PARAMETERS_MAX];
    vtx_status status = find_target(&s->service, s->x, goal, &target);
    if (status != VTX_OK)
        return fail(a, status, s, &target);
    status = turn_to(s, target.opening, &after);
    if (status == VTX_OK)
        status = target_gradient(&s->service, s->x, goal, &target, gradient);
    if (status != VTX_OK)
        return fail(a, status, s, NULL);
    fill_advice(s, goal, &target, &after, derived_deviation(&s->service.fit, gradient), a);
    a->advisories = after.advisories | s->advisories;
    return VTX_OK;
}

vtx_status vtx_advise_valve(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                            const vtx_valve_goal *goal, vtx_valve_advice *advice)
{
    struct setting_fit s;
    vtx_status status = worse(require(advice != NULL), check_goal(goal));
    if (status == VTX_OK)
        status = setting_fit_run(job, uncertainty, readings, &s);
    if (status == VTX_OK && job->cooler.kind == VTX_COOLER_FIXED)
        status = VTX_OUT_OF_RANGE;
    return status == VTX_OK ? advise(&s, goal, advice) : POISON_STRUCT(advice, vtx_valve_advice, turn, status);
}
