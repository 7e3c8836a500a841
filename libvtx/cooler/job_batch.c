/* Batch forms of job.h. Written by build-aux/generate. */
#include <vtx/job.h>

#include "../base/batch.h"

static vtx_status job_evaluate_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_operating_point point;
    vtx_work work;
    const vtx_status answer = vtx_job_evaluate(&job, &point, &work);
    batch_put(b, 0, i, &point, sizeof point);
    batch_put(b, 1, i, &work, sizeof work);
    return answer;
}

vtx_status vtx_job_evaluate_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, vtx_operating_point *point,
        ptrdiff_t point_stride, vtx_work *work, ptrdiff_t work_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride } };
    const struct batch_output out[] = { { point, point_stride, 0 }, { work, work_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, job_evaluate_item, status, failed);
}
