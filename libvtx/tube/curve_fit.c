/* Least squares of readings against the curve. */
#include "curve_fit.h"

#include "../base/robust.h"

/* Of hot ends, as many as lose nothing to speak of (common practice, no source). */
static const double no_leak_share = 0.5;

enum { REWEIGHTINGS_MAX = 12, EVALUATIONS_MAX = 2000 };

/* Two rows a reading, then one a coordinate. */
static vtx_status rows_at(const struct curve_fit *c, const double *x, double *row)
{
    for (size_t i = 0; i < c->count; i++) {
        const struct curve_reading *r = &c->reading[i];
        double y[OUTLETS];
        row[OUTLETS * i] = row[OUTLETS * i + 1] = 0;
        if (!r->used)
            continue;
        const vtx_status status = curve_outlets(&c->curve, x, &r->state, &r->expansion, y);
        if (status != VTX_OK)
            return status;
        const double error[OUTLETS] = { y[COLD] - r->state.y[COLD], y[HOT] - r->state.y[HOT] };
        whiten(r, error, &row[OUTLETS * i]);
    }
    for (size_t k = 0; k < COORDINATES; k++)
        row[OUTLETS * c->count + k] = (x[k] - c->prior[k]) / c->prior_deviation[k];
    return VTX_OK;
}

static vtx_status residuals(const double *x, double *row, void *context)
{
    return rows_at(context, x, row);
}

static vtx_status weigh_all(struct curve_fit *c, const double *x)
{
    vtx_status status = VTX_OK;
    for (size_t i = 0; i < c->count && status == VTX_OK; i++)
        if (c->reading[i].state.usable)
            status = weigh_reading(&c->curve, x, &c->reading[i]);
    return status;
}

static void set_up(struct curve_fit *c)
{
    memset(&c->fit, 0, sizeof c->fit);
    c->fit.residuals = residuals;
    c->fit.context = c;
    c->fit.rows = OUTLETS * c->count + COORDINATES;
    c->fit.parameters = COORDINATES;
    c->fit.typical = typical_coordinate;
    c->fit.held = c->held;
    c->fit.tolerance = 1e-5; /* of a standard deviation: what the weights do with it is coarser */
    c->fit.evaluations_max = EVALUATIONS_MAX;
    c->fit.workspace = c->workspace;
    c->fit.workspace_length = FIT_WORKSPACE;
    memcpy(c->fit.parameter, c->curve.x, sizeof c->curve.x);
}

/* Chi-square of the readings alone, and the freedom that the coordinates left them. */
static void count_freedom(struct curve_fit *c)
{
    memset(c->part, 0, sizeof c->part);
    memset(c->part_freedom, 0, sizeof c->part_freedom);
    for (size_t row = 0; row < OUTLETS * c->count; row++) {
        const struct curve_reading *r = &c->reading[row / OUTLETS];
        const size_t direction = row % OUTLETS;
        if (!r->used || (int)direction >= r->rows)
            continue;
        c->part[direction] += square(c->fit.residual[row]);
        c->part_freedom[direction] += 1 - hat_element(&c->fit, row, row);
    }
    c->chi_square = c->part[0] + c->part[1];
    c->freedom = c->part_freedom[0] + c->part_freedom[1];
}

/* The largest move of a coordinate, in its standard deviations. */
static double take_result(struct curve_fit *c)
{
    double move = 0;
    memset(c->curve.covariance, 0, sizeof c->curve.covariance);
    for (size_t k = 0; k < COORDINATES; k++) {
        const double deviation = sqrt(c->fit.covariance[k][k]);
        move = larger(move, deviation > 0 ? fabs(c->fit.parameter[k] - c->curve.x[k]) / deviation : 0);
        c->curve.x[k] = c->fit.parameter[k];
        for (size_t l = 0; l < COORDINATES; l++)
            c->curve.covariance[k][l] = c->fit.covariance[k][l];
        if (k < FITTED)
            c->share[k] = within(1 - c->curve.covariance[k][k] / square(c->prior_deviation[k]), 0, 1);
    }
    count_freedom(c);
    return move;
}

vtx_status fit_curve(struct curve_fit *c)
{
    double last[COORDINATES], at[COORDINATES] = { 0 };
    for (int i = 0; i < REWEIGHTINGS_MAX; i++) {
        /* Between the last two answers once they are known: where they swing, this settles them. */
        for (size_t k = 0; k < COORDINATES; k++)
            at[k] = i < 2 ? c->curve.x[k] : 0.5 * (c->curve.x[k] + last[k]);
        memcpy(last, c->curve.x, sizeof last);
        vtx_status status = weigh_all(c, at);
        set_up(c);
        status = status == VTX_OK ? fit_least_squares(&c->fit) : status;
        if (status != VTX_OK)
            return status;
        if (take_result(c) < 1e-3)
            break;
    }
    /* Weights that will not settle belong to readings that contradict each other; the fit with the last ones shows which. */
    return VTX_OK;
}

vtx_status fit_from_prior(struct curve_fit *c)
{
    memcpy(c->curve.x, c->prior, sizeof c->prior);
    return fit_curve(c);
}

struct leak_knowledge leak_of_fit(const struct curve_fit *c)
{
    const struct leak_estimate e = { c->prior_deviation[LEAK], c->prior[LEAK] > 0 ? 0 : no_leak_share, c->curve.x[LEAK],
                                     sqrt(c->curve.covariance[LEAK][LEAK]) };
    return know_leak(&e);
}

vtx_status fit_curve_robustly(struct curve_fit *c, int32_t *suspicious)
{
    double weight[ROWS_MAX], raw[ROWS_MAX];
    int32_t group[ROWS_MAX];
    vtx_status status = fit_curve(c);
    if (status != VTX_OK)
        return status;
    set_up(c);
    /* Rows that carry nothing would make the scale look small. */
    for (size_t row = 0; row < c->fit.rows; row++) {
        const size_t i = row / OUTLETS;
        const int counts = i < c->count && c->reading[i].used && (int)(row % OUTLETS) < c->reading[i].rows;
        group[row] = counts ? (int32_t)i : -1;
    }
    struct robust_fit robust = { .fit = &c->fit, .group = group, .scale_floor = 1, .weight = weight, .raw = raw };
    status = fit_robustly(&robust);
    if (status != VTX_OK && status != VTX_NOT_CONVERGED)
        return status;
    /* Where the weights wander between two answers, the last one still names the suspects, who are tried one by one. */
    memcpy(c->curve.x, c->fit.parameter, sizeof c->curve.x);
    for (size_t i = 0; i < c->count; i++) {
        suspicious[i] = 0;
        for (int o = 0; o < OUTLETS; o++)
            if (group[OUTLETS * i + (size_t)o] >= 0 && weight[OUTLETS * i + (size_t)o] < 0.1)
                suspicious[i] = 1;
    }
    return VTX_OK;
}

vtx_status jacobian_column(const struct curve_fit *c, size_t k, double *column)
{
    double moved[COORDINATES], below[ROWS_MAX];
    const double step = 1e-5 * larger(fabs(c->curve.x[k]), typical_coordinate[k]);
    memcpy(moved, c->curve.x, sizeof moved);
    moved[k] = c->curve.x[k] + step;
    vtx_status status = rows_at(c, moved, column);
    moved[k] = c->curve.x[k] - step;
    if (status == VTX_OK)
        status = rows_at(c, moved, below);
    for (size_t row = 0; row < OUTLETS * c->count + COORDINATES && status == VTX_OK; row++)
        column[row] = (column[row] - below[row]) / (2 * step);
    return status;
}

static int is_fitted(const struct curve_fit *c, size_t k) { return !c->held[k]; }

/* How the fitted coordinates answer a shift of held one k: -(Jf^T Jf)^-1 Jf^T Jk. */
static void answer_to(const struct curve_fit *c, double (*column)[ROWS_MAX], size_t k, double *answer)
{
    double product[FITTED] = { 0 };
    for (size_t f = 0; f < FITTED; f++)
        for (size_t row = 0; row < OUTLETS * c->count && is_fitted(c, f); row++)
            product[f] += column[f][row] * column[k][row];
    for (size_t f = 0; f < COORDINATES; f++) {
        answer[f] = f == k;
        for (size_t g = 0; g < FITTED && is_fitted(c, f); g++)
            answer[f] -= c->fit.covariance[f][g] * product[g];
    }
}

vtx_status admit_held(struct curve_fit *c, const double (*variance)[COORDINATES])
{
    double column[COORDINATES][ROWS_MAX], answer[COORDINATES][COORDINATES];
    for (size_t k = 0; k < COORDINATES; k++) {
        const vtx_status status = jacobian_column(c, k, column[k]);
        if (status != VTX_OK)
            return status;
    }
    for (size_t k = 0; k < COORDINATES; k++)
        if (!is_fitted(c, k))
            answer_to(c, column, k, answer[k]);
    for (size_t k = 0; k < COORDINATES; k++)
        for (size_t l = 0; l < COORDINATES; l++)
            if (!is_fitted(c, k) && !is_fitted(c, l) && variance[k][l] != 0)
                for (size_t f = 0; f < COORDINATES; f++)
                    for (size_t g = 0; g < COORDINATES; g++)
                        c->curve.covariance[f][g] += answer[k][f] * variance[k][l] * answer[l][g];
    return VTX_OK;
}
