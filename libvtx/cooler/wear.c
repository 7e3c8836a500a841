/* Nozzle and efficiency together from one visit. */
#include <vtx/wear.h>

#include "../base/distribution.h"
#include "job_pass.h"
#include "service_fit.h"

static const double misfit_probability = 0.01;
/* Logarithm of the area, and efficiency, known no better than this are not seen. */
static const double area_unseen = 1, efficiency_unseen = 0.5;

static void wear_parameters(struct service_fit *f)
{
    const int thermometer = service_fit_read(f, VTX_READ_COLD_TEMPERATURE) || service_fit_read(f, VTX_READ_HOT_TEMPERATURE);
    service_fit_add(f, FIT_AREA, 0.1, 0);
    const double described = f->deviation[VTX_INPUT_TUBE_EFFICIENCY - VTX_INPUT_SUPPLY_PRESSURE];
    service_fit_add(f, VTX_INPUT_TUBE_EFFICIENCY, thermometer ? 0.05 : described, !thermometer);
    service_fit_add(f, FIT_OPENING, f->deviation[VTX_INPUT_SETTING - VTX_INPUT_SUPPLY_PRESSURE], 1);
    service_fit_add(f, VTX_INPUT_RATED_FLOW, f->deviation[VTX_INPUT_RATED_FLOW - VTX_INPUT_SUPPLY_PRESSURE], 1);
    service_fit_add_description(f);
}

/* Whether the readings see a parameter; its deviation, NaN if they do not. */
static int seen(const struct service_fit *f, int32_t what, double most, double *deviation)
{
    const int k = service_fit_index(f, what);
    *deviation = k < 0 || f->held[k] ? quiet_nan() : service_fit_deviation(f, (size_t)k);
    if (is_finite(*deviation) && *deviation > most)
        *deviation = quiet_nan();
    return is_finite(*deviation);
}

static double correlation_of(const struct service_fit *f)
{
    const int a = service_fit_index(f, FIT_AREA), b = service_fit_index(f, VTX_INPUT_TUBE_EFFICIENCY);
    return f->fit.covariance[a][b] / sqrt(f->fit.covariance[a][a] * f->fit.covariance[b][b]);
}

static void judge(const struct service_fit *f, vtx_wear *w)
{
    w->chi_square = f->fit.sum_of_squares;
    w->freedom = service_fit_freedom(f);
    w->readings = f->evidence.count;
    w->probability = w->freedom > 0 ? chi_square_exceedance(w->chi_square, w->freedom) : quiet_nan();
    if (is_finite(w->probability) && w->probability < misfit_probability)
        w->advisories |= VTX_ADVISORY_MODEL_MISFIT;
    if (!is_finite(w->probability) || !is_finite(w->inlet_area_factor) || !is_finite(w->peak_efficiency))
        w->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

static vtx_status describe(struct service_fit *f, const double *x, vtx_wear *w)
{
    const vtx_job job = service_fit_job(f, x);
    vtx_operating_point p;
    double state[STATES], gradient[STATES * PARAMETERS_MAX], area, efficiency;
    vtx_status status = job_pass(&job, &p, NULL);
    if (status == VTX_OK)
        status = service_fit_gradient(f, x, state, gradient);
    if (status != VTX_OK)
        return status;
    memset(w, 0, sizeof *w);
    const int sees_area = seen(f, FIT_AREA, area_unseen, &area), sees_efficiency = seen(f, VTX_INPUT_TUBE_EFFICIENCY, efficiency_unseen, &efficiency);
    if (!sees_area && !sees_efficiency)
        return VTX_NO_SOLUTION;
    w->advisories = p.advisories;
    w->inlet_area_factor = sees_area ? job.cooler.inlet_area_factor : quiet_nan();
    w->inlet_area_factor_uncertainty = job.cooler.inlet_area_factor * area;
    w->peak_efficiency = sees_efficiency ? job.cooler.tube.peak_efficiency : quiet_nan();
    w->peak_efficiency_uncertainty = efficiency;
    w->correlation = sees_area && sees_efficiency ? correlation_of(f) : quiet_nan();
    w->cold_fraction = p.cold_fraction;
    w->cold_fraction_uncertainty = derived_deviation(&f->fit, &gradient[STATE_COLD_FRACTION * PARAMETERS_MAX]);
    w->valve_opening = job.setting.valve_opening;
    judge(f, w);
    return VTX_OK;
}

vtx_status vtx_find_wear(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings, vtx_wear *wear)
{
    struct service_fit f;
    double x[PARAMETERS_MAX];
    vtx_status status = worse(require(wear != NULL && readings != NULL), VTX_OK);
    if (status == VTX_OK)
        status = service_fit_open(&f, job, uncertainty, readings);
    if (status == VTX_OK)
        status = require(f.evidence.count >= 2);
    if (status == VTX_OK) {
        wear_parameters(&f);
        status = service_fit_start(&f, x);
    }
    if (status == VTX_OK)
        status = service_fit_run(&f, NULL, x);
    if (status == VTX_OK)
        status = describe(&f, x, wear);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(wear, vtx_wear, freedom, status);
}
