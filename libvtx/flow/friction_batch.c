/* Batch forms of friction.h. Written by build-aux/generate. */
#include <vtx/friction.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status reynolds_number_item(const struct batch *b, size_t i)
{
    double reynolds_room;
    double *const reynolds = batch_place(b, 0, i, &reynolds_room, sizeof reynolds_room, _Alignof(double));
    const vtx_status answer = vtx_reynolds_number(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        reynolds);
    batch_move(b, 0, i, reynolds, &reynolds_room, sizeof reynolds_room);
    return answer;
}

vtx_status vtx_reynolds_number_batch(size_t n, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *diameter, ptrdiff_t diameter_stride, const double *viscosity, ptrdiff_t viscosity_stride,
        double *reynolds, ptrdiff_t reynolds_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { mass_flow, mass_flow_stride }, { diameter, diameter_stride },
        { viscosity, viscosity_stride } };
    const struct batch_output out[] = { { reynolds, reynolds_stride, 0, sizeof *reynolds } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, reynolds_number_item, status, failed);
}

static ALWAYS_INLINE vtx_status darcy_friction_factor_item(const struct batch *b, size_t i)
{
    double factor_room;
    double *const factor = batch_place(b, 0, i, &factor_room, sizeof factor_room, _Alignof(double));
    const vtx_status answer = vtx_darcy_friction_factor(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        factor);
    batch_move(b, 0, i, factor, &factor_room, sizeof factor_room);
    return answer;
}

vtx_status vtx_darcy_friction_factor_batch(size_t n, int32_t law, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *relative_roughness, ptrdiff_t relative_roughness_stride, double *factor,
        ptrdiff_t factor_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reynolds, reynolds_stride },
        { relative_roughness, relative_roughness_stride } };
    const struct batch_output out[] = { { factor, factor_stride, 0, sizeof *factor } };
    const int32_t selector[] = { law };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, darcy_friction_factor_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status fanning_friction_factor_item(const struct batch *b, size_t i)
{
    double factor_room;
    double *const factor = batch_place(b, 0, i, &factor_room, sizeof factor_room, _Alignof(double));
    const vtx_status answer = vtx_fanning_friction_factor(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        factor);
    batch_move(b, 0, i, factor, &factor_room, sizeof factor_room);
    return answer;
}

vtx_status vtx_fanning_friction_factor_batch(size_t n, int32_t law, const double *reynolds,
        ptrdiff_t reynolds_stride, const double *relative_roughness, ptrdiff_t relative_roughness_stride,
        double *factor, ptrdiff_t factor_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reynolds, reynolds_stride },
        { relative_roughness, relative_roughness_stride } };
    const struct batch_output out[] = { { factor, factor_stride, 0, sizeof *factor } };
    const int32_t selector[] = { law };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, fanning_friction_factor_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status fitting_loss_item(const struct batch *b, size_t i)
{
    double loss_room;
    double *const loss = batch_place(b, 0, i, &loss_room, sizeof loss_room, _Alignof(double));
    const vtx_status answer = vtx_fitting_loss(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i), loss);
    batch_move(b, 0, i, loss, &loss_room, sizeof loss_room);
    return answer;
}

vtx_status vtx_fitting_loss_batch(size_t n, int32_t fitting, const double *diameter, ptrdiff_t diameter_stride,
        const double *roughness, ptrdiff_t roughness_stride, double *loss, ptrdiff_t loss_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { diameter, diameter_stride }, { roughness, roughness_stride } };
    const struct batch_output out[] = { { loss, loss_stride, 0, sizeof *loss } };
    const int32_t selector[] = { fitting };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, fitting_loss_item, status, failed);
}
