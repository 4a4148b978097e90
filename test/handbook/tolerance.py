"""Prints exact two-sided tolerance factors (n, content, confidence, k), by SciPy 1.17: the coverage of limits about a mean that is off by z.

python3 tolerance.py
"""

from scipy import integrate, optimize, stats


def half_width(z, content):
    return optimize.brentq(lambda r: stats.norm.cdf(z + r) - stats.norm.cdf(z - r) - content, 0, z + 20, xtol=1e-14)


def held(k, n, content):
    sd = n**-0.5
    inner = lambda z: stats.norm.pdf(z, scale=sd) * stats.chi2.sf((n - 1) * (half_width(z, content) / k) ** 2, n - 1)
    return 2 * integrate.quad(inner, 0, 9 * sd, epsabs=1e-13, epsrel=1e-12)[0]


for n in (2, 3, 5, 10, 30, 100):
    for content in (0.9, 0.95, 0.99):
        k = optimize.brentq(lambda k: held(k, n, content) - 0.95, 1, 200, xtol=1e-11)
        print(n, content, 0.95, f"{k:.8f}")
