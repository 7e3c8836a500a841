/* ISO 6358 with subsonic index and cracking pressure, without checks. Internal. */
#ifndef VTX_CONDUCTANCE_KERNEL_H
#define VTX_CONDUCTANCE_KERNEL_H

#include <vtx/conductance.h>

#include "restriction_kernel.h"

/* Pressure difference between opening and choking. Not positive: the law has no subsonic part there. */
static inline double subsonic_span(const vtx_component *c, double inlet_pressure)
{
    return inlet_pressure * (1 - c->critical_ratio) - c->cracking_pressure;
}

static inline double to_index(double x, double index) { return index == 0.5 ? sqrt(x) : pow(x, index); }

/* Flow over choked flow; the span must be positive unless the component is closed. */
static inline double component_share(const vtx_component *c, double inlet_pressure, double outlet_pressure, int32_t *choked)
{
    const double open = inlet_pressure - outlet_pressure - c->cracking_pressure;
    *choked = open > 0 && outlet_pressure <= c->critical_ratio * inlet_pressure;
    if (*choked)
        return 1;
    if (!(open > 0))
        return 0;
    const double e = open / subsonic_span(c, inlet_pressure);
    return to_index(e * (2 - e), c->subsonic_index);
}

/* Share of the span at which the flow is `share` of the choked one. */
static inline double span_share(const vtx_component *c, double share)
{
    const double w = share < 1 ? (c->subsonic_index == 0.5 ? square(share) : pow(share, 1 / c->subsonic_index)) : 1;
    return w / (1 + sqrt(1 - w));
}

#endif
