/* Batch forms of comparison.h. Written by build-aux/generate. */
#include <vtx/comparison.h>

#include "../base/batch.h"

static vtx_status compare_plain_air_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_liquid liquid;
    batch_get_bytes(b, 1, i, &liquid, sizeof liquid);
    vtx_comparison comparison;
    const vtx_status answer = vtx_compare_plain_air(&job, &liquid, &comparison);
    batch_put(b, 0, i, &comparison, sizeof comparison);
    return answer;
}

vtx_status vtx_compare_plain_air_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_liquid *liquid,
        ptrdiff_t liquid_stride, vtx_comparison *comparison, ptrdiff_t comparison_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { liquid, liquid_stride } };
    const struct batch_output out[] = { { comparison, comparison_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, compare_plain_air_item, status, failed);
}
