/* Restriction laws without checks, for constant coefficients; p_out <= p_in everywhere. Internal. */
#ifndef VTX_RESTRICTION_KERNEL_H
#define VTX_RESTRICTION_KERNEL_H

#include <vtx/restriction.h>

#include "isentropic_kernel.h"

/* ISO 6358-1 with ISO 8778 (values from memory): the only place where a conductance meets its reference state. */
static const double conductance_density = 1.185;
static const double conductance_temperature = 293.15;

/* No gas chokes at a higher pressure ratio than this (1/sqrt(e) at gamma = 1): spares the polynomial. */
#define CRITICAL_RATIO_MAX 0.607

static inline int is_orifice_choked(double gamma, double inlet_pressure, double outlet_pressure)
{
    return (outlet_pressure < CRITICAL_RATIO_MAX * inlet_pressure) && is_choked(gamma, inlet_pressure, outlet_pressure);
}

/* kg/(s m2) of effective area at Mach 1. */
static inline double orifice_choked_flux(const vtx_gas *gas, double inlet_pressure, double inlet_temperature)
{
    const double gamma = gas->heat_capacity_ratio;
    return inlet_pressure * sonic_density(gamma)
        * sqrt(2 * gamma * gas->molar_mass / ((gamma + 1) * gas_constant * gas->compressibility * inlet_temperature));
}

/* Density at the throat times velocity there, for pressure ratios above the critical one; one division for both. */
static inline double orifice_subsonic_flux(const vtx_gas *gas, double inlet_pressure, double inlet_temperature, double outlet_pressure)
{
    const double gamma = gas->heat_capacity_ratio;
    const double drop = mild_temperature_drop(gamma, inlet_pressure, outlet_pressure);
    return outlet_pressure
        * sqrt(2 * gamma * gas->molar_mass * drop / ((gamma - 1) * gas_constant * gas->compressibility * (inlet_temperature * square(1 - drop))));
}

/* kg/(s m2) of effective area; the choked flux at and below the critical pressure ratio. */
static inline double orifice_flux(const vtx_gas *gas, double inlet_pressure, double inlet_temperature, double outlet_pressure,
                                  int32_t *choked)
{
    *choked = is_orifice_choked(gas->heat_capacity_ratio, inlet_pressure, outlet_pressure);
    if (*choked)
        return orifice_choked_flux(gas, inlet_pressure, inlet_temperature);
    return orifice_subsonic_flux(gas, inlet_pressure, inlet_temperature, outlet_pressure);
}

/* Psi, the mass flow through 1 m2 per p0/sqrt(R T0), of loss = 1 - p/p0. */
static inline double flow_function(double gamma, double loss)
{
    if (is_choked(gamma, 1, 1 - loss))
        return critical_flow_function(gamma);
    const double drop = mild_drop(gamma, loss / (2 - loss));
    return sqrt(2 * gamma / (gamma - 1) * drop) * (1 - loss) / (1 - drop);
}

/* 1 - p/p0 at which the flow is `share` of the choked one, 0..1 but for rounding. */
static inline double orifice_loss(double gamma, double share) { return pressure_loss(gamma, subsonic_drop(gamma, square(share))); }

/* Temperature drop of a subsonic flow with pull = flux sqrt(R T0)/p. Closed form: pull = sqrt(2 gamma/(gamma-1) drop)/(1-drop) is a
 * quadratic in sqrt(drop). */
static inline double drop_of_pull(double gamma, double pull)
{
    const double c = 2 * gamma / (gamma - 1);
    return square(2 * pull / (sqrt(c) + sqrt(c + 4 * square(pull))));
}

/* p0/p - 1 that drives the same. */
static inline double orifice_rise(double gamma, double pull)
{
    const double psi = critical_flow_function(gamma);
    if (pull * critical_pressure_ratio(gamma) >= psi)
        return pull / psi - 1;
    return expm1(-gamma / (gamma - 1) * log1p(-drop_of_pull(gamma, pull)));
}

/* flux at most the choked one (times 1 + LIMIT_ROUNDING). */
static inline double orifice_outlet_pressure(const vtx_gas *gas, double flux, double inlet_pressure, double inlet_temperature)
{
    const double share = flux / orifice_choked_flux(gas, inlet_pressure, inlet_temperature);
    return inlet_pressure - inlet_pressure * orifice_loss(gas->heat_capacity_ratio, share);
}

static inline double orifice_inlet_pressure(const vtx_gas *gas, double flux, double inlet_temperature, double outlet_pressure)
{
    const double pull = flux * sqrt(specific_gas_constant(gas) * inlet_temperature) / outlet_pressure;
    return outlet_pressure + outlet_pressure * orifice_rise(gas->heat_capacity_ratio, pull);
}

#define DISCHARGE_COEFFICIENT_MIN 0.01
#define DISCHARGE_COEFFICIENT_MAX 1.1

static inline vtx_status check_coefficient(double discharge_coefficient)
{
    return check_positive(discharge_coefficient, DISCHARGE_COEFFICIENT_MIN, DISCHARGE_COEFFICIENT_MAX);
}

static inline vtx_status check_conductance(double conductance) { return check_positive(conductance, 1e-14, 1); }

/* b = 1 would choke at equal pressures. */
static inline vtx_status check_critical_ratio(double critical_ratio)
{
    if (!is_finite(critical_ratio) || critical_ratio < 0 || critical_ratio >= 1)
        return VTX_BAD_ARGUMENT;
    return critical_ratio > 0.99 ? VTX_OUT_OF_RANGE : VTX_OK;
}

/* kg/s per pascal of inlet pressure: the choked flow of ISO 6358 is this times p1. */
static inline double conductance_slope(double conductance, double inlet_temperature)
{
    return conductance * conductance_density * sqrt(conductance_temperature / inlet_temperature);
}

/* Flow over choked flow, exponent 1/2, no cracking pressure. With e = (p1-p2)/(p1 (1-b)): 1 - (1-e)^2 = e (2-e). */
static inline double conductance_share(double critical_ratio, double inlet_pressure, double outlet_pressure, int32_t *choked)
{
    *choked = outlet_pressure <= critical_ratio * inlet_pressure;
    if (*choked)
        return 1;
    const double e = (inlet_pressure - outlet_pressure) / (inlet_pressure * (1 - critical_ratio));
    return sqrt(e * (2 - e));
}

static inline double conductance_mass_flow(double conductance, double critical_ratio, double inlet_pressure,
                                           double inlet_temperature, double outlet_pressure, int32_t *choked)
{
    return conductance_slope(conductance, inlet_temperature) * inlet_pressure
        * conductance_share(critical_ratio, inlet_pressure, outlet_pressure, choked);
}

/* share = flow over choked flow, at most 1 but for rounding. */
static inline double conductance_outlet_pressure(double critical_ratio, double share, double inlet_pressure)
{
    const double w = smaller(square(share), 1);
    return inlet_pressure - inlet_pressure * (1 - critical_ratio) * w / (1 + sqrt(1 - w));
}

/* pull = flow/slope, the inlet pressure a choked part would need; otherwise the quadratic that share^2 p1^2 = pull^2 is in p1. */
static inline double conductance_inlet_pressure(double critical_ratio, double pull, double outlet_pressure)
{
    if (pull * critical_ratio >= outlet_pressure)
        return pull;
    const double root = sqrt(square(outlet_pressure) + (1 - 2 * critical_ratio) * square(pull));
    return outlet_pressure + (1 - critical_ratio) * square(pull) / (outlet_pressure + root);
}

#endif
