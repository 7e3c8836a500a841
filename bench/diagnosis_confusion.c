/* make bench-diagnosis: how often the true cause comes first, what is taken for what, and whether sizes are as sure as they say.
 * Synthetic readings, fixed seeds. Prints bench/diagnosis.md. An argument changes the number of draws. */
#include <time.h>

#include <vtx/version.h>

#include "../tests/cooler/synthetic_service.h"

enum { DRAWS_A_SIZE = 10 };

static const vtx_input_uncertainty exact;
static const double distinguishable = 3.289707253902945;

static const char *const cause_name[SERVICE_CAUSES] = {
    "nothing wrong", "low supply pressure", "worn inlet nozzle", "blocked inlet nozzle", "iced cold outlet", "cold back-pressure",
    "blocked hot outlet", "valve set wrong", "warm supply", "leaking inside seal", "heat leak", "loaded filter", "wrong gauge",
};

/* Counts of one cause under one set of readings. */
struct study {
    int draws, failed;
    int separable, first;      /* cases that the readings can tell apart, and those of them with the true cause first */
    int alike, named;          /* the others, and those of them in which the true cause leads or is among the leader's likes */
    int healthy, contradicted; /* called healthy; called impossible */
    int leader[SERVICE_CAUSES];
    int sized, held;           /* sizes with an uncertainty, and those of them within 1.96 of it */
    double worst_clean;        /* largest relative error of a size without noise */
    int likes[SERVICE_CAUSES]; /* sizes at which the cause was like the true one, without noise */
};

/* Whether these readings can tell the cause of this size from every other: without noise it leads, alone. */
static int can_be_told(const vtx_job *job, const vtx_service_readings *clean, const int *set, int32_t cause, double size, struct study *s)
{
    vtx_service_readings taken;
    vtx_diagnosis d;
    take_readings(NULL, clean, set, &taken);
    if (vtx_diagnose(job, &exact, &taken, &d) != VTX_OK) {
        s->failed++;
        return 0;
    }
    const int own = (int)(cause - VTX_CAUSE_NOTHING);
    if (cause == VTX_CAUSE_NOTHING)
        return 1;
    if (d.size_uncertainty[own] == d.size_uncertainty[own])
        s->worst_clean = fmax(s->worst_clean, fabs(d.size[own] / size - 1));
    s->likes[0] += d.order[0] == VTX_CAUSE_NOTHING || d.separation[0] < distinguishable;
    for (int i = 1; i < SERVICE_CAUSES && d.separation[0] >= distinguishable; i++)
        s->likes[i] += i != own && (d.order[0] == cause ? d.separation[i] < distinguishable : VTX_CAUSE_NOTHING + i == d.order[0]);
    return d.order[0] == cause && d.partners == 0 && d.separation[0] >= distinguishable;
}

static void count_draw(const vtx_diagnosis *d, int32_t cause, double size, int separable, struct study *s)
{
    const int own = (int)(cause - VTX_CAUSE_NOTHING);
    const int first = d->order[0] == cause;
    s->draws++;
    s->leader[d->order[0] - VTX_CAUSE_NOTHING]++;
    s->healthy += d->order[0] == VTX_CAUSE_NOTHING;
    s->contradicted += d->contradiction != VTX_CONTRADICTION_NONE;
    s->separable += separable;
    s->first += separable && first;
    s->alike += !separable;
    s->named += !separable && (first || d->separation[own] < distinguishable);
    if (own > 0 && d->size_uncertainty[own] == d->size_uncertainty[own]) {
        s->sized++;
        s->held += fabs(d->size[own] - size) < 1.959963984540054 * d->size_uncertainty[own];
    }
}

static void run_study(const vtx_job *job, int32_t cause, const int *set, int draws, uint64_t seed, struct study *s)
{
    struct random_state r;
    memset(s, 0, sizeof *s);
    random_seed(&r, seed);
    for (int k = 0; k < draws; k += DRAWS_A_SIZE) {
        const double size = draw_service_size(&r, cause);
        vtx_service_readings clean, taken;
        vtx_diagnosis d;
        if (vtx_predict_readings(job, cause, size, &clean) != VTX_OK) {
            s->failed++;
            continue;
        }
        const int separable = can_be_told(job, &clean, set, cause, size, s);
        for (int i = 0; i < DRAWS_A_SIZE; i++) {
            take_readings(&r, &clean, set, &taken);
            if (vtx_diagnose(job, &exact, &taken, &d) == VTX_OK)
                count_draw(&d, cause, size, separable, s);
            else
                s->failed++;
        }
    }
}

static void print_share(int part, int whole)
{
    if (whole > 0)
        printf(" %.1f |", 100.0 * part / whole);
    else
        printf(" - |");
}

static void print_likes(const struct study *s, int own, int sizes)
{
    int any = s->likes[0] > 0;
    if (any)
        printf(" too small to see (%.0f %%)", 100.0 * s->likes[0] / sizes);
    for (int i = 1; i < SERVICE_CAUSES; i++)
        if (i != own && s->likes[i] > 0) {
            printf("%s %s (%.0f %%)", any ? "," : "", cause_name[i], 100.0 * s->likes[i] / sizes);
            any = 1;
        }
    printf(any ? " |\n" : " - |\n");
}

static void print_set(const struct study *s, int set, int draws)
{
    int separable = 0, first = 0;
    printf("\n## Readings: %s\n\n"
           "| true cause | can be told, %% of cases | first, %% of those | else named, %% of those | called healthy, %% | size held, %% | without noise, 1e-6 | reads alike (share of sizes) |\n"
           "|---|---|---|---|---|---|---|---|\n", service_set_name[set]);
    for (int i = 0; i < SERVICE_CAUSES; i++) {
        printf("| %s |", cause_name[i]);
        print_share(s[i].separable, s[i].draws);
        print_share(s[i].first, s[i].separable);
        print_share(s[i].named, s[i].alike);
        print_share(s[i].healthy, s[i].draws);
        print_share(s[i].held, s[i].sized);
        printf(i ? " %.2f |" : " - |", 1e6 * s[i].worst_clean);
        print_likes(&s[i], i, (draws + DRAWS_A_SIZE - 1) / DRAWS_A_SIZE);
        separable += i > 0 ? s[i].separable : 0;
        first += i > 0 ? s[i].first : 0;
        if (s[i].failed)
            printf("\n**%d calls failed**\n\n", s[i].failed);
    }
    printf("\nThe true cause came first in %.1f %% of the cases that can be told; %.1f %% of healthy coolers were called faulty and %.1f %% impossible.\n",
           separable ? 100.0 * first / separable : 0, 100.0 - 100.0 * s[0].healthy / s[0].draws, 100.0 * s[0].contradicted / s[0].draws);
    printf("\nLeading cause, %% of the draws of each true cause (rows and columns in the order above):\n\n|  |");
    for (int k = 0; k < SERVICE_CAUSES; k++)
        printf(" %d |", k);
    printf("\n|---|");
    for (int k = 0; k < SERVICE_CAUSES; k++)
        printf("---|");
    for (int i = 0; i < SERVICE_CAUSES; i++) {
        printf("\n| %d %s |", i, cause_name[i]);
        for (int k = 0; k < SERVICE_CAUSES; k++)
            if (s[i].leader[k])
                printf(" %.1f |", 100.0 * s[i].leader[k] / s[i].draws);
            else
                printf("  |");
    }
    printf("\n");
    fflush(stdout);
}

int main(int argc, char **argv)
{
    static struct study studies[SERVICE_CAUSES];
    const int draws = argc > 1 ? atoi(argv[1]) : 2000;
    const vtx_job job = service_job(VTX_AIR_IDEAL);
    const time_t now = time(NULL);
    char date[32];
    strftime(date, sizeof date, "%Y-%m-%d", gmtime(&now));
    printf("# What a diagnosis is worth\n\n"
           "A cooler of 600 L/min behind a filter and 5 m of hose, valve opening held, ideal air, exactly known but for one thing wrong: 5 to 40 %%\n"
           "of the range (that share; of 40 K; of 20 times the filter's loss). Thermometers 0.5 K, all else 1 %%, errors normal and as large as stated.\n"
           "%d draws a cause, ten at each of %d sizes. Written by `make bench-diagnosis` on %s, libvtx %s.\n\n"
           "A case can be told when, without noise, its cause leads and every other cause and the healthy cooler differ from it by 3.29 standard\n"
           "deviations (one mistake in twenty between two). Elsewhere causes are reported as alike: named says how often the true one is then\n"
           "among them. Size held: within 1.96 stated standard uncertainties of the truth, in all draws of a cause that these readings see.\n\n"
           "Three pairs follow from the equations. A blocked hot outlet and a valve too far closed both only scale the valve's area: the same to\n"
           "every gauge. A narrowed cold outlet and a valve too far open share the air alike and differ in the chamber's pressure alone, which no\n"
           "gauge shows while the inlet nozzle is choked. Low supply pressure and a loaded filter leave the same pressure behind the filter.\n",
           draws, draws / DRAWS_A_SIZE, date, vtx_version());
    for (int set = 0; set < SERVICE_SETS; set++) {
        for (int i = 0; i < SERVICE_CAUSES; i++)
            run_study(&job, VTX_CAUSE_NOTHING + i, service_set[set], draws, (uint64_t)(100 * set + i + 1), &studies[i]);
        print_set(studies, set, draws);
    }
    return 0;
}
