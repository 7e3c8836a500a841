/* Bracketed roots and minima of one variable, by GSL. Internal: the only door to GSL's solvers. */
#ifndef VTX_ROOT_H
#define VTX_ROOT_H

#include "numeric.h"

/* The objective. Whatever it returns, GSL sees a finite number: a NaN or infinity ends the search as NOT_CONVERGED. */
typedef double root_function(double x, void *context);

/* Root of f in low..high, which must enclose a change of sign (a zero at an end counts).
 *
 * x_tolerance   absolute, > 0: the root is known within it; at least 2e-16 of the root's size
 * cost          measured on smooth functions with a bracket 1e4 to 1e11 tolerances wide: 8 evaluations on average, 27 at most
 *
 * OK, BAD_ARGUMENT (reversed or not finite bracket), NO_SOLUTION (no change of sign), NOT_CONVERGED
 */
vtx_status find_root(root_function *f, void *context, double low, double high, double x_tolerance, double *root);

/* Minimum of f in low..high. An end may be the minimum. Several minima: the best of a grid of starts is followed.
 *
 * x_tolerance   absolute, > 0; at least 3e-8 of the position's size, where a valley is flat to rounding
 *
 * OK, BAD_ARGUMENT, NOT_CONVERGED
 */
vtx_status find_minimum(root_function *f, void *context, double low, double high, double x_tolerance, double *minimum);

#endif
