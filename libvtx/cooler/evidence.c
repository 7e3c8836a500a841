/* Readings checked and made comparable with a forward pass. */
#include "evidence.h"

#include "fault.h"
#include "input_step.h"
#include "job_pass.h"

vtx_status gather_evidence(const vtx_service_readings *r, struct evidence *e)
{
    if (!are_zero(r->reserved, ARRAY_LENGTH(r->reserved)))
        return VTX_BAD_ARGUMENT;
    e->count = 0;
    memset(e->covariance, 0, sizeof e->covariance);
    for (int i = 0; i < READINGS; i++) {
        e->given[i] = r->value[i] == r->value[i];
        e->barred[i] = !e->given[i] && r->uncertainty[i] != r->uncertainty[i];
        if (!e->given[i])
            continue;
        if (!is_finite(r->value[i]) || r->value[i] <= 0 || !is_finite(r->uncertainty[i]) || r->uncertainty[i] <= 0)
            return VTX_BAD_ARGUMENT;
        if (r->value[i] > 1e9 || r->value[i] < 1e-9 || r->uncertainty[i] > 1e9 || r->uncertainty[i] < 1e-9 * r->value[i])
            return VTX_OUT_OF_RANGE;
        e->value[i] = r->value[i];
        e->uncertainty[i] = r->uncertainty[i];
        e->covariance[i][i] = square(r->uncertainty[i]);
        e->count++;
    }
    evidence_weigh(e);
    return VTX_OK;
}

void evidence_weigh(struct evidence *e)
{
    for (int i = 0; i < READINGS; i++)
        for (int k = 0; k <= i && e->given[i]; k++) {
            double left = e->covariance[i][k];
            if (!e->given[k])
                continue;
            for (int j = 0; j < k; j++)
                left -= e->given[j] ? e->root[i][j] * e->root[k][j] : 0;
            /* No pivot is below the instrument's own variance, but rounding may make it so. */
            e->root[i][k] = k < i ? left / e->root[k][k] : sqrt(larger(left, square(e->uncertainty[i])));
        }
}

double evidence_length(const struct evidence *e, const double difference[READINGS])
{
    double whitened[READINGS], sum = 0;
    for (int i = 0; i < READINGS; i++) {
        if (!e->given[i])
            continue;
        double left = difference[i];
        for (int k = 0; k < i; k++)
            left -= e->given[k] ? e->root[i][k] * whitened[k] : 0;
        whitened[i] = left / e->root[i][i];
        sum += square(whitened[i]);
    }
    return sum;
}

static vtx_status shown_after_step(const vtx_job *job, int input, double by, double readings[READINGS])
{
    vtx_job stepped = *job, healthy;
    step_input(&stepped, VTX_INPUT_SUPPLY_PRESSURE + input, by);
    const vtx_status status = worse(job_check(&stepped), fault_open(&stepped, &healthy));
    return status == VTX_OK ? fault_readings(&healthy, VTX_CAUSE_NOTHING, 0, readings) : status;
}

vtx_status evidence_doubt_inputs(const vtx_job *job, const vtx_input_uncertainty *u, struct evidence *e)
{
    double steps[INPUTS], middle[READINGS];
    vtx_status status = worse(gather_input_uncertainties(job, u, steps), shown_after_step(job, 0, 0, middle));
    for (int n = 0; n < INPUTS && status == VTX_OK; n++) {
        double below[READINGS], above[READINGS];
        if (steps[n] == 0 || n == VTX_INPUT_TARGET_TEMPERATURE - VTX_INPUT_SUPPLY_PRESSURE)
            continue;
        /* A step that leaves the ranges is left out on that side. */
        const int low = shown_after_step(job, n, -steps[n], below) == VTX_OK, high = shown_after_step(job, n, steps[n], above) == VTX_OK;
        if (!low && !high)
            return VTX_OUT_OF_RANGE;
        double move[READINGS];
        for (int i = 0; i < READINGS; i++)
            move[i] = low && high ? 0.5 * (above[i] - below[i]) : low ? middle[i] - below[i] : above[i] - middle[i];
        for (int i = 0; i < READINGS; i++)
            for (int k = 0; k < READINGS; k++)
                e->covariance[i][k] += move[i] * move[k];
    }
    if (status == VTX_OK)
        evidence_weigh(e);
    return status;
}

vtx_status gauges_read(const vtx_job *job, vtx_operating_point *p, double readings[READINGS])
{
    vtx_status status = job_check(job);
    if (status == VTX_OK)
        status = job_pass(job, p, NULL);
    if (status != VTX_OK)
        return status;
    const double all[READINGS] = { job->supply.pressure, p->inlet_pressure, p->inlet_temperature, p->cold_temperature,
                                   p->hot_temperature, p->mass_flow, p->cold_mass_flow, p->cold_pressure };
    memcpy(readings, all, sizeof all);
    return VTX_OK;
}
