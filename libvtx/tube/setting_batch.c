/* Batch forms of setting.h. Written by build-aux/generate. */
#include <vtx/setting.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status cold_fraction_for_temperature_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_fraction_setting setting_room;
    vtx_fraction_setting *const setting = batch_place(b, 0, i, &setting_room, sizeof setting_room,
        _Alignof(vtx_fraction_setting));
    const vtx_status answer = vtx_cold_fraction_for_temperature(tube, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), b->selector[1], setting);
    batch_move(b, 0, i, setting, &setting_room, sizeof setting_room);
    return answer;
}

vtx_status vtx_cold_fraction_for_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t branch,
        vtx_fraction_setting *setting, ptrdiff_t setting_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride }, { cold_temperature, cold_temperature_stride } };
    const struct batch_output out[] = { { setting, setting_stride, 0, sizeof *setting } };
    const int32_t selector[] = { model, branch };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, cold_fraction_for_temperature_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status cold_fraction_for_hot_temperature_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_fraction_setting setting_room;
    vtx_fraction_setting *const setting = batch_place(b, 0, i, &setting_room, sizeof setting_room,
        _Alignof(vtx_fraction_setting));
    const vtx_status answer = vtx_cold_fraction_for_hot_temperature(tube, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), setting);
    batch_move(b, 0, i, setting, &setting_room, sizeof setting_room);
    return answer;
}

vtx_status vtx_cold_fraction_for_hot_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, const double *hot_temperature,
        ptrdiff_t hot_temperature_stride, vtx_fraction_setting *setting, ptrdiff_t setting_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride }, { hot_pressure, hot_pressure_stride },
        { hot_temperature, hot_temperature_stride } };
    const struct batch_output out[] = { { setting, setting_stride, 0, sizeof *setting } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector,
        cold_fraction_for_hot_temperature_item, status, failed);
}

static ALWAYS_INLINE vtx_status best_cold_fraction_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_best_setting best_room;
    vtx_best_setting *const best = batch_place(b, 0, i, &best_room, sizeof best_room, _Alignof(vtx_best_setting));
    const vtx_status answer = vtx_best_cold_fraction(tube, b->selector[0], batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), best);
    batch_move(b, 0, i, best, &best_room, sizeof best_room);
    return answer;
}

vtx_status vtx_best_cold_fraction_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *humidity_ratio, ptrdiff_t humidity_ratio_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *target_temperature,
        ptrdiff_t target_temperature_stride, vtx_best_setting *best, ptrdiff_t best_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride }, { target_temperature, target_temperature_stride } };
    const struct batch_output out[] = { { best, best_stride, 0, sizeof *best } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, best_cold_fraction_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status cold_fraction_for_cooling_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_fraction_setting setting_room;
    vtx_fraction_setting *const setting = batch_place(b, 0, i, &setting_room, sizeof setting_room,
        _Alignof(vtx_fraction_setting));
    const vtx_status answer = vtx_cold_fraction_for_cooling(tube, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i),
        b->selector[1], setting);
    batch_move(b, 0, i, setting, &setting_room, sizeof setting_room);
    return answer;
}

vtx_status vtx_cold_fraction_for_cooling_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *humidity_ratio, ptrdiff_t humidity_ratio_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *target_temperature,
        ptrdiff_t target_temperature_stride, const double *cooling, ptrdiff_t cooling_stride, int32_t branch,
        vtx_fraction_setting *setting, ptrdiff_t setting_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride }, { target_temperature, target_temperature_stride },
        { cooling, cooling_stride } };
    const struct batch_output out[] = { { setting, setting_stride, 0, sizeof *setting } };
    const int32_t selector[] = { model, branch };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, cold_fraction_for_cooling_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status coldest_outlet_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    double cold_fraction_room;
    double *const cold_fraction = batch_place(b, 0, i, &cold_fraction_room, sizeof cold_fraction_room,
        _Alignof(double));
    double cold_temperature_room;
    double *const cold_temperature = batch_place(b, 1, i, &cold_temperature_room, sizeof cold_temperature_room,
        _Alignof(double));
    const vtx_status answer = vtx_coldest_outlet(tube, b->selector[0], batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), cold_fraction, cold_temperature);
    batch_move(b, 0, i, cold_fraction, &cold_fraction_room, sizeof cold_fraction_room);
    batch_move(b, 1, i, cold_temperature, &cold_temperature_room, sizeof cold_temperature_room);
    return answer;
}

vtx_status vtx_coldest_outlet_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, int32_t model,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *humidity_ratio, ptrdiff_t humidity_ratio_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, double *cold_fraction,
        ptrdiff_t cold_fraction_stride, double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride } };
    const struct batch_output out[] = { { cold_fraction, cold_fraction_stride, 0, sizeof *cold_fraction },
        { cold_temperature, cold_temperature_stride, 1, sizeof *cold_temperature } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, coldest_outlet_item, status, failed);
}

static ALWAYS_INLINE vtx_status inlet_pressure_for_temperature_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_condition_setting setting_room;
    vtx_condition_setting *const setting = batch_place(b, 0, i, &setting_room, sizeof setting_room,
        _Alignof(vtx_condition_setting));
    const vtx_status answer = vtx_inlet_pressure_for_temperature(tube, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), setting);
    batch_move(b, 0, i, setting, &setting_room, sizeof setting_room);
    return answer;
}

vtx_status vtx_inlet_pressure_for_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *largest_pressure, ptrdiff_t largest_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, vtx_condition_setting *setting, ptrdiff_t setting_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { largest_pressure, largest_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride }, { cold_fraction, cold_fraction_stride },
        { cold_temperature, cold_temperature_stride } };
    const struct batch_output out[] = { { setting, setting_stride, 0, sizeof *setting } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, inlet_pressure_for_temperature_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status cold_pressure_for_temperature_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_condition_setting setting_room;
    vtx_condition_setting *const setting = batch_place(b, 0, i, &setting_room, sizeof setting_room,
        _Alignof(vtx_condition_setting));
    const vtx_status answer = vtx_cold_pressure_for_temperature(tube, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), setting);
    batch_move(b, 0, i, setting, &setting_room, sizeof setting_room);
    return answer;
}

vtx_status vtx_cold_pressure_for_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_fraction, ptrdiff_t cold_fraction_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, vtx_condition_setting *setting,
        ptrdiff_t setting_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_fraction, cold_fraction_stride }, { cold_temperature, cold_temperature_stride } };
    const struct batch_output out[] = { { setting, setting_stride, 0, sizeof *setting } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, cold_pressure_for_temperature_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status inlet_temperature_for_temperature_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_condition_setting setting_room;
    vtx_condition_setting *const setting = batch_place(b, 0, i, &setting_room, sizeof setting_room,
        _Alignof(vtx_condition_setting));
    const vtx_status answer = vtx_inlet_temperature_for_temperature(tube, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), setting);
    batch_move(b, 0, i, setting, &setting_room, sizeof setting_room);
    return answer;
}

vtx_status vtx_inlet_temperature_for_temperature_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        int32_t model, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *humidity_ratio,
        ptrdiff_t humidity_ratio_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, vtx_condition_setting *setting, ptrdiff_t setting_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { humidity_ratio, humidity_ratio_stride }, { cold_pressure, cold_pressure_stride },
        { cold_fraction, cold_fraction_stride }, { cold_temperature, cold_temperature_stride } };
    const struct batch_output out[] = { { setting, setting_stride, 0, sizeof *setting } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector,
        inlet_temperature_for_temperature_item, status, failed);
}
