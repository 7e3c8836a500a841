/* Perfect-gas flow without losses. */
#include "../base/root.h"
#include "isentropic_kernel.h"

vtx_status vtx_gas_init(vtx_gas *gas)
{
    if (!gas)
        return VTX_BAD_ARGUMENT;
    memset(gas, 0, sizeof *gas);
    gas->molar_mass = dry_air_molar_mass;
    gas->heat_capacity_ratio = dry_air_gamma;
    gas->compressibility = 1;
    return VTX_OK;
}

vtx_status vtx_isentropic_temperature(double gamma, double inlet_pressure, double inlet_temperature, double outlet_pressure,
                                      double *outlet_temperature)
{
    const vtx_status status = worse(worse(require(outlet_temperature != NULL), check_gamma(gamma)),
                                    check_ends(inlet_pressure, inlet_temperature, outlet_pressure));
    if (status != VTX_OK)
        return poison(outlet_temperature, status);
    *outlet_temperature = isentropic_temperature(gamma, inlet_pressure, inlet_temperature, outlet_pressure);
    return VTX_OK;
}

vtx_status vtx_critical_pressure_ratio(double gamma, double *ratio)
{
    const vtx_status status = worse(require(ratio != NULL), check_gamma(gamma));
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = critical_pressure_ratio(gamma);
    return VTX_OK;
}

vtx_status vtx_critical_flow_function(double gamma, double *function)
{
    const vtx_status status = worse(require(function != NULL), check_gamma(gamma));
    if (status != VTX_OK)
        return poison(function, status);
    *function = critical_flow_function(gamma);
    return VTX_OK;
}

vtx_status vtx_isentropic_velocity(const vtx_gas *gas, double inlet_pressure, double inlet_temperature, double outlet_pressure,
                                   double *velocity)
{
    const vtx_status status = worse(worse(require(velocity != NULL), check_gas(gas)),
                                    check_ends(inlet_pressure, inlet_temperature, outlet_pressure));
    if (status != VTX_OK)
        return poison(velocity, status);
    *velocity = isentropic_velocity(gas->heat_capacity_ratio, specific_gas_constant(gas), inlet_pressure, inlet_temperature, outlet_pressure);
    return VTX_OK;
}

vtx_status vtx_gas_sound_speed(const vtx_gas *gas, double temperature, double *speed)
{
    const vtx_status status = worse(require(speed != NULL), worse(check_gas(gas), check_flow_temperature(temperature)));
    if (status != VTX_OK)
        return poison(speed, status);
    *speed = sqrt(gas->heat_capacity_ratio * specific_gas_constant(gas) * temperature);
    return VTX_OK;
}

static vtx_status check_mach(double gamma, double mach, const double *output)
{
    return worse(require(output != NULL), worse(check_gamma(gamma), check_amount(mach, FLOW_MACH_MAX)));
}

vtx_status vtx_isentropic_temperature_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_mach(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = 1 / (1 + stagnation_rise(gamma, mach));
    return VTX_OK;
}

vtx_status vtx_isentropic_pressure_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_mach(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = exp(-gamma / (gamma - 1) * log1p(stagnation_rise(gamma, mach)));
    return VTX_OK;
}

vtx_status vtx_isentropic_density_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = check_mach(gamma, mach, ratio);
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = exp(-1 / (gamma - 1) * log1p(stagnation_rise(gamma, mach)));
    return VTX_OK;
}

vtx_status vtx_isentropic_area_ratio(double gamma, double mach, double *ratio)
{
    const vtx_status status = worse(check_mach(gamma, mach, ratio), check_positive(mach, FLOW_MACH_MIN, FLOW_MACH_MAX));
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = area_ratio(gamma, mach);
    return VTX_OK;
}

/* Ratios of static to stagnation values: (1 + rise)^-power, solved for the Mach number. */
static vtx_status mach_for_ratio(double gamma, double power, double ratio, double *mach)
{
    const vtx_status status = worse(require(mach && ratio > 0 && ratio <= 1), check_gamma(gamma));
    if (status != VTX_OK)
        return poison(mach, status);
    const double limit = power * log1p(stagnation_rise(gamma, FLOW_MACH_MAX)) * (1 + LIMIT_ROUNDING);
    const double logarithm = -log(ratio);
    if (logarithm > limit)
        return poison(mach, VTX_OUT_OF_RANGE);
    *mach = smaller(sqrt(2 / (gamma - 1) * expm1(logarithm / power)), FLOW_MACH_MAX);
    return VTX_OK;
}

vtx_status vtx_mach_for_temperature_ratio(double gamma, double ratio, double *mach) { return mach_for_ratio(gamma, 1, ratio, mach); }

vtx_status vtx_mach_for_pressure_ratio(double gamma, double ratio, double *mach)
{
    return mach_for_ratio(gamma, gamma > 1 ? gamma / (gamma - 1) : 1, ratio, mach);
}

vtx_status vtx_mach_for_density_ratio(double gamma, double ratio, double *mach)
{
    return mach_for_ratio(gamma, gamma > 1 ? 1 / (gamma - 1) : 1, ratio, mach);
}

struct area_wish {
    double gamma, logarithm;
};

/* Of twice the logarithm of the Mach number. */
static double area_excess(double x, void *context)
{
    const struct area_wish *wish = context;
    const double u = sonic_drop(wish->gamma);
    return 0.5 * (log1p(u * expm1(x)) / u - x) - wish->logarithm;
}

static vtx_status supersonic_mach(double gamma, double ratio, double *mach)
{
    struct area_wish wish = { gamma, log(ratio) };
    double x;
    if (area_excess(2 * log(FLOW_MACH_MAX), &wish) < -LIMIT_ROUNDING * wish.logarithm)
        return poison(mach, VTX_OUT_OF_RANGE);
    /* The slack lets the ratio of Mach 50 itself be found. */
    const vtx_status status = find_root(area_excess, &wish, 0, 2 * log(FLOW_MACH_MAX) + 1e-9, 1e-15, &x);
    if (status != VTX_OK)
        return poison(mach, VTX_NOT_CONVERGED);
    *mach = smaller(exp(0.5 * x), FLOW_MACH_MAX);
    return VTX_OK;
}

vtx_status vtx_mach_for_area_ratio(double gamma, int32_t branch, double ratio, double *mach)
{
    vtx_status status = worse(require(mach && ratio >= 1 && (branch == VTX_BRANCH_SUBSONIC || branch == VTX_BRANCH_SUPERSONIC)),
                              worse(check_finite(ratio), check_gamma(gamma)));
    if (status != VTX_OK)
        return poison(mach, status);
    if (branch == VTX_BRANCH_SUPERSONIC)
        return supersonic_mach(gamma, ratio, mach);
    if (ratio > area_ratio(gamma, FLOW_MACH_MIN) * (1 + LIMIT_ROUNDING))
        return poison(mach, VTX_OUT_OF_RANGE);
    *mach = larger(mach_of_drop(gamma, subsonic_drop(gamma, 1 / square(ratio))), FLOW_MACH_MIN);
    return VTX_OK;
}
