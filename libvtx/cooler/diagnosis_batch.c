/* Batch forms of diagnosis.h. Written by build-aux/generate. */
#include <vtx/diagnosis.h>

#include "../base/batch.h"

static vtx_status predict_readings_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_service_readings readings;
    const vtx_status answer = vtx_predict_readings(&job, b->selector[0], batch_get(b, 1, i), &readings);
    batch_put(b, 0, i, &readings, sizeof readings);
    return answer;
}

vtx_status vtx_predict_readings_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, int32_t cause,
        const double *size, ptrdiff_t size_stride, vtx_service_readings *readings, ptrdiff_t readings_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { size, size_stride } };
    const struct batch_output out[] = { { readings, readings_stride, 0 } };
    const int32_t selector[] = { cause };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, predict_readings_item, status, failed);
}

static vtx_status diagnose_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_service_readings readings;
    batch_get_bytes(b, 1, i, &readings, sizeof readings);
    vtx_diagnosis diagnosis;
    const vtx_status answer = vtx_diagnose(&job, &readings, &diagnosis);
    batch_put(b, 0, i, &diagnosis, sizeof diagnosis);
    return answer;
}

vtx_status vtx_diagnose_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_service_readings *readings, ptrdiff_t readings_stride, vtx_diagnosis *diagnosis,
        ptrdiff_t diagnosis_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { readings, readings_stride } };
    const struct batch_output out[] = { { diagnosis, diagnosis_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, diagnose_item, status, failed);
}
