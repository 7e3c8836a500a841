/* Batch forms of icing.h. Written by build-aux/generate. */
#include <vtx/icing.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status icing_range_item(const struct batch *b, size_t i)
{
    vtx_tube tube_room;
    const vtx_tube *const tube = batch_record(b, 0, i, &tube_room, sizeof tube_room, _Alignof(vtx_tube));
    vtx_icing icing_room;
    vtx_icing *const icing = batch_place(b, 0, i, &icing_room, sizeof icing_room, _Alignof(vtx_icing));
    const vtx_status answer = vtx_icing_range(tube, batch_get(b, 1, i), batch_get(b, 2, i), batch_get(b, 3, i),
        batch_get(b, 4, i), icing);
    batch_move(b, 0, i, icing, &icing_room, sizeof icing_room);
    return answer;
}

vtx_status vtx_icing_range_batch(size_t n, const vtx_tube *tube, ptrdiff_t tube_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *cold_pressure,
        ptrdiff_t cold_pressure_stride, vtx_icing *icing, ptrdiff_t icing_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tube, tube_stride, 1 }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { humidity_ratio, humidity_ratio_stride },
        { cold_pressure, cold_pressure_stride } };
    const struct batch_output out[] = { { icing, icing_stride, 0, sizeof *icing } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, icing_range_item, status, failed);
}

static ALWAYS_INLINE vtx_status cold_condensate_flow_item(const struct batch *b, size_t i)
{
    vtx_streams streams_room;
    const vtx_streams *const streams = batch_record(b, 0, i, &streams_room, sizeof streams_room,
        _Alignof(vtx_streams));
    double ice_flow_room;
    double *const ice_flow = batch_place(b, 0, i, &ice_flow_room, sizeof ice_flow_room, _Alignof(double));
    double liquid_flow_room;
    double *const liquid_flow = batch_place(b, 1, i, &liquid_flow_room, sizeof liquid_flow_room, _Alignof(double));
    const vtx_status answer = vtx_cold_condensate_flow(streams, batch_get(b, 1, i), batch_get(b, 2, i), ice_flow,
        liquid_flow);
    batch_move(b, 0, i, ice_flow, &ice_flow_room, sizeof ice_flow_room);
    batch_move(b, 1, i, liquid_flow, &liquid_flow_room, sizeof liquid_flow_room);
    return answer;
}

vtx_status vtx_cold_condensate_flow_batch(size_t n, const vtx_streams *streams, ptrdiff_t streams_stride,
        const double *humidity_ratio, ptrdiff_t humidity_ratio_stride, const double *inlet_mass_flow,
        ptrdiff_t inlet_mass_flow_stride, double *ice_flow, ptrdiff_t ice_flow_stride, double *liquid_flow,
        ptrdiff_t liquid_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { streams, streams_stride, 1 }, { humidity_ratio, humidity_ratio_stride },
        { inlet_mass_flow, inlet_mass_flow_stride } };
    const struct batch_output out[] = { { ice_flow, ice_flow_stride, 0, sizeof *ice_flow },
        { liquid_flow, liquid_flow_stride, 1, sizeof *liquid_flow } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cold_condensate_flow_item, status, failed);
}
