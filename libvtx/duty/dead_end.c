/* Dead-end pressure. */
#include <vtx/dead_end.h>

#include "../base/root.h"
#include "../flow/restriction_kernel.h"

#define SUPPLY_MAX 1e10

/* The temperature is the same at both openings and drops out, as does the gas constant. */
static const double any_temperature = 300;

struct vented_space {
    vtx_gas gas;
    double area_ratio; /* relief over feed */
    double supply_pressure;
    double ambient_pressure;
};

/* Supply pressure that keeps the space at a pressure while it is vented. */
static double supply_for(const struct vented_space *s, double pressure)
{
    int32_t choked;
    const double relief_flux = orifice_flux(&s->gas, pressure, any_temperature, s->ambient_pressure, &choked);
    return orifice_inlet_pressure(&s->gas, s->area_ratio * relief_flux, any_temperature, pressure);
}

static double excess_supply(double pressure, void *context)
{
    const struct vented_space *s = context;
    return (supply_for(s, pressure) - s->supply_pressure) / s->supply_pressure;
}

static vtx_status check_space(double gamma, double feed_area, double relief_area, double inner_pressure, double ambient_pressure)
{
    vtx_status status = worse(check_gamma(gamma), worse(check_flow_area(feed_area), check_amount(relief_area, FLOW_AREA_MAX)));
    status = worse(status, worse(check_flow_pressure(inner_pressure), check_flow_pressure(ambient_pressure)));
    return status == VTX_OK ? require(ambient_pressure <= inner_pressure) : status;
}

static struct vented_space space_of(double gamma, double feed_area, double relief_area, double supply_pressure, double ambient_pressure)
{
    struct vented_space s = { .area_ratio = relief_area / feed_area, .supply_pressure = supply_pressure,
                              .ambient_pressure = ambient_pressure };
    vtx_gas_init(&s.gas);
    s.gas.heat_capacity_ratio = gamma;
    return s;
}

vtx_status vtx_dead_end_pressure(double gamma, double feed_area, double relief_area, double supply_pressure, double ambient_pressure,
                                 double *dead_end_pressure)
{
    vtx_status status = worse(require(dead_end_pressure != NULL),
                              check_space(gamma, feed_area, relief_area, supply_pressure, ambient_pressure));
    if (status != VTX_OK)
        return poison(dead_end_pressure, status);
    struct vented_space s = space_of(gamma, feed_area, relief_area, supply_pressure, ambient_pressure);
    return find_root(excess_supply, &s, ambient_pressure, supply_pressure, 1e-12 * supply_pressure, dead_end_pressure);
}

vtx_status vtx_dead_end_supply_pressure(double gamma, double feed_area, double relief_area, double ambient_pressure,
                                        double dead_end_pressure, double *supply_pressure)
{
    vtx_status status = worse(require(supply_pressure != NULL),
                              check_space(gamma, feed_area, relief_area, dead_end_pressure, ambient_pressure));
    if (status != VTX_OK)
        return poison(supply_pressure, status);
    const struct vented_space s = space_of(gamma, feed_area, relief_area, dead_end_pressure, ambient_pressure);
    const double supply = supply_for(&s, dead_end_pressure);
    if (supply > SUPPLY_MAX)
        return poison(supply_pressure, VTX_OUT_OF_RANGE);
    *supply_pressure = supply;
    return VTX_OK;
}

vtx_status vtx_cleaning_air_verdict(double dead_end_pressure, double ambient_pressure, vtx_dead_end *verdict)
{
    vtx_status status = worse(require(verdict != NULL), check_flow_pressure(dead_end_pressure));
    status = worse(status, check_flow_pressure(ambient_pressure));
    if (status == VTX_OK)
        status = require(ambient_pressure <= dead_end_pressure);
    if (status != VTX_OK)
        return POISON_STRUCT(verdict, vtx_dead_end, cleaning_permitted, status);
    verdict->gauge_pressure = dead_end_pressure - ambient_pressure;
    verdict->margin = VTX_CLEANING_AIR_LIMIT - verdict->gauge_pressure;
    verdict->cleaning_permitted = verdict->gauge_pressure < VTX_CLEANING_AIR_LIMIT;
    verdict->advisories = verdict->cleaning_permitted ? 0 : VTX_ADVISORY_DEAD_END_PRESSURE;
    return VTX_OK;
}
