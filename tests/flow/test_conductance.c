/* Pneumatic components by ISO 6358 against computed values, their own inverses, and pairs against a direct solution. */
#include <vtx/conductance.h>
#include <vtx/restriction.h>

#include "../harness/harness.h"

static void make(vtx_component *c, double conductance, double ratio, double index, double cracking)
{
    EXPECT_OK(vtx_component_init(c));
    c->sonic_conductance = conductance;
    c->critical_ratio = ratio;
    c->subsonic_index = index;
    c->cracking_pressure = cracking;
}

static int conductance_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    double other = 0;
    vtx_component c;
    if (strcmp(row->quantity, "mass_flow") == 0) {
        make(&c, x[0], x[1], x[2], x[3]);
        return vtx_component_mass_flow(&c, x[4], x[5], x[6], actual, NULL), 1;
    }
    if (strcmp(row->quantity, "series_conductance") == 0)
        return vtx_conductance_in_series(x[0], x[1], x[2], x[3], actual, NULL, NULL), 1;
    if (strcmp(row->quantity, "series_between") == 0) {
        EXPECT_OK(vtx_conductance_in_series(x[0], x[1], x[2], x[3], &other, NULL, NULL));
        return *actual = other / x[2], 1;
    }
    if (strcmp(row->quantity, "parallel_conductance") == 0)
        return vtx_conductance_in_parallel(x[0], x[1], x[2], x[3], actual, NULL), 1;
    if (strcmp(row->quantity, "parallel_ratio") == 0)
        return vtx_conductance_in_parallel(x[0], x[1], x[2], x[3], &other, actual), 1;
    if (strcmp(row->quantity, "tube_conductance") == 0)
        return vtx_tube_conductance(x[0], x[1], actual, NULL), 1;
    if (strcmp(row->quantity, "tube_ratio") == 0)
        return vtx_tube_conductance(x[0], x[1], &other, actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("conductance.csv", conductance_row, 14); }

static double relative(double actual, double expected) { return fabs(actual - expected) / expected; }

/* Nearly equal pressures are asked for only without cracking pressure: with one, the opening is a difference of rounded pressures. */
static void inverses_are_exact(void)
{
    struct random_state r;
    double worst_size = 0, worst_outlet = 0, worst_inlet = 0;
    int status = 0;
    random_seed(&r, 10);
    for (int i = 0; i < 100000; i++) {
        vtx_component c;
        double flow = 0, back = 0, size = 0, pressure = 0;
        const double p = random_log_uniform(&r, 1e5, 1e7), t = random_uniform(&r, 200, 400);
        const double cracking = i % 3 ? 0 : random_uniform(&r, 0, 0.2) * (p < 5e6 ? p : 5e6);
        const double b = random_uniform(&r, 0, 0.7);
        make(&c, random_log_uniform(&r, 1e-10, 1e-6), i % 7 ? b : 0, i % 2 ? 0.5 : random_uniform(&r, 0.4, 0.7), cracking);
        const double span = p * (1 - c.critical_ratio) - cracking;
        const double kind = random_uniform(&r, 0, 1);
        const double e = kind < 0.3 ? random_log_uniform(&r, cracking > 0 ? 1e-5 : 1e-9, 1) : kind < 0.4 ? 1
            : kind < 0.5 ? 1 - random_log_uniform(&r, 1e-12, 1e-2) : random_uniform(&r, 0.01, 1);
        const double low = fmax(p - cracking - e * span, 2e3);
        status |= vtx_component_mass_flow(&c, p, t, low, &flow, NULL);
        status |= vtx_component_conductance(&c, flow, p, t, low, &size);
        worst_size = fmax(worst_size, relative(size, c.sonic_conductance));
        status |= vtx_component_outlet_pressure(&c, flow, p, t, &pressure, NULL);
        status |= vtx_component_mass_flow(&c, p, t, pressure, &back, NULL);
        worst_outlet = fmax(worst_outlet, relative(back, flow));
        status |= vtx_component_inlet_pressure(&c, flow, t, low, &pressure);
        status |= vtx_component_mass_flow(&c, pressure, t, low, &back, NULL);
        worst_inlet = fmax(worst_inlet, relative(back, flow));
    }
    EXPECT_STATUS(status, VTX_OK);
    EXPECT_WITHIN(worst_size, 0, 1e-13);
    EXPECT_WITHIN(worst_outlet, 0, 1e-10);
    EXPECT_WITHIN(worst_inlet, 0, 1e-10);
}

static void the_short_form_is_the_same_law(void)
{
    struct random_state r;
    random_seed(&r, 11);
    for (int i = 0; i < 1000; i++) {
        vtx_component c;
        double flow = 0, other = 0;
        int32_t choked = 0, other_choked = 0;
        const double p = random_log_uniform(&r, 1e5, 1e7), low = p * random_uniform(&r, 0.05, 1);
        make(&c, 1e-8, random_uniform(&r, 0, 0.6), 0.5, 0);
        EXPECT_OK(vtx_component_mass_flow(&c, p, 300, low, &flow, &choked));
        EXPECT_OK(vtx_conductance_mass_flow(1e-8, c.critical_ratio, p, 300, low, &other, &other_choked));
        EXPECT(flow == other && choked == other_choked);
    }
}

static void a_component_stays_closed_up_to_its_cracking_pressure(void)
{
    vtx_component c;
    double flow = 1, pressure = 0, most = 0;
    int32_t choked = -1;
    make(&c, 1e-8, 0.3, 0.5, 2e4);
    EXPECT_OK(vtx_component_mass_flow(&c, 6e5, 293.15, 5.8e5, &flow, &choked));
    EXPECT(flow == 0 && choked == 0);
    EXPECT_STATUS(vtx_component_conductance(&c, 1e-3, 6e5, 293.15, 5.9e5, &flow), VTX_NO_SOLUTION);
    EXPECT_OK(vtx_component_outlet_pressure(&c, 0, 6e5, 293.15, &pressure, &most));
    EXPECT(pressure == 5.8e5);
    EXPECT_OK(vtx_component_inlet_pressure(&c, 0, 293.15, 5.8e5, &pressure));
    EXPECT(pressure == 6e5);
    EXPECT_STATUS(vtx_component_outlet_pressure(&c, 2 * most, 6e5, 293.15, &pressure, &flow), VTX_NO_SOLUTION);
    EXPECT(flow == most);
    /* Closed is closed, even where an open one would follow no law. */
    make(&c, 1e-8, 0.5, 0.5, 6e4);
    EXPECT_OK(vtx_component_mass_flow(&c, 1.1e5, 293.15, 1e5, &flow, NULL));
    EXPECT(flow == 0);
    EXPECT_STATUS(vtx_component_mass_flow(&c, 1.1e5, 293.15, 4e4, &flow, NULL), VTX_OUT_OF_RANGE);
}

/* Direct solution: bisection on the pressure between. */
static double pair_flow(const double *c, const double *b, double outlet)
{
    double low = outlet, high = 1e6, first = 0, second = 0;
    for (int i = 0; i < 100; i++) {
        const double between = 0.5 * (low + high);
        EXPECT_OK(vtx_conductance_mass_flow(c[0], b[0], 1e6, 293.15, between, &first, NULL));
        EXPECT_OK(vtx_conductance_mass_flow(c[1], b[1], between, 293.15, outlet, &second, NULL));
        if (first > second)
            low = between;
        else
            high = between;
    }
    return first;
}

static void two_in_series_choke_where_the_pair_says(void)
{
    struct random_state r;
    double worst = 0, widest = 0;
    random_seed(&r, 12);
    for (int i = 0; i < 300; i++) {
        const double c[2] = { random_log_uniform(&r, 1e-9, 1e-7), random_log_uniform(&r, 1e-9, 1e-7) };
        const double b[2] = { i % 10 ? random_uniform(&r, 0.05, 0.6) : 0, random_uniform(&r, 0.05, 0.6) };
        double pair = 0, ratio = 0, onset = 0, full = 0, flow = 0;
        EXPECT_OK(vtx_conductance_in_series(c[0], b[0], c[1], b[1], &pair, &ratio, &onset));
        EXPECT_OK(vtx_conductance_mass_flow(pair, 0.5, 1e6, 293.15, 1e3, &full, NULL));
        EXPECT_NEAR(pair_flow(c, b, 1e6 * onset * (1 - 1e-9)), full, 1e-9);
        EXPECT(pair_flow(c, b, 1e6 * (onset + 0.02)) < full * (1 - 1e-7));
        widest = fmax(widest, fabs(onset - ratio));
        for (int k = 1; k < 20; k++) {
            const double outlet = 1e6 * k / 20;
            EXPECT_OK(vtx_conductance_mass_flow(pair, ratio, 1e6, 293.15, outlet, &flow, NULL));
            worst = fmax(worst, fabs(flow - pair_flow(c, b, outlet)) / full);
        }
    }
    EXPECT_WITHIN(worst, 0, 0.026);
    EXPECT_WITHIN(widest, 0, 0.24);
}

static void two_side_by_side_pass_the_sum(void)
{
    struct random_state r;
    random_seed(&r, 13);
    for (int i = 0; i < 300; i++) {
        const double c[2] = { random_log_uniform(&r, 1e-9, 1e-7), random_log_uniform(&r, 1e-9, 1e-7) };
        const double b[2] = { random_uniform(&r, 0, 0.6), random_uniform(&r, 0, 0.6) };
        double both = 0, ratio = 0, flow = 0, one = 0, two = 0;
        EXPECT_OK(vtx_conductance_in_parallel(c[0], b[0], c[1], b[1], &both, &ratio));
        EXPECT_OK(vtx_conductance_mass_flow(both, ratio, 1e6, 293.15, 0.99999e6, &flow, NULL));
        EXPECT_OK(vtx_conductance_mass_flow(c[0], b[0], 1e6, 293.15, 0.99999e6, &one, NULL));
        EXPECT_OK(vtx_conductance_mass_flow(c[1], b[1], 1e6, 293.15, 0.99999e6, &two, NULL));
        EXPECT_NEAR(flow, one + two, 1e-5);
    }
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "size, outlet and inlet pressure are exact inverses", inverses_are_exact },
    { "the short form is the same law to the bit", the_short_form_is_the_same_law },
    { "a component stays closed up to its cracking pressure", a_component_stays_closed_up_to_its_cracking_pressure },
    { "two in series choke where the pair says", two_in_series_choke_where_the_pair_says },
    { "two side by side pass the sum near equal pressures", two_side_by_side_pass_the_sum },
};
TEST_SUITE(conductance, tests);
