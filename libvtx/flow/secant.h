/* Roots of rising functions that are nearly straight and well started: secants, with the bracketed search behind them. Internal. */
#ifndef VTX_SECANT_H
#define VTX_SECANT_H

#include "../base/root.h"

enum { SECANT_STEPS = 20 };

/* Whether the last step may be taken on trust, once the slope no longer changes enough to miss the tolerance. */
enum smoothness { MAY_HAVE_KINKS, IS_SMOOTH };

/* Whether f has changed its sign two tolerances further on: behind a kink a short step proves nothing. */
static inline int is_just_beyond(root_function *f, void *context, double x, double value, double tolerance)
{
    const double beyond = f(value > 0 ? x - 2 * tolerance : x + 2 * tolerance, context);
    return !is_finite(beyond) || (beyond > 0) != (value > 0);
}

/* Root of f in low..high, where it is known to lie, from start with an estimate of the slope there.
 *
 * tolerance   absolute, of the root
 * f may answer NaN for "not here": the search then ends with OUT_OF_RANGE and that place
 * cost        3 to 6 evaluations where f is smooth
 *
 * OK, OUT_OF_RANGE, NO_SOLUTION (no change of sign after all), NOT_CONVERGED */
static inline vtx_status secant_root(root_function *f, void *context, double start, double slope, double low, double high, double tolerance,
                                     enum smoothness smoothness, double *root)
{
    double before = start, f_before = f(start, context), x, value;
    *root = start;
    for (int i = 0; i < SECANT_STEPS; i++) {
        if (!is_finite(f_before))
            return VTX_OUT_OF_RANGE;
        if (f_before > 0)
            high = smaller(high, before);
        else
            low = larger(low, before);
        x = before - f_before / slope;
        *root = within(x, low, high);
        if (fabs(f_before / slope) <= tolerance) {
            if (smoothness == IS_SMOOTH || f_before == 0 || is_just_beyond(f, context, before, f_before, tolerance))
                return VTX_OK;
            break;
        }
        if (!(x > low && x < high))
            x = f_before > 0 ? 0.5 * (before + low) : 0.5 * (before + high);
        if (!(x > low && x < high))
            return VTX_OK;
        *root = x;
        value = f(x, context);
        if (!is_finite(value))
            return VTX_OUT_OF_RANGE;
        const double slope_before = slope;
        slope = (value - f_before) / (x - before);
        if (!(slope > 0))
            slope = 0.5 * slope_before;
        /* The slope changed by this much over the last step, and will by less over the next. */
        const double next = value / slope, error = next * (slope / slope_before - 1);
        if (smoothness == IS_SMOOTH && fabs(error) <= tolerance && x - next >= low && x - next <= high) {
            *root = x - next;
            return VTX_OK;
        }
        before = x;
        f_before = value;
    }
    return find_root(f, context, low, high, tolerance, root);
}

#endif
