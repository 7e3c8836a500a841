/* Batch forms of wear.h. Written by build-aux/generate. */
#include <vtx/wear.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status find_wear_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_input_uncertainty uncertainty_room;
    const vtx_input_uncertainty *const uncertainty = batch_record(b, 1, i, &uncertainty_room,
        sizeof uncertainty_room, _Alignof(vtx_input_uncertainty));
    vtx_service_readings readings_room;
    const vtx_service_readings *const readings = batch_record(b, 2, i, &readings_room, sizeof readings_room,
        _Alignof(vtx_service_readings));
    vtx_wear wear_room;
    vtx_wear *const wear = batch_place(b, 0, i, &wear_room, sizeof wear_room, _Alignof(vtx_wear));
    const vtx_status answer = vtx_find_wear(job, uncertainty, readings, wear);
    batch_move(b, 0, i, wear, &wear_room, sizeof wear_room);
    return answer;
}

vtx_status vtx_find_wear_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, vtx_wear *wear, ptrdiff_t wear_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { uncertainty, uncertainty_stride, 1 },
        { readings, readings_stride, 1 } };
    const struct batch_output out[] = { { wear, wear_stride, 0, sizeof *wear } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, find_wear_item, status, failed);
}
