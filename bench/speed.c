/* make bench: what the calls that have an aim cost, scalar and batch, in nanoseconds and in E (one libm exp call, timed beside each).
 * With a file name as argument the same numbers go there as JSON. Under bench/count_instructions: instructions instead.
 * As bench/speed_avx2: batch calls only, with AVX2 where the processor has more. */
#include <string.h>

#include "cases.h"
#include "counting.h"
#include "machine.h"

/* No vector unit of that kind: make goes on. */
enum { NOT_THERE = 77 };

#ifdef BENCH_VECTORS
enum { BATCH_ONLY = 1 };
#else
enum { BATCH_ONLY = 0 };
#endif

static void print_head(void)
{
    print_machine();
    printf("\n%-50s %10s %9s %10s %10s %12s %8s %8s\n", "call", "ns median", "E", "minimum", "p90", "calls/s", "aim E", "least E");
}

static void print_case(const struct bench_case *c, const struct timing *t, double unit)
{
    const double e = t->median / unit;
    printf("%-50s %10.1f %9.2f %10.1f %10.1f %12.3g", c->what, t->median, e, t->minimum, t->p90, 1e9 / t->median);
    if (c->least > 0)
        printf(" %8g %8g%s", c->aim, c->least, e > c->least ? "  over" : "");
    printf("\n");
}

static void write_case(FILE *json, const struct bench_case *c, const struct timing *t, double unit, int first)
{
    fprintf(json, "%s  { \"call\": \"%s\", \"exp_ns\": %.4g, \"ns\": %.5g, \"e\": %.5g, \"minimum\": %.5g, \"p90\": %.5g, \"aim\": %g, \"least\": %g }",
            first ? "" : ",\n", c->what, unit, t->median, t->median / unit, t->minimum, t->p90, c->aim, c->least);
}

static void count_cases(const struct bench_case *cases, size_t count)
{
    count_loop("exp", exp_loop, CASE_ITEMS);
    for (size_t i = 0; i < count; i++)
        count_loop(cases[i].what, cases[i].loop, CASE_ITEMS);
}

static void time_cases(const struct bench_case *cases, size_t count, FILE *json)
{
    int first = 1;
    print_head();
    if (json) {
        fprintf(json, "{ ");
        print_machine_json(json);
        fprintf(json, "\"calls\": [\n");
    }
    for (size_t i = 0; i < count; i++) {
        if (BATCH_ONLY && !strstr(cases[i].what, ", batch"))
            continue;
        const double unit = time_loop(exp_loop).median;
        const struct timing t = time_loop(cases[i].loop);
        print_case(&cases[i], &t, unit);
        if (json)
            write_case(json, &cases[i], &t, unit, first);
        first = 0;
    }
    if (json)
        fprintf(json, "\n] }\n");
}

int main(int argc, char **argv)
{
#ifdef BENCH_VECTORS
    if (!vectors_run_here()) {
        printf("no " BENCH_VECTORS " here\n");
        return NOT_THERE;
    }
#endif
    size_t count;
    const struct bench_case *cases = bench_cases(&count);
    FILE *json = argc > 1 ? fopen(argv[1], "w") : NULL;
    if (argc > 1 && !json) {
        perror(argv[1]);
        return 1;
    }
    if (counting())
        count_cases(cases, count);
    else
        time_cases(cases, count, json);
    if (json && fclose(json) != 0) {
        perror(argv[1]);
        return 1;
    }
    if (failed_calls()) {
        fprintf(stderr, "%zu calls failed: the numbers above are worth nothing\n", failed_calls());
        return 1;
    }
    return 0;
}
