/* Normal, Student and chi-square from the error function and two continued fractions. */
#include "distribution.h"

enum { TERMS_MAX = 3000 };
static const double TINY = 1e-300;

double normal_probability(double z) { return 0.5 * erfc(-z * sqrt(0.5)); }

static double normal_density(double z) { return exp(-0.5 * z * z) / sqrt(2 * pi); }

/* Abramowitz and Stegun 1964, 26.2.23, as the start; Halley's steps do the rest. */
static double upper_normal_quantile(double tail)
{
    const double t = sqrt(-2 * log(tail));
    double z = t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
    for (int i = 0; i < 3; i++) {
        const double step = (0.5 * erfc(z * sqrt(0.5)) - tail) / normal_density(z);
        z += step / (1 + 0.5 * z * step);
    }
    return z;
}

double normal_quantile(double probability)
{
    if (probability == 0.5)
        return 0;
    return probability < 0.5 ? -upper_normal_quantile(probability) : upper_normal_quantile(1 - probability);
}

/* Stirling's series (Abramowitz and Stegun 1964, 6.1.41) from 10 on, the recurrence below. libm's lgamma writes a global sign. */
static double log_gamma(double x)
{
    double shift = 1;
    for (; x < 10; x += 1)
        shift *= x;
    const double y = 1 / (x * x);
    const double series = (1.0 / 12 - y * (1.0 / 360 - y * (1.0 / 1260 - y * (1.0 / 1680 - y * (1.0 / 1188 - y * 691.0 / 360360))))) / x;
    return (x - 0.5) * log(x) - x + 0.5 * log(2 * pi) + series - log(shift);
}

/* ln Gamma(a + 1/2) - ln Gamma(a): the direct difference loses digits when a is large. */
static double log_gamma_half_step(double a)
{
    double shift = 0;
    for (; a < 40; a += 1)
        shift += log1p(-0.5 / (a + 0.5));
    /* From Gamma's asymptotic ratio, Abramowitz and Stegun 1964, 6.1.47, in logarithms. */
    const double y = 1 / a;
    return 0.5 * log(a) - y * (1.0 / 8 - y * y * (1.0 / 192 - y * y * (1.0 / 640 - y * y * 17.0 / 14336))) + shift;
}

static double away_from_zero(double x) { return fabs(x) < TINY ? TINY : x; }

/* Continued fraction of the incomplete beta function by Lentz's method (Abramowitz and Stegun 1964, 26.5.8), b = 1/2 or a = 1/2. */
static double beta_fraction(double a, double b, double x)
{
    double c = 1, d = 1 / away_from_zero(1 - (a + b) * x / (a + 1)), value = d;
    for (int m = 1; m <= TERMS_MAX; m++) {
        const double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
        d = 1 / away_from_zero(1 + even * d);
        c = away_from_zero(1 + even / c);
        value *= d * c;
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
        d = 1 / away_from_zero(1 + odd * d);
        c = away_from_zero(1 + odd / c);
        value *= d * c;
        if (fabs(d * c - 1) < DBL_EPSILON)
            break;
    }
    return value;
}

/* Probability that |t| is exceeded. With x = freedom / (freedom + t^2) it is the incomplete beta function I_x(freedom / 2, 1/2). */
static double student_two_tails(double t, double freedom)
{
    const double a = 0.5 * freedom, ratio = t * t / freedom;
    const double x = 1 / (1 + ratio), y = ratio / (1 + ratio);
    if (t == 0)
        return 1;
    const double front = exp(-a * log1p(ratio) + 0.5 * log(y) + log_gamma_half_step(a) - 0.5 * log(pi));
    if (x < (a + 1) / (a + 2.5))
        return front * beta_fraction(a, 0.5, x) / a;
    return 1 - front * beta_fraction(0.5, a, y) / 0.5;
}

double student_probability(double t, double freedom)
{
    const double tail = 0.5 * student_two_tails(t, freedom);
    return t < 0 ? tail : 1 - tail;
}

static double student_density(double t, double freedom)
{
    return exp(log_gamma_half_step(0.5 * freedom) - 0.5 * (freedom + 1) * log1p(t * t / freedom)) / sqrt(pi * freedom);
}

/* Newton on the tail from the normal quantile with Cornish and Fisher's first correction; the bracket catches the heavy tails of low freedom. */
static double upper_student_quantile(double tail, double freedom)
{
    const double z = upper_normal_quantile(tail);
    double low = 0, high = 1e300, t = z * (1 + (z * z + 1) / (4 * freedom));
    for (int i = 0; i < 200; i++) {
        const double excess = 0.5 * student_two_tails(t, freedom) - tail;
        if (excess > 0)
            low = t;
        else
            high = t;
        const double density = student_density(t, freedom);
        double next = density > 0 ? t + excess / density : high;
        if (!(next > low && next < high))
            next = high < 1e300 ? 0.5 * (low + high) : 2 * t;
        if (fabs(next - t) <= 1e-15 * t || next == t)
            return next;
        t = next;
    }
    return t;
}

double student_quantile(double probability, double freedom)
{
    if (probability == 0.5)
        return 0;
    return probability < 0.5 ? -upper_student_quantile(probability, freedom) : upper_student_quantile(1 - probability, freedom);
}

/* Incomplete gamma function: series below, continued fraction above (Abramowitz and Stegun 1964, 6.5.29 and 6.5.31). */
double chi_square_exceedance(double x, double freedom)
{
    const double a = 0.5 * freedom, y = 0.5 * x;
    if (!(y > 0))
        return 1;
    const double front = exp(a * log(y) - y - log_gamma(a));
    if (y < a + 1) {
        double term = 1 / a, sum = term;
        for (int n = 1; n <= TERMS_MAX && term > sum * DBL_EPSILON; n++) {
            term *= y / (a + n);
            sum += term;
        }
        return 1 - front * sum;
    }
    double b = y + 1 - a, c = 1 / TINY, d = 1 / away_from_zero(b), value = d;
    for (int n = 1; n <= TERMS_MAX; n++) {
        const double factor = n * (a - n);
        b += 2;
        d = 1 / away_from_zero(b + factor * d);
        c = away_from_zero(b + factor / c);
        value *= d * c;
        if (fabs(d * c - 1) < DBL_EPSILON)
            break;
    }
    return front * value;
}
