/* Polynomials of the flow kernels: where they replace libm they are faster, and vectorise. Internal. Written by build-aux/fit_flow. */
#ifndef VTX_FLOW_POLYNOMIALS_H
#define VTX_FLOW_POLYNOMIALS_H

#include "../base/polynomial.h"

/* (2/(gamma+1))^(1/(gamma-1)) in gamma - 1.355, gamma 1.01..1.7, degree 12: 1.4e-16. */
_Alignas(16) static const double sonic_density_at_coefficients[16] = {
    0.6311173163428359, 0.06335184477194651, -0.014999729653846253, 0.004119057288136835, -0.0012351596829284614,
    0.00039279259349862583, -0.00013028403870274136, 4.4604336035463034e-05, -1.5652107540370403e-05, 5.595585981430222e-06,
    -2.03520143767543e-06, 7.934247090012871e-07, -2.961372510954749e-07, 0, 0, 0
};
static inline double sonic_density_at(double x) { return polynomial(sonic_density_at_coefficients, 13, x); }

/* The function above at gamma = 1.4, the same bits: most gases asked for are air. */
static const double sonic_density_of_air = 0.633938145260609;

/* (artanh(s)/s - 1)/z in z = s^2, 0..0.13, degree 9: 3.4e-17. */
_Alignas(16) static const double artanh_tail_coefficients[12] = {
    0.3333333333333331, 0.20000000000032947, 0.14285714277375924, 0.1111111192741363, 0.09090868644669181,
    0.07693453521547766, 0.06647039819353495, 0.060880402611425175, 0.0398967884492119, 0.08883836153184202, 0, 0
};
static inline double artanh_tail(double x) { return polynomial(artanh_tail_coefficients, 10, x); }

/* (expm1(x) - x)/x^2 in x, -0.31..0, degree 8: 1.9e-18. */
_Alignas(16) static const double expm1_tail_coefficients[12] = {
    0.5, 0.16666666666666433, 0.041666666666464125, 0.00833333332661505, 0.0013888887771512373, 0.00019841165300182122,
    2.479582819496827e-05, 2.737154898220399e-06, 2.4288606873104153e-07, 0, 0, 0
};
static inline double expm1_tail(double x) { return polynomial(expm1_tail_coefficients, 9, x); }

#endif
