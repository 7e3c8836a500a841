/* Cold and hot stream at a cold fraction. */
#include <vtx/separation.h>

#include "ideal_streams.h"
#include "real_streams.h"
#include "separation_kernel.h"

static vtx_status check_separation(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                                   double humidity_ratio, double cold_pressure, double hot_pressure, double cold_fraction)
{
    vtx_status status = worse(check_tube(tube), check_feed(model, inlet_pressure, inlet_temperature, humidity_ratio));
    status = worse(status, worse(check_outlet(model, inlet_pressure, cold_pressure), check_outlet(model, inlet_pressure, hot_pressure)));
    return worse(status, check_share(cold_fraction));
}

vtx_status separate_checked(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature, double humidity_ratio,
                            double cold_pressure, double hot_pressure, double cold_fraction, vtx_streams *streams,
                            double other_efficiency, double *other_cold_temperature)
{
    const vtx_status status = worse(require(streams != NULL), check_separation(tube, model, inlet_pressure, inlet_temperature, humidity_ratio,
                                                                               cold_pressure, hot_pressure, cold_fraction));
    if (status != VTX_OK)
        return status;
    if (model == VTX_AIR_REAL)
        return separate_real(tube, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure, cold_fraction, streams,
                             other_efficiency, other_cold_temperature);
    separate_ideal(tube, inlet_pressure, inlet_temperature, cold_pressure, hot_pressure, cold_fraction, streams);
    if (other_cold_temperature) {
        vtx_tube other_tube = *tube;
        vtx_streams other;
        other_tube.peak_efficiency = other_efficiency;
        separate_ideal(&other_tube, inlet_pressure, inlet_temperature, cold_pressure, hot_pressure, cold_fraction, &other);
        *other_cold_temperature = other.cold_temperature;
    }
    return VTX_OK;
}

vtx_status vtx_tube_separate(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                             double humidity_ratio, double cold_pressure, double hot_pressure, double cold_fraction,
                             vtx_streams *streams)
{
    if (model == VTX_AIR_IDEAL && streams && tube && is_ordinary_tube(tube) &&
        are_ordinary_ends(inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure, cold_fraction)) {
        separate_ideal(tube, inlet_pressure, inlet_temperature, cold_pressure, hot_pressure, cold_fraction, streams);
        return VTX_OK;
    }
    const vtx_status status = separate_checked(tube, model, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure,
                                               hot_pressure, cold_fraction, streams, 0, NULL);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(streams, vtx_streams, advisories, status);
}
