/* Radial heat flow through a tube and its cover, unchecked. Internal: shared by insulation and surface. */
#ifndef VTX_TUBE_KERNEL_H
#define VTX_TUBE_KERNEL_H

#include <vtx/insulation.h>

#include "../base/numeric.h"

/* K m/W of a ring between two diameters. */
static inline double ring_resistance(double inner, double outer, double conductivity)
{
    return log1p((outer - inner) / inner) / (2 * pi * conductivity);
}

static inline double film_resistance(double diameter, double coefficient) { return 1 / (pi * diameter * coefficient); }

/* From the gas to the outside of the bare tube. */
static inline double bare_tube_resistance(const vtx_covered_tube *t)
{
    return film_resistance(t->inside_diameter, t->inside_coefficient)
         + ring_resistance(t->inside_diameter, t->outside_diameter, t->wall_conductivity);
}

static inline double covered_diameter(const vtx_covered_tube *t) { return t->outside_diameter + 2 * t->cover_thickness; }

static inline double cover_resistance(const vtx_covered_tube *t)
{
    return ring_resistance(t->outside_diameter, covered_diameter(t), t->cover_conductivity);
}

vtx_status check_covered_tube(const vtx_covered_tube *tube);

#endif
