/* Enthalpies of both outlets on the curve, for both models, unchecked. Internal. */
#ifndef VTX_TUBE_OUTLET_KERNEL_H
#define VTX_TUBE_OUTLET_KERNEL_H

#include "expansion.h"

/* peak: peak_work of the expansion. ambient_enthalpy is looked at only where the tube leaks. */
static inline double cold_outlet_enthalpy(const struct expansion *e, const vtx_tube *tube, double peak, double mu, double ambient_enthalpy)
{
    const double h = e->inlet_enthalpy - peak * cold_shape(tube->coldest_fraction, mu);
    return tube->cold_leak == 0 ? h : ambient_enthalpy + (h - ambient_enthalpy) * leak_remainder(tube->cold_leak, mu);
}

static inline double hot_outlet_enthalpy(const struct expansion *e, const vtx_tube *tube, double peak, double mu, double ambient_enthalpy)
{
    const double h = e->inlet_enthalpy + peak * hot_shape(tube->coldest_fraction, mu);
    return tube->hot_leak == 0 ? h : ambient_enthalpy + (h - ambient_enthalpy) * leak_remainder(tube->hot_leak, 1 - mu);
}

#endif
