/* Saturation of pure water over ice, unchecked. Internal. */
#ifndef VTX_ICE_KERNEL_H
#define VTX_ICE_KERNEL_H

#include "../base/elementary.h"
#include "constants.h"

#define ICE_TEMPERATURE_MIN 50.0
#define ICE_SUBLIMATION_PRESSURE_MIN 1.93495e-40

/* A saturation pressure with its first two derivatives: Pa, Pa/K, Pa/K2. */
struct saturation {
    double pressure;
    double slope;
    double curvature;
};

/* IAPWS R14-08(2011), equation 6. */
static const double sublimation_a[3] = { -0.212144006e2, 0.273203819e2, -0.610598130e1 };
static const double sublimation_b[3] = { 0.333333333e-2, 0.120666667e1, 0.170333333e1 };

/* Equation 6 as published: p, dp/dT, d2p/dT2. The reference of what follows, and the formula below 150 K. */
static inline struct saturation published_sublimation(double temperature)
{
    const double theta = temperature / triple_temperature;
    const double log_theta = log(theta);
    double sum = 0, first = 0, second = 0;
    for (int i = 0; i < 3; i++) {
        const double term = sublimation_a[i] * exp(sublimation_b[i] * log_theta);
        sum += term;
        first += (sublimation_b[i] - 1) * term;
        second += (sublimation_b[i] - 1) * (sublimation_b[i] - 2) * term;
    }
    const double slope = first / (theta * temperature);
    const double curvature = second / (theta * square(temperature));
    struct saturation s;
    s.pressure = triple_pressure * exp(sum / theta);
    s.slope = s.pressure * slope;
    s.curvature = s.pressure * (square(slope) + curvature);
    return s;
}

/* Equation 6 from 150 K on, as the eighth root of the pressure: within 1.2e-13 of the published form, a quarter of the time.
 * Chebyshev fits by build-aux/fit_media. */
#define ICE_POLYNOMIAL_TEMPERATURE_MIN 150.0
#define ICE_POLYNOMIAL_PRESSURE_MIN 6.0955e-6
enum { ICE_ROOT_TERMS = 17 };
_Alignas(16) static const double ice_root_coefficients[20] = {
    0.98317839093190862, 1.0387996590342643, 0.24874156823414223, -0.038178160575217911, -0.0048689983086981367,
    0.0029208019887161816, -0.00059940154773419085, 3.6699403108961808e-05, 2.2150318136198168e-05,
    -1.0928111870214253e-05, 3.057987434829101e-06, -5.7916984417261121e-07, 4.8274155233229985e-08,
    1.6370241837648793e-08, -1.1529700714163483e-08, 5.2426412366912703e-09, -1.2821328709833324e-09, 0, 0, 0
};

/* By x. */
_Alignas(16) static const double ice_root_slope_coefficients[16] = {
    1.0387996590342643, 0.49748313646828446, -0.11453448172565373, -0.019475993234792547, 0.014604009943580909,
    -0.0035964092864051453, 0.00025689582176273266, 0.00017720254508958534, -9.8353006831928278e-05,
    3.0579874348291007e-05, -6.3708682858987235e-06, 5.7928986279875987e-07, 2.1281314388943431e-07,
    -1.6141580999828875e-07, 7.8639618550369053e-08, -2.0514125935733319e-08
};

/* Reciprocal temperature as a polynomial in ln p, and its slope: within 2.2e-7 K, the start of one Newton step. */
_Alignas(16) static const double ice_reciprocal_coefficients[12] = {
    0.0051596061812608359, -0.0015016678329324302, 4.8292271292124146e-06, -9.88742423338601e-07,
    -5.905716078749568e-07, -2.2079958404114253e-07, -7.1846116930784909e-08, -2.3299583933322761e-08,
    -1.0602266670156624e-08, -3.605806386808297e-09, 0, 0
};
_Alignas(16) static const double ice_reciprocal_slope_coefficients[12] = {
    -0.0015016678329324302, 9.6584542584248292e-06, -2.9662272700158028e-06, -2.3622864314998272e-06,
    -1.1039979202057126e-06, -4.3107670158470945e-07, -1.6309708753325933e-07, -8.4818133361252992e-08,
    -3.2452257481274675e-08, 0, 0, 0
};

/* -1..1 on 150..273.16 K. */
static inline double ice_variable(double temperature) { return (temperature - 211.58) * (1 / 61.58); }

static inline double ice_root(double temperature) { return polynomial(ice_root_coefficients, ICE_ROOT_TERMS, ice_variable(temperature)); }

/* Pa, from 150 K on. */
static inline double ice_polynomial_pressure(double temperature) { return square(square(square(ice_root(temperature)))); }

/* Pa, over ice; 50..273.16 K. */
static inline double ice_sublimation_pressure(double temperature)
{
    if (temperature < ICE_POLYNOMIAL_TEMPERATURE_MIN)
        return published_sublimation(temperature).pressure;
    return ice_polynomial_pressure(temperature);
}

static inline struct saturation ice_saturation(double temperature)
{
    const double *c = ice_root_coefficients;
    const double x = ice_variable(temperature), x_t = 1 / 61.58;
    double root = 0, first = 0, second = 0;
    struct saturation s;
    if (temperature < ICE_POLYNOMIAL_TEMPERATURE_MIN)
        return published_sublimation(temperature);
    for (int k = ICE_ROOT_TERMS - 1; k >= 0; k--) {
        second = second * x + first;
        first = first * x + root;
        root = root * x + c[k];
    }
    const double third = square(root) * root, sixth = square(third);
    s.pressure = ice_sublimation_pressure(temperature);
    s.slope = 8 * sixth * root * first * x_t;
    s.curvature = 8 * sixth * (7 * square(first) + 2 * root * second) * square(x_t);
    return s;
}

/* T d ln p/dT. */
static inline double ice_steepness(double temperature)
{
    if (temperature >= ICE_POLYNOMIAL_TEMPERATURE_MIN) {
        const double slope = polynomial(ice_root_slope_coefficients, ICE_ROOT_TERMS - 1, ice_variable(temperature));
        return temperature * (8 / 61.58) * slope / ice_root(temperature);
    }
    const struct saturation s = published_sublimation(temperature);
    return temperature * s.slope / s.pressure;
}

/* Newton on ln p, which is nearly straight in 1/T. The start is the WMO No. 8 form of Magnus for ice, closed both ways and
 * within 1.5 K down to 50 K; each step squares an error that is small already, so the number of steps is bounded. */
static inline double published_sublimation_temperature(double pressure)
{
    const double wanted = log(pressure / triple_pressure);
    const double magnus = wanted + 0.00075;
    double temperature = 273.15 + 272.62 * magnus / (22.46 - magnus);
    for (int i = 0; i < 8; i++) {
        const struct saturation s = published_sublimation(temperature);
        const double step = log(s.pressure / pressure) * s.pressure / (s.slope * temperature);
        temperature /= 1 + step;
        if (fabs(step) < 1e-9)
            break;
    }
    return temperature;
}

/* One Newton step on p from the reciprocal's polynomial, whose own slope is good enough for it. */
static inline double ice_polynomial_temperature(double pressure)
{
    const double low = -12.007922932251436, high = 6.4161716678809659;
    const double x_l = 2 / (high - low);
    const double x = (natural_log(pressure) - 0.5 * (high + low)) * x_l;
    const double start = 1 / polynomial(ice_reciprocal_coefficients, 10, x);
    const double slope = polynomial(ice_reciprocal_slope_coefficients, 9, x);
    const double excess = ice_polynomial_pressure(start) / pressure - 1;
    return start + square(start) * slope * x_l * excess;
}

/* K, over ice. */
static inline double ice_sublimation_temperature(double pressure)
{
    return pressure < ICE_POLYNOMIAL_PRESSURE_MIN ? published_sublimation_temperature(pressure) : ice_polynomial_temperature(pressure);
}

#endif
