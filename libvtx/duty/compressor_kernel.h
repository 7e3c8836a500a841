/* Powers of compression and the load of a compressor, without checks. Internal. */
#ifndef VTX_DUTY_COMPRESSOR_KERNEL_H
#define VTX_DUTY_COMPRESSOR_KERNEL_H

#include <vtx/compressor.h>

#include "../flow/isentropic_kernel.h"

#define FREE_AIR_MAX 1e3
#define POWER_MAX 1e9
#define RECEIVER_VOLUME_MIN 1e-4
#define RECEIVER_VOLUME_MAX 1e5

/* Flows below this do not empty or fill a receiver in anybody's lifetime. */
#define NO_FLOW 1e-9

static inline double isentropic_compression_power(double gamma, double intake_pressure, double discharge_pressure, double free_air)
{
    return -gamma / (gamma - 1) * intake_pressure * free_air * temperature_drop(gamma, intake_pressure, discharge_pressure);
}

/* Time in which a steady flow of free air changes the pressure of a receiver: isothermal, at the intake temperature. */
static inline double receiver_time(double volume, double pressure_change, double intake_pressure, double free_air)
{
    return volume * pressure_change / (intake_pressure * free_air);
}

static inline double terminal_power(const vtx_compressor *c) { return c->full_load_power / c->motor_efficiency; }

/* Share of the time it delivers, when demand and leakage draw this much. */
static inline double duty_cycle(const vtx_compressor *c, double draw) { return smaller(draw / c->free_air_delivery, 1); }

static inline double average_power(const vtx_compressor *c, double cycle)
{
    return terminal_power(c) * (cycle + (1 - cycle) * c->unloaded_power_share);
}

/* Free air that reaches the demand: leakage is served first when there is not enough. */
static inline double demand_met(const vtx_compressor *c, double demand)
{
    return larger(smaller(demand, c->free_air_delivery - c->leakage), 0);
}

vtx_status check_compressor(const vtx_compressor *compressor);

#endif
