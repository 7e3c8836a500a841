/* What stands behind the verdict: readings, every cause's fit, what to read next. */
#include "diagnose_report.h"

#include <math.h>

#include "diagnose_sizes.h"
#include "diagnose_values.h"
#include "diagnose_words.h"
#include "report.h"

enum { TEXT = 160 };

static double probability_of(const struct findings *f, int32_t cause) { return f->causes.probability[cause_place(cause)]; }

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
        const double deviation = findings_deviation(c, f, i);
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
    const int healthy = findings_leader(f) == VTX_CAUSE_NOTHING && !findings_misfit(f);
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
    double clean;
    if (findings_leader(f) == VTX_CAUSE_NOTHING)
        return;
    printf("\nWHAT TO READ NEXT\n");
    if (d->partners > 0 && report_filter_gauge_says(c, f, &clean) > 0) {
        printf("  Nothing more is needed: the filter's own gauge has decided.\n");
        return;
    }
    if (d->partners > 0 && findings_candidate(f, VTX_CAUSE_LOADED_FILTER) && isnan(c->history.drop_today)) {
        printf("  The pressure ahead of and behind the filter: that tells a loaded filter from everything else.\n");
        return;
    }
    if (d->next_reading < 0) {
        printf("  Everything is read that can be.\n");
        return;
    }
    if (d->partners == 0 && !findings_misfit(f)) {
        printf("  Nothing more is needed: these readings tell the leading cause from all others.\n");
        return;
    }
    if (vtx_predict_readings(&c->job, findings_leader(f), size_of(d, findings_leader(f)), &first) != VTX_OK
        || vtx_predict_readings(&c->job, f->rival, size_of(d, f->rival), &second) != VTX_OK)
        return;
    const int32_t next = findings_next_reading(f);
    const int i = reading_place(next);
    if (d->next_separation < 2) {
        printf("  No further gauge tells the two best explanations apart: look at each as said below.\n");
        return;
    }
    printf("  The %s: %s.\n", words_reading(next), words_how_to_read(next));
    printf("  It would read %-24s if %s,\n", value_text(c, next, first.value[i]), words_cause(findings_leader(f)));
    printf("           and  %-24s if %s: %.0f standard deviations apart with an ordinary instrument.\n",
           value_text(c, next, second.value[i]), words_cause(f->rival), d->reading_separation[i]);
    if (next != d->next_reading)
        printf("  The %s would tell still better, %.0f standard deviations, but is more trouble to read.\n", words_reading(d->next_reading),
               d->next_separation);
}
