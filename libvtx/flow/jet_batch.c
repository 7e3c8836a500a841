/* Batch forms of jet.h. Written by build-aux/generate. */
#include <vtx/jet.h>

#include "../base/batch.h"

static vtx_status jet_outlet_at_item(const struct batch *b, size_t i)
{
    vtx_jet jet;
    batch_get_bytes(b, 0, i, &jet, sizeof jet);
    vtx_jet_outlet outlet;
    const vtx_status answer = vtx_jet_outlet_at(&jet, &outlet);
    batch_put(b, 0, i, &outlet, sizeof outlet);
    return answer;
}

vtx_status vtx_jet_outlet_at_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, vtx_jet_outlet *outlet,
        ptrdiff_t outlet_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride } };
    const struct batch_output out[] = { { outlet, outlet_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_outlet_at_item, status, failed);
}

static vtx_status jet_at_item(const struct batch *b, size_t i)
{
    vtx_jet jet;
    batch_get_bytes(b, 0, i, &jet, sizeof jet);
    vtx_jet_state state;
    const vtx_status answer = vtx_jet_at(&jet, batch_get(b, 1, i), &state);
    batch_put(b, 0, i, &state, sizeof state);
    return answer;
}

vtx_status vtx_jet_at_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, const double *distance,
        ptrdiff_t distance_stride, vtx_jet_state *state, ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride }, { distance, distance_stride } };
    const struct batch_output out[] = { { state, state_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_at_item, status, failed);
}

static vtx_status jet_distance_for_temperature_item(const struct batch *b, size_t i)
{
    vtx_jet jet;
    batch_get_bytes(b, 0, i, &jet, sizeof jet);
    double distance;
    double attainable_temperature;
    const vtx_status answer = vtx_jet_distance_for_temperature(&jet, batch_get(b, 1, i), &distance,
        &attainable_temperature);
    batch_put(b, 0, i, &distance, sizeof distance);
    batch_put(b, 1, i, &attainable_temperature, sizeof attainable_temperature);
    return answer;
}

vtx_status vtx_jet_distance_for_temperature_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_temperature, ptrdiff_t attainable_temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0 },
        { attainable_temperature, attainable_temperature_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_distance_for_temperature_item,
        status, failed);
}

static vtx_status jet_distance_for_velocity_item(const struct batch *b, size_t i)
{
    vtx_jet jet;
    batch_get_bytes(b, 0, i, &jet, sizeof jet);
    double distance;
    double attainable_velocity;
    const vtx_status answer = vtx_jet_distance_for_velocity(&jet, batch_get(b, 1, i), &distance, &attainable_velocity);
    batch_put(b, 0, i, &distance, sizeof distance);
    batch_put(b, 1, i, &attainable_velocity, sizeof attainable_velocity);
    return answer;
}

vtx_status vtx_jet_distance_for_velocity_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *velocity, ptrdiff_t velocity_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_velocity, ptrdiff_t attainable_velocity_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride }, { velocity, velocity_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0 },
        { attainable_velocity, attainable_velocity_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_distance_for_velocity_item, status,
        failed);
}

static vtx_status jet_distance_for_impact_pressure_item(const struct batch *b, size_t i)
{
    vtx_jet jet;
    batch_get_bytes(b, 0, i, &jet, sizeof jet);
    double distance;
    double attainable_impact_pressure;
    const vtx_status answer = vtx_jet_distance_for_impact_pressure(&jet, batch_get(b, 1, i), &distance,
        &attainable_impact_pressure);
    batch_put(b, 0, i, &distance, sizeof distance);
    batch_put(b, 1, i, &attainable_impact_pressure, sizeof attainable_impact_pressure);
    return answer;
}

vtx_status vtx_jet_distance_for_impact_pressure_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *impact_pressure, ptrdiff_t impact_pressure_stride, double *distance, ptrdiff_t distance_stride,
        double *attainable_impact_pressure, ptrdiff_t attainable_impact_pressure_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride }, { impact_pressure, impact_pressure_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0 },
        { attainable_impact_pressure, attainable_impact_pressure_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_distance_for_impact_pressure_item,
        status, failed);
}

static vtx_status jet_working_distance_item(const struct batch *b, size_t i)
{
    vtx_jet jet;
    batch_get_bytes(b, 0, i, &jet, sizeof jet);
    double distance;
    const vtx_status answer = vtx_jet_working_distance(&jet, batch_get(b, 1, i), batch_get(b, 2, i), &distance);
    batch_put(b, 0, i, &distance, sizeof distance);
    return answer;
}

vtx_status vtx_jet_working_distance_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride,
        const double *temperature_share, ptrdiff_t temperature_share_stride, const double *impact_pressure,
        ptrdiff_t impact_pressure_stride, double *distance, ptrdiff_t distance_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride }, { temperature_share, temperature_share_stride },
        { impact_pressure, impact_pressure_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_working_distance_item, status, failed);
}

static vtx_status jet_impact_force_item(const struct batch *b, size_t i)
{
    vtx_jet jet;
    batch_get_bytes(b, 0, i, &jet, sizeof jet);
    double force;
    const vtx_status answer = vtx_jet_impact_force(&jet, batch_get(b, 1, i), batch_get(b, 2, i), &force);
    batch_put(b, 0, i, &force, sizeof force);
    return answer;
}

vtx_status vtx_jet_impact_force_batch(size_t n, const vtx_jet *jet, ptrdiff_t jet_stride, const double *distance,
        ptrdiff_t distance_stride, const double *face_area, ptrdiff_t face_area_stride, double *force,
        ptrdiff_t force_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { jet, jet_stride }, { distance, distance_stride },
        { face_area, face_area_stride } };
    const struct batch_output out[] = { { force, force_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jet_impact_force_item, status, failed);
}
