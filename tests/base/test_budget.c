/* Uncertainty budgets against the GUM's worked examples, by public calls alone. */
#include <vtx/budget.h>

#include "../harness/harness.h"

/* GUM H.1: length of an end gauge, nm: l_s, d, d_alpha, d_theta, alpha_s, theta. */
static void end_gauge(double *uncertainty, double *freedom)
{
    static const double comparison[3] = { 5.8, 3.9, 6.7 }, comparison_freedom[3] = { 24, 5, 8 }, one[3] = { 1, 1, 1 };
    const double length = 50000623, expansion = 11.5e-6, departure = -0.1;
    const double c[6] = { 1, 1, -length * departure, -length * expansion, 0, 0 };
    double u[6] = { 25, 0, 1e-6 / sqrt(3), 0.05 / sqrt(3), 2e-6 / sqrt(3), sqrt(0.2 * 0.2 + 0.5 * 0.5 / 2) };
    double freedoms[6] = { 18, 0, 0, 0, 0, 0 }, part[6];
    EXPECT_OK(vtx_combined_standard_uncertainty(one, comparison, NULL, 3, &u[1]));
    EXPECT_OK(vtx_effective_degrees_of_freedom(comparison, comparison_freedom, 3, &freedoms[1]));
    EXPECT_OK(vtx_type_b_degrees_of_freedom(0.1, &freedoms[2]));
    EXPECT_OK(vtx_type_b_degrees_of_freedom(0.5, &freedoms[3]));
    for (int i = 0; i < 6; i++)
        part[i] = c[i] * u[i];
    EXPECT_OK(vtx_combined_standard_uncertainty(c, u, NULL, 6, uncertainty));
    EXPECT_OK(vtx_effective_degrees_of_freedom(part, freedoms, 6, freedom));
}

/* GUM H.2: resistance, reactance and impedance from voltage, current and phase measured together. */
static const double sets[3][5] = {
    { 5.007, 4.994, 5.005, 4.990, 4.999 },
    { 19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3 },
    { 1.0456, 1.0438, 1.0468, 1.0428, 1.0433 },
};

struct impedance {
    double r[9], y[3], u[3], correlation[3][3];
};

static void find_impedance(struct impedance *z)
{
    double mean[3], u[3];
    for (int i = 0; i < 3; i++) {
        EXPECT_OK(vtx_type_a_uncertainty(sets[i], 5, &mean[i], &u[i], NULL));
        for (int j = 0; j < 3; j++)
            EXPECT_OK(vtx_correlation_of_means(sets[i], sets[j], 5, &z->r[3 * i + j]));
        z->r[4 * i] = 1;
    }
    const double ratio = mean[0] / mean[1], cosine = cos(mean[2]), sine = sin(mean[2]);
    const double c[3][3] = {
        { cosine / mean[1], -ratio * cosine / mean[1], -ratio * sine },
        { sine / mean[1], -ratio * sine / mean[1], ratio * cosine },
        { 1 / mean[1], -ratio / mean[1], 0 },
    };
    z->y[0] = ratio * cosine;
    z->y[1] = ratio * sine;
    z->y[2] = ratio;
    for (int i = 0; i < 3; i++)
        EXPECT_OK(vtx_combined_standard_uncertainty(c[i], u, z->r, 3, &z->u[i]));
    for (int i = 0; i < 3; i++)
        for (int j = 0; j < 3; j++) {
            EXPECT_OK(vtx_combined_covariance(c[i], c[j], u, z->r, 3, &z->correlation[i][j]));
            z->correlation[i][j] /= z->u[i] * z->u[j];
        }
}

static int end_gauge_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    double uncertainty, freedom, factor;
    end_gauge(&uncertainty, &freedom);
    if (strcmp(row->quantity, "end_gauge_uncertainty") == 0)
        *actual = uncertainty;
    else if (strcmp(row->quantity, "end_gauge_freedom") == 0)
        *actual = freedom;
    else if (strcmp(row->quantity, "end_gauge_expanded") == 0)
        vtx_coverage_factor(0.99, floor(freedom), &factor), *actual = factor * uncertainty;
    else if (strcmp(row->quantity, "end_gauge_expanded_rounded") == 0)
        vtx_coverage_factor(0.99, x[1], &factor), *actual = factor * x[0];
    else
        return 0;
    return 1;
}

static int budget_row(const struct data_row *row, double *actual)
{
    static const double one[3] = { 1, 1, 1 };
    const double *x = row->input;
    const int i = (int)x[0], j = (int)x[1];
    struct impedance z;
    find_impedance(&z);
    if (strcmp(row->quantity, "coverage_factor") == 0)
        return vtx_coverage_factor(x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "type_b_freedom") == 0)
        return vtx_type_b_degrees_of_freedom(x[0], actual), 1;
    if (strcmp(row->quantity, "effective_freedom") == 0)
        return vtx_effective_degrees_of_freedom((const double[]){ x[0], x[2], x[4] }, (const double[]){ x[1], x[3], x[5] }, 3, actual), 1;
    if (strcmp(row->quantity, "comparison_uncertainty") == 0)
        return vtx_combined_standard_uncertainty(one, x, NULL, 3, actual), 1;
    if (strcmp(row->quantity, "input_correlation") == 0)
        return *actual = z.r[3 * i + j], 1;
    if (strcmp(row->quantity, "impedance") == 0)
        return *actual = z.y[i], 1;
    if (strcmp(row->quantity, "impedance_uncertainty") == 0)
        return *actual = z.u[i], 1;
    if (strcmp(row->quantity, "impedance_correlation") == 0)
        return *actual = z.correlation[i][j], 1;
    return end_gauge_row(row, actual);
}

static void worked_examples_are_reproduced(void) { check_rows("budget.csv", budget_row, 56); }

/* The expansion takes over at 1e5 degrees of freedom without a step, and meets the normal law. */
static void the_coverage_factor_falls_steadily_to_the_normal_one(void)
{
    static const double coverage[] = { 0.1, 0.5, 0.95, 0.9999 };
    for (size_t i = 0; i < 4; i++) {
        double below, above, normal, last = (double)INFINITY;
        EXPECT_OK(vtx_coverage_factor(coverage[i], 0, &normal));
        EXPECT_OK(vtx_coverage_factor(coverage[i], 1e5, &below));
        EXPECT_OK(vtx_coverage_factor(coverage[i], 1e5 * (1 + 1e-12), &above));
        EXPECT_NEAR(above, below, 1e-11);
        EXPECT_OK(vtx_coverage_factor(coverage[i], 1e15, &above));
        EXPECT_NEAR(above, normal, 1e-14);
        for (double freedom = 1; freedom < 1e12; freedom *= 1.7) {
            EXPECT_OK(vtx_coverage_factor(coverage[i], freedom, &above));
            EXPECT(above < last && above > normal);
            last = above;
        }
    }
}

static void correlations_add_or_cancel(void)
{
    const double c[2] = { 2, -3 }, u[2] = { 0.5, 0.4 }, plus[4] = { 1, 1, 1, 1 }, minus[4] = { 1, -1, -1, 1 }, twin[2] = { 0.3, 0.3 }, difference[2] = { 1, -1 };
    const double impossible[9] = { 1, -1, -1, -1, 1, -1, -1, -1, 1 }, ones[3] = { 1, 1, 1 };
    double x;
    EXPECT_OK(vtx_combined_standard_uncertainty(c, u, plus, 2, &x));
    EXPECT_NEAR(x, 0.2, 1e-14);
    EXPECT_OK(vtx_combined_standard_uncertainty(c, u, minus, 2, &x));
    EXPECT_NEAR(x, 2.2, 1e-14);
    EXPECT_OK(vtx_combined_standard_uncertainty(difference, twin, plus, 2, &x));
    EXPECT(x == 0);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(ones, ones, impossible, 3, &x), VTX_BAD_ARGUMENT);
    EXPECT(isnan(x));
}

static void freedom_lies_between_the_least_and_the_sum(void)
{
    struct random_state r;
    random_seed(&r, 51);
    for (int i = 0; i < soak_count(2000); i++) {
        double part[4], freedom[4], effective, least = 1e9, sum = 0;
        for (int k = 0; k < 4; k++) {
            part[k] = random_log_uniform(&r, 1e-3, 1e3);
            freedom[k] = random_log_uniform(&r, 1, 1e3);
            least = fmin(least, freedom[k]);
            sum += freedom[k];
        }
        EXPECT_OK(vtx_effective_degrees_of_freedom(part, freedom, 4, &effective));
        EXPECT(effective > least * (1 - 1e-14) && effective < sum * (1 + 1e-14));
    }
    double effective;
    EXPECT_OK(vtx_effective_degrees_of_freedom((const double[]){ 1, 1e-30 }, (const double[]){ 0, 1 }, 2, &effective));
    EXPECT(effective == 0);
    EXPECT_OK(vtx_effective_degrees_of_freedom((const double[]){ 0, 0 }, (const double[]){ 3, 1 }, 2, &effective));
    EXPECT(effective == 0);
    EXPECT_OK(vtx_effective_degrees_of_freedom((const double[]){ -1e30 }, (const double[]){ 1 }, 1, &effective));
    EXPECT(effective == 1);
}

static void readings_that_do_not_vary_have_no_correlation(void)
{
    const double still[3] = { 5, 5, 5 }, moving[3] = { 1, 2, 4 }, opposite[3] = { -1e-200, -2e-200, -4e-200 };
    double mean, u, deviation, r;
    EXPECT_OK(vtx_type_a_uncertainty(still, 3, &mean, &u, &deviation));
    EXPECT(mean == 5 && u == 0 && deviation == 0);
    EXPECT_STATUS(vtx_correlation_of_means(still, moving, 3, &r), VTX_OUT_OF_RANGE);
    EXPECT(isnan(r));
    EXPECT_OK(vtx_correlation_of_means(moving, opposite, 3, &r));
    EXPECT_NEAR(r, -1, 1e-15);
    EXPECT_OK(vtx_type_a_uncertainty(opposite, 3, &mean, NULL, &deviation));
    EXPECT_NEAR(deviation, sqrt(7.0 / 3) * 1e-200, 1e-14);
}

static void misuse_is_refused_and_poisons(void)
{
    const double x[2] = { 1, 2 }, bad[2] = { 1, (double)NAN }, far[2] = { 1, 1e31 }, minus[2] = { 1, -1 }, lopsided[4] = { 1, 0.5, 0.4, 1 };
    const double off_diagonal[4] = { 0.9, 0, 0, 1 }, beyond[4] = { 1, 1.1, 1.1, 1 }, half[2] = { 1, 0.5 };
    double y = 1, u = 1, s = 1;
    EXPECT_STATUS(vtx_type_a_uncertainty(bad, 2, &y, &u, &s), VTX_BAD_ARGUMENT);
    EXPECT(isnan(y) && isnan(u) && isnan(s));
    EXPECT_STATUS(vtx_type_a_uncertainty(x, 1, &y, &u, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_type_a_uncertainty(NULL, 2, &y, &u, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_type_a_uncertainty(x, 2, NULL, &u, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_type_a_uncertainty(x, 100001, &y, &u, &s), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_type_a_uncertainty(far, 2, &y, &u, &s), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_correlation_of_means(x, NULL, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_correlation_of_means(x, x, 2, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, bad, NULL, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, minus, NULL, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, far, NULL, 2, &y), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, x, NULL, 0, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, x, NULL, 1001, &y), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, x, lopsided, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, x, off_diagonal, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, x, beyond, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_combined_standard_uncertainty(x, x, NULL, 2, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_combined_covariance(x, NULL, x, NULL, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT(isnan(y));
    EXPECT_STATUS(vtx_effective_degrees_of_freedom(x, half, 2, &y), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_effective_degrees_of_freedom(x, minus, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_effective_degrees_of_freedom(x, NULL, 2, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_coverage_factor(1, 5, &y), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_coverage_factor(95, 5, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_coverage_factor(0.95, 0.5, &y), VTX_OUT_OF_RANGE);
}

static const struct test_case tests[] = {
    { "worked examples are reproduced", worked_examples_are_reproduced },
    { "the coverage factor falls steadily to the normal one", the_coverage_factor_falls_steadily_to_the_normal_one },
    { "correlations add or cancel", correlations_add_or_cancel },
    { "freedom lies between the least and the sum", freedom_lies_between_the_least_and_the_sum },
    { "readings that do not vary have no correlation", readings_that_do_not_vary_have_no_correlation },
    { "misuse is refused and poisons", misuse_is_refused_and_poisons },
};
TEST_SUITE(budget, tests);
