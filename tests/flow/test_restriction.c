/* Nozzles, orifices and ISO 6358 conductances against published values and their own inverses. */
#include <vtx/air.h>
#include <vtx/restriction.h>

#include "../harness/harness.h"

/* Inputs of orifice rows: specific gas constant, gamma, area, coefficient, p1, T1, p2. */
static int orifice_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    vtx_gas gas;
    EXPECT_OK(vtx_gas_init(&gas));
    const int free_air = strcmp(row->quantity, "free_air") == 0;
    if (free_air || strcmp(row->quantity, "orifice_mass_flow") == 0) {
        gas.molar_mass = 8.314462618 / x[0];
        gas.heat_capacity_ratio = x[1];
        vtx_orifice_mass_flow(&gas, x[2], x[3], x[4], x[5], x[6], actual, NULL);
        *actual /= free_air ? 0.07494 * 0.45359237 / 0.028316846592 : 1;
        return 1;
    }
    if (strcmp(row->quantity, "air_nozzle") == 0) {
        double real = 0, perfect = 0;
        EXPECT_OK(vtx_air_critical_flow_factor(x[0], x[1], &real));
        EXPECT_OK(vtx_critical_flow_function(1.4, &perfect));
        vtx_orifice_mass_flow(&gas, 1, real / perfect, x[0], x[1], 0.1 * x[0], actual, NULL);
        *actual *= sqrt(8.314462618 / 0.0289655 * x[1]) / x[0];
        return 1;
    }
    if (strcmp(row->quantity, "conductance_mass_flow") == 0)
        return vtx_conductance_mass_flow(x[0], x[1], x[2], x[3], x[4], actual, NULL), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("restriction.csv", orifice_row, 18); }

enum { RANDOM_CASES = 100000 };

struct ends {
    vtx_gas gas;
    double inlet_pressure, inlet_temperature, outlet_pressure;
};

/* All pressure ratios down to 0.1, with a share of nearly equal pressures and of exactly critical ones. */
static void random_ends(struct random_state *r, double critical, struct ends *e)
{
    const double kind = random_uniform(r, 0, 1);
    const double p = random_log_uniform(r, 2e4, 1e7);
    e->inlet_pressure = p;
    e->inlet_temperature = random_uniform(r, 200, 400);
    if (kind < 0.3)
        e->outlet_pressure = p * (1 - random_log_uniform(r, 1e-9, 0.5));
    else if (kind < 0.4)
        e->outlet_pressure = p * (1 - 1e-9);
    else if (kind < 0.5)
        e->outlet_pressure = p * critical;
    else if (kind < 0.6)
        e->outlet_pressure = p * (critical + random_log_uniform(r, 1e-15, 1e-2));
    else
        e->outlet_pressure = p * random_uniform(r, 0.1, 1);
}

static double relative(double actual, double expected) { return fabs(actual - expected) / expected; }

static void orifice_inverses_are_exact(void)
{
    struct random_state r;
    struct ends e;
    double worst_area = 0, worst_outlet = 0, worst_inlet = 0;
    random_seed(&r, 1);
    for (int i = 0; i < RANDOM_CASES; i++) {
        double flow = 0, back = 0, critical = 0, area = 0, pressure = 0, attainable = 0;
        vtx_status status = vtx_gas_init(&e.gas);
        e.gas.heat_capacity_ratio = random_uniform(&r, 1.01, 1.7);
        e.gas.molar_mass = random_uniform(&r, 0.002, 0.15);
        status |= vtx_critical_pressure_ratio(e.gas.heat_capacity_ratio, &critical);
        random_ends(&r, critical, &e);
        const double size = random_log_uniform(&r, 1e-8, 1e-2), coefficient = random_uniform(&r, 0.5, 1);
        status |= vtx_orifice_mass_flow(&e.gas, size, coefficient, e.inlet_pressure, e.inlet_temperature, e.outlet_pressure, &flow, NULL);
        status |= vtx_orifice_area(&e.gas, flow, coefficient, e.inlet_pressure, e.inlet_temperature, e.outlet_pressure, &area);
        worst_area = fmax(worst_area, relative(area, size));
        status |= vtx_orifice_outlet_pressure(&e.gas, flow, size, coefficient, e.inlet_pressure, e.inlet_temperature, &pressure, &attainable);
        status |= vtx_orifice_mass_flow(&e.gas, size, coefficient, e.inlet_pressure, e.inlet_temperature, pressure, &back, NULL);
        worst_outlet = fmax(worst_outlet, relative(back, flow));
        status |= vtx_orifice_inlet_pressure(&e.gas, flow, size, coefficient, e.inlet_temperature, e.outlet_pressure, &pressure);
        status |= vtx_orifice_mass_flow(&e.gas, size, coefficient, pressure, e.inlet_temperature, e.outlet_pressure, &back, NULL);
        worst_inlet = fmax(worst_inlet, relative(back, flow));
        if (status != VTX_OK) {
            EXPECT_STATUS(status, VTX_OK);
            return;
        }
    }
    EXPECT_WITHIN(worst_area, 0, 1e-14);
    EXPECT_WITHIN(worst_outlet, 0, 1e-14);
    EXPECT_WITHIN(worst_inlet, 0, 1e-14);
}

static void conductance_inverses_are_exact(void)
{
    struct random_state r;
    struct ends e;
    double worst_size = 0, worst_outlet = 0, worst_inlet = 0;
    random_seed(&r, 2);
    for (int i = 0; i < RANDOM_CASES; i++) {
        double flow = 0, back = 0, found = 0, pressure = 0, attainable = 0;
        const double b = i % 10 ? random_uniform(&r, 0, 0.98) : 0;
        const double size = random_log_uniform(&r, 1e-10, 1e-6);
        random_ends(&r, b > 0.1 ? b : 0.1, &e);
        vtx_status status = vtx_conductance_mass_flow(size, b, e.inlet_pressure, e.inlet_temperature, e.outlet_pressure, &flow, NULL);
        status |= vtx_conductance_for_mass_flow(flow, b, e.inlet_pressure, e.inlet_temperature, e.outlet_pressure, &found);
        worst_size = fmax(worst_size, relative(found, size));
        status |= vtx_conductance_outlet_pressure(flow, size, b, e.inlet_pressure, e.inlet_temperature, &pressure, &attainable);
        status |= vtx_conductance_mass_flow(size, b, e.inlet_pressure, e.inlet_temperature, pressure, &back, NULL);
        worst_outlet = fmax(worst_outlet, relative(back, flow));
        status |= vtx_conductance_inlet_pressure(flow, size, b, e.inlet_temperature, e.outlet_pressure, &pressure);
        status |= vtx_conductance_mass_flow(size, b, pressure, e.inlet_temperature, e.outlet_pressure, &back, NULL);
        worst_inlet = fmax(worst_inlet, relative(back, flow));
        if (status != VTX_OK) {
            EXPECT_STATUS(status, VTX_OK);
            return;
        }
    }
    EXPECT_WITHIN(worst_size, 0, 1e-14);
    EXPECT_WITHIN(worst_outlet, 0, 1e-14);
    EXPECT_WITHIN(worst_inlet, 0, 1e-14);
}

static double flow_at(double inlet, double outlet, int32_t *choked)
{
    vtx_gas air;
    double flow = 0;
    EXPECT_OK(vtx_gas_init(&air));
    EXPECT_OK(vtx_orifice_mass_flow(&air, 1e-6, 1, inlet, 293.15, outlet, &flow, choked));
    return flow;
}

/* Flow grows down to the critical ratio, is flat at and below it, and says so; no jump there. */
static void a_nozzle_chokes_at_its_critical_ratio_and_nowhere_else(void)
{
    double critical = 0, last = 0;
    int32_t choked = -1;
    EXPECT_OK(vtx_critical_pressure_ratio(1.4, &critical));
    const double most = flow_at(8e5, 8e5 * critical, &choked);
    EXPECT(choked == 1);
    for (int i = 0; i <= 1000; i++) {
        const double ratio = 1 - 0.99 * i / 1000;
        const double flow = flow_at(8e5, 8e5 * ratio, &choked);
        EXPECT(choked == (ratio <= critical));
        EXPECT(choked ? flow == most : flow >= last);
        last = flow;
    }
    for (double near = 1e-15; near < 1e-3; near *= 10) {
        const double above = flow_at(8e5, 8e5 * critical * (1 + near), &choked);
        EXPECT_NEAR(above, most, 2 * near * near + 1e-15);
        EXPECT(near < 1e-14 || choked == 0);
    }
}

/* Square-root law: the flow of a thousandth of the difference is the root of a thousandth, down to the last digit of the pressure. */
static void small_differences_keep_their_digits(void)
{
    vtx_gas air;
    const double p = 524288; /* a power of two, so that the differences are exact */
    EXPECT_OK(vtx_gas_init(&air));
    for (double difference = 0x1p-33; difference < 0x1p-3; difference *= 2) {
        double flow = 0, short_flow = 0;
        EXPECT_OK(vtx_orifice_mass_flow(&air, 1e-4, 1, p, 300, p - difference, &flow, NULL));
        EXPECT_NEAR(flow, 1e-4 * sqrt(2 * p * 0.0289655 / (8.314462618 * 300) * difference), difference / p + 1e-15);
        EXPECT_OK(vtx_conductance_mass_flow(1e-8, 0.25, p, 293.15, p - difference, &short_flow, NULL));
        EXPECT_NEAR(short_flow, 1e-8 * 1.185 * p * sqrt(2 * difference / (0.75 * p)), difference / p + 1e-15);
    }
}

static void equal_pressures_pass_nothing_and_reversed_ones_are_refused(void)
{
    vtx_gas air;
    double x = 1;
    int32_t choked = 7;
    EXPECT_OK(vtx_gas_init(&air));
    EXPECT_OK(vtx_orifice_mass_flow(&air, 1e-6, 1, 5e5, 300, 5e5, &x, &choked));
    EXPECT(x == 0 && !signbit(x) && choked == 0);
    EXPECT_OK(vtx_conductance_mass_flow(1e-8, 0.3, 5e5, 300, 5e5, &x, &choked));
    EXPECT(x == 0 && choked == 0);
    EXPECT_STATUS(vtx_orifice_mass_flow(&air, 1e-6, 1, 5e5, 300, 5.0001e5, &x, &choked), VTX_BAD_ARGUMENT);
    EXPECT(isnan(x) && choked == -1);
    EXPECT_STATUS(vtx_conductance_mass_flow(1e-8, 0.3, 5e5, 300, 5.0001e5, &x, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_orifice_area(&air, 1e-3, 1, 5e5, 300, 6e5, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_orifice_mass_flow(&air, 1e-6, 1, 300, 5e5, 300, &x, NULL), VTX_OUT_OF_RANGE);
}

static void no_flow_and_too_much_flow_have_their_answers(void)
{
    vtx_gas air;
    double x = 1, most = 0, attainable = 0;
    EXPECT_OK(vtx_gas_init(&air));
    EXPECT_OK(vtx_orifice_area(&air, 0, 1, 5e5, 300, 5e5, &x));
    EXPECT(x == 0);
    EXPECT_STATUS(vtx_orifice_area(&air, 1e-3, 1, 5e5, 300, 5e5, &x), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_conductance_for_mass_flow(1e-3, 0.3, 5e5, 300, 5e5, &x), VTX_NO_SOLUTION);
    EXPECT_OK(vtx_orifice_outlet_pressure(&air, 0, 1e-6, 1, 5e5, 300, &x, NULL));
    EXPECT(x == 5e5);
    EXPECT_OK(vtx_orifice_inlet_pressure(&air, 0, 1e-6, 1, 300, 5e5, &x));
    EXPECT(x == 5e5);
    EXPECT_OK(vtx_conductance_outlet_pressure(0, 1e-8, 0.3, 5e5, 300, &x, NULL));
    EXPECT(x == 5e5);
    EXPECT_OK(vtx_orifice_mass_flow(&air, 1e-6, 1, 5e5, 300, 1e5, &most, NULL));
    EXPECT_STATUS(vtx_orifice_outlet_pressure(&air, most * (1 + 1e-12), 1e-6, 1, 5e5, 300, &x, &attainable), VTX_NO_SOLUTION);
    EXPECT(isnan(x));
    EXPECT_NEAR(attainable, most, 1e-15);
    EXPECT_OK(vtx_orifice_outlet_pressure(&air, attainable, 1e-6, 1, 5e5, 300, &x, &most));
    EXPECT_NEAR(x, 5e5 * 0.528281787717174, 1e-7);
    EXPECT(most == attainable);
    EXPECT_OK(vtx_conductance_mass_flow(1e-8, 0.3, 5e5, 300, 1e5, &most, NULL));
    EXPECT_STATUS(vtx_conductance_outlet_pressure(1.001 * most, 1e-8, 0.3, 5e5, 300, &x, &attainable), VTX_NO_SOLUTION);
    EXPECT_NEAR(attainable, most, 1e-15);
    EXPECT_STATUS(vtx_orifice_inlet_pressure(&air, 1e4, 1e-6, 1, 300, 5e5, &x), VTX_OUT_OF_RANGE);
}

static void compressibility_below_one_raises_the_flow_by_its_root(void)
{
    vtx_gas gas;
    double flow = 0, less = 0;
    EXPECT_OK(vtx_gas_init(&gas));
    EXPECT_OK(vtx_orifice_mass_flow(&gas, 1e-6, 1, 5e5, 300, 4e5, &flow, NULL));
    gas.compressibility = 0.81;
    EXPECT_OK(vtx_orifice_mass_flow(&gas, 1e-6, 1, 5e5, 300, 4e5, &less, NULL));
    EXPECT_NEAR(less, flow / 0.9, 1e-14);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "area, outlet and inlet pressure of an orifice are exact inverses of its flow", orifice_inverses_are_exact },
    { "size, outlet and inlet pressure of a conductance are exact inverses of its flow", conductance_inverses_are_exact },
    { "a nozzle chokes at its critical ratio and nowhere else, without a jump", a_nozzle_chokes_at_its_critical_ratio_and_nowhere_else },
    { "small differences keep their digits", small_differences_keep_their_digits },
    { "equal pressures pass nothing and reversed ones are refused", equal_pressures_pass_nothing_and_reversed_ones_are_refused },
    { "no flow and too much flow have their answers", no_flow_and_too_much_flow_have_their_answers },
    { "compressibility below one raises the flow by its root", compressibility_below_one_raises_the_flow_by_its_root },
};
TEST_SUITE(restriction, tests);
