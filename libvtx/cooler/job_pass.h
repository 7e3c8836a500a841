/* The forward pass of a job that has been checked. Internal. */
#ifndef VTX_JOB_PASS_H
#define VTX_JOB_PASS_H

#include <vtx/job.h>
#include <vtx/sizing.h>

#include "../base/numeric.h"

/* Everything but what the cooler's parts check themselves when they are opened. */
vtx_status job_check(const vtx_job *job);

/* work may be null: then the jet and the part are not computed. Outputs are not poisoned. */
vtx_status job_pass(const vtx_job *job, vtx_operating_point *point, vtx_work *work);

/* Whether an element of the line has the quantity (enum vtx_sought). */
int job_element_has(const vtx_chain_element *element, int32_t sought);

#endif
