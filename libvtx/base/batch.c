/* The loop behind the _batch forms. */
#include <fenv.h>

#include "batch.h"

vtx_status batch_check(size_t n, const struct batch_input *in, size_t inputs, const struct batch_output *out,
                       size_t outputs, size_t *failed)
{
    vtx_status status = VTX_OK;
    if (n > 0) {
        for (size_t c = 0; c < inputs; c++)
            status = worse(status, require(in[c].base != NULL));
        for (size_t c = 0; c < outputs; c++) {
            status = worse(status, require(out[c].base != NULL || out[c].optional));
            status = worse(status, require(n == 1 || !out[c].base || out[c].stride != 0));
        }
    }
    if (failed)
        *failed = status == VTX_OK ? 0 : n;
    return status;
}

vtx_status batch_run(size_t n, const struct batch_input *in, size_t inputs, const struct batch_output *out,
                     size_t outputs, const int32_t *selector, batch_item *item, int32_t *status, size_t *failed)
{
    const struct batch batch = { in, out, selector };
    size_t bad = 0;
    fenv_t environment;
    vtx_status checked = batch_check(n, in, inputs, out, outputs, failed);
    if (checked != VTX_OK || n == 0)
        return checked;
    feholdexcept(&environment);
    for (size_t i = 0; i < n; i++) {
        const vtx_status s = item(&batch, i);
        bad += s != VTX_OK;
        if (status)
            memcpy((char *)status + i * sizeof s, &s, sizeof s);
    }
    fesetenv(&environment);
    if (failed)
        *failed = bad;
    return bad ? VTX_PARTIAL : VTX_OK;
}
