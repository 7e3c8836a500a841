/* Loops that valgrind counts. */
#include <stdio.h>
#include <stdlib.h>

#include "counting.h"

/* Known to bench/count_instructions by this name: instructions count inside it only, and each return closes a count. */
void counted_loop(timed_loop *loop, size_t n);

void counted_loop(timed_loop *loop, size_t n) { loop(n); }

/* Through a pointer that may change, so that the function is neither inlined nor cloned. */
static void (*volatile run)(timed_loop *loop, size_t n) = counted_loop;

int counting(void) { return getenv("VTX_COUNT") != NULL; }

void count_loop(const char *what, timed_loop *loop, size_t n)
{
    loop(1);
    run(loop, n);
    printf("counted\t%zu\t%s\n", n, what);
}
