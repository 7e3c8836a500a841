/* Every numeric call of the cooler layer in one shape. Written by build-aux/generate. */
#include <vtx/acceptance.h>
#include <vtx/commissioning.h>
#include <vtx/comparison.h>
#include <vtx/cooler.h>
#include <vtx/diagnosis.h>
#include <vtx/job.h>
#include <vtx/sizing.h>
#include <vtx/uncertainty.h>
#include <vtx/wear.h>

#include <math.h>

#include "../harness/calls.h"

static vtx_status accept_call(const struct call_values *v)
{
    return vtx_accept(v->record[0], v->record[1], v->record[2], v->record[3], v->record[4], v->out[0]);
}

static vtx_status accept_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_accept_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status plan_readings_call(const struct call_values *v)
{
    return vtx_plan_readings(v->record[0], v->record[1], v->record[2], v->record[3], v->out[0]);
}

static vtx_status plan_readings_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_plan_readings_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status find_setting_call(const struct call_values *v)
{
    return vtx_find_setting(v->record[0], v->record[1], v->record[2], v->out[0]);
}

static vtx_status find_setting_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_find_setting_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status advise_valve_call(const struct call_values *v)
{
    return vtx_advise_valve(v->record[0], v->record[1], v->record[2], v->record[3], v->out[0]);
}

static vtx_status advise_valve_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_advise_valve_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status body_time_constant_call(const struct call_values *v)
{
    return vtx_body_time_constant(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4], v->out[0]);
}

static vtx_status body_time_constant_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_body_time_constant_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status turn_settling_time_call(const struct call_values *v)
{
    return vtx_turn_settling_time(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status turn_settling_time_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_turn_settling_time_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status compare_plain_air_call(const struct call_values *v)
{
    return vtx_compare_plain_air(v->record[0], v->record[1], v->out[0]);
}

static vtx_status compare_plain_air_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_compare_plain_air_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status site_at_altitude_call(const struct call_values *v)
{
    return vtx_site_at_altitude(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status site_at_altitude_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_site_at_altitude_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status supply_humidity_ratio_call(const struct call_values *v)
{
    return vtx_supply_humidity_ratio(v->record[0], v->selector[0], v->out[0]);
}

static vtx_status supply_humidity_ratio_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_supply_humidity_ratio_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status cooler_rated_mass_flow_call(const struct call_values *v)
{
    return vtx_cooler_rated_mass_flow(v->record[0], v->out[0]);
}

static vtx_status cooler_rated_mass_flow_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cooler_rated_mass_flow_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status cooler_inlet_area_call(const struct call_values *v)
{
    return vtx_cooler_inlet_area(v->record[0], v->out[0]);
}

static vtx_status cooler_inlet_area_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_cooler_inlet_area_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status operating_point_at_call(const struct call_values *v)
{
    return vtx_operating_point_at(v->record[0], v->record[1], v->record[2], v->record[3], v->number[0], v->out[0]);
}

static vtx_status operating_point_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_operating_point_at_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status predict_readings_call(const struct call_values *v)
{
    return vtx_predict_readings(v->record[0], v->selector[0], v->number[0], v->out[0]);
}

static vtx_status predict_readings_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_predict_readings_batch(n, column->in[0], column->in_stride[0], v->selector[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status diagnose_call(const struct call_values *v)
{
    return vtx_diagnose(v->record[0], v->record[1], v->record[2], v->out[0]);
}

static vtx_status diagnose_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_diagnose_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status job_evaluate_call(const struct call_values *v)
{
    return vtx_job_evaluate(v->record[0], v->out[0], v->out[1]);
}

static vtx_status job_evaluate_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_job_evaluate_batch(n, column->in[0], column->in_stride[0], column->out[0], column->out_stride[0],
        column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status size_call(const struct call_values *v)
{
    return vtx_size(v->record[0], v->record[1], v->out[0]);
}

static vtx_status size_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_size_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status size_for_both_call(const struct call_values *v)
{
    return vtx_size_for_both(v->record[0], v->record[1], v->record[2], v->out[0]);
}

static vtx_status size_for_both_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_size_for_both_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status size_pair_call(const struct call_values *v)
{
    return vtx_size_pair(v->record[0], v->record[1], v->record[2], v->out[0], v->out[1]);
}

static vtx_status size_pair_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_size_pair_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status job_cold_fraction_call(const struct call_values *v)
{
    return vtx_job_cold_fraction(v->record[0], v->number[0], v->selector[0], v->out[0]);
}

static vtx_status job_cold_fraction_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_job_cold_fraction_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        v->selector[0], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status job_supply_pressure_call(const struct call_values *v)
{
    return vtx_job_supply_pressure(v->record[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status job_supply_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_job_supply_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status job_uncertainty_call(const struct call_values *v)
{
    return vtx_job_uncertainty(v->record[0], v->record[1], v->selector[0], v->out[0]);
}

static vtx_status job_uncertainty_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_job_uncertainty_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        v->selector[0], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status job_second_order_call(const struct call_values *v)
{
    return vtx_job_second_order(v->record[0], v->record[1], v->selector[0], v->out[0]);
}

static vtx_status job_second_order_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_job_second_order_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        v->selector[0], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status find_wear_call(const struct call_values *v)
{
    return vtx_find_wear(v->record[0], v->record[1], v->record[2], v->out[0]);
}

static vtx_status find_wear_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_find_wear_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

const struct call_description calls_cooler[] = {
    { "vtx_accept", accept_call, accept_columns, 6,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_service_readings), "vtx_service_readings", "----------------zzzz", 0 },
        { CALL_RECORD, sizeof(vtx_input_uncertainty), "vtx_input_uncertainty", "ddddddddddddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_quotation), "vtx_quotation", "ddddddzzzzii", 0 },
        { CALL_OUT, sizeof(vtx_acceptance), "vtx_acceptance", "ddddddddddddddddddddddddddddddddddddiiiiiiii", 0 } } },
    { "vtx_plan_readings", plan_readings_call, plan_readings_columns, 5,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_input_uncertainty), "vtx_input_uncertainty", "ddddddddddddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_service_readings), "vtx_service_readings", "----------------zzzz", 0 },
        { CALL_RECORD, sizeof(vtx_valve_goal), "vtx_valve_goal", "dzzzzii", 0 },
        { CALL_OUT, sizeof(vtx_reading_plan), "vtx_reading_plan", "dddddddddiiiiiiiiiiii", 0 } } },
    { "vtx_find_setting", find_setting_call, find_setting_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_input_uncertainty), "vtx_input_uncertainty", "ddddddddddddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_service_readings), "vtx_service_readings", "----------------zzzz", 0 },
        { CALL_OUT, sizeof(vtx_setting_found), "vtx_setting_found", "ddddddddddddddddddddddiiii", 0 } } },
    { "vtx_advise_valve", advise_valve_call, advise_valve_columns, 5,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_input_uncertainty), "vtx_input_uncertainty", "ddddddddddddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_service_readings), "vtx_service_readings", "----------------zzzz", 0 },
        { CALL_RECORD, sizeof(vtx_valve_goal), "vtx_valve_goal", "dzzzzii", 0 },
        { CALL_OUT, sizeof(vtx_valve_advice), "vtx_valve_advice", "dddddddddddddddddddddddddddaaaiibi", 0 } } },
    { "vtx_body_time_constant", body_time_constant_call, body_time_constant_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-4, 100 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-7, 10 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.01, 1 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_turn_settling_time", turn_settling_time_call, turn_settling_time_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e5 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_compare_plain_air", compare_plain_air_call, compare_plain_air_columns, 3,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_liquid), "vtx_liquid", "ddddzzzz", 0 },
        { CALL_OUT, sizeof(vtx_comparison), "vtx_comparison", "ddddddddddddii", 0 } } },
    { "vtx_site_at_altitude", site_at_altitude_call, site_at_altitude_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -2000, 11000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 200, 350 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1 },
        { CALL_OUT, sizeof(vtx_site), "vtx_site", "ddddddd", 0 } } },
    { "vtx_supply_humidity_ratio", supply_humidity_ratio_call, supply_humidity_ratio_columns, 3,
      { { CALL_RECORD, sizeof(vtx_supply), "vtx_supply", "ddddzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cooler_rated_mass_flow", cooler_rated_mass_flow_call, cooler_rated_mass_flow_columns, 2,
      { { CALL_RECORD, sizeof(vtx_cooler), "vtx_cooler", "ddddddddddddddddddddddddddddddzzzziszzzzii", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_cooler_inlet_area", cooler_inlet_area_call, cooler_inlet_area_columns, 2,
      { { CALL_RECORD, sizeof(vtx_cooler), "vtx_cooler", "ddddddddddddddddddddddddddddddzzzziszzzzii", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_operating_point_at", operating_point_at_call, operating_point_at_columns, 6,
      { { CALL_RECORD, sizeof(vtx_cooler), "vtx_cooler", "ddddddddddddddddddddddddddddddzzzziszzzzii", 0 },
        { CALL_RECORD, sizeof(vtx_supply), "vtx_supply", "ddddzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_site), "vtx_site", "dddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_cooler_setting), "vtx_cooler_setting", "--ddzzzzii", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 150, 500 },
        { CALL_OUT, sizeof(vtx_operating_point), "vtx_operating_point", "ddddddddddddddddddddddddddddddddddddii", 0 } } },
    { "vtx_predict_readings", predict_readings_call, predict_readings_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(vtx_service_readings), "vtx_service_readings", "dddddddddddddddddddd", 0 } } },
    { "vtx_diagnose", diagnose_call, diagnose_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_input_uncertainty), "vtx_input_uncertainty", "ddddddddddddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_service_readings), "vtx_service_readings", "----------------zzzz", 0 },
        { CALL_OUT, sizeof(vtx_diagnosis), "vtx_diagnosis", "ddddddddddddddddddddddddddddddddddddddddddddddddddddddddddddddddddddddddddiiiiiiiiiiiiiiiiiiii", 0 } } },
    { "vtx_job_evaluate", job_evaluate_call, job_evaluate_columns, 3,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_OUT, sizeof(vtx_operating_point), "vtx_operating_point", "ddddddddddddddddddddddddddddddddddddii", 0 },
        { CALL_OUT, sizeof(vtx_work), "vtx_work", "ddddddddddddddddddii", 1 } } },
    { "vtx_size", size_call, size_columns, 3,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_request), "vtx_request", "dddzzzziii_", 0 },
        { CALL_OUT, sizeof(vtx_sizing), "vtx_sizing", "ddddaaibii", 0 } } },
    { "vtx_size_for_both", size_for_both_call, size_for_both_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_request), "vtx_request", "dddzzzziii_", 0 },
        { CALL_RECORD, sizeof(vtx_request), "vtx_request", "dddzzzziii_", 0 },
        { CALL_OUT, sizeof(vtx_sizing), "vtx_sizing", "ddddaaibii", 0 } } },
    { "vtx_size_pair", size_pair_call, size_pair_columns, 5,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_request), "vtx_request", "dddzzzziii_", 0 },
        { CALL_RECORD, sizeof(vtx_request), "vtx_request", "dddzzzziii_", 0 },
        { CALL_OUT, sizeof(vtx_sizing), "vtx_sizing", "ddddaaibii", 0 },
        { CALL_OUT, sizeof(vtx_sizing), "vtx_sizing", "ddddaaibii", 0 } } },
    { "vtx_job_cold_fraction", job_cold_fraction_call, job_cold_fraction_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 50, 500 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(vtx_sizing), "vtx_sizing", "ddddaaibii", 0 } } },
    { "vtx_job_supply_pressure", job_supply_pressure_call, job_supply_pressure_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e6, 1e6 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(vtx_sizing), "vtx_sizing", "ddddaaibii", 0 } } },
    { "vtx_job_uncertainty", job_uncertainty_call, job_uncertainty_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_input_uncertainty), "vtx_input_uncertainty", "ddddddddddddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(vtx_figure_uncertainty), "vtx_figure_uncertainty", "dddddddddddddddddddddddddddddii", 0 } } },
    { "vtx_job_second_order", job_second_order_call, job_second_order_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_input_uncertainty), "vtx_input_uncertainty", "ddddddddddddzzzz", 0 },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_OUT, sizeof(vtx_second_order), "vtx_second_order", "dddddii", 0 } } },
    { "vtx_find_wear", find_wear_call, find_wear_columns, 4,
      { { CALL_RECORD, sizeof(vtx_job), "vtx_job", "ddddzzzzisdddzzzzddddddddddddddddddddddddddddddzzzziszzzzii--ddzzzziidddddddddzzzz--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__--------------------__dzzzzis", 0 },
        { CALL_RECORD, sizeof(vtx_input_uncertainty), "vtx_input_uncertainty", "ddddddddddddzzzz", 0 },
        { CALL_RECORD, sizeof(vtx_service_readings), "vtx_service_readings", "----------------zzzz", 0 },
        { CALL_OUT, sizeof(vtx_wear), "vtx_wear", "ddddddddddiiii", 0 } } },
};

const size_t calls_cooler_count = sizeof calls_cooler / sizeof calls_cooler[0];
