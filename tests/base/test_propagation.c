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

static double end_gauge_result(double *freedom)
{
    static const double comparison[3] = { 5.8, 3.9, 6.7 }, comparison_freedom[3] = { 24, 5, 8 };
    double u[6], y, c[6], part[6];
    const double freedoms[6] = { 18, effective_freedom(3, comparison, comparison_freedom), 50, 2, 0, 0 };
    end_gauge_uncertainties(u);
    EXPECT_OK(sensitivities(end_gauge, NULL, 6, end_gauge_inputs, u, 1, &y, c));
    for (int i = 0; i < 6; i++)
        part[i] = fabs(c[i]) * u[i];
    *freedom = effective_freedom(6, part, freedoms);
    return propagated_uncertainty(6, c, u, NULL);
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
        return 0;
    return 1;
}

static void worked_examples_are_reproduced(void) { check_rows("propagation.csv", propagation_row, 35); }

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

static const struct test_case tests[] = {
    { "worked examples are reproduced", worked_examples_are_reproduced },
    { "correlation of inputs is used", correlation_of_inputs_is_used },
    { "edges of the domain are respected", edges_of_the_domain_are_respected },
};
TEST_SUITE(propagation, tests);
