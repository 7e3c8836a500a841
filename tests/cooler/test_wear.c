/* Nozzle and efficiency found again, and followed over visits. */
#include <vtx/trend.h>
#include <vtx/wear.h>

#include "sample_job.h"

static vtx_job new_job(int32_t model)
{
    vtx_job job = sample_job(model);
    job.supply.pressure = 7.5e5;
    job.supply.humidity_kind = VTX_SUPPLY_FROST_POINT;
    job.supply.humidity = 253.15;
    job.setting.held = VTX_HELD_VALVE_OPENING;
    vtx_chain_hose(0.0063, 8, &job.line[0]);
    job.elements = 1;
    return job;
}

static vtx_job worn_job(const vtx_job *job, double area, double efficiency)
{
    vtx_job worn = *job;
    worn.cooler.inlet_area_factor = area;
    worn.cooler.tube.peak_efficiency = efficiency;
    worn.cooler.tube.efficiency_low = fmin(worn.cooler.tube.efficiency_low, efficiency);
    return worn;
}

/* From visit to visit only supply, site and humidity differ. */
static vtx_input_uncertainty between_visits(void)
{
    vtx_input_uncertainty u;
    EXPECT_OK(vtx_input_uncertainty_init(&u));
    u.rated_flow = u.coldest_fraction = u.setting = u.line_loss = 0;
    return u;
}

static const int32_t thermometers_only[] = { VTX_READ_SUPPLY_PRESSURE, VTX_READ_INLET_FLOW, VTX_READ_COLD_FLOW, VTX_READ_COLD_PRESSURE };

static void both_are_found_again(void)
{
    vtx_input_uncertainty u = between_visits();
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (int i = 0; i < 8; i++) {
            const vtx_job job = new_job(model);
            vtx_job worn = worn_job(&job, 0.85 + 0.06 * i, 0.30 - 0.015 * i);
            vtx_service_readings readings;
            vtx_wear wear;
            worn.supply.pressure = 7.1e5; /* read, so it need not be as described */
            u.setting = i % 2 ? 0.03 : 0;
            EXPECT_OK(vtx_predict_readings(&worn, VTX_CAUSE_NOTHING, 0, &readings));
            readings.value[VTX_READ_COLD_FLOW - VTX_READ_SUPPLY_PRESSURE] = (double)NAN;
            EXPECT_OK(vtx_find_wear(&job, &u, &readings, &wear));
            EXPECT_NEAR(wear.inlet_area_factor, 0.85 + 0.06 * i, 1e-8);
            EXPECT_NEAR(wear.peak_efficiency, 0.30 - 0.015 * i, 1e-8);
            EXPECT(wear.chi_square < 1e-12 && wear.readings == 7 && wear.freedom == 3);
            EXPECT(wear.inlet_area_factor_uncertainty < 0.03 && wear.peak_efficiency_uncertainty < 0.02 && fabs(wear.correlation) < 1);
        }
}

static void what_the_readings_do_not_see_is_not_given(void)
{
    const vtx_input_uncertainty u = between_visits();
    vtx_job job = new_job(VTX_AIR_IDEAL);
    vtx_service_readings readings, some;
    vtx_wear wear;
    job.elements = 0;
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_NOTHING, 0, &readings));
    some = readings;
    some.value[VTX_READ_COLD_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE] = some.value[VTX_READ_HOT_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE] = (double)NAN;
    EXPECT_OK(vtx_find_wear(&job, &u, &some, &wear));
    EXPECT(isnan(wear.peak_efficiency) && isnan(wear.correlation) && (wear.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
    EXPECT_NEAR(wear.inlet_area_factor, 1, 1e-8);
    some = readings;
    for (size_t k = 0; k < sizeof thermometers_only / sizeof thermometers_only[0]; k++)
        some.value[thermometers_only[k] - VTX_READ_SUPPLY_PRESSURE] = (double)NAN;
    EXPECT_OK(vtx_find_wear(&job, &u, &some, &wear));
    EXPECT_NEAR(wear.peak_efficiency, 0.28, 1e-6);
    EXPECT(wear.inlet_area_factor_uncertainty > 0.02 || isnan(wear.inlet_area_factor_uncertainty));
    EXPECT_OK(vtx_service_readings_init(&some));
    some.value[VTX_READ_INLET_PRESSURE - VTX_READ_SUPPLY_PRESSURE] = 7.5e5;
    some.value[VTX_READ_INLET_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE] = 293.15;
    EXPECT_STATUS(vtx_find_wear(&job, &u, &some, &wear), VTX_NO_SOLUTION);
    EXPECT(isnan(wear.inlet_area_factor) && wear.freedom == -1);
    some.value[VTX_READ_INLET_TEMPERATURE - VTX_READ_SUPPLY_PRESSURE] = (double)NAN;
    EXPECT_STATUS(vtx_find_wear(&job, &u, &some, &wear), VTX_BAD_ARGUMENT);
}

static void expect_interval_holds(int hits, int draws)
{
    const double share = (double)hits / draws;
    EXPECT(share > 0.93 - 3.89 * sqrt(0.93 * 0.07 / draws) && share < 0.97 + 3.89 * sqrt(0.97 * 0.03 / draws));
}

static vtx_service_readings visit(struct random_state *r, const vtx_job *worn, const vtx_input_uncertainty *u)
{
    vtx_job there = *worn;
    vtx_service_readings readings;
    there.supply.pressure += 2e4 * random_normal(r);
    there.supply.temperature += 3 * random_normal(r);
    there.site.pressure += u->site_pressure * random_normal(r);
    there.supply.humidity += u->supply_humidity * random_normal(r);
    EXPECT_OK(vtx_predict_readings(&there, VTX_CAUSE_NOTHING, 0, &readings));
    for (int k = 0; k < 8; k++)
        readings.value[k] += readings.uncertainty[k] * random_normal(r);
    return readings;
}

static void uncertainties_of_a_visit_hold(void)
{
    const vtx_input_uncertainty u = between_visits();
    const vtx_job job = new_job(VTX_AIR_IDEAL);
    const int draws = soak_count(200);
    struct random_state r;
    int area_hits = 0, efficiency_hits = 0;
    random_seed(&r, 95);
    for (int i = 0; i < draws; i++) {
        const double area = random_uniform(&r, 0.8, 1.3), efficiency = random_uniform(&r, 0.15, 0.32);
        const vtx_job worn = worn_job(&job, area, efficiency);
        const vtx_service_readings readings = visit(&r, &worn, &u);
        vtx_wear wear;
        EXPECT_OK(vtx_find_wear(&job, &u, &readings, &wear));
        area_hits += fabs(wear.inlet_area_factor - area) < 1.96 * wear.inlet_area_factor_uncertainty;
        efficiency_hits += fabs(wear.peak_efficiency - efficiency) < 1.96 * wear.peak_efficiency_uncertainty;
    }
    expect_interval_holds(area_hits, draws);
    expect_interval_holds(efficiency_hits, draws);
    if (getenv("VTX_SOAK"))
        printf("  wear: 95 %% intervals hold %.2f %% (area) and %.2f %% (efficiency) of %d\n", 100.0 * area_hits / draws,
               100.0 * efficiency_hits / draws, draws);
}

/* Visits every quarter of a year, read, fitted, trended: the date at which the efficiency falls to its limit. */
static void visits_date_the_end_of_a_tube(void)
{
    enum { VISITS = 6 };
    static const double quarter = 7.9e6;
    const vtx_input_uncertainty u = between_visits();
    const vtx_job job = new_job(VTX_AIR_IDEAL);
    const int draws = soak_count(100);
    struct random_state r;
    int hits = 0;
    random_seed(&r, 96);
    for (int i = 0; i < draws; i++) {
        const double rate = random_uniform(&r, 0.006, 0.012) / quarter, wear_rate = random_uniform(&r, 0.01, 0.04) / quarter;
        double times[VISITS], values[VISITS], uncertainties[VISITS];
        vtx_trend trend;
        vtx_trend_crossing c;
        for (int k = 0; k < VISITS; k++) {
            times[k] = quarter * k;
            const vtx_job worn = worn_job(&job, 1 + wear_rate * times[k], 0.28 - rate * times[k]);
            const vtx_service_readings readings = visit(&r, &worn, &u);
            vtx_wear wear;
            EXPECT_OK(vtx_find_wear(&job, &u, &readings, &wear));
            values[k] = wear.peak_efficiency;
            uncertainties[k] = wear.peak_efficiency_uncertainty;
        }
        EXPECT_OK(vtx_trend_fit(times, values, uncertainties, VISITS, VTX_TREND_EVEN, &trend));
        EXPECT_OK(vtx_trend_crosses(&trend, 0.2, VTX_TOLERANCE_LOWER, times[VISITS - 1], 0.95, &c));
        EXPECT(c.verdict == VTX_TREND_DATED);
        hits += c.earliest <= 0.08 / rate && 0.08 / rate <= c.latest;
    }
    expect_interval_holds(hits, draws);
    if (getenv("VTX_SOAK"))
        printf("  date of an efficiency's limit from six visits: holds %.2f %% of %d\n", 100.0 * hits / draws, draws);
}

static const struct test_case tests[] = {
    { "both are found again", both_are_found_again },
    { "what the readings do not see is not given", what_the_readings_do_not_see_is_not_given },
    { "uncertainties of a visit hold", uncertainties_of_a_visit_hold },
    { "visits date the end of a tube", visits_date_the_end_of_a_tube },
};
TEST_SUITE(wear, tests);
