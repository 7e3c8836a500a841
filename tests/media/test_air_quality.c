/* Purity classes of compressed air against the standard's tables. */
#include <vtx/air_quality.h>

#include "../harness/harness.h"

static int air_quality_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    int32_t number = -1;
    if (strcmp(row->quantity, "class_dew_point") == 0)
        return vtx_water_class_dew_point((int32_t)x[0], actual), 1;
    if (strcmp(row->quantity, "class_liquid") == 0)
        return vtx_water_class_liquid((int32_t)x[0], actual), 1;
    if (strcmp(row->quantity, "content") == 0)
        return vtx_water_content((int32_t)x[0], x[1], x[2], x[3], x[4], actual), 1;
    if (strcmp(row->quantity, "water_class") == 0)
        vtx_water_class(x[0], x[1], &number);
    else if (strcmp(row->quantity, "particle_class") == 0)
        vtx_particle_class(x[0], x[1], x[2], x[3], &number);
    else if (strcmp(row->quantity, "oil_class") == 0)
        vtx_oil_class(x[0], &number);
    else
        return 0;
    *actual = number;
    return 1;
}

static void the_standard_s_tables_are_reproduced(void) { check_rows("air_quality.csv", air_quality_row, 45); }

/* The limit of a class belongs to it; a little more belongs to the next. */
static void every_limit_belongs_to_its_class(void)
{
    double limit, fine, medium, coarse;
    int32_t found;
    for (int32_t c = 1; c <= 9; c++) {
        if (c <= 6) {
            EXPECT_OK(vtx_water_class_dew_point(c, &limit));
            EXPECT_OK(vtx_water_class(limit, 0, &found));
            EXPECT(found == c);
            EXPECT_OK(vtx_water_class(limit + 1e-6, 0, &found));
            EXPECT(found == c + 1);
        } else {
            EXPECT_OK(vtx_water_class_liquid(c, &limit));
            EXPECT_OK(vtx_water_class(300, limit, &found));
            EXPECT(found == c);
            EXPECT_OK(vtx_water_class(300, limit * 1.001, &found));
            EXPECT(found == (c == 9 ? VTX_AIR_CLASS_X : c + 1));
        }
    }
    for (int32_t c = 1; c <= 5; c++) {
        EXPECT_OK(vtx_particle_class_counts(c, &fine, &medium, &coarse));
        EXPECT_OK(vtx_particle_class(isnan(fine) ? 1e9 : fine, isnan(medium) ? 1e9 : medium, coarse, 0, &found));
        EXPECT(found == c);
        EXPECT(isnan(fine) == (c >= 3) && isnan(medium) == (c >= 4));
    }
    for (int32_t c = 6; c <= 7; c++) {
        EXPECT_OK(vtx_particle_class_mass(c, &limit));
        EXPECT_OK(vtx_particle_class(0, 0, 0, limit, &found));
        EXPECT(found == c);
    }
    for (int32_t c = 1; c <= 4; c++) {
        EXPECT_OK(vtx_oil_class_limit(c, &limit));
        EXPECT_OK(vtx_oil_class(limit, &found));
        EXPECT(found == c);
    }
}

static void what_is_no_class_is_refused(void)
{
    static const int32_t never[] = { 0, -1, 10, 89, 91, 29999, INT32_MAX, INT32_MIN };
    double x, y = 1, z = 1;
    int32_t found;
    for (size_t i = 0; i < sizeof never / sizeof never[0]; i++) {
        EXPECT_STATUS(vtx_water_class_dew_point(never[i], &x), VTX_BAD_ARGUMENT);
        EXPECT(isnan(x));
        EXPECT_STATUS(vtx_water_class_liquid(never[i], &x), VTX_BAD_ARGUMENT);
        EXPECT_STATUS(vtx_particle_class_mass(never[i], &x), VTX_BAD_ARGUMENT);
        EXPECT_STATUS(vtx_oil_class_limit(never[i], &x), VTX_BAD_ARGUMENT);
        EXPECT_STATUS(vtx_particle_class_counts(never[i], &x, &y, &z), VTX_BAD_ARGUMENT);
        EXPECT(isnan(x) && isnan(y) && isnan(z));
    }
    EXPECT_STATUS(vtx_water_class_dew_point(7, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_water_class_dew_point(VTX_AIR_CLASS_X, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_water_class_liquid(6, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_particle_class_counts(6, &x, NULL, NULL), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_particle_class_counts(1, &x, NULL, NULL));
    EXPECT_STATUS(vtx_particle_class_mass(5, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_oil_class_limit(5, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_water_class_dew_point(1, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_particle_class_counts(1, NULL, &y, &z), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_water_class(-40, 0, &found), VTX_BAD_ARGUMENT);
    EXPECT(found == -1);
    EXPECT_STATUS(vtx_water_class(40, 0, &found), VTX_OUT_OF_RANGE);
}

static void content_and_dew_point_are_inverse(void)
{
    struct random_state r;
    random_seed(&r, 51);
    for (int i = 0; i < 5000; i++) {
        const int32_t model = i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL;
        const double line = random_log_uniform(&r, 2e5, 2e6), dew = random_uniform(&r, 190, 300);
        double content, back;
        EXPECT_OK(vtx_water_content(model, line, dew, 1e5, 293.15 + 20 * (i % 3), &content));
        EXPECT_OK(vtx_pressure_dew_point(model, line, content, 1e5, 293.15 + 20 * (i % 3), &back));
        EXPECT_WITHIN(back, dew, 2e-9);
    }
}

static void water_that_the_reference_cannot_hold_is_refused(void)
{
    double x;
    EXPECT_STATUS(vtx_water_content(VTX_AIR_REAL, 8e5, 340, 1e5, 293.15, &x), VTX_OUT_OF_RANGE);
    EXPECT(isnan(x));
    EXPECT_STATUS(vtx_pressure_dew_point(VTX_AIR_REAL, 8e5, 0.02, 1e5, 293.15, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_dew_point(VTX_AIR_REAL, 8e5, 0, 1e5, 293.15, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_pressure_dew_point(VTX_AIR_REAL, 8e5, 1e-300, 1e5, 293.15, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_water_content(VTX_AIR_REAL, 276.15, 8e5, 1e5, 293.15, &x), VTX_OUT_OF_RANGE);
    EXPECT(isnan(x));
}

static const struct test_case tests[] = {
    { "the standard's tables are reproduced", the_standard_s_tables_are_reproduced },
    { "every limit belongs to its class", every_limit_belongs_to_its_class },
    { "what is no class is refused", what_is_no_class_is_refused },
    { "content and dew point are inverse", content_and_dew_point_are_inverse },
    { "water that the reference cannot hold is refused", water_that_the_reference_cannot_hold_is_refused },
};
TEST_SUITE(air_quality, tests);
