/* Polynomials of the flow kernels: where they replace libm they are faster, and vectorise. Internal. Written by build-aux/fit_flow. */
#ifndef VTX_FLOW_POLYNOMIALS_H
#define VTX_FLOW_POLYNOMIALS_H

/* (2/(gamma+1))^(1/(gamma-1)) in gamma - 1.355, gamma 1.01..1.7, degree 12: 1.4e-16. */
static inline double sonic_density_at(double x)
{
    const double y = x * x;
    const double even = 0.6311173163428359 + y * (-0.014999729653846253 + y * (-0.0012351596829284614 + y *
        (-0.00013028403870274136 + y * (-1.5652107540370403e-05 + y * (-2.03520143767543e-06 + y *
        -2.961372510954749e-07)))));
    const double odd = 0.06335184477194651 + y * (0.004119057288136835 + y * (0.00039279259349862583 + y *
        (4.4604336035463034e-05 + y * (5.595585981430222e-06 + y * 7.934247090012871e-07))));
    return even + x * odd;
}

/* The function above at gamma = 1.4, the same bits: most gases asked for are air. */
static const double sonic_density_of_air = 0.633938145260609;

/* (artanh(s)/s - 1)/z in z = s^2, 0..0.13, degree 9: 3.4e-17. */
static inline double artanh_tail(double x)
{
    const double y = x * x;
    const double even = 0.3333333333333331 + y * (0.14285714277375924 + y * (0.09090868644669181 + y *
        (0.06647039819353495 + y * 0.0398967884492119)));
    const double odd = 0.20000000000032947 + y * (0.1111111192741363 + y * (0.07693453521547766 + y *
        (0.060880402611425175 + y * 0.08883836153184202)));
    return even + x * odd;
}

/* (expm1(x) - x)/x^2 in x, -0.31..0, degree 8: 1.9e-18. */
static inline double expm1_tail(double x)
{
    const double y = x * x;
    const double even = 0.5 + y * (0.041666666666464125 + y * (0.0013888887771512373 + y * (2.479582819496827e-05
        + y * 2.4288606873104153e-07)));
    const double odd = 0.16666666666666433 + y * (0.00833333332661505 + y * (0.00019841165300182122 + y *
        2.737154898220399e-06));
    return even + x * odd;
}

#endif
