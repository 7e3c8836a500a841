/* Impinging jets against published Nusselt numbers, and what must hold of heat from a face. */
#include <vtx/air.h>
#include <vtx/friction.h>
#include <vtx/impingement.h>

#include "../harness/harness.h"

static const double pi_here = 3.14159265358979323846;

static int impingement_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    if (strcmp(row->quantity, "nozzle") == 0)
        return vtx_nozzle_nusselt(x[0], x[1], x[2], x[3], actual, NULL), 1;
    if (strcmp(row->quantity, "nozzle_by_area") == 0)
        return vtx_nozzle_nusselt(x[0], x[1], x[2], 0.5 / sqrt(x[3]), actual, NULL), 1;
    if (strcmp(row->quantity, "reynolds") == 0)
        return vtx_reynolds_number(x[0] * x[1] * 0.25 * pi_here * x[2] * x[2], x[2], x[3], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("impingement.csv", impingement_row, 4); }

static int32_t nozzle_advisory(double reynolds, double distance, double radius)
{
    double nusselt = 0;
    int32_t advisories = -1;
    EXPECT_OK(vtx_nozzle_nusselt(reynolds, 0.7, distance, radius, &nusselt, &advisories));
    return advisories;
}

static int32_t field_advisory(double reynolds, double distance, double share)
{
    double nusselt = 0;
    int32_t advisories = -1;
    EXPECT_OK(vtx_nozzle_field_nusselt(reynolds, 0.7, distance, share, &nusselt, &advisories));
    return advisories;
}

static void leaving_the_correlation_is_said(void)
{
    const int32_t outside = VTX_ADVISORY_OUTSIDE_CORRELATION;
    EXPECT(nozzle_advisory(2000, 2, 2.5) == 0);
    EXPECT(nozzle_advisory(4e5, 12, 7.9) == 0);
    EXPECT(nozzle_advisory(1536, 5, 2.5) == outside);
    EXPECT(nozzle_advisory(4.1e5, 5, 2.5) == outside);
    EXPECT(nozzle_advisory(1e4, 1.9, 2.5) == outside);
    EXPECT(nozzle_advisory(1e4, 12.1, 2.5) == outside);
    EXPECT(nozzle_advisory(1e4, 6, 2.4) == outside);
    EXPECT(nozzle_advisory(1e4, 6, 8) == outside);
    EXPECT(field_advisory(1e4, 6, 0.004) == 0);
    EXPECT(field_advisory(1e4, 6, 0.04) == 0);
    EXPECT(field_advisory(1e4, 6, 0.05) == outside);
    EXPECT(field_advisory(2e5, 6, 0.01) == outside);
}

/* Never better by going away or by serving a larger face, never a jump, also across the limits of the correlation. */
static void nusselt_falls_with_distance_and_face_without_a_jump(void)
{
    struct random_state r;
    random_seed(&r, 19);
    for (int i = 0; i < 20000; i++) {
        const double reynolds = random_log_uniform(&r, 100, 1e6), step = 1 + random_log_uniform(&r, 1e-6, 1);
        const double h = random_log_uniform(&r, 0.1, 100), radius = random_log_uniform(&r, 0.1, 50), share = random_log_uniform(&r, 1e-4, 0.5);
        double here = 0, next = 0;
        EXPECT_OK(vtx_nozzle_nusselt(reynolds, 0.7, h, radius, &here, NULL));
        EXPECT_OK(vtx_nozzle_nusselt(reynolds, 0.7, h * step, radius, &next, NULL));
        EXPECT(next <= here * (1 + 1e-14) && next >= here / (step * step));
        EXPECT_OK(vtx_nozzle_nusselt(reynolds, 0.7, h, radius * step, &next, NULL));
        EXPECT(next <= here * (1 + 1e-14) && next >= here / (step * step));
        EXPECT_OK(vtx_nozzle_nusselt(reynolds * step, 0.7, h, radius, &next, NULL));
        EXPECT(next > here);
        EXPECT_OK(vtx_nozzle_field_nusselt(reynolds, 0.7, h, share, &here, NULL));
        EXPECT_OK(vtx_nozzle_field_nusselt(reynolds, 0.7, h * step, share, &next, NULL));
        EXPECT(next <= here * (1 + 1e-14) && next >= here / (step * step));
    }
}

static void heat_follows_from_the_parts(void)
{
    vtx_jet jet;
    vtx_jet_outlet o;
    vtx_jet_state s;
    vtx_impingement r;
    double viscosity = 0, conductivity = 0, nusselt = 0;
    EXPECT_OK(vtx_jet_init(&jet));
    EXPECT_OK(vtx_jet_outlet_at(&jet, &o));
    EXPECT_OK(vtx_jet_at(&jet, 0.04, &s));
    EXPECT_OK(vtx_impingement_at(&jet, 0.04, 2e-3, 350, &r));
    EXPECT_NEAR(r.jet_temperature, s.temperature, 1e-14);
    const double film = 0.5 * (s.temperature + 350);
    EXPECT_OK(vtx_air_viscosity(jet.ambient_pressure, film, &viscosity));
    EXPECT_OK(vtx_air_conductivity(jet.ambient_pressure, film, &conductivity));
    const double density = jet.ambient_pressure * 0.0289655 / (8.314462618 * film), cp = 3.5 * 8.314462618 / 0.0289655;
    EXPECT_NEAR(r.reynolds, o.velocity * o.diameter * density / viscosity, 2e-3);
    EXPECT_OK(vtx_nozzle_nusselt(r.reynolds, cp * viscosity / conductivity, 0.04 / o.diameter, sqrt(2e-3 / pi_here) / o.diameter, &nusselt, NULL));
    EXPECT_NEAR(r.nusselt, nusselt, 1e-3);
    EXPECT_NEAR(r.heat, nusselt * conductivity / o.diameter * 2e-3 * (350 - s.temperature), 1e-3);
    EXPECT(r.coefficient > 100 && r.coefficient < 600);
}

static void heat_falls_with_distance_and_grows_with_the_face(void)
{
    struct random_state r;
    random_seed(&r, 20);
    for (int i = 0; i < 200; i++) {
        vtx_jet jet;
        vtx_impingement now, last;
        EXPECT_OK(vtx_jet_init(&jet));
        jet.diameter = random_log_uniform(&r, 2e-3, 1e-2);
        jet.mass_flow = jet.diameter * jet.diameter * random_log_uniform(&r, 20, 400);
        jet.temperature = random_uniform(&r, 230, 293);
        const double area = random_log_uniform(&r, 1e-5, 1e-2), hot = random_uniform(&r, 300, 600);
        EXPECT_OK(vtx_impingement_at(&jet, 0, area, hot, &last));
        for (int k = 1; k < 60; k++) {
            EXPECT_OK(vtx_impingement_at(&jet, 0.5 * k * jet.diameter, area, hot, &now));
            EXPECT(now.heat <= last.heat * (1 + 1e-13) && now.heat > 0.8 * last.heat);
            last = now;
        }
        for (int k = 1; k < 20; k++) {
            EXPECT_OK(vtx_impingement_at(&jet, 6 * jet.diameter, area * (1 + 0.2 * k), hot, &now));
            EXPECT(k == 1 || now.heat >= last.heat * (1 - 1e-13));
            last = now;
        }
    }
}

static void twin_outlets_join_what_they_stand_for(void)
{
    vtx_jet one, both;
    vtx_impingement sides, apart, close, single, half;
    EXPECT_OK(vtx_jet_init(&one));
    both = one;
    both.mass_flow = 2 * one.mass_flow;
    both.diameter = sqrt(2) * one.diameter;
    EXPECT_OK(vtx_twin_impingement_at(&one, VTX_TWIN_TWO_SIDES, 0, 0.03, 4e-3, 350, &sides));
    EXPECT_OK(vtx_impingement_at(&one, 0.03, 2e-3, 350, &half));
    EXPECT_NEAR(sides.heat, 2 * half.heat, 1e-14);
    EXPECT_OK(vtx_twin_impingement_at(&one, VTX_TWIN_SIDE_BY_SIDE, 0.05, 0.03, 4e-3, 350, &apart));
    EXPECT_NEAR(apart.heat, sides.heat, 1e-14);
    EXPECT_OK(vtx_twin_impingement_at(&one, VTX_TWIN_SIDE_BY_SIDE, 0, 0.03, 4e-3, 350, &close));
    EXPECT_OK(vtx_impingement_at(&both, 0.03, 4e-3, 350, &single));
    EXPECT_NEAR(close.heat, single.heat, 1e-12);
    EXPECT_NEAR(close.coefficient, single.coefficient, 1e-12);
    EXPECT(close.advisories & VTX_ADVISORY_OUTSIDE_CORRELATION);
    double last = close.heat;
    for (int k = 1; k <= 50; k++) {
        EXPECT_OK(vtx_twin_impingement_at(&one, VTX_TWIN_SIDE_BY_SIDE, 0.001 * k, 0.03, 4e-3, 350, &apart));
        EXPECT_WITHIN(apart.heat, last, 0.02 * last);
        last = apart.heat;
    }
    EXPECT_STATUS(vtx_twin_impingement_at(&one, 243, 0.01, 0.03, 4e-3, 350, &apart), VTX_BAD_ARGUMENT);
}

/* One cell of a sparse field is one nozzle over the cell's area, within what the two correlations differ. */
static void a_sparse_field_is_many_single_nozzles(void)
{
    vtx_jet jet;
    vtx_impingement cell, single;
    EXPECT_OK(vtx_jet_init(&jet));
    jet.mass_flow = 3e-3;
    EXPECT_OK(vtx_field_impingement_at(&jet, 0.05, 0.03, 350, &cell));
    EXPECT_OK(vtx_impingement_at(&jet, 0.03, 0.05 * 0.05, 350, &single));
    EXPECT_NEAR(cell.heat, single.heat, 0.2);
    EXPECT_NEAR(cell.radius_ratio, single.radius_ratio, 1e-12);
    EXPECT_STATUS(vtx_field_impingement_at(&jet, 0.004, 0.03, 350, &cell), VTX_BAD_ARGUMENT);
}

static void the_distance_for_a_heat_is_found(void)
{
    struct random_state r;
    random_seed(&r, 21);
    for (int i = 0; i < 500; i++) {
        vtx_jet jet;
        vtx_impingement there;
        double found = 0, most = 0;
        EXPECT_OK(vtx_jet_init(&jet));
        jet.temperature = random_uniform(&r, 230, i % 5 ? 293 : 320);
        const double distance = jet.diameter * random_uniform(&r, 15, 40), hot = random_uniform(&r, 330, 500);
        EXPECT_OK(vtx_impingement_at(&jet, distance, 2e-3, hot, &there));
        EXPECT_OK(vtx_impingement_distance_for_heat(&jet, 2e-3, hot, there.heat, &found, &most));
        EXPECT_NEAR(found, distance, 1e-9);
        EXPECT_STATUS(vtx_impingement_distance_for_heat(&jet, 2e-3, hot, 1.01 * most, &found, NULL), VTX_NO_SOLUTION);
        EXPECT_OK(vtx_impingement_distance_for_heat(&jet, 2e-3, hot, most, &found, NULL));
    }
}

static void a_jet_warms_a_face_colder_than_itself(void)
{
    vtx_jet jet;
    vtx_impingement r;
    double x = 0, most = 0;
    EXPECT_OK(vtx_jet_init(&jet));
    EXPECT_OK(vtx_impingement_at(&jet, 0.02, 1e-3, 250, &r));
    EXPECT(r.heat < 0);
    EXPECT_STATUS(vtx_impingement_distance_for_heat(&jet, 1e-3, 250, 1, &x, &most), VTX_NO_SOLUTION);
    EXPECT(most < 0);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "leaving the correlation is said", leaving_the_correlation_is_said },
    { "Nusselt number falls with distance and face without a jump", nusselt_falls_with_distance_and_face_without_a_jump },
    { "heat follows from the parts", heat_follows_from_the_parts },
    { "heat falls with distance and grows with the face", heat_falls_with_distance_and_grows_with_the_face },
    { "twin outlets join what they stand for", twin_outlets_join_what_they_stand_for },
    { "a sparse field is many single nozzles", a_sparse_field_is_many_single_nozzles },
    { "the distance for a heat is found", the_distance_for_a_heat_is_found },
    { "a jet warms a face colder than itself", a_jet_warms_a_face_colder_than_itself },
};
TEST_SUITE(impingement, tests);
