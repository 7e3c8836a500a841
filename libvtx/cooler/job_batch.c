/* Batch forms of job.h. Written by build-aux/generate. */
#include <vtx/job.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status job_evaluate_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_operating_point point_room;
    vtx_operating_point *const point = batch_place(b, 0, i, &point_room, sizeof point_room,
        _Alignof(vtx_operating_point));
    vtx_work work_room;
    vtx_work *const work = batch_place(b, 1, i, &work_room, sizeof work_room, _Alignof(vtx_work));
    const vtx_status answer = vtx_job_evaluate(job, point, work);
    batch_move(b, 0, i, point, &point_room, sizeof point_room);
    batch_move(b, 1, i, work, &work_room, sizeof work_room);
    return answer;
}

vtx_status vtx_job_evaluate_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, vtx_operating_point *point,
        ptrdiff_t point_stride, vtx_work *work, ptrdiff_t work_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 } };
    const struct batch_output out[] = { { point, point_stride, 0, sizeof *point },
        { work, work_stride, 1, sizeof *work } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, job_evaluate_item, status, failed);
}
