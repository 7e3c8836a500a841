/* Moist air in equilibrium: first and second law through every change of phase. */
#include "../../libvtx/media/moist_ideal.h"
#include "../../libvtx/media/moist_real.h"
#include "../harness/harness.h"

static void random_moist(struct random_state *r, double *pressure, double *temperature, double *water)
{
    do {
        *pressure = random_log_uniform(r, 2e3, 4.9e6);
        *temperature = random_uniform(r, 101, 472);
    } while (*pressure * 1.01 > 0.4e6 * pow(*temperature / 100, 4));
    const double kind = random_uniform(r, 0, 1);
    *water = kind < 0.1 ? 0 : random_log_uniform(r, kind < 0.5 ? 1e-9 : 1e-4, 3);
}

static struct moist_mixture at(int32_t model, double pressure, double temperature, double water)
{
    struct moist_mixture m;
    moist_equilibrium(model, pressure, temperature, water, &m);
    return m;
}

/* dh = T ds + v dp with the condensate's own share: whatever condenses or freezes on the way. */
static void enthalpy_entropy_and_volume_of_the_real_mixture_agree(void)
{
    struct random_state r;
    int wet = 0, icy = 0;
    random_seed(&r, 3);
    for (int i = 0; i < 6000; i++) {
        double p, t, w;
        random_moist(&r, &p, &t, &w);
        const double dt = 2e-6 * t, dp = 2e-6 * p;
        const struct moist_mixture colder = at(VTX_AIR_REAL, p, t - dt, w), warmer = at(VTX_AIR_REAL, p, t + dt, w);
        const struct moist_mixture thinner = at(VTX_AIR_REAL, p - dp, t, w), denser = at(VTX_AIR_REAL, p + dp, t, w);
        const struct moist_mixture m = at(VTX_AIR_REAL, p, t, w);
        if (colder.phase != warmer.phase || thinner.phase != denser.phase)
            continue;
        wet += m.phase == PHASE_LIQUID;
        icy += m.phase == PHASE_ICE;
        const double heat = warmer.enthalpy - colder.enthalpy, work = m.volume * 2 * dp;
        EXPECT_WITHIN(t * (warmer.entropy - colder.entropy), heat, 1e-5 * heat);
        EXPECT_WITHIN(denser.enthalpy - thinner.enthalpy - t * (denser.entropy - thinner.entropy), work,
                      1e-6 * work + 1e-9 * (fabs(m.enthalpy) + 1e5));
        EXPECT(heat > 0);
    }
    EXPECT(wet > 300);
    EXPECT(icy > 300);
}

/* Seen from outside, entropy over enthalpy at one pressure must bend downwards: then no mixing of streams loses any. */
static void entropy_is_concave_through_condensing_and_freezing(int32_t model, double slack)
{
    static const double pressures[] = { 2e3, 2e4, 101325, 8e5, 2e6 };
    static const double waters[] = { 0, 1e-4, 3e-3, 0.02, 0.1 };
    for (size_t i = 0; i < 5; i++)
        for (size_t j = 0; j < 5; j++) {
            const double p = pressures[i], w = waters[j];
            struct moist_mixture before = at(model, p, 240, w);
            double slope_before = 1;
            for (int k = 1; k <= 1200; k++) {
                const double t = 240 + 0.05 * k;
                struct moist_mixture m = at(model, p, t, w);
                for (int end = PHASE_ICE; end >= PHASE_LIQUID && before.temperature < 273.16 && t > 273.16; end--) {
                    /* the two ends of the mixed state, so that its slope is seen on its own */
                    struct moist_mixture mixed;
                    moist_equilibrium_over(model, p, 273.16, w, end, &mixed);
                    if (mixed.enthalpy - before.enthalpy > 1e-3) {
                        const double slope = (mixed.entropy - before.entropy) / (mixed.enthalpy - before.enthalpy);
                        EXPECT(slope <= slope_before * (1 + slack));
                        slope_before = slope;
                        before = mixed;
                    }
                }
                const double slope = (m.entropy - before.entropy) / (m.enthalpy - before.enthalpy);
                EXPECT(slope <= slope_before * (1 + slack));
                slope_before = slope;
                before = m;
            }
        }
}

/* Slack: rounding of a difference of entropies of 0.2 J/(kg K) out of 1e3. */
static void the_real_mixture_never_loses_entropy(void) { entropy_is_concave_through_condensing_and_freezing(VTX_AIR_REAL, 1e-11); }

/* The handbook's latent heats are not quite those of the saturation formulas: a kink of up to 1e-3 of the condensate's share. */
static void the_ideal_mixture_nearly_never_loses_entropy(void) { entropy_is_concave_through_condensing_and_freezing(VTX_AIR_IDEAL, 5e-4); }

static void liquid_and_ice_coexist_at_the_triple_temperature_under_every_pressure(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (double p = 2e3; p < 5e6; p *= 1.7) {
            struct moist_mixture liquid, ice, half;
            moist_equilibrium_over(model, p, 273.16, 0.9, PHASE_LIQUID, &liquid);
            moist_equilibrium_over(model, p, 273.16, 0.9, PHASE_ICE, &ice);
            moist_between(&liquid, &ice, 0.5, &half);
            EXPECT_NEAR(liquid.humidity_ratio, ice.humidity_ratio, 3e-11);
            EXPECT_WITHIN((liquid.enthalpy - ice.enthalpy) / 273.16, liquid.entropy - ice.entropy, 1e-8);
            EXPECT_NEAR((liquid.enthalpy - ice.enthalpy) / liquid.condensed, 334e3, 2e-3 + 2.4e-8 * p);
            EXPECT(half.phase == PHASE_BOTH && half.frozen_share == 0.5);
            EXPECT_NEAR(half.entropy, 0.5 * (liquid.entropy + ice.entropy), 1e-14);
        }
}

/* The stable phase is the one with less vapour above it. */
static void ice_is_stable_below_and_liquid_above(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (double p = 2e3; p < 5e6; p *= 1.7)
            for (double t = 234; t < 273.16; t += 0.5)
                EXPECT(moist_saturation_fraction(model, p, t, PHASE_ICE) < moist_saturation_fraction(model, p, t, PHASE_LIQUID));
}

/* T ds/dT, dh/dT, ds/dp = -dv/dT of liquid and ice, each taken from its own Gibbs function. */
static void condensate_properties_are_those_of_one_gibbs_function(void)
{
    for (double p = 2e3; p < 5e6; p *= 3.7)
        for (int32_t phase = PHASE_LIQUID; phase <= PHASE_ICE; phase++)
            for (double t = phase == PHASE_ICE ? 152 : 236; t < (phase == PHASE_ICE ? 273 : 470); t += 3.7) {
                const double step = 5e-3;
                const struct real_temperature below = real_temperature(t - step), at_t = real_temperature(t), above = real_temperature(t + step);
                const struct condensate a = real_condensate(&below, p, phase), c = real_condensate(&at_t, p, phase);
                const struct condensate b = real_condensate(&above, p, phase), denser = real_condensate(&at_t, p + 1e5, phase);
                EXPECT_NEAR((b.enthalpy - a.enthalpy) / (2 * step), c.heat_capacity, 3e-7);
                EXPECT_NEAR(t * (b.entropy - a.entropy) / (2 * step), c.heat_capacity, 3e-7);
                EXPECT_WITHIN((denser.entropy - c.entropy) / 1e5, -(b.volume - a.volume) / (2 * step), 1e-6 * c.volume / t * 100);
                EXPECT_NEAR(real_condensate_enthalpy(&at_t, p, phase), c.enthalpy, 1e-12);
            }
}

static void heat_capacity_of_the_condensate_is_positive(void)
{
    for (double p = 2e3; p < 5e6; p *= 1.5) {
        for (double t = 273.16; t < 473; t += 0.5) {
            const struct real_temperature at_t = real_temperature(t);
            const double c = real_condensate(&at_t, p, PHASE_LIQUID).heat_capacity / water_molar_mass;
            if (p < 2e6)
                EXPECT(c > 1400 && c < 4700);
        }
        for (double t = 200; t < 273.16; t += 0.5) {
            const struct real_temperature at_t = real_temperature(t);
            const double c = real_condensate(&at_t, p, PHASE_ICE).heat_capacity / water_molar_mass;
            EXPECT(c > 1500 && c < 2200);
        }
    }
}

/* Chemical potential of the vapour over RT, from the gas's enthalpy and entropy. */
static double vapour_potential(const struct real_temperature *t, double pressure, double x)
{
    const double step = 3e-4 * x * (1 - x);
    const struct real_gas drier = real_gas(t, pressure, x - step), gas = real_gas(t, pressure, x), wetter = real_gas(t, pressure, x + step);
    const double g = gas.enthalpy - t->temperature * gas.entropy;
    const double slope = (wetter.enthalpy - drier.enthalpy - t->temperature * (wetter.entropy - drier.entropy)) / (2 * step);
    return (g + (1 - x) * slope) / t->rt;
}

/* Saturation and energy bridge the melting point that pressure would lower in two ways, see condensate.h: what that costs. */
static void vapour_and_condensate_part_by_what_freezing_leaves_alone(void)
{
    for (double p = 2e3; p < 5e6; p *= 1.5)
        for (double t = 243.15; t < 423; t += 5) {
            const int32_t phase = stable_phase(t);
            const struct real_temperature at_t = real_temperature(t);
            const double pure = pure_saturation_pressure(t, phase), x = real_saturation_fraction(&at_t, p, phase);
            if (x < 3e-3 || x > 0.99)
                continue;
            const struct condensate c = real_condensate(&at_t, p, phase);
            const double condensed = (c.enthalpy - t * c.entropy) / at_t.rt;
            const double drawn = (condensed_volume(t, phase).value - caloric_volume(t, phase).value) * (p - pure) / at_t.rt;
            EXPECT_WITHIN(vapour_potential(&at_t, p, x) - condensed, drawn, 3e-7);
            EXPECT_WITHIN(drawn, 0, 4.8e-10 * 273.16 / t * p);
        }
}

static void pure_vapour_and_its_condensate_agree(void)
{
    for (double t = 200; t < 472; t += 4) {
        const int32_t phase = stable_phase(t);
        const struct real_temperature at_t = real_temperature(t);
        const double p = pure_saturation_pressure(t, phase);
        const struct real_gas vapour = real_gas(&at_t, p, 1);
        const struct condensate c = real_condensate(&at_t, p, phase);
        EXPECT_WITHIN(vapour.enthalpy - c.enthalpy, t * (vapour.entropy - c.entropy), 1e-9 * at_t.rt);
    }
}

/* The condensate begins from nothing: no step in what is seen from outside, nor in the gas. */
static void properties_are_continuous_at_saturation(void)
{
    for (double p = 2e3; p < 2e6; p *= 1.9)
        for (double t = 233; t < 420; t += 7) {
            struct moist_mixture below, above;
            const double x = moist_saturation_fraction(VTX_AIR_REAL, p, t, stable_phase(t)), w = moist_humidity_ratio(VTX_AIR_REAL, x);
            if (!(x < 0.9))
                continue;
            moist_equilibrium(VTX_AIR_REAL, p, t, w * (1 - 1e-11), &below);
            moist_equilibrium(VTX_AIR_REAL, p, t, w * (1 + 1e-11), &above);
            EXPECT(below.phase == PHASE_NONE && above.phase != PHASE_NONE);
            EXPECT_WITHIN(above.enthalpy, below.enthalpy, 1e-10 * (1e5 + 2.5e6 * w));
            EXPECT_WITHIN(above.entropy, below.entropy, 1e-10 * (1e3 + 1e4 * w));
            EXPECT_NEAR(above.volume, below.volume, 1e-10);
            EXPECT_NEAR(above.gas_heat_capacity, below.gas_heat_capacity, 1e-9);
            EXPECT_NEAR(above.sound_speed, below.sound_speed, 1e-9);
        }
}

/* The library that jumped here took the vapour's entropy at the total pressure. */
static void dry_air_is_the_limit_of_humid_air(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++) {
        const struct moist_mixture dry = at(model, 8e5, 290, 0);
        for (double w = 1e-3; w > 1e-14; w *= 0.1) {
            const struct moist_mixture m = at(model, 8e5, 290, w);
            EXPECT_WITHIN(m.entropy, dry.entropy, w * 1.5e4 - w * 500 * log(w) + 1e-11);
            EXPECT_WITHIN(m.enthalpy, dry.enthalpy, w * 3e6 + 1e-9);
            EXPECT(m.humidity_ratio == w && m.vapour_fraction > w);
        }
        for (double w = 1e-290; w > 0; w *= 1e-6)
            EXPECT(at(model, 1e3, 290, w).entropy == at(model, 1e3, 290, 0).entropy);
    }
}

/* Truncated after the third coefficient, the series still describes one gas over the whole of the documented range. */
static void density_rises_with_pressure_over_the_whole_range(void)
{
    struct random_state r;
    random_seed(&r, 4);
    for (int i = 0; i < 20000; i++) {
        double p, t, w;
        random_moist(&r, &p, &t, &w);
        const struct moist_mixture m = at(VTX_AIR_REAL, p, t, w);
        EXPECT(m.compressibility > 0.7 && m.compressibility < 1.1);
        EXPECT(m.sound_speed > 170 && m.sound_speed < 560);
        EXPECT(m.gas_heat_capacity > 900 && m.gas_heat_capacity < 4000);
        EXPECT(m.humidity_ratio >= 0 && m.humidity_ratio <= w && m.volume > 0);
    }
}

static const struct test_case tests[] = {
    { "enthalpy, entropy and volume of the real mixture agree", enthalpy_entropy_and_volume_of_the_real_mixture_agree },
    { "the real mixture never loses entropy", the_real_mixture_never_loses_entropy },
    { "the ideal mixture nearly never loses entropy", the_ideal_mixture_nearly_never_loses_entropy },
    { "liquid and ice coexist at 273.16 K under every pressure", liquid_and_ice_coexist_at_the_triple_temperature_under_every_pressure },
    { "ice is stable below and liquid above", ice_is_stable_below_and_liquid_above },
    { "condensate properties are those of one Gibbs function", condensate_properties_are_those_of_one_gibbs_function },
    { "heat capacity of the condensate is positive", heat_capacity_of_the_condensate_is_positive },
    { "vapour and condensate part by what freezing leaves alone", vapour_and_condensate_part_by_what_freezing_leaves_alone },
    { "pure vapour and its condensate agree", pure_vapour_and_its_condensate_agree },
    { "properties are continuous at saturation", properties_are_continuous_at_saturation },
    { "dry air is the limit of humid air", dry_air_is_the_limit_of_humid_air },
    { "density rises with pressure over the whole range", density_rises_with_pressure_over_the_whole_range },
};
TEST_SUITE(moist_laws, tests);
