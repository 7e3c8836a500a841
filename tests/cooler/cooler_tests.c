/* The cooler layer's test program. */
#include "../harness/harness.h"
#include "sample_job.h"

extern const struct call_description calls_cooler[];
extern const size_t calls_cooler_count;
extern const struct test_suite suite_acceptance, suite_commissioning, suite_cooler, suite_diagnosis, suite_job, suite_selection, suite_sizing, suite_uncertainty, suite_wear, suite_wish, suite_worked_job;

static void misuse_and_batch_rules_hold_for_every_call(void)
{
    check_calls(calls_cooler, calls_cooler_count, "calls_cooler.txt", sample_record);
}

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(cooler_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = { &suite_cooler_calls, &suite_acceptance, &suite_commissioning, &suite_cooler, &suite_diagnosis, &suite_job, &suite_selection,
                                                       &suite_sizing,       &suite_uncertainty, &suite_wear, &suite_wish, &suite_worked_job };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
