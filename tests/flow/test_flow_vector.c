/* The flow layer's batch forms on the vector unit. */
#include <vtx/restriction.h>

#include "../harness/vectors.h"

extern const struct call_description calls_flow[];
extern const size_t calls_flow_count;

VECTOR_DECLARE(orifice);

/* Area, coefficient, pressures and temperature. */
#define SUBSONIC { 1e-12, 1 }, { 0.01, 1.1 }, { 7.9e5, 8e5 }, { 200, 500 }, { 5e5, 7.9e5 }
#define CHOKED { 1e-12, 1 }, { 0.01, 1.1 }, { 7e5, 9e5 }, { 200, 500 }, { 1e3, 3e5 }
#define ANY { 1e-12, 1 }, { 0.01, 1.1 }, { 4e5, 4e5 }, { 200, 500 }, { 1e3, 4e5 }

static void every_variant_gives_the_scalar_bits(void)
{
    static vtx_gas air, other, bad;
    EXPECT_OK(vtx_gas_init(&air));
    other = bad = air;
    other.heat_capacity_ratio = 1.29;
    bad.molar_mass = -1;
    const struct vector_test tests[] = {
        { "vtx_orifice_mass_flow", { 0 }, &air, { SUBSONIC }, VECTOR_KERNELS(orifice), 100 },
        { "vtx_orifice_mass_flow", { 0 }, &air, { CHOKED }, VECTOR_KERNELS(orifice), 100 },
        { "vtx_orifice_mass_flow", { 0 }, &other, { ANY }, VECTOR_KERNELS(orifice), 100 },
        { "vtx_orifice_mass_flow", { 0 }, &bad, { ANY }, VECTOR_KERNELS(orifice), 0 },
    };
    check_vectors(calls_flow, calls_flow_count, tests, sizeof tests / sizeof tests[0]);
}

static const struct test_case tests[] = {
    { "every variant gives the scalar bits", every_variant_gives_the_scalar_bits },
};
TEST_SUITE(flow_vector, tests);
