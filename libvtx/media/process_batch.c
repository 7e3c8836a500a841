/* Batch forms of process.h. Written by build-aux/generate. */
#include <vtx/process.h>

#include "../base/batch.h"

static vtx_status expansion_isentropic_item(const struct batch *b, size_t i)
{
    double outlet_temperature;
    const vtx_status answer = vtx_expansion_isentropic(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), &outlet_temperature);
    batch_put(b, 0, i, &outlet_temperature, sizeof outlet_temperature);
    return answer;
}

vtx_status vtx_expansion_isentropic_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { outlet_temperature, outlet_temperature_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, expansion_isentropic_item, status,
        failed);
}

static vtx_status expansion_throttle_item(const struct batch *b, size_t i)
{
    double outlet_temperature;
    const vtx_status answer = vtx_expansion_throttle(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), &outlet_temperature);
    batch_put(b, 0, i, &outlet_temperature, sizeof outlet_temperature);
    return answer;
}

vtx_status vtx_expansion_throttle_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { outlet_temperature, outlet_temperature_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, expansion_throttle_item, status,
        failed);
}

static vtx_status heat_to_temperature_item(const struct batch *b, size_t i)
{
    double heat;
    double condensed;
    const vtx_status answer = vtx_heat_to_temperature(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), &heat, &condensed);
    batch_put(b, 0, i, &heat, sizeof heat);
    batch_put(b, 1, i, &condensed, sizeof condensed);
    return answer;
}

vtx_status vtx_heat_to_temperature_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        double *heat, ptrdiff_t heat_stride, double *condensed, ptrdiff_t condensed_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { humidity_ratio, humidity_ratio_stride }, { outlet_temperature, outlet_temperature_stride } };
    const struct batch_output out[] = { { heat, heat_stride, 0 }, { condensed, condensed_stride, 1 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, heat_to_temperature_item, status,
        failed);
}
