/* Further parts of the sizing report: cut and part, the work, rivals, noise, cost, plant, other ways to meet the wish, what the figures
 * are worth. */
#ifndef SPOT_MORE_H
#define SPOT_MORE_H

#include "spot_job.h"

/* job: the spot job's with the chosen cooler and setting. */
void spot_print_work(const struct spot_job *spot, const vtx_job *job);
void spot_print_noise_and_cost(const struct spot_job *spot, const vtx_job *job, const vtx_operating_point *point);
void spot_print_plant(const struct spot_job *spot, const vtx_job *job, const vtx_operating_point *point);
void spot_print_dead_end(const vtx_job *job, const vtx_operating_point *point);
void spot_print_valve_left_alone(const vtx_job *job, const vtx_operating_point *point);
void spot_print_ways(const struct spot_job *spot, const vtx_job *job);
void spot_print_worth(const vtx_job *job);
void spot_print_cut(const struct spot_job *spot);
void spot_print_part(const struct spot_job *spot, const vtx_job *job, const vtx_operating_point *point);

#endif
