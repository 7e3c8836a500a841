/* The loop behind the batch forms that use the vector unit. */
#include "vector.h"

#include "stream.h"

/* Items of a batch whose columns are longer than usual caches; how many blocks ahead to fetch them (measured: one gains half as much);
 * and the widest step, bytes, that is a column's and not a record's. */
enum { PREFETCH_FROM = 1 << 18, PREFETCH_BLOCKS = 4, PREFETCH_STRIDE_MAX = 32 };

/* Bytes of records that are written past the caches: measured where both ways take as long. Columns never are: they gain nothing. */
enum { STREAM_FROM = 1 << 25 };

/* A repeated value needs to be laid out for the first block only, which is whole where there is a second. */
static void load(double *column, const struct batch_input *in, size_t first, size_t items)
{
    const char *from = (const char *)in->base + (ptrdiff_t)first * in->stride;
    if (in->stride == 0 && first > 0)
        return;
    if (in->stride == (ptrdiff_t)sizeof *column)
        memcpy(column, from, items * sizeof *column);
    else
        for (size_t i = 0; i < items; i++)
            memcpy(&column[i], from + (ptrdiff_t)i * in->stride, sizeof *column);
    for (size_t i = items; i % VECTOR_LANES != 0; i++)
        column[i] = column[items - 1];
}

static void store_column(const double *column, const struct batch_output *out, size_t first, size_t items)
{
    char *to = (char *)out->base + (ptrdiff_t)first * out->stride;
    if (out->stride == (ptrdiff_t)sizeof *column)
        memcpy(to, column, items * sizeof *column);
    else
        for (size_t i = 0; i < items; i++)
            memcpy(to + (ptrdiff_t)i * out->stride, &column[i], sizeof *column);
}

static void store_columns(const struct batch *batch, const struct vector_block *block, size_t outputs, size_t first, size_t items)
{
    for (size_t c = 0; c < outputs; c++)
        if (batch->out[c].base)
            store_column(block->out[c], &batch->out[c], first, items);
}

/* A vector's worth a round: one by one it would take a fifth of the fastest kernel's time. */
static int all_ordinary(const struct vector_block *block)
{
    int64_t even = 1, odd = 1;
    for (size_t i = 0; i < block->n; i += VECTOR_LANES) {
        const int64_t *o = &block->ordinary[i];
        even &= o[0] & o[2] & o[4] & o[6];
        odd &= o[1] & o[3] & o[5] & o[7];
    }
    return (int)(even & odd);
}

static void put_status(int32_t *status, size_t i, vtx_status answer)
{
    if (status)
        memcpy((char *)status + i * sizeof answer, &answer, sizeof answer);
}

/* Item by item, because an output may lie where an input that the scalar call has still to read lies too. */
static size_t store_mixed(const struct vector_call *call, const struct batch *batch, const struct vector_block *block, size_t outputs,
                          size_t first, size_t items, int32_t *status)
{
    size_t bad = 0;
    for (size_t at = 0; at < items; at++) {
        vtx_status answer = VTX_OK;
        if (!block->ordinary[at])
            answer = call->item(batch, first + at);
        else if (call->store)
            call->store(batch, block, at, first + at, 1);
        else
            for (size_t c = 0; c < outputs; c++)
                batch_put(batch, (int)c, first + at, &block->out[c][at], sizeof block->out[c][at]);
        put_status(status, first + at, answer);
        bad += answer != VTX_OK;
    }
    return bad;
}

/* Brings the lines of the block at `first` while another is computed: otherwise memory and processor wait for each other in turn where
 * columns are longer than the caches. */
static void prefetch(const void *base, ptrdiff_t stride, size_t first)
{
#ifdef __GNUC__
    enum { LINE = 64 };
    const char *const at = (const char *)base + (ptrdiff_t)first * stride;
    for (ptrdiff_t i = 0; i < VECTOR_ITEMS * stride; i += LINE)
        __builtin_prefetch(at + i);
    __asm__ volatile(""); /* gcc drops calls of functions that do nothing but prefetch */
#else
    (void)base, (void)stride, (void)first;
#endif
}

/* Of records only the next block, because more would throw each other out. */
static void prefetch_block(const struct batch *batch, size_t inputs, size_t outputs, size_t first)
{
    for (size_t c = 0; c < inputs; c++)
        if (batch->in[c].stride > 0 && batch->in[c].stride <= PREFETCH_STRIDE_MAX)
            prefetch(batch->in[c].base, batch->in[c].stride, first + PREFETCH_BLOCKS * VECTOR_ITEMS);
    for (size_t c = 0; c < outputs; c++)
        if (batch->out[c].base && batch->out[c].stride > 0)
            prefetch(batch->out[c].base, batch->out[c].stride,
                     first + (size_t)(batch->out[c].stride <= PREFETCH_STRIDE_MAX ? PREFETCH_BLOCKS : 1) * VECTOR_ITEMS);
}

void store_cached(const struct vector_call *call, const struct batch *batch, const struct vector_block *block, size_t first, size_t items)
{
    call->store(batch, block, 0, first, items);
}

void store_streamed(const struct vector_call *call, const struct batch *batch, const struct vector_block *block, size_t items,
                    struct stream *stream)
{
    const size_t room_items = STREAM_BYTES_MAX / call->record;
    for (size_t at = 0; at < items; at += room_items) {
        const size_t some = items - at < room_items ? items - at : room_items;
        const struct batch_output room = { stream_place(stream), (ptrdiff_t)call->record, 0 };
        const struct batch staged = { batch->in, &room, batch->selector, BATCH_ANY };
        call->store(&staged, block, at, 0, some);
        stream_add(stream, some * call->record);
    }
}

static int is_streamed(const struct vector_call *call, const struct batch *batch, size_t n)
{
    return call->record > 0 && call->record <= STREAM_BYTES_MAX && batch->out[0].stride == (ptrdiff_t)call->record
           && n >= STREAM_FROM / call->record;
}

static char *record_at(const struct batch *batch, size_t i) { return (char *)batch->out[0].base + (ptrdiff_t)i * batch->out[0].stride; }

static void store_all(const struct vector_call *call, const struct batch *batch, const struct vector_block *block, size_t outputs,
                      size_t first, size_t items, struct stream *stream, int32_t *status)
{
    if (stream)
        store_streamed(call, batch, block, items, stream);
    else if (call->store)
        store_cached(call, batch, block, first, items);
    else
        store_columns(batch, block, outputs, first, items);
    if (status)
        memset((char *)status + first * sizeof *status, 0, items * sizeof *status);
}

/* Stream: begun at the block's first record; null where records do not go past the caches. */
static size_t store_block(const struct vector_call *call, const struct batch *batch, const struct vector_block *block, size_t outputs,
                          size_t first, size_t items, struct stream *stream, int32_t *status)
{
    if (all_ordinary(block)) {
        store_all(call, batch, block, outputs, first, items, stream, status);
        return 0;
    }
    if (stream)
        stream_end(stream);
    const size_t bad = store_mixed(call, batch, block, outputs, first, items, status);
    if (stream)
        stream_begin(stream, record_at(batch, first + items));
    return bad;
}

static size_t run_blocks(const struct vector_call *call, size_t records, size_t n, const struct batch *batch, size_t inputs,
                         size_t outputs, int32_t *status)
{
    vector_kernel *const kernel = call->kernel[vector_set()];
    struct vector_block block;
    struct stream room, *const stream = is_streamed(call, batch, n) ? &room : NULL;
    size_t bad = 0;
    block.record = records ? batch->in[0].base : NULL;
    if (stream)
        stream_begin(stream, record_at(batch, 0));
    for (size_t first = 0; first < n; first += VECTOR_ITEMS) {
        const size_t items = n - first < VECTOR_ITEMS ? n - first : VECTOR_ITEMS;
        block.n = (items + VECTOR_LANES - 1) / VECTOR_LANES * VECTOR_LANES;
        for (size_t c = records; c < inputs; c++)
            load(block.in[c - records], &batch->in[c], first, items);
        if (n > PREFETCH_FROM && n - first > (PREFETCH_BLOCKS + 1) * VECTOR_ITEMS)
            prefetch_block(batch, inputs, stream ? 0 : outputs, first);
        kernel(&block);
        bad += store_block(call, batch, &block, outputs, first, items, stream, status);
    }
    if (stream)
        stream_end(stream);
    return bad;
}

vtx_status vector_run(const struct vector_call *call, int has_record, size_t n, const struct batch_input *in, size_t inputs,
                      const struct batch_output *out, size_t outputs, const int32_t *selector, int32_t *status, size_t *failed)
{
    const struct batch batch = { in, out, selector, BATCH_ANY };
    vtx_status checked;
    if (n < VECTOR_LANES || (has_record && in[0].stride != 0))
        return batch_run(n, in, inputs, out, outputs, selector, call->item, status, failed);
    checked = batch_check(n, in, inputs, out, outputs, failed);
    if (checked != VTX_OK)
        return checked;
    const batch_environment found = batch_hold();
    const size_t bad = run_blocks(call, has_record != 0, n, &batch, inputs, outputs, status);
    batch_restore(&found);
    if (failed)
        *failed = bad;
    return bad ? VTX_PARTIAL : VTX_OK;
}
