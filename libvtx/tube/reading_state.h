/* A reading with its gaps filled: the state it was taken at, what the outlets read, and how well each is known. Internal. */
#ifndef VTX_TUBE_READING_STATE_H
#define VTX_TUBE_READING_STATE_H

#include <vtx/reading.h>

#include "expansion.h"

/* What a state consists of, and what is read there. */
enum { INLET_PRESSURE, INLET_TEMPERATURE, HUMIDITY, COLD_PRESSURE, HOT_PRESSURE, COLD_FRACTION, STATE_INPUTS };
enum { COLD, HOT, OUTLETS };

struct reading_state {
    int32_t model;
    double x[STATE_INPUTS];    /* state */
    double u[STATE_INPUTS];    /* its standard uncertainty; very wide where the state follows from the outlets alone */
    double step[STATE_INPUTS]; /* for differences: u, but not wider than the curve is straight */
    double y[OUTLETS];         /* outlet temperatures */
    double uy[OUTLETS];
    int has[OUTLETS];          /* whether they were read */
    int unknown_inputs;        /* of x that were not read and only follow from the outlets */
    int usable;                /* something is left to compare with a curve */
    double ambient_temperature;
    vtx_reading_check check;   /* against the laws */
};

/* Beyond so many standard uncertainties a contradiction is one: 0.1 % by chance. */
static const double contradiction = 3.29;

/* NaN, told by its bits: a comparison would raise a flag. */
static inline int is_unread(double x)
{
    uint64_t bits;
    memcpy(&bits, &x, sizeof bits);
    return (bits & UINT64_C(0x7fffffffffffffff)) > UINT64_C(0x7ff0000000000000);
}

/* OK, BAD_ARGUMENT, OUT_OF_RANGE */
vtx_status check_reading(const vtx_reading *reading, int32_t model);

/* A checked reading examined against the laws. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status examine_reading(const vtx_reading *reading, int32_t model, double ambient_temperature, struct reading_state *state);

/* Fills the check of a placed reading whose both outlets were read. OK, OUT_OF_RANGE, NOT_CONVERGED */
vtx_status examine_laws(struct reading_state *state, int ambient_read);

/* A checked reading as a point to predict: its outlets need not be read. OK, BAD_ARGUMENT (too little given), OUT_OF_RANGE */
vtx_status place_point(const vtx_reading *reading, int32_t model, double ambient_temperature, struct reading_state *state);

static inline int is_impossible(int32_t verdict)
{
    return verdict >= VTX_READING_BACKWARD && verdict <= VTX_READING_SWAPPED;
}

#endif
