/* Every inverse inverts. */
#include <vtx/setting.h>
#include <vtx/sizing.h>

#include "sample_job.h"

static double figure(const vtx_job *job, int32_t wished)
{
    vtx_operating_point p;
    if (vtx_job_evaluate(job, &p, NULL) != VTX_OK)
        return (double)NAN;
    switch (wished) {
    case VTX_WISHED_COLD_TEMPERATURE: return p.cold_temperature;
    case VTX_WISHED_CAPACITY: return p.target_capacity;
    case VTX_WISHED_INLET_CAPACITY: return p.capacity;
    case VTX_WISHED_TOTAL_CAPACITY: return job->running * p.target_capacity;
    case VTX_WISHED_AIR_FLOW: return job->running * p.free_air_flow;
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

static void forward_of_inverse_gives_the_wish(void)
{
    static const int32_t wishes[] = { VTX_WISHED_COLD_TEMPERATURE, VTX_WISHED_CAPACITY, VTX_WISHED_INLET_CAPACITY,
                                      VTX_WISHED_TOTAL_CAPACITY, VTX_WISHED_AIR_FLOW, VTX_WISHED_FREEZING_MARGIN };
    struct random_state r;
    int met = 0, bound = 0, impossible = 0;
    random_seed(&r, 41);
    /* VTX_SOAK=1: 1e4 and more. */
    for (int i = 0; i < (getenv("VTX_SOAK") ? 1200 : 150); i++)
        for (int32_t sought = VTX_SOUGHT_COLD_FRACTION; sought <= VTX_SOUGHT_RUNNING; sought++) {
            if (sought == VTX_SOUGHT_RUNNING - 1)
                continue; /* the number of the standoff, asked for in another test */
            vtx_job job = random_job(&r);
            const int32_t wished = wishes[(int)random_uniform(&r, 0, 5.999)];
            const double wanted = figure(&job, wished);
            vtx_request request;
            vtx_sizing answer;
            EXPECT_OK(vtx_request_init(&job, sought, wished, wanted, &request));
            const vtx_status status = vtx_size(&job, &request, &answer);
            /* The wish is met by the job itself, if its own value lies in the range searched. */
            const double own = quantity(&job, &request);
            if (status == VTX_NO_SOLUTION) {
                impossible++;
                EXPECT(own < request.low || own > request.high || sought == VTX_SOUGHT_VALVE_OPENING);
                EXPECT(isfinite(answer.attainable_figure) && answer.attainable_limit >= VTX_LIMIT_RANGE_LOW && isnan(answer.value));
                continue;
            }
            EXPECT_OK(status);
            put(&job, &request, answer.value);
            const double got = figure(&job, wished);
            EXPECT_NEAR(got, answer.figure, 1e-12);
            if (answer.limit == VTX_LIMIT_WISH) {
                met++;
                EXPECT_WITHIN(got, wanted, 1e-8 * fmax(fabs(wanted), 1e-3));
            } else {
                bound++;
                EXPECT(answer.limit == VTX_LIMIT_RANGE_LOW || answer.limit == VTX_LIMIT_RANGE_HIGH || answer.limit == VTX_LIMIT_COOLER);
            }
        }
    EXPECT(met > 600 && bound > 20);
    printf(" (%d met, %d bound by the range, %d impossible) ", met, bound, impossible);
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

static const struct test_case tests[] = {
    { "forward of inverse gives the wish", forward_of_inverse_gives_the_wish },
    { "both branches of the cold fraction are named", both_branches_of_the_cold_fraction_are_named },
    { "an impossible temperature says how cold it gets", an_impossible_temperature_says_how_cold_it_gets },
    { "the pressure for a capacity is found, or its limit named", the_pressure_for_a_capacity_is_found_or_its_limit_named },
    { "two wishes at once are both met", two_wishes_at_once_are_both_met },
    { "requests that make no sense are refused", requests_that_make_no_sense_are_refused },
};
TEST_SUITE(sizing, tests);
