/* Whatever is wrong with the cooler counts as its performance. */
#include "service_acceptance.h"

#include <math.h>

#include "diagnose_words.h"
#include "report.h"

static vtx_status accept(const struct service_case *c, const struct findings *f, vtx_acceptance *a)
{
    const vtx_input_uncertainty u = findings_description(c, f);
    return vtx_accept(&c->stated, &c->readings, &u, &c->quotation.job, &c->quotation.quotation, a);
}

static const char *quantity_name(int32_t quantity)
{
    switch (quantity) {
    case VTX_QUOTED_COLD_TEMPERATURE: return "cold outlet";
    case VTX_QUOTED_TEMPERATURE_DROP: return "temperature drop";
    case VTX_QUOTED_HOT_TEMPERATURE: return "hot outlet";
    case VTX_QUOTED_CAPACITY: return "cooling against the inlet";
    case VTX_QUOTED_TARGET_CAPACITY: return "cooling at target";
    default: return "air consumption";
    }
}

static int is_temperature(int32_t quantity) { return quantity == VTX_QUOTED_COLD_TEMPERATURE || quantity == VTX_QUOTED_HOT_TEMPERATURE; }

/* A difference of the quantity. */
static const char *difference_of(int32_t quantity, double difference)
{
    return is_temperature(quantity) || quantity == VTX_QUOTED_TEMPERATURE_DROP ? report_difference(difference)
        : quantity == VTX_QUOTED_AIR_CONSUMPTION                               ? report_flow(difference)
                                                                               : report_power(difference);
}

static const char *amount_of(int32_t quantity, double amount)
{
    return is_temperature(quantity) ? report_temperature(amount) : difference_of(quantity, amount);
}

static void print_promise(const struct service_case *c)
{
    const vtx_quotation *q = &c->quotation.quotation;
    const vtx_job *j = &c->quotation.job;
    printf("\nACCEPTANCE (quoted: %s of %s %s", quantity_name(q->quantity), q->side == VTX_TOLERANCE_UPPER ? "at most" : "at least",
           amount_of(q->quantity, q->value));
    if (q->tolerance > 0)
        printf(", tolerance %s", difference_of(q->quantity, q->tolerance));
    printf(",\n  at %s, %s, cold fraction %.2f)\n", report_gauge(j->supply.pressure, j->site.pressure), report_temperature(j->supply.temperature),
           j->setting.cold_fraction);
}

static void print_impossible(const vtx_acceptance *a)
{
    if (a->advisories & VTX_ADVISORY_IMPOSSIBLE_READINGS)
        printf("  verdict           NONE: %s; most likely wrong is the %s\n", words_contradiction(a->contradiction),
               words_reading(a->wrong_reading));
    else
        printf("  verdict           NONE: the readings contradict each other more than their instruments explain; read again\n");
}

static void print_what_would_decide(const struct service_case *c, const vtx_acceptance *a)
{
    const double reading = c->readings.uncertainty[reading_place(a->improve)];
    printf("  what would decide the result's uncertainty at %.0f %% of what it is\n", 100 * a->deciding_uncertainty / a->standard_uncertainty);
    if (isfinite(a->needed_uncertainty))
        printf("                    for that, the %s's at %.0f %% of what it is: a better instrument, all else as it is\n", words_reading(a->improve),
               100 * a->needed_uncertainty / reading);
    else
        printf("                    no better instrument alone gets there: test nearer to the quoted state; besides the readings, most\n"
               "                    comes from %s\n",
               words_input(a->largest_term));
}

static void print_verdict(const struct service_case *c, const vtx_acceptance *a)
{
    const vtx_quotation *q = &c->quotation.quotation;
    printf("  found             %s, standard uncertainty %s, carried from the readings to the quoted state\n", amount_of(q->quantity, a->estimate),
           difference_of(q->quantity, a->standard_uncertainty));
    printf("  guard band        %s for a risk of %.0f %%: the result must clear the limit by that much, either way\n",
           difference_of(q->quantity, a->guard_band), 100 * q->consumer_risk);
    printf("  verdict           ");
    if (a->verdict == VTX_VERDICT_PASS)
        printf("PASS: on the right side of the limit by %s\n", difference_of(q->quantity, a->margin));
    else if (a->verdict == VTX_VERDICT_FAIL)
        printf("FAIL: on the wrong side of the limit by %s\n", difference_of(q->quantity, -a->margin));
    else
        printf("NOT DECIDABLE with these instruments; the chance that it conforms is %.0f %%\n", 100 * a->conformance_probability);
    if (a->verdict == VTX_VERDICT_NOT_DECIDABLE)
        print_what_would_decide(c, a);
    if (a->advisories & VTX_ADVISORY_PARAMETER_HELD)
        printf("  note              no flow was read: the result rests on the data sheet's air flow\n");
}

void acceptance_report(const struct service_case *c, const struct findings *f)
{
    vtx_acceptance a;
    if (!c->quotation.is_stated)
        return;
    print_promise(c);
    const vtx_status status = accept(c, f, &a);
    if (status != VTX_OK)
        printf("  verdict           NONE: %s\n",
               status == VTX_BAD_ARGUMENT ? "nothing was read that bears on it" : vtx_status_text(status));
    else if (!isfinite(a.estimate) || (a.advisories & VTX_ADVISORY_MODEL_MISFIT))
        print_impossible(&a);
    else
        print_verdict(c, &a);
}

void acceptance_json(struct json *j, const struct service_case *c, const struct findings *f)
{
    vtx_acceptance a;
    if (!c->quotation.is_stated)
        return;
    const vtx_quotation *q = &c->quotation.quotation;
    const vtx_status status = accept(c, f, &a);
    json_open(j, "acceptance", '{');
    json_integer(j, "quantity", q->quantity);
    json_number(j, "quoted", q->value);
    json_number(j, "tolerance", q->tolerance);
    json_integer(j, "status", status);
    json_integer(j, "verdict", a.verdict);
    json_number(j, "estimate", a.estimate);
    json_number(j, "standard_uncertainty", a.standard_uncertainty);
    json_number(j, "guard_band", a.guard_band);
    json_number(j, "margin", a.margin);
    json_number(j, "conformance_probability", a.conformance_probability);
    json_number(j, "deciding_standard_uncertainty", a.deciding_uncertainty);
    json_integer(j, "improve", a.improve);
    json_number(j, "needed_standard_uncertainty", a.needed_uncertainty);
    json_integer(j, "advisories", a.advisories);
    json_close(j, '}');
}
