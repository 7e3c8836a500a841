/* Flow balance of the swirl chamber. */
#include "chamber.h"

#include "../base/root.h"

/* Chamber pressure that drives this much through the opening and what is screwed on. */
static double pressure_for(const struct chamber *c, const struct way_out *o, double mass_flow, double *behind)
{
    *behind = pressure_behind(o, mass_flow);
    return orifice_inlet_pressure(&c->gas, mass_flow / o->area, o->temperature, *behind);
}

struct series {
    const struct chamber *chamber;
    const struct way_out *out;
    double pressure;
};

/* Rises with the flow. Closed forms of the flow, since the pressure between a wide opening and a narrow accessory is hardly below the chamber's
 * and tells the flow to half the digits only. */
static double pressure_excess(double mass_flow, void *context)
{
    const struct series *s = context;
    double behind;
    return pressure_for(s->chamber, s->out, mass_flow, &behind) - s->pressure;
}

double flow_out(const struct chamber *c, const struct way_out *o, double pressure)
{
    struct series s = { c, o, pressure };
    double flow;
    if (pressure <= o->end_pressure || o->area <= 0)
        return 0;
    const double most = flow_through(c, o, pressure, o->end_pressure);
    if (o->conductance <= 0)
        return most;
    /* By rounding the accessory may seem to take nothing away. */
    return find_root(pressure_excess, &s, 0, most, 1e-15 * most, &flow) == VTX_OK ? flow : most;
}

double chamber_excess(double pressure, void *chamber)
{
    const struct chamber *c = chamber;
    int32_t choked;
    return flow_out(c, &c->cold, pressure) + flow_out(c, &c->hot, pressure) - flow_in(c, pressure, &choked);
}

/* Rises with the flow: the flow against what goes in at the chamber pressure that its cold share needs. */
static double flow_excess(double mass_flow, void *context)
{
    const struct chamber *c = context;
    double cold_pressure;
    int32_t choked;
    const double pressure = pressure_for(c, &c->cold, c->cold_fraction * mass_flow, &cold_pressure);
    return mass_flow - (pressure >= c->inlet_pressure ? 0 : flow_in(c, pressure, &choked));
}

vtx_status chamber_at_cold_fraction(struct chamber *c, double *mass_flow, double *pressure, double *cold_pressure, int32_t *choked)
{
    const double sonic = critical_pressure_ratio(c->gas.heat_capacity_ratio) * c->inlet_pressure;
    const double most = flow_in(c, sonic, choked);
    *mass_flow = most;
    *pressure = pressure_for(c, &c->cold, c->cold_fraction * most, cold_pressure);
    if (*pressure <= sonic)
        return VTX_OK;
    *choked = 0;
    const vtx_status status = find_root(flow_excess, c, 0, most, 1e-15 * most, mass_flow);
    if (status == VTX_OK)
        *pressure = pressure_for(c, &c->cold, c->cold_fraction * *mass_flow, cold_pressure);
    return status;
}
