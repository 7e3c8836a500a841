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
    EXPECT(worst_area < 1e-10);
    EXPECT(worst_outlet < 1e-10);
    EXPECT(worst_inlet < 1e-10);
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
    EXPECT(worst_size < 1e-10);
    EXPECT(worst_outlet < 1e-10);
    EXPECT(worst_inlet < 1e-10);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "area, outlet and inlet pressure of an orifice are exact inverses of its flow", orifice_inverses_are_exact },
    { "size, outlet and inlet pressure of a conductance are exact inverses of its flow", conductance_inverses_are_exact },
};
TEST_SUITE(restriction, tests);
