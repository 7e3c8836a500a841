/* Batch forms of moist_air.h. Written by build-aux/generate. */
#include <vtx/moist_air.h>

#include "../base/batch.h"

static vtx_status dew_point_item(const struct batch *b, size_t i)
{
    double temperature;
    const vtx_status answer = vtx_dew_point(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i), &temperature);
    batch_put(b, 0, i, &temperature, sizeof temperature);
    return answer;
}

vtx_status vtx_dew_point_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { humidity_ratio, humidity_ratio_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, dew_point_item, status, failed);
}

static vtx_status frost_point_item(const struct batch *b, size_t i)
{
    double temperature;
    const vtx_status answer = vtx_frost_point(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i), &temperature);
    batch_put(b, 0, i, &temperature, sizeof temperature);
    return answer;
}

vtx_status vtx_frost_point_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { humidity_ratio, humidity_ratio_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, frost_point_item, status, failed);
}

static vtx_status saturation_humidity_ratio_item(const struct batch *b, size_t i)
{
    double humidity_ratio;
    const vtx_status answer = vtx_saturation_humidity_ratio(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        &humidity_ratio);
    batch_put(b, 0, i, &humidity_ratio, sizeof humidity_ratio);
    return answer;
}

vtx_status vtx_saturation_humidity_ratio_batch(size_t n, int32_t model, const double *pressure,
        ptrdiff_t pressure_stride, const double *temperature, ptrdiff_t temperature_stride, double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { humidity_ratio, humidity_ratio_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, saturation_humidity_ratio_item,
        status, failed);
}
