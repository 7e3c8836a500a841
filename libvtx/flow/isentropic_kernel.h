/* Perfect-gas flow without checks: what the flow rooms and those above call in their inner loops. Internal.
 *
 * Two variables carry everything without cancellation:
 *   u = (gamma-1)/(gamma+1)      the gas; also the share of the stagnation temperature that is gone at Mach 1
 *   drop = 1 - T/T0              how far the gas has expanded; M^2 = 2/(gamma-1) drop/(1-drop)
 * Equations: NACA Report 1135 (1953), 43 to 45 and 80, rewritten in them. */
#ifndef VTX_ISENTROPIC_KERNEL_H
#define VTX_ISENTROPIC_KERNEL_H

#include <vtx/isentropic.h>

#include "../base/numeric.h"
#include "../media/constants.h"
#include "flow_polynomials.h"

/* cp/cv of dry air, the usual constant; 1.401 at 20 degC. */
static const double dry_air_gamma = 1.4;

/* The ranges of every room that speaks of moving air. */
#define GAMMA_MIN 1.01
#define GAMMA_MAX 1.7
#define MOLAR_MASS_MIN 1e-3
#define MOLAR_MASS_MAX 0.5
#define COMPRESSIBILITY_MIN 0.1
#define COMPRESSIBILITY_MAX 2.0
#define FLOW_PRESSURE_MIN 1e3
#define FLOW_PRESSURE_MAX 1e8
#define FLOW_TEMPERATURE_MIN 50.0
#define FLOW_TEMPERATURE_MAX 1000.0
#define FLOW_AREA_MIN 1e-12
#define FLOW_AREA_MAX 10.0
#define MASS_FLOW_MAX 1e4
#define FLOW_MACH_MIN 1e-9
#define FLOW_MACH_MAX 50.0

/* An inverse may be asked for exactly the flow that the forward law gave at its limit, rounding included. */
#define LIMIT_ROUNDING (16 * DBL_EPSILON)

/* Both ends of every call for the pressure behind a restriction; attainable may be null. The first: does the flow pass? */
static inline int flow_passes(double mass_flow, double limit, double *attainable)
{
    if (attainable)
        *attainable = limit;
    return !(mass_flow > limit * (1 + LIMIT_ROUNDING));
}

/* The second: is what it leaves covered? */
static inline vtx_status finish_outlet_pressure(double *outlet_pressure, double *attainable)
{
    return *outlet_pressure < FLOW_PRESSURE_MIN ? poison(outlet_pressure, poison(attainable, VTX_OUT_OF_RANGE)) : VTX_OK;
}

static inline vtx_status check_gamma(double gamma)
{
    if (!is_finite(gamma) || gamma <= 1)
        return VTX_BAD_ARGUMENT;
    return gamma < GAMMA_MIN || gamma > GAMMA_MAX ? VTX_OUT_OF_RANGE : VTX_OK;
}

static inline vtx_status check_gas(const vtx_gas *gas)
{
    if (!gas)
        return VTX_BAD_ARGUMENT;
    return worse(worse(check_gamma(gas->heat_capacity_ratio), require(are_zero(gas->reserved, ARRAY_LENGTH(gas->reserved)))),
                 worse(check_positive(gas->molar_mass, MOLAR_MASS_MIN, MOLAR_MASS_MAX),
                       check_positive(gas->compressibility, COMPRESSIBILITY_MIN, COMPRESSIBILITY_MAX)));
}

/* The hot calls ask this first: two comparisons an argument; NaN is never within. What is wrong is found out after. */
static inline int is_within(double x, double low, double high) { return (x >= low) & (x <= high); }

static inline int is_gas(const vtx_gas *gas)
{
    return gas && is_within(gas->heat_capacity_ratio, GAMMA_MIN, GAMMA_MAX) && is_within(gas->molar_mass, MOLAR_MASS_MIN, MOLAR_MASS_MAX)
        && is_within(gas->compressibility, COMPRESSIBILITY_MIN, COMPRESSIBILITY_MAX) && are_zero(gas->reserved, ARRAY_LENGTH(gas->reserved));
}

static inline int are_ends(double inlet_pressure, double inlet_temperature, double outlet_pressure)
{
    return (inlet_pressure <= FLOW_PRESSURE_MAX) & is_within(inlet_temperature, FLOW_TEMPERATURE_MIN, FLOW_TEMPERATURE_MAX)
        & is_within(outlet_pressure, FLOW_PRESSURE_MIN, inlet_pressure);
}

static inline vtx_status check_flow_pressure(double pressure)
{
    return check_positive(pressure, FLOW_PRESSURE_MIN, FLOW_PRESSURE_MAX);
}

static inline vtx_status check_flow_temperature(double temperature)
{
    return check_positive(temperature, FLOW_TEMPERATURE_MIN, FLOW_TEMPERATURE_MAX);
}

static inline vtx_status check_upstream(double pressure, double temperature)
{
    return worse(check_flow_pressure(pressure), check_flow_temperature(temperature));
}

/* Flow against the pressures is impossible. */
static inline vtx_status check_ends(double inlet_pressure, double inlet_temperature, double outlet_pressure)
{
    return worse(check_upstream(inlet_pressure, inlet_temperature),
                 worse(check_flow_pressure(outlet_pressure), require(!(outlet_pressure > inlet_pressure))));
}

static inline vtx_status check_flow_area(double area) { return check_positive(area, FLOW_AREA_MIN, FLOW_AREA_MAX); }

/* J/(kg K), compressibility included: p v = this T. */
static inline double specific_gas_constant(const vtx_gas *gas)
{
    return gas_constant * gas->compressibility / gas->molar_mass;
}

static inline double sonic_drop(double gamma) { return (gamma - 1) / (gamma + 1); }

/* Density at Mach 1 over stagnation density. */
static inline double sonic_density(double gamma)
{
    return gamma == 1.4 ? sonic_density_of_air : sonic_density_at(gamma - 1.355);
}

/* At and below the critical pressure ratio, rounding of p0 times that ratio allowed for. */
static inline int is_choked(double gamma, double inlet_pressure, double outlet_pressure)
{
    return outlet_pressure * (gamma + 1) <= sonic_density(gamma) * inlet_pressure * (2 + 8 * DBL_EPSILON);
}

static inline double critical_pressure_ratio(double gamma) { return sonic_density(gamma) * (2 / (gamma + 1)); }

/* Psi at Mach 1: mass flow = area p0 / sqrt(R T0) times this. */
static inline double critical_flow_function(double gamma) { return sonic_density(gamma) * sqrt(2 * gamma / (gamma + 1)); }

/* 1 - (p/p0)^((gamma-1)/gamma) of s = (p0-p)/(p0+p), for p/p0 of 0.48..1, which holds every subsonic one: ln(p/p0) = -2 artanh(s). */
static inline double mild_drop(double gamma, double s)
{
    const double z = square(s);
    const double x = -2 * s * ((gamma - 1) / gamma) * (1 + z * artanh_tail(z));
    return -x - square(x) * expm1_tail(x);
}

static inline double mild_temperature_drop(double gamma, double inlet_pressure, double outlet_pressure)
{
    return mild_drop(gamma, (inlet_pressure - outlet_pressure) / (inlet_pressure + outlet_pressure));
}

/* The same for any expansion, and negative for a compression. The pressures come in apart because p0 - p is exact where p/p0 is not. */
static inline double temperature_drop(double gamma, double inlet_pressure, double outlet_pressure)
{
    if (outlet_pressure > inlet_pressure)
        return -expm1((gamma - 1) / gamma * log1p((outlet_pressure - inlet_pressure) / inlet_pressure));
    if (outlet_pressure > 0.48 * inlet_pressure)
        return mild_temperature_drop(gamma, inlet_pressure, outlet_pressure);
    return -expm1((gamma - 1) / gamma * log(outlet_pressure / inlet_pressure));
}

/* 1 - p/p0 of a temperature drop. */
static inline double pressure_loss(double gamma, double drop) { return -expm1(gamma / (gamma - 1) * log1p(-drop)); }

static inline double isentropic_temperature(double gamma, double inlet_pressure, double inlet_temperature, double outlet_pressure)
{
    return inlet_temperature - inlet_temperature * temperature_drop(gamma, inlet_pressure, outlet_pressure);
}

/* Velocity of a full isentropic expansion. */
static inline double isentropic_velocity(double gamma, double gas_constant_of_it, double inlet_pressure,
                                         double inlet_temperature, double outlet_pressure)
{
    return sqrt(2 * gamma / (gamma - 1) * gas_constant_of_it * inlet_temperature
                * temperature_drop(gamma, inlet_pressure, outlet_pressure));
}

static inline double mach_of_drop(double gamma, double drop) { return sqrt(2 / (gamma - 1) * drop / (1 - drop)); }

/* T0/T - 1, the other measure of an expansion. */
static inline double stagnation_rise(double gamma, double mach) { return 0.5 * (gamma - 1) * square(mach); }

/* A/A*: the bracket of equation 80 is 1 + u (M^2 - 1), its exponent 1/(2u). */
static inline double area_ratio(double gamma, double mach)
{
    const double u = sonic_drop(gamma);
    return exp(log1p(u * (square(mach) - 1)) / (2 * u)) / mach;
}

/* The subsonic drop at which the flow function is sqrt(share) of its critical value, share 0..1:
 * drop (1-drop)^n = share u (1-u)^n with n = 2/(gamma-1).
 *
 * The start is a parabola in sqrt(1 - share) with the right value and slope at 0 and the right curvature at the sonic
 * point; each step solves the quadratic model of the logarithm, which has no trouble with the maximum there. */
static inline double subsonic_drop(double gamma, double share)
{
    const double u = sonic_drop(gamma);
    const double n = 2 / (gamma - 1);
    const double scale = u * share;
    const double log_sonic = n * log1p(-u);
    const double slope = exp(log_sonic);
    if (!(share < 1))
        return u;
    if (share < 1e-30)
        return scale * slope;
    const double s = sqrt(1 - share);
    const double a = sqrt(2 * n / (n + 1));
    const double c = 2 * (slope - 1) + a;
    const double b = 1 - a - c;
    double drop = u * (1 - s * (a + s * (b + s * c)));
    drop = within(drop, scale * slope, u);
    for (int i = 0; i < 3; i++) {
        const double f = log(drop / scale) + n * log1p(-drop) - log_sonic;
        const double df = 1 / drop - n / (1 - drop);
        const double ddf = -1 / square(drop) - n / square(1 - drop);
        const double discriminant = square(df) - 2 * f * ddf;
        drop = discriminant > 0 ? drop - 2 * f / (df + sqrt(discriminant)) : u;
        drop = within(drop, scale * slope, u);
    }
    return drop;
}

#endif
