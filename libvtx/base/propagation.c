/* Propagation of uncertainty, to first and to second order. */
#include "propagation.h"

/* One column. A step that leaves the domain is replaced by the other side alone. */
static void sensitivity_column(derived_function *f, void *context, size_t inputs, const double *x, double step, size_t i,
                               size_t outputs, const double *y, double *sensitivity)
{
    double moved[PROPAGATED_MAX], above[PROPAGATED_MAX], below[PROPAGATED_MAX];
    memcpy(moved, x, inputs * sizeof(double));
    double high = moved[i] = x[i] + step;
    const int has_above = f(moved, above, context) == VTX_OK;
    double low = moved[i] = x[i] - step;
    const int has_below = f(moved, below, context) == VTX_OK;
    high = has_above ? high : x[i];
    low = has_below ? low : x[i];
    for (size_t o = 0; o < outputs; o++) {
        const double difference = (has_above ? above[o] : y[o]) - (has_below ? below[o] : y[o]);
        sensitivity[o * inputs + i] = high > low ? difference / (high - low) : 0;
    }
}

vtx_status sensitivities(derived_function *f, void *context, size_t inputs, const double *x, const double *uncertainty,
                         size_t outputs, double *y, double *sensitivity)
{
    if (inputs > PROPAGATED_MAX || outputs > PROPAGATED_MAX)
        return VTX_BAD_ARGUMENT;
    const vtx_status status = f(x, y, context);
    if (status != VTX_OK)
        return status;
    for (size_t i = 0; i < inputs; i++)
        if (uncertainty[i] > 0)
            sensitivity_column(f, context, inputs, x, uncertainty[i], i, outputs, y, sensitivity);
        else
            for (size_t o = 0; o < outputs; o++)
                sensitivity[o * inputs + i] = 0;
    return VTX_OK;
}

double propagated_covariance(size_t inputs, const double *a, const double *b, const double *uncertainty, const double *correlation)
{
    double sum = 0;
    for (size_t i = 0; i < inputs; i++)
        for (size_t j = 0; j < inputs; j++) {
            const double r = correlation ? correlation[i * inputs + j] : i == j;
            sum += a[i] * uncertainty[i] * r * uncertainty[j] * b[j];
        }
    return sum;
}

double effective_freedom(size_t contributions, const double *uncertainty, const double *freedom)
{
    double variance = 0, quartic = 0;
    for (size_t i = 0; i < contributions; i++) {
        variance += square(uncertainty[i]);
        quartic += freedom[i] > 0 ? square(square(uncertainty[i])) / freedom[i] : 0;
    }
    return quartic > 0 ? square(variance) / quartic : 0;
}

/* A result along its inputs, in units of their standard uncertainties: every derivative below is already times its powers of u. */
struct stencil {
    derived_function *f;
    void *context;
    size_t inputs;
    const double *x, *uncertainty;
    double centre;
    double one[PROPAGATED_MAX][2]; /* one input a step down and a step up */
};

static vtx_status value_at(const struct stencil *s, size_t i, double steps_i, size_t j, double steps_j, double *y)
{
    double moved[PROPAGATED_MAX], all[PROPAGATED_MAX];
    memcpy(moved, s->x, s->inputs * sizeof(double));
    moved[i] += steps_i * s->uncertainty[i];
    moved[j] += steps_j * s->uncertainty[j];
    const vtx_status status = s->f(moved, all, s->context);
    *y = all[0];
    return status;
}

/* f_i, f_ii and f_iii. */
static vtx_status own_terms(struct stencil *s, size_t i, double *slope, struct second_order *r)
{
    double two[2];
    vtx_status status = value_at(s, i, -1, i, 0, &s->one[i][0]);
    status = status == VTX_OK ? value_at(s, i, 1, i, 0, &s->one[i][1]) : status;
    status = status == VTX_OK ? value_at(s, i, -2, i, 0, &two[0]) : status;
    status = status == VTX_OK ? value_at(s, i, 2, i, 0, &two[1]) : status;
    if (status != VTX_OK)
        return status;
    const double near = s->one[i][1] - s->one[i][0], far = two[1] - two[0];
    const double curvature = s->one[i][1] + s->one[i][0] - 2 * s->centre;
    *slope = (8 * near - far) / 12;
    r->mean_shift += 0.5 * curvature;
    r->first += square(*slope);
    r->extra += 0.5 * square(curvature) + *slope * (0.5 * far - near);
    return VTX_OK;
}

/* f_ij, f_ijj and f_iij, each pair once. */
static vtx_status pair_terms(const struct stencil *s, size_t i, size_t j, const double *slope, struct second_order *r)
{
    double corner[2][2]; /* i down or up, j down or up */
    for (int a = 0; a < 2; a++)
        for (int b = 0; b < 2; b++) {
            const vtx_status status = value_at(s, i, 2 * a - 1, j, 2 * b - 1, &corner[a][b]);
            if (status != VTX_OK)
                return status;
        }
    const double mixed = 0.25 * (corner[1][1] - corner[1][0] - corner[0][1] + corner[0][0]);
    const double curved_in_j = 0.5 * (corner[1][1] + corner[1][0] - corner[0][1] - corner[0][0]) - (s->one[i][1] - s->one[i][0]);
    const double curved_in_i = 0.5 * (corner[1][1] + corner[0][1] - corner[1][0] - corner[0][0]) - (s->one[j][1] - s->one[j][0]);
    r->extra += square(mixed) + slope[i] * curved_in_j + slope[j] * curved_in_i;
    return VTX_OK;
}

vtx_status second_order_variance(derived_function *f, void *context, size_t inputs, const double *x, const double *uncertainty,
                                 struct second_order *result)
{
    struct stencil s = { .f = f, .context = context, .inputs = inputs, .x = x, .uncertainty = uncertainty };
    double slope[PROPAGATED_MAX], centre[PROPAGATED_MAX];
    if (inputs > PROPAGATED_MAX)
        return VTX_BAD_ARGUMENT;
    vtx_status status = f(x, centre, context);
    if (status != VTX_OK)
        return status;
    *result = (struct second_order){ .value = s.centre = centre[0] };
    for (size_t i = 0; i < inputs && status == VTX_OK; i++)
        status = uncertainty[i] > 0 ? own_terms(&s, i, &slope[i], result) : VTX_OK;
    for (size_t i = 0; i < inputs; i++)
        for (size_t j = i + 1; j < inputs && status == VTX_OK; j++)
            if (uncertainty[i] > 0 && uncertainty[j] > 0)
                status = pair_terms(&s, i, j, slope, result);
    return status;
}
