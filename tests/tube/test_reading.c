/* Readings against the laws: what is true passes, what cannot be is named. */
#include <vtx/cold_fraction.h>

#include "synthetic.h"

static const struct truth *real_tube(void)
{
    static struct truth t = { .kind = TRUTH_FAMILY, .model = VTX_AIR_REAL };
    EXPECT_OK(vtx_tube_init(&t.tube));
    return &t;
}

/* A reading without error, 7 bar, 20 degC. */
static void true_reading(double cold_fraction, vtx_reading *r)
{
    double cold, hot;
    true_outlets(real_tube(), 7e5, 293.15, 101325, 101325, cold_fraction, &cold, &hot);
    EXPECT_OK(vtx_reading_init(r));
    r->inlet_pressure = 7e5;
    r->inlet_temperature = 293.15;
    r->cold_pressure = r->hot_pressure = 101325;
    r->cold_temperature = cold;
    r->hot_temperature = hot;
    r->cold_fraction = cold_fraction;
}

static vtx_reading_check examined(const vtx_reading *r, int32_t model)
{
    vtx_reading_check check;
    EXPECT_OK(vtx_reading_examine(r, model, &check));
    return check;
}

static void nothing_is_read_at_first(void)
{
    vtx_reading r;
    EXPECT_OK(vtx_reading_init(&r));
    EXPECT_STATUS(vtx_reading_init(NULL), VTX_BAD_ARGUMENT);
    EXPECT(isnan(r.inlet_pressure) && isnan(r.ambient_temperature) && isnan(r.hot_mass_flow_uncertainty) && r.reserved[3] == 0);
    const vtx_reading_check check = examined(&r, VTX_AIR_REAL);
    EXPECT(check.verdict == VTX_READING_INCOMPLETE && check.suspect == VTX_SUSPECT_NONE && check.used == 0);
    EXPECT(isnan(check.cold_fraction) && isnan(check.energy_residual) && check.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE);
}

static void a_true_reading_is_credible(void)
{
    for (double mu = 0.1; mu < 0.96; mu += 0.05) {
        vtx_reading r;
        true_reading(mu, &r);
        const vtx_reading_check check = examined(&r, VTX_AIR_REAL);
        EXPECT(check.verdict == VTX_READING_CREDIBLE && check.advisories == 0);
        EXPECT_WITHIN(check.energy_residual, 0, 1e-3);
        EXPECT(check.entropy_generation > 100 && check.entropy_uncertainty > 0 && check.entropy_uncertainty < 10);
        /* Three thermometers of 0.5 K and 0.02 of cold fraction, in kelvins of the mean outlet, times about 1006 J/(kg K). */
        const double expected = 1006 * sqrt(0.25 + 0.25 * (mu * mu + (1 - mu) * (1 - mu)) + pow(0.02 * (r.hot_temperature - r.cold_temperature), 2));
        EXPECT_NEAR(check.energy_uncertainty, expected, 0.03);
    }
}

static void a_gap_is_closed_by_the_energy_balance(void)
{
    vtx_reading r;
    true_reading(0.6, &r);
    r.cold_fraction = (double)NAN;
    vtx_reading_check check = examined(&r, VTX_AIR_REAL);
    EXPECT(check.verdict == VTX_READING_CREDIBLE && isnan(check.energy_residual));
    EXPECT_WITHIN(check.cold_fraction, 0.6, 1e-6);
    EXPECT(check.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE);
    true_reading(0.6, &r);
    r.inlet_temperature = (double)NAN;
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_CREDIBLE);
    r.cold_fraction = (double)NAN;
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_INCOMPLETE);
    true_reading(0.6, &r);
    r.hot_temperature = (double)NAN;
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_CREDIBLE);
    r.inlet_pressure = (double)NAN;
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_INCOMPLETE);
}

static void flows_give_the_cold_fraction(void)
{
    vtx_reading r;
    double fraction, uncertainty;
    vtx_flow_balance balance;
    true_reading(0.6, &r);
    r.cold_fraction = (double)NAN;
    r.inlet_mass_flow = 0.0101;
    r.cold_mass_flow = 0.006;
    EXPECT_OK(vtx_cold_fraction_from_flows(VTX_FLOWS_INLET_AND_COLD, 0.0101, 0.006, 0.0101 * 0.03, 0.006 * 0.03, &fraction, &uncertainty));
    vtx_reading_check check = examined(&r, VTX_AIR_REAL);
    EXPECT_NEAR(check.cold_fraction, fraction, 1e-12);
    EXPECT_NEAR(check.cold_fraction_uncertainty, uncertainty, 1e-12);
    EXPECT(check.verdict == VTX_READING_CREDIBLE && isfinite(check.energy_residual));
    r.hot_mass_flow = 0.004;
    EXPECT_OK(vtx_cold_fraction_from_three_flows(0.0101, 0.006, 0.004, 0.000303, 0.00018, 0.00012, &balance));
    EXPECT_NEAR(examined(&r, VTX_AIR_REAL).cold_fraction, balance.cold_fraction, 1e-9);
    r.inlet_mass_flow = (double)NAN;
    EXPECT_NEAR(examined(&r, VTX_AIR_REAL).cold_fraction, 0.6, 1e-12);
    r.cold_fraction = 0.62;
    check = examined(&r, VTX_AIR_REAL);
    EXPECT(check.cold_fraction > 0.6 && check.cold_fraction < 0.62 && check.cold_fraction_uncertainty < 0.01);
}

static void contradicting_flows_are_named(void)
{
    vtx_reading r;
    true_reading(0.6, &r);
    r.inlet_mass_flow = 0.01;
    r.cold_mass_flow = 0.0125;
    vtx_reading_check check = examined(&r, VTX_AIR_REAL);
    EXPECT(check.verdict == VTX_READING_FLOWS_CONTRADICT && check.suspect == VTX_SUSPECT_FLOWS);
    EXPECT(check.advisories & VTX_ADVISORY_IMPOSSIBLE_READINGS);
    r.cold_mass_flow = 0.0103; /* more than the inlet, within doubt: all of it, which the read fraction denies */
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_FLOWS_CONTRADICT);
    r.cold_mass_flow = 0.0062;
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_CREDIBLE);
    r.hot_mass_flow = 0.006;
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_FLOWS_CONTRADICT);
}

static void expect_verdict(const vtx_reading *r, int32_t verdict, int32_t suspect)
{
    char text[100];
    const vtx_reading_check check = examined(r, VTX_AIR_REAL);
    snprintf(text, sizeof text, "verdict %d suspect %d, expected %d %d", (int)check.verdict, (int)check.suspect, (int)verdict, (int)suspect);
    expect_true(check.verdict == verdict && check.suspect == suspect, text, __FILE__, __LINE__);
    EXPECT((check.advisories & VTX_ADVISORY_IMPOSSIBLE_READINGS) != 0 ? verdict != VTX_READING_ENERGY_MISSING : verdict == VTX_READING_ENERGY_MISSING);
}

static void what_cannot_be_is_named(void)
{
    vtx_reading r;
    true_reading(0.6, &r);
    r.cold_pressure = 8e5;
    expect_verdict(&r, VTX_READING_BACKWARD, VTX_SUSPECT_COLD_PRESSURE);
    true_reading(0.6, &r);
    r.hot_temperature_uncertainty = 1.5;
    r.hot_temperature = 284;
    expect_verdict(&r, VTX_READING_BOTH_COLD, VTX_SUSPECT_HOT_TEMPERATURE);
    r.ambient_temperature = 283.15; /* a warm supply in a cold room may lose its heat there */
    EXPECT(examined(&r, VTX_AIR_REAL).verdict != VTX_READING_BOTH_COLD);
    true_reading(0.6, &r);
    r.cold_temperature = 300;
    expect_verdict(&r, VTX_READING_BOTH_WARM, VTX_SUSPECT_INLET_TEMPERATURE);
    true_reading(0.6, &r);
    r.cold_fraction = 0.4;
    expect_verdict(&r, VTX_READING_ENERGY_CREATED, VTX_SUSPECT_COLD_FRACTION);
    r.cold_fraction = 0.85;
    expect_verdict(&r, VTX_READING_ENERGY_MISSING, VTX_SUSPECT_COLD_FRACTION);
    true_reading(0.6, &r);
    const double hot = r.hot_temperature;
    r.hot_temperature = r.cold_temperature;
    r.cold_temperature = hot;
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_SWAPPED);
    /* Less than 1 % of pressure cannot part 30 K and 45 K. */
    true_reading(0.6, &r);
    r.inlet_pressure = 1.02e5;
    r.inlet_pressure_uncertainty = r.cold_pressure_uncertainty = r.hot_pressure_uncertainty = 50;
    r.inlet_temperature_uncertainty = r.cold_temperature_uncertainty = r.hot_temperature_uncertainty = 0.1;
    r.cold_fraction_uncertainty = 0.001;
    EXPECT(examined(&r, VTX_AIR_REAL).verdict == VTX_READING_ENTROPY_FALLS);
}

/* S. Vennos 1968 (from memory, a review's table): both outlets below the inlet by 13 and 1 K at 5.8 bar and 0.35. Throttling
 * explains 1.2 K of the 5.2 K that are missing on average. */
static void a_remembered_reading_is_doubted(void)
{
    vtx_reading r;
    EXPECT_OK(vtx_reading_init(&r));
    r.inlet_pressure = 583.6e3;
    r.inlet_temperature = 293.15;
    r.cold_temperature = 280.15;
    r.hot_temperature = 292.15;
    r.cold_fraction = 0.35;
    const vtx_reading_check check = examined(&r, VTX_AIR_REAL);
    EXPECT(check.verdict == VTX_READING_ENERGY_MISSING);
    EXPECT_WITHIN(check.energy_residual, 1006 * (5.2 - 1.2), 150);
}

/* Seven tests at one in a thousand each at most: far less than one good reading in a hundred is doubted. */
static void good_readings_are_rarely_doubted(void)
{
    struct random_state r;
    struct truth t;
    vtx_reading reading;
    const struct plan p = usual_plan();
    int doubted = 0;
    random_seed(&r, 31);
    for (int i = 0; i < 4000; i++) {
        draw_truth(&r, TRUTH_FAMILY, &t);
        draw_reading(&r, &t, &p, 4e5, random_uniform(&r, 0.15, 0.85), &reading);
        doubted += examined(&reading, VTX_AIR_IDEAL).verdict != VTX_READING_CREDIBLE;
    }
    EXPECT(doubted < 40);
}

static void misuse_is_answered(void)
{
    vtx_reading r;
    vtx_reading_check check;
    true_reading(0.6, &r);
    EXPECT_STATUS(vtx_reading_examine(&r, 7, &check), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_reading_examine(NULL, VTX_AIR_REAL, &check), VTX_BAD_ARGUMENT);
    EXPECT(isnan(check.cold_fraction) && check.verdict == -1);
    r.cold_temperature = -10;
    EXPECT_STATUS(vtx_reading_examine(&r, VTX_AIR_REAL, &check), VTX_BAD_ARGUMENT);
    r.cold_temperature = (double)INFINITY;
    EXPECT_STATUS(vtx_reading_examine(&r, VTX_AIR_REAL, &check), VTX_BAD_ARGUMENT);
    r.cold_temperature = 50;
    EXPECT_STATUS(vtx_reading_examine(&r, VTX_AIR_REAL, &check), VTX_OUT_OF_RANGE);
    true_reading(0.6, &r);
    r.cold_fraction = 1.1;
    EXPECT_STATUS(vtx_reading_examine(&r, VTX_AIR_REAL, &check), VTX_BAD_ARGUMENT);
    true_reading(0.6, &r);
    r.cold_fraction_uncertainty = -0.1;
    EXPECT_STATUS(vtx_reading_examine(&r, VTX_AIR_REAL, &check), VTX_BAD_ARGUMENT);
    true_reading(0.6, &r);
    r.reserved[1] = (double)NAN;
    EXPECT_STATUS(vtx_reading_examine(&r, VTX_AIR_REAL, &check), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "nothing is read at first", nothing_is_read_at_first },
    { "a true reading is credible", a_true_reading_is_credible },
    { "a gap is closed by the energy balance", a_gap_is_closed_by_the_energy_balance },
    { "flows give the cold fraction", flows_give_the_cold_fraction },
    { "contradicting flows are named", contradicting_flows_are_named },
    { "what cannot be is named, with the reading most likely wrong", what_cannot_be_is_named },
    { "a remembered reading is doubted", a_remembered_reading_is_doubted },
    { "good readings are rarely doubted", good_readings_are_rarely_doubted },
    { "misuse is answered", misuse_is_answered },
};
TEST_SUITE(reading, tests);
