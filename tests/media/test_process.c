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

static void the_states_agree_with_the_temperatures(void)
{
    struct random_state r;
    random_seed(&r, 28);
    for (int i = 0; i < 2000; i++) {
        const struct feed f = random_feed(&r, i);
        vtx_moist_air a;
        double t, work, generation;
        EXPECT_OK(vtx_expanded_throttle(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, &a, &generation));
        EXPECT_OK(vtx_expansion_throttle(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, &t));
        EXPECT(a.temperature == t && a.pressure == f.outlet_pressure);
        EXPECT_WITHIN(a.entropy - f.inlet.entropy, generation, 1e-9);
        EXPECT(generation > -1e-7);
        if (vtx_expanded_isentropic(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, &a, &work) != VTX_OK)
            continue;
        EXPECT_OK(vtx_expansion_isentropic(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, &t));
        EXPECT(a.temperature == t);
        EXPECT_WITHIN(work, f.inlet.enthalpy - a.enthalpy, 1e-9 * 1e5);
        EXPECT_WITHIN(a.humidity_ratio + a.condensed, f.water, 1e-15 + 1e-14 * f.water);
        EXPECT((a.condensed > 0) == (a.condensed_phase != 0));
    }
}

static void efficiency_lies_between_throttle_and_reversible(void)
{
    struct random_state r;
    random_seed(&r, 29);
    for (int i = 0; i < 2000; i++) {
        const struct feed f = random_feed(&r, i);
        const double efficiency = random_uniform(&r, 0, 1);
        vtx_moist_air a, throttled;
        double work, all;
        if (vtx_expanded_isentropic(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, &a, &all) != VTX_OK)
            continue;
        EXPECT_OK(vtx_expanded_with_efficiency(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, efficiency, &a, &work));
        EXPECT_WITHIN(work, efficiency * all, 3e-6);
        EXPECT(a.entropy - f.inlet.entropy > -1e-7);
        EXPECT_OK(vtx_expanded_with_efficiency(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, 0, &a, &work));
        EXPECT_OK(vtx_expanded_throttle(f.model, f.pressure, f.temperature, f.water, f.outlet_pressure, &throttled, NULL));
        EXPECT_WITHIN(a.temperature, throttled.temperature, 3e-8);
    }
}

static void compression_costs_more_than_reversible(void)
{
    vtx_moist_air a;
    double ideal, real;
    EXPECT_OK(vtx_expanded_isentropic(VTX_AIR_REAL, 1e5, 293.15, 0.01, 2.5e5, &a, &ideal));
    EXPECT_OK(vtx_expanded_with_efficiency(VTX_AIR_REAL, 1e5, 293.15, 0.01, 2.5e5, 0.8, &a, &real));
    EXPECT_NEAR(real, ideal / 0.8, 1e-9);
    EXPECT(ideal < 0);
    EXPECT_STATUS(vtx_expanded_with_efficiency(VTX_AIR_REAL, 1e5, 293.15, 0.01, 2.5e5, 0, &a, &real), VTX_BAD_ARGUMENT);
    EXPECT(isnan(real) && isnan(a.temperature) && a.advisories == -1);
    EXPECT_STATUS(vtx_expanded_with_efficiency(VTX_AIR_REAL, 1e5, 293.15, 0.01, 0.5e5, 1.01, &a, &real), VTX_BAD_ARGUMENT);
}

static void heat_given_and_heat_wanted_are_inverse(void)
{
    struct random_state r;
    int between = 0;
    random_seed(&r, 30);
    for (int i = 0; i < 5000; i++) {
        const struct feed f = random_feed(&r, i);
        const double heat = random_uniform(&r, -40e3, 60e3) * (1 + 20 * f.water);
        vtx_moist_air a;
        double back;
        const vtx_status status = vtx_heated(f.model, f.pressure, f.temperature, f.water, heat, &a);
        EXPECT(status == VTX_OK || status == VTX_OUT_OF_RANGE);
        if (status != VTX_OK)
            continue;
        EXPECT_WITHIN(a.enthalpy - f.inlet.enthalpy, heat, 2e-6);
        between += a.condensed_phase == 3;
        if (a.condensed_phase == 3)
            continue;
        EXPECT_OK(vtx_heat_to_temperature(f.model, f.pressure, f.temperature, f.water, a.temperature, &back, NULL));
        EXPECT_WITHIN(back, heat, 2e-6);
    }
    EXPECT(between > 20);
}

static void a_separator_takes_what_has_condensed(void)
{
    struct random_state r;
    random_seed(&r, 31);
    for (int i = 0; i < 3000; i++) {
        const struct feed f = random_feed(&r, i);
        const double share = random_uniform(&r, 0, 1);
        vtx_moist_air a;
        double drained;
        EXPECT_OK(vtx_condensate_drained(f.model, f.pressure, f.temperature, f.water, share, &drained, &a));
        EXPECT_WITHIN(drained, share * f.inlet.condensed, 1e-15);
        EXPECT_WITHIN(a.humidity_ratio + a.condensed + drained, f.water, 1e-15 + 1e-14 * f.water);
        EXPECT_OK(vtx_condensate_drained(f.model, f.pressure, f.temperature, f.water, 1, &drained, &a));
        EXPECT(a.condensed == 0 && a.condensed_phase == 0);
        EXPECT(a.humidity_ratio == f.inlet.humidity_ratio);
        EXPECT_OK(vtx_condensate_drained(f.model, f.pressure, f.temperature, f.water, 1, &drained, NULL));
        EXPECT(drained == f.inlet.condensed);
    }
}

/* Both laws for mixtures, fog and ice included; half of them meet near freezing, where liquid and ice come together. */
static void mixing_keeps_enthalpy_and_gains_entropy(void)
{
    struct random_state r;
    int between = 0, fog = 0;
    double lowest = 1;
    random_seed(&r, 32);
    for (int i = 0; i < 40000; i++) {
        const int32_t model = i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL;
        const double spread = i % 4 < 2 ? 60 : 8, p = random_log_uniform(&r, 2e4, 2e6);
        const double t1 = 273.16 + random_uniform(&r, -spread, spread), t2 = 273.16 + random_uniform(&r, -spread, spread);
        const double w1 = random_log_uniform(&r, 1e-6, 0.3), w2 = i % 5 ? random_log_uniform(&r, 1e-6, 0.3) : 0;
        const double share = random_uniform(&r, 0, 1);
        struct moist_mixture a, b;
        vtx_moist_air m;
        double generation;
        moist_equilibrium(model, p, t1, w1, &a);
        moist_equilibrium(model, p, t2, w2, &b);
        EXPECT_OK(vtx_mixed(model, p, t1, w1, share, t2, w2, 1 - share, &m, &generation));
        EXPECT_WITHIN(m.enthalpy, share * a.enthalpy + (1 - share) * b.enthalpy, 1e-10 * 1006 * 273);
        EXPECT_WITHIN(m.humidity_ratio + m.condensed, share * w1 + (1 - share) * w2, 1e-15);
        EXPECT_WITHIN(m.entropy - share * a.entropy - (1 - share) * b.entropy, generation, 1e-8);
        /* The handbook's heats of fog and ice and the saturation pressure do not quite belong together, see process.h. */
        const double allowance = model == VTX_AIR_IDEAL ? 0.2 * larger(m.condensed, share * a.condensed + (1 - share) * b.condensed) : 0;
        EXPECT(generation > -1e-7 - allowance);
        if (model == VTX_AIR_REAL)
            lowest = generation < lowest ? generation : lowest;
        between += m.condensed_phase == 3;
        fog += m.condensed > 0 && a.condensed == 0 && b.condensed == 0;
    }
    EXPECT(between > 300 && fog > 100);
    printf("\n    least entropy generation %.3g J/(kg K) REAL, %d mixtures of ice and liquid ", lowest, between);
}

/* Vapour just below saturation with fog just above it, where the fugacity that decides saturation is not quite that of the properties. */
static void nearly_equal_saturated_streams_mix_without_loss(void)
{
    struct random_state r;
    int tried = 0;
    double lowest = 1;
    random_seed(&r, 34);
    for (int i = 0; i < 20000; i++) {
        const double p = random_log_uniform(&r, 2e3, 5e6), t = i % 2 ? random_uniform(&r, 268, 278) : random_uniform(&r, 250, 400);
        const double share = random_uniform(&r, 0, 1);
        const double x = moist_saturation_fraction(VTX_AIR_REAL, p, t, stable_phase(t)), w = moist_humidity_ratio(VTX_AIR_REAL, x);
        const double t2 = t + random_uniform(&r, -1, 1) * random_log_uniform(&r, 1e-6, 0.1);
        const double w1 = w * (1 - random_log_uniform(&r, 1e-7, 1e-2)), w2 = w * (1 + random_log_uniform(&r, 1e-7, 1));
        vtx_moist_air m;
        double generation;
        if (!(x < 0.9) || w2 > MOIST_WATER_MAX || fabs(t - 273.16) < 1e-3)
            continue;
        tried++;
        EXPECT_OK(vtx_mixed(VTX_AIR_REAL, p, t, w1, share, t2, w2, 1 - share, &m, &generation));
        EXPECT(generation > -1e-7);
        lowest = smaller(lowest, generation);
    }
    EXPECT(tried > 10000);
    printf("\n    least entropy generation %.3g J/(kg K) near saturation ", lowest);
}

static void mixing_does_not_depend_on_order_or_splitting(void)
{
    struct random_state r;
    random_seed(&r, 33);
    for (int i = 0; i < 2000; i++) {
        const double p[3] = { 2e5, 2e5, 2e5 };
        const double t[3] = { random_uniform(&r, 250, 330), random_uniform(&r, 250, 330), random_uniform(&r, 250, 330) };
        const double w[3] = { random_uniform(&r, 0, 0.02), random_uniform(&r, 0, 0.02), random_uniform(&r, 0, 0.02) };
        const double m[3] = { random_uniform(&r, 0, 2), random_uniform(&r, 0, 2), random_uniform(&r, 0.1, 2) };
        const double t_back[3] = { t[2], t[1], t[0] }, w_back[3] = { w[2], w[1], w[0] }, m_back[3] = { m[2], m[1], m[0] };
        vtx_moist_air a, b;
        double g;
        EXPECT_OK(vtx_mixed_streams(VTX_AIR_REAL, 2e5, 3, p, t, w, m, &a, &g));
        EXPECT_OK(vtx_mixed_streams(VTX_AIR_REAL, 2e5, 3, p, t_back, w_back, m_back, &b, NULL));
        EXPECT_WITHIN(a.temperature, b.temperature, 1e-8);
        EXPECT(g > -1e-7);
        EXPECT_OK(vtx_mixed_streams(VTX_AIR_REAL, 2e5, 2, p, t, w, m, &a, NULL));
        EXPECT_OK(vtx_mixed(VTX_AIR_REAL, 2e5, t[0], w[0], m[0], t[1], w[1], m[1], &b, NULL));
        EXPECT(a.temperature == b.temperature);
    }
}

static void one_stream_mixes_into_itself_or_is_throttled(void)
{
    const double p = 7e5, t = 293.15, w = 0.004, m = 1e-310;
    vtx_moist_air a;
    double throttled, generation;
    EXPECT_OK(vtx_mixed_streams(VTX_AIR_REAL, 1e5, 1, &p, &t, &w, &m, &a, &generation));
    EXPECT_OK(vtx_expansion_throttle(VTX_AIR_REAL, p, t, w, 1e5, &throttled));
    EXPECT_WITHIN(a.temperature, throttled, 1e-8);
    EXPECT(generation > 500);
    EXPECT_OK(vtx_mixed(VTX_AIR_REAL, 1e5, 300, 0.01, 4.9e-324, 250, 0, 0, &a, NULL));
    EXPECT_WITHIN(a.temperature, 300, 1e-9);
}

static void what_cannot_be_mixed_is_refused(void)
{
    const double p[2] = { 2e5, 0.9e5 }, t[2] = { 300, 300 }, w[2] = { 0, 0 }, m[2] = { 1, 1 }, none[2] = { 0, 0 }, bad[2] = { 1, -1 };
    vtx_moist_air a;
    double g = 1;
    EXPECT_STATUS(vtx_mixed_streams(VTX_AIR_REAL, 1e5, 2, p, t, w, m, &a, &g), VTX_BAD_ARGUMENT);
    EXPECT(isnan(a.enthalpy) && isnan(g) && a.condensed_phase == -1);
    EXPECT_STATUS(vtx_mixed_streams(VTX_AIR_REAL, 0.8e5, 2, p, t, w, none, &a, &g), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_mixed_streams(VTX_AIR_REAL, 0.8e5, 2, p, t, w, bad, &a, &g), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_mixed_streams(VTX_AIR_REAL, 0.8e5, 0, p, t, w, m, &a, &g), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_mixed_streams(VTX_AIR_REAL, 0.8e5, 2, NULL, t, w, m, &a, &g), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_mixed_streams(VTX_AIR_REAL, 0.8e5, 2, p, t, w, m, NULL, &g), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_mixed_streams(3, 0.8e5, 2, p, t, w, m, &a, &g), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_mixed(VTX_AIR_REAL, 1e5, 300, 0, 0, 300, 0, 0, &a, &g), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_mixed_streams(VTX_AIR_REAL, 0.8e5, 2, p, t, w, m, &a, NULL));
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
    { "the states agree with the temperatures", the_states_agree_with_the_temperatures },
    { "efficiency lies between throttle and reversible", efficiency_lies_between_throttle_and_reversible },
    { "compression costs more than reversible", compression_costs_more_than_reversible },
    { "heat given and heat wanted are inverse", heat_given_and_heat_wanted_are_inverse },
    { "a separator takes what has condensed", a_separator_takes_what_has_condensed },
    { "mixing keeps enthalpy and gains entropy", mixing_keeps_enthalpy_and_gains_entropy },
    { "nearly equal saturated streams mix without loss", nearly_equal_saturated_streams_mix_without_loss },
    { "mixing does not depend on order or splitting", mixing_does_not_depend_on_order_or_splitting },
    { "one stream mixes into itself or is throttled", one_stream_mixes_into_itself_or_is_throttled },
    { "what cannot be mixed is refused", what_cannot_be_mixed_is_refused },
};
TEST_SUITE(process, tests);
