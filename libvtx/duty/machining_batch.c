/* Batch forms of machining.h. Written by build-aux/generate. */
#include <vtx/machining.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status turning_removal_item(const struct batch *b, size_t i)
{
    double removal_rate_room;
    double *const removal_rate = batch_place(b, 0, i, &removal_rate_room, sizeof removal_rate_room, _Alignof(double));
    const vtx_status answer = vtx_turning_removal(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        removal_rate);
    batch_move(b, 0, i, removal_rate, &removal_rate_room, sizeof removal_rate_room);
    return answer;
}

vtx_status vtx_turning_removal_batch(size_t n, const double *cutting_speed, ptrdiff_t cutting_speed_stride,
        const double *feed, ptrdiff_t feed_stride, const double *depth, ptrdiff_t depth_stride, double *removal_rate,
        ptrdiff_t removal_rate_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { cutting_speed, cutting_speed_stride }, { feed, feed_stride },
        { depth, depth_stride } };
    const struct batch_output out[] = { { removal_rate, removal_rate_stride, 0, sizeof *removal_rate } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, turning_removal_item, status, failed);
}

static ALWAYS_INLINE vtx_status bar_turning_removal_item(const struct batch *b, size_t i)
{
    double removal_rate_room;
    double *const removal_rate = batch_place(b, 0, i, &removal_rate_room, sizeof removal_rate_room, _Alignof(double));
    const vtx_status answer = vtx_bar_turning_removal(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        removal_rate);
    batch_move(b, 0, i, removal_rate, &removal_rate_room, sizeof removal_rate_room);
    return answer;
}

vtx_status vtx_bar_turning_removal_batch(size_t n, const double *outer_diameter, ptrdiff_t outer_diameter_stride,
        const double *inner_diameter, ptrdiff_t inner_diameter_stride, const double *axial_speed,
        ptrdiff_t axial_speed_stride, double *removal_rate, ptrdiff_t removal_rate_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { outer_diameter, outer_diameter_stride },
        { inner_diameter, inner_diameter_stride }, { axial_speed, axial_speed_stride } };
    const struct batch_output out[] = { { removal_rate, removal_rate_stride, 0, sizeof *removal_rate } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, bar_turning_removal_item, status, failed);
}

static ALWAYS_INLINE vtx_status milling_removal_item(const struct batch *b, size_t i)
{
    double removal_rate_room;
    double *const removal_rate = batch_place(b, 0, i, &removal_rate_room, sizeof removal_rate_room, _Alignof(double));
    const vtx_status answer = vtx_milling_removal(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), removal_rate);
    batch_move(b, 0, i, removal_rate, &removal_rate_room, sizeof removal_rate_room);
    return answer;
}

vtx_status vtx_milling_removal_batch(size_t n, const double *width, ptrdiff_t width_stride, const double *depth,
        ptrdiff_t depth_stride, const double *feed_per_tooth, ptrdiff_t feed_per_tooth_stride, const double *teeth,
        ptrdiff_t teeth_stride, const double *spindle_speed, ptrdiff_t spindle_speed_stride, double *removal_rate,
        ptrdiff_t removal_rate_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { width, width_stride }, { depth, depth_stride },
        { feed_per_tooth, feed_per_tooth_stride }, { teeth, teeth_stride }, { spindle_speed, spindle_speed_stride } };
    const struct batch_output out[] = { { removal_rate, removal_rate_stride, 0, sizeof *removal_rate } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, milling_removal_item, status, failed);
}

static ALWAYS_INLINE vtx_status drilling_removal_item(const struct batch *b, size_t i)
{
    double removal_rate_room;
    double *const removal_rate = batch_place(b, 0, i, &removal_rate_room, sizeof removal_rate_room, _Alignof(double));
    const vtx_status answer = vtx_drilling_removal(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        removal_rate);
    batch_move(b, 0, i, removal_rate, &removal_rate_room, sizeof removal_rate_room);
    return answer;
}

vtx_status vtx_drilling_removal_batch(size_t n, const double *diameter, ptrdiff_t diameter_stride,
        const double *feed, ptrdiff_t feed_stride, const double *spindle_speed, ptrdiff_t spindle_speed_stride,
        double *removal_rate, ptrdiff_t removal_rate_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { diameter, diameter_stride }, { feed, feed_stride },
        { spindle_speed, spindle_speed_stride } };
    const struct batch_output out[] = { { removal_rate, removal_rate_stride, 0, sizeof *removal_rate } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, drilling_removal_item, status, failed);
}

static ALWAYS_INLINE vtx_status grinding_removal_item(const struct batch *b, size_t i)
{
    double removal_rate_room;
    double *const removal_rate = batch_place(b, 0, i, &removal_rate_room, sizeof removal_rate_room, _Alignof(double));
    const vtx_status answer = vtx_grinding_removal(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        removal_rate);
    batch_move(b, 0, i, removal_rate, &removal_rate_room, sizeof removal_rate_room);
    return answer;
}

vtx_status vtx_grinding_removal_batch(size_t n, const double *depth, ptrdiff_t depth_stride, const double *width,
        ptrdiff_t width_stride, const double *table_speed, ptrdiff_t table_speed_stride, double *removal_rate,
        ptrdiff_t removal_rate_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { depth, depth_stride }, { width, width_stride },
        { table_speed, table_speed_stride } };
    const struct batch_output out[] = { { removal_rate, removal_rate_stride, 0, sizeof *removal_rate } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, grinding_removal_item, status, failed);
}

static ALWAYS_INLINE vtx_status specific_cutting_energy_item(const struct batch *b, size_t i)
{
    vtx_cutting_energy energy_room;
    vtx_cutting_energy *const energy = batch_place(b, 0, i, &energy_room, sizeof energy_room,
        _Alignof(vtx_cutting_energy));
    const vtx_status answer = vtx_specific_cutting_energy(b->selector[0], b->selector[1], batch_get(b, 0, i),
        batch_get(b, 1, i), energy);
    batch_move(b, 0, i, energy, &energy_room, sizeof energy_room);
    return answer;
}

vtx_status vtx_specific_cutting_energy_batch(size_t n, int32_t process, int32_t material, const double *hardness,
        ptrdiff_t hardness_stride, const double *chip_thickness, ptrdiff_t chip_thickness_stride,
        vtx_cutting_energy *energy, ptrdiff_t energy_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { hardness, hardness_stride }, { chip_thickness, chip_thickness_stride } };
    const struct batch_output out[] = { { energy, energy_stride, 0, sizeof *energy } };
    const int32_t selector[] = { process, material };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), selector, specific_cutting_energy_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status cutting_power_item(const struct batch *b, size_t i)
{
    double power_room;
    double *const power = batch_place(b, 0, i, &power_room, sizeof power_room, _Alignof(double));
    const vtx_status answer = vtx_cutting_power(batch_get(b, 0, i), batch_get(b, 1, i), power);
    batch_move(b, 0, i, power, &power_room, sizeof power_room);
    return answer;
}

vtx_status vtx_cutting_power_batch(size_t n, const double *specific_energy, ptrdiff_t specific_energy_stride,
        const double *removal_rate, ptrdiff_t removal_rate_stride, double *power, ptrdiff_t power_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { specific_energy, specific_energy_stride },
        { removal_rate, removal_rate_stride } };
    const struct batch_output out[] = { { power, power_stride, 0, sizeof *power } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cutting_power_item, status, failed);
}

static ALWAYS_INLINE vtx_status cutting_force_item(const struct batch *b, size_t i)
{
    double force_room;
    double *const force = batch_place(b, 0, i, &force_room, sizeof force_room, _Alignof(double));
    const vtx_status answer = vtx_cutting_force(batch_get(b, 0, i), batch_get(b, 1, i), force);
    batch_move(b, 0, i, force, &force_room, sizeof force_room);
    return answer;
}

vtx_status vtx_cutting_force_batch(size_t n, const double *power, ptrdiff_t power_stride,
        const double *cutting_speed, ptrdiff_t cutting_speed_stride, double *force, ptrdiff_t force_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { power, power_stride }, { cutting_speed, cutting_speed_stride } };
    const struct batch_output out[] = { { force, force_stride, 0, sizeof *force } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cutting_force_item, status, failed);
}

static ALWAYS_INLINE vtx_status thermal_number_item(const struct batch *b, size_t i)
{
    double thermal_number_room;
    double *const thermal_number = batch_place(b, 0, i, &thermal_number_room, sizeof thermal_number_room,
        _Alignof(double));
    const vtx_status answer = vtx_thermal_number(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), thermal_number);
    batch_move(b, 0, i, thermal_number, &thermal_number_room, sizeof thermal_number_room);
    return answer;
}

vtx_status vtx_thermal_number_batch(size_t n, const double *density, ptrdiff_t density_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *conductivity,
        ptrdiff_t conductivity_stride, const double *cutting_speed, ptrdiff_t cutting_speed_stride,
        const double *chip_thickness, ptrdiff_t chip_thickness_stride, double *thermal_number,
        ptrdiff_t thermal_number_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { density, density_stride }, { heat_capacity, heat_capacity_stride },
        { conductivity, conductivity_stride }, { cutting_speed, cutting_speed_stride },
        { chip_thickness, chip_thickness_stride } };
    const struct batch_output out[] = { { thermal_number, thermal_number_stride, 0, sizeof *thermal_number } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, thermal_number_item, status, failed);
}

static ALWAYS_INLINE vtx_status orthogonal_heat_partition_item(const struct batch *b, size_t i)
{
    vtx_heat_partition partition_room;
    vtx_heat_partition *const partition = batch_place(b, 0, i, &partition_room, sizeof partition_room,
        _Alignof(vtx_heat_partition));
    const vtx_status answer = vtx_orthogonal_heat_partition(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), partition);
    batch_move(b, 0, i, partition, &partition_room, sizeof partition_room);
    return answer;
}

vtx_status vtx_orthogonal_heat_partition_batch(size_t n, const double *thermal_number,
        ptrdiff_t thermal_number_stride, const double *shear_angle, ptrdiff_t shear_angle_stride,
        const double *rake_angle, ptrdiff_t rake_angle_stride, const double *shear_energy,
        ptrdiff_t shear_energy_stride, vtx_heat_partition *partition, ptrdiff_t partition_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { thermal_number, thermal_number_stride }, { shear_angle, shear_angle_stride },
        { rake_angle, rake_angle_stride }, { shear_energy, shear_energy_stride } };
    const struct batch_output out[] = { { partition, partition_stride, 0, sizeof *partition } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, orthogonal_heat_partition_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status combined_heat_partition_item(const struct batch *b, size_t i)
{
    vtx_heat_partition first_room;
    const vtx_heat_partition *const first = batch_record(b, 0, i, &first_room, sizeof first_room,
        _Alignof(vtx_heat_partition));
    vtx_heat_partition second_room;
    const vtx_heat_partition *const second = batch_record(b, 1, i, &second_room, sizeof second_room,
        _Alignof(vtx_heat_partition));
    vtx_heat_partition combined_room;
    vtx_heat_partition *const combined = batch_place(b, 0, i, &combined_room, sizeof combined_room,
        _Alignof(vtx_heat_partition));
    const vtx_status answer = vtx_combined_heat_partition(first, second, combined);
    batch_move(b, 0, i, combined, &combined_room, sizeof combined_room);
    return answer;
}

vtx_status vtx_combined_heat_partition_batch(size_t n, const vtx_heat_partition *first, ptrdiff_t first_stride,
        const vtx_heat_partition *second, ptrdiff_t second_stride, vtx_heat_partition *combined,
        ptrdiff_t combined_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { first, first_stride, 1 }, { second, second_stride, 1 } };
    const struct batch_output out[] = { { combined, combined_stride, 0, sizeof *combined } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, combined_heat_partition_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status cutting_heat_flows_item(const struct batch *b, size_t i)
{
    vtx_heat_partition partition_room;
    const vtx_heat_partition *const partition = batch_record(b, 0, i, &partition_room, sizeof partition_room,
        _Alignof(vtx_heat_partition));
    vtx_cutting_heat heat_room;
    vtx_cutting_heat *const heat = batch_place(b, 0, i, &heat_room, sizeof heat_room, _Alignof(vtx_cutting_heat));
    const vtx_status answer = vtx_cutting_heat_flows(partition, batch_get(b, 1, i), heat);
    batch_move(b, 0, i, heat, &heat_room, sizeof heat_room);
    return answer;
}

vtx_status vtx_cutting_heat_flows_batch(size_t n, const vtx_heat_partition *partition, ptrdiff_t partition_stride,
        const double *power, ptrdiff_t power_stride, vtx_cutting_heat *heat, ptrdiff_t heat_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { partition, partition_stride, 1 }, { power, power_stride } };
    const struct batch_output out[] = { { heat, heat_stride, 0, sizeof *heat } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cutting_heat_flows_item, status, failed);
}

static ALWAYS_INLINE vtx_status cutting_temperature_rise_item(const struct batch *b, size_t i)
{
    double rise_room;
    double *const rise = batch_place(b, 0, i, &rise_room, sizeof rise_room, _Alignof(double));
    const vtx_status answer = vtx_cutting_temperature_rise(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), rise);
    batch_move(b, 0, i, rise, &rise_room, sizeof rise_room);
    return answer;
}

vtx_status vtx_cutting_temperature_rise_batch(size_t n, const double *specific_energy,
        ptrdiff_t specific_energy_stride, const double *density, ptrdiff_t density_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *thermal_number,
        ptrdiff_t thermal_number_stride, double *rise, ptrdiff_t rise_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { specific_energy, specific_energy_stride }, { density, density_stride },
        { heat_capacity, heat_capacity_stride }, { thermal_number, thermal_number_stride } };
    const struct batch_output out[] = { { rise, rise_stride, 0, sizeof *rise } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cutting_temperature_rise_item, status,
        failed);
}
