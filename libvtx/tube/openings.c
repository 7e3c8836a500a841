/* Flow balance of the swirl chamber: inlet nozzle in series with the two outlets. */
#include <vtx/cold_fraction.h>

#include "../base/root.h"
#include "../flow/restriction_kernel.h"
#include "outlet_kernel.h"

/* Half the width of an 80 % band in standard deviations. */
static const double band_deviations = 1.2816;

struct chamber {
    const vtx_tube *tube;
    struct expansion e;
    vtx_gas gas;
    double inlet_area, cold_area, hot_area;
    double hot_pressure, efficiency;
    double cold_ambient, hot_ambient;         /* enthalpies of the surroundings, where the tube leaks */
    double cold_temperature, hot_temperature; /* of the cold fraction in question */
    double cold_share;                        /* > 0: only the cold orifice counts, with this share of the flow */
    double pressure, mass_flow;
    int32_t inlet_choked;
    int reversed;
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

static double inflow(struct chamber *c, double pressure)
{
    return c->inlet_area * orifice_flux(&c->gas, c->e.inlet_pressure, c->e.inlet_temperature, pressure, &c->inlet_choked);
}

static double outflow(const struct chamber *c, double area, double pressure, double temperature, double outlet_pressure)
{
    int32_t choked;
    return area == 0 ? 0 : area * orifice_flux(&c->gas, pressure, temperature, outlet_pressure, &choked);
}

static double surplus(double pressure, void *context)
{
    struct chamber *c = context;
    const double cold = outflow(c, c->cold_area, pressure, c->cold_temperature, c->e.cold_pressure);
    if (c->cold_share > 0)
        return inflow(c, pressure) - cold / c->cold_share;
    return inflow(c, pressure) - cold - outflow(c, c->hot_area, pressure, c->hot_temperature, c->hot_pressure);
}

/* Chamber pressure for the temperatures at hand; held at the higher outlet pressure when an outlet would draw in. */
static vtx_status balance_pressure(struct chamber *c)
{
    const double low = c->hot_area > 0 || c->cold_share > 0 ? larger(c->e.cold_pressure, c->hot_pressure) : c->e.cold_pressure;
    const double high = c->e.inlet_pressure;
    vtx_status status = VTX_OK;
    c->reversed = surplus(low, c) < 0;
    c->pressure = low;
    if (!c->reversed && low < high)
        status = find_root(surplus, c, low, high, 1e-13 * high, &c->pressure);
    c->mass_flow = inflow(c, c->pressure);
    return status;
}

static vtx_status set_temperatures(struct chamber *c, double mu)
{
    const double work = peak_work(&c->e, c->tube, c->efficiency);
    const double cold = cold_outlet_enthalpy(&c->e, c->tube, work, mu, c->cold_ambient);
    vtx_status status = feed_temperature(&c->e, c->e.cold_pressure, cold, &c->cold_temperature);
    if (status != VTX_OK)
        return status;
    return feed_temperature(&c->e, c->hot_pressure, hot_outlet_enthalpy(&c->e, c->tube, work, mu, c->hot_ambient), &c->hot_temperature);
}

/* Cold share of what leaves at the temperatures of mu, less mu. */
static double share_excess(double mu, void *context)
{
    struct chamber *c = context;
    vtx_status status = set_temperatures(c, mu);
    if (status == VTX_OK)
        status = balance_pressure(c);
    if (status != VTX_OK) {
        c->status = status;
        return quiet_nan();
    }
    const double cold = outflow(c, c->cold_area, c->pressure, c->cold_temperature, c->e.cold_pressure);
    const double hot = outflow(c, c->hot_area, c->pressure, c->hot_temperature, c->hot_pressure);
    return cold + hot > 0 ? cold / (cold + hot) - mu : 0.5 - mu; /* nothing flows: the caller refuses it */
}

static vtx_status solve_chamber(struct chamber *c, double *mu)
{
    c->status = VTX_OK;
    vtx_status status = find_root(share_excess, c, 0, 1, 1e-14, mu);
    if (status == VTX_NOT_CONVERGED && c->status != VTX_OK)
        return c->status;
    if (status == VTX_OK)
        share_excess(*mu, c);
    return status == VTX_OK && (c->reversed || c->mass_flow <= 0) ? VTX_NO_SOLUTION : status;
}

static vtx_status open_chamber(struct chamber *c, const vtx_tube *tube, const vtx_openings *openings, int32_t model, double inlet_pressure,
                               double inlet_temperature, double humidity_ratio, double cold_pressure, double hot_pressure)
{
    vtx_status status = worse(worse(check_tube(tube), check_openings(openings)),
                              worse(check_feed(model, inlet_pressure, inlet_temperature, humidity_ratio),
                                    worse(check_outlet(model, inlet_pressure, cold_pressure), check_outlet(model, inlet_pressure, hot_pressure))));
    if (status != VTX_OK)
        return status;
    memset(c, 0, sizeof *c);
    vtx_gas_init(&c->gas);
    c->tube = tube;
    c->inlet_area = openings->inlet_area;
    c->cold_area = openings->cold_area;
    c->hot_area = openings->hot_area;
    c->hot_pressure = hot_pressure;
    c->efficiency = tube->peak_efficiency;
    status = expand(model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, &c->e);
    if (status == VTX_OK && tube->cold_leak != 0)
        status = feed_enthalpy(&c->e, cold_pressure, tube->ambient_temperature, &c->cold_ambient);
    if (status == VTX_OK && tube->hot_leak != 0)
        status = feed_enthalpy(&c->e, hot_pressure, tube->ambient_temperature, &c->hot_ambient);
    return status;
}

/* Central differences in the logarithm of each area, and the ends of the efficiency band. */
static vtx_status chamber_uncertainty(struct chamber *c, const vtx_openings *openings, vtx_opening_flow *flow)
{
    double *const area[3] = { &c->inlet_area, &c->cold_area, &c->hot_area };
    const double relative[3] = { openings->inlet_uncertainty, openings->cold_uncertainty, openings->hot_uncertainty };
    const double step = 1e-3;
    double variance = 0, flow_variance = 0, mu[2], mass_flow[2];
    vtx_status status = VTX_OK;
    for (int i = 0; i < 3 && status == VTX_OK; i++) {
        const double a = *area[i];
        for (int side = 0; side < 2 && status == VTX_OK; side++) {
            *area[i] = a * (1 + (side ? step : -step));
            status = solve_chamber(c, &mu[side]);
            mass_flow[side] = c->mass_flow;
        }
        *area[i] = a;
        if (status == VTX_OK) {
            variance += square((mu[1] - mu[0]) / (2 * step) * relative[i]);
            flow_variance += square((mass_flow[1] - mass_flow[0]) / (2 * step) * relative[i]);
        }
    }
    for (int side = 0; side < 2 && status == VTX_OK; side++) {
        c->efficiency = side ? c->tube->efficiency_high : c->tube->efficiency_low;
        status = solve_chamber(c, &mu[side]);
    }
    if (status == VTX_OK) {
        flow->cold_uncertainty = sqrt(variance + square((mu[1] - mu[0]) / (2 * band_deviations)));
        flow->mass_flow_uncertainty = sqrt(flow_variance);
    }
    return status;
}

vtx_status vtx_cold_fraction_from_openings(const vtx_tube *tube, const vtx_openings *openings, int32_t model,
                                           double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                           double cold_pressure, double hot_pressure, vtx_opening_flow *flow)
{
    struct chamber c;
    vtx_status status = flow ? open_chamber(&c, tube, openings, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure,
                                            hot_pressure)
                             : VTX_BAD_ARGUMENT;
    if (status == VTX_OK)
        status = solve_chamber(&c, &flow->cold_fraction);
    if (status == VTX_OK) {
        flow->mass_flow = c.mass_flow;
        flow->chamber_pressure = c.pressure;
        flow->cold_temperature = c.cold_temperature;
        flow->hot_temperature = c.hot_temperature;
        flow->advisories = curve_advisories(tube, c.e.log_ratio, flow->cold_fraction) | (c.inlet_choked ? VTX_ADVISORY_CHOKED : 0);
        flow->spare = 0;
        status = chamber_uncertainty(&c, openings, flow);
    }
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(flow, vtx_opening_flow, advisories, status);
}

vtx_status vtx_hot_area_for_cold_fraction(const vtx_tube *tube, const vtx_openings *openings, int32_t model,
                                          double inlet_pressure, double inlet_temperature, double humidity_ratio,
                                          double cold_pressure, double hot_pressure, double cold_fraction, double *hot_area)
{
    struct chamber c;
    vtx_status status = worse(require(hot_area != NULL), check_share(cold_fraction));
    status = worse(status, open_chamber(&c, tube, openings, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure));
    if (status == VTX_OK && cold_fraction == 0)
        status = VTX_OUT_OF_RANGE;
    if (status == VTX_OK)
        status = set_temperatures(&c, cold_fraction);
    if (status == VTX_OK) {
        c.cold_share = cold_fraction;
        status = balance_pressure(&c);
    }
    if (status == VTX_OK && (c.reversed || c.mass_flow <= 0))
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return poison(hot_area, status);
    const double flux = outflow(&c, 1, c.pressure, c.hot_temperature, hot_pressure);
    const double hot_flow = (1 - cold_fraction) * c.mass_flow;
    if (hot_flow > 0.1 * flux) /* no valve of this library's range is wide enough */
        return poison(hot_area, VTX_NO_SOLUTION);
    *hot_area = hot_flow == 0 ? 0 : hot_flow / flux;
    return VTX_OK;
}
