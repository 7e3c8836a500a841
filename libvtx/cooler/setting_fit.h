/* The valve's setting by the readings, and its range. Internal. */
#ifndef VTX_SETTING_FIT_H
#define VTX_SETTING_FIT_H

#include "../base/distribution.h"
#include "service_fit.h"

/* Openings at the ends of the cooler's range of cold fractions. */
struct valve_range {
    double low, high;
};

/* OK, OUT_OF_RANGE (no opening in the range) */
vtx_status valve_range_of(const vtx_job *job, struct valve_range *range);

/* Opening at which the job has this cold fraction; NaN where there is none. */
double opening_at_cold_fraction(const vtx_job *job, double cold_fraction);

struct setting_fit {
    struct service_fit service;
    double x[PARAMETERS_MAX];      /* where the fit ended */
    double chi_square;
    double probability;            /* of a larger chi-square; NaN without freedom */
    double deviation;              /* of the cold fraction, standard */
    double other_deviation;        /* of its cold fraction */
    double low, high;              /* 95 % interval of the cold fraction */
    double other_cold_fraction;    /* of a second minimum nearly as deep, or NaN */
    double state[STATES];          /* at x */
    double gradient[STATES * PARAMETERS_MAX];
    int32_t freedom;
    int32_t advisories;            /* MODEL_MISFIT, INDISTINGUISHABLE, POORLY_DETERMINED */
};

/* The parameters of a setting: opening first, then what the description leaves uncertain. */
void setting_parameters(struct service_fit *f);

/* By first order. */
double setting_deviation(const struct setting_fit *s, int state);

/* Arguments are checked here. OK, BAD_ARGUMENT, OUT_OF_RANGE, NO_SOLUTION (the readings do not see the valve), NOT_CONVERGED */
vtx_status setting_fit_run(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                           struct setting_fit *s);

#endif
