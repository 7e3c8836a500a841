/* Synthetic readings of tubes whose truth is known, inside and outside the family that is fitted. */
#ifndef VTX_TESTS_SYNTHETIC_H
#define VTX_TESTS_SYNTHETIC_H

#include <vtx/calibration.h>
#include <vtx/moist_air.h>
#include <vtx/version.h>

#include "../harness/harness.h"

enum truth_kind {
    TRUTH_FAMILY = 1,   /* the fitted curve */
    TRUTH_CUBIC,        /* (1 - mu)(a + b mu + c mu^2) with 0.85 of the peak at mu = 0 */
    TRUTH_LEAK,         /* cold end leaks too, and the hot end's leak goes with the inverse inlet pressure */
    TRUTH_SAG           /* efficiency falls with the square of the logarithm of the pressure ratio */
};

/* A tube as it really is. */
struct truth {
    int kind;
    int32_t model;
    vtx_tube tube;   /* the family's member that it is, or departs from */
    double strength; /* of the departure */
};

/* How readings are taken: count states, cold fractions spread over a range at two inlet pressures in turn. */
struct plan {
    size_t count;
    double fraction_low, fraction_high, pressure_a, pressure_b;
    double cold_pressure_low, cold_pressure_high; /* a muffler's back-pressure, drawn between */
    double temperature_u, pressure_share_u, fraction_u;
};

/* The default plan: 12 readings, 0.2 to 0.8, 4 and 7 bar, 0.5 K, 0.5 %, 0.01. */
struct plan usual_plan(void);

/* Draws a tube from the prior band: most tubes, and a leak as often as not. */
void draw_truth(struct random_state *r, int kind, struct truth *t);

/* Outlets of the true tube at a state. */
void true_outlets(const struct truth *t, double inlet_pressure, double inlet_temperature, double cold_pressure, double hot_pressure,
                  double cold_fraction, double *cold, double *hot);

/* A reading at a state, every instrument off by its own normal error. */
void draw_reading(struct random_state *r, const struct truth *t, const struct plan *p, double inlet_pressure, double cold_fraction,
                  vtx_reading *reading);

void draw_readings(struct random_state *r, const struct truth *t, const struct plan *p, vtx_reading *readings);

/* Counts of a coverage study: how often an interval held the truth. */
struct coverage {
    int held, tried;
};

static inline void tally(struct coverage *c, int held)
{
    c->held += held != 0;
    c->tried++;
}

static inline double percent(const struct coverage *c) { return 100.0 * c->held / c->tried; }

#endif
