/* Pneumatic components by ISO 6358. */
#include "../base/root.h"
#include "conductance_kernel.h"

vtx_status vtx_component_init(vtx_component *component)
{
    if (!component)
        return VTX_BAD_ARGUMENT;
    memset(component, 0, sizeof *component);
    component->sonic_conductance = 1e-8;
    component->critical_ratio = 0.3;
    component->subsonic_index = 0.5;
    return VTX_OK;
}

static vtx_status check_shape(const vtx_component *c)
{
    if (!c)
        return VTX_BAD_ARGUMENT;
    return worse(worse(check_critical_ratio(c->critical_ratio), require(are_zero(c->reserved, ARRAY_LENGTH(c->reserved)))),
                 worse(check_positive(c->subsonic_index, 0.2, 1), check_amount(c->cracking_pressure, 1e6)));
}

static vtx_status check_component(const vtx_component *c)
{
    const vtx_status status = check_shape(c);
    return c ? worse(status, check_conductance(c->sonic_conductance)) : status;
}

/* An open component whose cracking pressure reaches beyond its critical ratio follows no law. */
static vtx_status check_span(const vtx_component *c, double inlet_pressure, double outlet_pressure)
{
    const int closed = inlet_pressure - outlet_pressure <= c->cracking_pressure;
    return closed || subsonic_span(c, inlet_pressure) > 0 ? VTX_OK : VTX_OUT_OF_RANGE;
}

vtx_status vtx_component_mass_flow(const vtx_component *component, double inlet_pressure, double inlet_temperature,
                                   double outlet_pressure, double *mass_flow, int32_t *choked)
{
    int32_t sonic;
    vtx_status status = worse(require(mass_flow != NULL), worse(check_component(component),
                                                                check_ends(inlet_pressure, inlet_temperature, outlet_pressure)));
    if (status == VTX_OK)
        status = check_span(component, inlet_pressure, outlet_pressure);
    if (status != VTX_OK) {
        poison_integer(choked, status);
        return poison(mass_flow, status);
    }
    *mass_flow = conductance_slope(component->sonic_conductance, inlet_temperature) * inlet_pressure
        * component_share(component, inlet_pressure, outlet_pressure, &sonic);
    if (choked)
        *choked = sonic;
    return VTX_OK;
}

vtx_status vtx_component_conductance(const vtx_component *component, double mass_flow, double inlet_pressure,
                                     double inlet_temperature, double outlet_pressure, double *conductance)
{
    int32_t sonic;
    vtx_status status = worse(require(conductance != NULL), worse(check_shape(component), check_amount(mass_flow, MASS_FLOW_MAX)));
    status = worse(status, check_ends(inlet_pressure, inlet_temperature, outlet_pressure));
    if (status == VTX_OK)
        status = check_span(component, inlet_pressure, outlet_pressure);
    if (status != VTX_OK)
        return poison(conductance, status);
    *conductance = 0;
    if (!(mass_flow > 0))
        return VTX_OK;
    const double one = conductance_slope(1, inlet_temperature) * inlet_pressure
        * component_share(component, inlet_pressure, outlet_pressure, &sonic);
    if (!(one > 0))
        return poison(conductance, VTX_NO_SOLUTION);
    *conductance = mass_flow / one;
    return check_conductance(*conductance) == VTX_OK ? VTX_OK : poison(conductance, VTX_OUT_OF_RANGE);
}

vtx_status vtx_component_outlet_pressure(const vtx_component *component, double mass_flow, double inlet_pressure,
                                         double inlet_temperature, double *outlet_pressure, double *attainable_mass_flow)
{
    vtx_status status = worse(require(outlet_pressure != NULL), worse(check_component(component), check_amount(mass_flow, MASS_FLOW_MAX)));
    status = worse(status, check_upstream(inlet_pressure, inlet_temperature));
    if (status == VTX_OK && !(subsonic_span(component, inlet_pressure) > 0))
        status = VTX_OUT_OF_RANGE;
    poison(attainable_mass_flow, status);
    if (status != VTX_OK)
        return poison(outlet_pressure, status);
    const double limit = conductance_slope(component->sonic_conductance, inlet_temperature) * inlet_pressure;
    if (!flow_passes(mass_flow, limit, attainable_mass_flow))
        return poison(outlet_pressure, VTX_NO_SOLUTION);
    const double open = span_share(component, mass_flow / limit) * subsonic_span(component, inlet_pressure);
    *outlet_pressure = inlet_pressure - (component->cracking_pressure + open);
    return finish_outlet_pressure(outlet_pressure, attainable_mass_flow);
}

/* pull is the inlet pressure that a choked component would need. */
struct inlet_wish {
    const vtx_component *component;
    double pull, outlet_pressure;
};

/* Of the share e of the span: open = e span with the span at the inlet pressure sought, solved for it. Without a critical
 * ratio there is no end to it: the floor lies far above any accepted pressure. */
static double inlet_pressure_at(const struct inlet_wish *wish, double e)
{
    const double b = wish->component->critical_ratio, cracking = wish->component->cracking_pressure;
    const double open = e * ((1 - b) * wish->outlet_pressure - b * cracking) / larger(1 - e * (1 - b), 1e-7);
    return wish->outlet_pressure + (cracking + open);
}

static double excess_of_span(double e, void *context)
{
    const struct inlet_wish *wish = context;
    return inlet_pressure_at(wish, e) * to_index(e * (2 - e), wish->component->subsonic_index) - wish->pull;
}

/* The flow share is pull over an inlet pressure between opening and choking: that encloses e, but for rounding next to 1. */
static vtx_status solve_span(struct inlet_wish *wish, double *e)
{
    const double highest = smaller(wish->pull / inlet_pressure_at(wish, 0), 1);
    const double lowest = wish->pull * larger(wish->component->critical_ratio / wish->outlet_pressure, 1 / FLOW_PRESSURE_MAX);
    const double low = span_share(wish->component, lowest) * (1 - 1e-7);
    const double high = smaller(span_share(wish->component, highest) * (1 + 1e-7), 1);
    *e = 0;
    if (!(low * 1e-15 > 0))
        return VTX_OK;
    if (low > high || excess_of_span(low, wish) > 0)
        return VTX_OUT_OF_RANGE;
    /* The last digit before choking. */
    if (excess_of_span(high, wish) <= 0)
        return *e = high, VTX_OK;
    return find_root(excess_of_span, wish, low, high, 1e-15 * low, e);
}

vtx_status vtx_component_inlet_pressure(const vtx_component *component, double mass_flow, double inlet_temperature,
                                        double outlet_pressure, double *inlet_pressure)
{
    double e;
    vtx_status status = worse(require(inlet_pressure != NULL), worse(check_component(component), check_amount(mass_flow, MASS_FLOW_MAX)));
    status = worse(status, check_upstream(outlet_pressure, inlet_temperature));
    if (status == VTX_OK && !(component->critical_ratio * component->cracking_pressure < (1 - component->critical_ratio) * outlet_pressure))
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(inlet_pressure, status);
    const double pull = mass_flow / conductance_slope(component->sonic_conductance, inlet_temperature);
    struct inlet_wish wish = { component, pull, outlet_pressure };
    if (pull * component->critical_ratio >= outlet_pressure) {
        *inlet_pressure = pull;
    } else {
        status = solve_span(&wish, &e);
        if (status != VTX_OK)
            return poison(inlet_pressure, status == VTX_OUT_OF_RANGE ? status : VTX_NOT_CONVERGED);
        *inlet_pressure = inlet_pressure_at(&wish, e);
    }
    return *inlet_pressure <= FLOW_PRESSURE_MAX ? VTX_OK : poison(inlet_pressure, VTX_OUT_OF_RANGE);
}

static vtx_status poison_pair(double *conductance, double *critical_ratio, vtx_status status)
{
    poison(critical_ratio, status);
    return poison(conductance, status);
}

static vtx_status check_pair(double c1, double b1, double c2, double b2)
{
    return worse(worse(check_conductance(c1), check_critical_ratio(b1)), worse(check_conductance(c2), check_critical_ratio(b2)));
}

/* Beater's closed form with a = C1/(C2 b1) replaced by ratio = C1/C2, which leaves no division by b1. The pair chokes where
 * its downstream part does, or, when the upstream one is the smaller, where the downstream part just passes that flow.
 * Near equal pressures (1-b)/C^2 adds up. */
vtx_status vtx_conductance_in_series(double upstream_conductance, double upstream_critical_ratio, double downstream_conductance,
                                     double downstream_critical_ratio, double *conductance, double *critical_ratio, double *choking_ratio)
{
    const double c1 = upstream_conductance, c2 = downstream_conductance;
    const double b1 = upstream_critical_ratio, b2 = downstream_critical_ratio;
    double onset;
    const vtx_status status = worse(require(conductance != NULL), check_pair(c1, b1, c2, b2));
    if (status != VTX_OK) {
        poison(choking_ratio, status);
        return poison_pair(conductance, critical_ratio, status);
    }
    const double ratio = c1 / c2;
    if (ratio > b1) {
        const double between = ratio * (ratio * b1 + (1 - b1) * sqrt(square(ratio) + 1 - 2 * b1)) / (square(ratio) + square(1 - b1));
        *conductance = c2 * between;
        onset = b2 * between;
    } else {
        *conductance = c1;
        onset = conductance_outlet_pressure(b2, ratio / b1, b1);
    }
    if (critical_ratio)
        *critical_ratio = larger(1 - square(*conductance / c1) * (1 - b1) - square(*conductance / c2) * (1 - b2), 0);
    if (choking_ratio)
        *choking_ratio = onset;
    return VTX_OK;
}

vtx_status vtx_conductance_in_parallel(double first_conductance, double first_critical_ratio, double second_conductance,
                                       double second_critical_ratio, double *conductance, double *critical_ratio)
{
    const vtx_status status = worse(require(conductance != NULL), check_pair(first_conductance, first_critical_ratio,
                                                                             second_conductance, second_critical_ratio));
    if (status != VTX_OK)
        return poison_pair(conductance, critical_ratio, status);
    *conductance = first_conductance + second_conductance;
    const double small_flow = first_conductance / sqrt(1 - first_critical_ratio) + second_conductance / sqrt(1 - second_critical_ratio);
    if (critical_ratio)
        *critical_ratio = larger(1 - square(*conductance / small_flow), 0);
    return VTX_OK;
}

vtx_status vtx_tube_conductance(double diameter, double length, double *conductance, double *critical_ratio)
{
    const vtx_status status = worse(require(conductance != NULL), worse(check_positive(diameter, 0.002, 0.05), check_amount(length, 100)));
    if (status != VTX_OK)
        return poison_pair(conductance, critical_ratio, status);
    const double relative = 0.029 / sqrt(length / (diameter * sqrt(sqrt(diameter))) + 510);
    *conductance = relative * square(diameter);
    if (critical_ratio)
        *critical_ratio = 474 * relative;
    return VTX_OK;
}
