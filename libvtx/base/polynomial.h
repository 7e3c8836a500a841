/* Polynomials in four chains of every fourth coefficient, which run side by side. Internal.
 *
 * Two forms to the same bits. Where vector.h comes first, plain arithmetic that vectorises in a loop over items; elsewhere, for one
 * value at a time, the chains run in pairs on the small vector unit that every processor has. */
#ifndef VTX_BASE_POLYNOMIAL_H
#define VTX_BASE_POLYNOMIAL_H

#include "numeric.h"

/* Of c over n terms and x4, which may be a number or a pair of them. */
#define POLYNOMIAL_CHAIN(k) \
    (n > 16 + (k) ? (((c[16 + (k)] * x4 + c[12 + (k)]) * x4 + c[8 + (k)]) * x4 + c[4 + (k)]) * x4 + c[k] \
     : n > 12 + (k) ? ((c[12 + (k)] * x4 + c[8 + (k)]) * x4 + c[4 + (k)]) * x4 + c[k] \
     : n > 8 + (k) ? (c[8 + (k)] * x4 + c[4 + (k)]) * x4 + c[k] \
     : c[4 + (k)] * x4 + c[k])
#define POLYNOMIAL_OF_CHAINS ((POLYNOMIAL_CHAIN(0) + POLYNOMIAL_CHAIN(2) * x2) + (POLYNOMIAL_CHAIN(1) + POLYNOMIAL_CHAIN(3) * x2) * x)

#if defined(VTX_BASE_VECTOR_H) || !defined(__GNUC__)

/* Sum of c[i] x^i over n terms, a constant from 8 to 20. The coefficients are filled up with zeros to whole fours and aligned to pairs. */
static ALWAYS_INLINE double polynomial(const double *c, int n, double x)
{
    const double x2 = x * x, x4 = x2 * x2;
    return POLYNOMIAL_OF_CHAINS;
}

#else

#define POLYNOMIALS_IN_PAIRS 1
typedef double double_pair __attribute__((vector_size(16)));

static ALWAYS_INLINE double_pair pair_at(const double *c)
{
    double_pair p;
    memcpy(&p, __builtin_assume_aligned(c, sizeof p), sizeof p);
    return p;
}

static ALWAYS_INLINE double_pair pair_of(double x) { return (double_pair){ x, x }; }

static ALWAYS_INLINE double_pair polynomial_chains(const double *c, int n, double_pair x4)
{
    double_pair sum = pair_at(c + (n - 1) / 4 * 4);
    if (n > 16)
        sum = sum * x4 + pair_at(c + 12);
    if (n > 12)
        sum = sum * x4 + pair_at(c + 8);
    if (n > 8)
        sum = sum * x4 + pair_at(c + 4);
    return sum * x4 + pair_at(c);
}

static ALWAYS_INLINE double polynomial(const double *c, int n, double x)
{
    const double x2 = x * x;
    const double_pair x4 = pair_of(x2 * x2);
    const double_pair sum = polynomial_chains(c, n, x4) + polynomial_chains(c + 2, n, x4) * pair_of(x2);
    return sum[0] + sum[1] * x;
}

/* The same polynomial of two numbers. */
static ALWAYS_INLINE double_pair polynomial_of_pair(const double *c, int n, double_pair x)
{
    const double_pair x2 = x * x, x4 = x2 * x2;
    return POLYNOMIAL_OF_CHAINS;
}

#endif

#endif
