/* A job's uncertain inputs fitted to its gauges. */
#include "service_fit.h"

#include "../base/propagation.h"
#include "fault.h"
#include "job_pass.h"

/* Step of derivatives, in a parameter's unit. */
static const double derivative_step = 1e-3;
static const double no_state = 1e300;
/* Where fog or ice just begins the forward pass has a corner. A minimum there counts as one up to this slope: an eighth of what tells two fits apart. */
static const double slope_at_corner = 0.25;

vtx_status service_fit_open(struct service_fit *f, const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings)
{
    if (!uncertainty)
        return VTX_BAD_ARGUMENT;
    vtx_status status = job_check(job);
    if (status != VTX_OK)
        return status;
    memset(f, 0, sizeof *f);
    status = gather_input_uncertainties(job, uncertainty, f->deviation);
    if (status == VTX_OK && readings)
        status = gather_evidence(readings, &f->evidence);
    return status == VTX_OK ? fault_open(job, &f->job) : status;
}

int service_fit_read(const struct service_fit *f, int32_t reading) { return f->evidence.given[reading - VTX_READ_SUPPLY_PRESSURE]; }

static double deviation_of(const struct service_fit *f, int32_t input) { return f->deviation[input - VTX_INPUT_SUPPLY_PRESSURE]; }

void service_fit_add(struct service_fit *f, int32_t what, double unit, int32_t held)
{
    if (!(unit > 0))
        return;
    f->what[f->parameters] = what;
    f->unit[f->parameters] = unit;
    f->held[f->parameters] = held;
    /* Derivatives of the fit step by 6e-6 of this: far enough above the rounding of the forward pass. */
    f->typical[f->parameters] = 10;
    f->parameters++;
}

/* Free in steps worth noticing where something tells it, else held by the description. */
static void add_read_or_held(struct service_fit *f, int32_t input, int read, double step)
{
    service_fit_add(f, input, read ? step : deviation_of(f, input), !read);
}

void service_fit_add_description(struct service_fit *f)
{
    const vtx_tube *tube = &f->job.cooler.tube;
    const int pressure = service_fit_read(f, VTX_READ_SUPPLY_PRESSURE) || service_fit_read(f, VTX_READ_INLET_PRESSURE);
    add_read_or_held(f, VTX_INPUT_SUPPLY_PRESSURE, pressure, 1e4);
    add_read_or_held(f, VTX_INPUT_SUPPLY_TEMPERATURE, service_fit_read(f, VTX_READ_INLET_TEMPERATURE), 1);
    add_read_or_held(f, VTX_INPUT_SITE_PRESSURE, 0, 0);
    add_read_or_held(f, VTX_INPUT_COLDEST_FRACTION, 0, 0);
    if (f->job.setting.model != VTX_AIR_IDEAL && f->job.supply.humidity > 0)
        add_read_or_held(f, VTX_INPUT_SUPPLY_HUMIDITY, 0, 0);
    if (tube->cold_leak > 0 || tube->hot_leak > 0)
        add_read_or_held(f, VTX_INPUT_SITE_TEMPERATURE, 0, 0);
    if (f->job.elements > 0)
        add_read_or_held(f, VTX_INPUT_LINE_LOSS, 0, 0);
}

int service_fit_index(const struct service_fit *f, int32_t what)
{
    for (size_t k = 0; k < f->parameters; k++)
        if (f->what[k] == what)
            return (int)k;
    return -1;
}

/* A ratio in its logarithm: an end at 0 would be a corner that no least squares gets over. */
static void step_humidity(vtx_job *job, double by)
{
    if (job->supply.humidity_kind == VTX_SUPPLY_HUMIDITY_RATIO)
        job->supply.humidity *= exp(within(by / job->supply.humidity, -5, 5));
    else
        step_input(job, VTX_INPUT_SUPPLY_HUMIDITY, by);
}

vtx_job service_fit_job(const struct service_fit *f, const double *x)
{
    vtx_job job = f->job;
    for (size_t k = 0; k < f->parameters; k++) {
        const double by = within(x[k] * f->unit[k], -1e9, 1e9);
        if (f->what[k] == FIT_OPENING)
            job.setting.valve_opening *= exp(within(by, -50, 50));
        else if (f->what[k] == FIT_AREA)
            job.cooler.inlet_area_factor *= exp(within(by, -50, 50));
        else if (f->what[k] == VTX_INPUT_SUPPLY_HUMIDITY)
            step_humidity(&job, by);
        else if (by != 0)
            step_input(&job, f->what[k], by);
    }
    return job;
}

vtx_status service_fit_state(const struct service_fit *f, const double *x, double state[STATES])
{
    const vtx_job job = service_fit_job(f, x);
    vtx_operating_point p;
    const vtx_status status = gauges_read(&job, &p, state);
    if (status != VTX_OK)
        return status;
    state[STATE_COLD_FRACTION] = p.cold_fraction;
    state[STATE_CAPACITY] = p.target_capacity;
    return VTX_OK;
}

static vtx_status derived_state(const double *x, double *y, void *context) { return service_fit_state(context, x, y); }

vtx_status service_fit_gradient(struct service_fit *f, const double *x, double state[STATES], double *gradient)
{
    double steps[PARAMETERS_MAX], packed[STATES * PARAMETERS_MAX];
    for (size_t k = 0; k < f->parameters; k++)
        steps[k] = derivative_step;
    const vtx_status status = sensitivities(derived_state, f, f->parameters, x, steps, STATES, state, packed);
    for (size_t s = 0; s < STATES && status == VTX_OK; s++)
        for (size_t k = 0; k < PARAMETERS_MAX; k++)
            gradient[s * PARAMETERS_MAX + k] = k < f->parameters ? packed[s * f->parameters + k] : 0;
    return status;
}

static double read_value(const struct service_fit *f, int32_t reading) { return f->evidence.value[reading - VTX_READ_SUPPLY_PRESSURE]; }

static void move_to(const struct service_fit *f, int32_t what, double by, double *x)
{
    const int k = service_fit_index(f, what);
    if (k >= 0)
        x[k] += by / f->unit[k];
}

vtx_status service_fit_start(const struct service_fit *f, double *x)
{
    double state[STATES];
    memset(x, 0, PARAMETERS_MAX * sizeof *x);
    if (service_fit_read(f, VTX_READ_INLET_TEMPERATURE))
        move_to(f, VTX_INPUT_SUPPLY_TEMPERATURE, read_value(f, VTX_READ_INLET_TEMPERATURE) - f->job.supply.temperature, x);
    if (service_fit_read(f, VTX_READ_SUPPLY_PRESSURE))
        move_to(f, VTX_INPUT_SUPPLY_PRESSURE, read_value(f, VTX_READ_SUPPLY_PRESSURE) - f->job.supply.pressure, x);
    vtx_status status = service_fit_state(f, x, state);
    if (status != VTX_OK)
        return status;
    if (service_fit_read(f, VTX_READ_INLET_PRESSURE) && !service_fit_read(f, VTX_READ_SUPPLY_PRESSURE)) {
        move_to(f, VTX_INPUT_SUPPLY_PRESSURE, read_value(f, VTX_READ_INLET_PRESSURE) - state[VTX_READ_INLET_PRESSURE - VTX_READ_SUPPLY_PRESSURE], x);
        status = service_fit_state(f, x, state);
    }
    if (status == VTX_OK && service_fit_read(f, VTX_READ_INLET_FLOW)) {
        const double factor = read_value(f, VTX_READ_INLET_FLOW) / state[VTX_READ_INLET_FLOW - VTX_READ_SUPPLY_PRESSURE];
        const int area = service_fit_index(f, FIT_AREA) >= 0;
        move_to(f, area ? FIT_AREA : VTX_INPUT_RATED_FLOW, area ? log(factor) : factor - 1, x);
    }
    return status;
}

static vtx_status residuals(const double *x, double *r, void *context)
{
    const struct service_fit *f = context;
    double state[STATES];
    const vtx_status status = service_fit_state(f, x, state);
    size_t row = 0;
    for (int i = 0; i < READINGS && status == VTX_OK; i++)
        if (f->evidence.given[i])
            r[row++] = (state[i] - f->evidence.value[i]) / f->evidence.uncertainty[i];
    for (size_t k = 0; k < f->parameters; k++)
        if (f->held[k])
            r[row++] = x[k];
    return status;
}

static size_t rows_of(const struct service_fit *f)
{
    size_t rows = (size_t)f->evidence.count;
    for (size_t k = 0; k < f->parameters; k++)
        rows += f->held[k] != 0;
    return rows;
}

double service_fit_misfit(struct service_fit *f, const double *x)
{
    double r[FIT_ROWS_MAX], sum = 0;
    if (residuals(x, r, f) != VTX_OK)
        return no_state;
    for (size_t i = 0; i < rows_of(f); i++)
        sum += square(smaller(fabs(r[i]), 1e100));
    return sum;
}

vtx_status service_fit_run(struct service_fit *f, const int32_t *fixed, double *x)
{
    f->fit = (struct least_squares){ .residuals = residuals, .context = f, .rows = rows_of(f), .parameters = f->parameters,
                                     .typical = f->typical, .held = fixed, .evaluations_max = 2000, .workspace = f->workspace, .workspace_length = ARRAY_LENGTH(f->workspace) };
    if (f->fit.rows < f->parameters)
        return VTX_NO_SOLUTION;
    memcpy(f->fit.parameter, x, sizeof f->fit.parameter);
    const vtx_status status = fit_least_squares_to_corner(&f->fit, slope_at_corner);
    memcpy(x, f->fit.parameter, sizeof f->fit.parameter);
    f->fit.held = NULL;
    return status;
}

int32_t service_fit_freedom(const struct service_fit *f) { return (int32_t)rows_of(f) - (int32_t)f->parameters; }

double service_fit_deviation(const struct service_fit *f, size_t parameter)
{
    return f->fit.frozen[parameter] ? quiet_nan() : sqrt(f->fit.covariance[parameter][parameter]) * f->unit[parameter];
}
