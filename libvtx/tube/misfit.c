/* Readings that the curve does not explain: scatter, scale, departures, distances. */
#include "misfit.h"

#include "../base/distribution.h"
#include "../base/root.h"

enum { RESCALINGS_MAX = 12 };

/* Misfit is believed when chi-square of a direction is this unlikely: one good calibration in twenty is doubted. */
static const double misfit_probability = 0.025, scatter_max = 3;

/* Chi-square along the efficiency less its freedom, at a scatter; falls as the scatter rises. */
static double excess_chi_square(double scatter, void *context)
{
    struct curve_fit *c = context;
    c->curve.scatter = scatter;
    return fit_curve(c) == VTX_OK ? c->part[0] - c->part_freedom[0] : quiet_nan();
}

static int is_misfit(double chi_square, double freedom)
{
    return freedom > 0.5 && chi_square > freedom && chi_square_exceedance(chi_square, freedom) < misfit_probability;
}

/* Mandel and Paule's condition for the scatter, bracketed from below: at a scatter far too wide the weights hardly settle. */
static vtx_status find_scatter(struct curve_fit *c)
{
    double low = 0, high = 0.02, excess = excess_chi_square(low, c);
    if (is_finite(excess) && excess <= 0) /* the scale has explained it meanwhile */
        return VTX_OK;
    for (excess = excess_chi_square(high, c); is_finite(excess) && excess > 0 && high < scatter_max; excess = excess_chi_square(high, c)) {
        low = high;
        high *= 2;
    }
    if (!is_finite(excess))
        return VTX_NOT_CONVERGED;
    double scatter;
    /* Where weights wander the sign may be lost between two calls: the wide end then stands. */
    if (!(excess < 0) || find_root(excess_chi_square, c, low, high, 1e-3 * high, &scatter) != VTX_OK)
        scatter = high;
    c->curve.scatter = scatter;
    return fit_curve(c);
}

/* Birge's ratio, repeated because the fit moves with it. */
static vtx_status find_scale(struct curve_fit *c)
{
    for (int i = 0; i < RESCALINGS_MAX; i++) {
        const double step = sqrt(c->part[1] / c->part_freedom[1]);
        c->curve.energy_scale = larger(c->curve.energy_scale * step, 1);
        const vtx_status status = fit_curve(c);
        if (status != VTX_OK || fabs(step - 1) < 1e-4 || c->curve.energy_scale == 1)
            return status;
    }
    return VTX_OK;
}

vtx_status widen_for_misfit(struct curve_fit *c)
{
    const double chi_square = c->chi_square, freedom = c->freedom;
    const int off_curve = is_misfit(c->part[0], c->part_freedom[0]), off_balance = is_misfit(c->part[1], c->part_freedom[1]);
    vtx_status status = off_balance ? find_scale(c) : VTX_OK;
    if (off_curve && status == VTX_OK)
        status = find_scatter(c);
    c->chi_square = chi_square;
    c->freedom = freedom;
    return status;
}

/* (1 - H) e' = e for the rows of one reading; 0 when the reading alone decides its own value. */
static int solve_left_out(const double (*h)[OUTLETS], const double *row, double *left_out)
{
    const double a = 1 - h[0][0], b = -h[0][1], d = 1 - h[1][1], determinant = a * d - b * b;
    if (!(determinant > 1e-9))
        return 0;
    left_out[0] = (d * row[0] - b * row[1]) / determinant;
    left_out[1] = (a * row[1] - b * row[0]) / determinant;
    return 1;
}

static vtx_status distance_of_used(const struct curve_fit *c, size_t i, double *squared, double *error)
{
    const struct curve_reading *r = &c->reading[i];
    const size_t row = OUTLETS * i;
    double h[OUTLETS][OUTLETS], left_out[OUTLETS];
    for (size_t a = 0; a < OUTLETS; a++)
        for (size_t b = 0; b < OUTLETS; b++)
            h[a][b] = hat_element(&c->fit, row + a, row + b);
    if (!solve_left_out((const double (*)[OUTLETS])h, &c->fit.residual[row], left_out))
        return VTX_NO_SOLUTION;
    *squared = c->fit.residual[row] * left_out[0] + c->fit.residual[row + 1] * left_out[1];
    unwhiten(r, left_out, error);
    return VTX_OK;
}

/* A reading that is not believed against the fitted curve, whose own uncertainty counts. */
static vtx_status distance_of_unused(const struct curve_fit *c, size_t i, double *squared, double *error)
{
    struct curve_reading r = c->reading[i];
    double y[OUTLETS], gradient[OUTLETS][COORDINATES];
    trust_again(&r);
    vtx_status status = weigh_reading(&c->curve, c->curve.x, &r);
    if (status == VTX_OK)
        status = curve_outlets(&c->curve, c->curve.x, &r.state, &r.expansion, y);
    if (status == VTX_OK)
        status = curve_gradient(&c->curve, &r, gradient);
    if (status != VTX_OK)
        return status;
    for (int a = 0; a < OUTLETS; a++)
        for (int b = 0; b < OUTLETS; b++)
            for (int k = 0; k < COORDINATES; k++)
                for (int l = 0; l < COORDINATES; l++)
                    r.covariance[a][b] += gradient[a][k] * c->curve.covariance[k][l] * gradient[b][l];
    error[COLD] = r.state.y[COLD] - y[COLD];
    error[HOT] = r.state.y[HOT] - y[HOT];
    *squared = squared_length(&r, error);
    return VTX_OK;
}

vtx_status distance_from_others(const struct curve_fit *c, size_t i, double *squared, int *dimension, double *error)
{
    const struct reading_state *s = &c->reading[i].state;
    *dimension = larger(outlet_counts(s, COLD) + outlet_counts(s, HOT) - s->unknown_inputs, 1) > 1 ? 2 : 1;
    return c->reading[i].used && !c->reading[i].is_doubted ? distance_of_used(c, i, squared, error) : distance_of_unused(c, i, squared, error);
}

double distance_probability(const struct curve_fit *c, double squared, int dimension, int among_used)
{
    const double rest = c->chi_square - (among_used ? squared : 0), freedom = c->freedom - (among_used ? dimension : 0);
    const double known = chi_square_exceedance(squared, dimension);
    if (!(freedom >= 0.5 && rest > freedom))
        return known;
    /* A scale found from the readings: Student's law for one dimension, its closed-form kin (Fisher's F) for two. */
    const double scaled = squared * freedom / rest;
    const double found = dimension == 1 ? 2 * student_probability(-sqrt(scaled), freedom) : pow(1 + scaled / freedom, -0.5 * freedom);
    return larger(known, found);
}
