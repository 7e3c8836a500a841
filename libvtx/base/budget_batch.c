/* Batch forms of budget.h. Written by build-aux/generate. */
#include <vtx/budget.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status type_b_degrees_of_freedom_item(const struct batch *b, size_t i)
{
    double degrees_of_freedom_room;
    double *const degrees_of_freedom = batch_place(b, 0, i, &degrees_of_freedom_room, sizeof degrees_of_freedom_room,
        _Alignof(double));
    const vtx_status answer = vtx_type_b_degrees_of_freedom(batch_get(b, 0, i), degrees_of_freedom);
    batch_move(b, 0, i, degrees_of_freedom, &degrees_of_freedom_room, sizeof degrees_of_freedom_room);
    return answer;
}

vtx_status vtx_type_b_degrees_of_freedom_batch(size_t n, const double *doubt, ptrdiff_t doubt_stride,
        double *degrees_of_freedom, ptrdiff_t degrees_of_freedom_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { doubt, doubt_stride } };
    const struct batch_output out[] = {
        { degrees_of_freedom, degrees_of_freedom_stride, 0, sizeof *degrees_of_freedom } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, type_b_degrees_of_freedom_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status coverage_factor_item(const struct batch *b, size_t i)
{
    double factor_room;
    double *const factor = batch_place(b, 0, i, &factor_room, sizeof factor_room, _Alignof(double));
    const vtx_status answer = vtx_coverage_factor(batch_get(b, 0, i), batch_get(b, 1, i), factor);
    batch_move(b, 0, i, factor, &factor_room, sizeof factor_room);
    return answer;
}

vtx_status vtx_coverage_factor_batch(size_t n, const double *coverage, ptrdiff_t coverage_stride,
        const double *degrees_of_freedom, ptrdiff_t degrees_of_freedom_stride, double *factor,
        ptrdiff_t factor_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { coverage, coverage_stride },
        { degrees_of_freedom, degrees_of_freedom_stride } };
    const struct batch_output out[] = { { factor, factor_stride, 0, sizeof *factor } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, coverage_factor_item, status, failed);
}
