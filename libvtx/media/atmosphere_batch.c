/* Batch forms of atmosphere.h. Written by build-aux/generate. */
#include <vtx/atmosphere.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status atmosphere_pressure_item(const struct batch *b, size_t i)
{
    double pressure_room;
    double *const pressure = batch_place(b, 0, i, &pressure_room, sizeof pressure_room, _Alignof(double));
    const vtx_status answer = vtx_atmosphere_pressure(batch_get(b, 0, i), pressure);
    batch_move(b, 0, i, pressure, &pressure_room, sizeof pressure_room);
    return answer;
}

vtx_status vtx_atmosphere_pressure_batch(size_t n, const double *altitude, ptrdiff_t altitude_stride,
        double *pressure, ptrdiff_t pressure_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { altitude, altitude_stride } };
    const struct batch_output out[] = { { pressure, pressure_stride, 0, sizeof *pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, atmosphere_pressure_item, status, failed);
}

static ALWAYS_INLINE vtx_status atmosphere_temperature_item(const struct batch *b, size_t i)
{
    double temperature_room;
    double *const temperature = batch_place(b, 0, i, &temperature_room, sizeof temperature_room, _Alignof(double));
    const vtx_status answer = vtx_atmosphere_temperature(batch_get(b, 0, i), temperature);
    batch_move(b, 0, i, temperature, &temperature_room, sizeof temperature_room);
    return answer;
}

vtx_status vtx_atmosphere_temperature_batch(size_t n, const double *altitude, ptrdiff_t altitude_stride,
        double *temperature, ptrdiff_t temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { altitude, altitude_stride } };
    const struct batch_output out[] = { { temperature, temperature_stride, 0, sizeof *temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, atmosphere_temperature_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status atmosphere_density_item(const struct batch *b, size_t i)
{
    double density_room;
    double *const density = batch_place(b, 0, i, &density_room, sizeof density_room, _Alignof(double));
    const vtx_status answer = vtx_atmosphere_density(batch_get(b, 0, i), density);
    batch_move(b, 0, i, density, &density_room, sizeof density_room);
    return answer;
}

vtx_status vtx_atmosphere_density_batch(size_t n, const double *altitude, ptrdiff_t altitude_stride, double *density,
        ptrdiff_t density_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { altitude, altitude_stride } };
    const struct batch_output out[] = { { density, density_stride, 0, sizeof *density } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, atmosphere_density_item, status, failed);
}

static ALWAYS_INLINE vtx_status atmosphere_altitude_item(const struct batch *b, size_t i)
{
    double altitude_room;
    double *const altitude = batch_place(b, 0, i, &altitude_room, sizeof altitude_room, _Alignof(double));
    const vtx_status answer = vtx_atmosphere_altitude(batch_get(b, 0, i), altitude);
    batch_move(b, 0, i, altitude, &altitude_room, sizeof altitude_room);
    return answer;
}

vtx_status vtx_atmosphere_altitude_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        double *altitude, ptrdiff_t altitude_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride } };
    const struct batch_output out[] = { { altitude, altitude_stride, 0, sizeof *altitude } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, atmosphere_altitude_item, status, failed);
}

static ALWAYS_INLINE vtx_status geopotential_altitude_item(const struct batch *b, size_t i)
{
    double geopotential_room;
    double *const geopotential = batch_place(b, 0, i, &geopotential_room, sizeof geopotential_room, _Alignof(double));
    const vtx_status answer = vtx_geopotential_altitude(batch_get(b, 0, i), geopotential);
    batch_move(b, 0, i, geopotential, &geopotential_room, sizeof geopotential_room);
    return answer;
}

vtx_status vtx_geopotential_altitude_batch(size_t n, const double *geometric, ptrdiff_t geometric_stride,
        double *geopotential, ptrdiff_t geopotential_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { geometric, geometric_stride } };
    const struct batch_output out[] = { { geopotential, geopotential_stride, 0, sizeof *geopotential } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, geopotential_altitude_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status geometric_altitude_item(const struct batch *b, size_t i)
{
    double geometric_room;
    double *const geometric = batch_place(b, 0, i, &geometric_room, sizeof geometric_room, _Alignof(double));
    const vtx_status answer = vtx_geometric_altitude(batch_get(b, 0, i), geometric);
    batch_move(b, 0, i, geometric, &geometric_room, sizeof geometric_room);
    return answer;
}

vtx_status vtx_geometric_altitude_batch(size_t n, const double *geopotential, ptrdiff_t geopotential_stride,
        double *geometric, ptrdiff_t geometric_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { geopotential, geopotential_stride } };
    const struct batch_output out[] = { { geometric, geometric_stride, 0, sizeof *geometric } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, geometric_altitude_item, status, failed);
}

static ALWAYS_INLINE vtx_status station_pressure_item(const struct batch *b, size_t i)
{
    double pressure_room;
    double *const pressure = batch_place(b, 0, i, &pressure_room, sizeof pressure_room, _Alignof(double));
    const vtx_status answer = vtx_station_pressure(batch_get(b, 0, i), batch_get(b, 1, i), pressure);
    batch_move(b, 0, i, pressure, &pressure_room, sizeof pressure_room);
    return answer;
}

vtx_status vtx_station_pressure_batch(size_t n, const double *sea_level_pressure,
        ptrdiff_t sea_level_pressure_stride, const double *altitude, ptrdiff_t altitude_stride, double *pressure,
        ptrdiff_t pressure_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { sea_level_pressure, sea_level_pressure_stride },
        { altitude, altitude_stride } };
    const struct batch_output out[] = { { pressure, pressure_stride, 0, sizeof *pressure } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, station_pressure_item, status, failed);
}
