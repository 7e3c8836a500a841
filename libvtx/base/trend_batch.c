/* Batch forms of trend.h. Written by build-aux/generate. */
#include <vtx/trend.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status trend_at_item(const struct batch *b, size_t i)
{
    vtx_trend trend_room;
    const vtx_trend *const trend = batch_record(b, 0, i, &trend_room, sizeof trend_room, _Alignof(vtx_trend));
    double value_room;
    double *const value = batch_place(b, 0, i, &value_room, sizeof value_room, _Alignof(double));
    double uncertainty_room;
    double *const uncertainty = batch_place(b, 1, i, &uncertainty_room, sizeof uncertainty_room, _Alignof(double));
    const vtx_status answer = vtx_trend_at(trend, batch_get(b, 1, i), value, uncertainty);
    batch_move(b, 0, i, value, &value_room, sizeof value_room);
    batch_move(b, 1, i, uncertainty, &uncertainty_room, sizeof uncertainty_room);
    return answer;
}

vtx_status vtx_trend_at_batch(size_t n, const vtx_trend *trend, ptrdiff_t trend_stride, const double *time,
        ptrdiff_t time_stride, double *value, ptrdiff_t value_stride, double *uncertainty,
        ptrdiff_t uncertainty_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { trend, trend_stride, 1 }, { time, time_stride } };
    const struct batch_output out[] = { { value, value_stride, 0, sizeof *value },
        { uncertainty, uncertainty_stride, 1, sizeof *uncertainty } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, trend_at_item, status, failed);
}

static ALWAYS_INLINE vtx_status trend_crosses_item(const struct batch *b, size_t i)
{
    vtx_trend trend_room;
    const vtx_trend *const trend = batch_record(b, 0, i, &trend_room, sizeof trend_room, _Alignof(vtx_trend));
    vtx_trend_crossing crossing_room;
    vtx_trend_crossing *const crossing = batch_place(b, 0, i, &crossing_room, sizeof crossing_room,
        _Alignof(vtx_trend_crossing));
    const vtx_status answer = vtx_trend_crosses(trend, batch_get(b, 1, i), b->selector[0], batch_get(b, 2, i),
        batch_get(b, 3, i), crossing);
    batch_move(b, 0, i, crossing, &crossing_room, sizeof crossing_room);
    return answer;
}

vtx_status vtx_trend_crosses_batch(size_t n, const vtx_trend *trend, ptrdiff_t trend_stride, const double *limit,
        ptrdiff_t limit_stride, int32_t side, const double *today, ptrdiff_t today_stride, const double *confidence,
        ptrdiff_t confidence_stride, vtx_trend_crossing *crossing, ptrdiff_t crossing_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { trend, trend_stride, 1 }, { limit, limit_stride }, { today, today_stride },
        { confidence, confidence_stride } };
    const struct batch_output out[] = { { crossing, crossing_stride, 0, sizeof *crossing } };
    const int32_t selector[] = { side };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, trend_crosses_item, status, failed);
}
