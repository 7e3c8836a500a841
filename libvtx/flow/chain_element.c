/* The parts of a compressed-air supply. */
#include <vtx/line.h>

#include "chain_kernel.h"
#include "filter_kernel.h"
#include "valve_kernel.h"

#define WAYS_MAX 1e4

/* Common practice, no source: what of its nominal area a quick coupling opens, and its critical ratio. */
static const double coupling_share = 0.5;
static const double coupling_critical_ratio = 0.3;

/* ---- checks: those of the rooms whose laws the elements follow ---- */

static vtx_status check_part(const vtx_chain_element *e)
{
    const vtx_status status = worse(check_conductance(e->conductance), check_critical_ratio(e->critical_ratio));
    return worse(status, worse(check_positive(e->subsonic_index, 0.2, 1), check_amount(e->cracking_pressure, 1e6)));
}

static vtx_status check_line_element(const vtx_chain_element *e)
{
    vtx_status status = require(e->law == VTX_LINE_ADIABATIC || e->law == VTX_LINE_ISOTHERMAL);
    status = worse(status, worse(check_positive(e->diameter, BORE_MIN, BORE_MAX), check_amount(e->length, LINE_LENGTH_MAX)));
    status = worse(status, worse(check_amount(e->roughness, BORE_MAX), check_amount(e->minor_loss, LINE_MINOR_LOSS_MAX)));
    return status == VTX_OK && e->roughness > RELATIVE_ROUGHNESS_MAX * e->diameter ? VTX_OUT_OF_RANGE : status;
}

static vtx_status check_valve(const vtx_chain_element *e)
{
    return worse(check_positive(e->flow_coefficient, KV_MIN, KV_MAX), check_factor(e->pressure_ratio_factor));
}

static vtx_status check_filter(const vtx_chain_element *e)
{
    const vtx_status status = worse(check_amount(e->laminar_loss, 1e12), check_amount(e->turbulent_loss, 1e15));
    return status == VTX_OK ? require(e->laminar_loss + e->turbulent_loss > 0) : status;
}

static vtx_status check_regulator(const vtx_chain_element *e)
{
    return worse(check_part(e), worse(check_flow_pressure(e->set_pressure), check_amount(e->droop, 1e12)));
}

vtx_status check_chain_element(const vtx_chain_element *e)
{
    if (!e)
        return VTX_BAD_ARGUMENT;
    const vtx_status port = worse(check_amount(e->diameter, BORE_MAX), require(are_zero(e->reserved, ARRAY_LENGTH(e->reserved))));
    switch (e->kind) {
    case VTX_CHAIN_LINE: return worse(port, check_line_element(e));
    case VTX_CHAIN_CONDUCTANCE:
    case VTX_CHAIN_COUPLING: return worse(port, check_part(e));
    case VTX_CHAIN_ORIFICE: return worse(port, check_flow_area(e->effective_area));
    case VTX_CHAIN_VALVE: return worse(port, check_valve(e));
    case VTX_CHAIN_FILTER: return worse(port, check_filter(e));
    case VTX_CHAIN_REGULATOR: return worse(port, check_regulator(e));
    case VTX_CHAIN_MANIFOLD: return worse(port, check_range(e->ways, 1, WAYS_MAX));
    default: return VTX_BAD_ARGUMENT;
    }
}

/* ---- constructors ---- */

vtx_status vtx_chain_element_init(vtx_chain_element *element)
{
    if (!element)
        return VTX_BAD_ARGUMENT;
    memset(element, 0, sizeof *element);
    element->subsonic_index = 0.5;
    element->pressure_ratio_factor = 0.7;
    element->ways = 1;
    element->law = VTX_LINE_ADIABATIC;
    return VTX_OK;
}

static vtx_chain_element blank(int32_t kind)
{
    vtx_chain_element e;
    vtx_chain_element_init(&e);
    e.kind = kind;
    return e;
}

/* Gives the element if it passes the check of its kind. */
static vtx_status give(const vtx_chain_element *e, vtx_status status, vtx_chain_element *element)
{
    status = worse(require(element != NULL), worse(status, check_chain_element(e)));
    if (status != VTX_OK)
        return POISON_STRUCT(element, vtx_chain_element, kind, status);
    *element = *e;
    return VTX_OK;
}

vtx_status vtx_chain_pipe(double diameter, double length, double roughness, double minor_loss, vtx_chain_element *element)
{
    vtx_chain_element e = blank(VTX_CHAIN_LINE);
    e.diameter = diameter;
    e.length = length;
    e.roughness = roughness;
    e.minor_loss = minor_loss;
    return give(&e, VTX_OK, element);
}

vtx_status vtx_chain_hose(double diameter, double length, vtx_chain_element *element)
{
    vtx_line line;
    vtx_line_init(&line);
    return vtx_chain_pipe(diameter, length, line.roughness, line.minor_loss, element);
}

vtx_status vtx_chain_conductance(double conductance, double critical_ratio, vtx_chain_element *element)
{
    vtx_chain_element e = blank(VTX_CHAIN_CONDUCTANCE);
    e.conductance = conductance;
    e.critical_ratio = critical_ratio;
    return give(&e, VTX_OK, element);
}

vtx_status vtx_chain_coupling(double nominal_diameter, vtx_chain_element *element)
{
    const vtx_status status = check_positive(nominal_diameter, 0.002, 0.05);
    vtx_chain_element e = blank(VTX_CHAIN_COUPLING);
    vtx_gas air;
    vtx_gas_init(&air);
    if (status != VTX_OK)
        return POISON_STRUCT(element, vtx_chain_element, kind, status);
    e.diameter = nominal_diameter;
    e.conductance = coupling_share * bore_area(nominal_diameter) * orifice_choked_flux(&air, 1, conductance_temperature)
        / conductance_density;
    e.critical_ratio = coupling_critical_ratio;
    return give(&e, status, element);
}

vtx_status vtx_chain_orifice(double area, double discharge_coefficient, vtx_chain_element *element)
{
    const vtx_status status = worse(check_flow_area(area), check_coefficient(discharge_coefficient));
    vtx_chain_element e = blank(VTX_CHAIN_ORIFICE);
    if (status != VTX_OK)
        return POISON_STRUCT(element, vtx_chain_element, kind, status);
    e.effective_area = area * discharge_coefficient;
    return give(&e, status, element);
}

vtx_status vtx_chain_valve(double flow_coefficient, double pressure_ratio_factor, vtx_chain_element *element)
{
    vtx_chain_element e = blank(VTX_CHAIN_VALVE);
    e.flow_coefficient = flow_coefficient;
    e.pressure_ratio_factor = pressure_ratio_factor;
    return give(&e, VTX_OK, element);
}

vtx_status vtx_chain_filter(double pressure_loss, double mass_flow, double inlet_pressure, double temperature, double laminar_share,
                            vtx_chain_element *element)
{
    vtx_status status = worse(check_positive(pressure_loss, 1, 1e6), check_positive(mass_flow, 1e-9, MASS_FLOW_MAX));
    status = worse(status, worse(check_flow_pressure(inlet_pressure), check_chain_temperature(temperature)));
    status = worse(status, check_share(laminar_share));
    if (status == VTX_OK && pressure_loss > 0.5 * inlet_pressure)
        status = VTX_OUT_OF_RANGE;
    if (status != VTX_OK)
        return POISON_STRUCT(element, vtx_chain_element, kind, status);
    vtx_chain_element e = blank(VTX_CHAIN_FILTER);
    vtx_gas air;
    vtx_gas_init(&air);
    const double density_loss = pressure_loss * inlet_pressure / (specific_gas_constant(&air) * temperature);
    const struct filter_law law = filter_law_of(density_loss, mass_flow, laminar_share);
    e.laminar_loss = law.laminar;
    e.turbulent_loss = law.turbulent;
    return give(&e, status, element);
}

vtx_status vtx_chain_regulator(double set_pressure, double rated_droop, double rated_flow, double conductance, double critical_ratio,
                               vtx_chain_element *element)
{
    const vtx_status status = worse(check_amount(rated_droop, 1e7), check_positive(rated_flow, 1e-9, MASS_FLOW_MAX));
    vtx_chain_element e = blank(VTX_CHAIN_REGULATOR);
    if (status != VTX_OK)
        return POISON_STRUCT(element, vtx_chain_element, kind, status);
    e.set_pressure = set_pressure;
    e.droop = rated_droop / rated_flow;
    e.conductance = conductance;
    e.critical_ratio = critical_ratio;
    return give(&e, status, element);
}

vtx_status vtx_chain_manifold(double branches, double simultaneity, vtx_chain_element *element)
{
    vtx_status status = worse(check_range(branches, 1, WAYS_MAX), check_share(simultaneity));
    vtx_chain_element e = blank(VTX_CHAIN_MANIFOLD);
    status = worse(status, require(!(branches < 1) && simultaneity > 0));
    if (status != VTX_OK)
        return POISON_STRUCT(element, vtx_chain_element, kind, status);
    e.ways = larger(branches * simultaneity, 1);
    return give(&e, status, element);
}
