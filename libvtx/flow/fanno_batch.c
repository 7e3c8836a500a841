/* Batch forms of fanno.h. Written by build-aux/generate. */
#include <vtx/fanno.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status fanno_length_item(const struct batch *b, size_t i)
{
    double length_room;
    double *const length = batch_place(b, 0, i, &length_room, sizeof length_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_length(batch_get(b, 0, i), batch_get(b, 1, i), length);
    batch_move(b, 0, i, length, &length_room, sizeof length_room);
    return answer;
}

vtx_status vtx_fanno_length_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *length, ptrdiff_t length_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { length, length_stride, 0, sizeof *length } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_length_item, status, failed);
}

static ALWAYS_INLINE vtx_status fanno_mach_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_mach(batch_get(b, 0, i), batch_get(b, 1, i), b->selector[0], mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_fanno_mach_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *length,
        ptrdiff_t length_stride, int32_t branch, double *mach, ptrdiff_t mach_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { length, length_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    const int32_t selector[] = { branch };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, fanno_mach_item, status, failed);
}

static ALWAYS_INLINE vtx_status fanno_outlet_mach_item(const struct batch *b, size_t i)
{
    double outlet_mach_room;
    double *const outlet_mach = batch_place(b, 0, i, &outlet_mach_room, sizeof outlet_mach_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_outlet_mach(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        outlet_mach);
    batch_move(b, 0, i, outlet_mach, &outlet_mach_room, sizeof outlet_mach_room);
    return answer;
}

vtx_status vtx_fanno_outlet_mach_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_mach, ptrdiff_t inlet_mach_stride, const double *length, ptrdiff_t length_stride,
        double *outlet_mach, ptrdiff_t outlet_mach_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { inlet_mach, inlet_mach_stride },
        { length, length_stride } };
    const struct batch_output out[] = { { outlet_mach, outlet_mach_stride, 0, sizeof *outlet_mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_outlet_mach_item, status, failed);
}

static ALWAYS_INLINE vtx_status fanno_temperature_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_temperature_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_fanno_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_temperature_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status fanno_mach_from_temperature_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_mach_from_temperature(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_fanno_mach_from_temperature_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_mach_from_temperature_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status fanno_pressure_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_pressure_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_fanno_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_pressure_ratio_item, status, failed);
}

static ALWAYS_INLINE vtx_status fanno_mach_from_pressure_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_mach_from_pressure(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_fanno_mach_from_pressure_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_mach_from_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status fanno_velocity_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_velocity_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_fanno_velocity_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_velocity_ratio_item, status, failed);
}

static ALWAYS_INLINE vtx_status fanno_mach_from_velocity_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_mach_from_velocity(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_fanno_mach_from_velocity_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_mach_from_velocity_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status fanno_stagnation_pressure_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_fanno_stagnation_pressure_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_fanno_stagnation_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fanno_stagnation_pressure_ratio_item,
        status, failed);
}
