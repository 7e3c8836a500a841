/* Perfect-gas flow without losses. */
#include "isentropic_kernel.h"

vtx_status vtx_gas_init(vtx_gas *gas)
{
    if (!gas)
        return VTX_BAD_ARGUMENT;
    memset(gas, 0, sizeof *gas);
    gas->molar_mass = dry_air_molar_mass;
    gas->heat_capacity_ratio = 1.4;
    gas->compressibility = 1;
    return VTX_OK;
}

vtx_status vtx_isentropic_temperature(double gamma, double inlet_pressure, double inlet_temperature, double outlet_pressure,
                                      double *outlet_temperature)
{
    vtx_status status = worse(require(outlet_temperature && !(outlet_pressure > inlet_pressure)), check_gamma(gamma));
    status = worse(status, worse(check_flow_pressure(inlet_pressure), check_flow_pressure(outlet_pressure)));
    status = worse(status, check_flow_temperature(inlet_temperature));
    if (status != VTX_OK)
        return poison(outlet_temperature, status);
    *outlet_temperature = isentropic_temperature(gamma, inlet_pressure, inlet_temperature, outlet_pressure);
    return VTX_OK;
}

vtx_status vtx_critical_pressure_ratio(double gamma, double *ratio)
{
    const vtx_status status = worse(require(ratio != NULL), check_gamma(gamma));
    if (status != VTX_OK)
        return poison(ratio, status);
    *ratio = critical_pressure_ratio(gamma);
    return VTX_OK;
}
