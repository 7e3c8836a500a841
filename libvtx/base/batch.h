/* The one loop behind every _batch form that has no loop of its own. Internal. */
#ifndef VTX_BASE_BATCH_H
#define VTX_BASE_BATCH_H

#ifdef __x86_64__
#include <xmmintrin.h>
#else
#include <fenv.h>
#endif

#include <vtx/batch.h>

#include "numeric.h"

struct batch_input {
    const void *base;
    ptrdiff_t stride;
    int is_record; /* not a number */
};

struct batch_output {
    void *base;
    ptrdiff_t stride;
    int optional;
    size_t size; /* of one; 0 where the item asks for no place */
};

/* What is known of the columns when a loop is compiled: the more, the less each item costs. */
enum batch_layout {
    BATCH_ANY,
    BATCH_PLAIN,     /* every output is wanted and aligned */
    BATCH_CONTIGUOUS /* and all numbers and outputs lie without gaps */
};

struct batch {
    const struct batch_input *in;
    const struct batch_output *out;
    const int32_t *selector;
    enum batch_layout layout;
};

typedef vtx_status batch_item(const struct batch *batch, size_t i);

/* (ptrdiff_t)i * stride: a size_t product would overflow for negative strides. */
static inline void batch_get_bytes(const struct batch *b, int column, size_t i, void *value, size_t size)
{
    memcpy(value, (const char *)b->in[column].base + (ptrdiff_t)i * b->in[column].stride, size);
}

static inline double batch_get(const struct batch *b, int column, size_t i)
{
    double value;
    if (b->layout == BATCH_CONTIGUOUS)
        memcpy(&value, (const char *)b->in[column].base + i * sizeof value, sizeof value);
    else
        batch_get_bytes(b, column, i, &value, sizeof value);
    return value;
}

static inline void batch_put(const struct batch *b, int column, size_t i, const void *value, size_t size)
{
    if (b->out[column].base)
        memcpy((char *)b->out[column].base + (ptrdiff_t)i * b->out[column].stride, value, size);
}

/* Where a call may write its output itself, as a loop of scalar calls would have it do: in place where that is aligned, else in the
 * room; null where nobody wants it. What was written a moment ago is not to be copied: the copy would wait for it. */
static inline void *batch_place(const struct batch *b, int column, size_t i, void *room, size_t size, size_t alignment)
{
    char *const base = b->out[column].base;
    if (b->layout == BATCH_CONTIGUOUS)
        return base + i * size;
    if (b->layout == BATCH_ANY && !base)
        return NULL;
    char *const place = base + (ptrdiff_t)i * b->out[column].stride;
    return b->layout == BATCH_PLAIN || (uintptr_t)place % alignment == 0 ? place : room;
}

static inline void batch_move(const struct batch *b, int column, size_t i, const void *place, const void *room, size_t size)
{
    if (b->layout == BATCH_ANY && place == room)
        batch_put(b, column, i, room, size);
}

/* A record that all items share is read where it is, unless it lies askew; one of many is copied, for the item's output may lie there. */
static inline const void *batch_record(const struct batch *b, int column, size_t i, void *room, size_t size, size_t alignment)
{
    if (b->in[column].stride == 0 && (uintptr_t)b->in[column].base % alignment == 0)
        return b->in[column].base;
    batch_get_bytes(b, column, i, room, size);
    return room;
}

/* Whether a column is missing or an output has one place for many items. Inline, so that no address of a column list leaves the batch
 * form: only then do bases and strides stay in registers while the scalar calls run. */
static ALWAYS_INLINE int batch_is_wrong(size_t n, const struct batch_input *in, size_t inputs, const struct batch_output *out, size_t outputs)
{
    int wrong = 0;
    for (size_t c = 0; c < inputs; c++)
        wrong |= !in[c].base;
    for (size_t c = 0; c < outputs; c++)
        wrong |= out[c].base ? (n > 1) & (out[c].stride == 0) : !out[c].optional;
    return wrong && n > 0;
}

/* Call-level check shared with the hand-written loops; BAD_ARGUMENT has written failed already. */
static ALWAYS_INLINE vtx_status batch_check(size_t n, const struct batch_input *in, size_t inputs, const struct batch_output *out,
                                            size_t outputs, size_t *failed)
{
    const int wrong = batch_is_wrong(n, in, inputs, out, outputs);
    if (failed)
        *failed = wrong ? n : 0;
    return require(!wrong);
}

/* A batch call runs without traps and leaves the flags as it found them. On x86-64, where all arithmetic here is that of the vector unit, its
 * control word is all there is to keep; the whole environment takes ten times as long. */
#ifdef __x86_64__
typedef unsigned batch_environment;

static inline batch_environment batch_hold(void)
{
    const unsigned found = _mm_getcsr();
    _mm_setcsr((found | _MM_MASK_MASK) & ~(unsigned)_MM_EXCEPT_MASK);
    return found;
}

static inline void batch_restore(const batch_environment *found) { _mm_setcsr(*found); }
#else
typedef fenv_t batch_environment;

static inline batch_environment batch_hold(void)
{
    fenv_t found;
    feholdexcept(&found);
    return found;
}

static inline void batch_restore(const batch_environment *found) { fesetenv(found); }
#endif

/* Eight bytes are enough for any output but a 32-bit integer. */
static ALWAYS_INLINE enum batch_layout batch_layout_of(const struct batch_input *in, size_t inputs, const struct batch_output *out,
                                                       size_t outputs)
{
    int plain = 1, contiguous = 1;
    for (size_t c = 0; c < inputs; c++)
        contiguous &= in[c].is_record | (in[c].stride == (ptrdiff_t)sizeof(double));
    for (size_t c = 0; c < outputs; c++) {
        const uintptr_t last = out[c].size == sizeof(int32_t) ? sizeof(int32_t) : 8;
        plain &= out[c].base && (((uintptr_t)out[c].base | (uintptr_t)out[c].stride) & (last - 1)) == 0;
        contiguous &= out[c].stride == (ptrdiff_t)out[c].size;
    }
    return !plain ? BATCH_ANY : contiguous ? BATCH_CONTIGUOUS : BATCH_PLAIN;
}

static ALWAYS_INLINE size_t batch_loop(size_t n, const struct batch *batch, batch_item *item, int32_t *status)
{
    size_t bad = 0;
    for (size_t i = 0; i < n; i++) {
        const vtx_status s = item(batch, i);
        bad += s != VTX_OK;
        if (status)
            memcpy((char *)status + i * sizeof s, &s, sizeof s);
    }
    return bad;
}

/* Inline, so that each batch form has loops of its own, with its columns in registers and no call but the scalar one. */
static ALWAYS_INLINE vtx_status batch_run(size_t n, const struct batch_input *in, size_t inputs, const struct batch_output *out,
                                          size_t outputs, const int32_t *selector, batch_item *item, int32_t *status, size_t *failed)
{
    const struct batch any = { in, out, selector, BATCH_ANY }, plain = { in, out, selector, BATCH_PLAIN };
    const struct batch contiguous = { in, out, selector, BATCH_CONTIGUOUS };
    const vtx_status checked = batch_check(n, in, inputs, out, outputs, failed);
    if (checked != VTX_OK || n == 0)
        return checked;
    const batch_environment found = batch_hold();
    const enum batch_layout layout = batch_layout_of(in, inputs, out, outputs);
    const size_t bad = layout == BATCH_CONTIGUOUS ? batch_loop(n, &contiguous, item, status)
                       : layout == BATCH_PLAIN    ? batch_loop(n, &plain, item, status)
                                                  : batch_loop(n, &any, item, status);
    batch_restore(&found);
    if (failed)
        *failed = bad;
    return bad ? VTX_PARTIAL : VTX_OK;
}

#endif
