"""What a user of NumPy and SciPy would write, for `npm run bench`.

Reads columns of float64 from the standard input and prints the median processor time of a call in ms, and what was found, as one line of JSON.

    reference.py window START END SPAN SLOPE REPEATS   strain and stress: every window, vectorised over its last sample
    reference.py analysis AREA LENGTH REPEATS          force, extension and time: a short analysis with a coarse window
    reference.py same-steps AREA LENGTH REPEATS        the same columns: every step with numeric work that analyseTension does on them
"""

import json
import sys
import time

import numpy as np
from scipy.optimize import curve_fit


def timed(call, repeats):
    """Median processor time: a long call would else pay for what else the machine does, and a short one not."""
    call()
    taken = []
    for _ in range(repeats):
        start = time.process_time()
        found = call()
        taken.append(time.process_time() - start)
    return float(np.median(taken) * 1e3), found


def every_window(strain, stress, start, end, span, base, z=4.0, points=8):
    """Best slope - z * SE by prefix sums: one vectorised step for each first sample."""
    x = strain[start:end] - strain[(start + end) // 2]
    r = stress[start:end] - stress[(start + end) // 2] - base * x
    n = end - start
    sums = np.zeros((5, n + 1))
    np.cumsum((x, r, x * x, x * r, r * r), axis=1, out=sums[:, 1:])
    count = np.arange(1.0, n + 1)
    best, where = -np.inf, (-1, -1)
    with np.errstate(divide="ignore", invalid="ignore"):
        for i in range(n - points + 1):
            sx, sr, sxx, sxr, srr = sums[:, i + points :] - sums[:, i, None]
            m = count[points - 1 : n - i]
            xx = sxx - sx * sx / m
            xr = sxr - sx * sr / m
            d = xr / xx
            rest = np.maximum(srr - sr * sr / m - d * xr, 0)
            score = base + d - z * np.sqrt(rest / ((m - 2) * xx))
            score[~((base + d) * (x[i + points - 1 :] - x[i]) >= span)] = -np.inf
            j = int(np.argmax(score))
            if score[j] > best:
                best, where = float(score[j]), (start + i, start + i + points - 1 + j)
    return best, where


def noise(y):
    return np.median(np.abs(np.diff(y, 3))) / (0.6745 * np.sqrt(20))


def crossing(below):
    """First sample from which five in a row lie below."""
    run = np.convolve(below, np.ones(5), "valid")
    return int(np.argmax(run == 5))


def coarse_window(x, y, end, offset_stress, edges=48):
    """Best slope - 4 SE over windows between equally spaced edges."""
    start = int(np.argmax(y[:end] >= 0.2 * offset_stress))
    at = np.unique(np.linspace(start, end, edges + 1).astype(int))
    u = x - x[(start + end) // 2]
    v = y - y[(start + end) // 2]
    sums = np.zeros((5, len(x) + 1))
    np.cumsum((u, v, u * u, u * v, v * v), axis=1, out=sums[:, 1:])
    part = sums[:, at]
    difference = part[:, None, :] - part[:, :, None]
    count = at[None, :] - at[:, None]
    ok = count >= 8
    sx, sy, sxx, sxy, syy = difference
    count = np.where(ok, count, 8)
    with np.errstate(divide="ignore", invalid="ignore"):
        xx = sxx - sx * sx / count
        xy = sxy - sx * sy / count
        slope = xy / xx
        error = np.sqrt(np.maximum(syy - sy * sy / count - slope * xy, 0) / (count - 2) / xx)
        rise = slope * (u[np.minimum(at, len(x) - 1)][None, :] - u[np.minimum(at, len(x) - 1)][:, None])
    score = np.where(ok & (rise >= 0.2 * offset_stress), slope - 4 * error, -np.inf)
    a, b = np.unravel_index(np.argmax(score), score.shape)
    return int(at[a]), int(at[b])


def analysis(force, extension, clock, area, length):
    for column in (force, extension, clock):
        if not np.isfinite(column).all():
            raise ValueError("not finite")
    if (np.diff(clock) < 0).any():
        raise ValueError("time goes back")
    repeated = np.mean((np.diff(force) == 0) & (np.diff(extension) == 0))
    stress = force / area
    strain = extension / length
    top = int(np.argmax(stress))
    speed = np.gradient(extension, clock)
    still = np.mean(np.abs(speed[:top]) < 0.05 * np.median(speed[:top]))
    # coarse line, offset crossing, window
    rising = np.flatnonzero((stress[:top] > 0.2 * stress[top]) & (stress[:top] < 0.4 * stress[top]))
    slope, intercept = np.polyfit(strain[rising], stress[rising], 1)
    end = crossing(stress[: top + 1] < slope * (strain[: top + 1] + intercept / slope - 0.002))
    first, last = coarse_window(strain, stress, end, stress[end])
    slope, intercept = np.polyfit(strain[first:last], stress[first:last], 1)
    residuals = stress[first:last] - slope * strain[first:last] - intercept
    correlation = 1 - residuals.var() / stress[first:last].var()
    strain = strain + intercept / slope
    # proof strength, proportional limits, total extension, yield point
    proof = {}
    for offset in (0.0001, 0.002):
        gap = stress[: top + 1] - slope * (strain[: top + 1] - offset)
        i = first + crossing(gap[first:] < 0)
        share = gap[i - 1] / (gap[i - 1] - gap[i])
        proof[offset] = stress[i - 1] + share * (stress[i] - stress[i - 1])
    deviation = stress[first + crossing(slope * strain[first : top + 1] - stress[first : top + 1] > 3 * residuals.std())]
    width = 25
    kernel = np.arange(width, -width - 1, -1.0)
    tangent = np.convolve(stress[: top + 1], kernel, "valid") / np.convolve(strain[: top + 1], kernel, "valid")
    limits = [stress[width + crossing(tangent < share * slope)] for share in (0.9, 1 / 1.5)]
    total = np.interp(0.005, strain[: top + 1], stress[: top + 1])
    highest = np.maximum.accumulate(stress[: top + 1])
    yields = bool(((highest - stress[: top + 1]) > np.maximum(0.005 * highest, 8 * noise(stress))).any())
    # fracture, energy, necking, hardening
    low = np.flatnonzero(stress[top:] < 0.02 * stress[top])
    broken = top + (int(low[0]) - 1 if low.size else len(stress) - top - 1)
    energy = np.trapezoid(stress[: broken + 1], strain[: broken + 1])
    near = np.flatnonzero(stress[: broken + 1] > 0.98 * stress[top])
    log = np.log1p(strain[near])
    cubic = np.polynomial.Polynomial.fit(log, stress[near], 3)
    roots = cubic.deriv().roots()
    necking = float(roots[np.argmin(np.abs(roots - log[len(log) // 2]))].real)
    true_strain = np.log1p(strain[end : top + 1])
    true_stress = stress[end : top + 1] * (1 + strain[end : top + 1])
    plastic = true_strain - true_stress / slope
    used = plastic > 0.02
    start = np.polyfit(np.log(plastic[used]), np.log(true_stress[used]), 1)
    law, _ = curve_fit(lambda e, K, n: K * e**n, plastic[used], true_stress[used], p0=(np.exp(start[1]), start[0]))
    # rates over 200 stretches
    size = max(5, len(clock) // 200)
    places = len(clock) // size
    t = clock[: places * size].reshape(places, size)
    t = t - t.mean(axis=1, keepdims=True)
    rates = [(t * c[: places * size].reshape(places, size)).sum(axis=1) / (t * t).sum(axis=1) for c in (stress, strain)]
    return {
        "slope": slope,
        "proof": proof[0.002],
        "strength": stress[top],
        "exponent": law[1],
        "rest": [repeated, still, correlation, deviation, *limits, total, yields, energy, necking, rates[0].max(), rates[1].max()],
    }


columns = np.frombuffer(sys.stdin.buffer.read(), dtype=np.float64)
if sys.argv[1] == "window":
    start, end = int(sys.argv[2]), int(sys.argv[3])
    strain, stress = columns.reshape(2, -1)
    ms, (score, where) = timed(lambda: every_window(strain, stress, start, end, float(sys.argv[4]), float(sys.argv[5])), int(sys.argv[6]))
    print(json.dumps({"ms": ms, "score": score, "first": where[0], "last": where[1]}))
else:
    force, extension, clock = columns.reshape(3, -1)
    call = analysis
    if sys.argv[1] == "same-steps":
        from sameSteps.steps import same_steps as call
    np.seterr(all="ignore")
    ms, found = timed(lambda: call(force, extension, clock, float(sys.argv[2]), float(sys.argv[3])), int(sys.argv[4]))
    found.pop("rest")
    print(json.dumps({"ms": ms, **found}, default=float))
