/* Batch forms of restriction.h. Written by build-aux/generate. */
#include <vtx/restriction.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status orifice_area_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double area_room;
    double *const area = batch_place(b, 0, i, &area_room, sizeof area_room, _Alignof(double));
    const vtx_status answer = vtx_orifice_area(gas, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), batch_get(b, 5, i), area);
    batch_move(b, 0, i, area, &area_room, sizeof area_room);
    return answer;
}

vtx_status vtx_orifice_area_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const double *mass_flow,
        ptrdiff_t mass_flow_stride, const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *area, ptrdiff_t area_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { mass_flow, mass_flow_stride },
        { discharge_coefficient, discharge_coefficient_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { area, area_stride, 0, sizeof *area } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, orifice_area_item, status, failed);
}

static ALWAYS_INLINE vtx_status orifice_outlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double outlet_pressure_room;
    double *const outlet_pressure = batch_place(b, 0, i, &outlet_pressure_room, sizeof outlet_pressure_room,
        _Alignof(double));
    double attainable_mass_flow_room;
    double *const attainable_mass_flow = batch_place(b, 1, i, &attainable_mass_flow_room,
        sizeof attainable_mass_flow_room, _Alignof(double));
    const vtx_status answer = vtx_orifice_outlet_pressure(gas, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), outlet_pressure, attainable_mass_flow);
    batch_move(b, 0, i, outlet_pressure, &outlet_pressure_room, sizeof outlet_pressure_room);
    batch_move(b, 1, i, attainable_mass_flow, &attainable_mass_flow_room, sizeof attainable_mass_flow_room);
    return answer;
}

vtx_status vtx_orifice_outlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *area, ptrdiff_t area_stride,
        const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *attainable_mass_flow,
        ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { mass_flow, mass_flow_stride }, { area, area_stride },
        { discharge_coefficient, discharge_coefficient_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride } };
    const struct batch_output out[] = { { outlet_pressure, outlet_pressure_stride, 0, sizeof *outlet_pressure },
        { attainable_mass_flow, attainable_mass_flow_stride, 1, sizeof *attainable_mass_flow } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, orifice_outlet_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status orifice_inlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    double inlet_pressure_room;
    double *const inlet_pressure = batch_place(b, 0, i, &inlet_pressure_room, sizeof inlet_pressure_room,
        _Alignof(double));
    const vtx_status answer = vtx_orifice_inlet_pressure(gas, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), inlet_pressure);
    batch_move(b, 0, i, inlet_pressure, &inlet_pressure_room, sizeof inlet_pressure_room);
    return answer;
}

vtx_status vtx_orifice_inlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *area, ptrdiff_t area_stride,
        const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { mass_flow, mass_flow_stride }, { area, area_stride },
        { discharge_coefficient, discharge_coefficient_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { inlet_pressure, inlet_pressure_stride, 0, sizeof *inlet_pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, orifice_inlet_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status conductance_mass_flow_item(const struct batch *b, size_t i)
{
    double mass_flow_room;
    double *const mass_flow = batch_place(b, 0, i, &mass_flow_room, sizeof mass_flow_room, _Alignof(double));
    int32_t choked_room;
    int32_t *const choked = batch_place(b, 1, i, &choked_room, sizeof choked_room, _Alignof(int32_t));
    const vtx_status answer = vtx_conductance_mass_flow(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), mass_flow, choked);
    batch_move(b, 0, i, mass_flow, &mass_flow_room, sizeof mass_flow_room);
    batch_move(b, 1, i, choked, &choked_room, sizeof choked_room);
    return answer;
}

vtx_status vtx_conductance_mass_flow_batch(size_t n, const double *conductance, ptrdiff_t conductance_stride,
        const double *critical_ratio, ptrdiff_t critical_ratio_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *mass_flow,
        ptrdiff_t mass_flow_stride, int32_t *choked, ptrdiff_t choked_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { conductance, conductance_stride }, { critical_ratio, critical_ratio_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0, sizeof *mass_flow },
        { choked, choked_stride, 1, sizeof *choked } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_mass_flow_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status conductance_for_mass_flow_item(const struct batch *b, size_t i)
{
    double conductance_room;
    double *const conductance = batch_place(b, 0, i, &conductance_room, sizeof conductance_room, _Alignof(double));
    const vtx_status answer = vtx_conductance_for_mass_flow(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), conductance);
    batch_move(b, 0, i, conductance, &conductance_room, sizeof conductance_room);
    return answer;
}

vtx_status vtx_conductance_for_mass_flow_batch(size_t n, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *critical_ratio, ptrdiff_t critical_ratio_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *conductance,
        ptrdiff_t conductance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { mass_flow, mass_flow_stride }, { critical_ratio, critical_ratio_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0, sizeof *conductance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_for_mass_flow_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status conductance_outlet_pressure_item(const struct batch *b, size_t i)
{
    double outlet_pressure_room;
    double *const outlet_pressure = batch_place(b, 0, i, &outlet_pressure_room, sizeof outlet_pressure_room,
        _Alignof(double));
    double attainable_mass_flow_room;
    double *const attainable_mass_flow = batch_place(b, 1, i, &attainable_mass_flow_room,
        sizeof attainable_mass_flow_room, _Alignof(double));
    const vtx_status answer = vtx_conductance_outlet_pressure(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), outlet_pressure, attainable_mass_flow);
    batch_move(b, 0, i, outlet_pressure, &outlet_pressure_room, sizeof outlet_pressure_room);
    batch_move(b, 1, i, attainable_mass_flow, &attainable_mass_flow_room, sizeof attainable_mass_flow_room);
    return answer;
}

vtx_status vtx_conductance_outlet_pressure_batch(size_t n, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *conductance, ptrdiff_t conductance_stride, const double *critical_ratio,
        ptrdiff_t critical_ratio_stride, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *attainable_mass_flow, ptrdiff_t attainable_mass_flow_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { mass_flow, mass_flow_stride }, { conductance, conductance_stride },
        { critical_ratio, critical_ratio_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride } };
    const struct batch_output out[] = { { outlet_pressure, outlet_pressure_stride, 0, sizeof *outlet_pressure },
        { attainable_mass_flow, attainable_mass_flow_stride, 1, sizeof *attainable_mass_flow } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_outlet_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status conductance_inlet_pressure_item(const struct batch *b, size_t i)
{
    double inlet_pressure_room;
    double *const inlet_pressure = batch_place(b, 0, i, &inlet_pressure_room, sizeof inlet_pressure_room,
        _Alignof(double));
    const vtx_status answer = vtx_conductance_inlet_pressure(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), inlet_pressure);
    batch_move(b, 0, i, inlet_pressure, &inlet_pressure_room, sizeof inlet_pressure_room);
    return answer;
}

vtx_status vtx_conductance_inlet_pressure_batch(size_t n, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *conductance, ptrdiff_t conductance_stride, const double *critical_ratio,
        ptrdiff_t critical_ratio_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { mass_flow, mass_flow_stride }, { conductance, conductance_stride },
        { critical_ratio, critical_ratio_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { inlet_pressure, inlet_pressure_stride, 0, sizeof *inlet_pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_inlet_pressure_item, status,
        failed);
}
