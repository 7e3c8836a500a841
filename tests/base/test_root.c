/* Bracketed roots and minima. */
#include "../../libvtx/base/root.h"
#include "../harness/harness.h"

/* shape 0 polynomial, 1 exponential, 2 arc tangent, 3 cube, 4 kink, 5 step, 6 root with vertical tangent */
struct problem {
    int shape, calls;
    double at, steep, nan_from;
};

static double shape_of(const struct problem *p, double d)
{
    switch (p->shape) {
    case 0: return d * (1 + d * d);
    case 1: return expm1(p->steep * d);
    case 2: return atan(p->steep * d);
    case 3: return d * d * d;
    case 4: return d < 0 ? d : p->steep * d;
    case 5: return d < 0 ? -1 : p->steep;
    default: return d < 0 ? -sqrt(-d) : sqrt(d);
    }
}

static double value(double x, void *context)
{
    struct problem *p = context;
    p->calls++;
    return x >= p->nan_from ? (double)NAN : shape_of(p, x - p->at);
}

static struct problem problem_at(int shape, double at) { return (struct problem){ shape, 0, at, 3, 1e300 }; }

static void roots_of_many_functions_are_found(void)
{
    struct random_state r;
    int most[7] = { 0 }, total[7] = { 0 };
    random_seed(&r, 11);
    for (int i = 0; i < 21000; i++) {
        const int shape = i % 7;
        struct problem p = problem_at(shape, random_uniform(&r, -100, 100));
        const double low = p.at - random_log_uniform(&r, 1e-6, 50), high = p.at + random_log_uniform(&r, 1e-6, 50);
        double root = 0;
        p.steep = random_log_uniform(&r, 0.01, 10);
        EXPECT_OK(find_root(value, &p, low, high, 1e-9, &root));
        EXPECT_WITHIN(root, p.at, 2e-9);
        most[shape] = p.calls > most[shape] ? p.calls : most[shape];
        total[shape] += p.calls;
    }
    for (int shape = 0; shape < 7; shape++) {
        printf("\n    evaluations a root, shape %d: mean %.1f, most %d ", shape, total[shape] / 3000.0, most[shape]);
        EXPECT(most[shape] <= 150);
        EXPECT(shape > 2 || total[shape] <= 3000 * 12);
    }
}

static void a_root_at_an_end_is_found(void)
{
    for (int shape = 0; shape < 5; shape++) {
        struct problem p = problem_at(shape, 7);
        double root = 0;
        EXPECT_OK(find_root(value, &p, 7, 9, 1e-12, &root));
        EXPECT(root == 7);
        EXPECT_OK(find_root(value, &p, 3, 7, 1e-12, &root));
        EXPECT(root == 7);
        EXPECT_OK(find_root(value, &p, 7, 7, 1e-12, &root));
        EXPECT(root == 7);
    }
}

static void no_change_of_sign_is_no_solution(void)
{
    struct problem p = problem_at(0, 7);
    double root = 1;
    EXPECT_STATUS(find_root(value, &p, 8, 9, 1e-9, &root), VTX_NO_SOLUTION);
    EXPECT(isnan(root));
    EXPECT(p.calls == 2);
}

static void a_bad_bracket_is_refused_before_any_evaluation(void)
{
    struct problem p = problem_at(0, 7);
    double root = 1;
    EXPECT_STATUS(find_root(value, &p, 9, 3, 1e-9, &root), VTX_BAD_ARGUMENT);
    EXPECT(isnan(root));
    EXPECT_STATUS(find_root(value, &p, (double)NAN, 9, 1e-9, &root), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(find_root(value, &p, 3, (double)INFINITY, 1e-9, &root), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(find_root(value, &p, 3, 9, 0, &root), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(find_root(value, &p, 3, 9, -1, &root), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(find_root(value, &p, 3, 9, (double)NAN, &root), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(find_minimum(value, &p, 9, 3, 1e-9, &root), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(find_minimum(value, &p, 3, 9, (double)NAN, &root), VTX_BAD_ARGUMENT);
    EXPECT(p.calls == 0);
}

static void a_NaN_objective_ends_the_search(void)
{
    for (int k = 0; k < 100; k++) {
        struct problem p = problem_at(0, 7);
        double x = 1;
        p.nan_from = 6.9 + 0.02 * k;
        const vtx_status status = find_root(value, &p, 3, 9, 1e-9, &x);
        EXPECT(status == VTX_NOT_CONVERGED && isnan(x));
        p.calls = 0;
        EXPECT_STATUS(find_minimum(value, &p, 3, 9, 1e-9, &x), VTX_NOT_CONVERGED);
        EXPECT(isnan(x));
    }
}

static void a_tolerance_below_rounding_still_ends(void)
{
    for (int shape = 0; shape < 7; shape++) {
        struct problem p = problem_at(shape, 1234.5678);
        double root = 0;
        EXPECT_OK(find_root(value, &p, 1100, 1300, 1e-300, &root));
        EXPECT_NEAR(root, 1234.5678, 1e-15);
    }
}

static double huge_step(double x, void *context)
{
    (void)context;
    return x < 0.3 ? -DBL_MAX : DBL_MAX;
}

static void the_largest_numbers_do_not_overflow(void)
{
    double root = 0;
    EXPECT_OK(find_root(huge_step, NULL, -1, 1, 1e-9, &root));
    EXPECT_WITHIN(root, 0.3, 2e-9);
}

/* Valleys: 0 parabola, 1 absolute value, 2 quartic, 3 flat floor */
static double valley(double x, void *context)
{
    struct problem *p = context;
    const double d = x - p->at;
    p->calls++;
    switch (p->shape) {
    case 0: return 3 + d * d;
    case 1: return fabs(d);
    case 2: return d * d * d * d + d * d - 1e3;
    default: return larger(fabs(d) - 1, 0);
    }
}

static void minima_of_many_valleys_are_found(void)
{
    struct random_state r;
    int most = 0;
    random_seed(&r, 12);
    for (int i = 0; i < 4000; i++) {
        struct problem p = problem_at(i % 4, random_uniform(&r, -10, 10));
        const double low = p.at - random_uniform(&r, 0, 30), high = p.at + random_uniform(&r, 0, 30);
        double x = 0;
        EXPECT_OK(find_minimum(valley, &p, low, high, 1e-7, &x));
        EXPECT(x >= low && x <= high);
        /* Flat to rounding within sqrt(3 eps) for the parabola on its pedestal of 3, sqrt(1e3 eps) for the quartic on 1e3. */
        const double flat = i % 4 == 3 ? 1 : i % 4 == 2 ? 5e-7 : i % 4 == 0 ? 3e-8 : 0;
        EXPECT_WITHIN(x, p.at, 1e-7 + 3e-8 * fabs(p.at) + flat);
        most = p.calls > most ? p.calls : most;
    }
    printf("\n    evaluations a minimum: most %d ", most);
    EXPECT(most <= 80);
}

static void an_end_may_be_the_minimum(void)
{
    struct problem p = problem_at(0, 7);
    double x = 0;
    EXPECT_OK(find_minimum(valley, &p, 7, 9, 1e-7, &x));
    EXPECT_WITHIN(x, 7, 2e-7);
    EXPECT_OK(find_minimum(valley, &p, 8, 9, 1e-7, &x));
    EXPECT_WITHIN(x, 8, 2e-7);
    EXPECT_OK(find_minimum(valley, &p, 3, 6, 1e-7, &x));
    EXPECT_WITHIN(x, 6, 2e-7);
    EXPECT_OK(find_minimum(valley, &p, 5, 5, 1e-7, &x));
    EXPECT(x == 5);
}

static double flat(double x, void *context)
{
    (void)x, (void)context;
    return 4;
}

static double two_valleys(double x, void *context)
{
    (void)context;
    return cos(x) + 0.05 * x;
}

static void flat_functions_do_not_reach_the_error_handler(void)
{
    double x = 0;
    EXPECT_STATUS(find_root(flat, NULL, 1, 2, 1e-9, &x), VTX_NO_SOLUTION);
    EXPECT_OK(find_minimum(flat, NULL, 1, 2, 1e-9, &x));
    EXPECT(x >= 1 && x <= 2);
}

static void the_deeper_of_two_valleys_is_followed(void)
{
    double x = 0;
    EXPECT_OK(find_minimum(two_valleys, NULL, 0, 12, 1e-8, &x));
    EXPECT_WITHIN(x, pi - asin(0.05), 2e-7);
}

/* GSL aborts the program when the ends of its bracket have one sign, which it finds out by asking again. */
static double turncoat(double x, void *context)
{
    int *calls = context;
    return ++*calls <= 2 ? x : fabs(x) + 1;
}

static void an_answer_that_changes_aborts_nothing(void)
{
    int calls = 0;
    double root;
    const vtx_status status = find_root(turncoat, &calls, -1, 1, 1e-9, &root);
    EXPECT(calls > 2 && (status != VTX_OK || (root >= -1 && root <= 1)));
}

static const struct test_case tests[] = {
    { "an answer that changes aborts nothing", an_answer_that_changes_aborts_nothing },
    { "roots of many functions are found", roots_of_many_functions_are_found },
    { "a root at an end is found", a_root_at_an_end_is_found },
    { "no change of sign is no solution", no_change_of_sign_is_no_solution },
    { "a bad bracket is refused before any evaluation", a_bad_bracket_is_refused_before_any_evaluation },
    { "a NaN objective ends the search", a_NaN_objective_ends_the_search },
    { "a tolerance below rounding still ends", a_tolerance_below_rounding_still_ends },
    { "the largest numbers do not overflow", the_largest_numbers_do_not_overflow },
    { "minima of many valleys are found", minima_of_many_valleys_are_found },
    { "an end may be the minimum", an_end_may_be_the_minimum },
    { "flat functions do not reach the error handler", flat_functions_do_not_reach_the_error_handler },
    { "the deeper of two valleys is followed", the_deeper_of_two_valleys_is_followed },
};
TEST_SUITE(root, tests);
