/* Standard bores: the tables, their order, and what lies outside them. */
#include <vtx/bore.h>

#include "../harness/harness.h"

static const struct { const char *name; int32_t series; } all[] = {
    { "schedule_40", VTX_BORE_SCHEDULE_40 }, { "en10255_medium", VTX_BORE_EN10255_MEDIUM }, { "hose_inch", VTX_BORE_HOSE_INCH },
    { "hose_metric", VTX_BORE_HOSE_METRIC }, { "push_in", VTX_BORE_PUSH_IN },
};

static int bore_row(const struct data_row *row, double *actual)
{
    for (size_t i = 0; i < sizeof all / sizeof all[0]; i++)
        if (strcmp(row->quantity, all[i].name) == 0) {
            vtx_bore bore;
            EXPECT_OK(vtx_bore_at(all[i].series, (int32_t)row->input[0], &bore));
            return *actual = bore.diameter, 1;
        }
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("bore.csv", bore_row, 16); }

static void every_series_rises_and_has_names(void)
{
    for (size_t i = 0; i < sizeof all / sizeof all[0]; i++) {
        int32_t count;
        double before = 0;
        EXPECT_OK(vtx_bore_count(all[i].series, &count));
        EXPECT(count >= 4);
        for (int32_t k = 0; k < count; k++) {
            vtx_bore bore, found;
            EXPECT_OK(vtx_bore_at(all[i].series, k, &bore));
            EXPECT(bore.diameter > before && bore.diameter < 0.2);
            EXPECT(isnan(bore.outside_diameter) || bore.outside_diameter > bore.diameter + 1.9e-3);
            EXPECT(bore.series == all[i].series && bore.index == k && bore.roughness > 0 && bore.spare == 0);
            EXPECT(bore.advisories == (isnan(bore.outside_diameter) ? VTX_ADVISORY_FIELD_UNAVAILABLE : 0));
            EXPECT((bore.advisories != 0) == (strstr(vtx_bore_name(all[i].series, k), "hose") != NULL));
            EXPECT(strlen(vtx_bore_name(all[i].series, k)) > 8 && strcmp(vtx_bore_name(all[i].series, k), "unknown bore") != 0);
            EXPECT_OK(vtx_bore_at_least(all[i].series, bore.diameter, &found));
            EXPECT(found.index == k);
            EXPECT_OK(vtx_bore_at_least(all[i].series, 0.5 * (before + bore.diameter) + 1e-6, &found));
            EXPECT(found.index == k);
            before = bore.diameter;
        }
        vtx_bore bore;
        EXPECT_STATUS(vtx_bore_at_least(all[i].series, before * 1.0001, &bore), VTX_NO_SOLUTION);
        EXPECT_STATUS(vtx_bore_at(all[i].series, count, &bore), VTX_BAD_ARGUMENT);
        EXPECT(isnan(bore.diameter) && bore.series == -1 && bore.index == -1 && bore.advisories == -1);
        EXPECT(strcmp(vtx_bore_name(all[i].series, count), "unknown bore") == 0);
    }
}

static void an_unknown_series_is_refused(void)
{
    int32_t count;
    vtx_bore bore;
    EXPECT_STATUS(vtx_bore_count(0, &count), VTX_BAD_ARGUMENT);
    EXPECT(count == -1);
    EXPECT_STATUS(vtx_bore_count(VTX_BORE_PUSH_IN, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_bore_at(VTX_BORE_PUSH_IN + 1, 0, &bore), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_bore_at(VTX_BORE_PUSH_IN, -1, &bore), VTX_BAD_ARGUMENT);
    EXPECT(strcmp(vtx_bore_name(0, 0), "unknown bore") == 0);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "every series rises and has names", every_series_rises_and_has_names },
    { "an unknown series is refused", an_unknown_series_is_refused },
};
TEST_SUITE(bore, tests);
