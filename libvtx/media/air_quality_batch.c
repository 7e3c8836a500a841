/* Batch forms of air_quality.h. Written by build-aux/generate. */
#include <vtx/air_quality.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status water_class_item(const struct batch *b, size_t i)
{
    int32_t water_class_room;
    int32_t *const water_class = batch_place(b, 0, i, &water_class_room, sizeof water_class_room, _Alignof(int32_t));
    const vtx_status answer = vtx_water_class(batch_get(b, 0, i), batch_get(b, 1, i), water_class);
    batch_move(b, 0, i, water_class, &water_class_room, sizeof water_class_room);
    return answer;
}

vtx_status vtx_water_class_batch(size_t n, const double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride,
        const double *liquid_content, ptrdiff_t liquid_content_stride, int32_t *water_class,
        ptrdiff_t water_class_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure_dew_point, pressure_dew_point_stride },
        { liquid_content, liquid_content_stride } };
    const struct batch_output out[] = { { water_class, water_class_stride, 0, sizeof *water_class } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, water_class_item, status, failed);
}

static ALWAYS_INLINE vtx_status particle_class_item(const struct batch *b, size_t i)
{
    int32_t particle_class_room;
    int32_t *const particle_class = batch_place(b, 0, i, &particle_class_room, sizeof particle_class_room,
        _Alignof(int32_t));
    const vtx_status answer = vtx_particle_class(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), particle_class);
    batch_move(b, 0, i, particle_class, &particle_class_room, sizeof particle_class_room);
    return answer;
}

vtx_status vtx_particle_class_batch(size_t n, const double *fine, ptrdiff_t fine_stride, const double *medium,
        ptrdiff_t medium_stride, const double *coarse, ptrdiff_t coarse_stride, const double *mass_content,
        ptrdiff_t mass_content_stride, int32_t *particle_class, ptrdiff_t particle_class_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { fine, fine_stride }, { medium, medium_stride }, { coarse, coarse_stride },
        { mass_content, mass_content_stride } };
    const struct batch_output out[] = { { particle_class, particle_class_stride, 0, sizeof *particle_class } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, particle_class_item, status, failed);
}

static ALWAYS_INLINE vtx_status oil_class_item(const struct batch *b, size_t i)
{
    int32_t oil_class_room;
    int32_t *const oil_class = batch_place(b, 0, i, &oil_class_room, sizeof oil_class_room, _Alignof(int32_t));
    const vtx_status answer = vtx_oil_class(batch_get(b, 0, i), oil_class);
    batch_move(b, 0, i, oil_class, &oil_class_room, sizeof oil_class_room);
    return answer;
}

vtx_status vtx_oil_class_batch(size_t n, const double *oil_content, ptrdiff_t oil_content_stride, int32_t *oil_class,
        ptrdiff_t oil_class_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { oil_content, oil_content_stride } };
    const struct batch_output out[] = { { oil_class, oil_class_stride, 0, sizeof *oil_class } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, oil_class_item, status, failed);
}

static ALWAYS_INLINE vtx_status water_content_item(const struct batch *b, size_t i)
{
    double content_room;
    double *const content = batch_place(b, 0, i, &content_room, sizeof content_room, _Alignof(double));
    const vtx_status answer = vtx_water_content(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), content);
    batch_move(b, 0, i, content, &content_room, sizeof content_room);
    return answer;
}

vtx_status vtx_water_content_batch(size_t n, int32_t model, const double *line_pressure,
        ptrdiff_t line_pressure_stride, const double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride,
        const double *reference_pressure, ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, double *content, ptrdiff_t content_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { line_pressure, line_pressure_stride },
        { pressure_dew_point, pressure_dew_point_stride }, { reference_pressure, reference_pressure_stride },
        { reference_temperature, reference_temperature_stride } };
    const struct batch_output out[] = { { content, content_stride, 0, sizeof *content } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, water_content_item, status, failed);
}

static ALWAYS_INLINE vtx_status pressure_dew_point_item(const struct batch *b, size_t i)
{
    double pressure_dew_point_room;
    double *const pressure_dew_point = batch_place(b, 0, i, &pressure_dew_point_room, sizeof pressure_dew_point_room,
        _Alignof(double));
    const vtx_status answer = vtx_pressure_dew_point(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), pressure_dew_point);
    batch_move(b, 0, i, pressure_dew_point, &pressure_dew_point_room, sizeof pressure_dew_point_room);
    return answer;
}

vtx_status vtx_pressure_dew_point_batch(size_t n, int32_t model, const double *line_pressure,
        ptrdiff_t line_pressure_stride, const double *content, ptrdiff_t content_stride,
        const double *reference_pressure, ptrdiff_t reference_pressure_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { line_pressure, line_pressure_stride }, { content, content_stride },
        { reference_pressure, reference_pressure_stride }, { reference_temperature, reference_temperature_stride } };
    const struct batch_output out[] = {
        { pressure_dew_point, pressure_dew_point_stride, 0, sizeof *pressure_dew_point } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, pressure_dew_point_item, status,
        failed);
}
