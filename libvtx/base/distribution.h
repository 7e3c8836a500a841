/* Probabilities and quantiles that intervals and tests of fit need. Internal: unchecked, arguments in range. */
#ifndef VTX_DISTRIBUTION_H
#define VTX_DISTRIBUTION_H

#include "numeric.h"

/* normal_quantile of 0.975, 0.95 and 0.9: how many standard deviations an interval of 95 % reaches to either side, one of 95 % to one side, and
 * one of 80 % to either side. */
static const double normal_two_sided_95 = 1.959963984540054;
static const double normal_one_sided_95 = 1.6448536269514722;
static const double normal_two_sided_80 = 1.2815515655446004;

/* Probability that a standard normal number is below z. Relative error below 1e-14 for z above -8. */
double normal_probability(double z);

/* The z with that probability; probability strictly between 0 and 1. Error below 1e-14 of z or of 1. */
double normal_quantile(double probability);

/* Probability that Student's t is below t; freedom above 0, need not be whole. Error below 1e-12 up to 1e5 degrees of freedom. */
double student_probability(double t, double freedom);

/* The t with that probability; freedom 0.5 or more, infinite freedom is asked of normal_quantile. Error below 1e-11 of t or of 1, up to 1e5 degrees of freedom. */
double student_quantile(double probability, double freedom);

/* Probability that chi-square exceeds x; freedom above 0. Relative error below 1e-12 where it is above 1e-200. */
double chi_square_exceedance(double x, double freedom);

#endif
