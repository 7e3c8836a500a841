/* Tools and faces with heat entering at one place. */
#include <vtx/tool.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 5000 };

static const double pi_value = 3.14159265358979323846;

vtx_tool sample_tool(void)
{
    vtx_tool tool;
    vtx_tool_init(&tool);
    tool.length = 0.08;
    tool.perimeter = 0.08;
    tool.section = 4e-4;
    tool.conductivity = 45;
    tool.film_coefficient = 80;
    tool.face_area = 6e-4;
    tool.face_coefficient = 300;
    tool.holder_conductance = 0.2;
    tool.tip_length = 5e-3;
    tool.tip_section = 1.5e-4;
    tool.contact_radius = 0.4e-3;
    return tool;
}

/* diameter, length, film coefficient, conductivity */
static vtx_status pin(double diameter, double length, double film, double conductivity, vtx_fin *fin)
{
    return vtx_fin_of_bar(film, pi_value * diameter, 0.25 * pi_value * diameter * diameter, conductivity, length, fin);
}

static int tool_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    vtx_fin fin;
    double other;
    if (strcmp(row->quantity, "long_rod_heat") == 0) {
        if (pin(in[0], 100, in[1], in[2], &fin) == VTX_OK)
            *actual = fin.long_conductance * in[3];
        return 1;
    }
    if (strcmp(row->quantity, "pin_efficiency") == 0) {
        if (pin(in[0], in[1], in[2], in[3], &fin) == VTX_OK)
            *actual = fin.efficiency;
        return 1;
    }
    if (strcmp(row->quantity, "pin_base_celsius") == 0) {
        vtx_tool tool;
        vtx_tool_temperatures t;
        vtx_tool_init(&tool);
        tool.length = in[1];
        tool.perimeter = pi_value * in[0];
        tool.section = tool.tip_section = 0.25 * pi_value * in[0] * in[0];
        tool.conductivity = in[3];
        tool.film_coefficient = in[2];
        if (vtx_tool_temperature(&tool, in[4], in[5], &t) == VTX_OK)
            *actual = t.base_temperature - 273.15;
        return 1;
    }
    if (strncmp(row->quantity, "constriction_", 13) == 0) {
        /* conductivity, radius, heat flow: rise of the tip over a base without a piece between */
        vtx_tool tool = sample_tool();
        vtx_tool_temperatures t;
        tool.conductivity = in[0];
        tool.contact_radius = in[1];
        tool.tip_length = 0;
        if (vtx_tool_temperature(&tool, in[2], 260, &t) == VTX_OK)
            *actual = (row->quantity[13] == 'l' ? t.tip_temperature_low : t.tip_temperature_high) - t.base_temperature;
        return 1;
    }
    if (strcmp(row->quantity, "band_mean") == 0)
        return vtx_moving_band_rise(in[0], in[1], in[2], in[3], in[4], actual, NULL), 1;
    if (strcmp(row->quantity, "band_largest") == 0)
        return vtx_moving_band_rise(in[0], in[1], in[2], in[3], in[4], &other, actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("tool.csv", tool_row, 8); }

/* The heat of the shank is what its base conducts: the profile cosh(m(L-x))/cosh(mL) by fine differences. */
static void a_fin_sheds_what_its_base_conducts(void)
{
    vtx_fin fin;
    EXPECT_OK(pin(0.01, 0.06, 60, 16.2, &fin));
    const double m = fin.parameter, section = 0.25 * pi_value * 1e-4, h = 1e-6;
    const double slope = (cosh(m * 0.06) - cosh(m * (0.06 - h))) / h / cosh(m * 0.06);
    EXPECT_NEAR(fin.conductance, 16.2 * section * slope, 1e-4);
    EXPECT_NEAR(fin.tip_share, 1 / cosh(m * 0.06), 1e-14);
    EXPECT_NEAR(fin.efficiency, fin.conductance / (60 * pi_value * 0.01 * 0.06), 1e-14);
    EXPECT(fin.conductance < fin.long_conductance);
    EXPECT_OK(pin(0.01, 100, 60, 16.2, &fin));
    EXPECT_NEAR(fin.conductance, fin.long_conductance, 1e-15);
}

static vtx_tool random_tool(struct random_state *r)
{
    vtx_tool t = sample_tool();
    t.length = random_log_uniform(r, 0.005, 0.5);
    t.perimeter = random_log_uniform(r, 0.01, 0.3);
    t.section = random_log_uniform(r, 1e-5, 1e-2);
    t.conductivity = random_log_uniform(r, 10, 400);
    t.film_coefficient = random_log_uniform(r, 5, 500);
    t.face_area = random_log_uniform(r, 1e-6, 1e-2);
    t.face_coefficient = random_log_uniform(r, 10, 1500);
    t.holder_conductance = random_uniform(r, 0, 1) < 0.3 ? 0 : random_log_uniform(r, 0.01, 5);
    t.holder_temperature = random_uniform(r, 285, 320);
    return t;
}

static void heat_is_conserved_and_the_coefficient_inverts(void)
{
    struct random_state r;
    random_seed(&r, 31);
    for (int i = 0; i < RANDOM_CASES; i++) {
        vtx_tool tool = random_tool(&r);
        const double heat = random_uniform(&r, 0, 20), air = random_uniform(&r, 230, 300);
        vtx_tool_temperatures t;
        vtx_tool_film film;
        if (vtx_tool_temperature(&tool, heat, air, &t) != VTX_OK)
            continue;
        EXPECT_WITHIN(t.shank_heat + t.face_heat + t.holder_heat, heat, 1e-10 * (heat + fabs(t.holder_heat) + 1));
        EXPECT(t.tip_temperature_low <= t.tip_temperature_high && t.base_temperature <= t.tip_temperature_low);
        if (t.base_temperature > 3000 || t.base_temperature - air < 1e-3)
            continue;
        EXPECT_OK(vtx_tool_film_coefficient(&tool, heat, air, t.base_temperature, &film));
        tool.face_coefficient = film.face_coefficient;
        vtx_tool_temperatures again;
        EXPECT_OK(vtx_tool_temperature(&tool, heat, air, &again));
        EXPECT_WITHIN(again.base_temperature, t.base_temperature, 1e-9);
        EXPECT_WITHIN(film.face_heat, again.face_heat, 1e-8 * (1 + heat));
    }
}

static void more_air_never_warms_a_loaded_tool(void)
{
    double last = HUGE_VAL;
    vtx_tool tool = sample_tool();
    vtx_tool_temperatures t;
    for (double film = 0; film < 5000; film = film * 1.3 + 1) {
        tool.face_coefficient = film;
        EXPECT_OK(vtx_tool_temperature(&tool, 10, 258, &t));
        EXPECT(t.base_temperature < last);
        last = t.base_temperature;
    }
}

static void an_impossible_tool_temperature_names_the_limit(void)
{
    const vtx_tool tool = sample_tool();
    vtx_tool_film film;
    EXPECT_STATUS(vtx_tool_film_coefficient(&tool, 12, 258, 257, &film), VTX_NO_SOLUTION);
    EXPECT(film.attainable_temperature > 258 && film.attainable_temperature < 259);
    EXPECT(isnan(film.face_coefficient) && film.advisories == -1);
    EXPECT_OK(vtx_tool_film_coefficient(&tool, 12, 258, 400, &film));
    EXPECT(film.face_coefficient <= 0 && film.advisories == 0);
    EXPECT_OK(vtx_tool_film_coefficient(&tool, 12, 258, 261, &film));
    EXPECT(film.advisories == VTX_ADVISORY_OUTSIDE_CORRELATION);
}

static void a_patch_joins_its_two_limits(void)
{
    vtx_moving_source s;
    double disc, centre, band, largest, last = HUGE_VAL;
    const double radius = sqrt(1e-3 * 2e-3 / pi_value);
    EXPECT_OK(vtx_standing_disc_rise(1e6, 45, radius, &disc, &centre));
    EXPECT_NEAR(centre, 1e6 * radius / 45, 1e-14);
    EXPECT_OK(vtx_moving_source_rise(1e6, 45, 1.2e-5, 0, 1e-3, 2e-3, &s));
    EXPECT_NEAR(s.mean_rise, disc, 1e-14);
    EXPECT_NEAR(s.largest_rise, centre, 1e-14);
    EXPECT(isnan(s.moving_mean) && (s.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
    EXPECT_OK(vtx_moving_band_rise(1e6, 45, 1.2e-5, 900, 1e-3, &band, &largest));
    EXPECT_OK(vtx_moving_source_rise(1e6, 45, 1.2e-5, 900, 1e-3, 2e-3, &s));
    EXPECT_NEAR(s.moving_mean, band, 1e-14);
    EXPECT_NEAR(s.mean_rise, band, 1e-3);
    EXPECT_NEAR(s.largest_rise, largest, 1e-3);
    for (double speed = 0; speed < 100; speed = speed * 1.2 + 1e-4) {
        EXPECT_OK(vtx_moving_source_rise(1e6, 45, 1.2e-5, speed, 1e-3, 2e-3, &s));
        EXPECT(s.mean_rise < last && s.mean_rise <= s.largest_rise);
        EXPECT(((s.advisories & VTX_ADVISORY_EXTRAPOLATED) != 0) == (s.peclet > 0.4 && s.peclet < 20));
        if (s.peclet > 1e-5)
            EXPECT_NEAR(pow(s.mean_rise, -2), pow(s.moving_mean, -2) + pow(s.standing_mean, -2), 1e-12);
        last = s.mean_rise;
    }
}

/* Modified Bessel function of the second kind, order 0, by its integral. */
static double bessel_k0(double x)
{
    enum { POINTS = 300 };
    const double end = acosh(1 + 40 / x), step = end / POINTS;
    double sum = 0.5 * (exp(-x) + exp(-x * cosh(end)));
    for (int i = 1; i < POINTS; i++)
        sum += exp(-x * cosh(step * i));
    return step * sum;
}

/* Integral of exp(side s) K0(s) from 0 to w, in the square root of s. */
static double band_integral(double w, int side)
{
    enum { POINTS = 150 };
    const double step = sqrt(w) / POINTS;
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
        const double r = step * (i + 0.5);
        sum += 2 * r * step * exp(side * r * r) * bessel_k0(r * r);
    }
    return sum;
}

/* Jaeger's band in two dimensions, speed times length over diffusivity 20: the accuracy stated. */
static void a_fast_band_is_as_good_as_stated(void)
{
    enum { PLACES = 12 };
    /* conductivity 1, speed and diffusivity such that rises come in units of flux times diffusivity over speed */
    const double length = 0.02, diffusivity = 1e-3, speed = 1, half = 10;
    double mean, largest, sum = 0, top = 0;
    EXPECT_OK(vtx_moving_band_rise(1, 1, diffusivity, speed, length, &mean, &largest));
    for (int i = 0; i < PLACES; i++) {
        const double u = half * (i + 0.5) / PLACES;
        sum += (band_integral(u, 1) + band_integral(half - u, -1)) / PLACES;
    }
    for (double u = 0.9 * half; u < half; u += 0.02 * half)
        top = fmax(top, band_integral(u, 1) + band_integral(half - u, -1));
    const double unit = 2 / pi_value * diffusivity / speed;
    EXPECT(mean / (unit * sum) > 0.97 && mean / (unit * sum) < 0.98);
    EXPECT(largest / (unit * top) > 1.03 && largest / (unit * top) < 1.045);
}

static void slow_bands_are_refused(void)
{
    double mean, largest;
    EXPECT_STATUS(vtx_moving_band_rise(1e6, 45, 1.2e-5, 0.1, 1e-3, &mean, &largest), VTX_OUT_OF_RANGE);
    EXPECT(isnan(mean) && isnan(largest));
}

static void a_tool_that_was_not_filled_in_is_refused(void)
{
    vtx_tool tool;
    vtx_tool_temperatures t;
    EXPECT_OK(vtx_tool_init(&tool));
    EXPECT_STATUS(vtx_tool_temperature(&tool, 5, 260, &t), VTX_BAD_ARGUMENT);
    tool = sample_tool();
    tool.reserved[0] = 1;
    EXPECT_STATUS(vtx_tool_temperature(&tool, 5, 260, &t), VTX_BAD_ARGUMENT);
    tool = sample_tool();
    tool.contact_radius = (double)NAN;
    EXPECT_STATUS(vtx_tool_temperature(&tool, 5, 260, &t), VTX_BAD_ARGUMENT);
    EXPECT(isnan(t.base_temperature));
    EXPECT_STATUS(vtx_tool_init(NULL), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "a fin sheds what its base conducts", a_fin_sheds_what_its_base_conducts },
    { "heat is conserved and the coefficient inverts", heat_is_conserved_and_the_coefficient_inverts },
    { "more air never warms a loaded tool", more_air_never_warms_a_loaded_tool },
    { "an impossible tool temperature names the limit", an_impossible_tool_temperature_names_the_limit },
    { "a patch joins its two limits", a_patch_joins_its_two_limits },
    { "a fast band is as good as stated", a_fast_band_is_as_good_as_stated },
    { "slow bands are refused", slow_bands_are_refused },
    { "a tool that was not filled in is refused", a_tool_that_was_not_filled_in_is_refused },
};
TEST_SUITE(tool, tests);
