/* Batch forms of air.h. Written by build-aux/generate. */
#include <vtx/air.h>

#include "../base/batch.h"

static vtx_status dry_air_at_item(const struct batch *b, size_t i)
{
    vtx_dry_air air;
    const vtx_status answer = vtx_dry_air_at(batch_get(b, 0, i), batch_get(b, 1, i), &air);
    batch_put(b, 0, i, &air, sizeof air);
    return answer;
}

vtx_status vtx_dry_air_at_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, vtx_dry_air *air, ptrdiff_t air_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { air, air_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, dry_air_at_item, status, failed);
}

static vtx_status air_compressibility_item(const struct batch *b, size_t i)
{
    double compressibility;
    const vtx_status answer = vtx_air_compressibility(batch_get(b, 0, i), batch_get(b, 1, i), &compressibility);
    batch_put(b, 0, i, &compressibility, sizeof compressibility);
    return answer;
}

vtx_status vtx_air_compressibility_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *compressibility,
        ptrdiff_t compressibility_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { compressibility, compressibility_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_compressibility_item, status, failed);
}

static vtx_status air_density_item(const struct batch *b, size_t i)
{
    double density;
    const vtx_status answer = vtx_air_density(batch_get(b, 0, i), batch_get(b, 1, i), &density);
    batch_put(b, 0, i, &density, sizeof density);
    return answer;
}

vtx_status vtx_air_density_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *density, ptrdiff_t density_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { density, density_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_density_item, status, failed);
}

static vtx_status air_enthalpy_item(const struct batch *b, size_t i)
{
    double enthalpy;
    const vtx_status answer = vtx_air_enthalpy(batch_get(b, 0, i), batch_get(b, 1, i), &enthalpy);
    batch_put(b, 0, i, &enthalpy, sizeof enthalpy);
    return answer;
}

vtx_status vtx_air_enthalpy_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *enthalpy, ptrdiff_t enthalpy_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { enthalpy, enthalpy_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_enthalpy_item, status, failed);
}

static vtx_status air_entropy_item(const struct batch *b, size_t i)
{
    double entropy;
    const vtx_status answer = vtx_air_entropy(batch_get(b, 0, i), batch_get(b, 1, i), &entropy);
    batch_put(b, 0, i, &entropy, sizeof entropy);
    return answer;
}

vtx_status vtx_air_entropy_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *entropy, ptrdiff_t entropy_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { entropy, entropy_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_entropy_item, status, failed);
}

static vtx_status air_heat_capacity_item(const struct batch *b, size_t i)
{
    double heat_capacity;
    const vtx_status answer = vtx_air_heat_capacity(batch_get(b, 0, i), batch_get(b, 1, i), &heat_capacity);
    batch_put(b, 0, i, &heat_capacity, sizeof heat_capacity);
    return answer;
}

vtx_status vtx_air_heat_capacity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *heat_capacity,
        ptrdiff_t heat_capacity_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { heat_capacity, heat_capacity_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_heat_capacity_item, status, failed);
}

static vtx_status air_heat_capacity_ratio_item(const struct batch *b, size_t i)
{
    double ratio;
    const vtx_status answer = vtx_air_heat_capacity_ratio(batch_get(b, 0, i), batch_get(b, 1, i), &ratio);
    batch_put(b, 0, i, &ratio, sizeof ratio);
    return answer;
}

vtx_status vtx_air_heat_capacity_ratio_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *ratio, ptrdiff_t ratio_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_heat_capacity_ratio_item, status,
        failed);
}

static vtx_status air_sound_speed_item(const struct batch *b, size_t i)
{
    double speed;
    const vtx_status answer = vtx_air_sound_speed(batch_get(b, 0, i), batch_get(b, 1, i), &speed);
    batch_put(b, 0, i, &speed, sizeof speed);
    return answer;
}

vtx_status vtx_air_sound_speed_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *speed, ptrdiff_t speed_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { speed, speed_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_sound_speed_item, status, failed);
}

static vtx_status air_joule_thomson_item(const struct batch *b, size_t i)
{
    double coefficient;
    const vtx_status answer = vtx_air_joule_thomson(batch_get(b, 0, i), batch_get(b, 1, i), &coefficient);
    batch_put(b, 0, i, &coefficient, sizeof coefficient);
    return answer;
}

vtx_status vtx_air_joule_thomson_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *coefficient, ptrdiff_t coefficient_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_joule_thomson_item, status, failed);
}

static vtx_status air_viscosity_item(const struct batch *b, size_t i)
{
    double viscosity;
    const vtx_status answer = vtx_air_viscosity(batch_get(b, 0, i), batch_get(b, 1, i), &viscosity);
    batch_put(b, 0, i, &viscosity, sizeof viscosity);
    return answer;
}

vtx_status vtx_air_viscosity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *viscosity, ptrdiff_t viscosity_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { viscosity, viscosity_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_viscosity_item, status, failed);
}

static vtx_status air_conductivity_item(const struct batch *b, size_t i)
{
    double conductivity;
    const vtx_status answer = vtx_air_conductivity(batch_get(b, 0, i), batch_get(b, 1, i), &conductivity);
    batch_put(b, 0, i, &conductivity, sizeof conductivity);
    return answer;
}

vtx_status vtx_air_conductivity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *conductivity, ptrdiff_t conductivity_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { conductivity, conductivity_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_conductivity_item, status, failed);
}

static vtx_status air_critical_flow_factor_item(const struct batch *b, size_t i)
{
    double factor;
    const vtx_status answer = vtx_air_critical_flow_factor(batch_get(b, 0, i), batch_get(b, 1, i), &factor);
    batch_put(b, 0, i, &factor, sizeof factor);
    return answer;
}

vtx_status vtx_air_critical_flow_factor_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *factor, ptrdiff_t factor_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { factor, factor_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_critical_flow_factor_item, status,
        failed);
}
