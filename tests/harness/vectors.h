/* Batch forms on the vector unit: every variant and every layout to the bits of the scalar call. */
#ifndef VTX_TESTS_VECTORS_H
#define VTX_TESTS_VECTORS_H

#include "../../libvtx/base/vector.h"
#include "harness.h"

enum { VECTOR_NUMBERS_MAX = 8 };

struct vector_test {
    const char *call;
    int32_t selector[4];
    const void *record;                     /* null for a call without */
    double range[VECTOR_NUMBERS_MAX][2];    /* of the numbers in the order of the call; a zero width holds one at its value */
    vector_kernel *kernel[3];
    int hits;                               /* items in a hundred, at least, that a kernel must answer itself within the ranges */
};

/* For lengths around the block's and all layouts: random numbers in and a little beyond the ranges, with NaN, infinities, zero and
 * others among them. The kernels are compared with each other as far as the processor has them. */
void check_vectors(const struct call_description *calls, size_t count, const struct vector_test *tests, size_t tests_count);

#endif
