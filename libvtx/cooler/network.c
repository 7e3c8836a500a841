/* The four restrictions of a vortex tube solved together. */
#include "network.h"

#include "../base/root.h"
#include "../tube/chamber.h"
#include "../tube/ideal_streams.h"

enum { SWEEPS_MAX = 60 };

/* Relative change of flow and cold fraction at which the sweeps end; each sweep brings one to two digits. */
#define SWEEP_TOLERANCE 1e-13

static void open_chamber(struct chamber *c, const vtx_cooler *cooler, const struct network_areas *areas, const struct network_ends *ends)
{
    vtx_gas_init(&c->gas);
    c->inlet_area = areas->inlet * cooler->inlet_area_factor;
    c->inlet_pressure = ends->inlet_pressure;
    c->inlet_temperature = ends->inlet_temperature;
    c->cold = (struct way_out){ areas->cold * cooler->cold_area_factor, cooler->outlet_conductance * cooler->outlets, cooler->outlet_critical_ratio,
                                ends->cold_pressure, ends->inlet_temperature };
    c->hot = (struct way_out){ areas->hot, cooler->hot_conductance, cooler->hot_critical_ratio, ends->hot_pressure, ends->inlet_temperature };
}

static void stream_temperatures(const vtx_cooler *cooler, struct chamber *c, const struct network_flow *flow)
{
    vtx_streams streams;
    separate_ideal(&cooler->tube, c->inlet_pressure, c->inlet_temperature, smaller(flow->cold_pressure, c->inlet_pressure),
                   smaller(flow->hot_pressure, c->inlet_pressure), flow->cold_fraction, &streams);
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
    areas->inlet = rated_mass_flow / flow_in(&c, chamber_pressure, &choked);
    areas->cold = rated_mass_flow * rated.cold_fraction / flow_through(&c, &c.cold, chamber_pressure, ends.cold_pressure);
    areas->hot = rated_mass_flow * (1 - rated.cold_fraction) / flow_through(&c, &c.hot, chamber_pressure, ends.hot_pressure);
    return VTX_OK;
}

/* What the hot valve must be for the chamber pressure to hold. */
static double opening_for(const struct chamber *c, const struct network_flow *flow)
{
    const double hot_flow = (1 - flow->cold_fraction) * flow->mass_flow;
    const double through = flow_through(c, &c->hot, flow->chamber_pressure, flow->hot_pressure);
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
        const vtx_status status = chamber_at_cold_fraction(&c, &flow->mass_flow, &flow->chamber_pressure, &flow->cold_pressure, &flow->choked);
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

/* Chamber pressure, share of the inlet's. */
#define CHAMBER_TOLERANCE 1e-14

/* What the chamber pressure's tolerance makes of the cold fraction: much where an outlet has hardly any pressure left to drive it, since its
 * flow goes with the root of what is left. Below that the sweeps wander. */
static double fraction_doubt(const struct chamber *c, const struct network_flow *flow)
{
    const double doubt = 2 * CHAMBER_TOLERANCE * c->inlet_pressure, least = flow->chamber_pressure * DBL_EPSILON;
    const double cold = larger(flow->chamber_pressure - c->cold.end_pressure, least), hot = larger(flow->chamber_pressure - c->hot.end_pressure, least);
    return flow->cold_fraction * (1 - flow->cold_fraction) * doubt * (0.5 / cold + 0.5 / hot);
}

/* The flow at the temperatures of an assumed cold fraction and the pressures of the sweep before. */
static vtx_status sweep(const vtx_cooler *cooler, struct chamber *c, struct network_flow *flow)
{
    stream_temperatures(cooler, c, flow);
    const vtx_status status = find_root(chamber_excess, c, smaller(c->cold.end_pressure, c->hot.end_pressure), c->inlet_pressure,
                                        CHAMBER_TOLERANCE * c->inlet_pressure, &flow->chamber_pressure);
    if (status != VTX_OK)
        return status;
    const double cold = flow_out(c, &c->cold, flow->chamber_pressure);
    const double hot = flow_out(c, &c->hot, flow->chamber_pressure);
    flow->mass_flow = flow_in(c, flow->chamber_pressure, &flow->choked);
    if (cold + hot <= 0)
        return VTX_NO_SOLUTION;
    flow->cold_fraction = cold / (cold + hot);
    flow->cold_pressure = pressure_behind(&c->cold, cold);
    flow->hot_pressure = pressure_behind(&c->hot, hot);
    return VTX_OK;
}

struct fraction_search {
    const vtx_cooler *cooler;
    struct chamber *chamber;
    struct network_flow *flow;
    vtx_status status;
};

/* From 0 or more to 0 or less: what comes of a cold fraction, less that. The cold pressure settles at once: little flow, little of it. */
static double fraction_excess(double cold_fraction, void *context)
{
    struct fraction_search *s = context;
    double before = 0;
    for (int i = 0; i < SWEEPS_MAX && !unchanged(s->flow->cold_pressure, before); i++) {
        before = s->flow->cold_pressure;
        s->flow->cold_fraction = cold_fraction;
        s->status = sweep(s->cooler, s->chamber, s->flow);
        if (s->status != VTX_OK)
            return quiet_nan();
    }
    return s->flow->cold_fraction - cold_fraction;
}

/* Where an outlet is almost without flow a degree changes that by more than the degree came from: the sweeps swing, a bracket holds. */
static vtx_status search_fraction(struct fraction_search *s)
{
    double cold_fraction;
    const vtx_status status = find_root(fraction_excess, s, 0, 1, 1e-15, &cold_fraction);
    if (status == VTX_OK)
        fraction_excess(cold_fraction, s);
    return s->status != VTX_OK ? s->status : status;
}

vtx_status network_at_opening(const vtx_cooler *cooler, const struct network_areas *areas, const struct network_ends *ends,
                              double valve_opening, struct network_flow *flow)
{
    struct chamber c;
    struct fraction_search s = { .cooler = cooler, .chamber = &c, .flow = flow };
    open_chamber(&c, cooler, areas, ends);
    c.hot.area *= valve_opening;
    flow->cold_fraction = cooler->rated_cold_fraction;
    flow->cold_pressure = ends->cold_pressure;
    flow->hot_pressure = ends->hot_pressure;
    flow->valve_opening = valve_opening;
    for (int i = 0; i < SWEEPS_MAX; i++) {
        const double before = flow->cold_fraction;
        const vtx_status status = sweep(cooler, &c, flow);
        if (status != VTX_OK)
            return status;
        if (fabs(flow->cold_fraction - before) <= larger(SWEEP_TOLERANCE, fraction_doubt(&c, flow)))
            return VTX_OK;
    }
    return search_fraction(&s);
}
