/* The batch loops as processors with AVX2 and no more choose them: linked in place of libvtx/base/vector_set.c. */
#include "../libvtx/base/vector.h"
#include "machine.h"

int vector_set(void) { return VECTOR_AVX2; }

#if VECTOR_CHOICE
int vectors_run_here(void) { return __builtin_cpu_supports("avx2") != 0; }
#else
int vectors_run_here(void) { return 0; }
#endif
