/* Touch limits. */
#include <vtx/material.h>
#include <vtx/touch.h>
#include <vtx/transient.h>

#include "duty_tests.h"

static vtx_skin skin(void)
{
    vtx_skin s;
    vtx_skin_init(&s);
    return s;
}

/* The contact temperature at which the verdict changes to the criterion, by bisection on the surface temperature. */
static double criterion_limit(int32_t criterion)
{
    const vtx_skin s = skin();
    double cold = 150, warm = 300, contact = (double)NAN;
    for (int i = 0; i < 80; i++) {
        vtx_touch t;
        const double middle = 0.5 * (cold + warm);
        if (vtx_touch_surface(&s, VTX_CONTACT_METAL, 8000, middle, 10, &t) != VTX_OK)
            return (double)NAN;
        contact = t.contact_temperature;
        if (t.criterion >= criterion)
            cold = middle;
        else
            warm = middle;
    }
    return contact;
}

static int touch_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    vtx_skin s = skin();
    if (strcmp(row->quantity, "burn_low") == 0)
        return vtx_burn_threshold((int32_t)in[0], in[1], actual, NULL), 1;
    if (strcmp(row->quantity, "burn_high") == 0) {
        double low;
        return vtx_burn_threshold((int32_t)in[0], in[1], &low, actual), 1;
    }
    if (strcmp(row->quantity, "skin_criterion") == 0)
        return *actual = criterion_limit((int32_t)in[0]), 1;
    if (strcmp(row->quantity, "coldest_touchable_celsius") == 0) {
        s.effusivity = in[4];
        if (vtx_coldest_touchable(&s, sqrt(in[0] * in[1] * in[2]), in[3], actual) == VTX_OK)
            *actual -= 273.15;
        return 1;
    }
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("touch.csv", touch_row, 22); }

static void thresholds_fall_with_time_without_a_step(void)
{
    for (int32_t c = VTX_CONTACT_METAL; c <= VTX_CONTACT_PLASTIC; c++) {
        double last_low = HUGE_VAL, last_high = HUGE_VAL;
        for (double time = 0.5; time < 9e5; time *= 1.01) {
            double low, high;
            EXPECT_OK(vtx_burn_threshold(c, time, &low, &high));
            EXPECT(low <= high && low <= last_low && high <= last_high);
            EXPECT(last_low > 1e6 || (last_low - low < 0.2 && last_high - high < 0.2));
            last_low = low;
            last_high = high;
        }
    }
}

static void metal_burns_before_ceramics_and_plastics(void)
{
    for (double time = 1; time < 1e5; time *= 1.3) {
        double metal, ceramic, plastic;
        EXPECT_OK(vtx_burn_threshold(VTX_CONTACT_METAL, time, &metal, NULL));
        EXPECT_OK(vtx_burn_threshold(VTX_CONTACT_CERAMIC, time, &ceramic, NULL));
        EXPECT_OK(vtx_burn_threshold(VTX_CONTACT_PLASTIC, time, &plastic, NULL));
        EXPECT(metal <= ceramic && ceramic <= plastic);
    }
}

static void cold_metal_hurts_where_plastic_does_not(void)
{
    const vtx_skin s = skin();
    vtx_material_properties metal, plastic;
    vtx_touch t;
    EXPECT_OK(vtx_material(VTX_MATERIAL_ALUMINIUM, &metal));
    EXPECT_OK(vtx_material(VTX_MATERIAL_PA66, &plastic));
    EXPECT_OK(vtx_touch_surface(&s, metal.contact_class, metal.effusivity.typical, 253.15, 5, &t));
    EXPECT(t.criterion == VTX_TOUCH_FROSTBITE && (t.advisories & VTX_ADVISORY_TOUCH_COLD) && t.cold_margin < 0);
    EXPECT_WITHIN(t.skin_limit, 273.15, 1e-9);
    EXPECT(t.contact_class == VTX_CONTACT_METAL && fabs(t.contact_time - 5) < 1e-12);
    EXPECT_OK(vtx_touch_surface(&s, plastic.contact_class, plastic.effusivity.typical, 253.15, 5, &t));
    EXPECT(t.criterion == VTX_TOUCH_NONE && isnan(t.skin_limit) && t.advisories == VTX_ADVISORY_FIELD_UNAVAILABLE);
}

static void hot_surfaces_pass_from_none_through_the_band_to_burn(void)
{
    const vtx_skin s = skin();
    vtx_touch t;
    int32_t last = VTX_TOUCH_NONE;
    for (double surface = 310; surface < 400; surface += 0.5) {
        EXPECT_OK(vtx_touch_surface(&s, VTX_CONTACT_METAL, 12000, surface, 1, &t));
        EXPECT(t.criterion >= last && t.criterion != VTX_TOUCH_PAIN);
        EXPECT((t.criterion == VTX_TOUCH_NONE) == (t.hot_margin > 0));
        EXPECT(((t.advisories & VTX_ADVISORY_TOUCH_HOT) != 0) == (t.criterion != VTX_TOUCH_NONE));
        last = t.criterion;
    }
    EXPECT(last == VTX_TOUCH_BURN);
}

static void the_coldest_touchable_surface_inverts_the_contact(void)
{
    struct random_state r;
    const vtx_skin s = skin();
    random_seed(&r, 41);
    for (int i = 0; i < 2000; i++) {
        const double effusivity = random_log_uniform(&r, 600, 30000), wanted = random_uniform(&r, 255, 300);
        double surface, contact;
        if (vtx_coldest_touchable(&s, effusivity, wanted, &surface) != VTX_OK)
            continue;
        EXPECT_OK(vtx_contact_temperature(s.effusivity, s.temperature, effusivity, surface, &contact));
        EXPECT_WITHIN(contact, wanted, 1e-10);
    }
    double surface;
    /* foam: nothing above 70 K brings the skin to 0 degC */
    EXPECT_STATUS(vtx_coldest_touchable(&s, 30, 273.15, &surface), VTX_NO_SOLUTION);
    /* PA66 reaches 0 degC contact only near -80 degC */
    EXPECT_OK(vtx_coldest_touchable(&s, 682, 273.15, &surface));
    EXPECT_WITHIN(surface, 193, 2);
}

static void odd_skin_and_classes_are_refused(void)
{
    vtx_skin s = skin();
    vtx_touch t;
    s.reserved[3] = -1;
    EXPECT_STATUS(vtx_touch_surface(&s, VTX_CONTACT_METAL, 12000, 300, 1, &t), VTX_BAD_ARGUMENT);
    s = skin();
    s.temperature = 200;
    EXPECT_STATUS(vtx_touch_surface(&s, VTX_CONTACT_METAL, 12000, 300, 1, &t), VTX_OUT_OF_RANGE);
    EXPECT_STATUS(vtx_touch_surface(&s, VTX_MATERIAL_PC, 12000, 300, 1, &t), VTX_BAD_ARGUMENT);
    EXPECT(isnan(t.contact_temperature) && t.criterion == -1);
    EXPECT_STATUS(vtx_skin_init(NULL), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "thresholds fall with time without a step", thresholds_fall_with_time_without_a_step },
    { "metal burns before ceramics and plastics", metal_burns_before_ceramics_and_plastics },
    { "cold metal hurts where plastic does not", cold_metal_hurts_where_plastic_does_not },
    { "hot surfaces pass from none through the band to burn", hot_surfaces_pass_from_none_through_the_band_to_burn },
    { "the coldest touchable surface inverts the contact", the_coldest_touchable_surface_inverts_the_contact },
    { "odd skin and classes are refused", odd_skin_and_classes_are_refused },
};
TEST_SUITE(touch, tests);
