/* Nodes and weights of numerical integration. Internal. */
#ifndef VTX_QUADRATURE_H
#define VTX_QUADRATURE_H

#include "numeric.h"

/* Gauss and Legendre, ten points, the positive half of -1..1; Abramowitz and Stegun 1964, table 25.4. */
enum { GAUSS_HALF = 5 };
static const double gauss_node[GAUSS_HALF] = { 0.14887433898163122, 0.43339539412924721, 0.67940956829902444, 0.86506336668898454,
                                               0.97390652851717174 };
static const double gauss_weight[GAUSS_HALF] = { 0.29552422471475287, 0.26926671930999635, 0.21908636251598204, 0.14945134915058059,
                                                 0.06667134430868814 };

#endif
