/* Where the search for a dew or frost point of real air starts. Internal. Written by build-aux/fit_saturation. */
#ifndef VTX_SATURATION_START_H
#define VTX_SATURATION_START_H

#include "../base/polynomial.h"

/* With e, the vapour's partial pressure, and y = (ln e - middle) per_half: ln of the enhancement factor at the dew point over (p - e)/MPa
 * is a polynomial in y, whose coefficients are linear in p/MPa, e/p and e/MPa (liquid) or (p/MPa)^2 (ice). That factor taken out of e,
 * the reciprocal temperature is the next polynomial in y. For y within -1..1; up to 1 MPa. */
struct saturation_start {
    double middle, per_half;
    _Alignas(16) double factor[4][4];
    double fifth; /* the coefficient of y^4, which hangs on nothing */
    _Alignas(16) double reciprocal[8];
};

static const struct saturation_start saturation_starts[2] = {
    /* liquid, pure at 234 to 372.5 K: ln f within 1e-05 of it, temperature within 1e-05 K */
    { 7.110487833, 0.2271468862,
      { { 0.03172290177, -0.0206962412, 0.001178969615, -0.001443118992 },
        { 0.0003465572222, -0.0003861247154, 0.0002492690584, -2.810734828e-05 },
        { 0.6770847949, -1.030570629, 0.6840978046, -0.1873340108 },
        { 0.4905631333, -0.7050579711, 0.3044868663, -0.02219186293 } },
      -0.0003146150694,
      { 0.003532218797, -0.0008194665948, -2.475650894e-05, -4.116149157e-06, -1.047435832e-06, -4.325893347e-07,
        2.906304628e-07, 3.043103352e-08 } },
    /* ice, pure at 180 to 273.16 K: ln f within 7e-06 of it, temperature within 4e-06 K */
    { -0.215391458, 0.1494240341,
      { { 0.07138153197, -0.04401503864, 0.009718229893, -0.001251232311 },
        { 0.001603318276, -0.00233491982, 0.001241085354, -6.525144453e-05 },
        { 2.921836632, -2.076033254, 0, 0 },
        { 6.358691075e-05, -5.441212631e-05, 0.0001601801427, -0.0001875212976 } },
      0.0002198710615,
      { 0.004739311302, -0.001089178138, 1.932241529e-06, -7.102836204e-07, -2.743819559e-07, -8.87000676e-08,
        -2.873062004e-08, 0 } }
};

/* What the liquid's volume, drawn to that of ice near the triple point, adds there, 1/Pa; 1 - T0/T in terms of the logarithm of
 * pressure over triple pressure. */
static const double drawn_factor = 9.485418646e-10, logarithm_by_share = 19.84940024;

#endif
