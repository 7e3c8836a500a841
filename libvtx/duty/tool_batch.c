/* Batch forms of tool.h. Written by build-aux/generate. */
#include <vtx/tool.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status fin_of_bar_item(const struct batch *b, size_t i)
{
    vtx_fin fin_room;
    vtx_fin *const fin = batch_place(b, 0, i, &fin_room, sizeof fin_room, _Alignof(vtx_fin));
    const vtx_status answer = vtx_fin_of_bar(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), fin);
    batch_move(b, 0, i, fin, &fin_room, sizeof fin_room);
    return answer;
}

vtx_status vtx_fin_of_bar_batch(size_t n, const double *film_coefficient, ptrdiff_t film_coefficient_stride,
        const double *perimeter, ptrdiff_t perimeter_stride, const double *section, ptrdiff_t section_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *length, ptrdiff_t length_stride,
        vtx_fin *fin, ptrdiff_t fin_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { film_coefficient, film_coefficient_stride }, { perimeter, perimeter_stride },
        { section, section_stride }, { conductivity, conductivity_stride }, { length, length_stride } };
    const struct batch_output out[] = { { fin, fin_stride, 0, sizeof *fin } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, fin_of_bar_item, status, failed);
}

static ALWAYS_INLINE vtx_status tool_temperature_item(const struct batch *b, size_t i)
{
    vtx_tool tool_room;
    const vtx_tool *const tool = batch_record(b, 0, i, &tool_room, sizeof tool_room, _Alignof(vtx_tool));
    vtx_tool_temperatures temperatures_room;
    vtx_tool_temperatures *const temperatures = batch_place(b, 0, i, &temperatures_room, sizeof temperatures_room,
        _Alignof(vtx_tool_temperatures));
    const vtx_status answer = vtx_tool_temperature(tool, batch_get(b, 1, i), batch_get(b, 2, i), temperatures);
    batch_move(b, 0, i, temperatures, &temperatures_room, sizeof temperatures_room);
    return answer;
}

vtx_status vtx_tool_temperature_batch(size_t n, const vtx_tool *tool, ptrdiff_t tool_stride, const double *heat_flow,
        ptrdiff_t heat_flow_stride, const double *air_temperature, ptrdiff_t air_temperature_stride,
        vtx_tool_temperatures *temperatures, ptrdiff_t temperatures_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tool, tool_stride, 1 }, { heat_flow, heat_flow_stride },
        { air_temperature, air_temperature_stride } };
    const struct batch_output out[] = { { temperatures, temperatures_stride, 0, sizeof *temperatures } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, tool_temperature_item, status, failed);
}

static ALWAYS_INLINE vtx_status tool_film_coefficient_item(const struct batch *b, size_t i)
{
    vtx_tool tool_room;
    const vtx_tool *const tool = batch_record(b, 0, i, &tool_room, sizeof tool_room, _Alignof(vtx_tool));
    vtx_tool_film film_room;
    vtx_tool_film *const film = batch_place(b, 0, i, &film_room, sizeof film_room, _Alignof(vtx_tool_film));
    const vtx_status answer = vtx_tool_film_coefficient(tool, batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), film);
    batch_move(b, 0, i, film, &film_room, sizeof film_room);
    return answer;
}

vtx_status vtx_tool_film_coefficient_batch(size_t n, const vtx_tool *tool, ptrdiff_t tool_stride,
        const double *heat_flow, ptrdiff_t heat_flow_stride, const double *air_temperature,
        ptrdiff_t air_temperature_stride, const double *wanted_temperature, ptrdiff_t wanted_temperature_stride,
        vtx_tool_film *film, ptrdiff_t film_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { tool, tool_stride, 1 }, { heat_flow, heat_flow_stride },
        { air_temperature, air_temperature_stride }, { wanted_temperature, wanted_temperature_stride } };
    const struct batch_output out[] = { { film, film_stride, 0, sizeof *film } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, tool_film_coefficient_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status moving_band_rise_item(const struct batch *b, size_t i)
{
    double mean_rise_room;
    double *const mean_rise = batch_place(b, 0, i, &mean_rise_room, sizeof mean_rise_room, _Alignof(double));
    double largest_rise_room;
    double *const largest_rise = batch_place(b, 1, i, &largest_rise_room, sizeof largest_rise_room, _Alignof(double));
    const vtx_status answer = vtx_moving_band_rise(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), mean_rise, largest_rise);
    batch_move(b, 0, i, mean_rise, &mean_rise_room, sizeof mean_rise_room);
    batch_move(b, 1, i, largest_rise, &largest_rise_room, sizeof largest_rise_room);
    return answer;
}

vtx_status vtx_moving_band_rise_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *diffusivity,
        ptrdiff_t diffusivity_stride, const double *speed, ptrdiff_t speed_stride, const double *length,
        ptrdiff_t length_stride, double *mean_rise, ptrdiff_t mean_rise_stride, double *largest_rise,
        ptrdiff_t largest_rise_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_flux, heat_flux_stride }, { conductivity, conductivity_stride },
        { diffusivity, diffusivity_stride }, { speed, speed_stride }, { length, length_stride } };
    const struct batch_output out[] = { { mean_rise, mean_rise_stride, 0, sizeof *mean_rise },
        { largest_rise, largest_rise_stride, 1, sizeof *largest_rise } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, moving_band_rise_item, status, failed);
}

static ALWAYS_INLINE vtx_status standing_disc_rise_item(const struct batch *b, size_t i)
{
    double mean_rise_room;
    double *const mean_rise = batch_place(b, 0, i, &mean_rise_room, sizeof mean_rise_room, _Alignof(double));
    double centre_rise_room;
    double *const centre_rise = batch_place(b, 1, i, &centre_rise_room, sizeof centre_rise_room, _Alignof(double));
    const vtx_status answer = vtx_standing_disc_rise(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        mean_rise, centre_rise);
    batch_move(b, 0, i, mean_rise, &mean_rise_room, sizeof mean_rise_room);
    batch_move(b, 1, i, centre_rise, &centre_rise_room, sizeof centre_rise_room);
    return answer;
}

vtx_status vtx_standing_disc_rise_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *radius, ptrdiff_t radius_stride,
        double *mean_rise, ptrdiff_t mean_rise_stride, double *centre_rise, ptrdiff_t centre_rise_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_flux, heat_flux_stride }, { conductivity, conductivity_stride },
        { radius, radius_stride } };
    const struct batch_output out[] = { { mean_rise, mean_rise_stride, 0, sizeof *mean_rise },
        { centre_rise, centre_rise_stride, 1, sizeof *centre_rise } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, standing_disc_rise_item, status, failed);
}

static ALWAYS_INLINE vtx_status moving_source_rise_item(const struct batch *b, size_t i)
{
    vtx_moving_source source_room;
    vtx_moving_source *const source = batch_place(b, 0, i, &source_room, sizeof source_room,
        _Alignof(vtx_moving_source));
    const vtx_status answer = vtx_moving_source_rise(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), source);
    batch_move(b, 0, i, source, &source_room, sizeof source_room);
    return answer;
}

vtx_status vtx_moving_source_rise_batch(size_t n, const double *heat_flux, ptrdiff_t heat_flux_stride,
        const double *conductivity, ptrdiff_t conductivity_stride, const double *diffusivity,
        ptrdiff_t diffusivity_stride, const double *speed, ptrdiff_t speed_stride, const double *length,
        ptrdiff_t length_stride, const double *width, ptrdiff_t width_stride, vtx_moving_source *source,
        ptrdiff_t source_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_flux, heat_flux_stride }, { conductivity, conductivity_stride },
        { diffusivity, diffusivity_stride }, { speed, speed_stride }, { length, length_stride },
        { width, width_stride } };
    const struct batch_output out[] = { { source, source_stride, 0, sizeof *source } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, moving_source_rise_item, status, failed);
}
