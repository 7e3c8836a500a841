/* Batch forms of receiver.h. Written by build-aux/generate. */
#include <vtx/receiver.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status receiver_time_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_receiver_time(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_receiver_time_batch(size_t n, const double *volume, ptrdiff_t volume_stride,
        const double *high_pressure, ptrdiff_t high_pressure_stride, const double *low_pressure,
        ptrdiff_t low_pressure_stride, const double *free_air_pressure, ptrdiff_t free_air_pressure_stride,
        const double *demand, ptrdiff_t demand_stride, const double *supply, ptrdiff_t supply_stride, double *time,
        ptrdiff_t time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { volume, volume_stride }, { high_pressure, high_pressure_stride },
        { low_pressure, low_pressure_stride }, { free_air_pressure, free_air_pressure_stride },
        { demand, demand_stride }, { supply, supply_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, receiver_time_item, status, failed);
}

static ALWAYS_INLINE vtx_status receiver_volume_item(const struct batch *b, size_t i)
{
    double volume_room;
    double *const volume = batch_place(b, 0, i, &volume_room, sizeof volume_room, _Alignof(double));
    const vtx_status answer = vtx_receiver_volume(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), volume);
    batch_move(b, 0, i, volume, &volume_room, sizeof volume_room);
    return answer;
}

vtx_status vtx_receiver_volume_batch(size_t n, const double *time, ptrdiff_t time_stride,
        const double *high_pressure, ptrdiff_t high_pressure_stride, const double *low_pressure,
        ptrdiff_t low_pressure_stride, const double *free_air_pressure, ptrdiff_t free_air_pressure_stride,
        const double *demand, ptrdiff_t demand_stride, const double *supply, ptrdiff_t supply_stride, double *volume,
        ptrdiff_t volume_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { time, time_stride }, { high_pressure, high_pressure_stride },
        { low_pressure, low_pressure_stride }, { free_air_pressure, free_air_pressure_stride },
        { demand, demand_stride }, { supply, supply_stride } };
    const struct batch_output out[] = { { volume, volume_stride, 0, sizeof *volume } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, receiver_volume_item, status, failed);
}

static ALWAYS_INLINE vtx_status leakage_from_cycle_item(const struct batch *b, size_t i)
{
    double leakage_room;
    double *const leakage = batch_place(b, 0, i, &leakage_room, sizeof leakage_room, _Alignof(double));
    const vtx_status answer = vtx_leakage_from_cycle(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        leakage);
    batch_move(b, 0, i, leakage, &leakage_room, sizeof leakage_room);
    return answer;
}

vtx_status vtx_leakage_from_cycle_batch(size_t n, const double *free_air_delivery,
        ptrdiff_t free_air_delivery_stride, const double *loaded_time, ptrdiff_t loaded_time_stride,
        const double *unloaded_time, ptrdiff_t unloaded_time_stride, double *leakage, ptrdiff_t leakage_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { free_air_delivery, free_air_delivery_stride },
        { loaded_time, loaded_time_stride }, { unloaded_time, unloaded_time_stride } };
    const struct batch_output out[] = { { leakage, leakage_stride, 0, sizeof *leakage } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, leakage_from_cycle_item, status, failed);
}

static ALWAYS_INLINE vtx_status leakage_from_decay_item(const struct batch *b, size_t i)
{
    double leakage_room;
    double *const leakage = batch_place(b, 0, i, &leakage_room, sizeof leakage_room, _Alignof(double));
    const vtx_status answer = vtx_leakage_from_decay(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), leakage);
    batch_move(b, 0, i, leakage, &leakage_room, sizeof leakage_room);
    return answer;
}

vtx_status vtx_leakage_from_decay_batch(size_t n, const double *volume, ptrdiff_t volume_stride,
        const double *high_pressure, ptrdiff_t high_pressure_stride, const double *low_pressure,
        ptrdiff_t low_pressure_stride, const double *time, ptrdiff_t time_stride, const double *free_air_pressure,
        ptrdiff_t free_air_pressure_stride, const double *net_pressure, ptrdiff_t net_pressure_stride,
        double *leakage, ptrdiff_t leakage_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { volume, volume_stride }, { high_pressure, high_pressure_stride },
        { low_pressure, low_pressure_stride }, { time, time_stride },
        { free_air_pressure, free_air_pressure_stride }, { net_pressure, net_pressure_stride } };
    const struct batch_output out[] = { { leakage, leakage_stride, 0, sizeof *leakage } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, leakage_from_decay_item, status, failed);
}
