/* The check before every batch loop. */
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
