/* A job's forward pass: pressure at the cooler from line and network together, then the point, then the work. */
#include "job_pass.h"

#include "../flow/chain_kernel.h"
#include "job_line.h"
#include "job_work.h"
#include "operate.h"

vtx_status vtx_duty_init(vtx_duty *duty)
{
    if (!duty)
        return VTX_BAD_ARGUMENT;
    *duty = (vtx_duty){ .target_temperature = quiet_nan() };
    return VTX_OK;
}

vtx_status vtx_job_init(vtx_job *job)
{
    if (!job)
        return VTX_BAD_ARGUMENT;
    memset(job, 0, sizeof *job);
    job->running = 1;
    vtx_status status = worse(vtx_supply_init(&job->supply), vtx_site_init(&job->site));
    status = worse(status, worse(vtx_cooler_init(&job->cooler), vtx_cooler_setting_init(&job->setting)));
    return worse(status, vtx_duty_init(&job->duty));
}

/* The ranges of part.h, or zero. */
static vtx_status check_if_stated(double x, double low, double high) { return x == 0 ? VTX_OK : check_positive(x, low, high); }

static vtx_status check_duty(const vtx_duty *d)
{
    vtx_status status = check_positive(d->target_temperature, 150, 500);
    status = worse(status, check_amount(d->heat_load, 1e6));
    status = worse(status, check_amount(d->face_area, 10));
    status = worse(status, check_amount(d->standoff, 10));
    status = worse(status, check_if_stated(d->mass, 1e-9, 1e4));
    status = worse(status, check_if_stated(d->specific_heat, 50, 10000));
    status = worse(status, check_if_stated(d->start_temperature, 50, 1500));
    status = worse(status, check_if_stated(d->conductivity, 0.01, 3000));
    status = worse(status, check_if_stated(d->half_thickness, 1e-6, 5));
    return worse(status, require(are_zero(d->reserved, ARRAY_LENGTH(d->reserved))));
}

vtx_status job_check(const vtx_job *job)
{
    if (!job)
        return VTX_BAD_ARGUMENT;
    vtx_status status = worse(check_duty(&job->duty), check_positive(job->running, 1e-3, 1e4));
    status = worse(status, require(job->reserved_count == 0 && are_zero(job->reserved, ARRAY_LENGTH(job->reserved))));
    status = worse(status, require(job->elements >= 0 && job->elements <= (int32_t)ARRAY_LENGTH(job->line)));
    for (int32_t i = 0; i < job->elements && status == VTX_OK; i++)
        status = check_chain_element(&job->line[i]);
    return worse(status, worse(worse(check_cooler(&job->cooler), check_supply(&job->supply)),
                               worse(check_site(&job->site), check_setting(&job->setting))));
}

vtx_status job_pass(const vtx_job *job, vtx_operating_point *point, vtx_work *work)
{
    struct operation o;
    struct network_flow flow;
    double pressure;
    vtx_status status = operation_open(&o, &job->cooler, &job->supply, &job->site, &job->setting);
    if (status == VTX_OK)
        status = job_pressure_at_cooler(job, &o, &pressure, &flow);
    if (status == VTX_OK)
        status = operation_point(&o, pressure, &flow, job->duty.target_temperature, point);
    if (status != VTX_OK)
        return status;
    if (chain_starves(job->supply.pressure - pressure, job->supply.pressure))
        point->advisories |= VTX_ADVISORY_STARVED;
    return work ? job_work(job, point, work) : VTX_OK;
}

vtx_status vtx_job_evaluate(const vtx_job *job, vtx_operating_point *point, vtx_work *work)
{
    vtx_status status = worse(require(point != NULL), job_check(job));
    if (status == VTX_OK)
        status = job_pass(job, point, work);
    if (status == VTX_OK)
        return VTX_OK;
    POISON_STRUCT(work, vtx_work, advisories, status);
    return POISON_STRUCT(point, vtx_operating_point, advisories, status);
}

int job_element_has(const vtx_chain_element *element, int32_t sought)
{
    if (sought == VTX_SOUGHT_REGULATOR_PRESSURE)
        return element->kind == VTX_CHAIN_REGULATOR;
    return element->kind == VTX_CHAIN_LINE;
}
