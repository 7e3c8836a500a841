/* Measures of a restriction's size against published factors and against the flow laws they stand for. */
#include <vtx/flow_coefficient.h>
#include <vtx/restriction.h>
#include <vtx/valve.h>

#include "../harness/harness.h"

static int coefficient_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    vtx_gas gas;
    EXPECT_OK(vtx_gas_init(&gas));
    if (row->inputs > 2) {
        gas.molar_mass = 8.314462618 / x[0];
        gas.heat_capacity_ratio = x[1];
    }
    if (strcmp(row->quantity, "conductance_from_area") == 0)
        return vtx_conductance_from_area(&gas, x[2], actual), 1;
    if (strcmp(row->quantity, "area_from_conductance") == 0)
        return vtx_area_from_conductance(&gas, x[2], actual), 1;
    if (strcmp(row->quantity, "area_from_kv") == 0)
        return vtx_area_from_kv(x[0], actual), 1;
    if (strcmp(row->quantity, "kv_from_cv") == 0)
        return vtx_kv_from_cv(x[0], actual), 1;
    if (strcmp(row->quantity, "conductance_from_kv") == 0)
        return vtx_conductance_from_kv(&gas, x[2], x[3], actual), 1;
    if (strcmp(row->quantity, "loss_from_kv") == 0)
        return vtx_loss_from_kv(x[0], x[1], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("flow_coefficient.csv", coefficient_row, 8); }

static void every_conversion_is_undone_by_its_partner(void)
{
    struct random_state r;
    vtx_gas gas;
    random_seed(&r, 15);
    EXPECT_OK(vtx_gas_init(&gas));
    for (int i = 0; i < 1000; i++) {
        const double value = random_log_uniform(&r, 1e-4, 1e3), bore = random_uniform(&r, 0.002, 1), xt = random_uniform(&r, 0.1, 1);
        double there = 0, back = 0;
        EXPECT_OK(vtx_kv_from_cv(value, &there));
        EXPECT_OK(vtx_cv_from_kv(there, &back));
        EXPECT_NEAR(back, value, 1e-15);
        EXPECT_OK(vtx_area_from_kv(value, &there));
        EXPECT_OK(vtx_kv_from_area(there, &back));
        EXPECT_NEAR(back, value, 1e-15);
        EXPECT_OK(vtx_conductance_from_area(&gas, 1e-4 * value, &there));
        EXPECT_OK(vtx_area_from_conductance(&gas, there, &back));
        EXPECT_NEAR(back, 1e-4 * value, 1e-15);
        EXPECT_OK(vtx_conductance_from_kv(&gas, value, xt, &there));
        EXPECT_OK(vtx_kv_from_conductance(&gas, there, xt, &back));
        EXPECT_NEAR(back, value, 1e-15);
        EXPECT_OK(vtx_loss_from_kv(value, bore, &there));
        EXPECT_OK(vtx_kv_from_loss(there, bore, &back));
        EXPECT_NEAR(back, value, 1e-15);
    }
}

/* At another temperature than the reference state's, so that all three laws have to scale alike. */
static void choked_flows_of_the_three_measures_are_equal(void)
{
    vtx_gas gas;
    vtx_valve valve;
    double area = 0, conductance = 0, by_area = 0, by_conductance = 0, by_kv = 0;
    EXPECT_OK(vtx_gas_init(&gas));
    EXPECT_OK(vtx_valve_init(&valve));
    EXPECT_OK(vtx_conductance_from_kv(&gas, 1, 0.7, &conductance));
    EXPECT_OK(vtx_area_from_conductance(&gas, conductance, &area));
    EXPECT_OK(vtx_valve_mass_flow(&gas, &valve, 7e5, 320, 1e5, &by_kv, NULL));
    EXPECT_OK(vtx_conductance_mass_flow(conductance, 0.3, 7e5, 320, 1e5, &by_conductance, NULL));
    EXPECT_OK(vtx_orifice_mass_flow(&gas, area, 1, 7e5, 320, 1e5, &by_area, NULL));
    EXPECT_NEAR(by_conductance, by_kv, 1e-14);
    EXPECT_NEAR(by_area, by_kv, 1e-14);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "every conversion is undone by its partner", every_conversion_is_undone_by_its_partner },
    { "choked flows of the three measures are equal", choked_flows_of_the_three_measures_are_equal },
};
TEST_SUITE(flow_coefficient, tests);
