/* The forward pass of a cooler without checks, in the steps that the inverses share. Internal. */
#ifndef VTX_OPERATE_H
#define VTX_OPERATE_H

#include "network.h"

/* Everything about a cooler and its air that does not change with the pressure at its inlet. */
struct operation {
    const vtx_cooler *cooler;
    const vtx_supply *supply;
    const vtx_site *site;
    const vtx_cooler_setting *setting;
    struct network_areas areas;
    double rated_mass_flow;
    double humidity_ratio;
    vtx_tube tube; /* with the surroundings of the site */
};

vtx_status check_cooler(const vtx_cooler *cooler);
vtx_status check_supply(const vtx_supply *supply);
vtx_status check_site(const vtx_site *site);
vtx_status check_setting(const vtx_cooler_setting *setting);

/* Checks all four and prepares. */
vtx_status operation_open(struct operation *o, const vtx_cooler *cooler, const vtx_supply *supply, const vtx_site *site,
                          const vtx_cooler_setting *setting);

/* Flow through the cooler with this pressure at its inlet. */
vtx_status operation_flow(const struct operation *o, double inlet_pressure, struct network_flow *flow);

/* Temperatures, capacities, water and verdicts at this pressure and flow. */
vtx_status operation_point(const struct operation *o, double inlet_pressure, const struct network_flow *flow, double target_temperature,
                           vtx_operating_point *point);

#endif
