/* The Fanno relations. */
#include <vtx/fanno.h>

#include "fanno_kernel.h"

#define MACH_MIN 1e-4
#define MACH_MAX 50.0
#define FANNO_LENGTH_MAX 1e8

static vtx_status check_mach(double mach) { return check_positive(mach, MACH_MIN, MACH_MAX); }

static vtx_status give_mach(double found, double *mach)
{
    if (check_mach(found) != VTX_OK)
        return poison(mach, VTX_OUT_OF_RANGE);
    *mach = found;
    return VTX_OK;
}

static vtx_status check_forward(double gamma, double mach, const double *ratio)
{
    return worse(require(ratio != NULL), worse(check_gamma(gamma), check_mach(mach)));
}

/* A ratio that reaches its limit belongs to an infinite or zero Mach number. */
static vtx_status check_ratio(double gamma, double ratio, const double *mach)
{
    return worse(require(mach != NULL), worse(check_gamma(gamma), require(is_finite(ratio) && ratio > 0)));
}

vtx_status vtx_fanno_length(double gamma, double mach, double *length)
{
    const vtx_status status = check_forward(gamma, mach, length);
    if (status != VTX_OK)
        return poison(length, status);
    *length = fanno_length(gamma, mach);
    return VTX_OK;
}

/* y above (gamma-1)/(gamma+1), its value at infinite Mach number; with t = y - 1 both sides stay exact next to Mach 1. */
static vtx_status give_mach_of(double gamma, double t, double *mach)
{
    const double speed = (gamma + 1) * t + 2;
    return speed > 0 ? give_mach(sqrt(2 / speed), mach) : poison(mach, VTX_NO_SOLUTION);
}

vtx_status vtx_fanno_mach(double gamma, double length, int32_t branch, double *mach)
{
    const int known = branch == VTX_BRANCH_SUBSONIC || branch == VTX_BRANCH_SUPERSONIC;
    vtx_status status = worse(require(mach && known), worse(check_gamma(gamma), check_amount(length, FANNO_LENGTH_MAX)));
    if (status != VTX_OK)
        return poison(mach, status);
    const double excess = fanno_scale(gamma) * length;
    if (branch == VTX_BRANCH_SUPERSONIC && !(excess < log_excess(-2 / (gamma + 1))))
        return poison(mach, VTX_NO_SOLUTION);
    return give_mach_of(gamma, branch == VTX_BRANCH_SUBSONIC ? log_excess_above(excess) : log_excess_below(excess), mach);
}

vtx_status vtx_fanno_outlet_mach(double gamma, double inlet_mach, double length, double *outlet_mach)
{
    const vtx_status status = worse(check_forward(gamma, inlet_mach, outlet_mach), check_amount(length, FANNO_LENGTH_MAX));
    if (status != VTX_OK)
        return poison(outlet_mach, status);
    const double excess = log_excess(fanno_excess_root(gamma, inlet_mach)) - fanno_scale(gamma) * length;
    if (excess < 0)
        return poison(outlet_mach, VTX_NO_SOLUTION);
    return give_mach_of(gamma, inlet_mach < 1 ? log_excess_above(excess) : log_excess_below(excess), outlet_mach);
}

vtx_status vtx_fanno_temperature_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_forward(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = (gamma + 1) / (2 + (gamma - 1) * square(mach));
    return VTX_OK;
}

vtx_status vtx_fanno_mach_from_temperature(double gamma, double ratio, double *mach)
{
    const vtx_status status = worse(check_ratio(gamma, ratio, mach), require(2 * ratio < gamma + 1));
    if (status != VTX_OK)
        return poison(mach, status);
    if (ratio < 1 / square(2 * MACH_MAX))
        return poison(mach, VTX_OUT_OF_RANGE);
    return give_mach(sqrt((gamma + 1 - 2 * ratio) / ratio / (gamma - 1)), mach);
}

vtx_status vtx_fanno_pressure_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_forward(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = sqrt((gamma + 1) / (2 + (gamma - 1) * square(mach))) / mach;
    return VTX_OK;
}

/* (gamma-1) (ratio M)^2 M^2 + 2 (ratio M)^2 = gamma + 1, in q = 1/ratio. */
vtx_status vtx_fanno_mach_from_pressure(double gamma, double ratio, double *mach)
{
    const vtx_status status = worse(check_ratio(gamma, ratio, mach), check_range(ratio, 1e-5, 1e5));
    if (status != VTX_OK)
        return poison(mach, status);
    const double q = 1 / ratio;
    return give_mach(q * sqrt((gamma + 1) / (1 + sqrt(1 + (square(gamma) - 1) * square(q)))), mach);
}

vtx_status vtx_fanno_velocity_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_forward(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = mach * sqrt((gamma + 1) / (2 + (gamma - 1) * square(mach)));
    return VTX_OK;
}

vtx_status vtx_fanno_mach_from_velocity(double gamma, double ratio, double *mach)
{
    const vtx_status status = worse(check_ratio(gamma, ratio, mach), require(ratio < 1e3 && (gamma - 1) * square(ratio) < gamma + 1));
    if (status != VTX_OK)
        return poison(mach, status);
    return give_mach(ratio * sqrt(2 / (gamma + 1 - (gamma - 1) * square(ratio))), mach);
}

/* Mass flow is common, so that stagnation pressures are to each other as the areas of loss-free flow. */
vtx_status vtx_fanno_stagnation_pressure_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_forward(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = area_ratio(gamma, mach);
    return VTX_OK;
}
