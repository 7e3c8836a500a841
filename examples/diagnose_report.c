/* Plain words first, numbers behind them. */
#include "diagnose_report.h"

#include <math.h>

#include "diagnose_sizes.h"
#include "diagnose_values.h"
#include "diagnose_words.h"
#include "report.h"

enum { TEXT = 160 };

static void print_air_of_the_day(const struct service_case *c)
{
    if (c->warmer_supply < 0 || c->warmer_supply > 0)
        printf("  air of the day    %s %s than described: the healthy cooler is reckoned with that\n", report_difference(fabs(c->warmer_supply)),
               c->warmer_supply < 0 ? "colder" : "warmer");
    if (c->higher_supply < 0 || c->higher_supply > 0)
        printf("  air of the day    supply %s %s than described: the healthy cooler is reckoned with that\n",
               report_pressure_drop(fabs(c->higher_supply)), c->higher_supply < 0 ? "lower" : "higher");
}

static void print_baseline(const struct service_case *c)
{
    const vtx_wear *w = &c->baseline.wear;
    if (!c->baseline.is_stated)
        return;
    printf("  when new          ");
    if (isfinite(w->peak_efficiency))
        printf("its tube's efficiency was %.3f (+- %.3f at 95 %%); ", w->peak_efficiency, 1.96 * w->peak_efficiency_uncertainty);
    if (isfinite(w->inlet_area_factor))
        printf("its nozzle had %.3f times the rated area (+- %.3f)", w->inlet_area_factor, 1.96 * w->inlet_area_factor_uncertainty);
    printf("\n");
}

void report_case(const struct service_case *c, const struct findings *f)
{
    const vtx_operating_point *p = &f->healthy_point;
    printf("THE CASE (%s)\n", c->file);
    printf("  work              %s\n", c->spot.work);
    printf("  complaint         %s\n", c->complaint);
    printf("  cooler            %s, hot valve at %.2f times its rated opening: cold fraction %.2f when all is well\n", c->spot.names[c->chosen],
           p->valve_opening, p->cold_fraction);
    printf("  healthy           inlet %s, cold outlet %s, hot outlet %s, %s of free air\n", report_gauge(p->inlet_pressure, c->job.site.pressure),
           report_temperature(p->cold_temperature), report_temperature(p->hot_temperature), report_flow(p->free_air_flow));
    print_air_of_the_day(c);
    print_baseline(c);
    if (p->advisories & VTX_ADVISORY_UNCALIBRATED)
        printf("  BEWARE            this tube was never measured while healthy: healthy, its cold outlet may be anywhere from %s to %s.\n"
               "                    Temperatures then tell little. Readings of its good days in [when new] sharpen them.\n",
               report_temperature(p->cold_temperature_low), report_temperature(p->cold_temperature_high));
}

static void print_contradiction(const struct findings *f)
{
    if (f->contradiction == VTX_CONTRADICTION_NONE)
        return;
    printf("\nIMPOSSIBLE READINGS: %s.\n", words_contradiction(f->contradiction));
    printf("  Most likely wrong is the %s. Read it again before anything else: %s.\n", words_reading(f->wrong_reading),
           words_how_to_read(f->wrong_reading));
    if (f->set_aside >= 0)
        printf("  What follows leaves it out, and holds only if it is indeed the wrong one.\n");
    else
        printf("  Nothing that follows can be relied on.\n");
}

/* The leading cause and those that the readings cannot tell from it, each with its size. */
static void print_candidates(const struct service_case *c, const struct findings *f)
{
    int32_t partners[12];
    char size[TEXT];
    const int count = findings_partners(&f->causes, partners);
    sizes_text(c, f, findings_leader(f), size, sizeof size);
    if (count == 0) {
        printf("most likely %s.\n  How much: %s.\n", words_cause(findings_leader(f)), size);
        return;
    }
    printf("one of these, which the readings cannot tell apart:\n  - %s: %s\n", words_cause(findings_leader(f)), size);
    for (int i = 0; i < count; i++) {
        sizes_text(c, f, partners[i], size, sizeof size);
        printf("  - %s: %s\n", words_cause(partners[i]), size);
    }
}

/* The filter's own gauge is none of the library's readings: it decides where a loaded filter is among what may be.
 * 1 for the filter, -1 against it, 0 where it has nothing to say. */
int report_filter_gauge_says(const struct service_case *c, const struct findings *f, double *clean)
{
    const struct service_history *h = &c->history;
    const double flow = c->readings.value[reading_place(VTX_READ_INLET_FLOW)];
    double density;
    if (!findings_candidate(f, VTX_CAUSE_LOADED_FILTER) || isnan(h->drop_today)
        || vtx_air_density(c->job.supply.pressure, c->job.supply.temperature, &density) != VTX_OK
        || vtx_filter_drop(&h->filter, density, c->job.running * (isnan(flow) ? f->healthy_point.mass_flow : flow), 1, clean) != VTX_OK)
        return 0;
    return h->drop_today - *clean > 3 * h->drop_uncertainty ? 1 : -1;
}

static void print_filter_gauge(const struct service_case *c, const struct findings *f)
{
    double clean;
    const int says = report_filter_gauge_says(c, f, &clean);
    if (says)
        printf("  It is %sthe filter: its own gauge shows %s where a clean element would show %s.\n", says > 0 ? "" : "not ",
               report_pressure_drop(c->history.drop_today), report_pressure_drop(clean));
}

void report_verdict(const struct service_case *c, const struct findings *f)
{
    char size[TEXT];
    print_contradiction(f);
    printf("\nVERDICT: ");
    if (findings_leader(f) == VTX_CAUSE_NOTHING) {
        printf(findings_misfit(f) ? "the readings are not those of the healthy cooler, yet no single cause explains them any better:\n"
                              "  two faults at once, a wrong reading, or a description that does not fit this cooler.\n"
                            : "nothing is wrong with the cooler that these readings could show.\n");
    } else if (findings_misfit(f)) {
        sizes_text(c, f, findings_leader(f), size, sizeof size);
        printf("something is wrong, but no single cause explains the readings: two faults at once, or a wrong reading.\n"
               "  The nearest single cause: %s, %s.\n",
               words_cause(findings_leader(f)), size);
    } else {
        print_candidates(c, f);
        print_filter_gauge(c, f);
    }
}
