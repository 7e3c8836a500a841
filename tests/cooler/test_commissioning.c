/* Settings found again from the readings they give, and valves turned as told. */
#include <vtx/commissioning.h>
#include <vtx/thermometry.h>

#include "sample_job.h"

enum { SETS = 3 };

/* All gauges; three thermometers and the inlet gauge; both flow meters, two thermometers and the inlet gauge. */
static const int sets[SETS][8] = { { 1, 1, 1, 1, 1, 1, 1, 1 }, { 0, 1, 1, 1, 1, 0, 0, 0 }, { 0, 1, 1, 1, 0, 1, 1, 0 } };

static vtx_job described_job(int32_t model, int line)
{
    vtx_job job = sample_job(model);
    job.supply.pressure = 7.5e5;
    job.supply.humidity_kind = VTX_SUPPLY_FROST_POINT;
    job.supply.humidity = 253.15;
    job.setting.cold_fraction = 0.5;
    if (line) {
        vtx_chain_filter(1e4, 0.012, 8e5, 293.15, 0.5, &job.line[0]);
        vtx_chain_hose(0.0095, 5, &job.line[1]);
        job.elements = 2;
    }
    return job;
}

static vtx_input_uncertainty ordinary(void)
{
    vtx_input_uncertainty u;
    EXPECT_OK(vtx_input_uncertainty_init(&u));
    return u;
}

static vtx_valve_goal goal_of(int32_t goal, double wanted)
{
    vtx_valve_goal g;
    EXPECT_OK(vtx_valve_goal_init(goal, wanted, &g));
    return g;
}

static void leave_out(const int set[8], vtx_service_readings *readings)
{
    for (int k = 0; k < 8; k++)
        if (!set[k])
            readings->value[k] = (double)NAN;
}

static vtx_service_readings readings_at(const vtx_job *job, const int set[8])
{
    vtx_service_readings readings;
    EXPECT_OK(vtx_predict_readings(job, VTX_CAUSE_NOTHING, 0, &readings));
    leave_out(set, &readings);
    return readings;
}

static void a_setting_is_found_again(void)
{
    static const double fractions[] = { 0.25, 0.4, 0.55, 0.7, 0.8 };
    const vtx_input_uncertainty u = ordinary();
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (int set = 0; set < SETS; set++)
            for (int i = 0; i < 5; i++) {
                const vtx_job described = described_job(model, i == 2);
                vtx_job truth = described;
                vtx_operating_point point;
                vtx_setting_found found;
                truth.setting.cold_fraction = fractions[i];
                truth.supply.pressure = 6.9e5; /* what is read counts, not what the description says */
                truth.supply.temperature = 297;
                const vtx_service_readings readings = readings_at(&truth, sets[set]);
                EXPECT_OK(vtx_job_evaluate(&truth, &point, NULL));
                EXPECT_OK(vtx_find_setting(&described, &u, &readings, &found));
                EXPECT_NEAR(found.cold_fraction, fractions[i], 1e-8);
                EXPECT_NEAR(found.valve_opening, point.valve_opening, 1e-8);
                EXPECT_NEAR(found.cold_temperature, point.cold_temperature, 1e-10);
                EXPECT_NEAR(found.capacity, point.target_capacity, 1e-8);
                EXPECT_NEAR(found.supply_pressure, 6.9e5, 1e-9);
                EXPECT_NEAR(found.supply_temperature, 297, 1e-10);
                EXPECT_NEAR(found.peak_efficiency, described.cooler.tube.peak_efficiency, 1e-7);
                EXPECT(found.chi_square < 1e-12 && found.cold_fraction_uncertainty > 0.002 && found.cold_fraction_uncertainty < 0.03);
                EXPECT(found.readings == (set == 0 ? 8 : set == 1 ? 4 : 5));
                if (set < 2)
                    EXPECT_WITHIN(found.by_temperatures, fractions[i], 2e-3);
                if (set != 1)
                    EXPECT_NEAR(found.by_flows, fractions[i], 1e-9);
            }
}

/* A described job with everything that its uncertainties cover drawn anew; efficiency and coldest fraction within what tubes can be. */
static vtx_job drawn_job(struct random_state *r, const vtx_job *described, const vtx_input_uncertainty *u)
{
    vtx_job job = *described;
    vtx_tube *tube = &job.cooler.tube;
    do
        tube->peak_efficiency = described->cooler.tube.peak_efficiency + (tube->efficiency_high - tube->efficiency_low) / 2.563 * random_normal(r);
    while (tube->peak_efficiency < 0.08 || tube->peak_efficiency > 0.55);
    do
        tube->coldest_fraction = described->cooler.tube.coldest_fraction + u->coldest_fraction * random_normal(r);
    while (tube->coldest_fraction < 0.15 || tube->coldest_fraction > 0.45);
    tube->efficiency_low = fmin(tube->efficiency_low, tube->peak_efficiency);
    tube->efficiency_high = fmax(tube->efficiency_high, tube->peak_efficiency);
    job.supply.pressure += u->supply_pressure * random_normal(r);
    job.supply.temperature += u->supply_temperature * random_normal(r);
    job.supply.humidity += u->supply_humidity * random_normal(r);
    job.site.pressure += u->site_pressure * random_normal(r);
    job.cooler.rated_free_air_flow *= 1 + u->rated_flow * random_normal(r);
    job.setting.cold_fraction = random_uniform(r, 0.25, 0.8);
    return job;
}

static vtx_service_readings noisy_readings(struct random_state *r, const vtx_job *truth, const int set[8])
{
    vtx_service_readings readings;
    EXPECT_OK(vtx_predict_readings(truth, VTX_CAUSE_NOTHING, 0, &readings));
    for (int k = 0; k < 8; k++)
        readings.value[k] += readings.uncertainty[k] * random_normal(r);
    leave_out(set, &readings);
    return readings;
}

/* What a program whose intervals hold 93 to 97 % leaves in one run of 1e4: 3.89 standard deviations of the binomial beyond. */
static void expect_interval_holds(int hits, int draws)
{
    const double share = (double)hits / draws;
    EXPECT(share > 0.93 - 3.89 * sqrt(0.93 * 0.07 / draws) && share < 0.97 + 3.89 * sqrt(0.97 * 0.03 / draws));
}

static void intervals_of_the_cold_fraction_hold(void)
{
    const vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    const int draws = soak_count(200);
    for (int set = 0; set < SETS; set++) {
        struct random_state r;
        int hits = 0, alarms = 0;
        random_seed(&r, 70 + (uint64_t)set);
        for (int i = 0; i < draws; i++) {
            const vtx_job truth = drawn_job(&r, &described, &u);
            const vtx_service_readings readings = noisy_readings(&r, &truth, sets[set]);
            vtx_setting_found found;
            EXPECT_OK(vtx_find_setting(&described, &u, &readings, &found));
            hits += found.cold_fraction_low <= truth.setting.cold_fraction && truth.setting.cold_fraction <= found.cold_fraction_high;
            alarms += (found.advisories & VTX_ADVISORY_MODEL_MISFIT) != 0;
        }
        expect_interval_holds(hits, draws);
        EXPECT(alarms < 0.03 * draws + 4);
        if (getenv("VTX_SOAK"))
            printf("  cold fraction, readings %d: 95 %% interval holds %.2f %% of %d, misfit %.2f %%\n", set, 100.0 * hits / draws, draws,
                   100.0 * alarms / draws);
    }
}

/* Inlet gauge, inlet and cold thermometer on a tube whose efficiency is hardly known: wide intervals, but true ones, or none. */
static void too_few_readings_still_give_true_intervals(void)
{
    static const int few[8] = { 0, 1, 1, 1, 0, 0, 0, 0 };
    const vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    const int draws = soak_count(40);
    struct random_state r;
    int hits = 0, told = 0, poor = 0;
    random_seed(&r, 78);
    for (int i = 0; i < draws; i++) {
        const vtx_job truth = drawn_job(&r, &described, &u);
        const vtx_service_readings readings = noisy_readings(&r, &truth, few);
        vtx_setting_found found;
        const vtx_status status = vtx_find_setting(&described, &u, &readings, &found);
        EXPECT(status == VTX_OK || status == VTX_NO_SOLUTION);
        if (status != VTX_OK)
            continue;
        told++;
        hits += found.cold_fraction_low <= truth.setting.cold_fraction && truth.setting.cold_fraction <= found.cold_fraction_high;
        poor += (found.advisories & VTX_ADVISORY_POORLY_DETERMINED) != 0;
    }
    expect_interval_holds(hits, told);
    EXPECT(told > draws / 3 && poor > told / 2);
    if (getenv("VTX_SOAK"))
        printf("  cold fraction, too few readings: 95 %% interval holds %.2f %% of %d, poorly determined %d, unseen %d\n", 100.0 * hits / told,
               told, poor, draws - told);
}

/* Both models, dry and wet feed, with and without hose, accessories and heat leak, valve anywhere. */
static vtx_job any_job(struct random_state *r, int i)
{
    vtx_job job = described_job(i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL, 0);
    job.cooler.rated_free_air_flow = random_uniform(r, 0.002, 0.03);
    job.supply.pressure = random_uniform(r, 3e5, 1e6);
    job.supply.temperature = random_uniform(r, 285, 310);
    job.supply.humidity_kind = VTX_SUPPLY_HUMIDITY_RATIO;
    job.supply.humidity = random_uniform(r, 0, 1) < 0.3 ? 0 : random_uniform(r, 0, 0.004);
    job.cooler.tube.peak_efficiency = random_uniform(r, 0.2, 0.35);
    job.cooler.tube.cold_leak = random_uniform(r, 0, 1) < 0.2 ? random_uniform(r, 0, 0.2) : 0;
    if (random_uniform(r, 0, 1) < 0.4) {
        job.cooler.outlet_conductance = random_uniform(r, 6e-6, 3e-5) * job.cooler.rated_free_air_flow;
        job.cooler.outlet_critical_ratio = 0.3;
    }
    if (random_uniform(r, 0, 1) < 0.3) {
        job.cooler.hot_conductance = random_uniform(r, 1e-5, 6e-5) * job.cooler.rated_free_air_flow;
        job.cooler.hot_critical_ratio = 0.3;
    }
    if (random_uniform(r, 0, 1) < 0.3) {
        vtx_chain_hose(0.0095, random_uniform(r, 1, 10), &job.line[0]);
        job.elements = 1;
    }
    job.setting.cold_fraction = random_uniform(r, 0.3, 0.75);
    return job;
}

static void any_job_gives_its_setting_back(void)
{
    vtx_input_uncertainty u = ordinary();
    const int draws = soak_count(24);
    struct random_state r;
    int hits = 0, told = 0;
    random_seed(&r, 98);
    u.supply_humidity = 1e-4;
    for (int i = 0; i < draws; i++) {
        const vtx_job described = any_job(&r, i);
        vtx_job truth = described;
        vtx_service_readings readings;
        vtx_setting_found found;
        truth.cooler.cold_fraction_min = 0;
        truth.cooler.cold_fraction_max = 1;
        truth.setting.cold_fraction = random_uniform(&r, 0.1, 0.95);
        if (vtx_predict_readings(&truth, VTX_CAUSE_NOTHING, 0, &readings) != VTX_OK)
            continue; /* accessories too narrow for this setting */
        readings.uncertainty[5] = readings.uncertainty[6] = 0.01 * readings.value[5];
        EXPECT_OK(vtx_find_setting(&described, &u, &readings, &found));
        EXPECT_NEAR(found.cold_fraction, truth.setting.cold_fraction, 1e-8);
        for (int k = 0; k < 8; k++)
            readings.value[k] += readings.uncertainty[k] * random_normal(&r);
        EXPECT_OK(vtx_find_setting(&described, &u, &readings, &found));
        hits += found.cold_fraction_low <= truth.setting.cold_fraction && truth.setting.cold_fraction <= found.cold_fraction_high;
        told++;
    }
    EXPECT(told > 0.9 * draws);
    expect_interval_holds(hits, told);
    if (getenv("VTX_SOAK"))
        printf("  cold fraction, any job: 95 %% interval holds %.2f %% of %d\n", 100.0 * hits / told, told);
}

static void a_valve_turned_as_told_meets_the_goal(void)
{
    static const double fractions[] = { 0.3, 0.5, 0.75 };
    const vtx_input_uncertainty u = ordinary();
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (int set = 0; set < SETS; set++)
            for (int i = 0; i < 3; i++) {
                const vtx_job described = described_job(model, set == 0 && i == 1);
                vtx_job truth = described, turned;
                vtx_operating_point before, after;
                vtx_valve_advice advice;
                truth.setting.cold_fraction = fractions[i];
                EXPECT_OK(vtx_job_evaluate(&truth, &before, NULL));
                const vtx_service_readings readings = readings_at(&truth, sets[set]);
                turned = truth;
                turned.setting.held = VTX_HELD_VALVE_OPENING;
                vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_TEMPERATURE, 263);
                EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
                turned.setting.valve_opening = before.valve_opening * advice.opening_ratio;
                EXPECT_OK(vtx_job_evaluate(&turned, &after, NULL));
                EXPECT_NEAR(after.cold_temperature, 263, 1e-8);
                EXPECT_NEAR(advice.predicted[3], 263, 1e-8);
                EXPECT_NEAR(advice.predicted[5], after.mass_flow, 1e-8);
                EXPECT_NEAR(advice.new_cold_fraction, after.cold_fraction, 1e-8);
                const int32_t turn = before.cold_temperature <= 263 ? VTX_TURN_REACHED : advice.opening_ratio > 1 ? VTX_TURN_OPEN : VTX_TURN_CLOSE;
                EXPECT(advice.limit == VTX_LIMIT_WISH && advice.turn == turn);
                EXPECT(advice.ratio_low < advice.opening_ratio && advice.opening_ratio < advice.ratio_high && advice.visibility > 2);

                goal = goal_of(VTX_GOAL_COLD_FRACTION, 0.62);
                EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
                turned.setting.valve_opening = before.valve_opening * advice.opening_ratio;
                EXPECT_OK(vtx_job_evaluate(&turned, &after, NULL));
                EXPECT_NEAR(after.cold_fraction, 0.62, 1e-8);

                goal = goal_of(VTX_GOAL_CAPACITY, 0.5 * (before.target_capacity + advice.new_figure) + 20);
                EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
                EXPECT(advice.attainable_figure >= advice.new_figure * (1 - 1e-12));
                if (advice.limit == VTX_LIMIT_WISH) {
                    turned.setting.valve_opening = before.valve_opening * advice.opening_ratio;
                    EXPECT_OK(vtx_job_evaluate(&turned, &after, NULL));
                    EXPECT_NEAR(after.target_capacity, goal.wanted, 1e-8);
                }
            }
}

static void the_most_cooling_is_where_more_and_less_cool_less(void)
{
    const vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_REAL, 0);
    const vtx_valve_goal most = goal_of(VTX_GOAL_MOST_CAPACITY, 0);
    vtx_job truth = described;
    vtx_operating_point here, less, more;
    vtx_valve_advice advice;
    truth.setting.cold_fraction = 0.4;
    const vtx_service_readings readings = readings_at(&truth, sets[0]);
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &most, &advice));
    EXPECT(advice.turn == VTX_TURN_CLOSE && advice.limit == VTX_LIMIT_COOLER);
    truth.setting.held = VTX_HELD_VALVE_OPENING;
    truth.setting.valve_opening = advice.new_opening;
    EXPECT_OK(vtx_job_evaluate(&truth, &here, NULL));
    EXPECT_NEAR(here.target_capacity, advice.new_figure, 1e-8);
    truth.setting.valve_opening = advice.new_opening * 0.98;
    EXPECT_OK(vtx_job_evaluate(&truth, &less, NULL));
    truth.setting.valve_opening = advice.new_opening * 1.02;
    EXPECT_OK(vtx_job_evaluate(&truth, &more, NULL));
    EXPECT(less.target_capacity < here.target_capacity && more.target_capacity < here.target_capacity);
    /* There the advice is to leave it. */
    truth.setting.valve_opening = advice.new_opening;
    const vtx_service_readings there = readings_at(&truth, sets[0]);
    EXPECT_OK(vtx_advise_valve(&described, &u, &there, &most, &advice));
    EXPECT(advice.turn == VTX_TURN_REACHED);
    EXPECT_NEAR(advice.opening_ratio, 1, 1e-4);
}

/* The figure after a turn as told, with noise, against what the advice expects of it. */
static void advice_is_worth_what_it_says(void)
{
    const vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    const int draws = soak_count(100);
    for (int set = 0; set < SETS; set++) {
        struct random_state r;
        int hits = 0, told = 0;
        random_seed(&r, 80 + (uint64_t)set);
        for (int i = 0; i < draws; i++) {
            vtx_job truth = drawn_job(&r, &described, &u);
            vtx_operating_point before, after;
            vtx_valve_advice advice;
            const vtx_service_readings readings = noisy_readings(&r, &truth, sets[set]);
            EXPECT_OK(vtx_job_evaluate(&truth, &before, NULL));
            const vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_TEMPERATURE, before.cold_temperature + random_uniform(&r, -4, 6));
            if (vtx_advise_valve(&described, &u, &readings, &goal, &advice) != VTX_OK || advice.limit != VTX_LIMIT_WISH)
                continue;
            truth.setting.held = VTX_HELD_VALVE_OPENING;
            truth.setting.valve_opening = before.valve_opening * advice.opening_ratio;
            EXPECT_OK(vtx_job_evaluate(&truth, &after, NULL));
            hits += fabs(after.cold_temperature - advice.new_figure) < 1.96 * advice.new_uncertainty;
            told++;
        }
        EXPECT(told > draws / 2);
        expect_interval_holds(hits, told);
        if (getenv("VTX_SOAK"))
            printf("  temperature after the turn, readings %d: 95 %% interval holds %.2f %% of %d\n", set, 100.0 * hits / told, told);
    }
}

/* The interval of the ratio against the true ratio: for a cold fraction by two forward passes, for the most cooling by the search of sizing.h. */
static void intervals_of_the_ratio_hold(void)
{
    const vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    const int draws = soak_count(100);
    for (int set = 0; set < SETS; set++) {
        struct random_state r;
        int fraction_hits = 0, most_hits = 0, most_told = 0;
        random_seed(&r, 84 + (uint64_t)set);
        for (int i = 0; i < draws; i++) {
            vtx_job truth = drawn_job(&r, &described, &u);
            vtx_operating_point now, wanted;
            vtx_valve_advice advice;
            vtx_request request;
            vtx_sizing best;
            const vtx_service_readings readings = noisy_readings(&r, &truth, sets[set]);
            EXPECT_OK(vtx_job_evaluate(&truth, &now, NULL));
            truth.setting.cold_fraction = 0.55;
            EXPECT_OK(vtx_job_evaluate(&truth, &wanted, NULL));
            vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_FRACTION, 0.55);
            EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
            double ratio = wanted.valve_opening / now.valve_opening;
            fraction_hits += advice.ratio_low <= ratio && ratio <= advice.ratio_high;
            goal = goal_of(VTX_GOAL_MOST_CAPACITY, 0);
            EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
            EXPECT_OK(vtx_request_init(&truth, VTX_SOUGHT_VALVE_OPENING, VTX_WISHED_CAPACITY, 1e4, &request));
            EXPECT_STATUS(vtx_size(&truth, &request, &best), VTX_NO_SOLUTION);
            ratio = best.attainable_value / now.valve_opening;
            if (advice.limit != VTX_LIMIT_COOLER)
                continue;
            most_told++;
            most_hits += advice.ratio_low <= ratio && ratio <= advice.ratio_high;
        }
        expect_interval_holds(fraction_hits, draws);
        expect_interval_holds(most_hits, most_told);
        EXPECT(most_told > draws / 2);
        if (getenv("VTX_SOAK"))
            printf("  ratio, readings %d: 95 %% interval holds %.2f %% (cold fraction), %.2f %% of %d (most cooling)\n", set,
                   100.0 * fraction_hits / draws, 100.0 * most_hits / most_told, most_told);
    }
}

static void turning_ends_when_it_is_good_enough(void)
{
    const vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    vtx_operating_point point;
    vtx_valve_advice advice;
    EXPECT_OK(vtx_job_evaluate(&described, &point, NULL));
    vtx_service_readings readings = readings_at(&described, sets[1]);
    vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_TEMPERATURE, point.cold_temperature + 0.4);
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
    EXPECT(advice.turn == VTX_TURN_REACHED && advice.opening_ratio < 1);
    /* Warmer than at most wanted: turn. */
    goal.wanted = point.cold_temperature - 2;
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
    EXPECT(advice.turn == VTX_TURN_OPEN);
    /* A capacity that is there already needs no turn. */
    goal = goal_of(VTX_GOAL_CAPACITY, 0.5 * point.target_capacity);
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
    EXPECT(advice.turn == VTX_TURN_REACHED);
    /* One thermometer on a known tube: first the goal is met within what it shows, then a second reading would not differ for certain, then turn. */
    vtx_job warm = described;
    vtx_input_uncertainty sure = u;
    static const int cold_only[8] = { 0, 1, 1, 1, 0, 0, 0, 0 };
    int32_t last = VTX_TURN_REACHED;
    int counts[3] = { 0 };
    sure.tube_efficiency = sure.coldest_fraction = 0.001;
    sure.rated_flow = 0.001;
    warm.setting.cold_fraction = 0.7;
    EXPECT_OK(vtx_job_evaluate(&warm, &point, NULL));
    readings = readings_at(&warm, cold_only);
    for (int k = 1; k <= 20; k++) {
        goal = goal_of(VTX_GOAL_COLD_TEMPERATURE, point.cold_temperature - 0.1 * k);
        EXPECT_OK(vtx_advise_valve(&warm, &sure, &readings, &goal, &advice));
        const int stage = advice.turn == VTX_TURN_REACHED ? 0 : advice.turn == VTX_TURN_UNSEEN ? 1 : 2;
        const int before = last == VTX_TURN_REACHED ? 0 : last == VTX_TURN_UNSEEN ? 1 : 2;
        EXPECT(stage >= before && advice.turn != VTX_TURN_CLOSE);
        counts[stage]++;
        last = advice.turn;
    }
    EXPECT(counts[0] >= 7 && counts[1] >= 2 && counts[2] >= 5);
}

/* At most means at most: however much colder, on either branch; the ratio still says where the goal would be met exactly. */
static void colder_than_wanted_is_no_reason_to_turn(void)
{
    static const double fractions[] = { 0.25, 0.35, 0.5, 0.65 };
    const vtx_input_uncertainty u = ordinary();
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (int i = 0; i < 4; i++)
            for (double colder = 0.5; colder < 20; colder *= 2) {
                const vtx_job described = described_job(model, 0);
                vtx_job there = described;
                vtx_operating_point point;
                vtx_valve_advice advice;
                there.setting.cold_fraction = fractions[i];
                EXPECT_OK(vtx_job_evaluate(&there, &point, NULL));
                const vtx_service_readings readings = readings_at(&there, sets[0]);
                vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_TEMPERATURE, point.cold_temperature + colder);
                for (goal.branch = VTX_BRANCH_LESS_COLD_AIR; goal.branch <= VTX_BRANCH_MORE_COLD_AIR; goal.branch++) {
                    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
                    EXPECT(advice.turn == VTX_TURN_REACHED);
                    EXPECT_NEAR(advice.present_figure, point.cold_temperature, 1e-6);
                    EXPECT((advice.opening_ratio < 1) == (goal.branch == VTX_BRANCH_MORE_COLD_AIR));
                    EXPECT(advice.limit != VTX_LIMIT_WISH || fabs(advice.new_figure - goal.wanted) < 1e-6);
                }
            }
}

static void what_is_out_of_reach_is_named_with_the_best(void)
{
    const vtx_input_uncertainty u = ordinary();
    vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    vtx_valve_advice advice, most;
    const vtx_service_readings readings = readings_at(&described, sets[0]);
    vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_TEMPERATURE, 220);
    EXPECT_STATUS(vtx_advise_valve(&described, &u, &readings, &goal, &advice), VTX_NO_SOLUTION);
    EXPECT(isnan(advice.opening_ratio) && advice.turn == -1 && advice.attainable_limit == VTX_LIMIT_COOLER);
    EXPECT(advice.attainable_figure > 240 && advice.attainable_figure < 262 && advice.attainable_ratio > 1);
    goal = goal_of(VTX_GOAL_CAPACITY, 5000);
    EXPECT_STATUS(vtx_advise_valve(&described, &u, &readings, &goal, &advice), VTX_NO_SOLUTION);
    goal = goal_of(VTX_GOAL_MOST_CAPACITY, 0);
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &most));
    EXPECT_NEAR(advice.attainable_figure, most.new_figure, 1e-9);
    goal = goal_of(VTX_GOAL_COLD_FRACTION, 0.9);
    EXPECT_STATUS(vtx_advise_valve(&described, &u, &readings, &goal, &advice), VTX_NO_SOLUTION);
    EXPECT_NEAR(advice.attainable_figure, described.cooler.cold_fraction_max, 1e-9);
    EXPECT(advice.attainable_limit == VTX_LIMIT_RANGE_LOW && advice.attainable_ratio < 1);
    described.cooler.cold_fraction_max = 0.62;
    goal = goal_of(VTX_GOAL_MOST_CAPACITY, 0);
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
    EXPECT(advice.limit == VTX_LIMIT_RANGE_LOW);
    EXPECT_NEAR(advice.new_cold_fraction, 0.62, 1e-6);
    described.cooler.kind = VTX_COOLER_FIXED;
    EXPECT_STATUS(vtx_advise_valve(&described, &u, &readings, &goal, &advice), VTX_OUT_OF_RANGE);
}

/* A muffler that holds the hot air back. */
static void a_cold_fraction_below_the_widest_valve_is_out_of_reach(void)
{
    const vtx_input_uncertainty u = ordinary();
    const vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_FRACTION, 0.3);
    vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    vtx_valve_advice advice;
    described.cooler.hot_conductance = 1.5e-8;
    described.cooler.hot_critical_ratio = 0.3;
    described.setting.cold_fraction = 0.65;
    const vtx_service_readings readings = readings_at(&described, sets[0]);
    EXPECT_STATUS(vtx_advise_valve(&described, &u, &readings, &goal, &advice), VTX_NO_SOLUTION);
    EXPECT(advice.attainable_figure > 0.4 && advice.attainable_figure < 0.6 && advice.attainable_limit == VTX_LIMIT_RANGE_HIGH);
}

static void the_other_branch_is_found_when_asked_for(void)
{
    const vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    const vtx_service_readings readings = readings_at(&described, sets[0]);
    vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_TEMPERATURE, 258);
    vtx_valve_advice more, less;
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &more));
    goal.branch = VTX_BRANCH_LESS_COLD_AIR;
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &less));
    EXPECT_NEAR(more.new_figure, 258, 1e-9);
    EXPECT_NEAR(less.new_figure, 258, 1e-9);
    EXPECT(more.new_cold_fraction > 0.31 && less.new_cold_fraction < 0.29);
}

static void readings_that_do_not_see_the_valve_are_refused(void)
{
    static const int inlet_only[8] = { 1, 1, 1, 0, 0, 0, 0, 0 }, cold_only[8] = { 0, 1, 1, 1, 0, 0, 0, 0 };
    const vtx_input_uncertainty u = ordinary();
    vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    vtx_service_readings readings = readings_at(&described, inlet_only);
    vtx_setting_found found;
    EXPECT_STATUS(vtx_find_setting(&described, &u, &readings, &found), VTX_NO_SOLUTION);
    EXPECT(isnan(found.cold_fraction) && found.freedom == -1);
    EXPECT_OK(vtx_service_readings_init(&readings));
    EXPECT_STATUS(vtx_find_setting(&described, &u, &readings, &found), VTX_BAD_ARGUMENT);
    /* A cold thermometer alone leaves much open unless the tube is known, and then two settings. */
    readings = readings_at(&described, cold_only);
    readings.value[3] = 258;
    vtx_input_uncertainty sure = u;
    sure.tube_efficiency = 0.002;
    sure.coldest_fraction = 0.002;
    EXPECT_OK(vtx_find_setting(&described, &sure, &readings, &found));
    EXPECT((found.advisories & VTX_ADVISORY_INDISTINGUISHABLE) && (found.cold_fraction - 0.3) * (found.other_cold_fraction - 0.3) < 0);
    EXPECT(found.cold_fraction_low < 0.28 && found.cold_fraction_high > 0.32);
    described.cooler.tube.peak_efficiency = 2;
    EXPECT_STATUS(vtx_find_setting(&described, &u, &readings, &found), VTX_BAD_ARGUMENT);
}

static double thermometers_worth(const vtx_reading_plan *plan, int32_t reading)
{
    for (int k = 0; k < plan->count; k++)
        if (plan->order[k] == reading)
            return k == 0 ? plan->before - plan->after[0] : plan->after[k - 1] - plan->after[k];
    return 0;
}

static void plans_read_first_what_tells_most(void)
{
    const vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_REAL, 1);
    vtx_service_readings readings;
    vtx_reading_plan plan, rest;
    EXPECT_OK(vtx_service_readings_init(&readings));
    for (int32_t goal = VTX_GOAL_COLD_TEMPERATURE; goal <= VTX_GOAL_MOST_CAPACITY; goal++) {
        const vtx_valve_goal g = goal_of(goal, goal == VTX_GOAL_COLD_TEMPERATURE ? 262 : goal == VTX_GOAL_COLD_FRACTION ? 0.6 : 200);
        EXPECT_OK(vtx_plan_readings(&described, &u, &readings, &g, &plan));
        EXPECT(plan.count == 8 && plan.worthwhile >= 1 && plan.worthwhile < 8 && plan.advisories == 0);
        int seen = 0;
        for (int k = 0; k < 8; k++) {
            EXPECT(plan.after[k] <= (k == 0 ? plan.before : plan.after[k - 1]) * (1 + 1e-12));
            seen |= 1 << (plan.order[k] - VTX_READ_SUPPLY_PRESSURE);
        }
        EXPECT(seen == 255);
        /* For a temperature the cold thermometer comes first. */
        EXPECT(goal != VTX_GOAL_COLD_TEMPERATURE || plan.order[0] == VTX_READ_COLD_TEMPERATURE);
        /* What is read is left out, and the rest is worth what it was. */
        readings.value[plan.order[0] - VTX_READ_SUPPLY_PRESSURE] = 300;
        EXPECT_OK(vtx_plan_readings(&described, &u, &readings, &g, &rest));
        EXPECT(rest.count == 7 && rest.order[0] == plan.order[1] && (rest.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
        EXPECT_NEAR(rest.before, plan.after[0], 1e-9);
        EXPECT_NEAR(rest.after[0], plan.after[1], 1e-9);
        readings.value[plan.order[0] - VTX_READ_SUPPLY_PRESSURE] = (double)NAN;
    }
    /* Without a flow meter the plan does with the rest, and promises what it would if the meters told nothing. */
    const vtx_valve_goal cold = goal_of(VTX_GOAL_COLD_TEMPERATURE, 262);
    vtx_service_readings bare = readings, blunt = readings;
    for (int i = VTX_READ_INLET_FLOW - VTX_READ_SUPPLY_PRESSURE; i <= VTX_READ_COLD_FLOW - VTX_READ_SUPPLY_PRESSURE; i++) {
        bare.uncertainty[i] = (double)NAN;
        blunt.uncertainty[i] = 1e6;
    }
    EXPECT_OK(vtx_plan_readings(&described, &u, &bare, &cold, &plan));
    EXPECT_OK(vtx_plan_readings(&described, &u, &blunt, &cold, &rest));
    EXPECT(plan.count == 6 && (plan.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE) && plan.order[6] == -1 && isnan(plan.after[6]));
    for (int k = 0; k < 6; k++) {
        EXPECT(plan.order[k] == rest.order[k] && plan.order[k] != VTX_READ_INLET_FLOW && plan.order[k] != VTX_READ_COLD_FLOW);
        EXPECT_NEAR(plan.after[k], rest.after[k], 1e-6);
    }
    bare.value[VTX_READ_INLET_FLOW - VTX_READ_SUPPLY_PRESSURE] = 0.01;
    EXPECT_STATUS(vtx_plan_readings(&described, &u, &bare, &cold, &plan), VTX_BAD_ARGUMENT);
    /* A better flow meter is worth more. */
    const vtx_valve_goal fraction = goal_of(VTX_GOAL_COLD_FRACTION, 0.6);
    EXPECT_OK(vtx_plan_readings(&described, &u, &readings, &fraction, &plan));
    readings.uncertainty[VTX_READ_COLD_FLOW - VTX_READ_SUPPLY_PRESSURE] = 1e-5;
    readings.uncertainty[VTX_READ_INLET_FLOW - VTX_READ_SUPPLY_PRESSURE] = 1e-5;
    EXPECT_OK(vtx_plan_readings(&described, &u, &readings, &fraction, &rest));
    EXPECT(rest.order[0] == VTX_READ_COLD_FLOW || rest.order[0] == VTX_READ_INLET_FLOW);
    EXPECT(rest.order[1] == VTX_READ_COLD_FLOW || rest.order[1] == VTX_READ_INLET_FLOW);
    EXPECT(thermometers_worth(&rest, VTX_READ_HOT_TEMPERATURE) < thermometers_worth(&plan, VTX_READ_HOT_TEMPERATURE));
}

/* Plan and fit rest on the same physics: what the plan promises of the turn is what the fit of those readings gives. */
static void a_plan_keeps_its_promise(void)
{
    vtx_input_uncertainty u = ordinary();
    const vtx_job described = described_job(VTX_AIR_IDEAL, 0);
    vtx_service_readings none;
    vtx_reading_plan plan;
    vtx_valve_advice advice;
    EXPECT_OK(vtx_service_readings_init(&none));
    /* So little known beforehand that readings add to it or supersede it alike. */
    u.supply_pressure = 1e5;
    u.supply_temperature = 10;
    u.rated_flow = 0.3;
    const vtx_valve_goal goal = goal_of(VTX_GOAL_COLD_FRACTION, 0.62);
    const vtx_service_readings readings = readings_at(&described, sets[0]);
    memcpy(none.uncertainty, readings.uncertainty, sizeof none.uncertainty);
    EXPECT_OK(vtx_plan_readings(&described, &u, &none, &goal, &plan));
    EXPECT_OK(vtx_advise_valve(&described, &u, &readings, &goal, &advice));
    const double deviation = log(advice.ratio_high / advice.opening_ratio) / 1.959963984540054;
    EXPECT_NEAR(plan.after[7], deviation, 0.01);
}

static void waiting_times_are_those_of_two_lags(void)
{
    struct random_state r;
    random_seed(&r, 91);
    for (int i = 0; i < 2000; i++) {
        const double probe = random_log_uniform(&r, 0.1, 300), body = i % 5 == 0 ? probe * (1 + random_log_uniform(&r, 1e-12, 1e-3)) : random_log_uniform(&r, 0.1, 300);
        const double step = random_log_uniform(&r, 0.1, 100), band = random_log_uniform(&r, 1e-3, 1);
        double time, one, other, swapped;
        EXPECT_OK(vtx_turn_settling_time(probe, body, step, band, &time));
        EXPECT_OK(vtx_turn_settling_time(body, probe, step, band, &swapped));
        EXPECT_OK(vtx_settling_time(probe, step, band, &one));
        EXPECT_OK(vtx_settling_time(body, step, band, &other));
        EXPECT_WITHIN(swapped, time, 1e-11 * time + 1e-300);
        EXPECT(time >= fmax(one, other) && time <= one + other + probe + body);
        if (time > 0 && fabs(probe / body - 1) > 1e-2)
            EXPECT_NEAR((probe * exp(-time / probe) - body * exp(-time / body)) / (probe - body), band / step, 1e-7);
        else if (time > 0 && fabs(probe / body - 1) < 1e-6)
            EXPECT_NEAR((1 + time / body) * exp(-time / body), band / step, 1e-5);
        EXPECT_OK(vtx_turn_settling_time(probe, 0, step, band, &time));
        EXPECT_WITHIN(time, one, 1e-11 * one + 1e-300);
    }
    double time, constant;
    EXPECT_OK(vtx_turn_settling_time(0, 0, 30, 0.1, &time));
    EXPECT(time == 0);
    /* 0.2 kg of aluminium in 6 g/s: about a minute. */
    EXPECT_OK(vtx_body_time_constant(0.2, 896, 0.006, 1006, 0.5, &constant));
    EXPECT_NEAR(constant, 0.2 * 896 / (0.5 * 0.006 * 1006), 1e-15);
}

static void an_exponential_is_followed_to_its_end(void)
{
    struct random_state r;
    random_seed(&r, 92);
    for (int i = 0; i < 500; i++) {
        const double constant = random_log_uniform(&r, 5, 200), final = random_uniform(&r, 240, 320), amplitude = random_uniform(&r, 5, 40);
        double times[3], readings[3];
        vtx_settling s;
        for (int k = 0; k < 3; k++) {
            times[k] = 1000 + constant * (0.5 + 0.7 * k + (k == 1 ? 0.2 : 0));
            readings[k] = final - amplitude * exp(-(times[k] - 1000) / constant);
        }
        EXPECT_OK(vtx_judge_settling(times, readings, 3, 0.05, 0, 0.2, &s));
        EXPECT_NEAR(s.final_value, final, 1e-7);
        EXPECT_NEAR(s.time_constant, constant, 1e-5);
        EXPECT_NEAR(s.remaining, final - readings[2], 1e-4);
        EXPECT(s.settled == VTX_SETTLED_NO && s.time_left > 0 && (s.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
        /* Two readings and a known constant; after the time left it has settled. */
        EXPECT_OK(vtx_judge_settling(times, readings, 2, 0.05, constant, 0.2, &s));
        EXPECT_NEAR(s.final_value, final, 1e-10);
        EXPECT(s.settled == VTX_SETTLED_NO && s.time_constant_uncertainty == 0);
        double later[2] = { times[0], times[1] + s.time_left }, then[2];
        for (int k = 0; k < 2; k++)
            then[k] = final - amplitude * exp(-(later[k] - 1000) / constant);
        EXPECT_OK(vtx_judge_settling(later, then, 2, 0.05, constant, 0.2, &s));
        EXPECT(s.settled == VTX_SETTLED_YES && s.time_left == 0);
    }
}

static void final_values_lie_in_their_intervals(void)
{
    const int draws = soak_count(2000);
    for (int known = 0; known < 2; known++) {
        struct random_state r;
        int hits = 0, wrong = 0, settled = 0, told = 0;
        random_seed(&r, 93 + (uint64_t)known);
        for (int i = 0; i < draws; i++) {
            const int count = known ? 2 + i % 3 : 4 + i % 3;
            const double constant = random_uniform(&r, 20, 60), amplitude = random_uniform(&r, -30, 30), step = random_uniform(&r, 0.5, 1) * constant;
            double times[8], readings[8];
            vtx_settling s;
            for (int k = 0; k < count; k++) {
                times[k] = step * (k + (known ? 2 : 0.5));
                readings[k] = 265 - amplitude * exp(-times[k] / constant) + 0.05 * random_normal(&r);
            }
            EXPECT_OK(vtx_judge_settling(times, readings, (size_t)count, 0.05, known ? constant : 0, 0.5, &s));
            if (s.advisories & VTX_ADVISORY_POORLY_DETERMINED)
                continue;
            told++;
            hits += fabs(s.final_value - 265) < 1.96 * s.final_uncertainty;
            settled += s.settled == VTX_SETTLED_YES;
            wrong += s.settled == VTX_SETTLED_YES && fabs(amplitude * exp(-times[count - 1] / constant)) > 0.5;
        }
        expect_interval_holds(hits, told);
        EXPECT(told > 0.8 * draws && settled > draws / 20 && wrong < 0.05 * settled + 5);
        if (getenv("VTX_SOAK"))
            printf("  final value, constant %s: 95 %% interval holds %.2f %% of %d; settled %d, wrongly %d\n", known ? "known" : "found",
                   100.0 * hits / told, told, settled, wrong);
    }
}

static void readings_at_rest_have_settled(void)
{
    const double times[] = { 0, 30, 60, 90 }, still[] = { 265.1, 265.0, 265.1, 265.0 }, creeping[] = { 265, 266, 267, 268 }, turning[] = { 265, 270, 265, 270 };
    vtx_settling s;
    EXPECT_OK(vtx_judge_settling(times, still, 4, 0.1, 0, 1, &s));
    EXPECT(s.settled == VTX_SETTLED_YES && fabs(s.final_value - 265.05) < 0.5);
    EXPECT_OK(vtx_judge_settling(times, creeping, 4, 0.1, 0, 1, &s));
    EXPECT(s.settled == VTX_SETTLED_NO && (s.advisories & VTX_ADVISORY_POORLY_DETERMINED) && s.final_value > 268);
    EXPECT_OK(vtx_judge_settling(times, turning, 4, 0.1, 40, 1, &s));
    EXPECT(s.advisories & VTX_ADVISORY_MODEL_MISFIT);
    const double backwards[] = { 0, 30, 20 }, odd[] = { 265, (double)NAN, 266 };
    EXPECT_STATUS(vtx_judge_settling(backwards, still, 3, 0.1, 0, 1, &s), VTX_BAD_ARGUMENT);
    EXPECT(isnan(s.final_value) && s.settled == -1);
    EXPECT_STATUS(vtx_judge_settling(times, odd, 3, 0.1, 0, 1, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_judge_settling(times, still, 2, 0.1, 0, 1, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_judge_settling(times, still, 1, 0.1, 10, 1, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_judge_settling(NULL, still, 3, 0.1, 10, 1, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_judge_settling(times, still, 3, 0, 10, 1, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_judge_settling(times, still, 3, 0.1, 0.1, 1, &s), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_judge_settling(times, still, 51, 0.1, 10, 1, &s), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_judge_settling(times, still, 3, 0.1, 10, 1, NULL), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "a setting is found again", a_setting_is_found_again },
    { "intervals of the cold fraction hold", intervals_of_the_cold_fraction_hold },
    { "too few readings still give true intervals", too_few_readings_still_give_true_intervals },
    { "any job gives its setting back", any_job_gives_its_setting_back },
    { "a valve turned as told meets the goal", a_valve_turned_as_told_meets_the_goal },
    { "the most cooling is where more and less cool less", the_most_cooling_is_where_more_and_less_cool_less },
    { "advice is worth what it says", advice_is_worth_what_it_says },
    { "intervals of the ratio hold", intervals_of_the_ratio_hold },
    { "turning ends when it is good enough", turning_ends_when_it_is_good_enough },
    { "colder than wanted is no reason to turn", colder_than_wanted_is_no_reason_to_turn },
    { "what is out of reach is named with the best", what_is_out_of_reach_is_named_with_the_best },
    { "a cold fraction below the widest valve is out of reach", a_cold_fraction_below_the_widest_valve_is_out_of_reach },
    { "the other branch is found when asked for", the_other_branch_is_found_when_asked_for },
    { "readings that do not see the valve are refused", readings_that_do_not_see_the_valve_are_refused },
    { "plans read first what tells most", plans_read_first_what_tells_most },
    { "a plan keeps its promise", a_plan_keeps_its_promise },
    { "waiting times are those of two lags", waiting_times_are_those_of_two_lags },
    { "an exponential is followed to its end", an_exponential_is_followed_to_its_end },
    { "final values lie in their intervals", final_values_lie_in_their_intervals },
    { "readings at rest have settled", readings_at_rest_have_settled },
};
TEST_SUITE(commissioning, tests);
