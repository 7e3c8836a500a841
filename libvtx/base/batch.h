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
};

struct batch_output {
    void *base;
    ptrdiff_t stride;
    int optional;
};

struct batch {
    const struct batch_input *in;
    const struct batch_output *out;
    const int32_t *selector;
    int plain; /* every output is wanted and aligned */
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
static inline void *batch_place(const struct batch *b, int column, size_t i, void *room, size_t alignment)
{
    char *const base = b->out[column].base;
    if (!b->plain && !base)
        return NULL;
    char *const place = base + (ptrdiff_t)i * b->out[column].stride;
    return b->plain || (uintptr_t)place % alignment == 0 ? place : room;
}

static inline void batch_move(const struct batch *b, int column, size_t i, const void *place, const void *room, size_t size)
{
    if (!b->plain && place == room)
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

/* Call-level check shared with the hand-written loops; BAD_ARGUMENT has written failed already. */
vtx_status batch_check(size_t n, const struct batch_input *in, size_t inputs, const struct batch_output *out,
                       size_t outputs, size_t *failed);

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

/* Eight bytes are enough for any output; items four bytes apart are 32-bit integers. */
static inline int batch_is_plain(const struct batch_output *out, size_t outputs)
{
    int plain = 1;
    for (size_t c = 0; c < outputs; c++) {
        const uintptr_t last = out[c].stride == sizeof(int32_t) ? sizeof(int32_t) : 8;
        plain &= out[c].base && ((uintptr_t)out[c].base | (uintptr_t)out[c].stride) % last == 0;
    }
    return plain;
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
    const struct batch plain = { in, out, selector, 1 }, any = { in, out, selector, 0 };
    const vtx_status checked = batch_check(n, in, inputs, out, outputs, failed);
    if (checked != VTX_OK || n == 0)
        return checked;
    const batch_environment found = batch_hold();
    const size_t bad = batch_is_plain(out, outputs) ? batch_loop(n, &plain, item, status) : batch_loop(n, &any, item, status);
    batch_restore(&found);
    if (failed)
        *failed = bad;
    return bad ? VTX_PARTIAL : VTX_OK;
}

#endif
