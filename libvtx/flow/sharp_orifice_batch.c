/* Batch forms of sharp_orifice.h. Written by build-aux/generate. */
#include <vtx/sharp_orifice.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status perry_coefficient_item(const struct batch *b, size_t i)
{
    double coefficient_room;
    double *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_perry_coefficient(batch_get(b, 0, i), coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_perry_coefficient_batch(size_t n, const double *pressure_ratio, ptrdiff_t pressure_ratio_stride,
        double *coefficient, ptrdiff_t coefficient_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure_ratio, pressure_ratio_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, perry_coefficient_item, status, failed);
}

static ALWAYS_INLINE vtx_status jobson_coefficient_item(const struct batch *b, size_t i)
{
    double coefficient_room;
    double *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_jobson_coefficient(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_jobson_coefficient_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *incompressible, ptrdiff_t incompressible_stride, const double *pressure_ratio,
        ptrdiff_t pressure_ratio_stride, double *coefficient, ptrdiff_t coefficient_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { incompressible, incompressible_stride },
        { pressure_ratio, pressure_ratio_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, jobson_coefficient_item, status, failed);
}

static ALWAYS_INLINE vtx_status sharp_orifice_mass_flow_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double mass_flow_room;
    double *const mass_flow = batch_place(b, 0, i, &mass_flow_room, sizeof mass_flow_room, _Alignof(double));
    int32_t choked_room;
    int32_t *const choked = batch_place(b, 1, i, &choked_room, sizeof choked_room, _Alignof(int32_t));
    const vtx_status answer = vtx_sharp_orifice_mass_flow(gas, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), mass_flow, choked);
    batch_move(b, 0, i, mass_flow, &mass_flow_room, sizeof mass_flow_room);
    batch_move(b, 1, i, choked, &choked_room, sizeof choked_room);
    return answer;
}

vtx_status vtx_sharp_orifice_mass_flow_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, int32_t law,
        const double *area, ptrdiff_t area_stride, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked,
        ptrdiff_t choked_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { area, area_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0, sizeof *mass_flow },
        { choked, choked_stride, 1, sizeof *choked } };
    const int32_t selector[] = { law };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, sharp_orifice_mass_flow_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status sharp_orifice_area_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double area_room;
    double *const area = batch_place(b, 0, i, &area_room, sizeof area_room, _Alignof(double));
    const vtx_status answer = vtx_sharp_orifice_area(gas, b->selector[0], batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), area);
    batch_move(b, 0, i, area, &area_room, sizeof area_room);
    return answer;
}

vtx_status vtx_sharp_orifice_area_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, int32_t law,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *area, ptrdiff_t area_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { mass_flow, mass_flow_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { area, area_stride, 0, sizeof *area } };
    const int32_t selector[] = { law };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, sharp_orifice_area_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status sharp_orifice_outlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double outlet_pressure_room;
    double *const outlet_pressure = batch_place(b, 0, i, &outlet_pressure_room, sizeof outlet_pressure_room,
        _Alignof(double));
    double attainable_mass_flow_room;
    double *const attainable_mass_flow = batch_place(b, 1, i, &attainable_mass_flow_room,
        sizeof attainable_mass_flow_room, _Alignof(double));
    const vtx_status answer = vtx_sharp_orifice_outlet_pressure(gas, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), outlet_pressure, attainable_mass_flow);
    batch_move(b, 0, i, outlet_pressure, &outlet_pressure_room, sizeof outlet_pressure_room);
    batch_move(b, 1, i, attainable_mass_flow, &attainable_mass_flow_room, sizeof attainable_mass_flow_room);
    return answer;
}

vtx_status vtx_sharp_orifice_outlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, int32_t law,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *area, ptrdiff_t area_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *attainable_mass_flow, ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { mass_flow, mass_flow_stride }, { area, area_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride } };
    const struct batch_output out[] = { { outlet_pressure, outlet_pressure_stride, 0, sizeof *outlet_pressure },
        { attainable_mass_flow, attainable_mass_flow_stride, 1, sizeof *attainable_mass_flow } };
    const int32_t selector[] = { law };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, sharp_orifice_outlet_pressure_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status sharp_orifice_inlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double inlet_pressure_room;
    double *const inlet_pressure = batch_place(b, 0, i, &inlet_pressure_room, sizeof inlet_pressure_room,
        _Alignof(double));
    const vtx_status answer = vtx_sharp_orifice_inlet_pressure(gas, b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), inlet_pressure);
    batch_move(b, 0, i, inlet_pressure, &inlet_pressure_room, sizeof inlet_pressure_room);
    return answer;
}

vtx_status vtx_sharp_orifice_inlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, int32_t law,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *area, ptrdiff_t area_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { mass_flow, mass_flow_stride }, { area, area_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { inlet_pressure, inlet_pressure_stride, 0, sizeof *inlet_pressure } };
    const int32_t selector[] = { law };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, sharp_orifice_inlet_pressure_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status orifice_expansibility_item(const struct batch *b, size_t i)
{
    double factor_room;
    double *const factor = batch_place(b, 0, i, &factor_room, sizeof factor_room, _Alignof(double));
    const vtx_status answer = vtx_orifice_expansibility(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), factor);
    batch_move(b, 0, i, factor, &factor_room, sizeof factor_room);
    return answer;
}

vtx_status vtx_orifice_expansibility_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *diameter_ratio, ptrdiff_t diameter_ratio_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *factor, ptrdiff_t factor_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { diameter_ratio, diameter_ratio_stride },
        { inlet_pressure, inlet_pressure_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { factor, factor_stride, 0, sizeof *factor } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, orifice_expansibility_item, status,
        failed);
}
