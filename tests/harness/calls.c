/* Misuse and batch rules, tested for every call of a table. */
#include <errno.h>
#include <fenv.h>
#include <float.h>

#include "harness.h"
#include "speed.h"

enum { RECORD_BYTES = 4096, SAMPLES_MAX = 32, ITEMS = 11 };

/* Inputs of one sample and room for the outputs, in memory that may be misread but never misaligned. */
struct sample {
    struct call_values values;
    int is_count[CALL_COLUMNS_MAX];
    int fields_elsewhere[CALL_COLUMNS_MAX];
    double records[CALL_COLUMNS_MAX][RECORD_BYTES / sizeof(double)];
    double outs[CALL_OUTS_MAX][RECORD_BYTES / sizeof(double)];
};

static const struct call_description *current;
static const char *doing;

static void must(int condition, const char *what, int argument, double value)
{
    char text[300];
    snprintf(text, sizeof text, "%s: %s (%s, argument %d, value %g)", current->name, what, doing, argument + 1, value);
    expect_true(condition, text, __FILE__, __LINE__);
}

static void point_outs(struct sample *s)
{
    memset(s->outs, 0x5a, sizeof s->outs);
    for (int o = 0; o < CALL_OUTS_MAX; o++)
        s->values.out[o] = s->outs[o];
}

/* Every field poisoned, but for attainable ones with NO_SOLUTION; on success no infinity. */
static void look_at_outputs(struct sample *s, int32_t status, int argument, double value)
{
    int o = 0;
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind != CALL_OUT)
            continue;
        const unsigned char *at = s->values.out[o++];
        for (const char *c = x->layout; at && *c; c++) {
            double number;
            int32_t integer;
            if (*c == 'i' || *c == 'b') {
                memcpy(&integer, at, sizeof integer);
                at += sizeof integer;
                if (status != 0 && !(*c == 'b' && status == 3))
                    must(integer == -1, "integer output not -1 on failure", argument, value);
            } else {
                memcpy(&number, at, sizeof number);
                at += sizeof number;
                if (status == 0)
                    must(!isinf(number), "infinite output with OK", argument, value);
                else if (!(*c == 'a' && status == 3))
                    must(isnan(number), "double output not NaN on failure", argument, value);
            }
        }
    }
}

static int32_t call(struct sample *s, int argument, double value)
{
    point_outs(s);
    errno = 0;
    feclearexcept(FE_ALL_EXCEPT);
    const int32_t status = current->call(&s->values);
    const int flags = fetestexcept(FE_ALL_EXCEPT) & ~(FE_INEXACT | FE_UNDERFLOW);
    if (status == 0)
        must(flags == 0, "floating-point flag raised on valid input", argument, value);
    must(status >= 0 && status <= 5, "unknown status", argument, value);
    look_at_outputs(s, status, argument, value);
    return status;
}

static void misuse_numbers(struct sample *s)
{
    static const double never[] = { (double)NAN, (double)INFINITY, -(double)INFINITY };
    static const double odd[] = { 0, -1, 4.9e-324, -4.9e-324, 1e-300, -1e-3, 1e-12, 1, 1e3, 1e12, DBL_MAX, -DBL_MAX };
    int n = 0;
    for (int a = 0; a < current->arguments; a++) {
        if (current->argument[a].kind != CALL_NUMBER)
            continue;
        const double good = s->values.number[n];
        for (size_t k = 0; k < sizeof never / sizeof never[0]; k++) {
            s->values.number[n] = never[k];
            must(call(s, a, never[k]) == 1, "NaN or infinity must be BAD_ARGUMENT", a, never[k]);
        }
        for (size_t k = 0; k < sizeof odd / sizeof odd[0]; k++) {
            s->values.number[n] = odd[k];
            call(s, a, odd[k]);
        }
        s->values.number[n++] = good;
    }
}

/* Just outside the range that the header documents: by 1e-5, because some ends are printed rounded. */
static void misuse_ranges(struct sample *s)
{
    int n = 0;
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind != CALL_NUMBER)
            continue;
        const double good = s->values.number[n];
        const double outside[] = { x->low - 1e-5 * fmax(fabs(x->low), 1e-3), x->high + 1e-5 * fmax(fabs(x->high), 1e-3) };
        for (int k = 0; k < 2; k++) {
            s->values.number[n] = outside[k];
            if (!isnan(outside[k]))
                must(call(s, a, outside[k]) != 0, "a value outside the documented range must not be OK", a, outside[k]);
        }
        s->values.number[n++] = good;
    }
}

static void misuse_selectors(struct sample *s)
{
    static const int32_t never[] = { 0, -1, 29999, INT32_MAX, INT32_MIN };
    int n = 0;
    for (int a = 0; a < current->arguments; a++) {
        if (current->argument[a].kind != CALL_SELECTOR)
            continue;
        const int32_t good = s->values.selector[n];
        for (size_t k = 0; k < sizeof never / sizeof never[0]; k++) {
            if (s->is_count[n] && never[k] >= 0)
                continue;
            s->values.selector[n] = never[k];
            must(call(s, a, never[k]) == 1, "unknown selector must be BAD_ARGUMENT", a, never[k]);
        }
        s->values.selector[n++] = good;
    }
}

static void misuse_pointers(struct sample *s)
{
    int r = 0, o = 0;
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind == CALL_RECORD) {
            const void *good = s->values.record[r];
            s->values.record[r] = NULL;
            must(call(s, a, 0) == 1, "null input must be BAD_ARGUMENT", a, 0);
            s->values.record[r++] = good;
        } else if (x->kind == CALL_OUT) {
            point_outs(s);
            s->values.out[o] = NULL;
            const int32_t status = current->call(&s->values);
            must(status == (x->optional ? 0 : 1), "null output must be BAD_ARGUMENT, null optional output OK", a, 0);
            if (status != 0)
                look_at_outputs(s, status, a, 0);
            o++;
        }
    }
}

/* Every eight bytes of every record in turn hold an odd number: whatever the answer, no infinity, no flag with OK, all poisoned else. */
static void misuse_fields(struct sample *s)
{
    static const double odd[] = { (double)NAN, (double)INFINITY, 0, -1, 4.9e-324, 1e-300, 1e-12, 1, 1e3, 1e12, DBL_MAX, -DBL_MAX };
    int r = 0;
    for (int a = 0; a < current->arguments; a++) {
        if (current->argument[a].kind != CALL_RECORD)
            continue;
        const size_t fields = s->fields_elsewhere[r] ? 0 : current->argument[a].size / sizeof(double);
        for (size_t field = 0; field < fields; field++) {
            const double good = s->records[r][field];
            for (size_t k = 0; k < sizeof odd / sizeof odd[0]; k++) {
                s->records[r][field] = odd[k];
                call(s, a, odd[k]);
            }
            s->records[r][field] = good;
        }
        r++;
    }
}

/* A double of a record is a number, what is kept for later zero, unless the header says that the field is not read. */
static void misuse_layouts(struct sample *s)
{
    static const double never[] = { (double)NAN, (double)INFINITY, -(double)INFINITY };
    int r = 0;
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind != CALL_RECORD)
            continue;
        unsigned char *at = (unsigned char *)s->records[r++];
        for (const char *c = x->layout; *c; c++) {
            const int is_double = *c == 'd' || *c == 'z' || *c == '-';
            double number;
            int32_t integer;
            const int32_t later = 7;
            if (is_double) {
                memcpy(&number, at, sizeof number);
                for (size_t k = 0; *c == 'd' && k < sizeof never / sizeof never[0]; k++) {
                    memcpy(at, &never[k], sizeof number);
                    must(call(s, a, never[k]) == 1, "NaN or infinity in a record must be BAD_ARGUMENT", a, (double)(c - x->layout));
                }
                for (size_t k = 0; *c == 'z' && k < 2; k++) {
                    memcpy(at, k ? &never[0] : &(double){ 1 }, sizeof number);
                    must(call(s, a, 1) == 1, "a number in a reserved field must be BAD_ARGUMENT", a, (double)(c - x->layout));
                }
                memcpy(at, &number, sizeof number);
                at += sizeof number;
            } else {
                memcpy(&integer, at, sizeof integer);
                if (*c == 's') {
                    memcpy(at, &later, sizeof integer);
                    must(call(s, a, later) == 1, "a number in a spare field must be BAD_ARGUMENT", a, (double)(c - x->layout));
                }
                memcpy(at, &integer, sizeof integer);
                at += sizeof integer;
            }
        }
    }
}

/* A column of ITEMS items with its own offset and stride, so that nothing is aligned or in order. */
struct column {
    unsigned char bytes[ITEMS * (RECORD_BYTES + 16) + 32];
    unsigned char *first;
    ptrdiff_t stride;
};

static void lay_out(struct column *c, size_t size, int layout)
{
    const ptrdiff_t step = (ptrdiff_t)size + (layout == 0 ? 0 : 3);
    memset(c->bytes, 0x33, sizeof c->bytes);
    c->first = c->bytes + (layout == 2 ? (ITEMS - 1) * step : 0) + (layout == 0 ? 0 : 1);
    c->stride = layout == 2 ? -step : step;
}

static double varied(double number, int item) { return number * (1 + 2e-4 * item); }

/* Calls of records alone have no more than the first three, and one answer for all items. */
enum { LAYOUTS = 5, LAYOUTS_WITHOUT_NUMBERS = 3 };

static int takes_numbers(void)
{
    for (int a = 0; a < current->arguments; a++)
        if (current->argument[a].kind == CALL_NUMBER)
            return 1;
    return 0;
}

/* What the scalar call says to an item of a layout. */
static int32_t scalar_answer(const struct sample *s, int layout, int item, struct sample *one)
{
    int numbers = 0, records = 0;
    *one = *s;
    for (int a = 0; a < current->arguments; a++) {
        if (current->argument[a].kind == CALL_RECORD) {
            one->values.record[records] = one->records[records];
            records++;
        } else if (current->argument[a].kind == CALL_NUMBER) {
            const int k = layout == 3 && numbers == 0 ? 0 : item;
            one->values.number[numbers] = k == 3 && numbers == 0 ? (double)NAN : varied(s->values.number[numbers], k);
            numbers++;
        }
    }
    point_outs(one);
    return current->call(&one->values);
}

/* layout 0 contiguous, 1 misaligned, 2 backwards, 3 first number repeated, 4 first output in place of the first number */
static void batch_layout(struct sample *s, int layout)
{
    static struct column in[CALL_COLUMNS_MAX], out[CALL_OUTS_MAX];
    struct call_columns columns = { .status = NULL };
    int32_t status[ITEMS], answer;
    size_t failed = 99, bad = 0;
    int column = 0, n = 0, r = 0, o = 0, in_place = -1, first_number = -1;
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind == CALL_NUMBER || x->kind == CALL_RECORD) {
            lay_out(&in[column], x->size, layout > 2 ? 0 : layout);
            for (int i = 0; i < ITEMS; i++) {
                const double number = i == 3 && n == 0 ? (double)NAN : varied(s->values.number[n], i);
                memcpy(in[column].first + i * in[column].stride, x->kind == CALL_NUMBER ? (const void *)&number : s->values.record[r], x->size);
            }
            if (x->kind == CALL_NUMBER && n == 0)
                first_number = column;
            if (layout == 3 && x->kind == CALL_NUMBER && n == 0)
                in[column].stride = 0;
            n += x->kind == CALL_NUMBER;
            r += x->kind == CALL_RECORD;
            columns.in[column] = in[column].first;
            columns.in_stride[column] = in[column].stride;
            column++;
        } else if (x->kind == CALL_OUT) {
            lay_out(&out[o], x->size, layout > 2 ? 0 : layout);
            if (layout == 4 && o == 0 && first_number >= 0 && x->layout[0] == 'd' && !x->layout[1]) {
                in_place = o;
                columns.out[o] = in[first_number].first;
                columns.out_stride[o] = in[first_number].stride;
            } else {
                columns.out[o] = out[o].first;
                columns.out_stride[o] = out[o].stride;
            }
            o++;
        }
    }
    columns.status = status;
    columns.failed = &failed;
    feclearexcept(FE_ALL_EXCEPT);
    answer = current->columns(ITEMS, &s->values, &columns);
    must(fetestexcept(FE_ALL_EXCEPT & ~FE_INEXACT) == 0, "batch call left a floating-point flag", layout, 0);
    static struct sample one;
    int32_t expected = 0;
    for (int i = 0; i < ITEMS; i++) {
        int outs = 0;
        if (i == 0 || n > 0)
            expected = scalar_answer(s, layout, i, &one);
        bad += expected != 0;
        must(status[i] == expected, "batch status differs from scalar status", layout, i);
        for (int a = 0; a < current->arguments; a++) {
            if (current->argument[a].kind != CALL_OUT)
                continue;
            const unsigned char *at = (const unsigned char *)columns.out[outs] + i * columns.out_stride[outs];
            must(memcmp(at, one.values.out[outs], current->argument[a].size) == 0,
                 outs == in_place ? "in-place batch output differs from scalar" : "batch output differs from scalar", layout, i);
            outs++;
        }
    }
    must(failed == bad && answer == (bad ? 6 : 0), "batch summary wrong", layout, (double)failed);
}

static void batch_misuse(struct sample *s)
{
    struct call_columns columns = { .status = NULL };
    size_t failed = 99;
    int32_t status[ITEMS] = { 77 };
    int ins = 0, outs = 0;
    must(current->columns(0, &s->values, &columns) == 0, "n = 0 must be OK", 0, 0);
    columns.status = status;
    columns.failed = &failed;
    must(current->columns(ITEMS, &s->values, &columns) == 1 && failed == ITEMS && status[0] == 77,
         "null columns must be BAD_ARGUMENT and write failed only", 0, (double)failed);
    static double room[ITEMS * RECORD_BYTES / sizeof(double)], before[ITEMS * RECORD_BYTES / sizeof(double)];
    memset(room, 0x11, sizeof room);
    memcpy(before, room, sizeof room);
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind == CALL_NUMBER || x->kind == CALL_RECORD)
            columns.in[ins++] = room;
        else if (x->kind == CALL_OUT)
            columns.out[outs++] = room;
    }
    failed = 99;
    must(current->columns(2, &s->values, &columns) == 1 && failed == 2, "output stride 0 with n > 1 must be BAD_ARGUMENT", 0, (double)failed);
    must(memcmp(room, before, sizeof room) == 0, "a call-level error wrote an output", 0, 0);
}

static int read_tokens(struct sample *s, char *text, record_maker *make_record)
{
    int selectors = 0, numbers = 0, records = 0;
    char *end;
    memset(s, 0, sizeof *s);
    for (int a = 0; a < current->arguments; a++) {
        const struct call_argument *x = &current->argument[a];
        if (x->kind == CALL_OUT)
            continue;
        text += strspn(text, " ");
        if (x->kind == CALL_RECORD) {
            s->fields_elsewhere[records] = *text == '+';
            if ((*text != '*' && *text != '+') || !*text++ || x->size > RECORD_BYTES || !make_record || !make_record(x->type, s->records[records]))
                return 0;
            s->values.record[records] = s->records[records];
            records++;
            continue;
        }
        if (x->kind == CALL_SELECTOR) {
            s->is_count[selectors] = *text == '#';
            text += *text == '#';
            s->values.selector[selectors++] = (int32_t)strtol(text, &end, 10);
        } else {
            s->values.number[numbers++] = strtod(text, &end);
        }
        if (end == text)
            return 0;
        text = end;
    }
    return text[strspn(text, " \r\n")] == 0;
}

/* The first sample of each call: what `make bench` prints. */
static void print_speeds(const struct call_description *calls, size_t count, const char *samples, record_maker *make_record)
{
    static struct sample s;
    char text[1024], name[128];
    FILE *json = fopen(getenv("VTX_SPEED"), "a"), *stream = fopen(data_path(samples), "r");
    print_speed_unit();
    for (size_t c = 0; stream && c < count; c++) {
        int found = 0;
        current = &calls[c];
        rewind(stream);
        while (!found && fgets(text, sizeof text, stream))
            found = sscanf(text, "%127s", name) == 1 && strcmp(name, current->name) == 0
                && read_tokens(&s, text + strspn(text, " ") + strlen(name), make_record);
        must(found, "no sample arguments in the data file", 0, 0);
        if (found)
            print_speed(current, &s.values, json);
    }
    must(json && stream, "no file", 0, 0);
    if (stream)
        fclose(stream);
    if (json)
        fclose(json);
}

void check_calls(const struct call_description *calls, size_t count, const char *samples, record_maker *make_record)
{
    static struct sample s;
    char text[1024], name[128];
    if (getenv("VTX_SPEED")) {
        print_speeds(calls, count, samples, make_record);
        return;
    }
    for (size_t c = 0; c < count; c++) {
        int found = 0;
        current = &calls[c];
        doing = "sample file";
        FILE *stream = fopen(data_path(samples), "r");
        must(stream != NULL, samples, 0, 0);
        if (!stream)
            return;
        while (fgets(text, sizeof text, stream)) {
            if (sscanf(text, "%127s", name) != 1 || strcmp(name, current->name) != 0)
                continue;
            doing = "sample";
            found++;
            if (!read_tokens(&s, text + strspn(text, " ") + strlen(name), make_record)) {
                must(0, "sample not understood", 0, 0);
                continue;
            }
            must(call(&s, 0, 0) == 0, "sample does not answer OK", 0, 0);
            must(found > 1 || timed_items_that_fail(current, &s.values) == 0, "sample fails when varied by parts in ten thousand for timing", 0, 0);
            doing = "misuse";
            misuse_numbers(&s);
            misuse_ranges(&s);
            misuse_selectors(&s);
            misuse_pointers(&s);
            misuse_fields(&s);
            misuse_layouts(&s);
            doing = "batch";
            for (int layout = 0; layout < (takes_numbers() ? LAYOUTS : LAYOUTS_WITHOUT_NUMBERS); layout++)
                batch_layout(&s, layout);
            batch_misuse(&s);
        }
        fclose(stream);
        must(found > 0, "no sample arguments in the data file", 0, 0);
    }
}
