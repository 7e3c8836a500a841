/* Cold fractions at which an outlet has an enthalpy. */
#include "outlet.h"

vtx_status open_outlet(struct outlet *o, const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                       double humidity_ratio, double cold_pressure)
{
    memset(o, 0, sizeof *o);
    o->tube = tube;
    vtx_status status = expand(model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, &o->e);
    if (status == VTX_OK && tube->cold_leak != 0)
        status = feed_enthalpy(&o->e, cold_pressure, tube->ambient_temperature, &o->ambient_enthalpy);
    return status;
}

static double cold_excess(double mu, void *context)
{
    const struct outlet *o = context;
    return cold_enthalpy(o, mu) - o->wanted;
}

static double hot_excess(double mu, void *context)
{
    const struct outlet *o = context;
    return hot_enthalpy(o, mu) - o->wanted;
}

static double negative_hot(double mu, void *context) { return -hot_enthalpy(context, mu); }

vtx_status root_between(root_function *f, struct outlet *o, double low, double high, double scale, double *mu)
{
    const double at_low = f(low, o), at_high = f(high, o), slack = end_rounding * scale;
    if ((at_low < 0) == (at_high < 0) && smaller(fabs(at_low), fabs(at_high)) <= slack) {
        *mu = fabs(at_low) < fabs(at_high) ? low : high;
        return VTX_OK;
    }
    return find_root(f, o, low, high, 1e-15, mu);
}

vtx_status coldest_fraction_of(struct outlet *o, double *mu)
{
    *mu = o->tube->coldest_fraction;
    return o->tube->cold_leak == 0 ? VTX_OK : find_minimum(cold_excess, o, 0, 1, valley, mu);
}

vtx_status hottest_fraction_of(struct outlet *o, double *mu)
{
    *mu = 1;
    return o->tube->hot_leak == 0 ? VTX_OK : find_minimum(negative_hot, o, 0, 1, valley, mu);
}

vtx_status branch_ends(struct outlet *o, int32_t branch, double *low, double *high)
{
    double coldest;
    vtx_status status = coldest_fraction_of(o, &coldest);
    *low = branch == VTX_BRANCH_LESS_COLD_AIR ? 0 : coldest;
    *high = branch == VTX_BRANCH_LESS_COLD_AIR ? coldest : 1;
    return status;
}

vtx_status cold_fraction_of(struct outlet *o, int32_t branch, double *mu)
{
    const double m = o->tube->coldest_fraction;
    double low, high;
    if (o->tube->cold_leak != 0) {
        vtx_status status = branch_ends(o, branch, &low, &high);
        return status == VTX_OK ? root_between(cold_excess, o, low, high, o->e.work, mu) : status;
    }
    const double drop = o->e.inlet_enthalpy - o->wanted, slack = end_rounding * o->e.work;
    const double least = branch == VTX_BRANCH_LESS_COLD_AIR ? o->peak * cold_shape(m, 0) : 0;
    if (o->peak <= 0 || drop > o->peak + slack || drop < least - slack)
        return VTX_NO_SOLUTION;
    const double s = within(drop / o->peak, 0, 1);
    *mu = branch == VTX_BRANCH_LESS_COLD_AIR ? cold_branch(m, s) : warm_branch(m, s);
    return VTX_OK;
}

vtx_status hot_fraction_of(struct outlet *o, int32_t branch, double *mu)
{
    (void)branch;
    double hottest;
    if (o->tube->hot_leak != 0) {
        vtx_status status = hottest_fraction_of(o, &hottest);
        return status == VTX_OK ? root_between(hot_excess, o, 0, hottest, o->e.work, mu) : status;
    }
    const double rise = o->wanted - o->e.inlet_enthalpy, slack = end_rounding * o->e.work;
    if (o->peak <= 0 || rise < -slack || rise > o->peak * hot_shape(o->tube->coldest_fraction, 1) + slack)
        return VTX_NO_SOLUTION;
    *mu = smaller(fraction_of_hot_shape(o->tube->coldest_fraction, larger(rise, 0) / o->peak), 1);
    return VTX_OK;
}
