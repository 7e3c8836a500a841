/* The laws of the tube against independent numbers and against each other. */
#include <vtx/laws.h>

#include "../harness/harness.h"

static int exergy_row(const struct data_row *row, double *actual)
{
    const double *i = row->input;
    vtx_exergy_account a;
    vtx_exergy_balance(i[0], i[1], i[2], i[3], i[4], i[5], i[6], i[7], i[8], i[9], i[10], &a);
    if (strcmp(row->quantity, "exergy_inlet") == 0)
        *actual = a.inlet;
    else if (strcmp(row->quantity, "exergy_cold") == 0)
        *actual = a.cold;
    else if (strcmp(row->quantity, "exergy_hot") == 0)
        *actual = a.hot;
    else if (strcmp(row->quantity, "exergy_cold_percent") == 0)
        *actual = 100 * a.cold_share;
    else if (strcmp(row->quantity, "exergy_total_percent") == 0)
        *actual = 100 * a.total_share;
    else
        return 0;
    return 1;
}

static int vortex_row(const struct data_row *row, double *actual)
{
    const double *i = row->input;
    vtx_vortex v;
    vtx_ideal_vortex(i[0], i[1], i[2], i[3], i[4], &v);
    if (strcmp(row->quantity, "vortex_sonic_ratio") == 0)
        *actual = v.sonic_pressure_ratio;
    else if (strcmp(row->quantity, "vortex_sonic_work") == 0)
        *actual = v.sonic_work_drop;
    else if (strcmp(row->quantity, "vortex_sonic_kinetic") == 0)
        *actual = v.sonic_kinetic_drop;
    else
        return 0;
    return 1;
}

static int law_row(const struct data_row *row, double *actual)
{
    const double *i = row->input;
    if (strcmp(row->quantity, "second_law_limit") == 0)
        return vtx_second_law_limit(i[0], i[1], i[2], i[3], i[4], i[5], actual), 1;
    if (strcmp(row->quantity, "isentropic_ratio") == 0) {
        vtx_isentropic_drop(i[0], i[1], 100, i[2], actual);
        *actual = 1 - *actual / 100;
        return 1;
    }
    if (strcmp(row->quantity, "isentropic_share") == 0) {
        vtx_isentropic_drop(i[0], i[1], 100, i[2], actual);
        *actual /= 100;
        return 1;
    }
    if (strcmp(row->quantity, "entropy_generation") == 0)
        return vtx_entropy_generation(i[0], i[1], i[2], i[3], i[4], i[5], i[6], i[7], i[8], actual), 1;
    if (strcmp(row->quantity, "hot_temperature") == 0)
        return vtx_hot_temperature_from_balance(i[0], i[1], i[2], actual), 1;
    if (strcmp(row->quantity, "cold_fraction") == 0)
        return vtx_cold_fraction_from_temperatures(i[0], i[1], i[2], actual), 1;
    if (strcmp(row->quantity, "cop_isothermal") == 0)
        return vtx_cop_isothermal(i[0], i[1], i[2], i[3], i[4], i[5], i[6], i[7], actual), 1;
    if (strcmp(row->quantity, "cop_adiabatic") == 0)
        return vtx_cop_adiabatic(i[0], i[1], i[2], i[3], i[4], i[5], i[6], i[7], actual), 1;
    if (strcmp(row->quantity, "capacity") == 0)
        return vtx_refrigeration_capacity(i[0], i[1], i[2], i[3], actual), 1;
    return exergy_row(row, actual) || vortex_row(row, actual);
}

static void independent_values_are_reproduced(void) { check_rows("laws.csv", law_row, 50); }

static void exergy_account_closes_on_adiabatic_states(void)
{
    struct random_state r;
    random_seed(&r, 11);
    for (int i = 0; i < 20000; i++) {
        const double mu = random_uniform(&r, 0, 0.95), t0 = random_uniform(&r, 250, 350);
        const double tc = t0 * random_uniform(&r, 0.7, 1), p0 = random_uniform(&r, 2e5, 1e6);
        double th;
        vtx_exergy_account a;
        EXPECT_OK(vtx_hot_temperature_from_balance(t0, tc, mu, &th));
        if (th > 1000)
            continue;
        EXPECT_OK(vtx_exergy_balance(1006, 287.05, p0, t0, 1e5, tc, 1.2e5, th, mu, 1e5, 290, &a));
        EXPECT_WITHIN(a.heat_exergy, 0, 1e-10 * a.inlet);
        EXPECT_NEAR(a.inlet, a.cold + a.hot + a.destruction, 1e-10);
    }
}

/* At the limit the entropy generated is zero, 1 K colder it is negative, 1 K warmer positive. */
static void second_law_limit_is_where_entropy_generation_vanishes(void)
{
    struct random_state r;
    random_seed(&r, 12);
    int tried = 0;
    for (int i = 0; i < 20000; i++) {
        const double mu = random_uniform(&r, 0.02, 0.98), t0 = random_uniform(&r, 250, 350);
        const double p0 = random_uniform(&r, 2e5, 1e6), pc = p0 / random_log_uniform(&r, 1.0001, 10), ph = p0 / random_log_uniform(&r, 1.0001, 10);
        double tc, th, sigma;
        EXPECT_OK(vtx_second_law_limit(1.4, p0, t0, pc, ph, mu, &tc));
        EXPECT(tc > 0 && tc < t0);
        EXPECT_OK(vtx_hot_temperature_from_balance(t0, tc > 52 ? tc : 52, mu, &th));
        if (tc < 52 || th > 930)
            continue;
        tried++;
        EXPECT_OK(vtx_entropy_generation(1004.5, 287, p0, t0, pc, tc, ph, th, mu, &sigma));
        EXPECT_WITHIN(sigma, 0, 1e-9);
        EXPECT_OK(vtx_hot_temperature_from_balance(t0, tc - 1, mu, &th));
        EXPECT_OK(vtx_entropy_generation(1004.5, 287, p0, t0, pc, tc - 1, ph, th, mu, &sigma));
        EXPECT(sigma < 0);
    }
    EXPECT(tried > 5000);
}

static void no_flow_has_no_capacity(void)
{
    double no_flow = 1;
    EXPECT_OK(vtx_refrigeration_capacity(0, 1006, 280, 290, &no_flow));
    EXPECT(no_flow == 0 && !signbit(no_flow));
}

static void second_law_limit_meets_the_isentropic_drop_as_all_air_leaves_cold(void)
{
    double tc, drop, previous = 0;
    EXPECT_OK(vtx_isentropic_drop(1.4, 7e5, 293.15, 1e5, &drop));
    for (double mu = 0.01; mu < 1; mu += 0.01) {
        EXPECT_OK(vtx_second_law_limit(1.4, 7e5, 293.15, 1e5, 1e5, mu, &tc));
        EXPECT(tc > previous && tc < 293.15 - drop);
        previous = tc;
    }
    EXPECT_OK(vtx_second_law_limit(1.4, 7e5, 293.15, 1e5, 1e5, 1 - 1e-15, &tc));
    EXPECT_WITHIN(tc, 293.15 - drop, 1e-9);
    EXPECT_OK(vtx_second_law_limit(1.4, 7e5, 293.15, 7e5, 7e5, 0.5, &tc));
    EXPECT_NEAR(tc, 293.15, 1e-15);
    EXPECT_OK(vtx_second_law_limit(1.4, 7e5, 293.15, 7e5 * (1 - 1e-14), 7e5, 0.5, &tc));
    EXPECT_WITHIN(tc, 293.15, 1e-4);
    EXPECT_OK(vtx_second_law_limit(1.4, 7e5, 293.15, 1e5, 1e5, 1e-300, &tc));
    EXPECT(tc >= 0 && tc < 1e-300);
}

static void drop_of_expansion_is_not_the_rise_of_compression(void)
{
    double drop;
    EXPECT_OK(vtx_isentropic_drop(1.4, 7e5, 293.15, 1e5, &drop));
    EXPECT_NEAR((293.15 * (pow(7, 2. / 7) - 1)) / drop, pow(7, 2. / 7), 1e-12);
    EXPECT_NEAR(pow(7, 2. / 7), 1.7436, 1e-4);
    EXPECT_OK(vtx_isentropic_drop(1.4, 7e5, 293.15, 7e5 * (1 - 1e-12), &drop));
    EXPECT_NEAR(drop, 293.15 * 2 / 7 * 1e-12, 2e-4); /* 7e5 (1 - 1e-12) itself is rounded to 1.2e-4 of the difference */
}

static void ideal_vortex_gives_the_isentropic_drop_and_half_of_it(void)
{
    struct random_state r;
    random_seed(&r, 13);
    for (int i = 0; i < 2000; i++) {
        const double gamma = random_uniform(&r, 1.1, 1.67), pc = random_uniform(&r, 5e4, 2e5), p0 = pc * random_log_uniform(&r, 1.01, 20);
        const double t0 = random_uniform(&r, 200, 400), k = (gamma - 1) / gamma;
        double drop;
        vtx_vortex v;
        EXPECT_OK(vtx_ideal_vortex(gamma, p0, t0, pc, pc, &v));
        EXPECT_OK(vtx_isentropic_drop(gamma, p0, t0, pc, &drop));
        const double b = (gamma - 1) / 2 * v.swirl_mach * v.swirl_mach;
        EXPECT_NEAR((1 + b) / (1 - b), pow(p0 / pc, k), 1e-12);
        EXPECT_NEAR(v.work_drop, drop, 1e-13);
        EXPECT_NEAR(v.work_drop, t0 * 2 * b / (1 + b), 1e-12);
        EXPECT_NEAR(v.kinetic_drop, drop / 2, 1e-13);
        EXPECT_NEAR(t0 - v.axis_temperature, drop, 1e-10);
        EXPECT_NEAR(t0 - v.rim_temperature, v.kinetic_drop, 1e-10);
        EXPECT((v.swirl_mach > 1) == (p0 / pc > v.sonic_pressure_ratio));
        EXPECT(v.sonic_work_drop <= v.work_drop * (1 + 1e-15));
        EXPECT_NEAR(v.outlet_temperature_ratio, 1 + b, 1e-12);
    }
}

static void efficiencies_differ_by_their_definitions_alone(void)
{
    double eta, adiabatic, isothermal, isentropic, electrical;
    EXPECT_OK(vtx_isentropic_temperature_efficiency(1.4, 7e5, 293.15, 1e5, 260, &eta));
    EXPECT_OK(vtx_adiabatic_efficiency(1.4, 7e5, 293.15, 1e5, 260, 0.6, &adiabatic));
    EXPECT_NEAR(adiabatic, 0.6 * eta, 1e-14);
    EXPECT_NEAR(eta * 293.15 * (1 - pow(7, -2. / 7)), 33.15, 1e-12);
    EXPECT_OK(vtx_cop_isothermal(1006, 287.05, 1e5, 293.15, 7e5, 293.15, 260, 0.6, &isothermal));
    EXPECT_OK(vtx_cop_adiabatic(1006, 287.05, 1e5, 293.15, 7e5, 293.15, 260, 0.6, &isentropic));
    EXPECT_NEAR(isentropic, adiabatic / pow(7, 287.05 / 1006), 1e-2);
    EXPECT(isothermal > isentropic);
    EXPECT_OK(vtx_cop_electrical(1006, 293.15, 260, 0.6, 400e3, &electrical));
    EXPECT_NEAR(electrical, 0.6 * 1006 * 33.15 / 400e3, 1e-13);
}

static void capacity_against_a_colder_target_is_negative(void)
{
    double q;
    EXPECT_OK(vtx_refrigeration_capacity(0.01, 1006, 260, 270, &q));
    EXPECT_NEAR(q, -100.6, 1e-13);
}

static void impossible_readings_are_refused(void)
{
    double x;
    EXPECT_STATUS(vtx_cold_fraction_from_temperatures(300, 310, 320, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_cold_fraction_from_temperatures(300, 280, 290, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_cold_fraction_from_temperatures(300, 300, 300, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_second_law_limit(1.4, 1e5, 293.15, 2e5, 1e5, 0.5, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_second_law_limit(1.4, 7e5, 293.15, 1e5, 1e5, 0, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_second_law_limit(1.4, 7e5, 293.15, 1e5, 1e5, 1, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_second_law_limit(1.4, 293.15, 7e5, 100, 100, 0.5, &x), VTX_OUT_OF_RANGE); /* swapped */
    EXPECT_STATUS(vtx_hot_temperature_from_balance(300, 280, 1, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_entropy_generation(287, 1006, 7e5, 300, 1e5, 280, 1e5, 320, 0.5, &x), VTX_BAD_ARGUMENT);
}

static void no_exergy_in_the_inlet_leaves_the_shares_unavailable(void)
{
    vtx_exergy_account a;
    EXPECT_OK(vtx_exergy_balance(1006, 287.05, 1e5, 300, 1e5, 300, 1e5, 300, 0.5, 1e5, 300, &a));
    EXPECT(isnan(a.cold_share) && isnan(a.total_share) && a.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE);
}

static const struct test_case tests[] = {
    { "independent values are reproduced", independent_values_are_reproduced },
    { "exergy account closes on adiabatic states", exergy_account_closes_on_adiabatic_states },
    { "second-law limit is where entropy generation vanishes", second_law_limit_is_where_entropy_generation_vanishes },
    { "no flow has no capacity", no_flow_has_no_capacity },
    { "second-law limit meets the isentropic drop as all air leaves cold", second_law_limit_meets_the_isentropic_drop_as_all_air_leaves_cold },
    { "drop of expansion is not the rise of compression", drop_of_expansion_is_not_the_rise_of_compression },
    { "ideal vortex gives the isentropic drop and half of it", ideal_vortex_gives_the_isentropic_drop_and_half_of_it },
    { "efficiencies differ by their definitions alone", efficiencies_differ_by_their_definitions_alone },
    { "capacity against a colder target is negative", capacity_against_a_colder_target_is_negative },
    { "impossible readings are refused", impossible_readings_are_refused },
    { "no exergy in the inlet leaves the shares unavailable", no_exergy_in_the_inlet_leaves_the_shares_unavailable },
};
TEST_SUITE(laws, tests);
