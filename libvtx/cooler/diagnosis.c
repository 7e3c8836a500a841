/* Single causes fitted to readings, ranked, and told apart. */
#include <vtx/diagnosis.h>

#include <vtx/process.h>

#include "../base/distribution.h"
#include "../base/root.h"
#include "fault.h"
#include "job_pass.h"

/* Two causes differ by less: one fits the other's readings in more than one of twenty cases (2 x 1.645). */
static const double distinguishable = 3.289707253902945;
static const double healthy_share = 0.95;

struct evidence {
    const vtx_job *healthy;
    double value[READINGS];
    double uncertainty[READINGS];
    int given[READINGS];
    int count;
    int32_t cause;
};

static int slot(int32_t number, int32_t first) { return (int)(number - first); }

static double chi_square_at(double size, void *context)
{
    const struct evidence *e = context;
    double predicted[READINGS], sum = 0;
    if (fault_readings(e->healthy, e->cause, size, predicted) != VTX_OK)
        return 1e12; /* no state of the cooler: never the best */
    for (int i = 0; i < READINGS; i++)
        if (e->given[i])
            sum += square((predicted[i] - e->value[i]) / e->uncertainty[i]);
    return sum;
}

/* Size with the least chi-square. */
static vtx_status fit_size(struct evidence *e, int32_t cause, double *size, double *chi_square)
{
    const struct fault_range range = fault_sizes(cause);
    e->cause = cause;
    *size = 0;
    if (cause != VTX_CAUSE_NOTHING) {
        const vtx_status status = find_minimum(chi_square_at, e, range.low, range.high, 1e-7 * (range.high - range.low), size);
        if (status != VTX_OK)
            return status;
    }
    *chi_square = chi_square_at(*size, e);
    return VTX_OK;
}

/* Standard uncertainty by the readings' sensitivity to the size; NaN when they do not see it. */
static double size_uncertainty(const struct evidence *e, int32_t cause, double size)
{
    const struct fault_range range = fault_sizes(cause);
    const double step = 1e-4 * (range.high - range.low);
    const double low = larger(size - step, range.low), high = smaller(size + step, range.high);
    double below[READINGS], above[READINGS], information = 0;
    if (!(high > low) || fault_readings(e->healthy, cause, low, below) != VTX_OK || fault_readings(e->healthy, cause, high, above) != VTX_OK)
        return quiet_nan();
    for (int i = 0; i < READINGS; i++)
        if (e->given[i])
            information += square((above[i] - below[i]) / ((high - low) * e->uncertainty[i]));
    return information > 0 ? 1 / sqrt(information) : quiet_nan();
}

/* chi-square value that a share of healthy coolers does not exceed, by bisection of the exceedance. */
static double chi_square_limit(int freedom)
{
    double low = 0, high = 200;
    for (int i = 0; i < 60; i++) {
        const double middle = 0.5 * (low + high);
        if (chi_square_exceedance(middle, freedom) > 1 - healthy_share)
            low = middle;
        else
            high = middle;
    }
    return high;
}

static void put_in_order(const struct evidence *e, vtx_diagnosis *d)
{
    const int healthy = d->chi_square[0] <= chi_square_limit(e->count);
    for (int i = 0; i < CAUSES; i++)
        d->order[i] = VTX_CAUSE_NOTHING + i;
    for (int i = 1; i < CAUSES; i++)
        for (int k = i; k > 0; k--) {
            const int here = slot(d->order[k], VTX_CAUSE_NOTHING), before = slot(d->order[k - 1], VTX_CAUSE_NOTHING);
            const double x = is_finite(d->chi_square[here]) ? d->chi_square[here] : DBL_MAX;
            const double y = is_finite(d->chi_square[before]) ? d->chi_square[before] : DBL_MAX;
            const int forward = healthy && here == 0 ? 1 : healthy && before == 0 ? 0 : x < y;
            if (!forward)
                break;
            const int32_t moved = d->order[k];
            d->order[k] = d->order[k - 1];
            d->order[k - 1] = moved;
        }
}

/* How far every other cause is from imitating the leading one, without noise. */
static vtx_status separate_from_leader(const struct evidence *e, vtx_diagnosis *d)
{
    struct evidence imitation = *e;
    const int leader = slot(d->order[0], VTX_CAUSE_NOTHING);
    double least = DBL_MAX, size, chi_square;
    vtx_status status = fault_readings(e->healthy, d->order[0], d->size[leader], imitation.value);
    d->partner = VTX_CAUSE_NOTHING;
    d->partners = 0;
    for (int i = 0; i < CAUSES && status == VTX_OK; i++) {
        d->separation[i] = i == leader ? 0 : quiet_nan();
        if (i == leader || !is_finite(d->chi_square[i]))
            continue;
        status = fit_size(&imitation, VTX_CAUSE_NOTHING + i, &size, &chi_square);
        d->separation[i] = sqrt(chi_square);
        if (leader != 0 && i != 0 && d->separation[i] < distinguishable) {
            d->partners++;
            if (d->chi_square[i] < least) {
                least = d->chi_square[i];
                d->partner = VTX_CAUSE_NOTHING + i;
            }
        }
    }
    return status;
}

/* Instruments for readings not yet taken: 1 % of the predicted value, 0.5 K. */
static double ordinary_uncertainty(int reading, double predicted)
{
    const int32_t number = VTX_READ_SUPPLY_PRESSURE + reading;
    const int temperature = number == VTX_READ_INLET_TEMPERATURE || number == VTX_READ_COLD_TEMPERATURE || number == VTX_READ_HOT_TEMPERATURE;
    return temperature ? 0.5 : 0.01 * predicted;
}

static vtx_status choose_next(const struct evidence *e, vtx_diagnosis *d)
{
    double first[READINGS], second[READINGS];
    d->next_reading = -1;
    d->next_separation = quiet_nan();
    if (d->order[0] == VTX_CAUSE_NOTHING)
        return VTX_OK;
    const int32_t rival = d->order[1] == VTX_CAUSE_NOTHING ? d->order[2] : d->order[1];
    vtx_status status = fault_readings(e->healthy, d->order[0], d->size[slot(d->order[0], VTX_CAUSE_NOTHING)], first);
    if (status == VTX_OK)
        status = fault_readings(e->healthy, rival, d->size[slot(rival, VTX_CAUSE_NOTHING)], second);
    for (int i = 0; i < READINGS && status == VTX_OK; i++) {
        const double apart = fabs(first[i] - second[i]) / ordinary_uncertainty(i, first[i]);
        if (!e->given[i] && (d->next_reading < 0 || apart > d->next_separation)) {
            d->next_reading = VTX_READ_SUPPLY_PRESSURE + i;
            d->next_separation = apart;
        }
    }
    return status;
}

/* The reading among these that lies farthest from the healthy cooler, in its own uncertainty. */
static int32_t most_suspect(const struct evidence *e, const double healthy[READINGS], const int32_t *among, int count)
{
    int32_t worst = among[0];
    double most = -1;
    for (int i = 0; i < count; i++) {
        const int k = slot(among[i], VTX_READ_SUPPLY_PRESSURE);
        const double off = e->given[k] ? fabs(healthy[k] - e->value[k]) / e->uncertainty[k] : -1;
        if (off > most) {
            most = off;
            worst = among[i];
        }
    }
    return worst;
}

static int at(int32_t reading) { return slot(reading, VTX_READ_SUPPLY_PRESSURE); }

/* Three standard deviations beyond what a law allows. */
static int exceeds(double excess, double variance) { return excess > 3 * sqrt(variance); }

static int32_t contradiction_of(const struct evidence *e, const vtx_operating_point *p, double throttled, double reversible)
{
    const double *v = e->value, *u = e->uncertainty;
    const int t0 = at(VTX_READ_INLET_TEMPERATURE), tc = at(VTX_READ_COLD_TEMPERATURE), th = at(VTX_READ_HOT_TEMPERATURE);
    const int m = at(VTX_READ_INLET_FLOW), mc = at(VTX_READ_COLD_FLOW);
    const int temperatures = e->given[t0] && e->given[tc] && e->given[th];
    if (e->given[m] && e->given[mc] && exceeds(v[mc] - v[m], square(u[m]) + square(u[mc])))
        return VTX_CONTRADICTION_FLOWS;
    if (e->given[t0] && e->given[tc]
        && exceeds(v[t0] - (p->inlet_temperature - reversible) - v[tc], square(u[t0]) + square(u[tc])))
        return VTX_CONTRADICTION_ENTROPY;
    if (temperatures && exceeds(v[t0] - (p->inlet_temperature - throttled) - larger(v[tc], v[th]), square(u[t0]) + square(u[th])))
        return VTX_CONTRADICTION_BOTH_COLDER;
    if (temperatures && e->given[m] && e->given[mc] && v[th] - v[tc] > 3 * (u[th] + u[tc])) {
        /* Balance of a perfect gas with the throttle's drop: mu = (Th - T0 + dJT)/(Th - Tc), with its uncertainty. */
        const double drop = p->inlet_temperature - throttled, span = v[th] - v[tc];
        const double by_heat = (v[th] - v[t0] + drop) / span, by_flow = v[mc] / v[m];
        const double variance = square(by_flow) * (square(u[m] / v[m]) + square(u[mc] / v[mc]))
            + (square(u[t0]) + square((1 - by_heat) * u[th]) + square(by_heat * u[tc])) / square(span) + square(0.01);
        if (exceeds(fabs(by_heat - by_flow), variance))
            return VTX_CONTRADICTION_COLD_FRACTION;
    }
    return VTX_CONTRADICTION_NONE;
}

static vtx_status check_laws(const struct evidence *e, vtx_diagnosis *d)
{
    static const int32_t flows[] = { VTX_READ_INLET_FLOW, VTX_READ_COLD_FLOW };
    static const int32_t temperatures[] = { VTX_READ_INLET_TEMPERATURE, VTX_READ_COLD_TEMPERATURE, VTX_READ_HOT_TEMPERATURE };
    static const int32_t all[] = { VTX_READ_INLET_TEMPERATURE, VTX_READ_COLD_TEMPERATURE, VTX_READ_HOT_TEMPERATURE, VTX_READ_INLET_FLOW,
                                   VTX_READ_COLD_FLOW };
    vtx_operating_point p;
    double healthy[READINGS], throttled, reversible;
    vtx_status status = job_pass(e->healthy, &p, NULL);
    if (status == VTX_OK)
        status = fault_readings(e->healthy, VTX_CAUSE_NOTHING, 0, healthy);
    if (status == VTX_OK)
        status = vtx_expansion_throttle(e->healthy->setting.model, p.inlet_pressure, p.inlet_temperature, p.humidity_ratio, p.cold_pressure,
                                        &throttled);
    if (status == VTX_OK)
        status = vtx_expansion_isentropic(e->healthy->setting.model, p.inlet_pressure, p.inlet_temperature, p.humidity_ratio,
                                          p.cold_pressure, &reversible);
    if (status != VTX_OK)
        return status;
    d->contradiction = contradiction_of(e, &p, throttled, reversible);
    d->wrong_reading = -1;
    if (d->contradiction == VTX_CONTRADICTION_NONE)
        return VTX_OK;
    d->advisories |= VTX_ADVISORY_IMPOSSIBLE_READINGS;
    if (d->contradiction == VTX_CONTRADICTION_FLOWS)
        d->wrong_reading = most_suspect(e, healthy, flows, 2);
    else if (d->contradiction == VTX_CONTRADICTION_COLD_FRACTION)
        d->wrong_reading = most_suspect(e, healthy, all, 5);
    else
        d->wrong_reading = most_suspect(e, healthy, temperatures, 3);
    return VTX_OK;
}

static vtx_status diagnose(struct evidence *e, vtx_diagnosis *d)
{
    vtx_status status = VTX_OK;
    d->advisories = 0;
    d->readings = e->count;
    for (int i = 0; i < CAUSES; i++) {
        const int32_t cause = VTX_CAUSE_NOTHING + i;
        d->size[i] = d->size_uncertainty[i] = d->chi_square[i] = d->probability[i] = d->separation[i] = quiet_nan();
        if (!fault_possible(e->healthy, cause))
            continue;
        status = fit_size(e, cause, &d->size[i], &d->chi_square[i]);
        if (status != VTX_OK)
            return status;
        const int freedom = e->count - (i > 0);
        d->size_uncertainty[i] = i == 0 ? 0 : size_uncertainty(e, cause, d->size[i]);
        d->probability[i] = freedom > 0 ? chi_square_exceedance(d->chi_square[i], freedom) : quiet_nan();
    }
    put_in_order(e, d);
    status = separate_from_leader(e, d);
    if (status == VTX_OK)
        status = choose_next(e, d);
    if (status == VTX_OK)
        status = check_laws(e, d);
    if (d->partners > 0)
        d->advisories |= VTX_ADVISORY_INDISTINGUISHABLE;
    const double leading = d->probability[slot(d->order[0], VTX_CAUSE_NOTHING)];
    if (is_finite(leading) && leading < 0.01)
        d->advisories |= VTX_ADVISORY_MODEL_MISFIT;
    for (int i = 0; i < CAUSES; i++)
        if (!is_finite(d->size[i]) || !is_finite(d->size_uncertainty[i]))
            d->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
    return status;
}

vtx_status vtx_service_readings_init(vtx_service_readings *r)
{
    static const double ordinary[READINGS] = { 7e3, 7e3, 0.5, 0.5, 0.5, 1e-4, 1e-4, 7e3 };
    if (!r)
        return VTX_BAD_ARGUMENT;
    memset(r, 0, sizeof *r);
    for (int i = 0; i < READINGS; i++) {
        r->value[i] = quiet_nan();
        r->uncertainty[i] = ordinary[i];
    }
    return VTX_OK;
}

vtx_status vtx_predict_readings(const vtx_job *job, int32_t cause, double size, vtx_service_readings *readings)
{
    vtx_job healthy;
    vtx_service_readings found;
    vtx_status status = worse(require(readings != NULL && cause >= VTX_CAUSE_NOTHING && cause <= VTX_CAUSE_WRONG_GAUGE),
                              worse(check_range(size, -0.98, 60), job_check(job)));
    if (status == VTX_OK)
        status = worse(check_range(size, fault_sizes(cause).low, fault_sizes(cause).high), fault_possible(job, cause) ? VTX_OK : VTX_OUT_OF_RANGE);
    if (status == VTX_OK)
        status = fault_open(job, &healthy);
    if (status == VTX_OK)
        status = vtx_service_readings_init(&found);
    if (status == VTX_OK)
        status = fault_readings(&healthy, cause, size, found.value);
    if (status != VTX_OK)
        return poison_record(readings, sizeof found / sizeof(double), 0, status);
    *readings = found;
    return VTX_OK;
}

static vtx_status gather(const vtx_service_readings *r, struct evidence *e)
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
    return require(e->count >= 2);
}

vtx_status vtx_diagnose(const vtx_job *job, const vtx_service_readings *readings, vtx_diagnosis *diagnosis)
{
    vtx_job healthy;
    struct evidence e = { .healthy = &healthy };
    vtx_status status = worse(require(readings != NULL && diagnosis != NULL), job_check(job));
    if (status == VTX_OK)
        status = gather(readings, &e);
    if (status == VTX_OK)
        status = fault_open(job, &healthy);
    if (status == VTX_OK)
        status = diagnose(&e, diagnosis);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(diagnosis, vtx_diagnosis, order, status);
}
