/* Batch forms on the vector unit. */
#include <float.h>

#include "vectors.h"

enum { SIZE_MAX_OF_OUT = 512, LENGTH_MAX = 300 };

struct stretch {
    unsigned char *bytes, *first;
    ptrdiff_t stride;
};

enum layout { CONTIGUOUS, MISALIGNED, BACKWARDS, REPEATED, IN_PLACE, LAYOUTS };

static const struct call_description *described(const struct call_description *calls, size_t count, const char *name)
{
    for (size_t c = 0; c < count; c++)
        if (strcmp(calls[c].name, name) == 0)
            return &calls[c];
    expect_true(0, name, __FILE__, __LINE__);
    return NULL;
}

static double drawn(struct random_state *r, const double range[2], int beyond)
{
    static const double odd[] = { (double)NAN, (double)INFINITY, -(double)INFINITY, 0, -0.0, -1, 4.9e-324, DBL_MAX };
    const double width = range[1] - range[0];
    if (beyond && random_uniform(r, 0, 1) < 0.02)
        return odd[(size_t)random_uniform(r, 0, 7.999)];
    if (width > 0 && range[0] > 0 && range[1] > 20 * range[0])
        return beyond ? random_log_uniform(r, 0.9 * range[0], 1.1 * range[1]) : random_log_uniform(r, range[0], range[1]);
    return random_uniform(r, range[0] - beyond * 0.05 * width, range[1] + beyond * 0.05 * width);
}

static struct stretch stretch(size_t n, size_t size, enum layout layout)
{
    struct stretch s;
    const size_t step = layout == MISALIGNED || layout == BACKWARDS ? size + 3 : size;
    s.bytes = malloc(n * step + 16);
    memset(s.bytes, 0x33, n * step + 16);
    s.first = s.bytes + (layout == BACKWARDS ? (n - 1) * step : 0) + (step != size);
    s.stride = layout == BACKWARDS ? -(ptrdiff_t)step : (ptrdiff_t)step;
    return s;
}

/* Which number is repeated or overwritten. */
static void compare(const struct call_description *call, const struct vector_test *t, size_t n, enum layout layout, int which,
                    struct random_state *r)
{
    static double number[VECTOR_NUMBERS_MAX][LENGTH_MAX];
    struct stretch in[VECTOR_NUMBERS_MAX], out[CALL_OUTS_MAX];
    struct call_values values = { .selector = { t->selector[0], t->selector[1], t->selector[2], t->selector[3] }, .record = { t->record } };
    struct call_columns columns = { .status = NULL };
    int32_t status[LENGTH_MAX];
    size_t failed = 0, bad = 0, wrong = 0;
    int numbers = 0, outs = 0, column = 0;
    for (int a = 0; a < call->arguments; a++) {
        const struct call_argument *x = &call->argument[a];
        if (x->kind == CALL_RECORD) {
            columns.in[column++] = t->record;
        } else if (x->kind == CALL_NUMBER) {
            const int repeated = layout == REPEATED && numbers == which;
            in[numbers] = stretch(n, sizeof(double), layout);
            for (size_t i = 0; i < n; i++) {
                number[numbers][i] = repeated && i > 0 ? number[numbers][0] : drawn(r, t->range[numbers], !(repeated && n > 9));
                memcpy(in[numbers].first + (ptrdiff_t)i * in[numbers].stride, &number[numbers][i], sizeof(double));
            }
            columns.in[column] = in[numbers].first;
            columns.in_stride[column++] = repeated ? 0 : in[numbers].stride;
            numbers++;
        }
    }
    for (int a = 0; a < call->arguments; a++) {
        const struct call_argument *x = &call->argument[a];
        if (x->kind != CALL_OUT)
            continue;
        out[outs] = stretch(n, x->size, layout);
        columns.out[outs] = out[outs].first;
        columns.out_stride[outs] = out[outs].stride;
        if (layout == IN_PLACE && outs == 0 && x->size == sizeof(double)) {
            columns.out[outs] = in[which].first;
            columns.out_stride[outs] = in[which].stride;
        }
        outs++;
    }
    columns.status = status;
    columns.failed = &failed;
    const int32_t answer = call->columns(n, &values, &columns);
    for (size_t i = 0; i < n; i++) {
        double room[CALL_OUTS_MAX][SIZE_MAX_OF_OUT / sizeof(double)];
        for (int k = 0; k < numbers; k++)
            values.number[k] = number[k][i];
        for (int o = 0; o < outs; o++)
            values.out[o] = room[o];
        const int32_t expected = call->call(&values);
        bad += expected != 0;
        wrong += status[i] != expected;
        for (int a = 0, o = 0; a < call->arguments; a++)
            if (call->argument[a].kind == CALL_OUT) {
                const char *at = (const char *)columns.out[o] + (ptrdiff_t)i * columns.out_stride[o];
                wrong += memcmp(at, room[o], call->argument[a].size) != 0;
                o++;
            }
    }
    char text[200];
    snprintf(text, sizeof text, "%s: %zu differences from the scalar call (n %zu, layout %d, number %d), failed %zu of %zu", call->name, wrong, n,
             (int)layout, which, failed, bad);
    expect_true(wrong == 0 && failed == bad && answer == (bad ? VTX_PARTIAL : VTX_OK), text, __FILE__, __LINE__);
    for (int k = 0; k < numbers; k++)
        free(in[k].bytes);
    for (int o = 0; o < outs; o++)
        free(out[o].bytes);
}

static int count_numbers(const struct call_description *call)
{
    int numbers = 0;
    for (int a = 0; a < call->arguments; a++)
        numbers += call->argument[a].kind == CALL_NUMBER;
    return numbers;
}

static void compare_kernels(const struct vector_test *t, int numbers, int beyond, struct random_state *r)
{
    static struct vector_block plain, other;
    int64_t hits = 0;
    memset(&plain, 0, sizeof plain);
    plain.record = t->record;
    plain.n = VECTOR_ITEMS;
    for (int k = 0; k < numbers; k++)
        for (size_t i = 0; i < VECTOR_ITEMS; i++)
            plain.in[k][i] = drawn(r, t->range[k], beyond);
    other = plain;
    t->kernel[VECTOR_PLAIN](&plain);
    for (size_t i = 0; i < VECTOR_ITEMS; i++)
        hits += plain.ordinary[i];
    if (!beyond)
        expect_true(100 * hits >= (int64_t)t->hits * VECTOR_ITEMS, t->call, __FILE__, __LINE__);
    for (int set = VECTOR_PLAIN + 1; set <= vector_set(); set++) {
        size_t wrong = 0;
        t->kernel[set](&other);
        for (size_t i = 0; i < VECTOR_ITEMS; i++) {
            wrong += plain.ordinary[i] != other.ordinary[i];
            for (int o = 0; plain.ordinary[i] && o < VECTOR_OUTPUTS_MAX; o++)
                wrong += memcmp(&plain.out[o][i], &other.out[o][i], sizeof(double)) != 0;
        }
        expect_true(wrong == 0, t->call, __FILE__, __LINE__);
    }
}

void check_vectors(const struct call_description *calls, size_t count, const struct vector_test *tests, size_t tests_count)
{
    static const size_t lengths[] = { 1, 7, 8, 9, 127, 128, 129, LENGTH_MAX };
    struct random_state r;
    random_seed(&r, 20251);
    for (size_t t = 0; t < tests_count; t++) {
        const struct call_description *call = described(calls, count, tests[t].call);
        if (!call)
            continue;
        const int numbers = count_numbers(call);
        for (int round = 0; round < 40; round++)
            compare_kernels(&tests[t], numbers, round % 2, &r);
        for (size_t l = 0; l < sizeof lengths / sizeof lengths[0]; l++)
            for (int layout = 0; layout < LAYOUTS; layout++)
                for (int which = 0; which < (layout >= REPEATED ? numbers : 1); which++)
                    compare(call, &tests[t], lengths[l], (enum layout)layout, which, &r);
    }
}
