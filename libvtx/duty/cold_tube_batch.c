/* Batch forms of cold_tube.h. Written by build-aux/generate. */
#include <vtx/cold_tube.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status tube_in_room_item(const struct batch *b, size_t i)
{
    vtx_room room_room;
    const vtx_room *const room = batch_record(b, 0, i, &room_room, sizeof room_room, _Alignof(vtx_room));
    vtx_covered_tube tube_room;
    const vtx_covered_tube *const tube = batch_record(b, 1, i, &tube_room, sizeof tube_room,
        _Alignof(vtx_covered_tube));
    vtx_tube_surface surface_room;
    vtx_tube_surface *const surface = batch_place(b, 0, i, &surface_room, sizeof surface_room,
        _Alignof(vtx_tube_surface));
    const vtx_status answer = vtx_tube_in_room(room, tube, batch_get(b, 2, i), surface);
    batch_move(b, 0, i, surface, &surface_room, sizeof surface_room);
    return answer;
}

vtx_status vtx_tube_in_room_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const vtx_covered_tube *tube, ptrdiff_t tube_stride, const double *gas_temperature,
        ptrdiff_t gas_temperature_stride, vtx_tube_surface *surface, ptrdiff_t surface_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { room, room_stride, 1 }, { tube, tube_stride, 1 },
        { gas_temperature, gas_temperature_stride } };
    const struct batch_output out[] = { { surface, surface_stride, 0, sizeof *surface } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, tube_in_room_item, status, failed);
}

static ALWAYS_INLINE vtx_status cover_to_stay_dry_item(const struct batch *b, size_t i)
{
    vtx_room room_room;
    const vtx_room *const room = batch_record(b, 0, i, &room_room, sizeof room_room, _Alignof(vtx_room));
    vtx_covered_tube tube_room;
    const vtx_covered_tube *const tube = batch_record(b, 1, i, &tube_room, sizeof tube_room,
        _Alignof(vtx_covered_tube));
    vtx_dry_cover cover_room;
    vtx_dry_cover *const cover = batch_place(b, 0, i, &cover_room, sizeof cover_room, _Alignof(vtx_dry_cover));
    const vtx_status answer = vtx_cover_to_stay_dry(room, tube, batch_get(b, 2, i), batch_get(b, 3, i), cover);
    batch_move(b, 0, i, cover, &cover_room, sizeof cover_room);
    return answer;
}

vtx_status vtx_cover_to_stay_dry_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const vtx_covered_tube *tube, ptrdiff_t tube_stride, const double *gas_temperature,
        ptrdiff_t gas_temperature_stride, const double *margin, ptrdiff_t margin_stride, vtx_dry_cover *cover,
        ptrdiff_t cover_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { room, room_stride, 1 }, { tube, tube_stride, 1 },
        { gas_temperature, gas_temperature_stride }, { margin, margin_stride } };
    const struct batch_output out[] = { { cover, cover_stride, 0, sizeof *cover } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cover_to_stay_dry_item, status, failed);
}
