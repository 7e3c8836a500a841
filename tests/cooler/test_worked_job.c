/* The job worked by hand in worked_job.md. */
#include <vtx/air_cost.h>
#include <vtx/compressor.h>
#include <vtx/dead_end.h>
#include <vtx/exposure.h>
#include <vtx/insulation.h>
#include <vtx/machining.h>
#include <vtx/material.h>
#include <vtx/noise.h>
#include <vtx/part.h>
#include <vtx/transient.h>

#include "sample_job.h"

static const double cold_outlet = 265.0575608, free_air = 0.5458206696 / 60;

static void the_library_gives_what_the_pocket_calculator_gave(void)
{
    vtx_job job;
    vtx_operating_point p;
    vtx_work w;
    double rated, area;
    vtx_job_init(&job);
    job.cooler.rated_free_air_flow = 0.6 / 60;
    job.cooler.reference_humidity = 0;
    job.supply.pressure = 7.5e5;
    job.supply.temperature = 298.15;
    job.supply.humidity_kind = VTX_SUPPLY_HUMIDITY_RATIO;
    job.supply.humidity = 0;
    job.setting.model = VTX_AIR_IDEAL;
    job.setting.cold_fraction = 0.5;
    job.duty.target_temperature = 318.15;
    EXPECT_OK(vtx_chain_conductance(5e-8, 0.3, &job.line[0]));
    job.elements = 1;
    EXPECT_OK(vtx_cooler_rated_mass_flow(&job.cooler, &rated));
    EXPECT_OK(vtx_cooler_inlet_area(&job.cooler, &area));
    EXPECT_OK(vtx_job_evaluate(&job, &p, &w));
    /* Every value: tests/cooler/worked_job.md. */
    EXPECT_NEAR(rated, 0.01188846395, 1e-6);
    EXPECT_NEAR(area, 6.295598245e-6, 1e-6);
    EXPECT_NEAR(p.inlet_pressure, 733941.0385, 1e-6);
    EXPECT_NEAR(p.mass_flow, 0.01081494893, 1e-6);
    EXPECT_NEAR(p.cold_temperature, 265.0575608, 1e-6);
    EXPECT_NEAR(p.hot_temperature, 331.2424392, 1e-6);
    EXPECT_NEAR(p.capacity, 180.0201992, 1e-6);
    EXPECT_NEAR(p.target_capacity, 288.8185854, 1e-6);
    EXPECT_NEAR(60 * p.free_air_flow, 0.5458206696, 1e-6);
    EXPECT_NEAR(p.entropy_generation, 562.1512994, 1e-6);
    EXPECT_NEAR(p.chamber_pressure, 304242.5252, 1e-6);
    EXPECT_NEAR(p.valve_opening, 1.480179007, 1e-6);
    EXPECT_NEAR(w.line_drop, 7.5e5 - 733941.0385, 1e-6);
    EXPECT(p.advisories & VTX_ADVISORY_CHOKED);
}

static void the_cut_and_the_part_are_those_of_the_pocket_calculator(void)
{
    double removal, power, heat, growth, face;
    vtx_cutting_energy energy;
    vtx_heat_partition partition;
    vtx_cutting_heat flows;
    vtx_part part;
    vtx_cooling_time time;
    EXPECT_OK(vtx_turning_removal(3, 0.2e-3, 1e-3, &removal));
    EXPECT_OK(vtx_specific_cutting_energy(VTX_PROCESS_TURNING, VTX_MATERIAL_ALUMINIUM, 75, 0.2e-3, &energy));
    EXPECT_OK(vtx_cutting_power(energy.typical, removal, &power));
    EXPECT_OK(vtx_handbook_heat_partition(VTX_PROCESS_TURNING, &partition));
    EXPECT_OK(vtx_cutting_heat_flows(&partition, power, &flows));
    EXPECT_NEAR(removal, 6e-7, 1e-6);
    EXPECT_NEAR(energy.typical, 7.29031823e8, 1e-6);
    EXPECT_NEAR(power, 437.4190938, 1e-6);
    EXPECT_NEAR(flows.work_low, 43.74190938, 1e-6);
    EXPECT_NEAR(flows.tool_high, 43.74190938, 1e-6);
    EXPECT_OK(vtx_cooling_duty(0.2, 896, 340, 318.15, 60, &heat));
    EXPECT_NEAR(heat, 65.25866667, 1e-6);
    EXPECT_OK(vtx_part_init(&part));
    part.mass = 0.2;
    part.heat_capacity = 896;
    part.area = 0.02;
    part.conductivity = 167;
    part.half_thickness = 0.005;
    EXPECT_OK(vtx_part_cooling_time(&part, 150, cold_outlet, 340, 318.15, &time));
    EXPECT_NEAR(time.time, 20.62005467, 1e-6);
    EXPECT_OK(vtx_thermal_growth(23.6e-6, 0.1, 25, &growth));
    EXPECT_NEAR(growth, 5.9e-5, 1e-6);
    EXPECT_OK(vtx_face_temperature(5e4, 400, cold_outlet, 0.9, 293.15, &face));
    EXPECT_NEAR(face, 388.1051616, 1e-6);
}

static void frost_and_cover_are_those_of_the_pocket_calculator(void)
{
    vtx_job job;
    vtx_operating_point p;
    double cover, effusivity, contact;
    vtx_job_init(&job);
    job.cooler.rated_free_air_flow = 0.6 / 60;
    job.supply.pressure = 7.5e5;
    job.supply.humidity = 276.15;
    job.setting.model = VTX_AIR_IDEAL;
    job.duty.target_temperature = 318.15;
    EXPECT_OK(vtx_job_evaluate(&job, &p, NULL));
    EXPECT_NEAR(p.humidity_ratio, 6.292834603e-4, 1e-6);
    EXPECT_NEAR(p.cold_saturation_point, 253.0667267, 1e-6);
    EXPECT_OK(vtx_insulation_thickness(0.006, 0.04, cold_outlet, 9, 293.15, 283.15, &cover));
    EXPECT_NEAR(cover, 5.83592155e-3, 1e-6);
    EXPECT_OK(vtx_thermal_effusivity(16.2, 4.05e-6, &effusivity));
    EXPECT_OK(vtx_contact_temperature(1715, 305.15, effusivity, cold_outlet, &contact));
    EXPECT_NEAR(effusivity, 8049.844719, 1e-6);
    EXPECT_NEAR(contact, 272.0989972, 1e-6);
}

static void noise_and_cost_are_those_of_the_pocket_calculator(void)
{
    double one, level, time, dose, daily, energy, cost, carbon, power, efficiency, pressure;
    vtx_compressor compressor;
    vtx_compressor_duty duty;
    EXPECT_OK(vtx_level_at_distance(88, 1, 1.5, &one));
    EXPECT_OK(vtx_level_of_several(one, 2, &level));
    EXPECT_OK(vtx_niosh_permissible_time(level, &time));
    EXPECT_OK(vtx_niosh_dose(level, 14400, &dose));
    EXPECT_OK(vtx_daily_exposure_level(level, 14400, &daily));
    EXPECT_NEAR(level, 87.48847478, 1e-6);
    EXPECT_NEAR(time, 16206.55239, 1e-6);
    EXPECT_NEAR(dose, 0.8885295067, 1e-6);
    EXPECT_NEAR(daily, 84.47817482, 1e-6);
    EXPECT_OK(vtx_air_use_cost(390000, free_air, 5.4e6, 0.2 / 3.6e6, 0.4 / 3.6e6, &energy, &cost, &carbon));
    EXPECT_NEAR(energy, 5321.751529 * 3.6e6, 1e-6);
    EXPECT_NEAR(cost, 1064.350306, 1e-6);
    EXPECT_NEAR(carbon, 2128.700611, 1e-6);
    EXPECT_OK(vtx_isentropic_compression_power(1.4, 1e5, 8e5, free_air, &power));
    EXPECT_OK(vtx_package_efficiency(1.4, 1e5, 8e5, free_air, 390000 * free_air, &efficiency));
    EXPECT_NEAR(power, 2583.610891, 1e-6);
    EXPECT_NEAR(efficiency, 0.7282219615, 1e-6);
    EXPECT_OK(vtx_compressor_init(&compressor));
    compressor.free_air_delivery = 2.0 / 60;
    compressor.full_load_power = 13e3;
    compressor.leakage = 0.2 / 60;
    compressor.receiver_volume = 0.5;
    EXPECT_OK(vtx_compressor_at_demand(&compressor, free_air + 0.7 / 60, &duty));
    EXPECT_NEAR(duty.duty_cycle, 0.7229103348, 1e-6);
    EXPECT_NEAR(duty.unloaded_time, 10.37473064, 1e-6);
    EXPECT_OK(vtx_dead_end_pressure(1.4, 6.295598245e-6, 8.003940331e-6, 733941.0385, 101325, &pressure));
    EXPECT_NEAR(pressure, 528192.036, 1e-6);
}

static const struct test_case tests[] = {
    { "the library gives what the pocket calculator gave", the_library_gives_what_the_pocket_calculator_gave },
    { "the cut and the part are those of the pocket calculator", the_cut_and_the_part_are_those_of_the_pocket_calculator },
    { "frost and cover are those of the pocket calculator", frost_and_cover_are_those_of_the_pocket_calculator },
    { "noise and cost are those of the pocket calculator", noise_and_cost_are_those_of_the_pocket_calculator },
};
TEST_SUITE(worked_job, tests);
