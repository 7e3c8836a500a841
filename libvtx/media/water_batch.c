/* Batch forms of water.h. Written by build-aux/generate. */
#include <vtx/water.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status water_saturation_slope_item(const struct batch *b, size_t i)
{
    double slope_room;
    double *const slope = batch_place(b, 0, i, &slope_room, sizeof slope_room, _Alignof(double));
    const vtx_status answer = vtx_water_saturation_slope(batch_get(b, 0, i), slope);
    batch_move(b, 0, i, slope, &slope_room, sizeof slope_room);
    return answer;
}

vtx_status vtx_water_saturation_slope_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *slope, ptrdiff_t slope_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { slope, slope_stride, 0, sizeof *slope } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, water_saturation_slope_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status water_density_item(const struct batch *b, size_t i)
{
    double density_room;
    double *const density = batch_place(b, 0, i, &density_room, sizeof density_room, _Alignof(double));
    const vtx_status answer = vtx_water_density(batch_get(b, 0, i), density);
    batch_move(b, 0, i, density, &density_room, sizeof density_room);
    return answer;
}

vtx_status vtx_water_density_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *density, ptrdiff_t density_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { density, density_stride, 0, sizeof *density } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, water_density_item, status, failed);
}

static ALWAYS_INLINE vtx_status water_enthalpy_item(const struct batch *b, size_t i)
{
    double enthalpy_room;
    double *const enthalpy = batch_place(b, 0, i, &enthalpy_room, sizeof enthalpy_room, _Alignof(double));
    const vtx_status answer = vtx_water_enthalpy(batch_get(b, 0, i), enthalpy);
    batch_move(b, 0, i, enthalpy, &enthalpy_room, sizeof enthalpy_room);
    return answer;
}

vtx_status vtx_water_enthalpy_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *enthalpy, ptrdiff_t enthalpy_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { enthalpy, enthalpy_stride, 0, sizeof *enthalpy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, water_enthalpy_item, status, failed);
}

static ALWAYS_INLINE vtx_status ice_sublimation_slope_item(const struct batch *b, size_t i)
{
    double slope_room;
    double *const slope = batch_place(b, 0, i, &slope_room, sizeof slope_room, _Alignof(double));
    const vtx_status answer = vtx_ice_sublimation_slope(batch_get(b, 0, i), slope);
    batch_move(b, 0, i, slope, &slope_room, sizeof slope_room);
    return answer;
}

vtx_status vtx_ice_sublimation_slope_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *slope, ptrdiff_t slope_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { slope, slope_stride, 0, sizeof *slope } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, ice_sublimation_slope_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status ice_density_item(const struct batch *b, size_t i)
{
    double density_room;
    double *const density = batch_place(b, 0, i, &density_room, sizeof density_room, _Alignof(double));
    const vtx_status answer = vtx_ice_density(batch_get(b, 0, i), batch_get(b, 1, i), density);
    batch_move(b, 0, i, density, &density_room, sizeof density_room);
    return answer;
}

vtx_status vtx_ice_density_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *density, ptrdiff_t density_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { density, density_stride, 0, sizeof *density } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, ice_density_item, status, failed);
}

static ALWAYS_INLINE vtx_status ice_enthalpy_item(const struct batch *b, size_t i)
{
    double enthalpy_room;
    double *const enthalpy = batch_place(b, 0, i, &enthalpy_room, sizeof enthalpy_room, _Alignof(double));
    const vtx_status answer = vtx_ice_enthalpy(batch_get(b, 0, i), batch_get(b, 1, i), enthalpy);
    batch_move(b, 0, i, enthalpy, &enthalpy_room, sizeof enthalpy_room);
    return answer;
}

vtx_status vtx_ice_enthalpy_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *enthalpy, ptrdiff_t enthalpy_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { enthalpy, enthalpy_stride, 0, sizeof *enthalpy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, ice_enthalpy_item, status, failed);
}

static ALWAYS_INLINE vtx_status water_vaporisation_enthalpy_item(const struct batch *b, size_t i)
{
    double enthalpy_room;
    double *const enthalpy = batch_place(b, 0, i, &enthalpy_room, sizeof enthalpy_room, _Alignof(double));
    const vtx_status answer = vtx_water_vaporisation_enthalpy(batch_get(b, 0, i), enthalpy);
    batch_move(b, 0, i, enthalpy, &enthalpy_room, sizeof enthalpy_room);
    return answer;
}

vtx_status vtx_water_vaporisation_enthalpy_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *enthalpy, ptrdiff_t enthalpy_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { enthalpy, enthalpy_stride, 0, sizeof *enthalpy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, water_vaporisation_enthalpy_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status ice_sublimation_enthalpy_item(const struct batch *b, size_t i)
{
    double enthalpy_room;
    double *const enthalpy = batch_place(b, 0, i, &enthalpy_room, sizeof enthalpy_room, _Alignof(double));
    const vtx_status answer = vtx_ice_sublimation_enthalpy(batch_get(b, 0, i), enthalpy);
    batch_move(b, 0, i, enthalpy, &enthalpy_room, sizeof enthalpy_room);
    return answer;
}

vtx_status vtx_ice_sublimation_enthalpy_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *enthalpy, ptrdiff_t enthalpy_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { enthalpy, enthalpy_stride, 0, sizeof *enthalpy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, ice_sublimation_enthalpy_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status ice_fusion_enthalpy_item(const struct batch *b, size_t i)
{
    double enthalpy_room;
    double *const enthalpy = batch_place(b, 0, i, &enthalpy_room, sizeof enthalpy_room, _Alignof(double));
    const vtx_status answer = vtx_ice_fusion_enthalpy(batch_get(b, 0, i), enthalpy);
    batch_move(b, 0, i, enthalpy, &enthalpy_room, sizeof enthalpy_room);
    return answer;
}

vtx_status vtx_ice_fusion_enthalpy_batch(size_t n, const double *temperature, ptrdiff_t temperature_stride,
        double *enthalpy, ptrdiff_t enthalpy_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { enthalpy, enthalpy_stride, 0, sizeof *enthalpy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, ice_fusion_enthalpy_item, status, failed);
}
