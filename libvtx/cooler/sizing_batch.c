/* Batch forms of sizing.h. Written by build-aux/generate. */
#include <vtx/sizing.h>

#include "../base/batch.h"

static vtx_status size_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_request request;
    batch_get_bytes(b, 1, i, &request, sizeof request);
    vtx_sizing sizing;
    const vtx_status answer = vtx_size(&job, &request, &sizing);
    batch_put(b, 0, i, &sizing, sizeof sizing);
    return answer;
}

vtx_status vtx_size_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *request,
        ptrdiff_t request_stride, vtx_sizing *sizing, ptrdiff_t sizing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { request, request_stride } };
    const struct batch_output out[] = { { sizing, sizing_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, size_item, status, failed);
}

static vtx_status size_for_both_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_request first;
    batch_get_bytes(b, 1, i, &first, sizeof first);
    vtx_request second;
    batch_get_bytes(b, 2, i, &second, sizeof second);
    vtx_sizing sizing;
    const vtx_status answer = vtx_size_for_both(&job, &first, &second, &sizing);
    batch_put(b, 0, i, &sizing, sizeof sizing);
    return answer;
}

vtx_status vtx_size_for_both_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *first,
        ptrdiff_t first_stride, const vtx_request *second, ptrdiff_t second_stride, vtx_sizing *sizing,
        ptrdiff_t sizing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { first, first_stride }, { second, second_stride } };
    const struct batch_output out[] = { { sizing, sizing_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, size_for_both_item, status, failed);
}

static vtx_status size_pair_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_request outer;
    batch_get_bytes(b, 1, i, &outer, sizeof outer);
    vtx_request inner;
    batch_get_bytes(b, 2, i, &inner, sizeof inner);
    vtx_sizing outer_sizing;
    vtx_sizing inner_sizing;
    const vtx_status answer = vtx_size_pair(&job, &outer, &inner, &outer_sizing, &inner_sizing);
    batch_put(b, 0, i, &outer_sizing, sizeof outer_sizing);
    batch_put(b, 1, i, &inner_sizing, sizeof inner_sizing);
    return answer;
}

vtx_status vtx_size_pair_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const vtx_request *outer,
        ptrdiff_t outer_stride, const vtx_request *inner, ptrdiff_t inner_stride, vtx_sizing *outer_sizing,
        ptrdiff_t outer_sizing_stride, vtx_sizing *inner_sizing, ptrdiff_t inner_sizing_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { outer, outer_stride }, { inner, inner_stride } };
    const struct batch_output out[] = { { outer_sizing, outer_sizing_stride, 0 },
        { inner_sizing, inner_sizing_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, size_pair_item, status, failed);
}

static vtx_status job_cold_fraction_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_sizing sizing;
    const vtx_status answer = vtx_job_cold_fraction(&job, batch_get(b, 1, i), b->selector[0], &sizing);
    batch_put(b, 0, i, &sizing, sizeof sizing);
    return answer;
}

vtx_status vtx_job_cold_fraction_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t branch, vtx_sizing *sizing,
        ptrdiff_t sizing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { cold_temperature, cold_temperature_stride } };
    const struct batch_output out[] = { { sizing, sizing_stride, 0 } };
    const int32_t selector[] = { branch };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, job_cold_fraction_item, status,
        failed);
}

static vtx_status job_supply_pressure_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_sizing sizing;
    const vtx_status answer = vtx_job_supply_pressure(&job, batch_get(b, 1, i), batch_get(b, 2, i), &sizing);
    batch_put(b, 0, i, &sizing, sizeof sizing);
    return answer;
}

vtx_status vtx_job_supply_pressure_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, const double *capacity,
        ptrdiff_t capacity_stride, const double *largest_pressure, ptrdiff_t largest_pressure_stride,
        vtx_sizing *sizing, ptrdiff_t sizing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { capacity, capacity_stride },
        { largest_pressure, largest_pressure_stride } };
    const struct batch_output out[] = { { sizing, sizing_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, job_supply_pressure_item, status, failed);
}
