/* Normal shocks against published values, the laws of conservation and their own inverses. */
#include <vtx/isentropic.h>
#include <vtx/shock.h>

#include "../harness/harness.h"

typedef vtx_status shock_function(double gamma, double mach, double *value);

static const struct {
    const char *name;
    shock_function *forward, *inverse;
} laws[] = {
    { "downstream_mach", vtx_shock_downstream_mach, vtx_shock_mach_for_downstream_mach },
    { "pressure_ratio", vtx_shock_pressure_ratio, vtx_shock_mach_for_pressure_ratio },
    { "density_ratio", vtx_shock_density_ratio, vtx_shock_mach_for_density_ratio },
    { "temperature_ratio", vtx_shock_temperature_ratio, vtx_shock_mach_for_temperature_ratio },
    { "stagnation_ratio", vtx_shock_stagnation_ratio, vtx_shock_mach_for_stagnation_ratio },
    { "pitot_ratio", vtx_shock_pitot_ratio, vtx_shock_mach_for_pitot_ratio },
};
enum { LAWS = sizeof laws / sizeof laws[0] };

static int shock_row(const struct data_row *row, double *actual)
{
    for (int i = 0; i < LAWS; i++)
        if (strcmp(row->quantity, laws[i].name) == 0)
            return laws[i].forward(row->input[0], row->input[1], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("shock.csv", shock_row, 36); }

static void inverses_are_exact(void)
{
    struct random_state r;
    random_seed(&r, 6);
    for (int law = 0; law < LAWS; law++) {
        double worst = 0;
        int failed = 0;
        for (int i = 0; i < 100000; i++) {
            const double gamma = random_uniform(&r, 1.01, 1.7);
            const double mach = i % 50 == 0 ? 1 : i % 50 == 1 ? 50 : i % 2 ? random_uniform(&r, 1, 50) : 1 + random_log_uniform(&r, 1e-9, 1);
            double value = 0, found = 0, back = 0;
            failed += laws[law].forward(gamma, mach, &value) != VTX_OK;
            failed += laws[law].inverse(gamma, value, &found) != VTX_OK;
            failed += laws[law].forward(gamma, found, &back) != VTX_OK;
            worst = fmax(worst, fabs(back / value - 1));
        }
        expect_true(failed == 0, laws[law].name, __FILE__, __LINE__);
        expect_within(worst, 0, 1e-11, laws[law].name, __FILE__, __LINE__);
    }
}

/* Mass, momentum and energy on both sides, in units of the sound speed and density ahead. */
static void mass_momentum_and_energy_are_conserved(void)
{
    struct random_state r;
    random_seed(&r, 7);
    for (int i = 0; i < 1000; i++) {
        const double k = random_uniform(&r, 1.01, 1.7), m1 = random_uniform(&r, 1, 20);
        double m2 = 0, p = 0, d = 0, t = 0, loss = 0, pitot = 0, ahead = 0, behind = 0;
        EXPECT_OK(vtx_shock_downstream_mach(k, m1, &m2));
        EXPECT_OK(vtx_shock_pressure_ratio(k, m1, &p));
        EXPECT_OK(vtx_shock_density_ratio(k, m1, &d));
        EXPECT_OK(vtx_shock_temperature_ratio(k, m1, &t));
        EXPECT_OK(vtx_shock_stagnation_ratio(k, m1, &loss));
        EXPECT_OK(vtx_shock_pitot_ratio(k, m1, &pitot));
        EXPECT_OK(vtx_isentropic_pressure_ratio(k, m1, &ahead));
        EXPECT_OK(vtx_isentropic_pressure_ratio(k, m2, &behind));
        EXPECT_NEAR(d * m2 * sqrt(t), m1, 1e-12);
        EXPECT_NEAR(p * (1 + k * m2 * m2), 1 + k * m1 * m1, 1e-12);
        EXPECT_NEAR(t * (1 + 0.5 * (k - 1) * m2 * m2), 1 + 0.5 * (k - 1) * m1 * m1, 1e-12);
        EXPECT_NEAR(p / d, t, 1e-13);
        EXPECT_NEAR(p / behind * ahead, loss, 1e-10);
        EXPECT_NEAR(ahead / loss, pitot, 1e-10);
        EXPECT(loss <= 1 && m2 <= 1);
    }
}

static void what_no_shock_can_do_is_refused(void)
{
    double x = 0;
    EXPECT_STATUS(vtx_shock_pressure_ratio(1.4, 0.99, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_shock_mach_for_pressure_ratio(1.4, 0.99, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_shock_mach_for_density_ratio(1.4, 6, &x), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_shock_mach_for_downstream_mach(1.4, 0.37, &x), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_shock_mach_for_pitot_ratio(1.4, 0.53, &x), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_shock_mach_for_pressure_ratio(1.4, 1e4, &x), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_shock_mach_for_stagnation_ratio(1.4, 1, &x));
    EXPECT(x == 1);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "inverses are exact", inverses_are_exact },
    { "mass, momentum and energy are conserved", mass_momentum_and_energy_are_conserved },
    { "what no shock can do is refused", what_no_shock_can_do_is_refused },
};
TEST_SUITE(shock, tests);
