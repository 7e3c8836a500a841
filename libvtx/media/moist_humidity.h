/* Humidity measures of moist air into the vapour's mole fraction and back. Internal to the moist_air room. */
#ifndef VTX_MOIST_HUMIDITY_H
#define VTX_MOIST_HUMIDITY_H

#include "moist_kernel.h"

#define DEW_POINT_MIN SUPERCOOLED_TEMPERATURE_MIN

/* What rounding may add to a saturation temperature at an end of its range, K. */
static const double temperature_rounding = 1e-9;

/* Dew point (liquid) or frost point (ice), NaN where that phase does not exist or no vapour does. */
static inline double saturation_temperature_or_nan(int32_t model, double pressure, double vapour_fraction, int32_t phase)
{
    const double low = phase == PHASE_ICE ? moist_temperature_min(model, pressure) : DEW_POINT_MIN;
    const double high = phase == PHASE_ICE ? triple_temperature : MOIST_TEMPERATURE_MAX;
    if (vapour_fraction <= 0)
        return quiet_nan();
    const double temperature = moist_saturation_temperature(model, pressure, vapour_fraction, phase);
    if (temperature < low - temperature_rounding || temperature > high + temperature_rounding)
        return quiet_nan();
    return within(temperature, low, high);
}

#endif
