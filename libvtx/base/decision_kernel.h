/* Decision rules without checks. Internal. */
#ifndef VTX_DECISION_KERNEL_H
#define VTX_DECISION_KERNEL_H

#include <vtx/decision.h>

#include "distribution.h"

static inline vtx_status check_consumer_risk(double risk) { return worse(check_share(risk), check_positive(risk, 1e-6, 0.4)); }

/* Freedom 0: infinitely many. */
static inline double error_probability(double deviations, double freedom)
{
    return freedom > 0 ? student_probability(deviations, freedom) : normal_probability(deviations);
}

/* Guard band over standard uncertainty. */
static inline double guard_factor(double consumer_risk, double freedom)
{
    return freedom > 0 ? student_quantile(1 - consumer_risk, freedom) : normal_quantile(1 - consumer_risk);
}

/* Limits as distances from the measured value. The difference is taken between the two smaller tails. */
static inline double conformance_between(double lower, double upper, double uncertainty, double freedom)
{
    const double a = lower / uncertainty, b = upper / uncertainty;
    return a + b > 0 ? error_probability(-a, freedom) - error_probability(-b, freedom)
                     : error_probability(b, freedom) - error_probability(a, freedom);
}

/* inside: distance from the limit, above 0 on the right side of it. */
static inline int32_t verdict_of_margin(double inside, double guard_band)
{
    return inside >= guard_band ? VTX_VERDICT_PASS : inside <= -guard_band ? VTX_VERDICT_FAIL : VTX_VERDICT_NOT_DECIDABLE;
}

#endif
