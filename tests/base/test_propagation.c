/* Propagation of uncertainty against the GUM's worked examples. */
#include "../../libvtx/base/distribution.h"
#include "../../libvtx/base/propagation.h"
#include "../harness/harness.h"

/* GUM H.1: length of an end gauge, nm: l_s, d, d_alpha, d_theta, alpha_s, theta. */
static vtx_status end_gauge(const double *x, double *y, void *context)
{
    (void)context;
    y[0] = x[0] + x[1] - x[0] * (x[2] * x[5] + x[4] * x[3]);
    return VTX_OK;
}

static const double end_gauge_inputs[6] = { 50000623, 215, 0, 0, 11.5e-6, -0.1 };

static void end_gauge_uncertainties(double *u)
{
    u[0] = 25;
    u[1] = sqrt(square(5.8) + square(3.9) + square(6.7));
    u[2] = 1e-6 / sqrt(3);
    u[3] = 0.05 / sqrt(3);
    u[4] = 2e-6 / sqrt(3);
    u[5] = sqrt(square(0.2) + square(0.5) / 2);
}

/* Degrees of freedom of an uncertainty that one believes to a share of itself (GUM G.4.2). */
static double belief_freedom(double share) { return 1 / (2 * share * share); }

static double end_gauge_result(double *freedom)
{
    static const double comparison[3] = { 5.8, 3.9, 6.7 }, comparison_freedom[3] = { 24, 5, 8 };
    double u[6], y, c[6], part[6];
    const double freedoms[6] = { 18, effective_freedom(3, comparison, comparison_freedom), belief_freedom(0.1),
                                 belief_freedom(0.5), 0, 0 };
    end_gauge_uncertainties(u);
    EXPECT_OK(sensitivities(end_gauge, NULL, 6, end_gauge_inputs, u, 1, &y, c));
    for (int i = 0; i < 6; i++)
        part[i] = fabs(c[i]) * u[i];
    *freedom = effective_freedom(6, part, freedoms);
    return propagated_uncertainty(6, c, u, NULL);
}

static double end_gauge_second_order(void)
{
    double u[6];
    struct second_order r;
    end_gauge_uncertainties(u);
    EXPECT_OK(second_order_variance(end_gauge, NULL, 6, end_gauge_inputs, u, &r));
    return sqrt(r.first + r.extra);
}

/* NIST TN 1900 E13: expansion coefficient from lengths and temperatures L0 L1 T0 T1. */
static vtx_status expansion(const double *x, double *y, void *context)
{
    (void)context;
    y[0] = (x[1] - x[0]) / (x[0] * (x[3] - x[2]));
    return VTX_OK;
}

static double expansion_result(double *uncertainty)
{
    static const double x[4] = { 1.4999, 1.5021, 288.15, 373.10 }, u[4] = { 0.0001, 0.0002, 0.02, 0.05 };
    double y, c[4];
    EXPECT_OK(sensitivities(expansion, NULL, 4, x, u, 1, &y, c));
    *uncertainty = propagated_uncertainty(4, c, u, NULL);
    return y;
}

/* JCGM 101 9.2: half width of the interval about 0 that holds a share of the sum of equal quantities of standard uncertainty 1, from a
 * histogram of 4e6 draws: at 95 % a standard error of 1.9e-3 for four of them, 1.9e-4 for one rectangular one. */
static double simulated_half_width(int quantities, double share, int rectangular)
{
    enum { BINS = 8192, DRAWS = 4000000 };
    static long held[BINS + 1];
    const double width = 10.0 / BINS, limit = sqrt(3);
    struct random_state r;
    double below = 0;
    int bin = 0;
    memset(held, 0, sizeof held);
    random_seed(&r, 101);
    for (long i = 0; i < DRAWS; i++) {
        double sum = 0;
        for (int k = 0; k < quantities; k++)
            sum += rectangular ? random_uniform(&r, -limit, limit) : random_normal(&r);
        held[(int)fmin(fabs(sum) / width, BINS)]++;
    }
    while (below + (double)held[bin] < share * DRAWS)
        below += (double)held[bin++];
    return width * (bin + (share * DRAWS - below) / (double)held[bin]);
}

static double normal_sum_half_width(int quantities, double share)
{
    double c[PROPAGATED_MAX], u[PROPAGATED_MAX];
    for (int i = 0; i < quantities; i++)
        c[i] = u[i] = 1;
    return normal_quantile(0.5 + 0.5 * share) * propagated_uncertainty((size_t)quantities, c, u, NULL);
}

/* GUM H.2: resistance, reactance and impedance from voltage, current and phase measured together. */
static const double sets[3][5] = {
    { 5.007, 4.994, 5.005, 4.990, 4.999 },
    { 19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3 },
    { 1.0456, 1.0438, 1.0468, 1.0428, 1.0433 },
};

static vtx_status impedance(const double *x, double *y, void *context)
{
    (void)context;
    y[0] = x[0] / x[1] * cos(x[2]);
    y[1] = x[0] / x[1] * sin(x[2]);
    y[2] = x[0] / x[1];
    return VTX_OK;
}

struct impedance_result {
    double r[9], y[3], u[3], correlation[3][3];
};

static void impedance_results(struct impedance_result *out)
{
    double mean[3] = { 0 }, u[3], c[9];
    for (int i = 0; i < 3; i++)
        for (int k = 0; k < 5; k++)
            mean[i] += sets[i][k] / 5;
    for (int i = 0; i < 3; i++)
        for (int j = 0; j < 3; j++) {
            out->r[3 * i + j] = 0;
            for (int k = 0; k < 5; k++)
                out->r[3 * i + j] += (sets[i][k] - mean[i]) * (sets[j][k] - mean[j]) / 20;
        }
    for (int i = 0; i < 3; i++)
        u[i] = sqrt(out->r[4 * i]);
    for (int i = 0; i < 3; i++)
        for (int j = 0; j < 3; j++)
            out->r[3 * i + j] /= u[i] * u[j];
    EXPECT_OK(sensitivities(impedance, NULL, 3, mean, u, 3, out->y, c));
    for (int i = 0; i < 3; i++)
        out->u[i] = propagated_uncertainty(3, &c[3 * i], u, out->r);
    for (int i = 0; i < 3; i++)
        for (int j = 0; j < 3; j++)
            out->correlation[i][j] = propagated_covariance(3, &c[3 * i], &c[3 * j], u, out->r) / (out->u[i] * out->u[j]);
}

/* Rows of nonlinear results and of distributions. */
static int further_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    double uncertainty;
    if (strcmp(row->quantity, "end_gauge_expanded_rounded") == 0)
        *actual = x[0] * student_quantile(0.995, x[1]);
    else if (strcmp(row->quantity, "end_gauge_second_order") == 0)
        *actual = end_gauge_second_order();
    else if (strcmp(row->quantity, "belief_freedom") == 0)
        *actual = belief_freedom(x[0]);
    else if (strcmp(row->quantity, "expansion_coefficient") == 0)
        *actual = expansion_result(&uncertainty);
    else if (strcmp(row->quantity, "expansion_uncertainty") == 0)
        expansion_result(actual);
    else if (strcmp(row->quantity, "normal_sum_half_width") == 0)
        *actual = normal_sum_half_width((int)x[0], x[1]);
    else if (strcmp(row->quantity, "simulated_normal_half_width") == 0)
        *actual = simulated_half_width((int)x[0], x[1], 0);
    else if (strcmp(row->quantity, "simulated_rectangular_half_width") == 0)
        *actual = simulated_half_width((int)x[0], x[1], 1);
    else
        return 0;
    return 1;
}

static int propagation_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    const int i = (int)x[0], j = (int)x[1];
    struct impedance_result z;
    double y, freedom, uncertainty[3], freedoms[3];
    impedance_results(&z);
    if (strcmp(row->quantity, "end_gauge_length") == 0)
        end_gauge(end_gauge_inputs, &y, NULL), *actual = y;
    else if (strcmp(row->quantity, "end_gauge_comparison") == 0)
        *actual = propagated_uncertainty(3, (const double[3]){ 1, 1, 1 }, x, NULL);
    else if (strcmp(row->quantity, "end_gauge_uncertainty") == 0)
        *actual = end_gauge_result(&freedom);
    else if (strcmp(row->quantity, "end_gauge_freedom") == 0)
        end_gauge_result(&freedom), *actual = freedom;
    else if (strcmp(row->quantity, "end_gauge_expanded") == 0)
        *actual = end_gauge_result(&freedom) * student_quantile(0.995, floor(freedom));
    else if (strcmp(row->quantity, "effective_freedom") == 0) {
        for (int k = 0; k < 3; k++)
            uncertainty[k] = x[2 * k], freedoms[k] = x[2 * k + 1];
        *actual = effective_freedom(3, uncertainty, freedoms);
    } else if (strcmp(row->quantity, "impedance") == 0)
        *actual = z.y[i];
    else if (strcmp(row->quantity, "impedance_uncertainty") == 0)
        *actual = z.u[i];
    else if (strcmp(row->quantity, "impedance_correlation") == 0)
        *actual = z.correlation[i][j];
    else if (strcmp(row->quantity, "impedance_input_correlation") == 0)
        *actual = z.r[3 * i + j];
    else
        return further_row(row, actual);
    return 1;
}

static void worked_examples_are_reproduced(void) { check_rows("propagation.csv", propagation_row, 50); }

/* Ignoring the correlation of GUM H.2's inputs makes u(R) nearly three times too large. */
static void correlation_of_inputs_is_used(void)
{
    struct impedance_result z;
    const double x[3] = { 4.9990, 19.6610e-3, 1.04446 }, u[3] = { 0.0032, 0.0095e-3, 0.00075 };
    double y[3], c[9];
    impedance_results(&z);
    EXPECT_OK(sensitivities(impedance, NULL, 3, x, u, 3, y, c));
    EXPECT_WITHIN(propagated_uncertainty(3, c, u, NULL), 0.194, 0.001);
    EXPECT_WITHIN(propagated_uncertainty(3, c, u, z.r), 0.0707, 0.001);
}

/* Square root has no value below 0: the column falls back on the side that has. */
static vtx_status root_of(const double *x, double *y, void *context)
{
    (void)context;
    if (x[0] < 0)
        return VTX_OUT_OF_RANGE;
    y[0] = sqrt(x[0]) + 0 * x[1];
    return VTX_OK;
}

static void edges_of_the_domain_are_respected(void)
{
    const double at_edge[2] = { 0.01, 1 }, outside[2] = { -1, 1 }, u[2] = { 0.02, 0 };
    double y, c[2];
    EXPECT_OK(sensitivities(root_of, NULL, 2, at_edge, u, 1, &y, c));
    EXPECT_NEAR(c[0], (sqrt(0.03) - 0.1) / 0.02, 1e-12);
    EXPECT(c[1] == 0);
    EXPECT_STATUS(sensitivities(root_of, NULL, 2, outside, u, 1, &y, c), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(sensitivities(root_of, NULL, 2, at_edge, u, PROPAGATED_MAX + 1, &y, c), VTX_BAD_ARGUMENT);
}

/* Coefficients of x0^2, x0 x1, x0, x1 and x0^3. */
static vtx_status polynomial(const double *x, double *y, void *context)
{
    const double *k = context;
    y[0] = k[0] * x[0] * x[0] + k[1] * x[0] * x[1] + k[2] * x[0] + k[3] * x[1] + k[4] * x[0] * x[0] * x[0];
    return x[0] > 100 ? VTX_OUT_OF_RANGE : VTX_OK;
}

/* Moments of a normal law: a quadratic's variance ends with the second-order terms, x^3 lacks 15 u^6 only. */
static void second_order_is_exact_for_a_quadratic(void)
{
    struct random_state r;
    random_seed(&r, 7);
    for (int i = 0; i < 1000; i++) {
        double k[5] = { 0 };
        const double x[2] = { random_uniform(&r, -3, 3), random_uniform(&r, -3, 3) };
        const double u[2] = { random_log_uniform(&r, 0.01, 2), random_log_uniform(&r, 0.01, 2) };
        struct second_order s;
        for (int j = 0; j < 4; j++)
            k[j] = random_uniform(&r, -2, 2);
        EXPECT_OK(second_order_variance(polynomial, k, 2, x, u, &s));
        const double along = 2 * k[0] * x[0] + k[1] * x[1] + k[2], across = k[1] * x[0] + k[3];
        EXPECT_WITHIN(s.first, square(along * u[0]) + square(across * u[1]), 1e-10);
        EXPECT_WITHIN(s.extra, 2 * square(k[0] * u[0] * u[0]) + square(k[1] * u[0] * u[1]), 1e-10);
        EXPECT_WITHIN(s.mean_shift, k[0] * u[0] * u[0], 1e-11);
    }
    double cube[5] = { 0, 0, 0, 0, 1 };
    const double x[2] = { 2, 1 }, u[2] = { 0.3, 0 }, far[2] = { 99.5, 1 };
    struct second_order s;
    EXPECT_OK(second_order_variance(polynomial, cube, 2, x, u, &s));
    EXPECT_NEAR(s.first, 9 * 16 * 0.09, 1e-12);
    EXPECT_NEAR(s.extra, 36 * 4 * 0.0081, 1e-12);
    EXPECT_STATUS(second_order_variance(polynomial, cube, 2, far, u, &s), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(second_order_variance(polynomial, cube, PROPAGATED_MAX + 1, x, u, &s), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "worked examples are reproduced", worked_examples_are_reproduced },
    { "correlation of inputs is used", correlation_of_inputs_is_used },
    { "second order is exact for a quadratic", second_order_is_exact_for_a_quadratic },
    { "edges of the domain are respected", edges_of_the_domain_are_respected },
};
TEST_SUITE(propagation, tests);
