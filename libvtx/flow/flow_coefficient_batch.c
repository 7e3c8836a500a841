/* Batch forms of flow_coefficient.h. Written by build-aux/generate. */
#include <vtx/flow_coefficient.h>

#include "../base/batch.h"

static vtx_status kv_from_cv_item(const struct batch *b, size_t i)
{
    double kv;
    const vtx_status answer = vtx_kv_from_cv(batch_get(b, 0, i), &kv);
    batch_put(b, 0, i, &kv, sizeof kv);
    return answer;
}

vtx_status vtx_kv_from_cv_batch(size_t n, const double *cv, ptrdiff_t cv_stride, double *kv, ptrdiff_t kv_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { cv, cv_stride } };
    const struct batch_output out[] = { { kv, kv_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, kv_from_cv_item, status, failed);
}

static vtx_status cv_from_kv_item(const struct batch *b, size_t i)
{
    double cv;
    const vtx_status answer = vtx_cv_from_kv(batch_get(b, 0, i), &cv);
    batch_put(b, 0, i, &cv, sizeof cv);
    return answer;
}

vtx_status vtx_cv_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, double *cv, ptrdiff_t cv_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { kv, kv_stride } };
    const struct batch_output out[] = { { cv, cv_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cv_from_kv_item, status, failed);
}

static vtx_status area_from_kv_item(const struct batch *b, size_t i)
{
    double area;
    const vtx_status answer = vtx_area_from_kv(batch_get(b, 0, i), &area);
    batch_put(b, 0, i, &area, sizeof area);
    return answer;
}

vtx_status vtx_area_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, double *area,
        ptrdiff_t area_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { kv, kv_stride } };
    const struct batch_output out[] = { { area, area_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, area_from_kv_item, status, failed);
}

static vtx_status kv_from_area_item(const struct batch *b, size_t i)
{
    double kv;
    const vtx_status answer = vtx_kv_from_area(batch_get(b, 0, i), &kv);
    batch_put(b, 0, i, &kv, sizeof kv);
    return answer;
}

vtx_status vtx_kv_from_area_batch(size_t n, const double *area, ptrdiff_t area_stride, double *kv,
        ptrdiff_t kv_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { area, area_stride } };
    const struct batch_output out[] = { { kv, kv_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, kv_from_area_item, status, failed);
}

static vtx_status conductance_from_area_item(const struct batch *b, size_t i)
{
    vtx_gas gas;
    batch_get_bytes(b, 0, i, &gas, sizeof gas);
    double conductance;
    const vtx_status answer = vtx_conductance_from_area(&gas, batch_get(b, 1, i), &conductance);
    batch_put(b, 0, i, &conductance, sizeof conductance);
    return answer;
}

vtx_status vtx_conductance_from_area_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *area,
        ptrdiff_t area_stride, double *conductance, ptrdiff_t conductance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride }, { area, area_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_from_area_item, status,
        failed);
}

static vtx_status area_from_conductance_item(const struct batch *b, size_t i)
{
    vtx_gas gas;
    batch_get_bytes(b, 0, i, &gas, sizeof gas);
    double area;
    const vtx_status answer = vtx_area_from_conductance(&gas, batch_get(b, 1, i), &area);
    batch_put(b, 0, i, &area, sizeof area);
    return answer;
}

vtx_status vtx_area_from_conductance_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *conductance, ptrdiff_t conductance_stride, double *area, ptrdiff_t area_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride }, { conductance, conductance_stride } };
    const struct batch_output out[] = { { area, area_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, area_from_conductance_item, status,
        failed);
}

static vtx_status conductance_from_kv_item(const struct batch *b, size_t i)
{
    vtx_gas gas;
    batch_get_bytes(b, 0, i, &gas, sizeof gas);
    double conductance;
    const vtx_status answer = vtx_conductance_from_kv(&gas, batch_get(b, 1, i), batch_get(b, 2, i), &conductance);
    batch_put(b, 0, i, &conductance, sizeof conductance);
    return answer;
}

vtx_status vtx_conductance_from_kv_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *kv,
        ptrdiff_t kv_stride, const double *pressure_ratio_factor, ptrdiff_t pressure_ratio_factor_stride,
        double *conductance, ptrdiff_t conductance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride }, { kv, kv_stride },
        { pressure_ratio_factor, pressure_ratio_factor_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_from_kv_item, status, failed);
}

static vtx_status kv_from_conductance_item(const struct batch *b, size_t i)
{
    vtx_gas gas;
    batch_get_bytes(b, 0, i, &gas, sizeof gas);
    double kv;
    const vtx_status answer = vtx_kv_from_conductance(&gas, batch_get(b, 1, i), batch_get(b, 2, i), &kv);
    batch_put(b, 0, i, &kv, sizeof kv);
    return answer;
}

vtx_status vtx_kv_from_conductance_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *conductance, ptrdiff_t conductance_stride, const double *pressure_ratio_factor,
        ptrdiff_t pressure_ratio_factor_stride, double *kv, ptrdiff_t kv_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride }, { conductance, conductance_stride },
        { pressure_ratio_factor, pressure_ratio_factor_stride } };
    const struct batch_output out[] = { { kv, kv_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, kv_from_conductance_item, status, failed);
}

static vtx_status loss_from_kv_item(const struct batch *b, size_t i)
{
    double loss;
    const vtx_status answer = vtx_loss_from_kv(batch_get(b, 0, i), batch_get(b, 1, i), &loss);
    batch_put(b, 0, i, &loss, sizeof loss);
    return answer;
}

vtx_status vtx_loss_from_kv_batch(size_t n, const double *kv, ptrdiff_t kv_stride, const double *diameter,
        ptrdiff_t diameter_stride, double *loss, ptrdiff_t loss_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { kv, kv_stride }, { diameter, diameter_stride } };
    const struct batch_output out[] = { { loss, loss_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, loss_from_kv_item, status, failed);
}

static vtx_status kv_from_loss_item(const struct batch *b, size_t i)
{
    double kv;
    const vtx_status answer = vtx_kv_from_loss(batch_get(b, 0, i), batch_get(b, 1, i), &kv);
    batch_put(b, 0, i, &kv, sizeof kv);
    return answer;
}

vtx_status vtx_kv_from_loss_batch(size_t n, const double *loss, ptrdiff_t loss_stride, const double *diameter,
        ptrdiff_t diameter_stride, double *kv, ptrdiff_t kv_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { loss, loss_stride }, { diameter, diameter_stride } };
    const struct batch_output out[] = { { kv, kv_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, kv_from_loss_item, status, failed);
}
