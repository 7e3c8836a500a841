/* Batch forms of isentropic.h. Written by build-aux/generate. */
#include <vtx/isentropic.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status isentropic_temperature_item(const struct batch *b, size_t i)
{
    double outlet_temperature_room;
    double *const outlet_temperature = batch_place(b, 0, i, &outlet_temperature_room, sizeof outlet_temperature_room,
        _Alignof(double));
    const vtx_status answer = vtx_isentropic_temperature(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), outlet_temperature);
    batch_move(b, 0, i, outlet_temperature, &outlet_temperature_room, sizeof outlet_temperature_room);
    return answer;
}

vtx_status vtx_isentropic_temperature_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *outlet_temperature, ptrdiff_t outlet_temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = {
        { outlet_temperature, outlet_temperature_stride, 0, sizeof *outlet_temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_temperature_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status critical_pressure_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_critical_pressure_ratio(batch_get(b, 0, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_critical_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, double *ratio,
        ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, critical_pressure_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status critical_flow_function_item(const struct batch *b, size_t i)
{
    double function_room;
    double *const function = batch_place(b, 0, i, &function_room, sizeof function_room, _Alignof(double));
    const vtx_status answer = vtx_critical_flow_function(batch_get(b, 0, i), function);
    batch_move(b, 0, i, function, &function_room, sizeof function_room);
    return answer;
}

vtx_status vtx_critical_flow_function_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, double *function,
        ptrdiff_t function_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride } };
    const struct batch_output out[] = { { function, function_stride, 0, sizeof *function } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, critical_flow_function_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status isentropic_velocity_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double velocity_room;
    double *const velocity = batch_place(b, 0, i, &velocity_room, sizeof velocity_room, _Alignof(double));
    const vtx_status answer = vtx_isentropic_velocity(gas, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), velocity);
    batch_move(b, 0, i, velocity, &velocity_room, sizeof velocity_room);
    return answer;
}

vtx_status vtx_isentropic_velocity_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *velocity, ptrdiff_t velocity_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { velocity, velocity_stride, 0, sizeof *velocity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_velocity_item, status, failed);
}

static ALWAYS_INLINE vtx_status gas_sound_speed_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double speed_room;
    double *const speed = batch_place(b, 0, i, &speed_room, sizeof speed_room, _Alignof(double));
    const vtx_status answer = vtx_gas_sound_speed(gas, batch_get(b, 1, i), speed);
    batch_move(b, 0, i, speed, &speed_room, sizeof speed_room);
    return answer;
}

vtx_status vtx_gas_sound_speed_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *temperature,
        ptrdiff_t temperature_stride, double *speed, ptrdiff_t speed_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { speed, speed_stride, 0, sizeof *speed } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, gas_sound_speed_item, status, failed);
}

static ALWAYS_INLINE vtx_status isentropic_temperature_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_isentropic_temperature_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_isentropic_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_temperature_ratio_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status isentropic_pressure_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_isentropic_pressure_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_isentropic_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_pressure_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status isentropic_density_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_isentropic_density_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_isentropic_density_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *mach, ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_density_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status isentropic_area_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_isentropic_area_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_isentropic_area_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, const double *mach,
        ptrdiff_t mach_stride, double *ratio, ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { mach, mach_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_area_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status mach_for_temperature_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_mach_for_temperature_ratio(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_mach_for_temperature_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, mach_for_temperature_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status mach_for_pressure_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_mach_for_pressure_ratio(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_mach_for_pressure_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, mach_for_pressure_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status mach_for_density_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_mach_for_density_ratio(batch_get(b, 0, i), batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_mach_for_density_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, mach_for_density_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status mach_for_area_ratio_item(const struct batch *b, size_t i)
{
    double mach_room;
    double *const mach = batch_place(b, 0, i, &mach_room, sizeof mach_room, _Alignof(double));
    const vtx_status answer = vtx_mach_for_area_ratio(batch_get(b, 0, i), b->selector[0], batch_get(b, 1, i), mach);
    batch_move(b, 0, i, mach, &mach_room, sizeof mach_room);
    return answer;
}

vtx_status vtx_mach_for_area_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, int32_t branch,
        const double *ratio, ptrdiff_t ratio_stride, double *mach, ptrdiff_t mach_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { ratio, ratio_stride } };
    const struct batch_output out[] = { { mach, mach_stride, 0, sizeof *mach } };
    const int32_t selector[] = { branch };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, mach_for_area_ratio_item, status,
        failed);
}
