/* Batch forms of air_cost.h. Written by build-aux/generate. */
#include <vtx/air_cost.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status air_use_cost_item(const struct batch *b, size_t i)
{
    double energy_room;
    double *const energy = batch_place(b, 0, i, &energy_room, sizeof energy_room, _Alignof(double));
    double cost_room;
    double *const cost = batch_place(b, 1, i, &cost_room, sizeof cost_room, _Alignof(double));
    double carbon_room;
    double *const carbon = batch_place(b, 2, i, &carbon_room, sizeof carbon_room, _Alignof(double));
    const vtx_status answer = vtx_air_use_cost(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), energy, cost, carbon);
    batch_move(b, 0, i, energy, &energy_room, sizeof energy_room);
    batch_move(b, 1, i, cost, &cost_room, sizeof cost_room);
    batch_move(b, 2, i, carbon, &carbon_room, sizeof carbon_room);
    return answer;
}

vtx_status vtx_air_use_cost_batch(size_t n, const double *specific_power, ptrdiff_t specific_power_stride,
        const double *free_air, ptrdiff_t free_air_stride, const double *running_time, ptrdiff_t running_time_stride,
        const double *energy_price, ptrdiff_t energy_price_stride, const double *carbon_intensity,
        ptrdiff_t carbon_intensity_stride, double *energy, ptrdiff_t energy_stride, double *cost,
        ptrdiff_t cost_stride, double *carbon, ptrdiff_t carbon_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { specific_power, specific_power_stride }, { free_air, free_air_stride },
        { running_time, running_time_stride }, { energy_price, energy_price_stride },
        { carbon_intensity, carbon_intensity_stride } };
    const struct batch_output out[] = { { energy, energy_stride, 0, sizeof *energy },
        { cost, cost_stride, 1, sizeof *cost }, { carbon, carbon_stride, 1, sizeof *carbon } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_use_cost_item, status, failed);
}

static ALWAYS_INLINE vtx_status compressor_year_item(const struct batch *b, size_t i)
{
    vtx_compressor compressor_room;
    const vtx_compressor *const compressor = batch_record(b, 0, i, &compressor_room, sizeof compressor_room,
        _Alignof(vtx_compressor));
    vtx_air_year year_room;
    vtx_air_year *const year = batch_place(b, 0, i, &year_room, sizeof year_room, _Alignof(vtx_air_year));
    const vtx_status answer = vtx_compressor_year(compressor, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), year);
    batch_move(b, 0, i, year, &year_room, sizeof year_room);
    return answer;
}

vtx_status vtx_compressor_year_batch(size_t n, const vtx_compressor *compressor, ptrdiff_t compressor_stride,
        const double *demand, ptrdiff_t demand_stride, const double *demand_time, ptrdiff_t demand_time_stride,
        const double *pressurised_time, ptrdiff_t pressurised_time_stride, const double *energy_price,
        ptrdiff_t energy_price_stride, const double *carbon_intensity, ptrdiff_t carbon_intensity_stride,
        vtx_air_year *year, ptrdiff_t year_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { compressor, compressor_stride, 1 }, { demand, demand_stride },
        { demand_time, demand_time_stride }, { pressurised_time, pressurised_time_stride },
        { energy_price, energy_price_stride }, { carbon_intensity, carbon_intensity_stride } };
    const struct batch_output out[] = { { year, year_stride, 0, sizeof *year } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, compressor_year_item, status, failed);
}
