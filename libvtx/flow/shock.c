/* Normal shocks of a perfect gas. */
#include <vtx/shock.h>

#include "../base/root.h"
#include "shock_kernel.h"

static const double excess_max = FLOW_MACH_MAX * FLOW_MACH_MAX - 1;

static vtx_status check_shock(double gamma, double mach, const double *output)
{
    return worse(require(output && mach >= 1), worse(check_gamma(gamma), check_amount(mach, FLOW_MACH_MAX)));
}

vtx_status vtx_shock_downstream_mach(double gamma, double mach, double *downstream_mach)
{
    const vtx_status status = check_shock(gamma, mach, downstream_mach);
    if (status != VTX_OK)
        return poison(downstream_mach, status);
    *downstream_mach = other_mach(gamma, excess(mach));
    return VTX_OK;
}

vtx_status vtx_shock_pressure_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_shock(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = 1 + pressure_rise(gamma, excess(mach));
    return VTX_OK;
}

vtx_status vtx_shock_density_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_shock(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = 1 + density_rise(gamma, excess(mach));
    return VTX_OK;
}

vtx_status vtx_shock_temperature_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_shock(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = 1 + temperature_rise(gamma, excess(mach));
    return VTX_OK;
}

vtx_status vtx_shock_stagnation_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_shock(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = exp(-stagnation_loss(gamma, excess(mach)));
    return VTX_OK;
}

vtx_status vtx_shock_pitot_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_shock(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = exp(-pitot_logarithm(gamma, excess(mach)));
    return VTX_OK;
}

/* A hair beyond Mach 50 is the rounding of a ratio that was computed there. */
static vtx_status mach_of_excess(double z, double *mach)
{
    if (z > excess_max * (1 + 1e-9))
        return poison(mach, VTX_OUT_OF_RANGE);
    *mach = smaller(sqrt(1 + z), FLOW_MACH_MAX);
    return VTX_OK;
}

vtx_status vtx_shock_mach_for_downstream_mach(double gamma, double downstream_mach, double *mach)
{
    const vtx_status status = worse(require(mach && downstream_mach > 0 && downstream_mach <= 1), check_gamma(gamma));
    if (status != VTX_OK)
        return poison(mach, status);
    const double below = (gamma + 1) + 2 * gamma * excess(downstream_mach);
    if (!(below > LIMIT_ROUNDING))
        return poison(mach, VTX_NO_SOLUTION);
    return mach_of_excess(-(gamma + 1) * excess(downstream_mach) / below, mach);
}

static vtx_status check_rise(double gamma, double ratio, const double *mach)
{
    return worse(require(mach && is_finite(ratio) && ratio >= 1), check_gamma(gamma));
}

vtx_status vtx_shock_mach_for_pressure_ratio(double gamma, double ratio, double *mach)
{
    const vtx_status status = check_rise(gamma, ratio, mach);
    if (status != VTX_OK)
        return poison(mach, status);
    if (ratio > 2 * (1 + pressure_rise(gamma, excess_max)))
        return poison(mach, VTX_OUT_OF_RANGE);
    return mach_of_excess((gamma + 1) / (2 * gamma) * (ratio - 1), mach);
}

vtx_status vtx_shock_mach_for_density_ratio(double gamma, double ratio, double *mach)
{
    const vtx_status status = check_rise(gamma, ratio, mach);
    if (status != VTX_OK)
        return poison(mach, status);
    const double below = 2 - (gamma - 1) * (ratio - 1);
    if (!(below > LIMIT_ROUNDING))
        return poison(mach, VTX_NO_SOLUTION);
    return mach_of_excess((gamma + 1) * (ratio - 1) / below, mach);
}

/* gamma z^2 + (gamma + 1 - rise) z - rise = 0 with the scaled temperature rise. */
vtx_status vtx_shock_mach_for_temperature_ratio(double gamma, double ratio, double *mach)
{
    const vtx_status status = check_rise(gamma, ratio, mach);
    if (status != VTX_OK)
        return poison(mach, status);
    if (ratio > 2 * (1 + temperature_rise(gamma, excess_max)))
        return poison(mach, VTX_OUT_OF_RANGE);
    const double rise = (ratio - 1) * square(gamma + 1) / (2 * (gamma - 1));
    const double b = gamma + 1 - rise;
    const double root = sqrt(square(b) + 4 * gamma * rise);
    return mach_of_excess(b > 0 ? 2 * rise / (b + root) : (root - b) / (2 * gamma), mach);
}

struct shock_wish {
    double gamma, logarithm;
    double (*of)(double gamma, double z);
};

static double shock_deviation(double logarithm_of_mach_squared, void *context)
{
    const struct shock_wish *wish = context;
    return wish->of(wish->gamma, expm1(logarithm_of_mach_squared)) - wish->logarithm;
}

static vtx_status solve_shock(struct shock_wish *wish, double *mach)
{
    double x;
    if (wish->logarithm > wish->of(wish->gamma, excess_max) * (1 + LIMIT_ROUNDING))
        return poison(mach, VTX_OUT_OF_RANGE);
    const vtx_status status = find_root(shock_deviation, wish, 0, 2 * log(FLOW_MACH_MAX) + 1e-9, 1e-15, &x);
    return status == VTX_OK ? mach_of_excess(expm1(x), mach) : poison(mach, VTX_NOT_CONVERGED);
}

vtx_status vtx_shock_mach_for_stagnation_ratio(double gamma, double ratio, double *mach)
{
    const vtx_status status = worse(require(mach && ratio > 0 && ratio <= 1), check_gamma(gamma));
    if (status != VTX_OK)
        return poison(mach, status);
    struct shock_wish wish = { gamma, -log(ratio), stagnation_loss };
    return solve_shock(&wish, mach);
}

vtx_status vtx_shock_mach_for_pitot_ratio(double gamma, double ratio, double *mach)
{
    const vtx_status status = worse(require(mach && ratio > 0 && ratio <= 1), check_gamma(gamma));
    if (status != VTX_OK)
        return poison(mach, status);
    struct shock_wish wish = { gamma, -log(ratio), pitot_logarithm };
    const double weakest = pitot_logarithm(gamma, 0);
    if (wish.logarithm < weakest * (1 - LIMIT_ROUNDING))
        return poison(mach, VTX_NO_SOLUTION);
    wish.logarithm = larger(wish.logarithm, weakest);
    return solve_shock(&wish, mach);
}
