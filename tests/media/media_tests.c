/* The media layer's test program. */
#include "../harness/harness.h"

extern const struct call_description calls_media[];
extern const size_t calls_media_count;
extern const struct test_suite suite_air, suite_air_quality, suite_atmosphere, suite_media_vector, suite_moist_air, suite_moist_laws, suite_moist_pair, suite_process, suite_virials,
    suite_water, suite_wet_bulb;

static void misuse_and_batch_rules_hold_for_every_call(void)
{
    check_calls(calls_media, calls_media_count, "calls_media.txt", NULL);
}

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(media_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = {
        &suite_media_calls, &suite_air, &suite_air_quality, &suite_atmosphere, &suite_media_vector, &suite_moist_air, &suite_moist_laws, &suite_moist_pair, &suite_process,
        &suite_virials, &suite_water, &suite_wet_bulb
    };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
