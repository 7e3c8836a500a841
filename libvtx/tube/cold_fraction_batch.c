/* Batch forms of cold_fraction.h. Written by build-aux/generate. */
#include <vtx/cold_fraction.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status cold_fraction_from_thermometers_item(const struct batch *b, size_t i)
{
    double cold_fraction_room;
    double *const cold_fraction = batch_place(b, 0, i, &cold_fraction_room, sizeof cold_fraction_room,
        _Alignof(double));
    double uncertainty_room;
    double *const uncertainty = batch_place(b, 1, i, &uncertainty_room, sizeof uncertainty_room, _Alignof(double));
    const vtx_status answer = vtx_cold_fraction_from_thermometers(b->selector[0], batch_get(b, 0, i),
        batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i),
        batch_get(b, 6, i), batch_get(b, 7, i), batch_get(b, 8, i), batch_get(b, 9, i), cold_fraction, uncertainty);
    batch_move(b, 0, i, cold_fraction, &cold_fraction_room, sizeof cold_fraction_room);
    batch_move(b, 1, i, uncertainty, &uncertainty_room, sizeof uncertainty_room);
    return answer;
}

vtx_status vtx_cold_fraction_from_thermometers_batch(size_t n, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, const double *hot_temperature,
        ptrdiff_t hot_temperature_stride, const double *inlet_uncertainty, ptrdiff_t inlet_uncertainty_stride,
        const double *cold_uncertainty, ptrdiff_t cold_uncertainty_stride, const double *hot_uncertainty,
        ptrdiff_t hot_uncertainty_stride, double *cold_fraction, ptrdiff_t cold_fraction_stride, double *uncertainty,
        ptrdiff_t uncertainty_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride }, { cold_temperature, cold_temperature_stride },
        { hot_pressure, hot_pressure_stride }, { hot_temperature, hot_temperature_stride },
        { inlet_uncertainty, inlet_uncertainty_stride }, { cold_uncertainty, cold_uncertainty_stride },
        { hot_uncertainty, hot_uncertainty_stride } };
    const struct batch_output out[] = { { cold_fraction, cold_fraction_stride, 0, sizeof *cold_fraction },
        { uncertainty, uncertainty_stride, 1, sizeof *uncertainty } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, cold_fraction_from_thermometers_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status cold_fraction_from_flows_item(const struct batch *b, size_t i)
{
    double cold_fraction_room;
    double *const cold_fraction = batch_place(b, 0, i, &cold_fraction_room, sizeof cold_fraction_room,
        _Alignof(double));
    double uncertainty_room;
    double *const uncertainty = batch_place(b, 1, i, &uncertainty_room, sizeof uncertainty_room, _Alignof(double));
    const vtx_status answer = vtx_cold_fraction_from_flows(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), cold_fraction, uncertainty);
    batch_move(b, 0, i, cold_fraction, &cold_fraction_room, sizeof cold_fraction_room);
    batch_move(b, 1, i, uncertainty, &uncertainty_room, sizeof uncertainty_room);
    return answer;
}

vtx_status vtx_cold_fraction_from_flows_batch(size_t n, int32_t pair, const double *first_flow,
        ptrdiff_t first_flow_stride, const double *second_flow, ptrdiff_t second_flow_stride,
        const double *first_uncertainty, ptrdiff_t first_uncertainty_stride, const double *second_uncertainty,
        ptrdiff_t second_uncertainty_stride, double *cold_fraction, ptrdiff_t cold_fraction_stride,
        double *uncertainty, ptrdiff_t uncertainty_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { first_flow, first_flow_stride }, { second_flow, second_flow_stride },
        { first_uncertainty, first_uncertainty_stride }, { second_uncertainty, second_uncertainty_stride } };
    const struct batch_output out[] = { { cold_fraction, cold_fraction_stride, 0, sizeof *cold_fraction },
        { uncertainty, uncertainty_stride, 1, sizeof *uncertainty } };
    const int32_t selector[] = { pair };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, cold_fraction_from_flows_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status cold_fraction_from_three_flows_item(const struct batch *b, size_t i)
{
    vtx_flow_balance balance_room;
    vtx_flow_balance *const balance = batch_place(b, 0, i, &balance_room, sizeof balance_room,
        _Alignof(vtx_flow_balance));
    const vtx_status answer = vtx_cold_fraction_from_three_flows(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), balance);
    batch_move(b, 0, i, balance, &balance_room, sizeof balance_room);
    return answer;
}

vtx_status vtx_cold_fraction_from_three_flows_batch(size_t n, const double *inlet_flow, ptrdiff_t inlet_flow_stride,
        const double *cold_flow, ptrdiff_t cold_flow_stride, const double *hot_flow, ptrdiff_t hot_flow_stride,
        const double *inlet_uncertainty, ptrdiff_t inlet_uncertainty_stride, const double *cold_uncertainty,
        ptrdiff_t cold_uncertainty_stride, const double *hot_uncertainty, ptrdiff_t hot_uncertainty_stride,
        vtx_flow_balance *balance, ptrdiff_t balance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_flow, inlet_flow_stride }, { cold_flow, cold_flow_stride },
        { hot_flow, hot_flow_stride }, { inlet_uncertainty, inlet_uncertainty_stride },
        { cold_uncertainty, cold_uncertainty_stride }, { hot_uncertainty, hot_uncertainty_stride } };
    const struct batch_output out[] = { { balance, balance_stride, 0, sizeof *balance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cold_fraction_from_three_flows_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status cold_fraction_combined_item(const struct batch *b, size_t i)
{
    double cold_fraction_room;
    double *const cold_fraction = batch_place(b, 0, i, &cold_fraction_room, sizeof cold_fraction_room,
        _Alignof(double));
    double uncertainty_room;
    double *const uncertainty = batch_place(b, 1, i, &uncertainty_room, sizeof uncertainty_room, _Alignof(double));
    double discrepancy_room;
    double *const discrepancy = batch_place(b, 2, i, &discrepancy_room, sizeof discrepancy_room, _Alignof(double));
    const vtx_status answer = vtx_cold_fraction_combined(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), cold_fraction, uncertainty, discrepancy);
    batch_move(b, 0, i, cold_fraction, &cold_fraction_room, sizeof cold_fraction_room);
    batch_move(b, 1, i, uncertainty, &uncertainty_room, sizeof uncertainty_room);
    batch_move(b, 2, i, discrepancy, &discrepancy_room, sizeof discrepancy_room);
    return answer;
}

vtx_status vtx_cold_fraction_combined_batch(size_t n, const double *first_fraction, ptrdiff_t first_fraction_stride,
        const double *first_uncertainty, ptrdiff_t first_uncertainty_stride, const double *second_fraction,
        ptrdiff_t second_fraction_stride, const double *second_uncertainty, ptrdiff_t second_uncertainty_stride,
        double *cold_fraction, ptrdiff_t cold_fraction_stride, double *uncertainty, ptrdiff_t uncertainty_stride,
        double *discrepancy, ptrdiff_t discrepancy_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { first_fraction, first_fraction_stride },
        { first_uncertainty, first_uncertainty_stride }, { second_fraction, second_fraction_stride },
        { second_uncertainty, second_uncertainty_stride } };
    const struct batch_output out[] = { { cold_fraction, cold_fraction_stride, 0, sizeof *cold_fraction },
        { uncertainty, uncertainty_stride, 1, sizeof *uncertainty },
        { discrepancy, discrepancy_stride, 1, sizeof *discrepancy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cold_fraction_combined_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status cold_fraction_from_openings_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_openings openings_room;
    const vtx_openings *const openings = batch_record(b, 1, i, &openings_room, sizeof openings_room,
        _Alignof(vtx_openings));
    vtx_opening_flow flow_room;
    vtx_opening_flow *const flow = batch_place(b, 0, i, &flow_room, sizeof flow_room, _Alignof(vtx_opening_flow));
    const vtx_status answer = vtx_cold_fraction_from_openings(tube, openings, b->selector[0], batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), flow);
    batch_move(b, 0, i, flow, &flow_room, sizeof flow_room);
    return answer;
}

vtx_status vtx_cold_fraction_from_openings_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        const vtx_openings *openings, ptrdiff_t openings_stride, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
        vtx_opening_flow *flow, ptrdiff_t flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { openings, openings_stride, 1 },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { humidity_ratio, humidity_ratio_stride }, { cold_pressure, cold_pressure_stride },
        { hot_pressure, hot_pressure_stride } };
    const struct batch_output out[] = { { flow, flow_stride, 0, sizeof *flow } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, cold_fraction_from_openings_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status hot_area_for_cold_fraction_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_openings openings_room;
    const vtx_openings *const openings = batch_record(b, 1, i, &openings_room, sizeof openings_room,
        _Alignof(vtx_openings));
    double hot_area_room;
    double *const hot_area = batch_place(b, 0, i, &hot_area_room, sizeof hot_area_room, _Alignof(double));
    const vtx_status answer = vtx_hot_area_for_cold_fraction(tube, openings, b->selector[0], batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), batch_get(b, 7, i), hot_area);
    batch_move(b, 0, i, hot_area, &hot_area_room, sizeof hot_area_room);
    return answer;
}

vtx_status vtx_hot_area_for_cold_fraction_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride,
        const vtx_openings *openings, ptrdiff_t openings_stride, int32_t model, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *hot_area, ptrdiff_t hot_area_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { openings, openings_stride, 1 },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { humidity_ratio, humidity_ratio_stride }, { cold_pressure, cold_pressure_stride },
        { hot_pressure, hot_pressure_stride }, { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { hot_area, hot_area_stride, 0, sizeof *hot_area } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, hot_area_for_cold_fraction_item,
        status, failed);
}
