/* Thermometers against worked values and their own inverses. */
#include <vtx/thermometry.h>

#include "../harness/harness.h"

static int probe_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    vtx_probe probe;
    vtx_corrected_temperature corrected;
    EXPECT_OK(vtx_probe_init(&probe));
    probe.air_speed = x[2];
    probe.air_speed_uncertainty = x[3];
    probe.recovery_factor = x[4];
    probe.recovery_uncertainty = x[5];
    probe.heat_capacity = x[6];
    if (strncmp(row->quantity, "probe_", 6) != 0)
        return 0;
    EXPECT_OK(vtx_probe_correct(&probe, x[0], x[1], &corrected));
    *actual = strcmp(row->quantity, "probe_temperature") == 0 ? corrected.temperature : corrected.uncertainty;
    return 1;
}

static int thermometry_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    double a, b;
    vtx_probe probe;
    vtx_corrected_temperature corrected;
    if (strcmp(row->quantity, "dynamic_temperature") == 0)
        return vtx_dynamic_temperature(x[0], x[1], actual), 1;
    if (strcmp(row->quantity, "settling_time") == 0)
        return vtx_settling_time(x[0], x[1], x[2], actual), 1;
    if (strcmp(row->quantity, "recovery_factor") == 0)
        return vtx_recovery_factor((int32_t)x[0], x[1], actual, NULL), 1;
    if (strcmp(row->quantity, "thermometer_uncertainty") == 0)
        return vtx_thermometer_uncertainty((int32_t)x[0], x[1], actual, NULL), 1;
    if (strcmp(row->quantity, "stem_share") == 0) /* m is 100 1/m here */
        return vtx_stem_share(10, 0.004, 1, x[0] / 100, actual), 1;
    if (strcmp(row->quantity, "time_constant") == 0) {
        EXPECT_OK(vtx_probe_coefficient(x[3], x[2], x[4], x[5], x[6], &a));
        return vtx_probe_time_constant(VTX_PROBE_CYLINDER, x[1], x[2], a, actual), 1;
    }
    if (strcmp(row->quantity, "static_reading") == 0) {
        EXPECT_OK(vtx_dynamic_temperature(x[1], x[3], &b));
        EXPECT_OK(vtx_probe_init(&probe));
        probe.air_speed = x[1];
        probe.recovery_factor = x[2];
        probe.heat_capacity = x[3];
        return vtx_probe_reading(&probe, x[0] + b, actual), 1;
    }
    if (strcmp(row->quantity, "entrained_jet") == 0) {
        EXPECT_OK(vtx_probe_init(&probe));
        probe.entrained_share = x[1];
        probe.room_temperature = x[2];
        EXPECT_OK(vtx_probe_correct(&probe, x[0], 0.5, &corrected));
        EXPECT_NEAR(corrected.from_reading, 0.5 / (1 - x[1]), 1e-12);
        *actual = corrected.temperature;
        return 1;
    }
    return probe_row(row, actual);
}

static void worked_values_are_reproduced(void) { check_rows("thermometry.csv", thermometry_row, 15); }

static void random_probe(struct random_state *r, vtx_probe *p)
{
    EXPECT_OK(vtx_probe_init(p));
    p->air_speed = random_uniform(r, 0, 300);
    p->air_speed_uncertainty = random_uniform(r, 0, 10);
    p->recovery_factor = random_uniform(r, 0.6, 1);
    p->entrained_share = random_uniform(r, 0, 0.5);
    p->entrained_uncertainty = random_uniform(r, 0, 0.1);
    p->room_temperature = random_uniform(r, 280, 310);
    p->stem_share = random_uniform(r, 0, 0.3);
    p->stem_uncertainty = random_uniform(r, 0, 0.05);
    p->stem_temperature = random_uniform(r, 260, 320);
    p->unsettled_share = random_uniform(r, 0, 0.3);
    p->start_temperature = random_uniform(r, 280, 310);
}

static void correction_undoes_the_reading(void)
{
    struct random_state r;
    vtx_probe p;
    vtx_corrected_temperature c;
    double reading;
    random_seed(&r, 21);
    for (int i = 0; i < 2000; i++) {
        random_probe(&r, &p);
        const double truth = random_uniform(&r, 230, 400);
        EXPECT_OK(vtx_probe_reading(&p, truth, &reading));
        EXPECT_OK(vtx_probe_correct(&p, reading, 0.3, &c));
        EXPECT_WITHIN(c.temperature, truth, 1e-11);
        EXPECT_WITHIN(reading + c.settling_correction + c.stem_correction + c.recovery_correction + c.entrainment_correction, truth, 1e-9);
        EXPECT_NEAR(c.uncertainty, sqrt(c.from_reading * c.from_reading + c.from_settling * c.from_settling + c.from_stem * c.from_stem
                                        + c.from_recovery * c.from_recovery + c.from_entrainment * c.from_entrainment), 1e-12);
        EXPECT(c.uncertainty >= 0.3);
    }
}

/* The stated standard uncertainty is the scatter of corrected readings whose inputs scatter as stated (small uncertainties: first order). */
static void the_uncertainty_is_the_scatter(void)
{
    struct random_state r;
    vtx_probe p, drawn;
    vtx_corrected_temperature c;
    double reading, sum = 0, sum_of_squares = 0;
    const int draws = 20000;
    random_seed(&r, 22);
    EXPECT_OK(vtx_probe_init(&p));
    p.air_speed = 150, p.air_speed_uncertainty = 5, p.recovery_factor = 0.8, p.recovery_uncertainty = 0.05;
    p.entrained_share = 0.2, p.entrained_uncertainty = 0.02, p.stem_share = 0.1, p.stem_uncertainty = 0.02, p.stem_temperature = 300;
    p.unsettled_share = 0.05, p.unsettled_uncertainty = 0.01;
    EXPECT_OK(vtx_probe_reading(&p, 255, &reading));
    for (int i = 0; i < draws; i++) {
        drawn = p;
        drawn.air_speed += p.air_speed_uncertainty * random_normal(&r);
        drawn.recovery_factor += p.recovery_uncertainty * random_normal(&r);
        drawn.entrained_share += p.entrained_uncertainty * random_normal(&r);
        drawn.room_temperature += p.room_uncertainty * random_normal(&r);
        drawn.stem_share += p.stem_uncertainty * random_normal(&r);
        drawn.stem_temperature += p.stem_temperature_uncertainty * random_normal(&r);
        drawn.unsettled_share += p.unsettled_uncertainty * random_normal(&r);
        if (drawn.recovery_factor > 1)
            drawn.recovery_factor = 1;
        EXPECT_OK(vtx_probe_correct(&drawn, reading + 0.5 * random_normal(&r), 0.5, &c));
        sum += c.temperature / draws;
        sum_of_squares += (c.temperature - 255) * (c.temperature - 255) / draws;
    }
    EXPECT_OK(vtx_probe_correct(&p, reading, 0.5, &c));
    /* The standard deviation of 20000 draws is known to 0.5 %; second-order terms here add about 1 %. */
    EXPECT_NEAR(sqrt(sum_of_squares - (sum - 255) * (sum - 255)), c.uncertainty, 0.03);
}

static void waiting_and_unsettled_share_agree(void)
{
    double wait, share;
    EXPECT_OK(vtx_settling_time(10, 30, 0.1, &wait));
    EXPECT_OK(vtx_unsettled_share(10, wait, &share));
    EXPECT_NEAR(share, 0.1 / 30, 1e-12);
    EXPECT_OK(vtx_settling_time(10, 0.05, 0.1, &wait));
    EXPECT(wait == 0);
}

static void hot_end_loss_is_undone(void)
{
    double corrected, uncertainty;
    const double share = exp(-0.2 / (0.004 * 1006));
    EXPECT_OK(vtx_hot_end_correct(293.15 + 40 * share, 0.5, 293.15, 0.2, 0.1, 0.004, 1006, &corrected, &uncertainty));
    EXPECT_NEAR(corrected, 333.15, 1e-12);
    EXPECT_NEAR(uncertainty, hypot(0.5 / share, 40 * 0.1 / (0.004 * 1006)), 1e-3);
    EXPECT_OK(vtx_hot_end_correct(330, 0.5, 293.15, 0, 0, 0.004, 1006, &corrected, NULL));
    EXPECT(corrected == 330);
    EXPECT_STATUS(vtx_hot_end_correct(330, 0.5, 293.15, 20, 0, 0.004, 1006, &corrected, NULL), VTX_OUT_OF_RANGE);
}

static void a_probe_that_is_not_one_is_refused(void)
{
    vtx_probe p;
    double reading;
    EXPECT_STATUS(vtx_probe_init(NULL), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_probe_init(&p));
    p.recovery_factor = 1.1;
    EXPECT_STATUS(vtx_probe_reading(&p, 300, &reading), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_probe_init(&p));
    p.entrained_share = 0.95;
    EXPECT_STATUS(vtx_probe_reading(&p, 300, &reading), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_probe_init(&p));
    p.stem_temperature = (double)NAN;
    EXPECT_STATUS(vtx_probe_reading(&p, 300, &reading), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_probe_init(&p));
    p.reserved[2] = 1;
    EXPECT_STATUS(vtx_probe_reading(&p, 300, &reading), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "worked values are reproduced", worked_values_are_reproduced },
    { "correction undoes the reading", correction_undoes_the_reading },
    { "the uncertainty is the scatter", the_uncertainty_is_the_scatter },
    { "waiting and unsettled share agree", waiting_and_unsettled_share_agree },
    { "hot-end loss is undone", hot_end_loss_is_undone },
    { "a probe that is not one is refused", a_probe_that_is_not_one_is_refused },
};
TEST_SUITE(thermometry, tests);
