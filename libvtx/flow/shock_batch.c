/* Batch forms of shock.h. Written by build-aux/generate. */
#include <vtx/shock.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status shock_downstream_mach_item(const struct batch *b, size_t i)
{
    double downstream_mach_room;
    double *const downstream_mach = batch_place(b, 0, i, &downstream_mach_room, sizeof downstream_mach_room,
        _Alignof(double));
    const vtx_status answer = vtx_shock_downstream_mach(batch_get(b, 0, i), batch_get(b, 1, i), downstream_mach);
    batch_move(b, 0, i, downstream_mach, &downstream_mach_room, sizeof downstream_mach_room);
    return answer;
}

vtx_status vtx_shock_downstream_mach_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *downstream_mach, ptrdiff_t downstream_mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { downstream_mach, downstream_mach_stride, 0, sizeof *downstream_mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_downstream_mach_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status shock_pressure_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_shock_pressure_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_shock_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_pressure_ratio_item, status, failed);
}

static ALWAYS_INLINE vtx_status shock_density_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_shock_density_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_shock_density_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_density_ratio_item, status, failed);
}

static ALWAYS_INLINE vtx_status shock_temperature_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_shock_temperature_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_shock_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_temperature_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status shock_stagnation_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_shock_stagnation_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_shock_stagnation_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_stagnation_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status shock_pitot_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_shock_pitot_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_shock_pitot_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_pitot_ratio_item, status, failed);
}

static ALWAYS_INLINE vtx_status shock_mach_for_downstream_mach_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_shock_mach_for_downstream_mach(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_shock_mach_for_downstream_mach_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *downstream_mach, ptrdiff_t downstream_mach_stride, double *mach, ptrdiff_t mach_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { downstream_mach, downstream_mach_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_mach_for_downstream_mach_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status shock_mach_for_pressure_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_shock_mach_for_pressure_ratio(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_shock_mach_for_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_mach_for_pressure_ratio_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status shock_mach_for_density_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_shock_mach_for_density_ratio(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_shock_mach_for_density_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_mach_for_density_ratio_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status shock_mach_for_temperature_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_shock_mach_for_temperature_ratio(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_shock_mach_for_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_mach_for_temperature_ratio_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status shock_mach_for_stagnation_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_shock_mach_for_stagnation_ratio(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_shock_mach_for_stagnation_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_mach_for_stagnation_ratio_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status shock_mach_for_pitot_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_shock_mach_for_pitot_ratio(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_shock_mach_for_pitot_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, shock_mach_for_pitot_ratio_item, status,
        failed);
}
