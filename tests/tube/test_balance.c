/* Balances of given states: against the separation, against the perfect-gas laws, against each other. */
#include <vtx/balance.h>
#include <vtx/laws.h>
#include <vtx/moist_air.h>
#include <vtx/process.h>
#include <vtx/separation.h>

#include "../harness/harness.h"

static const double p0 = 7e5, t0 = 293.15, pa = 101325;

static void perfect_gas_agrees_with_the_laws(void)
{
    vtx_balance b;
    vtx_exergy_account a;
    double residual, sigma, drop;
    EXPECT_OK(vtx_tube_balance(VTX_AIR_IDEAL, p0, t0, 0, pa, 264, 1.1e5, 335, 0.6, pa, 290, &b));
    EXPECT_OK(vtx_first_law_residual(1006, t0, 264, 335, 0.6, &residual));
    EXPECT_OK(vtx_entropy_generation(1006, 287.05, p0, t0, pa, 264, 1.1e5, 335, 0.6, &sigma));
    EXPECT_OK(vtx_exergy_balance(1006, 287.05, p0, t0, pa, 264, 1.1e5, 335, 0.6, pa, 290, &a));
    EXPECT_OK(vtx_isentropic_drop(1 / (1 - 287.05 / 1006), p0, t0, pa, &drop));
    EXPECT_WITHIN(b.energy_residual, residual, 1e-9);
    EXPECT_WITHIN(b.entropy_generation, sigma, 1e-10);
    EXPECT_WITHIN(b.inlet_exergy, a.inlet, 1e-8);
    EXPECT_WITHIN(b.cold_exergy, a.cold, 1e-8);
    EXPECT_WITHIN(b.hot_exergy, a.hot, 1e-8);
    EXPECT_WITHIN(b.exergy_destruction, a.destruction + a.heat_exergy, 1e-8);
    EXPECT_WITHIN(b.isentropic_temperature, t0 - drop, 1e-10);
    EXPECT_NEAR(b.isentropic_efficiency, (t0 - 264) / drop, 1e-12);
    EXPECT(b.throttle_temperature == t0 && b.joule_thomson_drop == 0);
}

/* What the separation gives closes; exergy lost is then the surroundings' temperature times entropy (Gouy and Stodola). */
static void separated_streams_close(void)
{
    static const double water[] = { 0, 1e-5, 1e-3, 2e-3, 5e-3 };
    struct random_state r;
    random_seed(&r, 61);
    for (int i = 0; i < 2000; i++) {
        vtx_tube tube;
        vtx_streams s;
        vtx_balance b;
        const double w = water[i % 5], mu = random_uniform(&r, 0, 1), pc = random_uniform(&r, 1e5, 2e5), ph = random_uniform(&r, 1e5, 2e5);
        EXPECT_OK(vtx_tube_init(&tube));
        EXPECT_OK(vtx_tube_separate(&tube, VTX_AIR_REAL, p0, t0, w, pc, ph, mu, &s));
        if (s.condensed_phase == 3)
            continue; /* the balance takes condensate at 273.16 K as liquid */
        EXPECT_OK(vtx_tube_balance(VTX_AIR_REAL, p0, t0, w, pc, s.cold_temperature, ph, s.hot_temperature, mu, pa, 295, &b));
        EXPECT_WITHIN(b.energy_residual, 0, 1e-10 * 1006 * t0);
        EXPECT_WITHIN(b.entropy_generation, s.entropy_generation, 1e-7);
        EXPECT_WITHIN(b.isentropic_temperature, s.isentropic_temperature, 2e-8);
        EXPECT_WITHIN(b.throttle_temperature, s.throttle_temperature, 2e-8);
        EXPECT_WITHIN(b.isentropic_efficiency, s.isentropic_efficiency, 1e-8);
        EXPECT_WITHIN(b.inlet_exergy - b.cold_exergy - b.hot_exergy, b.exergy_destruction, 1e-7 * b.inlet_exergy);
    }
}

/* Temperatures alone: real air from 700 kPa looks like 1400 J/kg lost when it is not. */
static void joule_thomson_drop_is_no_heat_loss(void)
{
    vtx_tube tube;
    vtx_streams s;
    vtx_balance real, ideal;
    EXPECT_OK(vtx_tube_init(&tube));
    EXPECT_OK(vtx_tube_separate(&tube, VTX_AIR_REAL, p0, t0, 0, pa, pa, 0.6, &s));
    EXPECT_OK(vtx_tube_balance(VTX_AIR_REAL, p0, t0, 0, pa, s.cold_temperature, pa, s.hot_temperature, 0.6, pa, t0, &real));
    EXPECT_OK(vtx_tube_balance(VTX_AIR_IDEAL, p0, t0, 0, pa, s.cold_temperature, pa, s.hot_temperature, 0.6, pa, t0, &ideal));
    EXPECT_WITHIN(real.energy_residual, 0, 1e-5);
    EXPECT_WITHIN(ideal.energy_residual, 1400, 100);
}

static void impossible_readings_show(void)
{
    vtx_balance b;
    EXPECT_OK(vtx_tube_balance(VTX_AIR_REAL, p0, t0, 0, pa, 280, pa, 280, 0.5, pa, t0, &b));
    EXPECT(b.energy_residual > 1e4); /* both streams colder than the throttle: heat must have left */
    EXPECT_OK(vtx_tube_balance(VTX_AIR_REAL, p0, t0, 0, pa, 150, pa, 200, 0.9, pa, t0, &b));
    EXPECT(b.entropy_generation < 0 && b.isentropic_efficiency > 1);
    EXPECT_STATUS(vtx_tube_balance(VTX_AIR_REAL, p0, t0, 0, 7.1e5, 280, pa, 280, 0.5, pa, t0, &b), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_tube_balance(VTX_AIR_REAL, p0, t0, 0, p0, t0, p0, t0, 0.5, pa, t0, &b));
    EXPECT(isnan(b.isentropic_efficiency) && (b.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE) && b.entropy_generation == 0);
}

static const struct test_case tests[] = {
    { "perfect gas agrees with the laws", perfect_gas_agrees_with_the_laws },
    { "separated streams close", separated_streams_close },
    { "Joule-Thomson drop is no heat loss", joule_thomson_drop_is_no_heat_loss },
    { "impossible readings show", impossible_readings_show },
};
TEST_SUITE(balance, tests);
