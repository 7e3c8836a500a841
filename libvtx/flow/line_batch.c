/* Batch forms of line.h. Written by build-aux/generate. */
#include <vtx/line.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status line_mass_flow_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_line line_room;
    const vtx_line *const line = batch_record(b, 1, i, &line_room, sizeof line_room, _Alignof(vtx_line));
    double mass_flow_room;
    double *const mass_flow = batch_place(b, 0, i, &mass_flow_room, sizeof mass_flow_room, _Alignof(double));
    vtx_line_state state_room;
    vtx_line_state *const state = batch_place(b, 1, i, &state_room, sizeof state_room, _Alignof(vtx_line_state));
    const vtx_status answer = vtx_line_mass_flow(gas, line, batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), mass_flow, state);
    batch_move(b, 0, i, mass_flow, &mass_flow_room, sizeof mass_flow_room);
    batch_move(b, 1, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_line_mass_flow_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *inlet_pressure, ptrdiff_t inlet_pressure_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *outlet_pressure,
        ptrdiff_t outlet_pressure_stride, double *mass_flow, ptrdiff_t mass_flow_stride, vtx_line_state *state,
        ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { line, line_stride, 1 },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0, sizeof *mass_flow },
        { state, state_stride, 1, sizeof *state } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, line_mass_flow_item, status, failed);
}

static ALWAYS_INLINE vtx_status line_outlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_line line_room;
    const vtx_line *const line = batch_record(b, 1, i, &line_room, sizeof line_room, _Alignof(vtx_line));
    double outlet_pressure_room;
    double *const outlet_pressure = batch_place(b, 0, i, &outlet_pressure_room, sizeof outlet_pressure_room,
        _Alignof(double));
    vtx_line_state state_room;
    vtx_line_state *const state = batch_place(b, 1, i, &state_room, sizeof state_room, _Alignof(vtx_line_state));
    const vtx_status answer = vtx_line_outlet_pressure(gas, line, batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), outlet_pressure, state);
    batch_move(b, 0, i, outlet_pressure, &outlet_pressure_room, sizeof outlet_pressure_room);
    batch_move(b, 1, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_line_outlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        double *outlet_pressure, ptrdiff_t outlet_pressure_stride, vtx_line_state *state, ptrdiff_t state_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { line, line_stride, 1 },
        { mass_flow, mass_flow_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride } };
    const struct batch_output out[] = { { outlet_pressure, outlet_pressure_stride, 0, sizeof *outlet_pressure },
        { state, state_stride, 1, sizeof *state } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, line_outlet_pressure_item, status, failed);
}

static ALWAYS_INLINE vtx_status line_inlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_line line_room;
    const vtx_line *const line = batch_record(b, 1, i, &line_room, sizeof line_room, _Alignof(vtx_line));
    double inlet_pressure_room;
    double *const inlet_pressure = batch_place(b, 0, i, &inlet_pressure_room, sizeof inlet_pressure_room,
        _Alignof(double));
    vtx_line_state state_room;
    vtx_line_state *const state = batch_place(b, 1, i, &state_room, sizeof state_room, _Alignof(vtx_line_state));
    const vtx_status answer = vtx_line_inlet_pressure(gas, line, batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), inlet_pressure, state);
    batch_move(b, 0, i, inlet_pressure, &inlet_pressure_room, sizeof inlet_pressure_room);
    batch_move(b, 1, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_line_inlet_pressure_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, vtx_line_state *state, ptrdiff_t state_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { line, line_stride, 1 },
        { mass_flow, mass_flow_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { inlet_pressure, inlet_pressure_stride, 0, sizeof *inlet_pressure },
        { state, state_stride, 1, sizeof *state } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, line_inlet_pressure_item, status, failed);
}

static ALWAYS_INLINE vtx_status line_diameter_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_line line_room;
    const vtx_line *const line = batch_record(b, 1, i, &line_room, sizeof line_room, _Alignof(vtx_line));
    double diameter_room;
    double *const diameter = batch_place(b, 0, i, &diameter_room, sizeof diameter_room, _Alignof(double));
    vtx_line_state state_room;
    vtx_line_state *const state = batch_place(b, 1, i, &state_room, sizeof state_room, _Alignof(vtx_line_state));
    const vtx_status answer = vtx_line_diameter(gas, line, batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), batch_get(b, 5, i), diameter, state);
    batch_move(b, 0, i, diameter, &diameter_room, sizeof diameter_room);
    batch_move(b, 1, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_line_diameter_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *diameter, ptrdiff_t diameter_stride,
        vtx_line_state *state, ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { line, line_stride, 1 },
        { mass_flow, mass_flow_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { diameter, diameter_stride, 0, sizeof *diameter },
        { state, state_stride, 1, sizeof *state } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, line_diameter_item, status, failed);
}

static ALWAYS_INLINE vtx_status line_length_item(const struct batch *b, size_t i)
{
    vtx_gas gas_room;
    const vtx_gas *const gas = batch_record(b, 0, i, &gas_room, sizeof gas_room, _Alignof(vtx_gas));
    vtx_line line_room;
    const vtx_line *const line = batch_record(b, 1, i, &line_room, sizeof line_room, _Alignof(vtx_line));
    double length_room;
    double *const length = batch_place(b, 0, i, &length_room, sizeof length_room, _Alignof(double));
    vtx_line_state state_room;
    vtx_line_state *const state = batch_place(b, 1, i, &state_room, sizeof state_room, _Alignof(vtx_line_state));
    const vtx_status answer = vtx_line_length(gas, line, batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i),
        batch_get(b, 5, i), length, state);
    batch_move(b, 0, i, length, &length_room, sizeof length_room);
    batch_move(b, 1, i, state, &state_room, sizeof state_room);
    return answer;
}

vtx_status vtx_line_length_batch(size_t n, const vtx_gas *gas, ptrdiff_t gas_stride, const vtx_line *line,
        ptrdiff_t line_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *length, ptrdiff_t length_stride,
        vtx_line_state *state, ptrdiff_t state_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gas, gas_stride, 1 }, { line, line_stride, 1 },
        { mass_flow, mass_flow_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { length, length_stride, 0, sizeof *length },
        { state, state_stride, 1, sizeof *state } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, line_length_item, status, failed);
}
