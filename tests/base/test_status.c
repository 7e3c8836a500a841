/* Codes, advisories, version. */
#include <vtx/status.h>
#include <vtx/version.h>

#include "../harness/harness.h"

static void every_code_has_its_own_text(void)
{
    for (int32_t a = VTX_OK; a <= VTX_PARTIAL; a++) {
        EXPECT(strcmp(vtx_status_text(a), "unknown status") != 0);
        for (int32_t b = a + 1; b <= VTX_PARTIAL; b++)
            EXPECT(strcmp(vtx_status_text(a), vtx_status_text(b)) != 0);
    }
    EXPECT(strcmp(vtx_status_text(-1), "unknown status") == 0);
    EXPECT(strcmp(vtx_status_text(7), "unknown status") == 0);
    EXPECT(strcmp(vtx_status_text(INT32_MIN), "unknown status") == 0);
}

static void every_advisory_has_its_own_text(void)
{
    for (int a = 0; a < 30; a++) {
        EXPECT(strcmp(vtx_advisory_text((int32_t)1 << a), "unknown advisory") != 0);
        for (int b = a + 1; b < 30; b++)
            EXPECT(strcmp(vtx_advisory_text((int32_t)1 << a), vtx_advisory_text((int32_t)1 << b)) != 0);
    }
    EXPECT(strcmp(vtx_advisory_text(0), "unknown advisory") == 0);
    EXPECT(strcmp(vtx_advisory_text(3), "unknown advisory") == 0);
    EXPECT(strcmp(vtx_advisory_text(1 << 30), "unknown advisory") == 0);
}

static void codes_keep_their_numbers(void)
{
    EXPECT(VTX_OK == 0 && VTX_BAD_ARGUMENT == 1 && VTX_OUT_OF_RANGE == 2 && VTX_NO_SOLUTION == 3);
    EXPECT(VTX_NOT_CONVERGED == 4 && VTX_NO_MEMORY == 5 && VTX_PARTIAL == 6);
    EXPECT(VTX_ADVISORY_EXTRAPOLATED == 1 && VTX_ADVISORY_DEAD_END_PRESSURE == 1 << 29);
}

static void the_version_number_is_the_version_text(void)
{
    char text[32];
    const int32_t n = vtx_version_number();
    snprintf(text, sizeof text, "%d.%d.%d", (int)(n / 10000), (int)(n / 100 % 100), (int)(n % 100));
    EXPECT(strcmp(text, vtx_version()) == 0);
}

static const struct test_case tests[] = {
    { "every code has its own text", every_code_has_its_own_text },
    { "every advisory has its own text", every_advisory_has_its_own_text },
    { "codes keep their numbers", codes_keep_their_numbers },
    { "the version number is the version text", the_version_number_is_the_version_text },
};
TEST_SUITE(status, tests);
