/* Batch forms of freezing.h. Written by build-aux/generate. */
#include <vtx/freezing.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status feed_freezing_item(const struct batch *b, size_t i)
{
    vtx_feed_water water_room;
    vtx_feed_water *const water = batch_place(b, 0, i, &water_room, sizeof water_room, _Alignof(vtx_feed_water));
    const vtx_status answer = vtx_feed_freezing(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        b->selector[1], batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i),
        batch_get(b, 6, i), water);
    batch_move(b, 0, i, water, &water_room, sizeof water_room);
    return answer;
}

vtx_status vtx_feed_freezing_batch(size_t n, int32_t model, const double *supply_pressure,
        ptrdiff_t supply_pressure_stride, const double *supply_temperature, ptrdiff_t supply_temperature_stride,
        int32_t property, const double *value, ptrdiff_t value_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *cold_mass_flow, ptrdiff_t cold_mass_flow_stride, const double *margin, ptrdiff_t margin_stride,
        vtx_feed_water *water, ptrdiff_t water_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { supply_pressure, supply_pressure_stride },
        { supply_temperature, supply_temperature_stride }, { value, value_stride },
        { cold_pressure, cold_pressure_stride }, { cold_temperature, cold_temperature_stride },
        { cold_mass_flow, cold_mass_flow_stride }, { margin, margin_stride } };
    const struct batch_output out[] = { { water, water_stride, 0, sizeof *water } };
    const int32_t selector[] = { model, property };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, feed_freezing_item, status, failed);
}
