/* Air receivers and leakage. */
#include <vtx/receiver.h>

#include "compressor_kernel.h"

#define TIME_MIN 1e-3
#define TIME_MAX 1e7

/* Below twice the ambient pressure leaks are no longer sonic; 1/0.528 with a margin. */
#define SONIC_RATIO 2.0

static inline vtx_status check_volume(double volume) { return check_positive(volume, RECEIVER_VOLUME_MIN, RECEIVER_VOLUME_MAX); }

static vtx_status check_pressures(double high_pressure, double low_pressure, double free_air_pressure)
{
    vtx_status status = worse(check_flow_pressure(high_pressure), check_flow_pressure(low_pressure));
    if (status == VTX_OK)
        status = require(low_pressure <= high_pressure);
    return worse(status, check_positive(free_air_pressure, 1e4, 2e5));
}

vtx_status vtx_receiver_time(double volume, double high_pressure, double low_pressure, double free_air_pressure, double demand,
                             double supply, double *time)
{
    vtx_status status = worse(require(time != NULL), check_volume(volume));
    status = worse(status, check_pressures(high_pressure, low_pressure, free_air_pressure));
    status = worse(status, worse(check_positive(demand, NO_FLOW, FREE_AIR_MAX), check_amount(supply, FREE_AIR_MAX)));
    if (status == VTX_OK && !(supply < demand))
        status = VTX_NO_SOLUTION;
    if (status != VTX_OK)
        return poison(time, status);
    *time = receiver_time(volume, high_pressure - low_pressure, free_air_pressure, demand - supply);
    return VTX_OK;
}

vtx_status vtx_receiver_volume(double time, double high_pressure, double low_pressure, double free_air_pressure, double demand,
                               double supply, double *volume)
{
    vtx_status status = worse(require(volume != NULL), check_positive(time, TIME_MIN, TIME_MAX));
    status = worse(status, check_pressures(high_pressure, low_pressure, free_air_pressure));
    status = worse(status, worse(check_amount(demand, FREE_AIR_MAX), check_amount(supply, FREE_AIR_MAX)));
    if (status == VTX_OK)
        status = require(low_pressure < high_pressure);
    if (status != VTX_OK)
        return poison(volume, status);
    /* Seconds that a cubic metre bridges a cubic metre a second. */
    const double unit_time = receiver_time(1, high_pressure - low_pressure, free_air_pressure, 1);
    *volume = time * larger(demand - supply, 0) / unit_time;
    return VTX_OK;
}

vtx_status vtx_leakage_from_cycle(double free_air_delivery, double loaded_time, double unloaded_time, double *leakage)
{
    vtx_status status = worse(require(leakage != NULL), check_positive(free_air_delivery, 1e-6, FREE_AIR_MAX));
    status = worse(status, worse(check_positive(loaded_time, TIME_MIN, TIME_MAX), check_positive(unloaded_time, TIME_MIN, TIME_MAX)));
    if (status != VTX_OK)
        return poison(leakage, status);
    *leakage = free_air_delivery * loaded_time / (loaded_time + unloaded_time);
    return VTX_OK;
}

vtx_status vtx_leakage_from_decay(double volume, double high_pressure, double low_pressure, double time, double free_air_pressure,
                                  double net_pressure, double *leakage)
{
    vtx_status status = worse(require(leakage != NULL), worse(check_volume(volume), check_positive(time, 1, TIME_MAX)));
    status = worse(status, check_pressures(high_pressure, low_pressure, free_air_pressure));
    status = worse(status, check_flow_pressure(net_pressure));
    if (status == VTX_OK)
        status = require(low_pressure < high_pressure);
    if (status == VTX_OK && smaller(low_pressure, net_pressure) < SONIC_RATIO * free_air_pressure)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return poison(leakage, status);
    const double decay_rate = log1p((high_pressure - low_pressure) / low_pressure) / time;
    *leakage = volume * net_pressure * decay_rate / free_air_pressure;
    return VTX_OK;
}
