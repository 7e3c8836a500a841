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


def horner(c, variable):
    text = repr(c[-1])
    for k in reversed(c[:-1]):
        text = "%r + %s * (%s)" % (k, variable, text) if "*" in text else "%r + %s * %s" % (k, variable, text)
    return text.replace("+ -", "- ")


def function(name, what, f, whole, low, high, degree):
    """One C function: even and odd powers apart, so that two chains run side by side."""
    c = [float(v) for v in interpolate(f, low, high, degree)]
    worst = D(0)
    for i in range(1001):
        x = D(low) + (D(high) - D(low)) * i / 1000
        exact, near = whole(f(x), x), whole(value([D(v) for v in c], x), x)
        worst = max(worst, abs(near / exact - 1))
    print("/* %s, degree %d: %.1e. */" % (what, degree, worst))
    print("static inline double %s(double x)\n{\n    const double y = x * x;" % name)
    for part, coefficients in (("even", c[0::2]), ("odd", c[1::2])):
        lines = textwrap.wrap("const double %s = %s;" % (part, horner(coefficients, "y")), 110)
        print("    " + "\n        ".join(lines))
    print("    return even + x * odd;\n}\n")
    return c
