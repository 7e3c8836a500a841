/* Polynomials of logarithm and exponential. Internal. Written by build-aux/fit_elementary. */
#ifndef VTX_ELEMENTARY_POLYNOMIALS_H
#define VTX_ELEMENTARY_POLYNOMIALS_H

#include "polynomial.h"

/* (artanh(s)/s - 1)/z in z = s^2, s at most tanh(0.5861 ln 2 / 2), degree 7: 7.5e-19. */
_Alignas(16) static const double logarithm_tail_coefficients[8] = {
    0.3333333333333333, 0.20000000000004042, 0.1428571428360593, 0.1111111152950313, 0.090908683956487, 0.07694450556844562,
    0.06604527040902493, 0.06807023520520665
};
static inline double logarithm_tail(double x) { return polynomial(logarithm_tail_coefficients, 8, x); }

/* (expm1(x) - x)/x^2 in x, within half of ln 2, degree 9: 4.1e-17. */
_Alignas(16) static const double exponential_tail_coefficients[12] = {
    0.5000000000000001, 0.16666666666666669, 0.041666666666624136, 0.008333333333330063, 0.001388888891720967,
    0.00019841269863050506, 2.4801521302241082e-05, 2.7557268464831627e-06, 2.7620085455018414e-07, 2.510038319586702e-08,
    0, 0
};
static inline double exponential_tail(double x) { return polynomial(exponential_tail_coefficients, 10, x); }

#endif
