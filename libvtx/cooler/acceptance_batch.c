/* Batch forms of acceptance.h. Written by build-aux/generate. */
#include <vtx/acceptance.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status accept_item(const struct batch *b, size_t i)
{
    vtx_job tested_room;
    const vtx_job *const tested = batch_record(b, 0, i, &tested_room, sizeof tested_room, _Alignof(vtx_job));
    vtx_service_readings readings_room;
    const vtx_service_readings *const readings = batch_record(b, 1, i, &readings_room, sizeof readings_room,
        _Alignof(vtx_service_readings));
    vtx_input_uncertainty uncertainty_room;
    const vtx_input_uncertainty *const uncertainty = batch_record(b, 2, i, &uncertainty_room,
        sizeof uncertainty_room, _Alignof(vtx_input_uncertainty));
    vtx_job quoted_room;
    const vtx_job *const quoted = batch_record(b, 3, i, &quoted_room, sizeof quoted_room, _Alignof(vtx_job));
    vtx_quotation quotation_room;
    const vtx_quotation *const quotation = batch_record(b, 4, i, &quotation_room, sizeof quotation_room,
        _Alignof(vtx_quotation));
    vtx_acceptance acceptance_room;
    vtx_acceptance *const acceptance = batch_place(b, 0, i, &acceptance_room, sizeof acceptance_room,
        _Alignof(vtx_acceptance));
    const vtx_status answer = vtx_accept(tested, readings, uncertainty, quoted, quotation, acceptance);
    batch_move(b, 0, i, acceptance, &acceptance_room, sizeof acceptance_room);
    return answer;
}

vtx_status vtx_accept_batch(size_t n, const vtx_job *tested, ptrdiff_t tested_stride,
        const vtx_service_readings *readings, ptrdiff_t readings_stride, const vtx_input_uncertainty *uncertainty,
        ptrdiff_t uncertainty_stride, const vtx_job *quoted, ptrdiff_t quoted_stride, const vtx_quotation *quotation,
        ptrdiff_t quotation_stride, vtx_acceptance *acceptance, ptrdiff_t acceptance_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { tested, tested_stride, 1 }, { readings, readings_stride, 1 },
        { uncertainty, uncertainty_stride, 1 }, { quoted, quoted_stride, 1 }, { quotation, quotation_stride, 1 } };
    const struct batch_output out[] = { { acceptance, acceptance_stride, 0, sizeof *acceptance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, accept_item, status, failed);
}
