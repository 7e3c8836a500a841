/* Batch forms of conductance.h. Written by build-aux/generate. */
#include <vtx/conductance.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status component_mass_flow_item(const struct batch *b, size_t i)
{
    vtx_component component_room;
    const vtx_component *const component = batch_record(b, 0, i, &component_room, sizeof component_room,
        _Alignof(vtx_component));
    double mass_flow_room;
    double *const mass_flow = batch_place(b, 0, i, &mass_flow_room, sizeof mass_flow_room, _Alignof(double));
    int32_t choked_room;
    int32_t *const choked = batch_place(b, 1, i, &choked_room, sizeof choked_room, _Alignof(int32_t));
    const vtx_status answer = vtx_component_mass_flow(component, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), mass_flow, choked);
    batch_move(b, 0, i, mass_flow, &mass_flow_room, sizeof mass_flow_room);
    batch_move(b, 1, i, choked, &choked_room, sizeof choked_room);
    return answer;
}

vtx_status vtx_component_mass_flow_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked, ptrdiff_t choked_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { component, component_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0, sizeof *mass_flow },
        { choked, choked_stride, 1, sizeof *choked } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, component_mass_flow_item, status, failed);
}

static ALWAYS_INLINE vtx_status component_conductance_item(const struct batch *b, size_t i)
{
    vtx_component component_room;
    const vtx_component *const component = batch_record(b, 0, i, &component_room, sizeof component_room,
        _Alignof(vtx_component));
    double conductance_room;
    double *const conductance = batch_place(b, 0, i, &conductance_room, sizeof conductance_room, _Alignof(double));
    const vtx_status answer = vtx_component_conductance(component, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), conductance);
    batch_move(b, 0, i, conductance, &conductance_room, sizeof conductance_room);
    return answer;
}

vtx_status vtx_component_conductance_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *conductance,
        ptrdiff_t conductance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { component, component_stride, 1 }, { mass_flow, mass_flow_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0, sizeof *conductance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, component_conductance_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status component_outlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_component component_room;
    const vtx_component *const component = batch_record(b, 0, i, &component_room, sizeof component_room,
        _Alignof(vtx_component));
    double outlet_pressure_room;
    double *const outlet_pressure = batch_place(b, 0, i, &outlet_pressure_room, sizeof outlet_pressure_room,
        _Alignof(double));
    double attainable_mass_flow_room;
    double *const attainable_mass_flow = batch_place(b, 1, i, &attainable_mass_flow_room,
        sizeof attainable_mass_flow_room, _Alignof(double));
    const vtx_status answer = vtx_component_outlet_pressure(component, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), outlet_pressure, attainable_mass_flow);
    batch_move(b, 0, i, outlet_pressure, &outlet_pressure_room, sizeof outlet_pressure_room);
    batch_move(b, 1, i, attainable_mass_flow, &attainable_mass_flow_room, sizeof attainable_mass_flow_room);
    return answer;
}

vtx_status vtx_component_outlet_pressure_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *attainable_mass_flow,
        ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { component, component_stride, 1 }, { mass_flow, mass_flow_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride } };
    const struct batch_output out[] = { { outlet_pressure, outlet_pressure_stride, 0, sizeof *outlet_pressure },
        { attainable_mass_flow, attainable_mass_flow_stride, 1, sizeof *attainable_mass_flow } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, component_outlet_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status component_inlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_component component_room;
    const vtx_component *const component = batch_record(b, 0, i, &component_room, sizeof component_room,
        _Alignof(vtx_component));
    double inlet_pressure_room;
    double *const inlet_pressure = batch_place(b, 0, i, &inlet_pressure_room, sizeof inlet_pressure_room,
        _Alignof(double));
    const vtx_status answer = vtx_component_inlet_pressure(component, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), inlet_pressure);
    batch_move(b, 0, i, inlet_pressure, &inlet_pressure_room, sizeof inlet_pressure_room);
    return answer;
}

vtx_status vtx_component_inlet_pressure_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { component, component_stride, 1 }, { mass_flow, mass_flow_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { inlet_pressure, inlet_pressure_stride, 0, sizeof *inlet_pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, component_inlet_pressure_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status conductance_in_series_item(const struct batch *b, size_t i)
{
    double conductance_room;
    double *const conductance = batch_place(b, 0, i, &conductance_room, sizeof conductance_room, _Alignof(double));
    double critical_ratio_room;
    double *const critical_ratio = batch_place(b, 1, i, &critical_ratio_room, sizeof critical_ratio_room,
        _Alignof(double));
    double choking_ratio_room;
    double *const choking_ratio = batch_place(b, 2, i, &choking_ratio_room, sizeof choking_ratio_room,
        _Alignof(double));
    const vtx_status answer = vtx_conductance_in_series(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), conductance, critical_ratio, choking_ratio);
    batch_move(b, 0, i, conductance, &conductance_room, sizeof conductance_room);
    batch_move(b, 1, i, critical_ratio, &critical_ratio_room, sizeof critical_ratio_room);
    batch_move(b, 2, i, choking_ratio, &choking_ratio_room, sizeof choking_ratio_room);
    return answer;
}

vtx_status vtx_conductance_in_series_batch(size_t n, const double *upstream_conductance,
        ptrdiff_t upstream_conductance_stride, const double *upstream_critical_ratio,
        ptrdiff_t upstream_critical_ratio_stride, const double *downstream_conductance,
        ptrdiff_t downstream_conductance_stride, const double *downstream_critical_ratio,
        ptrdiff_t downstream_critical_ratio_stride, double *conductance, ptrdiff_t conductance_stride,
        double *critical_ratio, ptrdiff_t critical_ratio_stride, double *choking_ratio,
        ptrdiff_t choking_ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { upstream_conductance, upstream_conductance_stride },
        { upstream_critical_ratio, upstream_critical_ratio_stride },
        { downstream_conductance, downstream_conductance_stride },
        { downstream_critical_ratio, downstream_critical_ratio_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0, sizeof *conductance },
        { critical_ratio, critical_ratio_stride, 1, sizeof *critical_ratio },
        { choking_ratio, choking_ratio_stride, 1, sizeof *choking_ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_in_series_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status conductance_in_parallel_item(const struct batch *b, size_t i)
{
    double conductance_room;
    double *const conductance = batch_place(b, 0, i, &conductance_room, sizeof conductance_room, _Alignof(double));
    double critical_ratio_room;
    double *const critical_ratio = batch_place(b, 1, i, &critical_ratio_room, sizeof critical_ratio_room,
        _Alignof(double));
    const vtx_status answer = vtx_conductance_in_parallel(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), conductance, critical_ratio);
    batch_move(b, 0, i, conductance, &conductance_room, sizeof conductance_room);
    batch_move(b, 1, i, critical_ratio, &critical_ratio_room, sizeof critical_ratio_room);
    return answer;
}

vtx_status vtx_conductance_in_parallel_batch(size_t n, const double *first_conductance,
        ptrdiff_t first_conductance_stride, const double *first_critical_ratio,
        ptrdiff_t first_critical_ratio_stride, const double *second_conductance, ptrdiff_t second_conductance_stride,
        const double *second_critical_ratio, ptrdiff_t second_critical_ratio_stride, double *conductance,
        ptrdiff_t conductance_stride, double *critical_ratio, ptrdiff_t critical_ratio_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { first_conductance, first_conductance_stride },
        { first_critical_ratio, first_critical_ratio_stride }, { second_conductance, second_conductance_stride },
        { second_critical_ratio, second_critical_ratio_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0, sizeof *conductance },
        { critical_ratio, critical_ratio_stride, 1, sizeof *critical_ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_in_parallel_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status tube_conductance_item(const struct batch *b, size_t i)
{
    double conductance_room;
    double *const conductance = batch_place(b, 0, i, &conductance_room, sizeof conductance_room, _Alignof(double));
    double critical_ratio_room;
    double *const critical_ratio = batch_place(b, 1, i, &critical_ratio_room, sizeof critical_ratio_room,
        _Alignof(double));
    const vtx_status answer = vtx_tube_conductance(batch_get(b, 0, i), batch_get(b, 1, i), conductance,
        critical_ratio);
    batch_move(b, 0, i, conductance, &conductance_room, sizeof conductance_room);
    batch_move(b, 1, i, critical_ratio, &critical_ratio_room, sizeof critical_ratio_room);
    return answer;
}

vtx_status vtx_tube_conductance_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride,
        const double *length, ptrdiff_t length_stride, double *conductance, ptrdiff_t conductance_stride,
        double *critical_ratio, ptrdiff_t critical_ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { diameter, diameter_stride }, { length, length_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0, sizeof *conductance },
        { critical_ratio, critical_ratio_stride, 1, sizeof *critical_ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, tube_conductance_item, status, failed);
}
