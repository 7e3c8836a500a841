/* Batch forms of noise.h. Written by build-aux/generate. */
#include <vtx/noise.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status level_of_several_item(const struct batch *b, size_t i)
{
    double sum_room;
    double *const sum = batch_place(b, 0, i, &sum_room, sizeof sum_room, _Alignof(double));
    const vtx_status answer = vtx_level_of_several(batch_get(b, 0, i), b->selector[0], sum);
    batch_move(b, 0, i, sum, &sum_room, sizeof sum_room);
    return answer;
}

vtx_status vtx_level_of_several_batch(size_t n, const double *level, ptrdiff_t level_stride, int32_t count,
        double *sum, ptrdiff_t sum_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride } };
    const struct batch_output out[] = { { sum, sum_stride, 0, sizeof *sum } };
    const int32_t selector[] = { count };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, level_of_several_item, status, failed);
}

static ALWAYS_INLINE vtx_status level_without_background_item(const struct batch *b, size_t i)
{
    double source_room;
    double *const source = batch_place(b, 0, i, &source_room, sizeof source_room, _Alignof(double));
    const vtx_status answer = vtx_level_without_background(batch_get(b, 0, i), batch_get(b, 1, i), source);
    batch_move(b, 0, i, source, &source_room, sizeof source_room);
    return answer;
}

vtx_status vtx_level_without_background_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *background, ptrdiff_t background_stride, double *source, ptrdiff_t source_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { background, background_stride } };
    const struct batch_output out[] = { { source, source_stride, 0, sizeof *source } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, level_without_background_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status level_at_distance_item(const struct batch *b, size_t i)
{
    double level_there_room;
    double *const level_there = batch_place(b, 0, i, &level_there_room, sizeof level_there_room, _Alignof(double));
    const vtx_status answer = vtx_level_at_distance(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        level_there);
    batch_move(b, 0, i, level_there, &level_there_room, sizeof level_there_room);
    return answer;
}

vtx_status vtx_level_at_distance_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *distance,
        ptrdiff_t distance_stride, double *level_there, ptrdiff_t level_there_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { rated_distance, rated_distance_stride },
        { distance, distance_stride } };
    const struct batch_output out[] = { { level_there, level_there_stride, 0, sizeof *level_there } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, level_at_distance_item, status, failed);
}

static ALWAYS_INLINE vtx_status distance_for_level_item(const struct batch *b, size_t i)
{
    double distance_room;
    double *const distance = batch_place(b, 0, i, &distance_room, sizeof distance_room, _Alignof(double));
    const vtx_status answer = vtx_distance_for_level(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        distance);
    batch_move(b, 0, i, distance, &distance_room, sizeof distance_room);
    return answer;
}

vtx_status vtx_distance_for_level_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *wanted_level,
        ptrdiff_t wanted_level_stride, double *distance, ptrdiff_t distance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { rated_distance, rated_distance_stride },
        { wanted_level, wanted_level_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0, sizeof *distance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, distance_for_level_item, status, failed);
}

static ALWAYS_INLINE vtx_status sound_power_level_item(const struct batch *b, size_t i)
{
    double power_level_room;
    double *const power_level = batch_place(b, 0, i, &power_level_room, sizeof power_level_room, _Alignof(double));
    const vtx_status answer = vtx_sound_power_level(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        power_level);
    batch_move(b, 0, i, power_level, &power_level_room, sizeof power_level_room);
    return answer;
}

vtx_status vtx_sound_power_level_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *directivity,
        ptrdiff_t directivity_stride, double *power_level, ptrdiff_t power_level_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { rated_distance, rated_distance_stride },
        { directivity, directivity_stride } };
    const struct batch_output out[] = { { power_level, power_level_stride, 0, sizeof *power_level } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, sound_power_level_item, status, failed);
}

static ALWAYS_INLINE vtx_status room_constant_item(const struct batch *b, size_t i)
{
    double room_constant_room;
    double *const room_constant = batch_place(b, 0, i, &room_constant_room, sizeof room_constant_room,
        _Alignof(double));
    const vtx_status answer = vtx_room_constant(batch_get(b, 0, i), batch_get(b, 1, i), room_constant);
    batch_move(b, 0, i, room_constant, &room_constant_room, sizeof room_constant_room);
    return answer;
}

vtx_status vtx_room_constant_batch(size_t n, const double *area, ptrdiff_t area_stride, const double *absorption,
        ptrdiff_t absorption_stride, double *room_constant, ptrdiff_t room_constant_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { area, area_stride }, { absorption, absorption_stride } };
    const struct batch_output out[] = { { room_constant, room_constant_stride, 0, sizeof *room_constant } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, room_constant_item, status, failed);
}

static ALWAYS_INLINE vtx_status level_in_room_item(const struct batch *b, size_t i)
{
    double level_there_room;
    double *const level_there = batch_place(b, 0, i, &level_there_room, sizeof level_there_room, _Alignof(double));
    const vtx_status answer = vtx_level_in_room(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), level_there);
    batch_move(b, 0, i, level_there, &level_there_room, sizeof level_there_room);
    return answer;
}

vtx_status vtx_level_in_room_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *distance,
        ptrdiff_t distance_stride, const double *directivity, ptrdiff_t directivity_stride,
        const double *room_constant, ptrdiff_t room_constant_stride, double *level_there,
        ptrdiff_t level_there_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { rated_distance, rated_distance_stride },
        { distance, distance_stride }, { directivity, directivity_stride }, { room_constant, room_constant_stride } };
    const struct batch_output out[] = { { level_there, level_there_stride, 0, sizeof *level_there } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, level_in_room_item, status, failed);
}

static ALWAYS_INLINE vtx_status distance_in_room_item(const struct batch *b, size_t i)
{
    double distance_room;
    double *const distance = batch_place(b, 0, i, &distance_room, sizeof distance_room, _Alignof(double));
    const vtx_status answer = vtx_distance_in_room(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), distance);
    batch_move(b, 0, i, distance, &distance_room, sizeof distance_room);
    return answer;
}

vtx_status vtx_distance_in_room_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *rated_distance, ptrdiff_t rated_distance_stride, const double *wanted_level,
        ptrdiff_t wanted_level_stride, const double *directivity, ptrdiff_t directivity_stride,
        const double *room_constant, ptrdiff_t room_constant_stride, double *distance, ptrdiff_t distance_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { rated_distance, rated_distance_stride },
        { wanted_level, wanted_level_stride }, { directivity, directivity_stride },
        { room_constant, room_constant_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0, sizeof *distance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, distance_in_room_item, status, failed);
}

static ALWAYS_INLINE vtx_status reverberation_distance_item(const struct batch *b, size_t i)
{
    double distance_room;
    double *const distance = batch_place(b, 0, i, &distance_room, sizeof distance_room, _Alignof(double));
    const vtx_status answer = vtx_reverberation_distance(batch_get(b, 0, i), batch_get(b, 1, i), distance);
    batch_move(b, 0, i, distance, &distance_room, sizeof distance_room);
    return answer;
}

vtx_status vtx_reverberation_distance_batch(size_t n, const double *directivity, ptrdiff_t directivity_stride,
        const double *room_constant, ptrdiff_t room_constant_stride, double *distance, ptrdiff_t distance_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { directivity, directivity_stride }, { room_constant, room_constant_stride } };
    const struct batch_output out[] = { { distance, distance_stride, 0, sizeof *distance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, reverberation_distance_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status attenuation_needed_item(const struct batch *b, size_t i)
{
    double attenuation_room;
    double *const attenuation = batch_place(b, 0, i, &attenuation_room, sizeof attenuation_room, _Alignof(double));
    const vtx_status answer = vtx_attenuation_needed(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        attenuation);
    batch_move(b, 0, i, attenuation, &attenuation_room, sizeof attenuation_room);
    return answer;
}

vtx_status vtx_attenuation_needed_batch(size_t n, const double *level, ptrdiff_t level_stride,
        const double *background, ptrdiff_t background_stride, const double *permissible,
        ptrdiff_t permissible_stride, double *attenuation, ptrdiff_t attenuation_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { level, level_stride }, { background, background_stride },
        { permissible, permissible_stride } };
    const struct batch_output out[] = { { attenuation, attenuation_stride, 0, sizeof *attenuation } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, attenuation_needed_item, status, failed);
}
