/* What the readings show that the curve and their uncertainties do not explain. Internal.
 *
 * A misfit along the efficiency enters as a scatter of it from reading to reading, one of the energy balances as a scale of their
 * uncertainties, departures from the family as variances of their own. One bad reading, or one instrument of it, is set aside, if that is more
 * probable than a tube that departs. */
#ifndef VTX_TUBE_MISFIT_H
#define VTX_TUBE_MISFIT_H

#include "curve_fit.h"

/* Where the readings are farther from the curve, or from the energy balance, than chance allows, raises scatter or scale until they
 * are as far as they should be. chi_square and freedom stay as they were. */
vtx_status widen_for_misfit(struct curve_fit *c);

/* So many readings cannot outvote a bad one, and each is weighed by its instruments. */
enum { FEW_READINGS = 7 };

/* Routine data hold 1 to 10 % of gross errors (Hampel 1986, from memory). */
static const double wrong_share = 0.05;

/* After a fit: what its residuals say of departures from the family. */
vtx_status weigh_departures(const struct curve_fit *c, struct departure_knowledge *known);

/* After a fit: logarithm of the probability of all readings, coordinates and departures integrated out; leaves c->departing. */
vtx_status weigh_fit(struct curve_fit *c, double *evidence);

/* Squared distance of a reading from the curve of the others, in its standard deviations, its dimension, and its errors in K. */
vtx_status distance_from_others(const struct curve_fit *c, size_t i, double *squared, int *dimension, double *error);

/* Chance of a squared distance; a scale that looks larger than 1 is believed. */
double distance_probability(const struct curve_fit *c, double squared, int dimension, int among_used);

/* Fits, and takes readings out of use that the others contradict; leaves c->departing. */
vtx_status find_outliers(struct curve_fit *c);

/* The same where readings are too few to vote: takes out of use the instrument, or the reading, that is most probably wrong, and leaves
 * what the other suppositions add: c->believed, shift, spread. */
vtx_status doubt_instruments(struct curve_fit *c);

/* Gives what was not believed its stated uncertainty back. */
void trust_again(struct curve_reading *r);

/* Of a contradicting reading with these errors, the quantity to look at first: enum vtx_reading_suspect. */
int32_t suspect_of(const struct curve_reading *r, const double *error);

static inline size_t used_readings(const struct curve_fit *c)
{
    size_t n = 0;
    for (size_t i = 0; i < c->count; i++)
        n += c->reading[i].used != 0;
    return n;
}

#endif
