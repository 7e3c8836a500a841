/* Separation of real moist air: both laws, throttle, wet feed, agreement with the media layer's own expansions. */
#include <fenv.h>

#include <vtx/process.h>
#include <vtx/separation.h>

#include "../../libvtx/media/process_kernel.h"
#include "../harness/harness.h"

struct state {
    vtx_tube tube;
    double inlet_pressure, inlet_temperature, humidity_ratio, cold_pressure, hot_pressure, cold_fraction;
};

static int32_t separate(const struct state *x, int32_t model, vtx_streams *s)
{
    return vtx_tube_separate(&x->tube, model, x->inlet_pressure, x->inlet_temperature, x->humidity_ratio, x->cold_pressure,
                             x->hot_pressure, x->cold_fraction, s);
}

/* 700 kPa, 20 degC to the atmosphere. */
static struct state usual(double humidity_ratio, double cold_fraction)
{
    struct state x = { .inlet_pressure = 7e5, .inlet_temperature = 293.15, .humidity_ratio = humidity_ratio,
                       .cold_pressure = 101325, .hot_pressure = 101325, .cold_fraction = cold_fraction };
    EXPECT_OK(vtx_tube_init(&x.tube));
    return x;
}

static struct state random_state(struct random_state *r)
{
    const double u = random_uniform(r, 0, 1), w = random_uniform(r, 0, 1);
    struct state x = { .cold_fraction = u < 0.03 ? 0 : u < 0.06 ? 1 : u < 0.08 ? 1 - random_log_uniform(r, 1e-15, 1e-3) : random_uniform(r, 0, 1) };
    EXPECT_OK(vtx_tube_init(&x.tube));
    x.tube.peak_efficiency = random_uniform(r, 0, 1) < 0.1 ? 1 : random_uniform(r, 0.01, 1);
    x.tube.efficiency_low = x.tube.peak_efficiency * random_uniform(r, 0.1, 1);
    x.tube.efficiency_high = x.tube.peak_efficiency + (1 - x.tube.peak_efficiency) * random_uniform(r, 0, 1);
    x.tube.coldest_fraction = random_uniform(r, 0.01, 0.49);
    if (random_uniform(r, 0, 1) < 0.2)
        x.tube.pressure_exponent = random_uniform(r, -1, 1);
    x.inlet_pressure = random_log_uniform(r, 1.1e4, 5e6);
    x.inlet_temperature = random_uniform(r, 150, 450);
    x.cold_pressure = fmax(x.inlet_pressure / random_log_uniform(r, 1, 20), 1e3);
    x.hot_pressure = fmax(x.inlet_pressure / random_log_uniform(r, 1, 20), 1e3);
    x.humidity_ratio = w < 0.2 ? 0 : random_log_uniform(r, 1e-9, 0.1);
    return x;
}

/* The outlet's enthalpy and entropy by the media layer alone; above its range a constant heat capacity. */
static void outlet(double pressure, double temperature, double water, double frozen_share, double *enthalpy, double *entropy)
{
    struct moist_mixture m, ice;
    moist_equilibrium(VTX_AIR_REAL, pressure, fmin(temperature, MOIST_TEMPERATURE_MAX), water, &m);
    if (temperature == triple_temperature && frozen_share > 0) {
        moist_equilibrium_over(VTX_AIR_REAL, pressure, temperature, water, PHASE_ICE, &ice);
        moist_between(&m, &ice, frozen_share, &m);
    }
    *enthalpy = m.enthalpy;
    *entropy = m.entropy;
    if (temperature > MOIST_TEMPERATURE_MAX) {
        *enthalpy += m.heat_capacity * (temperature - MOIST_TEMPERATURE_MAX);
        *entropy += m.heat_capacity * log(temperature / MOIST_TEMPERATURE_MAX);
    }
}

static void balances_hold(const struct state *x, const vtx_streams *s)
{
    const double mu = x->cold_fraction, per_air = 1 / (1 + x->humidity_ratio);
    double h0, s0, hc, sc, hh, sh;
    outlet(x->inlet_pressure, x->inlet_temperature, x->humidity_ratio, 0, &h0, &s0);
    outlet(x->cold_pressure, s->cold_temperature, x->humidity_ratio, s->frozen_share, &hc, &sc);
    outlet(x->hot_pressure, s->hot_temperature, x->humidity_ratio, s->hot_frozen_share, &hh, &sh);
    const double heat = s->heat_gain - s->heat_loss;
    EXPECT(fabs((h0 - mu * hc - (1 - mu) * hh) * per_air + heat) <= 1e-10 * 1006 * x->inlet_temperature);
    const double sigma = (mu * (sc - s0) + (1 - mu) * (sh - s0)) * per_air - heat / x->tube.ambient_temperature;
    EXPECT_WITHIN(s->entropy_generation, sigma, 1e-7);
    EXPECT(s->entropy_generation >= -1e-7);
}

static void agrees_with_plain_expansions(const struct state *x, const vtx_streams *s)
{
    double isentropic, throttle;
    EXPECT_OK(vtx_expansion_isentropic(VTX_AIR_REAL, x->inlet_pressure, x->inlet_temperature, x->humidity_ratio, x->cold_pressure, &isentropic));
    EXPECT_OK(vtx_expansion_throttle(VTX_AIR_REAL, x->inlet_pressure, x->inlet_temperature, x->humidity_ratio, x->cold_pressure, &throttle));
    EXPECT_WITHIN(s->isentropic_temperature, isentropic, 2e-8);
    EXPECT_WITHIN(s->throttle_temperature, throttle, 2e-8);
    EXPECT_WITHIN(s->joule_thomson_drop, x->inlet_temperature - throttle, 2e-8);
    if (x->cold_fraction == 1)
        EXPECT_WITHIN(s->cold_temperature, throttle, 2e-8);
    if (x->inlet_temperature - isentropic > 1)
        EXPECT_WITHIN(s->isentropic_efficiency, (x->inlet_temperature - s->cold_temperature) / (x->inlet_temperature - isentropic), 1e-7);
    EXPECT(s->cold_temperature >= isentropic - 1e-7 && s->cold_temperature <= throttle + 1e-7);
}

static void both_laws_hold_on_random_states(void)
{
    struct random_state r;
    const int states = soak_count(100000);
    int answered = 0;
    random_seed(&r, 51);
    for (int i = 0; i < states; i++) {
        const struct state x = random_state(&r);
        vtx_streams s;
        feclearexcept(FE_ALL_EXCEPT);
        const vtx_status status = separate(&x, VTX_AIR_REAL, &s);
        const int flags = fetestexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW);
        if (status == VTX_OUT_OF_RANGE) {
            /* Only where dry air itself comes near to condensing. */
            double t;
            EXPECT(vtx_expansion_isentropic(VTX_AIR_REAL, x.inlet_pressure, x.inlet_temperature, 0, x.cold_pressure, &t) == VTX_OUT_OF_RANGE
                   || t < 1.03 * moist_temperature_min(VTX_AIR_REAL, x.cold_pressure) || x.humidity_ratio > 0.01);
            continue;
        }
        EXPECT_OK(status);
        EXPECT(!flags);
        answered++;
        balances_hold(&x, &s);
        EXPECT(s.cold_temperature_low <= s.cold_temperature && s.cold_temperature <= s.cold_temperature_high);
        EXPECT(s.hot_temperature_low <= s.hot_temperature && s.hot_temperature <= s.hot_temperature_high);
        EXPECT(s.condensed_low <= s.condensed && s.condensed <= s.condensed_high && s.condensed <= x.humidity_ratio);
        if (i % 8 == 0)
            agrees_with_plain_expansions(&x, &s);
    }
    EXPECT(answered > 0.8 * states);
}

static void laws_hold_with_leaks(void)
{
    struct random_state r;
    random_seed(&r, 52);
    for (int i = 0; i < 5000; i++) {
        struct state x = random_state(&r);
        vtx_streams s;
        x.tube.cold_leak = random_log_uniform(&r, 1e-4, 10);
        x.tube.hot_leak = random_log_uniform(&r, 1e-4, 10);
        x.tube.ambient_temperature = random_uniform(&r, 250, 320);
        if (separate(&x, VTX_AIR_REAL, &s) == VTX_OK)
            balances_hold(&x, &s);
    }
}

static void cold_temperature_is_monotone_in_efficiency_and_back_pressure(void)
{
    struct random_state r;
    random_seed(&r, 53);
    for (int i = 0; i < 4000; i++) {
        struct state x = random_state(&r);
        vtx_streams a, b;
        if (separate(&x, VTX_AIR_REAL, &a) != VTX_OK)
            continue;
        struct state y = x;
        y.tube.peak_efficiency = random_uniform(&r, x.tube.peak_efficiency, x.tube.efficiency_high);
        EXPECT_OK(separate(&y, VTX_AIR_REAL, &b));
        EXPECT(b.cold_temperature <= a.cold_temperature + 1e-8 && b.hot_temperature >= a.hot_temperature - 1e-8);
        if (x.tube.pressure_exponent < 0)
            continue;
        y = x;
        y.cold_pressure = random_uniform(&r, x.cold_pressure, x.inlet_pressure);
        EXPECT_OK(separate(&y, VTX_AIR_REAL, &b));
        EXPECT(b.cold_temperature >= a.cold_temperature - 1e-8);
    }
}

/* The band's ends are what a tube of that efficiency does. */
static void band_ends_are_tubes_of_their_own(void)
{
    static const double water[] = { 0, 1e-5, 1e-3, 2e-3, 4e-3, 1.2e-2 };
    for (size_t k = 0; k < sizeof water / sizeof water[0]; k++) {
        for (double mu = 0; mu <= 1; mu += 0.1) {
            const struct state x = usual(water[k], mu);
            struct state weak = x, strong = x;
            vtx_streams s, w, t;
            weak.tube.peak_efficiency = x.tube.efficiency_low;
            strong.tube.peak_efficiency = x.tube.efficiency_high;
            EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
            EXPECT_OK(separate(&weak, VTX_AIR_REAL, &w));
            EXPECT_OK(separate(&strong, VTX_AIR_REAL, &t));
            EXPECT_WITHIN(s.cold_temperature_low, t.cold_temperature, 1e-8);
            EXPECT_WITHIN(s.cold_temperature_high, w.cold_temperature, 1e-8);
            EXPECT_WITHIN(s.hot_temperature_low, w.hot_temperature, 1e-8);
            EXPECT_WITHIN(s.hot_temperature_high, t.hot_temperature, 1e-8);
            EXPECT_WITHIN(s.condensed_low, w.condensed, 1e-11);
            EXPECT_WITHIN(s.condensed_high, t.condensed, 1e-11);
        }
    }
}

/* Joule-Thomson: 1.4 K from 700 kPa; the cold drop of the real gas lies within a kelvin of the perfect gas's plus this. */
static void real_dry_air_adds_the_joule_thomson_drop(void)
{
    for (double mu = 0; mu <= 1; mu += 0.05) {
        const struct state x = usual(0, mu);
        vtx_streams real, ideal;
        EXPECT_OK(separate(&x, VTX_AIR_REAL, &real));
        EXPECT_OK(separate(&x, VTX_AIR_IDEAL, &ideal));
        EXPECT_WITHIN(real.joule_thomson_drop, 1.41, 0.02);
        EXPECT(real.cold_temperature < ideal.cold_temperature);
        EXPECT_WITHIN(real.cold_temperature, ideal.cold_temperature - real.joule_thomson_drop, 0.3);
        EXPECT(real.hot_temperature < ideal.hot_temperature);
    }
}

static void a_vanishing_expansion_separates_nothing(void)
{
    static const double water[] = { 0, 1e-3, 5e-3 };
    for (size_t k = 0; k < sizeof water / sizeof water[0]; k++) {
        struct state x = usual(water[k], 0.6);
        vtx_streams s;
        x.cold_pressure = x.hot_pressure = x.inlet_pressure;
        EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
        EXPECT_WITHIN(s.cold_temperature, 293.15, 1e-9);
        EXPECT_WITHIN(s.hot_temperature, 293.15, 1e-9);
        EXPECT(isnan(s.isentropic_efficiency) && (s.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
        x.cold_pressure = x.hot_pressure = x.inlet_pressure * (1 - 1e-9);
        EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
        EXPECT_WITHIN(s.cold_temperature, 293.15, 1e-6);
        EXPECT_WITHIN(s.hot_temperature, 293.15, 1e-6);
    }
}

static void streams_run_on_smoothly_to_cold_fraction_1(void)
{
    static const double water[] = { 0, 1e-5, 2e-3, 5e-3 };
    for (size_t k = 0; k < sizeof water / sizeof water[0]; k++) {
        struct state x = usual(water[k], 1);
        vtx_streams end, near_end;
        EXPECT_OK(separate(&x, VTX_AIR_REAL, &end));
        for (double gap = 1e-15; gap < 1e-6; gap *= 10) {
            x.cold_fraction = 1 - gap;
            EXPECT_OK(separate(&x, VTX_AIR_REAL, &near_end));
            EXPECT_WITHIN(near_end.cold_temperature, end.cold_temperature, 1e-7 + 400 * gap);
            EXPECT_WITHIN(near_end.hot_temperature, end.hot_temperature, 1e-7 + 400 * gap);
        }
    }
}

/* First-order balance of moist feed: cp (Tc - Tc,dry) = L (w - w_sat(Tc)). */
static void condensing_water_warms_the_cold_stream_by_its_latent_heat(void)
{
    double saturated;
    EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 7e5, 293.15, &saturated));
    for (double share = 0.2; share <= 1.0001; share += 0.1) {
        const struct state wet = usual(share * saturated, 0.3), dry = usual(0, 0.3);
        vtx_streams a, b;
        EXPECT_OK(separate(&dry, VTX_AIR_REAL, &a));
        EXPECT_OK(separate(&wet, VTX_AIR_REAL, &b));
        const double warmed = b.cold_temperature - a.cold_temperature;
        EXPECT(b.condensed >= 0 && b.condensed < wet.humidity_ratio);
        EXPECT(warmed < 2.84e6 * wet.humidity_ratio / 1000);
        if (b.condensed > 0) {
            double left;
            EXPECT(b.condensed_phase == 2 && b.frozen_share == 1 && (b.advisories & VTX_ADVISORY_FREEZING));
            EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 101325, b.cold_temperature, &left));
            EXPECT_WITHIN(b.condensed, wet.humidity_ratio - left, 1e-10);
            EXPECT_NEAR(warmed, 2.83e6 * b.condensed / 1005, 0.03);
        } else {
            EXPECT_WITHIN(warmed, 0, 0.1);
        }
    }
}

/* The lost drop is at most L w / cp. Feeds saturated at 700 kPa at 20, 3 and -40 degC, the last two over the trade's dew points. */
static void wet_feed_costs_at_most_its_latent_heat(void)
{
    static const double saturated_at[3] = { 293.15, 276.15, 233.15 };
    for (int k = 0; k < 3; k++) {
        vtx_streams dry, wet;
        struct state x = usual(0, 0.3);
        x.tube.peak_efficiency = x.tube.efficiency_high = 1; /* cold enough to freeze out all of it */
        EXPECT_OK(separate(&x, VTX_AIR_REAL, &dry));
        EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 7e5, saturated_at[k], &x.humidity_ratio));
        EXPECT_OK(separate(&x, VTX_AIR_REAL, &wet));
        const double most = 2.84e6 * x.humidity_ratio / 1003;
        EXPECT(wet.cold_temperature - dry.cold_temperature > 0.95 * most);
        EXPECT(wet.cold_temperature - dry.cold_temperature < most);
    }
}

/* Through dew point, triple point and frost point the cold temperature has no step, in water as in cold fraction. */
static void outlets_have_no_step_anywhere(void)
{
    for (double w = 1e-3; w < 2e-2; w *= 1.07) {
        double previous = 0, previous_hot = 0;
        for (int k = 0; k <= 2000; k++) {
            const struct state x = usual(w, k / 2000.0);
            vtx_streams s;
            EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
            if (k > 0) {
                EXPECT(fabs(s.cold_temperature - previous) < 0.1);
                EXPECT(fabs(s.hot_temperature - previous_hot) < 0.1);
            }
            previous = s.cold_temperature;
            previous_hot = s.hot_temperature;
        }
    }
    double previous = 0;
    for (int k = 0; k <= 4000; k++) {
        const struct state x = usual(1.2e-2 * k / 4000, 0.7);
        vtx_streams s;
        EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
        if (k > 0)
            EXPECT(fabs(s.cold_temperature - previous) < 0.02);
        previous = s.cold_temperature;
    }
}

/* Where liquid and ice coexist the temperature stands still and the frozen share takes up the balance. */
static void a_mixed_outlet_stays_at_the_triple_point(void)
{
    int mixed = 0;
    double previous = 0;
    for (int k = 0; k <= 4000; k++) {
        struct state x = usual(1.2e-2, 0.6);
        vtx_streams s;
        x.tube.peak_efficiency = x.tube.efficiency_high = 0.1 + 0.3 * k / 4000;
        x.tube.efficiency_low = 0.05;
        EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
        if (s.condensed_phase == 3) {
            mixed++;
            EXPECT(s.cold_temperature == 273.16 && s.frozen_share > 0 && s.frozen_share < 1);
            EXPECT(s.frozen_share >= previous);
            EXPECT((s.advisories & VTX_ADVISORY_FREEZING) && (s.advisories & VTX_ADVISORY_CONDENSING));
            previous = s.frozen_share;
            balances_hold(&x, &s);
        }
    }
    EXPECT(mixed > 20);
}

static void feed_water_can_freeze_in_a_sonic_throat(void)
{
    struct state x = usual(5e-4, 0.9);
    vtx_streams s;
    EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
    EXPECT(s.condensed == 0 && (s.advisories & VTX_ADVISORY_STATIC_FREEZING));
    x.humidity_ratio = 1e-5;
    EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
    EXPECT(!(s.advisories & VTX_ADVISORY_STATIC_FREEZING));
    x.humidity_ratio = 5e-4;
    x.cold_pressure = x.hot_pressure = 5e5;
    EXPECT_OK(separate(&x, VTX_AIR_REAL, &s));
    EXPECT(!(s.advisories & VTX_ADVISORY_STATIC_FREEZING));
}

static void what_air_would_condense_in_is_out_of_range(void)
{
    struct state x = usual(0, 0.6);
    vtx_streams s;
    x.inlet_temperature = 200;
    x.inlet_pressure = 5e6;
    EXPECT_STATUS(separate(&x, VTX_AIR_REAL, &s), VTX_OUT_OF_RANGE);
    EXPECT(isnan(s.cold_temperature) && s.advisories == -1);
}

static const struct test_case tests[] = {
    { "both laws hold on random states", both_laws_hold_on_random_states },
    { "laws hold with leaks", laws_hold_with_leaks },
    { "cold temperature is monotone in efficiency and back-pressure", cold_temperature_is_monotone_in_efficiency_and_back_pressure },
    { "band ends are tubes of their own", band_ends_are_tubes_of_their_own },
    { "real dry air adds the Joule-Thomson drop", real_dry_air_adds_the_joule_thomson_drop },
    { "a vanishing expansion separates nothing", a_vanishing_expansion_separates_nothing },
    { "streams run on smoothly to cold fraction 1", streams_run_on_smoothly_to_cold_fraction_1 },
    { "condensing water warms the cold stream by its latent heat", condensing_water_warms_the_cold_stream_by_its_latent_heat },
    { "wet feed costs at most its latent heat", wet_feed_costs_at_most_its_latent_heat },
    { "outlets have no step anywhere", outlets_have_no_step_anywhere },
    { "a mixed outlet stays at the triple point", a_mixed_outlet_stays_at_the_triple_point },
    { "feed water can freeze in a sonic throat", feed_water_can_freeze_in_a_sonic_throat },
    { "what air would condense in is out of range", what_air_would_condense_in_is_out_of_range },
};
TEST_SUITE(real_separation, tests);
