/* Writing past the caches: on x86-64; elsewhere as usual. */
#include "stream.h"

#include <string.h>

#ifdef __x86_64__
#include <emmintrin.h>

static void write_lines(char *to, const char *from, size_t bytes)
{
    for (size_t i = 0; i < bytes; i += sizeof(__m128i))
        _mm_stream_si128((__m128i *)(void *)(to + i), _mm_load_si128((const __m128i *)(const void *)(from + i)));
}

static void keep_order(void) { _mm_sfence(); }
#else
static void write_lines(char *to, const char *from, size_t bytes) { memcpy(to, from, bytes); }
static void keep_order(void) { }
#endif

void stream_begin(struct stream *s, void *to)
{
    s->to = to;
    s->first = s->held = (uintptr_t)to % STREAM_LINE;
}

/* As usual, because a part of a line past the caches costs more than a fetched line. */
static void write_part(struct stream *s, size_t end)
{
    memcpy(s->to, s->room + s->first, end - s->first);
    s->to += end - s->first;
    s->first = end;
}

void stream_add(struct stream *s, size_t bytes)
{
    s->held += bytes;
    if (s->held < STREAM_LINE)
        return;
    if (s->first > 0)
        write_part(s, STREAM_LINE);
    const size_t whole = s->held / STREAM_LINE * STREAM_LINE;
    write_lines(s->to, s->room + s->first, whole - s->first);
    s->to += whole - s->first;
    s->held -= whole;
    s->first = 0;
    memcpy(s->room, s->room + whole, STREAM_LINE);
}

void stream_end(struct stream *s)
{
    write_part(s, s->held);
    keep_order();
}
