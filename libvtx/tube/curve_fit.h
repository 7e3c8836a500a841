/* The curve of a tube fitted to its readings. Internal.
 *
 * Each coordinate has a prior from the band of an unmeasured tube, so that every one is always identified. */
#ifndef VTX_TUBE_CURVE_FIT_H
#define VTX_TUBE_CURVE_FIT_H

#include "../base/least_squares.h"
#include "fitted_curve.h"

enum { READINGS_MAX = 100, ROWS_MAX = OUTLETS * READINGS_MAX + FITTED, FIT_WORKSPACE = ROWS_MAX * (2 * FITTED + 3) };

struct curve_fit {
    struct curve curve;
    double prior[FITTED], prior_deviation[FITTED];
    double share[FITTED];                /* of the knowledge that comes from the readings: 1 - variance / prior variance */
    int32_t held[FITTED];
    double chi_square, freedom;          /* of the readings alone */
    double part[OUTLETS], part_freedom[OUTLETS]; /* of each direction */
    double departure[COORDINATES];       /* variances of the departures, 0 for those that the readings do not show */
    size_t count;
    struct curve_reading reading[READINGS_MAX];
    struct least_squares fit;
    double workspace[FIT_WORKSPACE];
};

/* Coordinates from the readings in use with what is not held free, weights following the curve. */
vtx_status fit_curve(struct curve_fit *c);

/* As fit_curve, from the prior and not from the coordinates at hand. */
vtx_status fit_from_prior(struct curve_fit *c);

/* As fit_curve, resisting bad readings; marks those that it forgot in suspicious. */
vtx_status fit_curve_robustly(struct curve_fit *c, int32_t *suspicious);

/* Column of the Jacobian of all rows over one coordinate, departures included. */
vtx_status jacobian_column(const struct curve_fit *c, size_t k, double *column);

/* After a fit: lets what was held, and the departures, vary by these variances, and the fitted coordinates with them. */
vtx_status admit_held(struct curve_fit *c, const double *variance);

#endif
