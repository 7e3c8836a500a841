/* Batch forms of cooler.h. Written by build-aux/generate. */
#include <vtx/cooler.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status site_at_altitude_item(const struct batch *b, size_t i)
{
    vtx_site site_room;
    vtx_site *const site = batch_place(b, 0, i, &site_room, sizeof site_room, _Alignof(vtx_site));
    const vtx_status answer = vtx_site_at_altitude(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i), site);
    batch_move(b, 0, i, site, &site_room, sizeof site_room);
    return answer;
}

vtx_status vtx_site_at_altitude_batch(size_t n, const double *altitude, ptrdiff_t altitude_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *relative_humidity,
        ptrdiff_t relative_humidity_stride, vtx_site *site, ptrdiff_t site_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { altitude, altitude_stride }, { temperature, temperature_stride },
        { relative_humidity, relative_humidity_stride } };
    const struct batch_output out[] = { { site, site_stride, 0, sizeof *site } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, site_at_altitude_item, status, failed);
}

static ALWAYS_INLINE vtx_status supply_humidity_ratio_item(const struct batch *b, size_t i)
{
    vtx_supply supply_room;
    const vtx_supply *const supply = batch_record(b, 0, i, &supply_room, sizeof supply_room, _Alignof(vtx_supply));
    double humidity_ratio_room;
    double *const humidity_ratio = batch_place(b, 0, i, &humidity_ratio_room, sizeof humidity_ratio_room,
        _Alignof(double));
    const vtx_status answer = vtx_supply_humidity_ratio(supply, b->selector[0], humidity_ratio);
    batch_move(b, 0, i, humidity_ratio, &humidity_ratio_room, sizeof humidity_ratio_room);
    return answer;
}

vtx_status vtx_supply_humidity_ratio_batch(size_t n, const vtx_supply *supply, ptrdiff_t supply_stride,
        int32_t model, double *humidity_ratio, ptrdiff_t humidity_ratio_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { supply, supply_stride, 1 } };
    const struct batch_output out[] = { { humidity_ratio, humidity_ratio_stride, 0, sizeof *humidity_ratio } };
    const int32_t selector[] = { model };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, supply_humidity_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status cooler_rated_mass_flow_item(const struct batch *b, size_t i)
{
    vtx_cooler cooler_room;
    const vtx_cooler *const cooler = batch_record(b, 0, i, &cooler_room, sizeof cooler_room, _Alignof(vtx_cooler));
    double mass_flow_room;
    double *const mass_flow = batch_place(b, 0, i, &mass_flow_room, sizeof mass_flow_room, _Alignof(double));
    const vtx_status answer = vtx_cooler_rated_mass_flow(cooler, mass_flow);
    batch_move(b, 0, i, mass_flow, &mass_flow_room, sizeof mass_flow_room);
    return answer;
}

vtx_status vtx_cooler_rated_mass_flow_batch(size_t n, const vtx_cooler *cooler, ptrdiff_t cooler_stride,
        double *mass_flow, ptrdiff_t mass_flow_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { cooler, cooler_stride, 1 } };
    const struct batch_output out[] = { { mass_flow, mass_flow_stride, 0, sizeof *mass_flow } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cooler_rated_mass_flow_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status cooler_inlet_area_item(const struct batch *b, size_t i)
{
    vtx_cooler cooler_room;
    const vtx_cooler *const cooler = batch_record(b, 0, i, &cooler_room, sizeof cooler_room, _Alignof(vtx_cooler));
    double area_room;
    double *const area = batch_place(b, 0, i, &area_room, sizeof area_room, _Alignof(double));
    const vtx_status answer = vtx_cooler_inlet_area(cooler, area);
    batch_move(b, 0, i, area, &area_room, sizeof area_room);
    return answer;
}

vtx_status vtx_cooler_inlet_area_batch(size_t n, const vtx_cooler *cooler, ptrdiff_t cooler_stride, double *area,
        ptrdiff_t area_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { cooler, cooler_stride, 1 } };
    const struct batch_output out[] = { { area, area_stride, 0, sizeof *area } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cooler_inlet_area_item, status, failed);
}

static ALWAYS_INLINE vtx_status operating_point_at_item(const struct batch *b, size_t i)
{
    vtx_cooler cooler_room;
    const vtx_cooler *const cooler = batch_record(b, 0, i, &cooler_room, sizeof cooler_room, _Alignof(vtx_cooler));
    vtx_supply supply_room;
    const vtx_supply *const supply = batch_record(b, 1, i, &supply_room, sizeof supply_room, _Alignof(vtx_supply));
    vtx_site site_room;
    const vtx_site *const site = batch_record(b, 2, i, &site_room, sizeof site_room, _Alignof(vtx_site));
    vtx_cooler_setting setting_room;
    const vtx_cooler_setting *const setting = batch_record(b, 3, i, &setting_room, sizeof setting_room,
        _Alignof(vtx_cooler_setting));
    vtx_operating_point point_room;
    vtx_operating_point *const point = batch_place(b, 0, i, &point_room, sizeof point_room,
        _Alignof(vtx_operating_point));
    const vtx_status answer = vtx_operating_point_at(cooler, supply, site, setting, batch_get(b, 4, i), point);
    batch_move(b, 0, i, point, &point_room, sizeof point_room);
    return answer;
}

vtx_status vtx_operating_point_at_batch(size_t n, const vtx_cooler *cooler, ptrdiff_t cooler_stride,
        const vtx_supply *supply, ptrdiff_t supply_stride, const vtx_site *site, ptrdiff_t site_stride,
        const vtx_cooler_setting *setting, ptrdiff_t setting_stride, const double *target_temperature,
        ptrdiff_t target_temperature_stride, vtx_operating_point *point, ptrdiff_t point_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { cooler, cooler_stride, 1 }, { supply, supply_stride, 1 },
        { site, site_stride, 1 }, { setting, setting_stride, 1 }, { target_temperature, target_temperature_stride } };
    const struct batch_output out[] = { { point, point_stride, 0, sizeof *point } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, operating_point_at_item, status, failed);
}
