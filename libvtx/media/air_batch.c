/* Batch forms of air.h. Written by build-aux/generate. */
#include <vtx/air.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status dry_air_at_item(const struct batch *b, size_t i)
{
    vtx_dry_air air_room;
    vtx_dry_air *const air = batch_place(b, 0, i, &air_room, sizeof air_room, _Alignof(vtx_dry_air));
    const vtx_status answer = vtx_dry_air_at(batch_get(b, 0, i), batch_get(b, 1, i), air);
    batch_move(b, 0, i, air, &air_room, sizeof air_room);
    return answer;
}

vtx_status vtx_dry_air_at_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, vtx_dry_air *air, ptrdiff_t air_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { air, air_stride, 0, sizeof *air } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, dry_air_at_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_compressibility_item(const struct batch *b, size_t i)
{
    double compressibility_room;
    double *const compressibility = batch_place(b, 0, i, &compressibility_room, sizeof compressibility_room,
        _Alignof(double));
    const vtx_status answer = vtx_air_compressibility(batch_get(b, 0, i), batch_get(b, 1, i), compressibility);
    batch_move(b, 0, i, compressibility, &compressibility_room, sizeof compressibility_room);
    return answer;
}

vtx_status vtx_air_compressibility_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *compressibility,
        ptrdiff_t compressibility_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { compressibility, compressibility_stride, 0, sizeof *compressibility } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_compressibility_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_density_item(const struct batch *b, size_t i)
{
    double density_room;
    double *const density = batch_place(b, 0, i, &density_room, sizeof density_room, _Alignof(double));
    const vtx_status answer = vtx_air_density(batch_get(b, 0, i), batch_get(b, 1, i), density);
    batch_move(b, 0, i, density, &density_room, sizeof density_room);
    return answer;
}

vtx_status vtx_air_density_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *density, ptrdiff_t density_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { density, density_stride, 0, sizeof *density } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_density_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_enthalpy_item(const struct batch *b, size_t i)
{
    double enthalpy_room;
    double *const enthalpy = batch_place(b, 0, i, &enthalpy_room, sizeof enthalpy_room, _Alignof(double));
    const vtx_status answer = vtx_air_enthalpy(batch_get(b, 0, i), batch_get(b, 1, i), enthalpy);
    batch_move(b, 0, i, enthalpy, &enthalpy_room, sizeof enthalpy_room);
    return answer;
}

vtx_status vtx_air_enthalpy_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *enthalpy, ptrdiff_t enthalpy_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { enthalpy, enthalpy_stride, 0, sizeof *enthalpy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_enthalpy_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_entropy_item(const struct batch *b, size_t i)
{
    double entropy_room;
    double *const entropy = batch_place(b, 0, i, &entropy_room, sizeof entropy_room, _Alignof(double));
    const vtx_status answer = vtx_air_entropy(batch_get(b, 0, i), batch_get(b, 1, i), entropy);
    batch_move(b, 0, i, entropy, &entropy_room, sizeof entropy_room);
    return answer;
}

vtx_status vtx_air_entropy_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *entropy, ptrdiff_t entropy_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { entropy, entropy_stride, 0, sizeof *entropy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_entropy_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_heat_capacity_item(const struct batch *b, size_t i)
{
    double heat_capacity_room;
    double *const heat_capacity = batch_place(b, 0, i, &heat_capacity_room, sizeof heat_capacity_room,
        _Alignof(double));
    const vtx_status answer = vtx_air_heat_capacity(batch_get(b, 0, i), batch_get(b, 1, i), heat_capacity);
    batch_move(b, 0, i, heat_capacity, &heat_capacity_room, sizeof heat_capacity_room);
    return answer;
}

vtx_status vtx_air_heat_capacity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *heat_capacity,
        ptrdiff_t heat_capacity_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { heat_capacity, heat_capacity_stride, 0, sizeof *heat_capacity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_heat_capacity_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_heat_capacity_ratio_item(const struct batch *b, size_t i)
{
    double ratio_room;
    double *const ratio = batch_place(b, 0, i, &ratio_room, sizeof ratio_room, _Alignof(double));
    const vtx_status answer = vtx_air_heat_capacity_ratio(batch_get(b, 0, i), batch_get(b, 1, i), ratio);
    batch_move(b, 0, i, ratio, &ratio_room, sizeof ratio_room);
    return answer;
}

vtx_status vtx_air_heat_capacity_ratio_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *ratio, ptrdiff_t ratio_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { ratio, ratio_stride, 0, sizeof *ratio } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_heat_capacity_ratio_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status air_sound_speed_item(const struct batch *b, size_t i)
{
    double speed_room;
    double *const speed = batch_place(b, 0, i, &speed_room, sizeof speed_room, _Alignof(double));
    const vtx_status answer = vtx_air_sound_speed(batch_get(b, 0, i), batch_get(b, 1, i), speed);
    batch_move(b, 0, i, speed, &speed_room, sizeof speed_room);
    return answer;
}

vtx_status vtx_air_sound_speed_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *speed, ptrdiff_t speed_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { speed, speed_stride, 0, sizeof *speed } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_sound_speed_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_joule_thomson_item(const struct batch *b, size_t i)
{
    double coefficient_room;
    double *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_air_joule_thomson(batch_get(b, 0, i), batch_get(b, 1, i), coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_air_joule_thomson_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *coefficient, ptrdiff_t coefficient_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_joule_thomson_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_viscosity_item(const struct batch *b, size_t i)
{
    double viscosity_room;
    double *const viscosity = batch_place(b, 0, i, &viscosity_room, sizeof viscosity_room, _Alignof(double));
    const vtx_status answer = vtx_air_viscosity(batch_get(b, 0, i), batch_get(b, 1, i), viscosity);
    batch_move(b, 0, i, viscosity, &viscosity_room, sizeof viscosity_room);
    return answer;
}

vtx_status vtx_air_viscosity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *viscosity, ptrdiff_t viscosity_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { viscosity, viscosity_stride, 0, sizeof *viscosity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_viscosity_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_conductivity_item(const struct batch *b, size_t i)
{
    double conductivity_room;
    double *const conductivity = batch_place(b, 0, i, &conductivity_room, sizeof conductivity_room, _Alignof(double));
    const vtx_status answer = vtx_air_conductivity(batch_get(b, 0, i), batch_get(b, 1, i), conductivity);
    batch_move(b, 0, i, conductivity, &conductivity_room, sizeof conductivity_room);
    return answer;
}

vtx_status vtx_air_conductivity_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *conductivity, ptrdiff_t conductivity_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { conductivity, conductivity_stride, 0, sizeof *conductivity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_conductivity_item, status, failed);
}

static ALWAYS_INLINE vtx_status air_critical_flow_factor_item(const struct batch *b, size_t i)
{
    double factor_room;
    double *const factor = batch_place(b, 0, i, &factor_room, sizeof factor_room, _Alignof(double));
    const vtx_status answer = vtx_air_critical_flow_factor(batch_get(b, 0, i), batch_get(b, 1, i), factor);
    batch_move(b, 0, i, factor, &factor_room, sizeof factor_room);
    return answer;
}

vtx_status vtx_air_critical_flow_factor_batch(size_t n, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *factor, ptrdiff_t factor_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { pressure, pressure_stride }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { factor, factor_stride, 0, sizeof *factor } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, air_critical_flow_factor_item, status,
        failed);
}
