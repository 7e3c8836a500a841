/* Instructions of short calls, where bench/count_instructions runs the program under valgrind. */
#ifndef VTX_BENCH_COUNTING_H
#define VTX_BENCH_COUNTING_H

#include "timing.h"

/* True when instructions are to be counted instead of time taken: the environment has VTX_COUNT. */
int counting(void);

/* Makes the call for n items, to be counted, after one that is not; then says on standard output what it was and for how many. */
void count_loop(const char *what, timed_loop *loop, size_t n);

#endif
