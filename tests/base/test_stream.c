/* Writing past the caches: the bytes of usual stores, and no others. */
#include "../../libvtx/base/stream.h"
#include "../harness/harness.h"

enum { BYTES = 3 * STREAM_BYTES_MAX, GUARD = 2 * STREAM_LINE };

static unsigned char written[GUARD + BYTES + GUARD], expected[GUARD + BYTES + GUARD];

static size_t drawn_size(struct random_state *r, size_t most)
{
    const size_t size = (size_t)random_uniform(r, 0, random_uniform(r, 0, 1) < 0.5 ? STREAM_LINE : STREAM_BYTES_MAX + 1);
    return size < most ? size : most;
}

/* Pieces of random sizes, none and the largest among them; now and then the stream ends and begins anew where it stood. */
static void write_pieces(struct random_state *r, size_t start, size_t bytes)
{
    struct stream s;
    size_t at = 0;
    stream_begin(&s, written + start);
    while (at < bytes) {
        const size_t size = drawn_size(r, bytes - at);
        memcpy(stream_place(&s), expected + start + at, size);
        stream_add(&s, size);
        at += size;
        if (random_uniform(r, 0, 1) < 0.1) {
            stream_end(&s);
            stream_begin(&s, written + start + at);
        }
    }
    stream_end(&s);
}

static void pieces_arrive_whole_and_nothing_beside_them_changes(void)
{
    struct random_state r;
    int same = 1;
    random_seed(&r, 310);
    for (int round = 0; round < 2000; round++) {
        const size_t start = GUARD + (size_t)round % (STREAM_LINE + 1);
        const size_t bytes = (size_t)random_uniform(&r, 0, round % 2 ? 3 * STREAM_LINE : BYTES - STREAM_LINE);
        memset(written, 0x5a, sizeof written);
        memset(expected, 0x5a, sizeof expected);
        for (size_t i = 0; i < bytes; i++)
            expected[start + i] = (unsigned char)random_uniform(&r, 0, 256);
        write_pieces(&r, start, bytes);
        same = same && memcmp(written, expected, sizeof written) == 0;
    }
    EXPECT(same);
}

static const struct test_case tests[] = {
    { "pieces arrive whole and nothing beside them changes", pieces_arrive_whole_and_nothing_beside_them_changes },
};
TEST_SUITE(stream, tests);
