/* Batch loops that use the vector unit: block by block, each kernel in a variant an instruction set, all to the same bits. Internal.
 *
 * A kernel answers the ordinary items of a block and says which they are; the others take the scalar call, which knows every
 * status. So a kernel may be as narrow as is fast, and bits agree as long as it computes by the scalar call's own formulas:
 * inline, without libm but sqrt, without branches, iterations counted. */
#ifndef VTX_BASE_VECTOR_H
#define VTX_BASE_VECTOR_H

#ifdef VTX_BASE_POLYNOMIAL_H
#error "vector.h comes before the kernels: polynomials are to take the form that vectorises"
#endif

#include "batch.h"
#include "stream.h"

/* Instruction sets need their target attribute and a processor to ask; the choice is an ifunc, which musl does not know and
 * under which the thread sanitizer's run time crashes. */
#if defined(__has_feature)
#if __has_feature(thread_sanitizer)
#define VECTOR_UNDER_THREAD_SANITIZER 1
#endif
#endif
#if defined(__SANITIZE_THREAD__)
#define VECTOR_UNDER_THREAD_SANITIZER 1
#endif
#if defined(__x86_64__) && defined(__GNUC__) && defined(__GLIBC__) && !defined(VECTOR_UNDER_THREAD_SANITIZER)
#define VECTOR_CHOICE 1
#else
#define VECTOR_CHOICE 0
#endif

enum { VECTOR_ITEMS = 128, VECTOR_LANES = 8, VECTOR_INPUTS_MAX = 6, VECTOR_OUTPUTS_MAX = 10 };

/* Columns of one block, whole vectors: items beyond the last repeat it. */
struct vector_block {
    _Alignas(64) double in[VECTOR_INPUTS_MAX][VECTOR_ITEMS];
    double out[VECTOR_OUTPUTS_MAX][VECTOR_ITEMS];
    int64_t ordinary[VECTOR_ITEMS]; /* 1: out holds the answer, status OK; 0: the scalar call is to give it */
    size_t n;                       /* a multiple of VECTOR_LANES */
    const void *record;             /* the parameter record that all items share, aligned anyhow; null for calls without */
};

typedef void vector_kernel(struct vector_block *block);

/* Writes the block's items from `at` on to the items from i on of the outputs, field by field: a record put together first would be
 * read back before it is written. */
typedef void vector_store(const struct batch *batch, const struct vector_block *block, size_t at, size_t i, size_t items);

static inline void put_field(char *record, size_t offset, const void *value, size_t size) { memcpy(record + offset, value, size); }

enum vector_set { VECTOR_PLAIN, VECTOR_AVX2, VECTOR_AVX512F };

/* The best set of this processor, found once when the library is loaded. */
int vector_set(void);

/* A hand-written batch form. */
struct vector_call {
    vector_kernel *kernel[3]; /* by vector_set */
    batch_item *item;         /* the scalar call */
    vector_store *store;      /* null: outputs are the columns, all double */
    size_t record;            /* bytes, where the only output is a record that store writes in full */
};

/* Two ways to write a block's first items as records: through the caches from the item `first` on; or past them, to where the stream
 * stands, for neighbouring records. */
void store_cached(const struct vector_call *call, const struct batch *batch, const struct vector_block *block, size_t first, size_t items);
void store_streamed(const struct vector_call *call, const struct batch *batch, const struct vector_block *block, size_t items,
                    struct stream *stream);

/* batch_run by blocks. A parameter record, if the call has one, is the first input; where it is not the same for all items, or the
 * items are few, batch_run does it. */
vtx_status vector_run(const struct vector_call *call, int has_record, size_t n, const struct batch_input *in, size_t inputs,
                      const struct batch_output *out, size_t outputs, const int32_t *selector, int32_t *status, size_t *failed);

/* The name of a store that tests call too. */
#define VECTOR_RECORDS(name) vtx_private_##name##_records

/* One body under several target attributes, which no function can do: name_plain, name_avx2, name_avx512f from the inline
 * function name_block. Where there is no choice the plain one is all three. */
#if VECTOR_CHOICE
#define VECTOR_DECLARE(name) vector_kernel vtx_private_##name##_plain, vtx_private_##name##_avx2, vtx_private_##name##_avx512f
#define VECTOR_KERNELS(name) { vtx_private_##name##_plain, vtx_private_##name##_avx2, vtx_private_##name##_avx512f }
#define VECTOR_VARIANTS(name) \
    VECTOR_DECLARE(name); \
    __attribute__((flatten)) void vtx_private_##name##_plain(struct vector_block *block) { name##_block(block); } \
    __attribute__((flatten, target("avx2"))) void vtx_private_##name##_avx2(struct vector_block *block) { name##_block(block); } \
    __attribute__((flatten, target("avx512f"))) void vtx_private_##name##_avx512f(struct vector_block *block) { name##_block(block); }
#else
#define VECTOR_DECLARE(name) vector_kernel vtx_private_##name##_plain
#define VECTOR_KERNELS(name) { vtx_private_##name##_plain, vtx_private_##name##_plain, vtx_private_##name##_plain }
#define VECTOR_VARIANTS(name) \
    VECTOR_DECLARE(name); \
    void vtx_private_##name##_plain(struct vector_block *block) { name##_block(block); }
#endif

#endif
