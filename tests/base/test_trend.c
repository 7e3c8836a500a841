/* Trends against the thermometer line of the GUM, their own laws, and the truth they are drawn from. */
#include <vtx/trend.h>

#include "../harness/harness.h"

static const double temperatures[11] = { 21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511 };
static const double corrections[11] = { -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160 };
static const double unknown[12]; /* as many as any history has */

static int thermometer_row(const struct data_row *row, double *actual)
{
    vtx_trend t;
    double value = 0, uncertainty = 0;
    EXPECT_OK(vtx_trend_fit(temperatures, corrections, unknown, 11, VTX_TREND_EVEN, &t));
    EXPECT_OK(vtx_trend_at(&t, row->input[0], &value, &uncertainty));
    if (strcmp(row->quantity, "line_at") == 0)
        *actual = value;
    else if (strcmp(row->quantity, "line_uncertainty") == 0)
        *actual = uncertainty;
    else if (strcmp(row->quantity, "line_rate") == 0)
        *actual = t.rate;
    else if (strcmp(row->quantity, "line_rate_uncertainty") == 0)
        *actual = t.rate_uncertainty;
    else if (strcmp(row->quantity, "line_scatter") == 0)
        *actual = t.scatter;
    else if (strcmp(row->quantity, "line_correlation") == 0)
        *actual = t.rate_uncertainty * t.rate_uncertainty * (row->input[0] - t.reference_time) / (uncertainty * t.rate_uncertainty);
    else
        return 0;
    return 1;
}

static void published_values_are_reproduced(void) { check_rows("trend.csv", thermometer_row, 16); }

static const double month = 2.6e6;

/* A made-up history: a line with normal errors. */
struct history {
    double times[12], values[12], uncertainties[12];
    size_t count;
    double start, rate, limit, crossing;
};

static void draw_history(struct random_state *r, struct history *h)
{
    h->count = (size_t)random_uniform(r, 4, 12.999);
    h->start = random_uniform(r, 1e4, 2e4);
    h->rate = random_uniform(r, 500, 4000) / month;
    h->limit = random_uniform(r, 3e4, 6e4);
    h->crossing = (h->limit - h->start) / h->rate;
    for (size_t i = 0; i < h->count; i++) {
        h->times[i] = 1.7e9 + month * ((double)i + random_uniform(r, 0, 0.9));
        h->uncertainties[i] = random_uniform(r, 300, 1500);
    }
    h->crossing += 1.7e9;
}

static void read_values(struct random_state *r, struct history *h, double same)
{
    for (size_t i = 0; i < h->count; i++)
        h->values[i] = h->start + h->rate * (h->times[i] - 1.7e9) + (same > 0 ? same : h->uncertainties[i]) * random_normal(r);
}

static int holds(const vtx_trend_crossing *c, double date)
{
    return (isnan(c->earliest) || date >= c->earliest) && (isnan(c->latest) || date <= c->latest);
}

/* Counts that a right program leaves in one run of 1e4: 3.89 standard deviations of the binomial. */
static void expect_share(int hits, int draws, double share)
{
    EXPECT_WITHIN((double)hits / draws, share, 3.89 * sqrt(share * (1 - share) / draws));
}

static void coverage(int stated, double confidence, uint64_t seed)
{
    const int draws = soak_count(2000);
    struct random_state r;
    int hits = 0, dated = 0;
    random_seed(&r, seed);
    for (int i = 0; i < draws; i++) {
        struct history h;
        vtx_trend t;
        vtx_trend_crossing c;
        draw_history(&r, &h);
        read_values(&r, &h, stated ? 0 : 800);
        EXPECT_OK(vtx_trend_fit(h.times, h.values, stated ? h.uncertainties : unknown, h.count, VTX_TREND_EVEN, &t));
        EXPECT_OK(vtx_trend_crosses(&t, h.limit, VTX_TOLERANCE_UPPER, h.times[h.count - 1], confidence, &c));
        hits += holds(&c, h.crossing);
        dated += c.verdict == VTX_TREND_DATED || c.verdict == VTX_TREND_PASSED;
    }
    expect_share(hits, draws, confidence);
    EXPECT(dated > draws / 2 && dated < draws);
    if (getenv("VTX_SOAK"))
        printf("  crossing, uncertainties %s, %.0f %% interval: holds %.2f %% of %d, closed %.1f %%\n", stated ? "stated" : "found", 100 * confidence,
               100.0 * hits / draws, draws, 100.0 * dated / draws);
}

static void intervals_of_the_date_hold_as_often_as_they_say(void)
{
    coverage(1, 0.95, 41);
    coverage(0, 0.95, 42);
    coverage(1, 0.8, 43);
}

static void exponential_growth_is_dated_as_well(void)
{
    const int draws = soak_count(2000);
    struct random_state r;
    int hits = 0;
    random_seed(&r, 44);
    for (int i = 0; i < draws; i++) {
        struct history h;
        vtx_trend t;
        vtx_trend_crossing c;
        draw_history(&r, &h);
        const double rate = random_uniform(&r, 0.03, 0.15) / month;
        for (size_t k = 0; k < h.count; k++) {
            const double drop = h.start * exp(rate * (h.times[k] - 1.7e9));
            h.uncertainties[k] = 0.05 * h.start;
            h.values[k] = drop + h.uncertainties[k] * random_normal(&r);
        }
        EXPECT_OK(vtx_trend_fit(h.times, h.values, h.uncertainties, h.count, VTX_TREND_EXPONENTIAL, &t));
        EXPECT_OK(vtx_trend_crosses(&t, h.limit, VTX_TOLERANCE_UPPER, h.times[h.count - 1], 0.95, &c));
        hits += holds(&c, 1.7e9 + log(h.limit / h.start) / rate);
    }
    /* The logarithm is first order: 93 to 97 %. */
    EXPECT_WITHIN((double)hits / draws, 0.95, 0.02);
    if (getenv("VTX_SOAK"))
        printf("  crossing of exponential growth: holds %.2f %% of %d\n", 100.0 * hits / draws, draws);
}

static void ends_of_the_interval_are_q_deviations_from_the_limit(void)
{
    struct random_state r;
    random_seed(&r, 45);
    for (int i = 0; i < 500; i++) {
        struct history h;
        vtx_trend t;
        vtx_trend_crossing c;
        double value, uncertainty;
        draw_history(&r, &h);
        read_values(&r, &h, 0);
        EXPECT_OK(vtx_trend_fit(h.times, h.values, h.uncertainties, h.count, VTX_TREND_EVEN, &t));
        EXPECT_OK(vtx_trend_crosses(&t, h.limit, VTX_TOLERANCE_UPPER, 1.7e9, 0.95, &c));
        const double q = t.freedom > 0 ? 0 : 1.959963984540054;
        if (q > 0 && !isnan(c.earliest)) {
            EXPECT_OK(vtx_trend_at(&t, c.earliest, &value, &uncertainty));
            EXPECT_NEAR(fabs(h.limit - value), q * uncertainty, 1e-7);
        }
        if (q > 0 && !isnan(c.latest)) {
            EXPECT_OK(vtx_trend_at(&t, c.latest, &value, &uncertainty));
            EXPECT_NEAR(fabs(h.limit - value), q * uncertainty, 1e-7);
        }
        if (!isnan(c.time)) {
            EXPECT_OK(vtx_trend_at(&t, c.time, &value, NULL));
            EXPECT_NEAR(value, h.limit, 1e-9);
            EXPECT(holds(&c, c.time));
        }
    }
}

/* Falling toward a lower limit is rising toward an upper one, upside down; and no date depends on the zero of time. */
static void sides_and_zeros_mirror_each_other(void)
{
    struct random_state r;
    random_seed(&r, 46);
    for (int i = 0; i < 300; i++) {
        struct history h, m;
        vtx_trend t, mirrored;
        vtx_trend_crossing c, d;
        draw_history(&r, &h);
        read_values(&r, &h, 0);
        m = h;
        for (size_t k = 0; k < h.count; k++) {
            m.values[k] = -h.values[k];
            m.times[k] = h.times[k] - 1.7e9;
        }
        EXPECT_OK(vtx_trend_fit(h.times, h.values, h.uncertainties, h.count, VTX_TREND_EVEN, &t));
        EXPECT_OK(vtx_trend_fit(m.times, m.values, m.uncertainties, h.count, VTX_TREND_EVEN, &mirrored));
        EXPECT_OK(vtx_trend_crosses(&t, h.limit, VTX_TOLERANCE_UPPER, 1.72e9, 0.95, &c));
        EXPECT_OK(vtx_trend_crosses(&mirrored, -h.limit, VTX_TOLERANCE_LOWER, 2e7, 0.95, &d));
        EXPECT(c.verdict == d.verdict && isnan(c.earliest) == isnan(d.earliest) && isnan(c.latest) == isnan(d.latest));
        EXPECT_WITHIN(c.passed_probability, d.passed_probability, 1e-9);
        if (!isnan(c.earliest))
            EXPECT_WITHIN(c.earliest - 1.7e9, d.earliest, 1e-6 * fabs(d.earliest) + 1);
        if (!isnan(c.latest) && c.latest < 1e11)
            EXPECT_WITHIN(c.latest - 1.7e9, d.latest, 1e-6 * fabs(d.latest) + 1);
    }
}

static vtx_trend_crossing crossing_of(const double *values, double uncertainty, double limit, int32_t side, double today)
{
    const double times[] = { 0, 1e6, 2e6, 3e6, 4e6 };
    const double uncertainties[] = { uncertainty, uncertainty, uncertainty, uncertainty, uncertainty };
    vtx_trend t;
    vtx_trend_crossing c;
    EXPECT_OK(vtx_trend_fit(times, values, uncertainties, 5, VTX_TREND_EVEN, &t));
    EXPECT_OK(vtx_trend_crosses(&t, limit, side, today, 0.95, &c));
    return c;
}

static void every_verdict_is_reached(void)
{
    const double rising[] = { 10, 12, 14, 16, 18 }, flat[] = { 10, 10.2, 9.9, 10.1, 10 }, level[] = { 10, 10, 10, 10, 10 };
    vtx_trend_crossing c = crossing_of(rising, 0.5, 30, VTX_TOLERANCE_UPPER, 4e6);
    EXPECT(c.verdict == VTX_TREND_DATED && c.earliest < 1e7 && c.latest > 1e7 && c.passed_probability < 1e-6);
    EXPECT_NEAR(c.time, 1e7, 1e-12);
    EXPECT_NEAR(c.time_left, 6e6, 1e-12);
    c = crossing_of(rising, 0.5, 30, VTX_TOLERANCE_UPPER, 2e7);
    EXPECT(c.verdict == VTX_TREND_PASSED && c.passed_probability > 0.999 && c.time_left < 0);
    c = crossing_of(rising, 0.5, 30, VTX_TOLERANCE_UPPER, 4e6 + 1);
    EXPECT(!(c.advisories & VTX_ADVISORY_EXTRAPOLATED));
    c = crossing_of(rising, 0.5, 60, VTX_TOLERANCE_UPPER, 4e6);
    EXPECT(c.verdict == VTX_TREND_DATED && (c.advisories & VTX_ADVISORY_EXTRAPOLATED));
    c = crossing_of(rising, 0.5, 5, VTX_TOLERANCE_LOWER, 4e6);
    EXPECT(c.verdict == VTX_TREND_NEVER && isnan(c.time) && isnan(c.earliest) && (c.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
    c = crossing_of(rising, 4, 30, VTX_TOLERANCE_UPPER, 4e6);
    EXPECT(c.verdict == VTX_TREND_OPEN && isnan(c.latest) && c.earliest > 4e6 && (c.advisories & VTX_ADVISORY_POORLY_DETERMINED));
    c = crossing_of(flat, 0.3, 20, VTX_TOLERANCE_UPPER, 4e6);
    EXPECT(c.verdict == VTX_TREND_OPEN && isnan(c.latest) && c.earliest > 1e7);
    c = crossing_of(flat, 0.3, 5, VTX_TOLERANCE_LOWER, 4e6);
    EXPECT(c.verdict == VTX_TREND_OPEN && isnan(c.latest) && c.earliest > 1e7);
    c = crossing_of(level, 0, 20, VTX_TOLERANCE_UPPER, 4e6);
    EXPECT(c.verdict == VTX_TREND_NEVER && c.passed_probability < 1e-12);
    c = crossing_of(level, 0, 9, VTX_TOLERANCE_UPPER, 4e6);
    EXPECT(c.verdict == VTX_TREND_PASSED && c.passed_probability > 1 - 1e-12);
}

static void a_curve_is_not_taken_for_a_line(void)
{
    const double times[] = { 0, 1e6, 2e6, 3e6, 4e6, 5e6 }, values[] = { 10, 11, 14, 19, 26, 35 }, uncertainties[] = { 1, 1, 1, 1, 1, 1 };
    const double shares[] = { 10, 15, 22.5, 33.75, 50.625, 75.9375 };
    vtx_trend t;
    EXPECT_OK(vtx_trend_fit(times, values, uncertainties, 6, VTX_TREND_EVEN, &t));
    EXPECT((t.advisories & VTX_ADVISORY_MODEL_MISFIT) && t.scatter > 1 && t.freedom == 4 && t.significant == 1);
    EXPECT_OK(vtx_trend_fit(times, shares, uncertainties, 6, VTX_TREND_EXPONENTIAL, &t));
    EXPECT(!(t.advisories & VTX_ADVISORY_MODEL_MISFIT) && t.freedom == 0);
    EXPECT_NEAR(t.rate, log(1.5) / 1e6, 1e-12);
    vtx_trend_crossing c;
    EXPECT_OK(vtx_trend_crosses(&t, 10 * pow(1.5, 8), VTX_TOLERANCE_UPPER, 5e6, 0.95, &c));
    EXPECT_NEAR(c.time, 8e6, 1e-11);
    EXPECT_NEAR(c.value_today, 75.9375, 1e-11);
}

static void what_cannot_be_a_trend_is_refused(void)
{
    const double times[] = { 0, 1, 2 }, same[] = { 5, 5, 5 }, values[] = { 1, 2, 4 }, ones[] = { 1, 1, 1 }, mixed[] = { 1, 0, 1 },
                 mixed_too[] = { 0, 1, 1 }, odd[] = { 1, (double)NAN, 2 }, negative[] = { 1, -1, 1 };
    vtx_trend t;
    EXPECT_STATUS(vtx_trend_fit(same, values, ones, 3, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT(isnan(t.rate) && t.growth == -1);
    EXPECT_STATUS(vtx_trend_fit(times, values, mixed, 3, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(times, values, mixed_too, 3, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(times, values, unknown, 2, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(times, values, ones, 1, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(times, odd, ones, 3, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(odd, values, ones, 3, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(times, values, odd, 3, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(times, values, ones, 3, 100, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(times, negative, ones, 3, VTX_TREND_EXPONENTIAL, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(NULL, values, ones, 3, VTX_TREND_EVEN, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_trend_fit(times, values, ones, 3, VTX_TREND_EVEN, NULL), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_trend_fit(times, values, ones, 2, VTX_TREND_EVEN, &t));
    EXPECT(isnan(t.scatter) && isnan(t.probability) && (t.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
    EXPECT_NEAR(t.rate, 1, 1e-14);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "intervals of the date hold as often as they say", intervals_of_the_date_hold_as_often_as_they_say },
    { "exponential growth is dated as well", exponential_growth_is_dated_as_well },
    { "ends of the interval are q deviations from the limit", ends_of_the_interval_are_q_deviations_from_the_limit },
    { "sides and zeros mirror each other", sides_and_zeros_mirror_each_other },
    { "every verdict is reached", every_verdict_is_reached },
    { "a curve is not taken for a line", a_curve_is_not_taken_for_a_line },
    { "what cannot be a trend is refused", what_cannot_be_a_trend_is_refused },
};
TEST_SUITE(trend, tests);
