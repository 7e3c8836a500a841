/* Constant-area flow with friction, without checks: one equation for the adiabatic (Fanno) and the isothermal pipe. Internal.
 *
 * speed_share = (velocity / choking velocity)^2 is the only state; the choking velocity is constant along the pipe:
 *   adiabatic   the velocity at Mach 1, of the stagnation temperature;  speed_share = (1 - T/T0)/u, u of isentropic_kernel.h
 *   isothermal  sqrt(R T), Mach 1/sqrt(gamma);                         speed_share = gamma M^2
 * With y = 1/speed_share, momentum integrates to the same law in both (density is proportional to sqrt(y)):
 *   (y1 - ln y1) - (y2 - ln y2) = scale (f L/D + sum K),  scale = 2 gamma/(gamma+1) adiabatic, 1 isothermal,  y2 = 1 choked.
 * Shapiro 1953, The Dynamics and Thermodynamics of Compressible Fluid Flow, chapter 6, from memory, rewritten. */
#ifndef VTX_FANNO_KERNEL_H
#define VTX_FANNO_KERNEL_H

#include "isentropic_kernel.h"

/* t - ln(1+t): y - 1 - ln y of y = 1 + t, to full relative precision through t = 0. */
static inline double log_excess(double t)
{
    if (!(t < 0.2 && t > -0.2))
        return t - log1p(t);
    const double r = t / (2 + t);
    const double q = square(r);
    const double tail = 1.0 / 3 + q * (1.0 / 5 + q * (1.0 / 7 + q * (1.0 / 9 + q * (1.0 / 11 + q * (1.0 / 13 + q * (1.0 / 15))))));
    return r * (t - 2 * q * tail);
}

/* Series of t in e = +-sqrt(2 log_excess), from the expansion of Stirling's formula (Temme 1979, coefficients recomputed). */
static inline double log_excess_series(double e)
{
    return e * (1 + e * (1.0 / 3 + e * (1.0 / 36 + e * (-1.0 / 270 + e * (1.0 / 4320
        + e * (1.0 / 17010 + e * (-139.0 / 5443200 + e * (1.0 / 204120))))))));
}

/* Halley's step towards log_excess(t) = excess. */
static inline double log_excess_step(double t, double excess)
{
    const double g = log_excess(t) - excess;
    const double slope = t / (1 + t);
    return t - 2 * g * slope / (2 * square(slope) - g / square(1 + t));
}

/* The t >= 0 with log_excess(t) = excess: subsonic. One step after the series, two after the logarithms. */
static inline double log_excess_above(double excess)
{
    if (excess < 1.6) {
        const double e = sqrt(2 * excess);
        const double t = log_excess_series(e);
        return e < 0.1 ? t : log_excess_step(t, excess);
    }
    const double t = excess + log(1 + excess + log(1 + excess));
    return log_excess_step(log_excess_step(t, excess), excess);
}

/* The -1 < t <= 0 with log_excess(t) = excess: supersonic. */
static inline double log_excess_below(double excess)
{
    if (excess < 1.1) {
        const double e = -sqrt(2 * excess);
        const double t = log_excess_series(e);
        return e > -0.1 ? t : log_excess_step(t, excess);
    }
    const double t = exp(exp(-1 - excess) - 1 - excess) - 1;
    return log_excess_step(log_excess_step(t, excess), excess);
}

/* y - 1 of the adiabatic law, without cancellation at Mach 1. */
static inline double fanno_excess_root(double gamma, double mach)
{
    return 2 * (1 - mach) * (1 + mach) / ((gamma + 1) * square(mach));
}

static inline double fanno_scale(double gamma) { return 2 * gamma / (gamma + 1); }

/* f L/D from here to Mach 1. */
static inline double fanno_length(double gamma, double mach)
{
    return log_excess(fanno_excess_root(gamma, mach)) / fanno_scale(gamma);
}

static inline double fanno_mach(double gamma, double y) { return sqrt(2 / ((gamma + 1) * y - (gamma - 1))); }

/* Growth of speed_share along a pipe: s = ln(speed_share2/speed_share1) solves 1 - exp(-s) - speed_share1 s = loss,
 * loss = speed_share1 scale (f L/D + sum K). Written so, nothing cancels when the loss is 1e-15 and nothing is divided at rest.
 * Returns what loss lacks to choke the pipe's end; negative: choked inside, s is then that of a choked end. */
static inline double speed_growth(double speed_share, double loss, double *s)
{
    const double y_minus_one = (1 - speed_share) / speed_share;
    const double most = speed_share * log_excess(y_minus_one);
    const double spare = most - loss;
    if (!(spare > 0)) {
        *s = -log(speed_share);
        return spare;
    }
    if (loss > 0.3 * most) {
        *s = -log(speed_share) - log1p(log_excess_above(spare / speed_share));
        return spare;
    }
    double x = -log1p(-loss / (1 - speed_share));
    for (int i = 0; i < 2; i++) {
        const double fall = expm1(-x);
        const double g = -fall - speed_share * x - loss;
        const double slope = 1 + fall - speed_share;
        x -= 2 * g * slope / (2 * square(slope) + g * (1 + fall));
    }
    *s = x;
    return spare;
}

#endif
