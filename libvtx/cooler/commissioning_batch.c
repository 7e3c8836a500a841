/* Batch forms of commissioning.h. Written by build-aux/generate. */
#include <vtx/commissioning.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status plan_readings_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_input_uncertainty uncertainty_room;
    const vtx_input_uncertainty *const uncertainty = batch_record(b, 1, i, &uncertainty_room,
        sizeof uncertainty_room, _Alignof(vtx_input_uncertainty));
    vtx_service_readings readings_room;
    const vtx_service_readings *const readings = batch_record(b, 2, i, &readings_room, sizeof readings_room,
        _Alignof(vtx_service_readings));
    vtx_valve_goal goal_room;
    const vtx_valve_goal *const goal = batch_record(b, 3, i, &goal_room, sizeof goal_room, _Alignof(vtx_valve_goal));
    vtx_reading_plan plan_room;
    vtx_reading_plan *const plan = batch_place(b, 0, i, &plan_room, sizeof plan_room, _Alignof(vtx_reading_plan));
    const vtx_status answer = vtx_plan_readings(job, uncertainty, readings, goal, plan);
    batch_move(b, 0, i, plan, &plan_room, sizeof plan_room);
    return answer;
}

vtx_status vtx_plan_readings_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, const vtx_valve_goal *goal, ptrdiff_t goal_stride, vtx_reading_plan *plan,
        ptrdiff_t plan_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { uncertainty, uncertainty_stride, 1 },
        { readings, readings_stride, 1 }, { goal, goal_stride, 1 } };
    const struct batch_output out[] = { { plan, plan_stride, 0, sizeof *plan } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, plan_readings_item, status, failed);
}

static ALWAYS_INLINE vtx_status find_setting_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_input_uncertainty uncertainty_room;
    const vtx_input_uncertainty *const uncertainty = batch_record(b, 1, i, &uncertainty_room,
        sizeof uncertainty_room, _Alignof(vtx_input_uncertainty));
    vtx_service_readings readings_room;
    const vtx_service_readings *const readings = batch_record(b, 2, i, &readings_room, sizeof readings_room,
        _Alignof(vtx_service_readings));
    vtx_setting_found found_room;
    vtx_setting_found *const found = batch_place(b, 0, i, &found_room, sizeof found_room, _Alignof(vtx_setting_found));
    const vtx_status answer = vtx_find_setting(job, uncertainty, readings, found);
    batch_move(b, 0, i, found, &found_room, sizeof found_room);
    return answer;
}

vtx_status vtx_find_setting_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, vtx_setting_found *found, ptrdiff_t found_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { uncertainty, uncertainty_stride, 1 },
        { readings, readings_stride, 1 } };
    const struct batch_output out[] = { { found, found_stride, 0, sizeof *found } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, find_setting_item, status, failed);
}

static ALWAYS_INLINE vtx_status advise_valve_item(const struct batch *b, size_t i)
{
    vtx_job job_room;
    const vtx_job *const job = batch_record(b, 0, i, &job_room, sizeof job_room, _Alignof(vtx_job));
    vtx_input_uncertainty uncertainty_room;
    const vtx_input_uncertainty *const uncertainty = batch_record(b, 1, i, &uncertainty_room,
        sizeof uncertainty_room, _Alignof(vtx_input_uncertainty));
    vtx_service_readings readings_room;
    const vtx_service_readings *const readings = batch_record(b, 2, i, &readings_room, sizeof readings_room,
        _Alignof(vtx_service_readings));
    vtx_valve_goal goal_room;
    const vtx_valve_goal *const goal = batch_record(b, 3, i, &goal_room, sizeof goal_room, _Alignof(vtx_valve_goal));
    vtx_valve_advice advice_room;
    vtx_valve_advice *const advice = batch_place(b, 0, i, &advice_room, sizeof advice_room,
        _Alignof(vtx_valve_advice));
    const vtx_status answer = vtx_advise_valve(job, uncertainty, readings, goal, advice);
    batch_move(b, 0, i, advice, &advice_room, sizeof advice_room);
    return answer;
}

vtx_status vtx_advise_valve_batch(size_t n, const vtx_job *job, ptrdiff_t job_stride,
        const vtx_input_uncertainty *uncertainty, ptrdiff_t uncertainty_stride, const vtx_service_readings *readings,
        ptrdiff_t readings_stride, const vtx_valve_goal *goal, ptrdiff_t goal_stride, vtx_valve_advice *advice,
        ptrdiff_t advice_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { job, job_stride, 1 }, { uncertainty, uncertainty_stride, 1 },
        { readings, readings_stride, 1 }, { goal, goal_stride, 1 } };
    const struct batch_output out[] = { { advice, advice_stride, 0, sizeof *advice } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, advise_valve_item, status, failed);
}

static ALWAYS_INLINE vtx_status body_time_constant_item(const struct batch *b, size_t i)
{
    double time_constant_room;
    double *const time_constant = batch_place(b, 0, i, &time_constant_room, sizeof time_constant_room,
        _Alignof(double));
    const vtx_status answer = vtx_body_time_constant(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), time_constant);
    batch_move(b, 0, i, time_constant, &time_constant_room, sizeof time_constant_room);
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
    const struct batch_output out[] = { { time_constant, time_constant_stride, 0, sizeof *time_constant } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, body_time_constant_item, status, failed);
}

static ALWAYS_INLINE vtx_status turn_settling_time_item(const struct batch *b, size_t i)
{
    double settling_time_room;
    double *const settling_time = batch_place(b, 0, i, &settling_time_room, sizeof settling_time_room,
        _Alignof(double));
    const vtx_status answer = vtx_turn_settling_time(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), settling_time);
    batch_move(b, 0, i, settling_time, &settling_time_room, sizeof settling_time_room);
    return answer;
}

vtx_status vtx_turn_settling_time_batch(size_t n, const double *probe_time_constant,
        ptrdiff_t probe_time_constant_stride, const double *body_time_constant, ptrdiff_t body_time_constant_stride,
        const double *step, ptrdiff_t step_stride, const double *band, ptrdiff_t band_stride, double *settling_time,
        ptrdiff_t settling_time_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { probe_time_constant, probe_time_constant_stride },
        { body_time_constant, body_time_constant_stride }, { step, step_stride }, { band, band_stride } };
    const struct batch_output out[] = { { settling_time, settling_time_stride, 0, sizeof *settling_time } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, turn_settling_time_item, status, failed);
}
