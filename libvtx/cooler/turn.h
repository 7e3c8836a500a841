/* The opening that meets a goal, and how it moves with what is uncertain. Internal. */
#ifndef VTX_TURN_H
#define VTX_TURN_H

#include <vtx/commissioning.h>

#include "setting_fit.h"

vtx_status check_goal(const vtx_valve_goal *goal);

/* Where the valve has to stand. */
struct turn_target {
    double opening, figure;
    double best_opening, best_figure;
    int32_t limit, best_limit;
};

/* OK, NO_SOLUTION (best says how near), OUT_OF_RANGE, NOT_CONVERGED */
vtx_status find_target(struct service_fit *f, const double *x, const vtx_valve_goal *goal, struct turn_target *target);

/* Gradient of ln(target's opening over the present one) by the parameters at x. */
vtx_status target_gradient(struct service_fit *f, const double *x, const vtx_valve_goal *goal, const struct turn_target *target, double *gradient);

/* The same where the target is not known yet; where the goal is out of reach, of its figure at the present opening. */
vtx_status turn_gradient(struct service_fit *f, const double *x, const vtx_valve_goal *goal, double *gradient);

/* The goal's figure among the states. */
int goal_state(const vtx_valve_goal *goal);

#endif
