/* Line and cooler in balance. */
#include "sample_job.h"

static void without_a_line_the_job_is_the_cooler(void)
{
    const vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_operating_point p, q;
    vtx_work w;
    EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
    EXPECT_OK(vtx_operating_point_at(&job.cooler, &job.supply, &job.site, &job.setting, job.duty.target_temperature, &q));
    EXPECT(memcmp(&p, &q, sizeof p) == 0);
    EXPECT(w.line_drop == 0);
    EXPECT_NEAR(w.supply_flow, p.mass_flow, 1e-15);
}

static void line_and_cooler_agree_on_the_pressure_between_them(void)
{
    struct random_state r;
    random_seed(&r, 31);
    for (int i = 0; i < 200; i++) {
        vtx_job job = sample_job(i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL);
        vtx_operating_point p, q;
        vtx_supply arrived;
        vtx_chain_state state;
        vtx_work w;
        add_line(&job);
        job.line[2].diameter = random_uniform(&r, 0.005, 0.013);
        job.line[2].length = random_uniform(&r, 1, 20);
        job.supply.pressure = random_uniform(&r, 5e5, 1.1e6);
        job.setting.cold_fraction = random_uniform(&r, 0.2, 0.8);
        job.cooler.rated_free_air_flow = random_uniform(&r, 0.002, 0.015);
        job.running = 1 + random_uniform(&r, 0, 1);
        EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
        /* The cooler alone with the pressure that arrives. */
        arrived = job.supply;
        arrived.pressure = p.inlet_pressure;
        arrived.humidity_pressure = job.supply.pressure;
        EXPECT_OK(vtx_operating_point_at(&job.cooler, &arrived, &job.site, &job.setting, job.duty.target_temperature, &q));
        EXPECT_NEAR(q.mass_flow, p.mass_flow, 1e-12);
        EXPECT_NEAR(q.cold_temperature, p.cold_temperature, 1e-12);
        /* The line alone with the flow that is drawn, unless the line itself is choked. */
        EXPECT_NEAR(w.supply_flow, p.mass_flow * job.running, 1e-13);
        EXPECT_NEAR(w.line_drop, job.supply.pressure - p.inlet_pressure, 1e-13);
        if (vtx_chain_outlet_pressure(job.line, 4, w.supply_flow, job.supply.pressure, job.supply.temperature, &state, NULL) == VTX_OK)
            EXPECT_NEAR(state.outlet_stagnation_pressure, p.inlet_pressure, 1e-9);
    }
}

static void a_thin_hose_starves_the_cooler_and_says_so(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_operating_point wide, thin;
    add_line(&job);
    job.line[2].diameter = 0.019;
    EXPECT_OK(vtx_job_evaluate(&job, &wide, NULL));
    job.line[2].diameter = 0.005;
    EXPECT_OK(vtx_job_evaluate(&job, &thin, NULL));
    EXPECT(thin.advisories & VTX_ADVISORY_STARVED);
    EXPECT(thin.inlet_pressure < wide.inlet_pressure - 5e4);
    EXPECT(thin.cold_temperature > wide.cold_temperature);
    EXPECT(thin.target_capacity < wide.target_capacity);
}

static void a_line_that_chokes_passes_its_capacity(void)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    vtx_operating_point p;
    vtx_work w;
    vtx_chain_state state;
    job.cooler.rated_free_air_flow = 0.05;
    vtx_chain_hose(0.004, 3, &job.line[0]);
    job.elements = 1;
    EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
    EXPECT_OK(vtx_chain_mass_flow(job.line, 1, job.supply.pressure, job.supply.temperature, 5e4, 293.15, &state, NULL));
    EXPECT(state.choked == 1);
    EXPECT(w.supply_flow <= state.mass_flow * (1 + 1e-9));
}

static void two_coolers_on_one_line_share_its_pressure(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_operating_point one, two;
    add_line(&job);
    EXPECT_OK(vtx_job_evaluate(&job, &one, NULL));
    job.running = 2;
    EXPECT_OK(vtx_job_evaluate(&job, &two, NULL));
    EXPECT(two.inlet_pressure < one.inlet_pressure);
    EXPECT(two.mass_flow < one.mass_flow && 2 * two.mass_flow > one.mass_flow);
}

static void a_regulator_in_front_trims_the_capacity(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_operating_point before, p;
    vtx_chain_regulator(5e5, 2e4, 0.012, 2e-7, 0.3, &job.line[0]);
    job.elements = 1;
    EXPECT_OK(vtx_job_evaluate(&job, &before, NULL));
    EXPECT(before.inlet_pressure < 5e5 && before.inlet_pressure > 4.5e5);
    job.line[0].set_pressure = 4e5;
    EXPECT_OK(vtx_job_evaluate(&job, &p, NULL));
    EXPECT(p.target_capacity < before.target_capacity && p.cold_temperature > before.cold_temperature);
}

/* A valve held on any line, with mufflers and pressure behind either outlet. */
static vtx_job job_with_a_held_valve(struct random_state *r)
{
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    add_line(&job);
    job.elements = (int32_t)random_uniform(r, 0, 4.99);
    job.line[2].diameter = random_log_uniform(r, 0.005, 0.012);
    job.supply.pressure = random_uniform(r, 2.5e5, 1e6);
    job.cooler.rated_free_air_flow = random_uniform(r, 0.0017, 0.025);
    job.cooler.outlet_conductance = random_uniform(r, 0, 1) < 0.3 ? random_log_uniform(r, 1e-8, 3e-7) : 0;
    job.cooler.hot_conductance = random_uniform(r, 0, 1) < 0.5 ? random_log_uniform(r, 1e-8, 3e-7) : 0;
    job.cooler.outlet_critical_ratio = job.cooler.hot_critical_ratio = 0.3;
    job.setting.held = VTX_HELD_VALVE_OPENING;
    job.setting.valve_opening = random_log_uniform(r, 0.05, 10);
    return job;
}

/* Pressure behind one outlet such that it has this share of the chamber's pressure left, or hardly any. */
static void starve_an_outlet(vtx_job *job, double chamber_pressure, double share_left, int cold)
{
    const double back = fmax(chamber_pressure * (1 - share_left) - job->site.pressure, 0);
    *(cold ? &job->setting.cold_back_pressure : &job->setting.hot_back_pressure) = back;
}

static void an_outlet_without_flow_ends_no_search(void)
{
    struct random_state r;
    const int jobs = soak_count(3000);
    int answered = 0;
    random_seed(&r, 34);
    for (int i = 0; i < jobs; i++) {
        vtx_job job = job_with_a_held_valve(&r);
        vtx_operating_point p, q;
        if (vtx_job_evaluate(&job, &p, NULL) == VTX_OK && i % 4)
            starve_an_outlet(&job, p.chamber_pressure, random_log_uniform(&r, 1e-13, 0.3), i % 2);
        const vtx_status status = vtx_job_evaluate(&job, &p, NULL);
        EXPECT(status == VTX_OK || status == VTX_OUT_OF_RANGE);
        if (status != VTX_OK)
            continue;
        answered++;
        if (job.elements > 0 || p.cold_fraction < 1e-3 || p.cold_fraction > 0.999)
            continue;
        /* The other way round through the same four openings. */
        job.setting.held = VTX_HELD_COLD_FRACTION;
        job.setting.cold_fraction = p.cold_fraction;
        job.cooler.cold_fraction_min = 0;
        job.cooler.cold_fraction_max = 1;
        EXPECT_OK(vtx_job_evaluate(&job, &q, NULL));
        EXPECT_NEAR(q.chamber_pressure, p.chamber_pressure, 1e-10);
        EXPECT_NEAR(q.mass_flow, p.mass_flow, 1e-10);
    }
    EXPECT(answered > jobs / 2);
}

static void no_valid_job_fails(void)
{
    /* VTX_SOAK=1: a million. */
    const int jobs = getenv("VTX_SOAK") ? 1000000 : 3000;
    struct random_state r;
    int starved = 0;
    random_seed(&r, 33);
    for (int i = 0; i < jobs; i++) {
        vtx_job job = sample_job(i % 50 ? VTX_AIR_IDEAL : VTX_AIR_REAL);
        vtx_operating_point p;
        add_line(&job);
        job.line[2].diameter = random_log_uniform(&r, 0.004, 0.025);
        job.line[2].length = random_log_uniform(&r, 0.1, 50);
        job.elements = (int32_t)random_uniform(&r, 0, 4.99);
        job.supply.pressure = random_uniform(&r, 3e5, 1.5e6);
        job.supply.temperature = random_uniform(&r, 275, 325);
        job.supply.humidity = random_uniform(&r, 235, fmin(job.supply.temperature, 300));
        job.site.pressure = random_uniform(&r, 7e4, 1.05e5);
        job.site.relative_humidity = random_uniform(&r, 0, 1);
        job.cooler.rated_free_air_flow = random_log_uniform(&r, 5e-4, 5e-2);
        job.cooler.outlets = 1 + i % 2;
        job.cooler.outlet_conductance = i % 3 ? 0 : random_log_uniform(&r, 2e-6, 1e-4) * job.cooler.rated_free_air_flow;
        job.cooler.outlet_critical_ratio = random_uniform(&r, 0.1, 0.5);
        job.running = random_uniform(&r, 1, 4);
        job.setting.cold_fraction = random_uniform(&r, 0.2, 0.8);
        if (i % 4 == 0) {
            job.setting.held = VTX_HELD_VALVE_OPENING;
            job.setting.valve_opening = random_log_uniform(&r, 0.1, 5);
        }
        const vtx_status status = vtx_job_evaluate(&job, &p, NULL);
        starved += status == VTX_OUT_OF_RANGE;
        EXPECT(status == VTX_OK || (status == VTX_OUT_OF_RANGE && job.elements > 0));
        if (status == VTX_OK)
            EXPECT(p.inlet_pressure <= job.supply.pressure && p.mass_flow > 0 && p.cold_temperature > 150);
    }
    EXPECT(starved < jobs / 3);
}

static void what_cannot_be_is_refused(void)
{
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_operating_point p;
    vtx_work w;
    job.elements = 9;
    EXPECT_STATUS(vtx_job_evaluate(&job, &p, &w), VTX_BAD_ARGUMENT);
    EXPECT(isnan(p.mass_flow) && isnan(w.supply_flow) && w.advisories == -1);
    job.elements = 1;
    EXPECT_STATUS(vtx_job_evaluate(&job, &p, &w), VTX_BAD_ARGUMENT); /* an element without a kind */
    job = sample_job(VTX_AIR_REAL);
    job.running = 0;
    EXPECT_STATUS(vtx_job_evaluate(&job, &p, &w), VTX_BAD_ARGUMENT);
    job = sample_job(VTX_AIR_REAL);
    vtx_chain_hose(0.001, 50, &job.line[0]);
    job.elements = 1;
    EXPECT_STATUS(vtx_job_evaluate(&job, &p, &w), VTX_OUT_OF_RANGE); /* next to nothing arrives */
}

static void what_is_not_stated_is_zero_and_nothing_else(void)
{
    static const double never[] = { -1, (double)NAN, (double)INFINITY };
    vtx_job job = sample_job(VTX_AIR_IDEAL);
    double *const fields[] = { &job.duty.heat_load, &job.duty.face_area,         &job.duty.standoff,     &job.duty.mass,
                               &job.duty.specific_heat, &job.duty.start_temperature, &job.duty.conductivity, &job.duty.half_thickness };
    vtx_operating_point p;
    vtx_work w;
    for (size_t i = 0; i < sizeof fields / sizeof fields[0]; i++)
        for (size_t k = 0; k < sizeof never / sizeof never[0]; k++) {
            *fields[i] = never[k];
            EXPECT_STATUS(vtx_job_evaluate(&job, &p, &w), VTX_BAD_ARGUMENT);
            *fields[i] = 0;
        }
    EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
    add_line(&job);
    for (int i = 0; i < 4; i++) { /* elements in use: the generic test sees none */
        job.line[i].reserved[i] = 1;
        EXPECT_STATUS(vtx_job_evaluate(&job, &p, &w), VTX_BAD_ARGUMENT);
        job.line[i].reserved[i] = 0;
    }
    EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
}

static void a_part_no_warmer_than_it_may_be_takes_no_time(void)
{
    static const double starts[] = { 250, 300, 313.15 };
    vtx_job job = sample_job(VTX_AIR_REAL);
    vtx_operating_point p;
    vtx_work w;
    job.duty.face_area = 2e-3;
    job.duty.standoff = 0.05;
    job.duty.mass = 0.2;
    job.duty.specific_heat = 480;
    for (int i = 0; i < 3; i++) {
        job.duty.start_temperature = starts[i];
        EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
        EXPECT(w.exposure_time == 0 && w.exposure_time_low == 0 && w.exposure_time_high == 0);
        EXPECT(!(w.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
    }
    job.duty.start_temperature = 313.16;
    EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
    EXPECT(w.exposure_time > 0 && w.exposure_time < 1);
    job.duty.target_temperature = 240; /* colder than the jet: never */
    EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
    EXPECT(isnan(w.exposure_time) && (w.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
}

static const struct test_case tests[] = {
    { "without a line the job is the cooler", without_a_line_the_job_is_the_cooler },
    { "line and cooler agree on the pressure between them", line_and_cooler_agree_on_the_pressure_between_them },
    { "a thin hose starves the cooler and says so", a_thin_hose_starves_the_cooler_and_says_so },
    { "a line that chokes passes its capacity", a_line_that_chokes_passes_its_capacity },
    { "two coolers on one line share its pressure", two_coolers_on_one_line_share_its_pressure },
    { "a regulator in front trims the capacity", a_regulator_in_front_trims_the_capacity },
    { "no valid job fails", no_valid_job_fails },
    { "an outlet almost without flow ends no search", an_outlet_without_flow_ends_no_search },
    { "what cannot be is refused", what_cannot_be_is_refused },
    { "what is not stated is zero and nothing else", what_is_not_stated_is_zero_and_nothing_else },
    { "a part no warmer than it may be takes no time", a_part_no_warmer_than_it_may_be_takes_no_time },
};
TEST_SUITE(job, tests);
