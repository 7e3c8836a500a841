/* Heat transfer of a cylinder across a stream of air, unchecked. Internal: shared by thermometers and surfaces. */
#ifndef VTX_FLOW_CROSSFLOW_KERNEL_H
#define VTX_FLOW_CROSSFLOW_KERNEL_H

#include "../base/numeric.h"

/* Nusselt number on the diameter (Churchill and Bernstein 1977), properties at film temperature, Re Pr above 0.2. */
static inline double crossflow_nusselt(double reynolds, double prandtl)
{
    const double laminar = 0.62 * sqrt(reynolds) * cbrt(prandtl) / pow(1 + pow(0.4 / prandtl, 2.0 / 3), 0.25);
    return 0.3 + laminar * pow(1 + pow(reynolds / 282000, 0.625), 0.8);
}

#endif
