/* First-order uncertainty against Monte Carlo. */
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
    j.cooler.tube.coldest_fraction = fmin(fmax(j.cooler.tube.coldest_fraction + u->coldest_fraction * random_normal(r), 0.05), 0.45);
    j.duty.target_temperature += u->target_temperature * random_normal(r);
    return j;
}

static double spread(const vtx_job *job, const vtx_input_uncertainty *u, double efficiency_uncertainty, int cold, int draws)
{
    struct random_state r;
    double sum = 0, squares = 0;
    random_seed(&r, 51);
    for (int i = 0; i < draws; i++) {
        const vtx_job j = draw(job, u, efficiency_uncertainty, &r);
        vtx_operating_point p;
        EXPECT_OK(vtx_job_evaluate(&j, &p, NULL));
        const double x = cold ? p.cold_temperature - 260 : p.target_capacity - 280;
        sum += x;
        squares += x * x;
    }
    return sqrt((squares - sum * sum / draws) / (draws - 1));
}

static void first_order_agrees_with_monte_carlo(void)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    vtx_input_uncertainty u;
    vtx_figure_uncertainty f;
    EXPECT_OK(vtx_input_uncertainty_init(&u));
    u.tube_efficiency = 0.03;
    u.line_loss = 0;
    u.site_humidity = 0;
    /* 20000 draws fix a standard deviation to 0.5 %. */
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_COLD_TEMPERATURE, &f));
    EXPECT_NEAR(f.standard_uncertainty, spread(&job, &u, 0.03, 1, 20000), 0.03);
    EXPECT_OK(vtx_job_uncertainty(&job, &u, VTX_WISHED_CAPACITY, &f));
    EXPECT_NEAR(f.standard_uncertainty, spread(&job, &u, 0.03, 0, 20000), 0.03);
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

static const struct test_case tests[] = {
    { "first order agrees with Monte Carlo", first_order_agrees_with_monte_carlo },
    { "an uncalibrated tube is what to measure next", an_uncalibrated_tube_is_what_to_measure_next },
    { "the line counts only where there is one", the_line_counts_only_where_there_is_one },
};
TEST_SUITE(uncertainty, tests);
