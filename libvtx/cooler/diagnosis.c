/* Single causes ranked, and told apart. */
#include <vtx/diagnosis.h>

#include "../base/distribution.h"
#include "contradiction.h"
#include "job_pass.h"
#include "signature.h"

/* Of a hundred healthy coolers, this many at most are called faulty. */
static const double false_alarms = 0.05;

static int slot(int32_t cause) { return (int)(cause - VTX_CAUSE_NOTHING); }

/* chi-square value that is exceeded with the probability, by bisection. */
static double chi_square_limit(double exceedance, int freedom)
{
    double low = 0, high = 200;
    for (int i = 0; i < 60; i++) {
        const double middle = 0.5 * (low + high);
        if (chi_square_exceedance(middle, freedom) > exceedance)
            low = middle;
        else
            high = middle;
    }
    return high;
}

/* By how much a cause must lessen chi-square before it is believed. Each cause is a one-sided test of its own, a cause that can go
 * either way two: their chances of a false alarm add up to no more than the allowed one (Bonferroni). No cause can explain more
 * than all of chi-square, whose own limit is lower when there are few readings. */
static double least_evidence(const struct causes *c, const vtx_diagnosis *d, int readings)
{
    int tests = 0;
    for (int i = 1; i < CAUSES; i++)
        if (c->possible[i] && is_finite(d->size_uncertainty[i]))
            tests += fault_sizes(VTX_CAUSE_NOTHING + i).low < 0 ? 2 : 1;
    const double all = chi_square_limit(false_alarms, readings);
    return tests > 0 ? smaller(all, square(normal_quantile(1 - false_alarms / tests))) : all;
}

static int comes_first(const vtx_diagnosis *d, int here, int before, int healthy)
{
    if (healthy && (here == 0 || before == 0))
        return here == 0;
    const double x = is_finite(d->chi_square[here]) ? d->chi_square[here] : DBL_MAX;
    const double y = is_finite(d->chi_square[before]) ? d->chi_square[before] : DBL_MAX;
    return x < y;
}

static void put_in_order(double evidence_needed, vtx_diagnosis *d)
{
    double least = d->chi_square[0];
    for (int i = 1; i < CAUSES; i++)
        least = is_finite(d->chi_square[i]) ? smaller(d->chi_square[i], least) : least;
    const int healthy = d->chi_square[0] - least <= evidence_needed;
    for (int i = 0; i < CAUSES; i++) {
        int k = i;
        for (; k > 0 && comes_first(d, i, slot(d->order[k - 1]), healthy); k--)
            d->order[k] = d->order[k - 1];
        d->order[k] = VTX_CAUSE_NOTHING + i;
    }
}

/* A size that the cause can have. */
static double physical_size(const vtx_diagnosis *d, int32_t cause) { return larger(d->size[slot(cause)], fault_sizes(cause).low); }

/* How far every other cause is from imitating the leading one, without noise. */
static vtx_status separate_from_leader(const struct causes *c, const struct evidence *e, vtx_diagnosis *d)
{
    struct evidence imitation = *e;
    const int leader = slot(d->order[0]);
    double least = DBL_MAX;
    vtx_status status = signature_at(&c->signature[leader], physical_size(d, d->order[0]), imitation.value);
    d->partner = VTX_CAUSE_NOTHING;
    d->partners = 0;
    for (int i = 0; i < CAUSES && status == VTX_OK; i++) {
        struct fitted_size fit;
        d->separation[i] = i == leader ? 0 : quiet_nan();
        if (i == leader || !c->possible[i])
            continue;
        status = signature_fit(&c->signature[i], &imitation, &fit);
        d->separation[i] = sqrt(fit.chi_square);
        /* Nearer than this one fits the other's readings better in more than one of twenty cases. */
        if (leader != 0 && i != 0 && d->separation[i] < 2 * normal_one_sided_95) {
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

static vtx_status choose_next(const struct causes *c, const struct evidence *e, vtx_diagnosis *d)
{
    double first[READINGS], second[READINGS];
    d->next_reading = -1;
    d->next_separation = quiet_nan();
    for (int i = 0; i < READINGS; i++)
        d->reading_separation[i] = quiet_nan();
    if (d->order[0] == VTX_CAUSE_NOTHING)
        return VTX_OK;
    const int32_t rival = d->order[1] == VTX_CAUSE_NOTHING ? d->order[2] : d->order[1];
    vtx_status status = signature_at(&c->signature[slot(d->order[0])], physical_size(d, d->order[0]), first);
    if (status == VTX_OK)
        status = signature_at(&c->signature[slot(rival)], physical_size(d, rival), second);
    for (int i = 0; i < READINGS && status == VTX_OK; i++) {
        if (e->given[i] || e->barred[i])
            continue;
        d->reading_separation[i] = fabs(first[i] - second[i]) / ordinary_uncertainty(i, first[i]);
        if (d->next_reading < 0 || d->reading_separation[i] > d->next_separation) {
            d->next_reading = VTX_READ_SUPPLY_PRESSURE + i;
            d->next_separation = d->reading_separation[i];
        }
    }
    return status;
}

static vtx_status fit_causes(const struct causes *c, const struct evidence *e, vtx_diagnosis *d)
{
    for (int i = 0; i < CAUSES; i++) {
        struct fitted_size fit;
        d->size[i] = d->size_uncertainty[i] = d->chi_square[i] = d->probability[i] = d->separation[i] = quiet_nan();
        if (!c->possible[i])
            continue;
        const vtx_status status = signature_fit(&c->signature[i], e, &fit);
        if (status != VTX_OK)
            return status;
        const int freedom = e->count - (i > 0);
        d->size[i] = fit.size;
        d->chi_square[i] = fit.chi_square;
        d->size_uncertainty[i] = i == 0 ? 0 : signature_uncertainty(&c->signature[i], e, fit.size);
        d->probability[i] = freedom > 0 ? chi_square_exceedance(fit.chi_square, freedom) : quiet_nan();
    }
    return VTX_OK;
}

static vtx_status diagnose(const vtx_job *healthy, const struct evidence *e, vtx_diagnosis *d)
{
    struct causes c;
    vtx_status status = causes_make(healthy, &c);
    d->advisories = 0;
    d->readings = e->count;
    if (status == VTX_OK)
        status = fit_causes(&c, e, d);
    if (status != VTX_OK)
        return status;
    put_in_order(least_evidence(&c, d, e->count), d);
    status = separate_from_leader(&c, e, d);
    if (status == VTX_OK)
        status = choose_next(&c, e, d);
    if (d->partners > 0)
        d->advisories |= VTX_ADVISORY_INDISTINGUISHABLE;
    const double leading = d->probability[slot(d->order[0])];
    if (is_finite(leading) && leading < 0.01)
        d->advisories |= VTX_ADVISORY_MODEL_MISFIT;
    if (status == VTX_OK)
        status = check_laws(&c, e, d);
    for (int i = 0; i < CAUSES; i++)
        if (!is_finite(d->size[i]) || !is_finite(d->size_uncertainty[i]) || !is_finite(d->probability[i]) || !is_finite(d->next_separation))
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
    for (int i = 0; i < READINGS; i++)
        found.uncertainty[i] = ordinary_uncertainty(i, found.value[i]);
    *readings = found;
    return VTX_OK;
}

vtx_status vtx_diagnose(const vtx_job *job, const vtx_input_uncertainty *uncertainty, const vtx_service_readings *readings,
                        vtx_diagnosis *diagnosis)
{
    vtx_job healthy;
    struct evidence e;
    vtx_status status = worse(require(uncertainty != NULL && readings != NULL && diagnosis != NULL), job_check(job));
    if (status == VTX_OK)
        status = gather_evidence(readings, &e);
    if (status == VTX_OK)
        status = require(e.count >= 2);
    if (status == VTX_OK)
        status = evidence_doubt_inputs(job, uncertainty, &e);
    if (status == VTX_OK)
        status = fault_open(job, &healthy);
    if (status == VTX_OK)
        status = diagnose(&healthy, &e, diagnosis);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(diagnosis, vtx_diagnosis, order, status);
}
