/* Inverses of the separation: closed form, round trips, ends of branches, wishes that cannot be met. */
#include <vtx/moist_air.h>
#include <vtx/setting.h>

#include "../../libvtx/media/moist_kernel.h"
#include "../harness/harness.h"

enum { IDEAL = VTX_AIR_IDEAL, REAL = VTX_AIR_REAL };

static const double p0 = 7e5, t0 = 293.15, pc = 101325;
static double water; /* of the feed in the test that runs */

static vtx_tube default_tube(void)
{
    vtx_tube tube;
    EXPECT_OK(vtx_tube_init(&tube));
    return tube;
}

static vtx_streams streams_at(const vtx_tube *tube, int32_t model, double mu)
{
    vtx_streams s;
    EXPECT_OK(vtx_tube_separate(tube, model, p0, t0, water, pc, pc, mu, &s));
    return s;
}

static int best_row(const struct data_row *row, double *actual)
{
    vtx_tube tube = default_tube();
    tube.coldest_fraction = row->input[0];
    const double drop = 0.28 * (t0 - streams_at(&tube, IDEAL, 0.5).isentropic_temperature);
    vtx_best_setting best;
    if (strcmp(row->quantity, "best_fraction") != 0)
        return 0;
    vtx_best_cold_fraction(&tube, IDEAL, p0, t0, water, pc, t0 + row->input[1] * drop, &best);
    *actual = best.cold_fraction;
    return 1;
}

static void best_cold_fraction_follows_its_closed_form(void) { check_rows("setting.csv", best_row, 9); }

static vtx_tube random_tube(struct random_state *r, int leaky)
{
    vtx_tube t = default_tube();
    t.peak_efficiency = random_uniform(r, 0.05, 0.6);
    t.efficiency_low = t.peak_efficiency * random_uniform(r, 0.5, 1);
    t.efficiency_high = t.peak_efficiency + (1 - t.peak_efficiency) * random_uniform(r, 0, 0.5);
    t.coldest_fraction = random_uniform(r, 0.05, 0.45);
    t.pressure_exponent = random_uniform(r, 0, 1) < 0.5 ? 0 : random_uniform(r, -0.4, 0.4);
    if (leaky) {
        t.cold_leak = random_log_uniform(r, 1e-3, 0.3);
        t.hot_leak = random_log_uniform(r, 1e-3, 0.3);
    }
    return t;
}

/* The answer and both ends of the band, put back into the forward pass, fulfil the wish. */
static void forward(const vtx_tube *tube, int32_t model, double efficiency, double mu, double pressure, double temperature,
                    double cold_pressure, vtx_streams *s)
{
    vtx_tube t = *tube;
    t.peak_efficiency = efficiency;
    t.efficiency_low = efficiency;
    t.efficiency_high = efficiency;
    EXPECT_OK(vtx_tube_separate(&t, model, pressure, temperature, water, cold_pressure, cold_pressure, mu, s));
}

static void fractions_return(int32_t model, int count, int leaky, uint64_t seed)
{
    struct random_state r;
    random_seed(&r, seed);
    for (int i = 0; i < count; i++) {
        const vtx_tube tube = random_tube(&r, leaky);
        const double mu = random_uniform(&r, 0.01, 0.99);
        vtx_fraction_setting f;
        vtx_streams s;
        double coldest;
        const double wanted = streams_at(&tube, model, mu).cold_temperature, hot = streams_at(&tube, model, mu).hot_temperature;
        EXPECT_OK(vtx_coldest_outlet(&tube, model, p0, t0, water, pc, &coldest, NULL));
        const int32_t branch = mu < coldest ? VTX_BRANCH_LESS_COLD_AIR : VTX_BRANCH_MORE_COLD_AIR;
        EXPECT_OK(vtx_cold_fraction_for_temperature(&tube, model, p0, t0, water, pc, wanted, branch, &f));
        EXPECT_WITHIN(streams_at(&tube, model, f.cold_fraction).cold_temperature, wanted, 1e-9);
        if (fabs(mu - coldest) > 0.02 && wanted != 273.16) /* freezing holds many cold fractions at one temperature */
            EXPECT_WITHIN(f.cold_fraction, mu, 1e-9);
        EXPECT(f.attainable_low <= wanted + 1e-9 && wanted <= f.attainable_high + 1e-9);
        const int rising = branch == VTX_BRANCH_MORE_COLD_AIR;
        const double weak = rising ? f.cold_fraction_low : f.cold_fraction_high, strong = rising ? f.cold_fraction_high : f.cold_fraction_low;
        if (!isnan(weak)) {
            forward(&tube, model, tube.efficiency_low, weak, p0, t0, pc, &s);
            EXPECT_WITHIN(s.cold_temperature, wanted, 1e-9);
        }
        if (!isnan(strong)) {
            forward(&tube, model, tube.efficiency_high, strong, p0, t0, pc, &s);
            EXPECT_WITHIN(s.cold_temperature, wanted, 1e-9);
        }
        EXPECT((isnan(weak) || isnan(strong)) == ((f.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE) != 0));
        if (!leaky) {
            EXPECT_OK(vtx_cold_fraction_for_hot_temperature(&tube, model, p0, t0, water, pc, pc, hot, &f));
            EXPECT_WITHIN(f.cold_fraction, mu, 1e-10);
            EXPECT(f.cold_fraction_low <= mu + 1e-10);
        } else if (vtx_cold_fraction_for_hot_temperature(&tube, model, p0, t0, water, pc, pc, hot, &f) == VTX_OK) {
            EXPECT_WITHIN(streams_at(&tube, model, f.cold_fraction).hot_temperature, hot, 1e-8);
        }
    }
}

static void cold_fractions_fulfil_the_wish(void) { fractions_return(IDEAL, 3000, 0, 31); }
static void cold_fractions_fulfil_the_wish_with_leaks(void) { fractions_return(IDEAL, 1000, 1, 32); }

static const double waters[] = { 0, 1e-5, 1e-3, 2e-3, 5e-3 };

static void cold_fractions_fulfil_the_wish_in_real_air(void)
{
    for (size_t k = 0; k < sizeof waters / sizeof waters[0]; k++) {
        water = waters[k];
        fractions_return(REAL, 150, k % 2 == 1, 35 + k);
    }
    water = 0;
}

static void conditions_return(int32_t model, int count, uint64_t seed)
{
    struct random_state r;
    random_seed(&r, seed);
    for (int i = 0; i < count; i++) {
        const vtx_tube tube = random_tube(&r, i % 4 == 0);
        const double mu = random_uniform(&r, 0.05, 0.9), wanted = streams_at(&tube, model, mu).cold_temperature;
        vtx_condition_setting c;
        vtx_streams s;
        EXPECT_OK(vtx_inlet_pressure_for_temperature(&tube, model, 2e6, t0, water, pc, mu, wanted, &c));
        forward(&tube, model, tube.peak_efficiency, mu, c.value, t0, pc, &s);
        EXPECT_WITHIN(s.cold_temperature, wanted, 1e-8);
        EXPECT(c.value <= p0 * (1 + 1e-9));
        if (!isnan(c.value_high)) {
            forward(&tube, model, tube.efficiency_low, mu, c.value_high, t0, pc, &s);
            EXPECT_WITHIN(s.cold_temperature, wanted, 1e-8);
            EXPECT(c.value_low <= c.value * (1 + 1e-9) && c.value <= c.value_high * (1 + 1e-9));
        }
        EXPECT_OK(vtx_cold_pressure_for_temperature(&tube, model, p0, t0, water, mu, wanted, &c));
        forward(&tube, model, tube.peak_efficiency, mu, p0, t0, c.value, &s);
        EXPECT_WITHIN(s.cold_temperature, wanted, 1e-8);
        EXPECT(c.value >= pc * (1 - 1e-9));
        EXPECT_OK(vtx_inlet_temperature_for_temperature(&tube, model, p0, water, pc, mu, wanted, &c));
        if (wanted != 273.16)
            EXPECT_WITHIN(c.value, t0, 1e-7);
        EXPECT(isnan(c.value_low) || c.value_low <= t0 * (1 + 1e-9));
        EXPECT(isnan(c.value_high) || c.value_high >= t0 * (1 - 1e-9));
    }
}

static void pressures_and_inlet_temperature_fulfil_the_wish(void) { conditions_return(IDEAL, 2000, 33); }

static void pressures_and_inlet_temperature_fulfil_the_wish_in_real_air(void)
{
    for (size_t k = 0; k < sizeof waters / sizeof waters[0]; k++) {
        water = waters[k];
        conditions_return(REAL, 40, 135 + k);
    }
    water = 0;
}

/* From the cold outlet up to the target, per kg inlet air, by the states of the media layer. */
static double cooling_at(const vtx_tube *tube, int32_t model, double mu, double target)
{
    const vtx_streams s = streams_at(tube, model, mu);
    if (model == IDEAL)
        return mu * 1006 * (target - s.cold_temperature);
    vtx_moist_air cold, warm;
    EXPECT_OK(vtx_moist_air_at(model, pc, s.cold_temperature, VTX_HUMIDITY_RATIO, water, &cold));
    EXPECT_OK(vtx_moist_air_at(model, pc, target, VTX_HUMIDITY_RATIO, water, &warm));
    double fusion = 0; /* the plain state at 273.16 K is liquid */
    if (s.cold_temperature == 273.16)
        fusion = s.condensed * s.frozen_share * (moist_condensate_enthalpy(model, pc, 273.16, PHASE_LIQUID) -
                                                 moist_condensate_enthalpy(model, pc, 273.16, PHASE_ICE));
    return mu * (warm.enthalpy - cold.enthalpy + fusion) / (1 + water);
}

/* No cold fraction on a fine grid cools more; with leaks as well. */
static void nothing_cools_more_than_the_best(int32_t model, int count, uint64_t seed)
{
    struct random_state r;
    random_seed(&r, seed);
    for (int i = 0; i < count; i++) {
        const vtx_tube tube = random_tube(&r, i % 3 == 0);
        const double target = random_uniform(&r, 262, 340);
        vtx_best_setting best;
        const vtx_status status = vtx_best_cold_fraction(&tube, model, p0, t0, water, pc, target, &best);
        if (status == VTX_NO_SOLUTION) {
            EXPECT(best.attainable_temperature >= target && isnan(best.cold_fraction));
            continue;
        }
        EXPECT_OK(status);
        EXPECT(best.attainable_temperature < target && best.cooling > 0);
        EXPECT(best.cooling_low <= best.cooling && best.cooling <= best.cooling_high);
        for (int k = 0; k <= 100; k++) {
            vtx_fraction_setting f;
            const double mu = k / 100.0;
            if (k % 20 != 0 && fabs(mu - best.cold_fraction) > 0.02)
                continue;
            const double cooling = cooling_at(&tube, model, mu, target);
            EXPECT(cooling <= best.cooling + 1e-9 * 1006 * t0);
            const int32_t branch = mu < best.cold_fraction ? VTX_BRANCH_LESS_COLD_AIR : VTX_BRANCH_MORE_COLD_AIR;
            if (cooling > 0) {
                EXPECT_OK(vtx_cold_fraction_for_cooling(&tube, model, p0, t0, water, pc, target, cooling, branch, &f));
                EXPECT_WITHIN(cooling_at(&tube, model, f.cold_fraction, target), cooling, 1e-9 * 1006 * t0);
            }
        }
    }
}

static void best_cold_fraction_is_best_in_real_air(void)
{
    for (size_t k = 0; k < sizeof waters / sizeof waters[0]; k++) {
        water = waters[k];
        nothing_cools_more_than_the_best(REAL, 20, 235 + k);
    }
    water = 0;
}

static void best_cold_fraction_is_best(void) { nothing_cools_more_than_the_best(IDEAL, 1000, 34); }

static void branch_ends_are_reached_exactly(void)
{
    const vtx_tube tube = default_tube();
    vtx_fraction_setting f;
    EXPECT_OK(vtx_cold_fraction_for_temperature(&tube, IDEAL, p0, t0, water, pc, streams_at(&tube, IDEAL, 0.3).cold_temperature, VTX_BRANCH_MORE_COLD_AIR, &f));
    EXPECT_WITHIN(f.cold_fraction, 0.3, 1e-6);
    EXPECT(isnan(f.cold_fraction_low) && f.cold_fraction_high > 0.3 && (f.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
    EXPECT_OK(vtx_cold_fraction_for_temperature(&tube, IDEAL, p0, t0, water, pc, t0, VTX_BRANCH_MORE_COLD_AIR, &f));
    EXPECT(f.cold_fraction == 1);
    EXPECT_OK(vtx_cold_fraction_for_temperature(&tube, IDEAL, p0, t0, water, pc, streams_at(&tube, IDEAL, 0).cold_temperature, VTX_BRANCH_LESS_COLD_AIR, &f));
    EXPECT_WITHIN(f.cold_fraction, 0, 1e-9);
    EXPECT_OK(vtx_cold_fraction_for_hot_temperature(&tube, IDEAL, p0, t0, water, pc, pc, streams_at(&tube, IDEAL, 1).hot_temperature, &f));
    EXPECT_WITHIN(f.cold_fraction, 1, 1e-9);
}

static void wishes_that_cannot_be_met_name_what_can(void)
{
    const vtx_tube tube = default_tube();
    vtx_fraction_setting f;
    vtx_condition_setting c;
    vtx_best_setting best;
    const double coldest = streams_at(&tube, IDEAL, 0.3).cold_temperature;
    EXPECT_STATUS(vtx_cold_fraction_for_temperature(&tube, IDEAL, p0, t0, water, pc, coldest - 0.01, VTX_BRANCH_MORE_COLD_AIR, &f), VTX_NO_SOLUTION);
    EXPECT(isnan(f.cold_fraction) && f.advisories == -1);
    EXPECT_WITHIN(f.attainable_low, coldest, 1e-9);
    EXPECT_WITHIN(f.attainable_high, t0, 1e-9);
    EXPECT_STATUS(vtx_cold_fraction_for_temperature(&tube, IDEAL, p0, t0, water, pc, t0 + 0.01, VTX_BRANCH_MORE_COLD_AIR, &f), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_cold_fraction_for_temperature(&tube, IDEAL, p0, t0, water, pc, t0 - 1, VTX_BRANCH_LESS_COLD_AIR, &f), VTX_NO_SOLUTION);
    EXPECT_WITHIN(f.attainable_high, streams_at(&tube, IDEAL, 0).cold_temperature, 1e-9);
    EXPECT_STATUS(vtx_cold_fraction_for_temperature(&tube, IDEAL, p0, t0, water, p0, t0, VTX_BRANCH_MORE_COLD_AIR, &f), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_best_cold_fraction(&tube, IDEAL, p0, t0, water, pc, coldest, &best), VTX_NO_SOLUTION);
    EXPECT_WITHIN(best.attainable_temperature, coldest, 1e-9);
    EXPECT_STATUS(vtx_inlet_pressure_for_temperature(&tube, IDEAL, p0, t0, water, pc, 0.3, coldest - 1, &c), VTX_NO_SOLUTION);
    EXPECT_WITHIN(c.attainable_coldest, coldest, 1e-9);
    EXPECT_WITHIN(c.attainable_warmest, t0, 1e-9);
    EXPECT_STATUS(vtx_inlet_pressure_for_temperature(&tube, IDEAL, pc / 2, t0, water, pc, 0.3, coldest, &c), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_cold_fraction_for_cooling(&tube, IDEAL, p0, t0, water, pc, t0, 1e5, VTX_BRANCH_MORE_COLD_AIR, &f), VTX_NO_SOLUTION);
    EXPECT(f.attainable_high > 1.7e4 && f.attainable_high < 1.8e4);
}

static const struct test_case tests[] = {
    { "best cold fraction follows its closed form", best_cold_fraction_follows_its_closed_form },
    { "cold fractions fulfil the wish", cold_fractions_fulfil_the_wish },
    { "cold fractions fulfil the wish with leaks", cold_fractions_fulfil_the_wish_with_leaks },
    { "pressures and inlet temperature fulfil the wish", pressures_and_inlet_temperature_fulfil_the_wish },
    { "best cold fraction is best", best_cold_fraction_is_best },
    { "cold fractions fulfil the wish in real air", cold_fractions_fulfil_the_wish_in_real_air },
    { "pressures and inlet temperature fulfil the wish in real air", pressures_and_inlet_temperature_fulfil_the_wish_in_real_air },
    { "best cold fraction is best in real air", best_cold_fraction_is_best_in_real_air },
    { "branch ends are reached exactly", branch_ends_are_reached_exactly },
    { "wishes that cannot be met name what can", wishes_that_cannot_be_met_name_what_can },
};
TEST_SUITE(setting, tests);
