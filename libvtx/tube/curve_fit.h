/* The curve of a tube fitted to its readings. Internal.
 *
 * Each coordinate has a prior from the band of an unmeasured tube, so that every one is always identified. */
#ifndef VTX_TUBE_CURVE_FIT_H
#define VTX_TUBE_CURVE_FIT_H

#include "../base/least_squares.h"
#include "fitted_curve.h"
#include "known_leak.h"

enum { READINGS_MAX = 100, ROWS_MAX = OUTLETS * READINGS_MAX + COORDINATES, FIT_WORKSPACE = ROWS_MAX * (2 * COORDINATES + 3) };

/* What readings show of departures from the family. */
struct departure_knowledge {
    double moment[DEPARTURES][DEPARTURES]; /* mean products of the departures; 0 when none is seen */
    double evidence;                       /* logarithm of how much more probable the readings are when the tube may depart */
};

struct curve_fit {
    struct curve curve;
    double prior[COORDINATES], prior_deviation[COORDINATES];
    double share[FITTED];                /* of the knowledge that comes from the readings: 1 - variance / prior variance */
    int32_t held[COORDINATES];
    double chi_square, freedom;          /* of the readings alone */
    double part[OUTLETS], part_freedom[OUTLETS]; /* of each direction */
    struct departure_knowledge departing;
    double believed;                     /* probability of what is supposed of the readings */
    double shift[FITTED], spread[FITTED][FITTED]; /* from this fit to the mean over all suppositions, and what covariance the others bring */
    size_t count;
    struct curve_reading reading[READINGS_MAX];
    struct least_squares fit;
    double workspace[FIT_WORKSPACE];
};

/* Coordinates from the readings in use with what is not held free, weights following the curve. */
vtx_status fit_curve(struct curve_fit *c);

/* As fit_curve, from the prior and not from the coordinates at hand. */
vtx_status fit_from_prior(struct curve_fit *c);

/* The leak from a fit in which it was free. */
struct leak_knowledge leak_of_fit(const struct curve_fit *c);

/* As fit_curve, resisting bad readings; marks those that it forgot in suspicious. */
vtx_status fit_curve_robustly(struct curve_fit *c, int32_t *suspicious);

/* Column of the Jacobian of all rows over one coordinate, departures included. */
vtx_status jacobian_column(const struct curve_fit *c, size_t k, double *column);

/* After a fit: lets what was held, and the departures, vary by these variances, and the fitted coordinates with them. */
vtx_status admit_held(struct curve_fit *c, const double (*variance)[COORDINATES]);

#endif
