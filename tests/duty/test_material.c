/* Material properties. */
#include <vtx/material.h>

#include "duty_tests.h"

static int material_row(const struct data_row *row, double *actual)
{
    vtx_material_properties m;
    if (vtx_material((int32_t)row->input[0], &m) != VTX_OK)
        return 1;
    if (strcmp(row->quantity, "expansion") == 0)
        return *actual = m.expansion.typical, 1;
    if (strcmp(row->quantity, "density") == 0)
        return *actual = m.density.typical, 1;
    if (strcmp(row->quantity, "deflection_temperature") == 0)
        return *actual = m.deflection_temperature.typical, 1;
    if (strcmp(row->quantity, "conductivity") == 0)
        return *actual = m.conductivity.typical, 1;
    if (strcmp(row->quantity, "heat_capacity") == 0)
        return *actual = m.heat_capacity.typical, 1;
    if (strcmp(row->quantity, "lowest_conductivity") == 0)
        return *actual = m.conductivity.low, 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("material.csv", material_row, 46); }

static void ranges_are_ordered_and_complete_or_absent(void)
{
    for (int32_t material = VTX_MATERIAL_PMMA; material <= VTX_MATERIAL_PU_FOAM; material++) {
        vtx_material_properties m;
        EXPECT_OK(vtx_material(material, &m));
        const vtx_value_range *range = &m.density;
        int missing = 0;
        for (int p = 0; p < 10; p++) {
            const int absent = isnan(range[p].low) != 0;
            EXPECT(absent == (isnan(range[p].typical) != 0) && absent == (isnan(range[p].high) != 0));
            EXPECT(absent || (range[p].low <= range[p].typical && range[p].typical <= range[p].high && range[p].low > 0));
            EXPECT(!absent || !(m.from_memory & (1 << p)));
            missing |= absent;
        }
        EXPECT(m.conductivity.low > 0.01 && m.conductivity.high < 500);
        EXPECT(m.advisories == (missing ? VTX_ADVISORY_FIELD_UNAVAILABLE : 0));
        EXPECT(m.contact_class >= VTX_CONTACT_METAL && m.contact_class <= VTX_CONTACT_PLASTIC);
    }
}

static void temperatures_of_plastics_stand_in_the_order_of_physics(void)
{
    for (int32_t material = VTX_MATERIAL_PMMA; material <= VTX_MATERIAL_PVC; material++) {
        vtx_material_properties m;
        EXPECT_OK(vtx_material(material, &m));
        EXPECT(m.crystalline == !isnan(m.melting_temperature.low));
        if (!isnan(m.light_deflection_temperature.low))
            EXPECT(m.light_deflection_temperature.low > m.deflection_temperature.low);
        if (m.crystalline)
            EXPECT(m.melting_temperature.low > m.deflection_temperature.high);
    }
}

static void contradicted_figures_are_not_used(void)
{
    vtx_material_properties pc, peek, ptfe;
    EXPECT_OK(vtx_material(VTX_MATERIAL_PC, &pc));
    EXPECT_OK(vtx_material(VTX_MATERIAL_PEEK, &peek));
    EXPECT_OK(vtx_material(VTX_MATERIAL_PTFE, &ptfe));
    EXPECT(pc.heat_capacity.low > 1000 && peek.heat_capacity.low > 1000);
    EXPECT_WITHIN(peek.glass_transition.high, 416.15, 1e-9);
    EXPECT(isnan(ptfe.glass_transition.typical));
}

/* sqrt(16.2 8000 500) of stainless steel, by hand. */
static void effusivity_follows_from_the_other_properties(void)
{
    vtx_material_properties m;
    EXPECT_OK(vtx_material(VTX_MATERIAL_STAINLESS_304, &m));
    EXPECT_NEAR(m.effusivity.typical, 8049.844718999243, 1e-14);
    EXPECT_OK(vtx_material(VTX_MATERIAL_RUBBER_FOAM, &m));
    EXPECT(isnan(m.effusivity.typical));
}

static void other_numbers_are_refused(void)
{
    static const int32_t never[] = { 0, -1, 399, 429, 450, INT32_MAX, INT32_MIN };
    for (size_t i = 0; i < sizeof never / sizeof never[0]; i++) {
        vtx_material_properties m;
        EXPECT_STATUS(vtx_material(never[i], &m), VTX_BAD_ARGUMENT);
        EXPECT(isnan(m.density.low) && isnan(m.effusivity.high) && m.from_memory == -1 && m.advisories == -1);
    }
    EXPECT_STATUS(vtx_material(VTX_MATERIAL_PC, NULL), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "ranges are ordered and complete or absent", ranges_are_ordered_and_complete_or_absent },
    { "temperatures of plastics stand in the order of physics", temperatures_of_plastics_stand_in_the_order_of_physics },
    { "contradicted figures are not used", contradicted_figures_are_not_used },
    { "effusivity follows from the other properties", effusivity_follows_from_the_other_properties },
    { "other numbers are refused", other_numbers_are_refused },
};
TEST_SUITE(material, tests);
