/* The duty layer's test program. */
#include "duty_tests.h"

extern const struct call_description calls_duty[];
extern const size_t calls_duty_count;
extern const struct test_suite suite_cold_tube;
extern const struct test_suite suite_compressor;
extern const struct test_suite suite_convection;
extern const struct test_suite suite_dead_end;
extern const struct test_suite suite_drying;
extern const struct test_suite suite_exposure;
extern const struct test_suite suite_filter;
extern const struct test_suite suite_freezing;
extern const struct test_suite suite_insulation;
extern const struct test_suite suite_machining;
extern const struct test_suite suite_material;
extern const struct test_suite suite_noise;
extern const struct test_suite suite_part;
extern const struct test_suite suite_surface;
extern const struct test_suite suite_tool;
extern const struct test_suite suite_touch;
extern const struct test_suite suite_transient;

static int make_record(const char *type, void *record)
{
    if (strcmp(type, "vtx_compressor") == 0) {
        const vtx_compressor compressor = sample_compressor();
        memcpy(record, &compressor, sizeof compressor);
        return 1;
    }
    if (strcmp(type, "vtx_filter") == 0) {
        const vtx_filter filter = sample_filter();
        memcpy(record, &filter, sizeof filter);
        return 1;
    }
    if (strcmp(type, "vtx_air_treatment") == 0) {
        const vtx_air_treatment treatment = sample_treatment();
        memcpy(record, &treatment, sizeof treatment);
        return 1;
    }
    if (strcmp(type, "vtx_part") == 0) {
        const vtx_part part = sample_part();
        memcpy(record, &part, sizeof part);
        return 1;
    }
    if (strcmp(type, "vtx_tool") == 0) {
        const vtx_tool tool = sample_tool();
        memcpy(record, &tool, sizeof tool);
        return 1;
    }
    if (strcmp(type, "vtx_room") == 0) {
        const vtx_room room = sample_room();
        memcpy(record, &room, sizeof room);
        return 1;
    }
    if (strcmp(type, "vtx_covered_tube") == 0) {
        const vtx_covered_tube tube = sample_tube();
        memcpy(record, &tube, sizeof tube);
        return 1;
    }
    if (strcmp(type, "vtx_skin") == 0)
        return vtx_skin_init(record) == VTX_OK;
    if (strcmp(type, "vtx_heat_partition") == 0)
        return vtx_handbook_heat_partition(VTX_PROCESS_MILLING, record) == VTX_OK;
    return 0;
}

static void misuse_and_batch_rules_hold_for_every_call(void)
{
    check_calls(calls_duty, calls_duty_count, "calls_duty.txt", make_record);
}

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(duty_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = {
        &suite_duty_calls,
        &suite_cold_tube,
        &suite_compressor,
        &suite_convection,
        &suite_dead_end,
        &suite_drying,
        &suite_exposure,
        &suite_filter,
        &suite_freezing,
        &suite_insulation,
        &suite_machining,
        &suite_material,
        &suite_noise,
        &suite_part,
        &suite_surface,
        &suite_tool,
        &suite_touch,
        &suite_transient,
    };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
