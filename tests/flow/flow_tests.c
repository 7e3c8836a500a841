/* The flow layer's test program. */
#include <vtx/conductance.h>
#include <vtx/isentropic.h>
#include <vtx/jet.h>
#include <vtx/line.h>
#include <vtx/valve.h>

#include "../harness/harness.h"

extern const struct call_description calls_flow[];
extern const size_t calls_flow_count;
extern const struct test_suite suite_bore;
extern const struct test_suite suite_chain;
extern const struct test_suite suite_conductance;
extern const struct test_suite suite_fanno;
extern const struct test_suite suite_flow_coefficient;
extern const struct test_suite suite_friction;
extern const struct test_suite suite_impingement;
extern const struct test_suite suite_isentropic;
extern const struct test_suite suite_jet;
extern const struct test_suite suite_line;
extern const struct test_suite suite_flow_vector;
extern const struct test_suite suite_restriction;
extern const struct test_suite suite_sharp_orifice;
extern const struct test_suite suite_shock;
extern const struct test_suite suite_standard_flow;
extern const struct test_suite suite_valve;

static int make_line(vtx_line *line)
{
    const vtx_status status = vtx_line_init(line);
    line->diameter = 0.0095;
    line->length = 10;
    return status == VTX_OK;
}

static int make_record(const char *type, void *record)
{
    if (strcmp(type, "vtx_gas") == 0)
        return vtx_gas_init(record) == VTX_OK;
    if (strcmp(type, "vtx_component") == 0)
        return vtx_component_init(record) == VTX_OK;
    if (strcmp(type, "vtx_jet") == 0)
        return vtx_jet_init(record) == VTX_OK;
    if (strcmp(type, "vtx_line") == 0)
        return make_line(record);
    if (strcmp(type, "vtx_valve") == 0)
        return vtx_valve_init(record) == VTX_OK;
    return 0;
}

static void misuse_and_batch_rules_hold_for_every_call(void)
{
    check_calls(calls_flow, calls_flow_count, "calls_flow.txt", make_record);
}

static const struct test_case tests[] = {
    { "misuse and batch rules hold for every call", misuse_and_batch_rules_hold_for_every_call },
};
TEST_SUITE(flow_calls, tests);

int main(void)
{
    static const struct test_suite *const suites[] = {
        &suite_flow_calls,
        &suite_bore,
        &suite_chain,
        &suite_conductance,
        &suite_fanno,
        &suite_flow_coefficient,
        &suite_friction,
        &suite_impingement,
        &suite_isentropic,
        &suite_jet,
        &suite_line,
        &suite_flow_vector,
        &suite_restriction,
        &suite_sharp_orifice,
        &suite_shock,
        &suite_standard_flow,
        &suite_valve,
    };
    return run_suites(suites, sizeof suites / sizeof suites[0]);
}
