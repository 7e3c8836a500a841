/* Water and ice at saturation against published values. */
#include <vtx/water.h>

#include "../../libvtx/media/water_kernel.h"
#include "../harness/harness.h"

static int water_row(const struct data_row *row, double *actual)
{
    static const struct {
        const char *quantity;
        vtx_status (*f)(double, double *);
    } of_one[] = {
        { "saturation_pressure", vtx_water_saturation_pressure },
        { "saturation_temperature", vtx_water_saturation_temperature },
        { "saturation_slope", vtx_water_saturation_slope },
        { "density", vtx_water_density },
        { "enthalpy", vtx_water_enthalpy },
        { "sublimation_pressure", vtx_ice_sublimation_pressure },
        { "sublimation_temperature", vtx_ice_sublimation_temperature },
        { "vaporisation_enthalpy", vtx_water_vaporisation_enthalpy },
        { "sublimation_enthalpy", vtx_ice_sublimation_enthalpy },
        { "fusion_enthalpy", vtx_ice_fusion_enthalpy },
    };
    for (size_t i = 0; i < sizeof of_one / sizeof of_one[0]; i++)
        if (strcmp(row->quantity, of_one[i].quantity) == 0)
            return of_one[i].f(row->input[0], actual), 1;
    if (strcmp(row->quantity, "ice_density") == 0)
        return vtx_ice_density(row->input[0], row->input[1], actual), 1;
    if (strcmp(row->quantity, "ice_enthalpy") == 0)
        return vtx_ice_enthalpy(row->input[0], row->input[1], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("water.csv", water_row, 51); }

static double value(vtx_status (*f)(double, double *), double x)
{
    double y = (double)NAN;
    EXPECT_OK(f(x, &y));
    return y;
}

static void saturation_goes_there_and_back(void)
{
    struct random_state r;
    random_seed(&r, 1);
    for (int i = 0; i < 20000; i++) {
        const double liquid = random_uniform(&r, 233.15, 473.15), hot = random_uniform(&r, 473.15, 647.096);
        const double ice = random_uniform(&r, 50, 273.16);
        EXPECT_WITHIN(value(vtx_water_saturation_temperature, value(vtx_water_saturation_pressure, liquid)), liquid, 1e-12);
        EXPECT_WITHIN(value(vtx_water_saturation_temperature, value(vtx_water_saturation_pressure, hot)), hot, 1e-10);
        EXPECT_WITHIN(value(vtx_ice_sublimation_temperature, value(vtx_ice_sublimation_pressure, ice)), ice, 4e-13);
    }
}

/* The published inverse is 0/0 at 221.4536 Pa: neighbours of that number gave NaN and errors up to 81 K. */
static void the_inverse_survives_its_zero_over_zero(void)
{
    double pressure = 221.4536;
    for (int i = 0; i < 2000; i++) {
        EXPECT_WITHIN(value(vtx_water_saturation_temperature, pressure), 259.939, 1e-3);
        pressure = i < 1000 ? nextafter(pressure, 0) : pressure * (1 + 1e-9);
    }
    EXPECT_WITHIN(value(vtx_water_saturation_temperature, value(vtx_water_saturation_pressure, 259.939)), 259.939, 1e-12);
}

static void liquid_and_ice_meet_at_the_triple_point(void)
{
    const double over_liquid = value(vtx_water_saturation_pressure, 273.16);
    const double over_ice = value(vtx_ice_sublimation_pressure, 273.16);
    EXPECT_NEAR(over_liquid, over_ice, 2e-11);
    EXPECT_NEAR(value(vtx_ice_sublimation_temperature, over_ice), 273.16, 1e-15);
    EXPECT_STATUS(vtx_ice_sublimation_pressure(nextafter(273.16, 300), &(double){ 0 }), VTX_OUT_OF_RANGE);
    EXPECT(value(vtx_ice_sublimation_slope, 273.16) > 1.1 * value(vtx_water_saturation_slope, 273.16));
}

/* The polynomial that stands for the release's formula from 150 K on cannot be told from it, nor can the place where they join. */
static void sublimation_polynomial_is_the_published_formula(void)
{
    for (double t = 150; t <= 273.16; t += 0.01) {
        const struct saturation ours = ice_saturation(t), published = published_sublimation(t);
        EXPECT_NEAR(ours.pressure, published.pressure, 1e-12);
        EXPECT_NEAR(ours.slope, published.slope, 1e-11);
        EXPECT_NEAR(ours.curvature, published.curvature, 1e-10);
        EXPECT_WITHIN(published_sublimation_temperature(ours.pressure), t, 1e-11);
        EXPECT(ours.pressure == ice_sublimation_pressure(t));
    }
    const double below = ice_sublimation_pressure(nextafter(150, 0)), above = ice_sublimation_pressure(150);
    EXPECT_NEAR(below, above, 1e-12);
    EXPECT_WITHIN(ice_sublimation_temperature(nextafter(ICE_POLYNOMIAL_PRESSURE_MIN, 0)),
                  ice_sublimation_temperature(ICE_POLYNOMIAL_PRESSURE_MIN), 1e-12);
}

static void steepness_is_the_slope_of_the_pressure(void)
{
    for (double t = 50; t <= 273.16; t += 0.1) {
        const struct saturation s = ice_saturation(t);
        EXPECT_NEAR(ice_steepness(t), t * s.slope / s.pressure, 1e-12);
    }
    for (double t = 233.15; t < 647; t += 0.1) {
        const struct saturation s = liquid_saturation(t);
        EXPECT_NEAR(liquid_steepness(t), t * s.slope / s.pressure, 2e-10);
    }
}

/* The same over liquid, where the release's closed form stands above 373.15 K, and its inverse beside both. */
static void liquid_polynomial_is_the_published_formula(void)
{
    for (double t = 233.15; t <= 373.15; t += 0.01) {
        const double ours = liquid_saturation_pressure(t), published = published_liquid_pressure(t);
        EXPECT_NEAR(ours, published, 1e-12);
        EXPECT_NEAR(liquid_polynomial_pressure(t), published, 1e-13);
        EXPECT(ours == liquid_saturation(t).pressure);
        EXPECT_WITHIN(liquid_saturation_temperature(ours), t, 1e-12);
    }
    const double below = liquid_saturation_pressure(373.15), above = liquid_saturation_pressure(nextafter(373.15, 400));
    EXPECT_NEAR(below, above, 1e-12);
    const double beta = sqrt(sqrt(1e-6 * REGION4_FORMS_MEET));
    EXPECT_NEAR(region4_temperature(beta, 0), region4_temperature(beta, 1), 1e-14);
}

/* Equation 29 as a whole: what the inverse and the slopes assume. */
static void saturation_obeys_the_implicit_equation(void)
{
    const double *n = region4;
    for (double t = 234; t < 647; t += 0.5) {
        const double beta = sqrt(sqrt(1e-6 * liquid_saturation_pressure(t))), theta = t + n[9] / (t - n[10]);
        const double sum = square(beta * theta) + n[1] * square(beta) * theta + n[2] * square(beta) + n[3] * beta * square(theta)
                           + n[4] * beta * theta + n[5] * beta + n[6] * square(theta) + n[7] * theta + n[8];
        EXPECT_WITHIN(sum, 0, 1e-9 * n[8]);
    }
}

static void latent_heats_add_up_at_the_triple_point(void)
{
    const double sublimation = value(vtx_ice_sublimation_enthalpy, 273.16);
    EXPECT_WITHIN(sublimation, value(vtx_water_vaporisation_enthalpy, 273.16) + value(vtx_ice_fusion_enthalpy, 273.16), 1e-3);
}

static void forty_below_zero_converted_is_in_range(void)
{
    double pressure, density;
    EXPECT_OK(vtx_water_saturation_pressure(273.15 - 40, &pressure));
    EXPECT_OK(vtx_water_saturation_pressure(233.15, &pressure));
    EXPECT_STATUS(vtx_water_saturation_pressure(233.149, &pressure), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_water_density(273.15 - 20, &density));
}

static void supercooled_liquid_has_more_vapour_than_ice(void)
{
    EXPECT_NEAR(value(vtx_water_saturation_pressure, 263.15) / value(vtx_ice_sublimation_pressure, 263.15), 1.102, 1e-3);
    EXPECT_NEAR(value(vtx_water_saturation_pressure, 253.15) / value(vtx_ice_sublimation_pressure, 253.15), 1.216, 1e-3);
    for (double t = 233.15; t < 273.1; t += 0.25)
        EXPECT(value(vtx_water_saturation_pressure, t) > value(vtx_ice_sublimation_pressure, t));
}

static void slopes_are_those_of_the_pressures(void)
{
    const double step = 0.01;
    for (double t = 234; t < 646; t += 0.7)
        EXPECT_NEAR((value(vtx_water_saturation_pressure, t + step) - value(vtx_water_saturation_pressure, t - step)) / (2 * step),
                    value(vtx_water_saturation_slope, t), 1e-6);
    for (double t = 60; t < 273.1; t += 0.7)
        EXPECT_NEAR((value(vtx_ice_sublimation_pressure, t + step) - value(vtx_ice_sublimation_pressure, t - step)) / (2 * step),
                    value(vtx_ice_sublimation_slope, t), 1e-4);
}

/* d(enthalpy) by pressure at constant temperature is v - T dv/dT: density and enthalpy come from one equation. */
static void ice_density_and_enthalpy_agree(void)
{
    const double step = 0.05, pressure_step = 1e5;
    for (double t = 60; t < 273; t += 10) {
        const double p = 1e6;
        double above, below, v, high, low;
        EXPECT_OK(vtx_ice_density(p, t + step, &above));
        EXPECT_OK(vtx_ice_density(p, t - step, &below));
        EXPECT_OK(vtx_ice_density(p, t, &v));
        EXPECT_OK(vtx_ice_enthalpy(p + pressure_step, t, &high));
        EXPECT_OK(vtx_ice_enthalpy(p - pressure_step, t, &low));
        EXPECT_NEAR((high - low) / (2 * pressure_step), 1 / v - t * (1 / above - 1 / below) / (2 * step), 1e-6);
    }
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "saturation goes there and back", saturation_goes_there_and_back },
    { "the inverse survives its 0/0 at 221.4536 Pa", the_inverse_survives_its_zero_over_zero },
    { "liquid and ice meet at the triple point", liquid_and_ice_meet_at_the_triple_point },
    { "sublimation polynomial is the published formula", sublimation_polynomial_is_the_published_formula },
    { "steepness is the slope of the pressure", steepness_is_the_slope_of_the_pressure },
    { "liquid polynomial is the published formula", liquid_polynomial_is_the_published_formula },
    { "saturation obeys the implicit equation", saturation_obeys_the_implicit_equation },
    { "latent heats add up at the triple point", latent_heats_add_up_at_the_triple_point },
    { "forty below zero converted is in range", forty_below_zero_converted_is_in_range },
    { "supercooled liquid has more vapour than ice", supercooled_liquid_has_more_vapour_than_ice },
    { "slopes are those of the pressures", slopes_are_those_of_the_pressures },
    { "ice density and enthalpy agree", ice_density_and_enthalpy_agree },
};
TEST_SUITE(water, tests);
