/* Batch forms of reading.h. Written by build-aux/generate. */
#include <vtx/reading.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status reading_examine_item(const struct batch *b, size_t i)
{
    vtx_reading reading_room;
    const vtx_reading *const reading = batch_record(b, 0, i, &reading_room, sizeof reading_room,
        _Alignof(vtx_reading));
    vtx_reading_check check_room;
    vtx_reading_check *const check = batch_place(b, 0, i, &check_room, sizeof check_room, _Alignof(vtx_reading_check));
    const vtx_status answer = vtx_reading_examine(reading, b->selector[0], check);
    batch_move(b, 0, i, check, &check_room, sizeof check_room);
    return answer;
}

vtx_status vtx_reading_examine_batch(size_t n, const vtx_reading *reading, ptrdiff_t reading_stride, int32_t model,
        vtx_reading_check *check, ptrdiff_t check_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reading, reading_stride, 1 } };
    const struct batch_output out[] = { { check, check_stride, 0, sizeof *check } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, reading_examine_item, status, failed);
}
