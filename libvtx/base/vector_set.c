/* The choice of the instruction set, in a file of its own so that a program which times another choice can bring it. */
#include "vector.h"

#if VECTOR_CHOICE
#include <cpuid.h>

/* Saved by the system on a task switch: XMM and YMM; opmask and ZMM too. */
enum { STATE_AVX = 0x06, STATE_AVX512 = 0xe6 };

static int plain_set(void) { return VECTOR_PLAIN; }
static int avx2_set(void) { return VECTOR_AVX2; }
static int avx512f_set(void) { return VECTOR_AVX512F; }

/* Runs before relocation: calls nothing and touches no data. */
__attribute__((used)) static int (*choose_set(void))(void)
{
    unsigned a, b, c, d, state = 0, state_high = 0;
    if (__get_cpuid_max(0, NULL) < 7)
        return plain_set;
    __cpuid(1, a, b, c, d);
    if (c & bit_OSXSAVE)
        __asm__("xgetbv" : "=a"(state), "=d"(state_high) : "c"(0));
    __cpuid_count(7, 0, a, b, c, d);
    if ((b & bit_AVX512F) && (state & STATE_AVX512) == STATE_AVX512)
        return avx512f_set;
    return (b & bit_AVX2) && (state & STATE_AVX) == STATE_AVX ? avx2_set : plain_set;
}

int vector_set(void) __attribute__((ifunc("choose_set")));
#else
int vector_set(void) { return VECTOR_PLAIN; }
#endif
