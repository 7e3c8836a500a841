/* Every inverse inverts. */
#include <vtx/setting.h>
#include <vtx/sizing.h>

#include "sample_job.h"

static double figure(const vtx_job *job, int32_t wished)
{
    vtx_operating_point p;
    vtx_work w;
    if (vtx_job_evaluate(job, &p, &w) != VTX_OK)
        return (double)NAN;
    switch (wished) {
    case VTX_WISHED_COLD_TEMPERATURE: return p.cold_temperature;
    case VTX_WISHED_CAPACITY: return p.target_capacity;
    case VTX_WISHED_INLET_CAPACITY: return p.capacity;
    case VTX_WISHED_TOTAL_CAPACITY: return job->running * p.target_capacity;
    case VTX_WISHED_AIR_FLOW: return job->running * p.free_air_flow;
    case VTX_WISHED_FACE_TEMPERATURE: return w.face_temperature;
    case VTX_WISHED_EXPOSURE_TIME: return w.exposure_time;
    case VTX_WISHED_JET_TEMPERATURE: return w.jet_temperature;
    case VTX_WISHED_HEAT_REMOVED: return w.heat_removed;
    default: return p.coldest_temperature - p.cold_saturation_point;
    }
}

static void put(vtx_job *job, const vtx_request *r, double x)
{
    switch (r->sought) {
    case VTX_SOUGHT_COLD_FRACTION: job->setting.cold_fraction = x; break;
    case VTX_SOUGHT_VALVE_OPENING: job->setting.held = VTX_HELD_VALVE_OPENING; job->setting.valve_opening = x; break;
    case VTX_SOUGHT_SUPPLY_PRESSURE: job->supply.pressure = x; break;
    case VTX_SOUGHT_REGULATOR_PRESSURE: job->line[r->element].set_pressure = x; break;
    case VTX_SOUGHT_INLET_AREA: job->cooler.inlet_area_factor = x; break;
    case VTX_SOUGHT_BORE: job->line[r->element].diameter = x; break;
    case VTX_SOUGHT_LENGTH: job->line[r->element].length = x; break;
    case VTX_SOUGHT_HUMIDITY: job->supply.humidity = x; break;
    case VTX_SOUGHT_STANDOFF: job->duty.standoff = x; break;
    default: job->running = x; break;
    }
}

static double quantity(const vtx_job *job, const vtx_request *r)
{
    switch (r->sought) {
    case VTX_SOUGHT_COLD_FRACTION: return job->setting.cold_fraction;
    case VTX_SOUGHT_VALVE_OPENING: return job->setting.valve_opening;
    case VTX_SOUGHT_SUPPLY_PRESSURE: return job->supply.pressure;
    case VTX_SOUGHT_REGULATOR_PRESSURE: return job->line[r->element].set_pressure;
    case VTX_SOUGHT_INLET_AREA: return job->cooler.inlet_area_factor;
    case VTX_SOUGHT_BORE: return job->line[r->element].diameter;
    case VTX_SOUGHT_LENGTH: return job->line[r->element].length;
    case VTX_SOUGHT_HUMIDITY: return job->supply.humidity;
    case VTX_SOUGHT_STANDOFF: return job->duty.standoff;
    default: return job->running;
    }
}

/* A job whose wish is the figure that it has: the answer must give the figure back. */
static vtx_job random_job(struct random_state *r)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    add_line(&job);
    vtx_chain_regulator(random_uniform(r, 4e5, 8e5), 2e4, 0.012, 2e-7, 0.3, &job.line[4]);
    job.elements = 5;
    job.line[2].diameter = random_uniform(r, 0.006, 0.012);
    job.line[2].length = random_uniform(r, 2, 15);
    job.supply.pressure = random_uniform(r, 6e5, 1e6);
    job.supply.temperature = random_uniform(r, 285, 310);
    job.supply.humidity = random_uniform(r, 250, 280);
    job.cooler.rated_free_air_flow = random_uniform(r, 0.002, 0.012);
    job.setting.cold_fraction = random_uniform(r, 0.25, 0.75);
    job.running = random_uniform(r, 1, 2);
    return job;
}

/* The same with a face, a heat load and a part for the wishes about the work. */
static vtx_job random_work(struct random_state *r)
{
    vtx_job job = random_job(r);
    job.duty.target_temperature = random_uniform(r, 300, 330);
    job.duty.face_area = random_log_uniform(r, 5e-4, 5e-3);
    job.duty.standoff = random_uniform(r, 0.01, 0.12);
    job.duty.heat_load = random_uniform(r, 10, 80);
    job.duty.mass = random_uniform(r, 0.05, 0.5);
    job.duty.specific_heat = 900;
    job.duty.start_temperature = job.duty.target_temperature + random_uniform(r, 10, 60);
    return job;
}

struct tally {
    int met, bound, impossible;
};

/* The wish is met by the job itself, if its own value lies in the range searched. */
static void ask_for_what_it_has(vtx_job *job, int32_t sought, int32_t wished, struct tally *tally)
{
    const double wanted = figure(job, wished);
    vtx_request request;
    vtx_sizing answer;
    EXPECT_OK(vtx_request_init(job, sought, wished, wanted, &request));
    const vtx_status status = vtx_size(job, &request, &answer);
    const double own = quantity(job, &request);
    if (status == VTX_NO_SOLUTION) {
        tally->impossible++;
        EXPECT(own < request.low || own > request.high || sought == VTX_SOUGHT_VALVE_OPENING);
        EXPECT(isfinite(answer.attainable_figure) && answer.attainable_limit >= VTX_LIMIT_RANGE_LOW && isnan(answer.value));
        return;
    }
    EXPECT_OK(status);
    put(job, &request, answer.value);
    const double got = figure(job, wished);
    EXPECT_NEAR(got, answer.figure, 1e-12);
    if (answer.limit == VTX_LIMIT_WISH) {
        tally->met++;
        EXPECT_WITHIN(got, wanted, 1e-8 * fmax(fabs(wanted), 1e-3));
    } else {
        tally->bound++;
        EXPECT(answer.limit == VTX_LIMIT_RANGE_LOW || answer.limit == VTX_LIMIT_RANGE_HIGH || answer.limit == VTX_LIMIT_COOLER);
    }
}

static void forward_of_inverse_gives_the_wish(void)
{
    static const int32_t wishes[] = { VTX_WISHED_COLD_TEMPERATURE, VTX_WISHED_CAPACITY, VTX_WISHED_INLET_CAPACITY,
                                      VTX_WISHED_TOTAL_CAPACITY, VTX_WISHED_AIR_FLOW, VTX_WISHED_FREEZING_MARGIN };
    struct random_state r;
    struct tally tally = { 0 };
    random_seed(&r, 41);
    /* VTX_SOAK=1: 1e4 jobs and more, nine quantities each. */
    for (int i = 0; i < (getenv("VTX_SOAK") ? 1200 : 150); i++)
        for (int32_t sought = VTX_SOUGHT_COLD_FRACTION; sought <= VTX_SOUGHT_RUNNING; sought++) {
            if (sought == VTX_SOUGHT_STANDOFF)
                continue; /* moves none of these figures */
            vtx_job job = random_job(&r);
            ask_for_what_it_has(&job, sought, wishes[(int)random_uniform(&r, 0, 5.999)], &tally);
        }
    EXPECT(tally.met > 600 && tally.bound > 20);
    printf(" (%d met, %d bound by the range, %d impossible) ", tally.met, tally.bound, tally.impossible);
}

static void forward_of_inverse_gives_the_wish_at_the_work(void)
{
    static const int32_t wishes[] = { VTX_WISHED_FACE_TEMPERATURE, VTX_WISHED_EXPOSURE_TIME, VTX_WISHED_JET_TEMPERATURE, VTX_WISHED_HEAT_REMOVED };
    struct random_state r;
    struct tally tally = { 0 };
    random_seed(&r, 43);
    for (int i = 0; i < (getenv("VTX_SOAK") ? 1200 : 40); i++)
        for (int32_t sought = VTX_SOUGHT_COLD_FRACTION; sought <= VTX_SOUGHT_RUNNING; sought++) {
            const int32_t wished = wishes[(int)random_uniform(&r, 0, 3.999)];
            vtx_job job = random_work(&r);
            while (!isfinite(figure(&job, wished))) /* a jet too warm for the part never gets it there */
                job = random_work(&r);
            ask_for_what_it_has(&job, sought, wished, &tally);
        }
    EXPECT(tally.met > 200);
    printf(" (%d met, %d bound by the range, %d impossible) ", tally.met, tally.bound, tally.impossible);
}

/* Wishes beyond any cooler: every answer names the best and what holds it there. */
static void what_is_out_of_reach_says_what_binds(void)
{
    static const struct {
        int32_t wished;
        double wanted;
    } impossible[] = { { VTX_WISHED_COLD_TEMPERATURE, 120 }, { VTX_WISHED_CAPACITY, 1e5 },      { VTX_WISHED_INLET_CAPACITY, 1e5 },
                       { VTX_WISHED_TOTAL_CAPACITY, 1e6 },   { VTX_WISHED_FACE_TEMPERATURE, 120 }, { VTX_WISHED_AIR_FLOW, 1e-9 },
                       { VTX_WISHED_EXPOSURE_TIME, 1e-6 },   { VTX_WISHED_FREEZING_MARGIN, 250 },  { VTX_WISHED_JET_TEMPERATURE, 120 },
                       { VTX_WISHED_HEAT_REMOVED, 1e6 } };
    struct random_state r;
    random_seed(&r, 44);
    for (int i = 0; i < (getenv("VTX_SOAK") ? 100 : 3); i++)
        for (int32_t sought = VTX_SOUGHT_COLD_FRACTION; sought <= VTX_SOUGHT_RUNNING; sought++)
            for (size_t k = 0; k < sizeof impossible / sizeof impossible[0]; k++) {
                vtx_job job = random_work(&r);
                vtx_request request;
                vtx_sizing answer;
                while (!isfinite(figure(&job, impossible[k].wished)))
                    job = random_work(&r);
                EXPECT_OK(vtx_request_init(&job, sought, impossible[k].wished, impossible[k].wanted, &request));
                EXPECT_STATUS(vtx_size(&job, &request, &answer), VTX_NO_SOLUTION);
                EXPECT(answer.attainable_limit == VTX_LIMIT_RANGE_LOW || answer.attainable_limit == VTX_LIMIT_RANGE_HIGH
                       || answer.attainable_limit == VTX_LIMIT_COOLER);
                EXPECT(answer.attainable_value >= request.low && answer.attainable_value <= request.high);
                put(&job, &request, answer.attainable_value);
                EXPECT_NEAR(figure(&job, impossible[k].wished), answer.attainable_figure, 1e-12);
            }
}

/* Down to where the valve is wide open and the muffler alone holds the hot air back. */
static void cold_fractions_end_where_no_opening_gives_them(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_operating_point p;
    vtx_sizing answer;
    job.supply.pressure = 701325;
    job.cooler.hot_conductance = 1.5e-8;
    job.cooler.hot_critical_ratio = 0.3;
    EXPECT_STATUS(vtx_job_cold_fraction(&job, 260, VTX_BRANCH_MORE_COLD_AIR, &answer), VTX_NO_SOLUTION);
    EXPECT(answer.attainable_limit == VTX_LIMIT_COOLER && answer.attainable_figure > 260);
    vtx_job open = job;
    open.setting.held = VTX_HELD_VALVE_OPENING;
    open.setting.valve_opening = 100;
    EXPECT_OK(vtx_job_evaluate(&open, &p, NULL));
    EXPECT(answer.attainable_value < p.cold_fraction);
    EXPECT_NEAR(answer.attainable_value, p.cold_fraction, 1e-3);
    EXPECT_WITHIN(answer.attainable_figure, p.cold_temperature, 0.05);
    /* One that can be had, from either side. */
    EXPECT_OK(vtx_job_cold_fraction(&job, 262, VTX_BRANCH_MORE_COLD_AIR, &answer));
    EXPECT(answer.limit == VTX_LIMIT_WISH);
    job.setting.cold_fraction = answer.value;
    EXPECT_OK(vtx_job_evaluate(&job, &p, NULL));
    EXPECT_NEAR(p.cold_temperature, 262, 1e-8);
    EXPECT(isfinite(p.valve_opening));
    EXPECT_OK(vtx_job_cold_fraction(&job, 262, VTX_BRANCH_LESS_COLD_AIR, &answer));
    EXPECT(answer.limit == VTX_LIMIT_COOLER && answer.figure < 262);
    EXPECT_NEAR(answer.value, answer.attainable_value, 1e-10);
}

static void both_branches_of_the_cold_fraction_are_named(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (int with_line = 0; with_line < 2; with_line++) {
            vtx_job job = sample_job(model);
            vtx_sizing less, more;
            if (with_line)
                add_line(&job);
            job.setting.cold_fraction = 0.24;
            const double wanted = figure(&job, VTX_WISHED_COLD_TEMPERATURE);
            EXPECT_OK(vtx_job_cold_fraction(&job, wanted, VTX_BRANCH_LESS_COLD_AIR, &less));
            EXPECT_OK(vtx_job_cold_fraction(&job, wanted, VTX_BRANCH_MORE_COLD_AIR, &more));
            EXPECT_WITHIN(less.value, 0.24, 1e-7);
            EXPECT(more.value > 0.3);
            job.setting.cold_fraction = more.value;
            EXPECT_WITHIN(figure(&job, VTX_WISHED_COLD_TEMPERATURE), wanted, 1e-7);
            EXPECT(!isfinite(more.value_high) || more.value_high > more.value);
        }
}

static void an_impossible_temperature_says_how_cold_it_gets(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_sizing answer;
    EXPECT_STATUS(vtx_job_cold_fraction(&job, 200, VTX_BRANCH_MORE_COLD_AIR, &answer), VTX_NO_SOLUTION);
    EXPECT(isnan(answer.value) && answer.limit == -1 && answer.attainable_limit == VTX_LIMIT_COOLER);
    EXPECT_WITHIN(answer.attainable_value, 0.3, 1e-3);
    job.setting.cold_fraction = answer.attainable_value;
    EXPECT_WITHIN(figure(&job, VTX_WISHED_COLD_TEMPERATURE), answer.attainable_figure, 1e-6);
}

static void the_pressure_for_a_capacity_is_found_or_its_limit_named(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_sizing answer;
    EXPECT_OK(vtx_job_supply_pressure(&job, 250, 1e6, &answer));
    EXPECT(answer.value_low > answer.value && answer.value_high < answer.value);
    job.supply.pressure = answer.value;
    EXPECT_NEAR(figure(&job, VTX_WISHED_CAPACITY), 250, 1e-9);
    EXPECT_STATUS(vtx_job_supply_pressure(&job, 5000, 1e6, &answer), VTX_NO_SOLUTION);
    EXPECT(answer.attainable_limit == VTX_LIMIT_RANGE_HIGH && answer.attainable_value == 1e6);
}

static void two_wishes_at_once_are_both_met(void)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    vtx_request first, second;
    vtx_sizing answer, inner;
    vtx_operating_point p;
    /* One quantity: enough capacity and cold enough. */
    EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_CAPACITY, 250, &first));
    EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_COLD_TEMPERATURE, 264, &second));
    EXPECT_OK(vtx_size_for_both(&job, &first, &second, &answer));
    job.supply.pressure = answer.value;
    EXPECT_OK(vtx_job_evaluate(&job, &p, NULL));
    EXPECT(p.target_capacity >= 250 * (1 - 1e-9) && p.cold_temperature <= 264 + 1e-6);
    EXPECT(fabs(p.target_capacity - 250) < 1e-5 || fabs(p.cold_temperature - 264) < 1e-5);
    /* Two quantities: exactly that capacity at exactly that temperature. */
    EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_COLD_TEMPERATURE, 266, &first));
    EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_CAPACITY, 300, &second));
    EXPECT_OK(vtx_size_pair(&job, &first, &second, &answer, &inner));
    job.setting.cold_fraction = answer.value;
    job.supply.pressure = inner.value;
    EXPECT_OK(vtx_job_evaluate(&job, &p, NULL));
    EXPECT_NEAR(p.target_capacity, 300, 1e-7);
    EXPECT_WITHIN(p.cold_temperature, 266, 1e-5);
}

/* A pair of the job's own figures exists by construction: it, or another one, must meet both wishes by equality. */
static void a_pair_that_exists_is_met_exactly(void)
{
    static const struct {
        int32_t outer, inner, outer_wish, inner_wish;
        double outer_low, outer_high, inner_low, inner_high;
    } cases[] = {
        { VTX_SOUGHT_COLD_FRACTION, VTX_SOUGHT_BORE, VTX_WISHED_CAPACITY, VTX_WISHED_AIR_FLOW, 0.25, 0.78, 0.006, 0.011 },
        { VTX_SOUGHT_COLD_FRACTION, VTX_SOUGHT_BORE, VTX_WISHED_COLD_TEMPERATURE, VTX_WISHED_AIR_FLOW, 0.35, 0.78, 0.006, 0.011 },
        { VTX_SOUGHT_COLD_FRACTION, VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_COLD_TEMPERATURE, VTX_WISHED_CAPACITY, 0.35, 0.78, 4e5, 9e5 },
        { VTX_SOUGHT_SUPPLY_PRESSURE, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_CAPACITY, VTX_WISHED_COLD_TEMPERATURE, 4e5, 9e5, 0.35, 0.78 },
        { VTX_SOUGHT_COLD_FRACTION, VTX_SOUGHT_INLET_AREA, VTX_WISHED_CAPACITY, VTX_WISHED_AIR_FLOW, 0.25, 0.78, 0.5, 1.8 },
        { VTX_SOUGHT_INLET_AREA, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_CAPACITY, VTX_WISHED_COLD_TEMPERATURE, 0.5, 1.8, 0.35, 0.78 },
        { VTX_SOUGHT_INLET_AREA, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_AIR_FLOW, VTX_WISHED_CAPACITY, 0.5, 1.8, 0.25, 0.78 },
    };
    struct random_state r;
    int met = 0, asked = 0;
    random_seed(&r, 45);
    for (int i = 0; i < (getenv("VTX_SOAK") ? 60 : 4); i++)
        for (size_t k = 0; k < sizeof cases / sizeof cases[0]; k++) {
            vtx_job job = sample_job(VTX_AIR_IDEAL);
            vtx_request outer, inner;
            vtx_sizing o, n;
            EXPECT_OK(vtx_chain_hose(0.008, 5, &job.line[0]));
            job.elements = 1;
            job.supply.pressure = 8e5;
            EXPECT_OK(vtx_request_init(&job, cases[k].outer, cases[k].outer_wish, 300, &outer));
            EXPECT_OK(vtx_request_init(&job, cases[k].inner, cases[k].inner_wish, 300, &inner));
            put(&job, &outer, random_uniform(&r, cases[k].outer_low, cases[k].outer_high));
            put(&job, &inner, random_uniform(&r, cases[k].inner_low, cases[k].inner_high));
            outer.wanted = figure(&job, outer.wished);
            inner.wanted = figure(&job, inner.wished);
            asked++;
            if (vtx_size_pair(&job, &outer, &inner, &o, &n) != VTX_OK)
                continue;
            met++;
            put(&job, &outer, o.value);
            put(&job, &inner, n.value);
            EXPECT_NEAR(figure(&job, outer.wished), outer.wanted, 1e-7);
            EXPECT_NEAR(figure(&job, inner.wished), inner.wanted, 1e-7);
            EXPECT(o.limit == VTX_LIMIT_WISH && n.limit == VTX_LIMIT_WISH && isnan(n.value_low) && isnan(n.value_high));
            EXPECT(o.figure == o.attainable_figure && n.figure == n.attainable_figure);
        }
    EXPECT(met == asked);
    printf(" (%d of %d pairs) ", met, asked);
}

/* Where there is no pair the attainable fields of both are one trial. */
static void a_pair_that_does_not_exist_says_how_near_one_comes(void)
{
    static const double wanted[3][2] = { { 1e4, 0.009 }, { 300, 1 }, { 1e4, 1 } };
    for (int i = 0; i < 3; i++) {
        vtx_job job = sample_job(VTX_AIR_IDEAL);
        vtx_request outer, inner;
        vtx_sizing o, n;
        EXPECT_OK(vtx_chain_hose(0.008, 5, &job.line[0]));
        job.elements = 1;
        job.supply.pressure = 8e5;
        EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_CAPACITY, wanted[i][0], &outer));
        EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_BORE, VTX_WISHED_AIR_FLOW, wanted[i][1], &inner));
        EXPECT_STATUS(vtx_size_pair(&job, &outer, &inner, &o, &n), VTX_NO_SOLUTION);
        EXPECT(isnan(o.value) && isnan(n.value) && o.limit == -1 && n.limit == -1);
        EXPECT(o.attainable_limit >= VTX_LIMIT_RANGE_LOW && n.attainable_limit >= VTX_LIMIT_RANGE_LOW);
        put(&job, &outer, o.attainable_value);
        put(&job, &inner, n.attainable_value);
        EXPECT_NEAR(figure(&job, outer.wished), o.attainable_figure, 1e-9);
        EXPECT_NEAR(figure(&job, inner.wished), n.attainable_figure, 1e-9);
        if (i == 0)
            EXPECT_NEAR(n.attainable_figure, 0.009, 1e-7);
    }
}

static void requests_that_make_no_sense_are_refused(void)
{
    const vtx_job job = sample_job(VTX_AIR_IDEAL);
    vtx_request request;
    vtx_sizing answer;
    EXPECT_STATUS(vtx_request_init(&job, VTX_SOUGHT_BORE, VTX_WISHED_CAPACITY, 250, &request), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_request_init(&job, VTX_WISHED_CAPACITY, VTX_SOUGHT_BORE, 250, &request), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_request_init(&job, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_CAPACITY, (double)NAN, &request), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_CAPACITY, 250, &request));
    request.low = 0.9;
    EXPECT_STATUS(vtx_size(&job, &request, &answer), VTX_BAD_ARGUMENT);
    EXPECT(isnan(answer.value) && answer.limit == -1);
    EXPECT_STATUS(vtx_size(&job, NULL, &answer), VTX_BAD_ARGUMENT);
}

static void a_request_needs_an_element_that_has_the_quantity(void)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    static const int32_t quantities[] = { VTX_SOUGHT_REGULATOR_PRESSURE, VTX_SOUGHT_BORE, VTX_SOUGHT_LENGTH };
    EXPECT_OK(vtx_chain_regulator(6e5, 3e4, 0.012, 6e-8, 0.3, &job.line[0]));
    EXPECT_OK(vtx_chain_hose(0.008, 5, &job.line[1]));
    job.elements = 2;
    for (int k = 0; k < 3; k++) {
        const int32_t has = k == 0 ? 0 : 1;
        vtx_request request, other;
        vtx_sizing answer, inner;
        EXPECT_OK(vtx_request_init(&job, VTX_SOUGHT_COLD_FRACTION, VTX_WISHED_COLD_TEMPERATURE, 266, &other));
        EXPECT_OK(vtx_request_init(&job, quantities[k], VTX_WISHED_CAPACITY, 150, &request));
        EXPECT(request.element == has);
        EXPECT_OK(vtx_size(&job, &request, &answer));
        request.element = 1 - has;
        EXPECT_STATUS(vtx_size(&job, &request, &answer), VTX_BAD_ARGUMENT);
        EXPECT(isnan(answer.value) && answer.limit == -1);
        EXPECT_STATUS(vtx_size_for_both(&job, &request, &other, &answer), VTX_BAD_ARGUMENT);
        EXPECT_STATUS(vtx_size_pair(&job, &request, &other, &answer, &inner), VTX_BAD_ARGUMENT);
        EXPECT_STATUS(vtx_size_pair(&job, &other, &request, &answer, &inner), VTX_BAD_ARGUMENT);
    }
    vtx_request request;
    job.elements = 1; /* a regulator alone has no bore to be sought */
    EXPECT_STATUS(vtx_request_init(&job, VTX_SOUGHT_BORE, VTX_WISHED_CAPACITY, 150, &request), VTX_BAD_ARGUMENT);
    EXPECT(isnan(request.wanted) && request.sought == -1);
    job.elements = 2000000000;
    EXPECT_STATUS(vtx_request_init(&job, VTX_SOUGHT_BORE, VTX_WISHED_CAPACITY, 150, &request), VTX_BAD_ARGUMENT);
}

static void a_range_that_the_quantity_cannot_have_is_refused(void)
{
    static const struct {
        int32_t sought;
        double low, high;
    } never[] = { { VTX_SOUGHT_BORE, -0.01, 0.01 }, { VTX_SOUGHT_LENGTH, -1, 10 }, { VTX_SOUGHT_STANDOFF, -0.1, 0.1 }, { VTX_SOUGHT_RUNNING, -1, 4 },
                  { VTX_SOUGHT_RUNNING, 0, 4 }, { VTX_SOUGHT_INLET_AREA, 0, 2 }, { VTX_SOUGHT_REGULATOR_PRESSURE, -1e5, 6e5 },
                  { VTX_SOUGHT_VALVE_OPENING, -1, 2 }, { VTX_SOUGHT_COLD_FRACTION, 0.2, 1.5 }, { VTX_SOUGHT_SUPPLY_PRESSURE, 0, 8e5 } };
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    EXPECT_OK(vtx_chain_regulator(6e5, 3e4, 0.012, 6e-8, 0.3, &job.line[0]));
    EXPECT_OK(vtx_chain_hose(0.008, 5, &job.line[1]));
    job.elements = 2;
    for (size_t i = 0; i < sizeof never / sizeof never[0]; i++) {
        vtx_request request;
        vtx_sizing answer;
        EXPECT_OK(vtx_request_init(&job, never[i].sought, VTX_WISHED_CAPACITY, 150, &request));
        request.low = never[i].low;
        request.high = never[i].high;
        EXPECT_STATUS(vtx_size(&job, &request, &answer), VTX_BAD_ARGUMENT);
    }
}

static const struct test_case tests[] = {
    { "forward of inverse gives the wish", forward_of_inverse_gives_the_wish },
    { "forward of inverse gives the wish at the work", forward_of_inverse_gives_the_wish_at_the_work },
    { "what is out of reach says what binds", what_is_out_of_reach_says_what_binds },
    { "cold fractions end where no opening gives them", cold_fractions_end_where_no_opening_gives_them },
    { "both branches of the cold fraction are named", both_branches_of_the_cold_fraction_are_named },
    { "an impossible temperature says how cold it gets", an_impossible_temperature_says_how_cold_it_gets },
    { "the pressure for a capacity is found, or its limit named", the_pressure_for_a_capacity_is_found_or_its_limit_named },
    { "two wishes at once are both met", two_wishes_at_once_are_both_met },
    { "a pair that exists is met exactly", a_pair_that_exists_is_met_exactly },
    { "a pair that does not exist says how near one comes", a_pair_that_does_not_exist_says_how_near_one_comes },
    { "requests that make no sense are refused", requests_that_make_no_sense_are_refused },
    { "a request needs an element that has the quantity", a_request_needs_an_element_that_has_the_quantity },
    { "a range that the quantity cannot have is refused", a_range_that_the_quantity_cannot_have_is_refused },
};
TEST_SUITE(sizing, tests);
