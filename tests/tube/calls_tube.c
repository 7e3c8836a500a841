/* Every numeric call of the tube layer in one shape. Written by build-aux/generate. */
#include <vtx/balance.h>
#include <vtx/calibration.h>
#include <vtx/cold_fraction.h>
#include <vtx/icing.h>
#include <vtx/laws.h>
#include <vtx/reading.h>
#include <vtx/separation.h>
#include <vtx/setting.h>
#include <vtx/thermometry.h>

#include <math.h>

#include "../harness/calls.h"

static vtx_status tube_balance_call(const struct call_values *v)
{
    return vtx_tube_balance(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->number[7], v->number[8], v->number[9], v->out[0]);
}

static vtx_status tube_balance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_tube_balance_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->in[7], column->in_stride[7], column->in[8], column->in_stride[8],
        column->in[9], column->in_stride[9], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status calibration_predict_call(const struct call_values *v)
{
    return vtx_calibration_predict(v->record[0], v->record[1], v->number[0], v->out[0]);
}

static vtx_status calibration_predict_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_calibration_predict_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cold_fraction_from_thermometers_call(const struct call_values *v)
{
    return vtx_cold_fraction_from_thermometers(v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->number[4], v->number[5], v->number[6], v->number[7], v->number[8], v->number[9], v->out[0],
        v->out[1]);
}

static vtx_status cold_fraction_from_thermometers_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_cold_fraction_from_thermometers_batch(n, v->selector[0], column->in[0], column->in_stride[0],
        column->in[1], column->in_stride[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        column->in[6], column->in_stride[6], column->in[7], column->in_stride[7], column->in[8],
        column->in_stride[8], column->in[9], column->in_stride[9], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status cold_fraction_from_flows_call(const struct call_values *v)
{
    return vtx_cold_fraction_from_flows(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->out[0], v->out[1]);
}

static vtx_status cold_fraction_from_flows_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_cold_fraction_from_flows_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status cold_fraction_from_three_flows_call(const struct call_values *v)
{
    return vtx_cold_fraction_from_three_flows(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->out[0]);
}

static vtx_status cold_fraction_from_three_flows_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cold_fraction_from_three_flows_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status cold_fraction_combined_call(const struct call_values *v)
{
    return vtx_cold_fraction_combined(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0], v->out[1],
        v->out[2]);
}

static vtx_status cold_fraction_combined_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cold_fraction_combined_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->out[2],
        column->out_stride[2], column->status, column->failed);
}

static vtx_status cold_fraction_from_openings_call(const struct call_values *v)
{
    return vtx_cold_fraction_from_openings(v->record[0], v->record[1], v->selector[0], v->number[0], v->number[1],
        v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status cold_fraction_from_openings_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_cold_fraction_from_openings_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], v->selector[0], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        column->in[6], column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status hot_area_for_cold_fraction_call(const struct call_values *v)
{
    return vtx_hot_area_for_cold_fraction(v->record[0], v->record[1], v->selector[0], v->number[0], v->number[1],
        v->number[2], v->number[3], v->number[4], v->number[5], v->out[0]);
}

static vtx_status hot_area_for_cold_fraction_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_hot_area_for_cold_fraction_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], v->selector[0], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        column->in[6], column->in_stride[6], column->in[7], column->in_stride[7], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status icing_range_call(const struct call_values *v)
{
    return vtx_icing_range(v->record[0], v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status icing_range_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_icing_range_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cold_condensate_flow_call(const struct call_values *v)
{
    return vtx_cold_condensate_flow(v->record[0], v->number[0], v->number[1], v->out[0], v->out[1]);
}

static vtx_status cold_condensate_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cold_condensate_flow_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status first_law_residual_call(const struct call_values *v)
{
    return vtx_first_law_residual(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status first_law_residual_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_first_law_residual_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status hot_temperature_from_balance_call(const struct call_values *v)
{
    return vtx_hot_temperature_from_balance(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status hot_temperature_from_balance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_hot_temperature_from_balance_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status cold_fraction_from_temperatures_call(const struct call_values *v)
{
    return vtx_cold_fraction_from_temperatures(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status cold_fraction_from_temperatures_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cold_fraction_from_temperatures_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status refrigeration_capacity_call(const struct call_values *v)
{
    return vtx_refrigeration_capacity(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status refrigeration_capacity_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_refrigeration_capacity_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status entropy_generation_call(const struct call_values *v)
{
    return vtx_entropy_generation(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->number[6], v->number[7], v->number[8], v->out[0]);
}

static vtx_status entropy_generation_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_entropy_generation_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->in[6], column->in_stride[6],
        column->in[7], column->in_stride[7], column->in[8], column->in_stride[8], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status second_law_limit_call(const struct call_values *v)
{
    return vtx_second_law_limit(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status second_law_limit_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_second_law_limit_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status isentropic_drop_call(const struct call_values *v)
{
    return vtx_isentropic_drop(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status isentropic_drop_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_drop_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status ideal_vortex_call(const struct call_values *v)
{
    return vtx_ideal_vortex(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status ideal_vortex_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_ideal_vortex_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status flow_exergy_call(const struct call_values *v)
{
    return vtx_flow_exergy(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->out[0]);
}

static vtx_status flow_exergy_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_flow_exergy_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status exergy_balance_call(const struct call_values *v)
{
    return vtx_exergy_balance(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->number[6], v->number[7], v->number[8], v->number[9], v->number[10], v->out[0]);
}

static vtx_status exergy_balance_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_exergy_balance_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->in[6], column->in_stride[6],
        column->in[7], column->in_stride[7], column->in[8], column->in_stride[8], column->in[9],
        column->in_stride[9], column->in[10], column->in_stride[10], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status isentropic_temperature_efficiency_call(const struct call_values *v)
{
    return vtx_isentropic_temperature_efficiency(v->number[0], v->number[1], v->number[2], v->number[3],
        v->number[4], v->out[0]);
}

static vtx_status isentropic_temperature_efficiency_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_isentropic_temperature_efficiency_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status adiabatic_efficiency_call(const struct call_values *v)
{
    return vtx_adiabatic_efficiency(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->out[0]);
}

static vtx_status adiabatic_efficiency_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_adiabatic_efficiency_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status cop_isothermal_call(const struct call_values *v)
{
    return vtx_cop_isothermal(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->number[6], v->number[7], v->out[0]);
}

static vtx_status cop_isothermal_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cop_isothermal_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->in[6], column->in_stride[6],
        column->in[7], column->in_stride[7], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cop_adiabatic_call(const struct call_values *v)
{
    return vtx_cop_adiabatic(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->number[6], v->number[7], v->out[0]);
}

static vtx_status cop_adiabatic_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cop_adiabatic_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->in[6], column->in_stride[6],
        column->in[7], column->in_stride[7], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cop_electrical_call(const struct call_values *v)
{
    return vtx_cop_electrical(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status cop_electrical_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cop_electrical_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status reading_examine_call(const struct call_values *v)
{
    return vtx_reading_examine(v->record[0], v->selector[0], v->out[0]);
}

static vtx_status reading_examine_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_reading_examine_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status tube_for_question_call(const struct call_values *v)
{
    return vtx_tube_for_question(v->record[0], v->selector[0], v->out[0]);
}

static vtx_status tube_for_question_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_tube_for_question_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status tube_separate_call(const struct call_values *v)
{
    return vtx_tube_separate(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->number[4], v->number[5], v->out[0]);
}

static vtx_status tube_separate_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_tube_separate_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cold_fraction_for_temperature_call(const struct call_values *v)
{
    return vtx_cold_fraction_for_temperature(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->number[4], v->selector[1], v->out[0]);
}

static vtx_status cold_fraction_for_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_cold_fraction_for_temperature_batch(n, column->in[0], column->in_stride[0], v->selector[0],
        column->in[1], column->in_stride[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        v->selector[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cold_fraction_for_hot_temperature_call(const struct call_values *v)
{
    return vtx_cold_fraction_for_hot_temperature(v->record[0], v->selector[0], v->number[0], v->number[1],
        v->number[2], v->number[3], v->number[4], v->number[5], v->out[0]);
}

static vtx_status cold_fraction_for_hot_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_cold_fraction_for_hot_temperature_batch(n, column->in[0], column->in_stride[0], v->selector[0],
        column->in[1], column->in_stride[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        column->in[6], column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status best_cold_fraction_call(const struct call_values *v)
{
    return vtx_best_cold_fraction(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->number[4], v->out[0]);
}

static vtx_status best_cold_fraction_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_best_cold_fraction_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status cold_fraction_for_cooling_call(const struct call_values *v)
{
    return vtx_cold_fraction_for_cooling(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->number[4], v->number[5], v->selector[1], v->out[0]);
}

static vtx_status cold_fraction_for_cooling_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_cold_fraction_for_cooling_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->in[5], column->in_stride[5], column->in[6],
        column->in_stride[6], v->selector[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status coldest_outlet_call(const struct call_values *v)
{
    return vtx_coldest_outlet(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->out[0], v->out[1]);
}

static vtx_status coldest_outlet_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_coldest_outlet_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status inlet_pressure_for_temperature_call(const struct call_values *v)
{
    return vtx_inlet_pressure_for_temperature(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->number[4], v->number[5], v->out[0]);
}

static vtx_status inlet_pressure_for_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_inlet_pressure_for_temperature_batch(n, column->in[0], column->in_stride[0], v->selector[0],
        column->in[1], column->in_stride[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        column->in[6], column->in_stride[6], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status cold_pressure_for_temperature_call(const struct call_values *v)
{
    return vtx_cold_pressure_for_temperature(v->record[0], v->selector[0], v->number[0], v->number[1], v->number[2],
        v->number[3], v->number[4], v->out[0]);
}

static vtx_status cold_pressure_for_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_cold_pressure_for_temperature_batch(n, column->in[0], column->in_stride[0], v->selector[0],
        column->in[1], column->in_stride[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status inlet_temperature_for_temperature_call(const struct call_values *v)
{
    return vtx_inlet_temperature_for_temperature(v->record[0], v->selector[0], v->number[0], v->number[1],
        v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status inlet_temperature_for_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_inlet_temperature_for_temperature_batch(n, column->in[0], column->in_stride[0], v->selector[0],
        column->in[1], column->in_stride[1], column->in[2], column->in_stride[2], column->in[3],
        column->in_stride[3], column->in[4], column->in_stride[4], column->in[5], column->in_stride[5],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status dynamic_temperature_call(const struct call_values *v)
{
    return vtx_dynamic_temperature(v->number[0], v->number[1], v->out[0]);
}

static vtx_status dynamic_temperature_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_dynamic_temperature_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status recovery_factor_call(const struct call_values *v)
{
    return vtx_recovery_factor(v->selector[0], v->number[0], v->out[0], v->out[1]);
}

static vtx_status recovery_factor_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_recovery_factor_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status thermometer_uncertainty_call(const struct call_values *v)
{
    return vtx_thermometer_uncertainty(v->selector[0], v->number[0], v->out[0], v->out[1]);
}

static vtx_status thermometer_uncertainty_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_thermometer_uncertainty_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status probe_coefficient_call(const struct call_values *v)
{
    return vtx_probe_coefficient(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status probe_coefficient_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_probe_coefficient_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status probe_time_constant_call(const struct call_values *v)
{
    return vtx_probe_time_constant(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status probe_time_constant_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_probe_time_constant_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status settling_time_call(const struct call_values *v)
{
    return vtx_settling_time(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status settling_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_settling_time_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status unsettled_share_call(const struct call_values *v)
{
    return vtx_unsettled_share(v->number[0], v->number[1], v->out[0]);
}

static vtx_status unsettled_share_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_unsettled_share_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status stem_share_call(const struct call_values *v)
{
    return vtx_stem_share(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status stem_share_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_stem_share_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status probe_correct_call(const struct call_values *v)
{
    return vtx_probe_correct(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status probe_correct_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_probe_correct_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status probe_reading_call(const struct call_values *v)
{
    return vtx_probe_reading(v->record[0], v->number[0], v->out[0]);
}

static vtx_status probe_reading_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_probe_reading_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status hot_end_correct_call(const struct call_values *v)
{
    return vtx_hot_end_correct(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->number[5],
        v->number[6], v->out[0], v->out[1]);
}

static vtx_status hot_end_correct_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_hot_end_correct_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->in[6], column->in_stride[6],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

const struct call_description calls_tube[] = {
    { "vtx_tube_balance", tube_balance_call, tube_balance_columns, 12,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e4, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_OUT, sizeof(vtx_balance), "vtx_balance", "ddddddddddii", 0 } } },
    { "vtx_calibration_predict", calibration_predict_call, calibration_predict_columns, 4,
      { { CALL_RECORD, sizeof(vtx_calibration), "vtx_calibration", "", 0 },
        { CALL_RECORD, sizeof(vtx_reading), "vtx_reading", "-----------------------zzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 0.999 },
        { CALL_OUT, sizeof(vtx_calibrated_point), "vtx_calibrated_point", "ddddddddddddii", 0 } } },
    { "vtx_cold_fraction_from_thermometers", cold_fraction_from_thermometers_call, cold_fraction_from_thermometers_columns, 13,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_cold_fraction_from_flows", cold_fraction_from_flows_call, cold_fraction_from_flows_columns, 7,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_cold_fraction_from_three_flows", cold_fraction_from_three_flows_call, cold_fraction_from_three_flows_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-9, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-15, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-15, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-15, 100 },
        { CALL_OUT, sizeof(vtx_flow_balance), "vtx_flow_balance", "dddddddii", 0 } } },
    { "vtx_cold_fraction_combined", cold_fraction_combined_call, cold_fraction_combined_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_cold_fraction_from_openings", cold_fraction_from_openings_call, cold_fraction_from_openings_columns, 9,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_openings), "vtx_openings", "ddddddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(vtx_opening_flow), "vtx_opening_flow", "dddddddii", 0 } } },
    { "vtx_hot_area_for_cold_fraction", hot_area_for_cold_fraction_call, hot_area_for_cold_fraction_columns, 10,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_openings), "vtx_openings", "ddddddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_icing_range", icing_range_call, icing_range_columns, 6,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e4, 5e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_OUT, sizeof(vtx_icing), "vtx_icing", "ddddddddii", 0 } } },
    { "vtx_cold_condensate_flow", cold_condensate_flow_call, cold_condensate_flow_columns, 5,
      { { CALL_RECORD, sizeof(vtx_streams), "vtx_streams", "", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_first_law_residual", first_law_residual_call, first_law_residual_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_hot_temperature_from_balance", hot_temperature_from_balance_call, hot_temperature_from_balance_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cold_fraction_from_temperatures", cold_fraction_from_temperatures_call, cold_fraction_from_temperatures_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_refrigeration_capacity", refrigeration_capacity_call, refrigeration_capacity_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_entropy_generation", entropy_generation_call, entropy_generation_columns, 10,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_second_law_limit", second_law_limit_call, second_law_limit_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_isentropic_drop", isentropic_drop_call, isentropic_drop_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_ideal_vortex", ideal_vortex_call, ideal_vortex_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(vtx_vortex), "vtx_vortex", "ddddddddd", 0 } } },
    { "vtx_flow_exergy", flow_exergy_call, flow_exergy_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_exergy_balance", exergy_balance_call, exergy_balance_columns, 12,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(vtx_exergy_account), "vtx_exergy_account", "dddddddii", 0 } } },
    { "vtx_isentropic_temperature_efficiency", isentropic_temperature_efficiency_call, isentropic_temperature_efficiency_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_adiabatic_efficiency", adiabatic_efficiency_call, adiabatic_efficiency_columns, 7,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1.01, 1.7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cop_isothermal", cop_isothermal_call, cop_isothermal_columns, 9,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cop_adiabatic", cop_adiabatic_call, cop_adiabatic_columns, 9,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cop_electrical", cop_electrical_call, cop_electrical_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, 1e8 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_reading_examine", reading_examine_call, reading_examine_columns, 3,
      { { CALL_RECORD, sizeof(vtx_reading), "vtx_reading", "-----------------------zzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(vtx_reading_check), "vtx_reading_check", "ddddddddddddddiiii", 0 } } },
    { "vtx_tube_for_question", tube_for_question_call, tube_for_question_columns, 3,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(vtx_tube), "vtx_tube", "dddddddddddddii", 0 } } },
    { "vtx_tube_separate", tube_separate_call, tube_separate_columns, 9,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e4, 1e7 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e3, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(vtx_streams), "vtx_streams", "ddddddddddddddddddddii", 0 } } },
    { "vtx_cold_fraction_for_temperature", cold_fraction_for_temperature_call, cold_fraction_for_temperature_columns, 9,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(vtx_fraction_setting), "vtx_fraction_setting", "dddaaii", 0 } } },
    { "vtx_cold_fraction_for_hot_temperature", cold_fraction_for_hot_temperature_call, cold_fraction_for_hot_temperature_columns, 9,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(vtx_fraction_setting), "vtx_fraction_setting", "dddaaii", 0 } } },
    { "vtx_best_cold_fraction", best_cold_fraction_call, best_cold_fraction_columns, 8,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(vtx_best_setting), "vtx_best_setting", "dddddddaii", 0 } } },
    { "vtx_cold_fraction_for_cooling", cold_fraction_for_cooling_call, cold_fraction_for_cooling_columns, 10,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e7, 1e7 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(vtx_fraction_setting), "vtx_fraction_setting", "dddaaii", 0 } } },
    { "vtx_coldest_outlet", coldest_outlet_call, coldest_outlet_columns, 8,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_inlet_pressure_for_temperature", inlet_pressure_for_temperature_call, inlet_pressure_for_temperature_columns, 9,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(vtx_condition_setting), "vtx_condition_setting", "dddaaii", 0 } } },
    { "vtx_cold_pressure_for_temperature", cold_pressure_for_temperature_call, cold_pressure_for_temperature_columns, 8,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 450 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(vtx_condition_setting), "vtx_condition_setting", "dddaaii", 0 } } },
    { "vtx_inlet_temperature_for_temperature", inlet_temperature_for_temperature_call, inlet_temperature_for_temperature_columns, 8,
      { { CALL_RECORD, sizeof(vtx_tube), "vtx_tube", "dddddddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 0.2 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 1000 },
        { CALL_OUT, sizeof(vtx_condition_setting), "vtx_condition_setting", "dddaaii", 0 } } },
    { "vtx_dynamic_temperature", dynamic_temperature_call, dynamic_temperature_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_recovery_factor", recovery_factor_call, recovery_factor_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_thermometer_uncertainty", thermometer_uncertainty_call, thermometer_uncertainty_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 173.15, 523.15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_probe_coefficient", probe_coefficient_call, probe_coefficient_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 500 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-5, 0.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-7, 1e-3 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_probe_time_constant", probe_time_constant_call, probe_time_constant_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-5, 0.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_settling_time", settling_time_call, settling_time_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_unsettled_share", unsettled_share_call, unsettled_share_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e9 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_stem_share", stem_share_call, stem_share_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-5, 0.1 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_probe_correct", probe_correct_call, probe_correct_columns, 4,
      { { CALL_RECORD, sizeof(vtx_probe), "vtx_probe", "ddddddddddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_OUT, sizeof(vtx_corrected_temperature), "vtx_corrected_temperature", "ddddddddddd", 0 } } },
    { "vtx_probe_reading", probe_reading_call, probe_reading_columns, 3,
      { { CALL_RECORD, sizeof(vtx_probe), "vtx_probe", "ddddddddddddddddzzzz", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 100, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_hot_end_correct", hot_end_correct_call, hot_end_correct_columns, 9,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 200, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 400 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
};

const size_t calls_tube_count = sizeof calls_tube / sizeof calls_tube[0];
