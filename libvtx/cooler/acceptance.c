/* Pass or fail against a quotation. */
#include <vtx/acceptance.h>

#include "../base/decision_kernel.h"
#include "../base/propagation.h"
#include "contradiction.h"
#include "job_pass.h"
#include "transfer.h"

static int slot(int32_t number, int32_t first) { return (int)(number - first); }

vtx_status vtx_quotation_init(int32_t quantity, int32_t side, double value, vtx_quotation *quotation)
{
    if (!quotation || quantity < VTX_QUOTED_COLD_TEMPERATURE || quantity > VTX_QUOTED_AIR_CONSUMPTION || side < VTX_TOLERANCE_UPPER
        || side > VTX_TOLERANCE_INTERVAL || !is_finite(value)) {
        return POISON_STRUCT(quotation, vtx_quotation, quantity, VTX_BAD_ARGUMENT);
    }
    *quotation = (vtx_quotation){ .value = value, .consumer_risk = 0.05, .doubt = 0.25, .pressure_exponent = 0.1, .back_pressure = 1000,
                                  .quantity = quantity, .side = side };
    return VTX_OK;
}

static vtx_status check_quotation(const vtx_quotation *q)
{
    vtx_status status = require(q->quantity >= VTX_QUOTED_COLD_TEMPERATURE && q->quantity <= VTX_QUOTED_AIR_CONSUMPTION
                                && q->side >= VTX_TOLERANCE_UPPER && q->side <= VTX_TOLERANCE_INTERVAL);
    status = worse(status, require(are_zero(q->reserved, ARRAY_LENGTH(q->reserved))));
    status = worse(status, worse(check_range(q->value, -1e7, 1e7), check_amount(q->tolerance, 1e7)));
    status = worse(status, worse(check_consumer_risk(q->consumer_risk), q->doubt == 0 ? VTX_OK : check_positive(q->doubt, 0.01, 0.5)));
    status = worse(status, worse(check_amount(q->pressure_exponent, 0.5), check_amount(q->back_pressure, 1e5)));
    return worse(status, require(q->side != VTX_TOLERANCE_INTERVAL || q->tolerance > 0));
}

/* Distance to the nearest limit, above 0 on the right side. */
static double margin_of(const vtx_quotation *q, double estimate)
{
    const double above_lower = estimate - (q->value - q->tolerance), below_upper = q->value + q->tolerance - estimate;
    return q->side == VTX_TOLERANCE_UPPER ? below_upper : q->side == VTX_TOLERANCE_LOWER ? above_lower : smaller(above_lower, below_upper);
}

static double conformance_of(const vtx_quotation *q, double estimate, double uncertainty, double freedom)
{
    if (q->side == VTX_TOLERANCE_INTERVAL)
        return conformance_between(q->value - q->tolerance - estimate, q->value + q->tolerance - estimate, uncertainty, freedom);
    return error_probability(margin_of(q, estimate) / uncertainty, freedom);
}

static void sum_budget(const struct transfer *t, const vtx_quotation *q, vtx_acceptance *a)
{
    double freedom[PARTS], magnitude[PARTS], variance = 0;
    for (int i = 0; i < PARTS; i++) {
        freedom[i] = q->doubt > 0 ? 1 / (2 * square(q->doubt)) : 0; /* JCGM 100:2008, G.4.2 */
        magnitude[i] = fabs(t->part[i]);
        variance += square(magnitude[i]);
    }
    a->standard_uncertainty = sqrt(variance);
    a->degrees_of_freedom = effective_freedom(PARTS, magnitude, freedom);
}

static void copy_budget(const struct transfer *t, vtx_acceptance *a)
{
    double largest = -1, most = -1;
    for (int i = 0; i < READINGS; i++) {
        a->reading_contribution[i] = t->part[i];
        if (t->read.given[i] && fabs(t->part[i]) > largest) {
            largest = fabs(t->part[i]);
            a->improve = VTX_READ_SUPPLY_PRESSURE + i;
        }
    }
    for (int i = 0; i < INPUTS; i++)
        a->input_contribution[i] = 0;
    a->transfer_uncertainty = 0;
    for (int i = 0; i < TERMS; i++) {
        const int32_t term = transfer_term[i];
        const double part = t->part[READINGS + i];
        if (term == VTX_TERM_PRESSURE_EXPONENT)
            a->exponent_contribution = part;
        else if (term == VTX_TERM_BACK_PRESSURE)
            a->back_pressure_contribution = part;
        else
            a->input_contribution[slot(term, VTX_INPUT_SUPPLY_PRESSURE)] = part;
        if (term == VTX_TERM_PRESSURE_EXPONENT || term == VTX_INPUT_COLDEST_FRACTION)
            a->transfer_uncertainty = hypot(a->transfer_uncertainty, part);
        if (fabs(part) > most) {
            most = fabs(part);
            a->largest_term = term;
        }
    }
}

/* With one reading better and the others as they are. Weights shift to a better reading: this asks for no less than is needed. */
static double needed_uncertainty(const struct transfer *t, const vtx_acceptance *a)
{
    const int i = slot(a->improve, VTX_READ_SUPPLY_PRESSURE);
    const double rest = square(a->standard_uncertainty) - square(t->part[i]), allowed = square(a->deciding_uncertainty) - rest;
    if (!(allowed > 0) || !(fabs(t->part[i]) > 1e-9 * a->standard_uncertainty))
        return quiet_nan();
    return t->read.uncertainty[i] * sqrt(allowed) / fabs(t->part[i]);
}

static void decide(const struct transfer *t, const vtx_quotation *q, vtx_acceptance *a)
{
    sum_budget(t, q, a);
    copy_budget(t, a);
    const double factor = guard_factor(q->consumer_risk, a->degrees_of_freedom);
    a->estimate = t->estimate;
    a->guard_band = factor * a->standard_uncertainty;
    a->margin = margin_of(q, t->estimate);
    a->conformance_probability = conformance_of(q, t->estimate, a->standard_uncertainty, a->degrees_of_freedom);
    a->deciding_uncertainty = fabs(a->margin) / factor;
    a->needed_uncertainty = needed_uncertainty(t, a);
    a->chi_square = t->chi_square;
    a->chi_square_probability = t->freedom > 0 ? chi_square_exceedance(t->chi_square, t->freedom) : quiet_nan();
    a->verdict = verdict_of_margin(a->margin, a->guard_band);
    if (t->freedom > 0 && a->chi_square_probability < 0.01) {
        a->advisories |= VTX_ADVISORY_MODEL_MISFIT;
        a->verdict = VTX_VERDICT_NOT_DECIDABLE;
    }
    if (!is_finite(a->needed_uncertainty) || t->freedom <= 0)
        a->advisories |= VTX_ADVISORY_FIELD_UNAVAILABLE;
}

static vtx_status describe_fit(const struct transfer *t, vtx_acceptance *a)
{
    vtx_operating_point p;
    const vtx_job job = transfer_tested(t);
    const vtx_status status = job_pass(&job, &p, NULL);
    if (status != VTX_OK)
        return status;
    a->peak_efficiency = job.cooler.tube.peak_efficiency;
    a->inlet_area_factor = job.cooler.inlet_area_factor;
    a->cold_fraction = p.cold_fraction;
    const int flow_matters = t->quantity == VTX_QUOTED_CAPACITY || t->quantity == VTX_QUOTED_TARGET_CAPACITY;
    /* What these two say is in the budget. */
    a->advisories |= t->advisories & ~(VTX_ADVISORY_UNCALIBRATED | VTX_ADVISORY_EFFICIENCY_ASSUMED);
    a->advisories |= flow_matters && !t->flow_read ? VTX_ADVISORY_PARAMETER_HELD : 0;
    return VTX_OK;
}

/* Readings that break a law, with what was read in place of what was stated. */
static vtx_status look_at_laws(const struct transfer *t, const vtx_service_readings *readings, const vtx_input_uncertainty *uncertainty,
                               vtx_acceptance *a)
{
    vtx_diagnosis d;
    vtx_status status = find_contradiction(&t->tested, &t->read, &a->contradiction);
    a->wrong_reading = -1;
    a->readings = t->read.count;
    if (status != VTX_OK || a->contradiction == VTX_CONTRADICTION_NONE)
        return status;
    status = vtx_diagnose(&t->tested, uncertainty, readings, &d);
    a->contradiction = d.contradiction;
    a->wrong_reading = d.wrong_reading;
    return status;
}

static void refuse_to_decide(vtx_acceptance *a)
{
    const int32_t contradiction = a->contradiction, wrong_reading = a->wrong_reading, readings = a->readings;
    POISON_STRUCT(a, vtx_acceptance, verdict, VTX_OK);
    a->verdict = VTX_VERDICT_NOT_DECIDABLE;
    a->contradiction = contradiction;
    a->wrong_reading = a->improve = wrong_reading;
    a->readings = readings;
    a->largest_term = -1;
    a->advisories = VTX_ADVISORY_IMPOSSIBLE_READINGS | VTX_ADVISORY_FIELD_UNAVAILABLE;
    a->spare = 0;
}

static vtx_status accept(struct transfer *t, const vtx_service_readings *readings, const vtx_input_uncertainty *uncertainty, const vtx_quotation *q, vtx_acceptance *a)
{
    vtx_status status = look_at_laws(t, readings, uncertainty, a);
    if (status != VTX_OK)
        return status;
    if (a->contradiction != VTX_CONTRADICTION_NONE) {
        refuse_to_decide(a);
        return VTX_OK;
    }
    a->advisories = a->spare = 0;
    status = transfer_fit(t, guard_factor(q->consumer_risk, 0));
    if (status == VTX_OK)
        status = describe_fit(t, a);
    if (status == VTX_OK)
        decide(t, q, a);
    return status;
}

vtx_status vtx_accept(const vtx_job *tested, const vtx_service_readings *readings, const vtx_input_uncertainty *uncertainty,
                      const vtx_job *quoted, const vtx_quotation *quotation, vtx_acceptance *acceptance)
{
    struct transfer t;
    double steps[INPUTS];
    vtx_status status = worse(require(readings != NULL && uncertainty != NULL && quotation != NULL && acceptance != NULL),
                              worse(job_check(tested), job_check(quoted)));
    if (status == VTX_OK)
        status = worse(gather_input_uncertainties(tested, uncertainty, steps), check_quotation(quotation));
    if (status == VTX_OK)
        status = transfer_open(tested, readings, uncertainty, quoted, quotation, &t);
    if (status == VTX_OK)
        status = accept(&t, readings, uncertainty, quotation, acceptance);
    return status == VTX_OK ? VTX_OK : POISON_STRUCT(acceptance, vtx_acceptance, verdict, status);
}
