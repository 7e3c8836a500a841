/* Batch forms of drying.h. Written by build-aux/generate. */
#include <vtx/drying.h>

#include "../base/batch.h"

static vtx_status intake_water_item(const struct batch *b, size_t i)
{
    double water;
    double dry_air;
    const vtx_status answer = vtx_intake_water(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), &water, &dry_air);
    batch_put(b, 0, i, &water, sizeof water);
    batch_put(b, 1, i, &dry_air, sizeof dry_air);
    return answer;
}

vtx_status vtx_intake_water_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *relative_humidity,
        ptrdiff_t relative_humidity_stride, const double *free_air, ptrdiff_t free_air_stride, double *water,
        ptrdiff_t water_stride, double *dry_air, ptrdiff_t dry_air_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride },
        { relative_humidity, relative_humidity_stride }, { free_air, free_air_stride } };
    const struct batch_output out[] = { { water, water_stride, 0 }, { dry_air, dry_air_stride, 1 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, intake_water_item, status, failed);
}

static vtx_status treat_air_item(const struct batch *b, size_t i)
{
    vtx_air_treatment treatment;
    batch_get_bytes(b, 0, i, &treatment, sizeof treatment);
    vtx_treated_air air;
    const vtx_status answer = vtx_treat_air(&treatment, &air);
    batch_put(b, 0, i, &air, sizeof air);
    return answer;
}

vtx_status vtx_treat_air_batch(size_t n, const vtx_air_treatment *treatment, ptrdiff_t treatment_stride,
        vtx_treated_air *air, ptrdiff_t air_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { treatment, treatment_stride } };
    const struct batch_output out[] = { { air, air_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, treat_air_item, status, failed);
}

static vtx_status desiccant_purge_share_item(const struct batch *b, size_t i)
{
    double share;
    const vtx_status answer = vtx_desiccant_purge_share(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        &share);
    batch_put(b, 0, i, &share, sizeof share);
    return answer;
}

vtx_status vtx_desiccant_purge_share_batch(size_t n, const double *line_pressure, ptrdiff_t line_pressure_stride,
        const double *purge_pressure, ptrdiff_t purge_pressure_stride, const double *excess, ptrdiff_t excess_stride,
        double *share, ptrdiff_t share_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { line_pressure, line_pressure_stride },
        { purge_pressure, purge_pressure_stride }, { excess, excess_stride } };
    const struct batch_output out[] = { { share, share_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, desiccant_purge_share_item, status,
        failed);
}

static vtx_status pipe_condensation_item(const struct batch *b, size_t i)
{
    vtx_cold_run run;
    const vtx_status answer = vtx_pipe_condensation(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), &run);
    batch_put(b, 0, i, &run, sizeof run);
    return answer;
}

vtx_status vtx_pipe_condensation_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, vtx_cold_run *run, ptrdiff_t run_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride },
        { humidity_ratio, humidity_ratio_stride } };
    const struct batch_output out[] = { { run, run_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, pipe_condensation_item, status,
        failed);
}

static vtx_status pressure_dew_point_needed_item(const struct batch *b, size_t i)
{
    double pressure_dew_point;
    const vtx_status answer = vtx_pressure_dew_point_needed(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), &pressure_dew_point);
    batch_put(b, 0, i, &pressure_dew_point, sizeof pressure_dew_point);
    return answer;
}

vtx_status vtx_pressure_dew_point_needed_batch(size_t n, int32_t model, const double *dryer_pressure,
        ptrdiff_t dryer_pressure_stride, const double *pipe_pressure, ptrdiff_t pipe_pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *margin, ptrdiff_t margin_stride,
        double *pressure_dew_point, ptrdiff_t pressure_dew_point_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { dryer_pressure, dryer_pressure_stride },
        { pipe_pressure, pipe_pressure_stride }, { temperature, temperature_stride }, { margin, margin_stride } };
    const struct batch_output out[] = { { pressure_dew_point, pressure_dew_point_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, pressure_dew_point_needed_item,
        status, failed);
}
