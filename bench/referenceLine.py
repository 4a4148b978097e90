"""The elastic line: coarse line, window between the edges of a lattice, what explains it; proof strengths and proportional limits."""

from types import SimpleNamespace

import numpy as np
from referenceTools import Windows, cell_means, equal_edges, first_where, last_where, lasting, line, noise_level, pairs, reached, runs, sustained

OFFSET = 0.002


def steepest(x, y, top):
    """Steepest line between the first crossings of equal steps of stress."""
    end = len(y)
    edges = np.append(reached(y, top * np.arange(8, 41) / 40, 0, end), end)
    w = Windows(x, y, edges, apart=5)
    k = int(np.where((w.count >= 3) & (w.xx > 0), w.slope, 0).argmax())
    slope = float(w.slope[k])
    return slope, float(w.x[k] - w.y[k] / slope), int(w.end[k]) - 1


def coarse_line(strain, stress, maximum):
    """Slope, and where its 0.2 % offset line is crossed for good, found twice."""
    end = maximum + 1
    top = float(stress[maximum])
    for _ in range(2):
        stride = max(1, end // 4000)
        slope, zero, last = steepest(strain[:end:stride], stress[:end:stride], top)
        origin = zero + OFFSET
        first = max(0, last_where(lambda at: stress[at] >= slope * (strain[at] - origin), 0, last * stride + 1))
        crossing = sustained(strain, stress, slope, origin, first, maximum + 1)
        end = maximum + 1 if crossing < 0 else crossing
        top = float(stress[:end].max())
    return end, float(stress[min(end, maximum)])


def best_window(strain, stress, start, end, span):
    """The window with the best slope less four standard errors, of those between 49 edges, and three runners-up between every third of them."""
    w = Windows(strain, stress, equal_edges(start, end, 48), scatter=True)
    score = w.slope - 4 * np.sqrt(w.rest / ((w.count - 2) * w.xx))
    score[~((w.count >= 8) & (w.rise >= span) & (w.slope > 0))] = -np.inf
    k = int(np.where(np.isnan(score), -np.inf, score).argmax())
    third = np.flatnonzero((w.a % 3 == 0) & (w.b % 3 == 0) & (score > -np.inf))
    first, behind, rest = w.first[third], w.end[third], score[third]
    chosen = (int(w.first[k]), int(w.end[k]))
    taken, runners = chosen, []
    for _ in range(3):
        shared = np.minimum(behind, taken[1]) - np.maximum(first, taken[0])
        rest[shared >= 0.5 * np.maximum(behind - first, taken[1] - taken[0])] = -np.inf
        if rest.max(initial=-np.inf) == -np.inf:
            break
        j = int(rest.argmax())
        taken = (int(first[j]), int(behind[j]))
        runners.append((*taken, float(w.slope[third[j]])))
    return *chosen, runners


def slope_fall(strain, stress, offset_stress, end):
    """Fall of the slope from one band of stress to the next, and its standard error."""
    bands = []
    for low, high in ((0.2, 0.3), (0.3, 0.4)):
        behind = first_where(lambda at: stress[at] > high * offset_stress, 0, end)
        first = last_where(lambda at: stress[at] < low * offset_stress, 0, behind) + 1
        if behind - first < 3:
            return None
        bands.append(line(strain[first:behind], stress[first:behind]))
    (a, _, error_a, *_), (b, _, error_b, *_) = bands
    return 1 - b / a, np.hypot(error_b / a, b / a * error_a / a)


def fit_line(strain, stress, maximum):
    """The elastic line of a curve as it is recorded."""
    end, offset_stress = coarse_line(strain, stress, maximum)
    start = last_where(lambda at: stress[at] < 0.2 * offset_stress, 0, end) + 1
    first, behind, runners = best_window(strain, stress, start, end, 0.2 * offset_stress)
    slope, intercept, error, r2, deviation = line(strain[first:behind], stress[first:behind])
    fall = slope_fall(strain, stress, offset_stress, end)
    return SimpleNamespace(
        slope=slope, shift=-intercept / slope, first=first, last=behind - 1, error=error, r2=r2, deviation=deviation,
        offset_stress=offset_stress, offset_sample=end, runners=runners, fall=fall,
    )  # fmt: skip


def explain(strain, stress, own, beyond):
    """Runs and bend of the residuals, the envelope of other windows, what the slope does to Rp0.2; strains from the shifted origin."""
    part = slice(own.first, own.last + 1)
    n = own.last - own.first + 1
    u = strain[part] - float(strain[part].mean())
    e = stress[part] - own.slope * strain[part]
    up = e > 0
    above = np.count_nonzero(up)
    changes = np.count_nonzero(up[1:] != up[:-1]) + 1
    expected = 2 * above * (n - above) / n + 1
    spread = ((expected - 1) * (expected - 2) / (n - 1)) ** 0.5
    rows = np.array((u, u * u, e))
    (s2, s3, t1), (_, s4, t2), (_, _, squares) = (rows @ rows.T).tolist()
    bend_square = s4 - s3 * s3 / s2 - s2 * s2 / n
    bend = (t2 - s3 / s2 * t1) / bend_square
    change = 2 * abs(float(strain[own.last] - strain[own.first])) / own.slope
    bend_error = (max(0.0, squares - bend * bend * bend_square) / (n - 3) / bend_square) ** 0.5 * change

    # the curve around its crossing by means, and other windows in the lower half
    R, at = own.offset_stress, min(own.offset_sample, beyond - 1)
    first = last_where(lambda s: stress[s] < 0.6 * stress[at], 0, at) + 1
    last = first_where(lambda s: strain[s] > strain[at] + OFFSET, at, beyond) - 1
    x, y, _ = cell_means(strain, stress, first, last, 200)
    end = last_where(lambda s: stress[s] <= 0.5 * R, 0, own.offset_sample) + 1
    start = last_where(lambda s: stress[s] < 0.2 * R, 0, end) + 1
    w = Windows(strain, stress, equal_edges(start, end, 24))
    ok = (w.count >= 8) & (w.rise >= 0.2 * R)
    slope = np.append(w.slope[ok], own.slope)
    shift = np.append((w.x - w.y / w.slope)[ok], 0.0)
    height = slope * (float(strain[at]) - shift)
    extremes = [slope.size - 1, slope.argmin(), slope.argmax(), height.argmin(), height.argmax()]
    proofs = crossings(x, y, slope[extremes, None], shift[extremes, None] + OFFSET)
    leverage = float(proofs[0]) / own.slope / OFFSET
    return {
        "runs": (changes - expected) / spread,
        "bend": (bend * change, bend_error),
        "envelope": (slope.size - 1, float(slope.min()), float(slope.max()), float(proofs.min()), float(proofs.max())),
        "leverage": leverage * own.error / own.slope,
    }


def crossings(x, y, slope, origin):
    """Where each of some lines is crossed for good, five means or 0.05 % strain in a row, all at once."""
    gap = y - slope * (x - origin)
    below = gap < 0
    width = max(1, min(4, int(-(-0.0005 * (x.size - 1) // max(float(x[-1] - x[0]), 1e-300)))))
    for _ in range(width):
        below = below[:, :-1] & below[:, 1:]
    i = np.maximum(below.argmax(axis=1), 1)
    row = np.arange(len(i))
    before, after = gap[row, i - 1], gap[row, i]
    return y[i - 1] + before / (before - after) * (y[i] - y[i - 1])


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
