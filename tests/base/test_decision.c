/* Decision rules against JCGM 106, closed forms and trials. */
#include <vtx/decision.h>

#include "../../libvtx/base/distribution.h"
#include "../harness/harness.h"

/* Symmetric limits at 1, a centred process of which this share conforms, measured with a share of its deviation. */
static double simple_acceptance(double conforming, double ratio, double *producer)
{
    const double deviation = 1 / normal_quantile(0.5 + 0.5 * conforming);
    double consumer = (double)NAN;
    EXPECT_OK(vtx_global_risk_between(-1, 1, -1, 1, 0, deviation, ratio * deviation, &consumer, producer));
    return consumer;
}

static int compute(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    if (strcmp(row->quantity, "conformance_probability") == 0)
        vtx_conformance_probability(VTX_TOLERANCE_UPPER, x[0], x[1], x[2], 0, actual);
    else if (strcmp(row->quantity, "conformance_probability_lower") == 0)
        vtx_conformance_probability(VTX_TOLERANCE_LOWER, x[0], x[1], x[2], 0, actual);
    else if (strcmp(row->quantity, "conformance_probability_between") == 0)
        vtx_conformance_probability_between(x[0], x[1], x[2], x[3], 0, actual);
    else if (strcmp(row->quantity, "guard_band") == 0)
        vtx_guard_band(x[0], x[1], 0, actual);
    else if (strcmp(row->quantity, "acceptance_limit") == 0)
        vtx_acceptance_limit(VTX_TOLERANCE_UPPER, x[0], x[1], actual);
    else if (strcmp(row->quantity, "deciding_uncertainty") == 0)
        vtx_deciding_uncertainty(x[0], x[1], 0, actual);
    else if (strcmp(row->quantity, "global_consumer_risk_percent") == 0)
        *actual = 100 * simple_acceptance(x[0], x[1], NULL);
    else
        return 0;
    return 1;
}

static void published_decisions_are_met(void) { check_rows("decision.csv", compute, 10); }

/* Mean and limits at one point: consumer's and producer's share are those of a quadrant of two correlated normal numbers. */
static void risks_at_the_process_mean_have_their_closed_form(void)
{
    for (int32_t side = VTX_TOLERANCE_UPPER; side <= VTX_TOLERANCE_LOWER; side++)
        for (double ratio = 1e-5; ratio < 2e5; ratio *= 3) {
            double consumer, producer;
            const double expected = atan(ratio) / (2 * acos(-1.0));
            EXPECT_OK(vtx_global_risk(side, 7, 7, 7, 3, 3 * ratio, &consumer, &producer));
            EXPECT_WITHIN(consumer, expected, 1e-13);
            EXPECT_WITHIN(producer, expected, 1e-13);
        }
}

/* Consumer's risk plus what is accepted rightly is what is accepted: a normal number of the summed variances. */
static void shares_of_a_process_add_up(void)
{
    struct random_state r;
    random_seed(&r, 106);
    for (int i = 0; i < soak_count(300); i++) {
        const double lower = random_uniform(&r, -3, 1), upper = lower + random_log_uniform(&r, 0.1, 6);
        const double guard = random_uniform(&r, -0.5, 0.45) * (upper - lower), s = random_log_uniform(&r, 0.1, 5);
        const double u = s * random_log_uniform(&r, 1e-3, 1e3), total = hypot(s, u);
        double consumer, producer;
        EXPECT_OK(vtx_global_risk_between(lower, upper, lower + guard, upper - guard, 0, s, u, &consumer, &producer));
        const double conforming = normal_probability(upper / s) - normal_probability(lower / s);
        const double accepted = normal_probability((upper - guard) / total) - normal_probability((lower + guard) / total);
        EXPECT_WITHIN(accepted - consumer, conforming - producer, 1e-12);
        EXPECT(consumer >= 0 && producer >= 0 && consumer <= 1 && producer <= 1);
    }
}

static void a_wide_second_limit_leaves_the_risks_of_one(void)
{
    double one, two, producer_one, producer_two;
    EXPECT_OK(vtx_global_risk(VTX_TOLERANCE_LOWER, -1, -0.8, 0.2, 1, 0.3, &one, &producer_one));
    EXPECT_OK(vtx_global_risk_between(-1, 40, -0.8, 40, 0.2, 1, 0.3, &two, &producer_two));
    EXPECT_WITHIN(two, one, 1e-14);
    EXPECT_WITHIN(producer_two, producer_one, 1e-14);
}

static void a_guard_band_trades_consumers_risk_for_producers_risk(void)
{
    double before = 1, producer_before = 0;
    for (double guard = -0.3; guard <= 0.6; guard += 0.1) {
        double consumer, producer;
        EXPECT_OK(vtx_global_risk_between(-1, 1, -1 + guard, 1 - guard, 0.1, 0.6, 0.2, &consumer, &producer));
        EXPECT(consumer < before && producer > producer_before);
        before = consumer;
        producer_before = producer;
    }
}

/* A value that stands at its acceptance limit conforms with the probability left by the risk, whatever the degrees of freedom. */
static void guard_band_and_conformance_probability_agree(void)
{
    static const double freedom[] = { 0, 1, 3, 8, 40.5, 1e5 };
    for (size_t f = 0; f < sizeof freedom / sizeof freedom[0]; f++)
        for (double risk = 1e-5; risk < 0.4; risk *= 2.5)
            for (int32_t side = VTX_TOLERANCE_UPPER; side <= VTX_TOLERANCE_LOWER; side++) {
                double guard, acceptance, probability, deciding;
                EXPECT_OK(vtx_guard_band(risk, 0.7, freedom[f], &guard));
                EXPECT_OK(vtx_acceptance_limit(side, -20, guard, &acceptance));
                EXPECT_OK(vtx_conformance_probability(side, -20, acceptance, 0.7, freedom[f], &probability));
                EXPECT_WITHIN(1 - probability, risk, 1e-11);
                EXPECT_OK(vtx_deciding_uncertainty(risk, guard, freedom[f], &deciding));
                EXPECT_NEAR(deciding, 0.7, 1e-12);
            }
}

static void probabilities_of_one_and_two_limits_agree(void)
{
    struct random_state r;
    random_seed(&r, 7);
    for (int i = 0; i < 200; i++) {
        const double lower = random_uniform(&r, -2, 2), upper = lower + random_log_uniform(&r, 0.01, 10);
        const double y = random_uniform(&r, -4, 4), u = random_log_uniform(&r, 0.05, 3), freedom = i % 2 ? 0 : random_log_uniform(&r, 1, 1e4);
        double at_least, at_most, both;
        EXPECT_OK(vtx_conformance_probability(VTX_TOLERANCE_LOWER, lower, y, u, freedom, &at_least));
        EXPECT_OK(vtx_conformance_probability(VTX_TOLERANCE_UPPER, upper, y, u, freedom, &at_most));
        EXPECT_OK(vtx_conformance_probability_between(lower, upper, y, u, freedom, &both));
        EXPECT_WITHIN(both, at_least + at_most - 1, 1e-12);
        EXPECT(both >= 0 && both <= 1);
    }
}

static void a_verdict_turns_at_the_guard_bands_ends(void)
{
    static const double values[] = { 3, 8.999, 9, 9.001, 10.999, 11, 40 };
    static const int32_t upper[] = { VTX_VERDICT_PASS, VTX_VERDICT_PASS, VTX_VERDICT_PASS, VTX_VERDICT_NOT_DECIDABLE,
                                     VTX_VERDICT_NOT_DECIDABLE, VTX_VERDICT_FAIL, VTX_VERDICT_FAIL };
    for (int i = 0; i < 7; i++) {
        int32_t most, least, both;
        EXPECT_OK(vtx_decide(VTX_TOLERANCE_UPPER, 10, values[i], 1, &most));
        EXPECT_OK(vtx_decide(VTX_TOLERANCE_LOWER, -10, -values[i], 1, &least));
        EXPECT_OK(vtx_decide_between(-10, 10, -values[i], 1, &both));
        EXPECT(most == upper[i] && least == upper[i] && both == upper[i]);
    }
    int32_t narrow;
    EXPECT_OK(vtx_decide_between(0, 1, 0.5, 0.6, &narrow));
    EXPECT(narrow == VTX_VERDICT_NOT_DECIDABLE);
}

/* Values at the limit, normal errors: the share that passes, and the share that fails, is the risk. */
static void a_value_at_the_limit_is_misjudged_as_often_as_the_risk_says(void)
{
    enum { TRIALS = 40000 };
    struct random_state r;
    double guard;
    int passed = 0, failed = 0;
    random_seed(&r, 14253);
    EXPECT_OK(vtx_guard_band(0.05, 0.8, 0, &guard));
    for (int i = 0; i < TRIALS; i++) {
        int32_t verdict;
        EXPECT_OK(vtx_decide(VTX_TOLERANCE_UPPER, -20, -20 + 0.8 * random_normal(&r), guard, &verdict));
        passed += verdict == VTX_VERDICT_PASS;
        failed += verdict == VTX_VERDICT_FAIL;
    }
    /* Four standard deviations of a binomial count. */
    EXPECT_WITHIN((double)passed / TRIALS, 0.05, 4 * sqrt(0.05 * 0.95 / TRIALS));
    EXPECT_WITHIN((double)failed / TRIALS, 0.05, 4 * sqrt(0.05 * 0.95 / TRIALS));
}

static void what_is_no_decision_is_refused(void)
{
    double x, y;
    int32_t verdict;
    EXPECT_STATUS(vtx_guard_band(0.5, 1, 0, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_guard_band(1.5, 1, 0, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_guard_band(0.05, 1, 0.5, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_decide_between(1, 1, 1, 0, &verdict), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_decide(VTX_TOLERANCE_INTERVAL, 1, 1, 0, &verdict), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_decide(VTX_TOLERANCE_UPPER, 1, 1, -1, &verdict), VTX_BAD_ARGUMENT);
    EXPECT(verdict == -1);
    EXPECT_STATUS(vtx_global_risk_between(-1, 1, 0.5, 0.5, 0, 1, 1, &x, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_global_risk(VTX_TOLERANCE_UPPER, 1, 1, 0, 1, 1e-7, &x, &y), VTX_OUT_OF_RANGE);
    EXPECT(isnan(x) && isnan(y));
    EXPECT_OK(vtx_deciding_uncertainty(0.05, 0, 8, &x));
    EXPECT(x == 0);
}

static const struct test_case tests[] = {
    { "published decisions are met", published_decisions_are_met },
    { "risks at the process mean have their closed form", risks_at_the_process_mean_have_their_closed_form },
    { "shares of a process add up", shares_of_a_process_add_up },
    { "a wide second limit leaves the risks of one", a_wide_second_limit_leaves_the_risks_of_one },
    { "a guard band trades consumer's risk for producer's risk", a_guard_band_trades_consumers_risk_for_producers_risk },
    { "guard band and conformance probability agree", guard_band_and_conformance_probability_agree },
    { "probabilities of one and two limits agree", probabilities_of_one_and_two_limits_agree },
    { "a verdict turns at the guard band's ends", a_verdict_turns_at_the_guard_bands_ends },
    { "a value at the limit is misjudged as often as the risk says", a_value_at_the_limit_is_misjudged_as_often_as_the_risk_says },
    { "what is no decision is refused", what_is_no_decision_is_refused },
};
TEST_SUITE(decision, tests);
