/* Plain words first, numbers behind them. */
#include "diagnose_report.h"

#include <math.h>

#include "diagnose_sizes.h"
#include "diagnose_values.h"
#include "diagnose_words.h"
#include "report.h"

enum { TEXT = 160 };

static int32_t leader_of(const struct findings *f) { return f->causes.order[0]; }

static double probability_of(const struct findings *f, int32_t cause) { return f->causes.probability[cause_place(cause)]; }

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
    printf("  Most likely wrong is the %s. Read it again before anything else: %s.\n", words_reading(f->laws.wrong_reading),
           words_how_to_read(f->laws.wrong_reading));
    if (f->set_aside >= 0)
        printf("  What follows leaves it out, and holds only if it is indeed the wrong one.\n");
    else
        printf("  Nothing that follows can be relied on.\n");
}

static void print_partners(const struct findings *f)
{
    int32_t partners[12];
    const int count = findings_partners(&f->causes, partners);
    if (count == 0)
        return;
    printf("  These readings cannot tell that from:\n");
    for (int i = 0; i < count; i++)
        printf("    - %s\n", words_cause(partners[i]));
}

/* The filter's own gauge is none of the library's readings: it decides where a loaded filter is among what may be. */
static void print_filter_gauge(const struct service_case *c, const struct findings *f)
{
    const vtx_service_readings *r = &c->readings;
    const struct service_history *h = &c->history;
    int32_t partners[12];
    const int count = findings_partners(&f->causes, partners), flow = reading_place(VTX_READ_INLET_FLOW);
    int suspected = leader_of(f) == VTX_CAUSE_LOADED_FILTER;
    double density, clean;
    for (int i = 0; i < count; i++)
        suspected = suspected || partners[i] == VTX_CAUSE_LOADED_FILTER;
    const double drawn = isnan(r->value[flow]) ? f->healthy_point.mass_flow : r->value[flow];
    if (!suspected || isnan(h->drop_today) || vtx_air_density(c->job.supply.pressure, c->job.supply.temperature, &density) != VTX_OK
        || vtx_filter_drop(&h->filter, density, c->job.running * drawn, 1, &clean) != VTX_OK)
        return;
    const double deviation = (h->drop_today - clean) / h->drop_uncertainty;
    printf("  The filter's own gauge shows %s where a clean element would show %s: it speaks %s the filter.\n", report_pressure_drop(h->drop_today),
           report_pressure_drop(clean), deviation > 3 ? "for" : "against");
}

void report_verdict(const struct service_case *c, const struct findings *f)
{
    char size[TEXT];
    print_contradiction(f);
    const int misfit = (f->causes.advisories & VTX_ADVISORY_MODEL_MISFIT) != 0;
    printf("\nVERDICT: ");
    if (leader_of(f) == VTX_CAUSE_NOTHING) {
        printf(misfit ? "the readings are not those of the healthy cooler, yet no single cause explains them any better:\n"
                        "  two faults at once, a wrong reading, or a description that does not fit this cooler.\n"
                      : "nothing is wrong with the cooler that these readings could show.\n");
        return;
    }
    sizes_text(c, f, leader_of(f), size, sizeof size);
    if (misfit)
        printf("something is wrong, but no single cause explains the readings: two faults at once, or a wrong reading.\n"
               "  The nearest single cause: %s.\n",
               words_cause(leader_of(f)));
    else
        printf("most likely %s.\n", words_cause(leader_of(f)));
    printf("  How much: %s.\n", size);
    print_partners(f);
    print_filter_gauge(c, f);
}

static const char *deviation_words(double deviation)
{
    const double size = fabs(deviation);
    return size < 2 ? "as it should be" : size < 3 ? "a little off" : size < 10 ? "off" : "far off";
}

void report_readings(const struct service_case *c, const struct findings *f)
{
    printf("\nWHAT WAS READ, AND WHAT THE HEALTHY COOLER WOULD READ (and the difference in standard deviations)\n");
    for (int i = 0; i < READINGS; i++) {
        const int32_t reading = VTX_READ_SUPPLY_PRESSURE + i;
        const double value = c->readings.value[i], healthy = f->healthy.value[i];
        if (isnan(value))
            continue;
        const double deviation = (value - healthy) / f->used.uncertainty[i];
        printf("  %-24s %-24s instead of %-24s %+7.1f  %s%s\n", words_reading(reading), value_text(c, reading, value),
               value_text(c, reading, healthy), deviation, deviation_words(deviation),
               reading == f->set_aside ? ", set aside" : "");
        if (fabs(value - c->as_read.value[i]) > 1e-9)
            printf("  %-24s the thermometer shows %s; corrected by %s for where it sits\n", "", report_temperature(c->as_read.value[i]),
                   difference_text(c, reading, value - c->as_read.value[i]));
    }
}

static void print_count_of_others(int count)
{
    static const char *const numbers[] = { "No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten", "Eleven", "Twelve" };
    if (count > 0)
        printf("  %s further cause%s the readings less well.\n", numbers[count], count == 1 ? " explains" : "s explain");
}

static const char *fit_words(double probability)
{
    return probability >= 0.05 ? "well" : probability >= 0.01 ? "poorly" : "no";
}

static void print_cause(const struct service_case *c, const struct findings *f, int place)
{
    const int32_t cause = f->causes.order[place];
    const double probability = probability_of(f, cause);
    char size[TEXT], chance[40];
    sizes_text(c, f, cause, size, sizeof size);
    if (probability >= 0.001)
        snprintf(chance, sizeof chance, "%.1f %%", 100 * probability);
    else
        snprintf(chance, sizeof chance, "below 0.1 %%");
    printf("  %2d  %-54s %-58s %-7s %s\n", place + 1, words_cause(cause), size, fit_words(probability), chance);
}

/* What a healthy verdict leaves open. */
static void print_hidden(const struct service_case *c, const struct findings *f)
{
    char size[TEXT];
    int shown = 0;
    printf("\nWHAT COULD STILL HIDE BEHIND THESE READINGS, each cause alone (95 %%)\n");
    for (int i = 0; i < 13 && shown < 5; i++) {
        const int32_t cause = f->causes.order[i];
        if (cause == VTX_CAUSE_NOTHING || !(f->causes.size[cause_place(cause)] > 0) || isnan(f->causes.size_uncertainty[cause_place(cause)]))
            continue;
        sizes_text(c, f, cause, size, sizeof size);
        printf("  %-54s %s\n", words_cause(cause), size);
        shown++;
    }
    if (shown == 0)
        printf("  nothing that these readings would see\n");
}

static void print_ranking(const struct service_case *c, const struct findings *f)
{
    int shown = 0, out = 0;
    printf("\nWHAT COULD EXPLAIN IT, each cause alone\n"
           "      cause                                                  how much (95 %%)                                            explains the readings\n");
    for (int i = 0; i < 13; i++) {
        const int32_t cause = f->causes.order[i];
        const int fits = probability_of(f, cause) >= 0.001;
        if (isnan(f->causes.chi_square[cause_place(cause)]))
            continue;
        if (shown < 3 || (fits && shown < 8)) {
            print_cause(c, f, i);
            shown++;
        } else
            out++;
    }
    printf("  The percentage says how many of 100 coolers with just this fault would show readings that fit it even worse.\n");
    print_count_of_others(out);
}

void report_causes(const struct service_case *c, const struct findings *f)
{
    const int healthy = leader_of(f) == VTX_CAUSE_NOTHING && !(f->causes.advisories & VTX_ADVISORY_MODEL_MISFIT);
    (healthy ? print_hidden : print_ranking)(c, f);
}

/* A cause that only grows is predicted at 0 where its estimate is below. */
static double size_of(const vtx_diagnosis *d, int32_t cause)
{
    const double size = d->size[cause_place(cause)];
    return cause == VTX_CAUSE_WRONG_VALVE || cause == VTX_CAUSE_WRONG_GAUGE ? size : fmax(size, 0);
}

void report_next_reading(const struct service_case *c, const struct findings *f)
{
    const vtx_diagnosis *d = &f->causes;
    vtx_service_readings first, second;
    if (leader_of(f) == VTX_CAUSE_NOTHING)
        return;
    printf("\nWHAT TO READ NEXT\n");
    if (d->next_reading < 0) {
        printf("  Everything is read that can be.\n");
        return;
    }
    if (d->partners == 0 && !(d->advisories & VTX_ADVISORY_MODEL_MISFIT)) {
        printf("  Nothing more is needed: these readings tell the leading cause from all others.\n");
        return;
    }
    if (vtx_predict_readings(&c->job, leader_of(f), size_of(d, leader_of(f)), &first) != VTX_OK
        || vtx_predict_readings(&c->job, f->rival, size_of(d, f->rival), &second) != VTX_OK)
        return;
    const int i = reading_place(d->next_reading);
    if (d->next_separation < 2) {
        printf("  No further gauge tells the two best explanations apart: look at each as said below.\n");
        return;
    }
    printf("  The %s: %s.\n", words_reading(d->next_reading), words_how_to_read(d->next_reading));
    printf("  It would read %-24s if %s,\n", value_text(c, d->next_reading, first.value[i]), words_cause(leader_of(f)));
    printf("           and  %-24s if %s: %.0f standard deviations apart with an ordinary instrument.\n",
           value_text(c, d->next_reading, second.value[i]), words_cause(f->rival), d->next_separation);
}

void report_cautions(const struct findings *f)
{
    const double *read = f->used.value, cold = read[reading_place(VTX_READ_COLD_TEMPERATURE)], hot = read[reading_place(VTX_READ_HOT_TEMPERATURE)];
    printf("\nBEFORE YOU TOUCH ANYTHING\n"
           "  Before anything is opened, unscrewed or exchanged: shut off, vent, lock out, and see the gauge at zero. A hose that comes loose whips.\n"
           "  Compressed air injures: never aim it at people. Eye and ear protection while it blows; guards against chips.\n");
    printf("  Cold parts can be at %s: bare skin freezes to metal. The hot end can reach %s: let it cool down.\n",
           report_temperature(fmin(f->healthy_point.coldest_temperature, cold)), report_temperature(fmax(f->healthy_point.hot_temperature_high, hot)));
    printf("  Whoever works on the compressed air net must be licensed for it where local codes ask; they come before this report.\n");
}

static void print_lines(const char *head, const char *text)
{
    printf("%s", head);
    for (; *text; text++) {
        putchar(*text);
        if (*text == '\n')
            printf("                    ");
    }
    putchar('\n');
}

static void print_one_remedy(int32_t cause, int with_remedy)
{
    printf("  If %s\n", words_cause(cause));
    print_lines("    proof           ", words_proof(cause));
    if (with_remedy)
        print_lines("    remedy          ", words_remedy(cause));
}

void report_what_to_do(const struct service_case *c, const struct findings *f)
{
    int32_t partners[12];
    const int count = findings_partners(&f->causes, partners);
    const int misfit = (f->causes.advisories & VTX_ADVISORY_MODEL_MISFIT) != 0;
    printf("\nWHAT TO DO\n");
    if (leader_of(f) == VTX_CAUSE_NOTHING && !misfit && c->goal.is_stated) {
        printf("  There is nothing to mend. Set the valve as said below.\n");
        return;
    }
    if (leader_of(f) == VTX_CAUSE_NOTHING && !misfit) {
        printf("  %s\n", words_remedy(VTX_CAUSE_NOTHING));
        return;
    }
    if (misfit)
        printf("  Read all gauges once more, each with a second instrument where there is one, and compare the description with the cooler.\n"
               "  Open nothing on the strength of these readings.\n");
    if (leader_of(f) == VTX_CAUSE_NOTHING)
        return;
    print_one_remedy(leader_of(f), !misfit);
    for (int i = 0; i < count && i < 3; i++)
        print_one_remedy(partners[i], !misfit);
    if (misfit)
        return;
    if (count == 0)
        printf("  Then read all gauges again: a second fault shows only when the first is gone.\n");
    else
        printf("  Begin with what is easiest to prove, change one thing at a time, and read all gauges again after each.\n");
}
