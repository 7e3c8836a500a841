/* An uncertainty budget by hand (JCGM 100:2008, the GUM). */
#include <vtx/budget.h>

#include "distribution.h"
#include "propagation.h"

enum { READINGS_MAX = 100000, INPUTS_MAX = 1000 };
static const double freedom_max = 1e15;
/* Up to here student_quantile keeps its accuracy. */
static const double student_max = 1e5;

static vtx_status check_readings(const double *readings, size_t count)
{
    vtx_status status = require(readings && count >= 2);
    if (status != VTX_OK || count > READINGS_MAX)
        return worse(status, VTX_OUT_OF_RANGE);
    for (size_t i = 0; i < count; i++)
        status = worse(status, check_range(readings[i], -1e15, 1e15));
    return status;
}

/* Either sign; small ones are refused so that no square of a product is lost below the smallest double. */
static vtx_status check_factor(double x)
{
    return x == 0 ? VTX_OK : check_positive(fabs(x), 1e-30, 1e30);
}

static vtx_status check_factors(const double *x, size_t count)
{
    vtx_status status = require(x && count >= 1);
    if (status != VTX_OK || count > INPUTS_MAX)
        return worse(status, VTX_OUT_OF_RANGE);
    for (size_t i = 0; i < count; i++)
        status = worse(status, check_factor(x[i]));
    return status;
}

static vtx_status check_freedom(double freedom) { return freedom == 0 ? VTX_OK : check_positive(freedom, 1, freedom_max); }

static int is_correlation(double r) { return is_finite(r) && fabs(r) <= 1; }

static vtx_status check_inputs(const double *uncertainty, const double *correlation, size_t count)
{
    vtx_status status = check_factors(uncertainty, count);
    if (status != VTX_OK)
        return status;
    for (size_t i = 0; i < count; i++)
        status = worse(status, require(uncertainty[i] >= 0));
    for (size_t i = 0; correlation && i < count; i++) {
        status = worse(status, require(correlation[i * count + i] == 1));
        for (size_t j = 0; j < i; j++)
            status = worse(status, require(is_correlation(correlation[i * count + j]) && is_correlation(correlation[j * count + i])
                                           && correlation[i * count + j] == correlation[j * count + i]));
    }
    return status;
}

static double mean_of(const double *x, size_t count)
{
    double sum = 0;
    for (size_t i = 0; i < count; i++)
        sum += x[i];
    return sum / (double)count;
}

static double largest_departure(const double *x, size_t count, double mean)
{
    double largest = 0;
    for (size_t i = 0; i < count; i++)
        largest = larger(largest, fabs(x[i] - mean));
    return largest;
}

/* Mean product of departures, in units of scale and other_scale: small readings keep their squares. */
static double scaled_covariance(const double *x, const double *y, size_t count, double scale, double other_scale)
{
    const double x_mean = mean_of(x, count), y_mean = mean_of(y, count);
    double sum = 0;
    for (size_t i = 0; i < count; i++)
        sum += (x[i] - x_mean) / scale * ((y[i] - y_mean) / other_scale);
    return sum / (double)(count - 1);
}

vtx_status vtx_type_a_uncertainty(const double *readings, size_t count, double *mean, double *uncertainty, double *standard_deviation)
{
    const vtx_status status = worse(require(mean != NULL), check_readings(readings, count));
    if (status != VTX_OK) {
        poison(uncertainty, status);
        poison(standard_deviation, status);
        return poison(mean, status);
    }
    const double average = mean_of(readings, count), scale = largest_departure(readings, count, average);
    const double deviation = scale > 0 ? scale * sqrt(scaled_covariance(readings, readings, count, scale, scale)) : 0;
    *mean = average;
    if (uncertainty)
        *uncertainty = deviation / sqrt((double)count);
    if (standard_deviation)
        *standard_deviation = deviation;
    return VTX_OK;
}

vtx_status vtx_correlation_of_means(const double *first, const double *second, size_t count, double *correlation)
{
    vtx_status status = worse(require(correlation != NULL), worse(check_readings(first, count), check_readings(second, count)));
    if (status != VTX_OK)
        return poison(correlation, status);
    const double a = largest_departure(first, count, mean_of(first, count)), b = largest_departure(second, count, mean_of(second, count));
    if (!(a > 0 && b > 0))
        return poison(correlation, VTX_OUT_OF_RANGE);
    const double product = scaled_covariance(first, first, count, a, a) * scaled_covariance(second, second, count, b, b);
    *correlation = within(scaled_covariance(first, second, count, a, b) / sqrt(product), -1, 1);
    return VTX_OK;
}

vtx_status vtx_type_b_degrees_of_freedom(double doubt, double *degrees_of_freedom)
{
    const vtx_status status = worse(require(degrees_of_freedom != NULL), check_positive(doubt, 1e-3, 0.7));
    if (status != VTX_OK)
        return poison(degrees_of_freedom, status);
    *degrees_of_freedom = 0.5 / square(doubt);
    return VTX_OK;
}

/* What the terms would sum to if none cancelled: the measure of rounding. */
static double gross_uncertainty(const double *sensitivity, const double *uncertainty, size_t count)
{
    double sum = 0;
    for (size_t i = 0; i < count; i++)
        sum += fabs(sensitivity[i]) * uncertainty[i];
    return sum;
}

vtx_status vtx_combined_standard_uncertainty(const double *sensitivity, const double *uncertainty, const double *correlation, size_t count,
                                             double *combined)
{
    vtx_status status = worse(require(combined != NULL), worse(check_factors(sensitivity, count), check_inputs(uncertainty, correlation, count)));
    if (status != VTX_OK)
        return poison(combined, status);
    const double variance = propagated_covariance(count, sensitivity, sensitivity, uncertainty, correlation);
    if (variance < -1e-12 * square(gross_uncertainty(sensitivity, uncertainty, count)))
        return poison(combined, VTX_BAD_ARGUMENT);
    *combined = sqrt(larger(variance, 0));
    return VTX_OK;
}

vtx_status vtx_combined_covariance(const double *first_sensitivity, const double *second_sensitivity, const double *uncertainty,
                                   const double *correlation, size_t count, double *covariance)
{
    const vtx_status status = worse(require(covariance != NULL), worse(worse(check_factors(first_sensitivity, count), check_factors(second_sensitivity, count)),
                                                                       check_inputs(uncertainty, correlation, count)));
    if (status != VTX_OK)
        return poison(covariance, status);
    *covariance = propagated_covariance(count, first_sensitivity, second_sensitivity, uncertainty, correlation);
    return VTX_OK;
}

vtx_status vtx_effective_degrees_of_freedom(const double *contribution, const double *degrees_of_freedom, size_t count, double *effective)
{
    vtx_status status = worse(require(effective && degrees_of_freedom), check_factors(contribution, count));
    for (size_t i = 0; status == VTX_OK && i < count; i++)
        status = check_freedom(degrees_of_freedom[i]);
    if (status != VTX_OK)
        return poison(effective, status);
    const double freedom = effective_freedom(count, contribution, degrees_of_freedom);
    *effective = freedom <= freedom_max ? freedom : 0;
    return VTX_OK;
}

/* Abramowitz and Stegun 1964, 26.7.5: the next term is below 1e-12 of t here. */
static double nearly_normal_quantile(double z, double freedom)
{
    const double z2 = z * z, x = 1 / freedom;
    return z * (1 + x * ((z2 + 1) / 4 + x * ((5 * z2 + 16) * z2 + 3) / 96));
}

vtx_status vtx_coverage_factor(double coverage, double degrees_of_freedom, double *factor)
{
    const vtx_status status = worse(worse(require(factor != NULL), check_share(coverage)),
                                    worse(check_positive(coverage, 0.1, 0.9999), check_freedom(degrees_of_freedom)));
    if (status != VTX_OK)
        return poison(factor, status);
    const double tail = 0.5 * (1 - coverage);
    if (degrees_of_freedom > 0 && degrees_of_freedom <= student_max)
        *factor = -student_quantile(tail, degrees_of_freedom);
    else if (degrees_of_freedom > 0)
        *factor = nearly_normal_quantile(-normal_quantile(tail), degrees_of_freedom);
    else
        *factor = -normal_quantile(tail);
    return VTX_OK;
}
