/* The tube layer's batch forms on the vector unit. */
#include <vtx/moist_air.h>
#include <vtx/separation.h>

#include "../harness/vectors.h"

extern const struct call_description calls_tube[];
extern const size_t calls_tube_count;

VECTOR_DECLARE(separation);
vector_store VECTOR_RECORDS(separation);

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

/* A block of ordinary items. */
static void make_block(const vtx_tube *tube, struct vector_block *block)
{
    static const double range[][2] = { WIDE };
    vector_kernel *const kernel[] = VECTOR_KERNELS(separation);
    struct random_state r;
    random_seed(&r, 83);
    memset(block, 0, sizeof *block);
    block->record = tube;
    block->n = VECTOR_ITEMS;
    for (size_t k = 0; k < sizeof range / sizeof range[0]; k++)
        for (size_t i = 0; i < VECTOR_ITEMS; i++)
            block->in[k][i] = random_uniform(&r, range[k][0], range[k][1]);
    kernel[VECTOR_PLAIN](block);
}

static void records_past_the_caches_are_those_through_them(void)
{
    enum { ROOM = (VECTOR_ITEMS + 2) * sizeof(vtx_streams) };
    static const struct vector_call call = { .store = VECTOR_RECORDS(separation), .record = sizeof(vtx_streams) };
    static struct vector_block block;
    static char cached[ROOM], streamed[ROOM];
    vtx_tube tube;
    int same = 1;
    EXPECT_OK(vtx_tube_init(&tube));
    make_block(&tube, &block);
    for (size_t start = 0; start <= STREAM_LINE; start++)
        for (size_t items = 0; items <= VECTOR_ITEMS; items += items < 3 ? 1 : 25) {
            struct stream stream;
            const struct batch_output out = { cached + start, sizeof(vtx_streams), 0 };
            const struct batch batch = { .out = &out };
            memset(cached, 0x5a, ROOM);
            memset(streamed, 0x5a, ROOM);
            store_cached(&call, &batch, &block, 0, items);
            stream_begin(&stream, streamed + start);
            store_streamed(&call, &batch, &block, items, &stream);
            stream_end(&stream);
            same = same && memcmp(cached, streamed, ROOM) == 0;
        }
    EXPECT(same);
}

/* The number of items that failed. */
static size_t separate(const vtx_tube *tube, const double *fraction, size_t n, void *streams, ptrdiff_t stride, int32_t *status)
{
    static const double pressure = 7e5, temperature = 293.15, dry = 0, ambient = 101325;
    size_t failed = n;
    const vtx_status answer = vtx_tube_separate_batch(n, tube, 0, VTX_AIR_IDEAL, &pressure, 0, &temperature, 0, &dry, 0, &ambient, 0, &ambient,
                                                      0, fraction, sizeof *fraction, streams, stride, status, &failed);
    EXPECT(answer == (failed ? VTX_PARTIAL : VTX_OK));
    return failed;
}

/* Long columns are fetched ahead, and long records go past the caches, but for blocks of which an item fails. */
static void compare_with_pieces(ptrdiff_t stride, size_t start, int some_fail)
{
    enum { ITEMS = (1 << 18) + 1001, PIECE = 1000 };
    const size_t bytes = ITEMS * (size_t)stride + start + 1;
    double *const fraction = malloc(ITEMS * sizeof *fraction);
    int32_t *const status = malloc(ITEMS * sizeof *status), *const piece_status = malloc(ITEMS * sizeof *status);
    char *const whole = malloc(bytes), *const pieces = malloc(bytes);
    struct random_state r;
    vtx_tube tube;
    size_t failed = 0, expected_failed = 0;
    random_seed(&r, 82);
    EXPECT_OK(vtx_tube_init(&tube));
    memset(whole, 0x5a, bytes);
    memset(pieces, 0x5a, bytes);
    for (size_t i = 0; i < ITEMS; i++) {
        fraction[i] = some_fail && random_uniform(&r, 0, 1) < 1e-3 ? (double)NAN : random_uniform(&r, 0.05, 0.95);
        expected_failed += fraction[i] != fraction[i];
    }
    EXPECT(separate(&tube, fraction, ITEMS, whole + start, stride, status) == expected_failed);
    for (size_t i = 0; i < ITEMS; i += PIECE)
        failed += separate(&tube, fraction + i, ITEMS - i < PIECE ? ITEMS - i : PIECE, pieces + start + i * (size_t)stride, stride, piece_status + i);
    EXPECT(failed == expected_failed && memcmp(whole, pieces, bytes) == 0 && memcmp(status, piece_status, ITEMS * sizeof *status) == 0);
    free(fraction);
    free(status);
    free(piece_status);
    free(whole);
    free(pieces);
}

static void a_long_batch_gives_the_bits_of_its_pieces(void)
{
    compare_with_pieces(sizeof(vtx_streams), 0, 0);
    compare_with_pieces(sizeof(vtx_streams), 8, 1);
    compare_with_pieces(sizeof(vtx_streams), 3, 1);
    compare_with_pieces(sizeof(vtx_streams) + 8, 8, 1);
}

static const struct test_case tests[] = {
    { "every variant gives the scalar bits", every_variant_gives_the_scalar_bits },
    { "records past the caches are those through them", records_past_the_caches_are_those_through_them },
    { "a long batch gives the bits of its pieces", a_long_batch_gives_the_bits_of_its_pieces },
};
TEST_SUITE(tube_vector, tests);
