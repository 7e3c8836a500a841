/* Ice: sublimation, and the Gibbs equation of state of ice Ih. */
#include <vtx/water.h>

#include "caloric_kernel.h"
#include "water_kernel.h"

#define ICE_PRESSURE_MIN 1e-6
#define ICE_PRESSURE_MAX 200e6

struct complex_number {
    double re;
    double im;
};

/* IAPWS R10-06(2009), table 2, in J/kg and units of the triple point. */
static const double g0[5] = {
    -0.632020233335886e6, 0.655022213658955, -0.189369929326131e-7, 0.339746123271053e-14, -0.556464869058991e-21
};
static const struct complex_number t1 = { 0.368017112855051e-1, 0.510878114959572e-1 };
static const struct complex_number t2 = { 0.337315741065416, 0.335449415919309 };
static const struct complex_number r1 = { 0.447050716285388e2, 0.656876847463481e2 };
static const struct complex_number r2[3] = {
    { -0.725974574329220e2, -0.781008427112870e2 },
    { -0.557107698030123e-4, 0.464578634580806e-4 },
    { 0.234801409215913e-10, -0.285651142904972e-10 }
};

static inline struct complex_number times(struct complex_number a, struct complex_number b)
{
    const struct complex_number product = { a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re };
    return product;
}

static inline struct complex_number plus(struct complex_number a, double factor, struct complex_number b)
{
    const struct complex_number sum = { a.re + factor * b.re, a.im + factor * b.im };
    return sum;
}

static inline struct complex_number reciprocal(struct complex_number a)
{
    const double norm = square(a.re) + square(a.im);
    const struct complex_number inverse = { a.re / norm, -a.im / norm };
    return inverse;
}

/* Principal value; t1 and t2 lie in the first quadrant, so no cut is met. */
static inline struct complex_number logarithm(struct complex_number a)
{
    const struct complex_number l = { 0.5 * log(square(a.re) + square(a.im)), atan2(a.im, a.re) };
    return l;
}

/* The bracket of equation 1 that multiplies r: (t-th)ln(t-th) + (t+th)ln(t+th) - 2t ln t - th^2/t, and what it becomes in
 * g - T dg/dT: t ln(t-th) + t ln(t+th) - 2t ln t + th^2/t. They differ by th[ln(t+th) - ln(t-th)] - 2 th^2/t. */
static inline struct complex_number bracket(struct complex_number t, double theta, int of_enthalpy)
{
    const struct complex_number one = { 1, 0 };
    const struct complex_number below = logarithm(plus(t, -theta, one));
    const struct complex_number above = logarithm(plus(t, theta, one));
    const struct complex_number sum = plus(plus(below, 1, above), -2, logarithm(t));
    const struct complex_number even = times(t, sum);
    if (of_enthalpy)
        return plus(even, square(theta), reciprocal(t));
    return plus(plus(even, theta, plus(above, -1, below)), -square(theta), reciprocal(t));
}

static inline double reduced_pressure(double pressure) { return (pressure - standard_atmosphere) / triple_pressure; }

double ice_enthalpy(double pressure, double temperature)
{
    const double theta = temperature / triple_temperature;
    const double x = reduced_pressure(pressure);
    const struct complex_number r = plus(plus(r2[0], x, r2[1]), square(x), r2[2]);
    const double g = (((g0[4] * x + g0[3]) * x + g0[2]) * x + g0[1]) * x + g0[0];
    return g + triple_temperature * (times(r1, bracket(t1, theta, 1)).re + times(r, bracket(t2, theta, 1)).re);
}

static inline double ice_specific_volume(double pressure, double temperature)
{
    const double theta = temperature / triple_temperature;
    const double x = reduced_pressure(pressure);
    const struct complex_number r = plus(r2[1], 2 * x, r2[2]);
    const double g_x = ((4 * g0[4] * x + 3 * g0[3]) * x + 2 * g0[2]) * x + g0[1];
    return (g_x + triple_temperature * times(r, bracket(t2, theta, 0)).re) / triple_pressure;
}

static vtx_status check_ice(double pressure, double temperature)
{
    return worse(check_positive(pressure, ICE_PRESSURE_MIN, ICE_PRESSURE_MAX),
                 check_positive(temperature, ICE_TEMPERATURE_MIN, triple_temperature));
}

vtx_status vtx_ice_sublimation_pressure(double temperature, double *pressure)
{
    const vtx_status status = worse(require(pressure != NULL),
                                    check_positive(temperature, ICE_TEMPERATURE_MIN, triple_temperature));
    if (status != VTX_OK)
        return poison(pressure, status);
    *pressure = ice_sublimation_pressure(temperature);
    return VTX_OK;
}

/* The forward formula rounds the triple point up by one unit; its inverse must take what it gives and stay over ice. */
vtx_status vtx_ice_sublimation_temperature(double pressure, double *temperature)
{
    const double rounding = 1e-12 * triple_pressure;
    const vtx_status status = worse(require(temperature != NULL),
                                    check_positive(pressure, ICE_SUBLIMATION_PRESSURE_MIN,
                                                                         triple_pressure + rounding));
    if (status != VTX_OK)
        return poison(temperature, status);
    *temperature = smaller(ice_sublimation_temperature(pressure), triple_temperature);
    return VTX_OK;
}

vtx_status vtx_ice_sublimation_slope(double temperature, double *slope)
{
    const vtx_status status = worse(require(slope != NULL),
                                    check_positive(temperature, ICE_TEMPERATURE_MIN, triple_temperature));
    if (status != VTX_OK)
        return poison(slope, status);
    *slope = ice_saturation(temperature).slope;
    return VTX_OK;
}

vtx_status vtx_ice_density(double pressure, double temperature, double *density)
{
    const vtx_status status = worse(require(density != NULL), check_ice(pressure, temperature));
    if (status != VTX_OK)
        return poison(density, status);
    *density = 1 / ice_specific_volume(pressure, temperature);
    return VTX_OK;
}

vtx_status vtx_ice_enthalpy(double pressure, double temperature, double *enthalpy)
{
    const vtx_status status = worse(require(enthalpy != NULL), check_ice(pressure, temperature));
    if (status != VTX_OK)
        return poison(enthalpy, status);
    *enthalpy = ice_enthalpy(pressure, temperature);
    return VTX_OK;
}
