/* Polynomials of logarithm and exponential. Internal. Written by build-aux/fit_elementary. */
#ifndef VTX_ELEMENTARY_POLYNOMIALS_H
#define VTX_ELEMENTARY_POLYNOMIALS_H

/* (artanh(s)/s - 1)/z in z = s^2, s at most tanh(0.5861 ln 2 / 2), degree 7: 7.5e-19. */
static inline double logarithm_tail(double x)
{
    const double y = x * x;
    const double even = 0.3333333333333333 + y * (0.1428571428360593 + y * (0.090908683956487 + y *
        0.06604527040902493));
    const double odd = 0.20000000000004042 + y * (0.1111111152950313 + y * (0.07694450556844562 + y *
        0.06807023520520665));
    return even + x * odd;
}

/* (expm1(x) - x)/x^2 in x, within half of ln 2, degree 9: 4.1e-17. */
static inline double exponential_tail(double x)
{
    const double y = x * x;
    const double even = 0.5000000000000001 + y * (0.041666666666624136 + y * (0.001388888891720967 + y *
        (2.4801521302241082e-05 + y * 2.7620085455018414e-07)));
    const double odd = 0.16666666666666669 + y * (0.008333333333330063 + y * (0.00019841269863050506 + y *
        (2.7557268464831627e-06 + y * 2.510038319586702e-08)));
    return even + x * odd;
}

#endif
