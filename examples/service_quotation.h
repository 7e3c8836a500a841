/* A quoted point: what a supplier promised, at which state. */
#ifndef SERVICE_QUOTATION_H
#define SERVICE_QUOTATION_H

#include "spot_job.h"

struct service_quotation {
    int is_stated;
    vtx_quotation quotation;
    vtx_job job;                /* the cooler at the quoted state */
};

extern const char quotation_keys[];

/* tested: the job that was read; the quoted one takes its cooler and duty from it. */
void quotation_read(struct job_file *file, const vtx_job *tested, struct service_quotation *quotation);

#endif
