/* The fitting engine against certified regression sets, worked examples and its own laws. */
#include "../../libvtx/base/distribution.h"
#include "../../libvtx/base/least_squares.h"
#include "../../libvtx/base/robust.h"
#include "../../libvtx/base/root.h"
#include "../harness/harness.h"

enum { POINTS_MAX = 64, WORKSPACE = 2000 };

/* A regression set: y against x by a model with up to four parameters. */
struct set {
    double (*curve)(double x, const double *b);
    double x[POINTS_MAX], y[POINTS_MAX], start[2][4], certified[4], deviation[4], sum_of_squares;
    size_t points, parameters, left_out; /* left_out: index + 1 of a point that is not fitted, 0 for none */
    double workspace[WORKSPACE];
};

static double misra1a(double x, const double *b) { return b[0] * (1 - exp(-b[1] * x)); }
static double misra1b(double x, const double *b) { return b[0] * (1 - pow(1 + 0.5 * b[1] * x, -2)); }
static double danwood(double x, const double *b) { return b[0] * pow(x, b[1]); }
static double chwirut2(double x, const double *b) { return exp(-b[0] * x) / (b[1] + b[2] * x); }
static double mgh09(double x, const double *b) { return b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]); }
static double line(double x, const double *b) { return b[0] + b[1] * x; }

static const struct certified {
    const char *file;
    double (*curve)(double x, const double *b);
    size_t points, parameters;
    int hard; /* may end at a work limit from the first start */
} certified_sets[] = {
    { "strd_misra1a.csv", misra1a, 14, 2, 0 },   { "strd_misra1b.csv", misra1b, 14, 2, 0 }, { "strd_danwood.csv", danwood, 6, 2, 0 },
    { "strd_chwirut2.csv", chwirut2, 54, 3, 0 }, { "strd_boxbod.csv", misra1a, 6, 2, 1 },   { "strd_mgh09.csv", mgh09, 11, 4, 1 },
};

static vtx_status set_residuals(const double *b, double *residual, void *context)
{
    const struct set *s = context;
    for (size_t i = 0; i < s->points; i++)
        residual[i] = i + 1 == s->left_out ? 0 : s->curve(s->x[i], b) - s->y[i];
    return VTX_OK;
}

static void read_set(const struct certified *c, struct set *s)
{
    char text[400], number[16];
    double a, b, d, e;
    FILE *stream = fopen(data_path(c->file), "r");
    memset(s, 0, sizeof *s);
    s->curve = c->curve;
    EXPECT(stream != NULL);
    while (stream && fgets(text, sizeof text, stream)) {
        if (sscanf(text, "# b%15[0-9],%lf,%lf,%lf,%lf", number, &a, &b, &d, &e) == 5) {
            s->start[0][s->parameters] = a;
            s->start[1][s->parameters] = b;
            s->certified[s->parameters] = d;
            s->deviation[s->parameters++] = e;
        } else if (sscanf(text, "# residual_sum_of_squares,%lf", &a) == 1) {
            s->sum_of_squares = a;
        } else if (text[0] != '#' && sscanf(text, "%lf,%lf", &a, &b) == 2 && s->points < POINTS_MAX) {
            s->y[s->points] = a;
            s->x[s->points++] = b;
        }
    }
    if (stream)
        fclose(stream);
    EXPECT(s->points == c->points && s->parameters == c->parameters);
}

static struct least_squares fit_of(struct set *s, const double *start)
{
    struct least_squares fit = { .residuals = set_residuals, .context = s, .rows = s->points, .parameters = s->parameters,
                                 .workspace = s->workspace, .workspace_length = WORKSPACE, .evaluations_max = 3000 };
    memcpy(fit.parameter, start, s->parameters * sizeof(double));
    return fit;
}

static double residual_variance(const struct least_squares *fit)
{
    return fit->sum_of_squares / (double)(fit->rows - fit->free);
}

static void certified_parameters_are_reached_from_both_starts(void)
{
    static struct set s;
    for (size_t k = 0; k < sizeof certified_sets / sizeof certified_sets[0]; k++)
        for (int start = 0; start < 2; start++) {
            read_set(&certified_sets[k], &s);
            struct least_squares fit = fit_of(&s, s.start[start]);
            EXPECT_OK(fit_least_squares(&fit));
            EXPECT_NEAR(fit.sum_of_squares, s.sum_of_squares, 1e-9);
            for (size_t p = 0; p < s.parameters; p++) {
                EXPECT_NEAR(fit.parameter[p], s.certified[p], 1e-6);
                EXPECT_NEAR(sqrt(residual_variance(&fit) * fit.covariance[p][p]), s.deviation[p], 1e-6);
            }
        }
}

/* A limit of a few dozen evaluations stops the hard sets on their way. */
static void a_work_limit_is_told_and_never_passed_off_as_an_answer(void)
{
    static struct set s;
    for (size_t k = 0; k < sizeof certified_sets / sizeof certified_sets[0]; k++)
        for (int32_t limit = 1; limit < 300; limit += limit < 60 ? 1 : 40) {
            read_set(&certified_sets[k], &s);
            struct least_squares fit = fit_of(&s, s.start[0]);
            fit.evaluations_max = limit;
            const vtx_status status = fit_least_squares(&fit);
            if (status == VTX_OK) {
                for (size_t p = 0; p < s.parameters; p++)
                    EXPECT_NEAR(fit.parameter[p], s.certified[p], 1e-6);
            } else {
                EXPECT_STATUS(status, VTX_NOT_CONVERGED);
                EXPECT(fit.stopped_by == STOPPED_BY_WORK);
                EXPECT(fit.evaluations <= limit + 2 * (int32_t)s.parameters + 1);
            }
            if (certified_sets[k].hard)
                EXPECT(status != VTX_OK || limit > 60);
        }
}

/* GUM H.3: correction of a thermometer against its reading, temperatures counted from t0. */
static void thermometer(struct set *s, double t0, struct least_squares *fit)
{
    static const double t[11] = { 21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511 };
    static const double b[11] = { -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160 };
    static const double start[2] = { 0, 0 };
    memset(s, 0, sizeof *s);
    s->curve = line;
    s->points = 11;
    s->parameters = 2;
    for (size_t i = 0; i < 11; i++) {
        s->x[i] = t[i] - t0;
        s->y[i] = b[i];
    }
    *fit = fit_of(s, start);
    EXPECT_OK(fit_least_squares(fit));
}

static double press_by_leverage(const struct least_squares *fit)
{
    double sum = 0;
    for (size_t i = 0; i < fit->rows; i++)
        sum += square(fit->residual[i] / (1 - hat_element(fit, i, i)));
    return sum;
}

static double press_by_refitting(struct set *s)
{
    double sum = 0;
    for (size_t i = 0; i < s->points; i++) {
        s->left_out = i + 1;
        struct least_squares fit = fit_of(s, s->certified);
        EXPECT_OK(fit_least_squares(&fit));
        sum += square(s->curve(s->x[i], fit.parameter) - s->y[i]);
    }
    return sum;
}

/* RSS with the second parameter held, less what a 95 % profile allows: 1 + F_0.95(1, n - p) / (n - p), F the square of t. */
static double above_profile_limit(double b2, void *context)
{
    struct set *s = context;
    static const int32_t held[2] = { 0, 1 };
    const double start[2] = { s->certified[0], b2 }, freedom = (double)(s->points - s->parameters);
    struct least_squares fit = fit_of(s, start);
    fit.held = held;
    EXPECT_OK(fit_least_squares(&fit));
    EXPECT(fit.parameter[1] == b2 && fit.covariance[1][1] == 0);
    return fit.sum_of_squares - s->sum_of_squares * (1 + square(student_quantile(0.975, freedom)) / freedom);
}

static double correlation(const struct least_squares *fit, size_t a, size_t b)
{
    return fit->covariance[a][b] / sqrt(fit->covariance[a][a] * fit->covariance[b][b]);
}

static int thermometer_row(const struct data_row *row, double *actual)
{
    static struct set s;
    struct least_squares fit;
    const double x = row->input[0], gradient[2] = { 1, x - 20 };
    thermometer(&s, strcmp(row->quantity, "thermometer_condition") == 0 ? x : 20, &fit);
    const double variance = residual_variance(&fit);
    if (strcmp(row->quantity, "thermometer_line") == 0)
        *actual = fit.parameter[(int)x];
    else if (strcmp(row->quantity, "thermometer_deviation") == 0)
        *actual = sqrt(variance * fit.covariance[(int)x][(int)x]);
    else if (strcmp(row->quantity, "thermometer_correlation") == 0)
        *actual = correlation(&fit, 0, 1);
    else if (strcmp(row->quantity, "thermometer_residual_deviation") == 0)
        *actual = sqrt(variance);
    else if (strcmp(row->quantity, "thermometer_correction") == 0)
        *actual = line(x - 20, fit.parameter);
    else if (strcmp(row->quantity, "thermometer_correction_deviation") == 0)
        *actual = sqrt(variance) * derived_deviation(&fit, gradient);
    else if (strcmp(row->quantity, "thermometer_press") == 0)
        *actual = press_by_leverage(&fit);
    else if (strcmp(row->quantity, "thermometer_condition") == 0)
        *actual = fit.condition;
    else
        return 0;
    return 1;
}

static int misra_row(const struct data_row *row, double *actual)
{
    static struct set s, other;
    read_set(&certified_sets[0], &s);
    struct least_squares fit = fit_of(&s, s.start[1]);
    EXPECT_OK(fit_least_squares(&fit));
    const double x = row->input[0], decay = exp(-fit.parameter[1] * x);
    const double gradient[2] = { 1 - decay, fit.parameter[0] * x * decay };
    const double deviation = sqrt(residual_variance(&fit)), t = student_quantile(0.975, 12);
    if (strcmp(row->quantity, "misra_prediction") == 0)
        *actual = misra1a(x, fit.parameter);
    else if (strcmp(row->quantity, "misra_curve_half_width") == 0)
        *actual = t * deviation * derived_deviation(&fit, gradient);
    else if (strcmp(row->quantity, "misra_reading_half_width") == 0)
        *actual = t * deviation * sqrt(1 + square(derived_deviation(&fit, gradient)));
    else if (strcmp(row->quantity, "misra_correlation") == 0)
        *actual = correlation(&fit, 0, 1);
    else if (strcmp(row->quantity, "misra_condition") == 0)
        *actual = fit.condition;
    else if (strcmp(row->quantity, "misra_press_by_leverage") == 0)
        *actual = press_by_leverage(&fit);
    else if (strcmp(row->quantity, "misra_press_by_refitting") == 0)
        *actual = press_by_refitting(&s);
    else if (strcmp(row->quantity, "misra_profile") == 0)
        EXPECT_OK(find_root(above_profile_limit, &s, x > 0 ? s.certified[1] : 5e-4, x > 0 ? 6e-4 : s.certified[1], 1e-14, actual));
    else if (strcmp(row->quantity, "misra_akaike_gain") == 0) {
        read_set(&certified_sets[1], &other);
        struct least_squares rival = fit_of(&other, other.start[1]);
        EXPECT_OK(fit_least_squares(&rival));
        *actual = akaike_corrected(fit.sum_of_squares, 14, 2) - akaike_corrected(rival.sum_of_squares, 14, 2);
    } else
        return 0;
    return 1;
}

static int mgh_row(const struct data_row *row, double *actual)
{
    static struct set s;
    read_set(&certified_sets[5], &s);
    struct least_squares fit = fit_of(&s, s.start[1]);
    EXPECT_OK(fit_least_squares(&fit));
    *actual = fit.condition;
    if (strcmp(row->quantity, "mgh_condition") == 0)
        return 1;
    *actual = 0;
    for (size_t a = 0; a < 4; a++)
        for (size_t b = 0; b < a; b++)
            *actual = larger(*actual, fabs(correlation(&fit, a, b)));
    return strcmp(row->quantity, "mgh_largest_correlation") == 0;
}

/* Asymptotic efficiency with normal errors, E[psi']^2 / E[psi^2]; E[psi'] = E[z psi] by parts. Simpson's rule. */
static double efficiency(double (*weight)(double))
{
    double slope = 0, square_of_psi = 0;
    const int n = 4000;
    for (int i = 0; i <= n; i++) {
        const double z = -10 + 20.0 * i / n, psi = weight(z) * z;
        const double part = (i == 0 || i == n ? 1 : i % 2 ? 4 : 2) * (20.0 / n / 3) * exp(-0.5 * z * z) / sqrt(2 * pi);
        slope += part * z * psi;
        square_of_psi += part * psi * psi;
    }
    return slope * slope / square_of_psi;
}

static int fitting_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    if (strncmp(row->quantity, "thermometer_", 12) == 0)
        return thermometer_row(row, actual);
    if (strncmp(row->quantity, "misra_", 6) == 0)
        return misra_row(row, actual);
    if (strncmp(row->quantity, "mgh_", 4) == 0)
        return mgh_row(row, actual);
    if (strcmp(row->quantity, "akaike_corrected") == 0)
        *actual = akaike_corrected(x[0], (size_t)x[1], (size_t)x[2]);
    else if (strcmp(row->quantity, "huber_efficiency") == 0)
        *actual = x[0] == HUBER_TUNING ? efficiency(huber_weight) : (double)NAN;
    else if (strcmp(row->quantity, "tukey_efficiency") == 0)
        *actual = x[0] == TUKEY_TUNING ? efficiency(tukey_weight) : (double)NAN;
    else if (strcmp(row->quantity, "median_to_deviation") == 0)
        *actual = MEDIAN_TO_DEVIATION;
    else
        return 0;
    return 1;
}

static void worked_examples_are_reproduced(void) { check_rows("fitting.csv", fitting_row, 33); }

/* What is left of a parabola over a fitted line has neither mean nor slope. */
static void project_out_leaves_what_the_fit_cannot_explain(void)
{
    static struct set s;
    struct least_squares fit;
    double column[11], sum = 0, moment = 0;
    thermometer(&s, 24, &fit);
    for (int i = 0; i < 11; i++)
        column[i] = 3 + 2 * s.x[i];
    project_out(&fit, column);
    for (int i = 0; i < 11; i++)
        EXPECT_WITHIN(column[i], 0, 1e-8); /* central differences: 1e-10 of a column */
    for (int i = 0; i < 11; i++)
        column[i] = square(s.x[i]);
    project_out(&fit, column);
    for (int i = 0; i < 11; i++) {
        sum += column[i];
        moment += column[i] * s.x[i];
    }
    EXPECT_WITHIN(sum, 0, 1e-8);
    EXPECT_WITHIN(moment, 0, 1e-8);
    EXPECT(fabs(column[0]) > 1);
}

/* Two columns that are one, and a parameter that does nothing. */
static vtx_status collinear(const double *b, double *residual, void *context)
{
    (void)context;
    for (int i = 0; i < 6; i++)
        residual[i] = (b[0] + b[2]) * i + b[1] - (2.0 * i + 1 + (i % 2 ? 0.1 : -0.1)) + 0 * b[3];
    return VTX_OK;
}

static void a_parameter_that_cannot_be_told_is_named(void)
{
    double workspace[100];
    struct least_squares fit = { .residuals = collinear, .rows = 6, .parameters = 4, .workspace = workspace, .workspace_length = 100,
                                 .parameter = { 0.5, 0, 0.25, 7 } };
    EXPECT_OK(fit_least_squares(&fit));
    EXPECT(fit.free == 2 && fit.frozen[3] && !fit.frozen[1] && fit.frozen[0] + fit.frozen[2] == 1);
    EXPECT_WITHIN(fit.parameter[0] + fit.parameter[2], 2.0 + 0.6 / 35, 0.02);
    EXPECT(fit.parameter[3] == 7 && fit.covariance[3][3] == 0);
    EXPECT(fit.condition > 1e12);
    double trace = 0;
    for (size_t i = 0; i < 6; i++)
        trace += hat_element(&fit, i, i);
    EXPECT_NEAR(trace, 2, 1e-12);
}

/* Weighted with 4 must equal the row given twice at twice its size: the same sum of squares, covariance and leverage. */
static vtx_status scaled_line(const double *b, double *residual, void *context)
{
    const double *factor = context;
    for (int i = 0; i < 5; i++)
        residual[i] = factor[i] * (exp(b[0] * i) + b[1] - (i == 2 ? 3.2 : 1 + exp(0.4 * i)));
    return VTX_OK;
}

static vtx_status scaled_line_jacobian(const double *b, double *jacobian, void *context)
{
    const double *factor = context;
    for (int i = 0; i < 5; i++) {
        jacobian[2 * i] = factor[i] * i * exp(b[0] * i);
        jacobian[2 * i + 1] = factor[i];
    }
    return VTX_OK;
}

static void weights_scale_rows_and_given_derivatives_agree(void)
{
    double factor[5] = { 1, 2, 1, 0.5, 3 }, ones[5] = { 1, 1, 1, 1, 1 }, weight[5], room_a[60], room_b[60];
    for (int i = 0; i < 5; i++)
        weight[i] = factor[i] * factor[i];
    struct least_squares a = { .residuals = scaled_line, .context = factor, .rows = 5, .parameters = 2, .workspace = room_a,
                               .workspace_length = 60, .parameter = { 0.3, 0 } };
    struct least_squares b = { .residuals = scaled_line, .jacobian = scaled_line_jacobian, .context = ones, .rows = 5, .parameters = 2,
                               .weight = weight, .workspace = room_b, .workspace_length = 60, .parameter = { 0.3, 0 } };
    EXPECT_OK(fit_least_squares(&a));
    EXPECT_OK(fit_least_squares(&b));
    EXPECT_NEAR(a.sum_of_squares, b.sum_of_squares, 1e-9);
    for (size_t k = 0; k < 2; k++) {
        EXPECT_NEAR(a.parameter[k], b.parameter[k], 1e-8);
        EXPECT_NEAR(a.covariance[k][0], b.covariance[k][0], 1e-7);
        EXPECT_NEAR(hat_element(&a, k, 4), hat_element(&b, k, 4), 1e-7);
    }
    const int32_t held[2] = { 1, 0 };
    b.held = held;
    b.parameter[0] = 0.4;
    EXPECT_OK(fit_least_squares(&b));
    EXPECT(b.parameter[0] == 0.4 && b.free == 1);
    EXPECT_NEAR(b.covariance[1][1], 1 / (1 + 4 + 1 + 0.25 + 9), 1e-12);
}

/* Exact data leave nothing to compare an offset with: the step ends the search. */
static void exact_data_give_the_exact_answer(void)
{
    static struct set s;
    struct random_state r;
    random_seed(&r, 5);
    for (int trial = 0; trial < 200; trial++) {
        const double truth[4] = { random_uniform(&r, 0.5, 2), random_uniform(&r, 0.1, 1), 0, 0 };
        const double start[4] = { random_uniform(&r, 0.5, 2), random_uniform(&r, 0.1, 1), 0, 0 };
        memset(&s, 0, sizeof s);
        s.curve = misra1a;
        s.points = trial % 2 ? 2 : 8;
        s.parameters = 2;
        for (size_t i = 0; i < s.points; i++) {
            s.x[i] = 0.5 + (double)i;
            s.y[i] = misra1a(s.x[i], truth);
        }
        struct least_squares fit = fit_of(&s, start);
        EXPECT_OK(fit_least_squares(&fit));
        EXPECT_NEAR(fit.parameter[0], truth[0], 1e-8);
        EXPECT_NEAR(fit.parameter[1], truth[1], 1e-8);
    }
}

static vtx_status no_value(const double *b, double *residual, void *context)
{
    (void)context;
    residual[0] = residual[1] = b[0];
    return VTX_OUT_OF_RANGE;
}

static vtx_status not_a_number(const double *b, double *residual, void *context)
{
    (void)context;
    residual[0] = b[0];
    residual[1] = (double)NAN;
    return VTX_OK;
}

static void misuse_is_answered(void)
{
    double workspace[10];
    struct least_squares fit = { .residuals = no_value, .rows = 2, .parameters = 1, .workspace = workspace, .workspace_length = 10,
                                 .parameter = { 1 } };
    EXPECT(least_squares_workspace(2, 1) == 10);
    EXPECT_STATUS(fit_least_squares(&fit), VTX_NOT_CONVERGED);
    EXPECT(fit.stopped_by == STOPPED_BY_FAILURE);
    fit.residuals = not_a_number;
    EXPECT_STATUS(fit_least_squares(&fit), VTX_NOT_CONVERGED);
    fit.workspace_length = 9;
    EXPECT_STATUS(fit_least_squares(&fit), VTX_NO_MEMORY);
    fit.workspace_length = 10;
    fit.parameter[0] = (double)NAN;
    EXPECT_STATUS(fit_least_squares(&fit), VTX_BAD_ARGUMENT);
    fit.parameter[0] = 1;
    fit.parameters = 3;
    EXPECT_STATUS(fit_least_squares(&fit), VTX_BAD_ARGUMENT);
    fit.parameters = PARAMETERS_MAX + 1;
    EXPECT_STATUS(fit_least_squares(&fit), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "certified parameters are reached from both starts", certified_parameters_are_reached_from_both_starts },
    { "a work limit is told and never passed off as an answer", a_work_limit_is_told_and_never_passed_off_as_an_answer },
    { "worked examples are reproduced", worked_examples_are_reproduced },
    { "project_out leaves what the fit cannot explain", project_out_leaves_what_the_fit_cannot_explain },
    { "a parameter that cannot be told is named", a_parameter_that_cannot_be_told_is_named },
    { "weights scale rows, and given derivatives agree with differences", weights_scale_rows_and_given_derivatives_agree },
    { "exact data give the exact answer", exact_data_give_the_exact_answer },
    { "misuse is answered", misuse_is_answered },
};
TEST_SUITE(least_squares, tests);
