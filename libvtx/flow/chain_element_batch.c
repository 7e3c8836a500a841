/* Batch forms of chain_element.h. Written by build-aux/generate. */
#include <vtx/chain_element.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status chain_hose_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_hose(batch_get(b, 0, i), batch_get(b, 1, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_hose_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride, const double *length,
        ptrdiff_t length_stride, vtx_chain_element *element, ptrdiff_t element_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { diameter, diameter_stride }, { length, length_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_hose_item, status, failed);
}

static ALWAYS_INLINE vtx_status chain_pipe_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_pipe(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_pipe_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride, const double *length,
        ptrdiff_t length_stride, const double *roughness, ptrdiff_t roughness_stride, const double *minor_loss,
        ptrdiff_t minor_loss_stride, vtx_chain_element *element, ptrdiff_t element_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { diameter, diameter_stride }, { length, length_stride },
        { roughness, roughness_stride }, { minor_loss, minor_loss_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_pipe_item, status, failed);
}

static ALWAYS_INLINE vtx_status chain_conductance_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_conductance(batch_get(b, 0, i), batch_get(b, 1, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_conductance_batch(size_t n, const double *conductance, ptrdiff_t conductance_stride,
        const double *critical_ratio, ptrdiff_t critical_ratio_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { conductance, conductance_stride }, { critical_ratio, critical_ratio_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_conductance_item, status, failed);
}

static ALWAYS_INLINE vtx_status chain_coupling_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_coupling(batch_get(b, 0, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_coupling_batch(size_t n, const double *nominal_diameter, ptrdiff_t nominal_diameter_stride,
        vtx_chain_element *element, ptrdiff_t element_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { nominal_diameter, nominal_diameter_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_coupling_item, status, failed);
}

static ALWAYS_INLINE vtx_status chain_orifice_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_orifice(batch_get(b, 0, i), batch_get(b, 1, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_orifice_batch(size_t n, const double *area, ptrdiff_t area_stride,
        const double *discharge_coefficient, ptrdiff_t discharge_coefficient_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { area, area_stride }, { discharge_coefficient, discharge_coefficient_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_orifice_item, status, failed);
}

static ALWAYS_INLINE vtx_status chain_valve_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_valve(batch_get(b, 0, i), batch_get(b, 1, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_valve_batch(size_t n, const double *flow_coefficient, ptrdiff_t flow_coefficient_stride,
        const double *pressure_ratio_factor, ptrdiff_t pressure_ratio_factor_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { flow_coefficient, flow_coefficient_stride },
        { pressure_ratio_factor, pressure_ratio_factor_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_valve_item, status, failed);
}

static ALWAYS_INLINE vtx_status chain_filter_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_filter(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_filter_batch(size_t n, const double *pressure_loss, ptrdiff_t pressure_loss_stride,
        const double *mass_flow, ptrdiff_t mass_flow_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *temperature, ptrdiff_t temperature_stride,
        const double *laminar_share, ptrdiff_t laminar_share_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure_loss, pressure_loss_stride }, { mass_flow, mass_flow_stride },
        { inlet_pressure, inlet_pressure_stride }, { temperature, temperature_stride },
        { laminar_share, laminar_share_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_filter_item, status, failed);
}

static ALWAYS_INLINE vtx_status chain_regulator_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_regulator(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_regulator_batch(size_t n, const double *set_pressure, ptrdiff_t set_pressure_stride,
        const double *rated_droop, ptrdiff_t rated_droop_stride, const double *rated_flow,
        ptrdiff_t rated_flow_stride, const double *conductance, ptrdiff_t conductance_stride,
        const double *critical_ratio, ptrdiff_t critical_ratio_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { set_pressure, set_pressure_stride }, { rated_droop, rated_droop_stride },
        { rated_flow, rated_flow_stride }, { conductance, conductance_stride },
        { critical_ratio, critical_ratio_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_regulator_item, status, failed);
}

static ALWAYS_INLINE vtx_status chain_manifold_item(const struct batch *b, size_t i)
{
    vtx_chain_element element_room;
    vtx_chain_element *const element = batch_place(b, 0, i, &element_room, sizeof element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_chain_manifold(batch_get(b, 0, i), batch_get(b, 1, i), element);
    batch_move(b, 0, i, element, &element_room, sizeof element_room);
    return answer;
}

vtx_status vtx_chain_manifold_batch(size_t n, const double *branches, ptrdiff_t branches_stride,
        const double *simultaneity, ptrdiff_t simultaneity_stride, vtx_chain_element *element,
        ptrdiff_t element_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { branches, branches_stride }, { simultaneity, simultaneity_stride } };
    const struct batch_output out[] = { { element, element_stride, 0, sizeof *element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, chain_manifold_item, status, failed);
}
