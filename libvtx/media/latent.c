/* Heats of vaporisation, sublimation and fusion of pure water. */
#include <vtx/water.h>

#include "caloric_kernel.h"
#include "virials.h"
#include "water_kernel.h"

#define VAPORISATION_TEMPERATURE_MAX 473.15
#define SUBLIMATION_TEMPERATURE_MIN 100.0

/* J/kg at the triple point, IAPWS R6-95(2018). */
static const double triple_vaporisation = 2500915;

/* J/kg of saturated vapour by the virial equation, from an unspecified zero. */
static double vapour_enthalpy(double pressure, double temperature)
{
    const double rt = gas_constant * temperature;
    struct virials v;
    water_virials(temperature, &v);
    const double d = virial_density(pressure / rt, v.ww.value, v.www.value);
    const double residual = d * (v.ww.value - v.ww.first + d * (v.www.value - 0.5 * v.www.first));
    return (water_ideal_part(temperature, log(temperature)).enthalpy + rt * residual) / water_molar_mass;
}

/* Of the vapour at its saturation pressure, with the zero of liquid and ice. */
static double saturated_vapour_enthalpy(double pressure, double temperature)
{
    return triple_vaporisation + water_enthalpy(triple_temperature) + vapour_enthalpy(pressure, temperature)
           - vapour_enthalpy(triple_pressure, triple_temperature);
}

vtx_status vtx_water_vaporisation_enthalpy(double temperature, double *enthalpy)
{
    const vtx_status status = worse(require(enthalpy != NULL),
                                    check_positive(temperature, LIQUID_DENSITY_TEMPERATURE_MIN, VAPORISATION_TEMPERATURE_MAX));
    if (status != VTX_OK)
        return poison(enthalpy, status);
    *enthalpy = saturated_vapour_enthalpy(liquid_saturation_pressure(temperature), temperature) - water_enthalpy(temperature);
    return VTX_OK;
}

vtx_status vtx_ice_sublimation_enthalpy(double temperature, double *enthalpy)
{
    const vtx_status status = worse(require(enthalpy != NULL),
                                    check_positive(temperature, SUBLIMATION_TEMPERATURE_MIN, triple_temperature));
    if (status != VTX_OK)
        return poison(enthalpy, status);
    const double pressure = ice_sublimation_pressure(temperature);
    *enthalpy = saturated_vapour_enthalpy(pressure, temperature) - ice_enthalpy(pressure, temperature);
    return VTX_OK;
}

vtx_status vtx_ice_fusion_enthalpy(double temperature, double *enthalpy)
{
    const vtx_status status = worse(require(enthalpy != NULL),
                                    check_positive(temperature, LIQUID_DENSITY_TEMPERATURE_MIN, triple_temperature));
    if (status != VTX_OK)
        return poison(enthalpy, status);
    *enthalpy = water_enthalpy(temperature) - ice_enthalpy(ice_sublimation_pressure(temperature), temperature);
    return VTX_OK;
}
