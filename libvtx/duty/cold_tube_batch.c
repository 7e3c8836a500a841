/* Batch forms of cold_tube.h. Written by build-aux/generate. */
#include <vtx/cold_tube.h>

#include "../base/batch.h"

static vtx_status tube_in_room_item(const struct batch *b, size_t i)
{
    vtx_room room;
    batch_get_bytes(b, 0, i, &room, sizeof room);
    vtx_covered_tube tube;
    batch_get_bytes(b, 1, i, &tube, sizeof tube);
    vtx_tube_surface surface;
    const vtx_status answer = vtx_tube_in_room(&room, &tube, batch_get(b, 2, i), &surface);
    batch_put(b, 0, i, &surface, sizeof surface);
    return answer;
}

vtx_status vtx_tube_in_room_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const vtx_covered_tube *tube, ptrdiff_t tube_stride, const double *gas_temperature,
        ptrdiff_t gas_temperature_stride, vtx_tube_surface *surface, ptrdiff_t surface_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { room, room_stride }, { tube, tube_stride },
        { gas_temperature, gas_temperature_stride } };
    const struct batch_output out[] = { { surface, surface_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, tube_in_room_item, status, failed);
}

static vtx_status cover_to_stay_dry_item(const struct batch *b, size_t i)
{
    vtx_room room;
    batch_get_bytes(b, 0, i, &room, sizeof room);
    vtx_covered_tube tube;
    batch_get_bytes(b, 1, i, &tube, sizeof tube);
    vtx_dry_cover cover;
    const vtx_status answer = vtx_cover_to_stay_dry(&room, &tube, batch_get(b, 2, i), batch_get(b, 3, i), &cover);
    batch_put(b, 0, i, &cover, sizeof cover);
    return answer;
}

vtx_status vtx_cover_to_stay_dry_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const vtx_covered_tube *tube, ptrdiff_t tube_stride, const double *gas_temperature,
        ptrdiff_t gas_temperature_stride, const double *margin, ptrdiff_t margin_stride, vtx_dry_cover *cover,
        ptrdiff_t cover_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { room, room_stride }, { tube, tube_stride },
        { gas_temperature, gas_temperature_stride }, { margin, margin_stride } };
    const struct batch_output out[] = { { cover, cover_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cover_to_stay_dry_item, status, failed);
}
