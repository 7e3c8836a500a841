/* Probabilities and quantiles against published values and their own laws. */
#include "../../libvtx/base/distribution.h"
#include "../harness/harness.h"

static int distribution_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    if (strcmp(row->quantity, "normal_probability") == 0)
        *actual = normal_probability(x[0]);
    else if (strcmp(row->quantity, "normal_between") == 0)
        *actual = normal_probability(x[1]) - normal_probability(x[0]);
    else if (strcmp(row->quantity, "normal_quantile") == 0)
        *actual = normal_quantile(x[0]);
    else if (strcmp(row->quantity, "student_probability") == 0)
        *actual = student_probability(x[0], x[1]);
    else if (strcmp(row->quantity, "student_quantile") == 0)
        *actual = student_quantile(x[0], x[1]);
    else if (strcmp(row->quantity, "chi_square_exceedance") == 0)
        *actual = chi_square_exceedance(x[0], x[1]);
    else
        return 0;
    return 1;
}

static void published_values_are_reproduced(void) { check_rows("distribution.csv", distribution_row, 19); }

static void quantiles_undo_probabilities(void)
{
    struct random_state r;
    random_seed(&r, 1);
    for (int i = 0; i < 2000; i++) {
        const double p = random_uniform(&r, 0, 1) < 0.5 ? random_log_uniform(&r, 1e-12, 0.5) : random_uniform(&r, 0.001, 0.999);
        const double freedom = random_log_uniform(&r, 0.5, 1e5);
        EXPECT_NEAR(normal_probability(normal_quantile(p)), p, 1e-13);
        EXPECT_NEAR(student_probability(student_quantile(p, freedom), freedom), p, 1e-10);
    }
}

static void student_becomes_normal(void)
{
    for (double t = -6; t <= 6; t += 0.5) {
        EXPECT_WITHIN(student_probability(t, 1e5), normal_probability(t), 1e-5);
        EXPECT_WITHIN(student_probability(t, 7.5) + student_probability(-t, 7.5), 1, 1e-14);
    }
}

/* A sum of independent chi-squares of 2 degrees of freedom each is Erlang's law: a finite sum. */
static void chi_square_of_even_freedom_is_a_finite_sum(void)
{
    for (int pairs = 1; pairs <= 40; pairs++)
        for (double x = 0.1; x < 300; x *= 1.7) {
            double term = exp(-0.5 * x), sum = term;
            for (int k = 1; k < pairs; k++)
                sum += term *= 0.5 * x / k;
            EXPECT_NEAR(chi_square_exceedance(x, 2.0 * pairs), sum, 1e-12);
        }
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "quantiles undo probabilities", quantiles_undo_probabilities },
    { "Student's law becomes normal, and is symmetric", student_becomes_normal },
    { "chi-square of even freedom is a finite sum", chi_square_of_even_freedom_is_a_finite_sum },
};
TEST_SUITE(distribution, tests);
