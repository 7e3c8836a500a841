/* Volume flows at reference states. */
#include <vtx/standard_flow.h>

#include "../harness/harness.h"

enum { FIRST = VTX_REFERENCE_ISO_2533, LAST = VTX_REFERENCE_US_FAN };

static int standard_flow_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    double p, t, rh;
    if (strcmp(row->quantity, "density") == 0)
        return vtx_reference_density((int32_t)x[0], x[1], x[2], x[3], actual, NULL), 1;
    if (strcmp(row->quantity, "named") == 0) {
        vtx_reference_state((int32_t)x[1], &p, &t, &rh);
        return vtx_reference_density((int32_t)x[0], p, t, rh, actual, NULL), 1;
    }
    if (strcmp(row->quantity, "mass_flow") == 0) {
        /* The rows' molar mass in place of the library's for moist air: the gas constant is 287.042 J/(kg K) there. */
        const double same_gas = 287.042 / (8.314462618 / 0.02896546);
        vtx_reference_state((int32_t)x[0], &p, &t, &rh);
        vtx_mass_flow_from_standard(VTX_AIR_IDEAL, p, t, rh, x[1], actual, NULL);
        *actual *= same_gas;
        return 1;
    }
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("standard_flow.csv", standard_flow_row, 18); }

static void every_named_state_is_a_state(void)
{
    double p, t, rh, density;
    for (int32_t name = FIRST; name <= LAST; name++) {
        EXPECT_OK(vtx_reference_state(name, &p, &t, &rh));
        EXPECT_OK(vtx_reference_density(VTX_AIR_REAL, p, t, rh, &density, NULL));
        EXPECT(density > 1.17 && density < 1.30);
        EXPECT_OK(vtx_reference_state(name, &p, NULL, NULL));
    }
    EXPECT_STATUS(vtx_reference_state(0, &p, &t, &rh), VTX_BAD_ARGUMENT);
    EXPECT(isnan(p) && isnan(t) && isnan(rh));
    EXPECT_STATUS(vtx_reference_state(LAST + 1, &p, NULL, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_reference_state(VTX_AIR_REAL, &p, NULL, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_reference_state(FIRST, NULL, &t, &rh), VTX_BAD_ARGUMENT);
}

/* The reason for the argument: the same number of cubic metres, 9 % apart. */
static void the_named_states_differ_in_mass(void)
{
    double low = 9, high = 0;
    for (int32_t name = FIRST; name <= LAST; name++) {
        double p, t, rh, m;
        EXPECT_OK(vtx_reference_state(name, &p, &t, &rh));
        EXPECT_OK(vtx_mass_flow_from_standard(VTX_AIR_REAL, p, t, rh, 1, &m, NULL));
        low = m < low ? m : low;
        high = m > high ? m : high;
    }
    EXPECT_WITHIN(high / low - 1, 0.094, 0.001);
}

static void mass_and_volume_are_inverse(void)
{
    struct random_state r;
    random_seed(&r, 41);
    for (int i = 0; i < 5000; i++) {
        const int32_t model = i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL;
        const double p = random_log_uniform(&r, 5e4, 1e6), t = random_uniform(&r, 240, 350), rh = random_uniform(&r, 0, 1);
        const double flow = random_uniform(&r, -10, 10);
        double mass, dry, back, free_air, moist_density, dry_density;
        EXPECT_OK(vtx_mass_flow_from_standard(model, p, t, rh, flow, &mass, &dry));
        EXPECT_OK(vtx_standard_flow(model, p, t, rh, mass, &back));
        EXPECT_NEAR(back, flow, 4e-16);
        EXPECT_OK(vtx_free_air_delivered(model, p, t, rh, dry, &free_air));
        EXPECT_NEAR(free_air, flow, 4e-16);
        EXPECT_OK(vtx_reference_density(model, p, t, rh, &moist_density, &dry_density));
        EXPECT(dry_density <= moist_density);
        EXPECT_NEAR(mass / dry, moist_density / dry_density, 1e-15);
    }
}

static void another_state_keeps_the_dry_air(void)
{
    struct random_state r;
    random_seed(&r, 42);
    for (int i = 0; i < 2000; i++) {
        const double p = random_log_uniform(&r, 5e4, 1e6), t = random_uniform(&r, 240, 330), rh = random_uniform(&r, 0, 1);
        const double p2 = random_log_uniform(&r, 5e4, 1e6), t2 = random_uniform(&r, 240, 330), rh2 = random_uniform(&r, 0, 1);
        double there, back, dry, dry2, m;
        EXPECT_OK(vtx_standard_flow_at(VTX_AIR_REAL, p, t, rh, 1, p2, t2, rh2, &there));
        EXPECT_OK(vtx_standard_flow_at(VTX_AIR_REAL, p2, t2, rh2, there, p, t, rh, &back));
        EXPECT_NEAR(back, 1, 1e-15);
        EXPECT_OK(vtx_mass_flow_from_standard(VTX_AIR_REAL, p, t, rh, 1, &m, &dry));
        EXPECT_OK(vtx_mass_flow_from_standard(VTX_AIR_REAL, p2, t2, rh2, there, &m, &dry2));
        EXPECT_NEAR(dry2, dry, 1e-15);
    }
}

static void humid_air_is_lighter_and_carries_less_dry_air(void)
{
    double dry, humid, dry_part, humid_part;
    EXPECT_OK(vtx_reference_density(VTX_AIR_REAL, 1e5, 308.15, 0, &dry, &dry_part));
    EXPECT_OK(vtx_reference_density(VTX_AIR_REAL, 1e5, 308.15, 0.6, &humid, &humid_part));
    EXPECT(dry == dry_part);
    EXPECT(humid < dry && humid_part < humid);
    EXPECT_WITHIN(dry_part / humid_part, 1.035, 0.002);
}

static void what_is_no_state_is_refused(void)
{
    double x = 1, y = 1;
    EXPECT_STATUS(vtx_reference_density(VTX_AIR_REAL, 293.15, 1e5, 0, &x, &y), VTX_OUT_OF_RANGE);
    EXPECT(isnan(x) && isnan(y));
    EXPECT_STATUS(vtx_reference_density(VTX_AIR_REAL, 1e5, 293.15, 65, &x, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_reference_density(VTX_AIR_REAL, 1e4, 373.15, 1, &x, &y), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_reference_density(VTX_AIR_IDEAL, 101425, 373.15, 1, &x, &y), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_mass_flow_from_standard(VTX_AIR_IDEAL, 101325, 273.15, 0, (double)NAN, &x, &y), VTX_BAD_ARGUMENT);
    EXPECT(isnan(x) && isnan(y));
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "every named state is a state", every_named_state_is_a_state },
    { "the named states differ in mass", the_named_states_differ_in_mass },
    { "mass and volume are inverse", mass_and_volume_are_inverse },
    { "another state keeps the dry air", another_state_keeps_the_dry_air },
    { "humid air is lighter and carries less dry air", humid_air_is_lighter_and_carries_less_dry_air },
    { "what is no state is refused", what_is_no_state_is_refused },
};
TEST_SUITE(standard_flow, tests);
