/* Further parts of the sizing report: the work, plain air, noise, cost, other ways to meet the wish, what the figures are worth. */
#ifndef SPOT_MORE_H
#define SPOT_MORE_H

#include "spot_job.h"

/* job: the spot job's with the chosen cooler and setting. */
void spot_print_work(const struct spot_job *spot, const vtx_job *job);
void spot_print_noise_and_cost(const struct spot_job *spot, const vtx_job *job, const vtx_operating_point *point);
void spot_print_ways(const struct spot_job *spot, const vtx_job *job);
void spot_print_worth(const vtx_job *job);

#endif
