/* Batch forms of compressor.h. Written by build-aux/generate. */
#include <vtx/compressor.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status isothermal_compression_power_item(const struct batch *b, size_t i)
{
    double power_room;
    double *const power = batch_place(b, 0, i, &power_room, sizeof power_room, _Alignof(double));
    const vtx_status answer = vtx_isothermal_compression_power(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), power);
    batch_move(b, 0, i, power, &power_room, sizeof power_room);
    return answer;
}

vtx_status vtx_isothermal_compression_power_batch(size_t n, const double *intake_pressure,
        ptrdiff_t intake_pressure_stride, const double *discharge_pressure, ptrdiff_t discharge_pressure_stride,
        const double *free_air, ptrdiff_t free_air_stride, double *power, ptrdiff_t power_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { intake_pressure, intake_pressure_stride },
        { discharge_pressure, discharge_pressure_stride }, { free_air, free_air_stride } };
    const struct batch_output out[] = { { power, power_stride, 0, sizeof *power } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isothermal_compression_power_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status isentropic_compression_power_item(const struct batch *b, size_t i)
{
    double power_room;
    double *const power = batch_place(b, 0, i, &power_room, sizeof power_room, _Alignof(double));
    const vtx_status answer = vtx_isentropic_compression_power(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), power);
    batch_move(b, 0, i, power, &power_room, sizeof power_room);
    return answer;
}

vtx_status vtx_isentropic_compression_power_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride, double *power,
        ptrdiff_t power_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { intake_pressure, intake_pressure_stride },
        { discharge_pressure, discharge_pressure_stride }, { free_air, free_air_stride } };
    const struct batch_output out[] = { { power, power_stride, 0, sizeof *power } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_compression_power_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status staged_compression_power_item(const struct batch *b, size_t i)
{
    double power_room;
    double *const power = batch_place(b, 0, i, &power_room, sizeof power_room, _Alignof(double));
    const vtx_status answer = vtx_staged_compression_power(batch_get(b, 0, i), b->selector[0], batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), power);
    batch_move(b, 0, i, power, &power_room, sizeof power_room);
    return answer;
}

vtx_status vtx_staged_compression_power_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride, int32_t stages,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride, double *power,
        ptrdiff_t power_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { intake_pressure, intake_pressure_stride },
        { discharge_pressure, discharge_pressure_stride }, { free_air, free_air_stride } };
    const struct batch_output out[] = { { power, power_stride, 0, sizeof *power } };
    const int32_t selector[] = { stages };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, staged_compression_power_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status specific_power_item(const struct batch *b, size_t i)
{
    double specific_power_room;
    double *const specific_power = batch_place(b, 0, i, &specific_power_room, sizeof specific_power_room,
        _Alignof(double));
    const vtx_status answer = vtx_specific_power(batch_get(b, 0, i), batch_get(b, 1, i), specific_power);
    batch_move(b, 0, i, specific_power, &specific_power_room, sizeof specific_power_room);
    return answer;
}

vtx_status vtx_specific_power_batch(size_t n, const double *power, ptrdiff_t power_stride, const double *free_air,
        ptrdiff_t free_air_stride, double *specific_power, ptrdiff_t specific_power_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { power, power_stride }, { free_air, free_air_stride } };
    const struct batch_output out[] = { { specific_power, specific_power_stride, 0, sizeof *specific_power } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, specific_power_item, status, failed);
}

static ALWAYS_INLINE vtx_status package_efficiency_item(const struct batch *b, size_t i)
{
    double efficiency_room;
    double *const efficiency = batch_place(b, 0, i, &efficiency_room, sizeof efficiency_room, _Alignof(double));
    const vtx_status answer = vtx_package_efficiency(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), efficiency);
    batch_move(b, 0, i, efficiency, &efficiency_room, sizeof efficiency_room);
    return answer;
}

vtx_status vtx_package_efficiency_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride, const double *power,
        ptrdiff_t power_stride, double *efficiency, ptrdiff_t efficiency_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { intake_pressure, intake_pressure_stride },
        { discharge_pressure, discharge_pressure_stride }, { free_air, free_air_stride }, { power, power_stride } };
    const struct batch_output out[] = { { efficiency, efficiency_stride, 0, sizeof *efficiency } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, package_efficiency_item, status, failed);
}

static ALWAYS_INLINE vtx_status package_power_item(const struct batch *b, size_t i)
{
    double power_room;
    double *const power = batch_place(b, 0, i, &power_room, sizeof power_room, _Alignof(double));
    const vtx_status answer = vtx_package_power(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), power);
    batch_move(b, 0, i, power, &power_room, sizeof power_room);
    return answer;
}

vtx_status vtx_package_power_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride,
        const double *efficiency, ptrdiff_t efficiency_stride, double *power, ptrdiff_t power_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { intake_pressure, intake_pressure_stride },
        { discharge_pressure, discharge_pressure_stride }, { free_air, free_air_stride },
        { efficiency, efficiency_stride } };
    const struct batch_output out[] = { { power, power_stride, 0, sizeof *power } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, package_power_item, status, failed);
}

static ALWAYS_INLINE vtx_status power_per_pressure_item(const struct batch *b, size_t i)
{
    double slope_room;
    double *const slope = batch_place(b, 0, i, &slope_room, sizeof slope_room, _Alignof(double));
    const vtx_status answer = vtx_power_per_pressure(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), slope);
    batch_move(b, 0, i, slope, &slope_room, sizeof slope_room);
    return answer;
}

vtx_status vtx_power_per_pressure_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *intake_pressure, ptrdiff_t intake_pressure_stride, const double *discharge_pressure,
        ptrdiff_t discharge_pressure_stride, const double *free_air, ptrdiff_t free_air_stride,
        const double *efficiency, ptrdiff_t efficiency_stride, double *slope, ptrdiff_t slope_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { intake_pressure, intake_pressure_stride },
        { discharge_pressure, discharge_pressure_stride }, { free_air, free_air_stride },
        { efficiency, efficiency_stride } };
    const struct batch_output out[] = { { slope, slope_stride, 0, sizeof *slope } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, power_per_pressure_item, status, failed);
}

static ALWAYS_INLINE vtx_status compressor_at_demand_item(const struct batch *b, size_t i)
{
    vtx_compressor compressor_room;
    const vtx_compressor *const compressor = batch_record(b, 0, i, &compressor_room, sizeof compressor_room,
        _Alignof(vtx_compressor));
    vtx_compressor_duty duty_room;
    vtx_compressor_duty *const duty = batch_place(b, 0, i, &duty_room, sizeof duty_room,
        _Alignof(vtx_compressor_duty));
    const vtx_status answer = vtx_compressor_at_demand(compressor, batch_get(b, 1, i), duty);
    batch_move(b, 0, i, duty, &duty_room, sizeof duty_room);
    return answer;
}

vtx_status vtx_compressor_at_demand_batch(size_t n, const vtx_compressor *compressor, ptrdiff_t compressor_stride,
        const double *demand, ptrdiff_t demand_stride, vtx_compressor_duty *duty, ptrdiff_t duty_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { compressor, compressor_stride, 1 }, { demand, demand_stride } };
    const struct batch_output out[] = { { duty, duty_stride, 0, sizeof *duty } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, compressor_at_demand_item, status, failed);
}
