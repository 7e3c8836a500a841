/* What a job's operating point means for line and work: jet, face, part. */
#include "job_work.h"

#include <vtx/impingement.h>
#include <vtx/part.h>

#include "job_line.h"

enum { FACE_STEPS_MAX = 40 };

/* Fields that nothing was stated for. */
static void leave_out(vtx_work *work)
{
    const double line_drop = work->line_drop, supply_flow = work->supply_flow;
    const int32_t advisories = work->advisories;
    POISON_STRUCT(work, vtx_work, advisories, VTX_OK);
    work->line_drop = line_drop;
    work->supply_flow = supply_flow;
    work->advisories = advisories | VTX_ADVISORY_FIELD_UNAVAILABLE;
    work->reserved_code = 0;
}

static vtx_status open_jet(const vtx_job *job, const vtx_operating_point *point, double temperature, vtx_jet *jet)
{
    const vtx_status status = vtx_jet_init(jet);
    jet->mass_flow = point->cold_mass_flow / job->cooler.outlets;
    jet->diameter = job->cooler.outlet_diameter;
    jet->temperature = temperature;
    jet->ambient_pressure = job->site.pressure + job->setting.cold_back_pressure;
    jet->ambient_temperature = job->site.temperature;
    return status;
}

/* The face that one outlet serves. */
static double face_share(const vtx_job *job) { return job->duty.face_area / job->cooler.outlets; }

/* Steady temperature of the face under the heat load. The film coefficient hardly depends on it: fixed point. */
static vtx_status face_temperature(const vtx_job *job, const vtx_jet *jet, double *temperature)
{
    const double load = job->duty.heat_load / job->cooler.outlets, area = face_share(job);
    vtx_impingement i;
    *temperature = job->duty.target_temperature;
    for (int step = 0; step < FACE_STEPS_MAX; step++) {
        const double before = *temperature;
        const vtx_status status = vtx_impingement_at(jet, job->duty.standoff, area, before, &i);
        if (status != VTX_OK)
            return status;
        *temperature = smaller(i.jet_temperature + load / (i.coefficient * area), 1500);
        if (fabs(*temperature - before) <= 1e-11 * before)
            return VTX_OK;
    }
    return VTX_NOT_CONVERGED;
}

/* None for a part that is no warmer than it may be; endless, and the field NaN, when the jet cannot bring it there. */
static double exposure_time(const vtx_job *job, double film_coefficient, double jet_temperature, int32_t *advisories)
{
    const vtx_duty *d = &job->duty;
    vtx_part part;
    vtx_cooling_time cooling;
    if (d->start_temperature <= d->target_temperature)
        return 0;
    vtx_part_init(&part);
    part.mass = d->mass;
    part.heat_capacity = d->specific_heat;
    part.area = d->face_area;
    part.conductivity = d->conductivity > 0 && d->half_thickness > 0 ? d->conductivity : 3000;
    part.half_thickness = d->conductivity > 0 && d->half_thickness > 0 ? d->half_thickness : 1e-6;
    part.heat_load = d->heat_load;
    if (vtx_part_cooling_time(&part, film_coefficient, jet_temperature, d->start_temperature, d->target_temperature, &cooling) != VTX_OK) {
        *advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
        return quiet_nan();
    }
    *advisories |= cooling.advisories;
    return cooling.time;
}

struct face_case {
    double heat, jet_temperature, face_temperature, exposure_time;
};

/* Jet, face and part with one temperature of the cold outlet. */
static vtx_status work_case(const vtx_job *job, const vtx_operating_point *point, double cold_temperature, vtx_work *work,
                            struct face_case *c)
{
    const vtx_duty *d = &job->duty;
    vtx_jet jet;
    vtx_impingement i;
    vtx_status status = open_jet(job, point, cold_temperature, &jet);
    if (status == VTX_OK)
        status = vtx_impingement_at(&jet, d->standoff, face_share(job), d->target_temperature, &i);
    if (status == VTX_OK)
        status = face_temperature(job, &jet, &c->face_temperature);
    if (status != VTX_OK)
        return status;
    c->heat = i.heat * job->cooler.outlets;
    c->jet_temperature = i.jet_temperature;
    work->film_coefficient = i.coefficient;
    work->advisories |= i.advisories;
    c->exposure_time = quiet_nan();
    if (states_part(d))
        c->exposure_time = exposure_time(job, i.coefficient, i.jet_temperature, &work->advisories);
    else
        work->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}

static vtx_status fill_jet(const vtx_job *job, const vtx_operating_point *point, vtx_work *work)
{
    vtx_jet jet;
    vtx_jet_outlet outlet;
    vtx_jet_state state;
    vtx_status status = open_jet(job, point, point->cold_temperature, &jet);
    if (status == VTX_OK)
        status = vtx_jet_outlet_at(&jet, &outlet);
    if (status == VTX_OK)
        status = vtx_jet_at(&jet, job->duty.standoff, &state);
    if (status == VTX_OK)
        status = vtx_jet_impact_force(&jet, job->duty.standoff, face_share(job), &work->impact_force);
    if (status != VTX_OK)
        return status;
    work->jet_velocity = outlet.velocity;
    work->impact_pressure = state.impact_pressure;
    work->impact_force *= job->cooler.outlets;
    work->advisories |= outlet.advisories | state.advisories;
    return VTX_OK;
}

vtx_status job_work(const vtx_job *job, const vtx_operating_point *point, vtx_work *work)
{
    struct face_case warm, cold, typical;
    memset(work, 0, sizeof *work);
    work->supply_flow = job_supply_flow(job, point->mass_flow);
    work->line_drop = job->supply.pressure - point->inlet_pressure;
    work->advisories = point->advisories & VTX_ADVISORY_STARVED;
    if (!states_face(&job->duty) || point->cold_mass_flow <= 0) {
        leave_out(work);
        return VTX_OK;
    }
    vtx_status status = work_case(job, point, point->cold_temperature_high, work, &warm);
    if (status == VTX_OK)
        status = work_case(job, point, point->cold_temperature_low, work, &cold);
    if (status == VTX_OK)
        status = work_case(job, point, point->cold_temperature, work, &typical);
    if (status == VTX_OK)
        status = fill_jet(job, point, work);
    if (status != VTX_OK)
        return status;
    work->jet_temperature = typical.jet_temperature;
    work->jet_temperature_low = cold.jet_temperature;
    work->jet_temperature_high = warm.jet_temperature;
    work->heat_removed = typical.heat;
    work->heat_removed_low = warm.heat;
    work->heat_removed_high = cold.heat;
    work->face_temperature = typical.face_temperature;
    work->face_temperature_low = cold.face_temperature;
    work->face_temperature_high = warm.face_temperature;
    work->exposure_time = typical.exposure_time;
    work->exposure_time_low = cold.exposure_time;
    work->exposure_time_high = warm.exposure_time;
    return VTX_OK;
}
