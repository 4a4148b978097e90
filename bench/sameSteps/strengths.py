"""Proof strengths, strengths at a total extension, and proportional limits by four definitions."""

import numpy as np

from .tools import cell_means, first_where, last_where, lasting, noise_level, runs, sustained


def parabola_near(x, y, index, at, widths, rising):
    """Value, slope, bend, width of a parabola about a point, over the widest half-width whose lack of fit cannot be told from noise."""
    if rising:
        firsts, lasts = x.searchsorted([at - w for w in widths]).tolist(), x.searchsorted([at + w for w in widths], side="right").tolist()
        ranges = [(min(a, index), max(b, index)) for a, b in zip(firsts, lasts)]
    else:
        ranges = [
            (last_where(lambda s: np.abs(x[s] - at) > w, 0, index) + 1, first_where(lambda s: np.abs(x[s] - at) > w, index, len(x)))
            for w in widths
        ]
    # rows of the widest at once: one product of matrices then gives all sums of each
    start, stop = ranges[-1]
    if stop - start < 7:
        return None
    scale = max(abs(float(x[start]) - at), abs(float(x[stop - 1]) - at))
    rows = np.empty((4, stop - start))
    rows[0] = 1
    np.subtract(x[start:stop], at, out=rows[1])
    rows[1] /= scale
    np.multiply(rows[1], rows[1], out=rows[2])
    np.subtract(y[start:stop], y[index], out=rows[3])
    found = None
    for width, (a, b) in zip(widths, ranges):
        if b - a < 7:
            continue
        part = rows[:, a - start : b - start]
        (n, s1, s2, t0), (_, _, s3, t1), (_, _, s4, t2), (_, _, _, squares) = (part @ part.T).tolist()
        A, B, C = s2 * s4 - s3 * s3, s2 * s3 - s1 * s4, s1 * s3 - s2 * s2
        D, E, F = n * s4 - s2 * s2, s1 * s2 - n * s3, n * s2 - s1 * s1
        determinant = n * A + s1 * B + s2 * C
        if determinant <= 0:
            break
        value = (A * t0 + B * t1 + C * t2) / determinant
        slope = (B * t0 + D * t1 + E * t2) / determinant
        bend = (C * t0 + E * t1 + F * t2) / determinant
        rest = max(0.0, squares - value * t0 - slope * t1 - bend * t2)
        if (rest / (n - 3)) ** 0.5 > 1.25 * noise_level(y, a, b):
            break
        found = float(y[index]) + value, slope / scale, bend / scale**2, width
    return found


def proof_strength(c, offset, first, end):
    """Stress, strain and sample where the curve meets a line parallel to its elastic line; None where it does not."""
    x, y, slope = c.strain, c.stress, c.line.slope
    i = sustained(x, y, slope, offset, first, end)
    if i <= first:
        return None
    x0, x1, y0, y1 = float(x[i - 1]), float(x[i]), float(y[i - 1]), float(y[i])
    before, after = y0 - slope * (x0 - offset), y1 - slope * (x1 - offset)
    share = before / (before - after)
    at = x0 + share * (x1 - x0)
    near = parabola_near(x, y, i, at, (offset / 16, offset / 8, offset / 4, offset / 2), c.rising)
    if near:
        value, tangent, bend, width = near
        b, rest = tangent - slope, value - slope * (at - offset)
        root = -2 * rest / (b - max(0.0, b * b - 4 * bend * rest) ** 0.5)
        if abs(root) <= width:
            return slope * (at + root - offset), at + root, i
    return y0 + share * (y1 - y0), at, i


def total_strength(c, total, end):
    """Stress at a total extension."""
    x, y = c.strain, c.stress
    i = first_where(lambda at: x[at] >= total, 0, end)
    if not 0 < i < end:
        return None
    near = parabola_near(x, y, i, total, (total / 32, total / 16, total / 8), c.rising)
    share = (total - float(x[i - 1])) / float(x[i] - x[i - 1])
    return near[0] if near else float(y[i - 1]) + share * float(y[i] - y[i - 1])


def tangent_limits(c, end, hint, shares):
    """Where the local slope falls to each of some shares of the line's for good."""
    slope, first = c.line.slope, c.line.first
    x, y = c.strain, c.stress
    if end - first > 8000:
        x, y, size = cell_means(x, y, first, end - 1, 4000)
        hint, first, end = (hint - first) // size, 0, len(x)
    noise = np.hypot(noise_level(y, first, end), slope * noise_level(x, first, end))
    elastic = first_where(lambda at: y[at] > 0.9 * y[end - 1], first + 1, end - 1)
    step = float(x[elastic] - x[first]) / (elastic - first)
    half = max(2, int(np.ceil(0.5 * (12 * (noise / (0.02 * slope * step)) ** 2) ** (1 / 3))))
    middle = max(first, half)
    # as a rule the 0.2 % proof strength lies beyond all of them
    for stop in (hint + 4 * half, end):
        if stop > end or stop - middle < 2 * half:
            continue
        found = falls_of_tangent(x[middle - half : stop], y[middle - half : stop], half, slope, shares, stop == end)
        if None not in found:
            break
    return found


def falls_of_tangent(x, y, half, slope, shares, whole):
    u, v = x - x[len(x) >> 1], y - y[len(y) >> 1]
    before = np.zeros((4, len(x) + 1))
    np.cumsum((u, v, u * u, u * v), axis=1, out=before[:, 1:])
    n = 2 * half + 1
    sx, sy, sxx, sxy = before[:, n:] - before[:, :-n]
    tangent = (sxy - sx * sy / n) / (sxx - sx * sx / n)
    found = []
    for share in shares:
        level = share * slope
        low = tangent < level
        low[0] = False
        point = None
        if low.any():
            begin, behind = runs(low)
            long = behind - begin >= n
            long[-1] |= whole and behind[-1] == low.size
            k = int(long.argmax())
            if long[k]:
                i = int(begin[k])
                t = min(1.0, max(0.0, float((tangent[i - 1] - level) / (tangent[i - 1] - tangent[i]))))
                point = float(y[i + half - 1] + t * (y[i + half] - y[i + half - 1]))
        found.append(point)
    return found


def proportional_limits(c, end, hint):
    """By the four definitions: offset, deviation, tangent, Johnson's."""
    x, y, slope, first = c.strain, c.stress, c.line.slope, c.line.first
    offset = proof_strength(c, 0.0001, first, end)
    scatter = 3 * max(c.line.deviation, 1e-9 * float(y[end - 1]))
    i = lasting(lambda at: slope * x[at] - y[at] > scatter, first, end, 5)
    return [offset and offset[0], float(y[i]) if i >= 0 else None, *tangent_limits(c, end, hint, (0.9, 1 / 1.5))]


def several_crossings(c, proof, offset, end):
    """How often the curve comes back above its offset line by more than its scatter, and falls below it again."""
    x, y, slope = c.strain, c.stress, c.line.slope
    out = 2 * offset + float(y[end - 1]) / slope
    stop = first_where(lambda at: x[at] > out, proof[2] + 1, end)
    count, i = 1, proof[2]
    while True:
        i = first_where(lambda at: y[at] > slope * (x[at] - offset) + 3 * c.line.deviation, i + 1, stop)
        if i == stop:
            return count
        i = sustained(x, y, slope, offset, i, end)
        if i < 0:
            return count
        count += 1
