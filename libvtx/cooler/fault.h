/* A job with one thing wrong, and what its gauges would then show. Internal. */
#ifndef VTX_FAULT_H
#define VTX_FAULT_H

#include "evidence.h"

enum { CAUSES = 13 };

/* Range of sizes in which a cause is looked for. */
struct fault_range {
    double low, high;
};

struct fault_range fault_sizes(int32_t cause);

/* Whether the job has what can fail: a filter for LOADED_FILTER. */
int fault_possible(const vtx_job *job, int32_t cause);

/* The healthy job with its valve opening held. */
vtx_status fault_open(const vtx_job *job, vtx_job *healthy);

/* Readings of a job made by fault_open. */
vtx_status fault_readings(const vtx_job *healthy, int32_t cause, double size, double predicted[READINGS]);

#endif
