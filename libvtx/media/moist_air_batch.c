/* Batch forms of moist_air.h. Written by build-aux/generate. */
#include <vtx/moist_air.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status moist_air_at_item(const struct batch *b, size_t i)
{
    vtx_moist_air state_room;
    vtx_moist_air *const state = batch_place(b, 0, i, &state_room, sizeof state_room, _Alignof(vtx_moist_air));
    const vtx_status answer = vtx_moist_air_at(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        b->selector[1], batch_get(b, 2, i), state);
    batch_move(b, 0, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_moist_air_at_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, int32_t property, const double *value,
        ptrdiff_t value_stride, vtx_moist_air *state, ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride },
        { value, value_stride } };
    const struct batch_output out[] = { { state, state_stride, 0, sizeof *state } };
    const int32_t selector[] = { model, property };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, moist_air_at_item, status, failed);
}

static ALWAYS_INLINE vtx_status dew_point_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_dew_point(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_dew_point_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { humidity_ratio, humidity_ratio_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, dew_point_item, status, failed);
}

static ALWAYS_INLINE vtx_status frost_point_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_frost_point(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_frost_point_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { humidity_ratio, humidity_ratio_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, frost_point_item, status, failed);
}

static ALWAYS_INLINE vtx_status saturation_humidity_ratio_item(const struct batch *b, size_t i)
{
    double humidity_ratio_room;
    double *const humidity_ratio = batch_place(b, 0, i, &humidity_ratio_room, sizeof humidity_ratio_room,
        _Alignof(double));
    const vtx_status answer = vtx_saturation_humidity_ratio(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        humidity_ratio);
    batch_move(b, 0, i, humidity_ratio, &humidity_ratio_room, sizeof humidity_ratio_room);
    return answer;
}

vtx_status vtx_saturation_humidity_ratio_batch(size_t n, int32_t model, const double *pressure,
        ptrdiff_t pressure_stride, const double *temperature, ptrdiff_t temperature_stride, double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { humidity_ratio, humidity_ratio_stride, 0, sizeof *humidity_ratio } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, saturation_humidity_ratio_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status dew_point_at_pressure_item(const struct batch *b, size_t i)
{
    double new_dew_point_room;
    double *const new_dew_point = batch_place(b, 0, i, &new_dew_point_room, sizeof new_dew_point_room,
        _Alignof(double));
    const vtx_status answer = vtx_dew_point_at_pressure(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), new_dew_point);
    batch_move(b, 0, i, new_dew_point, &new_dew_point_room, sizeof new_dew_point_room);
    return answer;
}

vtx_status vtx_dew_point_at_pressure_batch(size_t n, int32_t model, const double *pressure,
        ptrdiff_t pressure_stride, const double *dew_point, ptrdiff_t dew_point_stride, const double *new_pressure,
        ptrdiff_t new_pressure_stride, double *new_dew_point, ptrdiff_t new_dew_point_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { dew_point, dew_point_stride },
        { new_pressure, new_pressure_stride } };
    const struct batch_output out[] = { { new_dew_point, new_dew_point_stride, 0, sizeof *new_dew_point } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, dew_point_at_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status frost_point_at_pressure_item(const struct batch *b, size_t i)
{
    double new_frost_point_room;
    double *const new_frost_point = batch_place(b, 0, i, &new_frost_point_room, sizeof new_frost_point_room,
        _Alignof(double));
    const vtx_status answer = vtx_frost_point_at_pressure(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), new_frost_point);
    batch_move(b, 0, i, new_frost_point, &new_frost_point_room, sizeof new_frost_point_room);
    return answer;
}

vtx_status vtx_frost_point_at_pressure_batch(size_t n, int32_t model, const double *pressure,
        ptrdiff_t pressure_stride, const double *frost_point, ptrdiff_t frost_point_stride,
        const double *new_pressure, ptrdiff_t new_pressure_stride, double *new_frost_point,
        ptrdiff_t new_frost_point_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { frost_point, frost_point_stride },
        { new_pressure, new_pressure_stride } };
    const struct batch_output out[] = { { new_frost_point, new_frost_point_stride, 0, sizeof *new_frost_point } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, frost_point_at_pressure_item, status,
        failed);
}
