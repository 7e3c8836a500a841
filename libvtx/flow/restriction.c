/* Nozzles, orifices and ISO 6358 conductances of constant coefficients. */
#include "restriction_kernel.h"

static vtx_status refuse_orifice(const vtx_gas *gas, double area, double discharge_coefficient, double inlet_pressure,
                                 double inlet_temperature, double outlet_pressure, double *mass_flow, int32_t *choked)
{
    vtx_status status = worse(require(mass_flow != NULL), check_gas(gas));
    status = worse(status, worse(check_flow_area(area), check_coefficient(discharge_coefficient)));
    status = worse(status, check_ends(inlet_pressure, inlet_temperature, outlet_pressure));
    poison_integer(choked, status);
    return poison(mass_flow, status);
}

vtx_status vtx_orifice_mass_flow(const vtx_gas *gas, double area, double discharge_coefficient, double inlet_pressure,
                                 double inlet_temperature, double outlet_pressure, double *mass_flow, int32_t *choked)
{
    int32_t sonic;
    if (!(mass_flow && is_gas(gas) && is_within(area, FLOW_AREA_MIN, FLOW_AREA_MAX)
          && is_within(discharge_coefficient, DISCHARGE_COEFFICIENT_MIN, DISCHARGE_COEFFICIENT_MAX)
          && are_ends(inlet_pressure, inlet_temperature, outlet_pressure)))
        return refuse_orifice(gas, area, discharge_coefficient, inlet_pressure, inlet_temperature, outlet_pressure, mass_flow, choked);
    *mass_flow = area * discharge_coefficient * orifice_flux(gas, inlet_pressure, inlet_temperature, outlet_pressure, &sonic);
    if (choked)
        *choked = sonic;
    return VTX_OK;
}

vtx_status vtx_orifice_area(const vtx_gas *gas, double mass_flow, double discharge_coefficient, double inlet_pressure,
                            double inlet_temperature, double outlet_pressure, double *area)
{
    int32_t sonic;
    vtx_status status = worse(require(area != NULL), check_gas(gas));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_coefficient(discharge_coefficient)));
    status = worse(status, check_ends(inlet_pressure, inlet_temperature, outlet_pressure));
    if (status != VTX_OK)
        return poison(area, status);
    *area = 0;
    if (!(mass_flow > 0))
        return VTX_OK;
    const double flux = discharge_coefficient * orifice_flux(gas, inlet_pressure, inlet_temperature, outlet_pressure, &sonic);
    if (!(flux > 0))
        return poison(area, VTX_NO_SOLUTION);
    *area = mass_flow / flux;
    status = check_flow_area(*area);
    return status == VTX_OK ? VTX_OK : poison(area, VTX_OUT_OF_RANGE);
}

vtx_status vtx_orifice_outlet_pressure(const vtx_gas *gas, double mass_flow, double area, double discharge_coefficient,
                                       double inlet_pressure, double inlet_temperature, double *outlet_pressure,
                                       double *attainable_mass_flow)
{
    vtx_status status = worse(require(outlet_pressure != NULL), check_gas(gas));
    status = worse(status, worse(check_flow_area(area), check_coefficient(discharge_coefficient)));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_upstream(inlet_pressure, inlet_temperature)));
    poison(attainable_mass_flow, status);
    if (status != VTX_OK)
        return poison(outlet_pressure, status);
    const double effective = area * discharge_coefficient;
    const double limit = effective * orifice_choked_flux(gas, inlet_pressure, inlet_temperature);
    if (!flow_passes(mass_flow, limit, attainable_mass_flow))
        return poison(outlet_pressure, VTX_NO_SOLUTION);
    *outlet_pressure = orifice_outlet_pressure(gas, mass_flow / effective, inlet_pressure, inlet_temperature);
    return finish_outlet_pressure(outlet_pressure, attainable_mass_flow);
}

vtx_status vtx_orifice_inlet_pressure(const vtx_gas *gas, double mass_flow, double area, double discharge_coefficient,
                                      double inlet_temperature, double outlet_pressure, double *inlet_pressure)
{
    vtx_status status = worse(require(inlet_pressure != NULL), check_gas(gas));
    status = worse(status, worse(check_flow_area(area), check_coefficient(discharge_coefficient)));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_upstream(outlet_pressure, inlet_temperature)));
    if (status != VTX_OK)
        return poison(inlet_pressure, status);
    *inlet_pressure = orifice_inlet_pressure(gas, mass_flow / (area * discharge_coefficient), inlet_temperature, outlet_pressure);
    return *inlet_pressure <= FLOW_PRESSURE_MAX ? VTX_OK : poison(inlet_pressure, VTX_OUT_OF_RANGE);
}

vtx_status vtx_conductance_mass_flow(double conductance, double critical_ratio, double inlet_pressure,
                                     double inlet_temperature, double outlet_pressure, double *mass_flow, int32_t *choked)
{
    int32_t sonic;
    vtx_status status = worse(require(mass_flow != NULL), worse(check_conductance(conductance), check_critical_ratio(critical_ratio)));
    status = worse(status, check_ends(inlet_pressure, inlet_temperature, outlet_pressure));
    if (status != VTX_OK) {
        poison_integer(choked, status);
        return poison(mass_flow, status);
    }
    *mass_flow = conductance_mass_flow(conductance, critical_ratio, inlet_pressure, inlet_temperature, outlet_pressure, &sonic);
    if (choked)
        *choked = sonic;
    return VTX_OK;
}

vtx_status vtx_conductance_for_mass_flow(double mass_flow, double critical_ratio, double inlet_pressure,
                                         double inlet_temperature, double outlet_pressure, double *conductance)
{
    int32_t sonic;
    vtx_status status = worse(require(conductance != NULL), check_critical_ratio(critical_ratio));
    status = worse(status, check_amount(mass_flow, MASS_FLOW_MAX));
    status = worse(status, check_ends(inlet_pressure, inlet_temperature, outlet_pressure));
    if (status != VTX_OK)
        return poison(conductance, status);
    *conductance = 0;
    if (!(mass_flow > 0))
        return VTX_OK;
    const double one = conductance_mass_flow(1, critical_ratio, inlet_pressure, inlet_temperature, outlet_pressure, &sonic);
    if (!(one > 0))
        return poison(conductance, VTX_NO_SOLUTION);
    *conductance = mass_flow / one;
    return check_conductance(*conductance) == VTX_OK ? VTX_OK : poison(conductance, VTX_OUT_OF_RANGE);
}

vtx_status vtx_conductance_outlet_pressure(double mass_flow, double conductance, double critical_ratio, double inlet_pressure,
                                           double inlet_temperature, double *outlet_pressure, double *attainable_mass_flow)
{
    vtx_status status = worse(require(outlet_pressure != NULL), worse(check_conductance(conductance), check_critical_ratio(critical_ratio)));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_upstream(inlet_pressure, inlet_temperature)));
    poison(attainable_mass_flow, status);
    if (status != VTX_OK)
        return poison(outlet_pressure, status);
    const double limit = conductance_slope(conductance, inlet_temperature) * inlet_pressure;
    if (!flow_passes(mass_flow, limit, attainable_mass_flow))
        return poison(outlet_pressure, VTX_NO_SOLUTION);
    *outlet_pressure = conductance_outlet_pressure(critical_ratio, mass_flow / limit, inlet_pressure);
    return finish_outlet_pressure(outlet_pressure, attainable_mass_flow);
}

vtx_status vtx_conductance_inlet_pressure(double mass_flow, double conductance, double critical_ratio,
                                          double inlet_temperature, double outlet_pressure, double *inlet_pressure)
{
    vtx_status status = worse(require(inlet_pressure != NULL), worse(check_conductance(conductance), check_critical_ratio(critical_ratio)));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_upstream(outlet_pressure, inlet_temperature)));
    if (status != VTX_OK)
        return poison(inlet_pressure, status);
    *inlet_pressure = conductance_inlet_pressure(critical_ratio, mass_flow / conductance_slope(conductance, inlet_temperature), outlet_pressure);
    return *inlet_pressure <= FLOW_PRESSURE_MAX ? VTX_OK : poison(inlet_pressure, VTX_OUT_OF_RANGE);
}
