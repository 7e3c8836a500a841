/* Least squares of a job's forward pass, valve opening held, to service readings; what the description leaves uncertain is fitted along. Internal.
 *
 * Apart from transfer.h by what may vary: here the valve stands still and parameters are chosen call by call; there the cold fraction is free,
 * every datum is moved in turn, and what the tested cooler shows is carried to another state. The forward pass and the search are one. */
#ifndef VTX_SERVICE_FIT_H
#define VTX_SERVICE_FIT_H

#include "../base/least_squares.h"
#include "evidence.h"
#include "input_step.h"

/* Parameters that are no enum vtx_input. */
enum { FIT_OPENING = 1 /* ln of the valve opening over the job's */, FIT_AREA = 2 /* ln of the inlet area over the job's */ };

/* What a state of the job consists of: its readings, then these. */
enum { STATE_COLD_FRACTION = READINGS, STATE_CAPACITY /* W, against the target */, STATES };

enum { FIT_ROWS_MAX = READINGS + PARAMETERS_MAX };

struct service_fit {
    vtx_job job;                   /* as described, opening held */
    struct evidence evidence;
    double deviation[INPUTS];      /* standard uncertainties of the description */
    size_t parameters;
    int32_t what[PARAMETERS_MAX];  /* FIT_ or enum vtx_input */
    double unit[PARAMETERS_MAX];   /* parameters count in these */
    int32_t held[PARAMETERS_MAX];  /* nonzero: one unit is its standard uncertainty about 0 */
    double typical[PARAMETERS_MAX];
    struct least_squares fit;
    double workspace[FIT_ROWS_MAX * (2 * PARAMETERS_MAX + 3)];
};

/* Job with its opening held, description and readings checked; no parameters yet. readings may be null: none. */
vtx_status service_fit_open(struct service_fit *f, const vtx_job *job, const vtx_input_uncertainty *uncertainty,
                            const vtx_service_readings *readings);

int service_fit_read(const struct service_fit *f, int32_t reading);

/* Unit 0 is left out. */
void service_fit_add(struct service_fit *f, int32_t what, double unit, int32_t held);

/* What the description leaves uncertain and the gauges feel, but for efficiency and rated flow. Supply pressure and temperature are free where
 * a reading tells them. */
void service_fit_add_description(struct service_fit *f);

/* Index of a parameter, or -1. */
int service_fit_index(const struct service_fit *f, int32_t what);

/* The job with its parameters moved by x units. */
vtx_job service_fit_job(const struct service_fit *f, const double *x);

vtx_status service_fit_state(const struct service_fit *f, const double *x, double state[STATES]);

/* gradient[state * PARAMETERS_MAX + parameter] at x, and the state there. */
vtx_status service_fit_gradient(struct service_fit *f, const double *x, double state[STATES], double *gradient);

/* Where the readings put pressure, temperature and flow before anything is fitted. */
vtx_status service_fit_start(const struct service_fit *f, double *x);

/* Sum of squares at x; 1e300 where the job has no state. */
double service_fit_misfit(struct service_fit *f, const double *x);

/* From x to the least squares; fixed: nonzero for parameters that stay at x, or null. OK, NO_SOLUTION (more free than read), NOT_CONVERGED */
vtx_status service_fit_run(struct service_fit *f, const int32_t *fixed, double *x);

/* Readings less what is fitted without a hold. */
int32_t service_fit_freedom(const struct service_fit *f);

/* In the parameter's own unit; NaN when frozen. */
double service_fit_deviation(const struct service_fit *f, size_t parameter);

#endif
