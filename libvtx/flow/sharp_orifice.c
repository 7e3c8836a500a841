/* Sharp-edged orifices with a coefficient that follows the pressure ratio. */
#include <vtx/sharp_orifice.h>

#include "../base/root.h"
#include "restriction_kernel.h"

/* Of a sharp edge without compression, for Jobson's law; Perry's polynomial ends at 0.6001. */
static const double sharp_edge = 0.6;

/* Perry 1949, as quoted for pneumatic orifices; loss = 1 - p2/p1. */
static double perry(double loss)
{
    const double r = 1 - loss;
    return 0.8414 + r * (-0.1002 + r * (0.8415 + r * (-3.9 + r * (4.6001 - r * 1.6827))));
}

/* Smaller root of f C^2 - b C + c = 0; f may be 0. */
static double smaller_root(double f, double b, double c) { return 2 * c / (b + sqrt(square(b) - 4 * f * c)); }

/* Jobson 1955: the force defect at the edge, f = 1/Ci - 1/(2 Ci^2) of the incompressible one, is kept.
 * Subsonic the jet leaves at p2; below the critical ratio it is sonic at the critical pressure and spreads. */
static double jobson(double gamma, double incompressible, double loss)
{
    const double f = 1 / incompressible - 0.5 / square(incompressible);
    const double critical = critical_pressure_ratio(gamma);
    if (is_choked(gamma, 1, 1 - loss)) {
        const double momentum = gamma * critical * sonic_density(gamma);
        return smaller_root(f * momentum, (gamma + 1) * critical - (1 - loss), loss);
    }
    const double drop = mild_drop(gamma, loss / (2 - loss));
    const double velocity_head = loss > 0 ? (gamma - 1) / (2 * gamma) * loss / drop : 0.5;
    return smaller_root(f, 1, velocity_head) * (1 - drop) / (1 - loss);
}

static double edge_coefficient(int32_t law, double gamma, double loss)
{
    return law == VTX_SHARP_EDGE_PERRY ? perry(loss) : jobson(gamma, sharp_edge, loss);
}

static vtx_status check_law(int32_t law) { return require(law == VTX_SHARP_EDGE_PERRY || law == VTX_SHARP_EDGE_JOBSON); }

static double sharp_flux(const vtx_gas *gas, int32_t law, double inlet_pressure, double inlet_temperature, double outlet_pressure,
                         int32_t *choked)
{
    const double loss = (inlet_pressure - outlet_pressure) / inlet_pressure;
    return edge_coefficient(law, gas->heat_capacity_ratio, loss)
        * orifice_flux(gas, inlet_pressure, inlet_temperature, outlet_pressure, choked);
}

vtx_status vtx_perry_coefficient(double pressure_ratio, double *coefficient)
{
    const vtx_status status = worse(require(coefficient != NULL), check_share(pressure_ratio));
    if (status != VTX_OK)
        return poison(coefficient, status);
    *coefficient = perry(1 - pressure_ratio);
    return VTX_OK;
}

vtx_status vtx_jobson_coefficient(double gamma, double incompressible, double pressure_ratio, double *coefficient)
{
    const vtx_status status = worse(worse(require(coefficient && !(incompressible > 1)), check_share(pressure_ratio)),
                                    worse(check_gamma(gamma), check_positive(incompressible, 0.5, 0.7)));
    if (status != VTX_OK)
        return poison(coefficient, status);
    *coefficient = jobson(gamma, incompressible, 1 - pressure_ratio);
    return VTX_OK;
}

vtx_status vtx_sharp_orifice_mass_flow(const vtx_gas *gas, int32_t law, double area, double inlet_pressure,
                                       double inlet_temperature, double outlet_pressure, double *mass_flow, int32_t *choked)
{
    int32_t sonic;
    vtx_status status = worse(require(mass_flow != NULL), worse(check_gas(gas), check_law(law)));
    status = worse(status, worse(check_flow_area(area), check_ends(inlet_pressure, inlet_temperature, outlet_pressure)));
    if (status != VTX_OK) {
        poison_integer(choked, status);
        return poison(mass_flow, status);
    }
    *mass_flow = area * sharp_flux(gas, law, inlet_pressure, inlet_temperature, outlet_pressure, &sonic);
    if (choked)
        *choked = sonic;
    return VTX_OK;
}

vtx_status vtx_sharp_orifice_area(const vtx_gas *gas, int32_t law, double mass_flow, double inlet_pressure,
                                  double inlet_temperature, double outlet_pressure, double *area)
{
    int32_t sonic;
    vtx_status status = worse(require(area != NULL), worse(check_gas(gas), check_law(law)));
    status = worse(status, worse(check_amount(mass_flow, MASS_FLOW_MAX), check_ends(inlet_pressure, inlet_temperature, outlet_pressure)));
    if (status != VTX_OK)
        return poison(area, status);
    *area = 0;
    if (!(mass_flow > 0))
        return VTX_OK;
    const double flux = sharp_flux(gas, law, inlet_pressure, inlet_temperature, outlet_pressure, &sonic);
    if (!(flux > 0))
        return poison(area, VTX_NO_SOLUTION);
    *area = mass_flow / flux;
    return check_flow_area(*area) == VTX_OK ? VTX_OK : poison(area, VTX_OUT_OF_RANGE);
}

/* The wanted Psi C in terms of p1, and Psi C p1/p2 in terms of p2. */
struct edge_wish {
    double gamma, wanted;
    int32_t law;
};

static double excess_of_loss(double loss, void *context)
{
    const struct edge_wish *wish = context;
    return edge_coefficient(wish->law, wish->gamma, loss) * flow_function(wish->gamma, loss) - wish->wanted;
}

static double excess_of_rise(double rise, void *context)
{
    const struct edge_wish *wish = context;
    const double loss = rise / (1 + rise);
    return edge_coefficient(wish->law, wish->gamma, loss) * flow_function(wish->gamma, loss) * (1 + rise) - wish->wanted;
}

/* Both laws rise with the loss, so that the laws of the two constant coefficients enclose the root. */
static double lowest(const struct edge_wish *wish) { return edge_coefficient(wish->law, wish->gamma, 0) * (1 - LIMIT_ROUNDING); }
static double highest(const struct edge_wish *wish) { return edge_coefficient(wish->law, wish->gamma, 1) * (1 + LIMIT_ROUNDING); }

static vtx_status solve_loss(struct edge_wish *wish, double *loss)
{
    const double choked = critical_flow_function(wish->gamma);
    const double low = orifice_loss(wish->gamma, wish->wanted / (highest(wish) * choked));
    const double share = wish->wanted / (lowest(wish) * choked);
    const double high = share < 1 ? orifice_loss(wish->gamma, share) : 1;
    *loss = 0;
    return low > 0 ? find_root(excess_of_loss, wish, low, high, larger(1e-15 * low, DBL_MIN), loss) : VTX_OK;
}

static vtx_status solve_rise(struct edge_wish *wish, double *rise)
{
    const double low = orifice_rise(wish->gamma, wish->wanted / highest(wish));
    const double high = orifice_rise(wish->gamma, wish->wanted / lowest(wish));
    *rise = 0;
    return low > 0 ? find_root(excess_of_rise, wish, low, high, larger(1e-15 * low, DBL_MIN), rise) : VTX_OK;
}

vtx_status vtx_sharp_orifice_outlet_pressure(const vtx_gas *gas, int32_t law, double mass_flow, double area,
                                             double inlet_pressure, double inlet_temperature, double *outlet_pressure,
                                             double *attainable_mass_flow)
{
    double loss;
    vtx_status status = worse(require(outlet_pressure != NULL), worse(check_gas(gas), check_law(law)));
    status = worse(status, worse(check_flow_area(area), check_amount(mass_flow, MASS_FLOW_MAX)));
    status = worse(status, check_upstream(inlet_pressure, inlet_temperature));
    poison(attainable_mass_flow, status);
    if (status != VTX_OK)
        return poison(outlet_pressure, status);
    const double gamma = gas->heat_capacity_ratio;
    const double scale = area * inlet_pressure / sqrt(specific_gas_constant(gas) * inlet_temperature);
    const double limit = scale * edge_coefficient(law, gamma, 1) * critical_flow_function(gamma);
    if (!flow_passes(mass_flow, limit, attainable_mass_flow))
        return poison(outlet_pressure, VTX_NO_SOLUTION);
    struct edge_wish wish = { gamma, smaller(mass_flow, limit) / scale, law };
    if (solve_loss(&wish, &loss) != VTX_OK)
        return poison(outlet_pressure, poison(attainable_mass_flow, VTX_NOT_CONVERGED));
    *outlet_pressure = inlet_pressure - inlet_pressure * loss;
    return finish_outlet_pressure(outlet_pressure, attainable_mass_flow);
}

vtx_status vtx_sharp_orifice_inlet_pressure(const vtx_gas *gas, int32_t law, double mass_flow, double area,
                                            double inlet_temperature, double outlet_pressure, double *inlet_pressure)
{
    double rise;
    vtx_status status = worse(require(inlet_pressure != NULL), worse(check_gas(gas), check_law(law)));
    status = worse(status, worse(check_flow_area(area), check_amount(mass_flow, MASS_FLOW_MAX)));
    status = worse(status, check_upstream(outlet_pressure, inlet_temperature));
    if (status != VTX_OK)
        return poison(inlet_pressure, status);
    const double pull = mass_flow * sqrt(specific_gas_constant(gas) * inlet_temperature) / (area * outlet_pressure);
    struct edge_wish wish = { gas->heat_capacity_ratio, pull, law };
    status = solve_rise(&wish, &rise);
    if (status != VTX_OK)
        return poison(inlet_pressure, VTX_NOT_CONVERGED);
    *inlet_pressure = outlet_pressure + outlet_pressure * rise;
    return *inlet_pressure <= FLOW_PRESSURE_MAX ? VTX_OK : poison(inlet_pressure, VTX_OUT_OF_RANGE);
}

/* ISO 5167-2:2003, 5.3.2.2. */
vtx_status vtx_orifice_expansibility(double gamma, double diameter_ratio, double inlet_pressure, double outlet_pressure,
                                     double *factor)
{
    vtx_status status = worse(require(factor && !(outlet_pressure > inlet_pressure) && !(diameter_ratio >= 1)), check_gamma(gamma));
    status = worse(status, worse(check_positive(diameter_ratio, 0.1, 0.75), check_flow_pressure(inlet_pressure)));
    status = worse(status, worse(check_flow_pressure(outlet_pressure), outlet_pressure < 0.75 * inlet_pressure ? VTX_OUT_OF_RANGE : VTX_OK));
    if (status != VTX_OK)
        return poison(factor, status);
    const double b4 = square(square(diameter_ratio));
    const double x = -expm1(log1p((outlet_pressure - inlet_pressure) / inlet_pressure) / gamma);
    *factor = 1 - (0.351 + 0.256 * b4 + 0.93 * square(b4)) * x;
    return VTX_OK;
}
