/* Logarithm and exponential without tables, against the C library in extended precision, whose own error may be half a unit. */
#include "../../libvtx/base/elementary.h"
#include "../harness/harness.h"

static const double ulp = 2.220446049250313e-16;

static void logarithms_are_good_to_the_last_digits(void)
{
    struct random_state r;
    double worst = 0;
    random_seed(&r, 1);
    for (int i = 0; i < 100000; i++) {
        const double x = i % 2 ? random_log_uniform(&r, 1e-40, 1e40) : random_log_uniform(&r, 0.5, 2);
        const long double exact = logl((long double)x);
        worst = larger(worst, (double)fabsl(((long double)natural_log(x) - exact) / exact));
    }
    EXPECT_WITHIN(worst, 0, 2 * ulp);
    EXPECT(natural_log(1) == 0);
}

static void logarithms_of_ratios_keep_their_digits_near_one(void)
{
    struct random_state r;
    double worst = 0;
    random_seed(&r, 2);
    for (int i = 0; i < 100000; i++) {
        const double b = random_log_uniform(&r, 1e3, 1e7);
        const double a = i % 2 ? b * random_log_uniform(&r, 1e-4, 1e4) : b * (1 + random_log_uniform(&r, 1e-15, 0.5));
        const long double difference = ((long double)a - (long double)b) / (long double)b;
        const long double exact = log1pl(difference);
        if (a != b)
            worst = larger(worst, (double)fabsl(((long double)log_ratio(a, b) - exact) / exact));
    }
    EXPECT_WITHIN(worst, 0, 2 * ulp);
    EXPECT(log_ratio(3e5, 3e5) == 0);
}

static void decay_is_good_to_the_last_digits(void)
{
    struct random_state r;
    double worst = 0;
    random_seed(&r, 3);
    for (int i = 0; i < 100000; i++) {
        const double x = random_log_uniform(&r, 1e-20, 100);
        const long double exact = -expm1l(-(long double)x);
        worst = larger(worst, (double)fabsl(((long double)decay(x) - exact) / exact));
    }
    EXPECT_WITHIN(worst, 0, 2 * ulp);
    EXPECT(decay(0) == 0);
}

static void exponentials_are_good_to_the_last_digits(void)
{
    struct random_state r;
    double worst = 0, x, y;
    random_seed(&r, 4);
    for (int i = 0; i < 100000; i++) {
        const double a = random_uniform(&r, -700, 700), b = random_uniform(&r, -2, 2);
        two_exponentials(a, b, &x, &y);
        const long double first = expl((long double)a), second = expl((long double)b);
        worst = larger(worst, larger((double)fabsl(((long double)x - first) / first), (double)fabsl(((long double)y - second) / second)));
    }
    EXPECT_WITHIN(worst, 0, 2 * ulp);
    two_exponentials(0, 0, &x, &y);
    EXPECT(x == 1 && y == 1);
}

static const struct test_case tests[] = {
    { "logarithms are good to the last digits", logarithms_are_good_to_the_last_digits },
    { "logarithms of ratios keep their digits near one", logarithms_of_ratios_keep_their_digits_near_one },
    { "exponentials are good to the last digits", exponentials_are_good_to_the_last_digits },
    { "decay is good to the last digits", decay_is_good_to_the_last_digits },
};
TEST_SUITE(elementary, tests);
