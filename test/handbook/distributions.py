"""Prints distributions.json: probabilities and quantiles by mpmath 1.3 with 330 digits, so that 1 - p of a small tail stays exact.

Incomplete gamma and beta functions by their power series (DLMF 8.7.1 and 8.17.8, all terms above 0); non-central t by its integral.


python3 distributions.py > distributions.json
"""

import json
from mpmath import mp, mpf, beta, erfc, exp, gamma, inf, log, quad, sqrt

mp.dps = 330


def normal(z):
    return erfc(-z / sqrt(mpf(2))) / 2


def series(ratio):
    total = term = mpf(1)
    k = 0
    while term > total * mpf(10) ** -328 or ratio(k) > 1:
        term *= ratio(k)
        total += term
        k += 1
    return total


def chi_square(x, v):
    a, h = v / 2, x / 2
    below = h**a * exp(-h) / gamma(a + 1) * series(lambda k: h / (a + 1 + k))
    return below, 1 - below


def ibeta(a, b, x, y):
    if x > y:
        return 1 - ibeta(b, a, y, x)
    return x**a * y**b / (a * beta(a, b)) * series(lambda k: (a + b + k) / (a + 1 + k) * x)


def student(t, v):
    tail = ibeta(v / 2, mpf(1) / 2, v / (v + t * t), t * t / (v + t * t)) / 2
    return tail if t < 0 else 1 - tail


def f_below(f, a, b):
    return ibeta(a / 2, b / 2, a * f / (b + a * f), b / (b + a * f))


def f_above(f, a, b):
    return ibeta(b / 2, a / 2, b / (b + a * f), a * f / (b + a * f))


def noncentral_t(t, v, d):
    front = 2 * (v / 2) ** (v / 2) / gamma(v / 2)

    def integrand(u):
        return front * exp(v * u - v / 2 * exp(2 * u)) * normal(t * exp(u) - d)

    # the peak by a scan, then pieces about it
    us = [mpf(k) / 100 for k in range(-6000, 500)]
    peak = max(us, key=lambda u: float(v * u - v / 2 * exp(2 * u)) + float(log(max(normal(t * exp(u) - d), mpf(10) ** -4000))))
    w = min(mpf(1), 1 / sqrt(v))
    return quad(integrand, [-inf, peak - 30 * w, peak - 8 * w, peak - 3 * w, peak, peak + 3 * w, peak + 8 * w, peak + 30 * w])


def show(x):
    return float(mp.nstr(x, 17))


def m(s):
    return mpf(str(s))


rows = {"normal": [], "chiSquare": [], "student": [], "f": [], "noncentralT": []}
for z in [-37, -20, -12, -8, -5, -3, -1.959963984540054, -1, -0.3, -1e-3, 0, 0.2, 0.7, 1.3, 2.5, 4]:
    rows["normal"].append([z, show(normal(m(z)))])
for v in [0.5, 1, 2, 3, 4.7, 10, 30, 100, 1000, 100000]:
    for r in [1e-3, 0.1, 0.5, 0.9, 1, 1.1, 1.5, 3, 10]:
        x = v * r
        below, above = chi_square(m(x), m(v))
        if below > mpf(10) ** -290 and above > mpf(10) ** -290:
            rows["chiSquare"].append([x, v, show(below), show(above)])
for v in [0.5, 1, 2, 2.5, 4, 9, 16.7, 30, 120, 1000, 100000]:
    for t in [-1e6, -100, -12, -6, -3, -1.5, -0.5, -0.01, 0.3, 1, 2]:
        p = student(m(t), m(v))
        if p > mpf(10) ** -290:
            rows["student"].append([t, v, show(p)])
for a, b in [(1, 1), (1, 4), (2, 6), (3, 20), (7, 16), (10, 2), (30, 30), (5.5, 7.25), (200, 300), (1000, 4), (20000, 10000)]:
    for f in [1e-4, 0.05, 0.5, 0.97, 1, 1.2, 2, 8, 200]:
        below, above = f_below(m(f), m(a), m(b)), f_above(m(f), m(a), m(b))
        if below > mpf(10) ** -290 and above > mpf(10) ** -290:
            rows["f"].append([f, a, b, show(below), show(above)])
mp.dps = 25
for v, d, ts in [
    (1, 1.8, [-3, 0.2, 2, 30]),
    (2, 2.2, [-1, 1, 5, 18]),
    (4, 2.87, [-1, 0.5, 3, 7.6, 20]),
    (4, -2.87, [-7.6, -3, 0, 1]),
    (9, 4.05, [0, 2, 4, 7.4, 15]),
    (9, 7.36, [2, 5, 8, 12.6]),
    (16.7, 0, [-4, -1, 0.5, 3]),
    (29, 7.02, [2, 6, 9.7, 14]),
    (99, 12.8, [6, 11, 15.3, 20]),
    (199, 32.9, [25, 33, 36.3, 45]),
    (1000, 40, [33, 40, 44]),
]:
    for t in ts:
        below, above = noncentral_t(m(t), m(v), m(d)), noncentral_t(-m(t), m(v), -m(d))
        assert abs(below + above - 1) < mpf(10) ** -18, (v, d, t, below + above)
        rows["noncentralT"].append([t, v, d, show(below), show(above)])
print("{")
print(",\n".join(f' "{name}": [\n' + ",\n".join("  " + json.dumps(row) for row in table) + "\n ]" for name, table in rows.items()))
print("}")
