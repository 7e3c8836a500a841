/* Batch forms of valve.h. Written by build-aux/generate. */
#include <vtx/valve.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status valve_critical_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_valve_critical_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_valve_critical_ratio_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *pressure_ratio_factor, ptrdiff_t pressure_ratio_factor_stride, double *ratio,
        ptrdiff_t ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride },
        { pressure_ratio_factor, pressure_ratio_factor_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, valve_critical_ratio_item, status, failed);
}

static ALWAYS_INLINE vtx_status valve_mass_flow_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_valve valve_room;
    const vtx_valve *const valve = batch_record(b, 1, i, &valve_room, sizeof valve_room, _Alignof(vtx_valve));
    double mass_flow_room;
    double *const mass_flow = batch_place(b, 0, i, &mass_flow_room, sizeof mass_flow_room, _Alignof(double));
    int32_t choked_room;
    int32_t *const choked = batch_place(b, 1, i, &choked_room, sizeof choked_room, _Alignof(int32_t));
    const vtx_status answer = vtx_valve_mass_flow(gas, valve, batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), mass_flow, choked);
    batch_move(b, 0, i, mass_flow, &mass_flow_room, sizeof mass_flow_room);
    batch_move(b, 1, i, choked, &choked_room, sizeof choked_room);
    return answer;
}

vtx_status vtx_valve_mass_flow_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_valve *valve,
        ptrdiff_t valve_stride, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked,
        ptrdiff_t choked_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { valve, valve_stride, 1 },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0, sizeof *mass_flow },
        { choked, choked_stride, 1, sizeof *choked } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, valve_mass_flow_item, status, failed);
}

static ALWAYS_INLINE vtx_status valve_flow_coefficient_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_valve valve_room;
    const vtx_valve *const valve = batch_record(b, 1, i, &valve_room, sizeof valve_room, _Alignof(vtx_valve));
    double flow_coefficient_room;
    double *const flow_coefficient = batch_place(b, 0, i, &flow_coefficient_room, sizeof flow_coefficient_room,
        _Alignof(double));
    double attainable_mass_flow_room;
    double *const attainable_mass_flow = batch_place(b, 1, i, &attainable_mass_flow_room,
        sizeof attainable_mass_flow_room, _Alignof(double));
    const vtx_status answer = vtx_valve_flow_coefficient(gas, valve, batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), batch_get(b, 5, i), flow_coefficient, attainable_mass_flow);
    batch_move(b, 0, i, flow_coefficient, &flow_coefficient_room, sizeof flow_coefficient_room);
    batch_move(b, 1, i, attainable_mass_flow, &attainable_mass_flow_room, sizeof attainable_mass_flow_room);
    return answer;
}

vtx_status vtx_valve_flow_coefficient_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const vtx_valve *valve, ptrdiff_t valve_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *flow_coefficient, ptrdiff_t flow_coefficient_stride, double *attainable_mass_flow,
        ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { valve, valve_stride, 1 },
        { mass_flow, mass_flow_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { flow_coefficient, flow_coefficient_stride, 0, sizeof *flow_coefficient },
        { attainable_mass_flow, attainable_mass_flow_stride, 1, sizeof *attainable_mass_flow } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, valve_flow_coefficient_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status valve_outlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_valve valve_room;
    const vtx_valve *const valve = batch_record(b, 1, i, &valve_room, sizeof valve_room, _Alignof(vtx_valve));
    double outlet_pressure_room;
    double *const outlet_pressure = batch_place(b, 0, i, &outlet_pressure_room, sizeof outlet_pressure_room,
        _Alignof(double));
    double attainable_mass_flow_room;
    double *const attainable_mass_flow = batch_place(b, 1, i, &attainable_mass_flow_room,
        sizeof attainable_mass_flow_room, _Alignof(double));
    const vtx_status answer = vtx_valve_outlet_pressure(gas, valve, batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), outlet_pressure, attainable_mass_flow);
    batch_move(b, 0, i, outlet_pressure, &outlet_pressure_room, sizeof outlet_pressure_room);
    batch_move(b, 1, i, attainable_mass_flow, &attainable_mass_flow_room, sizeof attainable_mass_flow_room);
    return answer;
}

vtx_status vtx_valve_outlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const vtx_valve *valve, ptrdiff_t valve_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *attainable_mass_flow, ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { valve, valve_stride, 1 },
        { mass_flow, mass_flow_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride } };
    const struct batch_output out[] = { { outlet_pressure, outlet_pressure_stride, 0, sizeof *outlet_pressure },
        { attainable_mass_flow, attainable_mass_flow_stride, 1, sizeof *attainable_mass_flow } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, valve_outlet_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status valve_inlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_valve valve_room;
    const vtx_valve *const valve = batch_record(b, 1, i, &valve_room, sizeof valve_room, _Alignof(vtx_valve));
    double inlet_pressure_room;
    double *const inlet_pressure = batch_place(b, 0, i, &inlet_pressure_room, sizeof inlet_pressure_room,
        _Alignof(double));
    const vtx_status answer = vtx_valve_inlet_pressure(gas, valve, batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), inlet_pressure);
    batch_move(b, 0, i, inlet_pressure, &inlet_pressure_room, sizeof inlet_pressure_room);
    return answer;
}

vtx_status vtx_valve_inlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_valve *valve,
        ptrdiff_t valve_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { valve, valve_stride, 1 },
        { mass_flow, mass_flow_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { inlet_pressure, inlet_pressure_stride, 0, sizeof *inlet_pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, valve_inlet_pressure_item, status, failed);
}
