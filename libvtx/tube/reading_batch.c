/* Batch forms of reading.h. Written by build-aux/generate. */
#include <vtx/reading.h>

#include "../base/batch.h"

static vtx_status reading_examine_item(const struct batch *b, size_t i)
{
    vtx_reading reading;
    batch_get_bytes(b, 0, i, &reading, sizeof reading);
    vtx_reading_check check;
    const vtx_status answer = vtx_reading_examine(&reading, b->selector[0], &check);
    batch_put(b, 0, i, &check, sizeof check);
    return answer;
}

vtx_status vtx_reading_examine_batch(size_t n, const vtx_reading *reading, ptrdiff_t reading_stride, int32_t model,
        vtx_reading_check *check, ptrdiff_t check_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reading, reading_stride } };
    const struct batch_output out[] = { { check, check_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, reading_examine_item, status, failed);
}
