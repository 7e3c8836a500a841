/* Writing past the caches what is longer than they are: a usual store fetches the line it writes to, which takes as long as writing it
 * back. Internal. */
#ifndef VTX_BASE_STREAM_H
#define VTX_BASE_STREAM_H

#include <stddef.h>
#include <stdint.h>

#include "private_names.h"

enum { STREAM_LINE = 64, STREAM_BYTES_MAX = 2048 };

/* Neighbouring bytes, gathered in a room that stays in the cache and written by whole lines. */
struct stream {
    char *to;           /* where the room's first byte of ours belongs */
    size_t first, held; /* the bytes of ours in the room; first is above 0 only in the line in which the stream begins */
    _Alignas(STREAM_LINE) char room[STREAM_LINE + STREAM_BYTES_MAX];
};

/* From a place of any alignment on. */
void stream_begin(struct stream *s, void *to);

/* Where to put the next bytes, STREAM_BYTES_MAX at most; stream_add takes them. */
static inline char *stream_place(struct stream *s) { return s->room + s->held; }
void stream_add(struct stream *s, size_t bytes);

/* Writes the rest. Whatever the thread stores later is seen later by others too. */
void stream_end(struct stream *s);

#endif
