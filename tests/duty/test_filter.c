/* Filters in service. */
#include <vtx/chain.h>
#include <vtx/compressor.h>
#include <vtx/isentropic.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 10000 };

vtx_filter sample_filter(void)
{
    vtx_filter f;
    EXPECT_OK(vtx_filter_init(&f));
    f.rated_flow = 0.02;
    f.rated_density = 9.5;
    return f;
}

static int filter_row(const struct data_row *row, double *actual)
{
    const vtx_filter f = sample_filter();
    const double *in = row->input;
    if (strcmp(row->quantity, "drop") == 0)
        return vtx_filter_drop(&f, in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "loading") == 0)
        return vtx_filter_loading(&f, in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "loading_when_due") == 0)
        return vtx_filter_loading_when_due(&f, actual), 1;
    if (strcmp(row->quantity, "time_left_cake") == 0)
        return vtx_filter_time_left(VTX_FILTER_CAKE, in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "time_left_clogging") == 0)
        return vtx_filter_time_left(VTX_FILTER_CLOGGING, in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "power_per_pressure") == 0)
        return vtx_power_per_pressure(in[0], in[1], in[2], in[3], in[4], actual), 1;
    return 0;
}

static void worked_values_are_reproduced(void) { check_rows("filter.csv", filter_row, 10); }

static void drop_and_loading_invert(void)
{
    struct random_state r;
    random_seed(&r, 41);
    vtx_filter f = sample_filter();
    for (int i = 0; i < RANDOM_CASES; i++) {
        f.medium_share = random_uniform(&r, 0.2, 1);
        const double density = random_uniform(&r, 2, 20), flow = random_log_uniform(&r, 1e-4, 0.1);
        const double wanted = random_log_uniform(&r, 0.5, 50);
        double drop, loading, more;
        EXPECT_OK(vtx_filter_drop(&f, density, flow, wanted, &drop));
        EXPECT_OK(vtx_filter_drop(&f, density, 1.01 * flow, wanted, &more));
        EXPECT(more >= 1.01 * drop * (1 - 1e-14));
        EXPECT_OK(vtx_filter_loading(&f, density, flow, drop, &loading));
        const double in_medium = wanted * f.medium_share * f.clean_drop * (flow / density) / (f.rated_flow / f.rated_density);
        EXPECT_NEAR(loading, wanted, 1e-14 * (1 + drop / in_medium));
    }
}

static void a_drop_below_that_of_the_housing_has_no_loading(void)
{
    const vtx_filter f = sample_filter();
    double loading = 1;
    EXPECT_STATUS(vtx_filter_loading(&f, 9.5, 0.02, 3000, &loading), VTX_NO_SOLUTION);
    EXPECT(isnan(loading));
    EXPECT_OK(vtx_filter_loading(&f, 9.5, 0.02, 5000, &loading));
    EXPECT(loading < 1);
}

static double carried(const vtx_filter *f, double density, double flow, double drop)
{
    double found = 0;
    EXPECT_OK(vtx_filter_drop_at_reference(f, density, flow, drop, 0, 0, f->rated_density, f->rated_flow, &found, NULL));
    return found;
}

static void readings_of_different_days_compare_at_one_flow(void)
{
    struct random_state r;
    random_seed(&r, 47);
    vtx_filter f = sample_filter();
    for (int i = 0; i < RANDOM_CASES; i++) {
        f.medium_share = random_uniform(&r, 0.2, 1);
        const double loading = random_uniform(&r, 0.8, 8), density = random_uniform(&r, 5, 12), flow = random_uniform(&r, 0.005, 0.03);
        const double by_flow = random_uniform(&r, 0, 0.02) * flow, by_drop = random_uniform(&r, 10, 500);
        double drop, same, expected, found, uncertainty;
        EXPECT_OK(vtx_filter_drop(&f, density, flow, loading, &drop));
        EXPECT_OK(vtx_filter_drop(&f, f.rated_density, f.rated_flow, loading, &expected));
        EXPECT_OK(vtx_filter_drop_at_reference(&f, density, flow, drop, by_flow, by_drop, f.rated_density, f.rated_flow, &found, &uncertainty));
        EXPECT_NEAR(found, expected, 1e-12);
        EXPECT_OK(vtx_filter_drop_at_reference(&f, density, flow, drop, by_flow, by_drop, density, flow, &same, NULL));
        EXPECT_NEAR(same, drop, 1e-13);
        const double slope_flow = (carried(&f, density, flow * (1 + 1e-5), drop) - carried(&f, density, flow * (1 - 1e-5), drop)) / (2e-5 * flow);
        const double slope_drop = (carried(&f, density, flow, drop * (1 + 1e-5)) - carried(&f, density, flow, drop * (1 - 1e-5))) / (2e-5 * drop);
        EXPECT_NEAR(uncertainty, hypot(slope_flow * by_flow, slope_drop * by_drop), 1e-6);
    }
}

static void an_element_is_due_when_it_has_come_all_the_way(void)
{
    struct random_state r;
    random_seed(&r, 42);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double age = random_log_uniform(&r, 1e4, 1e8), due = random_uniform(&r, 2, 20), now = random_uniform(&r, 1.01, due);
        double cake, clogging, at_due;
        EXPECT_OK(vtx_filter_time_left(VTX_FILTER_CAKE, age, now, due, &cake));
        EXPECT_OK(vtx_filter_time_left(VTX_FILTER_CLOGGING, age, now, due, &clogging));
        EXPECT(clogging >= 0 && clogging <= cake * (1 + 1e-12) + 1e-9 * age);
        EXPECT_NEAR(1 + (now - 1) * (age + cake) / age, due, 1e-12);
        EXPECT_NEAR(pow(now, (age + clogging) / age), due, 1e-11);
        EXPECT_OK(vtx_filter_time_left(VTX_FILTER_CAKE, age, due, due, &at_due));
        EXPECT(at_due == 0);
    }
}

static void no_growth_tells_no_time(void)
{
    double time = 1;
    EXPECT_STATUS(vtx_filter_time_left(VTX_FILTER_CAKE, 1e6, 1, 6, &time), VTX_NO_SOLUTION);
    EXPECT(isnan(time));
    EXPECT_STATUS(vtx_filter_time_left(VTX_FILTER_CLOGGING, 1e6, 0.9, 6, &time), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_filter_time_left(VTX_FILTER_CAKE, 1e6, 2, 1, &time), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_filter_time_left(VTX_FILTER_CAKE, 1e9, 1 + 1e-12, 6, &time), VTX_OUT_OF_RANGE);
}

/* Mean cost a second when the element is changed every t. */
static double mean_cost(double element, double rate, double slope, double price, double t)
{
    return (element + 0.5 * price * slope * rate * t * t) / t;
}

static void the_economic_interval_costs_least(void)
{
    struct random_state r;
    random_seed(&r, 43);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double element = random_log_uniform(&r, 10, 1000), rate = random_log_uniform(&r, 1e-4, 1e-2);
        const double slope = random_log_uniform(&r, 1e-3, 1), price = random_log_uniform(&r, 1e-8, 1e-7);
        double t;
        EXPECT_OK(vtx_filter_economic_interval(element, rate, slope, price, &t));
        const double least = mean_cost(element, rate, slope, price, t);
        EXPECT(least < mean_cost(element, rate, slope, price, 1.001 * t));
        EXPECT(least < mean_cost(element, rate, slope, price, 0.999 * t));
    }
}

static void the_slope_of_power_is_that_of_package_power(void)
{
    struct random_state r;
    random_seed(&r, 44);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double p2 = random_log_uniform(&r, 1.5e5, 2e6), efficiency = random_uniform(&r, 0.3, 0.9);
        double low, high, slope;
        EXPECT_OK(vtx_package_power(1.4, 1e5, p2 * (1 - 1e-5), 0.1, efficiency, &low));
        EXPECT_OK(vtx_package_power(1.4, 1e5, p2 * (1 + 1e-5), 0.1, efficiency, &high));
        EXPECT_OK(vtx_power_per_pressure(1.4, 1e5, p2, 0.1, efficiency, &slope));
        EXPECT_NEAR(slope, (high - low) / (2e-5 * p2), 1e-9);
    }
}

static void the_chain_loses_what_the_filter_takes(void)
{
    struct random_state r;
    random_seed(&r, 45);
    vtx_filter f = sample_filter();
    vtx_gas air;
    EXPECT_OK(vtx_gas_init(&air));
    for (int i = 0; i < RANDOM_CASES / 10; i++) {
        const double flow = random_log_uniform(&r, 1e-3, 0.03), loading = random_uniform(&r, 1, 6), p = random_uniform(&r, 5e5, 1e6);
        const double density = p * air.molar_mass / (8.314462618 * 300);
        vtx_chain_element element;
        vtx_chain_state state;
        double drop;
        f.medium_share = random_uniform(&r, 0.1, 1);
        EXPECT_OK(vtx_filter_element(&f, loading, &element));
        EXPECT_OK(vtx_filter_drop(&f, density, flow, loading, &drop));
        EXPECT_OK(vtx_chain_outlet_pressure(&element, 1, flow, p, 300, &state, NULL));
        EXPECT_NEAR(state.pressure_loss, drop, 1e-9);
    }
    f.rated_density = 0.1;
    f.change_drop = 9e6;
    f.clean_drop = 9e5;
    vtx_chain_element refused;
    EXPECT_STATUS(vtx_filter_element(&f, 1, &refused), VTX_OUT_OF_RANGE);
    EXPECT(isnan(refused.laminar_loss) && refused.kind == -1);
}

static void a_filter_is_checked_field_by_field(void)
{
    vtx_filter f;
    double drop = 1;
    EXPECT_STATUS(vtx_filter_init(NULL), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_filter_init(&f));
    EXPECT(f.rated_flow == 0 && f.rated_density == 0 && f.clean_drop == 1e4 && f.medium_share == 0.7 && f.change_drop == 5e4);
    EXPECT_STATUS(vtx_filter_drop(&f, 9.5, 0.02, 1, &drop), VTX_BAD_ARGUMENT);
    EXPECT(isnan(drop));
    double *const field[] = { &f.rated_flow, &f.rated_density, &f.clean_drop, &f.medium_share, &f.change_drop, &f.reserved[0],
                              &f.reserved[3] };
    for (size_t i = 0; i < sizeof field / sizeof field[0]; i++) {
        f = sample_filter();
        *field[i] = -1;
        EXPECT_STATUS(vtx_filter_drop(&f, 9.5, 0.02, 1, &drop), VTX_BAD_ARGUMENT);
        *field[i] = (double)NAN;
        EXPECT_STATUS(vtx_filter_drop(&f, 9.5, 0.02, 1, &drop), VTX_BAD_ARGUMENT);
        *field[i] = 1e15;
        EXPECT(vtx_filter_drop(&f, 9.5, 0.02, 1, &drop) != VTX_OK);
    }
    f = sample_filter();
    f.change_drop = f.clean_drop;
    EXPECT_STATUS(vtx_filter_loading_when_due(&f, &drop), VTX_BAD_ARGUMENT);
    EXPECT(isnan(drop));
}

static const struct test_case tests[] = {
    { "worked values are reproduced", worked_values_are_reproduced },
    { "drop and loading invert", drop_and_loading_invert },
    { "a drop below that of the housing has no loading", a_drop_below_that_of_the_housing_has_no_loading },
    { "readings of different days compare at one flow", readings_of_different_days_compare_at_one_flow },
    { "an element is due when it has come all the way", an_element_is_due_when_it_has_come_all_the_way },
    { "no growth tells no time", no_growth_tells_no_time },
    { "the economic interval costs least", the_economic_interval_costs_least },
    { "the slope of power is that of package power", the_slope_of_power_is_that_of_package_power },
    { "the chain loses what the filter takes", the_chain_loses_what_the_filter_takes },
    { "a filter is checked field by field", a_filter_is_checked_field_by_field },
};
TEST_SUITE(filter, tests);
