/* The coefficients behind real moist air against published values and against the published formulas they were fitted to. */
#include <vtx/water.h>

#include "../../libvtx/media/moist_real.h"
#include "../harness/harness.h"

static int virial_row(const struct data_row *row, double *actual)
{
    const int fugacity = strcmp(row->quantity, "fugacity") == 0;
    const double temperature = row->input[fugacity ? 1 : 0];
    const struct virials v = virials_at(temperature, log(temperature));
    const struct {
        const char *name;
        double value;
    } of_name[] = { { "Baa", v.aa.value },    { "Baw", v.aw.value },    { "Bww", v.ww.value },  { "Caaa", v.aaa.value },
                    { "Caaw", v.aaw.value },  { "Caww", v.aww.value },  { "Cwww", v.www.value } };
    if (fugacity) {
        const double x = row->input[2], rt = gas_constant * temperature;
        const struct mixture_virials m = mixture_virials(&v, x);
        const double density = virial_density(row->input[0] / rt, m.b.value, m.c.value);
        *actual = x * density * rt * exp(water_log_fugacity(&v, density, x));
        return 1;
    }
    for (size_t i = 0; i < sizeof of_name / sizeof of_name[0]; i++)
        if (strcmp(row->quantity, of_name[i].name) == 0)
            return *actual = of_name[i].value, 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("virials.csv", virial_row, 23); }

static void check_derivatives(const struct virial *below, const struct virial *at, const struct virial *above, double relative_step)
{
    const double scale = fabs(at->value) + fabs(at->first) + fabs(at->second);
    EXPECT_WITHIN((above->value - below->value) / (2 * relative_step), at->first, 1e-6 * scale);
    /* T d/dT of T B' is T B' + T^2 B''. */
    EXPECT_WITHIN((above->first - below->first) / (2 * relative_step), at->first + at->second, 1e-6 * scale);
}

static void derivatives_are_those_of_the_values(void)
{
    for (double t = 110; t < 470; t += 12.5) {
        const double step = 2e-5;
        const struct virials a = virials_at(t * (1 - step), log(t * (1 - step))), b = virials_at(t, log(t)), c = virials_at(t * (1 + step), log(t * (1 + step)));
        check_derivatives(&a.aa, &b.aa, &c.aa, step);
        check_derivatives(&a.aw, &b.aw, &c.aw, step);
        check_derivatives(&a.ww, &b.ww, &c.ww, step);
        check_derivatives(&a.aaa, &b.aaa, &c.aaa, step);
        check_derivatives(&a.aaw, &b.aaw, &c.aaw, step);
        check_derivatives(&a.aww, &b.aww, &c.aww, step);
        check_derivatives(&a.www, &b.www, &c.www, step);
        const struct virial i = ice_molar_volume(t), below = ice_molar_volume(t * (1 - step)), above = ice_molar_volume(t * (1 + step));
        check_derivatives(&below, &i, &above, step);
        if (t > 234 && fabs(t - 333.16) > 1) {
            const struct virial l = caloric_liquid_volume(t), m = caloric_liquid_volume(t * (1 - step)),
                                n = caloric_liquid_volume(t * (1 + step));
            check_derivatives(&m, &l, &n, step);
        }
    }
}

/* Of one vibration, over R. */
static double einstein(double x) { return square(x) * exp(-x) / square(1 - exp(-x)); }

/* Lemmon and others 2000, equation for the ideal part, differentiated. */
static double air_heat_capacity(double temperature)
{
    const double tau = 132.6312 / temperature, last = 87.31279 * tau;
    return 1 + 2.490888032 - 12 * 0.6057194e-7 * pow(tau, -3) + 6 * 0.210274769e-4 / square(tau) + 2 * 0.158860716e-3 / tau
           + 0.75 * 0.19536342e-3 * pow(tau, 1.5) + 0.791309509 * einstein(25.36365 * tau) + 0.212236768 * einstein(16.90741 * tau)
           + 0.197938904 * square(last) * 2 / 3 * exp(-last) / square(1 + 2.0 / 3 * exp(-last));
}

/* IAPWS R6-95(2018), table 1. */
static double water_heat_capacity(double temperature)
{
    const double tau = 647.096 / temperature;
    return 4.00632 + 0.012436 * einstein(1.28728967 * tau) + 0.97315 * einstein(3.53734222 * tau) + 1.27950 * einstein(7.74073708 * tau)
           + 0.96956 * einstein(9.24437796 * tau) + 0.24873 * einstein(27.5075105 * tau);
}

static void heat_capacities_follow_the_published_ideal_parts(void)
{
    for (double t = 110; t <= 480; t += 0.5) {
        EXPECT_WITHIN(dry_air_ideal_part(t, log(t)).heat_capacity / gas_constant, air_heat_capacity(t), 1.2e-6);
        EXPECT_WITHIN(water_ideal_part(t, log(t)).heat_capacity / gas_constant, water_heat_capacity(t), 1.4e-5);
    }
    EXPECT_WITHIN(dry_air_ideal_part(100, log(100)).heat_capacity / gas_constant, air_heat_capacity(100), 1e-5);
    EXPECT_WITHIN(dry_air_ideal_part(500, log(500)).heat_capacity / gas_constant, air_heat_capacity(500), 2e-5);
}

static void ideal_enthalpy_and_entropy_belong_to_the_heat_capacity(void)
{
    const double step = 0.01;
    for (double t = 101; t < 480; t += 3.7) {
        const struct ideal_part a = dry_air_ideal_part(t - step, log(t - step)), b = dry_air_ideal_part(t + step, log(t + step));
        const struct ideal_part c = water_ideal_part(t - step, log(t - step)), d = water_ideal_part(t + step, log(t + step));
        EXPECT_NEAR((b.enthalpy - a.enthalpy) / (2 * step), dry_air_ideal_part(t, log(t)).heat_capacity, 1e-7);
        EXPECT_NEAR((b.entropy - a.entropy) * t / (2 * step), dry_air_ideal_part(t, log(t)).heat_capacity, 1e-7);
        EXPECT_NEAR((d.enthalpy - c.enthalpy) / (2 * step), water_ideal_part(t, log(t)).heat_capacity, 1e-7);
        EXPECT_NEAR((d.entropy - c.entropy) * t / (2 * step), water_ideal_part(t, log(t)).heat_capacity, 1e-7);
    }
}

static void zeros_are_where_they_are_promised(void)
{
    const struct real_temperature air = real_temperature(273.15), water = real_temperature(273.16);
    const struct real_gas gas = real_gas(&air, 101325, 0);
    const struct condensate liquid = real_condensate(&water, 611.657, PHASE_LIQUID);
    EXPECT_WITHIN(gas.enthalpy, 0, 1e-9);
    EXPECT_WITHIN(gas.entropy, 0, 1e-11);
    EXPECT_WITHIN(liquid.enthalpy, 0, 1e-9);
    EXPECT_WITHIN(liquid.entropy, 0, 1e-11);
}

/* IAPWS G7-04: Henry's constant of nitrogen, oxygen and argon, mixed as air. */
static double henry_constant(double temperature)
{
    static const double a[3][4] = { { -9.67578, 4.72162, 11.70585, 0.7812 }, { -9.44833, 4.43822, 11.42005, 0.2095 },
                                    { -8.40954, 4.29587, 10.52779, 0.0093 } };
    const double t = temperature / 647.096, tau = 1 - t;
    double sum = 0;
    for (int i = 0; i < 3; i++)
        sum += a[i][3] / (liquid_saturation_pressure(temperature)
                          * exp(a[i][0] / t + a[i][1] * pow(tau, 0.355) / t + a[i][2] * pow(t, -0.41) * exp(tau)));
    return 1 / sum;
}

static void volumes_follow_the_published_densities(void)
{
    double density;
    for (double t = 253.15; t < 473; t += 1) {
        EXPECT_OK(vtx_water_density(t, &density));
        EXPECT_NEAR(aerated_water_molar_volume(t).value, water_molar_mass / density - gas_constant * t / henry_constant(t), 3.6e-4);
    }
    for (double t = 100; t < 273; t += 1) {
        EXPECT_OK(vtx_ice_density(1e6, t, &density));
        EXPECT_NEAR(ice_molar_volume(t).value, water_molar_mass / density, 1.5e-5);
    }
    EXPECT_NEAR(liquid_molar_volume(273.16).value, ice_molar_volume(273.16).value, 1e-14);
    EXPECT_NEAR(liquid_molar_volume(274.67).value, aerated_water_molar_volume(274.67).value, 1e-15);
    EXPECT_NEAR(caloric_liquid_volume(273.16).value, caloric_ice_volume(273.16).value, 1e-14);
    EXPECT_NEAR(caloric_liquid_volume(333.17).value, aerated_water_molar_volume(333.17).value, 1e-15);
}

/* Enthalpies that follow from saturation pressures are as good as these pressures' slopes. */
static void condensate_enthalpies_agree_with_the_caloric_equations(void)
{
    double enthalpy;
    for (double t = 273.16; t < 373; t += 1) {
        const struct real_temperature at = real_temperature(t);
        EXPECT_OK(vtx_water_enthalpy(t, &enthalpy));
        EXPECT_WITHIN(real_condensate(&at, liquid_saturation_pressure(t), PHASE_LIQUID).enthalpy / water_molar_mass, enthalpy, 260);
    }
    for (double t = 173.15; t <= 273.16; t += 1) {
        const struct real_temperature at = real_temperature(t);
        EXPECT_OK(vtx_ice_enthalpy(611, t, &enthalpy));
        EXPECT_WITHIN(real_condensate(&at, ice_sublimation_pressure(t), PHASE_ICE).enthalpy / water_molar_mass, enthalpy, 130);
    }
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "derivatives are those of the values", derivatives_are_those_of_the_values },
    { "heat capacities follow the published ideal parts", heat_capacities_follow_the_published_ideal_parts },
    { "ideal enthalpy and entropy belong to the heat capacity", ideal_enthalpy_and_entropy_belong_to_the_heat_capacity },
    { "zeros are where they are promised", zeros_are_where_they_are_promised },
    { "volumes follow the published densities", volumes_follow_the_published_densities },
    { "condensate enthalpies agree with the caloric equations", condensate_enthalpies_agree_with_the_caloric_equations },
};
TEST_SUITE(virials, tests);
