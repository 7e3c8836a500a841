/* The curve of a tube over the coordinates that are fitted, and how well a reading is known against it. Internal.
 *
 * Errors of the state at which the outlets were read (pressures, inlet, cold fraction) widen each reading through the curve's slopes,
 * correlated between its two outlets (effective variance). Each reading is seen along two directions: a change of efficiency, which
 * moves both outlets and keeps the energy balance, and across it, which is the energy balance. */
#ifndef VTX_TUBE_FITTED_CURVE_H
#define VTX_TUBE_FITTED_CURVE_H

#include "reading_state.h"

/* What is fitted: logit of peak efficiency, logit of twice the coldest fraction, pressure exponent, hot leak. Then departures from
 * the family, which stay at 0 but may be admitted to the covariance: curvature of efficiency over the cold fraction, over the
 * logarithm of the pressure ratio, a cold leak beyond the tube's own, and a hot leak that goes with that logarithm. */
enum { LOGIT_PEAK, LOGIT_FRACTION, EXPONENT, LEAK, FITTED, SHAPE = FITTED, SAG, COLD_LEAK, LEAK_TREND, COORDINATES, DEPARTURES = COORDINATES - FITTED };

/* Sizes of the coordinates worth noticing, for differences. */
static const double typical_coordinate[COORDINATES] = { 1, 1, 0.1, 0.01, 0.1, 0.1, 0.01, 0.01 };

/* Usual sizes of departures, as standard deviations about none: 80 % of tubes that depart lie within 0.13 at the ends of the cold fraction,
 * 0.3 as the pressure exponent does, and 0.04 as the hot leak does (common practice, no source). */
static const double departure_deviation[DEPARTURES] = { [SHAPE - FITTED] = 0.1, [SAG - FITTED] = 0.234, [COLD_LEAK - FITTED] = 0.0312,
                                                        [LEAK_TREND - FITTED] = 0.0312 };

struct curve {
    vtx_tube tube;                       /* what is not fitted */
    double x[COORDINATES];               /* coordinates */
    double covariance[COORDINATES][COORDINATES];
    double scatter;                      /* standard deviation of the logit efficiency between readings beyond all uncertainties */
    double energy_scale;                 /* by which the energy balance scatters more than the uncertainties say; 1 or more */
};

struct curve_reading {
    struct reading_state state;
    struct expansion expansion;
    double slope[OUTLETS][STATE_INPUTS]; /* of the outlets over the state */
    double covariance[OUTLETS][OUTLETS]; /* of read less curve */
    double whitener[OUTLETS][OUTLETS];   /* turns an error of both outlets into independent rows of variance 1: efficiency, energy */
    int rows;                            /* how many of them count, from the first */
    int used;
    int is_doubted, doubted;             /* of its quantities, STATE_INPUTS and then OUTLETS, one that is not believed */
    double stated;                       /* the uncertainty that was stated for it */
};

/* Outlet temperatures at a state on the curve with coordinates x. Hot outlet: only where hot_counts. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status curve_outlets(const struct curve *c, const double *x, const struct reading_state *s, const struct expansion *e, double *y);

/* d outlets / d coordinates at the curve's own coordinates. */
vtx_status curve_gradient(const struct curve *c, const struct curve_reading *r, double (*gradient)[COORDINATES]);

/* Slopes over the state, covariance of read less curve and its whitener, at coordinates x. */
vtx_status weigh_reading(const struct curve *c, const double *x, struct curve_reading *r);

/* An error (curve less read) of both outlets as rows, where what was not read has no weight; and rows back to read less curve. */
void whiten(const struct curve_reading *r, const double *error, double *row);
void unwhiten(const struct curve_reading *r, const double *row, double *error);

/* Squared length of an error by the reading's covariance, over the outlets that were read. */
double squared_length(const struct curve_reading *r, const double *error);

/* An outlet that hardly any air leaves says nothing: heat decides there. */
static const double least_share = 0.02;

static inline int hot_counts(double cold_fraction) { return cold_fraction <= 1 - least_share; }
static inline int cold_counts(double cold_fraction) { return cold_fraction >= least_share; }

static inline int outlet_counts(const struct reading_state *s, int outlet)
{
    const double mu = s->x[COLD_FRACTION];
    return s->has[outlet] && (outlet == COLD ? cold_counts(mu) : hot_counts(mu));
}

static inline double logistic(double x) { return 1 / (1 + exp(-x)); }
static inline double logit(double share) { return log(share / (1 - share)); }

#endif
