/* What every call of a table costs, scalar and batch, by the sample arguments that the misuse tests use: no call can be forgotten. */
#include "speed.h"

#include "../../bench/counting.h"
#include "../../bench/timing.h"

enum { ITEMS = 16, BATCH_ITEMS = 256, OUT_BYTES = 4096 };

static const struct call_description *current;
static struct call_values items[ITEMS];
static struct call_columns columns;
static double column[CALL_COLUMNS_MAX][BATCH_ITEMS];
static unsigned char outs[CALL_OUTS_MAX][OUT_BYTES];
static size_t bad;

static void scalar_loop(size_t n)
{
    for (size_t i = 0; i < n; i++)
        bad += current->call(&items[i % ITEMS]) != 0;
}

static void batch_loop(size_t n)
{
    for (size_t i = 0; i < n; i += BATCH_ITEMS)
        bad += current->columns(n - i < BATCH_ITEMS ? n - i : BATCH_ITEMS, &items[0], &columns) != 0;
}

/* Records are shared by the items; numbers vary by a few parts in ten thousand, so that nothing can be computed once for all. */
static void lay_out(const struct call_values *sample)
{
    int in = 0, n = 0, r = 0, o = 0;
    for (int k = 0; k < ITEMS; k++)
        items[k] = *sample;
    memset(&columns, 0, sizeof columns);
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind == CALL_NUMBER) {
            for (int i = 0; i < BATCH_ITEMS; i++) {
                column[in][i] = sample->number[n] * (1 + 2e-5 * (i % ITEMS));
                items[i % ITEMS].number[n] = column[in][i];
            }
            columns.in[in] = column[in];
            columns.in_stride[in++] = sizeof(double);
            n++;
        } else if (x->kind == CALL_RECORD) {
            columns.in[in++] = sample->record[r++];
        } else if (x->kind == CALL_OUT) {
            for (int k = 0; k < ITEMS; k++)
                items[k].out[o] = outs[o];
            o++;
        }
    }
}

static void lay_out_batch(unsigned char *batch_out)
{
    int o = 0;
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind != CALL_OUT)
            continue;
        columns.out[o] = batch_out;
        columns.out_stride[o++] = (ptrdiff_t)x->size;
        batch_out += (x->size * BATCH_ITEMS + 63) / 64 * 64;
    }
}

static struct timing faster(struct timing a, struct timing b) { return a.median <= b.median ? a : b; }

/* A batch that seems slower than the loop is timed again, and the loop too: another program may have disturbed one of them. */
static void print_times(const struct call_description *call, FILE *json)
{
    const double unit = time_loop(exp_loop).median;
    struct timing scalar = time_loop(scalar_loop), batch = time_loop(batch_loop);
    for (int again = 0; again < 3 && batch.median > 1.05 * scalar.median; again++) {
        scalar = faster(scalar, time_loop(scalar_loop));
        batch = faster(batch, time_loop(batch_loop));
    }
    printf("%-56s", call->name);
    if (json)
        fprintf(json, "{ \"call\": \"%s\", \"exp_ns\": %.4g", call->name, unit);
    print_timing("scalar", &scalar, unit, json);
    print_timing("batch", &batch, unit, json);
    printf("%s\n", bad ? "  (some items failed)" : "");
    if (json)
        fprintf(json, ", \"failed\": %s }\n", bad ? "true" : "false");
}

/* A short batch, because valgrind takes fifty times as long. */
static void print_counts(const struct call_description *call)
{
    char name[128];
    snprintf(name, sizeof name, "%s, batch", call->name);
    count_loop(call->name, scalar_loop, ITEMS);
    count_loop(name, batch_loop, ITEMS);
}

size_t timed_items_that_fail(const struct call_description *call, const struct call_values *sample)
{
    current = call;
    bad = 0;
    lay_out(sample);
    scalar_loop(ITEMS);
    return bad;
}

void print_speed_unit(void)
{
    printf("%-56s  %s\n", "", "scalar: ns median, E, minimum, p90, calls/s; batch of 256: the same");
}

void print_speed(const struct call_description *call, const struct call_values *sample, FILE *json)
{
    size_t size = 0;
    current = call;
    for (int a = 0; a < call->arguments; a++)
        if (call->argument[a].kind == CALL_OUT)
            size += call->argument[a].size * BATCH_ITEMS + 64;
    unsigned char *batch_out = malloc(size);
    if (!batch_out)
        return;
    lay_out(sample);
    lay_out_batch(batch_out);
    bad = 0;
    if (counting())
        print_counts(call);
    else
        print_times(call, json);
    free(batch_out);
}
