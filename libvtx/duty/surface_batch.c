/* Batch forms of surface.h. Written by build-aux/generate. */
#include <vtx/surface.h>

#include "../base/batch.h"

static vtx_status judge_surface_item(const struct batch *b, size_t i)
{
    vtx_room room;
    batch_get_bytes(b, 0, i, &room, sizeof room);
    vtx_surface_state state;
    const vtx_status answer = vtx_judge_surface(&room, batch_get(b, 1, i), &state);
    batch_put(b, 0, i, &state, sizeof state);
    return answer;
}

vtx_status vtx_judge_surface_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, vtx_surface_state *state,
        ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { room, room_stride }, { surface_temperature, surface_temperature_stride } };
    const struct batch_output out[] = { { state, state_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, judge_surface_item, status, failed);
}

static vtx_status deposition_rate_item(const struct batch *b, size_t i)
{
    vtx_room room;
    batch_get_bytes(b, 0, i, &room, sizeof room);
    vtx_deposition deposition;
    const vtx_status answer = vtx_deposition_rate(&room, batch_get(b, 1, i), batch_get(b, 2, i), &deposition);
    batch_put(b, 0, i, &deposition, sizeof deposition);
    return answer;
}

vtx_status vtx_deposition_rate_batch(size_t n, const vtx_room *room, ptrdiff_t room_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride,
        const double *convective_coefficient, ptrdiff_t convective_coefficient_stride, vtx_deposition *deposition,
        ptrdiff_t deposition_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { room, room_stride }, { surface_temperature, surface_temperature_stride },
        { convective_coefficient, convective_coefficient_stride } };
    const struct batch_output out[] = { { deposition, deposition_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, deposition_rate_item, status, failed);
}

static vtx_status vapour_diffusivity_item(const struct batch *b, size_t i)
{
    double diffusivity;
    const vtx_status answer = vtx_vapour_diffusivity(batch_get(b, 0, i), batch_get(b, 1, i), &diffusivity);
    batch_put(b, 0, i, &diffusivity, sizeof diffusivity);
    return answer;
}

vtx_status vtx_vapour_diffusivity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *diffusivity, ptrdiff_t diffusivity_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { diffusivity, diffusivity_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, vapour_diffusivity_item, status, failed);
}

static vtx_status mass_transfer_coefficient_item(const struct batch *b, size_t i)
{
    double coefficient;
    const vtx_status answer = vtx_mass_transfer_coefficient(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), &coefficient);
    batch_put(b, 0, i, &coefficient, sizeof coefficient);
    return answer;
}

vtx_status vtx_mass_transfer_coefficient_batch(size_t n, const double *convective_coefficient,
        ptrdiff_t convective_coefficient_stride, const double *density, ptrdiff_t density_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *lewis, ptrdiff_t lewis_stride,
        double *coefficient, ptrdiff_t coefficient_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { convective_coefficient, convective_coefficient_stride },
        { density, density_stride }, { heat_capacity, heat_capacity_stride }, { lewis, lewis_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, mass_transfer_coefficient_item, status,
        failed);
}

static vtx_status vapour_flux_item(const struct batch *b, size_t i)
{
    double mass_flux;
    const vtx_status answer = vtx_vapour_flux(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), &mass_flux);
    batch_put(b, 0, i, &mass_flux, sizeof mass_flux);
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
    const struct batch_output out[] = { { mass_flux, mass_flux_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, vapour_flux_item, status, failed);
}

static vtx_status wet_surface_flux_item(const struct batch *b, size_t i)
{
    double heat_flux;
    const vtx_status answer = vtx_wet_surface_flux(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), &heat_flux);
    batch_put(b, 0, i, &heat_flux, sizeof heat_flux);
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
    const struct batch_output out[] = { { heat_flux, heat_flux_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, wet_surface_flux_item, status, failed);
}

static vtx_status evaporation_drop_item(const struct batch *b, size_t i)
{
    double drop;
    const vtx_status answer = vtx_evaporation_drop(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), &drop);
    batch_put(b, 0, i, &drop, sizeof drop);
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
    const struct batch_output out[] = { { drop, drop_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, evaporation_drop_item, status, failed);
}
