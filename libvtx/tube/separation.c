/* Cold and hot stream at a cold fraction. */
#include <vtx/separation.h>

#include "ideal_streams.h"
#include "real_streams.h"

static vtx_status check_separation(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                                   double humidity_ratio, double cold_pressure, double hot_pressure, double cold_fraction)
{
    vtx_status status = worse(check_tube(tube), check_feed(model, inlet_pressure, inlet_temperature, humidity_ratio));
    status = worse(status, worse(check_outlet(model, inlet_pressure, cold_pressure), check_outlet(model, inlet_pressure, hot_pressure)));
    return worse(status, check_share(cold_fraction));
}

/* Every ordinary call of the perfect gas passes this; what is wrong with another is found out after. NaN is never within. */
static int is_ordinary(const vtx_tube *t, double inlet_pressure, double inlet_temperature, double humidity_ratio, double cold_pressure,
                       double hot_pressure, double cold_fraction)
{
    return t && is_ordinary_tube(t) && inlet_pressure >= inlet_pressure_min && inlet_pressure <= inlet_pressure_max(VTX_AIR_IDEAL) &&
           inlet_temperature >= inlet_temperature_min && inlet_temperature <= inlet_temperature_max && humidity_ratio >= 0 &&
           humidity_ratio <= humidity_ratio_max && cold_pressure >= outlet_pressure_min && cold_pressure <= inlet_pressure &&
           hot_pressure >= outlet_pressure_min && hot_pressure <= inlet_pressure && cold_fraction >= 0 && cold_fraction <= 1;
}

vtx_status vtx_tube_separate(const vtx_tube *tube, int32_t model, double inlet_pressure, double inlet_temperature,
                             double humidity_ratio, double cold_pressure, double hot_pressure, double cold_fraction,
                             vtx_streams *streams)
{
    vtx_status status = VTX_OK;
    if (model != VTX_AIR_IDEAL || !streams ||
        !is_ordinary(tube, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure, cold_fraction))
        status = worse(require(streams != NULL), check_separation(tube, model, inlet_pressure, inlet_temperature, humidity_ratio,
                                                                  cold_pressure, hot_pressure, cold_fraction));
    if (status == VTX_OK && model == VTX_AIR_REAL)
        status = separate_real(tube, inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure, cold_fraction, streams);
    else if (status == VTX_OK)
        separate_ideal(tube, inlet_pressure, inlet_temperature, cold_pressure, hot_pressure, cold_fraction, streams);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(streams, vtx_streams, advisories, status);
}
