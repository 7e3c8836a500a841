/* GSL's Brent root finder and minimiser in automatic storage; its error handler is never reached. */
#include <gsl/gsl_errno.h>
#include <gsl/gsl_min.h>
#include <gsl/gsl_roots.h>

#include "root.h"

enum { ITERATIONS_MAX = 200, GRID = 24 };
#define SQUARE_ROOT_OF_EPSILON 1.4901161193847656e-8

/* Room for the state of either Brent method (64 and 48 bytes in GSL 2.7); checked before use. */
union solver_state {
    double align;
    void *pointer;
    unsigned char bytes[256];
};

struct guarded {
    root_function *f;
    void *context;
    int broken;
    double x, y; /* the last evaluation */
    int ends;    /* known ends of the bracket: GSL asks for them again, and aborts when the second answer has another sign */
    double end_x[2], end_y[2];
};

/* GSL must never see a number that is not finite: zero ends its search, broken tells why. */
static double guarded_value(double x, void *params)
{
    struct guarded *g = params;
    g->x = x;
    for (int i = 0; i < g->ends; i++)
        if (x == g->end_x[i]) {
            g->y = g->end_y[i];
            return g->y;
        }
    const double y = g->f(x, g->context);
    g->broken |= !is_finite(y);
    g->y = is_finite(y) ? y : 0;
    return g->y;
}

static double end_value(double x, struct guarded *g)
{
    const double y = guarded_value(x, g);
    g->end_x[g->ends] = x;
    g->end_y[g->ends++] = y;
    return y;
}

static vtx_status check_bracket(double low, double high, double x_tolerance)
{
    return require(is_finite(low) && is_finite(high) && low <= high && is_finite(x_tolerance) && x_tolerance > 0);
}

/* Brent's point closes in from one side while the far end of its bracket stays where it was; one more evaluation a
 * tolerance further on tells whether the root is already enclosed, where Brent would go on to the last bit. */
static int is_enclosed(const gsl_root_fsolver *solver, double previous, double x_tolerance, struct guarded *g)
{
    const double root = solver->root, y = g->y;
    if (g->x != root || fabs(root - previous) > x_tolerance)
        return 0;
    const double y_beyond = guarded_value(root + (solver->x_lower < root ? -x_tolerance : x_tolerance), g);
    return y_beyond == 0 || (y_beyond < 0) != (y < 0);
}

vtx_status find_root(root_function *f, void *context, double low, double high, double x_tolerance, double *root)
{
    struct guarded g = { .f = f, .context = context };
    gsl_function objective = { guarded_value, &g };
    union solver_state state;
    gsl_root_fsolver solver = { gsl_root_fsolver_brent, &objective, 0, 0, 0, &state };
    vtx_status status = check_bracket(low, high, x_tolerance);
    if (status != VTX_OK)
        return poison(root, status);
    const double f_low = end_value(low, &g);
    const double f_high = end_value(high, &g);
    if (g.broken)
        return poison(root, VTX_NOT_CONVERGED);
    if (f_low == 0 || f_high == 0) {
        *root = f_low == 0 ? low : high;
        return VTX_OK;
    }
    if ((f_low < 0) == (f_high < 0))
        return poison(root, VTX_NO_SOLUTION);
    if (solver.type->size > sizeof state || gsl_root_fsolver_set(&solver, &objective, low, high) != GSL_SUCCESS)
        return poison(root, VTX_NOT_CONVERGED);
    for (int i = 0; i < ITERATIONS_MAX; i++) {
        const double previous = solver.root;
        if (gsl_root_fsolver_iterate(&solver) != GSL_SUCCESS || g.broken)
            return poison(root, VTX_NOT_CONVERGED);
        const double floor = DBL_EPSILON * fabs(solver.root);
        const int done = solver.x_upper - solver.x_lower <= 2 * larger(x_tolerance, floor)
            || is_enclosed(&solver, previous, larger(x_tolerance, floor), &g);
        if (g.broken)
            return poison(root, VTX_NOT_CONVERGED);
        if (done) {
            *root = solver.root;
            return VTX_OK;
        }
    }
    return poison(root, VTX_NOT_CONVERGED);
}

vtx_status find_minimum(root_function *f, void *context, double low, double high, double x_tolerance, double *minimum)
{
    struct guarded g = { .f = f, .context = context };
    gsl_function objective = { guarded_value, &g };
    union solver_state state;
    gsl_min_fminimizer solver;
    int best = 0;
    double x[GRID + 1], y[GRID + 1];
    vtx_status status = check_bracket(low, high, x_tolerance);
    if (status != VTX_OK)
        return poison(minimum, status);
    for (int i = 0; i <= GRID; i++) {
        x[i] = i == GRID ? high : low + (high - low) * i / GRID;
        y[i] = guarded_value(x[i], &g);
        best = y[i] < y[best] ? i : best;
    }
    if (g.broken)
        return poison(minimum, VTX_NOT_CONVERGED);
    *minimum = x[best];
    /* GSL calls its error handler unless the middle is strictly below both ends. At an end of the range, step inwards first. */
    const int middle = best == 0 ? 1 : best == GRID ? GRID - 1 : best;
    double a = x[middle - 1], m = x[middle], b = x[middle + 1];
    double fa = y[middle - 1], fm = y[middle], fb = y[middle + 1];
    for (int i = 0; i < 60 && !(fm < fa && fm < fb) && b - a > x_tolerance; i++) {
        if (fa <= fm) {
            b = m;
            fb = fm;
            m = a + 0.5 * (m - a);
        } else {
            a = m;
            fa = fm;
            m = b - 0.5 * (b - m);
        }
        fm = guarded_value(m, &g);
    }
    if (g.broken)
        return poison(minimum, VTX_NOT_CONVERGED);
    if (!(fm < fa && fm < fb))
        return VTX_OK;
    memset(&solver, 0, sizeof solver);
    solver.type = gsl_min_fminimizer_brent;
    solver.state = &state;
    if (solver.type->size > sizeof state || gsl_min_fminimizer_set_with_values(&solver, &objective, m, fm, a, fa, b, fb) != GSL_SUCCESS)
        return poison(minimum, VTX_NOT_CONVERGED);
    for (int i = 0; i < ITERATIONS_MAX; i++) {
        const int code = gsl_min_fminimizer_iterate(&solver);
        if (g.broken)
            return poison(minimum, VTX_NOT_CONVERGED);
        /* Brent 1973: below the root of the rounding error a valley is flat, its bracket shrinks no further. */
        const double reach = larger(2 * x_tolerance, 4 * SQUARE_ROOT_OF_EPSILON * fabs(solver.x_minimum));
        if (code == GSL_FAILURE || solver.x_upper - solver.x_lower <= reach) {
            *minimum = solver.x_minimum;
            return VTX_OK;
        }
    }
    return poison(minimum, VTX_NOT_CONVERGED);
}
