/* Batch forms of sizing.h. Written by build-aux/generate. */
#include <vtx/sizing.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status size_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_request request_room;
    const vtx_request *const request = batch_record(b, 1, i, &request_room, sizeof request_room,
        _Alignof(vtx_request));
    vtx_sizing sizing_room;
    vtx_sizing *const sizing = batch_place(b, 0, i, &sizing_room, sizeof sizing_room, _Alignof(vtx_sizing));
    const vtx_status answer = vtx_size(job, request, sizing);
    batch_move(b, 0, i, sizing, &sizing_room, sizeof sizing_room);
    return answer;
}

vtx_status vtx_size_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *request,
        ptrdiff_t request_stride, vtx_sizing *sizing, ptrdiff_t sizing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { request, request_stride, 1 } };
    const struct batch_output out[] = { { sizing, sizing_stride, 0, sizeof *sizing } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, size_item, status, failed);
}

static ALWAYS_INLINE vtx_status size_for_both_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_request first_room;
    const vtx_request *const first = batch_record(b, 1, i, &first_room, sizeof first_room, _Alignof(vtx_request));
    vtx_request second_room;
    const vtx_request *const second = batch_record(b, 2, i, &second_room, sizeof second_room, _Alignof(vtx_request));
    vtx_sizing sizing_room;
    vtx_sizing *const sizing = batch_place(b, 0, i, &sizing_room, sizeof sizing_room, _Alignof(vtx_sizing));
    const vtx_status answer = vtx_size_for_both(job, first, second, sizing);
    batch_move(b, 0, i, sizing, &sizing_room, sizeof sizing_room);
    return answer;
}

vtx_status vtx_size_for_both_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *first,
        ptrdiff_t first_stride, const vtx_request *second, ptrdiff_t second_stride, vtx_sizing *sizing,
        ptrdiff_t sizing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { first, first_stride, 1 },
        { second, second_stride, 1 } };
    const struct batch_output out[] = { { sizing, sizing_stride, 0, sizeof *sizing } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, size_for_both_item, status, failed);
}

static ALWAYS_INLINE vtx_status size_pair_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_request outer_room;
    const vtx_request *const outer = batch_record(b, 1, i, &outer_room, sizeof outer_room, _Alignof(vtx_request));
    vtx_request inner_room;
    const vtx_request *const inner = batch_record(b, 2, i, &inner_room, sizeof inner_room, _Alignof(vtx_request));
    vtx_sizing outer_sizing_room;
    vtx_sizing *const outer_sizing = batch_place(b, 0, i, &outer_sizing_room, sizeof outer_sizing_room,
        _Alignof(vtx_sizing));
    vtx_sizing inner_sizing_room;
    vtx_sizing *const inner_sizing = batch_place(b, 1, i, &inner_sizing_room, sizeof inner_sizing_room,
        _Alignof(vtx_sizing));
    const vtx_status answer = vtx_size_pair(job, outer, inner, outer_sizing, inner_sizing);
    batch_move(b, 0, i, outer_sizing, &outer_sizing_room, sizeof outer_sizing_room);
    batch_move(b, 1, i, inner_sizing, &inner_sizing_room, sizeof inner_sizing_room);
    return answer;
}

vtx_status vtx_size_pair_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *outer,
        ptrdiff_t outer_stride, const vtx_request *inner, ptrdiff_t inner_stride, vtx_sizing *outer_sizing,
        ptrdiff_t outer_sizing_stride, vtx_sizing *inner_sizing, ptrdiff_t inner_sizing_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { outer, outer_stride, 1 }, { inner, inner_stride, 1 } };
    const struct batch_output out[] = { { outer_sizing, outer_sizing_stride, 0, sizeof *outer_sizing },
        { inner_sizing, inner_sizing_stride, 1, sizeof *inner_sizing } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, size_pair_item, status, failed);
}

static ALWAYS_INLINE vtx_status job_cold_fraction_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_sizing sizing_room;
    vtx_sizing *const sizing = batch_place(b, 0, i, &sizing_room, sizeof sizing_room, _Alignof(vtx_sizing));
    const vtx_status answer = vtx_job_cold_fraction(job, batch_get(b, 1, i), b->selector[0], sizing);
    batch_move(b, 0, i, sizing, &sizing_room, sizeof sizing_room);
    return answer;
}

vtx_status vtx_job_cold_fraction_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t branch, vtx_sizing *sizing,
        ptrdiff_t sizing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { cold_temperature, cold_temperature_stride } };
    const struct batch_output out[] = { { sizing, sizing_stride, 0, sizeof *sizing } };
    const int32_t selector[] = { branch };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, job_cold_fraction_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status job_supply_pressure_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_sizing sizing_room;
    vtx_sizing *const sizing = batch_place(b, 0, i, &sizing_room, sizeof sizing_room, _Alignof(vtx_sizing));
    const vtx_status answer = vtx_job_supply_pressure(job, batch_get(b, 1, i), batch_get(b, 2, i), sizing);
    batch_move(b, 0, i, sizing, &sizing_room, sizeof sizing_room);
    return answer;
}

vtx_status vtx_job_supply_pressure_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const double *capacity,
        ptrdiff_t capacity_stride, const double *largest_pressure, ptrdiff_t largest_pressure_stride,
        vtx_sizing *sizing, ptrdiff_t sizing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { capacity, capacity_stride },
        { largest_pressure, largest_pressure_stride } };
    const struct batch_output out[] = { { sizing, sizing_stride, 0, sizeof *sizing } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, job_supply_pressure_item, status, failed);
}
