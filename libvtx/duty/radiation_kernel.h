/* Grey radiation between a small surface and large surroundings. Internal. */
#ifndef VTX_RADIATION_KERNEL_H
#define VTX_RADIATION_KERNEL_H

#include "../base/numeric.h"

/* W/(m2 K4), exact by the SI of 2019. */
#define STEFAN_BOLTZMANN 5.670374419e-8

/* Incropera, Fundamentals of Heat and Mass Transfer, equation 1.9. */
static inline double radiation_coefficient(double emissivity, double surface_temperature, double surroundings_temperature)
{
    return emissivity * STEFAN_BOLTZMANN * (surface_temperature + surroundings_temperature)
         * (square(surface_temperature) + square(surroundings_temperature));
}

#endif
