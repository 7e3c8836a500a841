/* Decibels to energy ratios and back. Internal. */
#ifndef VTX_DUTY_LEVEL_KERNEL_H
#define VTX_DUTY_LEVEL_KERNEL_H

#include "../base/numeric.h"

#define LEVEL_MAX 200.0

static inline vtx_status check_level(double level) { return check_range(level, 0, LEVEL_MAX); }

static inline double energy_of(double level) { return pow(10, 0.1 * level); }

static inline double level_of(double energy) { return 10 * log10(energy); }

/* level less background, which is lower; expm1 because the two may be close. */
static inline double level_less(double level, double background)
{
    const double decibel = 0.1 * log(10);
    return level + log(-expm1(decibel * (background - level))) / decibel;
}

#endif
