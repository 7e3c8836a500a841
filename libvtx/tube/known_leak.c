/* What is known of a leak that cannot be below 0 and may well be none. */
#include "known_leak.h"

#include "../base/distribution.h"

/* Far beyond any doubt, and where the normal law's tail is still good. */
static const double deviate_max = 8;

struct leak_knowledge know_leak(const struct leak_estimate *e)
{
    const double z = larger(e->value / e->deviation, -deviate_max), near = smaller(z, deviate_max), above = normal_probability(near);
    /* Savage and Dickey's ratio; the leaks that are being the upper half of the normal law that was fitted. */
    const double some = (1 - e->none) * e->deviation / e->prior_deviation * exp(0.5 * near * near) * 2 * above;
    const double none = e->none / (e->none + some);
    /* Mean and variance of the part above 0, in deviations (from memory; confirmed in the tests). */
    const double hazard = exp(-0.5 * near * near) / (sqrt(2 * pi) * above), part = z + hazard, part_variance = larger(1 - hazard * (near + hazard), 0);
    const double mean = (1 - none) * part;
    const struct leak_knowledge k = { none, e->deviation * mean, square(e->deviation) * (1 - none) * (part_variance + none * square(part)) };
    return k;
}
