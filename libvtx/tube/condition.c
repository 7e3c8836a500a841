/* Pressures and inlet temperatures that fulfil a wish for the cold temperature. */
#include <vtx/setting.h>

#include "../base/root.h"
#include "outlet_kernel.h"

enum varied { INLET_PRESSURE, COLD_PRESSURE, INLET_TEMPERATURE };

/* One quantity varies through x, the others stand. For pressures x = ln(inlet/cold), else x is the temperature.
 * While the inlet pressure varies, inlet_pressure is the largest one. */
struct condition {
    const vtx_tube *tube;
    int32_t model;
    enum varied varied;
    double inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, cold_fraction;
    double efficiency, wanted;
    vtx_status status; /* of the last evaluation that failed */
};

static double value_at(const struct condition *c, double x)
{
    return c->varied == INLET_PRESSURE ? within(c->cold_pressure * exp(x), c->cold_pressure, c->inlet_pressure)
         : c->varied == COLD_PRESSURE ? c->inlet_pressure * exp(-x) : x;
}

/* Enthalpy of the cold outlet and its expansion with the varied quantity at x. */
static vtx_status cold_outlet(const struct condition *c, double x, struct expansion *e, double *enthalpy)
{
    const double value = value_at(c, x), mu = c->cold_fraction;
    vtx_status status = expand(c->model, c->varied == INLET_PRESSURE ? value : c->inlet_pressure,
                               c->varied == INLET_TEMPERATURE ? value : c->inlet_temperature, c->humidity_ratio,
                               c->varied == COLD_PRESSURE ? value : c->cold_pressure, e);
    if (status != VTX_OK)
        return status;
    double ambient = 0;
    if (c->tube->cold_leak != 0)
        status = feed_enthalpy(e, e->cold_pressure, c->tube->ambient_temperature, &ambient);
    *enthalpy = cold_outlet_enthalpy(e, c->tube, peak_work(e, c->tube, c->efficiency), mu, ambient);
    return status;
}

static double excess(double x, void *context)
{
    struct condition *c = context;
    struct expansion e;
    double enthalpy, wanted;
    vtx_status status = cold_outlet(c, x, &e, &enthalpy);
    if (status == VTX_OK)
        status = feed_enthalpy(&e, e.cold_pressure, c->wanted, &wanted);
    if (status != VTX_OK) {
        c->status = status;
        return quiet_nan();
    }
    return enthalpy - wanted;
}

static vtx_status temperature_at(const struct condition *c, double x, double *temperature)
{
    struct expansion e;
    double enthalpy;
    vtx_status status = cold_outlet(c, x, &e, &enthalpy);
    return status == VTX_OK ? feed_temperature(&e, e.cold_pressure, enthalpy, temperature) : status;
}

/* Where in 0..end the outlet is coldest: a tube that works worse at high ratios has its optimum inside. */
static vtx_status coldest_at(struct condition *c, double end, double *x)
{
    *x = end;
    return c->varied != INLET_TEMPERATURE && c->tube->pressure_exponent < 0 && end > 0 ? find_minimum(excess, c, 0, end, 1e-6 * end, x)
                                                                                       : VTX_OK;
}

static vtx_status solve(struct condition *c, double efficiency, double low, double high, double *value)
{
    double x, end = high;
    c->efficiency = efficiency;
    vtx_status status = coldest_at(c, high, &end);
    if (status == VTX_OK) {
        const double at_low = excess(low, c), at_end = excess(end, c);
        /* A wish for exactly what an end of the range gives counts as met there. */
        const double slack = 1e-6; /* J/kg, 1e-9 K */
        status = fabs(at_end) <= slack ? (x = end, VTX_OK) : fabs(at_low) <= slack ? (x = low, VTX_OK)
               : find_root(excess, c, low, end, 1e-13 * larger(high, 1), &x);
    }
    if (status == VTX_NOT_CONVERGED && c->status != VTX_OK)
        status = c->status;
    if (status == VTX_OK)
        *value = value_at(c, x);
    return status;
}

static vtx_status fail_condition(vtx_condition_setting *s, double coldest, double warmest, vtx_status status)
{
    POISON_STRUCT(s, vtx_condition_setting, advisories, status);
    if (status == VTX_NO_SOLUTION) {
        s->attainable_coldest = coldest;
        s->attainable_warmest = warmest;
    }
    return status;
}

/* Brings the cold end of the search to where the model still covers the isentropic expansion. */
static vtx_status narrow(const struct condition *c, double *low, double *high)
{
    struct expansion e;
    double enthalpy, *end = c->varied == INLET_TEMPERATURE ? low : high;
    const double step = c->varied == INLET_TEMPERATURE ? 0.05 * (*high - *low) : -0.05 * (*high - *low);
    vtx_status status = cold_outlet(c, *end, &e, &enthalpy);
    for (int i = 0; i < 20 && status == VTX_OUT_OF_RANGE; i++) {
        *end += step;
        status = cold_outlet(c, *end, &e, &enthalpy);
    }
    return status;
}

static vtx_status solve_condition(struct condition *c, double low, double high, vtx_condition_setting *s)
{
    const double band[2] = { c->tube->efficiency_low, c->tube->efficiency_high };
    double end[2], coldest_x = 0, coldest = 0, warmest = 0;
    c->efficiency = c->tube->peak_efficiency;
    c->status = VTX_OK;
    vtx_status status = narrow(c, &low, &high);
    if (status == VTX_OK)
        status = coldest_at(c, high, &coldest_x);
    if (c->varied == INLET_TEMPERATURE)
        coldest_x = low;
    if (status == VTX_OK)
        status = temperature_at(c, coldest_x, &coldest);
    if (status == VTX_OK)
        status = temperature_at(c, c->varied == INLET_TEMPERATURE ? high : low, &warmest);
    if (status == VTX_OK)
        status = solve(c, c->tube->peak_efficiency, low, high, &s->value);
    if (status != VTX_OK)
        return fail_condition(s, coldest, warmest, status);
    s->attainable_coldest = coldest;
    s->attainable_warmest = warmest;
    const double log_ratio = c->varied == INLET_PRESSURE ? log(s->value / c->cold_pressure)
                           : log(c->inlet_pressure / (c->varied == COLD_PRESSURE ? s->value : c->cold_pressure));
    s->advisories = curve_advisories(c->tube, log_ratio, c->cold_fraction);
    s->spare = 0;
    for (int i = 0; i < 2; i++) {
        if (solve(c, band[i], low, high, &end[i]) != VTX_OK) {
            end[i] = quiet_nan();
            s->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
        }
    }
    /* A better tube needs less inlet pressure and bears more of the other two. */
    s->value_low = end[c->varied == INLET_PRESSURE];
    s->value_high = end[c->varied != INLET_PRESSURE];
    return VTX_OK;
}

static vtx_status check_condition(const vtx_tube *tube, double cold_fraction, double cold_temperature)
{
    return worse(check_tube(tube), worse(check_share(cold_fraction), check_positive(cold_temperature, 50, 1000)));
}

vtx_status vtx_inlet_pressure_for_temperature(const vtx_tube *tube, int32_t model, double largest_pressure,
                                              double inlet_temperature, double humidity_ratio, double cold_pressure,
                                              double cold_fraction, double cold_temperature, vtx_condition_setting *setting)
{
    struct condition c = { tube, model, INLET_PRESSURE, largest_pressure, inlet_temperature, humidity_ratio, cold_pressure,
                           cold_fraction, 0, cold_temperature, VTX_OK };
    vtx_status status = worse(worse(require(setting != NULL), check_condition(tube, cold_fraction, cold_temperature)),
                              worse(check_feed(model, largest_pressure, inlet_temperature, humidity_ratio),
                                    check_outlet(model, largest_pressure, cold_pressure)));
    if (status != VTX_OK)
        return POISON_STRUCT(setting, vtx_condition_setting, advisories, status);
    const double low = larger(log(inlet_pressure_min / cold_pressure), 0);
    return solve_condition(&c, low, log(largest_pressure / cold_pressure), setting);
}

vtx_status vtx_cold_pressure_for_temperature(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                             double inlet_temperature, double humidity_ratio, double cold_fraction,
                                             double cold_temperature, vtx_condition_setting *setting)
{
    struct condition c = { tube, model, COLD_PRESSURE, inlet_pressure, inlet_temperature, humidity_ratio, inlet_pressure,
                           cold_fraction, 0, cold_temperature, VTX_OK };
    vtx_status status = worse(worse(require(setting != NULL), check_condition(tube, cold_fraction, cold_temperature)),
                              check_feed(model, inlet_pressure, inlet_temperature, humidity_ratio));
    if (status != VTX_OK)
        return POISON_STRUCT(setting, vtx_condition_setting, advisories, status);
    return solve_condition(&c, 0, log(inlet_pressure / outlet_pressure_min), setting);
}

vtx_status vtx_inlet_temperature_for_temperature(const vtx_tube *tube, int32_t model, double inlet_pressure,
                                                 double humidity_ratio, double cold_pressure, double cold_fraction,
                                                 double cold_temperature, vtx_condition_setting *setting)
{
    struct condition c = { tube, model, INLET_TEMPERATURE, inlet_pressure, inlet_temperature_min, humidity_ratio, cold_pressure,
                           cold_fraction, 0, cold_temperature, VTX_OK };
    vtx_status status = worse(worse(require(setting != NULL), check_condition(tube, cold_fraction, cold_temperature)),
                              worse(check_feed(model, inlet_pressure, inlet_temperature_min, humidity_ratio),
                                    check_outlet(model, inlet_pressure, cold_pressure)));
    if (status != VTX_OK)
        return POISON_STRUCT(setting, vtx_condition_setting, advisories, status);
    return solve_condition(&c, inlet_temperature_min, inlet_temperature_max, setting);
}
