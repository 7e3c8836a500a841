/* Moist air: states, humidity measures, dew and frost points. */
#include <vtx/moist_air.h>

#include "ideal_humidity_kernel.h"

static vtx_status check_humidity_measure(int32_t property)
{
    return require(property >= VTX_HUMIDITY_RATIO && property <= VTX_ABSOLUTE_HUMIDITY);
}

static vtx_status saturation_point(int32_t model, double pressure, double humidity_ratio, int32_t phase, double *temperature)
{
    vtx_status status = worse(require(temperature != NULL), moist_check(model, pressure, MOIST_TEMPERATURE_MAX));
    status = worse(status, moist_check_water(humidity_ratio));
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = moist_dew_or_frost_point(model, pressure, moist_vapour_fraction(model, humidity_ratio), phase);
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

vtx_status vtx_moist_air_at(int32_t model, double pressure, double temperature, int32_t property, double value, vtx_moist_air *state)
{
    vtx_status status = worse(require(state != NULL), moist_check(model, pressure, temperature));
    status = worse(status, worse(check_finite(value), check_humidity_measure(property)));
    if (status == VTX_OK)
        status = moist_state_of_humidity(model, pressure, temperature, property, value, state);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(state, vtx_moist_air, advisories, status);
}

/* What weather years ask for; NaN for all else. */
static double frequent_humidity(int32_t model, double pressure, double temperature, int32_t property, double value, int32_t wanted)
{
    if (model != VTX_AIR_IDEAL || property != VTX_RELATIVE_HUMIDITY || !is_ordinary_humidity(pressure, temperature, value))
        return quiet_nan();
    const double root = liquid_root(temperature);
    if (wanted == VTX_DEW_POINT)
        return ideal_dew_point_of_humidity(value, root, pressure);
    return wanted == VTX_WET_BULB ? ideal_wet_bulb_of_humidity(value, square(square(root)), pressure, temperature) : quiet_nan();
}

vtx_status vtx_moist_air_humidity(int32_t model, double pressure, double temperature, int32_t property, double value, int32_t wanted,
                                  double *result)
{
    const double frequent = frequent_humidity(model, pressure, temperature, property, value, wanted);
    if (is_finite(frequent) && result) {
        *result = frequent;
        return VTX_OK;
    }
    vtx_status status = worse(require(result != NULL), moist_check(model, pressure, temperature));
    status = worse(status, worse(check_finite(value), worse(check_humidity_measure(property), check_humidity_measure(wanted))));
    if (status == VTX_OK)
        status = moist_convert_humidity(model, pressure, temperature, property, value, wanted, result);
    return status == VTX_OK ? VTX_OK : poison(result, status);
}

static vtx_status point_at_pressure(int32_t model, double pressure, double point, double new_pressure, int32_t phase, double *new_point)
{
    double x;
    vtx_status status = worse(require(new_point != NULL), moist_check(model, pressure, MOIST_TEMPERATURE_MAX));
    status = worse(status, worse(moist_check(model, new_pressure, MOIST_TEMPERATURE_MAX), check_finite(point)));
    if (status == VTX_OK)
        status = moist_fraction_of_saturation(model, pressure, point, phase, &x);
    if (status != VTX_OK)
        return poison(new_point, status);
    *new_point = moist_dew_or_frost_point(model, new_pressure, x, phase);
    return is_finite(*new_point) ? VTX_OK : poison(new_point, VTX_OUT_OF_RANGE);
}

vtx_status vtx_dew_point_at_pressure(int32_t model, double pressure, double dew_point, double new_pressure, double *new_dew_point)
{
    return point_at_pressure(model, pressure, dew_point, new_pressure, PHASE_LIQUID, new_dew_point);
}

vtx_status vtx_frost_point_at_pressure(int32_t model, double pressure, double frost_point, double new_pressure, double *new_frost_point)
{
    return point_at_pressure(model, pressure, frost_point, new_pressure, PHASE_ICE, new_frost_point);
}
