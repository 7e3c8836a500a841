/* The feed's own water in the cold air. */
#include <vtx/air_quality.h>
#include <vtx/freezing.h>
#include <vtx/process.h>
#include <vtx/separation.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 2000 };

/* A feed described by its point: over ice below 273.16 K. */
static vtx_status feed(const double *in, double cold_temperature, vtx_feed_water *w)
{
    return vtx_feed_freezing(VTX_AIR_REAL, in[0], in[1], in[2] < 273.16 ? VTX_FROST_POINT : VTX_DEW_POINT, in[2], in[3], cold_temperature,
                             0.01, 0, w);
}

static int freezing_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    vtx_feed_water w;
    if (strcmp(row->quantity, "coldest_celsius") == 0) {
        if (feed(in, 250, &w) == VTX_OK)
            *actual = w.coldest_temperature - 273.15;
        return 1;
    }
    if (strcmp(row->quantity, "required_celsius") == 0) {
        if (vtx_feed_freezing(VTX_AIR_REAL, in[0], in[1], VTX_RELATIVE_HUMIDITY, 0.3, in[2], in[3], 0.01, 0, &w) == VTX_OK)
            *actual = w.required_point - 273.15;
        return 1;
    }
    if (strcmp(row->quantity, "throat_celsius") == 0) {
        if (vtx_feed_freezing(VTX_AIR_REAL, in[0], in[1], VTX_RELATIVE_HUMIDITY, 0.3, 101325, 250, 0.01, 0, &w) == VTX_OK)
            *actual = w.throat_temperature - 273.15;
        return 1;
    }
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("freezing.csv", freezing_row, 7); }

/* A feed dried to the required point goes exactly as far as was wished. */
static void the_required_point_is_the_edge(void)
{
    struct random_state r;
    int edges = 0;
    random_seed(&r, 101);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const int32_t model = i % 2 ? VTX_AIR_IDEAL : VTX_AIR_REAL;
        const double p = random_uniform(&r, 3e5, 1.2e6), t = random_uniform(&r, 283, 318), cold = random_uniform(&r, 215, t);
        const double margin = random_uniform(&r, 0, 10), pc = random_uniform(&r, 7e4, 1.5e5);
        vtx_feed_water w, again;
        EXPECT_OK(vtx_feed_freezing(model, p, t, VTX_RELATIVE_HUMIDITY, random_uniform(&r, 0.01, 0.99), pc, cold, 0.02, margin, &w));
        if (isnan(w.required_point)) {
            EXPECT(w.required_class == VTX_AIR_CLASS_X && (w.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE));
            continue;
        }
        EXPECT_OK(vtx_feed_freezing(model, p, t, w.required_point < 273.16 ? VTX_FROST_POINT : VTX_DEW_POINT, w.required_point, pc, cold,
                                    0.02, margin, &again));
        EXPECT_WITHIN(again.coldest_temperature, cold - margin, 1e-8);
        EXPECT_WITHIN(again.margin, margin, 1e-8);
        EXPECT(again.ice_rate <= 0 || margin < 1e-6);
        edges++;
    }
    EXPECT(edges > RANDOM_CASES / 2);
}

static void ice_falls_where_the_margin_is_negative(void)
{
    struct random_state r;
    random_seed(&r, 102);
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double p = random_uniform(&r, 3e5, 1.2e6), t = random_uniform(&r, 283, 318), cold = random_uniform(&r, 215, t);
        const double rh = random_uniform(&r, 0.001, 1);
        vtx_feed_water w;
        EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, p, t, VTX_RELATIVE_HUMIDITY, rh, 101325, cold, 0.02, 3, &w));
        EXPECT((w.margin < 0) == (w.condensate_rate > 0));
        EXPECT(((w.advisories & VTX_ADVISORY_FREEZING) != 0) == (w.ice_rate > 0));
        EXPECT(w.ice_rate <= w.condensate_rate && w.condensate_rate <= 0.02 * w.humidity_ratio);
        EXPECT((w.ice_rate > 0) == (w.condensate_rate > 0 && cold < 273.16));
        EXPECT(w.throat_required_class >= 0 && w.required_class >= 0);
        EXPECT(((w.advisories & VTX_ADVISORY_STATIC_FREEZING) != 0) == (w.throat_margin < 0 && w.throat_temperature < 273.16));
    }
}

/* 8 bar, 20 degC, pressure dew point 3 degC, cold air at -30 degC: by hand from humidity ratios of saturation. */
static void ice_per_hour_is_the_water_that_no_longer_fits(void)
{
    vtx_feed_water w;
    double feed_ratio, left;
    EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_DEW_POINT, 276.15, 101325, 243.15, 0.01, 3, &w));
    EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 8e5, 276.15, &feed_ratio));
    EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 101325, 243.15, &left));
    EXPECT_NEAR(w.humidity_ratio, feed_ratio, 1e-10);
    EXPECT_NEAR(w.ice_rate, 0.01 / (1 + feed_ratio) * (feed_ratio - left), 1e-9);
    EXPECT(w.condensed_phase == 2 && w.margin < -9 && w.margin > -10);
    /* -33 degC at 1 atm: class 3, -20 degC at pressure, is not quite enough at 7 bar but here it is */
    EXPECT(w.required_point < 264 && w.required_point > 253.15 && w.required_class == 3);
}

static void classes_to_ask_for_get_stricter_with_cold(void)
{
    int32_t last = VTX_AIR_CLASS_X;
    for (double cold = 292; cold > 170; cold -= 1) {
        vtx_feed_water w;
        EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_DEW_POINT, 276.15, 101325, cold, 0.01, 0, &w));
        EXPECT(w.required_class <= last);
        last = w.required_class;
    }
    EXPECT(last == 0);
}

/* Every other feed lies within a few per cent of the edge, where the enhancement factor decides. */
static void the_tube_judges_a_sonic_throat_alike(void)
{
    struct random_state r;
    vtx_tube tube;
    int freezing = 0;
    random_seed(&r, 103);
    EXPECT_OK(vtx_tube_init(&tube));
    for (int i = 0; i < RANDOM_CASES; i++) {
        const double p = random_uniform(&r, 3e5, 1.2e6), t = random_uniform(&r, 283, 318);
        double ratio = exp(random_uniform(&r, log(1e-5), log(2e-3)));
        vtx_feed_water w;
        vtx_streams s;
        EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, p, t, VTX_HUMIDITY_RATIO, ratio, 101325, 250, 0.02, 3, &w));
        if (i % 2) {
            EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, w.throat_pressure, w.throat_temperature, &ratio));
            ratio *= random_uniform(&r, 0.95, 1.05);
            EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, p, t, VTX_HUMIDITY_RATIO, ratio, 101325, 250, 0.02, 3, &w));
        }
        EXPECT_OK(vtx_tube_separate(&tube, VTX_AIR_REAL, p, t, ratio, 101325, 101325, 0.6, &s));
        EXPECT(((s.advisories ^ w.advisories) & VTX_ADVISORY_STATIC_FREEZING) == 0);
        freezing += (s.advisories & VTX_ADVISORY_STATIC_FREEZING) != 0;
    }
    EXPECT(freezing > RANDOM_CASES / 4 && freezing < RANDOM_CASES * 3 / 4);
}

static void the_throat_can_freeze_before_the_outlet(void)
{
    vtx_feed_water w;
    EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_DEW_POINT, 276.15, 101325, 268.15, 0.01, 0, &w));
    EXPECT(w.margin > 0 && w.ice_rate <= 0);
    EXPECT(w.throat_margin < 0 && (w.advisories & VTX_ADVISORY_STATIC_FREEZING) && !(w.advisories & VTX_ADVISORY_FREEZING));
    EXPECT_NEAR(w.throat_pressure, 8e5 * 0.5282817877, 1e-9);
    EXPECT(w.throat_required_class < w.required_class);
    /* unchoked: the throat expands to the cold pressure only */
    EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, 1.2e5, 293.15, VTX_DEW_POINT, 276.15, 101325, 290, 0.01, 0, &w));
    EXPECT_NEAR(w.throat_pressure, 101325, 1e-15);
    EXPECT_NEAR(w.throat_temperature, 293.15 * pow(101325 / 1.2e5, 1 / 3.5), 1e-12);
}

/* The throat against the real gas's own isentrope, dry: the accuracy stated. */
static void the_throat_temperature_is_as_good_as_stated(void)
{
    for (double p = 3e5; p < 1.3e6; p += 2e5) {
        vtx_feed_water w;
        double real;
        EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, p, 293.15, VTX_HUMIDITY_RATIO, 0, 101325, 268.15, 0.01, 0, &w));
        EXPECT_OK(vtx_expansion_isentropic(VTX_AIR_REAL, p, 293.15, 0, w.throat_pressure, &real));
        EXPECT_WITHIN(w.throat_temperature, real, 0.5);
        EXPECT(isnan(w.feed_point) && isnan(w.margin) && isnan(w.throat_margin) && w.ice_rate <= 0);
        EXPECT(w.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE);
    }
}

static void a_wet_feed_is_counted_whole(void)
{
    vtx_feed_water w;
    double saturated;
    EXPECT_OK(vtx_saturation_humidity_ratio(VTX_AIR_REAL, 8e5, 293.15, &saturated));
    EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_HUMIDITY_RATIO, 3 * saturated, 101325, 263.15, 0.01, 0, &w));
    EXPECT_NEAR(w.humidity_ratio, 3 * saturated, 1e-14);
    EXPECT_WITHIN(w.feed_point, 293.15, 1e-7);
    EXPECT((w.advisories & VTX_ADVISORY_CONDENSING) && (w.advisories & VTX_ADVISORY_FREEZING));
}

static void impossible_feeds_are_refused(void)
{
    vtx_feed_water w;
    EXPECT_STATUS(vtx_feed_freezing(VTX_AIR_REAL, 1e5, 293.15, VTX_DEW_POINT, 276.15, 2e5, 268.15, 0.01, 0, &w), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_DEW_POINT, 276.15, 1e5, 295, 0.01, 0, &w), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_DEW_POINT, 276.15, 1e5, 149, 0.01, 30, &w), VTX_OUT_OF_RANGE);
    EXPECT_OK(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_DEW_POINT, 276.15, 1e5, 151, 0.01, 30, &w));
    EXPECT_STATUS(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_DEW_POINT, 300, 1e5, 260, 0.01, 0, &w), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_feed_freezing(VTX_AIR_REAL, 8e5, 293.15, VTX_TEMPERATURE, 276, 1e5, 260, 0.01, 0, &w), VTX_BAD_ARGUMENT);
    EXPECT(isnan(w.margin) && w.required_class == -1 && w.advisories == -1);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "the required point is the edge", the_required_point_is_the_edge },
    { "ice falls where the margin is negative", ice_falls_where_the_margin_is_negative },
    { "ice per hour is the water that no longer fits", ice_per_hour_is_the_water_that_no_longer_fits },
    { "classes to ask for get stricter with cold", classes_to_ask_for_get_stricter_with_cold },
    { "the tube judges a sonic throat alike", the_tube_judges_a_sonic_throat_alike },
    { "the throat can freeze before the outlet", the_throat_can_freeze_before_the_outlet },
    { "the throat temperature is as good as stated", the_throat_temperature_is_as_good_as_stated },
    { "a wet feed is counted whole", a_wet_feed_is_counted_whole },
    { "impossible feeds are refused", impossible_feeds_are_refused },
};
TEST_SUITE(freezing, tests);
