/* The operating point of a cooler. */
#include <vtx/laws.h>
#include <vtx/restriction.h>
#include <vtx/standard_flow.h>
#include <vtx/surface.h>

#include "sample_job.h"

struct bench {
    vtx_cooler cooler;
    vtx_supply supply;
    vtx_site site;
    vtx_cooler_setting setting;
};

static struct bench sample(int32_t model)
{
    struct bench b;
    sample_cooler(&b.cooler);
    sample_supply(&b.supply);
    sample_site(&b.site);
    vtx_cooler_setting_init(&b.setting);
    b.setting.model = model;
    return b;
}

static vtx_status operate(const struct bench *b, vtx_operating_point *p)
{
    return vtx_operating_point_at(&b->cooler, &b->supply, &b->site, &b->setting, 313.15, p);
}

/* A cooler, a supply and a setting drawn at random within ordinary shop limits. */
static struct bench random_bench(struct random_state *r, int32_t model)
{
    struct bench b = sample(model);
    b.cooler.rated_free_air_flow = random_log_uniform(r, 1e-3, 5e-2);
    b.cooler.rated_pressure = random_uniform(r, 5e5, 1e6);
    b.cooler.chamber_pressure_ratio = random_uniform(r, 0.35, 0.6);
    b.cooler.outlets = 1 + (int32_t)random_uniform(r, 0, 2.99);
    b.supply.pressure = random_uniform(r, 2.5e5, 1.2e6);
    b.supply.temperature = random_uniform(r, 280, 320);
    b.supply.humidity = random_uniform(r, 240, fmin(b.supply.temperature, 290));
    b.site.pressure = random_uniform(r, 8e4, 1.05e5);
    b.setting.cold_fraction = random_uniform(r, 0.2, 0.8);
    if (random_uniform(r, 0, 1) < 0.5) {
        b.cooler.outlet_conductance = random_log_uniform(r, 2e-6, 2e-5) * b.cooler.rated_free_air_flow / 0.01;
        b.cooler.outlet_critical_ratio = random_uniform(r, 0.1, 0.5);
    }
    return b;
}

static void the_ideal_point_is_that_of_the_golden_vectors(void)
{
    /* 700 kPa, 293.15 K, cold fraction 0.6, both outlets at 101325 Pa: computed from the equations, vortex tube as perfect gas. */
    struct bench b = sample(VTX_AIR_IDEAL);
    vtx_operating_point p;
    EXPECT_OK(operate(&b, &p));
    EXPECT_NEAR(p.cold_temperature, 264.745809, 2e-9);
    EXPECT_NEAR(p.hot_temperature, 335.756286, 2e-9);
    EXPECT_NEAR(p.entropy_generation, 547.885757, 2e-9);
    EXPECT_NEAR(p.capacity, p.mass_flow * 17144.7695, 4e-9);
    EXPECT_NEAR(p.target_capacity, p.cold_mass_flow * 1006 * (313.15 - p.cold_temperature), 1e-12);
}

static void the_rated_point_draws_the_rated_flow(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++) {
        struct bench b = sample(model);
        vtx_operating_point p;
        double mass_flow, area, orifice;
        int32_t choked;
        vtx_gas gas;
        b.supply.pressure = b.cooler.rated_pressure;
        b.supply.temperature = b.cooler.rated_temperature;
        EXPECT_OK(vtx_cooler_rated_mass_flow(&b.cooler, &mass_flow));
        EXPECT_OK(operate(&b, &p));
        EXPECT_NEAR(p.mass_flow, mass_flow, 1e-13);
        EXPECT_NEAR(p.free_air_flow, b.cooler.rated_free_air_flow, 1e-13);
        EXPECT_NEAR(p.valve_opening, 1, 1e-10);
        EXPECT_NEAR(p.chamber_pressure, 4e5, 1e-10);
        /* The inlet area alone, as a choked orifice. */
        vtx_gas_init(&gas);
        EXPECT_OK(vtx_cooler_inlet_area(&b.cooler, &area));
        EXPECT_OK(vtx_orifice_mass_flow(&gas, area, 1, 8e5, 293.15, 4e5, &orifice, &choked));
        EXPECT_NEAR(orifice, mass_flow, 1e-13);
        EXPECT(choked == 1);
        b.setting.held = VTX_HELD_VALVE_OPENING;
        EXPECT_OK(operate(&b, &p));
        EXPECT_NEAR(p.cold_fraction, b.cooler.rated_cold_fraction, 1e-10);
        EXPECT_NEAR(p.mass_flow, mass_flow, 1e-12);
    }
}

static void an_opening_held_repeats_the_point_that_it_came_from(void)
{
    struct random_state r;
    random_seed(&r, 21);
    for (int i = 0; i < 300; i++) {
        struct bench b = random_bench(&r, VTX_AIR_IDEAL);
        vtx_operating_point held, again;
        if (operate(&b, &held) != VTX_OK || !isfinite(held.valve_opening) || held.valve_opening > 100)
            continue;
        b.setting.held = VTX_HELD_VALVE_OPENING;
        b.setting.valve_opening = held.valve_opening;
        EXPECT_OK(operate(&b, &again));
        EXPECT_NEAR(again.cold_fraction, held.cold_fraction, 1e-8);
        EXPECT_NEAR(again.mass_flow, held.mass_flow, 1e-8);
        EXPECT_NEAR(again.chamber_pressure, held.chamber_pressure, 1e-8);
        EXPECT_NEAR(again.cold_temperature, held.cold_temperature, 1e-9);
    }
}

/* A hot muffler: how wide the valve is decides little when the muffler holds the hot air back. */
static void a_cold_fraction_that_no_opening_gives_is_refused(void)
{
    static const double impossible[][2] = { { 1.5e-8, 0.2 }, { 1.5e-8, 0.5 }, { 3e-8, 0.3 }, { 5e-9, 0.6 }, { 2e-9, 0.8 } };
    struct random_state r;
    int refused = 0, answered = 0;
    for (size_t i = 0; i < sizeof impossible / sizeof impossible[0]; i++) {
        struct bench b = sample(VTX_AIR_REAL);
        vtx_operating_point p;
        b.supply.pressure = 701325;
        b.cooler.hot_conductance = impossible[i][0];
        b.cooler.hot_critical_ratio = 0.3;
        b.setting.cold_fraction = impossible[i][1];
        EXPECT_STATUS(operate(&b, &p), VTX_NO_SOLUTION);
        EXPECT(isnan(p.hot_pressure) && p.advisories == -1);
    }
    random_seed(&r, 27);
    for (int i = 0; i < soak_count(600); i++) {
        struct bench b = random_bench(&r, i % 4 ? VTX_AIR_IDEAL : VTX_AIR_REAL);
        vtx_operating_point p, open;
        b.cooler.hot_conductance = random_log_uniform(&r, 5e-7, 2e-5) * b.cooler.rated_free_air_flow;
        b.cooler.hot_critical_ratio = random_uniform(&r, 0.1, 0.5);
        b.setting.hot_back_pressure = i % 3 ? 0 : random_uniform(&r, 0, 1e5);
        const vtx_status status = operate(&b, &p);
        EXPECT(status == VTX_OK || status == VTX_NO_SOLUTION);
        answered += status == VTX_OK;
        refused += status == VTX_NO_SOLUTION;
        if (status == VTX_OK) {
            EXPECT(isfinite(p.valve_opening) && p.hot_pressure < p.chamber_pressure);
            continue;
        }
        /* The widest valve that can be held still gives more. */
        b.setting.held = VTX_HELD_VALVE_OPENING;
        b.setting.valve_opening = 100;
        EXPECT_OK(operate(&b, &open));
        EXPECT(open.cold_fraction > b.setting.cold_fraction);
    }
    EXPECT(refused > 50 && answered > 50);
}

static void a_valve_beyond_the_range_of_cold_fractions_says_so(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++) {
        struct bench b = sample(model);
        vtx_operating_point p;
        b.supply.pressure = 4e5; /* at more the hot air leaves the range of the real gas */
        b.setting.cold_fraction = b.cooler.cold_fraction_max;
        EXPECT_OK(operate(&b, &p));
        EXPECT(!(p.advisories & VTX_ADVISORY_EXTRAPOLATED));
        b.setting.held = VTX_HELD_VALVE_OPENING;
        b.setting.valve_opening = p.valve_opening;
        EXPECT_OK(operate(&b, &p));
        EXPECT(!(p.advisories & VTX_ADVISORY_EXTRAPOLATED));
        b.setting.valve_opening = 0.2;
        EXPECT_OK(operate(&b, &p));
        EXPECT(p.cold_fraction > b.cooler.cold_fraction_max && p.advisories & VTX_ADVISORY_EXTRAPOLATED);
        b.setting.valve_opening = 100;
        EXPECT_OK(operate(&b, &p));
        EXPECT(p.cold_fraction < b.cooler.cold_fraction_min && p.advisories & VTX_ADVISORY_EXTRAPOLATED);
        b.setting.valve_opening = 100.1;
        EXPECT_STATUS(operate(&b, &p), VTX_OUT_OF_RANGE);
    }
}

static void mass_is_conserved_and_the_second_law_holds(void)
{
    struct random_state r;
    random_seed(&r, 22);
    for (int i = 0; i < 500; i++) {
        struct bench b = random_bench(&r, i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL);
        vtx_operating_point p;
        EXPECT_OK(operate(&b, &p));
        EXPECT_NEAR(p.cold_mass_flow + p.hot_mass_flow, p.mass_flow, 1e-14);
        EXPECT(p.entropy_generation > -1e-7);
        EXPECT(p.cold_temperature_low <= p.cold_temperature && p.cold_temperature <= p.cold_temperature_high);
        EXPECT(p.coldest_temperature <= p.cold_temperature);
        EXPECT(p.capacity_low <= p.capacity && p.capacity <= p.capacity_high);
        EXPECT(p.cold_pressure >= b.site.pressure && p.cold_pressure < p.chamber_pressure && p.chamber_pressure < p.inlet_pressure);
    }
}

static void more_pressure_is_colder_and_draws_more(void)
{
    /* Common practice, no source; follows from the model. */
    struct bench b = sample(VTX_AIR_REAL);
    vtx_operating_point p, before;
    b.supply.pressure = 2.5e5;
    EXPECT_OK(operate(&b, &before));
    for (b.supply.pressure = 3e5; b.supply.pressure < 1.1e6; b.supply.pressure += 5e4) {
        EXPECT_OK(operate(&b, &p));
        EXPECT(p.cold_temperature < before.cold_temperature);
        EXPECT(p.mass_flow > before.mass_flow);
        EXPECT(p.target_capacity > before.target_capacity);
        before = p;
    }
}

static void a_muffler_costs_cold_and_with_the_opening_held_also_cold_fraction(void)
{
    struct bench b = sample(VTX_AIR_REAL);
    vtx_operating_point open, muffled;
    b.setting.held = VTX_HELD_VALVE_OPENING;
    EXPECT_OK(operate(&b, &open));
    b.cooler.outlet_conductance = 3e-8;
    b.cooler.outlet_critical_ratio = 0.3;
    EXPECT_OK(operate(&b, &muffled));
    EXPECT(muffled.cold_pressure > open.cold_pressure);
    EXPECT(muffled.cold_fraction < open.cold_fraction);
    EXPECT(muffled.capacity < open.capacity);
    /* A second outlet of the same kind halves the load on each. */
    b.cooler.outlets = 2;
    EXPECT_OK(operate(&b, &open));
    EXPECT(open.cold_pressure < muffled.cold_pressure);
}

static void an_exchanged_inlet_nozzle_changes_the_flow_and_says_what_it_assumes(void)
{
    struct bench b = sample(VTX_AIR_REAL);
    vtx_operating_point small, large;
    EXPECT_OK(operate(&b, &small));
    EXPECT((small.advisories & VTX_ADVISORY_EFFICIENCY_ASSUMED) == 0);
    b.cooler.inlet_area_factor = 1.1;
    EXPECT_OK(operate(&b, &large));
    /* The other openings stay: the chamber's pressure rises, and the nozzle is no longer quite choked. */
    EXPECT(large.mass_flow > small.mass_flow && large.mass_flow < 1.1 * small.mass_flow);
    EXPECT(large.chamber_pressure > small.chamber_pressure);
    EXPECT(large.advisories & VTX_ADVISORY_EFFICIENCY_ASSUMED);
    b.cooler.inlet_area_factor = 0.9;
    EXPECT_OK(operate(&b, &large));
    EXPECT_NEAR(large.mass_flow, 0.9 * small.mass_flow, 1e-12);
}

static void a_wet_feed_freezes_and_a_dry_one_does_not(void)
{
    struct bench b = sample(VTX_AIR_REAL);
    vtx_operating_point dry, wet;
    b.supply.humidity_kind = VTX_SUPPLY_FROST_POINT;
    b.supply.humidity = 233.15;
    EXPECT_OK(operate(&b, &dry));
    EXPECT(dry.condensed == 0 && dry.ice_flow == 0 && dry.condensed_phase == 0);
    EXPECT((dry.advisories & VTX_ADVISORY_FREEZING) == 0);
    b.supply.humidity_kind = VTX_SUPPLY_DEW_POINT;
    b.supply.humidity = 293.15;
    EXPECT_OK(operate(&b, &wet));
    EXPECT(wet.condensed > 0 && wet.condensed_phase != 0);
    EXPECT(wet.cold_temperature > dry.cold_temperature);
    EXPECT(wet.advisories & VTX_ADVISORY_STATIC_FREEZING);
    b.setting.cold_fraction = 0.3;
    EXPECT_OK(operate(&b, &wet));
    EXPECT(wet.ice_flow > 0);
    EXPECT(wet.advisories & VTX_ADVISORY_FREEZING);
}

static double water_of(int32_t kind, double humidity)
{
    struct bench b = sample(VTX_AIR_REAL);
    double water;
    b.supply.pressure = 8e5;
    b.supply.humidity_kind = kind;
    b.supply.humidity = humidity;
    EXPECT_OK(vtx_supply_humidity_ratio(&b.supply, VTX_AIR_REAL, &water));
    return water;
}

/* What the caution at vtx_supply says of it. */
static void a_frost_point_taken_for_a_dew_point_means_more_water(void)
{
    EXPECT_WITHIN(water_of(VTX_SUPPLY_DEW_POINT, 233.15) / water_of(VTX_SUPPLY_FROST_POINT, 233.15), 1.47, 0.005);
    EXPECT_WITHIN(water_of(VTX_SUPPLY_DEW_POINT, 253.15) / water_of(VTX_SUPPLY_FROST_POINT, 253.15), 1.21, 0.005);
}

/* The chamber's pressure decides, not the cold outlet's: nozzles that stay below Mach 1 are warmer in the throat. */
static void the_verdict_on_the_throat_is_that_of_its_temperature(void)
{
    struct random_state r;
    int slow = 0;
    random_seed(&r, 34);
    for (int i = 0; i < soak_count(500); i++) {
        struct bench b = random_bench(&r, VTX_AIR_REAL);
        vtx_operating_point p;
        double held;
        b.cooler.chamber_pressure_ratio = random_uniform(&r, 0.55, 0.7);
        EXPECT_OK(operate(&b, &p));
        const double throat_pressure = fmax(p.chamber_pressure, p.inlet_pressure * 0.528281787717174);
        EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, throat_pressure, p.throat_temperature, &held));
        b.supply.humidity_kind = VTX_SUPPLY_HUMIDITY_RATIO;
        b.supply.humidity = held * random_uniform(&r, 0.7, 1.3);
        EXPECT_OK(operate(&b, &p));
        EXPECT(((p.advisories & VTX_ADVISORY_STATIC_FREEZING) != 0) == (b.supply.humidity > held && p.throat_temperature < 273.16));
        slow += p.chamber_pressure > 0.55 * p.inlet_pressure;
    }
    EXPECT(slow > 200);
}

/* Rooms from frost to damp heat, outlets on both sides of their limits. */
static void the_bare_outlet_is_judged_as_any_surface(void)
{
    const int32_t both = VTX_ADVISORY_SWEATING | VTX_ADVISORY_FROSTING;
    struct random_state r;
    int seen[3] = { 0, 0, 0 };
    random_seed(&r, 35);
    for (int i = 0; i < soak_count(500); i++) {
        struct bench b = random_bench(&r, i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL);
        vtx_operating_point p;
        vtx_room room;
        vtx_surface_state s;
        b.site.temperature = random_uniform(&r, 250, 320);
        b.site.relative_humidity = random_uniform(&r, 0.02, 1);
        b.cooler.tube.basis = VTX_TUBE_CALIBRATED;
        b.cooler.tube.peak_efficiency = b.cooler.tube.efficiency_low = b.cooler.tube.efficiency_high = random_uniform(&r, 0.02, 0.4);
        EXPECT_OK(operate(&b, &p));
        EXPECT_OK(vtx_room_init(&room));
        room.pressure = b.site.pressure;
        room.temperature = b.site.temperature;
        room.relative_humidity = b.site.relative_humidity;
        room.model = b.setting.model;
        EXPECT_OK(vtx_judge_surface(&room, p.coldest_temperature, &s));
        EXPECT((p.advisories & both) == (s.advisories & both));
        EXPECT((isnan(p.ambient_dew_point) && isnan(s.dew_point)) || fabs(p.ambient_dew_point - s.dew_point) < 1e-9);
        EXPECT((isnan(p.ambient_frost_point) && isnan(s.frost_point)) || fabs(p.ambient_frost_point - s.frost_point) < 1e-9);
        seen[s.verdict - VTX_SURFACE_DRY]++;
    }
    EXPECT(seen[0] > 50 && seen[1] > 50 && seen[2] > 50);
}

static void an_outlet_below_freezing_is_ordinary(void)
{
    /* Common practice, no source: below 0 degC at shop pressure, coldest below cold fraction 0.4, most cooling at 0.6 to 0.7. */
    struct bench b = sample(VTX_AIR_REAL);
    vtx_operating_point p;
    double coldest = 1000, coldest_at = 0, most = 0, most_at = 0;
    for (b.setting.cold_fraction = 0.2; b.setting.cold_fraction < 0.8; b.setting.cold_fraction += 0.01) {
        EXPECT_OK(operate(&b, &p));
        if (p.cold_temperature < coldest) {
            coldest = p.cold_temperature;
            coldest_at = b.setting.cold_fraction;
        }
        if (p.capacity > most) {
            most = p.capacity;
            most_at = b.setting.cold_fraction;
        }
    }
    EXPECT(coldest < 273.15 && coldest_at < 0.4);
    EXPECT(most_at >= 0.6 && most_at <= 0.7);
}

static void what_cannot_be_is_refused(void)
{
    struct bench b = sample(VTX_AIR_REAL);
    vtx_operating_point p;
    b.setting.cold_fraction = 0.9;
    EXPECT_STATUS(operate(&b, &p), VTX_OUT_OF_RANGE);
    EXPECT(isnan(p.cold_temperature) && p.advisories == -1);
    b.setting.cold_fraction = 1.1;
    EXPECT_STATUS(operate(&b, &p), VTX_BAD_ARGUMENT);
    b = sample(VTX_AIR_REAL);
    b.cooler.kind = VTX_COOLER_FIXED;
    b.setting.cold_fraction = 0.5;
    EXPECT_STATUS(operate(&b, &p), VTX_OUT_OF_RANGE);
    b.setting.cold_fraction = b.cooler.rated_cold_fraction;
    EXPECT_OK(operate(&b, &p));
    b.supply.pressure = 1.02e5;
    EXPECT_STATUS(operate(&b, &p), VTX_OUT_OF_RANGE);
    b = sample(VTX_AIR_REAL);
    b.supply.humidity_kind = VTX_DEW_POINT;
    EXPECT_STATUS(operate(&b, &p), VTX_BAD_ARGUMENT);
    b = sample(VTX_AIR_REAL);
    b.cooler.cold_fraction_min = 0.7;
    EXPECT_STATUS(operate(&b, &p), VTX_BAD_ARGUMENT);
    vtx_cooler_init(&b.cooler);
    EXPECT_STATUS(operate(&b, &p), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "the ideal point is that of the golden vectors", the_ideal_point_is_that_of_the_golden_vectors },
    { "the rated point draws the rated flow", the_rated_point_draws_the_rated_flow },
    { "an opening held repeats the point that it came from", an_opening_held_repeats_the_point_that_it_came_from },
    { "a cold fraction that no opening gives is refused", a_cold_fraction_that_no_opening_gives_is_refused },
    { "a valve beyond the range of cold fractions says so", a_valve_beyond_the_range_of_cold_fractions_says_so },
    { "mass is conserved and the second law holds", mass_is_conserved_and_the_second_law_holds },
    { "more pressure is colder and draws more", more_pressure_is_colder_and_draws_more },
    { "a muffler costs cold, and with the opening held also cold fraction", a_muffler_costs_cold_and_with_the_opening_held_also_cold_fraction },
    { "an exchanged inlet nozzle changes the flow and says what it assumes", an_exchanged_inlet_nozzle_changes_the_flow_and_says_what_it_assumes },
    { "a wet feed freezes and a dry one does not", a_wet_feed_freezes_and_a_dry_one_does_not },
    { "a frost point taken for a dew point means more water", a_frost_point_taken_for_a_dew_point_means_more_water },
    { "the verdict on the throat is that of its temperature", the_verdict_on_the_throat_is_that_of_its_temperature },
    { "the bare outlet is judged as any surface", the_bare_outlet_is_judged_as_any_surface },
    { "an outlet below freezing is ordinary", an_outlet_below_freezing_is_ordinary },
    { "what cannot be is refused", what_cannot_be_is_refused },
};
TEST_SUITE(cooler, tests);
