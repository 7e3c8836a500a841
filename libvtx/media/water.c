/* Liquid water at saturation. */
#include <vtx/water.h>

#include "caloric_kernel.h"
#include "water_kernel.h"

/* IAPWS SR1-86(1992), equation 2. */
double water_density(double temperature)
{
    static const double b[6] = { 1.99274064, 1.09965342, -0.510839303, -1.75493479, -45.5170352, -6.74694450e5 };
    static const double thirds[6] = { 1, 2, 5, 16, 43, 110 };
    const double tau = 1 - temperature / WATER_TEMPERATURE_MAX;
    double sum = 1;
    for (int i = 0; i < 6; i++)
        sum += b[i] * pow(tau, thirds[i] / 3);
    return 322 * sum;
}

/* IAPWS SR1-86(1992), equations 4 and 6: h' = alpha + T/rho' dp/dT, coefficients from memory, found within 3 J/kg of
 * IAPWS-95 up to 373 K. */
double water_enthalpy(double temperature)
{
    const double theta = temperature / WATER_TEMPERATURE_MAX;
    const double fourth = square(square(theta));
    const double alpha = -1135.905627715 - 5.65134998e-8 * pow(theta, -19) + 2690.66631 * theta
                         + 127.287297 * fourth * sqrt(theta) - 135.003439 * fourth * theta + 0.981825814 * pow(theta, 54.5);
    return 1000 * alpha + temperature / water_density(temperature) * liquid_saturation(temperature).slope;
}

static vtx_status check_temperature(double temperature, double lowest)
{
    return check_positive(temperature, lowest, WATER_TEMPERATURE_MAX);
}

vtx_status vtx_water_saturation_pressure(double temperature, double *pressure)
{
    const vtx_status status = worse(require(pressure != NULL), check_temperature(temperature, SUPERCOOLED_TEMPERATURE_MIN));
    if (status != VTX_OK)
        return poison(pressure, status);
    *pressure = liquid_saturation_pressure(temperature);
    return VTX_OK;
}

vtx_status vtx_water_saturation_temperature(double pressure, double *temperature)
{
    const vtx_status status = worse(require(temperature != NULL),
                                    check_positive(pressure, SUPERCOOLED_PRESSURE_MIN, WATER_PRESSURE_MAX));
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = liquid_saturation_temperature(pressure);
    return VTX_OK;
}

vtx_status vtx_water_saturation_slope(double temperature, double *slope)
{
    const vtx_status status = worse(require(slope != NULL), check_temperature(temperature, SUPERCOOLED_TEMPERATURE_MIN));
    if (status != VTX_OK)
        return poison(slope, status);
    *slope = liquid_saturation(temperature).slope;
    return VTX_OK;
}

vtx_status vtx_water_density(double temperature, double *density)
{
    const vtx_status status = worse(require(density != NULL), check_temperature(temperature, LIQUID_DENSITY_TEMPERATURE_MIN));
    if (status != VTX_OK)
        return poison(density, status);
    *density = water_density(temperature);
    return VTX_OK;
}

vtx_status vtx_water_enthalpy(double temperature, double *enthalpy)
{
    const vtx_status status = worse(require(enthalpy != NULL), check_temperature(temperature, LIQUID_DENSITY_TEMPERATURE_MIN));
    if (status != VTX_OK)
        return poison(enthalpy, status);
    *enthalpy = water_enthalpy(temperature);
    return VTX_OK;
}
