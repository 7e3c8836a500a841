/* First-order propagation through the forward pass of a job. */
#include <vtx/uncertainty.h>

#include "input_step.h"
#include "job_figure.h"
#include "job_pass.h"

/* Two-sided 95 % of a normal distribution. */
static const double coverage_factor = 1.959963984540054;

vtx_status vtx_input_uncertainty_init(vtx_input_uncertainty *u)
{
    if (!u)
        return VTX_BAD_ARGUMENT;
    *u = (vtx_input_uncertainty){ .supply_pressure = 1e4 / sqrt(3), .supply_temperature = 0.5, .supply_humidity = 2, .site_pressure = 300,
                                  .site_temperature = 1, .site_humidity = 0.05, .rated_flow = 0.05, .setting = 0.03, .tube_efficiency = -1,
                                  .coldest_fraction = 0.05, .target_temperature = 1, .line_loss = 0.15 };
    return VTX_OK;
}

static vtx_status figure_with_step(const vtx_job *job, int32_t figure, int32_t input, double by, double *value)
{
    vtx_job moved = *job;
    int32_t advisories;
    step_input(&moved, input, by);
    const vtx_status status = job_check(&moved);
    return status == VTX_OK ? job_figures(&moved, &figure, 1, value, &advisories) : status;
}

static vtx_status propagate(const vtx_job *job, const double steps[INPUTS], int32_t figure, vtx_figure_uncertainty *r)
{
    double variance = 0, curvature[INPUTS] = { 0 };
    vtx_status status = job_figures(job, &figure, 1, &r->value, &r->advisories);
    for (int i = 0; i < INPUTS && status == VTX_OK; i++) {
        const int32_t input = VTX_INPUT_SUPPLY_PRESSURE + i;
        double up, down;
        r->sensitivity[i] = r->share[i] = 0;
        if (steps[i] == 0)
            continue;
        status = figure_with_step(job, figure, input, steps[i], &up);
        if (status == VTX_OK)
            status = figure_with_step(job, figure, input, -steps[i], &down);
        if (status != VTX_OK)
            return status;
        r->sensitivity[i] = (up - down) / (2 * steps[i]);
        r->share[i] = square(0.5 * (up - down));
        variance += r->share[i];
        curvature[i] = fabs(up + down - 2 * r->value) / larger(0.5 * fabs(up - down), 1e-300 + 1e-12 * fabs(r->value));
    }
    if (status != VTX_OK)
        return status;
    r->nonlinearity = 0;
    r->measure_next = VTX_INPUT_SUPPLY_PRESSURE;
    for (int i = 0; i < INPUTS; i++) {
        r->share[i] = variance > 0 ? r->share[i] / variance : 0;
        r->nonlinearity = larger(r->nonlinearity, smaller(curvature[i], 1e3) * sqrt(r->share[i]));
        if (r->share[i] > r->share[r->measure_next - VTX_INPUT_SUPPLY_PRESSURE])
            r->measure_next = VTX_INPUT_SUPPLY_PRESSURE + i;
    }
    r->standard_uncertainty = sqrt(variance);
    r->expanded_low = r->value - coverage_factor * r->standard_uncertainty;
    r->expanded_high = r->value + coverage_factor * r->standard_uncertainty;
    if (r->nonlinearity > 0.2)
        r->advisories |= VTX_ADVISORY_POORLY_DETERMINED;
    return VTX_OK;
}

vtx_status vtx_job_uncertainty(const vtx_job *job, const vtx_input_uncertainty *uncertainty, int32_t figure,
                               vtx_figure_uncertainty *result)
{
    double steps[INPUTS];
    vtx_status status = worse(require(result != NULL && uncertainty != NULL), worse(job_check(job), check_figure(figure)));
    if (status == VTX_OK) {
        gather_input_uncertainties(job, uncertainty, steps);
        status = check_input_uncertainties(uncertainty, steps);
    }
    if (status == VTX_OK)
        status = propagate(job, steps, figure, result);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(result, vtx_figure_uncertainty, measure_next, status);
}
