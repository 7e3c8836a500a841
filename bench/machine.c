/* Machine, vector unit, compiler and version. */
#include <string.h>
#include <unistd.h>

#include <vtx.h>

#include "machine.h"

/* The compiler's flags, where the build says them. */
#ifndef BENCH_FLAGS
#define BENCH_FLAGS ""
#endif
#ifndef __VERSION__
#define __VERSION__ "unknown"
#endif
#if defined(__GNUC__) && !defined(__clang__)
#define COMPILER "gcc " __VERSION__ " " BENCH_FLAGS
#else
#define COMPILER __VERSION__ " " BENCH_FLAGS
#endif

enum { NAME_BYTES = 256 };

/* The processor's name where the system tells it. */
static void processor(char name[NAME_BYTES])
{
    char text[NAME_BYTES];
    FILE *info = fopen("/proc/cpuinfo", "r");
    strcpy(name, "unknown");
    while (info && fgets(text, sizeof text, info))
        if (strncmp(text, "model name", 10) == 0 && strchr(text, ':')) {
            strcpy(name, strchr(text, ':') + 2);
            name[strcspn(name, "\n\"\\")] = 0;
            break;
        }
    if (info)
        fclose(info);
}

/* The best that batch loops may choose here; valgrind offers no AVX-512. */
static const char *vector_unit(void)
{
#ifdef BENCH_VECTORS
    return BENCH_VECTORS;
#elif defined(__x86_64__) && defined(__GNUC__)
    if (__builtin_cpu_supports("avx512f"))
        return "avx512f";
    if (__builtin_cpu_supports("avx2"))
        return "avx2";
    return "the compiler's default";
#else
    return "the compiler's default";
#endif
}

static long processors(void)
{
#ifdef _SC_NPROCESSORS_ONLN
    return sysconf(_SC_NPROCESSORS_ONLN);
#else
    return 1;
#endif
}

void print_machine(void)
{
    char name[NAME_BYTES];
    processor(name);
    printf("machine   %s, %ld processors\nvectors   %s\ncompiler  %s\nlibvtx    %s\n", name, processors(), vector_unit(), COMPILER, vtx_version());
}

void print_machine_json(FILE *json)
{
    char name[NAME_BYTES];
    processor(name);
    fprintf(json, "\"machine\": \"%s\", \"processors\": %ld, \"vectors\": \"%s\", \"compiler\": \"%s\", \"version\": \"%s\", ", name, processors(),
            vector_unit(), COMPILER, vtx_version());
}
