/* One figure of a job, by its number in enum vtx_wished. Internal. */
#ifndef VTX_JOB_FIGURE_H
#define VTX_JOB_FIGURE_H

#include <vtx/job.h>
#include <vtx/sizing.h>

#include "../base/numeric.h"

/* Whether a wish about the figure means "at most". */
int figure_at_most(int32_t figure);

vtx_status check_figure(int32_t figure);

/* Several figures of one forward pass; NaN for all when the pass fails. */
vtx_status job_figures(const vtx_job *job, const int32_t *figures, size_t count, double *values, int32_t *advisories);

#endif
