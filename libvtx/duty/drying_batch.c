/* Batch forms of drying.h. Written by build-aux/generate. */
#include <vtx/drying.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status intake_water_item(const struct batch *b, size_t i)
{
    double water_room;
    double *const water = batch_place(b, 0, i, &water_room, sizeof water_room, _Alignof(double));
    double dry_air_room;
    double *const dry_air = batch_place(b, 1, i, &dry_air_room, sizeof dry_air_room, _Alignof(double));
    const vtx_status answer = vtx_intake_water(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), water, dry_air);
    batch_move(b, 0, i, water, &water_room, sizeof water_room);
    batch_move(b, 1, i, dry_air, &dry_air_room, sizeof dry_air_room);
    return answer;
}

vtx_status vtx_intake_water_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *relative_humidity,
        ptrdiff_t relative_humidity_stride, const double *free_air, ptrdiff_t free_air_stride, double *water,
        ptrdiff_t water_stride, double *dry_air, ptrdiff_t dry_air_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride },
        { relative_humidity, relative_humidity_stride }, { free_air, free_air_stride } };
    const struct batch_output out[] = { { water, water_stride, 0, sizeof *water },
        { dry_air, dry_air_stride, 1, sizeof *dry_air } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, intake_water_item, status, failed);
}

static ALWAYS_INLINE vtx_status treat_air_item(const struct batch *b, size_t i)
{
    vtx_air_treatment treatment_room;
    const vtx_air_treatment *const treatment = batch_record(b, 0, i, &treatment_room, sizeof treatment_room,
        _Alignof(vtx_air_treatment));
    vtx_treated_air air_room;
    vtx_treated_air *const air = batch_place(b, 0, i, &air_room, sizeof air_room, _Alignof(vtx_treated_air));
    const vtx_status answer = vtx_treat_air(treatment, air);
    batch_move(b, 0, i, air, &air_room, sizeof air_room);
    return answer;
}

vtx_status vtx_treat_air_batch(size_t n, const vtx_air_treatment *treatment, ptrdiff_t treatment_stride,
        vtx_treated_air *air, ptrdiff_t air_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { treatment, treatment_stride, 1 } };
    const struct batch_output out[] = { { air, air_stride, 0, sizeof *air } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, treat_air_item, status, failed);
}

static ALWAYS_INLINE vtx_status desiccant_purge_share_item(const struct batch *b, size_t i)
{
    double share_room;
    double *const share = batch_place(b, 0, i, &share_room, sizeof share_room, _Alignof(double));
    const vtx_status answer = vtx_desiccant_purge_share(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        share);
    batch_move(b, 0, i, share, &share_room, sizeof share_room);
    return answer;
}

vtx_status vtx_desiccant_purge_share_batch(size_t n, const double *line_pressure, ptrdiff_t line_pressure_stride,
        const double *purge_pressure, ptrdiff_t purge_pressure_stride, const double *excess, ptrdiff_t excess_stride,
        double *share, ptrdiff_t share_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { line_pressure, line_pressure_stride },
        { purge_pressure, purge_pressure_stride }, { excess, excess_stride } };
    const struct batch_output out[] = { { share, share_stride, 0, sizeof *share } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, desiccant_purge_share_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status pipe_condensation_item(const struct batch *b, size_t i)
{
    vtx_cold_run run_room;
    vtx_cold_run *const run = batch_place(b, 0, i, &run_room, sizeof run_room, _Alignof(vtx_cold_run));
    const vtx_status answer = vtx_pipe_condensation(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), run);
    batch_move(b, 0, i, run, &run_room, sizeof run_room);
    return answer;
}

vtx_status vtx_pipe_condensation_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, vtx_cold_run *run, ptrdiff_t run_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride },
        { humidity_ratio, humidity_ratio_stride } };
    const struct batch_output out[] = { { run, run_stride, 0, sizeof *run } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, pipe_condensation_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status pressure_dew_point_needed_item(const struct batch *b, size_t i)
{
    double pressure_dew_point_room;
    double *const pressure_dew_point = batch_place(b, 0, i, &pressure_dew_point_room, sizeof pressure_dew_point_room,
        _Alignof(double));
    const vtx_status answer = vtx_pressure_dew_point_needed(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), pressure_dew_point);
    batch_move(b, 0, i, pressure_dew_point, &pressure_dew_point_room, sizeof pressure_dew_point_room);
    return answer;
}

vtx_status vtx_pressure_dew_point_needed_batch(size_t n, int32_t model, const double *dryer_pressure,
        ptrdiff_t dryer_pressure_stride, const double *pipe_pressure, ptrdiff_t pipe_pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *margin, ptrdiff_t margin_stride,
        double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { dryer_pressure, dryer_pressure_stride },
        { pipe_pressure, pipe_pressure_stride }, { temperature, temperature_stride }, { margin, margin_stride } };
    const struct batch_output out[] = {
        { pressure_dew_point, pressure_dew_point_stride, 0, sizeof *pressure_dew_point } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, pressure_dew_point_needed_item,
        status, failed);
}
