/* A job's inputs and their uncertainties, by number. */
#include "input_step.h"

#include "../base/distribution.h"

vtx_status gather_input_uncertainties(const vtx_job *job, const vtx_input_uncertainty *u, double steps[INPUTS])
{
    /* Steps larger than these are no uncertainties. */
    static const double most[INPUTS] = { 5e5, 30, 30, 1e4, 30, 0.5, 0.5, 0.3, 0.5, 0.2, 100, 0.9 };
    const double all[INPUTS] = { u->supply_pressure, u->supply_temperature, u->supply_humidity, u->site_pressure, u->site_temperature,
                                 u->site_humidity, u->rated_flow, u->setting, u->tube_efficiency, u->coldest_fraction,
                                 u->target_temperature, u->line_loss };
    memcpy(steps, all, sizeof all);
    if (u->tube_efficiency < 0)
        steps[VTX_INPUT_TUBE_EFFICIENCY - VTX_INPUT_SUPPLY_PRESSURE] =
            (job->cooler.tube.efficiency_high - job->cooler.tube.efficiency_low) / (2 * normal_two_sided_80);
    vtx_status status = require(is_finite(u->tube_efficiency) && are_zero(u->reserved, ARRAY_LENGTH(u->reserved)));
    for (int i = 0; i < INPUTS; i++)
        status = worse(status, check_amount(steps[i], most[i]));
    return status;
}

void step_input(vtx_job *job, int32_t input, double by)
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
        if (job->setting.held == VTX_HELD_COLD_FRACTION)
            job->setting.cold_fraction = within(job->setting.cold_fraction + by, 0, 1);
        else
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
