/* Darcy friction without checks. Internal. */
#ifndef VTX_FRICTION_KERNEL_H
#define VTX_FRICTION_KERNEL_H

#include <vtx/friction.h>

#include "../base/numeric.h"

#define BORE_MIN 1e-4
#define BORE_MAX 2.0
#define RELATIVE_ROUGHNESS_MAX 0.1
#define VISCOSITY_MIN 1e-7
#define VISCOSITY_MAX 1e-2

static inline double bore_area(double diameter) { return pi / 4 * square(diameter); }

static inline double reynolds_number(double mass_flow, double diameter, double viscosity)
{
    return mass_flow / (pi / 4 * diameter * viscosity);
}

/* Below this the turbulent part of Churchill's sum is under 1e-20 of the laminar one. */
#define CHURCHILL_LAMINAR 300.0

/* Churchill 1977 times the Reynolds number: 64 down to rest, where the factor itself is 0/0. */
static inline double friction_times_reynolds(double reynolds, double relative_roughness)
{
    if (reynolds < CHURCHILL_LAMINAR)
        return 64;
    const double a = square(2.457 * log(pow(7 / reynolds, 0.9) + 0.27 * relative_roughness));
    const double b = square(37530 / reynolds);
    const double sum = square(square(square(a))) + square(square(square(b)));
    const double c = square(8 / reynolds);
    const double laminar = square(c * square(c));
    return 8 * reynolds * cbrt(sqrt(sqrt(laminar + 1 / (sum * sqrt(sum)))));
}

/* f at infinite Reynolds number by Colebrook: what fittings are measured in. */
static inline double fully_rough_friction(double relative_roughness) { return 0.25 / square(log10(relative_roughness / 3.7)); }

#endif
