/* make bench: what the calls without a batch form cost: those that take arrays or text, fill in defaults or look up a table.
 * With a file name as argument the same numbers are added there, a JSON object a line. Under bench/count_instructions: instructions. */
#include <vtx.h>

#include "counting.h"

enum { ITEMS = 16, DAY = 4, MONTHS = 12, STREAMS = 3, READINGS = 12, COOLERS = 5, ELEMENTS = 4, VISITS = 6 };

static size_t failures;
static const char *volatile text_sink;
static volatile int32_t number_sink;

static double result, second, third;
static int32_t code, other_code;
static double varied[ITEMS]; /* 1 and a little, so that nothing can be computed once for all */
static const double level[DAY] = { 85, 92, 97, 80 }, hours[DAY] = { 7200, 10800, 3600, 7200 };
static const double month_temperature[MONTHS] = { 274, 275, 278, 282, 287, 290, 292, 291, 288, 283, 278, 275 };
static double month_humidity[MONTHS];
static const double stream_pressure[STREAMS] = { 7e5, 6e5, 2e5 }, stream_temperature[STREAMS] = { 293, 303, 283 };
static const double stream_humidity[STREAMS] = { 1e-3, 2e-3, 5e-3 }, stream_flow[STREAMS] = { 0.01, 0.02, 0.005 };
static vtx_chain_element elements[ELEMENTS], consumer;
static vtx_chain_state chain;
static vtx_chain_joint joints[ELEMENTS + 1];
static vtx_moist_air mixture;
static vtx_tube tube;
static vtx_reading readings[READINGS];
static vtx_reading_check checks[READINGS];
static vtx_valve_goal valve_goal;
static vtx_settling settling;
static const double settling_time[DAY] = { 0, 30, 60, 90 }, settling_reading[DAY] = { 272.1, 266.4, 264.3, 263.6 };
static vtx_calibration calibration;
static vtx_trend trend;
static const double visit_time[VISITS] = { 0, 2.6e6, 5.2e6, 7.8e6, 1e7, 1.3e7 }, visit_drop[VISITS] = { 12e3, 15e3, 18e3, 21e3, 24e3, 27e3 };
static const double drop_uncertainty[VISITS] = { 400, 400, 400, 500, 500, 500 };
static vtx_job job;
static vtx_cooler coolers[COOLERS];
static vtx_requirements requirements, fresh_requirements;
static vtx_verdict verdicts[COOLERS];
static vtx_chosen_cooler chosen;
static vtx_bore bore;
static vtx_heat_partition partition;
static vtx_material_properties properties;
static vtx_request request;
static vtx_quotation quotation;

static void need(vtx_status status) { failures += status != VTX_OK; }

static void set_readings(void)
{
    vtx_streams streams;
    need(vtx_tube_init(&tube));
    for (int i = 0; i < READINGS; i++) {
        vtx_reading *r = &readings[i];
        need(vtx_reading_init(r));
        r->inlet_pressure = i % 2 ? 7e5 : 4e5;
        r->inlet_temperature = 293.15;
        r->cold_pressure = r->hot_pressure = 101325;
        r->cold_fraction = 0.2 + 0.05 * i;
        need(vtx_tube_separate(&tube, VTX_AIR_REAL, r->inlet_pressure, r->inlet_temperature, 0, 101325, 101325, r->cold_fraction, &streams));
        r->cold_temperature = streams.cold_temperature + (i * 5 % 7 - 3) * 0.2;
        r->hot_temperature = streams.hot_temperature + (i * 3 % 5 - 2) * 0.2;
    }
}

static void set_inputs(void)
{
    for (int i = 0; i < ITEMS; i++)
        varied[i] = 1 + 2e-5 * i;
    for (int i = 0; i < MONTHS; i++)
        month_humidity[i] = 1e-3;
    need(vtx_chain_filter(1e4, 0.012, 8e5, 293.15, 0.5, &elements[0]));
    need(vtx_chain_coupling(0.0072, &elements[1]));
    need(vtx_chain_hose(0.0063, 8, &elements[2]));
    need(vtx_chain_coupling(0.0072, &elements[3]));
    need(vtx_chain_orifice(5e-6, 0.9, &consumer));
    need(vtx_job_init(&job));
    job.supply.pressure = 7e5;
    job.supply.humidity = 276.15;
    job.duty.target_temperature = 313.15;
    for (int i = 0; i < COOLERS; i++) {
        need(vtx_cooler_init(&coolers[i]));
        coolers[i].rated_free_air_flow = 0.002 * (i + 1);
    }
    job.cooler = coolers[COOLERS - 1];
    need(vtx_requirements_init(VTX_QUESTION_TYPICAL, &requirements));
    requirements.capacity = 100;
    set_readings();
}

/* A loop over one call, v a number that varies around 1. */
#define CALL(name, ...) \
    static void name##_loop(size_t n) \
    { \
        size_t bad = 0; \
        for (size_t i = 0; i < n; i++) { \
            const double v = varied[i % ITEMS]; \
            (void)v; \
            bad += name(__VA_ARGS__) != VTX_OK; \
        } \
        failures += bad; \
    }

#define TEXT(name, argument) \
    static void name##_loop(size_t n) \
    { \
        for (size_t i = 0; i < n; i++) \
            text_sink = name argument; \
    }

/* A record that its call fills in. */
#define INIT(type) \
    static void type##_init_loop(size_t n) \
    { \
        static type record; \
        size_t bad = 0; \
        for (size_t i = 0; i < n; i++) \
            bad += type##_init(&record) != VTX_OK; \
        failures += bad; \
    }

TEXT(vtx_version, ())
TEXT(vtx_status_text, ((int32_t)(i % 7)))
TEXT(vtx_advisory_text, ((int32_t)1 << i % 8))
TEXT(vtx_dimension_text, (VTX_DIMENSION_NUMBER + (int32_t)(i % 30)))
TEXT(vtx_unit_symbol, (VTX_DIMENSION_PRESSURE_DIFFERENCE, (int32_t)(i % 4)))
TEXT(vtx_unit_fault_text, (VTX_UNIT_FAULT_NONE + (int32_t)(i % 12)))
TEXT(vtx_bore_name, (VTX_BORE_SCHEDULE_40, (int32_t)(i % 8)))

static void vtx_version_number_loop(size_t n)
{
    for (size_t i = 0; i < n; i++)
        number_sink = vtx_version_number();
}

CALL(vtx_unit_to_si, "kJ/kg", VTX_DIMENSION_SPECIFIC_ENERGY, v, &result)
CALL(vtx_unit_from_si, "kJ/kg", VTX_DIMENSION_SPECIFIC_ENERGY, v, &result)
CALL(vtx_pressure_to_si, "bar(g)", 101325, 6 * v, &result)
CALL(vtx_pressure_from_si, "bar(g)", 101325, 7e5 * v, &result)
CALL(vtx_quantity_read, "600 L/min", VTX_DIMENSION_VOLUME_FLOW, &result)
CALL(vtx_quantity_fault, "600 L/min", VTX_DIMENSION_VOLUME_FLOW, &code)
CALL(vtx_pressure_read, "6.5 bar(g)", 101325, &result)
CALL(vtx_pressure_fault, "6.5 bar(g)", 101325, &code)

CALL(vtx_oil_class_limit, 1 + (int32_t)(i % 3), &result)
CALL(vtx_particle_class_counts, 1 + (int32_t)(i % 3), &result, &second, &third)
CALL(vtx_particle_class_dirt, 1 + (int32_t)(i % 3), &result)
CALL(vtx_particle_class_mass, 6, &result)
CALL(vtx_particle_class_size, 1 + (int32_t)(i % 3), &result)
CALL(vtx_water_class_dew_point, 1 + (int32_t)(i % 3), &result)
CALL(vtx_water_class_liquid, 7, &result)
CALL(vtx_mixed_streams, VTX_AIR_REAL, 1.5e5 * v, STREAMS, stream_pressure, stream_temperature, stream_humidity, stream_flow, &mixture, &result)

CALL(vtx_bore_count, VTX_BORE_SCHEDULE_40, &code)
CALL(vtx_bore_at, VTX_BORE_SCHEDULE_40, (int32_t)(i % 8), &bore)
CALL(vtx_reference_state, VTX_REFERENCE_ISO_8778, &result, &second, &third)
CALL(vtx_chain_mass_flow, elements, ELEMENTS, 7e5 * v, 293.15, 5e5, 293.15, &chain, joints)
CALL(vtx_chain_outlet_pressure, elements, ELEMENTS, 0.008 * v, 7e5, 293.15, &chain, joints)
CALL(vtx_chain_inlet_pressure, elements, ELEMENTS, 0.008 * v, 293.15, 5e5, &chain, joints)
CALL(vtx_chain_feed, elements, ELEMENTS, &consumer, 7e5 * v, 293.15, 101325, &chain, joints)
CALL(vtx_chain_line_diameter, elements, ELEMENTS, 2, 0.008 * v, 7e5, 293.15, 5e5, &result)

CALL(vtx_type_a_uncertainty, visit_drop, VISITS, &result, &second, &third)
CALL(vtx_correlation_of_means, visit_time, visit_drop, VISITS, &result)
CALL(vtx_combined_standard_uncertainty, hours, level, NULL, DAY, &result)
CALL(vtx_combined_covariance, hours, settling_reading, level, NULL, DAY, &result)
CALL(vtx_effective_degrees_of_freedom, hours, level, DAY, &result)
CALL(vtx_trend_fit, visit_time, visit_drop, drop_uncertainty, VISITS, VTX_TREND_EVEN, &trend)
CALL(vtx_tube_calibrate, readings, READINGS, VTX_AIR_REAL, NULL, 0.95, &calibration, checks)

CALL(vtx_coldest_month, VTX_AIR_REAL, 7e5 * v, month_temperature, month_humidity, MONTHS, &result, &code, &other_code)
CALL(vtx_handbook_heat_partition, VTX_PROCESS_TURNING, &partition)
CALL(vtx_material, VTX_MATERIAL_PMMA + (int32_t)(i % 8), &properties)
CALL(vtx_level_sum, level, DAY, &result)
CALL(vtx_osha_dose_of_day, level, hours, DAY, 80 * v, &result)
CALL(vtx_niosh_dose_of_day, level, hours, DAY, &result)
CALL(vtx_daily_exposure_level_of_day, level, hours, DAY, &result)
CALL(vtx_weekly_exposure_level, level, DAY, &result)

CALL(vtx_requirements_init, VTX_QUESTION_TYPICAL, &fresh_requirements)
CALL(vtx_valve_goal_init, VTX_GOAL_COLD_TEMPERATURE, 262 * v, &valve_goal)
CALL(vtx_judge_settling, settling_time, settling_reading, DAY, 0.1, 0, 0.3, &settling)
CALL(vtx_request_init, &job, VTX_SOUGHT_SUPPLY_PRESSURE, VTX_WISHED_CAPACITY, 250 * v, &request)
CALL(vtx_quotation_init, VTX_QUOTED_COLD_TEMPERATURE, VTX_TOLERANCE_UPPER, 262 * v, &quotation)
CALL(vtx_rank_coolers, &job, coolers, COOLERS, NULL, &requirements, verdicts)
CALL(vtx_smallest_cooler, &job, coolers, COOLERS, &requirements, &chosen)

INIT(vtx_air_treatment)
INIT(vtx_chain_element)
INIT(vtx_component)
INIT(vtx_compressor)
INIT(vtx_cooler)
INIT(vtx_cooler_setting)
INIT(vtx_covered_tube)
INIT(vtx_duty)
INIT(vtx_filter)
INIT(vtx_gas)
INIT(vtx_input_uncertainty)
INIT(vtx_jet)
INIT(vtx_job)
INIT(vtx_line)
INIT(vtx_liquid)
INIT(vtx_openings)
INIT(vtx_part)
INIT(vtx_probe)
INIT(vtx_reading)
INIT(vtx_room)
INIT(vtx_service_readings)
INIT(vtx_site)
INIT(vtx_skin)
INIT(vtx_supply)
INIT(vtx_tool)
INIT(vtx_tube)
INIT(vtx_valve)

#define TIMED(name) { #name, name##_loop }

static const struct {
    const char *what;
    timed_loop *loop;
} calls[] = {
    TIMED(vtx_version),
    TIMED(vtx_status_text),
    TIMED(vtx_advisory_text),
    TIMED(vtx_dimension_text),
    TIMED(vtx_unit_symbol),
    TIMED(vtx_unit_fault_text),
    TIMED(vtx_bore_name),
    TIMED(vtx_version_number),
    TIMED(vtx_unit_to_si),
    TIMED(vtx_unit_from_si),
    TIMED(vtx_pressure_to_si),
    TIMED(vtx_pressure_from_si),
    TIMED(vtx_quantity_read),
    TIMED(vtx_quantity_fault),
    TIMED(vtx_pressure_read),
    TIMED(vtx_pressure_fault),
    TIMED(vtx_oil_class_limit),
    TIMED(vtx_particle_class_counts),
    TIMED(vtx_particle_class_dirt),
    TIMED(vtx_particle_class_mass),
    TIMED(vtx_particle_class_size),
    TIMED(vtx_water_class_dew_point),
    TIMED(vtx_water_class_liquid),
    TIMED(vtx_mixed_streams),
    TIMED(vtx_bore_count),
    TIMED(vtx_bore_at),
    TIMED(vtx_reference_state),
    TIMED(vtx_chain_mass_flow),
    TIMED(vtx_chain_outlet_pressure),
    TIMED(vtx_chain_inlet_pressure),
    TIMED(vtx_chain_feed),
    TIMED(vtx_chain_line_diameter),
    TIMED(vtx_type_a_uncertainty),
    TIMED(vtx_correlation_of_means),
    TIMED(vtx_combined_standard_uncertainty),
    TIMED(vtx_combined_covariance),
    TIMED(vtx_effective_degrees_of_freedom),
    TIMED(vtx_trend_fit),
    TIMED(vtx_tube_calibrate),
    TIMED(vtx_coldest_month),
    TIMED(vtx_handbook_heat_partition),
    TIMED(vtx_material),
    TIMED(vtx_level_sum),
    TIMED(vtx_osha_dose_of_day),
    TIMED(vtx_niosh_dose_of_day),
    TIMED(vtx_daily_exposure_level_of_day),
    TIMED(vtx_weekly_exposure_level),
    TIMED(vtx_requirements_init),
    TIMED(vtx_valve_goal_init),
    TIMED(vtx_judge_settling),
    TIMED(vtx_request_init),
    TIMED(vtx_rank_coolers),
    TIMED(vtx_smallest_cooler),
    TIMED(vtx_air_treatment_init),
    TIMED(vtx_chain_element_init),
    TIMED(vtx_component_init),
    TIMED(vtx_compressor_init),
    TIMED(vtx_cooler_init),
    TIMED(vtx_cooler_setting_init),
    TIMED(vtx_covered_tube_init),
    TIMED(vtx_duty_init),
    TIMED(vtx_filter_init),
    TIMED(vtx_gas_init),
    TIMED(vtx_input_uncertainty_init),
    TIMED(vtx_jet_init),
    TIMED(vtx_job_init),
    TIMED(vtx_line_init),
    TIMED(vtx_liquid_init),
    TIMED(vtx_openings_init),
    TIMED(vtx_part_init),
    TIMED(vtx_probe_init),
    TIMED(vtx_quotation_init),
    TIMED(vtx_reading_init),
    TIMED(vtx_room_init),
    TIMED(vtx_service_readings_init),
    TIMED(vtx_site_init),
    TIMED(vtx_skin_init),
    TIMED(vtx_supply_init),
    TIMED(vtx_tool_init),
    TIMED(vtx_tube_init),
    TIMED(vtx_valve_init),
};

static void time_call(const char *what, timed_loop *loop, FILE *json)
{
    const double unit = time_loop(exp_loop).median;
    const struct timing t = time_loop(loop);
    printf("%-56s", what);
    if (json)
        fprintf(json, "{ \"call\": \"%s\", \"exp_ns\": %.4g", what, unit);
    print_timing("scalar", &t, unit, json);
    printf("\n");
    if (json)
        fprintf(json, ", \"failed\": false }\n");
}

int main(int argc, char **argv)
{
    FILE *json = argc > 1 ? fopen(argv[1], "a") : NULL;
    set_inputs();
    for (size_t i = 0; i < sizeof calls / sizeof calls[0] && !failures; i++) {
        if (counting())
            count_loop(calls[i].what, calls[i].loop, ITEMS);
        else
            time_call(calls[i].what, calls[i].loop, json);
        if (failures)
            fprintf(stderr, "%s failed\n", calls[i].what);
    }
    if (json)
        fclose(json);
    return failures != 0;
}
