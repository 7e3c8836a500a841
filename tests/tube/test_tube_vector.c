/* The tube layer's batch forms on the vector unit. */
#include <vtx/moist_air.h>
#include <vtx/separation.h>

#include "../harness/vectors.h"

extern const struct call_description calls_tube[];
extern const size_t calls_tube_count;

VECTOR_DECLARE(separation);

/* Inlet pressure and temperature, humidity ratio, cold and hot pressure, cold fraction. */
#define WIDE { 5e5, 1e7 }, { 200, 400 }, { 0, 0.2 }, { 1e3, 5e5 }, { 1e3, 5e5 }, { 0, 1 }
#define NARROW { 5e5, 5.0001e5 }, { 290, 300 }, { 0, 0 }, { 4.99e5, 5e5 }, { 4.99e5, 5e5 }, { 0, 1 }
#define AT_REST { 5e5, 5e5 }, { 290, 300 }, { 0, 0 }, { 5e5, 5e5 }, { 5e5, 5e5 }, { 0, 1 }

static void every_variant_gives_the_scalar_bits(void)
{
    static vtx_tube plain, leaking, bad;
    EXPECT_OK(vtx_tube_init(&plain));
    leaking = bad = plain;
    leaking.cold_leak = 0.1;
    bad.peak_efficiency = 2;
    const struct vector_test tests[] = {
        { "vtx_tube_separate", { VTX_AIR_IDEAL }, &plain, { WIDE }, VECTOR_KERNELS(separation), 100 },
        { "vtx_tube_separate", { VTX_AIR_IDEAL }, &plain, { NARROW }, VECTOR_KERNELS(separation), 100 },
        { "vtx_tube_separate", { VTX_AIR_IDEAL }, &plain, { AT_REST }, VECTOR_KERNELS(separation), 100 },
        { "vtx_tube_separate", { VTX_AIR_IDEAL }, &leaking, { WIDE }, VECTOR_KERNELS(separation), 0 },
        { "vtx_tube_separate", { VTX_AIR_IDEAL }, &bad, { WIDE }, VECTOR_KERNELS(separation), 0 },
    };
    check_vectors(calls_tube, calls_tube_count, tests, sizeof tests / sizeof tests[0]);
}

static const struct test_case tests[] = {
    { "every variant gives the scalar bits", every_variant_gives_the_scalar_bits },
};
TEST_SUITE(tube_vector, tests);
