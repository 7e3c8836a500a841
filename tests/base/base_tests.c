/* The base layer's test program. */
#include "../harness/harness.h"

extern const struct call_description calls_base[];
extern const size_t calls_base_count;
extern const struct test_suite suite_batch, suite_quantity, suite_root, suite_status, suite_units;
extern const struct test_suite suite_decision, suite_distribution, suite_elementary, suite_least_squares, suite_propagation, suite_robust;

static void misuse_and_batch_rules_hold_for_every_call(void) { check_calls(calls_base, calls_base_count, "calls_base.txt", NULL); }

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(base_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = { &suite_base_calls,   &suite_batch,         &suite_quantity,
                                                       &suite_root,         &suite_status,        &suite_units,
                                                       &suite_decision, &suite_distribution, &suite_elementary, &suite_least_squares, &suite_propagation,
                                                       &suite_robust };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
