/* Batch forms of process.h. Written by build-aux/generate. */
#include <vtx/process.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status expansion_isentropic_item(const struct batch *b, size_t i)
{
    double outlet_temperature_room;
    double *const outlet_temperature = batch_place(b, 0, i, &outlet_temperature_room, sizeof outlet_temperature_room,
        _Alignof(double));
    const vtx_status answer = vtx_expansion_isentropic(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), outlet_temperature);
    batch_move(b, 0, i, outlet_temperature, &outlet_temperature_room, sizeof outlet_temperature_room);
    return answer;
}

vtx_status vtx_expansion_isentropic_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = {
        { outlet_temperature, outlet_temperature_stride, 0, sizeof *outlet_temperature } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, expansion_isentropic_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status expansion_throttle_item(const struct batch *b, size_t i)
{
    double outlet_temperature_room;
    double *const outlet_temperature = batch_place(b, 0, i, &outlet_temperature_room, sizeof outlet_temperature_room,
        _Alignof(double));
    const vtx_status answer = vtx_expansion_throttle(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), outlet_temperature);
    batch_move(b, 0, i, outlet_temperature, &outlet_temperature_room, sizeof outlet_temperature_room);
    return answer;
}

vtx_status vtx_expansion_throttle_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = {
        { outlet_temperature, outlet_temperature_stride, 0, sizeof *outlet_temperature } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, expansion_throttle_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status expanded_isentropic_item(const struct batch *b, size_t i)
{
    vtx_moist_air outlet_room;
    vtx_moist_air *const outlet = batch_place(b, 0, i, &outlet_room, sizeof outlet_room, _Alignof(vtx_moist_air));
    double work_room;
    double *const work = batch_place(b, 1, i, &work_room, sizeof work_room, _Alignof(double));
    const vtx_status answer = vtx_expanded_isentropic(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), outlet, work);
    batch_move(b, 0, i, outlet, &outlet_room, sizeof outlet_room);
    batch_move(b, 1, i, work, &work_room, sizeof work_room);
    return answer;
}

vtx_status vtx_expanded_isentropic_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, vtx_moist_air *outlet, ptrdiff_t outlet_stride, double *work,
        ptrdiff_t work_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { outlet, outlet_stride, 0, sizeof *outlet },
        { work, work_stride, 1, sizeof *work } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, expanded_isentropic_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status expanded_throttle_item(const struct batch *b, size_t i)
{
    vtx_moist_air outlet_room;
    vtx_moist_air *const outlet = batch_place(b, 0, i, &outlet_room, sizeof outlet_room, _Alignof(vtx_moist_air));
    double entropy_generation_room;
    double *const entropy_generation = batch_place(b, 1, i, &entropy_generation_room, sizeof entropy_generation_room,
        _Alignof(double));
    const vtx_status answer = vtx_expanded_throttle(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), outlet, entropy_generation);
    batch_move(b, 0, i, outlet, &outlet_room, sizeof outlet_room);
    batch_move(b, 1, i, entropy_generation, &entropy_generation_room, sizeof entropy_generation_room);
    return answer;
}

vtx_status vtx_expanded_throttle_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, vtx_moist_air *outlet, ptrdiff_t outlet_stride, double *entropy_generation,
        ptrdiff_t entropy_generation_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { outlet, outlet_stride, 0, sizeof *outlet },
        { entropy_generation, entropy_generation_stride, 1, sizeof *entropy_generation } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, expanded_throttle_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status expanded_with_efficiency_item(const struct batch *b, size_t i)
{
    vtx_moist_air outlet_room;
    vtx_moist_air *const outlet = batch_place(b, 0, i, &outlet_room, sizeof outlet_room, _Alignof(vtx_moist_air));
    double work_room;
    double *const work = batch_place(b, 1, i, &work_room, sizeof work_room, _Alignof(double));
    const vtx_status answer = vtx_expanded_with_efficiency(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), outlet, work);
    batch_move(b, 0, i, outlet, &outlet_room, sizeof outlet_room);
    batch_move(b, 1, i, work, &work_room, sizeof work_room);
    return answer;
}

vtx_status vtx_expanded_with_efficiency_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, const double *efficiency, ptrdiff_t efficiency_stride,
        vtx_moist_air *outlet, ptrdiff_t outlet_stride, double *work, ptrdiff_t work_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { outlet_pressure, outlet_pressure_stride }, { efficiency, efficiency_stride } };
    const struct batch_output out[] = { { outlet, outlet_stride, 0, sizeof *outlet },
        { work, work_stride, 1, sizeof *work } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, expanded_with_efficiency_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status heat_to_temperature_item(const struct batch *b, size_t i)
{
    double heat_room;
    double *const heat = batch_place(b, 0, i, &heat_room, sizeof heat_room, _Alignof(double));
    double condensed_room;
    double *const condensed = batch_place(b, 1, i, &condensed_room, sizeof condensed_room, _Alignof(double));
    const vtx_status answer = vtx_heat_to_temperature(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), heat, condensed);
    batch_move(b, 0, i, heat, &heat_room, sizeof heat_room);
    batch_move(b, 1, i, condensed, &condensed_room, sizeof condensed_room);
    return answer;
}

vtx_status vtx_heat_to_temperature_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *outlet_temperature, ptrdiff_t outlet_temperature_stride,
        double *heat, ptrdiff_t heat_stride, double *condensed, ptrdiff_t condensed_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { humidity_ratio, humidity_ratio_stride }, { outlet_temperature, outlet_temperature_stride } };
    const struct batch_output out[] = { { heat, heat_stride, 0, sizeof *heat },
        { condensed, condensed_stride, 1, sizeof *condensed } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, heat_to_temperature_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status heated_item(const struct batch *b, size_t i)
{
    vtx_moist_air outlet_room;
    vtx_moist_air *const outlet = batch_place(b, 0, i, &outlet_room, sizeof outlet_room, _Alignof(vtx_moist_air));
    const vtx_status answer = vtx_heated(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), outlet);
    batch_move(b, 0, i, outlet, &outlet_room, sizeof outlet_room);
    return answer;
}

vtx_status vtx_heated_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *heat, ptrdiff_t heat_stride, vtx_moist_air *outlet,
        ptrdiff_t outlet_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { humidity_ratio, humidity_ratio_stride }, { heat, heat_stride } };
    const struct batch_output out[] = { { outlet, outlet_stride, 0, sizeof *outlet } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, heated_item, status, failed);
}

static ALWAYS_INLINE vtx_status condensate_drained_item(const struct batch *b, size_t i)
{
    double drained_room;
    double *const drained = batch_place(b, 0, i, &drained_room, sizeof drained_room, _Alignof(double));
    vtx_moist_air outlet_room;
    vtx_moist_air *const outlet = batch_place(b, 1, i, &outlet_room, sizeof outlet_room, _Alignof(vtx_moist_air));
    const vtx_status answer = vtx_condensate_drained(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), drained, outlet);
    batch_move(b, 0, i, drained, &drained_room, sizeof drained_room);
    batch_move(b, 1, i, outlet, &outlet_room, sizeof outlet_room);
    return answer;
}

vtx_status vtx_condensate_drained_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *drained_share, ptrdiff_t drained_share_stride,
        double *drained, ptrdiff_t drained_stride, vtx_moist_air *outlet, ptrdiff_t outlet_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride },
        { humidity_ratio, humidity_ratio_stride }, { drained_share, drained_share_stride } };
    const struct batch_output out[] = { { drained, drained_stride, 0, sizeof *drained },
        { outlet, outlet_stride, 1, sizeof *outlet } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, condensate_drained_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status mixed_item(const struct batch *b, size_t i)
{
    vtx_moist_air mixed_room;
    vtx_moist_air *const mixed = batch_place(b, 0, i, &mixed_room, sizeof mixed_room, _Alignof(vtx_moist_air));
    double entropy_generation_room;
    double *const entropy_generation = batch_place(b, 1, i, &entropy_generation_room, sizeof entropy_generation_room,
        _Alignof(double));
    const vtx_status answer = vtx_mixed(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), mixed, entropy_generation);
    batch_move(b, 0, i, mixed, &mixed_room, sizeof mixed_room);
    batch_move(b, 1, i, entropy_generation, &entropy_generation_room, sizeof entropy_generation_room);
    return answer;
}

vtx_status vtx_mixed_batch(size_t n, int32_t model, const double *pressure, ptrdiff_t pressure_stride,
        const double *first_temperature, ptrdiff_t first_temperature_stride, const double *first_humidity_ratio,
        ptrdiff_t first_humidity_ratio_stride, const double *first_dry_air, ptrdiff_t first_dry_air_stride,
        const double *second_temperature, ptrdiff_t second_temperature_stride, const double *second_humidity_ratio,
        ptrdiff_t second_humidity_ratio_stride, const double *second_dry_air, ptrdiff_t second_dry_air_stride,
        vtx_moist_air *mixed, ptrdiff_t mixed_stride, double *entropy_generation,
        ptrdiff_t entropy_generation_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { first_temperature, first_temperature_stride },
        { first_humidity_ratio, first_humidity_ratio_stride }, { first_dry_air, first_dry_air_stride },
        { second_temperature, second_temperature_stride }, { second_humidity_ratio, second_humidity_ratio_stride },
        { second_dry_air, second_dry_air_stride } };
    const struct batch_output out[] = { { mixed, mixed_stride, 0, sizeof *mixed },
        { entropy_generation, entropy_generation_stride, 1, sizeof *entropy_generation } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, mixed_item, status, failed);
}
