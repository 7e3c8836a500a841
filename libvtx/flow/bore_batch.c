/* Batch forms of bore.h. Written by build-aux/generate. */
#include <vtx/bore.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status bore_at_least_item(const struct batch *b, size_t i)
{
    vtx_bore bore_room;
    vtx_bore *const bore = batch_place(b, 0, i, &bore_room, sizeof bore_room, _Alignof(vtx_bore));
    const vtx_status answer = vtx_bore_at_least(b->selector[0], batch_get(b, 0, i), bore);
    batch_move(b, 0, i, bore, &bore_room, sizeof bore_room);
    return answer;
}

vtx_status vtx_bore_at_least_batch(size_t n, int32_t series, const double *diameter, ptrdiff_t diameter_stride,
        vtx_bore *bore, ptrdiff_t bore_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { diameter, diameter_stride } };
    const struct batch_output out[] = { { bore, bore_stride, 0, sizeof *bore } };
    const int32_t selector[] = { series };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, bore_at_least_item, status, failed);
}
