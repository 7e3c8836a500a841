/* Least squares on the tested job, the quoted job with what it found, and the slopes of both. */
#include "transfer.h"

#include "../base/least_squares.h"
#include "job_pass.h"

const int32_t transfer_term[TERMS] = { VTX_INPUT_SUPPLY_PRESSURE, VTX_INPUT_SUPPLY_TEMPERATURE, VTX_INPUT_SUPPLY_HUMIDITY,
                                       VTX_INPUT_SITE_PRESSURE,   VTX_INPUT_SITE_TEMPERATURE,   VTX_INPUT_RATED_FLOW,
                                       VTX_INPUT_SETTING,         VTX_INPUT_TUBE_EFFICIENCY,    VTX_INPUT_COLDEST_FRACTION,
                                       VTX_INPUT_LINE_LOSS,       VTX_TERM_PRESSURE_EXPONENT,   VTX_TERM_BACK_PRESSURE };

enum { ROWS_MAX = PARTS + 1 };

/* Differences are taken over this share of a scale to either side. */
static const double step = 0.05;

/* Where fog or ice just begins the forward pass has a kink. A minimum there keeps slopes on both sides, of a share of the cold reading's
 * departure (0.3 standard deviations were seen, 0.1 where the search crept along it); readings that no cooler gives stop with 20 and more. */
static const double slope_at_kink = 1;

static int at(int32_t reading) { return (int)(reading - VTX_READ_SUPPLY_PRESSURE); }

static int of_machine(int32_t term)
{
    return term == VTX_INPUT_RATED_FLOW || term == VTX_INPUT_TUBE_EFFICIENCY || term == VTX_INPUT_COLDEST_FRACTION
        || term == VTX_TERM_PRESSURE_EXPONENT;
}

/* Suction at the cold outlets is a lower barometer with the hot outlet's pressure held up. */
static void step_back_pressure(vtx_job *job, double by)
{
    vtx_cooler_setting *s = &job->setting;
    const double suction = -smaller(s->cold_back_pressure + by, 0);
    s->cold_back_pressure = larger(s->cold_back_pressure + by, 0);
    job->site.pressure -= suction;
    s->hot_back_pressure += suction;
}

static void move_term(const struct transfer *t, vtx_job *job, int term, double by)
{
    vtx_tube *tube = &job->cooler.tube;
    switch (transfer_term[term]) {
    case VTX_TERM_PRESSURE_EXPONENT: tube->pressure_exponent = within(tube->pressure_exponent + by, -1, 1); break;
    case VTX_TERM_BACK_PRESSURE: step_back_pressure(job, by); break;
    case VTX_INPUT_RATED_FLOW:
        if (t->flow_read) {
            job->cooler.inlet_area_factor *= 1 + by;
            break;
        }
        step_input(job, VTX_INPUT_RATED_FLOW, by);
        break;
    default: step_input(job, transfer_term[term], by); break;
    }
}

static vtx_job tested_at(const struct transfer *t, const double *z)
{
    vtx_job job = t->tested;
    for (int i = 0; i < TERMS; i++)
        if (!t->held[i])
            move_term(t, &job, i, z[i] * t->scale[i]);
    return job;
}

vtx_job transfer_tested(const struct transfer *t) { return tested_at(t, t->z); }

/* What is not read is not compared; a term that is stated is a reading of itself. The last row is constant: with it the search ends by
 * the stated uncertainties, not by what readings without noise leave over. */
static vtx_status residuals(const double *z, double *r, void *context)
{
    const struct transfer *t = context;
    const vtx_job job = tested_at(t, z);
    double shown[READINGS];
    vtx_operating_point p;
    const vtx_status status = gauges_read(&job, &p, shown);
    if (status != VTX_OK)
        return status;
    for (int i = 0; i < READINGS; i++)
        r[i] = t->read.given[i] ? (shown[i] - t->read.value[i]) / t->read.uncertainty[i] - t->moved[i] : 0;
    for (int i = 0; i < TERMS; i++)
        r[READINGS + i] = t->held[i] || t->free[i] ? 0 : z[i] - t->moved[READINGS + i];
    r[PARTS] = 1;
    return VTX_OK;
}

/* Both sides, or the one that has a state. */
static vtx_status slopes(const double *z, double *jacobian, void *context)
{
    const struct transfer *t = context;
    double moved[TERMS], here[ROWS_MAX], above[ROWS_MAX], below[ROWS_MAX];
    vtx_status status = residuals(z, here, context);
    memcpy(moved, z, sizeof moved);
    for (int i = 0; i < TERMS && status == VTX_OK; i++) {
        for (int k = 0; k < ROWS_MAX; k++)
            jacobian[k * TERMS + i] = 0;
        if (t->held[i])
            continue;
        moved[i] = z[i] + step;
        const int has_above = residuals(moved, above, context) == VTX_OK;
        moved[i] = z[i] - step;
        const int has_below = residuals(moved, below, context) == VTX_OK;
        moved[i] = z[i];
        const double width = step * (has_above + has_below);
        status = width > 0 ? VTX_OK : VTX_OUT_OF_RANGE;
        for (int k = 0; k < ROWS_MAX && status == VTX_OK; k++)
            jacobian[k * TERMS + i] = ((has_above ? above[k] : here[k]) - (has_below ? below[k] : here[k])) / width;
    }
    return status;
}

static double quantity_of(int32_t quantity, const vtx_operating_point *p)
{
    switch (quantity) {
    case VTX_QUOTED_COLD_TEMPERATURE: return p->cold_temperature;
    case VTX_QUOTED_TEMPERATURE_DROP: return p->inlet_temperature - p->cold_temperature;
    case VTX_QUOTED_HOT_TEMPERATURE: return p->hot_temperature;
    case VTX_QUOTED_CAPACITY: return p->capacity;
    case VTX_QUOTED_TARGET_CAPACITY: return p->target_capacity;
    default: return p->free_air_flow;
    }
}

static vtx_status quoted_at(const struct transfer *t, const double *z, double *quantity, int32_t *advisories)
{
    vtx_job job = t->quoted;
    vtx_operating_point p;
    for (int i = 0; i < TERMS; i++)
        if (!t->held[i] && of_machine(transfer_term[i]))
            move_term(t, &job, i, z[i] * t->scale[i]);
    vtx_status status = job_check(&job);
    if (status == VTX_OK)
        status = job_pass(&job, &p, NULL);
    if (status != VTX_OK)
        return status;
    *quantity = quantity_of(t->quantity, &p);
    *advisories = p.advisories;
    return VTX_OK;
}

/* The fit's answer to other data, by its own slopes: steps of -C J^T r until they are small. Kinks and curvature are followed. */
struct refit {
    struct transfer *t;
    const struct least_squares *fit;
    double jacobian[ROWS_MAX * TERMS];
};

static vtx_status step_of(const struct refit *f, const double *z, double *change)
{
    double r[ROWS_MAX], pull[TERMS];
    const vtx_status status = residuals(z, r, f->t);
    for (int i = 0; i < TERMS; i++) {
        pull[i] = 0;
        for (int row = 0; row < PARTS && status == VTX_OK; row++)
            pull[i] -= f->jacobian[row * TERMS + i] * r[row];
    }
    for (int i = 0; i < TERMS; i++) {
        change[i] = 0;
        for (int k = 0; k < TERMS; k++)
            change[i] += f->fit->covariance[i][k] * pull[k];
    }
    return status;
}

/* Estimate with the data moved by these standard uncertainties times `distance`; NaN when no cooler would show that. */
static double estimate_with(struct refit *f, const double *direction, double distance)
{
    enum { STEPS_MAX = 30, WHOLE_STEPS = 12 };
    double z[TERMS], change[TERMS], estimate, largest = 1;
    int32_t advisories;
    vtx_status status = VTX_OK;
    memcpy(z, f->t->z, sizeof z);
    for (int row = 0; row < PARTS; row++)
        f->t->moved[row] = direction[row] * distance;
    for (int n = 0; n < STEPS_MAX && largest > 1e-6 && status == VTX_OK; n++) {
        /* Whole steps can leap over a kink and back for ever. */
        const double share = n < WHOLE_STEPS ? 1 : 0.5;
        status = step_of(f, z, change);
        largest = 0;
        for (int i = 0; i < TERMS && status == VTX_OK; i++) {
            z[i] += share * change[i];
            largest = larger(largest, fabs(change[i]));
        }
    }
    memset(f->t->moved, 0, sizeof f->t->moved);
    if (status != VTX_OK || largest > 1e-2 || quoted_at(f->t, z, &estimate, &advisories) != VTX_OK)
        return quiet_nan();
    return estimate;
}

/* The larger of the changes to both sides, per standard uncertainty: first order alone would be too narrow on one side. */
static vtx_status larger_change(struct refit *f, const double *direction, double distance, double *change)
{
    const double middle = f->t->estimate;
    const double above = estimate_with(f, direction, distance), below = estimate_with(f, direction, -distance);
    const double up = is_finite(above) ? (above - middle) / distance : 0, down = is_finite(below) ? (middle - below) / distance : 0;
    *change = fabs(up) > fabs(down) ? up : down;
    return is_finite(above) || is_finite(below) ? VTX_OK : VTX_OUT_OF_RANGE;
}

/* Each datum alone, then all together the way that moves the estimate most: what they do jointly may be more than the sum of squares. */
static vtx_status fill_budget(struct transfer *t, const struct least_squares *fit, double distance)
{
    struct refit f = { .t = t, .fit = fit };
    double direction[PARTS] = { 0 }, variance = 0, jointly;
    vtx_status status = slopes(t->z, f.jacobian, t);
    for (int row = 0; row < PARTS && status == VTX_OK; row++) {
        t->part[row] = 0;
        if (row < READINGS ? !t->read.given[row] : t->held[row - READINGS] || t->free[row - READINGS])
            continue;
        direction[row] = 1;
        status = larger_change(&f, direction, distance, &t->part[row]);
        direction[row] = 0;
        variance += square(t->part[row]);
    }
    if (status != VTX_OK || !(variance > 0))
        return status == VTX_OK ? VTX_OUT_OF_RANGE : status;
    for (int row = 0; row < PARTS; row++)
        direction[row] = t->part[row] / sqrt(variance);
    status = larger_change(&f, direction, distance, &jointly);
    for (int row = 0; row < PARTS; row++)
        t->part[row] *= larger(1, fabs(jointly) / sqrt(variance));
    return status;
}

vtx_status transfer_fit(struct transfer *t, double distance)
{
    static const double typical[TERMS] = { 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1 };
    double workspace[ROWS_MAX * (2 * TERMS + 3)], start[ROWS_MAX];
    struct least_squares fit = { .residuals = residuals, .jacobian = slopes, .context = t, .rows = ROWS_MAX, .parameters = TERMS,
                                 .typical = typical, .held = t->held, .evaluations_max = 100, .workspace = workspace,
                                 .workspace_length = sizeof workspace / sizeof(double) };
    vtx_status status = residuals(fit.parameter, start, t);
    if (status == VTX_OK)
        status = fit_least_squares_to_corner(&fit, slope_at_kink);
    if (status != VTX_OK)
        return status;
    memcpy(t->z, fit.parameter, sizeof t->z);
    t->chi_square = larger(fit.sum_of_squares - 1, 0);
    t->freedom = t->read.count;
    for (int i = 0; i < TERMS; i++)
        t->freedom -= t->free[i] && !fit.frozen[i];
    status = quoted_at(t, t->z, &t->estimate, &t->advisories);
    return status == VTX_OK ? fill_budget(t, &fit, distance) : status;
}

/* Pressure and temperature that were read take the place of the stated ones; ahead of the gauge at the cooler nothing matters. */
static void put_readings_in(struct transfer *t)
{
    const int supply = at(VTX_READ_SUPPLY_PRESSURE), inlet = at(VTX_READ_INLET_PRESSURE), warm = at(VTX_READ_INLET_TEMPERATURE);
    vtx_supply *s = &t->tested.supply;
    if (t->read.given[supply])
        s->pressure = t->read.value[supply];
    if (t->read.given[inlet]) {
        s->humidity_pressure = s->humidity_pressure > 0 ? s->humidity_pressure : t->tested.elements > 0 ? s->pressure : 0;
        s->pressure = t->read.value[inlet];
        t->read.count -= t->read.given[supply] && t->tested.elements > 0;
        t->read.given[supply] = t->read.given[supply] && t->tested.elements == 0;
        t->tested.elements = 0;
    }
    if (t->read.given[warm])
        s->temperature = t->read.value[warm];
    /* The cold fraction may turn out anywhere. */
    step_input(&t->tested, VTX_INPUT_SETTING, 0);
}

/* Steps for what has no standard uncertainty of its own: about what the readings will leave. */
static void scale_terms(const vtx_input_uncertainty *u, const vtx_quotation *q, struct transfer *t)
{
    double stated[INPUTS];
    gather_input_uncertainties(&t->tested, u, stated);
    for (int i = 0; i < TERMS; i++) {
        const int32_t term = transfer_term[i];
        t->free[i] = 0;
        t->scale[i] = term == VTX_TERM_PRESSURE_EXPONENT ? q->pressure_exponent
            : term == VTX_TERM_BACK_PRESSURE             ? q->back_pressure
                                                         : stated[term - VTX_INPUT_SUPPLY_PRESSURE];
        const int pressure = t->read.given[at(VTX_READ_INLET_PRESSURE)] ? at(VTX_READ_INLET_PRESSURE) : at(VTX_READ_SUPPLY_PRESSURE);
        const int temperature = at(VTX_READ_INLET_TEMPERATURE);
        if (term == VTX_INPUT_SUPPLY_PRESSURE && t->read.given[pressure]) {
            t->free[i] = 1;
            t->scale[i] = t->read.uncertainty[pressure];
        } else if (term == VTX_INPUT_SUPPLY_TEMPERATURE && t->read.given[temperature]) {
            t->free[i] = 1;
            t->scale[i] = t->read.uncertainty[temperature];
        } else if (term == VTX_INPUT_RATED_FLOW && t->flow_read) {
            t->free[i] = 1;
            t->scale[i] = 0.1;
        } else if (term == VTX_INPUT_TUBE_EFFICIENCY && t->temperature_read) {
            t->free[i] = 1;
            t->scale[i] = 0.3 * t->tested.cooler.tube.peak_efficiency;
        }
        t->held[i] = !(t->scale[i] > 0);
    }
}

static int same_rating(const vtx_cooler *a, const vtx_cooler *b)
{
    return a->rated_free_air_flow == b->rated_free_air_flow && a->reference_pressure == b->reference_pressure
        && a->reference_temperature == b->reference_temperature && a->reference_humidity == b->reference_humidity
        && a->rated_pressure == b->rated_pressure && a->rated_temperature == b->rated_temperature
        && a->rated_cold_pressure == b->rated_cold_pressure && a->rated_hot_pressure == b->rated_hot_pressure
        && a->rated_cold_fraction == b->rated_cold_fraction && a->chamber_pressure_ratio == b->chamber_pressure_ratio;
}

vtx_status transfer_open(const vtx_job *tested, const vtx_service_readings *readings, const vtx_input_uncertainty *uncertainty,
                         const vtx_job *quoted, const vtx_quotation *quotation, struct transfer *t)
{
    t->tested = *tested;
    t->quoted = *quoted;
    t->quantity = quotation->quantity;
    memset(t->moved, 0, sizeof t->moved);
    vtx_status status = worse(gather_evidence(readings, &t->read), require(same_rating(&tested->cooler, &quoted->cooler)));
    if (status != VTX_OK)
        return status;
    t->flow_read = t->read.given[at(VTX_READ_INLET_FLOW)] || t->read.given[at(VTX_READ_COLD_FLOW)];
    t->temperature_read = t->read.given[at(VTX_READ_COLD_TEMPERATURE)] || t->read.given[at(VTX_READ_HOT_TEMPERATURE)];
    t->quoted.cooler.tube = tested->cooler.tube;
    t->quoted.cooler.inlet_area_factor = tested->cooler.inlet_area_factor;
    put_readings_in(t);
    scale_terms(uncertainty, quotation, t);
    return require(t->quantity == VTX_QUOTED_AIR_CONSUMPTION ? t->flow_read : t->temperature_read);
}
