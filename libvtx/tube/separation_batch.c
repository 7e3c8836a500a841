/* Batch forms of separation.h. Written by build-aux/generate. */
#include <vtx/separation.h>

#include "../base/batch.h"

static vtx_status tube_for_question_item(const struct batch *b, size_t i)
{
    vtx_tube tube;
    batch_get_bytes(b, 0, i, &tube, sizeof tube);
    vtx_tube careful;
    const vtx_status answer = vtx_tube_for_question(&tube, b->selector[0], &careful);
    batch_put(b, 0, i, &careful, sizeof careful);
    return answer;
}

vtx_status vtx_tube_for_question_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t question,
        vtx_tube *careful, ptrdiff_t careful_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride } };
    const struct batch_output out[] = { { careful, careful_stride, 0 } };
    const int32_t selector[] = { question };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, tube_for_question_item, status,
        failed);
}
