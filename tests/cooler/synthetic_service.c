/* Coolers in service with one thing wrong. */
#include "synthetic_service.h"

const int service_set[SERVICE_SETS][SERVICE_READINGS] = {
    { 0, 1, 0, 1, 1, 0, 0, 0 },
    { 0, 1, 1, 1, 1, 1, 0, 0 },
    { 1, 1, 1, 1, 1, 1, 1, 1 },
};

const char *const service_set_name[SERVICE_SETS] = {
    "inlet pressure, cold and hot temperature",
    "inlet pressure, inlet, cold and hot temperature, inlet flow",
    "all eight",
};

vtx_job service_job(int32_t model)
{
    vtx_job job = sample_job(model);
    vtx_chain_filter(1e4, 0.012, 8e5, 293.15, 0.5, &job.line[0]);
    vtx_chain_hose(0.0095, 5, &job.line[1]);
    job.elements = 2;
    job.supply.pressure = 7.5e5;
    job.supply.humidity_kind = VTX_SUPPLY_FROST_POINT;
    job.supply.humidity = 253.15;
    job.setting.cold_fraction = 0.5;
    return job;
}

double service_size(int32_t cause, double severity)
{
    return cause == VTX_CAUSE_WARM_SUPPLY ? 40 * severity : cause == VTX_CAUSE_LOADED_FILTER ? 20 * severity : severity;
}

double draw_service_size(struct random_state *r, int32_t cause)
{
    const double size = service_size(cause, random_uniform(r, 0.05, 0.4));
    const int two_signs = cause == VTX_CAUSE_WRONG_VALVE || cause == VTX_CAUSE_WRONG_GAUGE;
    return cause == VTX_CAUSE_NOTHING ? 0 : two_signs && random_uniform(r, -1, 1) < 0 ? -size : size;
}

void take_readings(struct random_state *r, const vtx_service_readings *clean, const int set[SERVICE_READINGS], vtx_service_readings *taken)
{
    *taken = *clean;
    for (int i = 0; i < SERVICE_READINGS; i++) {
        const int32_t number = VTX_READ_SUPPLY_PRESSURE + i;
        const int temperature = number >= VTX_READ_INLET_TEMPERATURE && number <= VTX_READ_HOT_TEMPERATURE;
        taken->uncertainty[i] = temperature ? 0.5 : 0.01 * clean->value[i];
        if (r)
            taken->value[i] += taken->uncertainty[i] * random_normal(r);
        if (!set[i])
            taken->value[i] = (double)NAN;
    }
}
