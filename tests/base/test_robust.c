/* Robust fitting: it agrees with least squares on good data and forgets gross errors. */
#include "../../libvtx/base/robust.h"
#include "../harness/harness.h"

enum { ROWS = 40 };

struct line_data {
    double x[ROWS], y[ROWS];
};

static vtx_status line_residuals(const double *b, double *residual, void *context)
{
    const struct line_data *d = context;
    for (int i = 0; i < ROWS; i++)
        residual[i] = b[0] + b[1] * d->x[i] - d->y[i];
    return VTX_OK;
}

static void draw(struct line_data *d, struct random_state *r, double deviation)
{
    for (int i = 0; i < ROWS; i++) {
        d->x[i] = i / (double)ROWS;
        d->y[i] = 1 + 2 * d->x[i] + deviation * random_normal(r);
    }
}

static void fit_line(struct line_data *d, const int32_t *group, double floor, struct least_squares *fit, struct robust_fit *robust)
{
    static double workspace[ROWS * 7], weight[ROWS], raw[ROWS];
    *fit = (struct least_squares){ .residuals = line_residuals, .context = d, .rows = ROWS, .parameters = 2, .workspace = workspace,
                                   .workspace_length = ROWS * 7 };
    *robust = (struct robust_fit){ .fit = fit, .group = group, .scale_floor = floor, .weight = weight, .raw = raw };
    EXPECT_OK(fit_robustly(robust));
}

static void gross_errors_are_forgotten(void)
{
    struct random_state r;
    struct line_data d;
    struct least_squares fit;
    struct robust_fit robust;
    random_seed(&r, 11);
    for (int trial = 0; trial < 100; trial++) {
        draw(&d, &r, 0.1);
        for (int k = 0; k < 6; k++)
            d.y[6 * k + trial % 6] += random_uniform(&r, 0, 1) < 0.5 ? 50 : 3;
        fit_line(&d, NULL, 0, &fit, &robust);
        EXPECT_WITHIN(fit.parameter[0], 1, 0.25);
        EXPECT_WITHIN(fit.parameter[1], 2, 0.4);
        EXPECT(robust.scale > 0.05 && robust.scale < 0.3);
        for (int k = 0; k < 6; k++)
            EXPECT(robust.weight[6 * k + trial % 6] == 0);
    }
}

/* Mean square errors over 2000 draws: 95 % efficient in the limit, and the stated covariance is that of the estimate. */
static void good_data_cost_five_percent(void)
{
    struct random_state r;
    struct line_data d;
    struct least_squares fit;
    struct robust_fit robust;
    double error = 0, stated = 0;
    const int draws = 2000;
    random_seed(&r, 12);
    for (int i = 0; i < draws; i++) {
        draw(&d, &r, 0.1);
        fit_line(&d, NULL, 0, &fit, &robust);
        error += square(fit.parameter[1] - 2) / draws;
        stated += robust.variance_factor * fit.covariance[1][1] / draws;
    }
    /* Least squares: s^2 / sum (x - mean)^2. A mean of 2000 squares has a standard deviation of 3.2 %. */
    const double least = 0.01 / (ROWS * (1 - 1.0 / ROWS / ROWS) / 12);
    EXPECT(error > 0.9 * least && error < 1.25 * least);
    EXPECT_NEAR(stated, error, 0.13);
}

/* Rows of one reading stand and fall together; rows of group -1 are never weighted down; a floor keeps small scatter from looking large. */
static void groups_and_floor_are_obeyed(void)
{
    struct random_state r;
    struct line_data d;
    struct least_squares fit;
    struct robust_fit robust;
    int32_t group[ROWS];
    random_seed(&r, 13);
    draw(&d, &r, 0.1);
    for (int i = 0; i < ROWS; i++)
        group[i] = i < 2 ? -1 : i / 2;
    d.y[21] += 5;
    fit_line(&d, group, 0, &fit, &robust);
    EXPECT(robust.weight[20] == 0 && robust.weight[21] == 0);
    EXPECT(robust.weight[0] == 1 && robust.weight[1] == 1);
    for (int i = 0; i < ROWS; i += 2)
        EXPECT(robust.weight[i] == robust.weight[i + 1]);
    fit_line(&d, NULL, 1, &fit, &robust);
    EXPECT(robust.scale == 1);
    for (int i = 0; i < ROWS; i++)
        EXPECT((robust.weight[i] > 0.9) == (i != 21));
}

/* More than half of the readings exact: the scale is rounding or zero, and nothing divides by it. */
static void exact_data_survive(void)
{
    struct random_state r;
    struct line_data d;
    struct least_squares fit;
    struct robust_fit robust;
    random_seed(&r, 14);
    draw(&d, &r, 0);
    fit_line(&d, NULL, 0, &fit, &robust);
    EXPECT_WITHIN(fit.parameter[1], 2, 1e-10);
    fit_line(&d, NULL, 1, &fit, &robust);
    EXPECT_WITHIN(fit.parameter[0], 1, 1e-10);
}

static const struct test_case tests[] = {
    { "gross errors are forgotten", gross_errors_are_forgotten },
    { "good data cost five percent of efficiency", good_data_cost_five_percent },
    { "groups and floor are obeyed", groups_and_floor_are_obeyed },
    { "exact data survive", exact_data_survive },
};
TEST_SUITE(robust, tests);
