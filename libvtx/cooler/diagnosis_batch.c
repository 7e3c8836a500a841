/* Batch forms of diagnosis.h. Written by build-aux/generate. */
#include <vtx/diagnosis.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status predict_readings_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_service_readings readings_room;
    vtx_service_readings *const readings = batch_place(b, 0, i, &readings_room, sizeof readings_room,
        _Alignof(vtx_service_readings));
    const vtx_status answer = vtx_predict_readings(job, b->selector[0], batch_get(b, 1, i), readings);
    batch_move(b, 0, i, readings, &readings_room, sizeof readings_room);
    return answer;
}

vtx_status vtx_predict_readings_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride, int32_t cause,
        const double *size, ptrdiff_t size_stride, vtx_service_readings *readings, ptrdiff_t readings_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { size, size_stride } };
    const struct batch_output out[] = { { readings, readings_stride, 0, sizeof *readings } };
    const int32_t selector[] = { cause };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, predict_readings_item, status, failed);
}

static ALWAYS_INLINE vtx_status diagnose_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_input_uncertainty uncertainty_room;
    const vtx_input_uncertainty *const uncertainty = batch_record(b, 1, i, &uncertainty_room,
        sizeof uncertainty_room, _Alignof(vtx_input_uncertainty));
    vtx_service_readings readings_room;
    const vtx_service_readings *const readings = batch_record(b, 2, i, &readings_room, sizeof readings_room,
        _Alignof(vtx_service_readings));
    vtx_diagnosis diagnosis_room;
    vtx_diagnosis *const diagnosis = batch_place(b, 0, i, &diagnosis_room, sizeof diagnosis_room,
        _Alignof(vtx_diagnosis));
    const vtx_status answer = vtx_diagnose(job, uncertainty, readings, diagnosis);
    batch_move(b, 0, i, diagnosis, &diagnosis_room, sizeof diagnosis_room);
    return answer;
}

vtx_status vtx_diagnose_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, vtx_diagnosis *diagnosis, ptrdiff_t diagnosis_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { uncertainty, uncertainty_stride, 1 },
        { readings, readings_stride, 1 } };
    const struct batch_output out[] = { { diagnosis, diagnosis_stride, 0, sizeof *diagnosis } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, diagnose_item, status, failed);
}
