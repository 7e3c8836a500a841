/* Batch forms of purity.h. Written by build-aux/generate. */
#include <vtx/purity.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status water_class_to_ask_item(const struct batch *b, size_t i)
{
    int32_t water_class_room;
    int32_t *const water_class = batch_place(b, 0, i, &water_class_room, sizeof water_class_room, _Alignof(int32_t));
    const vtx_status answer = vtx_water_class_to_ask(batch_get(b, 0, i), water_class);
    batch_move(b, 0, i, water_class, &water_class_room, sizeof water_class_room);
    return answer;
}

vtx_status vtx_water_class_to_ask_batch(size_t n, const double *pressure_dew_point,
        ptrdiff_t pressure_dew_point_stride, int32_t *water_class, ptrdiff_t water_class_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { pressure_dew_point, pressure_dew_point_stride } };
    const struct batch_output out[] = { { water_class, water_class_stride, 0, sizeof *water_class } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, water_class_to_ask_item, status, failed);
}

static ALWAYS_INLINE vtx_status oil_class_to_ask_item(const struct batch *b, size_t i)
{
    int32_t oil_class_room;
    int32_t *const oil_class = batch_place(b, 0, i, &oil_class_room, sizeof oil_class_room, _Alignof(int32_t));
    const vtx_status answer = vtx_oil_class_to_ask(batch_get(b, 0, i), batch_get(b, 1, i), oil_class);
    batch_move(b, 0, i, oil_class, &oil_class_room, sizeof oil_class_room);
    return answer;
}

vtx_status vtx_oil_class_to_ask_batch(size_t n, const double *free_air, ptrdiff_t free_air_stride,
        const double *oil_flow, ptrdiff_t oil_flow_stride, int32_t *oil_class, ptrdiff_t oil_class_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { free_air, free_air_stride }, { oil_flow, oil_flow_stride } };
    const struct batch_output out[] = { { oil_class, oil_class_stride, 0, sizeof *oil_class } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, oil_class_to_ask_item, status, failed);
}

static ALWAYS_INLINE vtx_status particle_class_to_ask_item(const struct batch *b, size_t i)
{
    int32_t particle_class_room;
    int32_t *const particle_class = batch_place(b, 0, i, &particle_class_room, sizeof particle_class_room,
        _Alignof(int32_t));
    const vtx_status answer = vtx_particle_class_to_ask(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), particle_class);
    batch_move(b, 0, i, particle_class, &particle_class_room, sizeof particle_class_room);
    return answer;
}

vtx_status vtx_particle_class_to_ask_batch(size_t n, const double *passage, ptrdiff_t passage_stride,
        const double *size_ratio, ptrdiff_t size_ratio_stride, const double *free_air, ptrdiff_t free_air_stride,
        const double *dirt_flow, ptrdiff_t dirt_flow_stride, int32_t *particle_class,
        ptrdiff_t particle_class_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { passage, passage_stride }, { size_ratio, size_ratio_stride },
        { free_air, free_air_stride }, { dirt_flow, dirt_flow_stride } };
    const struct batch_output out[] = { { particle_class, particle_class_stride, 0, sizeof *particle_class } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, particle_class_to_ask_item, status,
        failed);
}
