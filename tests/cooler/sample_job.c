/* Sample records of the cooler layer. */
#include "sample_job.h"

#include <vtx/acceptance.h>
#include <vtx/commissioning.h>
#include <vtx/comparison.h>
#include <vtx/diagnosis.h>
#include <vtx/sizing.h>
#include <vtx/uncertainty.h>

void sample_cooler(vtx_cooler *cooler)
{
    vtx_cooler_init(cooler);
    cooler->rated_free_air_flow = 0.6 / 60;
}

void sample_supply(vtx_supply *supply)
{
    vtx_supply_init(supply);
    supply->pressure = 7e5;
    supply->humidity = 276.15;
}

void sample_site(vtx_site *site) { vtx_site_init(site); }

vtx_job sample_job(int32_t model)
{
    vtx_job job;
    vtx_job_init(&job);
    sample_cooler(&job.cooler);
    sample_supply(&job.supply);
    sample_site(&job.site);
    job.setting.model = model;
    job.duty.target_temperature = 313.15;
    return job;
}

void add_line(vtx_job *job)
{
    vtx_chain_filter(1e4, 0.012, 8e5, 293.15, 0.5, &job->line[0]);
    vtx_chain_coupling(0.0072, &job->line[1]);
    vtx_chain_hose(0.0063, 8, &job->line[2]);
    vtx_chain_coupling(0.0072, &job->line[3]);
    job->elements = 4;
}

/* Calls that take two requests need two different ones; a call's job is made before its requests. */
static int requests_made;

static vtx_request sample_request(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_request request;
    if (requests_made++ == 0)
        vtx_request_init(&job, VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_CAPACITY, 250, &request);
    else
        vtx_request_init(&job, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_COLD_TEMPERATURE, 266, &request);
    return request;
}

int sample_record(const char *type, void *record)
{
    if (strcmp(type, "vtx_cooler") == 0)
        sample_cooler(record);
    else if (strcmp(type, "vtx_supply") == 0)
        sample_supply(record);
    else if (strcmp(type, "vtx_site") == 0)
        sample_site(record);
    else if (strcmp(type, "vtx_cooler_setting") == 0)
        vtx_cooler_setting_init(record);
    else if (strcmp(type, "vtx_job") == 0) {
        vtx_job *job = record;
        *job = sample_job(VTX_AIR_REAL);
        job->duty.face_area = 1e-3;
        job->duty.standoff = 0.02;
        requests_made = 0;
    } else if (strcmp(type, "vtx_request") == 0)
        *(vtx_request *)record = sample_request();
    else if (strcmp(type, "vtx_service_readings") == 0) {
        const vtx_job job = sample_job(VTX_AIR_REAL);
        return vtx_predict_readings(&job, VTX_CAUSE_WORN_NOZZLE, 0.1, record) == VTX_OK;
    } else if (strcmp(type, "vtx_liquid") == 0)
        vtx_liquid_init(record);
    else if (strcmp(type, "vtx_valve_goal") == 0)
        vtx_valve_goal_init(VTX_GOAL_COLD_TEMPERATURE, 265, record);
    else if (strcmp(type, "vtx_input_uncertainty") == 0)
        vtx_input_uncertainty_init(record);
    else if (strcmp(type, "vtx_quotation") == 0)
        vtx_quotation_init(VTX_QUOTED_COLD_TEMPERATURE, VTX_TOLERANCE_UPPER, 262, record);
    else
        return 0;
    return 1;
}
