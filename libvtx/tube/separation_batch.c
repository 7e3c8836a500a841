/* Batch forms of separation.h. Written by build-aux/generate. */
#include <vtx/separation.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status tube_for_question_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_tube careful_room;
    vtx_tube *const careful = batch_place(b, 0, i, &careful_room, sizeof careful_room, _Alignof(vtx_tube));
    const vtx_status answer = vtx_tube_for_question(tube, b->selector[0], careful);
    batch_move(b, 0, i, careful, &careful_room, sizeof careful_room);
    return answer;
}

vtx_status vtx_tube_for_question_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t question,
        vtx_tube *careful, ptrdiff_t careful_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 } };
    const struct batch_output out[] = { { careful, careful_stride, 0, sizeof *careful } };
    const int32_t selector[] = { question };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, tube_for_question_item, status,
        failed);
}
