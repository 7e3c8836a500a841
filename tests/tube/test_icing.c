/* Ice in the cold stream: against the separation over all cold fractions. */
#include <vtx/icing.h>
#include <vtx/moist_air.h>

#include "../harness/harness.h"

static const double p0 = 7e5, t0 = 293.15, pa = 101325;

static double ice_at(const vtx_tube *tube, double w, double pc, double mu)
{
    vtx_streams s;
    EXPECT_OK(vtx_tube_separate(tube, VTX_AIR_REAL, p0, t0, w, pc, pc, mu, &s));
    return s.condensed * s.frozen_share;
}

static void outlet_ices_within_the_range_and_nowhere_else(const vtx_tube *tube, double w, double pc)
{
    vtx_icing i;
    EXPECT_OK(vtx_icing_range(tube, p0, t0, w, pc, &i));
    for (int k = 0; k <= 200; k++) {
        const double mu = k / 200.0, ice = ice_at(tube, w, pc, mu);
        const int inside = !isnan(i.icing_from) && mu > i.icing_from + 1e-9 && mu < i.icing_to - 1e-9;
        const int outside = isnan(i.icing_from) || mu < i.icing_from - 1e-9 || mu > i.icing_to + 1e-9;
        if (inside)
            EXPECT(ice > 0);
        if (outside)
            EXPECT(ice == 0);
        EXPECT(ice <= i.most_ice * (1 + 1e-9) + 1e-12);
    }
    EXPECT(isnan(i.icing_from) == !(i.advisories & VTX_ADVISORY_FREEZING));
    if (!isnan(i.icing_from)) {
        EXPECT(i.widest_from <= i.icing_from && i.widest_to >= i.icing_to);
        EXPECT(i.ice_temperature <= 273.16 && i.fog_temperature >= i.ice_temperature);
    }
}

static void range_of_ice_agrees_with_the_separation(void)
{
    vtx_tube tube;
    EXPECT_OK(vtx_tube_init(&tube));
    for (double w = 1e-5; w < 2e-2; w *= 1.6) {
        outlet_ices_within_the_range_and_nowhere_else(&tube, w, pa);
        outlet_ices_within_the_range_and_nowhere_else(&tube, w, 2e5);
    }
    tube.cold_leak = 0.03;
    for (double w = 5e-4; w < 1e-2; w *= 2)
        outlet_ices_within_the_range_and_nowhere_else(&tube, w, pa);
}

static void ends_of_the_widest_range_belong_to_the_best_tube(void)
{
    vtx_tube tube, best;
    vtx_icing typical, strong;
    EXPECT_OK(vtx_tube_init(&tube));
    best = tube;
    best.peak_efficiency = tube.efficiency_high;
    EXPECT_OK(vtx_icing_range(&tube, p0, t0, 1.5e-3, pa, &typical));
    EXPECT_OK(vtx_icing_range(&best, p0, t0, 1.5e-3, pa, &strong));
    EXPECT_NEAR(typical.widest_from + 1, strong.icing_from + 1, 1e-12);
    EXPECT_NEAR(typical.widest_to, strong.icing_to, 1e-12);
}

/* Frost point of the feed at the outlet's pressure; dry feed has none. */
static void ice_starts_at_the_frost_point(void)
{
    vtx_tube tube;
    vtx_icing i;
    double frost;
    EXPECT_OK(vtx_tube_init(&tube));
    EXPECT_OK(vtx_icing_range(&tube, p0, t0, 1e-3, pa, &i));
    EXPECT_OK(vtx_frost_point(VTX_AIR_REAL, pa, 1e-3, &frost));
    EXPECT_WITHIN(i.ice_temperature, frost, 1e-8);
    EXPECT_WITHIN(i.fog_temperature, frost, 1e-8);
    EXPECT_OK(vtx_icing_range(&tube, p0, t0, 8e-3, pa, &i));
    EXPECT(i.ice_temperature == 273.16 && i.fog_temperature > 273.16);
    EXPECT_OK(vtx_icing_range(&tube, p0, t0, 0, pa, &i));
    EXPECT(isnan(i.ice_temperature) && isnan(i.icing_from) && i.most_ice == 0 && (i.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
}

static void ice_per_hour_is_the_cold_streams_share(void)
{
    vtx_tube tube;
    vtx_streams s;
    double ice, liquid;
    EXPECT_OK(vtx_tube_init(&tube));
    EXPECT_OK(vtx_tube_separate(&tube, VTX_AIR_REAL, p0, t0, 2e-3, pa, pa, 0.4, &s));
    EXPECT_OK(vtx_cold_condensate_flow(&s, 2e-3, 0.01, &ice, &liquid));
    EXPECT(ice > 0 && liquid == 0);
    EXPECT_NEAR(ice, 0.01 * 0.4 / 1.002 * s.condensed, 1e-13);
    EXPECT_OK(vtx_tube_separate(&tube, VTX_AIR_REAL, p0, t0, 2e-3, pa, pa, 0.95, &s));
    EXPECT_OK(vtx_cold_condensate_flow(&s, 2e-3, 0.01, &ice, NULL));
    EXPECT(ice == 0);
    s.frozen_share = 2;
    EXPECT_STATUS(vtx_cold_condensate_flow(&s, 2e-3, 0.01, &ice, &liquid), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "range of ice agrees with the separation", range_of_ice_agrees_with_the_separation },
    { "ends of the widest range belong to the best tube", ends_of_the_widest_range_belong_to_the_best_tube },
    { "ice starts at the frost point", ice_starts_at_the_frost_point },
    { "ice per hour is the cold stream's share", ice_per_hour_is_the_cold_streams_share },
};
TEST_SUITE(icing, tests);
