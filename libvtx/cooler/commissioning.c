/* What the readings say of the setting, and what to read. */
#include <vtx/commissioning.h>

#include <vtx/cold_fraction.h>

#include "job_pass.h"
#include "turn.h"

/* Readings that would shrink the uncertainty by less than this are not worth the walk. */
static const double worthwhile_share = 0.05;

vtx_status vtx_valve_goal_init(int32_t goal, double wanted, vtx_valve_goal *valve_goal)
{
    if (!valve_goal)
        return VTX_BAD_ARGUMENT;
    const vtx_valve_goal g = { .wanted = wanted, .goal = goal, .branch = VTX_BRANCH_MORE_COLD_AIR };
    const vtx_status status = check_goal(&g);
    if (status == VTX_OK)
        *valve_goal = g;
    return status;
}

/* The two estimates that need no model of the tube, for comparison. */
static void estimate_without_model(const struct setting_fit *s, const vtx_operating_point *p, vtx_setting_found *r)
{
    const struct evidence *e = &s->service.evidence;
    const int t0 = VTX_READ_INLET_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE, tc = VTX_READ_COLD_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE;
    const int th = VTX_READ_HOT_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE;
    const int m = VTX_READ_INLET_FLOW - VTX_READ_SUPPLY_PRESSURE, mc = VTX_READ_COLD_FLOW - VTX_READ_SUPPLY_PRESSURE;
    const int pressure = service_fit_read(&s->service, VTX_READ_SUPPLY_PRESSURE) || service_fit_read(&s->service, VTX_READ_INLET_PRESSURE);
    r->by_temperatures = r->by_temperatures_uncertainty = r->by_flows = r->by_flows_uncertainty = quiet_nan();
    if (e->given[t0] && e->given[tc] && e->given[th] && pressure)
        vtx_cold_fraction_from_thermometers(s->service.job.setting.model, p->inlet_pressure, e->value[t0], p->humidity_ratio, p->cold_pressure,
                                            e->value[tc], p->hot_pressure, e->value[th], e->uncertainty[t0], e->uncertainty[tc],
                                            e->uncertainty[th], &r->by_temperatures, &r->by_temperatures_uncertainty);
    if (e->given[m] && e->given[mc])
        vtx_cold_fraction_from_flows(VTX_FLOWS_INLET_AND_COLD, e->value[m], e->value[mc], e->uncertainty[m], e->uncertainty[mc], &r->by_flows,
                                     &r->by_flows_uncertainty);
}

static double parameter_deviation(const struct setting_fit *s, int32_t what)
{
    const int k = service_fit_index(&s->service, what);
    return k < 0 ? 0 : service_fit_deviation(&s->service, (size_t)k);
}

static vtx_status describe_setting(const struct setting_fit *s, vtx_setting_found *r)
{
    const int cold = VTX_READ_COLD_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE;
    const vtx_job job = service_fit_job(&s->service, s->x);
    vtx_operating_point p;
    const vtx_status status = job_pass(&job, &p, NULL);
    if (status != VTX_OK)
        return status;
    memset(r, 0, sizeof *r);
    r->advisories = p.advisories | s->advisories;
    r->cold_fraction = p.cold_fraction;
    r->cold_fraction_uncertainty = setting_deviation(s, STATE_COLD_FRACTION);
    r->cold_fraction_low = s->low;
    r->cold_fraction_high = s->high;
    r->valve_opening = job.setting.valve_opening;
    r->valve_opening_uncertainty = job.setting.valve_opening * parameter_deviation(s, FIT_OPENING);
    r->cold_temperature = p.cold_temperature;
    r->cold_temperature_uncertainty = setting_deviation(s, cold);
    r->capacity = p.target_capacity;
    r->capacity_uncertainty = setting_deviation(s, STATE_CAPACITY);
    r->peak_efficiency = job.cooler.tube.peak_efficiency;
    r->peak_efficiency_uncertainty = parameter_deviation(s, VTX_INPUT_TUBE_EFFICIENCY);
    r->supply_pressure = job.supply.pressure;
    r->supply_temperature = job.supply.temperature;
    r->rated_flow_factor = job.cooler.rated_free_air_flow / s->service.job.cooler.rated_free_air_flow;
    r->chi_square = s->chi_square;
    r->probability = s->probability;
    r->other_cold_fraction = s->other_cold_fraction;
    r->freedom = s->freedom;
    r->readings = s->service.evidence.count;
    estimate_without_model(s, &p, r);
    if (!is_finite(r->probability) || !is_finite(r->by_temperatures) || !is_finite(r->by_flows) || !is_finite(r->other_cold_fraction))
        r->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    return VTX_OK;
}

vtx_status vtx_find_setting(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                            vtx_setting_found *found)
{
    struct setting_fit s;
    vtx_status status = require(found != NULL);
    if (status == VTX_OK)
        status = setting_fit_run(job, uncertainty, readings, &s);
    if (status == VTX_OK)
        status = describe_setting(&s, found);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(found, vtx_setting_found, freedom, status);
}

/* What is known of the parameters, as a covariance in their units, and what a reading adds to it. */
struct knowledge {
    size_t n;
    double covariance[PARAMETERS_MAX][PARAMETERS_MAX];
};

static void add_reading(struct knowledge *k, const double *row, double uncertainty)
{
    double column[PARAMETERS_MAX], variance = square(uncertainty);
    for (size_t i = 0; i < k->n; i++) {
        column[i] = 0;
        for (size_t j = 0; j < k->n; j++)
            column[i] += k->covariance[i][j] * row[j];
    }
    for (size_t i = 0; i < k->n; i++)
        variance += row[i] * column[i];
    for (size_t i = 0; i < k->n; i++)
        for (size_t j = 0; j < k->n; j++)
            k->covariance[i][j] -= column[i] * column[j] / variance;
}

static double known_to(const struct knowledge *k, const double *gradient)
{
    double sum = 0;
    for (size_t i = 0; i < k->n; i++)
        for (size_t j = 0; j < k->n; j++)
            sum += gradient[i] * k->covariance[i][j] * gradient[j];
    return sqrt(larger(sum, 0));
}

struct planning {
    struct knowledge prior;
    double rows[STATES * PARAMETERS_MAX];
    double uncertainty[READINGS];
    double wanted[PARAMETERS_MAX];
};

/* Uncertainty of the wanted quantity with the readings of a set taken. */
static double with_readings(const struct planning *p, const int taken[READINGS])
{
    struct knowledge k = p->prior;
    for (int i = 0; i < READINGS; i++)
        if (taken[i])
            add_reading(&k, &p->rows[i * PARAMETERS_MAX], p->uncertainty[i]);
    return known_to(&k, p->wanted);
}

/* The reading that is missed least; of equals the last in the list. kept: is not up for it. */
static int least_missed(const struct planning *p, const int taken[READINGS], const int kept[READINGS])
{
    int least = -1;
    double smallest = DBL_MAX;
    for (int i = 0; i < READINGS; i++) {
        int rest[READINGS];
        if (!taken[i] || kept[i])
            continue;
        memcpy(rest, taken, sizeof rest);
        rest[i] = 0;
        const double without = with_readings(p, rest);
        if (without <= smallest) {
            smallest = without;
            least = i;
        }
    }
    return least;
}

static void order_readings(const struct planning *p, const struct evidence *e, vtx_reading_plan *plan)
{
    int taken[READINGS];
    plan->count = 0;
    for (int i = 0; i < READINGS; i++) {
        taken[i] = !e->barred[i];
        plan->count += taken[i] && !e->given[i];
        plan->order[i] = -1;
        plan->after[i] = quiet_nan();
    }
    for (int k = plan->count - 1; k >= 0; k--) {
        const int i = least_missed(p, taken, e->given);
        plan->after[k] = with_readings(p, taken);
        plan->order[k] = VTX_READ_SUPPLY_PRESSURE + i;
        taken[i] = 0;
    }
    plan->before = with_readings(p, taken);
    const double last = plan->count > 0 ? plan->after[plan->count - 1] : plan->before;
    plan->worthwhile = 0;
    for (int k = 0; k < plan->count; k++)
        if (last < (1 - worthwhile_share) * (k == 0 ? plan->before : plan->after[k - 1]))
            plan->worthwhile = k + 1;
}

/* Prior of the description; the valve may stand anywhere in its range: evenly in the logarithm. */
static void set_prior(const struct service_fit *f, const struct valve_range *range, struct knowledge *k)
{
    memset(k, 0, sizeof *k);
    k->n = f->parameters;
    for (size_t i = 0; i < k->n; i++)
        k->covariance[i][i] = 1;
    k->covariance[0][0] = square(log(range->high / range->low)) / 12;
}

static vtx_status check_instruments(const vtx_service_readings *r, const struct evidence *e, double uncertainty[READINGS])
{
    vtx_status status = VTX_OK;
    for (int i = 0; i < READINGS; i++) {
        uncertainty[i] = r->uncertainty[i];
        if (!e->barred[i])
            status = worse(status, check_positive(r->uncertainty[i], 1e-12, 1e9));
    }
    return status;
}

static vtx_status plan_readings(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                                const vtx_valve_goal *goal, vtx_reading_plan *plan)
{
    struct service_fit f;
    struct planning p;
    struct valve_range range;
    double x[PARAMETERS_MAX] = { 0 }, state[STATES];
    struct evidence e;
    vtx_status status = service_fit_open(&f, job, uncertainty, readings);
    if (status == VTX_OK)
        status = check_instruments(readings, &f.evidence, p.uncertainty);
    if (status != VTX_OK)
        return status;
    e = f.evidence;
    memset(f.evidence.given, 0, sizeof f.evidence.given); /* here readings add to the description, they do not supersede it */
    if (!(f.job.setting.valve_opening > 0))
        f.job.setting.valve_opening = 1;
    setting_parameters(&f);
    status = valve_range_of(&f.job, &range);
    if (status == VTX_OK)
        status = service_fit_gradient(&f, x, state, p.rows);
    if (status == VTX_OK)
        status = turn_gradient(&f, x, goal, p.wanted);
    if (status != VTX_OK)
        return status;
    set_prior(&f, &range, &p.prior);
    memset(plan, 0, sizeof *plan);
    order_readings(&p, &e, plan);
    plan->advisories = plan->count < READINGS ? VTX_ADVISORY_FIELD_UNAVAILABLE : 0;
    return VTX_OK;
}

vtx_status vtx_plan_readings(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                             const vtx_valve_goal *goal, vtx_reading_plan *plan)
{
    vtx_status status = worse(require(plan != NULL && readings != NULL), check_goal(goal));
    if (status == VTX_OK)
        status = plan_readings(job, uncertainty, readings, goal, plan);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(plan, vtx_reading_plan, order, status);
}
