/* One thing wrong with a job, through the forward pass to the gauges. */
#include "fault.h"

#include <vtx/process.h>

#include "job_pass.h"

struct fault_range fault_sizes(int32_t cause)
{
    switch (cause) {
    case VTX_CAUSE_NOTHING: return (struct fault_range){ 0, 0 };
    case VTX_CAUSE_LOW_SUPPLY: return (struct fault_range){ 0, 0.8 };
    case VTX_CAUSE_WORN_NOZZLE: return (struct fault_range){ 0, 0.95 };
    case VTX_CAUSE_BLOCKED_NOZZLE: return (struct fault_range){ 0, 0.9 };
    case VTX_CAUSE_ICED_COLD_OUTLET: return (struct fault_range){ 0, 0.95 };
    case VTX_CAUSE_COLD_BACK_PRESSURE: return (struct fault_range){ 0, 0.8 };
    case VTX_CAUSE_BLOCKED_HOT_OUTLET: return (struct fault_range){ 0, 0.98 };
    case VTX_CAUSE_WRONG_VALVE: return (struct fault_range){ -0.98, 3 };
    case VTX_CAUSE_WARM_SUPPLY: return (struct fault_range){ 0, 60 };
    case VTX_CAUSE_LEAKING_SEAL: return (struct fault_range){ 0, 0.6 };
    case VTX_CAUSE_HEAT_LEAK: return (struct fault_range){ 0, 3 };
    case VTX_CAUSE_LOADED_FILTER: return (struct fault_range){ 0, 30 };
    default: return (struct fault_range){ -0.6, 0.6 };
    }
}

int fault_possible(const vtx_job *job, int32_t cause)
{
    if (cause != VTX_CAUSE_LOADED_FILTER)
        return 1;
    for (int32_t i = 0; i < job->elements; i++)
        if (job->line[i].kind == VTX_CHAIN_FILTER)
            return 1;
    return 0;
}

vtx_status fault_open(const vtx_job *job, vtx_job *healthy)
{
    vtx_operating_point p;
    vtx_status status = VTX_OK;
    *healthy = *job;
    /* A works setting may have been turned, and a cold fraction may leave the valve's range when something fails. */
    healthy->cooler.kind = VTX_COOLER_ADJUSTABLE;
    if (job->setting.held != VTX_HELD_COLD_FRACTION)
        return VTX_OK;
    status = job_pass(job, &p, NULL);
    if (status != VTX_OK)
        return status;
    if (!is_finite(p.valve_opening))
        return VTX_OUT_OF_RANGE;
    healthy->setting.held = VTX_HELD_VALVE_OPENING;
    healthy->setting.valve_opening = p.valve_opening;
    return VTX_OK;
}

static void load_filters(vtx_job *job, double size)
{
    for (int32_t i = 0; i < job->elements; i++)
        if (job->line[i].kind == VTX_CHAIN_FILTER) {
            job->line[i].laminar_loss *= 1 + size;
            job->line[i].turbulent_loss *= 1 + size;
        }
}

static void worsen(vtx_job *job, int32_t cause, double size)
{
    const double gauge = job->supply.pressure - job->site.pressure;
    vtx_tube *tube = &job->cooler.tube;
    switch (cause) {
    case VTX_CAUSE_LOW_SUPPLY:
        /* The dew point was read where and when it was read: the water stays. */
        job->supply.humidity_pressure = job->supply.humidity_pressure > 0 ? job->supply.humidity_pressure : job->supply.pressure;
        job->supply.pressure -= size * gauge;
        break;
    case VTX_CAUSE_WORN_NOZZLE:
        job->cooler.inlet_area_factor *= 1 + size;
        tube->peak_efficiency *= 1 - size;
        tube->efficiency_low = smaller(tube->efficiency_low, tube->peak_efficiency);
        break;
    case VTX_CAUSE_BLOCKED_NOZZLE: job->cooler.inlet_area_factor *= 1 - size; break;
    case VTX_CAUSE_ICED_COLD_OUTLET: job->cooler.cold_area_factor *= 1 - size; break;
    case VTX_CAUSE_COLD_BACK_PRESSURE: job->setting.cold_back_pressure += size * gauge; break;
    case VTX_CAUSE_BLOCKED_HOT_OUTLET: job->setting.valve_opening *= 1 - size; break;
    case VTX_CAUSE_WRONG_VALVE: job->setting.valve_opening *= 1 + size; break;
    case VTX_CAUSE_WARM_SUPPLY: job->supply.temperature += size; break;
    case VTX_CAUSE_LEAKING_SEAL: job->running /= 1 - size; break; /* the line feeds the leak too */
    case VTX_CAUSE_HEAT_LEAK: tube->cold_leak += size; break;
    case VTX_CAUSE_LOADED_FILTER: load_filters(job, size); break;
    default: break;
    }
}

/* Feed that slips past the tube is throttled only; it warms the cold stream and adds to it. */
static vtx_status mix_leak(const vtx_job *job, const vtx_operating_point *p, double share, double predicted[READINGS])
{
    const double cold = p->cold_fraction * (1 - share);
    double throttled;
    const vtx_status status = vtx_expansion_throttle(job->setting.model, p->inlet_pressure, p->inlet_temperature, p->humidity_ratio,
                                                     p->cold_pressure, &throttled);
    if (status != VTX_OK)
        return status;
    predicted[VTX_READ_INLET_FLOW - VTX_READ_SUPPLY_PRESSURE] = p->mass_flow / (1 - share);
    predicted[VTX_READ_COLD_FLOW - VTX_READ_SUPPLY_PRESSURE] = p->mass_flow / (1 - share) * (cold + share);
    predicted[VTX_READ_COLD_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE] = (cold * p->cold_temperature + share * throttled) / (cold + share);
    return VTX_OK;
}

vtx_status fault_readings(const vtx_job *healthy, int32_t cause, double size, double predicted[READINGS])
{
    vtx_job job = *healthy;
    vtx_operating_point p;
    worsen(&job, cause, size);
    const vtx_status status = gauges_read(&job, &p, predicted);
    if (status != VTX_OK)
        return status;
    if (cause == VTX_CAUSE_WRONG_GAUGE)
        predicted[VTX_READ_INLET_PRESSURE - VTX_READ_SUPPLY_PRESSURE] *= 1 + size;
    return cause == VTX_CAUSE_LEAKING_SEAL ? mix_leak(&job, &p, size, predicted) : VTX_OK;
}
