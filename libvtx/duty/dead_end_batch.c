/* Batch forms of dead_end.h. Written by build-aux/generate. */
#include <vtx/dead_end.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status dead_end_pressure_item(const struct batch *b, size_t i)
{
    double dead_end_pressure_room;
    double *const dead_end_pressure = batch_place(b, 0, i, &dead_end_pressure_room, sizeof dead_end_pressure_room,
        _Alignof(double));
    const vtx_status answer = vtx_dead_end_pressure(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), dead_end_pressure);
    batch_move(b, 0, i, dead_end_pressure, &dead_end_pressure_room, sizeof dead_end_pressure_room);
    return answer;
}

vtx_status vtx_dead_end_pressure_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *feed_area, ptrdiff_t feed_area_stride, const double *relief_area, ptrdiff_t relief_area_stride,
        const double *supply_pressure, ptrdiff_t supply_pressure_stride, const double *ambient_pressure,
        ptrdiff_t ambient_pressure_stride, double *dead_end_pressure, ptrdiff_t dead_end_pressure_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { feed_area, feed_area_stride },
        { relief_area, relief_area_stride }, { supply_pressure, supply_pressure_stride },
        { ambient_pressure, ambient_pressure_stride } };
    const struct batch_output out[] = {
        { dead_end_pressure, dead_end_pressure_stride, 0, sizeof *dead_end_pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, dead_end_pressure_item, status, failed);
}

static ALWAYS_INLINE vtx_status dead_end_supply_pressure_item(const struct batch *b, size_t i)
{
    double supply_pressure_room;
    double *const supply_pressure = batch_place(b, 0, i, &supply_pressure_room, sizeof supply_pressure_room,
        _Alignof(double));
    const vtx_status answer = vtx_dead_end_supply_pressure(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), supply_pressure);
    batch_move(b, 0, i, supply_pressure, &supply_pressure_room, sizeof supply_pressure_room);
    return answer;
}

vtx_status vtx_dead_end_supply_pressure_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *feed_area, ptrdiff_t feed_area_stride, const double *relief_area, ptrdiff_t relief_area_stride,
        const double *ambient_pressure, ptrdiff_t ambient_pressure_stride, const double *dead_end_pressure,
        ptrdiff_t dead_end_pressure_stride, double *supply_pressure, ptrdiff_t supply_pressure_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { feed_area, feed_area_stride },
        { relief_area, relief_area_stride }, { ambient_pressure, ambient_pressure_stride },
        { dead_end_pressure, dead_end_pressure_stride } };
    const struct batch_output out[] = { { supply_pressure, supply_pressure_stride, 0, sizeof *supply_pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, dead_end_supply_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status cleaning_air_verdict_item(const struct batch *b, size_t i)
{
    vtx_dead_end verdict_room;
    vtx_dead_end *const verdict = batch_place(b, 0, i, &verdict_room, sizeof verdict_room, _Alignof(vtx_dead_end));
    const vtx_status answer = vtx_cleaning_air_verdict(batch_get(b, 0, i), batch_get(b, 1, i), verdict);
    batch_move(b, 0, i, verdict, &verdict_room, sizeof verdict_room);
    return answer;
}

vtx_status vtx_cleaning_air_verdict_batch(size_t n, const double *dead_end_pressure,
        ptrdiff_t dead_end_pressure_stride, const double *ambient_pressure, ptrdiff_t ambient_pressure_stride,
        vtx_dead_end *verdict, ptrdiff_t verdict_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { dead_end_pressure, dead_end_pressure_stride },
        { ambient_pressure, ambient_pressure_stride } };
    const struct batch_output out[] = { { verdict, verdict_stride, 0, sizeof *verdict } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cleaning_air_verdict_item, status, failed);
}
