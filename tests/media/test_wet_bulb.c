/* Wet bulb: one balance for every state, two wicks near freezing. */
#include <vtx/moist_air.h>

#include "../../libvtx/media/moist_kernel.h"
#include "../harness/harness.h"

static vtx_moist_air of_ratio(int32_t model, double pressure, double temperature, double ratio)
{
    vtx_moist_air state;
    EXPECT_OK(vtx_moist_air_at(model, pressure, temperature, VTX_HUMIDITY_RATIO, ratio, &state));
    return state;
}

/* h + (Ws* - W) h_w* = h_s*, with the library's own saturated air and condensate. */
static void real_wet_bulb_closes_the_saturator_balance(void)
{
    struct random_state r;
    int wet = 0, iced = 0;
    random_seed(&r, 8);
    for (int i = 0; i < 4000; i++) {
        const double p = random_log_uniform(&r, 2e3, 4e6), t = random_uniform(&r, 190, 473.15);
        vtx_moist_air s;
        struct moist_mixture saturated;
        if (vtx_moist_air_at(VTX_AIR_REAL, p, t, VTX_RELATIVE_HUMIDITY_ICE, random_uniform(&r, 0, 1), &s) != VTX_OK)
            continue;
        const int32_t phase = s.wet_bulb < 273.16 ? PHASE_ICE : PHASE_LIQUID;
        const double x = moist_saturation_fraction(VTX_AIR_REAL, p, s.wet_bulb, phase);
        const double ratio = moist_humidity_ratio(VTX_AIR_REAL, x);
        if (ratio > 10)
            continue;
        moist_vapour(VTX_AIR_REAL, p, s.wet_bulb, ratio, &saturated);
        const double taken_up = (ratio - s.humidity_ratio) * moist_condensate_enthalpy(VTX_AIR_REAL, p, s.wet_bulb, phase);
        /* 1e-9 K of the saturated air's enthalpy, which near boiling rises by megajoules a kelvin. */
        EXPECT_WITHIN(s.enthalpy + taken_up, saturated.enthalpy, 1e-9 * (2e3 + 4e5 * ratio * (1 + ratio)));
        EXPECT(s.wet_bulb <= t);
        EXPECT(isnan(s.dew_point) || s.dew_point <= s.wet_bulb + 1e-9);
        wet += phase == PHASE_LIQUID;
        iced += phase == PHASE_ICE;
    }
    EXPECT(wet > 500 && iced > 500);
}

/* ASHRAE Handbook Fundamentals 2017, chapter 1, equations 33 and 35 with their own numbers. */
static void ideal_wet_bulb_is_the_handbook_equation(void)
{
    const double wet = 15, celsius = 25;
    double ps, ratio;
    ps = pure_saturation_pressure(wet + 273.15, PHASE_LIQUID);
    const double saturated = 0.621945 * ps / (101325 - ps);
    const double expected = ((2501 - 2.326 * wet) * saturated - 1.006 * (celsius - wet)) / (2501 + 1.86 * celsius - 4.186 * wet);
    EXPECT_OK(vtx_moist_air_humidity(VTX_AIR_IDEAL, 101325, 298.15, VTX_WET_BULB, 288.15, VTX_HUMIDITY_RATIO, &ratio));
    EXPECT_NEAR(ratio, expected, 1e-12);
    EXPECT_WITHIN(of_ratio(VTX_AIR_IDEAL, 101325, 298.15, expected).wet_bulb, 288.15, 1e-9);
    ps = pure_saturation_pressure(268.15, PHASE_ICE);
    const double over_ice = 0.621945 * ps / (101325 - ps);
    const double iced = ((2830 + 0.24 * 5) * over_ice - 1.006 * 5) / (2830 + 2.1 * 5);
    EXPECT_OK(vtx_moist_air_humidity(VTX_AIR_IDEAL, 101325, 273.15, VTX_WET_BULB, 268.15, VTX_HUMIDITY_RATIO, &ratio));
    EXPECT_NEAR(ratio, iced, 1e-12);
}

/* Equations 33 and 35 again, by their own numbers: what is above zero where the wick is warmer than its balance. */
static double handbook_excess(double pressure, double temperature, double ratio, double wet_bulb, int32_t phase)
{
    const double t = temperature - 273.15, wet = wet_bulb - 273.15, ps = pure_saturation_pressure(wet_bulb, phase);
    const double saturated = 0.621945 * ps / (pressure - ps);
    if (phase == PHASE_ICE)
        return (2830e3 - 240 * wet) * saturated - 1006 * (t - wet) - ratio * (2830e3 + 1860 * t - 2100 * wet);
    return (2501e3 - 2326 * wet) * saturated - 1006 * (t - wet) - ratio * (2501e3 + 1860 * t - 4186 * wet);
}

/* The counted steps of ordinary weather and the search elsewhere: both ends of an interval of 2e-9 K about the wet bulb have different signs,
 * and the state says the same as the conversion. */
static void ideal_wet_bulb_is_the_root_of_the_handbook_equation(void)
{
    struct random_state r;
    int wet = 0, iced = 0;
    random_seed(&r, 31);
    for (int i = 0; i < 40000; i++) {
        const int weather = i % 2;
        const double p = random_log_uniform(&r, weather ? 5e4 : 1e4, weather ? 1.1e5 : 5e6);
        const double t = random_uniform(&r, weather ? 233.15 : 220, weather ? 325 : 420), humidity = random_uniform(&r, 0, 1);
        double bulb, ratio;
        if (vtx_moist_air_humidity(VTX_AIR_IDEAL, p, t, VTX_RELATIVE_HUMIDITY, humidity, VTX_WET_BULB, &bulb) != VTX_OK)
            continue;
        EXPECT_OK(vtx_moist_air_humidity(VTX_AIR_IDEAL, p, t, VTX_RELATIVE_HUMIDITY, humidity, VTX_HUMIDITY_RATIO, &ratio));
        const int32_t phase = bulb < 273.16 ? PHASE_ICE : PHASE_LIQUID;
        EXPECT(handbook_excess(p, t, ratio, bulb - 1e-9, phase) < 0);
        EXPECT(handbook_excess(p, t, ratio, bulb + 1e-9, phase) > 0);
        if (t >= 273.16)
            EXPECT((handbook_excess(p, t, ratio, 273.16, PHASE_LIQUID) <= 0) == (phase == PHASE_LIQUID));
        if (t >= 273.16 || humidity < 0.5) {
            const vtx_moist_air s = of_ratio(VTX_AIR_IDEAL, p, t, ratio);
            EXPECT_WITHIN(s.condensed > 0 ? bulb : s.wet_bulb, bulb, 1e-9);
        }
        wet += phase == PHASE_LIQUID;
        iced += phase == PHASE_ICE;
    }
    EXPECT(wet > 5000 && iced > 5000);
}

/* One state, two wicks: at 1 atm, 10 degC and 1.2e-4 the wet one stands at +0.52, the iced one at -0.18 degC. */
static void the_wet_wick_is_reported_where_both_have_a_root(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++) {
        double ratio;
        const vtx_moist_air s = of_ratio(model, 101325, 283.15, 1.2e-4);
        EXPECT_WITHIN(s.wet_bulb, 273.67, 0.03);
        EXPECT(s.advisories & VTX_ADVISORY_TWO_WET_BULBS);
        EXPECT_OK(vtx_moist_air_humidity(model, 101325, 283.15, VTX_WET_BULB, 272.97, VTX_HUMIDITY_RATIO, &ratio));
        /* half of the last digit; the handbook's equations are within 0.056 K of the exact balance at 1 atm */
        EXPECT_WITHIN(ratio, 1.2e-4, model == VTX_AIR_REAL ? 4e-6 : 4e-5);
        EXPECT(!(of_ratio(model, 101325, 283.15, 1e-3).advisories & VTX_ADVISORY_TWO_WET_BULBS));
        const vtx_moist_air iced = of_ratio(model, 101325, 275.15, 0.0028);
        EXPECT(iced.wet_bulb < 273.16 && !(iced.advisories & VTX_ADVISORY_TWO_WET_BULBS));
    }
}

/* At 2 degC and 1 atm the band of two roots runs from 0.00299 to 0.00308; on both sides one wick answers, nowhere none. */
static void the_band_of_two_roots_has_its_published_edges(void)
{
    double first = 0, last = 0, before = 0;
    for (double w = 0.00290; w < 0.00320; w += 1e-6) {
        const vtx_moist_air s = of_ratio(VTX_AIR_REAL, 101325, 275.15, w);
        EXPECT(s.wet_bulb > 272 && s.wet_bulb < 275.15 && s.wet_bulb > before);
        before = s.wet_bulb;
        if (s.advisories & VTX_ADVISORY_TWO_WET_BULBS) {
            first = first > 0 ? first : w;
            last = w;
        }
    }
    EXPECT_WITHIN(first, 0.00299, 1e-5);
    EXPECT_WITHIN(last, 0.00308, 1e-5);
}

static void wet_bulb_rises_with_humidity_and_temperature(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (double p = 2e4; p < 3e6; p *= 3)
            for (double t = 210; t < 470; t += 13) {
                double before = 0, limit;
                if (vtx_moist_air_humidity(model, p, t, VTX_RELATIVE_HUMIDITY_ICE, 1, VTX_HUMIDITY_RATIO, &limit) != VTX_OK)
                    limit = 2;
                for (double share = 0; share <= 1; share += 0.05) {
                    const double wet = of_ratio(model, p, t, share * limit * (1 - 1e-9)).wet_bulb;
                    EXPECT(wet > before && wet <= t);
                    EXPECT(share == 0 || of_ratio(model, p, t + 1, share * limit * (1 - 1e-9)).wet_bulb > wet);
                    before = wet;
                }
            }
}

/* Where others found no wet bulb or a wrong one: hotter than boiling, and wet almost to boiling. */
static void wet_bulb_holds_up_to_and_beyond_boiling(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++) {
        double before = 0;
        for (double w = 1e-3; w < 9.9; w *= 1.5) {
            const vtx_moist_air s = of_ratio(model, 101325, 433.15, w);
            EXPECT(s.wet_bulb > before && s.wet_bulb > s.dew_point && s.wet_bulb < 373.2);
            before = s.wet_bulb;
        }
        EXPECT(of_ratio(model, 101325, 433.15, 9.9).wet_bulb > 371.4);
        const vtx_moist_air dry = of_ratio(model, 101325, 473.15, 0);
        EXPECT(dry.wet_bulb > 318 && dry.wet_bulb < 328);
        const vtx_moist_air damp = of_ratio(model, 101325, 372.5, 8);
        EXPECT(damp.wet_bulb <= 372.5 && damp.wet_bulb > 370 && damp.condensed == 0);
        const vtx_moist_air thin = of_ratio(model, 1e3, 300, 0);
        EXPECT(thin.wet_bulb > 235 && thin.wet_bulb < 250);
    }
}

static void fog_stands_at_its_wet_bulb(void)
{
    for (int32_t model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++) {
        EXPECT(of_ratio(model, 101325, 290, 0.05).wet_bulb == 290);
        EXPECT(of_ratio(model, 101325, 260, 0.05).wet_bulb == 260);
        const vtx_moist_air edge = of_ratio(model, 101325, 290, 0.0118);
        EXPECT(edge.condensed == 0 && edge.wet_bulb < 290 && edge.wet_bulb > 289);
    }
}

static const struct test_case tests[] = {
    { "real wet bulb closes the saturator's balance", real_wet_bulb_closes_the_saturator_balance },
    { "ideal wet bulb is the handbook's equation", ideal_wet_bulb_is_the_handbook_equation },
    { "ideal wet bulb is the root of the handbook's equation", ideal_wet_bulb_is_the_root_of_the_handbook_equation },
    { "the wet wick is reported where both have a root", the_wet_wick_is_reported_where_both_have_a_root },
    { "the band of two roots has its published edges", the_band_of_two_roots_has_its_published_edges },
    { "wet bulb rises with humidity and temperature", wet_bulb_rises_with_humidity_and_temperature },
    { "wet bulb holds up to and beyond boiling", wet_bulb_holds_up_to_and_beyond_boiling },
    { "fog stands at its wet bulb", fog_stands_at_its_wet_bulb },
};
TEST_SUITE(wet_bulb, tests);
