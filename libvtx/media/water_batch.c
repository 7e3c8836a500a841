/* Batch forms of water.h. Written by build-aux/generate. */
#include <vtx/water.h>

#include "../base/batch.h"

static vtx_status water_saturation_pressure_item(const struct batch *b, size_t i)
{
    double pressure;
    const vtx_status answer = vtx_water_saturation_pressure(batch_get(b, 0, i), &pressure);
    batch_put(b, 0, i, &pressure, sizeof pressure);
    return answer;
}

vtx_status vtx_water_saturation_pressure_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *pressure, ptrdiff_t pressure_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { pressure, pressure_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, water_saturation_pressure_item, status,
        failed);
}
