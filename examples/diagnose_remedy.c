/* What to beware of, and what to do. */
#include "diagnose_report.h"

#include <math.h>

#include "diagnose_words.h"
#include "report.h"

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
    const int misfit = findings_misfit(f);
    printf("\nWHAT TO DO\n");
    if (findings_leader(f) == VTX_CAUSE_NOTHING && !misfit && c->goal.is_stated) {
        printf("  There is nothing to mend. Set the valve as said below.\n");
        return;
    }
    if (findings_leader(f) == VTX_CAUSE_NOTHING && !misfit) {
        printf("  %s\n", words_remedy(VTX_CAUSE_NOTHING));
        return;
    }
    if (misfit)
        printf("  Read all gauges once more, each with a second instrument where there is one, and compare the description with the cooler.\n"
               "  Open nothing on the strength of these readings.\n");
    if (findings_leader(f) == VTX_CAUSE_NOTHING)
        return;
    print_one_remedy(findings_leader(f), !misfit);
    for (int i = 0; i < count && i < 3; i++)
        print_one_remedy(partners[i], !misfit);
    if (misfit)
        return;
    if (count == 0)
        printf("  Then read all gauges again: a second fault shows only when the first is gone.\n");
    else
        printf("  Begin with what is easiest to prove, change one thing at a time, and read all gauges again after each.\n");
}
