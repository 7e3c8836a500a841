/* Readings checked and made comparable with a forward pass. */
#include "evidence.h"

vtx_status gather_evidence(const vtx_service_readings *r, struct evidence *e)
{
    e->count = 0;
    for (int i = 0; i < READINGS; i++) {
        e->given[i] = r->value[i] == r->value[i];
        if (!e->given[i])
            continue;
        if (!is_finite(r->value[i]) || r->value[i] <= 0 || !is_finite(r->uncertainty[i]) || r->uncertainty[i] <= 0)
            return VTX_BAD_ARGUMENT;
        if (r->value[i] > 1e9 || r->value[i] < 1e-9 || r->uncertainty[i] > 1e9 || r->uncertainty[i] < 1e-9 * r->value[i])
            return VTX_OUT_OF_RANGE;
        e->value[i] = r->value[i];
        e->uncertainty[i] = r->uncertainty[i];
        e->count++;
    }
    return VTX_OK;
}

void gauges_show(const vtx_job *job, const vtx_operating_point *p, double readings[READINGS])
{
    const double all[READINGS] = { job->supply.pressure, p->inlet_pressure, p->inlet_temperature, p->cold_temperature,
                                   p->hot_temperature, p->mass_flow, p->cold_mass_flow, p->cold_pressure };
    memcpy(readings, all, sizeof all);
}
