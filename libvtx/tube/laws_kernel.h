/* Perfect-gas laws of the tube, unchecked. Internal. */
#ifndef VTX_TUBE_LAWS_KERNEL_H
#define VTX_TUBE_LAWS_KERNEL_H

#include "../base/elementary.h"

static inline double log_pressure_ratio(double inlet_pressure, double outlet_pressure) { return log_ratio(inlet_pressure, outlet_pressure); }

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
