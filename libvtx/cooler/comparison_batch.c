/* Batch forms of comparison.h. Written by build-aux/generate. */
#include <vtx/comparison.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status compare_plain_air_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_liquid liquid_room;
    const vtx_liquid *const liquid = batch_record(b, 1, i, &liquid_room, sizeof liquid_room, _Alignof(vtx_liquid));
    vtx_comparison comparison_room;
    vtx_comparison *const comparison = batch_place(b, 0, i, &comparison_room, sizeof comparison_room,
        _Alignof(vtx_comparison));
    const vtx_status answer = vtx_compare_plain_air(job, liquid, comparison);
    batch_move(b, 0, i, comparison, &comparison_room, sizeof comparison_room);
    return answer;
}

vtx_status vtx_compare_plain_air_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_liquid *liquid,
        ptrdiff_t liquid_stride, vtx_comparison *comparison, ptrdiff_t comparison_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { liquid, liquid_stride, 1 } };
    const struct batch_output out[] = { { comparison, comparison_stride, 0, sizeof *comparison } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, compare_plain_air_item, status, failed);
}
