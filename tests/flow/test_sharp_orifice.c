/* Sharp-edged orifices against published coefficients and their own inverses. */
#include <vtx/restriction.h>
#include <vtx/sharp_orifice.h>

#include "../harness/harness.h"

static int sharp_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    if (strcmp(row->quantity, "perry") == 0)
        return vtx_perry_coefficient(x[0], actual), 1;
    if (strcmp(row->quantity, "jobson") == 0)
        return vtx_jobson_coefficient(x[0], x[1], x[2], actual), 1;
    if (strcmp(row->quantity, "expansibility") == 0)
        return vtx_orifice_expansibility(x[0], x[1], x[2], x[3], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("sharp_orifice.csv", sharp_row, 8); }

static void the_two_laws_agree_for_air(void)
{
    for (int i = 0; i <= 100; i++) {
        const double r = i / 100.0;
        double perry = 0, jobson = 0;
        EXPECT_OK(vtx_perry_coefficient(r, &perry));
        EXPECT_OK(vtx_jobson_coefficient(1.4, 0.6, r, &jobson));
        EXPECT_NEAR(perry, jobson, r < 0.2 ? 0.031 : 0.0101);
    }
}

/* No jump at the sonic point, none at rest, and the value without compression at rest. */
static void jobson_is_continuous_and_falls_with_the_pressure_ratio(void)
{
    for (double gamma = 1.05; gamma < 1.7; gamma += 0.05)
        for (int k = 0; k <= 10; k++) {
            const double still = (50 + 2 * k) / 100.0;
            double critical = 0, above = 0, below = 0, last = 0, rest = 0;
            EXPECT_OK(vtx_critical_pressure_ratio(gamma, &critical));
            EXPECT_OK(vtx_jobson_coefficient(gamma, still, critical * (1 + 1e-13), &above));
            EXPECT_OK(vtx_jobson_coefficient(gamma, still, critical * (1 - 1e-13), &below));
            EXPECT_NEAR(above, below, 1e-11);
            EXPECT_OK(vtx_jobson_coefficient(gamma, still, 1, &rest));
            EXPECT_NEAR(rest, still, 1e-14);
            EXPECT_OK(vtx_jobson_coefficient(gamma, still, 1 - 1e-12, &above));
            EXPECT_NEAR(above, still, 1e-11);
            EXPECT_OK(vtx_jobson_coefficient(gamma, still, 0, &last));
            for (int i = 1; i <= 50; i++) {
                double now = 0;
                EXPECT_OK(vtx_jobson_coefficient(gamma, still, i / 50.0, &now));
                EXPECT(now <= last * (1 + 1e-14));
                last = now;
            }
        }
}

enum { RANDOM_CASES = 100000 };

static double relative(double actual, double expected) { return fabs(actual - expected) / expected; }

static void inverses_are_exact(int32_t law, uint64_t seed)
{
    struct random_state r;
    double worst_area = 0, worst_outlet = 0, worst_inlet = 0;
    int status = 0;
    random_seed(&r, seed);
    for (int i = 0; i < RANDOM_CASES; i++) {
        vtx_gas gas;
        double flow = 0, back = 0, critical = 0, area = 0, pressure = 0;
        const double kind = random_uniform(&r, 0, 1), p = random_log_uniform(&r, 2e4, 1e7), t = random_uniform(&r, 200, 400);
        status |= vtx_gas_init(&gas);
        gas.heat_capacity_ratio = random_uniform(&r, 1.01, 1.7);
        status |= vtx_critical_pressure_ratio(gas.heat_capacity_ratio, &critical);
        const double low = kind < 0.3 ? p * (1 - random_log_uniform(&r, 1e-9, 0.5)) : kind < 0.4 ? p * (1 - 1e-9)
            : kind < 0.5 ? p * critical : kind < 0.6 ? p * (critical + random_uniform(&r, -1e-6, 1e-6)) : p * random_uniform(&r, 0.06, 1);
        const double size = random_log_uniform(&r, 1e-8, 1e-2);
        status |= vtx_sharp_orifice_mass_flow(&gas, law, size, p, t, low, &flow, NULL);
        status |= vtx_sharp_orifice_area(&gas, law, flow, p, t, low, &area);
        worst_area = fmax(worst_area, relative(area, size));
        status |= vtx_sharp_orifice_outlet_pressure(&gas, law, flow, size, p, t, &pressure, NULL);
        status |= vtx_sharp_orifice_mass_flow(&gas, law, size, p, t, pressure, &back, NULL);
        worst_outlet = fmax(worst_outlet, relative(back, flow));
        status |= vtx_sharp_orifice_inlet_pressure(&gas, law, flow, size, t, low, &pressure);
        status |= vtx_sharp_orifice_mass_flow(&gas, law, size, pressure, t, low, &back, NULL);
        worst_inlet = fmax(worst_inlet, relative(back, flow));
    }
    EXPECT_STATUS(status, VTX_OK);
    EXPECT_WITHIN(worst_area, 0, 1e-14);
    EXPECT_WITHIN(worst_outlet, 0, 1e-12);
    EXPECT_WITHIN(worst_inlet, 0, 1e-12);
}

static void perry_inverses_are_exact(void) { inverses_are_exact(VTX_SHARP_EDGE_PERRY, 8); }
static void jobson_inverses_are_exact(void) { inverses_are_exact(VTX_SHARP_EDGE_JOBSON, 9); }

/* The flow keeps rising below the critical ratio, as measured on sharp edges, and never jumps. */
static void flow_rises_through_the_sonic_point(void)
{
    static const int32_t laws[] = { VTX_SHARP_EDGE_PERRY, VTX_SHARP_EDGE_JOBSON };
    vtx_gas air;
    EXPECT_OK(vtx_gas_init(&air));
    for (int k = 0; k < 2; k++) {
        double last = 0;
        for (int i = 0; i <= 980; i++) {
            double flow = 0;
            EXPECT_OK(vtx_sharp_orifice_mass_flow(&air, laws[k], 1e-6, 8e5, 293.15, 8e5 * (1 - i / 1000.0), &flow, NULL));
            EXPECT(flow >= last);
            EXPECT(i < 5 || flow < last * 1.2);
            last = flow;
        }
    }
}

static void demand_above_the_flow_into_a_vacuum_names_the_maximum(void)
{
    vtx_gas air;
    double pressure = 0, most = 0, flow = 0;
    EXPECT_OK(vtx_gas_init(&air));
    EXPECT_STATUS(vtx_sharp_orifice_outlet_pressure(&air, VTX_SHARP_EDGE_PERRY, 1, 1e-6, 8e5, 293.15, &pressure, &most), VTX_NO_SOLUTION);
    EXPECT_OK(vtx_orifice_mass_flow(&air, 1e-6, 0.8414, 8e5, 293.15, 1e5, &flow, NULL));
    EXPECT_NEAR(most, flow, 1e-14);
    EXPECT_STATUS(vtx_sharp_orifice_outlet_pressure(&air, VTX_SHARP_EDGE_PERRY, most, 1e-6, 8e5, 293.15, &pressure, NULL), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_sharp_orifice_outlet_pressure(&air, VTX_SHARP_EDGE_PERRY, 0, 1e-6, 8e5, 293.15, &pressure, NULL));
    EXPECT(pressure == 8e5);
    EXPECT_OK(vtx_sharp_orifice_inlet_pressure(&air, VTX_SHARP_EDGE_JOBSON, 0, 1e-6, 293.15, 8e5, &pressure));
    EXPECT(pressure == 8e5);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "the two laws agree for air: 1 % above a ratio of 0.2, 3 % below", the_two_laws_agree_for_air },
    { "Jobson's coefficient is continuous and falls with the pressure ratio", jobson_is_continuous_and_falls_with_the_pressure_ratio },
    { "inverses of Perry's law are exact", perry_inverses_are_exact },
    { "inverses of Jobson's law are exact", jobson_inverses_are_exact },
    { "flow rises through the sonic point without a jump", flow_rises_through_the_sonic_point },
    { "demand above the flow into a vacuum names the maximum", demand_above_the_flow_into_a_vacuum_names_the_maximum },
};
TEST_SUITE(sharp_orifice, tests);
