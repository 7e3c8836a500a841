/* How uncertainties of inputs become one of a result (JCGM 100:2008, the GUM). Internal. */
#ifndef VTX_PROPAGATION_H
#define VTX_PROPAGATION_H

#include "numeric.h"

enum { PROPAGATED_MAX = 16 };

/* Results y of inputs x. Answers anything but OK where they have no value. */
typedef vtx_status derived_function(const double *x, double *y, void *context);

/* dy/dx by central differences over plus and minus one standard uncertainty (GUM 5.1.3, note 2), one-sided where one of the two has no
 * value; 0 where the uncertainty is 0. y is the results at x, sensitivity[output * inputs + input].
 *
 * OK, BAD_ARGUMENT (more than PROPAGATED_MAX outputs), or what f answers at x
 */
vtx_status sensitivities(derived_function *f, void *context, size_t inputs, const double *x, const double *uncertainty,
                         size_t outputs, double *y, double *sensitivity);

/* Covariance of two results with sensitivities a and b to the same inputs. correlation: inputs x inputs; null: independent. */
double propagated_covariance(size_t inputs, const double *a, const double *b, const double *uncertainty, const double *correlation);

/* Standard uncertainty of one result. */
static inline double propagated_uncertainty(size_t inputs, const double *sensitivity, const double *uncertainty,
                                            const double *correlation)
{
    return sqrt(larger(propagated_covariance(inputs, sensitivity, sensitivity, uncertainty, correlation), 0));
}

/* A result to second order in its independent inputs. */
struct second_order {
    double value;      /* at x */
    double mean_shift; /* mean of the result less value: sum of f_ii u_i^2/2 */
    double first;      /* variance of first order, sum of f_i^2 u_i^2 */
    double extra;      /* what the next terms add to it, sum of (f_ij^2/2 + f_i f_ijj) u_i^2 u_j^2; may be negative */
};

/* The terms that GUM 5.1.2 adds where a result is not linear over its uncertainties; exact for a quadratic of normal inputs. Differences
 * over one and two standard uncertainties in 4 n + 2 n (n - 1) + 1 evaluations of f, whose first result counts, for n inputs of uncertainty
 * above 0.
 *
 * OK, BAD_ARGUMENT (more than PROPAGATED_MAX inputs), or what f answers at any of the points
 */
vtx_status second_order_variance(derived_function *f, void *context, size_t inputs, const double *x, const double *uncertainty,
                                 struct second_order *result);

/* Welch and Satterthwaite (GUM G.4.1): degrees of freedom of a sum of independent contributions; freedom 0 stands for exactly known
 * ones, and is the answer when all are. */
double effective_freedom(size_t contributions, const double *uncertainty, const double *freedom);

#endif
