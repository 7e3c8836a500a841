/* Friction factors against published values, the limits they must join, and rest. */
#include <vtx/friction.h>

#include "../harness/harness.h"
#include "../../libvtx/flow/friction_kernel.h"

static int friction_row(const struct data_row *row, double *actual)
{
    static const struct { const char *name; int32_t fitting; } fittings[] = {
        { "fitting_entrance", VTX_FITTING_ENTRANCE }, { "fitting_exit", VTX_FITTING_EXIT },
        { "fitting_elbow", VTX_FITTING_ELBOW }, { "fitting_tee_branch", VTX_FITTING_TEE_BRANCH },
        { "fitting_globe_valve", VTX_FITTING_GLOBE_VALVE }, { "fitting_ball_valve", VTX_FITTING_BALL_VALVE },
    };
    const double *x = row->input;
    if (strcmp(row->quantity, "colebrook") == 0)
        return vtx_darcy_friction_factor(VTX_FRICTION_COLEBROOK, x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "haaland") == 0)
        return vtx_darcy_friction_factor(VTX_FRICTION_HAALAND, x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "churchill") == 0)
        return vtx_darcy_friction_factor(VTX_FRICTION_CHURCHILL, x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "fanning_churchill") == 0)
        return vtx_fanning_friction_factor(VTX_FRICTION_CHURCHILL, x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "fanning_colebrook") == 0)
        return vtx_fanning_friction_factor(VTX_FRICTION_COLEBROOK, x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "reynolds") == 0)
        return vtx_reynolds_number(x[0], x[1], x[2], actual), 1;
    for (size_t i = 0; i < sizeof fittings / sizeof fittings[0]; i++)
        if (strcmp(row->quantity, fittings[i].name) == 0)
            return vtx_fitting_loss(fittings[i].fitting, x[0], x[1], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("friction.csv", friction_row, 17); }

static void friction_times_reynolds_is_64_down_to_rest(void)
{
    EXPECT_NEAR(friction_times_reynolds(0, 0), 64, 1e-15);
    EXPECT_NEAR(friction_times_reynolds(0, 0.1), 64, 1e-15);
    EXPECT_NEAR(friction_times_reynolds(1e-300, 0.05), 64, 1e-15);
    double factor;
    EXPECT_STATUS(vtx_darcy_friction_factor(VTX_FRICTION_CHURCHILL, 0, 0, &factor), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_darcy_friction_factor(VTX_FRICTION_CHURCHILL, -1, 0, &factor), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_darcy_friction_factor(VTX_FRICTION_COLEBROOK, 2000, 0, &factor), VTX_OUT_OF_RANGE);
}

/* A step anywhere would stop a line solver between two flows. The factor's logarithm may not move faster than in the transition. */
static void churchill_has_no_step_from_rest_to_fully_rough(void)
{
    static const double roughness[] = { 0, 1e-6, 1e-4, 1e-2, 0.1 };
    for (size_t k = 0; k < sizeof roughness / sizeof roughness[0]; k++) {
        double worst = 0, before = friction_times_reynolds(1, roughness[k]);
        for (double re = 1; re < 1e9; re *= 1.001) {
            const double now = friction_times_reynolds(re, roughness[k]);
            worst = fmax(worst, fabs(log(now / before)) / 0.001);
            before = now;
        }
        EXPECT(worst < 8);
        const double below = friction_times_reynolds(300 * (1 - 1e-15), roughness[k]);
        EXPECT_NEAR(friction_times_reynolds(300, roughness[k]), below, 4e-16);
    }
}

/* What a line solver needs for a single root: friction times flow squared rises with flow. */
static void pressure_loss_rises_with_flow_through_the_transition(void)
{
    for (double roughness = 1e-7; roughness < 0.1; roughness *= 3) {
        double before = 0;
        for (double re = 1; re < 1e9; re *= 1.003) {
            const double now = re * friction_times_reynolds(re, roughness);
            EXPECT(now > before);
            before = now;
        }
    }
}

static void colebrook_satisfies_its_own_equation(void)
{
    struct random_state r;
    double worst = 0;
    random_seed(&r, 11);
    for (int i = 0; i < 100000; i++) {
        const double re = random_log_uniform(&r, 2300, 1e9), rough = i % 5 ? random_log_uniform(&r, 1e-8, 0.1) : 0;
        double factor = 0;
        const vtx_status status = vtx_darcy_friction_factor(VTX_FRICTION_COLEBROOK, re, rough, &factor);
        const double x = 1 / sqrt(factor);
        worst = fmax(worst, status ? 1 : fabs(1 + 2 * log10(rough / 3.7 + 2.51 * x / re) / x));
    }
    EXPECT(worst < 4e-15);
}

/* The differences that the header states. */
static void churchill_stays_near_colebrook(void)
{
    static const double at[3][3] = { { 1e4, 0, 0.0046 }, { 1e5, 1e-3, 0.0086 }, { 4000, 0.01, 0.035 } };
    for (int i = 0; i < 3; i++) {
        double churchill, colebrook;
        EXPECT_OK(vtx_darcy_friction_factor(VTX_FRICTION_CHURCHILL, at[i][0], at[i][1], &churchill));
        EXPECT_OK(vtx_darcy_friction_factor(VTX_FRICTION_COLEBROOK, at[i][0], at[i][1], &colebrook));
        EXPECT(churchill > colebrook);
        EXPECT(churchill < colebrook * (1 + at[i][2]));
    }
}

static void fanning_is_a_quarter_of_darcy(void)
{
    static const int32_t laws[] = { VTX_FRICTION_CHURCHILL, VTX_FRICTION_COLEBROOK, VTX_FRICTION_HAALAND };
    for (int i = 0; i < 3; i++) {
        double darcy, fanning;
        EXPECT_OK(vtx_darcy_friction_factor(laws[i], 5e4, 1e-3, &darcy));
        EXPECT_OK(vtx_fanning_friction_factor(laws[i], 5e4, 1e-3, &fanning));
        EXPECT_NEAR(4 * fanning, darcy, 1e-15);
    }
}

static void fully_rough_is_the_limit_of_colebrook(void)
{
    double factor;
    EXPECT_OK(vtx_darcy_friction_factor(VTX_FRICTION_COLEBROOK, 1e9, 0.1, &factor));
    EXPECT_NEAR(fully_rough_friction(0.1), factor, 1e-6);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "friction times Reynolds number is 64 down to rest", friction_times_reynolds_is_64_down_to_rest },
    { "Churchill has no step from rest to fully rough", churchill_has_no_step_from_rest_to_fully_rough },
    { "pressure loss rises with flow through the transition", pressure_loss_rises_with_flow_through_the_transition },
    { "Colebrook satisfies its own equation", colebrook_satisfies_its_own_equation },
    { "Churchill stays near Colebrook", churchill_stays_near_colebrook },
    { "Fanning is a quarter of Darcy", fanning_is_a_quarter_of_darcy },
    { "fully rough is the limit of Colebrook", fully_rough_is_the_limit_of_colebrook },
};
TEST_SUITE(friction, tests);
