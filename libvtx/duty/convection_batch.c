/* Batch forms of convection.h. Written by build-aux/generate. */
#include <vtx/convection.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status rayleigh_number_item(const struct batch *b, size_t i)
{
    double rayleigh_room;
    double *const rayleigh = batch_place(b, 0, i, &rayleigh_room, sizeof rayleigh_room, _Alignof(double));
    const vtx_status answer = vtx_rayleigh_number(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), rayleigh);
    batch_move(b, 0, i, rayleigh, &rayleigh_room, sizeof rayleigh_room);
    return answer;
}

vtx_status vtx_rayleigh_number_batch(size_t n, const double *gravity, ptrdiff_t gravity_stride,
        const double *expansion, ptrdiff_t expansion_stride, const double *temperature_difference,
        ptrdiff_t temperature_difference_stride, const double *length, ptrdiff_t length_stride,
        const double *kinematic_viscosity, ptrdiff_t kinematic_viscosity_stride, const double *diffusivity,
        ptrdiff_t diffusivity_stride, double *rayleigh, ptrdiff_t rayleigh_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gravity, gravity_stride }, { expansion, expansion_stride },
        { temperature_difference, temperature_difference_stride }, { length, length_stride },
        { kinematic_viscosity, kinematic_viscosity_stride }, { diffusivity, diffusivity_stride } };
    const struct batch_output out[] = { { rayleigh, rayleigh_stride, 0, sizeof *rayleigh } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, rayleigh_number_item, status, failed);
}

static ALWAYS_INLINE vtx_status nusselt_horizontal_cylinder_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_horizontal_cylinder(batch_get(b, 0, i), batch_get(b, 1, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_horizontal_cylinder_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { rayleigh, rayleigh_stride }, { prandtl, prandtl_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_horizontal_cylinder_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status nusselt_vertical_plate_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_vertical_plate(batch_get(b, 0, i), batch_get(b, 1, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_vertical_plate_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { rayleigh, rayleigh_stride }, { prandtl, prandtl_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_vertical_plate_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status nusselt_vertical_plate_laminar_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_vertical_plate_laminar(batch_get(b, 0, i), batch_get(b, 1, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_vertical_plate_laminar_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { rayleigh, rayleigh_stride }, { prandtl, prandtl_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_vertical_plate_laminar_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status nusselt_sphere_natural_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_sphere_natural(batch_get(b, 0, i), batch_get(b, 1, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_sphere_natural_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { rayleigh, rayleigh_stride }, { prandtl, prandtl_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_sphere_natural_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status nusselt_plate_outward_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_plate_outward(batch_get(b, 0, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_plate_outward_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { rayleigh, rayleigh_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_plate_outward_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status nusselt_plate_outward_laminar_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_plate_outward_laminar(batch_get(b, 0, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_plate_outward_laminar_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { rayleigh, rayleigh_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_plate_outward_laminar_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status nusselt_plate_inward_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_plate_inward(batch_get(b, 0, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_plate_inward_batch(size_t n, const double *rayleigh, ptrdiff_t rayleigh_stride,
        double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { rayleigh, rayleigh_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_plate_inward_item, status, failed);
}

static ALWAYS_INLINE vtx_status nusselt_cross_flow_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_cross_flow(batch_get(b, 0, i), batch_get(b, 1, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_cross_flow_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { reynolds, reynolds_stride }, { prandtl, prandtl_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_cross_flow_item, status, failed);
}

static ALWAYS_INLINE vtx_status nusselt_cross_flow_power_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_cross_flow_power(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_cross_flow_power_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, const double *surface_prandtl,
        ptrdiff_t surface_prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reynolds, reynolds_stride }, { prandtl, prandtl_stride },
        { surface_prandtl, surface_prandtl_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_cross_flow_power_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status nusselt_sphere_in_stream_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_sphere_in_stream(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_sphere_in_stream_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, const double *viscosity_ratio,
        ptrdiff_t viscosity_ratio_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { reynolds, reynolds_stride }, { prandtl, prandtl_stride },
        { viscosity_ratio, viscosity_ratio_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_sphere_in_stream_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status nusselt_plate_in_stream_item(const struct batch *b, size_t i)
{
    double nusselt_room;
    double *const nusselt = batch_place(b, 0, i, &nusselt_room, sizeof nusselt_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_plate_in_stream(batch_get(b, 0, i), batch_get(b, 1, i), nusselt);
    batch_move(b, 0, i, nusselt, &nusselt_room, sizeof nusselt_room);
    return answer;
}

vtx_status vtx_nusselt_plate_in_stream_batch(size_t n, const double *reynolds, ptrdiff_t reynolds_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *nusselt, ptrdiff_t nusselt_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { reynolds, reynolds_stride }, { prandtl, prandtl_stride } };
    const struct batch_output out[] = { { nusselt, nusselt_stride, 0, sizeof *nusselt } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_plate_in_stream_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status nusselt_mixed_item(const struct batch *b, size_t i)
{
    double assisting_room;
    double *const assisting = batch_place(b, 0, i, &assisting_room, sizeof assisting_room, _Alignof(double));
    double opposing_room;
    double *const opposing = batch_place(b, 1, i, &opposing_room, sizeof opposing_room, _Alignof(double));
    const vtx_status answer = vtx_nusselt_mixed(batch_get(b, 0, i), batch_get(b, 1, i), assisting, opposing);
    batch_move(b, 0, i, assisting, &assisting_room, sizeof assisting_room);
    batch_move(b, 1, i, opposing, &opposing_room, sizeof opposing_room);
    return answer;
}

vtx_status vtx_nusselt_mixed_batch(size_t n, const double *forced, ptrdiff_t forced_stride, const double *natural,
        ptrdiff_t natural_stride, double *assisting, ptrdiff_t assisting_stride, double *opposing,
        ptrdiff_t opposing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { forced, forced_stride }, { natural, natural_stride } };
    const struct batch_output out[] = { { assisting, assisting_stride, 0, sizeof *assisting },
        { opposing, opposing_stride, 1, sizeof *opposing } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, nusselt_mixed_item, status, failed);
}

static ALWAYS_INLINE vtx_status radiation_coefficient_item(const struct batch *b, size_t i)
{
    double coefficient_room;
    double *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_radiation_coefficient(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_radiation_coefficient_batch(size_t n, const double *emissivity, ptrdiff_t emissivity_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride,
        const double *surroundings_temperature, ptrdiff_t surroundings_temperature_stride, double *coefficient,
        ptrdiff_t coefficient_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { emissivity, emissivity_stride },
        { surface_temperature, surface_temperature_stride },
        { surroundings_temperature, surroundings_temperature_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, radiation_coefficient_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status horizontal_pipe_coefficient_item(const struct batch *b, size_t i)
{
    double coefficient_room;
    double *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_horizontal_pipe_coefficient(batch_get(b, 0, i), batch_get(b, 1, i), coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_horizontal_pipe_coefficient_batch(size_t n, const double *finish_constant,
        ptrdiff_t finish_constant_stride, const double *temperature_difference,
        ptrdiff_t temperature_difference_stride, double *coefficient, ptrdiff_t coefficient_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { finish_constant, finish_constant_stride },
        { temperature_difference, temperature_difference_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, horizontal_pipe_coefficient_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status vertical_pipe_coefficient_item(const struct batch *b, size_t i)
{
    double coefficient_room;
    double *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_vertical_pipe_coefficient(batch_get(b, 0, i), batch_get(b, 1, i), coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_vertical_pipe_coefficient_batch(size_t n, const double *finish_constant,
        ptrdiff_t finish_constant_stride, const double *temperature_difference,
        ptrdiff_t temperature_difference_stride, double *coefficient, ptrdiff_t coefficient_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { finish_constant, finish_constant_stride },
        { temperature_difference, temperature_difference_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, vertical_pipe_coefficient_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status room_coefficient_item(const struct batch *b, size_t i)
{
    vtx_surface_coefficient coefficient_room;
    vtx_surface_coefficient *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room,
        _Alignof(vtx_surface_coefficient));
    const vtx_status answer = vtx_room_coefficient(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i),
        coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_room_coefficient_batch(size_t n, int32_t body, const double *pressure, ptrdiff_t pressure_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *air_speed, ptrdiff_t air_speed_stride, const double *length,
        ptrdiff_t length_stride, const double *emissivity, ptrdiff_t emissivity_stride,
        const double *surroundings_temperature, ptrdiff_t surroundings_temperature_stride,
        vtx_surface_coefficient *coefficient, ptrdiff_t coefficient_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride },
        { surface_temperature, surface_temperature_stride }, { air_temperature, air_temperature_stride },
        { air_speed, air_speed_stride }, { length, length_stride }, { emissivity, emissivity_stride },
        { surroundings_temperature, surroundings_temperature_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    const int32_t selector[] = { body };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, room_coefficient_item, status, failed);
}
