/* Moist air: saturation, dew point and frost point. */
#include <vtx/moist_air.h>

#include "moist_humidity.h"

static vtx_status saturation_point(int32_t model, double pressure, double humidity_ratio, int32_t phase, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), moist_check(model, pressure, MOIST_TEMPERATURE_MAX));
    status = worse(status, moist_check_water(humidity_ratio));
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = saturation_temperature_or_nan(model, pressure, moist_vapour_fraction(model, humidity_ratio), phase);
    return is_finite(*temperature) ? VTX_OK : poison(temperature, VTX_OUT_OF_RANGE);
}

vtx_status vtx_dew_point(int32_t model, double pressure, double humidity_ratio, double *temperature)
{
    return saturation_point(model, pressure, humidity_ratio, PHASE_LIQUID, temperature);
}

vtx_status vtx_frost_point(int32_t model, double pressure, double humidity_ratio, double *temperature)
{
    return saturation_point(model, pressure, humidity_ratio, PHASE_ICE, temperature);
}

vtx_status vtx_saturation_humidity_ratio(int32_t model, double pressure, double temperature, double *humidity_ratio)
{
    const vtx_status status = worse(require(humidity_ratio != NULL), moist_check(model, pressure, temperature));
    if (status != VTX_OK)
        return poison(humidity_ratio, status);
    const double x = moist_saturation_fraction(model, pressure, temperature, stable_phase(temperature));
    if (x >= 1)
        return poison(humidity_ratio, VTX_OUT_OF_RANGE);
    *humidity_ratio = moist_humidity_ratio(model, x);
    return VTX_OK;
}
