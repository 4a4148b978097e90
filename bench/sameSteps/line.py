"""The elastic line: coarse line, window between the edges of a lattice, what explains it."""

from types import SimpleNamespace

import numpy as np

from .tools import Windows, add, cell_means, equal_edges, first_where, last_where, line, noise_level, reached, sustained

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


def explain(strain, stress, own, beyond, step):
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
    # yielding within the window by a power law through three offsets, noise of the strain, and steps of its reading
    upper, middle, lower = crossings(x, y, np.full((3, 1), own.slope), OFFSET * np.array([[1], [0.25], [0.05]])).tolist()
    bent = None
    if 0 < lower < middle < upper:
        exponent = np.log(4) / np.log(upper / middle)
        if exponent <= 100 and np.log(5) / np.log(middle / lower) <= 1.6 * exponent:
            t = (np.arange(16) + 0.5) / 16
            low, high = own.slope * float(strain[own.first]), own.slope * float(strain[own.last])
            R = np.maximum(low + t * (high - low), 0)
            bent = own.slope * float(add(6 * t * (1 - t) / 16 * exponent * OFFSET * (R / upper) ** (exponent - 1))) / upper
    noise = noise_level(strain, own.first, own.last + 1)
    both, near = noise_level(stress, own.first, own.last + 1) ** 2 + (own.slope * noise) ** 2, noise_level(e) ** 2
    flat = noise**2 * (min(1.0, near / both) if both > 0 else 1.0) / (s2 / n)
    moves = np.diff(strain[part])
    ends = np.flatnonzero((moves > step / 20) | (moves < -step / 2)) if step > 0 else np.arange(n - 1)
    stands = np.diff(np.concatenate(([0.0], np.cumsum(u)[ends], [0.0])))
    shared = max(0.0, float(stands @ stands) - s2) * step * step / 12 / s2**2
    open_ = (shared + (step * step / 12 / (s2 / n)) ** 2) ** 0.5
    return {
        "runs": (changes - expected) / spread,
        "bend": (bend * change, bend_error),
        "envelope": (slope.size - 1, float(slope.min()), float(slope.max()), float(proofs.min()), float(proofs.max())),
        "leverage": leverage * own.error / own.slope,
        "doubts": (bent, flat / (1 - flat), open_),
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
