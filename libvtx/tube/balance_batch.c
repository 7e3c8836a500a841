/* Batch forms of balance.h. Written by build-aux/generate. */
#include <vtx/balance.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status tube_balance_item(const struct batch *b, size_t i)
{
    vtx_balance balance_room;
    vtx_balance *const balance = batch_place(b, 0, i, &balance_room, sizeof balance_room, _Alignof(vtx_balance));
    const vtx_status answer = vtx_tube_balance(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i),
        batch_get(b, 7, i), batch_get(b, 8, i), batch_get(b, 9, i), balance);
    batch_move(b, 0, i, balance, &balance_room, sizeof balance_room);
    return answer;
}

vtx_status vtx_tube_balance_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, const double *hot_temperature,
        ptrdiff_t hot_temperature_stride, const double *cold_fraction, ptrdiff_t cold_fraction_stride,
        const double *ambient_pressure, ptrdiff_t ambient_pressure_stride, const double *ambient_temperature,
        ptrdiff_t ambient_temperature_stride, vtx_balance *balance, ptrdiff_t balance_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride }, { cold_temperature, cold_temperature_stride },
        { hot_pressure, hot_pressure_stride }, { hot_temperature, hot_temperature_stride },
        { cold_fraction, cold_fraction_stride }, { ambient_pressure, ambient_pressure_stride },
        { ambient_temperature, ambient_temperature_stride } };
    const struct batch_output out[] = { { balance, balance_stride, 0, sizeof *balance } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, tube_balance_item, status, failed);
}
