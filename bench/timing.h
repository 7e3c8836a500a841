/* Time of calls: repeats below a millisecond where a call is that short, their spread, and the unit E, one libm exp call measured in the same run. */
#ifndef VTX_BENCH_TIMING_H
#define VTX_BENCH_TIMING_H

#include <stddef.h>
#include <stdio.h>

/* Makes the call for n items, one after another. */
typedef void timed_loop(size_t n);

/* Nanoseconds of processor time an item, over the repeats. */
struct timing {
    double minimum;
    double median;
    double p90;
};

/* Clocks: the wall's, and processor time of this thread, in which other programs do not count. */
double wall_seconds(void);
double thread_seconds(void);

struct timing time_loop(timed_loop *loop);

/* Columns of a table: median, in ns and in units, minimum, p90, calls a second; and as a JSON member of that name, if there is a file. */
void print_timing(const char *name, const struct timing *t, double unit, FILE *json);

/* exp of numbers that vary, in a loop like those of the calls. */
void exp_loop(size_t n);

#endif
