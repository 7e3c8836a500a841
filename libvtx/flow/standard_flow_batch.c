/* Batch forms of standard_flow.h. Written by build-aux/generate. */
#include <vtx/standard_flow.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status reference_density_item(const struct batch *b, size_t i)
{
    double density_room;
    double *const density = batch_place(b, 0, i, &density_room, sizeof density_room, _Alignof(double));
    double dry_air_density_room;
    double *const dry_air_density = batch_place(b, 1, i, &dry_air_density_room, sizeof dry_air_density_room,
        _Alignof(double));
    const vtx_status answer = vtx_reference_density(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), density, dry_air_density);
    batch_move(b, 0, i, density, &density_room, sizeof density_room);
    batch_move(b, 1, i, dry_air_density, &dry_air_density_room, sizeof dry_air_density_room);
    return answer;
}

vtx_status vtx_reference_density_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *relative_humidity,
        ptrdiff_t relative_humidity_stride, double *density, ptrdiff_t density_stride, double *dry_air_density,
        ptrdiff_t dry_air_density_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride },
        { relative_humidity, relative_humidity_stride } };
    const struct batch_output out[] = { { density, density_stride, 0, sizeof *density },
        { dry_air_density, dry_air_density_stride, 1, sizeof *dry_air_density } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, reference_density_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status mass_flow_from_standard_item(const struct batch *b, size_t i)
{
    double mass_flow_room;
    double *const mass_flow = batch_place(b, 0, i, &mass_flow_room, sizeof mass_flow_room, _Alignof(double));
    double dry_air_flow_room;
    double *const dry_air_flow = batch_place(b, 1, i, &dry_air_flow_room, sizeof dry_air_flow_room, _Alignof(double));
    const vtx_status answer = vtx_mass_flow_from_standard(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), mass_flow, dry_air_flow);
    batch_move(b, 0, i, mass_flow, &mass_flow_room, sizeof mass_flow_room);
    batch_move(b, 1, i, dry_air_flow, &dry_air_flow_room, sizeof dry_air_flow_room);
    return answer;
}

vtx_status vtx_mass_flow_from_standard_batch(size_t n, int32_t model, const double *reference_pressure,
        ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, const double *reference_humidity,
        ptrdiff_t reference_humidity_stride, const double *volume_flow, ptrdiff_t volume_flow_stride,
        double *mass_flow, ptrdiff_t mass_flow_stride, double *dry_air_flow, ptrdiff_t dry_air_flow_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reference_pressure, reference_pressure_stride },
        { reference_temperature, reference_temperature_stride }, { reference_humidity, reference_humidity_stride },
        { volume_flow, volume_flow_stride } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0, sizeof *mass_flow },
        { dry_air_flow, dry_air_flow_stride, 1, sizeof *dry_air_flow } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, mass_flow_from_standard_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status standard_flow_item(const struct batch *b, size_t i)
{
    double volume_flow_room;
    double *const volume_flow = batch_place(b, 0, i, &volume_flow_room, sizeof volume_flow_room, _Alignof(double));
    const vtx_status answer = vtx_standard_flow(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), volume_flow);
    batch_move(b, 0, i, volume_flow, &volume_flow_room, sizeof volume_flow_room);
    return answer;
}

vtx_status vtx_standard_flow_batch(size_t n, int32_t model, const double *reference_pressure,
        ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, const double *reference_humidity,
        ptrdiff_t reference_humidity_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        double *volume_flow, ptrdiff_t volume_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reference_pressure, reference_pressure_stride },
        { reference_temperature, reference_temperature_stride }, { reference_humidity, reference_humidity_stride },
        { mass_flow, mass_flow_stride } };
    const struct batch_output out[] = { { volume_flow, volume_flow_stride, 0, sizeof *volume_flow } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, standard_flow_item, status, failed);
}

static ALWAYS_INLINE vtx_status standard_flow_at_item(const struct batch *b, size_t i)
{
    double new_volume_flow_room;
    double *const new_volume_flow = batch_place(b, 0, i, &new_volume_flow_room, sizeof new_volume_flow_room,
        _Alignof(double));
    const vtx_status answer = vtx_standard_flow_at(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i),
        new_volume_flow);
    batch_move(b, 0, i, new_volume_flow, &new_volume_flow_room, sizeof new_volume_flow_room);
    return answer;
}

vtx_status vtx_standard_flow_at_batch(size_t n, int32_t model, const double *reference_pressure,
        ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, const double *reference_humidity,
        ptrdiff_t reference_humidity_stride, const double *volume_flow, ptrdiff_t volume_flow_stride,
        const double *new_pressure, ptrdiff_t new_pressure_stride, const double *new_temperature,
        ptrdiff_t new_temperature_stride, const double *new_humidity, ptrdiff_t new_humidity_stride,
        double *new_volume_flow, ptrdiff_t new_volume_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reference_pressure, reference_pressure_stride },
        { reference_temperature, reference_temperature_stride }, { reference_humidity, reference_humidity_stride },
        { volume_flow, volume_flow_stride }, { new_pressure, new_pressure_stride },
        { new_temperature, new_temperature_stride }, { new_humidity, new_humidity_stride } };
    const struct batch_output out[] = { { new_volume_flow, new_volume_flow_stride, 0, sizeof *new_volume_flow } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, standard_flow_at_item, status, failed);
}

static ALWAYS_INLINE vtx_status free_air_delivered_item(const struct batch *b, size_t i)
{
    double volume_flow_room;
    double *const volume_flow = batch_place(b, 0, i, &volume_flow_room, sizeof volume_flow_room, _Alignof(double));
    const vtx_status answer = vtx_free_air_delivered(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), volume_flow);
    batch_move(b, 0, i, volume_flow, &volume_flow_room, sizeof volume_flow_room);
    return answer;
}

vtx_status vtx_free_air_delivered_batch(size_t n, int32_t model, const double *ambient_pressure,
        ptrdiff_t ambient_pressure_stride, const double *temperature, ptrdiff_t temperature_stride,
        const double *relative_humidity, ptrdiff_t relative_humidity_stride, const double *dry_air_flow,
        ptrdiff_t dry_air_flow_stride, double *volume_flow, ptrdiff_t volume_flow_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { ambient_pressure, ambient_pressure_stride },
        { temperature, temperature_stride }, { relative_humidity, relative_humidity_stride },
        { dry_air_flow, dry_air_flow_stride } };
    const struct batch_output out[] = { { volume_flow, volume_flow_stride, 0, sizeof *volume_flow } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, free_air_delivered_item, status,
        failed);
}
