/* One shape for every numeric call, so that misuse and batch rules are tested for all of them alike. */
#ifndef VTX_TESTS_CALLS_H
#define VTX_TESTS_CALLS_H

#include <stddef.h>
#include <stdint.h>

enum { CALL_ARGUMENTS_MAX = 48, CALL_COLUMNS_MAX = 40, CALL_OUTS_MAX = 12 };
enum call_kind { CALL_SELECTOR = 1, CALL_NUMBER, CALL_RECORD, CALL_OUT };

struct call_values {
    int32_t selector[CALL_COLUMNS_MAX];
    double number[CALL_COLUMNS_MAX];
    const void *record[CALL_COLUMNS_MAX];
    void *out[CALL_OUTS_MAX];
};

struct call_columns {
    const void *in[CALL_COLUMNS_MAX];
    ptrdiff_t in_stride[CALL_COLUMNS_MAX];
    void *out[CALL_OUTS_MAX];
    ptrdiff_t out_stride[CALL_OUTS_MAX];
    int32_t *status;
    size_t *failed;
};

struct call_argument {
    int kind;
    size_t size;
    const char *type;   /* of records and outputs */
    const char *layout; /* of outputs: d double, a attainable double, i int32_t, b attainable int32_t; of records: d double, i int32_t,
                         * z double kept for later, s int32_t kept for later, - and _ double and int32_t that the header says are not read */
    int optional;
    double low, high; /* documented range of a number, NaN where an end is none */
};

struct call_description {
    const char *name;
    int32_t (*call)(const struct call_values *values);
    int32_t (*columns)(size_t n, const struct call_values *values, const struct call_columns *columns);
    int arguments;
    struct call_argument argument[CALL_ARGUMENTS_MAX];
};

/* Writes a valid record of the named type; returns 0 when it does not know the type. */
typedef int record_maker(const char *type, void *record);

/* Tests misuse and batch rules of every call in the table. Sample arguments come from tests/data/<samples>:
 * a line a sample, `name token token ...`, a token for each input: a number, a selector, `#n` for a count, `*` for a record,
 * `+` for a record whose fields another, cheaper call tries with odd numbers. A call without a sample is a failure. */
void check_calls(const struct call_description *calls, size_t count, const char *samples, record_maker *make_record);

#endif
