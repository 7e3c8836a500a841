/* Every numeric call of the duty layer in one shape. Written by build-aux/generate. */
#include <vtx/air_cost.h>
#include <vtx/cold_tube.h>
#include <vtx/compressor.h>
#include <vtx/convection.h>
#include <vtx/dead_end.h>
#include <vtx/drying.h>
#include <vtx/exposure.h>
#include <vtx/filter.h>
#include <vtx/freezing.h>
#include <vtx/insulation.h>
#include <vtx/machining.h>
#include <vtx/noise.h>
#include <vtx/part.h>
#include <vtx/purity.h>
#include <vtx/receiver.h>
#include <vtx/surface.h>
#include <vtx/tool.h>
#include <vtx/touch.h>
#include <vtx/transient.h>

#include <math.h>

#include "../harness/calls.h"

static vtx_status air_use_cost_call(const struct call_values *v)
{
    return vtx_air_use_cost(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0],
        v->out[1], v->out[2]);
}

static vtx_status air_use_cost_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_air_use_cost_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->out[2], column->out_stride[2], column->status, column->failed);
}

static vtx_status compressor_year_call(const struct call_values *v)
{
    return vtx_compressor_year(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0]);
}

static vtx_status compressor_year_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_compressor_year_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status tube_in_room_call(const struct call_values *v)
{
    return vtx_tube_in_room(v->record[0], v->record[1], v->number[0], v->out[0]);
}

static vtx_status tube_in_room_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_tube_in_room_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cover_to_stay_dry_call(const struct call_values *v)
{
    return vtx_cover_to_stay_dry(v->record[0], v->record[1], v->number[0], v->number[1], v->out[0]);
}

static vtx_status cover_to_stay_dry_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cover_to_stay_dry_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status isothermal_compression_power_call(const struct call_values *v)
{
    return vtx_isothermal_compression_power(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status isothermal_compression_power_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isothermal_compression_power_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status isentropic_compression_power_call(const struct call_values *v)
{
    return vtx_isentropic_compression_power(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status isentropic_compression_power_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_compression_power_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status staged_compression_power_call(const struct call_values *v)
{
    return vtx_staged_compression_power(v->number[0], v->selector[0], v->number[1], v->number[2], v->number[3],
        v->out[0]);
}

static vtx_status staged_compression_power_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_staged_compression_power_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status specific_power_call(const struct call_values *v)
{
    return vtx_specific_power(v->number[0], v->number[1], v->out[0]);
}

static vtx_status specific_power_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_specific_power_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status package_efficiency_call(const struct call_values *v)
{
    return vtx_package_efficiency(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status package_efficiency_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_package_efficiency_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status package_power_call(const struct call_values *v)
{
    return vtx_package_power(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status package_power_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_package_power_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status power_per_pressure_call(const struct call_values *v)
{
    return vtx_power_per_pressure(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status power_per_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_power_per_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status compressor_at_demand_call(const struct call_values *v)
{
    return vtx_compressor_at_demand(v->record[0], v->number[0], v->out[0]);
}

static vtx_status compressor_at_demand_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_compressor_at_demand_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status rayleigh_number_call(const struct call_values *v)
{
    return vtx_rayleigh_number(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status rayleigh_number_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_rayleigh_number_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status nusselt_horizontal_cylinder_call(const struct call_values *v)
{
    return vtx_nusselt_horizontal_cylinder(v->number[0], v->number[1], v->out[0]);
}

static vtx_status nusselt_horizontal_cylinder_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_horizontal_cylinder_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_vertical_plate_call(const struct call_values *v)
{
    return vtx_nusselt_vertical_plate(v->number[0], v->number[1], v->out[0]);
}

static vtx_status nusselt_vertical_plate_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_vertical_plate_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_vertical_plate_laminar_call(const struct call_values *v)
{
    return vtx_nusselt_vertical_plate_laminar(v->number[0], v->number[1], v->out[0]);
}

static vtx_status nusselt_vertical_plate_laminar_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_vertical_plate_laminar_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_sphere_natural_call(const struct call_values *v)
{
    return vtx_nusselt_sphere_natural(v->number[0], v->number[1], v->out[0]);
}

static vtx_status nusselt_sphere_natural_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_sphere_natural_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_plate_outward_call(const struct call_values *v)
{
    return vtx_nusselt_plate_outward(v->number[0], v->out[0]);
}

static vtx_status nusselt_plate_outward_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_plate_outward_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_plate_outward_laminar_call(const struct call_values *v)
{
    return vtx_nusselt_plate_outward_laminar(v->number[0], v->out[0]);
}

static vtx_status nusselt_plate_outward_laminar_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_plate_outward_laminar_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_plate_inward_call(const struct call_values *v)
{
    return vtx_nusselt_plate_inward(v->number[0], v->out[0]);
}

static vtx_status nusselt_plate_inward_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_plate_inward_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_cross_flow_call(const struct call_values *v)
{
    return vtx_nusselt_cross_flow(v->number[0], v->number[1], v->out[0]);
}

static vtx_status nusselt_cross_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_cross_flow_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_cross_flow_power_call(const struct call_values *v)
{
    return vtx_nusselt_cross_flow_power(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status nusselt_cross_flow_power_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_cross_flow_power_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status nusselt_sphere_in_stream_call(const struct call_values *v)
{
    return vtx_nusselt_sphere_in_stream(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status nusselt_sphere_in_stream_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_sphere_in_stream_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status nusselt_plate_in_stream_call(const struct call_values *v)
{
    return vtx_nusselt_plate_in_stream(v->number[0], v->number[1], v->out[0]);
}

static vtx_status nusselt_plate_in_stream_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_plate_in_stream_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status nusselt_mixed_call(const struct call_values *v)
{
    return vtx_nusselt_mixed(v->number[0], v->number[1], v->out[0], v->out[1]);
}

static vtx_status nusselt_mixed_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nusselt_mixed_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status radiation_coefficient_call(const struct call_values *v)
{
    return vtx_radiation_coefficient(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status radiation_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_radiation_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status horizontal_pipe_coefficient_call(const struct call_values *v)
{
    return vtx_horizontal_pipe_coefficient(v->number[0], v->number[1], v->out[0]);
}

static vtx_status horizontal_pipe_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_horizontal_pipe_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status vertical_pipe_coefficient_call(const struct call_values *v)
{
    return vtx_vertical_pipe_coefficient(v->number[0], v->number[1], v->out[0]);
}

static vtx_status vertical_pipe_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_vertical_pipe_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status room_coefficient_call(const struct call_values *v)
{
    return vtx_room_coefficient(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->out[0]);
}

static vtx_status room_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_room_coefficient_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status dead_end_pressure_call(const struct call_values *v)
{
    return vtx_dead_end_pressure(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status dead_end_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_dead_end_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status dead_end_supply_pressure_call(const struct call_values *v)
{
    return vtx_dead_end_supply_pressure(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0]);
}

static vtx_status dead_end_supply_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_dead_end_supply_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cleaning_air_verdict_call(const struct call_values *v)
{
    return vtx_cleaning_air_verdict(v->number[0], v->number[1], v->out[0]);
}

static vtx_status cleaning_air_verdict_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cleaning_air_verdict_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status intake_water_call(const struct call_values *v)
{
    return vtx_intake_water(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0],
        v->out[1]);
}

static vtx_status intake_water_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_intake_water_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status treat_air_call(const struct call_values *v)
{
    return vtx_treat_air(v->record[0], v->out[0]);
}

static vtx_status treat_air_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_treat_air_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status desiccant_purge_share_call(const struct call_values *v)
{
    return vtx_desiccant_purge_share(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status desiccant_purge_share_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_desiccant_purge_share_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status pipe_condensation_call(const struct call_values *v)
{
    return vtx_pipe_condensation(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status pipe_condensation_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_pipe_condensation_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status pressure_dew_point_needed_call(const struct call_values *v)
{
    return vtx_pressure_dew_point_needed(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->out[0]);
}

static vtx_status pressure_dew_point_needed_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_pressure_dew_point_needed_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status osha_permissible_time_call(const struct call_values *v)
{
    return vtx_osha_permissible_time(v->number[0], v->out[0]);
}

static vtx_status osha_permissible_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_osha_permissible_time_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status osha_table_time_call(const struct call_values *v)
{
    return vtx_osha_table_time(v->number[0], v->out[0]);
}

static vtx_status osha_table_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_osha_table_time_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status osha_dose_call(const struct call_values *v)
{
    return vtx_osha_dose(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status osha_dose_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_osha_dose_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status osha_average_level_call(const struct call_values *v)
{
    return vtx_osha_average_level(v->number[0], v->out[0]);
}

static vtx_status osha_average_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_osha_average_level_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status osha_permissible_level_call(const struct call_values *v)
{
    return vtx_osha_permissible_level(v->number[0], v->number[1], v->out[0]);
}

static vtx_status osha_permissible_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_osha_permissible_level_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status osha_protected_level_call(const struct call_values *v)
{
    return vtx_osha_protected_level(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status osha_protected_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_osha_protected_level_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status niosh_permissible_time_call(const struct call_values *v)
{
    return vtx_niosh_permissible_time(v->number[0], v->out[0]);
}

static vtx_status niosh_permissible_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_niosh_permissible_time_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status niosh_dose_call(const struct call_values *v)
{
    return vtx_niosh_dose(v->number[0], v->number[1], v->out[0]);
}

static vtx_status niosh_dose_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_niosh_dose_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status niosh_average_level_call(const struct call_values *v)
{
    return vtx_niosh_average_level(v->number[0], v->out[0]);
}

static vtx_status niosh_average_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_niosh_average_level_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status niosh_permissible_level_call(const struct call_values *v)
{
    return vtx_niosh_permissible_level(v->number[0], v->number[1], v->out[0]);
}

static vtx_status niosh_permissible_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_niosh_permissible_level_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status daily_exposure_level_call(const struct call_values *v)
{
    return vtx_daily_exposure_level(v->number[0], v->number[1], v->out[0]);
}

static vtx_status daily_exposure_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_daily_exposure_level_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status eu_permissible_time_call(const struct call_values *v)
{
    return vtx_eu_permissible_time(v->number[0], v->number[1], v->out[0]);
}

static vtx_status eu_permissible_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_eu_permissible_time_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status eu_permissible_level_call(const struct call_values *v)
{
    return vtx_eu_permissible_level(v->number[0], v->number[1], v->out[0]);
}

static vtx_status eu_permissible_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_eu_permissible_level_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status noise_rule_time_call(const struct call_values *v)
{
    return vtx_noise_rule_time(v->selector[0], v->number[0], v->out[0]);
}

static vtx_status noise_rule_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_noise_rule_time_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status eu_noise_verdict_call(const struct call_values *v)
{
    return vtx_eu_noise_verdict(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status eu_noise_verdict_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_eu_noise_verdict_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status filter_drop_call(const struct call_values *v)
{
    return vtx_filter_drop(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status filter_drop_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_filter_drop_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status filter_loading_call(const struct call_values *v)
{
    return vtx_filter_loading(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status filter_loading_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_filter_loading_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status filter_drop_at_reference_call(const struct call_values *v)
{
    return vtx_filter_drop_at_reference(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->number[4], v->number[5], v->number[6], v->out[0], v->out[1]);
}

static vtx_status filter_drop_at_reference_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_filter_drop_at_reference_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->in[7], column->in_stride[7], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status filter_loading_when_due_call(const struct call_values *v)
{
    return vtx_filter_loading_when_due(v->record[0], v->out[0]);
}

static vtx_status filter_loading_when_due_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_filter_loading_when_due_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status filter_element_call(const struct call_values *v)
{
    return vtx_filter_element(v->record[0], v->number[0], v->out[0]);
}

static vtx_status filter_element_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_filter_element_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status filter_time_left_call(const struct call_values *v)
{
    return vtx_filter_time_left(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status filter_time_left_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_filter_time_left_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status filter_economic_interval_call(const struct call_values *v)
{
    return vtx_filter_economic_interval(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status filter_economic_interval_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_filter_economic_interval_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status feed_freezing_call(const struct call_values *v)
{
    return vtx_feed_freezing(v->selector[0], v->number[0], v->number[1], v->selector[1], v->number[2], v->number[3],
        v->number[4], v->number[5], v->number[6], v->out[0]);
}

static vtx_status feed_freezing_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_feed_freezing_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], v->selector[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        column->in[6], column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status covered_tube_heat_call(const struct call_values *v)
{
    return vtx_covered_tube_heat(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status covered_tube_heat_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_covered_tube_heat_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status cover_inside_temperature_call(const struct call_values *v)
{
    return vtx_cover_inside_temperature(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->out[0]);
}

static vtx_status cover_inside_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cover_inside_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status critical_radius_call(const struct call_values *v)
{
    return vtx_critical_radius(v->number[0], v->number[1], v->out[0]);
}

static vtx_status critical_radius_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_critical_radius_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status insulation_thickness_call(const struct call_values *v)
{
    return vtx_insulation_thickness(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->out[0]);
}

static vtx_status insulation_thickness_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_insulation_thickness_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status wall_insulation_thickness_call(const struct call_values *v)
{
    return vtx_wall_insulation_thickness(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0]);
}

static vtx_status wall_insulation_thickness_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_wall_insulation_thickness_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status turning_removal_call(const struct call_values *v)
{
    return vtx_turning_removal(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status turning_removal_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_turning_removal_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status bar_turning_removal_call(const struct call_values *v)
{
    return vtx_bar_turning_removal(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status bar_turning_removal_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_bar_turning_removal_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status milling_removal_call(const struct call_values *v)
{
    return vtx_milling_removal(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status milling_removal_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_milling_removal_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status drilling_removal_call(const struct call_values *v)
{
    return vtx_drilling_removal(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status drilling_removal_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_drilling_removal_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status grinding_removal_call(const struct call_values *v)
{
    return vtx_grinding_removal(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status grinding_removal_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_grinding_removal_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status specific_cutting_energy_call(const struct call_values *v)
{
    return vtx_specific_cutting_energy(v->selector[0], v->selector[1], v->number[0], v->number[1], v->out[0]);
}

static vtx_status specific_cutting_energy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_specific_cutting_energy_batch(n, v->selector[0], v->selector[1], column->in[0], column->in_stride[0],
        column->in[1], column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cutting_power_call(const struct call_values *v)
{
    return vtx_cutting_power(v->number[0], v->number[1], v->out[0]);
}

static vtx_status cutting_power_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cutting_power_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cutting_force_call(const struct call_values *v)
{
    return vtx_cutting_force(v->number[0], v->number[1], v->out[0]);
}

static vtx_status cutting_force_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cutting_force_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status thermal_number_call(const struct call_values *v)
{
    return vtx_thermal_number(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status thermal_number_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_thermal_number_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status orthogonal_heat_partition_call(const struct call_values *v)
{
    return vtx_orthogonal_heat_partition(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status orthogonal_heat_partition_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_orthogonal_heat_partition_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status combined_heat_partition_call(const struct call_values *v)
{
    return vtx_combined_heat_partition(v->record[0], v->record[1], v->out[0]);
}

static vtx_status combined_heat_partition_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_combined_heat_partition_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cutting_heat_flows_call(const struct call_values *v)
{
    return vtx_cutting_heat_flows(v->record[0], v->number[0], v->out[0]);
}

static vtx_status cutting_heat_flows_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cutting_heat_flows_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cutting_temperature_rise_call(const struct call_values *v)
{
    return vtx_cutting_temperature_rise(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status cutting_temperature_rise_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cutting_temperature_rise_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status level_of_several_call(const struct call_values *v)
{
    return vtx_level_of_several(v->number[0], v->selector[0], v->out[0]);
}

static vtx_status level_of_several_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_level_of_several_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status level_without_background_call(const struct call_values *v)
{
    return vtx_level_without_background(v->number[0], v->number[1], v->out[0]);
}

static vtx_status level_without_background_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_level_without_background_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status level_at_distance_call(const struct call_values *v)
{
    return vtx_level_at_distance(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status level_at_distance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_level_at_distance_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status distance_for_level_call(const struct call_values *v)
{
    return vtx_distance_for_level(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status distance_for_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_distance_for_level_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status sound_power_level_call(const struct call_values *v)
{
    return vtx_sound_power_level(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status sound_power_level_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_sound_power_level_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status room_constant_call(const struct call_values *v)
{
    return vtx_room_constant(v->number[0], v->number[1], v->out[0]);
}

static vtx_status room_constant_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_room_constant_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status level_in_room_call(const struct call_values *v)
{
    return vtx_level_in_room(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status level_in_room_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_level_in_room_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status distance_in_room_call(const struct call_values *v)
{
    return vtx_distance_in_room(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status distance_in_room_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_distance_in_room_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status reverberation_distance_call(const struct call_values *v)
{
    return vtx_reverberation_distance(v->number[0], v->number[1], v->out[0]);
}

static vtx_status reverberation_distance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_reverberation_distance_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status attenuation_needed_call(const struct call_values *v)
{
    return vtx_attenuation_needed(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status attenuation_needed_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_attenuation_needed_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cooling_duty_call(const struct call_values *v)
{
    return vtx_cooling_duty(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status cooling_duty_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cooling_duty_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status biot_number_call(const struct call_values *v)
{
    return vtx_biot_number(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status biot_number_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_biot_number_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status time_constant_call(const struct call_values *v)
{
    return vtx_time_constant(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status time_constant_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_time_constant_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status part_temperature_call(const struct call_values *v)
{
    return vtx_part_temperature(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status part_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_part_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status part_cooling_time_call(const struct call_values *v)
{
    return vtx_part_cooling_time(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status part_cooling_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_part_cooling_time_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status part_film_coefficient_call(const struct call_values *v)
{
    return vtx_part_film_coefficient(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status part_film_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_part_film_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status face_temperature_call(const struct call_values *v)
{
    return vtx_face_temperature(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status face_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_face_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status face_film_coefficient_call(const struct call_values *v)
{
    return vtx_face_film_coefficient(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status face_film_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_face_film_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status radiating_part_time_call(const struct call_values *v)
{
    return vtx_radiating_part_time(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->out[0]);
}

static vtx_status radiating_part_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_radiating_part_time_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->in[6], column->in_stride[6],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status thermal_growth_call(const struct call_values *v)
{
    return vtx_thermal_growth(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status thermal_growth_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_thermal_growth_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status softening_margin_call(const struct call_values *v)
{
    return vtx_softening_margin(v->selector[0], v->number[0], v->out[0]);
}

static vtx_status softening_margin_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_softening_margin_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status water_class_to_ask_call(const struct call_values *v)
{
    return vtx_water_class_to_ask(v->number[0], v->out[0]);
}

static vtx_status water_class_to_ask_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_water_class_to_ask_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status oil_class_to_ask_call(const struct call_values *v)
{
    return vtx_oil_class_to_ask(v->number[0], v->number[1], v->out[0]);
}

static vtx_status oil_class_to_ask_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_oil_class_to_ask_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status particle_class_to_ask_call(const struct call_values *v)
{
    return vtx_particle_class_to_ask(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status particle_class_to_ask_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_particle_class_to_ask_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status receiver_time_call(const struct call_values *v)
{
    return vtx_receiver_time(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status receiver_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_receiver_time_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status receiver_volume_call(const struct call_values *v)
{
    return vtx_receiver_volume(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status receiver_volume_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_receiver_volume_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status leakage_from_cycle_call(const struct call_values *v)
{
    return vtx_leakage_from_cycle(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status leakage_from_cycle_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_leakage_from_cycle_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status leakage_from_decay_call(const struct call_values *v)
{
    return vtx_leakage_from_decay(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status leakage_from_decay_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_leakage_from_decay_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status judge_surface_call(const struct call_values *v)
{
    return vtx_judge_surface(v->record[0], v->number[0], v->out[0]);
}

static vtx_status judge_surface_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_judge_surface_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status deposition_rate_call(const struct call_values *v)
{
    return vtx_deposition_rate(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status deposition_rate_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_deposition_rate_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status vapour_diffusivity_call(const struct call_values *v)
{
    return vtx_vapour_diffusivity(v->number[0], v->number[1], v->out[0]);
}

static vtx_status vapour_diffusivity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_vapour_diffusivity_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status mass_transfer_coefficient_call(const struct call_values *v)
{
    return vtx_mass_transfer_coefficient(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status mass_transfer_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_mass_transfer_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status vapour_flux_call(const struct call_values *v)
{
    return vtx_vapour_flux(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status vapour_flux_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_vapour_flux_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status wet_surface_flux_call(const struct call_values *v)
{
    return vtx_wet_surface_flux(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status wet_surface_flux_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_wet_surface_flux_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status evaporation_drop_call(const struct call_values *v)
{
    return vtx_evaporation_drop(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status evaporation_drop_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_evaporation_drop_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status fin_of_bar_call(const struct call_values *v)
{
    return vtx_fin_of_bar(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status fin_of_bar_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fin_of_bar_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status tool_temperature_call(const struct call_values *v)
{
    return vtx_tool_temperature(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status tool_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_tool_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status tool_film_coefficient_call(const struct call_values *v)
{
    return vtx_tool_film_coefficient(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status tool_film_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_tool_film_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status moving_band_rise_call(const struct call_values *v)
{
    return vtx_moving_band_rise(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0],
        v->out[1]);
}

static vtx_status moving_band_rise_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_moving_band_rise_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->status, column->failed);
}

static vtx_status standing_disc_rise_call(const struct call_values *v)
{
    return vtx_standing_disc_rise(v->number[0], v->number[1], v->number[2], v->out[0], v->out[1]);
}

static vtx_status standing_disc_rise_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_standing_disc_rise_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status moving_source_rise_call(const struct call_values *v)
{
    return vtx_moving_source_rise(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status moving_source_rise_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_moving_source_rise_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status burn_threshold_call(const struct call_values *v)
{
    return vtx_burn_threshold(v->selector[0], v->number[0], v->out[0], v->out[1]);
}

static vtx_status burn_threshold_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_burn_threshold_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status touch_surface_call(const struct call_values *v)
{
    return vtx_touch_surface(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status touch_surface_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_touch_surface_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status coldest_touchable_call(const struct call_values *v)
{
    return vtx_coldest_touchable(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status coldest_touchable_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_coldest_touchable_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status transient_eigenvalue_call(const struct call_values *v)
{
    return vtx_transient_eigenvalue(v->selector[0], v->number[0], v->out[0], v->out[1]);
}

static vtx_status transient_eigenvalue_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_transient_eigenvalue_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status transient_shares_call(const struct call_values *v)
{
    return vtx_transient_shares(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status transient_shares_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_transient_shares_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status transient_fourier_call(const struct call_values *v)
{
    return vtx_transient_fourier(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status transient_fourier_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_transient_fourier_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status body_temperatures_call(const struct call_values *v)
{
    return vtx_body_temperatures(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->number[4], v->number[5], v->number[6], v->number[7], v->out[0]);
}

static vtx_status body_temperatures_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_body_temperatures_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->in[7], column->in_stride[7], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status body_time_call(const struct call_values *v)
{
    return vtx_body_time(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->number[7], v->out[0]);
}

static vtx_status body_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_body_time_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->in[7], column->in_stride[7], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status depth_temperature_fixed_surface_call(const struct call_values *v)
{
    return vtx_depth_temperature_fixed_surface(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0]);
}

static vtx_status depth_temperature_fixed_surface_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_depth_temperature_fixed_surface_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status penetration_depth_call(const struct call_values *v)
{
    return vtx_penetration_depth(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status penetration_depth_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_penetration_depth_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status depth_temperature_fixed_flux_call(const struct call_values *v)
{
    return vtx_depth_temperature_fixed_flux(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->out[0]);
}

static vtx_status depth_temperature_fixed_flux_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_depth_temperature_fixed_flux_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status depth_temperature_in_stream_call(const struct call_values *v)
{
    return vtx_depth_temperature_in_stream(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->out[0]);
}

static vtx_status depth_temperature_in_stream_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_depth_temperature_in_stream_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status depth_time_in_stream_call(const struct call_values *v)
{
    return vtx_depth_time_in_stream(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->out[0]);
}

static vtx_status depth_time_in_stream_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_depth_time_in_stream_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status depth_temperature_pulse_call(const struct call_values *v)
{
    return vtx_depth_temperature_pulse(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->out[0]);
}

static vtx_status depth_temperature_pulse_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_depth_temperature_pulse_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status thermal_diffusivity_call(const struct call_values *v)
{
    return vtx_thermal_diffusivity(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status thermal_diffusivity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_thermal_diffusivity_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status thermal_effusivity_call(const struct call_values *v)
{
    return vtx_thermal_effusivity(v->number[0], v->number[1], v->out[0]);
}

static vtx_status thermal_effusivity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_thermal_effusivity_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status contact_temperature_call(const struct call_values *v)
{
    return vtx_contact_temperature(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status contact_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_contact_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

const struct call_description calls_duty[] = {
    { "vtx_air_use_cost", air_use_cost_call, air_use_cost_columns, 8,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 3.2e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e-3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_compressor_year", compressor_year_call, compressor_year_columns, 7,
      { { CALL_RECORD, sizeof(vtx_compressor), "vtx_compressor", "dddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 3.2e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 3.2e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e-3 },
        { CALL_OUT, sizeof(vtx_air_year), "vtx_air_year", "ddddddddii", 0 } } },
    { "vtx_tube_in_room", tube_in_room_call, tube_in_room_columns, 4,
      { { CALL_RECORD, sizeof(vtx_room), "vtx_room", "ddddddzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_covered_tube), "vtx_covered_tube", "ddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 110, 400 },
        { CALL_OUT, sizeof(vtx_tube_surface), "vtx_tube_surface", "dddddddddddii", 0 } } },
    { "vtx_cover_to_stay_dry", cover_to_stay_dry_call, cover_to_stay_dry_columns, 5,
      { { CALL_RECORD, sizeof(vtx_room), "vtx_room", "ddddddzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_covered_tube), "vtx_covered_tube", "ddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 110, 400 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 30 },
        { CALL_OUT, sizeof(vtx_dry_cover), "vtx_dry_cover", "dddddaii", 0 } } },
    { "vtx_isothermal_compression_power", isothermal_compression_power_call, isothermal_compression_power_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_isentropic_compression_power", isentropic_compression_power_call, isentropic_compression_power_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_staged_compression_power", staged_compression_power_call, staged_compression_power_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_specific_power", specific_power_call, specific_power_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e9 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_package_efficiency", package_efficiency_call, package_efficiency_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e9 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_package_power", package_power_call, package_power_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_power_per_pressure", power_per_pressure_call, power_per_pressure_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_compressor_at_demand", compressor_at_demand_call, compressor_at_demand_columns, 3,
      { { CALL_RECORD, sizeof(vtx_compressor), "vtx_compressor", "dddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_OUT, sizeof(vtx_compressor_duty), "vtx_compressor_duty", "ddddddddii", 0 } } },
    { "vtx_rayleigh_number", rayleigh_number_call, rayleigh_number_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 30 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-5, 0.05 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -3000, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e-1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e-1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_horizontal_cylinder", nusselt_horizontal_cylinder_call, nusselt_horizontal_cylinder_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_vertical_plate", nusselt_vertical_plate_call, nusselt_vertical_plate_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_vertical_plate_laminar", nusselt_vertical_plate_laminar_call, nusselt_vertical_plate_laminar_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e9 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_sphere_natural", nusselt_sphere_natural_call, nusselt_sphere_natural_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e11 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.7, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_plate_outward", nusselt_plate_outward_call, nusselt_plate_outward_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e11 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_plate_outward_laminar", nusselt_plate_outward_laminar_call, nusselt_plate_outward_laminar_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 2e7 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_plate_inward", nusselt_plate_inward_call, nusselt_plate_inward_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_cross_flow", nusselt_cross_flow_call, nusselt_cross_flow_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.001, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_cross_flow_power", nusselt_cross_flow_power_call, nusselt_cross_flow_power_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 2e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_sphere_in_stream", nusselt_sphere_in_stream_call, nusselt_sphere_in_stream_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_plate_in_stream", nusselt_plate_in_stream_call, nusselt_plate_in_stream_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.6, 60 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nusselt_mixed", nusselt_mixed_call, nusselt_mixed_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_radiation_coefficient", radiation_coefficient_call, radiation_coefficient_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_horizontal_pipe_coefficient", horizontal_pipe_coefficient_call, horizontal_pipe_coefficient_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 60 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_vertical_pipe_coefficient", vertical_pipe_coefficient_call, vertical_pipe_coefficient_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 60 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_room_coefficient", room_coefficient_call, room_coefficient_columns, 9,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e4, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 110, 600 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 200, 400 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 20 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 110, 600 },
        { CALL_OUT, sizeof(vtx_surface_coefficient), "vtx_surface_coefficient", "dddddddddddddii", 0 } } },
    { "vtx_dead_end_pressure", dead_end_pressure_call, dead_end_pressure_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_dead_end_supply_pressure", dead_end_supply_pressure_call, dead_end_supply_pressure_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cleaning_air_verdict", cleaning_air_verdict_call, cleaning_air_verdict_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(vtx_dead_end), "vtx_dead_end", "ddii", 0 } } },
    { "vtx_intake_water", intake_water_call, intake_water_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 3e4, 2e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 223.15, 333.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_treat_air", treat_air_call, treat_air_columns, 2,
      { { CALL_RECORD, sizeof(vtx_air_treatment), "vtx_air_treatment", "dddddddddddzzzzii", 0 },
        { CALL_OUT, sizeof(vtx_treated_air), "vtx_treated_air", "ddddddddddddii", 0 } } },
    { "vtx_desiccant_purge_share", desiccant_purge_share_call, desiccant_purge_share_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e5, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 3e4, 2e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_pipe_condensation", pipe_condensation_call, pipe_condensation_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e5, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 200, 363.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(vtx_cold_run), "vtx_cold_run", "dddii", 0 } } },
    { "vtx_pressure_dew_point_needed", pressure_dew_point_needed_call, pressure_dew_point_needed_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e5, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e5, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 200, 363.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_osha_permissible_time", osha_permissible_time_call, osha_permissible_time_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 80, 130 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_osha_table_time", osha_table_time_call, osha_table_time_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 90, 115 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_osha_dose", osha_dose_call, osha_dose_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 130 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 86400 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 80, 90 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_osha_average_level", osha_average_level_call, osha_average_level_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_osha_permissible_level", osha_permissible_level_call, osha_permissible_level_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 86400 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_osha_protected_level", osha_protected_level_call, osha_protected_level_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 60 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_niosh_permissible_time", niosh_permissible_time_call, niosh_permissible_time_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 80, 140 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_niosh_dose", niosh_dose_call, niosh_dose_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 140 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 86400 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_niosh_average_level", niosh_average_level_call, niosh_average_level_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_niosh_permissible_level", niosh_permissible_level_call, niosh_permissible_level_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 86400 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_daily_exposure_level", daily_exposure_level_call, daily_exposure_level_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 86400 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_eu_permissible_time", eu_permissible_time_call, eu_permissible_time_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 60, 140 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 70, 90 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_eu_permissible_level", eu_permissible_level_call, eu_permissible_level_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 86400 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 70, 90 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_noise_rule_time", noise_rule_time_call, noise_rule_time_columns, 3,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_eu_noise_verdict", eu_noise_verdict_call, eu_noise_verdict_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 60 },
        { CALL_OUT, sizeof(vtx_eu_noise), "vtx_eu_noise", "ddddiiii", 0 } } },
    { "vtx_filter_drop", filter_drop_call, filter_drop_columns, 5,
      { { CALL_RECORD, sizeof(vtx_filter), "vtx_filter", "dddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1e4 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_filter_loading", filter_loading_call, filter_loading_columns, 5,
      { { CALL_RECORD, sizeof(vtx_filter), "vtx_filter", "dddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_filter_drop_at_reference", filter_drop_at_reference_call, filter_drop_at_reference_columns, 10,
      { { CALL_RECORD, sizeof(vtx_filter), "vtx_filter", "dddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e4 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_filter_loading_when_due", filter_loading_when_due_call, filter_loading_when_due_columns, 2,
      { { CALL_RECORD, sizeof(vtx_filter), "vtx_filter", "dddddzzzz", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_filter_element", filter_element_call, filter_element_columns, 3,
      { { CALL_RECORD, sizeof(vtx_filter), "vtx_filter", "dddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1e4 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_filter_time_left", filter_time_left_call, filter_time_left_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 1e9 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_filter_economic_interval", filter_economic_interval_call, filter_economic_interval_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e9 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-15, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_feed_freezing", feed_freezing_call, feed_freezing_columns, 10,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 5e4, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 373.15 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 3e4, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 120, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 30 },
        { CALL_OUT, sizeof(vtx_feed_water), "vtx_feed_water", "dddddddddddiiii", 0 } } },
    { "vtx_covered_tube_heat", covered_tube_heat_call, covered_tube_heat_columns, 5,
      { { CALL_RECORD, sizeof(vtx_covered_tube), "vtx_covered_tube", "ddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_OUT, sizeof(vtx_tube_heat), "vtx_tube_heat", "ddddddddii", 0 } } },
    { "vtx_cover_inside_temperature", cover_inside_temperature_call, cover_inside_temperature_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e6, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, 20 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_critical_radius", critical_radius_call, critical_radius_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_insulation_thickness", insulation_thickness_call, insulation_thickness_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-5, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_wall_insulation_thickness", wall_insulation_thickness_call, wall_insulation_thickness_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 2000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_turning_removal", turning_removal_call, turning_removal_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_bar_turning_removal", bar_turning_removal_call, bar_turning_removal_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_milling_removal", milling_removal_call, milling_removal_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_drilling_removal", drilling_removal_call, drilling_removal_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_grinding_removal", grinding_removal_call, grinding_removal_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_specific_cutting_energy", specific_cutting_energy_call, specific_cutting_energy_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 700 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 2e-6, 5e-3 },
        { CALL_OUT, sizeof(vtx_cutting_energy), "vtx_cutting_energy", "ddddddii", 0 } } },
    { "vtx_cutting_power", cutting_power_call, cutting_power_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e7, 5e11 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cutting_force", cutting_force_call, cutting_force_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_thermal_number", thermal_number_call, thermal_number_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 30000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-7, 0.05 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_orthogonal_heat_partition", orthogonal_heat_partition_call, orthogonal_heat_partition_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.05, 1.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -0.7, 0.9 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(vtx_heat_partition), "vtx_heat_partition", "ddddddddddii", 0 } } },
    { "vtx_combined_heat_partition", combined_heat_partition_call, combined_heat_partition_columns, 3,
      { { CALL_RECORD, sizeof(vtx_heat_partition), "vtx_heat_partition", "", 0 },
        { CALL_RECORD, sizeof(vtx_heat_partition), "vtx_heat_partition", "", 0 },
        { CALL_OUT, sizeof(vtx_heat_partition), "vtx_heat_partition", "ddddddddddii", 0 } } },
    { "vtx_cutting_heat_flows", cutting_heat_flows_call, cutting_heat_flows_columns, 3,
      { { CALL_RECORD, sizeof(vtx_heat_partition), "vtx_heat_partition", "", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e8 },
        { CALL_OUT, sizeof(vtx_cutting_heat), "vtx_cutting_heat", "dddddddd", 0 } } },
    { "vtx_cutting_temperature_rise", cutting_temperature_rise_call, cutting_temperature_rise_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e7, 5e11 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 30000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 2000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_level_of_several", level_of_several_call, level_of_several_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_level_without_background", level_without_background_call, level_without_background_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_level_at_distance", level_at_distance_call, level_at_distance_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.05, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.05, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_distance_for_level", distance_for_level_call, distance_for_level_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.05, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_sound_power_level", sound_power_level_call, sound_power_level_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.05, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 100 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_room_constant", room_constant_call, room_constant_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.005, 0.99 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_level_in_room", level_in_room_call, level_in_room_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.05, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.05, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_distance_in_room", distance_in_room_call, distance_in_room_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.05, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_reverberation_distance", reverberation_distance_call, reverberation_distance_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_attenuation_needed", attenuation_needed_call, attenuation_needed_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 200 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cooling_duty", cooling_duty_call, cooling_duty_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e9 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_biot_number", biot_number_call, biot_number_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-7, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_time_constant", time_constant_call, time_constant_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e5 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_part_temperature", part_temperature_call, part_temperature_columns, 6,
      { { CALL_RECORD, sizeof(vtx_part), "vtx_part", "ddddddzzzzis", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e9 },
        { CALL_OUT, sizeof(vtx_part_state), "vtx_part_state", "dddddddii", 0 } } },
    { "vtx_part_cooling_time", part_cooling_time_call, part_cooling_time_columns, 6,
      { { CALL_RECORD, sizeof(vtx_part), "vtx_part", "ddddddzzzzis", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(vtx_cooling_time), "vtx_cooling_time", "dddaii", 0 } } },
    { "vtx_part_film_coefficient", part_film_coefficient_call, part_film_coefficient_columns, 6,
      { { CALL_RECORD, sizeof(vtx_part), "vtx_part", "ddddddzzzzis", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e9 },
        { CALL_OUT, sizeof(vtx_needed_film), "vtx_needed_film", "dddaii", 0 } } },
    { "vtx_face_temperature", face_temperature_call, face_temperature_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_face_film_coefficient", face_film_coefficient_call, face_film_coefficient_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_radiating_part_time", radiating_part_time_call, radiating_part_time_columns, 8,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_thermal_growth", thermal_growth_call, thermal_growth_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -2000, 2000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_softening_margin", softening_margin_call, softening_margin_columns, 3,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_OUT, sizeof(vtx_softening), "vtx_softening", "ddddii", 0 } } },
    { "vtx_water_class_to_ask", water_class_to_ask_call, water_class_to_ask_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 373.15 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 0 } } },
    { "vtx_oil_class_to_ask", oil_class_to_ask_call, oil_class_to_ask_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-20, 1 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 0 } } },
    { "vtx_particle_class_to_ask", particle_class_to_ask_call, particle_class_to_ask_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-5, 0.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-20, 1 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 0 } } },
    { "vtx_receiver_time", receiver_time_call, receiver_time_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e4, 2e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_receiver_volume", receiver_volume_call, receiver_volume_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e4, 2e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_leakage_from_cycle", leakage_from_cycle_call, leakage_from_cycle_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e7 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_leakage_from_decay", leakage_from_decay_call, leakage_from_decay_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e4, 2e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_judge_surface", judge_surface_call, judge_surface_columns, 3,
      { { CALL_RECORD, sizeof(vtx_room), "vtx_room", "ddddddzzzzis", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 110, 600 },
        { CALL_OUT, sizeof(vtx_surface_state), "vtx_surface_state", "ddddii", 0 } } },
    { "vtx_deposition_rate", deposition_rate_call, deposition_rate_columns, 4,
      { { CALL_RECORD, sizeof(vtx_room), "vtx_room", "ddddddzzzzis", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 110, 600 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(vtx_deposition), "vtx_deposition", "ddddddddii", 0 } } },
    { "vtx_vapour_diffusivity", vapour_diffusivity_call, vapour_diffusivity_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 500 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_mass_transfer_coefficient", mass_transfer_coefficient_call, mass_transfer_coefficient_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_vapour_flux", vapour_flux_call, vapour_flux_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 500 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 110, 500 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_wet_surface_flux", wet_surface_flux_call, wet_surface_flux_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 500 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 110, 600 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 3e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_evaporation_drop", evaporation_drop_call, evaporation_drop_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 3e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fin_of_bar", fin_of_bar_call, fin_of_bar_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-5, 5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-10, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 100 },
        { CALL_OUT, sizeof(vtx_fin), "vtx_fin", "dddddd", 0 } } },
    { "vtx_tool_temperature", tool_temperature_call, tool_temperature_columns, 4,
      { { CALL_RECORD, sizeof(vtx_tool), "vtx_tool", "ddddddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_OUT, sizeof(vtx_tool_temperatures), "vtx_tool_temperatures", "ddddddd", 0 } } },
    { "vtx_tool_film_coefficient", tool_film_coefficient_call, tool_film_coefficient_columns, 5,
      { { CALL_RECORD, sizeof(vtx_tool), "vtx_tool", "ddddddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 2000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(vtx_tool_film), "vtx_tool_film", "ddaii", 0 } } },
    { "vtx_moving_band_rise", moving_band_rise_call, moving_band_rise_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e11 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-7, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_standing_disc_rise", standing_disc_rise_call, standing_disc_rise_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e11 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-7, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_moving_source_rise", moving_source_rise_call, moving_source_rise_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e11 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-7, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-7, 1 },
        { CALL_OUT, sizeof(vtx_moving_source), "vtx_moving_source", "dddddddii", 0 } } },
    { "vtx_burn_threshold", burn_threshold_call, burn_threshold_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_touch_surface", touch_surface_call, touch_surface_columns, 6,
      { { CALL_RECORD, sizeof(vtx_skin), "vtx_skin", "ddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 70, 1500 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 1e6 },
        { CALL_OUT, sizeof(vtx_touch), "vtx_touch", "ddddddddiiii", 0 } } },
    { "vtx_coldest_touchable", coldest_touchable_call, coldest_touchable_columns, 4,
      { { CALL_RECORD, sizeof(vtx_skin), "vtx_skin", "ddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 250, 300 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_transient_eigenvalue", transient_eigenvalue_call, transient_eigenvalue_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_transient_shares", transient_shares_call, transient_shares_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.2, 1e9 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(vtx_transient), "vtx_transient", "dddddd", 0 } } },
    { "vtx_transient_fourier", transient_fourier_call, transient_fourier_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_body_temperatures", body_temperatures_call, body_temperatures_columns, 10,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e10 },
        { CALL_OUT, sizeof(vtx_body_state), "vtx_body_state", "dddddd", 0 } } },
    { "vtx_body_time", body_time_call, body_time_columns, 10,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_depth_temperature_fixed_surface", depth_temperature_fixed_surface_call, depth_temperature_fixed_surface_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_penetration_depth", penetration_depth_call, penetration_depth_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_depth_temperature_fixed_flux", depth_temperature_fixed_flux_call, depth_temperature_fixed_flux_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e9, 1e9 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_depth_temperature_in_stream", depth_temperature_in_stream_call, depth_temperature_in_stream_columns, 8,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_depth_time_in_stream", depth_time_in_stream_call, depth_time_in_stream_columns, 8,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_depth_temperature_pulse", depth_temperature_pulse_call, depth_temperature_pulse_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_thermal_diffusivity", thermal_diffusivity_call, thermal_diffusivity_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 30000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_thermal_effusivity", thermal_effusivity_call, thermal_effusivity_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 2e-3 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_contact_temperature", contact_temperature_call, contact_temperature_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 3000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 20, 3000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
};

const size_t calls_duty_count = sizeof calls_duty / sizeof calls_duty[0];
