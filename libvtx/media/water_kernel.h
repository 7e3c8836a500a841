/* Saturation of pure water over liquid, unchecked; over ice: ice_kernel.h. Internal. */
#ifndef VTX_WATER_KERNEL_H
#define VTX_WATER_KERNEL_H

#include "ice_kernel.h"

/* Lowest temperature at which the liquid's formula is trusted as it stands; below it over-liquid values rest on the
 * shape of Murphy and Koop's equation. */
#define SUPERCOOLED_TEMPERATURE_MIN BELOW_ZERO(40)
#define SUPERCOOLED_PRESSURE_MIN 18.95676
#define WATER_TEMPERATURE_MAX 647.096
#define WATER_PRESSURE_MAX 22.064001e6

/* IAPWS R7-97(2012), table 34; the quadrics of equations 29 to 31 in beta = (p/MPa)^(1/4) and theta. */
static const double region4[11] = {
    0, 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
    0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3
};

/* Fourth root of a pascal in MPa. */
static const double pascal_root = 0.031622776601683793;

/* Equation 30, fourth root of the pressure in MPa. Theta of equation 29b is a fraction; all is multiplied by its denominator. */
static inline double region4_beta(double temperature)
{
    const double *n = region4;
    const double below = temperature - n[10], above = temperature * below + n[9];
    const double square_above = above * above, product = above * below, square_below = below * below;
    const double a = square_above + n[1] * product + n[2] * square_below;
    const double b = n[3] * square_above + n[4] * product + n[5] * square_below;
    const double c = n[6] * square_above + n[7] * product + n[8] * square_below;
    return 2 * c / (sqrt(b * b - 4 * a * c) - b);
}

/* Pa, equation 30 as published. The reference of what follows, and the formula above 373.15 K. */
static inline double published_liquid_pressure(double temperature) { return 1e6 * square(square(region4_beta(temperature))); }

/* Equation 30 up to 373.15 K, as the fourth root of the pressure in Pa: within 4e-14 of the published form in pressure, without
 * root and division. Chebyshev fit by build-aux/fit_media. */
#define LIQUID_POLYNOMIAL_TEMPERATURE_MAX 373.15
enum { LIQUID_ROOT_TERMS = 19 };
_Alignas(16) static const double liquid_root_coefficients[20] = {
    8.0725844581326722, 8.1092503684539512, 1.9450144029812373, -0.25185866106470844, -0.051215650981741238,
    0.023743851177408567, -0.00070294016649341973, -0.0017665039627473792, 0.00042709148899291451,
    7.2971520316968957e-05, -5.7134644123379992e-05, 5.2911720604242874e-06, 4.7160433223325524e-06,
    -1.6199732272070834e-06, -1.434565638191998e-07, 2.0519568352028728e-07, -2.7005007723346352e-08,
    -1.3922399375587702e-08, 4.0599843487143517e-09, 0
};

/* By x. */
_Alignas(16) static const double liquid_root_slope_coefficients[20] = {
    8.1092503684539512, 3.8900288059624746, -0.75557598319412533, -0.20486260392696495, 0.11871925588704284,
    -0.0042176409989605184, -0.012365527739231654, 0.0034167319119433161, 0.00065674368285272065,
    -0.00057134644123379996, 5.8202892664667163e-05, 5.6592519867990632e-05, -2.1059651953692085e-05,
    -2.0083918934687974e-06, 3.0779352528043092e-06, -4.3208012357354164e-07, -2.3668078938499093e-07,
    7.307971827685833e-08, 0, 0
};

static inline double liquid_root(double temperature)
{
    return polynomial(liquid_root_coefficients, LIQUID_ROOT_TERMS, (temperature - 303.15) * (1 / 70.0));
}

/* Pa, from 233.15 to 373.15 K. */
static inline double liquid_polynomial_pressure(double temperature) { return square(square(liquid_root(temperature))); }

/* Pa, over liquid; 233.15..647.096 K. */
static inline double liquid_saturation_pressure(double temperature)
{
    return temperature <= LIQUID_POLYNOMIAL_TEMPERATURE_MAX ? liquid_polynomial_pressure(temperature)
                                                            : published_liquid_pressure(temperature);
}

/* Equation 31. At 221.4536 Pa, 259.939 K, numerator and denominator of the published form of d are both zero, and at 0.7 MPa those of
 * its other algebraic form: each is taken where it is sound. The temperature is that of a difference of squares, which cancels less
 * than the published sum. */
#define REGION4_FORMS_MEET 2e5 /* Pa */
static inline double region4_temperature(double beta, int low)
{
    const double *n = region4;
    const double e = (beta + n[3]) * beta + n[6];
    const double f = (n[1] * beta + n[4]) * beta + n[7];
    const double g = (n[2] * beta + n[5]) * beta + n[8];
    const double root = sqrt(f * f - 4 * e * g);
    const double d = (low ? 0.5 * (root - f) : 2 * g) / (low ? e : -f - root);
    return 0.5 * (n[10] + d - sqrt(square(n[10] - d) - 4 * n[9]));
}

/* K, from 18.95676 Pa on. */
static inline double liquid_saturation_temperature(double pressure)
{
    return region4_temperature(sqrt(sqrt(1e-6 * pressure)), pressure < REGION4_FORMS_MEET);
}

/* Equation 29 differentiated twice as an implicit function. */
static inline struct saturation liquid_saturation(double temperature)
{
    const double *n = region4;
    const double from_pole = 1 / (temperature - n[10]);
    const double theta = temperature + n[9] * from_pole;
    const double theta_t = 1 - n[9] * square(from_pole);
    const double theta_tt = 2 * n[9] * square(from_pole) * from_pole;
    const double beta = temperature <= LIQUID_POLYNOMIAL_TEMPERATURE_MAX ? pascal_root * liquid_root(temperature) : region4_beta(temperature);
    const double by_beta = 2 * beta * ((theta + n[1]) * theta + n[2]) + (n[3] * theta + n[4]) * theta + n[5];
    const double by_theta = square(beta) * (2 * theta + n[1]) + beta * (2 * n[3] * theta + n[4]) + 2 * n[6] * theta + n[7];
    const double beta_theta = -by_theta / by_beta;
    const double mixed = 2 * beta * (2 * theta + n[1]) + 2 * n[3] * theta + n[4];
    const double beta_beta = 2 * ((theta + n[1]) * theta + n[2]);
    const double theta_theta = 2 * (square(beta) + n[3] * beta + n[6]);
    const double second = -(theta_theta + 2 * mixed * beta_theta + beta_beta * square(beta_theta)) / by_beta;
    const double beta_t = beta_theta * theta_t;
    const double beta_tt = second * square(theta_t) + beta_theta * theta_tt;
    struct saturation s;
    s.pressure = liquid_saturation_pressure(temperature);
    s.slope = 4e6 * beta * square(beta) * beta_t;
    s.curvature = 4e6 * square(beta) * (3 * square(beta_t) + beta * beta_tt);
    return s;
}

/* T d ln p/dT. */
static inline double liquid_steepness(double temperature)
{
    if (temperature >= SUPERCOOLED_TEMPERATURE_MIN && temperature <= LIQUID_POLYNOMIAL_TEMPERATURE_MAX) {
        const double slope = polynomial(liquid_root_slope_coefficients, LIQUID_ROOT_TERMS - 1, (temperature - 303.15) * (1 / 70.0));
        return temperature * (4 / 70.0) * slope / liquid_root(temperature);
    }
    const struct saturation s = liquid_saturation(temperature);
    return temperature * s.slope / s.pressure;
}

/* Murphy and Koop 2005, equation 10, 123 to 332 K: ln of the pressure in Pa. */
static inline double supercooled_logarithm(double temperature)
{
    const double log_t = log(temperature);
    return 54.842763 - 6763.22 / temperature - 4.210 * log_t + 0.000367 * temperature
           + tanh(0.0415 * (temperature - 218.8)) * (53.878 - 1331.22 / temperature - 9.44523 * log_t + 0.014025 * temperature);
}

/* Over liquid at any temperature: below 233.15 K the shape of Murphy and Koop's equation, joined without a step. */
static inline double over_liquid_pressure(double temperature)
{
    if (temperature >= SUPERCOOLED_TEMPERATURE_MIN)
        return liquid_saturation_pressure(temperature);
    return liquid_saturation_pressure(SUPERCOOLED_TEMPERATURE_MIN)
           * exp(supercooled_logarithm(temperature) - supercooled_logarithm(SUPERCOOLED_TEMPERATURE_MIN));
}

#endif
