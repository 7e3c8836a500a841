/* What the hot valve is to be set for, and how long to wait after a turn. */
#ifndef SERVICE_GOAL_H
#define SERVICE_GOAL_H

#include <vtx.h>

#include "job_file.h"

struct service_goal {
    int is_stated;
    vtx_valve_goal goal;
    double turns;               /* of the valve from shut, now; 0: not stated */
    double probe_time_constant; /* s; 0: not stated */
    double metal_mass;          /* kg, of the cold end; 0: not stated */
    double metal_heat;          /* J/(kg K) */
};

extern const char goal_keys[];

void goal_read(struct job_file *file, struct service_goal *goal);

#endif
