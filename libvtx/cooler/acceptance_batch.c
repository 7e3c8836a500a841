/* Batch forms of acceptance.h. Written by build-aux/generate. */
#include <vtx/acceptance.h>

#include "../base/batch.h"

static vtx_status accept_item(const struct batch *b, size_t i)
{
    vtx_job tested;
    batch_get_bytes(b, 0, i, &tested, sizeof tested);
    vtx_service_readings readings;
    batch_get_bytes(b, 1, i, &readings, sizeof readings);
    vtx_input_uncertainty uncertainty;
    batch_get_bytes(b, 2, i, &uncertainty, sizeof uncertainty);
    vtx_job quoted;
    batch_get_bytes(b, 3, i, &quoted, sizeof quoted);
    vtx_quotation quotation;
    batch_get_bytes(b, 4, i, &quotation, sizeof quotation);
    vtx_acceptance acceptance;
    const vtx_status answer = vtx_accept(&tested, &readings, &uncertainty, &quoted, &quotation, &acceptance);
    batch_put(b, 0, i, &acceptance, sizeof acceptance);
    return answer;
}

vtx_status vtx_accept_batch(size_t n, const vtx_job *tested, ptrdiff_t tested_stride,
        const vtx_service_readings *readings, ptrdiff_t readings_stride, const vtx_input_uncertainty *uncertainty,
        ptrdiff_t uncertainty_stride, const vtx_job *quoted, ptrdiff_t quoted_stride, const vtx_quotation *quotation,
        ptrdiff_t quotation_stride, vtx_acceptance *acceptance, ptrdiff_t acceptance_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { tested, tested_stride }, { readings, readings_stride },
        { uncertainty, uncertainty_stride }, { quoted, quoted_stride }, { quotation, quotation_stride } };
    const struct batch_output out[] = { { acceptance, acceptance_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, accept_item, status, failed);
}
