/* Logarithm and exponential without tables and branches, so that loops over them vectorise and every path gives the same bits.
 * Internal.
 *
 * For positive normal numbers of moderate size, which is what checked pressures and temperatures are. */
#ifndef VTX_BASE_ELEMENTARY_H
#define VTX_BASE_ELEMENTARY_H

#include "elementary_polynomials.h"
#include "numeric.h"

static inline double of_bits(uint64_t bits)
{
    double x;
    memcpy(&x, &bits, sizeof x);
    return x;
}

/* ln 2 in two parts; the first has zeros at its end, so that its multiples are exact. */
static const double log_2_high = 6.93147180369123816490e-01, log_2_low = 1.90821492927058770002e-10;

/* A number below 2^52, through the digits of 2^52 plus it: AVX2 has no other way. */
static inline double small_integer(uint64_t k) { return of_bits(UINT64_C(0x4330000000000000) | k) - 4503599627370496.0; }

/* ln(a/b) within 1.5 units in the last place however near a and b are: their difference is exact there. Bits of doubles, read as
 * integers, are logarithms to base 2 with an error of 0.086 at most, so that k leaves a/b 2^-k within 2^-0.59..2^0.59, whose
 * logarithm is 2 artanh of (a - b 2^k)/(a + b 2^k). */
static inline double log_ratio(double a, double b)
{
    const uint64_t biased = (bits_of(a) - bits_of(b) + (UINT64_C(2047) << 51)) >> 52;
    const double k = small_integer(biased) - 1023, scaled = b * of_bits(biased << 52);
    const double s = (a - scaled) / (a + scaled), z = s * s, twice = 2 * s;
    return k * log_2_high + (twice + (twice * z * logarithm_tail(z) + k * log_2_low));
}

/* Two at a time, the same bits. */
#ifdef POLYNOMIALS_IN_PAIRS
typedef uint64_t uint64_pair __attribute__((vector_size(16)));

static ALWAYS_INLINE double_pair log_ratios(double_pair a, double_pair b)
{
    const uint64_pair biased = ((uint64_pair)a - (uint64_pair)b + (UINT64_C(2047) << 51)) >> 52;
    const double_pair k = (double_pair)(biased | UINT64_C(0x4330000000000000)) - 4503599627370496.0 - 1023;
    const double_pair scaled = b * (double_pair)(biased << 52);
    const double_pair s = (a - scaled) / (a + scaled), z = s * s, twice = 2 * s;
    return k * log_2_high + (twice + (twice * z * polynomial_of_pair(logarithm_tail_coefficients, 8, z) + k * log_2_low));
}

static inline void log_of_two_ratios(double a, double b, double c, double d, double *log_ab, double *log_cd)
{
    const double_pair l = log_ratios((double_pair){ a, c }, (double_pair){ b, d });
    *log_ab = l[0];
    *log_cd = l[1];
}
#else
static inline void log_of_two_ratios(double a, double b, double c, double d, double *log_ab, double *log_cd)
{
    *log_ab = log_ratio(a, b);
    *log_cd = log_ratio(c, d);
}
#endif

/* The same of one number. */
static inline double natural_log(double x) { return log_ratio(x, 1); }

/* e^x and e^y for -700..700, within 1.2 units in the last place: 2^k e^r with r within half of ln 2. */
#ifdef POLYNOMIALS_IN_PAIRS
static ALWAYS_INLINE void two_exponentials(double x, double y, double *of_x, double *of_y)
{
    const double big = 6755399441055744.0; /* 1.5 2^52: adding it rounds to an integer, which the lowest bits then hold */
    const double_pair v = { x, y }, shifted = v * 1.4426950408889634 + big, k = shifted - big;
    const double_pair r = v - k * log_2_high - k * log_2_low;
    const double_pair power = (double_pair)(((uint64_pair)shifted << 52) + (UINT64_C(1023) << 52));
    const double_pair e = power + power * (r + r * r * polynomial_of_pair(exponential_tail_coefficients, 10, r));
    *of_x = e[0];
    *of_y = e[1];
}

/* The same within half of ln 2 of 0, where there is nothing to take out first. */
static ALWAYS_INLINE void two_small_exponentials(double x, double y, double *of_x, double *of_y)
{
    const double_pair v = { x, y }, e = 1 + (v + v * v * polynomial_of_pair(exponential_tail_coefficients, 10, v));
    *of_x = e[0];
    *of_y = e[1];
}
#else
static inline void two_exponentials(double x, double y, double *of_x, double *of_y)
{
    *of_x = exp(x);
    *of_y = exp(y);
}

static inline void two_small_exponentials(double x, double y, double *of_x, double *of_y) { two_exponentials(x, y, of_x, of_y); }
#endif

/* e^x for -700..700. */
static inline double exponential(double x)
{
    const double big = 6755399441055744.0; /* 1.5 2^52: adding it rounds to an integer, which the lowest bits then hold */
    const double shifted = x * 1.4426950408889634 + big, k = shifted - big;
    const double r = x - k * log_2_high - k * log_2_low;
    const double power = of_bits((bits_of(shifted) << 52) + (UINT64_C(1023) << 52));
    return power + power * (r + r * r * exponential_tail(r));
}

/* The same within half of ln 2 of 0. */
static inline double small_exponential(double x) { return 1 + (x + x * x * exponential_tail(x)); }

/* 1 - e^-x for x within 0..700: e^-x = 2^-k e^-r with r within half of ln 2. */
static inline double decay(double x)
{
    const double big = 6755399441055744.0; /* 1.5 2^52: adding it rounds to an integer, which the lowest bits then hold */
    const double shifted = x * -1.4426950408889634 + big, k = shifted - big;
    const double r = -x - k * log_2_high - k * log_2_low;
    const double power = of_bits((bits_of(shifted) << 52) + (UINT64_C(1023) << 52));
    return (1 - power) - power * (r + r * r * exponential_tail(r));
}

#endif
