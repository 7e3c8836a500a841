/* Batch forms of units.h. Written by build-aux/generate. */
#include <vtx/units.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status absolute_pressure_item(const struct batch *b, size_t i)
{
    double pressure_room;
    double *const pressure = batch_place(b, 0, i, &pressure_room, sizeof pressure_room, _Alignof(double));
    const vtx_status answer = vtx_absolute_pressure(batch_get(b, 0, i), batch_get(b, 1, i), pressure);
    batch_move(b, 0, i, pressure, &pressure_room, sizeof pressure_room);
    return answer;
}

vtx_status vtx_absolute_pressure_batch(size_t n, const double *ambient_pressure, ptrdiff_t ambient_pressure_stride,
        const double *gauge_pressure, ptrdiff_t gauge_pressure_stride, double *pressure, ptrdiff_t pressure_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { ambient_pressure, ambient_pressure_stride },
        { gauge_pressure, gauge_pressure_stride } };
    const struct batch_output out[] = { { pressure, pressure_stride, 0, sizeof *pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, absolute_pressure_item, status, failed);
}

static ALWAYS_INLINE vtx_status gauge_pressure_item(const struct batch *b, size_t i)
{
    double gauge_pressure_room;
    double *const gauge_pressure = batch_place(b, 0, i, &gauge_pressure_room, sizeof gauge_pressure_room,
        _Alignof(double));
    const vtx_status answer = vtx_gauge_pressure(batch_get(b, 0, i), batch_get(b, 1, i), gauge_pressure);
    batch_move(b, 0, i, gauge_pressure, &gauge_pressure_room, sizeof gauge_pressure_room);
    return answer;
}

vtx_status vtx_gauge_pressure_batch(size_t n, const double *ambient_pressure, ptrdiff_t ambient_pressure_stride,
        const double *pressure, ptrdiff_t pressure_stride, double *gauge_pressure, ptrdiff_t gauge_pressure_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { ambient_pressure, ambient_pressure_stride }, { pressure, pressure_stride } };
    const struct batch_output out[] = { { gauge_pressure, gauge_pressure_stride, 0, sizeof *gauge_pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, gauge_pressure_item, status, failed);
}
