/* Water and ice at saturation against published values. */
#include <vtx/water.h>

#include "../harness/harness.h"

static int water_row(const struct data_row *row, double *actual)
{
    if (strcmp(row->quantity, "saturation_pressure") == 0)
        return vtx_water_saturation_pressure(row->input[0], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("water.csv", water_row, 3); }

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
};
TEST_SUITE(water, tests);
