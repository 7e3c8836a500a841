/* Figures of a job, chosen by number. */
#include "job_figure.h"

#include "job_pass.h"
#include "job_work.h"

int figure_at_most(int32_t figure)
{
    return figure == VTX_WISHED_COLD_TEMPERATURE || figure == VTX_WISHED_AIR_FLOW || figure == VTX_WISHED_FACE_TEMPERATURE
        || figure == VTX_WISHED_EXPOSURE_TIME || figure == VTX_WISHED_JET_TEMPERATURE;
}

static int needs_work(int32_t figure)
{
    return figure == VTX_WISHED_FACE_TEMPERATURE || figure == VTX_WISHED_EXPOSURE_TIME || figure == VTX_WISHED_JET_TEMPERATURE
        || figure == VTX_WISHED_HEAT_REMOVED;
}

vtx_status check_figure(int32_t figure)
{
    return require(figure >= VTX_WISHED_COLD_TEMPERATURE && figure <= VTX_WISHED_HEAT_REMOVED);
}

vtx_status check_stated(const vtx_job *job, int32_t figure)
{
    vtx_status status = require(!needs_work(figure) || states_face(&job->duty));
    if (figure == VTX_WISHED_EXPOSURE_TIME)
        status = worse(status, require(states_part(&job->duty)));
    return status;
}

/* Dry feed has nothing to freeze: its margin is the whole absolute temperature. */
static double freezing_margin(const vtx_operating_point *p)
{
    return p->coldest_temperature - (is_finite(p->cold_saturation_point) ? p->cold_saturation_point : 0);
}

static double figure_of(int32_t figure, const vtx_job *job, const vtx_operating_point *p, const vtx_work *w)
{
    switch (figure) {
    case VTX_WISHED_COLD_TEMPERATURE: return p->cold_temperature;
    case VTX_WISHED_CAPACITY: return p->target_capacity;
    case VTX_WISHED_INLET_CAPACITY: return p->capacity;
    case VTX_WISHED_TOTAL_CAPACITY: return p->target_capacity * job->running;
    case VTX_WISHED_AIR_FLOW: return p->free_air_flow * job->running;
    case VTX_WISHED_FREEZING_MARGIN: return freezing_margin(p);
    case VTX_WISHED_FACE_TEMPERATURE: return w->face_temperature;
    case VTX_WISHED_EXPOSURE_TIME: return w->exposure_time;
    case VTX_WISHED_JET_TEMPERATURE: return w->jet_temperature;
    default: return w->heat_removed;
    }
}

vtx_status job_figures(const vtx_job *job, const int32_t *figures, size_t count, double *values, int32_t *advisories)
{
    vtx_operating_point point;
    vtx_work work;
    int with_work = 0;
    for (size_t i = 0; i < count; i++)
        with_work |= needs_work(figures[i]);
    const vtx_status status = job_pass(job, &point, with_work ? &work : NULL);
    for (size_t i = 0; i < count; i++)
        values[i] = status == VTX_OK ? figure_of(figures[i], job, &point, &work) : quiet_nan();
    if (status == VTX_OK)
        *advisories = point.advisories | (with_work ? work.advisories : 0);
    return status;
}

vtx_status job_figure(const vtx_job *job, int32_t figure, double *value, int32_t *advisories)
{
    const vtx_status status = job_figures(job, &figure, 1, value, advisories);
    return status == VTX_OK && !is_finite(*value) ? VTX_OUT_OF_RANGE : status;
}
