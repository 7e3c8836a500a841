/* The four restrictions of a vortex tube solved together. */
#include "network.h"

#include "../base/root.h"
#include "../flow/restriction_kernel.h"
#include "../tube/ideal_streams.h"

enum { SWEEPS_MAX = 60 };

/* Relative change of flow and cold fraction at which the sweeps end; each sweep brings one to two digits. */
#define SWEEP_TOLERANCE 1e-13

/* One way out of the chamber: the tube's own opening, then what is screwed on. */
struct outlet {
    const vtx_gas *gas;
    double area;
    double conductance, critical_ratio; /* conductance 0: nothing screwed on */
    double end_pressure;
    double temperature;
};

static double pressure_behind(const struct outlet *o, double mass_flow)
{
    if (o->conductance <= 0)
        return o->end_pressure;
    return conductance_inlet_pressure(o->critical_ratio, mass_flow / conductance_slope(o->conductance, o->temperature), o->end_pressure);
}

static double flow_to(const struct outlet *o, double chamber_pressure, double pressure)
{
    int32_t choked;
    return pressure >= chamber_pressure ? 0 : o->area * orifice_flux(o->gas, chamber_pressure, o->temperature, pressure, &choked);
}

struct outlet_search {
    const struct outlet *outlet;
    double chamber_pressure;
};

/* Falls with the pressure between the two restrictions. */
static double accessory_excess(double pressure, void *context)
{
    const struct outlet_search *s = context;
    const struct outlet *o = s->outlet;
    int32_t choked;
    const double through = conductance_mass_flow(o->conductance, o->critical_ratio, pressure, o->temperature, o->end_pressure, &choked);
    return flow_to(o, s->chamber_pressure, pressure) - through;
}

static double outlet_flow(const struct outlet *o, double chamber_pressure)
{
    struct outlet_search s = { o, chamber_pressure };
    double between;
    if (chamber_pressure <= o->end_pressure || o->area <= 0)
        return 0;
    if (o->conductance <= 0)
        return flow_to(o, chamber_pressure, o->end_pressure);
    if (find_root(accessory_excess, &s, o->end_pressure, chamber_pressure, 1e-13 * chamber_pressure, &between) != VTX_OK)
        return 0;
    return flow_to(o, chamber_pressure, between);
}

struct chamber {
    vtx_gas gas;
    double inlet_area;
    const struct network_ends *ends;
    struct outlet cold, hot;
    double cold_fraction;
};

static void open_chamber(struct chamber *c, const vtx_cooler *cooler, const struct network_areas *areas, const struct network_ends *ends)
{
    vtx_gas_init(&c->gas);
    c->inlet_area = areas->inlet * cooler->inlet_area_factor;
    c->ends = ends;
    c->cold = (struct outlet){ &c->gas, areas->cold * cooler->cold_area_factor, cooler->outlet_conductance * cooler->outlets, cooler->outlet_critical_ratio,
                               ends->cold_pressure, ends->inlet_temperature };
    c->hot = (struct outlet){ &c->gas, areas->hot, cooler->hot_conductance, cooler->hot_critical_ratio, ends->hot_pressure,
                              ends->inlet_temperature };
}

static double inlet_flow(const struct chamber *c, double chamber_pressure, int32_t *choked)
{
    return c->inlet_area * orifice_flux(&c->gas, c->ends->inlet_pressure, c->ends->inlet_temperature, chamber_pressure, choked);
}

static void stream_temperatures(const vtx_cooler *cooler, struct chamber *c, const struct network_flow *flow)
{
    const struct network_ends *e = c->ends;
    vtx_streams streams;
    separate_ideal(&cooler->tube, e->inlet_pressure, e->inlet_temperature, smaller(flow->cold_pressure, e->inlet_pressure),
                   smaller(flow->hot_pressure, e->inlet_pressure), flow->cold_fraction, &streams);
    c->cold.temperature = streams.cold_temperature;
    c->hot.temperature = streams.hot_temperature;
}

vtx_status network_rate(const vtx_cooler *cooler, double rated_mass_flow, struct network_areas *areas)
{
    const struct network_ends ends = { cooler->rated_pressure, cooler->rated_temperature, cooler->rated_cold_pressure,
                                       cooler->rated_hot_pressure };
    const double chamber_pressure = cooler->chamber_pressure_ratio * cooler->rated_pressure;
    const struct network_flow rated = { .cold_fraction = cooler->rated_cold_fraction, .cold_pressure = ends.cold_pressure,
                                        .hot_pressure = ends.hot_pressure };
    const struct network_areas unit = { 1, 1, 1 };
    struct chamber c;
    int32_t choked;
    if (!(chamber_pressure > larger(ends.cold_pressure, ends.hot_pressure)))
        return VTX_OUT_OF_RANGE;
    open_chamber(&c, cooler, &unit, &ends);
    c.inlet_area = c.cold.area = 1; /* the rated ones, whatever has become of them */
    stream_temperatures(cooler, &c, &rated);
    areas->inlet = rated_mass_flow / inlet_flow(&c, chamber_pressure, &choked);
    areas->cold = rated_mass_flow * rated.cold_fraction / flow_to(&c.cold, chamber_pressure, ends.cold_pressure);
    areas->hot = rated_mass_flow * (1 - rated.cold_fraction) / flow_to(&c.hot, chamber_pressure, ends.hot_pressure);
    return VTX_OK;
}

/* Chamber pressure that drives the cold flow out. */
static double chamber_for_cold_flow(const struct chamber *c, double cold_flow, double *cold_pressure)
{
    *cold_pressure = pressure_behind(&c->cold, cold_flow);
    return orifice_inlet_pressure(&c->gas, cold_flow / c->cold.area, c->cold.temperature, *cold_pressure);
}

/* Rises with the flow: what goes in at the chamber pressure that this flow's cold share needs, against the flow. */
static double flow_excess(double mass_flow, void *context)
{
    const struct chamber *c = context;
    double cold_pressure;
    int32_t choked;
    const double chamber_pressure = chamber_for_cold_flow(c, c->cold_fraction * mass_flow, &cold_pressure);
    return mass_flow - (chamber_pressure >= c->ends->inlet_pressure ? 0 : inlet_flow(c, chamber_pressure, &choked));
}

static vtx_status flow_at_temperatures(struct chamber *c, struct network_flow *flow)
{
    const double most = inlet_flow(c, critical_pressure_ratio(c->gas.heat_capacity_ratio) * c->ends->inlet_pressure, &flow->choked);
    flow->mass_flow = most;
    flow->chamber_pressure = chamber_for_cold_flow(c, c->cold_fraction * most, &flow->cold_pressure);
    if (flow->chamber_pressure <= critical_pressure_ratio(c->gas.heat_capacity_ratio) * c->ends->inlet_pressure)
        return VTX_OK;
    flow->choked = 0;
    vtx_status status = find_root(flow_excess, c, 0, most, 1e-15 * most, &flow->mass_flow);
    if (status == VTX_OK)
        flow->chamber_pressure = chamber_for_cold_flow(c, c->cold_fraction * flow->mass_flow, &flow->cold_pressure);
    return status;
}

/* What the hot valve must be for the chamber pressure to hold. */
static double opening_for(const struct chamber *c, const struct network_flow *flow)
{
    const double hot_flow = (1 - flow->cold_fraction) * flow->mass_flow;
    const double through = flow_to(&c->hot, flow->chamber_pressure, flow->hot_pressure);
    if (hot_flow <= 0)
        return 0;
    return through > 0 ? hot_flow / through : quiet_nan();
}

static int unchanged(double now, double before) { return fabs(now - before) <= SWEEP_TOLERANCE * now; }

vtx_status network_at_cold_fraction(const vtx_cooler *cooler, const struct network_areas *areas, const struct network_ends *ends,
                                    double cold_fraction, struct network_flow *flow)
{
    struct chamber c;
    struct network_flow before;
    open_chamber(&c, cooler, areas, ends);
    c.cold_fraction = cold_fraction;
    *flow = (struct network_flow){ .cold_fraction = cold_fraction, .cold_pressure = ends->cold_pressure, .hot_pressure = ends->hot_pressure };
    for (int i = 0; i < SWEEPS_MAX; i++) {
        before = *flow;
        stream_temperatures(cooler, &c, flow);
        const vtx_status status = flow_at_temperatures(&c, flow);
        if (status != VTX_OK)
            return status;
        flow->hot_pressure = pressure_behind(&c.hot, (1 - cold_fraction) * flow->mass_flow);
        if (unchanged(flow->mass_flow, before.mass_flow) && unchanged(flow->cold_pressure, before.cold_pressure)
            && unchanged(flow->hot_pressure, before.hot_pressure)) {
            flow->valve_opening = opening_for(&c, flow);
            return VTX_OK;
        }
    }
    return VTX_NOT_CONVERGED;
}

/* Rises with the chamber pressure. */
static double chamber_excess(double pressure, void *context)
{
    const struct chamber *c = context;
    int32_t choked;
    return outlet_flow(&c->cold, pressure) + outlet_flow(&c->hot, pressure) - inlet_flow(c, pressure, &choked);
}

vtx_status network_at_opening(const vtx_cooler *cooler, const struct network_areas *areas, const struct network_ends *ends,
                              double valve_opening, struct network_flow *flow)
{
    struct chamber c;
    vtx_status status = VTX_OK;
    open_chamber(&c, cooler, areas, ends);
    c.hot.area *= valve_opening;
    flow->cold_fraction = cooler->rated_cold_fraction;
    flow->cold_pressure = ends->cold_pressure;
    flow->hot_pressure = ends->hot_pressure;
    flow->valve_opening = valve_opening;
    for (int i = 0; i < SWEEPS_MAX; i++) {
        const double before = flow->cold_fraction;
        stream_temperatures(cooler, &c, flow);
        status = find_root(chamber_excess, &c, smaller(ends->cold_pressure, ends->hot_pressure), ends->inlet_pressure,
                           1e-14 * ends->inlet_pressure, &flow->chamber_pressure);
        if (status != VTX_OK)
            return status;
        const double cold = outlet_flow(&c.cold, flow->chamber_pressure);
        const double hot = outlet_flow(&c.hot, flow->chamber_pressure);
        flow->mass_flow = inlet_flow(&c, flow->chamber_pressure, &flow->choked);
        if (cold + hot <= 0)
            return VTX_NO_SOLUTION;
        flow->cold_fraction = cold / (cold + hot);
        flow->cold_pressure = pressure_behind(&c.cold, cold);
        flow->hot_pressure = pressure_behind(&c.hot, hot);
        if (fabs(flow->cold_fraction - before) <= SWEEP_TOLERANCE)
            return VTX_OK;
    }
    return VTX_NOT_CONVERGED;
}
