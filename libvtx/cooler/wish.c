/* A scan that sees several branches, then a bracketed root in the one asked for. */
#include "wish.h"

enum { POINTS = 25 };

/* Rounding of the forward pass must not turn a wish that is just met into a miss. */
static const double slack = 1e-12;

/* Distance to the wish, positive where it is met. */
static double margin(const struct wish *w, double x)
{
    const double figure = w->figure(x, w->context);
    if (w->sense == WISH_EXACTLY)
        return figure - w->wanted;
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

/* Whether a root is one: a figure that jumps over the wish changes sign there without meeting it. */
static int meets(const struct wish *w, double x, double span)
{
    const double m = margin(w, x);
    return is_finite(m) && fabs(m) <= 1e-9 * (fabs(w->wanted) + span);
}

static int changes_sign(double a, double b) { return is_finite(a) && is_finite(b) && (a >= 0) != (b >= 0); }

/* A root between two points of opposite sign. */
static int crosses(const struct wish *w, double a, double at_a, double b, double at_b, struct wish_answer *answer)
{
    return changes_sign(at_a, at_b) && refine(w, a, b, answer) == VTX_OK && meets(w, answer->x, fabs(at_a - at_b));
}

/* A root between neighbours of the grid, one of which may have no answer. */
static int crosses_between(const struct wish *w, double a, double at_a, double b, double at_b, struct wish_answer *answer)
{
    double at_edge;
    if (is_finite(at_a) && is_finite(at_b))
        return crosses(w, a, at_a, b, at_b, answer);
    if (!is_finite(at_a) && !is_finite(at_b))
        return 0;
    const double edge = is_finite(at_a) ? answered_edge(w, a, b, &at_edge) : answered_edge(w, b, a, &at_edge);
    return is_finite(at_a) ? crosses(w, a, at_a, edge, at_edge, answer) : crosses(w, b, at_b, edge, at_edge, answer);
}

struct side {
    const struct wish *wish;
    double sign;
};

static double distance_on_side(double x, void *context)
{
    const struct side *s = context;
    const double m = margin(s->wish, x);
    return is_finite(m) ? s->sign * m : 0.1 * DBL_MAX;
}

/* The grid sees the figure on one side of the wish only: the point nearest to it, and the roots beside it when it lies beyond. */
static int crosses_at_summit(const struct wish *w, const double x[], const double m[], int nearest, struct wish_answer *answer)
{
    struct side side = { w, m[nearest] >= 0 ? 1 : -1 };
    const int from = w->choice == WISH_LOWEST ? nearest - 1 : nearest + 1;
    double summit;
    if (nearest == 0 || nearest == POINTS - 1
        || find_minimum(distance_on_side, &side, x[nearest - 1], x[nearest + 1], w->tolerance, &summit) != VTX_OK)
        return 0;
    const double at_summit = margin(w, summit);
    if (!is_finite(at_summit) || fabs(at_summit) > fabs(m[nearest]))
        return 0;
    answer->best_x = summit;
    answer->best = w->figure(summit, w->context);
    return crosses_between(w, x[from], m[from], summit, at_summit, answer);
}

/* Where answers end between the points the nearest may be the last of them. */
static void look_at_edges(const struct wish *w, const double x[], const double m[], int nearest, struct wish_answer *answer)
{
    for (int beside = nearest - 1; beside <= nearest + 1; beside += 2) {
        double at_edge;
        if (beside < 0 || beside >= POINTS || is_finite(m[beside]))
            continue;
        const double edge = answered_edge(w, x[nearest], x[beside], &at_edge);
        if (is_finite(at_edge) && fabs(at_edge) < fabs(margin(w, answer->best_x))) {
            answer->best_x = edge;
            answer->best = w->figure(edge, w->context);
        }
    }
}

/* Met exactly: the first root from the preferred end that the grid, or a summit beside its nearest point, tells. */
static vtx_status search_exactly(const struct wish *w, const double x[], const double m[], int nearest, struct wish_answer *answer)
{
    const int up = w->choice == WISH_LOWEST;
    answer->best_x = x[nearest];
    answer->best = w->figure(x[nearest], w->context);
    for (int k = 0; k < POINTS; k++) {
        const int i = up ? k : POINTS - 1 - k, before = up ? i - 1 : i + 1;
        if (is_finite(m[i]) && m[i] == 0)
            return answer_at(w, x[i], 0, answer);
        if (k > 0 && crosses_between(w, x[before], m[before], x[i], m[i], answer))
            return VTX_OK;
    }
    if (crosses_at_summit(w, x, m, nearest, answer))
        return VTX_OK;
    look_at_edges(w, x, m, nearest, answer);
    answer->x = answer->figure = quiet_nan();
    return VTX_NO_SOLUTION;
}

/* A wish that is met is the nearest to itself. */
static vtx_status met_exactly(const struct wish *w, const double x[], const double m[], int nearest, struct wish_answer *answer)
{
    const vtx_status status = search_exactly(w, x, m, nearest, answer);
    if (status == VTX_OK) {
        answer->best_x = answer->x;
        answer->best = answer->figure;
    }
    return status;
}

/* Of two points the better one: further beyond the wish, or nearer to one that is to be met exactly. */
static int is_better(const struct wish *w, double m, double than) { return w->sense == WISH_EXACTLY ? fabs(m) < fabs(than) : m > than; }

vtx_status search_wish(const struct wish *wish, struct wish_answer *answer)
{
    double x[POINTS], m[POINTS];
    int best = -1;
    answer->x = answer->figure = answer->best_x = answer->best = quiet_nan();
    answer->met_at_end = 0;
    for (int i = 0; i < POINTS; i++) {
        x[i] = grid_point(wish, i);
        m[i] = margin(wish, x[i]);
        if (is_finite(m[i]) && (best < 0 || is_better(wish, m[i], m[best])))
            best = i;
    }
    if (best < 0)
        return VTX_OUT_OF_RANGE;
    if (wish->sense == WISH_EXACTLY)
        return met_exactly(wish, x, m, best, answer);
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
