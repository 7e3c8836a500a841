/* Batch forms of touch.h. Written by build-aux/generate. */
#include <vtx/touch.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status burn_threshold_item(const struct batch *b, size_t i)
{
    double threshold_low_room;
    double *const threshold_low = batch_place(b, 0, i, &threshold_low_room, sizeof threshold_low_room,
        _Alignof(double));
    double threshold_high_room;
    double *const threshold_high = batch_place(b, 1, i, &threshold_high_room, sizeof threshold_high_room,
        _Alignof(double));
    const vtx_status answer = vtx_burn_threshold(b->selector[0], batch_get(b, 0, i), threshold_low, threshold_high);
    batch_move(b, 0, i, threshold_low, &threshold_low_room, sizeof threshold_low_room);
    batch_move(b, 1, i, threshold_high, &threshold_high_room, sizeof threshold_high_room);
    return answer;
}

vtx_status vtx_burn_threshold_batch(size_t n, int32_t contact_class, const double *contact_time,
        ptrdiff_t contact_time_stride, double *threshold_low, ptrdiff_t threshold_low_stride, double *threshold_high,
        ptrdiff_t threshold_high_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { contact_time, contact_time_stride } };
    const struct batch_output out[] = { { threshold_low, threshold_low_stride, 0, sizeof *threshold_low },
        { threshold_high, threshold_high_stride, 1, sizeof *threshold_high } };
    const int32_t selector[] = { contact_class };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, burn_threshold_item, status, failed);
}

static ALWAYS_INLINE vtx_status touch_surface_item(const struct batch *b, size_t i)
{
    vtx_skin skin_room;
    const vtx_skin *const skin = batch_record(b, 0, i, &skin_room, sizeof skin_room, _Alignof(vtx_skin));
    vtx_touch touch_room;
    vtx_touch *const touch = batch_place(b, 0, i, &touch_room, sizeof touch_room, _Alignof(vtx_touch));
    const vtx_status answer = vtx_touch_surface(skin, b->selector[0], batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), touch);
    batch_move(b, 0, i, touch, &touch_room, sizeof touch_room);
    return answer;
}

vtx_status vtx_touch_surface_batch(size_t n, const vtx_skin *skin, ptrdiff_t skin_stride, int32_t contact_class,
        const double *effusivity, ptrdiff_t effusivity_stride, const double *surface_temperature,
        ptrdiff_t surface_temperature_stride, const double *contact_time, ptrdiff_t contact_time_stride,
        vtx_touch *touch, ptrdiff_t touch_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { skin, skin_stride, 1 }, { effusivity, effusivity_stride },
        { surface_temperature, surface_temperature_stride }, { contact_time, contact_time_stride } };
    const struct batch_output out[] = { { touch, touch_stride, 0, sizeof *touch } };
    const int32_t selector[] = { contact_class };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, touch_surface_item, status, failed);
}

static ALWAYS_INLINE vtx_status coldest_touchable_item(const struct batch *b, size_t i)
{
    vtx_skin skin_room;
    const vtx_skin *const skin = batch_record(b, 0, i, &skin_room, sizeof skin_room, _Alignof(vtx_skin));
    double surface_temperature_room;
    double *const surface_temperature = batch_place(b, 0, i, &surface_temperature_room,
        sizeof surface_temperature_room, _Alignof(double));
    const vtx_status answer = vtx_coldest_touchable(skin, batch_get(b, 1, i), batch_get(b, 2, i), surface_temperature);
    batch_move(b, 0, i, surface_temperature, &surface_temperature_room, sizeof surface_temperature_room);
    return answer;
}

vtx_status vtx_coldest_touchable_batch(size_t n, const vtx_skin *skin, ptrdiff_t skin_stride,
        const double *effusivity, ptrdiff_t effusivity_stride, const double *wanted_contact_temperature,
        ptrdiff_t wanted_contact_temperature_stride, double *surface_temperature,
        ptrdiff_t surface_temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { skin, skin_stride, 1 }, { effusivity, effusivity_stride },
        { wanted_contact_temperature, wanted_contact_temperature_stride } };
    const struct batch_output out[] = {
        { surface_temperature, surface_temperature_stride, 0, sizeof *surface_temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, coldest_touchable_item, status, failed);
}
