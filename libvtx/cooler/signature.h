/* What a cause does to the gauges over its range of sizes: computed once, fitted to readings as often as wanted. Internal. */
#ifndef VTX_SIGNATURE_H
#define VTX_SIGNATURE_H

#include "fault.h"

enum { SIGNATURE_STEPS = 12 };

/* Gauges at one size of a cause. */
struct shown {
    double size;
    int known; /* 0: the cooler has no state at this size */
    double readings[READINGS];
};

struct signature {
    const vtx_job *healthy;
    int32_t cause;
    struct shown table[SIGNATURE_STEPS + 1];
};

/* All causes of one job. */
struct causes {
    struct signature signature[CAUSES];
    int possible[CAUSES]; /* 0: the job does not have what could fail */
};

/* A cause's best size. */
struct fitted_size {
    double size;        /* below 0 where the readings point away from a cause that cannot be negative */
    double uncertainty; /* standard; NaN when the readings do not see the size */
    double chi_square;  /* at the size, or at 0 when that is below 0 */
};

/* Tabulates a cause of a job made by fault_open. */
vtx_status signature_make(const vtx_job *healthy, int32_t cause, struct signature *s);

vtx_status causes_make(const vtx_job *healthy, struct causes *c);

/* Gauges at any size. Below 0 a cause that only grows is mirrored, 2 healthy - readings(-size): noise then leaves the estimate unbiased. */
vtx_status signature_at(const struct signature *s, double size, double readings[READINGS]);

double misfit(const double readings[READINGS], const struct evidence *e);

/* Least squares for the size; the uncertainty is left NaN. */
vtx_status signature_fit(const struct signature *s, const struct evidence *e, struct fitted_size *fit);

/* Standard uncertainty of a size by the sensitivity of the readings to it; NaN when it is more than a sixth of the range. */
double signature_uncertainty(const struct signature *s, const struct evidence *e, double size);

#endif
