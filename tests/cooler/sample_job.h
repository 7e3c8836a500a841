/* A cooler, its supply and its place, as the tests use them: 600 L/min at 8 bar absolute, fed with dried air at 7 bar. */
#ifndef VTX_TESTS_SAMPLE_JOB_H
#define VTX_TESTS_SAMPLE_JOB_H

#include <vtx/job.h>

#include "../harness/harness.h"

void sample_cooler(vtx_cooler *cooler);
void sample_supply(vtx_supply *supply);
void sample_site(vtx_site *site);

/* All of that with a target of 40 degC, without a line. */
vtx_job sample_job(int32_t model);

/* A filter, 8 m of 6.3 mm hose and two quick couplings. */
void add_line(vtx_job *job);

/* The record_maker of the layer. */
int sample_record(const char *type, void *record);

#endif
