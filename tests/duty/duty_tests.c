/* The duty layer's test program. */
#include "../harness/harness.h"

extern const struct call_description calls_duty[];
extern const size_t calls_duty_count;
extern const struct test_suite suite_exposure, suite_noise;

static void misuse_and_batch_rules_hold_for_every_call(void)
{
    check_calls(calls_duty, calls_duty_count, "calls_duty.txt", NULL);
}

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(duty_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = { &suite_duty_calls, &suite_exposure, &suite_noise };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
