/* Machining: removal, power and heat of cutting. */
#include <vtx/machining.h>
#include <vtx/material.h>

#include "duty_tests.h"

enum { RANDOM_CASES = 5000 };

static int machining_row(const struct data_row *row, double *actual)
{
    const double *in = row->input;
    vtx_cutting_energy energy;
    vtx_heat_partition partition;
    if (strstr(row->quantity, "_energy") || strncmp(row->quantity, "motor_", 6) == 0) {
        if (vtx_specific_cutting_energy((int32_t)in[0], (int32_t)in[1], in[2], in[3], &energy) != VTX_OK)
            return 1;
        *actual = row->quantity[0] == 'c' ? energy.typical : row->quantity[0] == 'l' ? energy.low : row->quantity[0] == 'h' ? energy.high
                : strcmp(row->quantity, "motor_low") == 0 ? energy.motor_low : energy.motor_high;
        return 1;
    }
    if (strcmp(row->quantity, "shear_share_fit") == 0) {
        /* x at a shear angle of 45 degrees */
        if (vtx_orthogonal_heat_partition(in[0], atan(1), 0, 0.75, &partition) == VTX_OK)
            *actual = partition.shear_share_fit;
        return 1;
    }
    if (strcmp(row->quantity, "turning_removal") == 0)
        return vtx_turning_removal(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "bar_turning_removal") == 0)
        return vtx_bar_turning_removal(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "milling_removal") == 0)
        return vtx_milling_removal(in[0], in[1], in[2], in[3], in[4], actual), 1;
    if (strcmp(row->quantity, "drilling_removal") == 0)
        return vtx_drilling_removal(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "grinding_removal") == 0)
        return vtx_grinding_removal(in[0], in[1], in[2], actual), 1;
    if (strcmp(row->quantity, "cutting_power") == 0)
        return vtx_cutting_power(in[0], in[1], actual), 1;
    if (strcmp(row->quantity, "cutting_force") == 0)
        return vtx_cutting_force(in[0], in[1], actual), 1;
    if (strcmp(row->quantity, "thermal_number") == 0)
        return vtx_thermal_number(in[0], in[1], in[2], in[3], in[4], actual), 1;
    return 0;
}

static void published_values_are_reproduced(void) { check_rows("machining.csv", machining_row, 55); }

static int has_grinding_figures(int32_t material)
{
    return material == VTX_MATERIAL_ALUMINIUM || material == VTX_MATERIAL_CAST_IRON || material == VTX_MATERIAL_CARBON_STEEL
        || material == VTX_MATERIAL_ALLOY_STEEL || material == VTX_MATERIAL_TITANIUM || material == VTX_MATERIAL_HIGH_SPEED_STEEL;
}

static void energies_are_ordered_for_every_process_and_material(void)
{
    for (int32_t process = VTX_PROCESS_TURNING; process <= VTX_PROCESS_GRINDING; process++)
        for (int32_t material = VTX_MATERIAL_PMMA; material <= VTX_MATERIAL_HIGH_SPEED_STEEL; material++)
            for (double hardness = 0; hardness <= 450; hardness += 150) {
                vtx_cutting_energy e;
                const vtx_status status = vtx_specific_cutting_energy(process, material, hardness, 0.2e-3, &e);
                const int covered = process == VTX_PROCESS_GRINDING ? has_grinding_figures(material) : material != VTX_MATERIAL_CARBIDE;
                EXPECT_STATUS(status, covered ? VTX_OK : VTX_OUT_OF_RANGE);
                if (status != VTX_OK)
                    continue;
                EXPECT(e.low > 0 && e.low <= e.typical && e.typical <= e.high);
                EXPECT(process == VTX_PROCESS_GRINDING ? isnan(e.motor_low) : e.motor_low <= e.motor_high);
            }
}

static void harder_steel_and_thinner_chips_cost_more(void)
{
    double last = 0;
    vtx_cutting_energy e, thick;
    for (double hardness = 150; hardness <= 300; hardness += 5) {
        EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_TURNING, VTX_MATERIAL_CARBON_STEEL, hardness, 0.25e-3, &e));
        EXPECT(e.typical >= last && e.advisories == 0);
        last = e.typical;
    }
    EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_TURNING, VTX_MATERIAL_CARBON_STEEL, 400, 0.25e-3, &e));
    EXPECT(e.advisories & VTX_ADVISORY_EXTRAPOLATED);
    last = HUGE_VAL;
    for (double thickness = 0.02e-3; thickness < 2e-3; thickness *= 1.1) {
        EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_MILLING, VTX_MATERIAL_STAINLESS_304, 0, thickness, &e));
        EXPECT(e.typical < last && e.low <= e.typical && e.typical <= e.high);
        EXPECT(((e.advisories & VTX_ADVISORY_EXTRAPOLATED) != 0) == (thickness < 0.1e-3 || thickness > 1e-3));
        last = e.typical;
    }
    /* 0.80 at three times the reference thickness, from memory: between the exponents 0.2 and 0.3. */
    EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_MILLING, VTX_MATERIAL_STAINLESS_304, 0, 0.75e-3, &thick));
    EXPECT_NEAR(thick.low, 2.75790291726734e9 * pow(3, -0.3), 1e-12);
    EXPECT_NEAR(thick.high, 1.25 * 2.75790291726734e9 * pow(3, -0.2), 1e-12);
    EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_MILLING, VTX_MATERIAL_STAINLESS_304, 0, 0.125e-3, &e));
    EXPECT_NEAR(e.low, 2.75790291726734e9 * pow(2, 0.2), 1e-12);
    EXPECT_NEAR(e.high, 1.25 * 2.75790291726734e9 * pow(2, 0.3), 1e-12);
    EXPECT(thick.low / 2.75790291726734e9 < 0.80 && thick.high / (1.25 * 2.75790291726734e9) > 0.80);
}

static void unknown_hardness_gives_the_range_of_all_bands(void)
{
    vtx_cutting_energy any, soft, hard;
    EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_TURNING, VTX_MATERIAL_ALLOY_STEEL, 0, 0.25e-3, &any));
    EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_TURNING, VTX_MATERIAL_ALLOY_STEEL, 200, 0.25e-3, &soft));
    EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_TURNING, VTX_MATERIAL_ALLOY_STEEL, 400, 0.25e-3, &hard));
    EXPECT_NEAR(any.low, soft.low, 1e-15);
    EXPECT_NEAR(any.high, hard.high, 1e-15);
}

/* Ghosh and Mallik, example 4.6: the methods give 10 % and 27 % to the work. */
static void methods_of_partition_differ_and_the_range_holds_both(void)
{
    vtx_heat_partition p;
    EXPECT_OK(vtx_orthogonal_heat_partition(41.4495412844037, atan(13.816514 / 41.4495412844037), 0.1, 1, &p));
    EXPECT_WITHIN(p.shear_share_fit, 0.1032, 1e-4);
    EXPECT_WITHIN(p.shear_share_source, 0.27, 0.005);
    EXPECT(p.work_low <= p.shear_share_fit && p.work_high >= p.shear_share_source);
    EXPECT(p.advisories == 0);
}

/* Thermal number 40, shear angle 0.4, rake 0.1, three quarters of the energy in the shear zone: x = 40 tan 0.4 = 16.9117. */
static void shares_follow_from_a_calculation_by_hand(void)
{
    vtx_heat_partition p;
    vtx_cutting_heat heat;
    EXPECT_OK(vtx_orthogonal_heat_partition(40, 0.4, 0.1, 0.75, &p));
    EXPECT_WITHIN(p.shear_share_fit, 0.15 * 0.48618, 1e-5);
    EXPECT_WITHIN(p.shear_share_line, 0.3 - 0.15 * 1.228188, 1e-6);
    /* strain 1/tan 0.4 + tan 0.3 = 2.674559 */
    EXPECT_WITHIN(p.shear_share_source, 1 - 1 / (1 + 1.328 * 0.258581), 1e-6);
    EXPECT_NEAR(p.work_low, 0.75 * p.shear_share_fit, 1e-15);
    EXPECT_NEAR(p.work_high, 0.75 * p.shear_share_source, 1e-15);
    EXPECT_NEAR(p.tool_low, 0.0375, 1e-15);
    EXPECT_NEAR(p.tool_high, 0.0875, 1e-15);
    EXPECT_OK(vtx_cutting_heat_flows(&p, 2000, &heat));
    EXPECT_NEAR(heat.reachable_low, 2000 * (p.tool_low + p.work_low), 1e-14);
    /* Krar, lecture notes: chip and coolant 75 to 80 %, work 10 %, tool 10 %: at most a fifth is left for the jet */
    EXPECT_OK(vtx_handbook_heat_partition(VTX_PROCESS_TURNING, &p));
    EXPECT_OK(vtx_cutting_heat_flows(&p, 2000, &heat));
    EXPECT_NEAR(heat.reachable_high, 400, 1e-12);
    EXPECT_NEAR(heat.chip_low, 1500, 1e-14);
    /* from memory: drilling 20 to 60 %, grinding 60 to 85 % to the work */
    EXPECT_OK(vtx_handbook_heat_partition(VTX_PROCESS_DRILLING, &p));
    EXPECT(p.from_memory == 1);
    EXPECT_NEAR(p.work_low, 0.2, 1e-15);
    EXPECT_NEAR(p.work_high, 0.6, 1e-15);
    EXPECT_OK(vtx_handbook_heat_partition(VTX_PROCESS_GRINDING, &p));
    EXPECT_NEAR(p.work_low, 0.6, 1e-15);
    EXPECT_NEAR(p.work_high, 0.85, 1e-15);
}

static void shares_add_up_for_random_cuts(void)
{
    struct random_state r;
    random_seed(&r, 11);
    for (int i = 0; i < RANDOM_CASES; i++) {
        vtx_heat_partition p;
        vtx_cutting_heat heat;
        const double shear_angle = random_uniform(&r, 0.1, 1.1);
        const vtx_status status = vtx_orthogonal_heat_partition(random_log_uniform(&r, 0.6, 1900), shear_angle,
                                                                random_uniform(&r, -0.3, 0.5), random_uniform(&r, 0, 1), &p);
        EXPECT_OK(status);
        EXPECT_NEAR(p.chip_low + p.tool_high + p.work_high, 1, 1e-14);
        EXPECT_NEAR(p.chip_high + p.tool_low + p.work_low, 1, 1e-14);
        EXPECT(p.work_low >= 0 && p.work_low <= p.work_high && p.chip_low >= 0);
        EXPECT_OK(vtx_cutting_heat_flows(&p, 1000, &heat));
        EXPECT(heat.reachable_low <= heat.reachable_high * (1 + 1e-14) && heat.reachable_high <= 1000);
        EXPECT_WITHIN(heat.reachable_low + heat.chip_high, 1000, 1e-9);
    }
}

static void estimates_that_fall_to_nothing_say_so(void)
{
    vtx_heat_partition p;
    EXPECT_OK(vtx_orthogonal_heat_partition(1500, 0.5, 0.1, 0.75, &p));
    EXPECT(isnan(p.shear_share_fit) && isnan(p.shear_share_line) && p.work_low < 1e-300);
    EXPECT((p.advisories & VTX_ADVISORY_FIELD_UNAVAILABLE) && (p.advisories & VTX_ADVISORY_EXTRAPOLATED));
}

static void handbook_and_cut_combine_to_the_wider_range(void)
{
    vtx_heat_partition cut, book, both;
    EXPECT_OK(vtx_orthogonal_heat_partition(40, 0.32, 0.1, 0.75, &cut));
    EXPECT_OK(vtx_handbook_heat_partition(VTX_PROCESS_TURNING, &book));
    EXPECT_OK(vtx_combined_heat_partition(&cut, &book, &both));
    EXPECT(both.work_low <= cut.work_low && both.work_low <= book.work_low);
    EXPECT(both.chip_high >= cut.chip_high && both.chip_high >= book.chip_high);
    EXPECT_NEAR(both.thermal_number, 40, 1e-15);
    EXPECT(both.from_memory == 1 && book.from_memory == 0);
}

static void a_partition_that_loses_heat_is_refused(void)
{
    vtx_heat_partition p;
    vtx_cutting_heat heat;
    EXPECT_OK(vtx_handbook_heat_partition(VTX_PROCESS_GRINDING, &p));
    EXPECT_OK(vtx_cutting_heat_flows(&p, 500, &heat));
    p.work_high = 0.1;
    EXPECT_STATUS(vtx_cutting_heat_flows(&p, 500, &heat), VTX_BAD_ARGUMENT);
    EXPECT_OK(vtx_handbook_heat_partition(VTX_PROCESS_GRINDING, &p));
    p.work_high = 0.7;
    EXPECT_OK(vtx_cutting_heat_flows(&p, 500, &heat));
    p.chip_high = p.chip_low;
    EXPECT_STATUS(vtx_cutting_heat_flows(&p, 500, &heat), VTX_BAD_ARGUMENT);
    EXPECT(isnan(heat.reachable_high));
    EXPECT_STATUS(vtx_handbook_heat_partition(VTX_MATERIAL_PC, &p), VTX_BAD_ARGUMENT);
    EXPECT(isnan(p.chip_low) && p.from_memory == -1);
}

/* Cook by hand: 0.4 2e9 / (7845 486) 40^(1/3). */
static void contact_rise_follows_cook(void)
{
    double rise;
    EXPECT_OK(vtx_cutting_temperature_rise(2e9, 7845, 486, 40, &rise));
    EXPECT_NEAR(rise, 717.59, 1e-4);
}

static void bars_turned_to_nothing_or_outward_are_told_apart(void)
{
    double removal;
    EXPECT_OK(vtx_bar_turning_removal(0.02, 0, 1e-3, &removal));
    EXPECT_NEAR(removal, 3.14159265358979e-7, 1e-14);
    EXPECT_STATUS(vtx_bar_turning_removal(0.02, 0.03, 1e-3, &removal), VTX_BAD_ARGUMENT);
    EXPECT_STATUS(vtx_specific_cutting_energy(VTX_MATERIAL_PC, VTX_PROCESS_MILLING, 0, 1e-4, &(vtx_cutting_energy){ 0 }), VTX_BAD_ARGUMENT);
}

static const struct test_case tests[] = {
    { "published values are reproduced", published_values_are_reproduced },
    { "energies are ordered for every process and material", energies_are_ordered_for_every_process_and_material },
    { "harder steel and thinner chips cost more", harder_steel_and_thinner_chips_cost_more },
    { "unknown hardness gives the range of all bands", unknown_hardness_gives_the_range_of_all_bands },
    { "methods of partition differ and the range holds both", methods_of_partition_differ_and_the_range_holds_both },
    { "shares follow from a calculation by hand", shares_follow_from_a_calculation_by_hand },
    { "shares add up for random cuts", shares_add_up_for_random_cuts },
    { "estimates that fall to nothing say so", estimates_that_fall_to_nothing_say_so },
    { "handbook and cut combine to the wider range", handbook_and_cut_combine_to_the_wider_range },
    { "a partition that loses heat is refused", a_partition_that_loses_heat_is_refused },
    { "contact rise follows Cook", contact_rise_follows_cook },
    { "bars turned to nothing or outward are told apart", bars_turned_to_nothing_or_outward_are_told_apart },
};
TEST_SUITE(machining, tests);
