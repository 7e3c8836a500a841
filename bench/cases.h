/* The calls whose cost has an aim, as loops over inputs in cache: what make bench times and make bench-instructions counts. */
#ifndef VTX_BENCH_CASES_H
#define VTX_BENCH_CASES_H

#include "timing.h"

/* Inputs of a case; they vary so that nothing can be computed once for all. */
enum { CASE_ITEMS = 1024 };

struct bench_case {
    const char *what;  /* a batch form bears its scalar form's name and ", batch" */
    timed_loop *loop;
    double aim, least; /* E a call should cost, and may cost at the most; 0: none set */
};

/* Lays out the inputs; then the cases. */
const struct bench_case *bench_cases(size_t *count);

/* Calls that did not answer OK, so far: with one, the numbers are worth nothing. */
size_t failed_calls(void);

#endif
