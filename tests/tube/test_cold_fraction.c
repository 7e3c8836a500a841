/* The measured cold fraction: against the forward pass, against Monte Carlo, by hand. */
#include <vtx/cold_fraction.h>
#include <vtx/moist_air.h>
#include <vtx/restriction.h>

#include "../harness/harness.h"

enum { IDEAL = VTX_AIR_IDEAL, REAL = VTX_AIR_REAL };

static const double p0 = 7e5, t0 = 293.15, pa = 101325;

static void thermometers_give_the_cold_fraction_that_made_them(void)
{
    struct random_state r;
    vtx_tube tube;
    random_seed(&r, 41);
    EXPECT_OK(vtx_tube_init(&tube));
    for (int i = 0; i < 5000; i++) {
        const double mu = random_uniform(&r, 0.01, 0.99);
        vtx_streams s;
        double back, plain;
        EXPECT_OK(vtx_tube_separate(&tube, IDEAL, p0, t0, 0, pa, pa, mu, &s));
        EXPECT_OK(vtx_cold_fraction_from_thermometers(IDEAL, p0, t0, 0, pa, s.cold_temperature, pa, s.hot_temperature, 0, 0, 0, &back, NULL));
        EXPECT_OK(vtx_cold_fraction_from_temperatures(t0, s.cold_temperature, s.hot_temperature, &plain));
        EXPECT_WITHIN(back, mu, 1e-11);
        EXPECT_WITHIN(plain, mu, 1e-11);
    }
}

/* Real air, also wet: exact with enthalpies, 0.02 to 0.045 low without the Joule-Thomson drop. */
static void thermometers_in_real_air_need_the_real_gas(void)
{
    static const double water[] = { 0, 1e-4, 2e-3, 5e-3 };
    struct random_state r;
    vtx_tube tube;
    random_seed(&r, 47);
    EXPECT_OK(vtx_tube_init(&tube));
    for (int i = 0; i < 1000; i++) {
        const double mu = random_uniform(&r, 0.1, 0.9), w = water[i % 4];
        vtx_streams s;
        double back, plain;
        EXPECT_OK(vtx_tube_separate(&tube, REAL, 8e5, t0, w, pa, pa, mu, &s));
        if (s.condensed_phase == 3)
            continue; /* how much is frozen no thermometer tells */
        EXPECT_OK(vtx_cold_fraction_from_thermometers(REAL, 8e5, t0, w, pa, s.cold_temperature, pa, s.hot_temperature, 0, 0, 0, &back, NULL));
        EXPECT_WITHIN(back, mu, 1e-9);
        if (w != 0)
            continue; /* mist that dries up can leave both outlets colder than the inlet */
        EXPECT_OK(vtx_cold_fraction_from_temperatures(t0, s.cold_temperature, s.hot_temperature, &plain));
        EXPECT(mu - plain > 0.016 && mu - plain < 0.045);
    }
}

/* First order against 40000 draws; the sample deviation of that many is good to 0.4 %, tolerance 4 of its deviations. */
static void uncertainty_of_thermometers_agrees_with_monte_carlo(void)
{
    struct random_state r;
    double mu, u, x, sum = 0, squares = 0;
    const int draws = 40000;
    random_seed(&r, 42);
    EXPECT_OK(vtx_cold_fraction_from_thermometers(IDEAL, p0, 293, 0, pa, 264, pa, 335, 0.3, 0.5, 0.8, &mu, &u));
    EXPECT_NEAR(mu, 42.0 / 71, 1e-12);
    for (int i = 0; i < draws; i++) {
        EXPECT_OK(vtx_cold_fraction_from_temperatures(293 + 0.3 * random_normal(&r), 264 + 0.5 * random_normal(&r), 335 + 0.8 * random_normal(&r), &x));
        sum += x - mu;
        squares += (x - mu) * (x - mu);
    }
    EXPECT_NEAR(sqrt(squares / draws - sum / draws * sum / draws), u, 0.016);
}

static void uncertainty_of_flows_agrees_with_monte_carlo(void)
{
    static const int32_t pair[3] = { VTX_FLOWS_INLET_AND_COLD, VTX_FLOWS_INLET_AND_HOT, VTX_FLOWS_COLD_AND_HOT };
    static const double first[3] = { 0.01, 0.01, 0.006 }, second[3] = { 0.006, 0.004, 0.004 };
    struct random_state r;
    random_seed(&r, 43);
    for (int k = 0; k < 3; k++) {
        double mu, u, x, sum = 0, squares = 0;
        const int draws = 40000;
        EXPECT_OK(vtx_cold_fraction_from_flows(pair[k], first[k], second[k], 1e-4, 2e-4, &mu, &u));
        EXPECT_NEAR(mu, 0.6, 1e-12);
        for (int i = 0; i < draws; i++) {
            EXPECT_OK(vtx_cold_fraction_from_flows(pair[k], first[k] + 1e-4 * random_normal(&r), second[k] + 2e-4 * random_normal(&r), 0, 0, &x, NULL));
            sum += x - mu;
            squares += (x - mu) * (x - mu);
        }
        EXPECT_NEAR(sqrt(squares / draws - sum / draws * sum / draws), u, 0.016);
    }
}

static void three_flows_are_balanced_by_their_variances(void)
{
    struct random_state r;
    vtx_flow_balance b;
    double sum = 0, squares = 0;
    const int draws = 40000;
    random_seed(&r, 44);
    EXPECT_OK(vtx_cold_fraction_from_three_flows(0.0100, 0.0060, 0.0043, 1e-4, 1e-4, 1e-4, &b));
    EXPECT_NEAR(b.inlet_flow, 0.0101, 1e-12);
    EXPECT_NEAR(b.cold_flow, 0.0059, 1e-12);
    EXPECT_NEAR(b.hot_flow, 0.0042, 1e-12);
    EXPECT_NEAR(b.discrepancy, -sqrt(3), 1e-12);
    EXPECT(b.advisories == 0);
    EXPECT_OK(vtx_cold_fraction_from_three_flows(0.0100, 0.0060, 0.0050, 1e-4, 1e-4, 1e-4, &b));
    EXPECT(b.advisories == VTX_ADVISORY_MODEL_MISFIT);
    EXPECT_OK(vtx_cold_fraction_from_three_flows(0.0100, 0.0060, 0.0040, 2e-4, 1e-4, 3e-4, &b));
    const double u = b.uncertainty;
    for (int i = 0; i < draws; i++) {
        EXPECT_OK(vtx_cold_fraction_from_three_flows(0.01 + 2e-4 * random_normal(&r), 0.006 + 1e-4 * random_normal(&r), 0.004 + 3e-4 * random_normal(&r), 2e-4, 1e-4, 3e-4, &b));
        sum += b.cold_fraction - 0.6;
        squares += (b.cold_fraction - 0.6) * (b.cold_fraction - 0.6);
        EXPECT_NEAR(b.inlet_flow, b.cold_flow + b.hot_flow, 1e-12);
    }
    EXPECT_NEAR(sqrt(squares / draws - sum / draws * sum / draws), u, 0.016);
}

static void a_third_flow_and_a_second_method_never_add_uncertainty(void)
{
    vtx_flow_balance b;
    double mu, two, u, d;
    EXPECT_OK(vtx_cold_fraction_from_three_flows(0.0100, 0.0060, 0.0040, 2e-4, 1e-4, 3e-4, &b));
    EXPECT_OK(vtx_cold_fraction_from_flows(VTX_FLOWS_INLET_AND_COLD, 0.01, 0.006, 2e-4, 1e-4, &mu, &two));
    EXPECT(b.uncertainty < two);
    EXPECT_OK(vtx_cold_fraction_combined(0.58, 0.02, 0.61, 0.01, &mu, &u, &d));
    EXPECT_NEAR(mu, (0.58 * 1 + 0.61 * 4) / 5, 1e-12);
    EXPECT_NEAR(u, sqrt(1 / (1 / 4e-4 + 1 / 1e-4)), 1e-12);
    EXPECT_NEAR(d, -0.03 / sqrt(5e-4), 1e-12);
}

static vtx_openings some_openings(void)
{
    vtx_openings o;
    EXPECT_OK(vtx_openings_init(&o));
    o.inlet_area = 8e-6;
    o.cold_area = 12e-6;
    o.hot_area = 6e-6;
    return o;
}

/* Mass flows by the public orifice law at the answer's own temperatures. */
static void openings_balance(const vtx_openings *o, const vtx_opening_flow *f, double pc, double ph)
{
    vtx_gas gas;
    double in, cold, hot = 0;
    EXPECT_OK(vtx_gas_init(&gas));
    EXPECT_OK(vtx_orifice_mass_flow(&gas, o->inlet_area, 1, p0, t0, f->chamber_pressure, &in, NULL));
    EXPECT_OK(vtx_orifice_mass_flow(&gas, o->cold_area, 1, f->chamber_pressure, f->cold_temperature, pc, &cold, NULL));
    if (o->hot_area > 0)
        EXPECT_OK(vtx_orifice_mass_flow(&gas, o->hot_area, 1, f->chamber_pressure, f->hot_temperature, ph, &hot, NULL));
    EXPECT_NEAR(in, cold + hot, 1e-11);
    EXPECT_NEAR(cold, f->cold_fraction * in, 1e-11);
    EXPECT_NEAR(f->mass_flow, in, 1e-13);
}

static void openings_pass_what_their_orifices_pass(void)
{
    struct random_state r;
    vtx_tube tube;
    random_seed(&r, 45);
    EXPECT_OK(vtx_tube_init(&tube));
    for (int i = 0; i < 1000; i++) {
        vtx_openings o = some_openings();
        vtx_opening_flow f;
        vtx_streams s;
        const double pc = pa * random_uniform(&r, 1, 1.5), ph = pa * random_uniform(&r, 1, 1.3);
        o.hot_area = random_log_uniform(&r, 1e-8, 2e-5);
        o.cold_area = random_log_uniform(&r, 4e-6, 3e-5);
        tube.cold_leak = i % 3 == 0 ? 0.05 : 0;
        tube.hot_leak = i % 5 == 0 ? 0.05 : 0;
        if (vtx_cold_fraction_from_openings(&tube, &o, IDEAL, p0, t0, 0, pc, ph, &f) == VTX_NO_SOLUTION)
            continue;
        openings_balance(&o, &f, pc, ph);
        EXPECT_OK(vtx_tube_separate(&tube, IDEAL, p0, t0, 0, pc, ph, f.cold_fraction, &s));
        EXPECT_WITHIN(s.cold_temperature, f.cold_temperature, 1e-9);
        EXPECT_WITHIN(s.hot_temperature, f.hot_temperature, 1e-9);
        double back;
        EXPECT_OK(vtx_hot_area_for_cold_fraction(&tube, &o, IDEAL, p0, t0, 0, pc, ph, f.cold_fraction, &back));
        EXPECT_NEAR(back, o.hot_area, 1e-8); /* 1 - cold fraction carries the root's tolerance, 1e-14 of 1e-3 and below */
    }
}

static void openings_pass_real_air_too(void)
{
    struct random_state r;
    vtx_tube tube;
    random_seed(&r, 48);
    EXPECT_OK(vtx_tube_init(&tube));
    for (int i = 0; i < 60; i++) {
        vtx_openings o = some_openings();
        vtx_opening_flow f;
        vtx_streams s;
        const double w = i % 3 * 1e-3;
        double back;
        o.hot_area = random_log_uniform(&r, 1e-6, 2e-5);
        EXPECT_OK(vtx_cold_fraction_from_openings(&tube, &o, REAL, p0, t0, w, pa, pa, &f));
        openings_balance(&o, &f, pa, pa);
        EXPECT_OK(vtx_tube_separate(&tube, REAL, p0, t0, w, pa, pa, f.cold_fraction, &s));
        EXPECT_WITHIN(s.cold_temperature, f.cold_temperature, 1e-8);
        EXPECT_WITHIN(s.hot_temperature, f.hot_temperature, 1e-8);
        EXPECT_OK(vtx_hot_area_for_cold_fraction(&tube, &o, REAL, p0, t0, w, pa, pa, f.cold_fraction, &back));
        EXPECT_NEAR(back, o.hot_area, 1e-9);
    }
}

static void closing_the_hot_valve_sends_all_air_to_the_cold_end(void)
{
    vtx_tube tube;
    vtx_openings o = some_openings();
    vtx_opening_flow f;
    double area, previous = 1;
    EXPECT_OK(vtx_tube_init(&tube));
    o.hot_area = 0;
    EXPECT_OK(vtx_cold_fraction_from_openings(&tube, &o, IDEAL, p0, t0, 0, pa, pa, &f));
    EXPECT_WITHIN(f.cold_fraction, 1, 1e-13);
    openings_balance(&o, &f, pa, pa);
    EXPECT_OK(vtx_hot_area_for_cold_fraction(&tube, &o, IDEAL, p0, t0, 0, pa, pa, 1, &area));
    EXPECT(area == 0);
    for (o.hot_area = 1e-7; o.hot_area < 1e-4; o.hot_area *= 1.3) {
        EXPECT_OK(vtx_cold_fraction_from_openings(&tube, &o, IDEAL, p0, t0, 0, pa, pa, &f));
        EXPECT(f.cold_fraction < previous);
        previous = f.cold_fraction;
    }
    EXPECT(f.advisories & VTX_ADVISORY_CHOKED);
}

/* Both outlets choked: the ratio of flows is that of areas over root temperatures, whatever the chamber pressure. */
static void choked_outlets_split_by_area_and_temperature(void)
{
    vtx_tube tube;
    vtx_openings o = some_openings();
    vtx_opening_flow f;
    EXPECT_OK(vtx_tube_init(&tube));
    o.cold_area = 5e-6;
    o.hot_area = 3e-6;
    EXPECT_OK(vtx_cold_fraction_from_openings(&tube, &o, IDEAL, p0, t0, 0, pa, pa, &f));
    EXPECT(f.chamber_pressure > 2 * pa);
    EXPECT_NEAR(f.cold_fraction / (1 - f.cold_fraction), 5. / 3 * sqrt(f.hot_temperature / f.cold_temperature), 1e-11);
}

static void uncertainty_of_openings_agrees_with_monte_carlo(void)
{
    struct random_state r;
    vtx_tube tube;
    const vtx_openings o = some_openings();
    vtx_opening_flow f, x;
    double sum = 0, squares = 0, flow_sum = 0, flow_squares = 0;
    const int draws = 4000;
    random_seed(&r, 46);
    EXPECT_OK(vtx_tube_init(&tube));
    tube.efficiency_low = tube.efficiency_high = tube.peak_efficiency;
    EXPECT_OK(vtx_cold_fraction_from_openings(&tube, &o, IDEAL, p0, t0, 0, pa, pa, &f));
    for (int i = 0; i < draws; i++) {
        vtx_openings y = o;
        y.inlet_area *= 1 + 0.03 * random_normal(&r);
        y.cold_area *= 1 + 0.05 * random_normal(&r);
        y.hot_area *= 1 + 0.05 * random_normal(&r);
        EXPECT_OK(vtx_cold_fraction_from_openings(&tube, &y, IDEAL, p0, t0, 0, pa, pa, &x));
        sum += x.cold_fraction - f.cold_fraction;
        squares += (x.cold_fraction - f.cold_fraction) * (x.cold_fraction - f.cold_fraction);
        flow_sum += x.mass_flow - f.mass_flow;
        flow_squares += (x.mass_flow - f.mass_flow) * (x.mass_flow - f.mass_flow);
    }
    EXPECT_NEAR(sqrt(squares / draws - sum / draws * sum / draws), f.cold_uncertainty, 0.05);
    EXPECT_NEAR(sqrt(flow_squares / draws - flow_sum / draws * flow_sum / draws), f.mass_flow_uncertainty, 0.05);
}

static void what_cannot_be_is_refused(void)
{
    vtx_tube tube;
    vtx_openings o;
    vtx_opening_flow f;
    vtx_flow_balance b;
    double x, u;
    EXPECT_OK(vtx_tube_init(&tube));
    EXPECT_OK(vtx_openings_init(&o));
    EXPECT_STATUS(vtx_cold_fraction_from_openings(&tube, &o, IDEAL, p0, t0, 0, pa, pa, &f), VTX_BAD_ARGUMENT);
    o = some_openings();
    EXPECT_STATUS(vtx_cold_fraction_from_openings(&tube, &o, IDEAL, p0, t0, 0, p0, p0, &f), VTX_NO_SOLUTION);
    o.cold_area = 1e-3; /* so wide that the chamber stays below the hot outlet's pressure */
    EXPECT_STATUS(vtx_cold_fraction_from_openings(&tube, &o, IDEAL, p0, t0, 0, pa, 2 * pa, &f), VTX_NO_SOLUTION);
    EXPECT(isnan(f.cold_fraction) && f.advisories == -1);
    EXPECT_STATUS(vtx_hot_area_for_cold_fraction(&tube, &o, IDEAL, p0, t0, 0, pa, 2 * pa, 0.5, &x), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_hot_area_for_cold_fraction(&tube, &o, IDEAL, p0, t0, 0, pa, pa, 0, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_cold_fraction_from_flows(VTX_FLOWS_INLET_AND_COLD, 0.01, 0.011, 0, 0, &x, &u), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_cold_fraction_from_three_flows(0.01, 1e-6, 0.012, 1e-4, 1e-3, 1e-4, &b), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_cold_fraction_from_thermometers(IDEAL, p0, 293, 0, pa, 295, pa, 335, 0, 0, 0, &x, &u), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "thermometers give the cold fraction that made them", thermometers_give_the_cold_fraction_that_made_them },
    { "thermometers in real air need the real gas", thermometers_in_real_air_need_the_real_gas },
    { "uncertainty of thermometers agrees with Monte Carlo", uncertainty_of_thermometers_agrees_with_monte_carlo },
    { "uncertainty of flows agrees with Monte Carlo", uncertainty_of_flows_agrees_with_monte_carlo },
    { "three flows are balanced by their variances", three_flows_are_balanced_by_their_variances },
    { "a third flow and a second method never add uncertainty", a_third_flow_and_a_second_method_never_add_uncertainty },
    { "openings pass what their orifices pass", openings_pass_what_their_orifices_pass },
    { "openings pass real air too", openings_pass_real_air_too },
    { "closing the hot valve sends all air to the cold end", closing_the_hot_valve_sends_all_air_to_the_cold_end },
    { "choked outlets split by area and temperature", choked_outlets_split_by_area_and_temperature },
    { "uncertainty of openings agrees with Monte Carlo", uncertainty_of_openings_agrees_with_monte_carlo },
    { "what cannot be is refused", what_cannot_be_is_refused },
};
TEST_SUITE(cold_fraction, tests);
