/* Temperatures inside bodies. */
#include <vtx/part.h>
#include <vtx/transient.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 3000 };

static int body_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    vtx_body_state s;
    if (strcmp(row->quantity, "centre_celsius") == 0 || strcmp(row->quantity, "surface_celsius") == 0) {
        if (vtx_body_temperatures((int32_t)in[0], in[1], in[2], in[3], in[4], in[5], in[6], 0, in[7], &s) == VTX_OK)
            *actual = (row->quantity[0] == 'c' ? s.centre_temperature : s.surface_temperature) - 273.15;
        return 1;
    }
    if (strcmp(row->quantity, "stored_per_length") == 0) {
        /* wall, density, heat capacity, diameter: heat taken up by a thin pipe wall */
        if (vtx_body_temperatures(VTX_BODY_WALL, in[0], in[1], in[2], in[3], in[4], in[5], 0, in[6], &s) == VTX_OK)
            *actual = in[7] * in[8] * 3.14159265358979323846 * in[9] * in[0] * (s.mean_temperature - in[5]);
        return 1;
    }
    if (strcmp(row->quantity, "centre_time") == 0)
        return vtx_body_time((int32_t)in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], 0, actual), 1;
    if (strcmp(row->quantity, "fourier") == 0)
        return vtx_transient_fourier((int32_t)in[0], in[2], in[1], in[3], actual), 1;
    return 0;
}

static int half_space_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    double e;
    if (strcmp(row->quantity, "penetration_depth") == 0)
        return vtx_penetration_depth(in[0], in[1], in[2], in[3], in[4], actual), 1;
    if (strcmp(row->quantity, "depth_celsius_fixed_surface") == 0) {
        if (vtx_depth_temperature_fixed_surface(in[0], in[1], in[2], in[3], in[4], actual) == VTX_OK)
            *actual -= 273.15;
        return 1;
    }
    if (strcmp(row->quantity, "depth_celsius_fixed_flux") == 0) {
        if (vtx_depth_temperature_fixed_flux(in[0], in[1], in[2], in[3], in[4], in[5], actual) == VTX_OK)
            *actual -= 273.15;
        return 1;
    }
    if (strcmp(row->quantity, "depth_time_in_stream") == 0)
        return vtx_depth_time_in_stream(in[0], in[1], in[2], in[3], in[4], in[5], in[6], actual), 1;
    if (strcmp(row->quantity, "effusivity") == 0)
        return vtx_thermal_effusivity(in[0], in[1], actual), 1;
    if (strcmp(row->quantity, "contact_celsius") == 0) {
        double diffusivity;
        if (vtx_thermal_diffusivity(in[2], in[3], in[4], &diffusivity) == VTX_OK && vtx_thermal_effusivity(in[2], diffusivity, &e) == VTX_OK
            && vtx_contact_temperature(in[0], in[1], e, in[5], actual) == VTX_OK)
            *actual -= 273.15;
        return 1;
    }
    return 0;
}

static int transient_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    double z;
    if (strcmp(row->quantity, "eigenvalue") == 0)
        return vtx_transient_eigenvalue((int32_t)in[0], in[1], actual, NULL), 1;
    if (strcmp(row->quantity, "coefficient") == 0)
        return vtx_transient_eigenvalue((int32_t)in[0], in[1], &z, actual), 1;
    return body_row(row, actual) || half_space_row(row, actual);
}

static void published_values_are_reproduced(void) { check_rows("transient.csv", transient_row, 33); }

/* The lumped limit z^2 = n Bi (1 - Bi n/(n+2)...) and the ends of the branches. */
static void eigenvalues_rise_between_their_limits(void)
{
    static const double end[3] = { 1.5707963267948966, 2.4048255576957728, 3.1415926535897932 };
    for (int32_t body = VTX_BODY_WALL; body <= VTX_BODY_SPHERE; body++) {
        const double n = body - VTX_BODY_WALL + 1;
        double last = 0, z, a;
        for (double biot = 1e-6; biot <= 1e6; biot *= 1.07) {
            EXPECT_OK(vtx_transient_eigenvalue(body, biot, &z, &a));
            EXPECT(z > last && z < end[body - VTX_BODY_WALL] && a >= 1 && a <= 2);
            if (biot < 1e-4)
                EXPECT_NEAR(z * z, n * biot * (1 - biot / (n + 2)), 1e-8);
            last = z;
        }
        EXPECT_NEAR(z, end[body - VTX_BODY_WALL], 2e-6);
    }
}

/* The published equations with libm's functions; the cylinder's by quadrature of Bessel's integral. */
static double bessel_integral(int order, double x)
{
    enum { POINTS = 64 };
    double sum = 0;
    for (int i = 0; i < POINTS; i++) {
        const double t = 3.14159265358979323846 * (i + 0.5) / POINTS;
        sum += cos(order * t - x * sin(t));
    }
    return sum / POINTS;
}

static void eigenvalues_solve_their_equations(void)
{
    struct random_state r;
    random_seed(&r, 51);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double biot = random_log_uniform(&r, 1e-3, 1e3);
        double z;
        EXPECT_OK(vtx_transient_eigenvalue(VTX_BODY_WALL, biot, &z, NULL));
        EXPECT_NEAR(z * sin(z), biot * cos(z), 1e-11 * (1 + biot));
        EXPECT_OK(vtx_transient_eigenvalue(VTX_BODY_CYLINDER, biot, &z, NULL));
        EXPECT_NEAR(z * bessel_integral(1, z), biot * bessel_integral(0, z), 1e-11 * (1 + biot));
        EXPECT_OK(vtx_transient_eigenvalue(VTX_BODY_SPHERE, biot, &z, NULL));
        EXPECT_WITHIN(sin(z) - z * cos(z), biot * sin(z), 1e-13 * (1 + biot));
    }
}

/* An explicit scheme of 200 shells for the whole problem: the one term must be within the 2 % stated. */
static double explicit_centre_share(int32_t body, double biot, double fourier)
{
    enum { CELLS = 60 };
    double t[CELLS], flux[CELLS + 1];
    const int n = body - VTX_BODY_WALL;
    const double d = 1.0 / CELLS, step = 0.1 * d * d;
    for (int i = 0; i < CELLS; i++)
        t[i] = 1;
    for (double time = 0; time < fourier; time += step) {
        flux[0] = 0;
        for (int i = 1; i < CELLS; i++)
            flux[i] = pow(i * d, n) * (t[i - 1] - t[i]) / d;
        flux[CELLS] = t[CELLS - 1] / (1 / biot + 0.5 * d);
        for (int i = 0; i < CELLS; i++)
            t[i] -= step * (flux[i + 1] - flux[i]) * (n + 1) / (pow((i + 1) * d, n + 1) - pow(i * d, n + 1));
    }
    return t[0];
}

static void one_term_is_as_good_as_stated(void)
{
    for (int32_t body = VTX_BODY_WALL; body <= VTX_BODY_SPHERE; body++)
        for (double biot = 0.1; biot < 30; biot *= 10) {
            vtx_transient t;
            EXPECT_OK(vtx_transient_shares(body, biot, 0.2, 0, &t));
            EXPECT_NEAR(t.centre_share, explicit_centre_share(body, biot, 0.2), 0.02);
            EXPECT_OK(vtx_transient_shares(body, biot, 0.4, 0, &t));
            EXPECT_NEAR(t.centre_share, explicit_centre_share(body, biot, 0.4), 0.002);
        }
}

static void shares_fall_from_middle_to_surface_and_with_time(void)
{
    struct random_state r;
    random_seed(&r, 52);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const int32_t body = VTX_BODY_WALL + i % 3;
        const double biot = random_log_uniform(&r, 1e-3, 1e3), fourier = random_log_uniform(&r, 0.2, 5), at = random_uniform(&r, 0.01, 0.99);
        vtx_transient t, later;
        double again;
        EXPECT_OK(vtx_transient_shares(body, biot, fourier, at, &t));
        EXPECT_OK(vtx_transient_shares(body, biot, fourier * 1.1, at, &later));
        EXPECT(t.centre_share >= t.share && t.share >= t.surface_share && t.mean_share <= t.centre_share && t.mean_share >= t.surface_share);
        EXPECT(later.share < t.share);
        if (t.share > 1e-12 && fourier > 0.2001 && t.share <= 1) {
            EXPECT_OK(vtx_transient_fourier(body, biot, at, t.share, &again));
            EXPECT_NEAR(again, fourier, 1e-10 * (1 + 1 / (t.eigenvalue * t.eigenvalue * fourier)));
        }
    }
}

static void short_times_are_refused(void)
{
    vtx_transient t;
    vtx_body_state s;
    double out;
    EXPECT_STATUS(vtx_transient_shares(VTX_BODY_WALL, 1, 0.1, 0, &t), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_transient_fourier(VTX_BODY_WALL, 1, 0, 0.99, &out), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_body_temperatures(VTX_BODY_WALL, 0.02, 0.25, 1.2e-7, 40, 260, 350, 0, 60, &s), VTX_OUT_OF_RANGE);
    EXPECT(isnan(s.temperature) && isnan(s.fourier));
    EXPECT_STATUS(vtx_body_time(VTX_BODY_WALL, 0.02, 0.25, 1.2e-7, 40, 260, 350, 250, 0, &out), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_body_time(VTX_BODY_PLATE_INWARD, 0.02, 0.25, 1.2e-7, 40, 260, 350, 300, 0, &out), VTX_BAD_ARGUMENT);
}

static void half_space_inverses_return(void)
{
    struct random_state r;
    random_seed(&r, 53);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double k = random_log_uniform(&r, 0.1, 400), alpha = random_log_uniform(&r, 1e-7, 1e-4), h = random_log_uniform(&r, 5, 1e5);
        const double depth = i % 4 ? random_log_uniform(&r, 1e-5, 0.1) : 0, time = random_log_uniform(&r, 1e-3, 1e5);
        double t, again, x;
        EXPECT_OK(vtx_depth_temperature_in_stream(k, alpha, h, depth, time, 350, 260, &t));
        if (t < 349.9 && t > 260.1) {
            EXPECT_OK(vtx_depth_time_in_stream(k, alpha, h, depth, 350, 260, t, &x));
            EXPECT_OK(vtx_depth_temperature_in_stream(k, alpha, h, depth, x, 350, 260, &again));
            EXPECT_WITHIN(again, t, 1e-9);
        }
        EXPECT_OK(vtx_depth_temperature_fixed_surface(alpha, depth, time, 350, 260, &t));
        if (depth > 0 && t > 260.001 && t < 349.999) {
            EXPECT_OK(vtx_penetration_depth(alpha, time, 350, 260, t, &x));
            EXPECT_NEAR(x, depth, 1e-8);
        }
    }
}

/* A stream of endless coefficient is a fixed surface; a weak one is a fixed flux. Large arguments must not overflow. */
static void a_stream_joins_fixed_surface_and_fixed_flux(void)
{
    double stream, fixed, pulse;
    EXPECT_OK(vtx_depth_temperature_in_stream(0.25, 1.2e-7, 1e7, 1e-3, 20, 350, 260, &stream));
    EXPECT_OK(vtx_depth_temperature_fixed_surface(1.2e-7, 1e-3, 20, 350, 260, &fixed));
    EXPECT_WITHIN(stream, fixed, 1e-3);
    EXPECT_OK(vtx_depth_temperature_in_stream(200, 1e-4, 0.01, 1e-3, 20, 350, 260, &stream));
    EXPECT_OK(vtx_depth_temperature_fixed_flux(200, 1e-4, -0.01 * 90, 1e-3, 20, 350, &fixed));
    EXPECT_WITHIN(stream, fixed, 1e-6);
    EXPECT_OK(vtx_depth_temperature_in_stream(0.01, 2e-3, 1e7, 0, 1e10, 350, 260, &stream));
    EXPECT_WITHIN(stream, 260, 1e-6);
    EXPECT_OK(vtx_depth_temperature_in_stream(0.25, 1.2e-7, 0, 1e-3, 20, 350, 260, &stream));
    EXPECT_NEAR(stream, 350, 1e-15);
    /* the surface under a pulse, by hand: E/(rho c sqrt(pi alpha t)) */
    EXPECT_OK(vtx_depth_temperature_pulse(2e6, 1e-5, 1e4, 0, 0.1, 300, &pulse));
    EXPECT_NEAR(pulse - 300, 1e4 / (2e6 * sqrt(3.14159265358979 * 1e-6)), 1e-12);
}

/* The scaled function changes its formula at 6: no step there. */
static void the_response_is_smooth_and_falls_with_depth(void)
{
    double last = 0, t;
    for (double depth = 0; depth < 0.05; depth += 1e-4) {
        EXPECT_OK(vtx_depth_temperature_in_stream(0.25, 1.2e-7, 3000, depth, 20, 350, 260, &t));
        EXPECT(t >= last);
        last = t;
    }
    last = 350;
    for (double h = 3.87e2; h < 1e5; h *= 1.001) {
        EXPECT_OK(vtx_depth_temperature_in_stream(0.25, 1.2e-7, h, 0, 20, 350, 260, &t));
        EXPECT(t < last);
        last = t;
    }
}

/* With b = 6 at the surface: erfcx(6) = 0.09277656780053835 (A&S 7.1.14 summed to 30 digits). */
static void the_scaled_error_function_joins_at_its_switch(void)
{
    double below, above;
    const double h = 6 * 0.25 / sqrt(1.2e-7 * 20);
    EXPECT_OK(vtx_depth_temperature_in_stream(0.25, 1.2e-7, h * (1 - 1e-12), 0, 20, 350, 260, &below));
    EXPECT_OK(vtx_depth_temperature_in_stream(0.25, 1.2e-7, h * (1 + 1e-12), 0, 20, 350, 260, &above));
    EXPECT_WITHIN(above, below, 1e-10);
    EXPECT_WITHIN(above, 260 + 90 * 0.09277656780053835, 1e-10);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "eigenvalues rise between their limits", eigenvalues_rise_between_their_limits },
    { "eigenvalues solve their equations", eigenvalues_solve_their_equations },
    { "one term is as good as stated", one_term_is_as_good_as_stated },
    { "shares fall from middle to surface and with time", shares_fall_from_middle_to_surface_and_with_time },
    { "short times are refused", short_times_are_refused },
    { "half space inverses return", half_space_inverses_return },
    { "a stream joins fixed surface and fixed flux", a_stream_joins_fixed_surface_and_fixed_flux },
    { "the response is smooth and falls with depth", the_response_is_smooth_and_falls_with_depth },
    { "the scaled error function joins at its switch", the_scaled_error_function_joins_at_its_switch },
};
TEST_SUITE(transient, tests);
