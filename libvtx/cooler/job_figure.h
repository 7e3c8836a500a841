/* One figure of a job, by its number in enum vtx_wished. Internal. */
#ifndef VTX_JOB_FIGURE_H
#define VTX_JOB_FIGURE_H

#include <vtx/job.h>
#include <vtx/sizing.h>

#include "../base/numeric.h"

/* Whether a wish about the figure means "at most". */
int figure_at_most(int32_t figure);

vtx_status check_figure(int32_t figure);

/* BAD_ARGUMENT when the job does not state what the figure needs: face and standoff, or the part. */
vtx_status check_stated(const vtx_job *job, int32_t figure);

/* Several figures of one forward pass; NaN for all when the pass fails. */
vtx_status job_figures(const vtx_job *job, const int32_t *figures, size_t count, double *values, int32_t *advisories);

/* One figure. OUT_OF_RANGE where the pass answers but the figure has no value, as the time to cool a part that the jet never cools. */
vtx_status job_figure(const vtx_job *job, int32_t figure, double *value, int32_t *advisories);

#endif
