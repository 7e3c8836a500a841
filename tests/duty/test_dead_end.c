/* Dead-end pressure. */
#include <vtx/dead_end.h>
#include <vtx/restriction.h>
#include <vtx/units.h>

#include "../harness/harness.h"

enum { RANDOM_CASES = 10000 };

static void supply_and_dead_end_pressure_invert(void)
{
    struct random_state r;
    random_seed(&r, 21);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double gamma = random_uniform(&r, 1.1, 1.67), feed = random_log_uniform(&r, 1e-7, 1e-3);
        const double relief = feed * random_log_uniform(&r, 1e-3, 30), ambient = random_uniform(&r, 7e4, 1.1e5);
        const double supply = ambient * (1 + random_log_uniform(&r, 1e-6, 15));
        double pressure, back;
        EXPECT_OK(vtx_dead_end_pressure(gamma, feed, relief, supply, ambient, &pressure));
        EXPECT(pressure >= ambient && pressure <= supply);
        EXPECT_OK(vtx_dead_end_supply_pressure(gamma, feed, relief, ambient, pressure, &back));
        /* the root is good to 1e-12 of the supply pressure; the inverse is steeper, by the square of the area ratio at most */
        const double steep = 1 + (relief / feed) * (relief / feed);
        EXPECT_WITHIN(back, supply, 4e-12 * supply * steep);
    }
}

static void what_enters_leaves_through_the_relief(void)
{
    struct random_state r;
    random_seed(&r, 22);
    vtx_gas air;
    EXPECT_OK(vtx_gas_init(&air));
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double feed = random_log_uniform(&r, 1e-7, 1e-3), relief = feed * random_log_uniform(&r, 0.1, 3);
        const double supply = random_log_uniform(&r, 1.2e5, 1.2e6);
        double pressure, in, out;
        int32_t choked;
        EXPECT_OK(vtx_dead_end_pressure(air.heat_capacity_ratio, feed, relief, supply, 1e5, &pressure));
        EXPECT_OK(vtx_orifice_mass_flow(&air, feed, 1, supply, 300, pressure, &in, &choked));
        EXPECT_OK(vtx_orifice_mass_flow(&air, relief, 1, pressure, 300, 1e5, &out, &choked));
        EXPECT_NEAR(in, out, 1e-8);
    }
}

static void two_sonic_openings_share_by_their_areas(void)
{
    double pressure;
    EXPECT_OK(vtx_dead_end_pressure(1.4, 2e-6, 5e-6, 8e5, 1e5, &pressure));
    EXPECT_NEAR(pressure, 3.2e5, 1e-11);
}

static void without_relief_the_supply_pressure_stands_at_the_opening(void)
{
    double pressure;
    EXPECT_OK(vtx_dead_end_pressure(1.4, 2e-6, 0, 8e5, 1e5, &pressure));
    EXPECT_NEAR(pressure, 8e5, 1e-12);
    EXPECT_OK(vtx_dead_end_pressure(1.4, 2e-6, 5e-6, 1e5, 1e5, &pressure));
    EXPECT_NEAR(pressure, 1e5, 1e-15);
    EXPECT_STATUS(vtx_dead_end_pressure(1.4, 2e-6, 5e-6, 0.9e5, 1e5, &pressure), VTX_BAD_ARGUMENT);
    EXPECT(isnan(pressure));
    EXPECT_STATUS(vtx_dead_end_supply_pressure(1.4, 1e-11, 9, 1e5, 5e5, &pressure), VTX_OUT_OF_RANGE);
}

static void thirty_psi_itself_is_not_below_thirty_psi(void)
{
    vtx_dead_end verdict;
    /* an ambient pressure for which the difference is exact */
    EXPECT_OK(vtx_cleaning_air_verdict(2 * VTX_CLEANING_AIR_LIMIT, VTX_CLEANING_AIR_LIMIT, &verdict));
    EXPECT(verdict.margin == 0 && verdict.cleaning_permitted == 0);
    EXPECT_OK(vtx_cleaning_air_verdict(3.1e5, 1e5, &verdict));
    EXPECT(verdict.cleaning_permitted == 0 && verdict.advisories == VTX_ADVISORY_DEAD_END_PRESSURE && verdict.margin < 0);
    EXPECT_OK(vtx_cleaning_air_verdict(3.0e5, 1e5, &verdict));
    EXPECT(verdict.cleaning_permitted == 1 && verdict.advisories == 0);
    EXPECT_NEAR(verdict.gauge_pressure, 2e5, 1e-15);
    EXPECT_NEAR(verdict.margin, VTX_CLEANING_AIR_LIMIT - 2e5, 1e-12);
    EXPECT_OK(vtx_cleaning_air_verdict(1e5, 1e5, &verdict));
    EXPECT(verdict.gauge_pressure == 0 && verdict.cleaning_permitted == 1);
    EXPECT_STATUS(vtx_cleaning_air_verdict(0.9e5, 1e5, &verdict), VTX_BAD_ARGUMENT);
    EXPECT(isnan(verdict.margin) && verdict.cleaning_permitted == -1);
}

static void the_limit_is_that_of_the_units_room(void)
{
    double limit;
    EXPECT_OK(vtx_pressure_to_si("psig", 101325, 30, &limit));
    EXPECT_NEAR(limit - 101325, VTX_CLEANING_AIR_LIMIT, 1e-14);
}

static const struct test_case tests[] = {
    { "supply and dead-end pressure invert", supply_and_dead_end_pressure_invert },
    { "what enters leaves through the relief", what_enters_leaves_through_the_relief },
    { "two sonic openings share by their areas", two_sonic_openings_share_by_their_areas },
    { "without relief the supply pressure stands at the opening", without_relief_the_supply_pressure_stands_at_the_opening },
    { "thirty psi itself is not below thirty psi", thirty_psi_itself_is_not_below_thirty_psi },
    { "the limit is that of the units room", the_limit_is_that_of_the_units_room },
};
TEST_SUITE(dead_end, tests);
