/* Argument checks, poisoned outputs and small numerics that every room uses. Internal. */
#ifndef VTX_NUMERIC_H
#define VTX_NUMERIC_H

#include <float.h>
#include <math.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <vtx/status.h>

#include "private_names.h"

#if defined(__FINITE_MATH_ONLY__) && __FINITE_MATH_ONLY__
#error "libvtx needs NaN and infinity: build it without -ffast-math, -Ofast and -ffinite-math-only"
#endif

#ifdef __GNUC__
#define ALWAYS_INLINE __attribute__((always_inline)) inline
#else
#define ALWAYS_INLINE inline
#endif

static const double pi = 3.14159265358979323846;

#define ARRAY_LENGTH(a) (sizeof(a) / sizeof((a)[0]))

static inline uint64_t bits_of(double x)
{
    uint64_t bits;
    memcpy(&bits, &x, sizeof bits);
    return bits;
}

/* Bits, not isfinite: the builtin may raise INVALID on NaN and is folded away under -Ofast. */
static inline int is_finite(double x) { return (bits_of(x) & UINT64_C(0x7ff0000000000000)) != UINT64_C(0x7ff0000000000000); }

/* low <= x <= high in one comparison, for 0 <= low: bits of numbers above zero order as the numbers do, all others lie beyond. */
static inline int lies_within(double x, double low, double high) { return bits_of(x) - bits_of(low) <= bits_of(high) - bits_of(low); }

static inline double quiet_nan(void)
{
    const uint64_t bits = UINT64_C(0x7ff8000000000000);
    double x;
    memcpy(&x, &bits, sizeof x);
    return x;
}

static inline double square(double x) { return x * x; }
static inline double smaller(double a, double b) { return a < b ? a : b; }
static inline double larger(double a, double b) { return a > b ? a : b; }
static inline double within(double x, double low, double high) { return smaller(larger(x, low), high); }

/* The check that speaks: BAD_ARGUMENT before OUT_OF_RANGE before OK. */
static inline vtx_status worse(vtx_status a, vtx_status b)
{
    if (a == VTX_OK)
        return b;
    if (b == VTX_OK)
        return a;
    return a < b ? a : b;
}

static inline vtx_status require(int condition) { return condition ? VTX_OK : VTX_BAD_ARGUMENT; }

/* What input structs keep for later: a number there now would mean something else then. */
static inline int are_zero(const double *x, size_t count)
{
    uint64_t any = 0;
    for (size_t i = 0; i < count; i++)
        any |= bits_of(x[i]);
    return any << 1 == 0; /* without the sign: -0 is zero */
}

static inline vtx_status check_finite(double x) { return require(is_finite(x)); }

/* Any sign: NaN and infinity are bad, beyond low..high is out of range. */
static inline vtx_status check_range(double x, double low, double high)
{
    if (!is_finite(x))
        return VTX_BAD_ARGUMENT;
    return x < low || x > high ? VTX_OUT_OF_RANGE : VTX_OK;
}

/* Absolute temperatures, pressures, areas: zero and below are impossible, beyond low..high is out of range. */
static inline vtx_status check_positive(double x, double low, double high)
{
    if (!is_finite(x) || x <= 0)
        return VTX_BAD_ARGUMENT;
    return x < low || x > high ? VTX_OUT_OF_RANGE : VTX_OK;
}

/* Amounts: below zero is impossible, above high is out of range. */
static inline vtx_status check_amount(double x, double high)
{
    if (!is_finite(x) || x < 0)
        return VTX_BAD_ARGUMENT;
    return x > high ? VTX_OUT_OF_RANGE : VTX_OK;
}

/* Shares: anything outside 0..1 is impossible. */
static inline vtx_status check_share(double x) { return require(is_finite(x) && x >= 0 && x <= 1); }

/* A null output is tolerated here so that a failing call can poison whatever it was given. */
static inline vtx_status poison(double *output, vtx_status status)
{
    if (output)
        *output = quiet_nan();
    return status;
}

static inline vtx_status poison_integer(int32_t *output, vtx_status status)
{
    if (output)
        *output = -1;
    return status;
}

/* A result struct is doubles, then int32_t: NaN for the former, -1 for the latter. */
static inline vtx_status poison_record(void *record, size_t doubles, size_t integers, vtx_status status)
{
    unsigned char *at = record;
    const double nan = quiet_nan();
    const int32_t minus_one = -1;
    if (!record)
        return status;
    for (size_t i = 0; i < doubles; i++, at += sizeof nan)
        memcpy(at, &nan, sizeof nan);
    for (size_t i = 0; i < integers; i++, at += sizeof minus_one)
        memcpy(at, &minus_one, sizeof minus_one);
    return status;
}

/* Poisons *p, a struct whose first int32_t field is first_integer. */
#define POISON_STRUCT(p, type, first_integer, status) \
    poison_record((p), offsetof(type, first_integer) / sizeof(double), \
                  (sizeof(type) - offsetof(type, first_integer)) / sizeof(int32_t), (status))

#endif
