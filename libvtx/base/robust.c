/* Huber, then Tukey, by reweighting. */
#include "robust.h"

enum { REWEIGHTINGS_MAX = 60 };
static const double WEIGHT_TOLERANCE = 1e-6;

typedef double weight_function(double deviate);

/* The k-th smallest (Hoare 1961); reorders x. qsort may use the heap. */
static double kth_smallest(double *x, size_t n, size_t k)
{
    size_t low = 0, high = n - 1;
    while (low < high) {
        const double pivot = x[low + (high - low) / 2];
        size_t i = low, j = high;
        for (;;) {
            while (x[i] < pivot)
                i++;
            while (x[j] > pivot)
                j--;
            if (i >= j)
                break;
            const double swap = x[i];
            x[i++] = x[j];
            x[j--] = swap;
        }
        if (k <= j)
            high = j;
        else
            low = j + 1;
    }
    return x[k];
}

static vtx_status raw_residuals(struct robust_fit *r)
{
    return r->fit->residuals(r->fit->parameter, r->raw, r->fit->context) == VTX_OK ? VTX_OK : VTX_NOT_CONVERGED;
}

static int counts(const struct robust_fit *r, size_t row) { return !r->group || r->group[row] >= 0; }

/* From the median of the absolute residuals, widened for the freedom that the parameters took. */
static double robust_scale(struct robust_fit *r)
{
    double *size = r->fit->residual;
    size_t n = 0;
    for (size_t i = 0; i < r->fit->rows; i++)
        if (counts(r, i))
            size[n++] = fabs(r->raw[i]);
    if (n == 0)
        return larger(r->scale_floor, 1);
    const double upper = kth_smallest(size, n, n / 2);
    const double median = n % 2 ? upper : 0.5 * (upper + kth_smallest(size, n, n / 2 - 1));
    const double left = n > r->fit->free ? (double)(n - r->fit->free) : 1;
    return larger(r->scale_floor, MEDIAN_TO_DEVIATION * median * sqrt((double)n / left));
}

/* Deviate of the reading that starts at row: its length, less what its further rows are expected to contribute. */
static double group_deviate(const struct robust_fit *r, size_t row, size_t *next)
{
    double sum = 0;
    size_t i = row;
    do
        sum += square(r->raw[i] / r->scale);
    while (++i < r->fit->rows && r->group && r->group[row] >= 0 && r->group[i] == r->group[row]);
    *next = i;
    return sqrt(larger(sum - (double)(i - row - 1), 0));
}

/* New weights from the raw residuals; returns the largest change. */
static double reweight(struct robust_fit *r, weight_function *weight)
{
    double change = 0;
    for (size_t i = 0, next = 0; i < r->fit->rows; i = next) {
        const double deviate = group_deviate(r, i, &next);
        const double w = counts(r, i) ? weight(deviate) : 1;
        for (size_t k = i; k < next; k++) {
            change = larger(change, fabs(w - r->weight[k]));
            r->weight[k] = w;
        }
    }
    return change;
}

/* Scale is followed while the loss is convex, and held once gross errors are being forgotten. */
static vtx_status settle(struct robust_fit *r, weight_function *weight, int follow_scale)
{
    for (int i = 0; i < REWEIGHTINGS_MAX; i++) {
        if (follow_scale)
            r->scale = robust_scale(r);
        if (!(r->scale > 0) || reweight(r, weight) < WEIGHT_TOLERANCE)
            return VTX_OK;
        vtx_status status = fit_least_squares(r->fit);
        status = status == VTX_OK ? raw_residuals(r) : status;
        if (status != VTX_OK)
            return status;
    }
    return VTX_NOT_CONVERGED;
}

/* Huber 1981, section 7.6: s^2 E[psi^2] / E[psi']^2 against (J^T J)^-1; the fit's covariance carries the mean weight. */
static double variance_factor(const struct robust_fit *r)
{
    double weights = 0, psi_squared = 0, psi_slope = 0, n = 0;
    for (size_t i = 0, next = 0; i < r->fit->rows; i = next) {
        const double deviate = group_deviate(r, i, &next), w = r->weight[i];
        if (!counts(r, i))
            continue;
        const double u = square(deviate / TUKEY_TUNING);
        weights += w;
        psi_squared += square(w * deviate);
        psi_slope += u < 1 ? (1 - u) * (1 - 5 * u) : 0;
        n += 1;
    }
    const double left = larger(n - (double)r->fit->free, 1);
    return psi_slope > 0 ? square(r->scale) * (psi_squared / left) * n * weights / square(psi_slope) : quiet_nan();
}

vtx_status fit_robustly(struct robust_fit *r)
{
    vtx_status status;
    for (size_t i = 0; i < r->fit->rows; i++)
        r->weight[i] = 1;
    r->fit->weight = r->weight;
    r->scale = r->variance_factor = quiet_nan();
    status = fit_least_squares(r->fit);
    status = status == VTX_OK ? raw_residuals(r) : status;
    status = status == VTX_OK ? settle(r, huber_weight, 1) : status;
    status = status == VTX_OK ? settle(r, tukey_weight, 0) : status;
    if (status == VTX_OK)
        r->variance_factor = variance_factor(r);
    return status;
}
