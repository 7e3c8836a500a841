/* Batch forms of transient.h. Written by build-aux/generate. */
#include <vtx/transient.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status transient_eigenvalue_item(const struct batch *b, size_t i)
{
    double eigenvalue_room;
    double *const eigenvalue = batch_place(b, 0, i, &eigenvalue_room, sizeof eigenvalue_room, _Alignof(double));
    double coefficient_room;
    double *const coefficient = batch_place(b, 1, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_transient_eigenvalue(b->selector[0], batch_get(b, 0, i), eigenvalue, coefficient);
    batch_move(b, 0, i, eigenvalue, &eigenvalue_room, sizeof eigenvalue_room);
    batch_move(b, 1, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_transient_eigenvalue_batch(size_t n, int32_t body, const double *biot, ptrdiff_t biot_stride,
        double *eigenvalue, ptrdiff_t eigenvalue_stride, double *coefficient, ptrdiff_t coefficient_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { biot, biot_stride } };
    const struct batch_output out[] = { { eigenvalue, eigenvalue_stride, 0, sizeof *eigenvalue },
        { coefficient, coefficient_stride, 1, sizeof *coefficient } };
    const int32_t selector[] = { body };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, transient_eigenvalue_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status transient_shares_item(const struct batch *b, size_t i)
{
    vtx_transient transient_room;
    vtx_transient *const transient = batch_place(b, 0, i, &transient_room, sizeof transient_room,
        _Alignof(vtx_transient));
    const vtx_status answer = vtx_transient_shares(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), transient);
    batch_move(b, 0, i, transient, &transient_room, sizeof transient_room);
    return answer;
}

vtx_status vtx_transient_shares_batch(size_t n, int32_t body, const double *biot, ptrdiff_t biot_stride,
        const double *fourier, ptrdiff_t fourier_stride, const double *position, ptrdiff_t position_stride,
        vtx_transient *transient, ptrdiff_t transient_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { biot, biot_stride }, { fourier, fourier_stride },
        { position, position_stride } };
    const struct batch_output out[] = { { transient, transient_stride, 0, sizeof *transient } };
    const int32_t selector[] = { body };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, transient_shares_item, status, failed);
}

static ALWAYS_INLINE vtx_status transient_fourier_item(const struct batch *b, size_t i)
{
    double fourier_room;
    double *const fourier = batch_place(b, 0, i, &fourier_room, sizeof fourier_room, _Alignof(double));
    const vtx_status answer = vtx_transient_fourier(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), fourier);
    batch_move(b, 0, i, fourier, &fourier_room, sizeof fourier_room);
    return answer;
}

vtx_status vtx_transient_fourier_batch(size_t n, int32_t body, const double *biot, ptrdiff_t biot_stride,
        const double *position, ptrdiff_t position_stride, const double *share, ptrdiff_t share_stride,
        double *fourier, ptrdiff_t fourier_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { biot, biot_stride }, { position, position_stride }, { share, share_stride } };
    const struct batch_output out[] = { { fourier, fourier_stride, 0, sizeof *fourier } };
    const int32_t selector[] = { body };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, transient_fourier_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status body_temperatures_item(const struct batch *b, size_t i)
{
    vtx_body_state state_room;
    vtx_body_state *const state = batch_place(b, 0, i, &state_room, sizeof state_room, _Alignof(vtx_body_state));
    const vtx_status answer = vtx_body_temperatures(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i),
        batch_get(b, 7, i), state);
    batch_move(b, 0, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_body_temperatures_batch(size_t n, int32_t body, const double *half_thickness,
        ptrdiff_t half_thickness_stride, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *diffusivity, ptrdiff_t diffusivity_stride, const double *film_coefficient,
        ptrdiff_t film_coefficient_stride, const double *air_temperature, ptrdiff_t air_temperature_stride,
        const double *start_temperature, ptrdiff_t start_temperature_stride, const double *position,
        ptrdiff_t position_stride, const double *time, ptrdiff_t time_stride, vtx_body_state *state,
        ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { half_thickness, half_thickness_stride },
        { conductivity, conductivity_stride }, { diffusivity, diffusivity_stride },
        { film_coefficient, film_coefficient_stride }, { air_temperature, air_temperature_stride },
        { start_temperature, start_temperature_stride }, { position, position_stride }, { time, time_stride } };
    const struct batch_output out[] = { { state, state_stride, 0, sizeof *state } };
    const int32_t selector[] = { body };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, body_temperatures_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status body_time_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_body_time(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i),
        batch_get(b, 7, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_body_time_batch(size_t n, int32_t body, const double *half_thickness, ptrdiff_t half_thickness_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *diffusivity,
        ptrdiff_t diffusivity_stride, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        const double *position, ptrdiff_t position_stride, double *time, ptrdiff_t time_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { half_thickness, half_thickness_stride },
        { conductivity, conductivity_stride }, { diffusivity, diffusivity_stride },
        { film_coefficient, film_coefficient_stride }, { air_temperature, air_temperature_stride },
        { start_temperature, start_temperature_stride }, { wanted_temperature, wanted_temperature_stride },
        { position, position_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    const int32_t selector[] = { body };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, body_time_item, status, failed);
}

static ALWAYS_INLINE vtx_status depth_temperature_fixed_surface_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_depth_temperature_fixed_surface(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_depth_temperature_fixed_surface_batch(size_t n, const double *diffusivity,
        ptrdiff_t diffusivity_stride, const double *depth, ptrdiff_t depth_stride, const double *time,
        ptrdiff_t time_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *surface_temperature, ptrdiff_t surface_temperature_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { diffusivity, diffusivity_stride }, { depth, depth_stride },
        { time, time_stride }, { start_temperature, start_temperature_stride },
        { surface_temperature, surface_temperature_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, depth_temperature_fixed_surface_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status penetration_depth_item(const struct batch *b, size_t i)
{
    double depth_room;
    double *const depth = batch_place(b, 0, i, &depth_room, sizeof depth_room, _Alignof(double));
    const vtx_status answer = vtx_penetration_depth(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), depth);
    batch_move(b, 0, i, depth, &depth_room, sizeof depth_room);
    return answer;
}

vtx_status vtx_penetration_depth_batch(size_t n, const double *diffusivity, ptrdiff_t diffusivity_stride,
        const double *time, ptrdiff_t time_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, const double *surface_temperature, ptrdiff_t surface_temperature_stride,
        const double *wanted_temperature, ptrdiff_t wanted_temperature_stride, double *depth, ptrdiff_t depth_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { diffusivity, diffusivity_stride }, { time, time_stride },
        { start_temperature, start_temperature_stride }, { surface_temperature, surface_temperature_stride },
        { wanted_temperature, wanted_temperature_stride } };
    const struct batch_output out[] = { { depth, depth_stride, 0, sizeof *depth } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, penetration_depth_item, status, failed);
}

static ALWAYS_INLINE vtx_status depth_temperature_fixed_flux_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_depth_temperature_fixed_flux(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_depth_temperature_fixed_flux_batch(size_t n, const double *conductivity,
        ptrdiff_t conductivity_stride, const double *diffusivity, ptrdiff_t diffusivity_stride,
        const double *heat_flux, ptrdiff_t heat_flux_stride, const double *depth, ptrdiff_t depth_stride,
        const double *time, ptrdiff_t time_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, double *temperature, ptrdiff_t temperature_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { conductivity, conductivity_stride }, { diffusivity, diffusivity_stride },
        { heat_flux, heat_flux_stride }, { depth, depth_stride }, { time, time_stride },
        { start_temperature, start_temperature_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, depth_temperature_fixed_flux_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status depth_temperature_in_stream_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_depth_temperature_in_stream(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i),
        temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_depth_temperature_in_stream_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *diffusivity, ptrdiff_t diffusivity_stride, const double *film_coefficient,
        ptrdiff_t film_coefficient_stride, const double *depth, ptrdiff_t depth_stride, const double *time,
        ptrdiff_t time_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { conductivity, conductivity_stride }, { diffusivity, diffusivity_stride },
        { film_coefficient, film_coefficient_stride }, { depth, depth_stride }, { time, time_stride },
        { start_temperature, start_temperature_stride }, { air_temperature, air_temperature_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, depth_temperature_in_stream_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status depth_time_in_stream_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_depth_time_in_stream(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_depth_time_in_stream_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *diffusivity, ptrdiff_t diffusivity_stride, const double *film_coefficient,
        ptrdiff_t film_coefficient_stride, const double *depth, ptrdiff_t depth_stride,
        const double *start_temperature, ptrdiff_t start_temperature_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        double *time, ptrdiff_t time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { conductivity, conductivity_stride }, { diffusivity, diffusivity_stride },
        { film_coefficient, film_coefficient_stride }, { depth, depth_stride },
        { start_temperature, start_temperature_stride }, { air_temperature, air_temperature_stride },
        { wanted_temperature, wanted_temperature_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, depth_time_in_stream_item, status, failed);
}

static ALWAYS_INLINE vtx_status depth_temperature_pulse_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_depth_temperature_pulse(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_depth_temperature_pulse_batch(size_t n, const double *volumetric_heat_capacity,
        ptrdiff_t volumetric_heat_capacity_stride, const double *diffusivity, ptrdiff_t diffusivity_stride,
        const double *energy, ptrdiff_t energy_stride, const double *depth, ptrdiff_t depth_stride,
        const double *time, ptrdiff_t time_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, double *temperature, ptrdiff_t temperature_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { volumetric_heat_capacity, volumetric_heat_capacity_stride },
        { diffusivity, diffusivity_stride }, { energy, energy_stride }, { depth, depth_stride },
        { time, time_stride }, { start_temperature, start_temperature_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, depth_temperature_pulse_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status thermal_diffusivity_item(const struct batch *b, size_t i)
{
    double diffusivity_room;
    double *const diffusivity = batch_place(b, 0, i, &diffusivity_room, sizeof diffusivity_room, _Alignof(double));
    const vtx_status answer = vtx_thermal_diffusivity(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        diffusivity);
    batch_move(b, 0, i, diffusivity, &diffusivity_room, sizeof diffusivity_room);
    return answer;
}

vtx_status vtx_thermal_diffusivity_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *density, ptrdiff_t density_stride, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        double *diffusivity, ptrdiff_t diffusivity_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { conductivity, conductivity_stride }, { density, density_stride },
        { heat_capacity, heat_capacity_stride } };
    const struct batch_output out[] = { { diffusivity, diffusivity_stride, 0, sizeof *diffusivity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, thermal_diffusivity_item, status, failed);
}

static ALWAYS_INLINE vtx_status thermal_effusivity_item(const struct batch *b, size_t i)
{
    double effusivity_room;
    double *const effusivity = batch_place(b, 0, i, &effusivity_room, sizeof effusivity_room, _Alignof(double));
    const vtx_status answer = vtx_thermal_effusivity(batch_get(b, 0, i), batch_get(b, 1, i), effusivity);
    batch_move(b, 0, i, effusivity, &effusivity_room, sizeof effusivity_room);
    return answer;
}

vtx_status vtx_thermal_effusivity_batch(size_t n, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *diffusivity, ptrdiff_t diffusivity_stride, double *effusivity, ptrdiff_t effusivity_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { conductivity, conductivity_stride }, { diffusivity, diffusivity_stride } };
    const struct batch_output out[] = { { effusivity, effusivity_stride, 0, sizeof *effusivity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, thermal_effusivity_item, status, failed);
}

static ALWAYS_INLINE vtx_status contact_temperature_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_contact_temperature(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_contact_temperature_batch(size_t n, const double *first_effusivity, ptrdiff_t first_effusivity_stride,
        const double *first_temperature, ptrdiff_t first_temperature_stride, const double *second_effusivity,
        ptrdiff_t second_effusivity_stride, const double *second_temperature, ptrdiff_t second_temperature_stride,
        double *temperature, ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { first_effusivity, first_effusivity_stride },
        { first_temperature, first_temperature_stride }, { second_effusivity, second_effusivity_stride },
        { second_temperature, second_temperature_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, contact_temperature_item, status, failed);
}
