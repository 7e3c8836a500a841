/* The Fanno relations against published values, and each against its inverse on both branches. */
#include <fenv.h>

#include <vtx/fanno.h>

#include "../harness/harness.h"

static int fanno_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    if (strcmp(row->quantity, "fanno_length") == 0)
        return vtx_fanno_length(x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "fanno_mach_subsonic") == 0)
        return vtx_fanno_mach(x[0], x[1], VTX_BRANCH_SUBSONIC, actual), 1;
    if (strcmp(row->quantity, "fanno_pressure") == 0)
        return vtx_fanno_pressure_ratio(x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "fanno_temperature") == 0)
        return vtx_fanno_temperature_ratio(x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "fanno_velocity") == 0)
        return vtx_fanno_velocity_ratio(x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "fanno_stagnation_pressure") == 0)
        return vtx_fanno_stagnation_pressure_ratio(x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "fanno_between") == 0) {
        double from = (double)NAN, to = (double)NAN;
        EXPECT_OK(vtx_fanno_length(x[0], x[3], &from));
        EXPECT_OK(vtx_fanno_length(x[0], x[4], &to));
        return *actual = (from - to) * x[2] / x[1], 1;
    }
    if (strcmp(row->quantity, "fanno_outlet") == 0)
        return vtx_fanno_outlet_mach(x[0], x[2] / sqrt(x[0] * x[1] * x[3]), x[4] * x[5] / x[6], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("fanno.csv", fanno_row, 12); }

enum { RANDOM_CASES = 100000 };

/* From 1e-4 to 50, a third of them within a millionth to a tenth of the sonic point. */
static double random_mach(struct random_state *r, int supersonic)
{
    const double near = random_log_uniform(r, 1e-6, 0.1);
    if (random_uniform(r, 0, 1) < 0.33)
        return supersonic ? 1 + near : 1 - near;
    return supersonic ? random_log_uniform(r, 1, 49) : random_log_uniform(r, 1.1e-4, 1);
}

static double relative(double actual, double expected) { return fabs(actual / expected - 1); }

static void length_and_mach_are_inverses_on_both_branches(void)
{
    for (int supersonic = 0; supersonic < 2; supersonic++) {
        const int32_t branch = supersonic ? VTX_BRANCH_SUPERSONIC : VTX_BRANCH_SUBSONIC;
        struct random_state r;
        double worst_mach = 0, worst_length = 0;
        random_seed(&r, 21 + (uint64_t)supersonic);
        for (int i = 0; i < RANDOM_CASES; i++) {
            const double gamma = random_uniform(&r, 1.01, 1.7), mach = random_mach(&r, supersonic);
            double length = 0, back = 0, again = 0;
            vtx_status status = vtx_fanno_length(gamma, mach, &length);
            status |= vtx_fanno_mach(gamma, length, branch, &back);
            status |= vtx_fanno_length(gamma, back, &again);
            if (status != VTX_OK || (back > 1) != supersonic) {
                EXPECT_STATUS(status, VTX_OK);
                return;
            }
            /* At high Mach numbers the length hardly depends on them: there the length is what must return. */
            if (mach < 5)
                worst_mach = fmax(worst_mach, relative(back, mach));
            /* Next to Mach 1 the length goes with the square of 1 - M, and M has only its 53 bits. */
            worst_length = fmax(worst_length, fabs(again - length) / (1e-10 * length + 2e-15 * sqrt(length)));
        }
        EXPECT(worst_mach < 1e-12);
        EXPECT(worst_length < 1);
    }
}

static void closed_form_inverses_return_the_mach_number(void)
{
    struct random_state r;
    double worst[3] = { 0, 0, 0 };
    random_seed(&r, 23);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double gamma = random_uniform(&r, 1.01, 1.7);
        const double mach = random_log_uniform(&r, 2e-4, 40);
        double ratio[3] = { 0, 0, 0 }, back[3] = { 0, 0, 0 };
        vtx_status status = vtx_fanno_temperature_ratio(gamma, mach, &ratio[0]);
        status |= vtx_fanno_pressure_ratio(gamma, mach, &ratio[1]);
        status |= vtx_fanno_velocity_ratio(gamma, mach, &ratio[2]);
        status |= mach > 0.1 ? vtx_fanno_mach_from_temperature(gamma, ratio[0], &back[0]) : (back[0] = mach, VTX_OK);
        status |= vtx_fanno_mach_from_pressure(gamma, ratio[1], &back[1]);
        status |= mach < 5 ? vtx_fanno_mach_from_velocity(gamma, ratio[2], &back[2]) : (back[2] = mach, VTX_OK);
        if (status != VTX_OK) {
            EXPECT_STATUS(status, VTX_OK);
            return;
        }
        for (int k = 0; k < 3; k++)
            worst[k] = fmax(worst[k], relative(back[k], mach));
    }
    /* The temperature ratio loses 1/((gamma-1) M^2) of its digits below Mach 1. */
    EXPECT(worst[0] < 1e-11);
    EXPECT(worst[1] < 1e-14);
    EXPECT(worst[2] < 1e-13);
}

static void lengths_of_two_pipes_add(void)
{
    struct random_state r;
    random_seed(&r, 24);
    for (int i = 0; i < 10000; i++) {
        const double gamma = random_uniform(&r, 1.01, 1.7), mach = random_log_uniform(&r, 1e-3, 20);
        double whole = 0, first = 0, second = 0, longest = 0;
        vtx_status status = vtx_fanno_length(gamma, mach, &longest);
        const double a = longest * random_uniform(&r, 0, 0.5), b = longest * random_uniform(&r, 0, 0.49);
        status |= vtx_fanno_outlet_mach(gamma, mach, a + b, &whole);
        status |= vtx_fanno_outlet_mach(gamma, mach, a, &first);
        status |= vtx_fanno_outlet_mach(gamma, first, b, &second);
        if (status != VTX_OK || relative(whole, second) > 1e-10) {
            EXPECT_STATUS(status, VTX_OK);
            EXPECT_NEAR(second, whole, 1e-10);
            return;
        }
    }
}

static void too_long_a_pipe_has_no_solution(void)
{
    double length, mach;
    EXPECT_OK(vtx_fanno_length(1.4, 0.5, &length));
    EXPECT_OK(vtx_fanno_outlet_mach(1.4, 0.5, length, &mach));
    EXPECT_WITHIN(mach, 1, 1e-7);
    EXPECT_STATUS(vtx_fanno_outlet_mach(1.4, 0.5, length * 1.000001, &mach), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_fanno_mach(1.4, 0.83, VTX_BRANCH_SUPERSONIC, &mach), VTX_NO_SOLUTION);
    EXPECT_OK(vtx_fanno_mach(1.4, 0.81, VTX_BRANCH_SUPERSONIC, &mach));
}

static void far_beyond_its_range_no_flag_is_raised(void)
{
    double mach;
    feclearexcept(FE_ALL_EXCEPT);
    for (double length = 0.9; length < 1e8; length *= 3)
        EXPECT_STATUS(vtx_fanno_mach(1.4, length, VTX_BRANCH_SUPERSONIC, &mach), VTX_NO_SOLUTION);
    for (double ratio = 1e-5; ratio > 0; ratio *= 1e-10)
        EXPECT_STATUS(vtx_fanno_mach_from_temperature(1.4, ratio, &mach), VTX_OUT_OF_RANGE);
    EXPECT(fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW) == 0);
}

/* A search that brackets Mach numbers dies at the ends of the range and at the sonic point; the closed start does not. */
static void the_inverse_answers_at_and_next_to_the_sonic_point(void)
{
    static const double lengths[] = { 0, 4.9e-324, 1e-300, 1e-30, 1e-16, 1e-12, 1e-8, 1e-3, 0.1, 0.8 };
    for (size_t i = 0; i < sizeof lengths / sizeof lengths[0]; i++) {
        double below, above;
        EXPECT_OK(vtx_fanno_mach(1.4, lengths[i], VTX_BRANCH_SUBSONIC, &below));
        EXPECT_OK(vtx_fanno_mach(1.4, lengths[i], VTX_BRANCH_SUPERSONIC, &above));
        EXPECT(below <= 1 && above >= 1);
    }
}

static void the_inverse_is_smooth_where_its_branches_join(void)
{
    /* Ends of the series and of the single step: 2 gamma/(gamma+1) length = 0.005, 1.1, 1.6. */
    static const double joins[] = { 0.005, 1.1, 1.6 };
    for (int branch = VTX_BRANCH_SUBSONIC; branch <= VTX_BRANCH_SUPERSONIC; branch++)
        for (int i = 0; i < 3; i++) {
            const double length = joins[i] * 1.1 / 2.1 * 1.05;
            double below, above;
            EXPECT_OK(vtx_fanno_mach(1.1, length * (1 - 1e-15), branch, &below));
            EXPECT_OK(vtx_fanno_mach(1.1, length * (1 + 1e-15), branch, &above));
            EXPECT_NEAR(below, above, 2e-14);
        }
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "length and Mach number are inverses on both branches", length_and_mach_are_inverses_on_both_branches },
    { "closed-form inverses return the Mach number", closed_form_inverses_return_the_mach_number },
    { "lengths of two pipes add", lengths_of_two_pipes_add },
    { "too long a pipe has no solution", too_long_a_pipe_has_no_solution },
    { "far beyond its range no flag is raised", far_beyond_its_range_no_flag_is_raised },
    { "the inverse answers at and next to the sonic point", the_inverse_answers_at_and_next_to_the_sonic_point },
    { "the inverse is smooth where its branches join", the_inverse_is_smooth_where_its_branches_join },
};
TEST_SUITE(fanno, tests);
