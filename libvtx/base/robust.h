/* Least squares that a few bad readings cannot pull away. Internal.
 *
 * Iteratively reweighted: Huber's loss first, which has one minimum, then Tukey's, which forgets gross errors. With fewer than
 * about four readings more than parameters no loss can tell a bad reading from a bad model: test each deletion instead. */
#ifndef VTX_ROBUST_H
#define VTX_ROBUST_H

#include "least_squares.h"

/* Tuning for 95 % efficiency with normal errors (Huber 1964, Beaton and Tukey 1974; constants from memory, confirmed in the tests). */
static const double HUBER_TUNING = 1.345, TUKEY_TUNING = 4.685;

/* Standard deviation of a normal law over its median absolute deviation: 1 / normal_quantile(0.75). */
static const double MEDIAN_TO_DEVIATION = 1.4826022185056018;

/* Weight of a squared residual at this many standard deviations. */
static inline double huber_weight(double deviate)
{
    return fabs(deviate) <= HUBER_TUNING ? 1 : HUBER_TUNING / fabs(deviate);
}

static inline double tukey_weight(double deviate)
{
    return fabs(deviate) < TUKEY_TUNING ? square(1 - square(deviate / TUKEY_TUNING)) : 0;
}

struct robust_fit {
    /* Set by the caller. */
    struct least_squares *fit;  /* its weights are taken over */
    const int32_t *group;       /* of each row: rows of one reading share a number 0, 1, ... in order; -1: never weighted down; null: each row alone */
    double scale_floor;         /* 1: the residuals' uncertainties are known and not believed to be too large; 0: only their ratios are */
    double *weight, *raw;       /* rows each */

    /* Written. */
    double scale;               /* robust standard deviation of the residuals, not below the floor */
    double variance_factor;     /* the fit's covariance times this is that of the robust estimate (Huber 1981) */
};

/* OK, or what fit_least_squares says; NOT_CONVERGED when the weights do not settle. On return raw holds the residuals without weights. */
vtx_status fit_robustly(struct robust_fit *r);

#endif
