/* Perfect-gas laws of the tube, unchecked. Internal. */
#ifndef VTX_TUBE_LAWS_KERNEL_H
#define VTX_TUBE_LAWS_KERNEL_H

#include "../base/numeric.h"

/* ln(in/out) >= 0; the difference keeps its digits when the pressures are nearly equal. */
static inline double log_pressure_ratio(double inlet_pressure, double outlet_pressure)
{
    return 2 * outlet_pressure > inlet_pressure ? -log1p((outlet_pressure - inlet_pressure) / inlet_pressure)
                                                : log(inlet_pressure / outlet_pressure);
}

/* 1 - e^-x for x >= 0; expm1 costs two and a half times as much as exp and is needed for small x only. */
static inline double decay(double x) { return x > 0.125 ? 1 - exp(-x) : -expm1(-x); }

static inline double entropy_change(double heat_capacity, double specific_constant, double inlet_pressure, double inlet_temperature,
                                    double pressure, double temperature)
{
    return heat_capacity * log(temperature / inlet_temperature) - specific_constant * log(pressure / inlet_pressure);
}

/* (temperature, pressure) against the dead state. */
static inline double flow_exergy(double heat_capacity, double specific_constant, double pressure, double temperature,
                                 double dead_pressure, double dead_temperature)
{
    return heat_capacity * (temperature - dead_temperature) -
           dead_temperature * entropy_change(heat_capacity, specific_constant, dead_pressure, dead_temperature, pressure, temperature);
}

#endif
