/* Every numeric call of the base layer in one shape. Written by build-aux/generate. */
#include <vtx/budget.h>
#include <vtx/decision.h>
#include <vtx/trend.h>
#include <vtx/units.h>

#include <math.h>

#include "../harness/calls.h"

static vtx_status type_b_degrees_of_freedom_call(const struct call_values *v)
{
    return vtx_type_b_degrees_of_freedom(v->number[0], v->out[0]);
}

static vtx_status type_b_degrees_of_freedom_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_type_b_degrees_of_freedom_batch(n, column->in[0], column->in_stride[0], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status coverage_factor_call(const struct call_values *v)
{
    return vtx_coverage_factor(v->number[0], v->number[1], v->out[0]);
}

static vtx_status coverage_factor_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_coverage_factor_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status conformance_probability_call(const struct call_values *v)
{
    return vtx_conformance_probability(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3],
        v->out[0]);
}

static vtx_status conformance_probability_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_conformance_probability_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status conformance_probability_between_call(const struct call_values *v)
{
    return vtx_conformance_probability_between(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0]);
}

static vtx_status conformance_probability_between_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_conformance_probability_between_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status guard_band_call(const struct call_values *v)
{
    return vtx_guard_band(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status guard_band_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_guard_band_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status acceptance_limit_call(const struct call_values *v)
{
    return vtx_acceptance_limit(v->selector[0], v->number[0], v->number[1], v->out[0]);
}

static vtx_status acceptance_limit_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_acceptance_limit_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status decide_call(const struct call_values *v)
{
    return vtx_decide(v->selector[0], v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status decide_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_decide_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status decide_between_call(const struct call_values *v)
{
    return vtx_decide_between(v->number[0], v->number[1], v->number[2], v->number[3], v->out[0]);
}

static vtx_status decide_between_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_decide_between_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status deciding_uncertainty_call(const struct call_values *v)
{
    return vtx_deciding_uncertainty(v->number[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status deciding_uncertainty_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_deciding_uncertainty_batch(n, column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->out[0], column->out_stride[0],
        column->status, column->failed);
}

static vtx_status global_risk_call(const struct call_values *v)
{
    return vtx_global_risk(v->selector[0], v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->out[0], v->out[1]);
}

static vtx_status global_risk_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_global_risk_batch(n, v->selector[0], column->in[0], column->in_stride[0], column->in[1],
        column->in_stride[1], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3],
        column->in[4], column->in_stride[4], column->out[0], column->out_stride[0], column->out[1],
        column->out_stride[1], column->status, column->failed);
}

static vtx_status global_risk_between_call(const struct call_values *v)
{
    return vtx_global_risk_between(v->number[0], v->number[1], v->number[2], v->number[3], v->number[4],
        v->number[5], v->number[6], v->out[0], v->out[1]);
}

static vtx_status global_risk_between_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_global_risk_between_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->in[4],
        column->in_stride[4], column->in[5], column->in_stride[5], column->in[6], column->in_stride[6],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status trend_at_call(const struct call_values *v)
{
    return vtx_trend_at(v->record[0], v->number[0], v->out[0], v->out[1]);
}

static vtx_status trend_at_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_trend_at_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->out[1], column->out_stride[1], column->status, column->failed);
}

static vtx_status trend_crosses_call(const struct call_values *v)
{
    return vtx_trend_crosses(v->record[0], v->number[0], v->selector[0], v->number[1], v->number[2], v->out[0]);
}

static vtx_status trend_crosses_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    return vtx_trend_crosses_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        v->selector[0], column->in[2], column->in_stride[2], column->in[3], column->in_stride[3], column->out[0],
        column->out_stride[0], column->status, column->failed);
}

static vtx_status absolute_pressure_call(const struct call_values *v)
{
    return vtx_absolute_pressure(v->number[0], v->number[1], v->out[0]);
}

static vtx_status absolute_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_absolute_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

static vtx_status gauge_pressure_call(const struct call_values *v)
{
    return vtx_gauge_pressure(v->number[0], v->number[1], v->out[0]);
}

static vtx_status gauge_pressure_columns(size_t n, const struct call_values *v, const struct call_columns *column)
{
    (void)v;
    return vtx_gauge_pressure_batch(n, column->in[0], column->in_stride[0], column->in[1], column->in_stride[1],
        column->out[0], column->out_stride[0], column->status, column->failed);
}

const struct call_description calls_base[] = {
    { "vtx_type_b_degrees_of_freedom", type_b_degrees_of_freedom_call, type_b_degrees_of_freedom_columns, 2,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.001, 0.7 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_coverage_factor", coverage_factor_call, coverage_factor_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.1, 0.9999 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e15 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_conformance_probability", conformance_probability_call, conformance_probability_columns, 6,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_conformance_probability_between", conformance_probability_between_call, conformance_probability_between_columns, 6,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_guard_band", guard_band_call, guard_band_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 0.4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_acceptance_limit", acceptance_limit_call, acceptance_limit_columns, 4,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_decide", decide_call, decide_columns, 5,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e12 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 0 } } },
    { "vtx_decide_between", decide_between_call, decide_between_columns, 5,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e12 },
        { CALL_OUT, sizeof(int32_t), "int32_t", "i", 0 } } },
    { "vtx_deciding_uncertainty", deciding_uncertainty_call, deciding_uncertainty_columns, 4,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 0.4 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0, 100000 },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_global_risk", global_risk_call, global_risk_columns, 8,
      { { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e12 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_global_risk_between", global_risk_between_call, global_risk_between_columns, 9,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-6, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 1e-12, 1e12 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_trend_at", trend_at_call, trend_at_columns, 4,
      { { CALL_RECORD, sizeof(vtx_trend), "vtx_trend", "", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_OUT, sizeof(double), "double", "d", 0 },
        { CALL_OUT, sizeof(double), "double", "d", 1 } } },
    { "vtx_trend_crosses", trend_crosses_call, trend_crosses_columns, 6,
      { { CALL_RECORD, sizeof(vtx_trend), "vtx_trend", "", 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_SELECTOR, 0, NULL, NULL, 0 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, -1e12, 1e12 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 0.5, 0.999 },
        { CALL_OUT, sizeof(vtx_trend_crossing), "vtx_trend_crossing", "dddddddii", 0 } } },
    { "vtx_absolute_pressure", absolute_pressure_call, absolute_pressure_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 200000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
    { "vtx_gauge_pressure", gauge_pressure_call, gauge_pressure_columns, 3,
      { { CALL_NUMBER, sizeof(double), NULL, NULL, 0, 10000, 200000 },
        { CALL_NUMBER, sizeof(double), NULL, NULL, 0, (double)NAN, (double)NAN },
        { CALL_OUT, sizeof(double), "double", "d", 0 } } },
};

const size_t calls_base_count = sizeof calls_base / sizeof calls_base[0];
