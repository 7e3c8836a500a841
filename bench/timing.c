/* Time of short calls. */
#define _POSIX_C_SOURCE 199309L
#include <math.h>
#include <stdlib.h>
#include <time.h>

#include "timing.h"

enum { REPEATS = 201, REPEATS_MIN = 5, ITEMS = 1024 };

static volatile double unit_sink;

static const double repeat_aim = 3e-4; /* s */
static const double repeats_aim = 0.3; /* s, all repeats of a call that takes longer than one's aim */

static double clock_seconds(clockid_t clock)
{
    struct timespec t;
    clock_gettime(clock, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

double wall_seconds(void) { return clock_seconds(CLOCK_MONOTONIC); }

#ifdef CLOCK_THREAD_CPUTIME_ID
double thread_seconds(void) { return clock_seconds(CLOCK_THREAD_CPUTIME_ID); }
#else
double thread_seconds(void) { return wall_seconds(); }
#endif

static double seconds(timed_loop *loop, size_t n)
{
    const double start = thread_seconds();
    loop(n);
    return thread_seconds() - start;
}

static int by_size(const void *a, const void *b)
{
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

/* Items of a repeat: doubled until it takes long enough, which also warms the caches. Once more where it seems to, because an
 * interruption lets a single item seem long enough and the clock itself be measured. */
static size_t items_of_repeat(timed_loop *loop)
{
    size_t n = 1;
    while ((seconds(loop, n) < 0.5 * repeat_aim || seconds(loop, n) < 0.5 * repeat_aim) && n < (size_t)1 << 30)
        n *= 2;
    return n;
}

struct timing time_loop(timed_loop *loop)
{
    double time[REPEATS];
    const size_t n = items_of_repeat(loop);
    const double start = thread_seconds();
    int repeats = 0;
    while (repeats < REPEATS && (repeats < REPEATS_MIN || thread_seconds() - start < repeats_aim))
        time[repeats++] = 1e9 * seconds(loop, n) / (double)n;
    qsort(time, (size_t)repeats, sizeof time[0], by_size);
    return (struct timing){ time[0], time[repeats / 2], time[repeats * 9 / 10] };
}

void print_timing(const char *name, const struct timing *t, double unit, FILE *json)
{
    printf(" %10.1f %9.2f %10.1f %10.1f %10.3g", t->median, t->median / unit, t->minimum, t->p90, 1e9 / t->median);
    if (json)
        fprintf(json, ", \"%s\": { \"ns\": %.5g, \"e\": %.5g, \"minimum\": %.5g, \"p90\": %.5g }", name, t->median, t->median / unit,
                t->minimum, t->p90);
}

void exp_loop(size_t n)
{
    static double x[ITEMS], y[ITEMS];
    for (size_t k = 0; k < ITEMS && x[ITEMS - 1] == 0; k++)
        x[k] = (double)(k * 389 % ITEMS) / ITEMS * 10 - 5;
    for (size_t i = 0; i < n; i++) {
        const size_t k = i % ITEMS;
        y[k] = exp(x[k]);
    }
    unit_sink = y[n % ITEMS];
}
