/* Batch forms of surface.h. Written by build-aux/generate. */
#include <vtx/surface.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status judge_surface_item(const struct batch *b, size_t i)
{
    vtx_room room_room;
    const vtx_room *const room = batch_record(b, 0, i, &room_room, sizeof room_room, _Alignof(vtx_room));
    vtx_surface_state state_room;
    vtx_surface_state *const state = batch_place(b, 0, i, &state_room, sizeof state_room, _Alignof(vtx_surface_state));
    const vtx_status answer = vtx_judge_surface(room, batch_get(b, 1, i), state);
    batch_move(b, 0, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_judge_surface_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, vtx_surface_state *state,
        ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { room, room_stride, 1 }, { surface_temperature, surface_temperature_stride } };
    const struct batch_output out[] = { { state, state_stride, 0, sizeof *state } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, judge_surface_item, status, failed);
}

static ALWAYS_INLINE vtx_status deposition_rate_item(const struct batch *b, size_t i)
{
    vtx_room room_room;
    const vtx_room *const room = batch_record(b, 0, i, &room_room, sizeof room_room, _Alignof(vtx_room));
    vtx_deposition deposition_room;
    vtx_deposition *const deposition = batch_place(b, 0, i, &deposition_room, sizeof deposition_room,
        _Alignof(vtx_deposition));
    const vtx_status answer = vtx_deposition_rate(room, batch_get(b, 1, i), batch_get(b, 2, i), deposition);
    batch_move(b, 0, i, deposition, &deposition_room, sizeof deposition_room);
    return answer;
}

vtx_status vtx_deposition_rate_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride,
        const double *convective_coefficient, ptrdiff_t convective_coefficient_stride, vtx_deposition *deposition,
        ptrdiff_t deposition_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { room, room_stride, 1 }, { surface_temperature, surface_temperature_stride },
        { convective_coefficient, convective_coefficient_stride } };
    const struct batch_output out[] = { { deposition, deposition_stride, 0, sizeof *deposition } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, deposition_rate_item, status, failed);
}

static ALWAYS_INLINE vtx_status vapour_diffusivity_item(const struct batch *b, size_t i)
{
    double diffusivity_room;
    double *const diffusivity = batch_place(b, 0, i, &diffusivity_room, sizeof diffusivity_room, _Alignof(double));
    const vtx_status answer = vtx_vapour_diffusivity(batch_get(b, 0, i), batch_get(b, 1, i), diffusivity);
    batch_move(b, 0, i, diffusivity, &diffusivity_room, sizeof diffusivity_room);
    return answer;
}

vtx_status vtx_vapour_diffusivity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *diffusivity, ptrdiff_t diffusivity_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { diffusivity, diffusivity_stride, 0, sizeof *diffusivity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, vapour_diffusivity_item, status, failed);
}

static ALWAYS_INLINE vtx_status mass_transfer_coefficient_item(const struct batch *b, size_t i)
{
    double coefficient_room;
    double *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_mass_transfer_coefficient(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_mass_transfer_coefficient_batch(size_t n, const double *convective_coefficient,
        ptrdiff_t convective_coefficient_stride, const double *density, ptrdiff_t density_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *lewis, ptrdiff_t lewis_stride,
        double *coefficient, ptrdiff_t coefficient_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { convective_coefficient, convective_coefficient_stride },
        { density, density_stride }, { heat_capacity, heat_capacity_stride }, { lewis, lewis_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, mass_transfer_coefficient_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status vapour_flux_item(const struct batch *b, size_t i)
{
    double mass_flux_room;
    double *const mass_flux = batch_place(b, 0, i, &mass_flux_room, sizeof mass_flux_room, _Alignof(double));
    const vtx_status answer = vtx_vapour_flux(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), mass_flux);
    batch_move(b, 0, i, mass_flux, &mass_flux_room, sizeof mass_flux_room);
    return answer;
}

vtx_status vtx_vapour_flux_batch(size_t n, const double *coefficient, ptrdiff_t coefficient_stride,
        const double *air_vapour_pressure, ptrdiff_t air_vapour_pressure_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *surface_vapour_pressure,
        ptrdiff_t surface_vapour_pressure_stride, const double *surface_temperature,
        ptrdiff_t surface_temperature_stride, double *mass_flux, ptrdiff_t mass_flux_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { coefficient, coefficient_stride },
        { air_vapour_pressure, air_vapour_pressure_stride }, { air_temperature, air_temperature_stride },
        { surface_vapour_pressure, surface_vapour_pressure_stride },
        { surface_temperature, surface_temperature_stride } };
    const struct batch_output out[] = { { mass_flux, mass_flux_stride, 0, sizeof *mass_flux } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, vapour_flux_item, status, failed);
}

static ALWAYS_INLINE vtx_status wet_surface_flux_item(const struct batch *b, size_t i)
{
    double heat_flux_room;
    double *const heat_flux = batch_place(b, 0, i, &heat_flux_room, sizeof heat_flux_room, _Alignof(double));
    const vtx_status answer = vtx_wet_surface_flux(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), heat_flux);
    batch_move(b, 0, i, heat_flux, &heat_flux_room, sizeof heat_flux_room);
    return answer;
}

vtx_status vtx_wet_surface_flux_batch(size_t n, const double *convective_coefficient,
        ptrdiff_t convective_coefficient_stride, const double *radiative_coefficient,
        ptrdiff_t radiative_coefficient_stride, const double *air_temperature, ptrdiff_t air_temperature_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, const double *mass_flux,
        ptrdiff_t mass_flux_stride, const double *latent, ptrdiff_t latent_stride, double *heat_flux,
        ptrdiff_t heat_flux_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { convective_coefficient, convective_coefficient_stride },
        { radiative_coefficient, radiative_coefficient_stride }, { air_temperature, air_temperature_stride },
        { surface_temperature, surface_temperature_stride }, { mass_flux, mass_flux_stride },
        { latent, latent_stride } };
    const struct batch_output out[] = { { heat_flux, heat_flux_stride, 0, sizeof *heat_flux } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, wet_surface_flux_item, status, failed);
}

static ALWAYS_INLINE vtx_status evaporation_drop_item(const struct batch *b, size_t i)
{
    double drop_room;
    double *const drop = batch_place(b, 0, i, &drop_room, sizeof drop_room, _Alignof(double));
    const vtx_status answer = vtx_evaporation_drop(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), drop);
    batch_move(b, 0, i, drop, &drop_room, sizeof drop_room);
    return answer;
}

vtx_status vtx_evaporation_drop_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *surface_vapour_pressure, ptrdiff_t surface_vapour_pressure_stride,
        const double *air_vapour_pressure, ptrdiff_t air_vapour_pressure_stride, const double *latent,
        ptrdiff_t latent_stride, const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *lewis,
        ptrdiff_t lewis_stride, double *drop, ptrdiff_t drop_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride },
        { surface_vapour_pressure, surface_vapour_pressure_stride },
        { air_vapour_pressure, air_vapour_pressure_stride }, { latent, latent_stride },
        { heat_capacity, heat_capacity_stride }, { lewis, lewis_stride } };
    const struct batch_output out[] = { { drop, drop_stride, 0, sizeof *drop } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, evaporation_drop_item, status, failed);
}
