/* First-order propagation of uncertainty. */
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
