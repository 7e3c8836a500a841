/* What a job's operating point means for line and work. Internal. */
#ifndef VTX_JOB_WORK_H
#define VTX_JOB_WORK_H

#include <vtx/job.h>

#include "../base/numeric.h"

vtx_status job_work(const vtx_job *job, const vtx_operating_point *point, vtx_work *work);

#endif
