/* A scan that sees several branches, then a bracketed root in the one asked for. */
#include "wish.h"

enum { POINTS = 25 };

/* Rounding of the forward pass must not turn a wish that is just met into a miss. */
static const double slack = 1e-12;

/* Distance to the wish, positive where it is met. */
static double margin(const struct wish *w, double x)
{
    const double figure = w->figure(x, w->context);
    const double distance = w->sense == WISH_AT_LEAST ? figure - w->wanted : w->wanted - figure;
    return distance + slack * fabs(w->wanted);
}

/* NaN is not: compared only after it is known to be a number, since a comparison would raise INVALID. */
static int at_least(double x, double limit) { return is_finite(x) && x >= limit; }

static double margin_for_root(double x, void *context) { return margin(context, x); }

/* A point without an answer must not look like the best one. */
static double shortfall(double x, void *context)
{
    const double m = margin(context, x);
    return is_finite(m) ? -m : 0.1 * DBL_MAX;
}

static double grid_point(const struct wish *w, int i)
{
    const double share = (double)i / (POINTS - 1);
    if (i == 0 || i == POINTS - 1)
        return i == 0 ? w->low : w->high;
    return w->logarithmic ? w->low * exp(share * log(w->high / w->low)) : w->low + share * (w->high - w->low);
}

/* The edge of the answered range beside an unanswered point, by halving. */
static double answered_edge(const struct wish *w, double answered, double unanswered, double *m)
{
    *m = margin(w, answered);
    for (int i = 0; i < 60 && fabs(unanswered - answered) > w->tolerance; i++) {
        const double middle = 0.5 * (answered + unanswered);
        const double at_middle = margin(w, middle);
        if (is_finite(at_middle)) {
            answered = middle;
            *m = at_middle;
        } else {
            unanswered = middle;
        }
    }
    return answered;
}

static vtx_status answer_at(const struct wish *w, double x, int at_end, struct wish_answer *answer)
{
    answer->x = x;
    answer->figure = w->figure(x, w->context);
    answer->met_at_end = at_end;
    return VTX_OK;
}

static vtx_status refine(const struct wish *w, double a, double b, struct wish_answer *answer)
{
    double x;
    struct wish copy = *w;
    const vtx_status status = find_root(margin_for_root, &copy, smaller(a, b), larger(a, b), w->tolerance, &x);
    return status == VTX_OK ? answer_at(w, x, 0, answer) : status;
}

/* No answer just outside a point where the wish is met: either it fails between the edge and there, or it holds up to the edge. */
static vtx_status refine_to_edge(const struct wish *w, double met, double unanswered, struct wish_answer *answer)
{
    double at_edge;
    const double edge = answered_edge(w, met, unanswered, &at_edge);
    return at_edge < 0 ? refine(w, edge, met, answer) : answer_at(w, edge, 1, answer);
}

/* Walks from the preferred end until the wish is met. */
static vtx_status walk(const struct wish *w, const double x[], const double m[], struct wish_answer *answer)
{
    const int up = w->choice == WISH_LOWEST;
    for (int k = 0; k < POINTS; k++) {
        const int i = up ? k : POINTS - 1 - k;
        const int before = up ? i - 1 : i + 1;
        if (!at_least(m[i], 0))
            continue;
        if (k == 0)
            return answer_at(w, x[i], 1, answer);
        return is_finite(m[before]) ? refine(w, x[before], x[i], answer) : refine_to_edge(w, x[i], x[before], answer);
    }
    return VTX_NO_SOLUTION;
}

static void climb_to_best(const struct wish *w, const double x[], const double m[], int best, struct wish_answer *answer)
{
    struct wish copy = *w;
    if (best == 0 || best == POINTS - 1)
        return;
    const vtx_status status = find_minimum(shortfall, &copy, x[best - 1], x[best + 1], w->tolerance, &answer->best_x);
    if (status != VTX_OK || !at_least(margin(w, answer->best_x), m[best]))
        answer->best_x = x[best];
    /* Where answers end between the points the best may be the last of them. */
    for (int beside = best - 1; beside <= best + 1; beside += 2) {
        double at_edge;
        if (is_finite(m[beside]))
            continue;
        const double edge = answered_edge(w, x[best], x[beside], &at_edge);
        if (at_least(at_edge, margin(w, answer->best_x)))
            answer->best_x = edge;
    }
}

vtx_status search_wish(const struct wish *wish, struct wish_answer *answer)
{
    double x[POINTS], m[POINTS];
    int best = -1;
    answer->x = answer->figure = answer->best_x = answer->best = quiet_nan();
    answer->met_at_end = 0;
    for (int i = 0; i < POINTS; i++) {
        x[i] = grid_point(wish, i);
        m[i] = margin(wish, x[i]);
        if (is_finite(m[i]) && (best < 0 || m[i] > m[best]))
            best = i;
    }
    if (best < 0)
        return VTX_OUT_OF_RANGE;
    answer->best_x = x[best];
    if (!(m[best] >= 0 && wish->best_of_grid))
        climb_to_best(wish, x, m, best, answer);
    answer->best = wish->figure(answer->best_x, wish->context);
    const vtx_status status = walk(wish, x, m, answer);
    if (status != VTX_NO_SOLUTION || !at_least(margin(wish, answer->best_x), 0))
        return status;
    /* Met only on a summit narrower than the grid. */
    const double from = wish->choice == WISH_LOWEST ? x[best - 1] : x[best + 1];
    return is_finite(margin(wish, from)) ? refine(wish, from, answer->best_x, answer) : refine_to_edge(wish, answer->best_x, from, answer);
}
