/* Levenberg-Marquardt on GSL's QR and the caller's storage; GSL's error handler is never reached. */
#include <gsl/gsl_linalg.h>

#include "least_squares.h"

/* Defaults, and what counts as lost in rounding. */
static const double TOLERANCE = 1e-8, OFFSET_AT_ROUNDING = 1e-5, STEP_TOLERANCE = 1e-12;
/* A pivot of the scaled Jacobian below this share of the first: its parameter cannot be told from the others. */
static const double RANK_TOLERANCE = 1e-9;
/* A column that shrank below this share of the largest it ever was: its parameter ran away. */
static const double FLATNESS = 1e-8;
enum { EVALUATIONS_MAX = 400, DAMPING_STEPS_MAX = 12, SWEEPS_MAX = 30 };

/* The linear problem at one point, in the order of the pivots. */
struct linear {
    size_t free, column[PARAMETERS_MAX]; /* column k is parameter column[k] */
    size_t rank;                         /* pivots that rounding leaves standing */
    size_t pivot[PARAMETERS_MAX];        /* row and column k of r belong to column pivot[k] */
    double r[PARAMETERS_MAX][PARAMETERS_MAX];
    double qtr[PARAMETERS_MAX];          /* Q^T residual */
    double norm[PARAMETERS_MAX];         /* of each column */
};

struct search {
    struct least_squares *fit;
    double *trial, *scratch, *jacobian; /* rows, rows, rows x free */
    double scale[PARAMETERS_MAX];       /* largest column norm seen */
    double radius, damping, sum;
    struct linear at;
};

static double norm_of(const double *x, size_t n)
{
    double sum = 0;
    for (size_t i = 0; i < n; i++)
        sum += x[i] * x[i];
    return sqrt(sum);
}

/* Weighted residuals and their sum of squares; 0 when the model has no finite value here. */
static int evaluate(struct least_squares *fit, const double *parameter, double *residual, double *sum)
{
    fit->evaluations++;
    if (fit->residuals(parameter, residual, fit->context) != VTX_OK)
        return 0;
    *sum = 0;
    for (size_t i = 0; i < fit->rows; i++) {
        if (!is_finite(residual[i]) || fabs(residual[i]) > 1e150)
            return 0;
        if (fit->weight)
            residual[i] *= sqrt(fit->weight[i]);
        *sum += residual[i] * residual[i];
    }
    return 1;
}

/* A parameter's own size, but not less than what its user calls typical. */
static double size_of(const struct least_squares *fit, size_t p)
{
    return larger(fabs(fit->parameter[p]), fit->typical ? fit->typical[p] : 0);
}

/* Central differences of one column: the error is the cube of a step of 6e-6, about 1e-10 of the derivative. */
static int differentiate(struct search *s, size_t k)
{
    struct least_squares *fit = s->fit;
    const size_t p = s->at.column[k];
    double x[PARAMETERS_MAX], sum;
    memcpy(x, fit->parameter, sizeof x);
    const double size = size_of(fit, p);
    const double step = 6e-6 * (size > 0 ? size : 1);
    x[p] = fit->parameter[p] + step;
    const double above = x[p];
    if (!evaluate(fit, x, s->trial, &sum))
        return 0;
    x[p] = fit->parameter[p] - step;
    if (!evaluate(fit, x, s->scratch, &sum))
        return 0;
    for (size_t i = 0; i < fit->rows; i++)
        s->jacobian[i * s->at.free + k] = (s->trial[i] - s->scratch[i]) / (above - x[p]);
    return 1;
}

/* The caller's Jacobian is given for all parameters; the free columns are packed in place, front to back. */
static int pack_given(struct search *s)
{
    struct least_squares *fit = s->fit;
    if (fit->jacobian(fit->parameter, s->jacobian, fit->context) != VTX_OK)
        return 0;
    for (size_t i = 0; i < fit->rows; i++)
        for (size_t k = 0; k < s->at.free; k++) {
            const double d = s->jacobian[i * fit->parameters + s->at.column[k]];
            if (!is_finite(d))
                return 0;
            s->jacobian[i * s->at.free + k] = fit->weight ? d * sqrt(fit->weight[i]) : d;
        }
    return 1;
}

static int jacobian_here(struct search *s)
{
    if (s->fit->jacobian)
        return pack_given(s);
    for (size_t k = 0; k < s->at.free; k++)
        if (!differentiate(s, k))
            return 0;
    return 1;
}

static int stands(double (*r)[PARAMETERS_MAX], size_t k) { return fabs(r[k][k]) > RANK_TOLERANCE * fabs(r[0][0]); }

/* QR with column pivoting of the columns over their scale, so that the pivots compare like with like. */
static int factorise(struct search *s)
{
    const size_t rows = s->fit->rows, free = s->at.free;
    double tau[PARAMETERS_MAX], work[PARAMETERS_MAX];
    int sign;
    for (size_t k = 0; k < free; k++) {
        double sum = 0;
        for (size_t i = 0; i < rows; i++)
            sum += square(s->jacobian[i * free + k]);
        s->at.norm[k] = sqrt(sum);
        s->scale[k] = larger(s->scale[k], s->at.norm[k]);
    }
    for (size_t i = 0; i < rows; i++)
        for (size_t k = 0; k < free; k++)
            s->fit->leverage_root[i * free + k] = s->scale[k] > 0 ? s->jacobian[i * free + k] / s->scale[k] : 0;
    memcpy(s->trial, s->fit->residual, rows * sizeof(double));
    gsl_matrix_view qr = gsl_matrix_view_array(s->fit->leverage_root, rows, free);
    gsl_vector_view t = gsl_vector_view_array(tau, free), w = gsl_vector_view_array(work, free);
    gsl_vector_view residual = gsl_vector_view_array(s->trial, rows);
    gsl_permutation order = { free, s->at.pivot };
    if (gsl_linalg_QRPT_decomp(&qr.matrix, &t.vector, &order, &sign, &w.vector) != GSL_SUCCESS
        || gsl_linalg_QR_QTvec(&qr.matrix, &t.vector, &residual.vector) != GSL_SUCCESS)
        return 0;
    memset(s->at.r, 0, sizeof s->at.r);
    for (size_t k = 0; k < free; k++) {
        s->at.qtr[k] = s->trial[k];
        for (size_t l = k; l < free; l++)
            s->at.r[k][l] = s->fit->leverage_root[k * free + l];
    }
    for (s->at.rank = free; s->at.rank > 0 && !stands(s->at.r, s->at.rank - 1);)
        s->at.rank--;
    return 1;
}

/* Back substitution, pivots lost in rounding give 0. */
static void solve_upper(size_t n, double (*r)[PARAMETERS_MAX], const double *b, double *x)
{
    for (size_t k = n; k-- > 0;) {
        double sum = b[k];
        for (size_t l = k + 1; l < n; l++)
            sum -= r[k][l] * x[l];
        x[k] = stands(r, k) ? sum / r[k][k] : 0;
    }
}

static void solve_upper_transposed(size_t n, double (*r)[PARAMETERS_MAX], const double *b, double *x)
{
    for (size_t k = 0; k < n; k++) {
        double sum = b[k];
        for (size_t l = 0; l < k; l++)
            sum -= r[l][k] * x[l];
        x[k] = stands(r, k) ? sum / r[k][k] : 0;
    }
}

/* The scaled step that minimises |R x + qtr|^2 + damping |x|^2, and the triangle of that problem. */
static void damped_step(const struct linear *at, double damping, double (*triangle)[PARAMETERS_MAX], double *x)
{
    const size_t n = at->free;
    double a[2 * PARAMETERS_MAX * PARAMETERS_MAX], b[2 * PARAMETERS_MAX] = { 0 }, tau[PARAMETERS_MAX];
    memset(a, 0, sizeof a);
    for (size_t k = 0; k < n; k++) {
        b[k] = -at->qtr[k];
        a[(n + k) * n + k] = sqrt(damping);
        for (size_t l = k; l < n; l++)
            a[k * n + l] = at->r[k][l];
    }
    gsl_matrix_view m = gsl_matrix_view_array(a, 2 * n, n);
    gsl_vector_view t = gsl_vector_view_array(tau, n), v = gsl_vector_view_array(b, 2 * n);
    gsl_linalg_QR_decomp(&m.matrix, &t.vector);
    gsl_linalg_QR_QTvec(&m.matrix, &t.vector, &v.vector);
    for (size_t k = 0; k < n; k++)
        for (size_t l = 0; l < n; l++)
            triangle[k][l] = l < k ? 0 : a[k * n + l];
    solve_upper(n, triangle, b, x);
}

/* The step inside the trust region: Gauss-Newton's if it fits, else damped so that its length is the radius to 10 % (More 1978, section 5). */
static double trusted_step(struct search *s, double *x)
{
    const size_t n = s->at.free;
    double triangle[PARAMETERS_MAX][PARAMETERS_MAX], negative[PARAMETERS_MAX], w[PARAMETERS_MAX], gradient[PARAMETERS_MAX] = { 0 };
    for (size_t k = 0; k < n; k++)
        negative[k] = -s->at.qtr[k];
    solve_upper(n, s->at.r, negative, x);
    double length = norm_of(x, n);
    if (length <= 1.1 * s->radius) {
        s->damping = 0;
        return length;
    }
    for (size_t l = 0; l < n; l++)
        for (size_t k = 0; k <= l; k++)
            gradient[l] += s->at.r[k][l] * s->at.qtr[k];
    double low = 0, high = norm_of(gradient, n) / s->radius;
    s->damping = s->damping > 0 && s->damping < high ? s->damping : 1e-3 * high;
    for (int i = 0; i < DAMPING_STEPS_MAX; i++) {
        damped_step(&s->at, s->damping, triangle, x);
        length = norm_of(x, n);
        const double excess = length - s->radius;
        if (fabs(excess) <= 0.1 * s->radius)
            break;
        if (excess > 0)
            low = s->damping;
        else
            high = s->damping;
        solve_upper_transposed(n, triangle, x, w);
        const double slope = square(norm_of(w, n)) / square(length);
        const double next = s->damping + excess / s->radius / slope;
        s->damping = next > low && next < high ? next : low > 0 ? sqrt(low * high) : 0.1 * high;
    }
    return length;
}

/* Decrease of the sum of squares that the linear problem promises for scaled step x. */
static double promised(const struct linear *at, const double *x)
{
    double decrease = 0;
    for (size_t k = 0; k < at->free; k++) {
        double image = 0;
        for (size_t l = k; l < at->free; l++)
            image += at->r[k][l] * x[l];
        decrease -= image * (image + 2 * at->qtr[k]);
    }
    return decrease;
}

/* How far, in standard deviations of the parameters, the minimum of the linear problem is away. */
static double offset_of(const struct search *s)
{
    const size_t rows = s->fit->rows, rank = s->at.rank;
    const double inside = square(norm_of(s->at.qtr, rank));
    if (rank == 0 || !(s->sum > 0))
        return 0;
    if (rows <= rank)
        return sqrt(inside / s->sum);
    const double outside = larger(s->sum - inside, DBL_EPSILON * s->sum);
    return sqrt(inside / (double)rank / (outside / (double)(rows - rank)));
}

/* Takes the step if it lowers the sum of squares, and resizes the trust region by how well the promise was kept. */
static int try_step(struct search *s, const double *x, double length, double promise)
{
    struct least_squares *fit = s->fit;
    double there[PARAMETERS_MAX], sum = 0;
    memcpy(there, fit->parameter, sizeof there);
    for (size_t k = 0; k < s->at.free; k++) {
        const size_t column = s->at.pivot[k];
        there[s->at.column[column]] += s->scale[column] > 0 ? x[k] / s->scale[column] : 0;
    }
    const double gain = evaluate(fit, there, s->trial, &sum) ? (s->sum - sum) / promise : -1;
    if (gain < 0.25)
        s->radius = 0.25 * smaller(s->radius, length);
    else if (gain > 0.75 || s->damping == 0)
        s->radius = larger(s->radius, 2 * length);
    if (!(gain > 1e-4))
        return 0;
    memcpy(fit->parameter, there, sizeof there);
    memcpy(fit->residual, s->trial, fit->rows * sizeof(double));
    s->sum = sum;
    return 1;
}

static int ran_away(const struct search *s)
{
    for (size_t k = 0; k < s->at.free; k++)
        if (s->at.norm[k] < FLATNESS * s->scale[k])
            return 1;
    return 0;
}

/* Steps from one point until one is taken; says whether the search has ended, and why. */
static int32_t advance(struct search *s)
{
    struct least_squares *fit = s->fit;
    double x[PARAMETERS_MAX] = { 0 }, reach = 0;
    fit->offset = offset_of(s);
    if (fit->offset <= fit->tolerance || s->at.free == 0)
        return ran_away(s) ? STOPPED_BY_FLATNESS : STOPPED_BY_OFFSET;
    for (size_t k = 0; k < s->at.free; k++)
        reach += square(s->scale[k] * size_of(fit, s->at.column[k]));
    reach = sqrt(reach);
    /* The first step may at most double the start: wider, it jumps into regions that the data do not see. */
    if (s->radius == 0)
        s->radius = reach > 0 ? reach : 1;
    for (;;) {
        const double length = trusted_step(s, x);
        const double promise = promised(&s->at, x);
        if (s->damping == 0 && length <= STEP_TOLERANCE * reach)
            return ran_away(s) ? STOPPED_BY_FLATNESS : STOPPED_BY_STEP;
        if (!(promise > 4 * DBL_EPSILON * s->sum) || s->radius <= 1e-3 * STEP_TOLERANCE * reach)
            return fit->offset > OFFSET_AT_ROUNDING ? STOPPED_BY_FAILURE : STOPPED_BY_ROUNDING;
        if (fit->evaluations >= fit->evaluations_max)
            return STOPPED_BY_WORK;
        if (try_step(s, x, length, promise))
            return 0;
    }
}

/* Names the parameters whose pivots are lost, and turns the Jacobian into rows of the hat matrix' root. */
static void drop_lost(struct search *s)
{
    struct least_squares *fit = s->fit;
    const size_t all = s->at.free, rank = s->at.rank;
    for (size_t k = rank; k < all; k++)
        fit->frozen[s->at.column[s->at.pivot[k]]] = 1;
    fit->free = rank;
    for (size_t i = 0; i < fit->rows; i++) {
        double row[PARAMETERS_MAX];
        for (size_t k = 0; k < rank; k++) {
            const size_t column = s->at.pivot[k];
            row[k] = s->jacobian[i * all + column] / s->scale[column];
        }
        solve_upper_transposed(rank, s->at.r, row, &fit->leverage_root[i * rank]);
    }
}

/* (J^T J)^-1 from the triangle. */
static void fill_covariance(struct search *s)
{
    struct least_squares *fit = s->fit;
    const size_t n = fit->free;
    double inverse[PARAMETERS_MAX][PARAMETERS_MAX];
    for (size_t k = 0; k < n; k++) {
        double unit[PARAMETERS_MAX] = { 0 };
        unit[k] = 1;
        solve_upper_transposed(n, s->at.r, unit, inverse[k]);
    }
    /* inverse[k] is row k of R^-1. */
    for (size_t k = 0; k < n; k++)
        for (size_t l = 0; l < n; l++) {
            const size_t a = s->at.pivot[k], b = s->at.pivot[l];
            double sum = 0;
            for (size_t i = 0; i < n; i++)
                sum += inverse[k][i] * inverse[l][i];
            fit->covariance[s->at.column[a]][s->at.column[b]] = sum / (s->scale[a] * s->scale[b]);
        }
}

/* Makes two columns of a orthogonal by one rotation; 0 when they are already. */
static int rotate(size_t n, double (*a)[PARAMETERS_MAX], size_t j, size_t k)
{
    double jj = 0, kk = 0, jk = 0;
    for (size_t i = 0; i < n; i++) {
        jj += square(a[i][j]);
        kk += square(a[i][k]);
        jk += a[i][j] * a[i][k];
    }
    if (fabs(jk) <= 4 * DBL_EPSILON * sqrt(jj) * sqrt(kk))
        return 0;
    const double zeta = (kk - jj) / (2 * jk), t = (zeta < 0 ? -1 : 1) / (fabs(zeta) + hypot(1, zeta));
    const double cosine = 1 / hypot(1, t), sine = cosine * t;
    for (size_t i = 0; i < n; i++) {
        const double x = a[i][j], y = a[i][k];
        a[i][j] = cosine * x - sine * y;
        a[i][k] = sine * x + cosine * y;
    }
    return 1;
}

/* Largest over smallest singular value, by one-sided rotations (Hestenes 1958). GSL's own version calls the error handler where
 * rounding keeps it from its tolerance. */
static double condition_of(const struct linear *at, const double *scale)
{
    const size_t n = at->free;
    double a[PARAMETERS_MAX][PARAMETERS_MAX], largest = 0, smallest = 0;
    for (size_t l = 0; l < n; l++) {
        const size_t column = at->pivot[l];
        for (size_t k = 0; k < n; k++)
            a[k][l] = at->norm[column] > 0 ? at->r[k][l] * (scale[column] / at->norm[column]) : 0;
    }
    for (int sweep = 0, moved = 1; sweep < SWEEPS_MAX && moved; sweep++) {
        moved = 0;
        for (size_t j = 0; j + 1 < n; j++)
            for (size_t k = j + 1; k < n; k++)
                moved |= rotate(n, a, j, k);
    }
    for (size_t l = 0; l < n; l++) {
        double sum = 0;
        for (size_t k = 0; k < n; k++)
            sum += square(a[k][l]);
        largest = larger(largest, sqrt(sum));
        smallest = l == 0 ? largest : smaller(smallest, sqrt(sum));
    }
    return n == 0 ? 1 : smallest > DBL_EPSILON * largest ? largest / smallest : 1 / DBL_EPSILON;
}

static vtx_status prepare(struct search *s, struct least_squares *fit)
{
    const size_t rows = fit->rows;
    memset(s, 0, sizeof *s);
    s->fit = fit;
    if (fit->parameters == 0 || fit->parameters > PARAMETERS_MAX)
        return VTX_BAD_ARGUMENT;
    for (size_t p = 0; p < fit->parameters; p++) {
        if (!is_finite(fit->parameter[p]))
            return VTX_BAD_ARGUMENT;
        if (!fit->held || !fit->held[p])
            s->at.column[s->at.free++] = p;
    }
    if (rows == 0 || rows < s->at.free)
        return VTX_BAD_ARGUMENT;
    if (fit->workspace_length < least_squares_workspace(rows, fit->parameters))
        return VTX_NO_MEMORY;
    fit->residual = fit->workspace;
    s->trial = fit->residual + rows;
    s->scratch = s->trial + rows;
    s->jacobian = s->scratch + rows;
    fit->leverage_root = s->jacobian + rows * fit->parameters;
    fit->tolerance = fit->tolerance > 0 ? fit->tolerance : TOLERANCE;
    fit->evaluations_max = fit->evaluations_max > 0 ? fit->evaluations_max : EVALUATIONS_MAX;
    memset(fit->covariance, 0, sizeof fit->covariance);
    memset(fit->frozen, 0, sizeof fit->frozen);
    fit->evaluations = fit->stopped_by = 0;
    fit->free = 0;
    return VTX_OK;
}

vtx_status fit_least_squares(struct least_squares *fit)
{
    struct search s;
    const vtx_status status = prepare(&s, fit);
    if (status != VTX_OK)
        return status;
    if (!evaluate(fit, fit->parameter, fit->residual, &s.sum))
        fit->stopped_by = STOPPED_BY_FAILURE;
    while (!fit->stopped_by)
        fit->stopped_by = !jacobian_here(&s) || (s.at.free > 0 && !factorise(&s)) ? STOPPED_BY_FAILURE : advance(&s);
    fit->sum_of_squares = s.sum;
    if (fit->stopped_by >= STOPPED_BY_WORK)
        return VTX_NOT_CONVERGED;
    fit->condition = condition_of(&s.at, s.scale);
    drop_lost(&s);
    fill_covariance(&s);
    return VTX_OK;
}

vtx_status fit_least_squares_to_corner(struct least_squares *fit, double slope)
{
    const double parameters = (double)fit->parameters;
    const double freedom = fit->rows > fit->parameters ? (double)(fit->rows - fit->parameters) / parameters : 1;
    const vtx_status status = fit_least_squares(fit);
    const double most = fit->stopped_by == STOPPED_BY_FAILURE ? slope : fit->stopped_by == STOPPED_BY_WORK ? 0.2 * slope : 0;
    if (status != VTX_NOT_CONVERGED || !(fit->offset * sqrt(fit->sum_of_squares / freedom) < most))
        return status;
    fit->tolerance = 2 * fit->offset;
    return fit_least_squares(fit);
}

double hat_element(const struct least_squares *fit, size_t i, size_t j)
{
    double sum = 0;
    for (size_t k = 0; k < fit->free; k++)
        sum += fit->leverage_root[i * fit->free + k] * fit->leverage_root[j * fit->free + k];
    return sum;
}

void project_out(const struct least_squares *fit, double *column)
{
    for (size_t k = 0; k < fit->free; k++) {
        double share = 0;
        for (size_t i = 0; i < fit->rows; i++)
            share += fit->leverage_root[i * fit->free + k] * column[i];
        for (size_t i = 0; i < fit->rows; i++)
            column[i] -= share * fit->leverage_root[i * fit->free + k];
    }
}

double derived_deviation(const struct least_squares *fit, const double *gradient)
{
    double sum = 0;
    for (size_t k = 0; k < fit->parameters; k++)
        for (size_t l = 0; l < fit->parameters; l++)
            sum += gradient[k] * fit->covariance[k][l] * gradient[l];
    return sqrt(larger(sum, 0));
}

double akaike_corrected(double sum_of_squares, size_t rows, size_t parameters)
{
    const double n = (double)rows, k = (double)parameters + 1;
    if (n - k - 1 <= 0 || !(sum_of_squares > 0))
        return quiet_nan();
    return n * log(sum_of_squares / n) + 2 * k + 2 * k * (k + 1) / (n - k - 1);
}
