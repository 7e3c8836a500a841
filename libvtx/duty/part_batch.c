/* Batch forms of part.h. Written by build-aux/generate. */
#include <vtx/part.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status cooling_duty_item(const struct batch *b, size_t i)
{
    double heat_flow_room;
    double *const heat_flow = batch_place(b, 0, i, &heat_flow_room, sizeof heat_flow_room, _Alignof(double));
    const vtx_status answer = vtx_cooling_duty(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), heat_flow);
    batch_move(b, 0, i, heat_flow, &heat_flow_room, sizeof heat_flow_room);
    return answer;
}

vtx_status vtx_cooling_duty_batch(size_t n, const double *mass, ptrdiff_t mass_stride, const double *heat_capacity,
        ptrdiff_t heat_capacity_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *end_temperature, ptrdiff_t end_temperature_stride, const double *time, ptrdiff_t time_stride,
        double *heat_flow, ptrdiff_t heat_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { mass, mass_stride }, { heat_capacity, heat_capacity_stride },
        { start_temperature, start_temperature_stride }, { end_temperature, end_temperature_stride },
        { time, time_stride } };
    const struct batch_output out[] = { { heat_flow, heat_flow_stride, 0, sizeof *heat_flow } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cooling_duty_item, status, failed);
}

static ALWAYS_INLINE vtx_status biot_number_item(const struct batch *b, size_t i)
{
    double biot_room;
    double *const biot = batch_place(b, 0, i, &biot_room, sizeof biot_room, _Alignof(double));
    const vtx_status answer = vtx_biot_number(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i), biot);
    batch_move(b, 0, i, biot, &biot_room, sizeof biot_room);
    return answer;
}

vtx_status vtx_biot_number_batch(size_t n, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *length, ptrdiff_t length_stride, const double *conductivity, ptrdiff_t conductivity_stride,
        double *biot, ptrdiff_t biot_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { film_coefficient, film_coefficient_stride }, { length, length_stride },
        { conductivity, conductivity_stride } };
    const struct batch_output out[] = { { biot, biot_stride, 0, sizeof *biot } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, biot_number_item, status, failed);
}

static ALWAYS_INLINE vtx_status time_constant_item(const struct batch *b, size_t i)
{
    double time_constant_room;
    double *const time_constant = batch_place(b, 0, i, &time_constant_room, sizeof time_constant_room,
        _Alignof(double));
    const vtx_status answer = vtx_time_constant(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), time_constant);
    batch_move(b, 0, i, time_constant, &time_constant_room, sizeof time_constant_room);
    return answer;
}

vtx_status vtx_time_constant_batch(size_t n, const double *mass, ptrdiff_t mass_stride, const double *heat_capacity,
        ptrdiff_t heat_capacity_stride, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *area, ptrdiff_t area_stride, double *time_constant, ptrdiff_t time_constant_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { mass, mass_stride }, { heat_capacity, heat_capacity_stride },
        { film_coefficient, film_coefficient_stride }, { area, area_stride } };
    const struct batch_output out[] = { { time_constant, time_constant_stride, 0, sizeof *time_constant } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, time_constant_item, status, failed);
}

static ALWAYS_INLINE vtx_status part_temperature_item(const struct batch *b, size_t i)
{
    vtx_part part_room;
    const vtx_part *const part = batch_record(b, 0, i, &part_room, sizeof part_room, _Alignof(vtx_part));
    vtx_part_state state_room;
    vtx_part_state *const state = batch_place(b, 0, i, &state_room, sizeof state_room, _Alignof(vtx_part_state));
    const vtx_status answer = vtx_part_temperature(part, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), state);
    batch_move(b, 0, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_part_temperature_batch(size_t n, const vtx_part *part, ptrdiff_t part_stride,
        const double *film_coefficient, ptrdiff_t film_coefficient_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *time, ptrdiff_t time_stride, vtx_part_state *state, ptrdiff_t state_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { part, part_stride, 1 }, { film_coefficient, film_coefficient_stride },
        { air_temperature, air_temperature_stride }, { start_temperature, start_temperature_stride },
        { time, time_stride } };
    const struct batch_output out[] = { { state, state_stride, 0, sizeof *state } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, part_temperature_item, status, failed);
}

static ALWAYS_INLINE vtx_status part_cooling_time_item(const struct batch *b, size_t i)
{
    vtx_part part_room;
    const vtx_part *const part = batch_record(b, 0, i, &part_room, sizeof part_room, _Alignof(vtx_part));
    vtx_cooling_time cooling_room;
    vtx_cooling_time *const cooling = batch_place(b, 0, i, &cooling_room, sizeof cooling_room,
        _Alignof(vtx_cooling_time));
    const vtx_status answer = vtx_part_cooling_time(part, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), cooling);
    batch_move(b, 0, i, cooling, &cooling_room, sizeof cooling_room);
    return answer;
}

vtx_status vtx_part_cooling_time_batch(size_t n, const vtx_part *part, ptrdiff_t part_stride,
        const double *film_coefficient, ptrdiff_t film_coefficient_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *start_temperature, ptrdiff_t start_temperature_stride,
        const double *wanted_temperature, ptrdiff_t wanted_temperature_stride, vtx_cooling_time *cooling,
        ptrdiff_t cooling_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { part, part_stride, 1 }, { film_coefficient, film_coefficient_stride },
        { air_temperature, air_temperature_stride }, { start_temperature, start_temperature_stride },
        { wanted_temperature, wanted_temperature_stride } };
    const struct batch_output out[] = { { cooling, cooling_stride, 0, sizeof *cooling } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, part_cooling_time_item, status, failed);
}

static ALWAYS_INLINE vtx_status part_film_coefficient_item(const struct batch *b, size_t i)
{
    vtx_part part_room;
    const vtx_part *const part = batch_record(b, 0, i, &part_room, sizeof part_room, _Alignof(vtx_part));
    vtx_needed_film needed_room;
    vtx_needed_film *const needed = batch_place(b, 0, i, &needed_room, sizeof needed_room, _Alignof(vtx_needed_film));
    const vtx_status answer = vtx_part_film_coefficient(part, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), needed);
    batch_move(b, 0, i, needed, &needed_room, sizeof needed_room);
    return answer;
}

vtx_status vtx_part_film_coefficient_batch(size_t n, const vtx_part *part, ptrdiff_t part_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        const double *time, ptrdiff_t time_stride, vtx_needed_film *needed, ptrdiff_t needed_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { part, part_stride, 1 }, { air_temperature, air_temperature_stride },
        { start_temperature, start_temperature_stride }, { wanted_temperature, wanted_temperature_stride },
        { time, time_stride } };
    const struct batch_output out[] = { { needed, needed_stride, 0, sizeof *needed } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, part_film_coefficient_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status face_temperature_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_face_temperature(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_face_temperature_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *film_coefficient, ptrdiff_t film_coefficient_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *emissivity, ptrdiff_t emissivity_stride,
        const double *surroundings_temperature, ptrdiff_t surroundings_temperature_stride, double *temperature,
        ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_flux, heat_flux_stride }, { film_coefficient, film_coefficient_stride },
        { air_temperature, air_temperature_stride }, { emissivity, emissivity_stride },
        { surroundings_temperature, surroundings_temperature_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, face_temperature_item, status, failed);
}

static ALWAYS_INLINE vtx_status face_film_coefficient_item(const struct batch *b, size_t i)
{
    double film_coefficient_room;
    double *const film_coefficient = batch_place(b, 0, i, &film_coefficient_room, sizeof film_coefficient_room,
        _Alignof(double));
    const vtx_status answer = vtx_face_film_coefficient(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        film_coefficient);
    batch_move(b, 0, i, film_coefficient, &film_coefficient_room, sizeof film_coefficient_room);
    return answer;
}

vtx_status vtx_face_film_coefficient_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, const double *wanted_temperature,
        ptrdiff_t wanted_temperature_stride, double *film_coefficient, ptrdiff_t film_coefficient_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_flux, heat_flux_stride }, { air_temperature, air_temperature_stride },
        { wanted_temperature, wanted_temperature_stride } };
    const struct batch_output out[] = { { film_coefficient, film_coefficient_stride, 0, sizeof *film_coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, face_film_coefficient_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status radiating_part_time_item(const struct batch *b, size_t i)
{
    double time_room;
    double *const time = batch_place(b, 0, i, &time_room, sizeof time_room, _Alignof(double));
    const vtx_status answer = vtx_radiating_part_time(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), time);
    batch_move(b, 0, i, time, &time_room, sizeof time_room);
    return answer;
}

vtx_status vtx_radiating_part_time_batch(size_t n, const double *areal_heat_capacity,
        ptrdiff_t areal_heat_capacity_stride, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *air_temperature, ptrdiff_t air_temperature_stride, const double *emissivity,
        ptrdiff_t emissivity_stride, const double *surroundings_temperature,
        ptrdiff_t surroundings_temperature_stride, const double *start_temperature,
        ptrdiff_t start_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        double *time, ptrdiff_t time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { areal_heat_capacity, areal_heat_capacity_stride },
        { film_coefficient, film_coefficient_stride }, { air_temperature, air_temperature_stride },
        { emissivity, emissivity_stride }, { surroundings_temperature, surroundings_temperature_stride },
        { start_temperature, start_temperature_stride }, { wanted_temperature, wanted_temperature_stride } };
    const struct batch_output out[] = { { time, time_stride, 0, sizeof *time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, radiating_part_time_item, status, failed);
}

static ALWAYS_INLINE vtx_status thermal_growth_item(const struct batch *b, size_t i)
{
    double growth_room;
    double *const growth = batch_place(b, 0, i, &growth_room, sizeof growth_room, _Alignof(double));
    const vtx_status answer = vtx_thermal_growth(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i), growth);
    batch_move(b, 0, i, growth, &growth_room, sizeof growth_room);
    return answer;
}

vtx_status vtx_thermal_growth_batch(size_t n, const double *expansion, ptrdiff_t expansion_stride,
        const double *length, ptrdiff_t length_stride, const double *temperature_change,
        ptrdiff_t temperature_change_stride, double *growth, ptrdiff_t growth_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { expansion, expansion_stride }, { length, length_stride },
        { temperature_change, temperature_change_stride } };
    const struct batch_output out[] = { { growth, growth_stride, 0, sizeof *growth } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, thermal_growth_item, status, failed);
}

static ALWAYS_INLINE vtx_status softening_margin_item(const struct batch *b, size_t i)
{
    vtx_softening softening_room;
    vtx_softening *const softening = batch_place(b, 0, i, &softening_room, sizeof softening_room,
        _Alignof(vtx_softening));
    const vtx_status answer = vtx_softening_margin(b->selector[0], batch_get(b, 0, i), softening);
    batch_move(b, 0, i, softening, &softening_room, sizeof softening_room);
    return answer;
}

vtx_status vtx_softening_margin_batch(size_t n, int32_t material, const double *temperature,
        ptrdiff_t temperature_stride, vtx_softening *softening, ptrdiff_t softening_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { softening, softening_stride, 0, sizeof *softening } };
    const int32_t selector[] = { material };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, softening_margin_item, status, failed);
}
