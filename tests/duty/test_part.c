/* A part as one mass. */
#include <vtx/material.h>
#include <vtx/part.h>
#include <vtx/thermometry.h>
#include <vtx/transient.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 5000 };

static const double pi_value = 3.14159265358979323846;

/* The examples print sigma 5.67e-8: an emissivity scaled by this gives their radiation. */
static const double printed_sigma = 5.67e-8 / 5.670374419e-8;

vtx_part sample_part(void)
{
    vtx_part part;
    vtx_part_init(&part);
    part.mass = 0.35;
    part.heat_capacity = 900;
    part.area = 0.03;
    part.conductivity = 167;
    part.half_thickness = 0.004;
    part.heat_load = 12;
    return part;
}

/* density, heat capacity, diameter, film coefficient */
static vtx_status sphere_time_constant(const double *in, double *tau)
{
    const double d = in[2];
    return vtx_time_constant(in[0] * pi_value * d * d * d / 6, in[1], in[3], pi_value * d * d, tau);
}

static int radiating_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    double steady;
    if (strcmp(row->quantity, "radiating_time") == 0)
        return vtx_radiating_part_time(in[0] * in[1] * in[2], in[3], in[4], in[5] * printed_sigma, in[6], in[7], in[8], actual), 1;
    if (strcmp(row->quantity, "radiating_time_to_1K") != 0)
        return 0;
    /* a sphere: volume over area is a sixth of the diameter */
    if (vtx_face_temperature(0, in[3], in[4], in[5] * printed_sigma, in[6], &steady) == VTX_OK)
        vtx_radiating_part_time(in[0] * in[1] * in[2] / 6, in[3], in[4], in[5] * printed_sigma, in[6], in[7], steady - 1, actual);
    return 1;
}

static int part_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    double tau;
    if (strcmp(row->quantity, "sphere_99_percent") == 0) {
        if (sphere_time_constant(in, &tau) == VTX_OK)
            vtx_settling_time(tau, 1, 0.01, actual);
        return 1;
    }
    if (strcmp(row->quantity, "sphere_lumped_time") == 0) {
        if (sphere_time_constant(in, &tau) == VTX_OK)
            vtx_settling_time(tau, fabs(in[4] - in[6]), fabs(in[5] - in[6]), actual);
        return 1;
    }
    if (strcmp(row->quantity, "sphere_diameter_for_time_constant") == 0) {
        const double unit[] = { in[0], in[1], 1, in[2] };
        if (sphere_time_constant(unit, &tau) == VTX_OK)
            *actual = in[3] / tau;
        return 1;
    }
    if (strcmp(row->quantity, "face_temperature") == 0)
        return vtx_face_temperature(in[0], in[1], in[2], in[3] * printed_sigma, in[4], actual), 1;
    if (strcmp(row->quantity, "thermal_growth") == 0)
        return vtx_thermal_growth(in[0], in[1], in[2], actual), 1;
    return radiating_row(row, actual);
}

static void published_values_are_reproduced(void) { check_rows("part.csv", part_row, 11); }

static vtx_part random_part(struct random_state *r)
{
    vtx_part p;
    vtx_part_init(&p);
    p.mass = random_log_uniform(r, 1e-3, 10);
    p.heat_capacity = random_uniform(r, 300, 2200);
    p.area = random_log_uniform(r, 1e-4, 1);
    p.conductivity = random_log_uniform(r, 0.1, 400);
    p.half_thickness = random_log_uniform(r, 1e-4, 0.05);
    p.heat_load = random_uniform(r, 0, 1) < 0.3 ? 0 : random_log_uniform(r, 1e-3, 100);
    p.body = VTX_BODY_WALL + (int32_t)random_uniform(r, 0, 2.999);
    return p;
}

/* Time and temperature invert each other; heat given to the air is what the part lost plus its load. */
static void time_inverts_temperature_and_heat_is_conserved(void)
{
    struct random_state r;
    random_seed(&r, 21);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const vtx_part p = random_part(&r);
        const double film = random_log_uniform(&r, 2, 2000), air = random_uniform(&r, 230, 300), start = random_uniform(&r, 231, 450);
        vtx_part_state s;
        vtx_cooling_time c;
        double tau;
        EXPECT_OK(vtx_part_cooling_time(&p, film, air, start, start, &c));
        tau = c.time_constant;
        const double time = tau * random_log_uniform(&r, 1e-3, 5);
        if (vtx_part_temperature(&p, film, air, start, time, &s) != VTX_OK)
            continue;
        EXPECT_WITHIN(s.mean_heat_flow * time, p.mass * p.heat_capacity * (start - s.temperature) + p.heat_load * time,
                      1e-10 * (p.mass * p.heat_capacity * 300 + p.heat_load * time));
        EXPECT(s.lumped == (s.biot < 0.1) && ((s.advisories & VTX_ADVISORY_NOT_LUMPED) != 0) == !s.lumped);
        if (s.temperature > 3000 || s.temperature < 50 || fabs(start - s.steady_temperature) < 1e-3)
            continue;
        EXPECT_OK(vtx_part_cooling_time(&p, film, air, start, s.temperature, &c));
        EXPECT_NEAR(c.time, time, 1e-8);
    }
}

static void coefficient_inverts_temperature(void)
{
    struct random_state r;
    int solved = 0;
    random_seed(&r, 22);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const vtx_part p = random_part(&r);
        const double air = random_uniform(&r, 230, 300), start = air + random_uniform(&r, 5, 150);
        const double film = random_log_uniform(&r, 2, 2000), time = random_log_uniform(&r, 1, 1e4);
        vtx_part_state s;
        vtx_needed_film n;
        if (vtx_part_temperature(&p, film, air, start, time, &s) != VTX_OK || s.temperature > 3000 || s.temperature - air < 0.01)
            continue;
        EXPECT_OK(vtx_part_film_coefficient(&p, air, start, s.temperature, time, &n));
        EXPECT(n.attainable_temperature <= s.temperature);
        if (n.film_coefficient < 0.1 || n.film_coefficient > 1e5)
            continue;
        vtx_part_state again;
        EXPECT_OK(vtx_part_temperature(&p, n.film_coefficient, air, start, time, &again));
        EXPECT_WITHIN(again.temperature, s.temperature, 1e-9);
        EXPECT_WITHIN(n.mean_heat_flow, again.mean_heat_flow, 1e-9 * (fabs(n.mean_heat_flow) + p.mass * p.heat_capacity * 300 / time));
        solved++;
    }
    EXPECT(solved > RANDOM_CASES / 2);
}

static void what_cannot_be_reached_names_the_limit(void)
{
    vtx_part p = sample_part();
    vtx_cooling_time c;
    vtx_needed_film n;
    vtx_part_state s;
    EXPECT_STATUS(vtx_part_cooling_time(&p, 100, 260, 350, 261, &c), VTX_NO_SOLUTION);
    EXPECT_OK(vtx_part_temperature(&p, 100, 260, 350, 1e6, &s));
    EXPECT_NEAR(c.attainable_temperature, s.steady_temperature, 1e-14);
    EXPECT_NEAR(s.temperature, s.steady_temperature, 1e-14);
    EXPECT(isnan(c.time) && c.lumped == -1);
    EXPECT_OK(vtx_part_film_coefficient(&p, 260, 350, 263, 15, &n));
    EXPECT(n.film_coefficient > 2000 && n.film_coefficient < 2500 && (n.advisories & VTX_ADVISORY_OUTSIDE_CORRELATION));
    EXPECT_OK(vtx_part_film_coefficient(&p, 260, 350, 263, 25, &n));
    EXPECT(n.film_coefficient > 1000 && n.film_coefficient < 2000 && !(n.advisories & VTX_ADVISORY_OUTSIDE_CORRELATION));
    EXPECT_STATUS(vtx_part_film_coefficient(&p, 260, 350, 259, 100, &n), VTX_NO_SOLUTION);
    EXPECT(n.attainable_temperature > 260 && n.attainable_temperature < 261 && isnan(n.film_coefficient));
    /* plastic: heat cannot leave the inside in two seconds */
    p.conductivity = 0.2;
    EXPECT_STATUS(vtx_part_film_coefficient(&p, 260, 350, 300, 2, &n), VTX_NO_SOLUTION);
    EXPECT(n.attainable_temperature > 300 && n.attainable_temperature < 352);
}

static void a_part_that_gets_there_by_itself_needs_nothing(void)
{
    vtx_part p = sample_part();
    vtx_needed_film n;
    p.heat_load = 0;
    EXPECT_OK(vtx_part_film_coefficient(&p, 290, 350, 350, 60, &n));
    EXPECT(n.film_coefficient >= 0 && n.film_coefficient <= 0 && n.lumped == 1);
    EXPECT_OK(vtx_part_film_coefficient(&p, 290, 350, 360, 60, &n));
    EXPECT(n.film_coefficient <= 0);
    /* the mirror image: a cold part that is warmed */
    EXPECT_OK(vtx_part_film_coefficient(&p, 290, 260, 280, 60, &n));
    EXPECT(n.film_coefficient > 0 && n.mean_heat_flow < 0);
    vtx_part_state s;
    EXPECT_OK(vtx_part_temperature(&p, n.film_coefficient, 290, 260, 60, &s));
    EXPECT_WITHIN(s.temperature, 280, 1e-9);
    p.heat_load = 1;
    EXPECT_STATUS(vtx_part_film_coefficient(&p, 290, 260, 280, 60, &n), VTX_OUT_OF_RANGE);
}

/* The inside resistance against the exact first eigenvalue; figures stated in the header. */
static void decay_rate_is_as_good_as_stated(void)
{
    double worst_at_1 = 0, worst_at_5 = 0;
    for (int32_t body = VTX_BODY_WALL; body <= VTX_BODY_SPHERE; body++)
        for (int k = 0; k < 2; k++) {
            const double biot = k ? 5 : 1, n = body - VTX_BODY_WALL + 1;
            vtx_part p = sample_part();
            vtx_cooling_time c;
            double z;
            /* half thickness 1 m, volume over area 1/n: mass over area is density / n */
            p.body = body;
            p.heat_load = 0;
            p.half_thickness = 1;
            p.conductivity = 10;
            p.mass = 1000 / n;
            p.area = 1;
            p.heat_capacity = 1000;
            EXPECT_OK(vtx_transient_eigenvalue(body, biot, &z, NULL));
            EXPECT_OK(vtx_part_cooling_time(&p, 10 * biot, 260, 350, 300, &c));
            const double exact = z * z * 10 / (1000.0 * 1000);
            const double error = fabs(1 / c.time_constant / exact - 1);
            if (k)
                worst_at_5 = fmax(worst_at_5, error);
            else
                worst_at_1 = fmax(worst_at_1, error);
        }
    EXPECT(worst_at_1 < 0.015 && worst_at_1 > 0.001);
    EXPECT(worst_at_5 < 0.136 && worst_at_5 > 0.08);
}

/* Without radiation the integral is the exponential law; with it, a fine Simpson sum agrees. */
static double fine_time(double capacity, double film, double air, double emissivity, double surroundings, double start, double end)
{
    enum { STEPS = 20000 };
    const double sigma = 5.670374419e-8, step = (end - start) / STEPS;
    double time = 0;
    for (int i = 0; i < STEPS; i++) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            const double t = start + step * (i + 0.5 * k);
            sum += (k == 1 ? 4 : 1) * capacity / (film * (air - t) + emissivity * sigma * (pow(surroundings, 4) - pow(t, 4)));
        }
        time += step * sum / 6;
    }
    return time;
}

static void radiating_time_is_the_integral(void)
{
    struct random_state r;
    random_seed(&r, 23);
    for (int i = 0; i < 60; i++) {
        const double film = random_log_uniform(&r, 0.2, 300), air = random_uniform(&r, 220, 320), walls = random_uniform(&r, 250, 500);
        const double emissivity = random_uniform(&r, 0, 1), start = random_uniform(&r, 80, 1500);
        double steady, time;
        EXPECT_OK(vtx_face_temperature(0, film, air, emissivity, walls, &steady));
        const double end = steady + (start - steady) * random_uniform(&r, 0.02, 0.9);
        EXPECT_OK(vtx_radiating_part_time(5000, film, air, emissivity, walls, start, end, &time));
        EXPECT_NEAR(time, fine_time(5000, film, air, emissivity, walls, start, end), 1e-9);
        EXPECT_STATUS(vtx_radiating_part_time(5000, film, air, emissivity, walls, start, steady + (steady - start) * 0.1, &time),
                      VTX_NO_SOLUTION);
    }
}

static void face_balance_closes(void)
{
    struct random_state r;
    random_seed(&r, 24);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double film = random_log_uniform(&r, 0.1, 1e5), air = random_uniform(&r, 60, 1900), walls = random_uniform(&r, 60, 1900);
        const double emissivity = random_uniform(&r, 0, 1), flux = random_log_uniform(&r, 1e-3, 1e6);
        double t;
        if (vtx_face_temperature(flux, film, air, emissivity, walls, &t) != VTX_OK)
            continue;
        const double grey = emissivity * 5.670374419e-8;
        EXPECT_WITHIN(film * (t - air) + grey * (pow(t, 4) - pow(walls, 4)), flux, 1e-11 * (film * 2000 + grey * 3e13 + flux));
    }
}

static void a_needed_face_coefficient_holds_the_face(void)
{
    double film, t;
    EXPECT_OK(vtx_face_film_coefficient(3e4, 255, 310, &film));
    EXPECT_OK(vtx_face_temperature(3e4, film, 255, 0, 300, &t));
    EXPECT_WITHIN(t, 310, 1e-9);
    EXPECT_STATUS(vtx_face_film_coefficient(3e4, 255, 255, &film), VTX_NO_SOLUTION);
}

static void softening_uses_the_limit_of_the_kind_of_plastic(void)
{
    vtx_softening s;
    /* amorphous: glass transition less 20 K; polycarbonate 145 - 20 and 128 degC */
    EXPECT_OK(vtx_softening_margin(VTX_MATERIAL_PC, 373.15, &s));
    EXPECT_WITHIN(s.light_margin, 25, 1e-9);
    EXPECT_WITHIN(s.loaded_margin, 28, 1e-9);
    EXPECT(s.exceeded == 0 && s.advisories == 0);
    EXPECT_OK(vtx_softening_margin(VTX_MATERIAL_PC, 399.15, &s));
    EXPECT(s.exceeded == 1);
    /* crystalline: deflection at 0.45 MPa, not the melting point */
    EXPECT_OK(vtx_softening_margin(VTX_MATERIAL_PA6, 373.15, &s));
    EXPECT(s.loaded_margin < 0 && s.light_margin > 0 && s.exceeded == 1);
    EXPECT_OK(vtx_softening_margin(VTX_MATERIAL_PEEK, 300, &s));
    EXPECT(isnan(s.light_margin) && (s.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
    EXPECT_OK(vtx_softening_margin(VTX_MATERIAL_HIGH_SPEED_STEEL, 873.15, &s));
    EXPECT(s.loaded_margin < 0);
    EXPECT_STATUS(vtx_softening_margin(VTX_MATERIAL_BRASS, 300, &s), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_softening_margin(VTX_BODY_WALL, 300, &s), VTX_BAD_ARGUMENT);
}

static void a_part_that_was_not_filled_in_is_refused(void)
{
    vtx_part p;
    vtx_part_state s;
    EXPECT_OK(vtx_part_init(&p));
    EXPECT_STATUS(vtx_part_temperature(&p, 100, 260, 350, 10, &s), VTX_BAD_ARGUMENT);
    p = sample_part();
    p.reserved[2] = 1;
    EXPECT_STATUS(vtx_part_temperature(&p, 100, 260, 350, 10, &s), VTX_BAD_ARGUMENT);
    p = sample_part();
    p.body = VTX_BODY_PLATE_OUTWARD;
    EXPECT_STATUS(vtx_part_temperature(&p, 100, 260, 350, 10, &s), VTX_BAD_ARGUMENT);
    p = sample_part();
    p.conductivity = (double)NAN;
    EXPECT_STATUS(vtx_part_temperature(&p, 100, 260, 350, 10, &s), VTX_BAD_ARGUMENT);
    EXPECT(isnan(s.temperature) && s.lumped == -1);
    EXPECT_STATUS(vtx_part_init(NULL), VTX_BAD_ARGUMENT);
}

/* 0.35 kg of aluminium from 77 to 27 degC in a minute, by hand. */
static void duty_is_mass_times_heat_over_time(void)
{
    double w, b;
    EXPECT_OK(vtx_cooling_duty(0.35, 896, 350, 300, 60, &w));
    EXPECT_NEAR(w, 261.333333333333, 1e-13);
    EXPECT_OK(vtx_cooling_duty(0.35, 896, 300, 350, 60, &w));
    EXPECT(w < 0);
    EXPECT_OK(vtx_biot_number(100, 2e-3, 0.2, &b));
    EXPECT_NEAR(b, 1, 1e-15);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "time inverts temperature and heat is conserved", time_inverts_temperature_and_heat_is_conserved },
    { "coefficient inverts temperature", coefficient_inverts_temperature },
    { "what cannot be reached names the limit", what_cannot_be_reached_names_the_limit },
    { "a part that gets there by itself needs nothing", a_part_that_gets_there_by_itself_needs_nothing },
    { "decay rate is as good as stated", decay_rate_is_as_good_as_stated },
    { "radiating time is the integral", radiating_time_is_the_integral },
    { "face balance closes", face_balance_closes },
    { "a needed face coefficient holds the face", a_needed_face_coefficient_holds_the_face },
    { "softening uses the limit of the kind of plastic", softening_uses_the_limit_of_the_kind_of_plastic },
    { "a part that was not filled in is refused", a_part_that_was_not_filled_in_is_refused },
    { "duty is mass times heat over time", duty_is_mass_times_heat_over_time },
};
TEST_SUITE(part, tests);
