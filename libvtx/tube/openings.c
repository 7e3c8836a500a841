/* Cold fraction from the three openings of a tube: the chamber's balance at the temperatures that real streams of that fraction have. */
#include <vtx/cold_fraction.h>

#include "../base/distribution.h"
#include "../base/root.h"
#include "chamber.h"
#include "outlet_kernel.h"

struct opened {
    const vtx_tube *tube;
    struct expansion e;
    struct chamber chamber; /* at the temperatures of the cold fraction in question */
    double efficiency;
    double cold_ambient, hot_ambient; /* enthalpies of the surroundings, where the tube leaks */
    double pressure, mass_flow;
    int32_t inlet_choked;
    int reversed; /* an outlet would draw in */
    vtx_status status;
};

vtx_status vtx_openings_init(vtx_openings *openings)
{
    if (!openings)
        return VTX_BAD_ARGUMENT;
    memset(openings, 0, sizeof *openings);
    openings->inlet_area = openings->cold_area = openings->hot_area = quiet_nan();
    openings->inlet_uncertainty = 0.03;
    openings->cold_uncertainty = openings->hot_uncertainty = 0.05;
    return VTX_OK;
}

static vtx_status check_openings(const vtx_openings *o)
{
    if (!o)
        return VTX_BAD_ARGUMENT;
    return worse(worse(require(are_zero(o->reserved, ARRAY_LENGTH(o->reserved))), worse(check_positive(o->inlet_area, 1e-9, 0.1), check_positive(o->cold_area, 1e-9, 0.1))),
                 worse(check_amount(o->hot_area, 0.1), worse(check_amount(o->inlet_uncertainty, 1),
                                                             worse(check_amount(o->cold_uncertainty, 1), check_amount(o->hot_uncertainty, 1)))));
}

/* Chamber pressure for the temperatures at hand; held at the higher outlet pressure when an outlet would draw in. */
static vtx_status balance_pressure(struct opened *o)
{
    struct chamber *c = &o->chamber;
    const double low = c->hot.area > 0 ? larger(c->cold.end_pressure, c->hot.end_pressure) : c->cold.end_pressure;
    const double high = c->inlet_pressure;
    vtx_status status = VTX_OK;
    o->reversed = chamber_excess(low, c) > 0;
    o->pressure = low;
    if (!o->reversed && low < high)
        status = find_root(chamber_excess, c, low, high, 1e-13 * high, &o->pressure);
    o->mass_flow = flow_in(c, o->pressure, &o->inlet_choked);
    return status;
}

static vtx_status set_temperatures(struct opened *o, double mu)
{
    struct chamber *c = &o->chamber;
    const double work = peak_work(&o->e, o->tube, o->efficiency);
    const double cold = cold_outlet_enthalpy(&o->e, o->tube, work, mu, o->cold_ambient);
    vtx_status status = feed_temperature(&o->e, c->cold.end_pressure, cold, &c->cold.temperature);
    if (status != VTX_OK)
        return status;
    return feed_temperature(&o->e, c->hot.end_pressure, hot_outlet_enthalpy(&o->e, o->tube, work, mu, o->hot_ambient), &c->hot.temperature);
}

/* Cold share of what leaves at the temperatures of mu, less mu. */
static double share_excess(double mu, void *context)
{
    struct opened *o = context;
    const struct chamber *c = &o->chamber;
    vtx_status status = set_temperatures(o, mu);
    if (status == VTX_OK)
        status = balance_pressure(o);
    if (status != VTX_OK) {
        o->status = status;
        return quiet_nan();
    }
    const double cold = flow_out(c, &c->cold, o->pressure), hot = flow_out(c, &c->hot, o->pressure);
    return cold + hot > 0 ? cold / (cold + hot) - mu : 0.5 - mu; /* nothing flows: the caller refuses it */
}

static vtx_status solve_opened(struct opened *o, double *mu)
{
    o->status = VTX_OK;
    vtx_status status = find_root(share_excess, o, 0, 1, 1e-14, mu);
    if (status == VTX_NOT_CONVERGED && o->status != VTX_OK)
        return o->status;
    if (status == VTX_OK)
        share_excess(*mu, o);
    return status == VTX_OK && (o->reversed || o->mass_flow <= 0) ? VTX_NO_SOLUTION : status;
}

static vtx_status open_up(struct opened *o, const vtx_tube *tube, const vtx_openings *openings, int32_t model, double inlet_pressure,
                          double inlet_temperature, double humidity_ratio, double cold_pressure, double hot_pressure)
{
    struct chamber *c = &o->chamber;
    vtx_status status = worse(worse(check_tube(tube), check_openings(openings)),
                              worse(check_feed(model, inlet_pressure, inlet_temperature, humidity_ratio),
                                    worse(check_outlet(model, inlet_pressure, cold_pressure), check_outlet(model, inlet_pressure, hot_pressure))));
    if (status != VTX_OK)
        return status;
    memset(o, 0, sizeof *o);
    vtx_gas_init(&c->gas);
    c->inlet_area = openings->inlet_area;
    c->inlet_pressure = inlet_pressure;
    c->inlet_temperature = inlet_temperature;
    c->cold = (struct way_out){ .area = openings->cold_area, .end_pressure = cold_pressure };
    c->hot = (struct way_out){ .area = openings->hot_area, .end_pressure = hot_pressure };
    o->tube = tube;
    o->efficiency = tube->peak_efficiency;
    status = expand(model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, &o->e);
    if (status == VTX_OK && tube->cold_leak != 0)
        status = feed_enthalpy(&o->e, cold_pressure, tube->ambient_temperature, &o->cold_ambient);
    if (status == VTX_OK && tube->hot_leak != 0)
        status = feed_enthalpy(&o->e, hot_pressure, tube->ambient_temperature, &o->hot_ambient);
    return status;
}

/* Central differences in the logarithm of each area, and the ends of the efficiency band. */
static vtx_status fill_uncertainties(struct opened *o, const vtx_openings *openings, vtx_opening_flow *flow)
{
    double *const area[3] = { &o->chamber.inlet_area, &o->chamber.cold.area, &o->chamber.hot.area };
    const double relative[3] = { openings->inlet_uncertainty, openings->cold_uncertainty, openings->hot_uncertainty };
    const double step = 1e-3;
    double variance = 0, flow_variance = 0, mu[2], mass_flow[2];
    vtx_status status = VTX_OK;
    for (int i = 0; i < 3 && status == VTX_OK; i++) {
        const double a = *area[i];
        for (int side = 0; side < 2 && status == VTX_OK; side++) {
            *area[i] = a * (1 + (side ? step : -step));
            status = solve_opened(o, &mu[side]);
            mass_flow[side] = o->mass_flow;
        }
        *area[i] = a;
        if (status == VTX_OK) {
            variance += square((mu[1] - mu[0]) / (2 * step) * relative[i]);
            flow_variance += square((mass_flow[1] - mass_flow[0]) / (2 * step) * relative[i]);
        }
    }
    for (int side = 0; side < 2 && status == VTX_OK; side++) {
        o->efficiency = side ? o->tube->efficiency_high : o->tube->efficiency_low;
        status = solve_opened(o, &mu[side]);
    }
    if (status == VTX_OK) {
        flow->cold_uncertainty = sqrt(variance + square((mu[1] - mu[0]) / (2 * normal_two_sided_80)));
        flow->mass_flow_uncertainty = sqrt(flow_variance);
    }
    return status;
}

vtx_status vtx_cold_fraction_from_openings(const vtx_tube *tube, const vtx_openings *openings, int32_t model,
                                           double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                           double cold_pressure, double hot_pressure, vtx_opening_flow *flow)
{
    struct opened o;
    vtx_status status = flow ? open_up(&o, tube, openings, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure)
                             : VTX_BAD_ARGUMENT;
    if (status == VTX_OK)
        status = solve_opened(&o, &flow->cold_fraction);
    if (status == VTX_OK) {
        flow->mass_flow = o.mass_flow;
        flow->chamber_pressure = o.pressure;
        flow->cold_temperature = o.chamber.cold.temperature;
        flow->hot_temperature = o.chamber.hot.temperature;
        flow->advisories = curve_advisories(tube, o.e.log_ratio, flow->cold_fraction) | (o.inlet_choked ? VTX_ADVISORY_CHOKED : 0);
        flow->spare = 0;
        status = fill_uncertainties(&o, openings, flow);
    }
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(flow, vtx_opening_flow, advisories, status);
}

vtx_status vtx_hot_area_for_cold_fraction(const vtx_tube *tube, const vtx_openings *openings, int32_t model,
                                          double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                          double cold_pressure, double hot_pressure, double cold_fraction, double *hot_area)
{
    struct opened o;
    struct chamber *c = &o.chamber;
    double mass_flow = 0, pressure = 0, behind;
    int32_t choked;
    vtx_status status = worse(require(hot_area != NULL), check_share(cold_fraction));
    status = worse(status, open_up(&o, tube, openings, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure));
    if (status == VTX_OK && cold_fraction == 0)
        status = VTX_OUT_OF_RANGE;
    if (status == VTX_OK)
        status = set_temperatures(&o, cold_fraction);
    if (status == VTX_OK) {
        c->cold_fraction = cold_fraction;
        status = chamber_at_cold_fraction(c, &mass_flow, &pressure, &behind, &choked);
    }
    if (status == VTX_OK && (pressure < hot_pressure || mass_flow <= 0))
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return poison(hot_area, status);
    c->hot.area = 1;
    const double flux = flow_through(c, &c->hot, pressure, hot_pressure);
    const double hot_flow = (1 - cold_fraction) * mass_flow;
    if (hot_flow > 0.1 * flux) /* no valve of this library's range is wide enough */
        return poison(hot_area, VTX_NO_SOLUTION);
    *hot_area = hot_flow == 0 ? 0 : hot_flow / flux;
    return VTX_OK;
}
