/* Free round jets against published laws, conservation, and their own inverses. */
#include <vtx/isentropic.h>
#include <vtx/jet.h>
#include <vtx/restriction.h>

#include "../../libvtx/flow/jet_kernel.h"
#include "../harness/harness.h"

/* A jet of a given outlet velocity and of a given density relative to the room's. */
static void make(vtx_jet *jet, double velocity, double diameter, double density_ratio)
{
    EXPECT_OK(vtx_jet_init(jet));
    const double temperature = jet->ambient_temperature / density_ratio;
    jet->diameter = diameter;
    jet->temperature = temperature + square(velocity) / (2 * jet_heat_capacity());
    jet->mass_flow = jet_density(jet->ambient_pressure, temperature) * velocity * 0.25 * pi * square(diameter);
}

static int jet_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    vtx_jet jet;
    vtx_jet_state state;
    make(&jet, x[0], x[1], x[3]);
    if (strcmp(row->quantity, "velocity_share") == 0) {
        jet.velocity_decay = x[4];
        EXPECT_OK(vtx_jet_at(&jet, x[2], &state));
        return *actual = state.velocity / x[0], 1;
    }
    if (strcmp(row->quantity, "mass_ratio") == 0) {
        jet.entrainment = x[4];
        EXPECT_OK(vtx_jet_at(&jet, x[2], &state));
        return *actual = state.mass_flow / jet.mass_flow, 1;
    }
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("jet.csv", jet_row, 3); }

static void random_jet(struct random_state *r, vtx_jet *jet)
{
    EXPECT_OK(vtx_jet_init(jet));
    jet->diameter = random_log_uniform(r, 1e-3, 2e-2);
    jet->temperature = random_uniform(r, 200, 320);
    jet->ambient_temperature = random_uniform(r, 270, 320);
    jet->ambient_pressure = random_uniform(r, 8e4, 1.1e5);
    const double choked = 0.6847 * jet->ambient_pressure / 0.5283 * 0.25 * pi * square(jet->diameter) / sqrt(287 * jet->temperature);
    jet->mass_flow = choked * random_log_uniform(r, 0.01, 5);
}

/* Mass, momentum against still air and energy, in the outlet and expanded. */
static void outlet_and_expanded_jet_carry_the_same(void)
{
    struct random_state r;
    random_seed(&r, 16);
    for (int i = 0; i < 2000; i++) {
        vtx_jet jet;
        vtx_jet_outlet o;
        random_jet(&r, &jet);
        EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
        const double area = 0.25 * pi * square(jet.diameter), cp = jet_heat_capacity();
        const double static_temperature = jet.temperature - square(o.outlet_velocity) / (2 * cp);
        EXPECT_NEAR(jet_density(o.outlet_pressure, static_temperature) * o.outlet_velocity * area, jet.mass_flow, 1e-12);
        EXPECT_NEAR(o.density * o.velocity * 0.25 * pi * square(o.diameter), jet.mass_flow, 1e-12);
        EXPECT_NEAR(o.temperature + square(o.velocity) / (2 * cp), jet.temperature, 1e-13);
        EXPECT_NEAR(o.velocity * jet.mass_flow, o.thrust, 1e-14);
        EXPECT(o.outlet_mach <= 1 && o.outlet_pressure >= jet.ambient_pressure);
        const int sonic = o.outlet_mach >= 1;
        EXPECT(sonic == ((o.advisories & VTX_ADVISORY_CHOKED) != 0));
        if (!(o.advisories & VTX_ADVISORY_UNDEREXPANDED_JET))
            EXPECT_NEAR(o.diameter, jet.diameter, 1e-12);
    }
}

/* A nozzle fed from a vessel leaves the jet that the restriction law passes. */
static void outlet_agrees_with_the_nozzle_that_feeds_it(void)
{
    vtx_gas air;
    EXPECT_OK(vtx_gas_init(&air));
    for (double p = 1.05e5; p < 1e6; p *= 1.1) {
        vtx_jet jet;
        vtx_jet_outlet o;
        double flow = 0, velocity = 0;
        EXPECT_OK(vtx_jet_init(&jet));
        EXPECT_OK(vtx_orifice_mass_flow(&air, 0.25 * pi * square(jet.diameter), 1, p, jet.temperature, jet.ambient_pressure, &flow, NULL));
        jet.mass_flow = flow;
        EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
        const double low = o.outlet_pressure;
        EXPECT_OK(vtx_isentropic_velocity(&air, p, jet.temperature, low, &velocity));
        EXPECT_NEAR(o.outlet_velocity, velocity, 1e-9);
        EXPECT_NEAR(low, fmax(jet.ambient_pressure, 0.528281787717174 * p), 1e-12);
    }
}

static void a_jet_only_loses_along_its_axis(void)
{
    struct random_state r;
    random_seed(&r, 17);
    for (int i = 0; i < 200; i++) {
        vtx_jet jet;
        vtx_jet_outlet o;
        vtx_jet_state last, now;
        random_jet(&r, &jet);
        EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
        EXPECT_OK(vtx_jet_at(&jet, 0, &last));
        EXPECT(last.velocity == o.velocity && last.temperature == jet.temperature && last.mass_flow == jet.mass_flow);
        for (int k = 1; k < 100; k++) {
            EXPECT_OK(vtx_jet_at(&jet, 0.3 * k * o.diameter, &now));
            EXPECT(now.velocity <= last.velocity && now.mass_flow >= last.mass_flow && now.half_width >= last.half_width);
            EXPECT(fabs(now.temperature - jet.ambient_temperature) <= fabs(last.temperature - jet.ambient_temperature));
            EXPECT(jet.temperature > jet.ambient_temperature || now.impact_pressure <= last.impact_pressure * (1 + 1e-14));
            EXPECT(now.static_temperature > 0 && now.static_temperature <= now.temperature);
            last = now;
        }
    }
}

/* Gaussian profile of half-width and centreline velocity, at the room's density far away. */
static void momentum_is_conserved_far_away(void)
{
    vtx_jet jet;
    vtx_jet_outlet o;
    vtx_jet_state s;
    EXPECT_OK(vtx_jet_init(&jet));
    EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
    EXPECT_OK(vtx_jet_at(&jet, 0.4, &s));
    const double momentum = jet_density(jet.ambient_pressure, jet.ambient_temperature) * square(s.velocity) * pi * square(s.half_width) / (2 * log(2));
    EXPECT_NEAR(momentum, o.thrust, 1e-12);
}

static void impact_pressure_is_the_stagnation_pressure(void)
{
    vtx_jet jet;
    vtx_jet_state s;
    make(&jet, 30, 5e-3, 1);
    EXPECT_OK(vtx_jet_at(&jet, 0, &s));
    EXPECT_NEAR(s.impact_pressure, 0.5 * jet_density(jet.ambient_pressure, jet.ambient_temperature) * 900, 2.1e-3);
    /* Sonic jet: from the critical pressure back to its stagnation pressure. */
    EXPECT_OK(vtx_jet_init(&jet));
    jet.mass_flow = 0.25 * pi * square(jet.diameter) * critical_flow_function(1.4) * jet.ambient_pressure / critical_pressure_ratio(1.4)
        / sqrt(jet_gas_constant() * jet.temperature);
    EXPECT_OK(vtx_jet_at(&jet, 0, &s));
    EXPECT_NEAR(s.impact_pressure, jet.ambient_pressure * (1 / critical_pressure_ratio(1.4) - 1), 1e-12);
    /* And no jump where the bow shock begins. */
    jet.mass_flow *= 1 + 1e-9;
    const double before = s.impact_pressure;
    EXPECT_OK(vtx_jet_at(&jet, 0, &s));
    EXPECT_NEAR(s.impact_pressure, before, 1e-7);
}

static void distances_are_exact_inverses(void)
{
    struct random_state r;
    random_seed(&r, 18);
    for (int i = 0; i < 2000; i++) {
        vtx_jet jet;
        vtx_jet_outlet o;
        vtx_jet_state s;
        double found = 0, best = 0;
        random_jet(&r, &jet);
        EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
        const double distance = o.equivalent_diameter * random_log_uniform(&r, 6.1, 90);
        EXPECT_OK(vtx_jet_at(&jet, distance, &s));
        EXPECT_OK(vtx_jet_distance_for_velocity(&jet, s.velocity, &found, &best));
        EXPECT_NEAR(found, distance, 1e-13);
        EXPECT_OK(vtx_jet_distance_for_impact_pressure(&jet, s.impact_pressure, &found, &best));
        EXPECT_NEAR(found, distance, 1e-10);
        EXPECT(best >= s.impact_pressure);
        if (fabs(jet.temperature - jet.ambient_temperature) > 1) {
            EXPECT_OK(vtx_jet_distance_for_temperature(&jet, s.temperature, &found, &best));
            EXPECT(best == s.temperature);
            EXPECT_NEAR(found, distance, 1e-10);
        }
        EXPECT_OK(vtx_jet_distance_for_velocity(&jet, o.velocity, &found, NULL));
        EXPECT_NEAR(found, o.core_length, 1e-14);
    }
}

static void a_cold_jet_loses_half_its_difference_by_ten_diameters(void)
{
    vtx_jet jet;
    vtx_jet_outlet o;
    double distance = 0;
    EXPECT_OK(vtx_jet_init(&jet));
    EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
    EXPECT_OK(vtx_jet_distance_for_temperature(&jet, 0.5 * (jet.temperature + jet.ambient_temperature), &distance, NULL));
    EXPECT_NEAR(distance, 10 * o.equivalent_diameter, 1e-12);
}

static void wishes_beyond_the_jet_name_what_it_has(void)
{
    vtx_jet jet;
    vtx_jet_outlet o;
    double x = 0, most = 0, flow = 0;
    EXPECT_OK(vtx_jet_init(&jet));
    EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
    EXPECT_STATUS(vtx_jet_distance_for_temperature(&jet, 250, &x, &most), VTX_NO_SOLUTION);
    EXPECT(most == jet.temperature);
    EXPECT_STATUS(vtx_jet_distance_for_temperature(&jet, 300, &x, &most), VTX_NO_SOLUTION);
    EXPECT(most == jet.ambient_temperature);
    EXPECT_STATUS(vtx_jet_distance_for_velocity(&jet, 500, &x, &most), VTX_NO_SOLUTION);
    EXPECT(most == o.velocity);
    EXPECT_STATUS(vtx_jet_distance_for_impact_pressure(&jet, 1e6, &x, &most), VTX_NO_SOLUTION);
    EXPECT_OK(vtx_jet_distance_for_impact_pressure(&jet, most, &x, NULL));
    EXPECT(x > 0);
    EXPECT_STATUS(vtx_jet_distance_for_velocity(&jet, 0.01, &x, NULL), VTX_OUT_OF_RANGE);
    jet.temperature = jet.ambient_temperature;
    EXPECT_STATUS(vtx_jet_distance_for_temperature(&jet, jet.temperature, &x, NULL), VTX_NO_SOLUTION);
    jet.mass_flow = 10;
    jet.diameter = 1e-4;
    EXPECT_STATUS(vtx_jet_impact_force(&jet, 0.1, 1e-4, &flow), VTX_OUT_OF_RANGE);
}

static void the_working_distance_is_the_shorter_of_two(void)
{
    vtx_jet jet;
    double cold = 0, strong = 0, both = 0;
    EXPECT_OK(vtx_jet_init(&jet));
    EXPECT_OK(vtx_jet_distance_for_temperature(&jet, 0.5 * (jet.temperature + jet.ambient_temperature), &cold, NULL));
    EXPECT_OK(vtx_jet_distance_for_impact_pressure(&jet, 100, &strong, NULL));
    EXPECT_OK(vtx_jet_working_distance(&jet, 0.5, 100, &both));
    EXPECT_NEAR(both, fmin(cold, strong), 1e-12);
    EXPECT_OK(vtx_jet_working_distance(&jet, 1e-3, 100, &both));
    EXPECT_NEAR(both, strong, 1e-12);
}

static void the_force_on_a_wide_face_is_the_thrust(void)
{
    vtx_jet jet;
    vtx_jet_outlet o;
    double wide = 0, small = 0, last = 0;
    EXPECT_OK(vtx_jet_init(&jet));
    EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
    EXPECT_OK(vtx_jet_impact_force(&jet, 0.05, 1, &wide));
    EXPECT_NEAR(wide, o.thrust, 1e-12);
    for (double area = 1e-6; area < 1e-2; area *= 1.5) {
        EXPECT_OK(vtx_jet_impact_force(&jet, 0.05, area, &small));
        EXPECT(small >= last && small <= o.thrust);
        last = small;
    }
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "outlet and expanded jet carry the same mass, momentum and energy", outlet_and_expanded_jet_carry_the_same },
    { "outlet agrees with the nozzle that feeds it", outlet_agrees_with_the_nozzle_that_feeds_it },
    { "a jet only loses along its axis", a_jet_only_loses_along_its_axis },
    { "momentum is conserved far away", momentum_is_conserved_far_away },
    { "impact pressure is the stagnation pressure", impact_pressure_is_the_stagnation_pressure },
    { "distances are exact inverses", distances_are_exact_inverses },
    { "a cold jet loses half its difference by ten diameters", a_cold_jet_loses_half_its_difference_by_ten_diameters },
    { "wishes beyond the jet name what it has", wishes_beyond_the_jet_name_what_it_has },
    { "the working distance is the shorter of two", the_working_distance_is_the_shorter_of_two },
    { "the force on a wide face is the thrust", the_force_on_a_wide_face_is_the_thrust },
};
TEST_SUITE(jet, tests);
