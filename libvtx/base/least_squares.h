/* Non-linear least squares on the caller's storage. Internal: the only door to GSL's linear algebra.
 *
 * Residuals are (model - observed) / standard uncertainty; then `covariance` is the covariance of the parameters as it stands.
 * Where the uncertainties are only relative, multiply it by sum_of_squares / (rows - free). No heap, no global state. */
#ifndef VTX_LEAST_SQUARES_H
#define VTX_LEAST_SQUARES_H

#include "numeric.h"

enum { PARAMETERS_MAX = 12 };

/* Why a fit ended. */
enum stopped_by {
    STOPPED_BY_OFFSET = 1,  /* parameters stand within tolerance of a standard deviation of the minimum */
    STOPPED_BY_STEP,        /* a full Gauss-Newton step no longer moves the parameters */
    STOPPED_BY_ROUNDING,    /* no step lowers the sum of squares any more, and the offset is small */
    STOPPED_BY_WORK,        /* evaluations_max reached: NOT_CONVERGED */
    STOPPED_BY_FLATNESS,    /* a parameter ran away to where the data no longer see it: NOT_CONVERGED */
    STOPPED_BY_FAILURE      /* no acceptable step, or the model fails at the start: NOT_CONVERGED */
};

/* Answers anything but OK where the model has no value; the search then turns back. */
typedef vtx_status residual_function(const double *parameters, double *residuals, void *context);
/* jacobian[row * parameters + parameter] */
typedef vtx_status jacobian_function(const double *parameters, double *jacobian, void *context);

struct least_squares {
    /* Set by the caller. */
    residual_function *residuals;
    jacobian_function *jacobian; /* null: central differences */
    void *context;
    size_t rows, parameters;     /* rows not below the number of parameters that are free */
    const double *typical;       /* for central differences: a size of each parameter that is worth noticing; null: its own size */
    const int32_t *held;         /* nonzero: the parameter stays where it is; null: all are free */
    const double *weight;        /* of each squared residual; null: 1 */
    double tolerance;            /* relative offset (Bates and Watts 1981) at which the fit is done; 0: 1e-8 */
    int32_t evaluations_max;     /* of the residuals, those for derivatives included; 0: 400 */
    double *workspace;
    size_t workspace_length;     /* least_squares_workspace(rows, parameters) or more */

    /* In and out: where the search starts and where it ends. */
    double parameter[PARAMETERS_MAX];

    /* Written by fit_least_squares. Rows and columns of held and frozen parameters are zero in the matrices. */
    double sum_of_squares;       /* weighted */
    double offset;               /* of Bates and Watts, where the search ended */
    double covariance[PARAMETERS_MAX][PARAMETERS_MAX];
    double condition;            /* of the Jacobian with columns of unit length, frozen parameters included */
    double *residual;            /* rows, times the root of the weight; in the workspace */
    double *leverage_root;       /* rows x free, row-major: the hat matrix is its product with its transpose; in the workspace */
    size_t free;                 /* parameters neither held nor frozen */
    int32_t frozen[PARAMETERS_MAX]; /* nonzero: these data cannot tell this parameter from the others */
    int32_t evaluations, stopped_by;
};

/* Doubles of workspace that a fit needs. */
static inline size_t least_squares_workspace(size_t rows, size_t parameters) { return rows * (2 * parameters + 3); }

/* Levenberg and Marquardt's method as a scaled trust region (More 1978), each step by QR, never by normal equations.
 *
 * OK, BAD_ARGUMENT, NO_MEMORY (workspace too small), NOT_CONVERGED (see stopped_by; parameter and sum_of_squares hold the best point)
 */
vtx_status fit_least_squares(struct least_squares *fit);

/* The same of a model that has corners, where no step lowers the sum though the slopes do not vanish. Such an end counts as a minimum up to this
 * slope: the root of the decrease that the linear problem still promises. A search that creeps along a crease and runs out of evaluations is
 * there too, as far as what is left to gain is less than the uncertainty: up to a fifth of the slope. */
vtx_status fit_least_squares_to_corner(struct least_squares *fit, double slope);

/* Element of the hat matrix: how much row i's fitted value moves with row j's observation. */
double hat_element(const struct least_squares *fit, size_t i, size_t j);

/* Takes out of a column over all rows what the free parameters could explain. */
void project_out(const struct least_squares *fit, double *column);

/* Standard deviation of a derived value with gradient g over all parameters, by the covariance as it stands. */
double derived_deviation(const struct least_squares *fit, const double *gradient);

/* Akaike's criterion with the small-sample correction (Hurvich and Tsai 1989); NaN where it is not defined (rows <= parameters + 2). */
double akaike_corrected(double sum_of_squares, size_t rows, size_t parameters);

#endif
