/* Bracketed roots and minima of one variable, by GSL. Internal: the only door to GSL's solvers. */
#ifndef VTX_ROOT_H
#define VTX_ROOT_H

#include "numeric.h"

/* The objective. Whatever it returns, GSL sees a finite number: a NaN or infinity ends the search as NOT_CONVERGED. */
typedef double root_function(double x, void *context);

/* Root of f in low..high, which must enclose a change of sign (a zero at an end counts).
 *
 * x_tolerance   absolute, > 0: half-width of the bracket at which the search ends
 *
 * OK, BAD_ARGUMENT (reversed or not finite bracket), NO_SOLUTION (no change of sign), NOT_CONVERGED
 */
vtx_status find_root(root_function *f, void *context, double low, double high, double x_tolerance, double *root);

/* Minimum of f in low..high. An end may be the minimum. Several minima: the best of a grid of starts is followed.
 *
 * OK, BAD_ARGUMENT, NOT_CONVERGED
 */
vtx_status find_minimum(root_function *f, void *context, double low, double high, double x_tolerance, double *minimum);

#endif
