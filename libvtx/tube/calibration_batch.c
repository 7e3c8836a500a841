/* Batch forms of calibration.h. Written by build-aux/generate. */
#include <vtx/calibration.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status calibration_predict_item(const struct batch *b, size_t i)
{
    vtx_calibration calibration_room;
    const vtx_calibration *const calibration = batch_record(b, 0, i, &calibration_room, sizeof calibration_room,
        _Alignof(vtx_calibration));
    vtx_reading point_room;
    const vtx_reading *const point = batch_record(b, 1, i, &point_room, sizeof point_room, _Alignof(vtx_reading));
    vtx_calibrated_point prediction_room;
    vtx_calibrated_point *const prediction = batch_place(b, 0, i, &prediction_room, sizeof prediction_room,
        _Alignof(vtx_calibrated_point));
    const vtx_status answer = vtx_calibration_predict(calibration, point, batch_get(b, 2, i), prediction);
    batch_move(b, 0, i, prediction, &prediction_room, sizeof prediction_room);
    return answer;
}

vtx_status vtx_calibration_predict_batch(size_t n, const vtx_calibration *calibration, ptrdiff_t calibration_stride,
        const vtx_reading *point, ptrdiff_t point_stride, const double *confidence, ptrdiff_t confidence_stride,
        vtx_calibrated_point *prediction, ptrdiff_t prediction_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { calibration, calibration_stride, 1 }, { point, point_stride, 1 },
        { confidence, confidence_stride } };
    const struct batch_output out[] = { { prediction, prediction_stride, 0, sizeof *prediction } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, calibration_predict_item, status, failed);
}
