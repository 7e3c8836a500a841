/* Batch forms of trend.h. Written by build-aux/generate. */
#include <vtx/trend.h>

#include "../base/batch.h"

static vtx_status trend_at_item(const struct batch *b, size_t i)
{
    vtx_trend trend;
    batch_get_bytes(b, 0, i, &trend, sizeof trend);
    double value;
    double uncertainty;
    const vtx_status answer = vtx_trend_at(&trend, batch_get(b, 1, i), &value, &uncertainty);
    batch_put(b, 0, i, &value, sizeof value);
    batch_put(b, 1, i, &uncertainty, sizeof uncertainty);
    return answer;
}

vtx_status vtx_trend_at_batch(size_t n, const vtx_trend *trend, ptrdiff_t trend_stride, const double *time,
        ptrdiff_t time_stride, double *value, ptrdiff_t value_stride, double *uncertainty,
        ptrdiff_t uncertainty_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { trend, trend_stride }, { time, time_stride } };
    const struct batch_output out[] = { { value, value_stride, 0 }, { uncertainty, uncertainty_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, trend_at_item, status, failed);
}

static vtx_status trend_crosses_item(const struct batch *b, size_t i)
{
    vtx_trend trend;
    batch_get_bytes(b, 0, i, &trend, sizeof trend);
    vtx_trend_crossing crossing;
    const vtx_status answer = vtx_trend_crosses(&trend, batch_get(b, 1, i), b->selector[0], batch_get(b, 2, i),
        batch_get(b, 3, i), &crossing);
    batch_put(b, 0, i, &crossing, sizeof crossing);
    return answer;
}

vtx_status vtx_trend_crosses_batch(size_t n, const vtx_trend *trend, ptrdiff_t trend_stride, const double *limit,
        ptrdiff_t limit_stride, int32_t side, const double *today, ptrdiff_t today_stride, const double *confidence,
        ptrdiff_t confidence_stride, vtx_trend_crossing *crossing, ptrdiff_t crossing_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { trend, trend_stride }, { limit, limit_stride }, { today, today_stride },
        { confidence, confidence_stride } };
    const struct batch_output out[] = { { crossing, crossing_stride, 0 } };
    const int32_t selector[] = { side };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, trend_crosses_item, status, failed);
}
