/* Batch forms of commissioning.h. Written by build-aux/generate. */
#include <vtx/commissioning.h>

#include "../base/batch.h"

static vtx_status plan_readings_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_input_uncertainty uncertainty;
    batch_get_bytes(b, 1, i, &uncertainty, sizeof uncertainty);
    vtx_service_readings readings;
    batch_get_bytes(b, 2, i, &readings, sizeof readings);
    vtx_valve_goal goal;
    batch_get_bytes(b, 3, i, &goal, sizeof goal);
    vtx_reading_plan plan;
    const vtx_status answer = vtx_plan_readings(&job, &uncertainty, &readings, &goal, &plan);
    batch_put(b, 0, i, &plan, sizeof plan);
    return answer;
}

vtx_status vtx_plan_readings_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, const vtx_valve_goal *goal, ptrdiff_t goal_stride, vtx_reading_plan *plan,
        ptrdiff_t plan_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { uncertainty, uncertainty_stride },
        { readings, readings_stride }, { goal, goal_stride } };
    const struct batch_output out[] = { { plan, plan_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, plan_readings_item, status, failed);
}

static vtx_status find_setting_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_input_uncertainty uncertainty;
    batch_get_bytes(b, 1, i, &uncertainty, sizeof uncertainty);
    vtx_service_readings readings;
    batch_get_bytes(b, 2, i, &readings, sizeof readings);
    vtx_setting_found found;
    const vtx_status answer = vtx_find_setting(&job, &uncertainty, &readings, &found);
    batch_put(b, 0, i, &found, sizeof found);
    return answer;
}

vtx_status vtx_find_setting_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, vtx_setting_found *found, ptrdiff_t found_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { uncertainty, uncertainty_stride },
        { readings, readings_stride } };
    const struct batch_output out[] = { { found, found_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, find_setting_item, status, failed);
}

static vtx_status advise_valve_item(const struct batch *b, size_t i)
{
    vtx_job job;
    batch_get_bytes(b, 0, i, &job, sizeof job);
    vtx_input_uncertainty uncertainty;
    batch_get_bytes(b, 1, i, &uncertainty, sizeof uncertainty);
    vtx_service_readings readings;
    batch_get_bytes(b, 2, i, &readings, sizeof readings);
    vtx_valve_goal goal;
    batch_get_bytes(b, 3, i, &goal, sizeof goal);
    vtx_valve_advice advice;
    const vtx_status answer = vtx_advise_valve(&job, &uncertainty, &readings, &goal, &advice);
    batch_put(b, 0, i, &advice, sizeof advice);
    return answer;
}

vtx_status vtx_advise_valve_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, const vtx_valve_goal *goal, ptrdiff_t goal_stride, vtx_valve_advice *advice,
        ptrdiff_t advice_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride }, { uncertainty, uncertainty_stride },
        { readings, readings_stride }, { goal, goal_stride } };
    const struct batch_output out[] = { { advice, advice_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, advise_valve_item, status, failed);
}

static vtx_status body_time_constant_item(const struct batch *b, size_t i)
{
    double time_constant;
    const vtx_status answer = vtx_body_time_constant(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), &time_constant);
    batch_put(b, 0, i, &time_constant, sizeof time_constant);
    return answer;
}

vtx_status vtx_body_time_constant_batch(size_t n, const double *metal_mass, ptrdiff_t metal_mass_stride,
        const double *specific_heat, ptrdiff_t specific_heat_stride, const double *mass_flow,
        ptrdiff_t mass_flow_stride, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *exchange_share, ptrdiff_t exchange_share_stride, double *time_constant,
        ptrdiff_t time_constant_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { metal_mass, metal_mass_stride }, { specific_heat, specific_heat_stride },
        { mass_flow, mass_flow_stride }, { heat_capacity, heat_capacity_stride },
        { exchange_share, exchange_share_stride } };
    const struct batch_output out[] = { { time_constant, time_constant_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, body_time_constant_item, status, failed);
}

static vtx_status turn_settling_time_item(const struct batch *b, size_t i)
{
    double settling_time;
    const vtx_status answer = vtx_turn_settling_time(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), &settling_time);
    batch_put(b, 0, i, &settling_time, sizeof settling_time);
    return answer;
}

vtx_status vtx_turn_settling_time_batch(size_t n, const double *probe_time_constant,
        ptrdiff_t probe_time_constant_stride, const double *body_time_constant, ptrdiff_t body_time_constant_stride,
        const double *step, ptrdiff_t step_stride, const double *band, ptrdiff_t band_stride, double *settling_time,
        ptrdiff_t settling_time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { probe_time_constant, probe_time_constant_stride },
        { body_time_constant, body_time_constant_stride }, { step, step_stride }, { band, band_stride } };
    const struct batch_output out[] = { { settling_time, settling_time_stride, 0 } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, turn_settling_time_item, status, failed);
}
