/* The one loop behind every _batch form that has no loop of its own. Internal. */
#ifndef VTX_BASE_BATCH_H
#define VTX_BASE_BATCH_H

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

/* Call-level check shared with the hand-written loops; BAD_ARGUMENT has written failed already. */
vtx_status batch_check(size_t n, const struct batch_input *in, size_t inputs, const struct batch_output *out,
                       size_t outputs, size_t *failed);

vtx_status batch_run(size_t n, const struct batch_input *in, size_t inputs, const struct batch_output *out,
                     size_t outputs, const int32_t *selector, batch_item *item, int32_t *status, size_t *failed);

#endif
