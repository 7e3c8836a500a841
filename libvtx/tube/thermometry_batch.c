/* Batch forms of thermometry.h. Written by build-aux/generate. */
#include <vtx/thermometry.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status dynamic_temperature_item(const struct batch *b, size_t i)
{
    double rise_room;
    double *const rise = batch_place(b, 0, i, &rise_room, sizeof rise_room, _Alignof(double));
    const vtx_status answer = vtx_dynamic_temperature(batch_get(b, 0, i), batch_get(b, 1, i), rise);
    batch_move(b, 0, i, rise, &rise_room, sizeof rise_room);
    return answer;
}

vtx_status vtx_dynamic_temperature_batch(size_t n, const double *air_speed, ptrdiff_t air_speed_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, double *rise, ptrdiff_t rise_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { air_speed, air_speed_stride }, { heat_capacity, heat_capacity_stride } };
    const struct batch_output out[] = { { rise, rise_stride, 0, sizeof *rise } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, dynamic_temperature_item, status, failed);
}

static ALWAYS_INLINE vtx_status recovery_factor_item(const struct batch *b, size_t i)
{
    double factor_room;
    double *const factor = batch_place(b, 0, i, &factor_room, sizeof factor_room, _Alignof(double));
    double uncertainty_room;
    double *const uncertainty = batch_place(b, 1, i, &uncertainty_room, sizeof uncertainty_room, _Alignof(double));
    const vtx_status answer = vtx_recovery_factor(b->selector[0], batch_get(b, 0, i), factor, uncertainty);
    batch_move(b, 0, i, factor, &factor_room, sizeof factor_room);
    batch_move(b, 1, i, uncertainty, &uncertainty_room, sizeof uncertainty_room);
    return answer;
}

vtx_status vtx_recovery_factor_batch(size_t n, int32_t probe, const double *prandtl, ptrdiff_t prandtl_stride,
        double *factor, ptrdiff_t factor_stride, double *uncertainty, ptrdiff_t uncertainty_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { prandtl, prandtl_stride } };
    const struct batch_output out[] = { { factor, factor_stride, 0, sizeof *factor },
        { uncertainty, uncertainty_stride, 1, sizeof *uncertainty } };
    const int32_t selector[] = { probe };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, recovery_factor_item, status, failed);
}

static ALWAYS_INLINE vtx_status thermometer_uncertainty_item(const struct batch *b, size_t i)
{
    double uncertainty_room;
    double *const uncertainty = batch_place(b, 0, i, &uncertainty_room, sizeof uncertainty_room, _Alignof(double));
    double limit_room;
    double *const limit = batch_place(b, 1, i, &limit_room, sizeof limit_room, _Alignof(double));
    const vtx_status answer = vtx_thermometer_uncertainty(b->selector[0], batch_get(b, 0, i), uncertainty, limit);
    batch_move(b, 0, i, uncertainty, &uncertainty_room, sizeof uncertainty_room);
    batch_move(b, 1, i, limit, &limit_room, sizeof limit_room);
    return answer;
}

vtx_status vtx_thermometer_uncertainty_batch(size_t n, int32_t thermometer, const double *temperature,
        ptrdiff_t temperature_stride, double *uncertainty, ptrdiff_t uncertainty_stride, double *limit,
        ptrdiff_t limit_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { temperature, temperature_stride } };
    const struct batch_output out[] = { { uncertainty, uncertainty_stride, 0, sizeof *uncertainty },
        { limit, limit_stride, 1, sizeof *limit } };
    const int32_t selector[] = { thermometer };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, thermometer_uncertainty_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status probe_coefficient_item(const struct batch *b, size_t i)
{
    double coefficient_room;
    double *const coefficient = batch_place(b, 0, i, &coefficient_room, sizeof coefficient_room, _Alignof(double));
    const vtx_status answer = vtx_probe_coefficient(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), coefficient);
    batch_move(b, 0, i, coefficient, &coefficient_room, sizeof coefficient_room);
    return answer;
}

vtx_status vtx_probe_coefficient_batch(size_t n, const double *air_speed, ptrdiff_t air_speed_stride,
        const double *diameter, ptrdiff_t diameter_stride, const double *kinematic_viscosity,
        ptrdiff_t kinematic_viscosity_stride, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *prandtl, ptrdiff_t prandtl_stride, double *coefficient, ptrdiff_t coefficient_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { air_speed, air_speed_stride }, { diameter, diameter_stride },
        { kinematic_viscosity, kinematic_viscosity_stride }, { conductivity, conductivity_stride },
        { prandtl, prandtl_stride } };
    const struct batch_output out[] = { { coefficient, coefficient_stride, 0, sizeof *coefficient } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, probe_coefficient_item, status, failed);
}

static ALWAYS_INLINE vtx_status probe_time_constant_item(const struct batch *b, size_t i)
{
    double time_constant_room;
    double *const time_constant = batch_place(b, 0, i, &time_constant_room, sizeof time_constant_room,
        _Alignof(double));
    const vtx_status answer = vtx_probe_time_constant(b->selector[0], batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), time_constant);
    batch_move(b, 0, i, time_constant, &time_constant_room, sizeof time_constant_room);
    return answer;
}

vtx_status vtx_probe_time_constant_batch(size_t n, int32_t shape, const double *volumetric_heat_capacity,
        ptrdiff_t volumetric_heat_capacity_stride, const double *diameter, ptrdiff_t diameter_stride,
        const double *coefficient, ptrdiff_t coefficient_stride, double *time_constant,
        ptrdiff_t time_constant_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { volumetric_heat_capacity, volumetric_heat_capacity_stride },
        { diameter, diameter_stride }, { coefficient, coefficient_stride } };
    const struct batch_output out[] = { { time_constant, time_constant_stride, 0, sizeof *time_constant } };
    const int32_t selector[] = { shape };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, probe_time_constant_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status settling_time_item(const struct batch *b, size_t i)
{
    double settling_time_room;
    double *const settling_time = batch_place(b, 0, i, &settling_time_room, sizeof settling_time_room,
        _Alignof(double));
    const vtx_status answer = vtx_settling_time(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        settling_time);
    batch_move(b, 0, i, settling_time, &settling_time_room, sizeof settling_time_room);
    return answer;
}

vtx_status vtx_settling_time_batch(size_t n, const double *time_constant, ptrdiff_t time_constant_stride,
        const double *step, ptrdiff_t step_stride, const double *allowed_error, ptrdiff_t allowed_error_stride,
        double *settling_time, ptrdiff_t settling_time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { time_constant, time_constant_stride }, { step, step_stride },
        { allowed_error, allowed_error_stride } };
    const struct batch_output out[] = { { settling_time, settling_time_stride, 0, sizeof *settling_time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, settling_time_item, status, failed);
}

static ALWAYS_INLINE vtx_status unsettled_share_item(const struct batch *b, size_t i)
{
    double share_room;
    double *const share = batch_place(b, 0, i, &share_room, sizeof share_room, _Alignof(double));
    const vtx_status answer = vtx_unsettled_share(batch_get(b, 0, i), batch_get(b, 1, i), share);
    batch_move(b, 0, i, share, &share_room, sizeof share_room);
    return answer;
}

vtx_status vtx_unsettled_share_batch(size_t n, const double *time_constant, ptrdiff_t time_constant_stride,
        const double *elapsed_time, ptrdiff_t elapsed_time_stride, double *share, ptrdiff_t share_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { time_constant, time_constant_stride }, { elapsed_time, elapsed_time_stride } };
    const struct batch_output out[] = { { share, share_stride, 0, sizeof *share } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, unsettled_share_item, status, failed);
}

static ALWAYS_INLINE vtx_status stem_share_item(const struct batch *b, size_t i)
{
    double share_room;
    double *const share = batch_place(b, 0, i, &share_room, sizeof share_room, _Alignof(double));
    const vtx_status answer = vtx_stem_share(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), share);
    batch_move(b, 0, i, share, &share_room, sizeof share_room);
    return answer;
}

vtx_status vtx_stem_share_batch(size_t n, const double *coefficient, ptrdiff_t coefficient_stride,
        const double *diameter, ptrdiff_t diameter_stride, const double *conductivity, ptrdiff_t conductivity_stride,
        const double *immersion, ptrdiff_t immersion_stride, double *share, ptrdiff_t share_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { coefficient, coefficient_stride }, { diameter, diameter_stride },
        { conductivity, conductivity_stride }, { immersion, immersion_stride } };
    const struct batch_output out[] = { { share, share_stride, 0, sizeof *share } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, stem_share_item, status, failed);
}

static ALWAYS_INLINE vtx_status probe_correct_item(const struct batch *b, size_t i)
{
    vtx_probe probe_room;
    const vtx_probe *const probe = batch_record(b, 0, i, &probe_room, sizeof probe_room, _Alignof(vtx_probe));
    vtx_corrected_temperature corrected_room;
    vtx_corrected_temperature *const corrected = batch_place(b, 0, i, &corrected_room, sizeof corrected_room,
        _Alignof(vtx_corrected_temperature));
    const vtx_status answer = vtx_probe_correct(probe, batch_get(b, 1, i), batch_get(b, 2, i), corrected);
    batch_move(b, 0, i, corrected, &corrected_room, sizeof corrected_room);
    return answer;
}

vtx_status vtx_probe_correct_batch(size_t n, const vtx_probe *probe, ptrdiff_t probe_stride, const double *reading,
        ptrdiff_t reading_stride, const double *uncertainty, ptrdiff_t uncertainty_stride,
        vtx_corrected_temperature *corrected, ptrdiff_t corrected_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { probe, probe_stride, 1 }, { reading, reading_stride },
        { uncertainty, uncertainty_stride } };
    const struct batch_output out[] = { { corrected, corrected_stride, 0, sizeof *corrected } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, probe_correct_item, status, failed);
}

static ALWAYS_INLINE vtx_status probe_reading_item(const struct batch *b, size_t i)
{
    vtx_probe probe_room;
    const vtx_probe *const probe = batch_record(b, 0, i, &probe_room, sizeof probe_room, _Alignof(vtx_probe));
    double reading_room;
    double *const reading = batch_place(b, 0, i, &reading_room, sizeof reading_room, _Alignof(double));
    const vtx_status answer = vtx_probe_reading(probe, batch_get(b, 1, i), reading);
    batch_move(b, 0, i, reading, &reading_room, sizeof reading_room);
    return answer;
}

vtx_status vtx_probe_reading_batch(size_t n, const vtx_probe *probe, ptrdiff_t probe_stride,
        const double *temperature, ptrdiff_t temperature_stride, double *reading, ptrdiff_t reading_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { probe, probe_stride, 1 }, { temperature, temperature_stride } };
    const struct batch_output out[] = { { reading, reading_stride, 0, sizeof *reading } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, probe_reading_item, status, failed);
}

static ALWAYS_INLINE vtx_status hot_end_correct_item(const struct batch *b, size_t i)
{
    double corrected_room;
    double *const corrected = batch_place(b, 0, i, &corrected_room, sizeof corrected_room, _Alignof(double));
    double corrected_uncertainty_room;
    double *const corrected_uncertainty = batch_place(b, 1, i, &corrected_uncertainty_room,
        sizeof corrected_uncertainty_room, _Alignof(double));
    const vtx_status answer = vtx_hot_end_correct(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), corrected,
        corrected_uncertainty);
    batch_move(b, 0, i, corrected, &corrected_room, sizeof corrected_room);
    batch_move(b, 1, i, corrected_uncertainty, &corrected_uncertainty_room, sizeof corrected_uncertainty_room);
    return answer;
}

vtx_status vtx_hot_end_correct_batch(size_t n, const double *hot_temperature, ptrdiff_t hot_temperature_stride,
        const double *uncertainty, ptrdiff_t uncertainty_stride, const double *ambient_temperature,
        ptrdiff_t ambient_temperature_stride, const double *conductance, ptrdiff_t conductance_stride,
        const double *conductance_uncertainty, ptrdiff_t conductance_uncertainty_stride, const double *hot_mass_flow,
        ptrdiff_t hot_mass_flow_stride, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        double *corrected, ptrdiff_t corrected_stride, double *corrected_uncertainty,
        ptrdiff_t corrected_uncertainty_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { hot_temperature, hot_temperature_stride },
        { uncertainty, uncertainty_stride }, { ambient_temperature, ambient_temperature_stride },
        { conductance, conductance_stride }, { conductance_uncertainty, conductance_uncertainty_stride },
        { hot_mass_flow, hot_mass_flow_stride }, { heat_capacity, heat_capacity_stride } };
    const struct batch_output out[] = { { corrected, corrected_stride, 0, sizeof *corrected },
        { corrected_uncertainty, corrected_uncertainty_stride, 1, sizeof *corrected_uncertainty } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, hot_end_correct_item, status, failed);
}
