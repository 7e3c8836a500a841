/* The default curve: share of the isentropic drop against cold fraction, and its closed-form inverses. Internal.
 *
 * s = 1 - ((mu - m)/(1 - m))^2 is 1 at mu = m and exactly 0 at mu = 1, where the first law leaves nothing to separate.
 * A smooth curve of one parameter; the published points cannot tell more parameters apart. */
#ifndef VTX_TUBE_CURVE_H
#define VTX_TUBE_CURVE_H

#include <vtx/separation.h>

#include "../base/numeric.h"

/* A factor and not a divisor, because both shapes share it, and all items of a batch. */
static inline double steepness(double m) { return 1 / square(1 - m); }

static inline double cold_shape(double m, double mu)
{
    return (1 - mu) * (1 + mu - 2 * m) * steepness(m);
}

/* mu s / (1 - mu) without its 0/0: the hot stream's gain where the cold stream loses s. */
static inline double hot_shape(double m, double mu)
{
    return mu * (1 + mu - 2 * m) * steepness(m);
}

/* Cold fraction above m at which the cold shape is s, for s in 0..1. */
static inline double warm_branch(double m, double s) { return m + (1 - m) * sqrt(1 - s); }

/* Cold fraction below m at which the cold shape is s, for s in cold_shape(m, 0)..1. */
static inline double cold_branch(double m, double s) { return larger(m - (1 - m) * sqrt(1 - s), 0); }

/* Cold fraction at which the hot shape is h >= 0. */
static inline double fraction_of_hot_shape(double m, double h)
{
    const double b = 0.5 - m, c = h * square(1 - m);
    return c / (b + sqrt(square(b) + c));
}

/* Cold fraction of the largest capacity against a target that lies delta cold drops above the inlet: the zero of
 * d/dmu [mu (delta + s)], at most 1. delta >= -1, else nothing is colder than the target. */
static inline double best_fraction(double m, double delta)
{
    return smaller((2 * m + sqrt(square(m) + 3 * square(1 - m) * (1 + delta))) / 3, 1);
}

/* What a pressure exponent makes of an efficiency; an ideal expansion is its limit. */
static inline double efficiency_gain(const vtx_tube *tube, double log_ratio)
{
    return tube->pressure_exponent == 0 ? 1 : exp(tube->pressure_exponent * (log_ratio - log(tube->reference_ratio)));
}

/* What is left of a difference to the surroundings after an exchanger of the given conductance on a share of the flow. */
static inline double leak_remainder(double leak, double share)
{
    return leak == 0 ? 1 : leak > 700 * share ? 0 : exp(-leak / share);
}

/* The ranges of the parameters in one sweep, for calls that count nanoseconds; check_tube says what is wrong, and finds nothing wrong
 * with a zero below zero. */
static inline int is_ordinary_tube(const vtx_tube *t)
{
    const uint64_t rest = bits_of(t->reserved[0]) | bits_of(t->reserved[1]) | bits_of(t->reserved[2]) | bits_of(t->reserved[3]);
    return t->efficiency_low > 0 && t->efficiency_low <= t->peak_efficiency && t->peak_efficiency <= t->efficiency_high &&
           t->efficiency_high <= 1 && t->coldest_fraction > 0 && t->coldest_fraction < 0.5 && lies_within(fabs(t->pressure_exponent), 0, 1) &&
           lies_within(t->reference_ratio, 1, 100) && lies_within(t->cold_leak, 0, 10) && lies_within(t->hot_leak, 0, 10) &&
           lies_within(t->ambient_temperature, 150, 400) && rest == 0 && t->spare == 0 &&
           (t->basis == VTX_TUBE_UNCALIBRATED || t->basis == VTX_TUBE_CALIBRATED);
}

vtx_status check_tube(const vtx_tube *tube);

#endif
