/* The base layer's test program. */
#include <vtx/trend.h>

#include "../harness/harness.h"

extern const struct call_description calls_base[];
extern const size_t calls_base_count;
extern const struct test_suite suite_batch, suite_budget, suite_quantity, suite_root, suite_status, suite_units;
extern const struct test_suite suite_decision, suite_distribution, suite_elementary, suite_least_squares, suite_propagation, suite_robust, suite_stream, suite_trend;

/* A drop that rises by 3 kPa a month. */
static int sample_record(const char *type, void *record)
{
    static const double times[] = { 0, 2.6e6, 5.2e6, 7.8e6, 1.04e7 }, drops[] = { 1.21e4, 1.5e4, 1.78e4, 2.13e4, 2.39e4 },
                        uncertainties[] = { 400, 400, 400, 500, 500 };
    return strcmp(type, "vtx_trend") == 0 && vtx_trend_fit(times, drops, uncertainties, 5, VTX_TREND_EVEN, record) == 0;
}

static void misuse_and_batch_rules_hold_for_every_call(void) { check_calls(calls_base, calls_base_count, "calls_base.txt", sample_record); }

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(base_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = { &suite_base_calls,   &suite_batch,         &suite_budget, &suite_quantity,
                                                       &suite_root,         &suite_status,        &suite_units,
                                                       &suite_decision, &suite_distribution, &suite_elementary, &suite_least_squares, &suite_propagation,
                                                       &suite_robust, &suite_stream, &suite_trend };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
