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

static void separate(const vtx_tube *tube, const double *fraction, size_t n, vtx_streams *streams)
{
    static const double pressure = 7e5, temperature = 293.15, dry = 0, ambient = 101325;
    EXPECT_OK(vtx_tube_separate_batch(n, tube, 0, VTX_AIR_IDEAL, &pressure, 0, &temperature, 0, &dry, 0, &ambient, 0, &ambient, 0, fraction,
                                      sizeof *fraction, streams, sizeof *streams, NULL, NULL));
}

/* Long columns and records are fetched ahead. */
static void a_long_batch_gives_the_bits_of_its_pieces(void)
{
    enum { ITEMS = (1 << 18) + 1001, PIECE = 1000 };
    double *const fraction = malloc(ITEMS * sizeof *fraction);
    vtx_streams *const whole = malloc(ITEMS * sizeof *whole), *const piece = malloc(PIECE * sizeof *piece);
    struct random_state r;
    vtx_tube tube;
    int same = 1;
    random_seed(&r, 82);
    EXPECT_OK(vtx_tube_init(&tube));
    for (size_t i = 0; i < ITEMS; i++)
        fraction[i] = random_uniform(&r, 0.05, 0.95);
    separate(&tube, fraction, ITEMS, whole);
    for (size_t i = 0; i < ITEMS; i += PIECE) {
        const size_t n = ITEMS - i < PIECE ? ITEMS - i : PIECE;
        separate(&tube, fraction + i, n, piece);
        same = same && memcmp(whole + i, piece, n * sizeof *piece) == 0;
    }
    EXPECT(same);
    free(fraction);
    free(whole);
    free(piece);
}

static const struct test_case tests[] = {
    { "every variant gives the scalar bits", every_variant_gives_the_scalar_bits },
    { "a long batch gives the bits of its pieces", a_long_batch_gives_the_bits_of_its_pieces },
};
TEST_SUITE(tube_vector, tests);
