/* Causes found again from the readings they give. */
#include "synthetic_service.h"

static const vtx_input_uncertainty exact;

static void each_cause_alone_is_recovered_in_size(void)
{
    static const double shares[] = { 0.05, 0.2, 0.4 };
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (int32_t cause = VTX_CAUSE_LOW_SUPPLY; cause <= VTX_CAUSE_WRONG_GAUGE; cause++)
            for (int k = 0; k < (model == VTX_AIR_REAL ? 1 : 3); k++) {
                const vtx_job job = service_job(model);
                const double size = service_size(cause, model == VTX_AIR_REAL ? 0.15 : shares[k]);
                vtx_service_readings readings;
                vtx_diagnosis d;
                EXPECT_OK(vtx_predict_readings(&job, cause, size, &readings));
                EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
                EXPECT_NEAR(d.size[cause - VTX_CAUSE_NOTHING], size, 1e-6);
                EXPECT(d.chi_square[cause - VTX_CAUSE_NOTHING] < 1e-6);
                EXPECT(d.order[0] == cause || d.partners > 0 || d.chi_square[0] < 16);
            }
}

static void a_healthy_cooler_is_called_healthy(void)
{
    const vtx_job job = service_job(VTX_AIR_IDEAL);
    struct random_state r;
    int alarms = 0;
    random_seed(&r, 71);
    for (int i = 0; i < 60; i++) {
        vtx_service_readings readings;
        vtx_diagnosis d;
        EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_NOTHING, 0, &readings));
        for (int k = 0; k < 8; k++)
            readings.value[k] += readings.uncertainty[k] * random_normal(&r);
        EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
        alarms += d.order[0] != VTX_CAUSE_NOTHING;
    }
    /* 5 % of 60 is 3; 9 or more would come once in 500 runs of a right program. */
    EXPECT(alarms < 9);
}

static void causes_that_gauges_cannot_tell_apart_are_a_pair(void)
{
    const vtx_job job = service_job(VTX_AIR_IDEAL);
    vtx_service_readings readings;
    vtx_diagnosis d;
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_BLOCKED_HOT_OUTLET, 0.3, &readings));
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.order[0] == VTX_CAUSE_BLOCKED_HOT_OUTLET || d.order[0] == VTX_CAUSE_WRONG_VALVE);
    EXPECT(d.partner == VTX_CAUSE_BLOCKED_HOT_OUTLET || d.partner == VTX_CAUSE_WRONG_VALVE);
    EXPECT(d.partner != d.order[0] && d.partners >= 1 && (d.advisories & VTX_ADVISORY_INDISTINGUISHABLE));
    EXPECT_NEAR(d.size[VTX_CAUSE_WRONG_VALVE - VTX_CAUSE_NOTHING], -d.size[VTX_CAUSE_BLOCKED_HOT_OUTLET - VTX_CAUSE_NOTHING], 1e-4);
}

static void the_next_reading_tells_a_low_supply_from_a_loaded_filter(void)
{
    const vtx_job job = service_job(VTX_AIR_IDEAL);
    vtx_service_readings readings;
    vtx_diagnosis d;
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_LOW_SUPPLY, 0.2, &readings));
    readings.value[VTX_READ_SUPPLY_PRESSURE - 600] = (double)NAN;
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.order[0] == VTX_CAUSE_LOW_SUPPLY || d.order[0] == VTX_CAUSE_LOADED_FILTER);
    EXPECT(d.separation[VTX_CAUSE_LOADED_FILTER - 620] < 3.29 && d.separation[VTX_CAUSE_LOW_SUPPLY - 620] < 3.29);
    EXPECT(d.next_reading == VTX_READ_SUPPLY_PRESSURE && d.next_separation > 3.29);
    /* With it, the cause is clear. */
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_LOW_SUPPLY, 0.2, &readings));
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.order[0] == VTX_CAUSE_LOW_SUPPLY && d.separation[VTX_CAUSE_LOADED_FILTER - 620] > 3.29);
}

/* Which reading is worth its trouble is the caller's to weigh: what each would tell is there, and what cannot be read is never proposed. */
static void the_next_reading_is_one_that_can_be_taken(void)
{
    const vtx_job job = service_job(VTX_AIR_IDEAL);
    vtx_service_readings all, readings;
    vtx_diagnosis d;
    int proposed = 0;
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_WORN_NOZZLE, 0.3, &all));
    readings = all;
    for (int i = 0; i < 8; i++)
        if (i != 1 && i != 3)
            readings.value[i] = (double)NAN;
    for (int left = 6; left >= 0; left--) {
        int best = -1, offered = 0;
        EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
        for (int i = 0; i < 8; i++) {
            const int is_open = isnan(readings.value[i]) && !isnan(readings.uncertainty[i]);
            EXPECT(isfinite(d.reading_separation[i]) == is_open);
            offered += is_open;
            if (is_open && (best < 0 || d.reading_separation[i] > d.reading_separation[best]))
                best = i;
        }
        EXPECT(offered == left);
        if (best < 0) {
            EXPECT(d.next_reading == -1 && isnan(d.next_separation));
            break;
        }
        EXPECT(d.next_reading == 600 + best);
        EXPECT(d.next_separation == d.reading_separation[best]);
        readings.uncertainty[best] = (double)NAN; /* no such instrument here */
        proposed++;
    }
    EXPECT(proposed == 6);
    /* Nothing is wrong: nothing to tell apart. */
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_NOTHING, 0, &readings));
    readings.value[5] = (double)NAN;
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.next_reading == -1 && isnan(d.reading_separation[5]));
    /* An instrument that read something has an uncertainty. */
    readings.value[5] = all.value[5];
    readings.uncertainty[5] = (double)NAN;
    EXPECT_STATUS(vtx_diagnose(&job, &exact, &readings, &d), VTX_BAD_ARGUMENT);
}

static void readings_that_cannot_be_are_named(void)
{
    const vtx_job job = service_job(VTX_AIR_IDEAL);
    vtx_service_readings readings;
    vtx_diagnosis d;
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_NOTHING, 0, &readings));
    readings.value[VTX_READ_COLD_FLOW - 600] = 1.2 * readings.value[VTX_READ_INLET_FLOW - 600];
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.contradiction == VTX_CONTRADICTION_FLOWS && d.wrong_reading == VTX_READ_COLD_FLOW);
    EXPECT(d.advisories & VTX_ADVISORY_IMPOSSIBLE_READINGS);
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_NOTHING, 0, &readings));
    readings.value[VTX_READ_HOT_TEMPERATURE - 600] = readings.value[VTX_READ_INLET_TEMPERATURE - 600] - 10;
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.contradiction == VTX_CONTRADICTION_BOTH_COLDER && d.wrong_reading == VTX_READ_HOT_TEMPERATURE);
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_NOTHING, 0, &readings));
    readings.value[VTX_READ_COLD_TEMPERATURE - 600] = 150;
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.contradiction == VTX_CONTRADICTION_ENTROPY && d.wrong_reading == VTX_READ_COLD_TEMPERATURE);
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_NOTHING, 0, &readings));
    readings.value[VTX_READ_COLD_FLOW - 600] *= 0.6;
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.contradiction == VTX_CONTRADICTION_COLD_FRACTION && d.wrong_reading == VTX_READ_COLD_FLOW);
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_NOTHING, 0, &readings));
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.contradiction == VTX_CONTRADICTION_NONE && d.wrong_reading == -1);
}

static void the_wrong_reading_is_found_beside_a_real_fault(void)
{
    static const int32_t wrong[] = { VTX_READ_COLD_TEMPERATURE, VTX_READ_HOT_TEMPERATURE, VTX_READ_COLD_FLOW };
    const vtx_job job = service_job(VTX_AIR_IDEAL);
    struct random_state r;
    int named = 0, tried = 0;
    random_seed(&r, 907);
    for (int i = 0; i < 45; i++) {
        const int32_t cause = VTX_CAUSE_LOW_SUPPLY + i % 11;
        vtx_service_readings clean, taken;
        vtx_diagnosis d;
        EXPECT_OK(vtx_predict_readings(&job, cause, draw_service_size(&r, cause), &clean));
        take_readings(&r, &clean, service_set[2], &taken);
        const int spoiled = wrong[i % 3] - VTX_READ_SUPPLY_PRESSURE;
        /* Below a reversible expansion; below the inlet; more than flows in. */
        taken.value[spoiled] = i % 3 == 0 ? 150 : i % 3 == 1 ? taken.value[2] - 15 : 1.3 * taken.value[5];
        EXPECT_OK(vtx_diagnose(&job, &exact, &taken, &d));
        EXPECT(d.contradiction != VTX_CONTRADICTION_NONE);
        named += d.wrong_reading == wrong[i % 3];
        tried++;
    }
    EXPECT(named >= 0.95 * tried);
}

static void what_cannot_be_diagnosed_is_refused(void)
{
    vtx_job job = service_job(VTX_AIR_IDEAL);
    vtx_service_readings readings;
    vtx_diagnosis d;
    EXPECT_OK(vtx_service_readings_init(&readings));
    EXPECT_STATUS(vtx_diagnose(&job, &exact, &readings, &d), VTX_BAD_ARGUMENT);
    EXPECT(isnan(d.size[0]) && d.order[0] == -1 && d.advisories == -1);
    EXPECT_STATUS(vtx_predict_readings(&job, VTX_CAUSE_WORN_NOZZLE, -0.5, &readings), VTX_OUT_OF_RANGE);
    job.elements = 0;
    EXPECT_STATUS(vtx_predict_readings(&job, VTX_CAUSE_LOADED_FILTER, 1, &readings), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_WORN_NOZZLE, 0.2, &readings));
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(isnan(d.size[VTX_CAUSE_LOADED_FILTER - 620]) && d.order[12] == VTX_CAUSE_LOADED_FILTER);
}

/* Uncertain tubes are no faults, whatever the tube; the same tube known well is. */
static void what_is_not_known_of_the_cooler_is_no_fault(void)
{
    const vtx_job described = service_job(VTX_AIR_IDEAL);
    const vtx_input_uncertainty tube_alone = { .tube_efficiency = 0.03, .coldest_fraction = 0.03 };
    struct random_state r;
    int alarms = 0, believed = 0;
    random_seed(&r, 411);
    for (int i = 0; i < 60; i++) {
        vtx_job truth = described;
        vtx_service_readings clean, taken;
        vtx_diagnosis d;
        truth.cooler.tube.peak_efficiency += 0.03 * random_normal(&r);
        truth.cooler.tube.coldest_fraction += 0.03 * random_normal(&r);
        EXPECT_OK(vtx_predict_readings(&truth, VTX_CAUSE_NOTHING, 0, &clean));
        take_readings(&r, &clean, service_set[2], &taken);
        EXPECT_OK(vtx_diagnose(&described, &tube_alone, &taken, &d));
        alarms += d.order[0] != VTX_CAUSE_NOTHING;
        EXPECT_OK(vtx_diagnose(&described, &exact, &taken, &d));
        believed += d.order[0] != VTX_CAUSE_NOTHING;
    }
    /* As above; the tube that is taken for exactly known is called faulty more often than not. */
    EXPECT(alarms < 9);
    EXPECT(believed > 30);
}

static void a_heat_leak_is_no_wrong_reading(void)
{
    const vtx_job job = service_job(VTX_AIR_IDEAL);
    vtx_service_readings readings;
    vtx_diagnosis d;
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_HEAT_LEAK, 0.15, &readings));
    EXPECT_OK(vtx_diagnose(&job, &exact, &readings, &d));
    EXPECT(d.order[0] == VTX_CAUSE_HEAT_LEAK && d.contradiction == VTX_CONTRADICTION_NONE && d.wrong_reading == -1);
}

/* A quarter of the hot outlet blocked is within what a valve's setting known to 3 % of the feed leaves open. */
static void what_the_description_hides_shows_in_the_size(void)
{
    const vtx_job job = service_job(VTX_AIR_REAL);
    const int hot = VTX_CAUSE_BLOCKED_HOT_OUTLET - VTX_CAUSE_NOTHING;
    vtx_input_uncertainty u;
    vtx_service_readings readings;
    vtx_diagnosis vague, sharp;
    EXPECT_OK(vtx_input_uncertainty_init(&u));
    u.tube_efficiency = 0.02;
    EXPECT_OK(vtx_predict_readings(&job, VTX_CAUSE_BLOCKED_HOT_OUTLET, 0.25, &readings));
    EXPECT_OK(vtx_diagnose(&job, &u, &readings, &vague));
    EXPECT(vague.order[0] == VTX_CAUSE_NOTHING);
    EXPECT(vague.next_reading == -1 && isnan(vague.next_separation) && vague.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE);
    EXPECT_NEAR(vague.size[hot], 0.25, 1e-6);
    EXPECT(vague.size[hot] < 4 * vague.size_uncertainty[hot]);
    u.setting = 0.005;
    EXPECT_OK(vtx_diagnose(&job, &u, &readings, &sharp));
    EXPECT(sharp.order[0] != VTX_CAUSE_NOTHING && sharp.size[hot] > 4 * sharp.size_uncertainty[hot]);
    EXPECT(sharp.size_uncertainty[hot] < 0.5 * vague.size_uncertainty[hot]);
}

static void air_that_varies_is_no_fault(void)
{
    const vtx_job described = service_job(VTX_AIR_IDEAL);
    const vtx_input_uncertainty of_the_air = { .supply_pressure = 2e4, .supply_temperature = 5 };
    vtx_job truth = described;
    vtx_service_readings clean, taken;
    vtx_diagnosis d;
    truth.supply.temperature -= 8;
    truth.supply.pressure += 3e4;
    EXPECT_OK(vtx_predict_readings(&truth, VTX_CAUSE_NOTHING, 0, &clean));
    take_readings(NULL, &clean, service_set[2], &taken);
    EXPECT_OK(vtx_diagnose(&described, &of_the_air, &taken, &d));
    EXPECT(d.order[0] == VTX_CAUSE_NOTHING && !(d.advisories & VTX_ADVISORY_MODEL_MISFIT));
    /* A fault on top is found all the same. */
    EXPECT_OK(vtx_predict_readings(&truth, VTX_CAUSE_WORN_NOZZLE, 0.2, &clean));
    take_readings(NULL, &clean, service_set[2], &taken);
    EXPECT_OK(vtx_diagnose(&described, &of_the_air, &taken, &d));
    EXPECT(d.order[0] == VTX_CAUSE_WORN_NOZZLE);
    EXPECT_NEAR(d.size[VTX_CAUSE_WORN_NOZZLE - VTX_CAUSE_NOTHING], 0.2, 0.05);
}

static const struct test_case tests[] = {
    { "each cause alone is recovered in size", each_cause_alone_is_recovered_in_size },
    { "a healthy cooler is called healthy", a_healthy_cooler_is_called_healthy },
    { "what is not known of the cooler is no fault", what_is_not_known_of_the_cooler_is_no_fault },
    { "a heat leak is no wrong reading", a_heat_leak_is_no_wrong_reading },
    { "air that varies is no fault", air_that_varies_is_no_fault },
    { "causes that gauges cannot tell apart are a pair", causes_that_gauges_cannot_tell_apart_are_a_pair },
    { "the next reading tells a low supply from a loaded filter", the_next_reading_tells_a_low_supply_from_a_loaded_filter },
    { "the next reading is one that can be taken", the_next_reading_is_one_that_can_be_taken },
    { "what the description hides shows in the size", what_the_description_hides_shows_in_the_size },
    { "readings that cannot be are named", readings_that_cannot_be_are_named },
    { "the wrong reading is found beside a real fault", the_wrong_reading_is_found_beside_a_real_fault },
    { "what cannot be diagnosed is refused", what_cannot_be_diagnosed_is_refused },
};
TEST_SUITE(diagnosis, tests);
