/* Dry air against published values, and its laws. */
#include <vtx/air.h>

#include "../../libvtx/media/air_kernel.h"
#include "../harness/harness.h"

static int air_row(const struct data_row *row, double *actual)
{
    static const struct {
        const char *quantity;
        vtx_status (*f)(double, double, double *);
    } of_two[] = {
        { "compressibility", vtx_air_compressibility },
        { "density", vtx_air_density },
        { "enthalpy", vtx_air_enthalpy },
        { "entropy", vtx_air_entropy },
        { "heat_capacity", vtx_air_heat_capacity },
        { "heat_capacity_ratio", vtx_air_heat_capacity_ratio },
        { "sound_speed", vtx_air_sound_speed },
        { "joule_thomson", vtx_air_joule_thomson },
        { "viscosity", vtx_air_viscosity },
        { "conductivity", vtx_air_conductivity },
        { "critical_flow_factor", vtx_air_critical_flow_factor },
    };
    if (strcmp(row->quantity, "viscosity_of_density") == 0)
        return *actual = air_viscosity(row->input[0], row->input[1]), 1;
    if (strcmp(row->quantity, "conductivity_of_density") == 0)
        return *actual = air_conductivity(row->input[0], row->input[1]), 1;
    if (strcmp(row->quantity, "volume") == 0) {
        double density = (double)NAN;
        EXPECT_OK(vtx_air_density(row->input[0], row->input[1], &density));
        return *actual = 1 / density, 1;
    }
    if (strcmp(row->quantity, "sound_speed") == 0 && row->input[1] > 473.15) {
        const struct real_temperature t = real_temperature(row->input[1]);
        return *actual = real_gas(&t, row->input[0], 0).sound_speed, 1;
    }
    for (size_t i = 0; i < sizeof of_two / sizeof of_two[0]; i++)
        if (strcmp(row->quantity, of_two[i].quantity) == 0)
            return of_two[i].f(row->input[0], row->input[1], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("air.csv", air_row, 48); }

static void random_state(struct random_state *r, double *pressure, double *temperature)
{
    do {
        *pressure = random_log_uniform(r, 1e3, 5e6);
        *temperature = random_uniform(r, 100, 473.15);
    } while (*pressure > 0.4e6 * pow(*temperature / 100, 4));
}

static vtx_dry_air air_at(double pressure, double temperature)
{
    vtx_dry_air air;
    EXPECT_OK(vtx_dry_air_at(pressure, temperature, &air));
    return air;
}

/* dh = T ds + v dp; cp = dh/dT; w^2 = cp/cv dp/d(density); mu = (T dv/dT - v)/cp. */
static void one_equation_of_state_stands_behind_all(void)
{
    struct random_state r;
    random_seed(&r, 2);
    for (int i = 0; i < 3000; i++) {
        double p, t;
        random_state(&r, &p, &t);
        const double dt = 1e-4 * t, dp = 1e-4 * p;
        if (t < 101 || t > 473 || p > 4.9e6 || p < 1001 || p + dp > 0.4e6 * pow((t - dt) / 100, 4))
            continue;
        const vtx_dry_air a = air_at(p, t), colder = air_at(p, t - dt), warmer = air_at(p, t + dt);
        const vtx_dry_air thinner = air_at(p - dp, t), denser = air_at(p + dp, t);
        const double cp = (warmer.enthalpy - colder.enthalpy) / (2 * dt), volume = 1 / a.density;
        const double volume_t = (1 / warmer.density - 1 / colder.density) / (2 * dt);
        EXPECT_NEAR(cp, a.heat_capacity, 1e-5);
        EXPECT_NEAR(t * (warmer.entropy - colder.entropy) / (2 * dt), cp, 1e-6);
        EXPECT_NEAR(-(denser.entropy - thinner.entropy) / (2 * dp), volume_t, 1e-5);
        EXPECT_WITHIN((denser.enthalpy - thinner.enthalpy) / (2 * dp), volume - t * volume_t, 1e-5 * volume);
        EXPECT_NEAR(a.heat_capacity_ratio * 2 * dp / (denser.density - thinner.density), square(a.sound_speed), 1e-5);
        EXPECT_WITHIN(a.joule_thomson * a.heat_capacity, t * volume_t - volume, 1e-5 * volume);
    }
}

static void scalars_are_the_fields_of_the_state(void)
{
    double value;
    const vtx_dry_air a = air_at(0.8e6, 260);
    EXPECT(vtx_air_density(0.8e6, 260, &value) == VTX_OK && fabs(value / a.density - 1) < 1e-15);
    EXPECT(vtx_air_viscosity(0.8e6, 260, &value) == VTX_OK && fabs(value / a.viscosity - 1) < 1e-15);
    EXPECT(vtx_air_joule_thomson(0.8e6, 260, &value) == VTX_OK && value == a.joule_thomson);
    EXPECT(a.advisories == 0);
    EXPECT(air_at(0.8e6, 150).advisories == VTX_ADVISORY_EXTRAPOLATED);
    EXPECT(air_at(2.5e6, 290).advisories == VTX_ADVISORY_EXTRAPOLATED);
}

static void air_near_condensing_is_refused(void)
{
    double value;
    EXPECT_STATUS(vtx_air_density(0.5e6, 100, &value), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_air_density(300, 101325, &value), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_air_critical_flow_factor(1e6, 199, &value), VTX_OUT_OF_RANGE);
}

/* At vanishing pressure the factor is that of a perfect gas of the local heat capacity ratio, which hardly changes on the way. */
static void critical_flow_factor_tends_to_the_perfect_gas(void)
{
    double factor, gamma;
    EXPECT_OK(vtx_air_critical_flow_factor(1e3, 250, &factor));
    EXPECT_OK(vtx_air_heat_capacity_ratio(1e3, 250, &gamma));
    EXPECT_NEAR(factor, sqrt(gamma) * pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1))), 1e-4);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "one equation of state stands behind all", one_equation_of_state_stands_behind_all },
    { "scalars are the fields of the state", scalars_are_the_fields_of_the_state },
    { "air near condensing is refused", air_near_condensing_is_refused },
    { "critical flow factor tends to the perfect gas", critical_flow_factor_tends_to_the_perfect_gas },
};
TEST_SUITE(air, tests);
