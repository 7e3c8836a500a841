/* The pressure that a line leaves for the coolers at its end. Internal. */
#ifndef VTX_JOB_LINE_H
#define VTX_JOB_LINE_H

#include <vtx/job.h>

#include "operate.h"

/* Flow drawn from the start of the line by all that run. */
double job_supply_flow(const vtx_job *job, double cooler_flow);

/* Line and coolers in balance. OK, OUT_OF_RANGE (too little pressure arrives), and what the network answers. */
vtx_status job_pressure_at_cooler(const vtx_job *job, const struct operation *o, double *pressure, struct network_flow *flow);

#endif
