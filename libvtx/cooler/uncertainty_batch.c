/* Batch forms of uncertainty.h. Written by build-aux/generate. */
#include <vtx/uncertainty.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status job_uncertainty_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_input_uncertainty uncertainty_room;
    const vtx_input_uncertainty *const uncertainty = batch_record(b, 1, i, &uncertainty_room,
        sizeof uncertainty_room, _Alignof(vtx_input_uncertainty));
    vtx_figure_uncertainty result_room;
    vtx_figure_uncertainty *const result = batch_place(b, 0, i, &result_room, sizeof result_room,
        _Alignof(vtx_figure_uncertainty));
    const vtx_status answer = vtx_job_uncertainty(job, uncertainty, b->selector[0], result);
    batch_move(b, 0, i, result, &result_room, sizeof result_room);
    return answer;
}

vtx_status vtx_job_uncertainty_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, int32_t figure,
        vtx_figure_uncertainty *result, ptrdiff_t result_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { uncertainty, uncertainty_stride, 1 } };
    const struct batch_output out[] = { { result, result_stride, 0, sizeof *result } };
    const int32_t selector[] = { figure };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, job_uncertainty_item, status, failed);
}

static ALWAYS_INLINE vtx_status job_second_order_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_input_uncertainty uncertainty_room;
    const vtx_input_uncertainty *const uncertainty = batch_record(b, 1, i, &uncertainty_room,
        sizeof uncertainty_room, _Alignof(vtx_input_uncertainty));
    vtx_second_order result_room;
    vtx_second_order *const result = batch_place(b, 0, i, &result_room, sizeof result_room,
        _Alignof(vtx_second_order));
    const vtx_status answer = vtx_job_second_order(job, uncertainty, b->selector[0], result);
    batch_move(b, 0, i, result, &result_room, sizeof result_room);
    return answer;
}

vtx_status vtx_job_second_order_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, int32_t figure,
        vtx_second_order *result, ptrdiff_t result_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { uncertainty, uncertainty_stride, 1 } };
    const struct batch_output out[] = { { result, result_stride, 0, sizeof *result } };
    const int32_t selector[] = { figure };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, job_second_order_item, status, failed);
}
