/* make bench-calibration: how often intervals hold what they say, and what one bad reading costs. Synthetic readings, fixed seeds.
 * Writes bench/calibration_coverage.md. An argument changes the number of draws. */
#include <time.h>

#include "../tests/tube/synthetic.h"

enum { READINGS = 50, POINTS = 9 };

/* Where curve and next reading are asked for: inside the readings' pressures and cold fractions, between and at their ends. */
static const double point_fraction[POINTS] = { 0.3, 0.5, 0.7, 0.3, 0.5, 0.7, 0.2, 0.6, 0.8 };
static const double point_pressure[POINTS] = { 4e5, 4e5, 4e5, 7e5, 7e5, 7e5, 5.5e5, 5.5e5, 5.5e5 };

static void point_at(int k, vtx_reading *p)
{
    vtx_reading_init(p);
    p->inlet_pressure = point_pressure[k];
    p->inlet_temperature = 293.15;
    p->cold_pressure = p->hot_pressure = 101325;
    p->cold_fraction = point_fraction[k];
    p->ambient_temperature = 293.15;
}

/* Counts of one study. */
struct study {
    struct coverage cold[POINTS], hot[POINTS], cold_next[POINTS], hot_next[POINTS], peak, fraction, exponent;
    double square_error, widened, departing, outliers;
    int draws, failed;
};

static void count_points(const vtx_calibration *c, const struct truth *t, const struct plan *p, struct random_state *r, struct study *s)
{
    for (int k = 0; k < POINTS; k++) {
        vtx_reading point, next;
        vtx_calibrated_point v;
        double cold, hot;
        point_at(k, &point);
        true_outlets(t, point_pressure[k], 293.15, 101325, 101325, point_fraction[k], &cold, &hot);
        s->failed += vtx_calibration_predict(c, &point, 0.95, &v) != VTX_OK;
        tally(&s->cold[k], cold >= v.cold_low && cold <= v.cold_high);
        tally(&s->hot[k], hot >= v.hot_low && hot <= v.hot_high);
        s->square_error += (cold - v.cold_temperature) * (cold - v.cold_temperature) / POINTS;
        draw_reading(r, t, p, point_pressure[k], point_fraction[k], &next);
        s->failed += vtx_calibration_predict(c, &next, 0.90, &v) != VTX_OK;
        tally(&s->cold_next[k], next.cold_temperature >= v.cold_reading_low && next.cold_temperature <= v.cold_reading_high);
        tally(&s->hot_next[k], next.hot_temperature >= v.hot_reading_low && next.hot_temperature <= v.hot_reading_high);
    }
}

static void count_coordinates(const vtx_calibration *c, const struct truth *t, struct study *s)
{
    const double peak = t->tube.peak_efficiency * pow(c->tube.reference_ratio / 5, t->tube.pressure_exponent);
    tally(&s->peak, peak >= c->tube.efficiency_low && peak <= c->tube.efficiency_high);
    tally(&s->fraction, fabs(t->tube.coldest_fraction - c->tube.coldest_fraction) < 1.96 * c->coldest_fraction_deviation);
    tally(&s->exponent, fabs(t->tube.pressure_exponent - c->tube.pressure_exponent) < 1.96 * c->pressure_exponent_deviation);
    s->widened += (c->advisories & VTX_ADVISORY_MODEL_MISFIT) != 0;
    s->departing += c->departure[0] + c->departure[1] + c->departure[2] + c->departure[3] > 0;
    s->outliers += c->readings_set_aside > 0;
}

/* What is studied: kind and strength of tube, air, readings; a fixed tube where peak is above 0. */
struct subject {
    int kind;
    double strength;
    int32_t model;
    size_t count;
    double peak, fraction;
};

static void run_study(const struct subject *x, int draws, uint64_t seed, struct study *s)
{
    struct random_state r;
    struct plan p = usual_plan();
    vtx_reading readings[READINGS];
    memset(s, 0, sizeof *s);
    random_seed(&r, seed);
    p.count = x->count;
    for (int i = 0; i < draws; i++) {
        struct truth t;
        vtx_calibration c;
        draw_truth(&r, x->kind, &t);
        t.strength *= x->strength;
        t.model = x->model;
        if (x->peak > 0) {
            t.tube.peak_efficiency = t.tube.efficiency_low = t.tube.efficiency_high = x->peak;
            t.tube.coldest_fraction = x->fraction;
        }
        draw_readings(&r, &t, &p, readings);
        if (vtx_tube_calibrate(readings, x->count, x->model, NULL, 0.95, &c, NULL) != VTX_OK) {
            s->failed++;
            continue;
        }
        s->draws++;
        count_coordinates(&c, &t, s);
        count_points(&c, &t, &p, &r, s);
    }
}

/* "96.1 (95.2..96.9)": over all points, and the worst points either way. */
static void print_coverage(const struct coverage *c)
{
    struct coverage all = { 0 };
    double low = 100, high = 0;
    for (int k = 0; k < POINTS; k++) {
        all.held += c[k].held;
        all.tried += c[k].tried;
        low = fmin(low, percent(&c[k]));
        high = fmax(high, percent(&c[k]));
    }
    printf(" %.1f (%.1f..%.1f) |", percent(&all), low, high);
}

static void print_row(const char *name, const struct study *s)
{
    printf("| %s |", name);
    print_coverage(s->cold);
    print_coverage(s->hot);
    print_coverage(s->cold_next);
    print_coverage(s->hot_next);
    printf(" %.1f / %.1f / %.1f | %.2f | %.0f / %.0f / %.0f |\n", percent(&s->peak), percent(&s->fraction), percent(&s->exponent),
           sqrt(s->square_error / s->draws), 100 * s->widened / s->draws, 100 * s->departing / s->draws, 100 * s->outliers / s->draws);
    if (s->failed)
        printf("\n**%d calls failed**\n\n", s->failed);
    fflush(stdout);
}

static void print_head(const char *what)
{
    printf("| %s | cold curve, 95 %% | hot curve, 95 %% | next cold reading, 90 %% | next hot reading, 90 %% | peak / coldest fraction / exponent | error, K "
           "| widened / departing / outlier, %% |\n|---|---|---|---|---|---|---|---|\n", what);
}

static void inside_the_family(int draws)
{
    static const size_t counts[] = { 1, 2, 3, 5, 8, 12, 20, 50 };
    struct study s;
    char name[80];
    printf("## Tubes of the family, drawn from the prior\n\n");
    print_head("readings");
    for (size_t i = 0; i < sizeof counts / sizeof counts[0]; i++) {
        const struct subject x = { .kind = TRUTH_FAMILY, .strength = 1, .model = VTX_AIR_IDEAL, .count = counts[i] };
        run_study(&x, draws, 1000 + i, &s);
        snprintf(name, sizeof name, "%zu", counts[i]);
        print_row(name, &s);
    }
    const struct subject real = { .kind = TRUTH_FAMILY, .strength = 1, .model = VTX_AIR_REAL, .count = 12 };
    run_study(&real, draws, 1100, &s);
    print_row("12, real air", &s);
    printf("\n## One tube off the middle of the prior, 12 readings\n\n");
    print_head("peak, coldest fraction");
    for (int i = 0; i < 4; i++) {
        const struct subject x = { .kind = TRUTH_FAMILY, .strength = 1, .model = VTX_AIR_IDEAL, .count = 12, .peak = i % 2 ? 0.42 : 0.18,
                                   .fraction = i / 2 ? 0.40 : 0.20 };
        run_study(&x, draws, 1200 + (uint64_t)i, &s);
        snprintf(name, sizeof name, "%.2f, %.2f", x.peak, x.fraction);
        print_row(name, &s);
    }
}

static void outside_the_family(int draws)
{
    static const char *const names[] = { "cubic shape", "leaks", "sag" };
    struct study s;
    char name[80];
    printf("\n## Tubes outside the family\n\n"
           "Strength 1 is a relative departure of 2 to 4 %% at the ends of the cold fraction (cubic), of 1 to 2 %% between the pressures (sag), and a\n"
           "cold leak of 0.01 beside a hot leak of 0.03 that goes with the inverse pressure (leaks), each times 0.5 to 1.5. The readings stand at\n"
           "two pressures only, so they cannot see a sag between them.\n\n");
    print_head("kind, strength, readings");
    for (int kind = TRUTH_CUBIC; kind <= TRUTH_SAG; kind++)
        for (int strength = 1; strength <= 4; strength *= 2)
            for (size_t count = 6; count <= 24; count *= 2) {
                const struct subject x = { .kind = kind, .strength = strength, .model = VTX_AIR_IDEAL, .count = count };
                run_study(&x, draws, 2000 + (uint64_t)(100 * kind + 10 * strength) + count, &s);
                snprintf(name, sizeof name, "%s, %d, %zu", names[kind - TRUTH_CUBIC], strength, count);
                print_row(name, &s);
            }
}

/* An instrument and by how much it is wrong, either way. */
struct spoiling {
    const char *name;
    size_t offset;
    double size[3];
};

static const struct spoiling spoilings[] = {
    { "cold thermometer, 5, 10, 20 K", offsetof(vtx_reading, cold_temperature), { 5, 10, 20 } },
    { "hot thermometer, 10, 20, 40 K", offsetof(vtx_reading, hot_temperature), { 10, 20, 40 } },
    { "inlet thermometer, 5, 10, 20 K", offsetof(vtx_reading, inlet_temperature), { 5, 10, 20 } },
    { "cold fraction, 0.1, 0.15, 0.2", offsetof(vtx_reading, cold_fraction), { 0.1, 0.15, 0.2 } },
    { "inlet gauge, 0.5, 1, 2 bar", offsetof(vtx_reading, inlet_pressure), { 0.5e5, 1e5, 2e5 } },
};

static double curve_error(const vtx_calibration *c, const struct truth *t)
{
    double sum = 0;
    for (int k = 0; k < POINTS; k++) {
        vtx_streams s;
        double cold, hot;
        true_outlets(t, point_pressure[k], 293.15, 101325, 101325, point_fraction[k], &cold, &hot);
        if (vtx_tube_separate(&c->tube, c->model, point_pressure[k], 293.15, 0, 101325, 101325, point_fraction[k], &s) != VTX_OK)
            abort();
        sum += (s.cold_temperature - cold) * (s.cold_temperature - cold) / POINTS;
    }
    return sum;
}

/* What somebody does who is told which instrument is wrong. */
static void forget(const struct spoiling *x, vtx_reading *r)
{
    if (x->offset == offsetof(vtx_reading, inlet_temperature))
        r->inlet_temperature_uncertainty = 50;
    else if (x->offset == offsetof(vtx_reading, inlet_pressure))
        r->inlet_pressure_uncertainty = 0.5 * r->inlet_pressure;
    else
        *(double *)(void *)((char *)r + x->offset) = (double)NAN;
}

/* Growth of the root mean square error of the cold curve by one bad reading among count, and how often it, or an instrument of it, was left
 * out; or, when told which instrument is bad, what its loss alone costs. */
static void growth(const struct spoiling *x, double size, size_t count, int told, int draws, double *factor, double *found)
{
    struct random_state r;
    struct plan p = usual_plan();
    double clean = 0, spoilt = 0;
    random_seed(&r, 3000 + count);
    p.count = count;
    *found = 0;
    for (int i = 0; i < draws; i++) {
        struct truth t;
        vtx_reading readings[READINGS];
        vtx_reading_check checks[READINGS];
        vtx_calibration c;
        draw_truth(&r, TRUTH_FAMILY, &t);
        draw_readings(&r, &t, &p, readings);
        const size_t bad = (size_t)random_uniform(&r, 0, (double)count);
        const double sign = random_uniform(&r, 0, 1) < 0.5 ? -1 : 1;
        if (vtx_tube_calibrate(readings, count, VTX_AIR_IDEAL, NULL, 0.95, &c, NULL) != VTX_OK)
            abort();
        clean += curve_error(&c, &t);
        double *field = (double *)(void *)((char *)&readings[bad] + x->offset);
        *field += sign * size;
        if (x->offset == offsetof(vtx_reading, cold_fraction))
            *field = fmin(fmax(*field, 0.02), 0.98);
        if (told)
            forget(x, &readings[bad]);
        if (vtx_tube_calibrate(readings, count, VTX_AIR_IDEAL, NULL, 0.95, &c, checks) != VTX_OK)
            abort();
        spoilt += curve_error(&c, &t);
        *found += checks[bad].used && checks[bad].verdict != VTX_READING_OUTLIER ? 0 : 100.0 / draws;
    }
    *factor = sqrt(spoilt / clean);
}

static void one_bad_reading(int draws)
{
    static const size_t counts[] = { 4, 6, 8, 12, 20 };
    printf("\n## One bad reading: growth of the curve's error, and per cent of cases in which it or an instrument of it was left out\n\n"
           "Told: growth when the instrument is known to be wrong and its reading forgotten, so that only its loss is left.\n\n| instrument, wrong by | 4 readings, told |");
    for (size_t k = 0; k < sizeof counts / sizeof counts[0]; k++)
        printf(" %zu readings |", counts[k]);
    printf("\n|---|---|---|---|---|---|---|\n");
    for (size_t i = 0; i < sizeof spoilings / sizeof spoilings[0]; i++) {
        double loss, none;
        growth(&spoilings[i], spoilings[i].size[1], 4, 1, draws, &loss, &none);
        printf("| %s | %.2f |", spoilings[i].name, loss);
        for (size_t k = 0; k < sizeof counts / sizeof counts[0]; k++) {
            for (int j = 0; j < 3; j++) {
                double factor, found;
                growth(&spoilings[i], spoilings[i].size[j], counts[k], 0, draws, &factor, &found);
                printf("%s%.2f (%.0f)", j ? ", " : " ", factor, found);
            }
            printf(" |");
            fflush(stdout);
        }
        printf("\n");
    }
}

int main(int argc, char **argv)
{
    const int draws = argc > 1 ? atoi(argv[1]) : 2000;
    char date[20];
    const time_t now = time(NULL);
    strftime(date, sizeof date, "%Y-%m-%d", gmtime(&now));
    printf("# What a calibration is worth\n\nPer cent of intervals that hold the truth, over all of nine points (worst points in brackets); %d draws a row,\n"
           "so that 95 %% is known to %.1f and 90 %% to %.1f. Written by `make bench-calibration` on %s, libvtx %s.\n\n"
           "Readings: cold fractions from 0.2 to 0.8, 4 and 7 bar in turn, each thermometer 0.5 K, pressures 0.5 %%, cold fraction 0.01, all\n"
           "errors normal and as large as stated. Half of the tubes of the family leak at the hot end. Error: root mean square of the cold\n"
           "curve. Widened: chi-square larger than chance allows; departing: another shape seen in the residuals; outlier: a reading set aside.\n\n",
           draws, 100 * sqrt(0.95 * 0.05 / draws), 100 * sqrt(0.9 * 0.1 / draws), date, VTX_VERSION);
    inside_the_family(draws);
    outside_the_family(draws);
    one_bad_reading(draws / 4);
    return 0;
}
