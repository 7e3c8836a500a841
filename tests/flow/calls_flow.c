/* Every numeric call of the flow layer in one shape. Written by build-aux/generate. */
#include <vtx/bore.h>
#include <vtx/chain_element.h>
#include <vtx/conductance.h>
#include <vtx/fanno.h>
#include <vtx/flow_coefficient.h>
#include <vtx/friction.h>
#include <vtx/impingement.h>
#include <vtx/isentropic.h>
#include <vtx/jet.h>
#include <vtx/line.h>
#include <vtx/restriction.h>
#include <vtx/sharp_orifice.h>
#include <vtx/shock.h>
#include <vtx/standard_flow.h>
#include <vtx/valve.h>

#include <math.h>

#include "../harness/calls.h"

static vtx_status bore_at_least_call(const struct call_values *v)
{
    return vtx_bore_at_least(v->selector[0], v->number[0], v->out[0]);
}

static vtx_status bore_at_least_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_bore_at_least_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status chain_hose_call(const struct call_values *v)
{
    return vtx_chain_hose(v->number[0], v->number[1], v->out[0]);
}

static vtx_status chain_hose_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_hose_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status chain_pipe_call(const struct call_values *v)
{
    return vtx_chain_pipe(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status chain_pipe_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_pipe_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status chain_conductance_call(const struct call_values *v)
{
    return vtx_chain_conductance(v->number[0], v->number[1], v->out[0]);
}

static vtx_status chain_conductance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_conductance_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status chain_coupling_call(const struct call_values *v)
{
    return vtx_chain_coupling(v->number[0], v->out[0]);
}

static vtx_status chain_coupling_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_coupling_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status chain_orifice_call(const struct call_values *v)
{
    return vtx_chain_orifice(v->number[0], v->number[1], v->out[0]);
}

static vtx_status chain_orifice_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_orifice_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status chain_valve_call(const struct call_values *v)
{
    return vtx_chain_valve(v->number[0], v->number[1], v->out[0]);
}

static vtx_status chain_valve_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_valve_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status chain_filter_call(const struct call_values *v)
{
    return vtx_chain_filter(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status chain_filter_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_filter_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status chain_regulator_call(const struct call_values *v)
{
    return vtx_chain_regulator(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status chain_regulator_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_regulator_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status chain_manifold_call(const struct call_values *v)
{
    return vtx_chain_manifold(v->number[0], v->number[1], v->out[0]);
}

static vtx_status chain_manifold_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_chain_manifold_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status component_mass_flow_call(const struct call_values *v)
{
    return vtx_component_mass_flow(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0], v->out[1]);
}

static vtx_status component_mass_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_component_mass_flow_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status component_conductance_call(const struct call_values *v)
{
    return vtx_component_conductance(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status component_conductance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_component_conductance_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status component_outlet_pressure_call(const struct call_values *v)
{
    return vtx_component_outlet_pressure(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0], v->out[1]);
}

static vtx_status component_outlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_component_outlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status component_inlet_pressure_call(const struct call_values *v)
{
    return vtx_component_inlet_pressure(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status component_inlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_component_inlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status conductance_in_series_call(const struct call_values *v)
{
    return vtx_conductance_in_series(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0], v->out[1],
        v->out[2]);
}

static vtx_status conductance_in_series_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conductance_in_series_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->out[2],
        column->out_stride[2], column->status, column->failed);
}

static vtx_status conductance_in_parallel_call(const struct call_values *v)
{
    return vtx_conductance_in_parallel(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0], v->out[1]);
}

static vtx_status conductance_in_parallel_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conductance_in_parallel_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status tube_conductance_call(const struct call_values *v)
{
    return vtx_tube_conductance(v->number[0], v->number[1], v->out[0], v->out[1]);
}

static vtx_status tube_conductance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_tube_conductance_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status fanno_length_call(const struct call_values *v)
{
    return vtx_fanno_length(v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanno_length_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_length_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_mach_call(const struct call_values *v)
{
    return vtx_fanno_mach(v->number[0], v->number[1], v->selector[0], v->out[0]);
}

static vtx_status fanno_mach_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_fanno_mach_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        v->selector[0], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_outlet_mach_call(const struct call_values *v)
{
    return vtx_fanno_outlet_mach(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status fanno_outlet_mach_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_outlet_mach_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_temperature_ratio_call(const struct call_values *v)
{
    return vtx_fanno_temperature_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanno_temperature_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_temperature_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_mach_from_temperature_call(const struct call_values *v)
{
    return vtx_fanno_mach_from_temperature(v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanno_mach_from_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_mach_from_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_pressure_ratio_call(const struct call_values *v)
{
    return vtx_fanno_pressure_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanno_pressure_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_pressure_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_mach_from_pressure_call(const struct call_values *v)
{
    return vtx_fanno_mach_from_pressure(v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanno_mach_from_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_mach_from_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_velocity_ratio_call(const struct call_values *v)
{
    return vtx_fanno_velocity_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanno_velocity_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_velocity_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_mach_from_velocity_call(const struct call_values *v)
{
    return vtx_fanno_mach_from_velocity(v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanno_mach_from_velocity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_mach_from_velocity_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanno_stagnation_pressure_ratio_call(const struct call_values *v)
{
    return vtx_fanno_stagnation_pressure_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanno_stagnation_pressure_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_fanno_stagnation_pressure_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status kv_from_cv_call(const struct call_values *v)
{
    return vtx_kv_from_cv(v->number[0], v->out[0]);
}

static vtx_status kv_from_cv_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_kv_from_cv_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status cv_from_kv_call(const struct call_values *v)
{
    return vtx_cv_from_kv(v->number[0], v->out[0]);
}

static vtx_status cv_from_kv_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cv_from_kv_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status area_from_kv_call(const struct call_values *v)
{
    return vtx_area_from_kv(v->number[0], v->out[0]);
}

static vtx_status area_from_kv_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_area_from_kv_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status kv_from_area_call(const struct call_values *v)
{
    return vtx_kv_from_area(v->number[0], v->out[0]);
}

static vtx_status kv_from_area_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_kv_from_area_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status conductance_from_area_call(const struct call_values *v)
{
    return vtx_conductance_from_area(v->record[0], v->number[0], v->out[0]);
}

static vtx_status conductance_from_area_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conductance_from_area_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status area_from_conductance_call(const struct call_values *v)
{
    return vtx_area_from_conductance(v->record[0], v->number[0], v->out[0]);
}

static vtx_status area_from_conductance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_area_from_conductance_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status conductance_from_kv_call(const struct call_values *v)
{
    return vtx_conductance_from_kv(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status conductance_from_kv_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conductance_from_kv_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status kv_from_conductance_call(const struct call_values *v)
{
    return vtx_kv_from_conductance(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status kv_from_conductance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_kv_from_conductance_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status loss_from_kv_call(const struct call_values *v)
{
    return vtx_loss_from_kv(v->number[0], v->number[1], v->out[0]);
}

static vtx_status loss_from_kv_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_loss_from_kv_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status kv_from_loss_call(const struct call_values *v)
{
    return vtx_kv_from_loss(v->number[0], v->number[1], v->out[0]);
}

static vtx_status kv_from_loss_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_kv_from_loss_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status reynolds_number_call(const struct call_values *v)
{
    return vtx_reynolds_number(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status reynolds_number_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_reynolds_number_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status darcy_friction_factor_call(const struct call_values *v)
{
    return vtx_darcy_friction_factor(v->selector[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status darcy_friction_factor_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_darcy_friction_factor_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fanning_friction_factor_call(const struct call_values *v)
{
    return vtx_fanning_friction_factor(v->selector[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status fanning_friction_factor_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_fanning_friction_factor_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status fitting_loss_call(const struct call_values *v)
{
    return vtx_fitting_loss(v->selector[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status fitting_loss_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_fitting_loss_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status nozzle_nusselt_call(const struct call_values *v)
{
    return vtx_nozzle_nusselt(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0], v->out[1]);
}

static vtx_status nozzle_nusselt_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nozzle_nusselt_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status nozzle_field_nusselt_call(const struct call_values *v)
{
    return vtx_nozzle_field_nusselt(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0], v->out[1]);
}

static vtx_status nozzle_field_nusselt_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_nozzle_field_nusselt_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status impingement_at_call(const struct call_values *v)
{
    return vtx_impingement_at(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status impingement_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_impingement_at_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status twin_impingement_at_call(const struct call_values *v)
{
    return vtx_twin_impingement_at(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->out[0]);
}

static vtx_status twin_impingement_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_twin_impingement_at_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status field_impingement_at_call(const struct call_values *v)
{
    return vtx_field_impingement_at(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status field_impingement_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_field_impingement_at_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status impingement_distance_for_heat_call(const struct call_values *v)
{
    return vtx_impingement_distance_for_heat(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0],
        v->out[1]);
}

static vtx_status impingement_distance_for_heat_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_impingement_distance_for_heat_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status isentropic_temperature_call(const struct call_values *v)
{
    return vtx_isentropic_temperature(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status isentropic_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status critical_pressure_ratio_call(const struct call_values *v)
{
    return vtx_critical_pressure_ratio(v->number[0], v->out[0]);
}

static vtx_status critical_pressure_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_critical_pressure_ratio_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status critical_flow_function_call(const struct call_values *v)
{
    return vtx_critical_flow_function(v->number[0], v->out[0]);
}

static vtx_status critical_flow_function_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_critical_flow_function_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status isentropic_velocity_call(const struct call_values *v)
{
    return vtx_isentropic_velocity(v->record[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status isentropic_velocity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_velocity_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status gas_sound_speed_call(const struct call_values *v)
{
    return vtx_gas_sound_speed(v->record[0], v->number[0], v->out[0]);
}

static vtx_status gas_sound_speed_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_gas_sound_speed_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status isentropic_temperature_ratio_call(const struct call_values *v)
{
    return vtx_isentropic_temperature_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status isentropic_temperature_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_temperature_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status isentropic_pressure_ratio_call(const struct call_values *v)
{
    return vtx_isentropic_pressure_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status isentropic_pressure_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_pressure_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status isentropic_density_ratio_call(const struct call_values *v)
{
    return vtx_isentropic_density_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status isentropic_density_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_density_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status isentropic_area_ratio_call(const struct call_values *v)
{
    return vtx_isentropic_area_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status isentropic_area_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_area_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status mach_for_temperature_ratio_call(const struct call_values *v)
{
    return vtx_mach_for_temperature_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status mach_for_temperature_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_mach_for_temperature_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status mach_for_pressure_ratio_call(const struct call_values *v)
{
    return vtx_mach_for_pressure_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status mach_for_pressure_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_mach_for_pressure_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status mach_for_density_ratio_call(const struct call_values *v)
{
    return vtx_mach_for_density_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status mach_for_density_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_mach_for_density_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status mach_for_area_ratio_call(const struct call_values *v)
{
    return vtx_mach_for_area_ratio(v->number[0], v->selector[0], v->number[1], v->out[0]);
}

static vtx_status mach_for_area_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_mach_for_area_ratio_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status jet_outlet_at_call(const struct call_values *v)
{
    return vtx_jet_outlet_at(v->record[0], v->out[0]);
}

static vtx_status jet_outlet_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_jet_outlet_at_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status jet_at_call(const struct call_values *v)
{
    return vtx_jet_at(v->record[0], v->number[0], v->out[0]);
}

static vtx_status jet_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_jet_at_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status jet_distance_for_temperature_call(const struct call_values *v)
{
    return vtx_jet_distance_for_temperature(v->record[0], v->number[0], v->out[0], v->out[1]);
}

static vtx_status jet_distance_for_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_jet_distance_for_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->status, column->failed);
}

static vtx_status jet_distance_for_velocity_call(const struct call_values *v)
{
    return vtx_jet_distance_for_velocity(v->record[0], v->number[0], v->out[0], v->out[1]);
}

static vtx_status jet_distance_for_velocity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_jet_distance_for_velocity_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->status, column->failed);
}

static vtx_status jet_distance_for_impact_pressure_call(const struct call_values *v)
{
    return vtx_jet_distance_for_impact_pressure(v->record[0], v->number[0], v->out[0], v->out[1]);
}

static vtx_status jet_distance_for_impact_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_jet_distance_for_impact_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->status, column->failed);
}

static vtx_status jet_working_distance_call(const struct call_values *v)
{
    return vtx_jet_working_distance(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status jet_working_distance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_jet_working_distance_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status jet_impact_force_call(const struct call_values *v)
{
    return vtx_jet_impact_force(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status jet_impact_force_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_jet_impact_force_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status line_mass_flow_call(const struct call_values *v)
{
    return vtx_line_mass_flow(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2], v->out[0],
        v->out[1]);
}

static vtx_status line_mass_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_line_mass_flow_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->status, column->failed);
}

static vtx_status line_outlet_pressure_call(const struct call_values *v)
{
    return vtx_line_outlet_pressure(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2], v->out[0],
        v->out[1]);
}

static vtx_status line_outlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_line_outlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status line_inlet_pressure_call(const struct call_values *v)
{
    return vtx_line_inlet_pressure(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2], v->out[0],
        v->out[1]);
}

static vtx_status line_inlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_line_inlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->status, column->failed);
}

static vtx_status line_diameter_call(const struct call_values *v)
{
    return vtx_line_diameter(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2], v->number[3],
        v->out[0], v->out[1]);
}

static vtx_status line_diameter_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_line_diameter_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status line_length_call(const struct call_values *v)
{
    return vtx_line_length(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2], v->number[3],
        v->out[0], v->out[1]);
}

static vtx_status line_length_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_line_length_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status orifice_mass_flow_call(const struct call_values *v)
{
    return vtx_orifice_mass_flow(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0], v->out[1]);
}

static vtx_status orifice_mass_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_orifice_mass_flow_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status orifice_area_call(const struct call_values *v)
{
    return vtx_orifice_area(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0]);
}

static vtx_status orifice_area_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_orifice_area_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status orifice_outlet_pressure_call(const struct call_values *v)
{
    return vtx_orifice_outlet_pressure(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->number[4], v->out[0], v->out[1]);
}

static vtx_status orifice_outlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_orifice_outlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status orifice_inlet_pressure_call(const struct call_values *v)
{
    return vtx_orifice_inlet_pressure(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->number[4], v->out[0]);
}

static vtx_status orifice_inlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_orifice_inlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status conductance_mass_flow_call(const struct call_values *v)
{
    return vtx_conductance_mass_flow(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0],
        v->out[1]);
}

static vtx_status conductance_mass_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conductance_mass_flow_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status conductance_for_mass_flow_call(const struct call_values *v)
{
    return vtx_conductance_for_mass_flow(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0]);
}

static vtx_status conductance_for_mass_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conductance_for_mass_flow_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status conductance_outlet_pressure_call(const struct call_values *v)
{
    return vtx_conductance_outlet_pressure(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0], v->out[1]);
}

static vtx_status conductance_outlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conductance_outlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status conductance_inlet_pressure_call(const struct call_values *v)
{
    return vtx_conductance_inlet_pressure(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0]);
}

static vtx_status conductance_inlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conductance_inlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status perry_coefficient_call(const struct call_values *v)
{
    return vtx_perry_coefficient(v->number[0], v->out[0]);
}

static vtx_status perry_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_perry_coefficient_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status jobson_coefficient_call(const struct call_values *v)
{
    return vtx_jobson_coefficient(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status jobson_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_jobson_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status sharp_orifice_mass_flow_call(const struct call_values *v)
{
    return vtx_sharp_orifice_mass_flow(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->out[0], v->out[1]);
}

static vtx_status sharp_orifice_mass_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_sharp_orifice_mass_flow_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status sharp_orifice_area_call(const struct call_values *v)
{
    return vtx_sharp_orifice_area(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->out[0]);
}

static vtx_status sharp_orifice_area_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_sharp_orifice_area_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status sharp_orifice_outlet_pressure_call(const struct call_values *v)
{
    return vtx_sharp_orifice_outlet_pressure(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->out[0], v->out[1]);
}

static vtx_status sharp_orifice_outlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_sharp_orifice_outlet_pressure_batch(n, column->in[0], column->in_stride[0], v->selector[0],
        column->in[1], column->in_stride[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status sharp_orifice_inlet_pressure_call(const struct call_values *v)
{
    return vtx_sharp_orifice_inlet_pressure(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->out[0]);
}

static vtx_status sharp_orifice_inlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_sharp_orifice_inlet_pressure_batch(n, column->in[0], column->in_stride[0], v->selector[0],
        column->in[1], column->in_stride[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status orifice_expansibility_call(const struct call_values *v)
{
    return vtx_orifice_expansibility(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status orifice_expansibility_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_orifice_expansibility_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_downstream_mach_call(const struct call_values *v)
{
    return vtx_shock_downstream_mach(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_downstream_mach_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_downstream_mach_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_pressure_ratio_call(const struct call_values *v)
{
    return vtx_shock_pressure_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_pressure_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_pressure_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_density_ratio_call(const struct call_values *v)
{
    return vtx_shock_density_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_density_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_density_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_temperature_ratio_call(const struct call_values *v)
{
    return vtx_shock_temperature_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_temperature_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_temperature_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_stagnation_ratio_call(const struct call_values *v)
{
    return vtx_shock_stagnation_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_stagnation_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_stagnation_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_pitot_ratio_call(const struct call_values *v)
{
    return vtx_shock_pitot_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_pitot_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_pitot_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_mach_for_downstream_mach_call(const struct call_values *v)
{
    return vtx_shock_mach_for_downstream_mach(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_mach_for_downstream_mach_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_mach_for_downstream_mach_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_mach_for_pressure_ratio_call(const struct call_values *v)
{
    return vtx_shock_mach_for_pressure_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_mach_for_pressure_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_mach_for_pressure_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_mach_for_density_ratio_call(const struct call_values *v)
{
    return vtx_shock_mach_for_density_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_mach_for_density_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_mach_for_density_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_mach_for_temperature_ratio_call(const struct call_values *v)
{
    return vtx_shock_mach_for_temperature_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_mach_for_temperature_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_mach_for_temperature_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_mach_for_stagnation_ratio_call(const struct call_values *v)
{
    return vtx_shock_mach_for_stagnation_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_mach_for_stagnation_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_mach_for_stagnation_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status shock_mach_for_pitot_ratio_call(const struct call_values *v)
{
    return vtx_shock_mach_for_pitot_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status shock_mach_for_pitot_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_shock_mach_for_pitot_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status reference_density_call(const struct call_values *v)
{
    return vtx_reference_density(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0], v->out[1]);
}

static vtx_status reference_density_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_reference_density_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status mass_flow_from_standard_call(const struct call_values *v)
{
    return vtx_mass_flow_from_standard(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->out[0], v->out[1]);
}

static vtx_status mass_flow_from_standard_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_mass_flow_from_standard_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status standard_flow_call(const struct call_values *v)
{
    return vtx_standard_flow(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status standard_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_standard_flow_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status standard_flow_at_call(const struct call_values *v)
{
    return vtx_standard_flow_at(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->out[0]);
}

static vtx_status standard_flow_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_standard_flow_at_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status free_air_delivered_call(const struct call_values *v)
{
    return vtx_free_air_delivered(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status free_air_delivered_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_free_air_delivered_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status valve_critical_ratio_call(const struct call_values *v)
{
    return vtx_valve_critical_ratio(v->number[0], v->number[1], v->out[0]);
}

static vtx_status valve_critical_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_valve_critical_ratio_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status valve_mass_flow_call(const struct call_values *v)
{
    return vtx_valve_mass_flow(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2], v->out[0],
        v->out[1]);
}

static vtx_status valve_mass_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_valve_mass_flow_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->out[1], column->out_stride[1],
        column->status, column->failed);
}

static vtx_status valve_flow_coefficient_call(const struct call_values *v)
{
    return vtx_valve_flow_coefficient(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2],
        v->number[3], v->out[0], v->out[1]);
}

static vtx_status valve_flow_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_valve_flow_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status valve_outlet_pressure_call(const struct call_values *v)
{
    return vtx_valve_outlet_pressure(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2], v->out[0],
        v->out[1]);
}

static vtx_status valve_outlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_valve_outlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status valve_inlet_pressure_call(const struct call_values *v)
{
    return vtx_valve_inlet_pressure(v->record[0], v->record[1], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status valve_inlet_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_valve_inlet_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

const struct call_description calls_flow[] = {
    { "vtx_bore_at_least", bore_at_least_call, bore_at_least_columns, 3,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 2 },
        { CALL_OUT, sizeof(vtx_bore), "vtx_bore", "dddiiii", 0 } } },
    { "vtx_chain_hose", chain_hose_call, chain_hose_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_chain_pipe", chain_pipe_call, chain_pipe_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_chain_conductance", chain_conductance_call, chain_conductance_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_chain_coupling", chain_coupling_call, chain_coupling_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.002, 0.05 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_chain_orifice", chain_orifice_call, chain_orifice_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1.1 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_chain_valve", chain_valve_call, chain_valve_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_chain_filter", chain_filter_call, chain_filter_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_chain_regulator", chain_regulator_call, chain_regulator_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_chain_manifold", chain_manifold_call, chain_manifold_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(vtx_chain_element), "vtx_chain_element", "ddddddddddddddddddddii", 0 } } },
    { "vtx_component_mass_flow", component_mass_flow_call, component_mass_flow_columns, 6,
      { { CALL_RECORD, sizeof(vtx_component), "vtx_component", "ddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 1 } } },
    { "vtx_component_conductance", component_conductance_call, component_conductance_columns, 6,
      { { CALL_RECORD, sizeof(vtx_component), "vtx_component", "-dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_component_outlet_pressure", component_outlet_pressure_call, component_outlet_pressure_columns, 6,
      { { CALL_RECORD, sizeof(vtx_component), "vtx_component", "ddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_component_inlet_pressure", component_inlet_pressure_call, component_inlet_pressure_columns, 5,
      { { CALL_RECORD, sizeof(vtx_component), "vtx_component", "ddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_conductance_in_series", conductance_in_series_call, conductance_in_series_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_conductance_in_parallel", conductance_in_parallel_call, conductance_in_parallel_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_tube_conductance", tube_conductance_call, tube_conductance_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.002, 0.05 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_fanno_length", fanno_length_call, fanno_length_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_mach", fanno_mach_call, fanno_mach_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e8 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_outlet_mach", fanno_outlet_mach_call, fanno_outlet_mach_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 50 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_temperature_ratio", fanno_temperature_ratio_call, fanno_temperature_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_mach_from_temperature", fanno_mach_from_temperature_call, fanno_mach_from_temperature_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_pressure_ratio", fanno_pressure_ratio_call, fanno_pressure_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_mach_from_pressure", fanno_mach_from_pressure_call, fanno_mach_from_pressure_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_velocity_ratio", fanno_velocity_ratio_call, fanno_velocity_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_mach_from_velocity", fanno_mach_from_velocity_call, fanno_mach_from_velocity_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanno_stagnation_pressure_ratio", fanno_stagnation_pressure_ratio_call, fanno_stagnation_pressure_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_kv_from_cv", kv_from_cv_call, kv_from_cv_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cv_from_kv", cv_from_kv_call, cv_from_kv_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_area_from_kv", area_from_kv_call, area_from_kv_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_kv_from_area", kv_from_area_call, kv_from_area_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_conductance_from_area", conductance_from_area_call, conductance_from_area_columns, 3,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_area_from_conductance", area_from_conductance_call, area_from_conductance_columns, 3,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_conductance_from_kv", conductance_from_kv_call, conductance_from_kv_columns, 4,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_kv_from_conductance", kv_from_conductance_call, kv_from_conductance_columns, 4,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_loss_from_kv", loss_from_kv_call, loss_from_kv_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.001, 2 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_kv_from_loss", kv_from_loss_call, kv_from_loss_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e23 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.001, 2 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_reynolds_number", reynolds_number_call, reynolds_number_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_darcy_friction_factor", darcy_friction_factor_call, darcy_friction_factor_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fanning_friction_factor", fanning_friction_factor_call, fanning_friction_factor_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_fitting_loss", fitting_loss_call, fitting_loss_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-8, 0.1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_nozzle_nusselt", nozzle_nusselt_call, nozzle_nusselt_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 1 } } },
    { "vtx_nozzle_field_nusselt", nozzle_field_nusselt_call, nozzle_field_nusselt_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 0.8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 1 } } },
    { "vtx_impingement_at", impingement_at_call, impingement_at_columns, 5,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-8, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 1500 },
        { CALL_OUT, sizeof(vtx_impingement), "vtx_impingement", "dddddddii", 0 } } },
    { "vtx_twin_impingement_at", twin_impingement_at_call, twin_impingement_at_columns, 7,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-8, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 1500 },
        { CALL_OUT, sizeof(vtx_impingement), "vtx_impingement", "dddddddii", 0 } } },
    { "vtx_field_impingement_at", field_impingement_at_call, field_impingement_at_columns, 5,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 2e-4, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 1500 },
        { CALL_OUT, sizeof(vtx_impingement), "vtx_impingement", "dddddddii", 0 } } },
    { "vtx_impingement_distance_for_heat", impingement_distance_for_heat_call, impingement_distance_for_heat_columns, 6,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-8, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 1500 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_isentropic_temperature", isentropic_temperature_call, isentropic_temperature_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_critical_pressure_ratio", critical_pressure_ratio_call, critical_pressure_ratio_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_critical_flow_function", critical_flow_function_call, critical_flow_function_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_isentropic_velocity", isentropic_velocity_call, isentropic_velocity_columns, 5,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_gas_sound_speed", gas_sound_speed_call, gas_sound_speed_columns, 3,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_isentropic_temperature_ratio", isentropic_temperature_ratio_call, isentropic_temperature_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_isentropic_pressure_ratio", isentropic_pressure_ratio_call, isentropic_pressure_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_isentropic_density_ratio", isentropic_density_ratio_call, isentropic_density_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_isentropic_area_ratio", isentropic_area_ratio_call, isentropic_area_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_mach_for_temperature_ratio", mach_for_temperature_ratio_call, mach_for_temperature_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_mach_for_pressure_ratio", mach_for_pressure_ratio_call, mach_for_pressure_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_mach_for_density_ratio", mach_for_density_ratio_call, mach_for_density_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_mach_for_area_ratio", mach_for_area_ratio_call, mach_for_area_ratio_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_jet_outlet_at", jet_outlet_at_call, jet_outlet_at_columns, 2,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_OUT, sizeof(vtx_jet_outlet), "vtx_jet_outlet", "dddddddddddii", 0 } } },
    { "vtx_jet_at", jet_at_call, jet_at_columns, 3,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_OUT, sizeof(vtx_jet_state), "vtx_jet_state", "ddddddii", 0 } } },
    { "vtx_jet_distance_for_temperature", jet_distance_for_temperature_call, jet_distance_for_temperature_columns, 4,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_jet_distance_for_velocity", jet_distance_for_velocity_call, jet_distance_for_velocity_columns, 4,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1500 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_jet_distance_for_impact_pressure", jet_distance_for_impact_pressure_call, jet_distance_for_impact_pressure_columns, 4,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e7 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_jet_working_distance", jet_working_distance_call, jet_working_distance_columns, 4,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-3, 1e7 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_jet_impact_force", jet_impact_force_call, jet_impact_force_columns, 4,
      { { CALL_RECORD, sizeof(vtx_jet), "vtx_jet", "ddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-8, 100 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_line_mass_flow", line_mass_flow_call, line_mass_flow_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_line), "vtx_line", "ddddddzzzzii", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(vtx_line_state), "vtx_line_state", "dddddddddddddddddaii", 1 } } },
    { "vtx_line_outlet_pressure", line_outlet_pressure_call, line_outlet_pressure_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_line), "vtx_line", "ddddddzzzzii", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(vtx_line_state), "vtx_line_state", "dddddddddddddddddaii", 1 } } },
    { "vtx_line_inlet_pressure", line_inlet_pressure_call, line_inlet_pressure_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_line), "vtx_line", "ddddddzzzzii", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(vtx_line_state), "vtx_line_state", "dddddddddddddddddaii", 1 } } },
    { "vtx_line_diameter", line_diameter_call, line_diameter_columns, 8,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_line), "vtx_line", "-dddddzzzzii", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(vtx_line_state), "vtx_line_state", "dddddddddddddddddaii", 1 } } },
    { "vtx_line_length", line_length_call, line_length_columns, 8,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_line), "vtx_line", "d-ddddzzzzii", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(vtx_line_state), "vtx_line_state", "dddddddddddddddddaii", 1 } } },
    { "vtx_orifice_mass_flow", orifice_mass_flow_call, orifice_mass_flow_columns, 8,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 1 } } },
    { "vtx_orifice_area", orifice_area_call, orifice_area_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_orifice_outlet_pressure", orifice_outlet_pressure_call, orifice_outlet_pressure_columns, 8,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_orifice_inlet_pressure", orifice_inlet_pressure_call, orifice_inlet_pressure_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_conductance_mass_flow", conductance_mass_flow_call, conductance_mass_flow_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 1 } } },
    { "vtx_conductance_for_mass_flow", conductance_for_mass_flow_call, conductance_for_mass_flow_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_conductance_outlet_pressure", conductance_outlet_pressure_call, conductance_outlet_pressure_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_conductance_inlet_pressure", conductance_inlet_pressure_call, conductance_inlet_pressure_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.99 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_perry_coefficient", perry_coefficient_call, perry_coefficient_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_jobson_coefficient", jobson_coefficient_call, jobson_coefficient_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 0.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_sharp_orifice_mass_flow", sharp_orifice_mass_flow_call, sharp_orifice_mass_flow_columns, 8,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 1 } } },
    { "vtx_sharp_orifice_area", sharp_orifice_area_call, sharp_orifice_area_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_sharp_orifice_outlet_pressure", sharp_orifice_outlet_pressure_call, sharp_orifice_outlet_pressure_columns, 8,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_sharp_orifice_inlet_pressure", sharp_orifice_inlet_pressure_call, sharp_orifice_inlet_pressure_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_orifice_expansibility", orifice_expansibility_call, orifice_expansibility_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 0.75 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_downstream_mach", shock_downstream_mach_call, shock_downstream_mach_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_pressure_ratio", shock_pressure_ratio_call, shock_pressure_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_density_ratio", shock_density_ratio_call, shock_density_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_temperature_ratio", shock_temperature_ratio_call, shock_temperature_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_stagnation_ratio", shock_stagnation_ratio_call, shock_stagnation_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_pitot_ratio", shock_pitot_ratio_call, shock_pitot_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, 50 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_mach_for_downstream_mach", shock_mach_for_downstream_mach_call, shock_mach_for_downstream_mach_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_mach_for_pressure_ratio", shock_mach_for_pressure_ratio_call, shock_mach_for_pressure_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_mach_for_density_ratio", shock_mach_for_density_ratio_call, shock_mach_for_density_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_mach_for_temperature_ratio", shock_mach_for_temperature_ratio_call, shock_mach_for_temperature_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_mach_for_stagnation_ratio", shock_mach_for_stagnation_ratio_call, shock_mach_for_stagnation_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_shock_mach_for_pitot_ratio", shock_mach_for_pitot_ratio_call, shock_mach_for_pitot_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_reference_density", reference_density_call, reference_density_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 373.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_mass_flow_from_standard", mass_flow_from_standard_call, mass_flow_from_standard_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 373.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e6, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_standard_flow", standard_flow_call, standard_flow_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 373.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e6, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_standard_flow_at", standard_flow_at_call, standard_flow_at_columns, 9,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 373.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e6, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 373.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_free_air_delivered", free_air_delivered_call, free_air_delivered_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 233.15, 373.15 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e6, 1e6 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_valve_critical_ratio", valve_critical_ratio_call, valve_critical_ratio_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_valve_mass_flow", valve_mass_flow_call, valve_mass_flow_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_valve), "vtx_valve", "ddd--zzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 1 } } },
    { "vtx_valve_flow_coefficient", valve_flow_coefficient_call, valve_flow_coefficient_columns, 8,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_valve), "vtx_valve", "-dd--zzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_valve_outlet_pressure", valve_outlet_pressure_call, valve_outlet_pressure_columns, 7,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_valve), "vtx_valve", "ddd--zzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "a", 1 } } },
    { "vtx_valve_inlet_pressure", valve_inlet_pressure_call, valve_inlet_pressure_columns, 6,
      { { CALL_RECORD, sizeof(vtx_gas), "vtx_gas", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_valve), "vtx_valve", "ddd--zzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
};

const size_t calls_flow_count = sizeof calls_flow / sizeof calls_flow[0];
