/* Batch forms of wear.h. Written by build-aux/generate. */
#include <vtx/wear.h>

#include "../base/batch.h"

static vtx_status find_wear_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_input_uncertainty uncertainty;
    batch_get_bytes(b, 1, i, &uncertainty, sizeof uncertainty);
    vtx_service_readings readings;
    batch_get_bytes(b, 2, i, &readings, sizeof readings);
    vtx_wear wear;
    const vtx_status answer = vtx_find_wear(&job, &uncertainty, &readings, &wear);
    batch_put(b, 0, i, &wear, sizeof wear);
    return answer;
}

vtx_status vtx_find_wear_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, vtx_wear *wear, ptrdiff_t wear_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { uncertainty, uncertainty_stride },
        { readings, readings_stride } };
    const struct batch_output out[] = { { wear, wear_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, find_wear_item, status, failed);
}
