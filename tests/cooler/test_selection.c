/* The choice among coolers. */
#include <vtx/selection.h>

#include "sample_job.h"

enum { COUNT = 5 };

static void list(vtx_cooler coolers[COUNT])
{
    static const double flows[COUNT] = { 1200, 120, 2000, 300, 600 }; /* L/min, out of order */
    for (int i = 0; i < COUNT; i++) {
        sample_cooler(&coolers[i]);
        coolers[i].rated_free_air_flow = flows[i] / 60e3;
    }
}

static void the_smallest_that_is_enough_is_chosen(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_cooler coolers[COUNT];
    vtx_requirements r;
    vtx_chosen_cooler chosen;
    list(coolers);
    EXPECT_OK(vtx_requirements_init(VTX_QUESTION_TYPICAL, &r));
    r.capacity = 250;
    EXPECT_OK(vtx_smallest_cooler(&job, coolers, COUNT, &r, &chosen));
    EXPECT(chosen.index == 4);
    /* It meets the wish at the setting given, and the next smaller one does not at any setting. */
    vtx_job check = job;
    vtx_operating_point p;
    check.cooler = coolers[4];
    check.setting.cold_fraction = chosen.cold_fraction;
    EXPECT_OK(vtx_job_evaluate(&check, &p, NULL));
    EXPECT(p.target_capacity >= 250);
    check.cooler = coolers[3];
    for (double mu = 0.2; mu <= 0.8; mu += 0.01) {
        check.setting.cold_fraction = mu;
        EXPECT_OK(vtx_job_evaluate(&check, &p, NULL));
        EXPECT(p.target_capacity < 250);
    }
}

static void a_temperature_limit_costs_cold_fraction(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_cooler coolers[COUNT];
    vtx_requirements r;
    vtx_verdict free_choice[COUNT], limited[COUNT];
    list(coolers);
    EXPECT_OK(vtx_requirements_init(VTX_QUESTION_TYPICAL, &r));
    r.capacity = 250;
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, free_choice));
    r.cold_temperature = 262;
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, limited));
    for (int i = 0; i < COUNT; i++) {
        EXPECT(limited[i].cold_fraction < free_choice[i].cold_fraction);
        EXPECT_WITHIN(limited[i].cold_temperature, 262, 1e-8);
        EXPECT(limited[i].capacity < free_choice[i].capacity);
    }
    r.cold_temperature = 240;
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, limited));
    for (int i = 0; i < COUNT; i++) {
        EXPECT(limited[i].failed == VTX_FAILED_COLD_TEMPERATURE && limited[i].rank == 0);
        EXPECT_WITHIN(limited[i].short_by, limited[i].cold_temperature - 240, 1e-6);
    }
}

static void each_rejected_entry_says_what_it_failed_and_by_how_much(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_cooler coolers[COUNT];
    vtx_requirements r;
    vtx_verdict v[COUNT];
    const double costs[COUNT] = { 5, 1, 2, 3, 4 };
    list(coolers);
    coolers[0].noise_level = 95;
    EXPECT_OK(vtx_requirements_init(VTX_QUESTION_SIZING, &r));
    r.capacity = 200;
    r.air_flow = 1.5e3 / 60e3;
    r.noise_level = 85;
    r.noise_distance = 2;
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, costs, &r, v));
    EXPECT(v[0].failed == VTX_FAILED_NOISE);
    EXPECT_WITHIN(v[0].short_by, 95 - 20 * log10(2.0) - 85, 1e-9);
    EXPECT(v[1].failed == VTX_FAILED_CAPACITY);
    EXPECT_WITHIN(v[1].short_by, 200 - v[1].capacity, 1e-9);
    EXPECT(v[2].failed == VTX_FAILED_AIR_FLOW);
    EXPECT_WITHIN(v[2].short_by, v[2].air_flow - r.air_flow, 1e-12);
    EXPECT(v[4].failed == VTX_FAILED_NONE && v[4].rank >= 1);
    EXPECT(v[4].cost == 4);
    /* The careful side is asked: with the typical tube the capacities are larger. */
    vtx_verdict typical[COUNT];
    r.question = VTX_QUESTION_TYPICAL;
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, costs, &r, typical));
    EXPECT(typical[1].capacity > v[1].capacity);
}

static void ranks_follow_the_cost(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_cooler coolers[COUNT];
    vtx_requirements r;
    vtx_verdict v[COUNT];
    const double costs[COUNT] = { 5, 1, 2, 3, 4 };
    list(coolers);
    EXPECT_OK(vtx_requirements_init(VTX_QUESTION_TYPICAL, &r));
    r.capacity = 10;
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, costs, &r, v));
    for (int i = 0; i < COUNT; i++)
        EXPECT(v[i].rank == (int32_t)costs[i]);
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, v));
    EXPECT(v[1].rank == 1 && v[3].rank == 2 && v[2].rank == 5);
}

static void an_impossible_wish_names_the_most_that_the_list_can(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_cooler coolers[COUNT];
    vtx_requirements r;
    vtx_chosen_cooler chosen;
    vtx_verdict v[COUNT];
    list(coolers);
    EXPECT_OK(vtx_requirements_init(VTX_QUESTION_TYPICAL, &r));
    r.capacity = 1e5;
    EXPECT_STATUS(vtx_smallest_cooler(&job, coolers, COUNT, &r, &chosen), VTX_NO_SOLUTION);
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, v));
    EXPECT(chosen.index == -1 && isnan(chosen.cost) && chosen.attainable_index == 2);
    EXPECT_NEAR(chosen.attainable_capacity, v[2].capacity, 1e-12);
    EXPECT(isfinite(chosen.attainable_temperature));
}

static void a_face_that_cannot_take_the_air_s_cold_is_seen(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_cooler coolers[COUNT];
    vtx_requirements r;
    vtx_verdict v[COUNT];
    list(coolers);
    job.duty.face_area = 12e-4;
    job.duty.standoff = 0.025;
    EXPECT_OK(vtx_requirements_init(VTX_QUESTION_TYPICAL, &r));
    r.capacity = r.face_heat = 60;
    EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, v));
    for (int i = 0; i < COUNT; i++) {
        EXPECT(v[i].face_heat < v[i].capacity);
        EXPECT((v[i].failed == VTX_FAILED_NONE) == (v[i].face_heat >= 60 && v[i].capacity >= 60));
        if (v[i].failed == VTX_FAILED_FACE_HEAT)
            EXPECT_WITHIN(v[i].short_by, 60 - v[i].face_heat, 1e-9);
    }
    job.duty.standoff = 0;
    EXPECT_STATUS(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, v), VTX_BAD_ARGUMENT);
}

static void a_day_beside_the_cooler_must_be_allowed_by_the_rule(void)
{
    static const int32_t rules[] = { VTX_NOISE_RULE_OSHA_FORMULA, VTX_NOISE_RULE_OSHA_TABLE, VTX_NOISE_RULE_NIOSH,
                                     VTX_NOISE_RULE_EU_LOWER_ACTION, VTX_NOISE_RULE_EU_UPPER_ACTION, VTX_NOISE_RULE_EU_LIMIT };
    /* 4 h at 92 and at 86 dB(A): allowed 6.06, 6, 1.59, 0.50, 1.60, 2.53 h and all day, all day, 6.35, 2.01, 6.35, 10.07 h. */
    static const int loud_passes[] = { 1, 1, 0, 0, 0, 0 }, quiet_passes[] = { 1, 1, 1, 0, 1, 1 };
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_cooler coolers[COUNT];
    vtx_requirements r;
    vtx_verdict v[COUNT];
    list(coolers);
    coolers[2].noise_level = 92;
    coolers[4].noise_level = 86;
    coolers[0].noise_level = 0;
    EXPECT_OK(vtx_requirements_init(VTX_QUESTION_TYPICAL, &r));
    r.capacity = 200;
    r.noise_time = 4 * 3600;
    EXPECT_STATUS(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, v), VTX_BAD_ARGUMENT); /* no rule */
    for (size_t i = 0; i < sizeof rules / sizeof rules[0]; i++) {
        double allowed;
        r.noise_rule = rules[i];
        EXPECT_OK(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, v));
        EXPECT_OK(vtx_noise_rule_time(rules[i], 92, &allowed));
        EXPECT_WITHIN(v[2].noise_time, allowed, 1e-6);
        EXPECT((v[2].failed == VTX_FAILED_NONE) == loud_passes[i] && (v[4].failed == VTX_FAILED_NONE) == quiet_passes[i]);
        EXPECT(v[0].failed == VTX_FAILED_NONE && isnan(v[0].noise_time) && (v[0].advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
        if (!loud_passes[i]) {
            EXPECT(v[2].failed == VTX_FAILED_NOISE_TIME && v[2].rank == 0);
            EXPECT_WITHIN(v[2].short_by, 4 * 3600 - allowed, 1e-6);
        }
    }
    /* Two that run are 3 dB louder; a rule alone informs and rejects nothing. */
    vtx_job two = job;
    double allowed;
    two.running = 2;
    r.noise_time = 0;
    EXPECT_OK(vtx_rank_coolers(&two, coolers, COUNT, NULL, &r, v));
    EXPECT_OK(vtx_noise_rule_time(r.noise_rule, 92 + 10 * log10(2), &allowed));
    EXPECT_WITHIN(v[2].noise_time, allowed, 1e-6);
    EXPECT(v[2].failed == VTX_FAILED_NONE);
    r.noise_rule = 1;
    EXPECT_STATUS(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, v), VTX_BAD_ARGUMENT);
}

static void lists_that_make_no_sense_are_refused(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_cooler coolers[COUNT];
    vtx_requirements r;
    vtx_chosen_cooler chosen;
    vtx_verdict v[COUNT];
    list(coolers);
    EXPECT_STATUS(vtx_requirements_init(0, &r), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_requirements_init(VTX_QUESTION_TYPICAL, &r));
    EXPECT_STATUS(vtx_smallest_cooler(&job, coolers, COUNT, &r, &chosen), VTX_BAD_ARGUMENT); /* capacity not given */
    r.capacity = 100;
    EXPECT_STATUS(vtx_smallest_cooler(&job, coolers, 0, &r, &chosen), VTX_BAD_ARGUMENT);
    EXPECT(chosen.index == -1 && chosen.attainable_index == -1 && isnan(chosen.attainable_capacity));
    EXPECT_STATUS(vtx_smallest_cooler(&job, NULL, COUNT, &r, &chosen), VTX_BAD_ARGUMENT);
    r.reserved[3] = 1;
    EXPECT_STATUS(vtx_smallest_cooler(&job, coolers, COUNT, &r, &chosen), VTX_BAD_ARGUMENT);
    r.reserved[3] = 0;
    double *const limits[] = { &r.cold_temperature, &r.air_flow, &r.noise_level, &r.noise_distance, &r.face_heat, &r.noise_time, &r.freezing_margin };
    static const double never[] = { (double)NAN, (double)INFINITY, -1 };
    for (size_t i = 0; i < sizeof limits / sizeof limits[0]; i++)
        for (int k = 0; k < (limits[i] == &r.freezing_margin ? 2 : 3); k++) {
            const double stated = *limits[i];
            *limits[i] = never[k];
            EXPECT_STATUS(vtx_smallest_cooler(&job, coolers, COUNT, &r, &chosen), VTX_BAD_ARGUMENT);
            *limits[i] = stated;
        }
    coolers[1].rated_cold_fraction = 2;
    EXPECT_STATUS(vtx_rank_coolers(&job, coolers, COUNT, NULL, &r, v), VTX_PARTIAL);
    EXPECT(isnan(v[1].capacity) && v[1].failed == -1 && isfinite(v[0].capacity));
}

static const struct test_case tests[] = {
    { "the smallest that is enough is chosen", the_smallest_that_is_enough_is_chosen },
    { "a temperature limit costs cold fraction", a_temperature_limit_costs_cold_fraction },
    { "each rejected entry says what it failed and by how much", each_rejected_entry_says_what_it_failed_and_by_how_much },
    { "ranks follow the cost", ranks_follow_the_cost },
    { "an impossible wish names the most that the list can", an_impossible_wish_names_the_most_that_the_list_can },
    { "a face that cannot take the air's cold is seen", a_face_that_cannot_take_the_air_s_cold_is_seen },
    { "a day beside the cooler must be allowed by the rule", a_day_beside_the_cooler_must_be_allowed_by_the_rule },
    { "lists that make no sense are refused", lists_that_make_no_sense_are_refused },
};
TEST_SUITE(selection, tests);
