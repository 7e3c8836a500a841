/* Batch forms of flow_coefficient.h. Written by build-aux/generate. */
#include <vtx/flow_coefficient.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status kv_from_cv_item(const struct batch *b, size_t i)
{
    double kv_room;
    double *const kv = batch_place(b, 0, i, &kv_room, sizeof kv_room, _Alignof(double));
    const vtx_status answer = vtx_kv_from_cv(batch_get(b, 0, i), kv);
    batch_move(b, 0, i, kv, &kv_room, sizeof kv_room);
    return answer;
}

vtx_status vtx_kv_from_cv_batch(size_t n, const double *cv, ptrdiff_t cv_stride, double *kv, ptrdiff_t kv_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { cv, cv_stride } };
    const struct batch_output out[] = { { kv, kv_stride, 0, sizeof *kv } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, kv_from_cv_item, status, failed);
}

static ALWAYS_INLINE vtx_status cv_from_kv_item(const struct batch *b, size_t i)
{
    double cv_room;
    double *const cv = batch_place(b, 0, i, &cv_room, sizeof cv_room, _Alignof(double));
    const vtx_status answer = vtx_cv_from_kv(batch_get(b, 0, i), cv);
    batch_move(b, 0, i, cv, &cv_room, sizeof cv_room);
    return answer;
}

vtx_status vtx_cv_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, double *cv, ptrdiff_t cv_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { kv, kv_stride } };
    const struct batch_output out[] = { { cv, cv_stride, 0, sizeof *cv } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cv_from_kv_item, status, failed);
}

static ALWAYS_INLINE vtx_status area_from_kv_item(const struct batch *b, size_t i)
{
    double area_room;
    double *const area = batch_place(b, 0, i, &area_room, sizeof area_room, _Alignof(double));
    const vtx_status answer = vtx_area_from_kv(batch_get(b, 0, i), area);
    batch_move(b, 0, i, area, &area_room, sizeof area_room);
    return answer;
}

vtx_status vtx_area_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, double *area,
        ptrdiff_t area_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { kv, kv_stride } };
    const struct batch_output out[] = { { area, area_stride, 0, sizeof *area } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, area_from_kv_item, status, failed);
}

static ALWAYS_INLINE vtx_status kv_from_area_item(const struct batch *b, size_t i)
{
    double kv_room;
    double *const kv = batch_place(b, 0, i, &kv_room, sizeof kv_room, _Alignof(double));
    const vtx_status answer = vtx_kv_from_area(batch_get(b, 0, i), kv);
    batch_move(b, 0, i, kv, &kv_room, sizeof kv_room);
    return answer;
}

vtx_status vtx_kv_from_area_batch(size_t n, const double *area, ptrdiff_t area_stride, double *kv,
        ptrdiff_t kv_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { area, area_stride } };
    const struct batch_output out[] = { { kv, kv_stride, 0, sizeof *kv } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, kv_from_area_item, status, failed);
}

static ALWAYS_INLINE vtx_status conductance_from_area_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double conductance_room;
    double *const conductance = batch_place(b, 0, i, &conductance_room, sizeof conductance_room, _Alignof(double));
    const vtx_status answer = vtx_conductance_from_area(gas, batch_get(b, 1, i), conductance);
    batch_move(b, 0, i, conductance, &conductance_room, sizeof conductance_room);
    return answer;
}

vtx_status vtx_conductance_from_area_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *area,
        ptrdiff_t area_stride, double *conductance, ptrdiff_t conductance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { area, area_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0, sizeof *conductance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_from_area_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status area_from_conductance_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double area_room;
    double *const area = batch_place(b, 0, i, &area_room, sizeof area_room, _Alignof(double));
    const vtx_status answer = vtx_area_from_conductance(gas, batch_get(b, 1, i), area);
    batch_move(b, 0, i, area, &area_room, sizeof area_room);
    return answer;
}

vtx_status vtx_area_from_conductance_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *conductance, ptrdiff_t conductance_stride, double *area, ptrdiff_t area_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { conductance, conductance_stride } };
    const struct batch_output out[] = { { area, area_stride, 0, sizeof *area } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, area_from_conductance_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status conductance_from_kv_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double conductance_room;
    double *const conductance = batch_place(b, 0, i, &conductance_room, sizeof conductance_room, _Alignof(double));
    const vtx_status answer = vtx_conductance_from_kv(gas, batch_get(b, 1, i), batch_get(b, 2, i), conductance);
    batch_move(b, 0, i, conductance, &conductance_room, sizeof conductance_room);
    return answer;
}

vtx_status vtx_conductance_from_kv_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *kv,
        ptrdiff_t kv_stride, const double *pressure_ratio_factor, ptrdiff_t pressure_ratio_factor_stride,
        double *conductance, ptrdiff_t conductance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { kv, kv_stride },
        { pressure_ratio_factor, pressure_ratio_factor_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0, sizeof *conductance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_from_kv_item, status, failed);
}

static ALWAYS_INLINE vtx_status kv_from_conductance_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double kv_room;
    double *const kv = batch_place(b, 0, i, &kv_room, sizeof kv_room, _Alignof(double));
    const vtx_status answer = vtx_kv_from_conductance(gas, batch_get(b, 1, i), batch_get(b, 2, i), kv);
    batch_move(b, 0, i, kv, &kv_room, sizeof kv_room);
    return answer;
}

vtx_status vtx_kv_from_conductance_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *conductance, ptrdiff_t conductance_stride, const double *pressure_ratio_factor,
        ptrdiff_t pressure_ratio_factor_stride, double *kv, ptrdiff_t kv_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { conductance, conductance_stride },
        { pressure_ratio_factor, pressure_ratio_factor_stride } };
    const struct batch_output out[] = { { kv, kv_stride, 0, sizeof *kv } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, kv_from_conductance_item, status, failed);
}

static ALWAYS_INLINE vtx_status loss_from_kv_item(const struct batch *b, size_t i)
{
    double loss_room;
    double *const loss = batch_place(b, 0, i, &loss_room, sizeof loss_room, _Alignof(double));
    const vtx_status answer = vtx_loss_from_kv(batch_get(b, 0, i), batch_get(b, 1, i), loss);
    batch_move(b, 0, i, loss, &loss_room, sizeof loss_room);
    return answer;
}

vtx_status vtx_loss_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, const double *diameter,
        ptrdiff_t diameter_stride, double *loss, ptrdiff_t loss_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { kv, kv_stride }, { diameter, diameter_stride } };
    const struct batch_output out[] = { { loss, loss_stride, 0, sizeof *loss } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, loss_from_kv_item, status, failed);
}

static ALWAYS_INLINE vtx_status kv_from_loss_item(const struct batch *b, size_t i)
{
    double kv_room;
    double *const kv = batch_place(b, 0, i, &kv_room, sizeof kv_room, _Alignof(double));
    const vtx_status answer = vtx_kv_from_loss(batch_get(b, 0, i), batch_get(b, 1, i), kv);
    batch_move(b, 0, i, kv, &kv_room, sizeof kv_room);
    return answer;
}

vtx_status vtx_kv_from_loss_batch(size_t n, const double *loss, ptrdiff_t loss_stride, const double *diameter,
        ptrdiff_t diameter_stride, double *kv, ptrdiff_t kv_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { loss, loss_stride }, { diameter, diameter_stride } };
    const struct batch_output out[] = { { kv, kv_stride, 0, sizeof *kv } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, kv_from_loss_item, status, failed);
}
