/* Batch forms of insulation.h. Written by build-aux/generate. */
#include <vtx/insulation.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status covered_tube_heat_item(const struct batch *b, size_t i)
{
    vtx_covered_tube tube_room;
    const vtx_covered_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room,
        _Alignof(vtx_covered_tube));
    vtx_tube_heat heat_room;
    vtx_tube_heat *const heat = batch_place(b, 0, i, &heat_room, sizeof heat_room, _Alignof(vtx_tube_heat));
    const vtx_status answer = vtx_covered_tube_heat(tube, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
        heat);
    batch_move(b, 0, i, heat, &heat_room, sizeof heat_room);
    return answer;
}

vtx_status vtx_covered_tube_heat_batch(size_t n, const vtx_covered_tube *tube, ptrdiff_t tube_stride,
        const double *inside_temperature, ptrdiff_t inside_temperature_stride, const double *outside_coefficient,
        ptrdiff_t outside_coefficient_stride, const double *outside_temperature,
        ptrdiff_t outside_temperature_stride, vtx_tube_heat *heat, ptrdiff_t heat_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inside_temperature, inside_temperature_stride },
        { outside_coefficient, outside_coefficient_stride }, { outside_temperature, outside_temperature_stride } };
    const struct batch_output out[] = { { heat, heat_stride, 0, sizeof *heat } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, covered_tube_heat_item, status, failed);
}

static ALWAYS_INLINE vtx_status cover_inside_temperature_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_cover_inside_temperature(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_cover_inside_temperature_batch(size_t n, const double *heat_per_length,
        ptrdiff_t heat_per_length_stride, const double *inner_radius, ptrdiff_t inner_radius_stride,
        const double *outer_radius, ptrdiff_t outer_radius_stride, const double *conductivity,
        ptrdiff_t conductivity_stride, const double *outside_coefficient, ptrdiff_t outside_coefficient_stride,
        const double *outside_temperature, ptrdiff_t outside_temperature_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_per_length, heat_per_length_stride },
        { inner_radius, inner_radius_stride }, { outer_radius, outer_radius_stride },
        { conductivity, conductivity_stride }, { outside_coefficient, outside_coefficient_stride },
        { outside_temperature, outside_temperature_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cover_inside_temperature_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status critical_radius_item(const struct batch *b, size_t i)
{
    double radius_room;
    double *const radius = batch_place(b, 0, i, &radius_room, sizeof radius_room, _Alignof(double));
    const vtx_status answer = vtx_critical_radius(batch_get(b, 0, i), batch_get(b, 1, i), radius);
    batch_move(b, 0, i, radius, &radius_room, sizeof radius_room);
    return answer;
}

vtx_status vtx_critical_radius_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *outside_coefficient, ptrdiff_t outside_coefficient_stride, double *radius,
        ptrdiff_t radius_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { conductivity, conductivity_stride },
        { outside_coefficient, outside_coefficient_stride } };
    const struct batch_output out[] = { { radius, radius_stride, 0, sizeof *radius } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, critical_radius_item, status, failed);
}

static ALWAYS_INLINE vtx_status insulation_thickness_item(const struct batch *b, size_t i)
{
    double thickness_room;
    double *const thickness = batch_place(b, 0, i, &thickness_room, sizeof thickness_room, _Alignof(double));
    const vtx_status answer = vtx_insulation_thickness(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), thickness);
    batch_move(b, 0, i, thickness, &thickness_room, sizeof thickness_room);
    return answer;
}

vtx_status vtx_insulation_thickness_batch(size_t n, const double *radius, ptrdiff_t radius_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *tube_temperature,
        ptrdiff_t tube_temperature_stride, const double *outside_coefficient, ptrdiff_t outside_coefficient_stride,
        const double *outside_temperature, ptrdiff_t outside_temperature_stride, const double *wanted_temperature,
        ptrdiff_t wanted_temperature_stride, double *thickness, ptrdiff_t thickness_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { radius, radius_stride }, { conductivity, conductivity_stride },
        { tube_temperature, tube_temperature_stride }, { outside_coefficient, outside_coefficient_stride },
        { outside_temperature, outside_temperature_stride }, { wanted_temperature, wanted_temperature_stride } };
    const struct batch_output out[] = { { thickness, thickness_stride, 0, sizeof *thickness } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, insulation_thickness_item, status, failed);
}

static ALWAYS_INLINE vtx_status wall_insulation_thickness_item(const struct batch *b, size_t i)
{
    double thickness_room;
    double *const thickness = batch_place(b, 0, i, &thickness_room, sizeof thickness_room, _Alignof(double));
    const vtx_status answer = vtx_wall_insulation_thickness(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), thickness);
    batch_move(b, 0, i, thickness, &thickness_room, sizeof thickness_room);
    return answer;
}

vtx_status vtx_wall_insulation_thickness_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *wall_temperature, ptrdiff_t wall_temperature_stride, const double *outside_coefficient,
        ptrdiff_t outside_coefficient_stride, const double *outside_temperature,
        ptrdiff_t outside_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        double *thickness, ptrdiff_t thickness_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { conductivity, conductivity_stride },
        { wall_temperature, wall_temperature_stride }, { outside_coefficient, outside_coefficient_stride },
        { outside_temperature, outside_temperature_stride }, { wanted_temperature, wanted_temperature_stride } };
    const struct batch_output out[] = { { thickness, thickness_stride, 0, sizeof *thickness } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, wall_insulation_thickness_item, status,
        failed);
}
