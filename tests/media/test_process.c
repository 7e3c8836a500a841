/* Processes of moist air: published values and the two laws. */
#include <vtx/process.h>
#include <vtx/water.h>

#include "../../libvtx/media/process_kernel.h"
#include "../harness/harness.h"

/* Ideal: what a shop's air holds, and how much of it must drain behind the aftercooler. */
static int32_t aftercooler(const double *x, double *drained)
{
    double saturation, heat;
    vtx_water_saturation_pressure(x[2], &saturation);
    const double vapour = x[3] * saturation, w = 0.621945 * vapour / (x[1] - vapour);
    return vtx_heat_to_temperature((int32_t)x[0], x[4], x[5], w, x[5], &heat, drained);
}

static int process_row(const struct data_row *row, double *actual)
{
    const double *x = row->input;
    const int32_t model = (int32_t)x[0];
    double heat;
    if (strcmp(row->quantity, "throttle") == 0)
        return vtx_expansion_throttle(model, x[1], x[2], x[3], x[4], actual), 1;
    if (strcmp(row->quantity, "throttle_drop") == 0)
        return vtx_expansion_throttle(model, x[1], x[2], x[3], x[4], actual), *actual = x[2] - *actual, 1;
    if (strcmp(row->quantity, "isentropic_drop") == 0)
        return vtx_expansion_isentropic(model, x[1], x[2], x[3], x[4], actual), *actual = x[2] - *actual, 1;
    if (strcmp(row->quantity, "aftercooler") == 0)
        return aftercooler(x, actual), 1;
    if (strcmp(row->quantity, "condensed") == 0)
        return vtx_heat_to_temperature(model, x[1], x[2], x[3], x[4], &heat, actual), 1;
    if (strcmp(row->quantity, "left_as_vapour") == 0)
        return vtx_heat_to_temperature(model, x[1], x[2], 0.01, x[2], &heat, actual), *actual = 0.01 - *actual, 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("process.csv", process_row, 9); }

struct feed {
    int32_t model;
    double pressure, temperature, water, outlet_pressure;
    struct moist_mixture inlet;
};

/* Feeds from dry to soaked, a third of them near freezing when expanded. */
static struct feed random_feed(struct random_state *r, int i)
{
    struct feed f;
    f.model = i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL;
    f.pressure = random_log_uniform(r, 2e4, 2e6);
    f.temperature = i % 3 ? random_uniform(r, 230, 400) : random_uniform(r, 270, 310);
    f.water = i % 4 == 0 ? 0 : random_log_uniform(r, 1e-9, 0.5);
    f.outlet_pressure = random_log_uniform(r, 1e4, f.pressure);
    moist_equilibrium(f.model, f.pressure, f.temperature, f.water, &f.inlet);
    return f;
}

/* 1e-10 of cp T0 and 1e-7 J/(kg K), the library's promise. */
static void a_throttle_keeps_enthalpy_and_gains_entropy(void)
{
    struct random_state r;
    int between = 0;
    random_seed(&r, 21);
    for (int i = 0; i < 60000; i++) {
        const struct feed f = random_feed(&r, i);
        struct moist_mixture out;
        EXPECT_OK(moist_throttle(f.model, &f.inlet, f.outlet_pressure, &out));
        EXPECT_WITHIN(out.enthalpy, f.inlet.enthalpy, 1e-10 * 1006 * f.temperature);
        EXPECT(out.entropy - f.inlet.entropy > -1e-7);
        EXPECT_WITHIN(out.humidity_ratio + out.condensed, f.water, 1e-15 + 1e-14 * f.water);
        between += out.phase == PHASE_BOTH;
    }
    EXPECT(between > 100);
}

static void a_reversible_expansion_keeps_entropy(void)
{
    struct random_state r;
    int between = 0, found = 0;
    random_seed(&r, 22);
    for (int i = 0; i < 60000; i++) {
        const struct feed f = random_feed(&r, i);
        struct moist_mixture out;
        const vtx_status status = moist_expand(f.model, &f.inlet, f.outlet_pressure, &out);
        EXPECT(status == VTX_OK || status == VTX_OUT_OF_RANGE);
        if (status != VTX_OK)
            continue;
        EXPECT_WITHIN(out.entropy, f.inlet.entropy, 1e-8);
        EXPECT(out.enthalpy <= f.inlet.enthalpy + 1e-6);
        between += out.phase == PHASE_BOTH;
        found++;
    }
    EXPECT(between > 100);
    EXPECT(found > 50000);
}

/* Out and back through fog and ice; a mixed state on the way back is the only case that a temperature cannot hold. */
static void expansion_and_compression_are_inverse(void)
{
    struct random_state r;
    int found = 0;
    random_seed(&r, 23);
    for (int i = 0; i < 20000; i++) {
        const struct feed f = random_feed(&r, i);
        struct moist_mixture out, back;
        if (moist_expand(f.model, &f.inlet, f.outlet_pressure, &out) != VTX_OK)
            continue;
        EXPECT_OK(moist_expand(f.model, &out, f.pressure, &back));
        EXPECT_WITHIN(back.temperature, f.temperature, 3e-8);
        found++;
    }
    EXPECT(found > 15000);
}

/* The colder of two expansions is the one that does more work, whatever condenses. */
static void a_throttle_is_warmer_than_a_reversible_expansion(void)
{
    struct random_state r;
    random_seed(&r, 24);
    for (int i = 0; i < 5000; i++) {
        const struct feed f = random_feed(&r, i);
        double throttle, isentropic;
        EXPECT_OK(vtx_expansion_throttle(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, &throttle));
        if (vtx_expansion_isentropic(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, &isentropic) == VTX_OK)
            EXPECT(isentropic <= throttle + 1e-8);
    }
}

static void nothing_happens_without_a_pressure_change(void)
{
    struct random_state r;
    random_seed(&r, 25);
    for (int i = 0; i < 2000; i++) {
        const struct feed f = random_feed(&r, i);
        double t;
        EXPECT_OK(vtx_expansion_throttle(f.model, f.pressure, f.temperature, f.water, f.pressure, &t));
        EXPECT_WITHIN(t, f.temperature, 1e-12);
        EXPECT_OK(vtx_expansion_isentropic(f.model, f.pressure, f.temperature, f.water, f.pressure, &t));
        EXPECT_WITHIN(t, f.temperature, 1e-12);
    }
}

/* Fine steps of outlet pressure through saturation, 273.16 K and the mixed state: the temperature moves without a jump. */
static void the_outlet_temperature_is_continuous_in_pressure(void)
{
    static const double water[] = { 0, 1e-6, 0.001, 0.004, 0.006, 0.02 };
    for (size_t k = 0; k < sizeof water / sizeof water[0]; k++)
        for (int model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++) {
            double last, t;
            EXPECT_OK(vtx_expansion_isentropic(model, 7e5, 303.15, water[k], 7e5, &last));
            for (double p = 7e5 - 500; p > 1e5; p -= 500) {
                EXPECT_OK(vtx_expansion_isentropic(model, 7e5, 303.15, water[k], p, &t));
                EXPECT(t <= last + 1e-9);
                /* Dry air: dT/dp = T R / (cp p); condensation only makes it less. */
                EXPECT(last - t < 500 * 0.31 * last / p);
                last = t;
            }
        }
}

/* A soaked feed chosen so that its end lies between ice and liquid: the frozen share runs from 0 to 1 as the pressure falls. */
static void freezing_passes_through_all_shares_at_the_triple_point(void)
{
    struct moist_mixture inlet, out;
    double last = 0;
    int inside = 0;
    moist_equilibrium(VTX_AIR_REAL, 7e5, 293.15, 0.05, &inlet);
    for (double p = 5e5; p > 2e5; p -= 1000) {
        EXPECT_OK(moist_expand(VTX_AIR_REAL, &inlet, p, &out));
        EXPECT(out.frozen_share >= last - 1e-9);
        last = out.frozen_share;
        if (out.phase == PHASE_BOTH) {
            EXPECT(out.temperature == 273.16);
            inside++;
        } else {
            EXPECT(out.frozen_share == (out.temperature < 273.16));
        }
    }
    EXPECT(last == 1 && inside > 30);
}

static void heat_is_enthalpy_and_adds_up(void)
{
    struct random_state r;
    random_seed(&r, 26);
    for (int i = 0; i < 2000; i++) {
        const struct feed f = random_feed(&r, i);
        const double middle = random_uniform(&r, 250, 380), end = random_uniform(&r, 250, 380);
        double first, second, whole, condensed;
        EXPECT_OK(vtx_heat_to_temperature(f.model, f.pressure, f.temperature, f.water, middle, &first, NULL));
        EXPECT_OK(vtx_heat_to_temperature(f.model, f.pressure, middle, f.water, end, &second, NULL));
        EXPECT_OK(vtx_heat_to_temperature(f.model, f.pressure, f.temperature, f.water, end, &whole, &condensed));
        EXPECT_WITHIN(first + second, whole, 1e-6);
        EXPECT((whole > 0) == (end > f.temperature));
        EXPECT(condensed >= 0 && condensed <= f.water);
    }
}

static void the_search_needs_few_evaluations_from_any_start(void)
{
    struct random_state r;
    random_seed(&r, 27);
    for (int i = 0; i < 20000; i++) {
        const struct feed f = random_feed(&r, i);
        struct moist_mixture out;
        EXPECT_OK(moist_of_enthalpy(f.model, f.pressure, f.water, f.inlet.enthalpy, random_uniform(&r, 1, 900), &out));
        EXPECT_WITHIN(out.temperature, f.temperature, 1e-8);
        EXPECT_OK(moist_of_entropy(f.model, f.pressure, f.water, f.inlet.entropy, random_uniform(&r, 1, 900), &out));
        EXPECT_WITHIN(out.temperature, f.temperature, 1e-8);
    }
}

static void what_cannot_be_is_refused(void)
{
    double t = 1, c = 1;
    EXPECT_STATUS(vtx_expansion_throttle(VTX_AIR_REAL, 1e5, 293.15, 0, 1.1e5, &t), VTX_BAD_ARGUMENT);
    EXPECT(isnan(t));
    EXPECT_STATUS(vtx_expansion_throttle(VTX_AIR_REAL, 293.15, 7e5, 0, 1e5, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_expansion_isentropic(VTX_AIR_REAL, 293.15, 7e5, 0, 1e5, &t), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_expansion_isentropic(VTX_AIR_REAL, 2e6, 200, 0, 1e4, &t), VTX_OUT_OF_RANGE);
    EXPECT(isnan(t));
    EXPECT_STATUS(vtx_expansion_isentropic(VTX_AIR_REAL, 1e5, 293.15, 0, 2e6, &t), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_expansion_isentropic(VTX_AIR_IDEAL, 7e5, 293.15, -1e-9, 1e5, &t), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_heat_to_temperature(VTX_AIR_REAL, 1e5, 300, 0.01, 0, &t, &c), VTX_BAD_ARGUMENT);
    EXPECT(isnan(t) && isnan(c));
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "a throttle keeps enthalpy and gains entropy", a_throttle_keeps_enthalpy_and_gains_entropy },
    { "a reversible expansion keeps entropy", a_reversible_expansion_keeps_entropy },
    { "expansion and compression are inverse", expansion_and_compression_are_inverse },
    { "a throttle is warmer than a reversible expansion", a_throttle_is_warmer_than_a_reversible_expansion },
    { "nothing happens without a pressure change", nothing_happens_without_a_pressure_change },
    { "the outlet temperature is continuous in pressure", the_outlet_temperature_is_continuous_in_pressure },
    { "freezing passes through all shares at the triple point", freezing_passes_through_all_shares_at_the_triple_point },
    { "heat is enthalpy and adds up", heat_is_enthalpy_and_adds_up },
    { "the search needs few evaluations from any start", the_search_needs_few_evaluations_from_any_start },
    { "what cannot be is refused", what_cannot_be_is_refused },
};
TEST_SUITE(process, tests);
