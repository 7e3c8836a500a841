/* Propagation through the forward pass of a job. */
#include <vtx/uncertainty.h>

#include "../base/distribution.h"
#include "../base/propagation.h"
#include "input_step.h"
#include "job_figure.h"
#include "job_pass.h"

/* Disagreement of the one-sided differences, or of the two orders, from which first order is not enough. */
static const double first_order_limit = 0.2;

/* What nonlinearity reads where first order sees nothing. */
static const double most_nonlinear = 1e3;

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
    return status == VTX_OK ? job_figure(&moved, figure, value, &advisories) : status;
}

/* Where no valve opening gives the cold fraction on one side, the other side stands for both. */
static vtx_status figures_beside(const vtx_job *job, int32_t figure, int32_t input, double step, vtx_figure_uncertainty *r, double *down, double *up)
{
    const vtx_status above = figure_with_step(job, figure, input, step, up);
    const vtx_status below = figure_with_step(job, figure, input, -step, down);
    if (above == VTX_NO_SOLUTION && below == VTX_OK)
        *up = 2 * r->value - *down;
    else if (below == VTX_NO_SOLUTION && above == VTX_OK)
        *down = 2 * r->value - *up;
    else
        return above != VTX_OK ? above : below;
    r->advisories |= VTX_ADVISORY_POORLY_DETERMINED;
    return VTX_OK;
}

static vtx_status propagate(const vtx_job *job, const double steps[INPUTS], int32_t figure, vtx_figure_uncertainty *r)
{
    double variance = 0, bend = 0;
    vtx_status status = job_figure(job, figure, &r->value, &r->advisories);
    for (int i = 0; i < INPUTS && status == VTX_OK; i++) {
        const int32_t input = VTX_INPUT_SUPPLY_PRESSURE + i;
        double up, down;
        r->sensitivity[i] = r->share[i] = 0;
        if (steps[i] == 0)
            continue;
        status = figures_beside(job, figure, input, steps[i], r, &down, &up);
        if (status != VTX_OK)
            return status;
        r->sensitivity[i] = (up - down) / (2 * steps[i]);
        r->share[i] = square(0.5 * (up - down));
        variance += r->share[i];
        bend = larger(bend, fabs(up + down - 2 * r->value));
    }
    if (status != VTX_OK)
        return status;
    const double uncertainty = sqrt(variance);
    r->standard_uncertainty = uncertainty;
    r->nonlinearity = bend <= 1e-12 * fabs(r->value) ? 0 : bend < most_nonlinear * uncertainty ? bend / uncertainty : most_nonlinear;
    r->measure_next = VTX_INPUT_SUPPLY_PRESSURE;
    for (int i = 0; i < INPUTS; i++) {
        r->share[i] = variance > 0 ? r->share[i] / variance : 0;
        if (r->share[i] > r->share[r->measure_next - VTX_INPUT_SUPPLY_PRESSURE])
            r->measure_next = VTX_INPUT_SUPPLY_PRESSURE + i;
    }
    r->expanded_low = r->value - normal_two_sided_95 * uncertainty;
    r->expanded_high = r->value + normal_two_sided_95 * uncertainty;
    if (r->nonlinearity > first_order_limit)
        r->advisories |= VTX_ADVISORY_POORLY_DETERMINED;
    return VTX_OK;
}

vtx_status vtx_job_uncertainty(const vtx_job *job, const vtx_input_uncertainty *uncertainty, int32_t figure,
                               vtx_figure_uncertainty *result)
{
    double steps[INPUTS];
    vtx_status status = worse(require(result != NULL && uncertainty != NULL), worse(job_check(job), check_figure(figure)));
    if (status == VTX_OK)
        status = worse(check_stated(job, figure), gather_input_uncertainties(job, uncertainty, steps));
    if (status == VTX_OK)
        status = propagate(job, steps, figure, result);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(result, vtx_figure_uncertainty, measure_next, status);
}

struct moved_job {
    const vtx_job *job;
    int32_t figure;
};

static vtx_status moved_figure(const double *x, double *y, void *context)
{
    const struct moved_job *m = context;
    vtx_job moved = *m->job;
    int32_t advisories;
    for (int i = 0; i < INPUTS; i++)
        if (x[i] != 0)
            step_input(&moved, VTX_INPUT_SUPPLY_PRESSURE + i, x[i]);
    const vtx_status status = job_check(&moved);
    return status == VTX_OK ? job_figure(&moved, m->figure, y, &advisories) : status;
}

static vtx_status propagate_to_second_order(const vtx_job *job, const double steps[INPUTS], int32_t figure, vtx_second_order *r)
{
    static const double no_step[INPUTS];
    struct moved_job moved = { job, figure };
    struct second_order s;
    vtx_status status = job_figure(job, figure, &r->value, &r->advisories);
    if (status == VTX_OK)
        status = second_order_variance(moved_figure, &moved, INPUTS, no_step, steps, &s);
    if (status != VTX_OK)
        return status;
    r->mean_shift = s.mean_shift;
    r->first_uncertainty = sqrt(s.first);
    r->standard_uncertainty = s.first + s.extra >= 0 ? sqrt(s.first + s.extra) : quiet_nan();
    r->difference = s.first > 0 ? r->standard_uncertainty / r->first_uncertainty - 1 : s.extra > 0 ? quiet_nan() : 0;
    r->enough = is_finite(r->difference) && fabs(r->difference) <= first_order_limit;
    r->advisories |= r->enough ? 0 : VTX_ADVISORY_POORLY_DETERMINED;
    r->advisories |= is_finite(r->difference) ? 0 : VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}

vtx_status vtx_job_second_order(const vtx_job *job, const vtx_input_uncertainty *uncertainty, int32_t figure, vtx_second_order *result)
{
    double steps[INPUTS];
    vtx_status status = worse(require(result != NULL && uncertainty != NULL), worse(job_check(job), check_figure(figure)));
    if (status == VTX_OK)
        status = worse(check_stated(job, figure), gather_input_uncertainties(job, uncertainty, steps));
    if (status == VTX_OK)
        status = propagate_to_second_order(job, steps, figure, result);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(result, vtx_second_order, enough, status);
}
