/* The job worked by hand in worked_job.md. */
#include "sample_job.h"

static void the_library_gives_what_the_pocket_calculator_gave(void)
{
    vtx_job job;
    vtx_operating_point p;
    vtx_work w;
    double rated, area;
    vtx_job_init(&job);
    job.cooler.rated_free_air_flow = 0.6 / 60;
    job.cooler.reference_humidity = 0;
    job.supply.pressure = 7.5e5;
    job.supply.temperature = 298.15;
    job.supply.humidity_kind = VTX_SUPPLY_HUMIDITY_RATIO;
    job.supply.humidity = 0;
    job.setting.model = VTX_AIR_IDEAL;
    job.setting.cold_fraction = 0.5;
    job.duty.target_temperature = 318.15;
    EXPECT_OK(vtx_chain_conductance(5e-8, 0.3, &job.line[0]));
    job.elements = 1;
    EXPECT_OK(vtx_cooler_rated_mass_flow(&job.cooler, &rated));
    EXPECT_OK(vtx_cooler_inlet_area(&job.cooler, &area));
    EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
    /* Every value: tests/cooler/worked_job.md. */
    EXPECT_NEAR(rated, 0.01188846395, 1e-6);
    EXPECT_NEAR(area, 6.295598245e-6, 1e-6);
    EXPECT_NEAR(p.inlet_pressure, 733941.0385, 1e-6);
    EXPECT_NEAR(p.mass_flow, 0.01081494893, 1e-6);
    EXPECT_NEAR(p.cold_temperature, 265.0575608, 1e-6);
    EXPECT_NEAR(p.hot_temperature, 331.2424392, 1e-6);
    EXPECT_NEAR(p.capacity, 180.0201992, 1e-6);
    EXPECT_NEAR(p.target_capacity, 288.8185854, 1e-6);
    EXPECT_NEAR(60 * p.free_air_flow, 0.5458206696, 1e-6);
    EXPECT_NEAR(p.entropy_generation, 562.1512994, 1e-6);
    EXPECT_NEAR(p.chamber_pressure, 304242.5252, 1e-6);
    EXPECT_NEAR(p.valve_opening, 1.480179007, 1e-6);
    EXPECT_NEAR(w.line_drop, 7.5e5 - 733941.0385, 1e-6);
    EXPECT(p.advisories & VTX_ADVISORY_CHOKED);
}

static const struct test_case tests[] = {
    { "the library gives what the pocket calculator gave", the_library_gives_what_the_pocket_calculator_gave },
};
TEST_SUITE(worked_job, tests);
