/* Batch forms of isentropic.h. Written by build-aux/generate. */
#include <vtx/isentropic.h>

#include "../base/batch.h"

static vtx_status isentropic_temperature_item(const struct batch *b, size_t i)
{
    double outlet_temperature;
    const vtx_status answer = vtx_isentropic_temperature(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), &outlet_temperature);
    batch_put(b, 0, i, &outlet_temperature, sizeof outlet_temperature);
    return answer;
}

vtx_status vtx_isentropic_temperature_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *outlet_temperature, ptrdiff_t outlet_temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { outlet_temperature, outlet_temperature_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_temperature_item, status,
        failed);
}

static vtx_status critical_pressure_ratio_item(const struct batch *b, size_t i)
{
    double ratio;
    const vtx_status answer = vtx_critical_pressure_ratio(batch_get(b, 0, i), &ratio);
    batch_put(b, 0, i, &ratio, sizeof ratio);
    return answer;
}

vtx_status vtx_critical_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, double *ratio,
        ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, critical_pressure_ratio_item, status,
        failed);
}
