/* Moist air from two properties. */
#include <vtx/moist_pair.h>

#include "../harness/harness.h"

enum { FIRST = VTX_HUMIDITY_RATIO, LAST = VTX_VOLUME };

static double property_of(const vtx_moist_air *a, int32_t property)
{
    switch (property) {
    case VTX_HUMIDITY_RATIO: return a->humidity_ratio + a->condensed;
    case VTX_RELATIVE_HUMIDITY: return a->relative_humidity;
    case VTX_RELATIVE_HUMIDITY_ICE: return a->relative_humidity_ice;
    case VTX_DEW_POINT: return a->dew_point;
    case VTX_FROST_POINT: return a->frost_point;
    case VTX_WET_BULB: return a->wet_bulb;
    case VTX_VAPOUR_FRACTION: return a->vapour_fraction;
    case VTX_ABSOLUTE_HUMIDITY: return a->absolute_humidity;
    case VTX_TEMPERATURE: return a->temperature;
    case VTX_ENTHALPY: return a->enthalpy;
    case VTX_ENTROPY: return a->entropy;
    default: return a->volume;
    }
}

static int is_water(int32_t p) { return p == VTX_HUMIDITY_RATIO || p == VTX_DEW_POINT || p == VTX_FROST_POINT || p == VTX_VAPOUR_FRACTION; }
static int is_relative(int32_t p) { return p == VTX_RELATIVE_HUMIDITY || p == VTX_RELATIVE_HUMIDITY_ICE; }

/* Enthalpy and entropy pass through zero: their size is then that of a kelvin. */
static double size_of(int32_t property, double value)
{
    return fabs(value) + (property == VTX_ENTHALPY ? 1e3 : property == VTX_ENTROPY ? 3 : 0);
}

struct unsaturated {
    int32_t model;
    double pressure;
    vtx_moist_air state;
};

static struct unsaturated random_state(struct random_state *r, int i)
{
    struct unsaturated u;
    double saturated, temperature;
    u.model = i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL;
    do {
        u.pressure = random_log_uniform(r, 5e4, 1.5e6);
        temperature = random_uniform(r, 220, 360);
    } while (vtx_saturation_humidity_ratio(u.model, u.pressure, temperature, &saturated) != VTX_OK || saturated > 5);
    const double share = i % 3 ? random_uniform(r, 0.001, 0.999) : random_log_uniform(r, 1e-5, 1);
    EXPECT_OK(vtx_moist_air_at(u.model, u.pressure, temperature, VTX_HUMIDITY_RATIO, share * saturated, &u.state));
    return u;
}

static int is_independent(const vtx_moist_air *a, int32_t x, int32_t y)
{
    return x != y && !(is_water(x) && is_water(y)) && !(is_relative(x) && is_relative(y) && a->temperature > 273.1);
}

/* Which pairs fix every other property well enough to find it to 1e-8 as well. */
static int fixes_the_state(const vtx_moist_air *a, int32_t x, int32_t y)
{
    const int with_wet_bulb = x == VTX_WET_BULB || y == VTX_WET_BULB;
    const int caloric = (x >= VTX_ENTHALPY) + (y >= VTX_ENTHALPY);
    if (caloric == 2 || (caloric && with_wet_bulb) || a->humidity_ratio < 1e-5)
        return 0;
    /* Volume hardly knows the water, and the wet bulb below freezing little of it; both relative humidities differ by the temperature alone. */
    return !(with_wet_bulb && a->wet_bulb < 273.2) && !(is_relative(x) && is_relative(y)) && x != VTX_VOLUME && y != VTX_VOLUME;
}

static void any_two_properties_give_the_state_back(void)
{
    struct random_state r;
    int pairs = 0, whole = 0, several = 0;
    random_seed(&r, 61);
    for (int i = 0; i < 300; i++) {
        const struct unsaturated u = random_state(&r, i);
        for (int32_t x = FIRST; x <= LAST; x++)
            for (int32_t y = FIRST; y <= LAST; y++) {
                vtx_moist_air found;
                const double a = property_of(&u.state, x), b = property_of(&u.state, y);
                if (!is_independent(&u.state, x, y) || isnan(a) || isnan(b))
                    continue;
                EXPECT_OK(vtx_moist_air_from_pair(u.model, u.pressure, x, a, y, b, &found));
                EXPECT_WITHIN(property_of(&found, x), a, 1e-9 * size_of(x, a));
                EXPECT_WITHIN(property_of(&found, y), b, 1e-9 * size_of(y, b));
                EXPECT(found.condensed == 0);
                pairs++;
                several += (found.advisories & VTX_ADVISORY_INDISTINGUISHABLE) != 0;
                if (!fixes_the_state(&u.state, x, y))
                    continue;
                for (int32_t z = FIRST; z <= LAST; z++)
                    if (!isnan(property_of(&u.state, z)))
                        EXPECT_WITHIN(property_of(&found, z), property_of(&u.state, z), 1e-8 * size_of(z, property_of(&u.state, z)));
                whole++;
            }
    }
    printf("\n    %d pairs, %d with several states, %d of them compared in every property ", pairs, several, whole);
    EXPECT(pairs > 28000 && whole > 8000);
}

/* Total water with a caloric property: fog, frost and the mixture of both come back. */
static void fog_and_frost_come_back_from_their_total_water(void)
{
    struct random_state r;
    int between = 0;
    random_seed(&r, 62);
    for (int i = 0; i < 3000; i++) {
        const int32_t model = i % 2 ? VTX_AIR_REAL : VTX_AIR_IDEAL;
        const double p = random_log_uniform(&r, 5e4, 1.5e6), water = random_log_uniform(&r, 1e-4, 0.1);
        const double t = i % 3 ? random_uniform(&r, 240, 320) : random_uniform(&r, 272, 275);
        vtx_moist_air a, found;
        EXPECT_OK(vtx_moist_air_at(model, p, t, VTX_HUMIDITY_RATIO, water, &a));
        for (int32_t y = VTX_ENTHALPY; y <= VTX_VOLUME; y++) {
            EXPECT_OK(vtx_moist_air_from_pair(model, p, VTX_HUMIDITY_RATIO, water, y, property_of(&a, y), &found));
            EXPECT_WITHIN(found.temperature, t, 1e-8);
            EXPECT_WITHIN(found.condensed, a.condensed, 1e-9 * water);
            EXPECT_OK(vtx_moist_air_from_pair(model, p, y, property_of(&a, y), VTX_TEMPERATURE, t, &found));
            EXPECT_WITHIN(property_of(&found, y), property_of(&a, y), 1e-9 * size_of(y, property_of(&a, y)));
        }
        vtx_moist_air ice, liquid;
        EXPECT_OK(vtx_moist_air_at(model, p, 273.16, VTX_HUMIDITY_RATIO, water, &liquid));
        EXPECT_OK(vtx_moist_air_at(model, p, 273.15, VTX_HUMIDITY_RATIO, water, &ice));
        if (!(liquid.condensed > 0))
            continue;
        const double half = 0.5 * (liquid.enthalpy + ice.enthalpy);
        EXPECT_OK(vtx_moist_air_from_pair(model, p, VTX_ENTHALPY, half, VTX_HUMIDITY_RATIO, water, &found));
        between += found.condensed_phase == 3;
        EXPECT_WITHIN(found.enthalpy, half, 1e-5);
    }
    EXPECT(between > 500);
}

static void air_at_saturation_comes_back(void)
{
    for (int model = VTX_AIR_IDEAL; model <= VTX_AIR_REAL; model++)
        for (double t = 245; t < 350; t += 7) {
            vtx_moist_air a, found;
            EXPECT_OK(vtx_moist_air_at(model, 2e5, t, VTX_RELATIVE_HUMIDITY, 1, &a));
            for (int32_t x = FIRST; x <= LAST; x++) {
                if (is_relative(x) || isnan(property_of(&a, x)) || (x == VTX_HUMIDITY_RATIO && t < 273.16))
                    continue;
                EXPECT_OK(vtx_moist_air_from_pair(model, 2e5, VTX_RELATIVE_HUMIDITY, 1, x, property_of(&a, x), &found));
                EXPECT_WITHIN(found.temperature, t, 2e-9);
            }
        }
}

static void dry_air_comes_back_from_its_caloric_properties(void)
{
    static const int32_t zero[] = { VTX_HUMIDITY_RATIO, VTX_RELATIVE_HUMIDITY, VTX_RELATIVE_HUMIDITY_ICE, VTX_VAPOUR_FRACTION, VTX_ABSOLUTE_HUMIDITY };
    vtx_moist_air a, found;
    EXPECT_OK(vtx_moist_air_at(VTX_AIR_REAL, 8e5, 300, VTX_HUMIDITY_RATIO, 0, &a));
    for (size_t k = 0; k < sizeof zero / sizeof zero[0]; k++) {
        for (int32_t x = VTX_TEMPERATURE; x <= LAST; x++) {
            EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 8e5, zero[k], 0, x, property_of(&a, x), &found));
            EXPECT_WITHIN(found.temperature, 300, 1e-8);
            EXPECT(found.humidity_ratio == 0);
        }
        EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 8e5, zero[k], 0, VTX_WET_BULB, a.wet_bulb, &found));
        EXPECT_WITHIN(found.temperature, 300, 1e-7);
    }
    EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 8e5, VTX_ENTHALPY, a.enthalpy, VTX_ENTROPY, a.entropy, &found));
    EXPECT_WITHIN(found.temperature, 300, 1e-6);
    EXPECT_WITHIN(found.humidity_ratio, 0, 1e-10);
}

/* Dry air leaves the temperature open; four names of one property; both relative humidities above freezing. */
static void pairs_that_say_one_thing_are_refused(void)
{
    vtx_moist_air s;
    for (int32_t x = FIRST; x <= LAST; x++)
        EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, x, 280, x, 280, &s), VTX_BAD_ARGUMENT);
    EXPECT(isnan(s.enthalpy) && s.advisories == -1 && s.condensed_phase == -1);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_DEW_POINT, 280, VTX_HUMIDITY_RATIO, 0.006, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_DEW_POINT, 260, VTX_FROST_POINT, 261, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_VAPOUR_FRACTION, 0.01, VTX_HUMIDITY_RATIO, 0.006, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_RELATIVE_HUMIDITY, 0, VTX_HUMIDITY_RATIO, 0, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_IDEAL, 1e5, VTX_ABSOLUTE_HUMIDITY, 0, VTX_VAPOUR_FRACTION, 0, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_RELATIVE_HUMIDITY, 0.4, VTX_RELATIVE_HUMIDITY_ICE, 0.4, &s), VTX_BAD_ARGUMENT);
}

static void contradictions_have_no_solution(void)
{
    vtx_moist_air s;
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_TEMPERATURE, 280, VTX_DEW_POINT, 290, &s), VTX_NO_SOLUTION);
    EXPECT(isnan(s.temperature));
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_TEMPERATURE, 280, VTX_WET_BULB, 290, &s), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_RELATIVE_HUMIDITY, 0.5, VTX_RELATIVE_HUMIDITY_ICE, 0.4, &s), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_WET_BULB, 280, VTX_HUMIDITY_RATIO, 0.02, &s), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_TEMPERATURE, 300, VTX_ENTHALPY, 0, &s), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_VOLUME, 10, VTX_ENTHALPY, 0, &s), VTX_NO_SOLUTION);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_HUMIDITY_RATIO, 0.01, VTX_ENTHALPY, 9e7, &s), VTX_NO_SOLUTION);
}

static void several_states_are_named_and_the_clear_one_is_given(void)
{
    vtx_moist_air vapour, frost, found;
    /* Frosted air of more water has the enthalpy that drier clear air has at the same temperature. */
    EXPECT_OK(vtx_moist_air_at(VTX_AIR_REAL, 1e5, 263.15, VTX_HUMIDITY_RATIO, 0.001, &vapour));
    EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_TEMPERATURE, 263.15, VTX_ENTHALPY, vapour.enthalpy, &found));
    EXPECT_NEAR(found.humidity_ratio, 0.001, 1e-8);
    EXPECT(found.condensed == 0 && (found.advisories & VTX_ADVISORY_INDISTINGUISHABLE));
    EXPECT_OK(vtx_moist_air_at(VTX_AIR_REAL, 1e5, 263.15, VTX_HUMIDITY_RATIO, 0.01, &frost));
    EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_TEMPERATURE, 263.15, VTX_ENTHALPY, frost.enthalpy, &found));
    EXPECT(found.condensed == 0 && (found.advisories & VTX_ADVISORY_INDISTINGUISHABLE));
    EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_HUMIDITY_RATIO, 0.01, VTX_ENTHALPY, frost.enthalpy, &found));
    EXPECT(found.condensed > 0 && !(found.advisories & VTX_ADVISORY_INDISTINGUISHABLE));
    /* Above freezing there is one state only. */
    EXPECT_OK(vtx_moist_air_at(VTX_AIR_REAL, 1e5, 293.15, VTX_HUMIDITY_RATIO, 0.01, &vapour));
    EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_TEMPERATURE, 293.15, VTX_ENTHALPY, vapour.enthalpy, &found));
    EXPECT(!(found.advisories & VTX_ADVISORY_INDISTINGUISHABLE));
}

/* The iced wick's own reading, 10 degC air with 1.2e-4: its state exists although it would be reported by its wet wick. */
static void both_wicks_lead_to_their_air(void)
{
    vtx_moist_air a, found;
    double iced, wet;
    EXPECT_OK(vtx_moist_air_at(VTX_AIR_REAL, 101325, 283.15, VTX_HUMIDITY_RATIO, 1.2e-4, &a));
    wet = a.wet_bulb;
    EXPECT(wet > 273.16 && (a.advisories & VTX_ADVISORY_TWO_WET_BULBS));
    iced = 272.97;
    EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 101325, VTX_WET_BULB, wet, VTX_HUMIDITY_RATIO, 1.2e-4, &found));
    EXPECT_WITHIN(found.temperature, 283.15, 1e-7);
    EXPECT_OK(vtx_moist_air_from_pair(VTX_AIR_REAL, 101325, VTX_WET_BULB, iced, VTX_HUMIDITY_RATIO, 1.2e-4, &found));
    EXPECT_WITHIN(found.temperature, 283.15, 0.3);
}

static void misuse_is_refused(void)
{
    static const struct { int32_t property; double value; } bad[] = {
        { VTX_HUMIDITY_RATIO, -1e-3 }, { VTX_RELATIVE_HUMIDITY, 1.1 }, { VTX_RELATIVE_HUMIDITY, -0.1 }, { VTX_RELATIVE_HUMIDITY_ICE, -0.1 },
        { VTX_VAPOUR_FRACTION, 1 },    { VTX_ABSOLUTE_HUMIDITY, -1 },  { VTX_WET_BULB, -5 },            { VTX_DEW_POINT, 0 },
        { VTX_FROST_POINT, -10 },      { VTX_VOLUME, 0 },              { VTX_TEMPERATURE, 0 },          { 0, 1 },
        { 9, 1 },                      { 22, 1 },                      { VTX_AIR_REAL, 1 },
    };
    vtx_moist_air s;
    for (size_t k = 0; k < sizeof bad / sizeof bad[0]; k++) {
        EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, bad[k].property, bad[k].value, VTX_ENTHALPY + (bad[k].property == VTX_VOLUME), 2e4, &s),
                      VTX_BAD_ARGUMENT);
        EXPECT(isnan(s.volume));
        EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_ENTHALPY, (double)NAN, bad[k].property, bad[k].value, &s), VTX_BAD_ARGUMENT);
    }
    EXPECT_STATUS(vtx_moist_air_from_pair(3, 1e5, VTX_TEMPERATURE, 300, VTX_ENTHALPY, 3e4, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 0, VTX_TEMPERATURE, 300, VTX_ENTHALPY, 3e4, &s), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_TEMPERATURE, 300, VTX_ENTHALPY, 3e4, NULL), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_moist_air_from_pair(VTX_AIR_REAL, 1e5, VTX_DEW_POINT, 200, VTX_ENTHALPY, 3e4, &s), VTX_OUT_OF_RANGE);
}

static const struct test_case tests[] = {
    { "any two properties give the state back", any_two_properties_give_the_state_back },
    { "fog and frost come back from their total water", fog_and_frost_come_back_from_their_total_water },
    { "air at saturation comes back", air_at_saturation_comes_back },
    { "dry air comes back from its caloric properties", dry_air_comes_back_from_its_caloric_properties },
    { "pairs that say one thing are refused", pairs_that_say_one_thing_are_refused },
    { "contradictions have no solution", contradictions_have_no_solution },
    { "several states are named and the clear one is given", several_states_are_named_and_the_clear_one_is_given },
    { "both wicks lead to their air", both_wicks_lead_to_their_air },
    { "misuse is refused", misuse_is_refused },
};
TEST_SUITE(moist_pair, tests);
