/* Separation: golden vectors, both laws on random states, continuity, the careful side. */
#include <fenv.h>

#include <vtx/separation.h>

#include "../harness/harness.h"

enum { IDEAL = 1 };

static const double cp = 1006, gas_constant = 287.05;

static int golden_exergy(const struct data_row *row, const vtx_streams *s, double *actual)
{
    const double *i = row->input;
    vtx_exergy_account a;
    vtx_exergy_balance(cp, gas_constant, i[0], i[1], i[2], s->cold_temperature, i[3], s->hot_temperature, i[4], 101325, i[1], &a);
    if (strcmp(row->quantity, "exergy_inlet") == 0)
        *actual = a.inlet;
    else if (strcmp(row->quantity, "exergy_cold") == 0)
        *actual = a.cold;
    else if (strcmp(row->quantity, "exergy_hot") == 0)
        *actual = a.hot;
    else
        return 0;
    return 1;
}

static int golden_row(const struct data_row *row, double *actual)
{
    const double *i = row->input;
    vtx_tube tube;
    vtx_streams s;
    vtx_tube_init(&tube);
    tube.peak_efficiency = i[5];
    tube.efficiency_high = fmax(i[5], tube.efficiency_high);
    vtx_tube_separate(&tube, IDEAL, i[0], i[1], 0, i[2], i[3], i[4], &s);
    if (strcmp(row->quantity, "isentropic_drop") == 0)
        *actual = i[1] - s.isentropic_temperature;
    else if (strcmp(row->quantity, "shape") == 0)
        *actual = s.isentropic_efficiency / i[5];
    else if (strcmp(row->quantity, "cold_temperature") == 0)
        *actual = s.cold_temperature;
    else if (strcmp(row->quantity, "hot_temperature") == 0)
        *actual = s.hot_temperature;
    else if (strcmp(row->quantity, "entropy_generation") == 0)
        *actual = s.entropy_generation;
    else if (strcmp(row->quantity, "cooling") == 0)
        vtx_refrigeration_capacity(i[4], cp, i[1], s.cold_temperature, actual);
    else if (strcmp(row->quantity, "cop_isothermal") == 0)
        vtx_cop_isothermal(cp, gas_constant, i[2], i[1], i[0], i[1], s.cold_temperature, i[4], actual);
    else if (strcmp(row->quantity, "cop_adiabatic") == 0)
        vtx_cop_adiabatic(cp, gas_constant, i[2], i[1], i[0], i[1], s.cold_temperature, i[4], actual);
    else
        return golden_exergy(row, &s, actual);
    return 1;
}

static void golden_vectors_are_reproduced_to_printed_digits(void) { check_rows("separation.csv", golden_row, 44); }

/* Any tube, any state that is accepted. */
static vtx_tube random_tube(struct random_state *r)
{
    vtx_tube t;
    vtx_tube_init(&t);
    t.peak_efficiency = random_uniform(r, 0, 1) < 0.1 ? 1 : random_uniform(r, 0.01, 1);
    t.efficiency_low = t.peak_efficiency * random_uniform(r, 0.1, 1);
    t.efficiency_high = t.peak_efficiency + (1 - t.peak_efficiency) * random_uniform(r, 0, 1);
    t.coldest_fraction = random_uniform(r, 0.01, 0.49);
    t.basis = random_uniform(r, 0, 1) < 0.5 ? VTX_TUBE_CALIBRATED : VTX_TUBE_UNCALIBRATED;
    if (random_uniform(r, 0, 1) < 0.3)
        t.pressure_exponent = random_uniform(r, -1, 1);
    return t;
}

static double random_share(struct random_state *r)
{
    const double u = random_uniform(r, 0, 1);
    return u < 0.02 ? 0 : u < 0.04 ? 1 : u < 0.06 ? 1 - random_log_uniform(r, 1e-15, 1e-3) : random_uniform(r, 0, 1);
}

struct state {
    vtx_tube tube;
    double inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure, cold_fraction;
};

static struct state random_state(struct random_state *r)
{
    struct state s = { .tube = random_tube(r), .cold_fraction = random_share(r) };
    s.inlet_pressure = random_log_uniform(r, 1.1e4, 1e7);
    s.inlet_temperature = random_uniform(r, 150, 450);
    s.cold_pressure = fmax(s.inlet_pressure / random_log_uniform(r, 1, 100), 1e3);
    s.hot_pressure = fmax(s.inlet_pressure / random_log_uniform(r, 1, 100), 1e3);
    return s;
}

static int32_t separate(const struct state *s, int32_t model, vtx_streams *out)
{
    return vtx_tube_separate(&s->tube, model, s->inlet_pressure, s->inlet_temperature, s->humidity_ratio, s->cold_pressure,
                             s->hot_pressure, s->cold_fraction, out);
}

static void ideal_laws_hold(const struct state *x)
{
    const double mu = x->cold_fraction, t0 = x->inlet_temperature;
    vtx_streams s;
    feclearexcept(FE_ALL_EXCEPT);
    EXPECT_OK(separate(x, IDEAL, &s));
    EXPECT(!fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW));
    EXPECT(fabs(mu * (t0 - s.cold_temperature) + (1 - mu) * (t0 - s.hot_temperature)) <= 1e-10 * t0);
    EXPECT(s.heat_gain == 0 && s.heat_loss == 0);
    EXPECT(s.entropy_generation >= -1e-7);
    EXPECT(s.cold_temperature_low <= s.cold_temperature && s.cold_temperature <= s.cold_temperature_high);
    EXPECT(s.hot_temperature_low <= s.hot_temperature && s.hot_temperature <= s.hot_temperature_high);
    EXPECT(s.cold_temperature_high <= t0 * (1 + 1e-15) && s.hot_temperature_low >= t0 * (1 - 1e-15));
    EXPECT(s.cold_temperature >= s.isentropic_temperature * (1 - 1e-14));
    if (mu == 1)
        EXPECT(s.cold_temperature == t0 && s.cold_temperature == s.throttle_temperature);
}

static void both_laws_hold_on_random_states(void)
{
    struct random_state r;
    random_seed(&r, 21);
    const int states = soak_count(100000);
    for (int i = 0; i < states; i++) {
        const struct state x = random_state(&r);
        ideal_laws_hold(&x);
    }
}

/* A leak moves heat down the slope only; with the surroundings the laws hold as well. */
static void laws_hold_with_leaks(void)
{
    struct random_state r;
    random_seed(&r, 22);
    for (int i = 0; i < 20000; i++) {
        struct state x = random_state(&r);
        vtx_streams tight, leaky;
        EXPECT_OK(separate(&x, IDEAL, &tight));
        x.tube.cold_leak = random_log_uniform(&r, 1e-4, 10);
        x.tube.hot_leak = random_log_uniform(&r, 1e-4, 10);
        x.tube.ambient_temperature = random_uniform(&r, 250, 320);
        EXPECT_OK(separate(&x, IDEAL, &leaky));
        const double mu = x.cold_fraction, t0 = x.inlet_temperature, ta = x.tube.ambient_temperature;
        const double missing = cp * (mu * (t0 - leaky.cold_temperature) + (1 - mu) * (t0 - leaky.hot_temperature));
        EXPECT(fabs(missing + leaky.heat_gain - leaky.heat_loss) <= 1e-10 * cp * t0);
        EXPECT(leaky.entropy_generation >= tight.entropy_generation - 1e-9);
        EXPECT(fabs(leaky.cold_temperature - ta) <= fabs(tight.cold_temperature - ta) * (1 + 1e-14));
        EXPECT(fabs(leaky.hot_temperature - ta) <= fabs(tight.hot_temperature - ta) * (1 + 1e-14));
    }
}

static void cold_temperature_is_monotone_in_efficiency_and_back_pressure(void)
{
    struct random_state r;
    random_seed(&r, 23);
    for (int i = 0; i < 20000; i++) {
        struct state x = random_state(&r);
        vtx_streams a, b;
        EXPECT_OK(separate(&x, IDEAL, &a));
        struct state y = x;
        y.tube.peak_efficiency = random_uniform(&r, x.tube.peak_efficiency, x.tube.efficiency_high);
        EXPECT_OK(separate(&y, IDEAL, &b));
        EXPECT(b.cold_temperature <= a.cold_temperature && b.hot_temperature >= a.hot_temperature);
        if (x.tube.pressure_exponent < 0)
            continue; /* then a lower ratio means a better tube, and nothing is promised */
        y = x;
        y.cold_pressure = random_uniform(&r, x.cold_pressure, x.inlet_pressure);
        EXPECT_OK(separate(&y, IDEAL, &b));
        EXPECT(b.cold_temperature >= a.cold_temperature * (1 - 1e-15));
    }
}

static void hot_side_stays_finite_up_to_cold_fraction_1(void)
{
    struct state x = { .inlet_pressure = 7e5, .inlet_temperature = 293.15, .cold_pressure = 101325, .hot_pressure = 101325, .cold_fraction = 1 };
    vtx_streams end, near_end;
    EXPECT_OK(vtx_tube_init(&x.tube));
    EXPECT_OK(separate(&x, IDEAL, &end));
    EXPECT_NEAR(end.hot_temperature - 293.15, 0.28 * (293.15 - end.isentropic_temperature) * 2 / 0.7, 1e-12);
    x.cold_fraction = 1 - 1e-9;
    EXPECT_OK(separate(&x, IDEAL, &near_end));
    EXPECT_WITHIN(near_end.hot_temperature, end.hot_temperature, 1e-6);
    EXPECT_WITHIN(near_end.cold_temperature, end.cold_temperature, 1e-6);
}

static void inlet_temperature_scales_both_streams(void)
{
    struct state x = { .inlet_pressure = 7e5, .inlet_temperature = 280, .cold_pressure = 101325, .hot_pressure = 101325, .cold_fraction = 0.55 };
    vtx_streams a, b;
    EXPECT_OK(vtx_tube_init(&x.tube));
    EXPECT_OK(separate(&x, IDEAL, &a));
    x.inlet_temperature = 350;
    EXPECT_OK(separate(&x, IDEAL, &b));
    EXPECT_NEAR(b.cold_temperature / a.cold_temperature, 1.25, 1e-13);
    EXPECT_NEAR(b.hot_temperature / a.hot_temperature, 1.25, 1e-13);
}

static void pressure_exponent_acts_around_the_reference_ratio_and_stops_at_1(void)
{
    struct state x = { .inlet_pressure = 5e5, .inlet_temperature = 293.15, .cold_pressure = 1e5, .hot_pressure = 1e5, .cold_fraction = 0.3 };
    vtx_streams s;
    EXPECT_OK(vtx_tube_init(&x.tube));
    x.tube.pressure_exponent = 0.5;
    EXPECT_OK(separate(&x, IDEAL, &s));
    EXPECT_NEAR(s.isentropic_efficiency, 0.28, 1e-13);
    x.inlet_pressure = 1e6;
    EXPECT_OK(separate(&x, IDEAL, &s));
    EXPECT_NEAR(s.isentropic_efficiency, 0.28 * sqrt(2), 1e-13);
    x.tube.peak_efficiency = x.tube.efficiency_high = 0.9;
    EXPECT_OK(separate(&x, IDEAL, &s));
    EXPECT_NEAR(s.isentropic_efficiency, 1, 1e-13);
    EXPECT(s.advisories & VTX_ADVISORY_SECOND_LAW_LIMITED);
}

static void no_expansion_separates_nothing_and_says_so(void)
{
    struct state x = { .inlet_pressure = 7e5, .inlet_temperature = 293.15, .cold_pressure = 7e5, .hot_pressure = 7e5, .cold_fraction = 0.6 };
    vtx_streams s;
    EXPECT_OK(vtx_tube_init(&x.tube));
    EXPECT_OK(separate(&x, IDEAL, &s));
    EXPECT(s.cold_temperature == 293.15 && s.hot_temperature == 293.15 && s.entropy_generation == 0);
    EXPECT(isnan(s.isentropic_efficiency) && (s.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
}

static void the_careful_side_depends_on_the_question(void)
{
    vtx_tube tube, careful;
    EXPECT_OK(vtx_tube_init(&tube));
    EXPECT_OK(vtx_tube_for_question(&tube, VTX_QUESTION_SIZING, &careful));
    EXPECT(careful.peak_efficiency == 0.20 && careful.efficiency_low == 0.18 && careful.efficiency_high == 0.39);
    EXPECT_OK(vtx_tube_for_question(&tube, VTX_QUESTION_FREEZING, &careful));
    EXPECT(careful.peak_efficiency == 0.55 && careful.efficiency_low == 0.18 && careful.efficiency_high == 0.55);
    EXPECT_OK(vtx_tube_for_question(&tube, VTX_QUESTION_TYPICAL, &careful));
    EXPECT(memcmp(&careful, &tube, sizeof tube) == 0);
    tube.basis = VTX_TUBE_CALIBRATED;
    tube.efficiency_low = 0.26;
    tube.efficiency_high = 0.31;
    EXPECT_OK(vtx_tube_for_question(&tube, VTX_QUESTION_SIZING, &careful));
    EXPECT(careful.peak_efficiency == 0.26);
    EXPECT_OK(vtx_tube_for_question(&tube, VTX_QUESTION_FREEZING, &careful));
    EXPECT(careful.peak_efficiency == 0.31);
    EXPECT_STATUS(vtx_tube_for_question(&tube, VTX_TUBE_CALIBRATED, &careful), VTX_BAD_ARGUMENT);
}

static void a_tube_that_cannot_be_is_refused(void)
{
    const struct state good = { .inlet_pressure = 7e5, .inlet_temperature = 293.15, .cold_pressure = 1e5, .hot_pressure = 1e5, .cold_fraction = 0.6 };
    vtx_streams s;
    struct state x = good;
    EXPECT_OK(vtx_tube_init(&x.tube));
    const vtx_tube tube = x.tube;
    EXPECT_OK(separate(&x, IDEAL, &s));
    x.tube.peak_efficiency = 0.5; /* above its band */
    EXPECT_STATUS(separate(&x, IDEAL, &s), VTX_BAD_ARGUMENT);
    x.tube = tube;
    x.tube.efficiency_high = 1.01;
    EXPECT_STATUS(separate(&x, IDEAL, &s), VTX_BAD_ARGUMENT);
    x.tube = tube;
    x.tube.coldest_fraction = 0.5;
    EXPECT_STATUS(separate(&x, IDEAL, &s), VTX_BAD_ARGUMENT);
    x.tube = tube;
    x.tube.peak_efficiency = (double)NAN;
    EXPECT_STATUS(separate(&x, IDEAL, &s), VTX_BAD_ARGUMENT);
    x.tube = tube;
    x.tube.reserved[3] = 1e-9;
    EXPECT_STATUS(separate(&x, IDEAL, &s), VTX_BAD_ARGUMENT);
    memset(&x.tube, 0, sizeof x.tube);
    EXPECT_STATUS(separate(&x, IDEAL, &s), VTX_BAD_ARGUMENT);
    x = good;
    x.tube = tube;
    x.hot_pressure = 7.1e5;
    EXPECT_STATUS(separate(&x, IDEAL, &s), VTX_BAD_ARGUMENT);
    x = good;
    x.tube = tube;
    x.inlet_pressure = 293.15;
    x.inlet_temperature = 7e5;
    EXPECT_STATUS(separate(&x, IDEAL, &s), VTX_BAD_ARGUMENT); /* swapped, and so above its outlets' pressure */
}

static const struct test_case tests[] = {
    { "golden vectors are reproduced to printed digits", golden_vectors_are_reproduced_to_printed_digits },
    { "both laws hold on random states", both_laws_hold_on_random_states },
    { "laws hold with leaks", laws_hold_with_leaks },
    { "cold temperature is monotone in efficiency and back-pressure", cold_temperature_is_monotone_in_efficiency_and_back_pressure },
    { "hot side stays finite up to cold fraction 1", hot_side_stays_finite_up_to_cold_fraction_1 },
    { "inlet temperature scales both streams", inlet_temperature_scales_both_streams },
    { "pressure exponent acts around the reference ratio and stops at 1", pressure_exponent_acts_around_the_reference_ratio_and_stops_at_1 },
    { "no expansion separates nothing and says so", no_expansion_separates_nothing_and_says_so },
    { "the careful side depends on the question", the_careful_side_depends_on_the_question },
    { "a tube that cannot be is refused", a_tube_that_cannot_be_is_refused },
};
TEST_SUITE(separation, tests);
