/* Uncertainty against Monte Carlo. */
#include <fenv.h>

#include <vtx/uncertainty.h>

#include "sample_job.h"

/* The job with every input moved by a normal draw of its uncertainty, as a user would do it by hand. */
static vtx_job draw(const vtx_job *job, const vtx_input_uncertainty *u, double efficiency_uncertainty, struct random_state *r)
{
    vtx_job j = *job;
    j.cooler.cold_fraction_min = 0;
    j.cooler.cold_fraction_max = 1;
    j.supply.pressure += u->supply_pressure * random_normal(r);
    j.supply.temperature += u->supply_temperature * random_normal(r);
    j.supply.humidity += u->supply_humidity * random_normal(r);
    j.site.pressure += u->site_pressure * random_normal(r);
    j.site.temperature += u->site_temperature * random_normal(r);
    j.cooler.rated_free_air_flow *= 1 + u->rated_flow * random_normal(r);
    j.setting.cold_fraction = fmin(fmax(j.setting.cold_fraction + u->setting * random_normal(r), 0.01), 0.99);
    j.cooler.tube.peak_efficiency = fmin(fmax(j.cooler.tube.peak_efficiency + efficiency_uncertainty * random_normal(r), 0.01), 1);
    j.cooler.tube.efficiency_low = fmin(j.cooler.tube.efficiency_low, j.cooler.tube.peak_efficiency);
    j.cooler.tube.efficiency_high = fmax(j.cooler.tube.efficiency_high, j.cooler.tube.peak_efficiency);
    j.cooler.tube.coldest_fraction = fmin(fmax(j.cooler.tube.coldest_fraction + u->coldest_fraction * random_normal(r), 0.01), 0.49);
    j.duty.target_temperature += u->target_temperature * random_normal(r);
    return j;
}

/* Of cold temperature and capacity. */
struct spread {
    double mean[2], deviation[2];
};

/* 20000 draws fix a standard deviation to 0.5 %. */
enum { DRAWS = 20000 };

static struct spread spread_of(const vtx_job *job, const vtx_input_uncertainty *u)
{
    static const double near[2] = { 260, 280 };
    struct random_state r;
    struct spread s;
    double sum[2] = { 0 }, squares[2] = { 0 };
    random_seed(&r, 51);
    for (int i = 0; i < DRAWS; i++) {
        const vtx_job j = draw(job, u, u->tube_efficiency, &r);
        vtx_operating_point p;
        EXPECT_OK(vtx_job_evaluate(&j, &p, NULL));
        const double x[2] = { p.cold_temperature - near[0], p.target_capacity - near[1] };
        for (int k = 0; k < 2; k++) {
            sum[k] += x[k];
            squares[k] += x[k] * x[k];
        }
    }
    for (int k = 0; k < 2; k++) {
        s.mean[k] = near[k] + sum[k] / DRAWS;
        s.deviation[k] = sqrt((squares[k] - sum[k] * sum[k] / DRAWS) / (DRAWS - 1));
    }
    return s;
}

static const int32_t figures[2] = { VTX_WISHED_COLD_TEMPERATURE, VTX_WISHED_CAPACITY };

static void both_orders_agree_with_monte_carlo(void)
{
    static const struct {
        int32_t model;
        double cold_fraction, efficiency_uncertainty; /* 0.082 is the whole band of an uncalibrated tube */
    } cases[] = { { VTX_AIR_IDEAL, 0.6, 0.03 }, { VTX_AIR_IDEAL, 0.8, 0.082 }, { VTX_AIR_REAL, 0.6, 0.082 }, { VTX_AIR_REAL, 0.3, 0.03 } };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        vtx_job job = sample_job(cases[i].model);
        vtx_input_uncertainty u;
        job.setting.cold_fraction = cases[i].cold_fraction;
        EXPECT_OK(vtx_input_uncertainty_init(&u));
        u.tube_efficiency = cases[i].efficiency_uncertainty;
        u.line_loss = u.site_humidity = 0;
        const struct spread s = spread_of(&job, &u);
        for (int k = 0; k < 2; k++) {
            vtx_figure_uncertainty first;
            vtx_second_order second;
            EXPECT_OK(vtx_job_uncertainty(&job, &u, figures[k], &first));
            EXPECT_OK(vtx_job_second_order(&job, &u, figures[k], &second));
            EXPECT_NEAR(first.standard_uncertainty, s.deviation[k], 0.03);
            EXPECT_NEAR(second.standard_uncertainty, s.deviation[k], 0.02);
            EXPECT(second.enough == 1 && !(first.advisories & VTX_ADVISORY_POORLY_DETERMINED));
            /* the mean of the draws is known to a 140th of a deviation */
            EXPECT_WITHIN(second.value + second.mean_shift, s.mean[k], 0.03 * s.deviation[k]);
        }
    }
}

/* Where the outlet is coldest its slope over the setting is nought: first order sees no uncertainty at all. */
static void the_coldest_setting_needs_the_second_order(void)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    vtx_input_uncertainty u = { .setting = 0.05 };
    vtx_figure_uncertainty first;
    vtx_second_order second;
    vtx_operating_point p;
    double coldest = 1e3, at = 0;
    job.cooler.cold_fraction_min = 0;
    for (double mu = 0.1; mu < 0.6; mu += 1e-3) {
        job.setting.cold_fraction = mu;
        EXPECT_OK(vtx_job_evaluate(&job, &p, NULL));
        if (p.cold_temperature < coldest) {
            coldest = p.cold_temperature;
            at = mu;
        }
    }
    job.setting.cold_fraction = at;
    const struct spread s = spread_of(&job, &u);
    EXPECT_OK(vtx_job_uncertainty(&job, &u, figures[0], &first));
    EXPECT_OK(vtx_job_second_order(&job, &u, figures[0], &second));
    EXPECT(first.advisories & VTX_ADVISORY_POORLY_DETERMINED);
    EXPECT(second.enough == 0 && (second.advisories & VTX_ADVISORY_POORLY_DETERMINED));
    EXPECT(first.standard_uncertainty < 0.5 * s.deviation[0]);
    EXPECT_NEAR(second.standard_uncertainty, s.deviation[0], 0.1);
    EXPECT_NEAR(second.mean_shift, s.mean[0] - second.value, 0.1);
    /* Known exactly, nothing is left of either. */
    u.setting = 0;
    EXPECT_OK(vtx_job_second_order(&job, &u, figures[0], &second));
    EXPECT(second.standard_uncertainty == 0 && second.first_uncertainty == 0 && second.enough == 1);
}

static void an_uncalibrated_tube_is_what_to_measure_next(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_input_uncertainty u;
    vtx_figure_uncertainty f;
    double shares = 0;
    EXPECT_OK(vtx_input_uncertainty_init(&u));
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_COLD_TEMPERATURE, &f));
    EXPECT(f.measure_next == VTX_INPUT_TUBE_EFFICIENCY);
    for (int i = 0; i < 12; i++)
        shares += f.share[i];
    EXPECT_NEAR(shares, 1, 1e-12);
    EXPECT(f.expanded_low < f.value && f.value < f.expanded_high);
    EXPECT(f.sensitivity[VTX_INPUT_SUPPLY_PRESSURE - 580] < 0 && f.sensitivity[VTX_INPUT_TUBE_EFFICIENCY - 580] < 0);
    /* Known exactly, everything is certain. */
    u = (vtx_input_uncertainty){ 0 };
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_COLD_TEMPERATURE, &f));
    EXPECT(f.standard_uncertainty == 0);
}

static void the_line_counts_only_where_there_is_one(void)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    vtx_input_uncertainty u;
    vtx_figure_uncertainty f;
    EXPECT_OK(vtx_input_uncertainty_init(&u));
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_CAPACITY, &f));
    EXPECT(f.share[VTX_INPUT_LINE_LOSS - 580] == 0);
    add_line(&job);
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_CAPACITY, &f));
    EXPECT(f.share[VTX_INPUT_LINE_LOSS - 580] > 0 && f.sensitivity[VTX_INPUT_LINE_LOSS - 580] < 0);
}

/* A muffler that lets no opening give less than about 0.515. */
static void beside_the_last_opening_one_side_stands_for_both(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_input_uncertainty u = { .setting = 0.03 };
    vtx_figure_uncertainty edge, free;
    job.supply.pressure = 701325;
    job.cooler.hot_critical_ratio = 0.3;
    job.setting.cold_fraction = 0.53;
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_COLD_TEMPERATURE, &free));
    job.cooler.hot_conductance = 1.5e-8;
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_COLD_TEMPERATURE, &edge));
    EXPECT(edge.advisories & VTX_ADVISORY_POORLY_DETERMINED && !(free.advisories & VTX_ADVISORY_POORLY_DETERMINED));
    /* The muffler does not change the temperature of a cold fraction: the two slopes differ by curvature alone. */
    EXPECT_NEAR(edge.standard_uncertainty, free.standard_uncertainty, 0.2);
    job.setting.cold_fraction = 0.5;
    EXPECT_STATUS(vtx_job_uncertainty(&job, &u, VTX_WISHED_COLD_TEMPERATURE, &edge), VTX_NO_SOLUTION);
}

static void a_figure_that_the_duty_does_not_state_is_refused(void)
{
    static const int32_t needing[] = { VTX_WISHED_FACE_TEMPERATURE, VTX_WISHED_JET_TEMPERATURE, VTX_WISHED_HEAT_REMOVED, VTX_WISHED_EXPOSURE_TIME };
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    vtx_input_uncertainty u;
    vtx_figure_uncertainty r;
    vtx_second_order s;
    vtx_request request;
    vtx_sizing answer;
    EXPECT_OK(vtx_input_uncertainty_init(&u));
    for (int k = 0; k < 5; k++) {
        const int32_t figure = needing[k < 4 ? k : 3];
        feclearexcept(FE_ALL_EXCEPT);
        EXPECT_STATUS(vtx_job_uncertainty(&job, &u, figure, &r), VTX_BAD_ARGUMENT);
        EXPECT(isnan(r.value) && r.measure_next == -1);
        EXPECT_STATUS(vtx_job_second_order(&job, &u, figure, &s), VTX_BAD_ARGUMENT);
        EXPECT(isnan(s.value) && s.enough == -1);
        EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_COLD_FRACTION, figure, 300, &request));
        EXPECT_STATUS(vtx_size(&job, &request, &answer), VTX_BAD_ARGUMENT);
        EXPECT(!fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW));
        if (k == 3) { /* a face, but no part */
            job.duty.face_area = 2e-3;
            job.duty.standoff = 0.05;
            job.duty.heat_load = 20;
        }
    }
    for (int k = 0; k < 3; k++) {
        EXPECT_OK(vtx_job_uncertainty(&job, &u, needing[k], &r));
        EXPECT(isfinite(r.value) && r.standard_uncertainty > 0);
        EXPECT_OK(vtx_job_second_order(&job, &u, needing[k], &s));
    }
    /* The distance may be what is sought: then the job need not state it. */
    job.duty.standoff = 0;
    EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_STANDOFF, VTX_WISHED_JET_TEMPERATURE, 285, &request));
    EXPECT_OK(vtx_size(&job, &request, &answer));
    /* A part that the jet never gets there has no time, and a step beside it has none either. */
    job.duty.standoff = 0.05;
    job.duty.heat_load = 0;
    job.duty.mass = 0.2;
    job.duty.specific_heat = 480;
    job.duty.start_temperature = 350;
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_EXPOSURE_TIME, &r));
    job.duty.target_temperature = 240;
    feclearexcept(FE_ALL_EXCEPT);
    EXPECT_STATUS(vtx_job_uncertainty(&job, &u, VTX_WISHED_EXPOSURE_TIME, &r), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_job_second_order(&job, &u, VTX_WISHED_EXPOSURE_TIME, &s), VTX_OUT_OF_RANGE);
    EXPECT(!fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW));
}

static void what_the_setting_does_not_hold_is_not_read(void)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    vtx_input_uncertainty u;
    vtx_figure_uncertainty r;
    vtx_second_order s;
    EXPECT_OK(vtx_input_uncertainty_init(&u));
    for (int k = 0; k < 2; k++) {
        job.setting.held = k == 0 ? VTX_HELD_COLD_FRACTION : VTX_HELD_VALVE_OPENING;
        job.setting.cold_fraction = k == 0 ? 0.6 : (double)NAN;
        job.setting.valve_opening = k == 0 ? (double)NAN : 1;
        feclearexcept(FE_ALL_EXCEPT);
        EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_COLD_TEMPERATURE, &r));
        EXPECT_OK(vtx_job_second_order(&job, &u, VTX_WISHED_COLD_TEMPERATURE, &s));
        EXPECT(r.share[VTX_INPUT_SETTING - 580] > 0 && !fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW));
    }
}

static const struct test_case tests[] = {
    { "both orders agree with Monte Carlo", both_orders_agree_with_monte_carlo },
    { "the coldest setting needs the second order", the_coldest_setting_needs_the_second_order },
    { "an uncalibrated tube is what to measure next", an_uncalibrated_tube_is_what_to_measure_next },
    { "the line counts only where there is one", the_line_counts_only_where_there_is_one },
    { "beside the last opening one side stands for both", beside_the_last_opening_one_side_stands_for_both },
    { "a figure that the duty does not state is refused", a_figure_that_the_duty_does_not_state_is_refused },
    { "what the setting does not hold is not read", what_the_setting_does_not_hold_is_not_read },
};
TEST_SUITE(uncertainty, tests);
