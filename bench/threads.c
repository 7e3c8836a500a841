/* make bench-threads: what a second thread gains on independent halves. The machine's own gain, by exp and by copying, is measured in turn
 * with each call: where other programs run too, no call can gain more. With a file name as argument the same numbers go there as JSON. */
#include <math.h>
#include <pthread.h>
#include <stdlib.h>
#include <string.h>

#include <vtx.h>

#include "machine.h"
#include "timing.h"

enum { ITEMS = 1024, ROUNDS = 31, COPY_BYTES = 1 << 25 };

static const double work_seconds = 0.02; /* of one half */

/* What one thread has to itself. */
struct half {
    double temperature[ITEMS], fraction[ITEMS], result[ITEMS];
    vtx_tube tube;
    vtx_job job;
    char *from, *to;
    void (*work)(struct half *h, size_t n);
    size_t n, failures;
    double used; /* processor time of the last run, s */
};

static void exp_work(struct half *h, size_t n)
{
    for (size_t i = 0; i < n; i++)
        h->result[i % ITEMS] = exp(h->fraction[i % ITEMS]);
}

/* n kilobytes. */
static void copy_work(struct half *h, size_t n)
{
    for (size_t done = 0; done < n * 1024; done += COPY_BYTES)
        memcpy(h->to, h->from, n * 1024 - done < COPY_BYTES ? n * 1024 - done : COPY_BYTES);
    h->result[0] = h->to[0];
}

static void pressure_work(struct half *h, size_t n)
{
    for (size_t i = 0; i < n; i += ITEMS)
        h->failures += vtx_water_saturation_pressure_batch(ITEMS, h->temperature, sizeof(double), h->result, sizeof(double), NULL, NULL) != VTX_OK;
}

static void separation_work(struct half *h, size_t n)
{
    vtx_streams streams;
    for (size_t i = 0; i < n; i++)
        h->failures += vtx_tube_separate(&h->tube, VTX_AIR_REAL, 7e5, h->temperature[i % ITEMS], 0, 101325, 101325, h->fraction[i % ITEMS],
                                         &streams) != VTX_OK;
}

static void job_work(struct half *h, size_t n)
{
    vtx_operating_point point;
    for (size_t i = 0; i < n; i++) {
        h->job.setting.cold_fraction = h->fraction[i % ITEMS];
        h->failures += vtx_job_evaluate(&h->job, &point, NULL) != VTX_OK;
    }
}

static const struct {
    const char *what;
    void (*work)(struct half *h, size_t n);
} works[] = {
    { "exp", exp_work },
    { "copying", copy_work },
    { "saturation pressure over liquid, batch", pressure_work },
    { "separation of dry air, REAL", separation_work },
    { "a job's operating point", job_work },
};

static void *run_half(void *half)
{
    struct half *h = half;
    const double start = thread_seconds();
    h->work(h, h->n);
    h->used = thread_seconds() - start;
    return NULL;
}

/* Seconds of a run by the wall clock, and processor time of its longer thread: what the wall would show on an idle machine. */
struct span {
    double wall, processor;
};

static struct span one_thread(struct half *const halves[2])
{
    const double start = wall_seconds();
    run_half(halves[0]);
    run_half(halves[1]);
    return (struct span){ wall_seconds() - start, halves[0]->used + halves[1]->used };
}

static struct span two_threads(struct half *const halves[2])
{
    pthread_t other;
    const double start = wall_seconds();
    if (pthread_create(&other, NULL, run_half, halves[0]) != 0) {
        fprintf(stderr, "no second thread\n");
        exit(1);
    }
    run_half(halves[1]);
    pthread_join(other, NULL);
    return (struct span){ wall_seconds() - start, fmax(halves[0]->used, halves[1]->used) };
}

static int by_size(const void *a, const void *b)
{
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

static void set_work(struct half *const halves[2], void (*work)(struct half *h, size_t n))
{
    for (int i = 0; i < 2; i++) {
        halves[i]->work = work;
        halves[i]->n = 2 * ITEMS;
    }
    while (one_thread(halves).processor < 2 * work_seconds)
        halves[0]->n = halves[1]->n *= 2;
}

/* One thread's time over two threads': by the wall the median of rounds and that of the best times, by processor time the median. */
struct gain {
    double median, best, processor;
};

static struct gain measure(struct half *const halves[2])
{
    double wall[ROUNDS], processor[ROUNDS], one = 1e300, two = 1e300;
    for (int i = 0; i < ROUNDS; i++) {
        const struct span a = one_thread(halves), b = two_threads(halves);
        wall[i] = a.wall / b.wall;
        processor[i] = a.processor / b.processor;
        one = fmin(one, a.wall);
        two = fmin(two, b.wall);
    }
    qsort(wall, ROUNDS, sizeof wall[0], by_size);
    qsort(processor, ROUNDS, sizeof processor[0], by_size);
    return (struct gain){ wall[ROUNDS / 2], one / two, processor[ROUNDS / 2] };
}

static struct half *make_half(void)
{
    struct half *h = calloc(1, sizeof *h);
    if (!h || !(h->from = malloc(COPY_BYTES)) || !(h->to = malloc(COPY_BYTES)))
        return NULL;
    memset(h->from, 1, COPY_BYTES);
    memset(h->to, 0, COPY_BYTES);
    for (size_t i = 0; i < ITEMS; i++) {
        const double share = (double)(i * 389 % ITEMS) / ITEMS;
        h->temperature[i] = 275 + 40 * share;
        h->fraction[i] = 0.2 + 0.6 * share;
    }
    h->failures = vtx_tube_init(&h->tube) != VTX_OK || vtx_job_init(&h->job) != VTX_OK;
    h->job.cooler.rated_free_air_flow = 0.01;
    h->job.supply.pressure = 7e5;
    h->job.supply.humidity = 276.15;
    h->job.duty.target_temperature = 313.15;
    return h;
}

static const char *verdict(const struct gain *gain, const struct gain *exp_gain)
{
    if (gain->best >= 1.9)
        return "1.9 holds";
    if (exp_gain->median < 1.9)
        return "not even exp gains 1.9 now";
    return "1.9 does not hold";
}

static void print_gain(const char *what, const struct gain *gain, const struct gain *exp_gain, FILE *json, size_t i)
{
    printf("%-40s %8.2f %8.2f %10.2f   %8.2f %8.2f %10.2f   %s\n", what, gain->median, gain->best, gain->processor, exp_gain->median, exp_gain->best,
           exp_gain->processor, verdict(gain, exp_gain));
    if (json)
        fprintf(json, "%s\n  { \"call\": \"%s\", \"median\": %.4g, \"best\": %.4g, \"processor\": %.4g, \"exp_median\": %.4g, \"exp_best\": %.4g, "
                      "\"exp_processor\": %.4g, \"verdict\": \"%s\" }",
                i ? "," : "", what, gain->median, gain->best, gain->processor, exp_gain->median, exp_gain->best, exp_gain->processor,
                verdict(gain, exp_gain));
}

static void report(struct half *const halves[2], FILE *json)
{
    for (size_t i = 0; i < sizeof works / sizeof works[0]; i++) {
        set_work(halves, exp_work);
        const struct gain control = measure(halves);
        set_work(halves, works[i].work);
        const struct gain gain = measure(halves);
        print_gain(works[i].what, &gain, &control, json, i);
    }
}

int main(int argc, char **argv)
{
    FILE *json = argc > 1 ? fopen(argv[1], "w") : NULL;
    struct half *const halves[2] = { make_half(), make_half() };
    if (!halves[0] || !halves[1]) {
        fprintf(stderr, "out of memory\n");
        return 1;
    }
    print_machine();
    printf("\none thread's time over two threads'      median     best  processor   exp: the same\n");
    if (json) {
        fprintf(json, "{ ");
        print_machine_json(json);
        fprintf(json, "\"calls\": [");
    }
    report(halves, json);
    if (json)
        fprintf(json, "\n] }\n");
    if (halves[0]->failures + halves[1]->failures)
        fprintf(stderr, "calls failed: the numbers above are worth nothing\n");
    return halves[0]->failures + halves[1]->failures || (json && fclose(json) != 0);
}
