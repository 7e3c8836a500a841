/* Batch forms of filter.h. Written by build-aux/generate. */
#include <vtx/filter.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status filter_drop_item(const struct batch *b, size_t i)
{
    vtx_filter filter_room;
    const vtx_filter *const filter = batch_record(b, 0, i, &filter_room, sizeof filter_room, _Alignof(vtx_filter));
    double drop_room;
    double *const drop = batch_place(b, 0, i, &drop_room, sizeof drop_room, _Alignof(double));
    const vtx_status answer = vtx_filter_drop(filter, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
        drop);
    batch_move(b, 0, i, drop, &drop_room, sizeof drop_room);
    return answer;
}

vtx_status vtx_filter_drop_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride, const double *density,
        ptrdiff_t density_stride, const double *mass_flow, ptrdiff_t mass_flow_stride, const double *loading,
        ptrdiff_t loading_stride, double *drop, ptrdiff_t drop_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { filter, filter_stride, 1 }, { density, density_stride },
        { mass_flow, mass_flow_stride }, { loading, loading_stride } };
    const struct batch_output out[] = { { drop, drop_stride, 0, sizeof *drop } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, filter_drop_item, status, failed);
}

static ALWAYS_INLINE vtx_status filter_loading_item(const struct batch *b, size_t i)
{
    vtx_filter filter_room;
    const vtx_filter *const filter = batch_record(b, 0, i, &filter_room, sizeof filter_room, _Alignof(vtx_filter));
    double loading_room;
    double *const loading = batch_place(b, 0, i, &loading_room, sizeof loading_room, _Alignof(double));
    const vtx_status answer = vtx_filter_loading(filter, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
        loading);
    batch_move(b, 0, i, loading, &loading_room, sizeof loading_room);
    return answer;
}

vtx_status vtx_filter_loading_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride,
        const double *density, ptrdiff_t density_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *drop, ptrdiff_t drop_stride, double *loading, ptrdiff_t loading_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { filter, filter_stride, 1 }, { density, density_stride },
        { mass_flow, mass_flow_stride }, { drop, drop_stride } };
    const struct batch_output out[] = { { loading, loading_stride, 0, sizeof *loading } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, filter_loading_item, status, failed);
}

static ALWAYS_INLINE vtx_status filter_drop_at_reference_item(const struct batch *b, size_t i)
{
    vtx_filter filter_room;
    const vtx_filter *const filter = batch_record(b, 0, i, &filter_room, sizeof filter_room, _Alignof(vtx_filter));
    double reference_drop_room;
    double *const reference_drop = batch_place(b, 0, i, &reference_drop_room, sizeof reference_drop_room,
        _Alignof(double));
    double uncertainty_room;
    double *const uncertainty = batch_place(b, 1, i, &uncertainty_room, sizeof uncertainty_room, _Alignof(double));
    const vtx_status answer = vtx_filter_drop_at_reference(filter, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), batch_get(b, 7, i),
        reference_drop, uncertainty);
    batch_move(b, 0, i, reference_drop, &reference_drop_room, sizeof reference_drop_room);
    batch_move(b, 1, i, uncertainty, &uncertainty_room, sizeof uncertainty_room);
    return answer;
}

vtx_status vtx_filter_drop_at_reference_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride,
        const double *density, ptrdiff_t density_stride, const double *mass_flow, ptrdiff_t mass_flow_stride,
        const double *drop, ptrdiff_t drop_stride, const double *flow_uncertainty, ptrdiff_t flow_uncertainty_stride,
        const double *drop_uncertainty, ptrdiff_t drop_uncertainty_stride, const double *reference_density,
        ptrdiff_t reference_density_stride, const double *reference_flow, ptrdiff_t reference_flow_stride,
        double *reference_drop, ptrdiff_t reference_drop_stride, double *uncertainty, ptrdiff_t uncertainty_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { filter, filter_stride, 1 }, { density, density_stride },
        { mass_flow, mass_flow_stride }, { drop, drop_stride }, { flow_uncertainty, flow_uncertainty_stride },
        { drop_uncertainty, drop_uncertainty_stride }, { reference_density, reference_density_stride },
        { reference_flow, reference_flow_stride } };
    const struct batch_output out[] = { { reference_drop, reference_drop_stride, 0, sizeof *reference_drop },
        { uncertainty, uncertainty_stride, 1, sizeof *uncertainty } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, filter_drop_at_reference_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status filter_loading_when_due_item(const struct batch *b, size_t i)
{
    vtx_filter filter_room;
    const vtx_filter *const filter = batch_record(b, 0, i, &filter_room, sizeof filter_room, _Alignof(vtx_filter));
    double loading_room;
    double *const loading = batch_place(b, 0, i, &loading_room, sizeof loading_room, _Alignof(double));
    const vtx_status answer = vtx_filter_loading_when_due(filter, loading);
    batch_move(b, 0, i, loading, &loading_room, sizeof loading_room);
    return answer;
}

vtx_status vtx_filter_loading_when_due_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride,
        double *loading, ptrdiff_t loading_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { filter, filter_stride, 1 } };
    const struct batch_output out[] = { { loading, loading_stride, 0, sizeof *loading } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, filter_loading_when_due_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status filter_element_item(const struct batch *b, size_t i)
{
    vtx_filter filter_room;
    const vtx_filter *const filter = batch_record(b, 0, i, &filter_room, sizeof filter_room, _Alignof(vtx_filter));
    vtx_chain_element chain_element_room;
    vtx_chain_element *const chain_element = batch_place(b, 0, i, &chain_element_room, sizeof chain_element_room,
        _Alignof(vtx_chain_element));
    const vtx_status answer = vtx_filter_element(filter, batch_get(b, 1, i), chain_element);
    batch_move(b, 0, i, chain_element, &chain_element_room, sizeof chain_element_room);
    return answer;
}

vtx_status vtx_filter_element_batch(size_t n, const vtx_filter *filter, ptrdiff_t filter_stride,
        const double *loading, ptrdiff_t loading_stride, vtx_chain_element *chain_element,
        ptrdiff_t chain_element_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { filter, filter_stride, 1 }, { loading, loading_stride } };
    const struct batch_output out[] = { { chain_element, chain_element_stride, 0, sizeof *chain_element } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, filter_element_item, status, failed);
}

static ALWAYS_INLINE vtx_status filter_time_left_item(const struct batch *b, size_t i)
{
    double time_left_room;
    double *const time_left = batch_place(b, 0, i, &time_left_room, sizeof time_left_room, _Alignof(double));
    const vtx_status answer = vtx_filter_time_left(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), time_left);
    batch_move(b, 0, i, time_left, &time_left_room, sizeof time_left_room);
    return answer;
}

vtx_status vtx_filter_time_left_batch(size_t n, int32_t growth, const double *service_time,
        ptrdiff_t service_time_stride, const double *loading, ptrdiff_t loading_stride, const double *loading_due,
        ptrdiff_t loading_due_stride, double *time_left, ptrdiff_t time_left_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { service_time, service_time_stride }, { loading, loading_stride },
        { loading_due, loading_due_stride } };
    const struct batch_output out[] = { { time_left, time_left_stride, 0, sizeof *time_left } };
    const int32_t selector[] = { growth };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, filter_time_left_item, status, failed);
}

static ALWAYS_INLINE vtx_status filter_economic_interval_item(const struct batch *b, size_t i)
{
    double interval_room;
    double *const interval = batch_place(b, 0, i, &interval_room, sizeof interval_room, _Alignof(double));
    const vtx_status answer = vtx_filter_economic_interval(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), interval);
    batch_move(b, 0, i, interval, &interval_room, sizeof interval_room);
    return answer;
}

vtx_status vtx_filter_economic_interval_batch(size_t n, const double *element_cost, ptrdiff_t element_cost_stride,
        const double *drop_rate, ptrdiff_t drop_rate_stride, const double *power_per_pressure,
        ptrdiff_t power_per_pressure_stride, const double *energy_price, ptrdiff_t energy_price_stride,
        double *interval, ptrdiff_t interval_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { element_cost, element_cost_stride }, { drop_rate, drop_rate_stride },
        { power_per_pressure, power_per_pressure_stride }, { energy_price, energy_price_stride } };
    const struct batch_output out[] = { { interval, interval_stride, 0, sizeof *interval } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, filter_economic_interval_item, status,
        failed);
}
