/* Batch forms of conductance.h. Written by build-aux/generate. */
#include <vtx/conductance.h>

#include "../base/batch.h"

static vtx_status component_mass_flow_item(const struct batch *b, size_t i)
{
    vtx_component component;
    batch_get_bytes(b, 0, i, &component, sizeof component);
    double mass_flow;
    int32_t choked;
    const vtx_status answer = vtx_component_mass_flow(&component, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), &mass_flow, &choked);
    batch_put(b, 0, i, &mass_flow, sizeof mass_flow);
    batch_put(b, 1, i, &choked, sizeof choked);
    return answer;
}

vtx_status vtx_component_mass_flow_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *choked, ptrdiff_t choked_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { component, component_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0 }, { choked, choked_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, component_mass_flow_item, status, failed);
}

static vtx_status component_conductance_item(const struct batch *b, size_t i)
{
    vtx_component component;
    batch_get_bytes(b, 0, i, &component, sizeof component);
    double conductance;
    const vtx_status answer = vtx_component_conductance(&component, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), &conductance);
    batch_put(b, 0, i, &conductance, sizeof conductance);
    return answer;
}

vtx_status vtx_component_conductance_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *conductance,
        ptrdiff_t conductance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { component, component_stride }, { mass_flow, mass_flow_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, component_conductance_item, status,
        failed);
}

static vtx_status component_outlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_component component;
    batch_get_bytes(b, 0, i, &component, sizeof component);
    double outlet_pressure;
    double attainable_mass_flow;
    const vtx_status answer = vtx_component_outlet_pressure(&component, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), &outlet_pressure, &attainable_mass_flow);
    batch_put(b, 0, i, &outlet_pressure, sizeof outlet_pressure);
    batch_put(b, 1, i, &attainable_mass_flow, sizeof attainable_mass_flow);
    return answer;
}

vtx_status vtx_component_outlet_pressure_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        double *outlet_pressure, ptrdiff_t outlet_pressure_stride, double *attainable_mass_flow,
        ptrdiff_t attainable_mass_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { component, component_stride }, { mass_flow, mass_flow_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride } };
    const struct batch_output out[] = { { outlet_pressure, outlet_pressure_stride, 0 },
        { attainable_mass_flow, attainable_mass_flow_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, component_outlet_pressure_item, status,
        failed);
}

static vtx_status component_inlet_pressure_item(const struct batch *b, size_t i)
{
    vtx_component component;
    batch_get_bytes(b, 0, i, &component, sizeof component);
    double inlet_pressure;
    const vtx_status answer = vtx_component_inlet_pressure(&component, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), &inlet_pressure);
    batch_put(b, 0, i, &inlet_pressure, sizeof inlet_pressure);
    return answer;
}

vtx_status vtx_component_inlet_pressure_batch(size_t n, const vtx_component *component, ptrdiff_t component_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *outlet_pressure, ptrdiff_t outlet_pressure_stride,
        double *inlet_pressure, ptrdiff_t inlet_pressure_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { component, component_stride }, { mass_flow, mass_flow_stride },
        { inlet_temperature, inlet_temperature_stride }, { outlet_pressure, outlet_pressure_stride } };
    const struct batch_output out[] = { { inlet_pressure, inlet_pressure_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, component_inlet_pressure_item, status,
        failed);
}

static vtx_status conductance_in_series_item(const struct batch *b, size_t i)
{
    double conductance;
    double critical_ratio;
    double choking_ratio;
    const vtx_status answer = vtx_conductance_in_series(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), &conductance, &critical_ratio, &choking_ratio);
    batch_put(b, 0, i, &conductance, sizeof conductance);
    batch_put(b, 1, i, &critical_ratio, sizeof critical_ratio);
    batch_put(b, 2, i, &choking_ratio, sizeof choking_ratio);
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
    const struct batch_output out[] = { { conductance, conductance_stride, 0 },
        { critical_ratio, critical_ratio_stride, 1 }, { choking_ratio, choking_ratio_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_in_series_item, status,
        failed);
}

static vtx_status conductance_in_parallel_item(const struct batch *b, size_t i)
{
    double conductance;
    double critical_ratio;
    const vtx_status answer = vtx_conductance_in_parallel(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), &conductance, &critical_ratio);
    batch_put(b, 0, i, &conductance, sizeof conductance);
    batch_put(b, 1, i, &critical_ratio, sizeof critical_ratio);
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
    const struct batch_output out[] = { { conductance, conductance_stride, 0 },
        { critical_ratio, critical_ratio_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, conductance_in_parallel_item, status,
        failed);
}

static vtx_status tube_conductance_item(const struct batch *b, size_t i)
{
    double conductance;
    double critical_ratio;
    const vtx_status answer = vtx_tube_conductance(batch_get(b, 0, i), batch_get(b, 1, i), &conductance,
        &critical_ratio);
    batch_put(b, 0, i, &conductance, sizeof conductance);
    batch_put(b, 1, i, &critical_ratio, sizeof critical_ratio);
    return answer;
}

vtx_status vtx_tube_conductance_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride,
        const double *length, ptrdiff_t length_stride, double *conductance, ptrdiff_t conductance_stride,
        double *critical_ratio, ptrdiff_t critical_ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { diameter, diameter_stride }, { length, length_stride } };
    const struct batch_output out[] = { { conductance, conductance_stride, 0 },
        { critical_ratio, critical_ratio_stride, 1 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, tube_conductance_item, status, failed);
}
