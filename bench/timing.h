/* Time of short calls: repeats below a millisecond, their spread, and the unit E, one libm exp call measured in the same run. */
#ifndef VTX_BENCH_TIMING_H
#define VTX_BENCH_TIMING_H

#include <stddef.h>

/* Makes the call for n items, one after another. */
typedef void timed_loop(size_t n);

/* Nanoseconds an item, over the repeats. */
struct timing {
    double minimum;
    double median;
    double p90;
};

struct timing time_loop(timed_loop *loop);

/* exp of numbers that vary, in a loop like those of the calls. */
void exp_loop(size_t n);

#endif
