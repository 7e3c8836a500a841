/* Batch forms of jet.h. Written by build-aux/generate. */
#include <vtx/jet.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status jet_outlet_at_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    vtx_jet_outlet outlet_room;
    vtx_jet_outlet *const outlet = batch_place(b, 0, i, &outlet_room, sizeof outlet_room, _Alignof(vtx_jet_outlet));
    const vtx_status answer = vtx_jet_outlet_at(jet, outlet);
    batch_move(b, 0, i, outlet, &outlet_room, sizeof outlet_room);
    return answer;
}

vtx_status vtx_jet_outlet_at_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, vtx_jet_outlet *outlet,
        ptrdiff_t outlet_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 } };
    const struct batch_output out[] = { { outlet, outlet_stride, 0, sizeof *outlet } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_outlet_at_item, status, failed);
}

static ALWAYS_INLINE vtx_status jet_at_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    vtx_jet_state state_room;
    vtx_jet_state *const state = batch_place(b, 0, i, &state_room, sizeof state_room, _Alignof(vtx_jet_state));
    const vtx_status answer = vtx_jet_at(jet, batch_get(b, 1, i), state);
    batch_move(b, 0, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_jet_at_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, const double *distance,
        ptrdiff_t distance_stride, vtx_jet_state *state, ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 }, { distance, distance_stride } };
    const struct batch_output out[] = { { state, state_stride, 0, sizeof *state } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_at_item, status, failed);
}

static ALWAYS_INLINE vtx_status jet_distance_for_temperature_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    double distance_room;
    double *const distance = batch_place(b, 0, i, &distance_room, sizeof distance_room, _Alignof(double));
    double attainable_temperature_room;
    double *const attainable_temperature = batch_place(b, 1, i, &attainable_temperature_room,
        sizeof attainable_temperature_room, _Alignof(double));
    const vtx_status answer = vtx_jet_distance_for_temperature(jet, batch_get(b, 1, i), distance,
        attainable_temperature);
    batch_move(b, 0, i, distance, &distance_room, sizeof distance_room);
    batch_move(b, 1, i, attainable_temperature, &attainable_temperature_room, sizeof attainable_temperature_room);
    return answer;
}

vtx_status vtx_jet_distance_for_temperature_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_temperature, ptrdiff_t attainable_temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0, sizeof *distance },
        { attainable_temperature, attainable_temperature_stride, 1, sizeof *attainable_temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_distance_for_temperature_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status jet_distance_for_velocity_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    double distance_room;
    double *const distance = batch_place(b, 0, i, &distance_room, sizeof distance_room, _Alignof(double));
    double attainable_velocity_room;
    double *const attainable_velocity = batch_place(b, 1, i, &attainable_velocity_room,
        sizeof attainable_velocity_room, _Alignof(double));
    const vtx_status answer = vtx_jet_distance_for_velocity(jet, batch_get(b, 1, i), distance, attainable_velocity);
    batch_move(b, 0, i, distance, &distance_room, sizeof distance_room);
    batch_move(b, 1, i, attainable_velocity, &attainable_velocity_room, sizeof attainable_velocity_room);
    return answer;
}

vtx_status vtx_jet_distance_for_velocity_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *velocity, ptrdiff_t velocity_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_velocity, ptrdiff_t attainable_velocity_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 }, { velocity, velocity_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0, sizeof *distance },
        { attainable_velocity, attainable_velocity_stride, 1, sizeof *attainable_velocity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_distance_for_velocity_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status jet_distance_for_impact_pressure_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    double distance_room;
    double *const distance = batch_place(b, 0, i, &distance_room, sizeof distance_room, _Alignof(double));
    double attainable_impact_pressure_room;
    double *const attainable_impact_pressure = batch_place(b, 1, i, &attainable_impact_pressure_room,
        sizeof attainable_impact_pressure_room, _Alignof(double));
    const vtx_status answer = vtx_jet_distance_for_impact_pressure(jet, batch_get(b, 1, i), distance,
        attainable_impact_pressure);
    batch_move(b, 0, i, distance, &distance_room, sizeof distance_room);
    batch_move(b, 1, i, attainable_impact_pressure, &attainable_impact_pressure_room, sizeof attainable_impact_pressure_room);
    return answer;
}

vtx_status vtx_jet_distance_for_impact_pressure_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *impact_pressure, ptrdiff_t impact_pressure_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_impact_pressure, ptrdiff_t attainable_impact_pressure_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 }, { impact_pressure, impact_pressure_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0, sizeof *distance },
        { attainable_impact_pressure, attainable_impact_pressure_stride, 1, sizeof *attainable_impact_pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_distance_for_impact_pressure_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status jet_working_distance_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    double distance_room;
    double *const distance = batch_place(b, 0, i, &distance_room, sizeof distance_room, _Alignof(double));
    const vtx_status answer = vtx_jet_working_distance(jet, batch_get(b, 1, i), batch_get(b, 2, i), distance);
    batch_move(b, 0, i, distance, &distance_room, sizeof distance_room);
    return answer;
}

vtx_status vtx_jet_working_distance_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *temperature_share, ptrdiff_t temperature_share_stride, const double *impact_pressure,
        ptrdiff_t impact_pressure_stride, double *distance, ptrdiff_t distance_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 }, { temperature_share, temperature_share_stride },
        { impact_pressure, impact_pressure_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0, sizeof *distance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_working_distance_item, status, failed);
}

static ALWAYS_INLINE vtx_status jet_impact_force_item(const struct batch *b, size_t i)
{
    vtx_jet jet_room;
    const vtx_jet *const jet = batch_record(b, 0, i, &jet_room, sizeof jet_room, _Alignof(vtx_jet));
    double force_room;
    double *const force = batch_place(b, 0, i, &force_room, sizeof force_room, _Alignof(double));
    const vtx_status answer = vtx_jet_impact_force(jet, batch_get(b, 1, i), batch_get(b, 2, i), force);
    batch_move(b, 0, i, force, &force_room, sizeof force_room);
    return answer;
}

vtx_status vtx_jet_impact_force_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, const double *distance,
        ptrdiff_t distance_stride, const double *face_area, ptrdiff_t face_area_stride, double *force,
        ptrdiff_t force_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride, 1 }, { distance, distance_stride },
        { face_area, face_area_stride } };
    const struct batch_output out[] = { { force, force_stride, 0, sizeof *force } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_impact_force_item, status, failed);
}
