/* First-order propagation through the forward pass of a job. */
#include <vtx/uncertainty.h>

#include "job_figure.h"
#include "job_pass.h"

enum { INPUTS = 12 };

/* Distance between the 10 and 90 % points of a normal distribution, in standard deviations. */
static const double band_deviations = 2.5631031310892007;
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

static void gather(const vtx_job *job, const vtx_input_uncertainty *u, double steps[INPUTS])
{
    const double all[INPUTS] = { u->supply_pressure, u->supply_temperature, u->supply_humidity, u->site_pressure, u->site_temperature,
                                 u->site_humidity, u->rated_flow, u->setting, u->tube_efficiency, u->coldest_fraction,
                                 u->target_temperature, u->line_loss };
    memcpy(steps, all, sizeof all);
    if (u->tube_efficiency < 0)
        steps[VTX_INPUT_TUBE_EFFICIENCY - VTX_INPUT_SUPPLY_PRESSURE] =
            (job->cooler.tube.efficiency_high - job->cooler.tube.efficiency_low) / band_deviations;
}

/* Steps that run into an end of the input's own range stop there. */
static void step_input(vtx_job *job, int32_t input, double by)
{
    vtx_tube *tube = &job->cooler.tube;
    switch (input) {
    case VTX_INPUT_SUPPLY_PRESSURE: job->supply.pressure += by; break;
    case VTX_INPUT_SUPPLY_TEMPERATURE: job->supply.temperature += by; break;
    case VTX_INPUT_SUPPLY_HUMIDITY: job->supply.humidity = larger(job->supply.humidity + by, 0); break;
    case VTX_INPUT_SITE_PRESSURE: job->site.pressure += by; break;
    case VTX_INPUT_SITE_TEMPERATURE: job->site.temperature += by; break;
    case VTX_INPUT_SITE_HUMIDITY: job->site.relative_humidity = within(job->site.relative_humidity + by, 0, 1); break;
    case VTX_INPUT_RATED_FLOW: job->cooler.rated_free_air_flow *= 1 + by; break;
    case VTX_INPUT_SETTING:
        job->cooler.kind = VTX_COOLER_ADJUSTABLE; /* a works setting is uncertain too */
        job->cooler.cold_fraction_min = 0;
        job->cooler.cold_fraction_max = 1;
        job->setting.cold_fraction = within(job->setting.cold_fraction + by, 0, 1);
        job->setting.valve_opening *= 1 + by;
        break;
    case VTX_INPUT_TUBE_EFFICIENCY:
        tube->peak_efficiency = within(tube->peak_efficiency + by, 0.01, 1);
        tube->efficiency_low = smaller(tube->efficiency_low, tube->peak_efficiency);
        tube->efficiency_high = larger(tube->efficiency_high, tube->peak_efficiency);
        break;
    case VTX_INPUT_COLDEST_FRACTION: tube->coldest_fraction = within(tube->coldest_fraction + by, 0.01, 0.49); break;
    case VTX_INPUT_TARGET_TEMPERATURE: job->duty.target_temperature += by; break;
    default:
        for (int32_t i = 0; i < job->elements; i++) {
            job->line[i].length *= 1 + by;
            job->line[i].minor_loss *= 1 + by;
            job->line[i].laminar_loss *= 1 + by;
            job->line[i].turbulent_loss *= 1 + by;
        }
        break;
    }
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

static vtx_status check_uncertainty(const vtx_input_uncertainty *u, const double steps[INPUTS])
{
    /* Steps larger than these are no uncertainties. */
    static const double most[INPUTS] = { 5e5, 30, 30, 1e4, 30, 0.5, 0.5, 0.3, 0.5, 0.2, 100, 0.9 };
    vtx_status status = worse(require(is_finite(u->tube_efficiency)), VTX_OK);
    for (int i = 0; i < INPUTS; i++)
        status = worse(status, check_amount(steps[i], most[i]));
    return status;
}

vtx_status vtx_job_uncertainty(const vtx_job *job, const vtx_input_uncertainty *uncertainty, int32_t figure,
                               vtx_figure_uncertainty *result)
{
    double steps[INPUTS];
    vtx_status status = worse(require(result != NULL && uncertainty != NULL), worse(job_check(job), check_figure(figure)));
    if (status == VTX_OK) {
        gather(job, uncertainty, steps);
        status = check_uncertainty(uncertainty, steps);
    }
    if (status == VTX_OK)
        status = propagate(job, steps, figure, result);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(result, vtx_figure_uncertainty, measure_next, status);
}
