/* Perfect-gas flow without losses against published values and its own inverses. */
#include <vtx/isentropic.h>

#include "../harness/harness.h"

static int isentropic_row(const struct data_row *row, double *actual)
{
    if (strcmp(row->quantity, "critical_pressure_ratio") == 0)
        return vtx_critical_pressure_ratio(row->input[0], actual), 1;
    if (strcmp(row->quantity, "critical_temperature") == 0) {
        double ratio = 0;
        EXPECT_OK(vtx_critical_pressure_ratio(row->input[0], &ratio));
        return vtx_isentropic_temperature(row->input[0], 1e6, row->input[1], 1e6 * ratio, actual), 1;
    }
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("isentropic.csv", isentropic_row, 3); }

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
};
TEST_SUITE(isentropic, tests);
