"""Chebyshev interpolation in 60 digits, then monomials, printed as a C function: what the fit_ scripts share."""
import math
import textwrap
from decimal import Decimal as D, getcontext

getcontext().prec = 60


def interpolate(f, low, high, degree):
    """Coefficients, lowest first, of the polynomial through Chebyshev nodes, in the variable itself."""
    n = degree + 1
    x = [(D(low) + D(high)) / 2 + (D(high) - D(low)) / 2 * D(math.cos(math.pi * (i + 0.5) / n)) for i in range(n)]
    d = [f(v) for v in x]
    for j in range(1, n):
        for i in range(n - 1, j - 1, -1):
            d[i] = (d[i] - d[i - 1]) / (x[i] - x[i - j])
    c = [D(0)] * n
    for i in range(n - 1, -1, -1):
        for k in range(n - 1, 0, -1):
            c[k] = c[k - 1] - x[i] * c[k]
        c[0] = d[i] - x[i] * c[0]
    return c


def value(c, x):
    y = D(0)
    for k in reversed(c):
        y = y * x + k
    return y


def table(name, c):
    """The C array of coefficients that base/polynomial.h wants: whole fours."""
    padded = list(c) + [0.0] * (-len(c) % 4)
    lines = textwrap.wrap(", ".join(repr(v) if v else "0" for v in padded), 120)
    print("_Alignas(16) static const double %s[%d] = {\n    %s\n};" % (name, len(padded), "\n    ".join(lines)))


def evaluated(c, x):
    """What polynomial() of base/polynomial.h returns, bit for bit."""
    padded = list(c) + [0.0] * (-len(c) % 4)
    x2 = x * x
    x4 = x2 * x2
    chain = [0.0] * 4
    for k in range(4):
        terms = padded[k::4]
        chain[k] = terms[-1]
        for t in reversed(terms[:-1]):
            chain[k] = chain[k] * x4 + t
    return (chain[0] + chain[2] * x2) + (chain[1] + chain[3] * x2) * x


def function(name, what, f, whole, low, high, degree):
    """One C function."""
    c = [float(v) for v in interpolate(f, low, high, degree)]
    worst = D(0)
    for i in range(1001):
        x = D(low) + (D(high) - D(low)) * i / 1000
        exact, near = whole(f(x), x), whole(value([D(v) for v in c], x), x)
        worst = max(worst, abs(near / exact - 1))
    print("/* %s, degree %d: %.1e. */" % (what, degree, worst))
    table(name + "_coefficients", c)
    print("static inline double %s(double x) { return polynomial(%s_coefficients, %d, x); }\n" % (name, name, len(c)))
    return c
