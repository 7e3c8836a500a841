/* Flow balance of the swirl chamber. */
#include "chamber.h"

#include "../base/root.h"

struct series {
    const struct chamber *chamber;
    const struct way_out *out;
    double pressure;
};

/* Falls with the pressure between the two restrictions. */
static double accessory_excess(double between, void *context)
{
    const struct series *s = context;
    const struct way_out *o = s->out;
    int32_t choked;
    const double through = conductance_mass_flow(o->conductance, o->critical_ratio, between, o->temperature, o->end_pressure, &choked);
    return flow_through(s->chamber, o, s->pressure, between) - through;
}

double flow_out(const struct chamber *c, const struct way_out *o, double pressure)
{
    struct series s = { c, o, pressure };
    double between;
    if (pressure <= o->end_pressure || o->area <= 0)
        return 0;
    if (o->conductance <= 0)
        return flow_through(c, o, pressure, o->end_pressure);
    if (find_root(accessory_excess, &s, o->end_pressure, pressure, 1e-13 * pressure, &between) != VTX_OK)
        return 0;
    return flow_through(c, o, pressure, between);
}

double chamber_excess(double pressure, void *chamber)
{
    const struct chamber *c = chamber;
    int32_t choked;
    return flow_out(c, &c->cold, pressure) + flow_out(c, &c->hot, pressure) - flow_in(c, pressure, &choked);
}

/* Chamber pressure that drives the cold flow out. */
static double pressure_for_cold_flow(const struct chamber *c, double cold_flow, double *cold_pressure)
{
    *cold_pressure = pressure_behind(&c->cold, cold_flow);
    return orifice_inlet_pressure(&c->gas, cold_flow / c->cold.area, c->cold.temperature, *cold_pressure);
}

/* Rises with the flow: the flow against what goes in at the chamber pressure that its cold share needs. */
static double flow_excess(double mass_flow, void *context)
{
    const struct chamber *c = context;
    double cold_pressure;
    int32_t choked;
    const double pressure = pressure_for_cold_flow(c, c->cold_fraction * mass_flow, &cold_pressure);
    return mass_flow - (pressure >= c->inlet_pressure ? 0 : flow_in(c, pressure, &choked));
}

vtx_status chamber_at_cold_fraction(struct chamber *c, double *mass_flow, double *pressure, double *cold_pressure, int32_t *choked)
{
    const double sonic = critical_pressure_ratio(c->gas.heat_capacity_ratio) * c->inlet_pressure;
    const double most = flow_in(c, sonic, choked);
    *mass_flow = most;
    *pressure = pressure_for_cold_flow(c, c->cold_fraction * most, cold_pressure);
    if (*pressure <= sonic)
        return VTX_OK;
    *choked = 0;
    const vtx_status status = find_root(flow_excess, c, 0, most, 1e-15 * most, mass_flow);
    if (status == VTX_OK)
        *pressure = pressure_for_cold_flow(c, c->cold_fraction * *mass_flow, cold_pressure);
    return status;
}
