/* Batch forms of moist_pair.h. Written by build-aux/generate. */
#include <vtx/moist_pair.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status moist_air_from_pair_item(const struct batch *b, size_t i)
{
    vtx_moist_air state_room;
    vtx_moist_air *const state = batch_place(b, 0, i, &state_room, sizeof state_room, _Alignof(vtx_moist_air));
    const vtx_status answer = vtx_moist_air_from_pair(b->selector[0], batch_get(b, 0, i), b->selector[1],
        batch_get(b, 1, i), b->selector[2], batch_get(b, 2, i), state);
    batch_move(b, 0, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_moist_air_from_pair_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        int32_t property_a, const double *a, ptrdiff_t a_stride, int32_t property_b, const double *b,
        ptrdiff_t b_stride, vtx_moist_air *state, ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { a, a_stride }, { b, b_stride } };
    const struct batch_output out[] = { { state, state_stride, 0, sizeof *state } };
    const int32_t selector[] = { model, property_a, property_b };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, moist_air_from_pair_item, status,
        failed);
}
