/* Batch forms of separation.h. Written by build-aux/generate. */
#include <vtx/separation.h>

#include "../base/batch.h"

static vtx_status tube_for_question_item(const struct batch *b, size_t i)
{
    vtx_tube tube;
    batch_get_bytes(b, 0, i, &tube, sizeof tube);
    vtx_tube careful;
    const vtx_status answer = vtx_tube_for_question(&tube, b->selector[0], &careful);
    batch_put(b, 0, i, &careful, sizeof careful);
    return answer;
}

vtx_status vtx_tube_for_question_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t question,
        vtx_tube *careful, ptrdiff_t careful_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride } };
    const struct batch_output out[] = { { careful, careful_stride, 0 } };
    const int32_t selector[] = { question };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, tube_for_question_item, status,
        failed);
}

static vtx_status tube_separate_item(const struct batch *b, size_t i)
{
    vtx_tube tube;
    batch_get_bytes(b, 0, i, &tube, sizeof tube);
    vtx_streams streams;
    const vtx_status answer = vtx_tube_separate(&tube, b->selector[0], batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), &streams);
    batch_put(b, 0, i, &streams, sizeof streams);
    return answer;
}

vtx_status vtx_tube_separate_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *humidity_ratio, ptrdiff_t humidity_ratio_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *hot_pressure,
        ptrdiff_t hot_pressure_stride, const double *cold_fraction, ptrdiff_t cold_fraction_stride,
        vtx_streams *streams, ptrdiff_t streams_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride }, { hot_pressure, hot_pressure_stride },
        { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { streams, streams_stride, 0 } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, tube_separate_item, status, failed);
}
