/* What is known of a leak that cannot be below 0 and may well be none. Internal. */
#ifndef VTX_TUBE_KNOWN_LEAK_H
#define VTX_TUBE_KNOWN_LEAK_H

#include "../base/numeric.h"

/* A leak as a fit found it that took it for a normal number. */
struct leak_estimate {
    double prior_deviation, none; /* before: of the leaks that are, and chance that there is none */
    double value, deviation;      /* after */
};

/* What is left of it: chance that there is none, mean over both cases, variance about any value. */
struct leak_knowledge {
    double none, mean, variance;
};

struct leak_knowledge know_leak(const struct leak_estimate *e);

static inline double leak_variance_about(const struct leak_knowledge *k, double value)
{
    return k->variance + (k->mean - value) * (k->mean - value);
}

#endif
