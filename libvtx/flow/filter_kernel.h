/* Pressure drop of a filter in two terms: the medium's in proportion to the flow, the housing's to its square. Internal. */
#ifndef VTX_FILTER_KERNEL_H
#define VTX_FILTER_KERNEL_H

#include "../base/numeric.h"

/* Density times drop = laminar flow + turbulent flow^2, in Pa kg/m3 and kg/s. */
struct filter_law {
    double laminar, turbulent;
};

/* The law that gives this density times drop at a flow, a share of it laminar. */
static inline struct filter_law filter_law_of(double density_drop, double mass_flow, double laminar_share)
{
    const struct filter_law law = { laminar_share * density_drop / mass_flow, (1 - laminar_share) * density_drop / square(mass_flow) };
    return law;
}

/* volume: m3/kg of the air ahead. */
static inline double filter_drop(const struct filter_law *law, double volume, double mass_flow)
{
    return (law->laminar + law->turbulent * mass_flow) * mass_flow * volume;
}

/* The flow that takes this density times drop. */
static inline double filter_flow(const struct filter_law *law, double density_drop)
{
    return 2 * density_drop / (law->laminar + sqrt(square(law->laminar) + 4 * law->turbulent * density_drop));
}

#endif
