/* The tube layer's test program. */
#include <vtx/separation.h>

#include "../harness/harness.h"

extern const struct call_description calls_tube[];
extern const size_t calls_tube_count;
extern const struct test_suite suite_laws, suite_separation, suite_setting;

static int make_record(const char *type, void *record)
{
    if (strcmp(type, "vtx_tube") == 0)
        return vtx_tube_init(record) == VTX_OK;
    return 0;
}

static void misuse_and_batch_rules_hold_for_every_call(void)
{
    check_calls(calls_tube, calls_tube_count, "calls_tube.txt", make_record);
}

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(tube_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = { &suite_tube_calls, &suite_laws, &suite_separation, &suite_setting };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
