/* Perfect-gas flow without losses against published values and its own inverses. */
#include <vtx/isentropic.h>

#include "../../libvtx/flow/isentropic_kernel.h"
#include "../harness/harness.h"

typedef vtx_status ratio_function(double gamma, double mach, double *ratio);

static ratio_function *ratio_named(const char *name)
{
    static const struct { const char *name; ratio_function *f; } known[] = {
        { "temperature_ratio", vtx_isentropic_temperature_ratio },
        { "pressure_ratio", vtx_isentropic_pressure_ratio },
        { "density_ratio", vtx_isentropic_density_ratio },
        { "area_ratio", vtx_isentropic_area_ratio },
    };
    for (size_t i = 0; i < sizeof known / sizeof known[0]; i++)
        if (strcmp(name, known[i].name) == 0)
            return known[i].f;
    return NULL;
}

static int isentropic_row(const struct data_row *row, double *actual)
{
    ratio_function *f = ratio_named(row->quantity);
    double ratio = 0;
    if (f)
        return f(row->input[0], row->input[1], actual), 1;
    if (strcmp(row->quantity, "critical_pressure_ratio") == 0)
        return vtx_critical_pressure_ratio(row->input[0], actual), 1;
    if (strcmp(row->quantity, "critical_flow_function") == 0)
        return vtx_critical_flow_function(row->input[0], actual), 1;
    if (strcmp(row->quantity, "critical_temperature") == 0) {
        EXPECT_OK(vtx_critical_pressure_ratio(row->input[0], &ratio));
        return vtx_isentropic_temperature(row->input[0], 1e6, row->input[1], 1e6 * ratio, actual), 1;
    }
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("isentropic.csv", isentropic_row, 48); }

static double exact_drop(double gamma, double ratio)
{
    const long double k = (long double)gamma;
    return (double)-expm1l((k - 1) / k * logl((long double)ratio));
}

/* The published formulas, as the polynomials must give them. */
static void polynomials_agree_with_the_published_formulas(void)
{
    double worst_ratio = 0, worst_function = 0, worst_drop = 0;
    for (int i = 0; i <= 1000; i++) {
        const double gamma = 1.01 + 0.69 * i / 1000;
        const long double k = (long double)gamma;
        const double ratio = (double)powl(2 / (k + 1), k / (k - 1));
        const double function = (double)(sqrtl(k) * powl(2 / (k + 1), (k + 1) / (2 * (k - 1))));
        worst_ratio = fmax(worst_ratio, fabs(critical_pressure_ratio(gamma) / ratio - 1));
        worst_function = fmax(worst_function, fabs(critical_flow_function(gamma) / function - 1));
        for (int j = 0; j <= 200; j++) {
            const double low = j < 100 ? 0.4801 + 0.0052 * j : 1 - pow(10, -j / 20.0);
            worst_drop = fmax(worst_drop, fabs(mild_temperature_drop(gamma, 1, low) / exact_drop(gamma, low) - 1));
        }
    }
    EXPECT(worst_ratio < 1e-15);
    EXPECT(worst_function < 1e-15);
    EXPECT(worst_drop < 1e-15);
    EXPECT(sonic_density_of_air == sonic_density_at(1.4 - 1.355));
}

static void temperature_drop_joins_at_its_branches(void)
{
    for (double gamma = 1.01; gamma < 1.7; gamma += 0.01) {
        const double below = temperature_drop(gamma, 1, 0.48), above = temperature_drop(gamma, 1, 0.48 * (1 + 1e-15));
        EXPECT_NEAR(above, below, 3e-15);
        for (double ratio = 1e-5; ratio < 1e3; ratio *= 1.7)
            EXPECT_NEAR(temperature_drop(gamma, 1, ratio), exact_drop(gamma, ratio), 3e-15);
    }
}

enum { RANDOM_CASES = 100000 };

static void mach_numbers_are_exact_inverses(void)
{
    static ratio_function *const forward[] = { vtx_isentropic_temperature_ratio, vtx_isentropic_pressure_ratio, vtx_isentropic_density_ratio };
    static ratio_function *const inverse[] = { vtx_mach_for_temperature_ratio, vtx_mach_for_pressure_ratio, vtx_mach_for_density_ratio };
    struct random_state r;
    random_seed(&r, 3);
    for (int law = 0; law < 3; law++) {
        double worst = 0;
        int failed = 0;
        for (int i = 0; i < RANDOM_CASES; i++) {
            const double gamma = random_uniform(&r, 1.01, 1.7);
            const double mach = i % 10 == 0 ? 1 : i % 100 == 1 ? 50 : random_log_uniform(&r, 1e-3, 50);
            double ratio = 0, found = 0, back = 0;
            failed += forward[law](gamma, mach, &ratio) != VTX_OK;
            failed += inverse[law](gamma, ratio, &found) != VTX_OK;
            failed += forward[law](gamma, found, &back) != VTX_OK;
            worst = fmax(worst, fabs(back / ratio - 1));
        }
        EXPECT(failed == 0);
        EXPECT_WITHIN(worst, 0, 1e-12);
    }
}

static void area_ratio_is_inverted_on_the_named_branch(void)
{
    struct random_state r;
    double worst = 0;
    int failed = 0, wrong_branch = 0;
    random_seed(&r, 4);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const int supersonic = i % 4 == 0;
        const double gamma = random_uniform(&r, 1.01, 1.7);
        const double away = random_log_uniform(&r, 1e-12, 1);
        const double mach = i % 100 == 0 ? 1 : i % 100 == 4 ? 50 : i % 100 == 1 ? 1e-9
            : supersonic ? (i % 8 ? 1 + away : random_uniform(&r, 1, 50)) : (i % 2 ? 1 - away : away) + 1e-9;
        double ratio = 0, found = 0, back = 0;
        failed += vtx_isentropic_area_ratio(gamma, mach, &ratio) != VTX_OK;
        failed += vtx_mach_for_area_ratio(gamma, supersonic ? VTX_BRANCH_SUPERSONIC : VTX_BRANCH_SUBSONIC, fmax(ratio, 1), &found) != VTX_OK;
        failed += vtx_isentropic_area_ratio(gamma, found, &back) != VTX_OK;
        wrong_branch += supersonic ? found < 1 - 1e-15 : found > 1 + 1e-15;
        worst = fmax(worst, fabs(back / ratio - 1));
    }
    EXPECT(failed == 0);
    EXPECT(wrong_branch == 0);
    EXPECT_WITHIN(worst, 0, 1e-12);
}

static void expansion_obeys_the_energy_equation(void)
{
    struct random_state r;
    vtx_gas gas;
    random_seed(&r, 5);
    EXPECT_OK(vtx_gas_init(&gas));
    for (int i = 0; i < 1000; i++) {
        double cold = 0, velocity = 0, sound = 0, mach = 0;
        gas.heat_capacity_ratio = random_uniform(&r, 1.05, 1.67);
        const double gamma = gas.heat_capacity_ratio, p = random_log_uniform(&r, 1e4, 1e7), t = random_uniform(&r, 200, 900);
        const double low = p * random_uniform(&r, 0.1, 1);
        EXPECT_OK(vtx_isentropic_temperature(gamma, p, t, low, &cold));
        EXPECT_OK(vtx_isentropic_velocity(&gas, p, t, low, &velocity));
        EXPECT_OK(vtx_gas_sound_speed(&gas, cold, &sound));
        EXPECT_OK(vtx_mach_for_pressure_ratio(gamma, low / p, &mach));
        EXPECT_NEAR(velocity, mach * sound, 1e-12);
        EXPECT_NEAR(cold + square(velocity) * (gamma - 1) / (2 * gamma * specific_gas_constant(&gas)), t, 1e-13);
    }
}

static void limits_are_answered_as_documented(void)
{
    double x = 0;
    EXPECT_OK(vtx_isentropic_temperature(1.4, 1e5, 300, 1e5, &x));
    EXPECT(x == 300);
    EXPECT_STATUS(vtx_isentropic_temperature(1.4, 1e5, 300, 2e5, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_isentropic_temperature(1.4, 300, 1e5, 100, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_critical_pressure_ratio(1, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_critical_pressure_ratio(1.001, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_mach_for_pressure_ratio(1.4, 1.1, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_mach_for_pressure_ratio(1.4, 1e-30, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_mach_for_area_ratio(1.4, VTX_BRANCH_SUPERSONIC, 0.99, &x), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_mach_for_area_ratio(1.4, VTX_BRANCH_SUPERSONIC, 1e12, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_mach_for_area_ratio(1.4, VTX_BRANCH_SUBSONIC, 1e12, &x), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_isentropic_area_ratio(1.4, 0, &x), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_isentropic_pressure_ratio(1.4, 0, &x));
    EXPECT(x == 1);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "polynomials agree with the published formulas", polynomials_agree_with_the_published_formulas },
    { "temperature drop joins at its branches, compression included", temperature_drop_joins_at_its_branches },
    { "Mach numbers are exact inverses of the ratios", mach_numbers_are_exact_inverses },
    { "area ratio is inverted on the named branch", area_ratio_is_inverted_on_the_named_branch },
    { "expansion obeys the energy equation", expansion_obeys_the_energy_equation },
    { "limits are answered as documented", limits_are_answered_as_documented },
};
TEST_SUITE(isentropic, tests);
