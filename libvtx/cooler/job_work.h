/* What a job's operating point means for line and work. Internal. */
#ifndef VTX_JOB_WORK_H
#define VTX_JOB_WORK_H

#include <vtx/job.h>

#include "../base/numeric.h"

/* What the figures about the work need. */
static inline int states_face(const vtx_duty *d) { return d->face_area > 0 && d->standoff > 0; }
static inline int states_part(const vtx_duty *d) { return d->mass > 0 && d->specific_heat > 0 && d->start_temperature > 0; }

vtx_status job_work(const vtx_job *job, const vtx_operating_point *point, vtx_work *work);

#endif
