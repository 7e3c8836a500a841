/* The tube layer's test program. */
#include <vtx/calibration.h>
#include <vtx/cold_fraction.h>
#include <vtx/moist_air.h>
#include <vtx/separation.h>
#include <vtx/thermometry.h>

#include "../harness/harness.h"

extern const struct call_description calls_tube[];
extern const size_t calls_tube_count;
extern const struct test_suite suite_laws, suite_separation, suite_real_separation, suite_setting, suite_cold_fraction;
extern const struct test_suite suite_tube_vector, suite_balance, suite_icing, suite_thermometry, suite_reading, suite_calibration;

static vtx_status make_reading(vtx_reading *r)
{
    const vtx_status status = vtx_reading_init(r);
    r->inlet_pressure = 7e5;
    r->inlet_temperature = 293.15;
    r->humidity_ratio = 5e-4;
    r->cold_pressure = 110000;
    r->cold_temperature = 265;
    r->hot_temperature = 333;
    r->cold_fraction = 0.6;
    r->inlet_mass_flow = 0.01;
    r->cold_mass_flow = 0.006;
    r->ambient_temperature = 295;
    return status;
}

static vtx_status make_calibration(vtx_calibration *calibration)
{
    vtx_reading reading;
    const vtx_status status = make_reading(&reading);
    return status == VTX_OK ? vtx_tube_calibrate(&reading, 1, VTX_AIR_REAL, NULL, 0.95, calibration, NULL) : status;
}

static int make_record(const char *type, void *record)
{
    if (strcmp(type, "vtx_reading") == 0)
        return make_reading(record) == VTX_OK;
    if (strcmp(type, "vtx_calibration") == 0)
        return make_calibration(record) == VTX_OK;
    if (strcmp(type, "vtx_tube") == 0)
        return vtx_tube_init(record) == VTX_OK;
    if (strcmp(type, "vtx_streams") == 0) {
        vtx_tube tube;
        vtx_tube_init(&tube);
        return vtx_tube_separate(&tube, VTX_AIR_REAL, 7e5, 293.15, 2e-3, 101325, 101325, 0.4, record) == VTX_OK;
    }
    if (strcmp(type, "vtx_openings") == 0) {
        vtx_openings *openings = record;
        const vtx_status status = vtx_openings_init(openings);
        openings->inlet_area = 8e-6;
        openings->cold_area = 12e-6;
        openings->hot_area = 6e-6;
        return status == VTX_OK;
    }
    if (strcmp(type, "vtx_probe") == 0) {
        vtx_probe *probe = record;
        const vtx_status status = vtx_probe_init(probe);
        probe->air_speed = 60;
        probe->entrained_share = 0.1;
        probe->stem_share = 0.05;
        probe->unsettled_share = 0.02;
        return status == VTX_OK;
    }
    return 0;
}

static void misuse_and_batch_rules_hold_for_every_call(void)
{
    check_calls(calls_tube, calls_tube_count, "calls_tube.txt", make_record);
}

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(tube_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = { &suite_tube_calls, &suite_laws, &suite_separation,
                                                       &suite_real_separation, &suite_setting, &suite_cold_fraction,
                                                       &suite_tube_vector, &suite_balance, &suite_icing,
                                                       &suite_thermometry, &suite_reading, &suite_calibration };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
