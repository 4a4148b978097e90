"""Onset of necking by a smooth maximum and by a corner, and Hollomon's law."""

import numpy as np

from .tools import about, add, cell_means, noise_level, powers

NORMAL = np.add.outer(np.arange(4), np.arange(4))
WIDTHS = np.array([0.16, 0.23, 0.32, 0.45, 0.63, 0.8, 1.0])


def region(force):
    """First and last sample around the maximum of the running mean, down to 98 % of it, and its place."""
    n = len(force)
    highest = float(force.max())
    wanted = (noise_level(force) * 12 / (0.02 * highest)) ** 2
    half = int(min(wanted, n / 8) / 2)
    means = force
    if half:
        sums = np.zeros(n + 1)
        np.cumsum(force, out=sums[1:])
        at = np.arange(n)
        begin, end = np.maximum(at - half, 0), np.minimum(at + half + 1, n)
        means = (sums[end] - sums[begin]) / (end - begin)
    top = half + int(means[half : n - half].argmax())
    first, last = about(means, top, 0.98 * float(means[top]))
    return first, last, top


def smooth_maximum(x, y, top):
    """The maximum of the cubic over the widest region that agrees with all narrower ones; the cubics of all widths at once."""
    n = len(x)
    noise = noise_level(y)
    low, high = float(x[0]), float(x[-1])
    centre, scale = (low + high) / 2, (high - low) / 2
    mean = float(add(y)) / n
    # sums of the powers of u, of y with them and of its square, over the samples before each
    rows = np.empty((12, n + 1))
    rows[:, 0] = 0
    inner = rows[:, 1:]
    inner[0] = 1
    u = (x - centre) / scale
    powers(u, inner[:7])
    np.subtract(y, mean, out=inner[7])
    powers(u, inner[7:11])
    np.multiply(inner[7], inner[7], out=inner[11])
    sums = rows.cumsum(axis=1)
    total = sums[:, -1]
    _, b, two, three = np.linalg.solve(total[NORMAL], total[7:11]).tolist()
    under = two * two - 3 * three * b
    widest = (b / (under**0.5 - two) if two < 0 else -(two + under**0.5) / (3 * three)) if under > 0 else np.inf
    middle = centre + scale * widest if abs(widest) <= 1 else float(x[top])
    reach = max(middle - low, high - middle) * WIDTHS
    first, end = x.searchsorted(middle - reach), x.searchsorted(middle + reach, side="right")
    first[-1], end[-1] = 0, n
    part = (sums.take(end, axis=1) - sums.take(first, axis=1)).T
    places, heights, scatters, noises = peaks(part)
    enough, begins, ends = (end - first >= 8).tolist(), u.take(first, mode="clip").tolist(), u.take(end - 1, mode="clip").tolist()
    found, moved, from_, to = None, 0.0, -np.inf, np.inf
    for k, (place, height, scatter, unit) in enumerate(zip(places.tolist(), heights.tolist(), scatters.tolist(), noises.tolist())):
        if not enough[k] or not begins[k] <= place <= ends[k]:
            continue
        from_, to = max(from_, place - 1.5 * unit * noise), min(to, place + 1.5 * unit * noise)
        if found and from_ > to:
            break
        moved = place - found[0] if found else 0.0
        found = place, height, scatter
    if not found:
        return None
    return centre + scale * found[0], mean + found[1], scale * np.hypot(found[2], moved)


def peaks(sums):
    """Place and height of the maxima of cubics by their sums, their deviation by scatter, and by a noise of 1."""
    n, right = sums[:, 0], sums[:, 7:11]
    inverse = np.linalg.inv(sums[:, NORMAL])
    c = (inverse @ right[:, :, None])[:, :, 0]
    _, b, two, three = c.T
    root = np.sqrt(two * two - 3 * three * b)
    u = np.where(two < 0, b / (root - two), -(two + root) / (3 * three))
    v, w = 2 * u, 3 * u * u
    i = inverse
    variance = i[:, 1, 1] + v * (2 * i[:, 1, 2] + v * i[:, 2, 2]) + w * (2 * i[:, 1, 3] + 2 * v * i[:, 2, 3] + w * i[:, 3, 3])
    unit = np.sqrt(variance) / np.abs(2 * two + 6 * three * u)
    height = c[:, 0] + u * (b + u * (two + u * three))
    rest = np.maximum(sums[:, 11] - (c * right).sum(axis=1), 0)
    return u, height, unit * np.sqrt(rest / (n - 4)), unit


class Corner:
    """Sums that tell the least squares of a corner at any place: cubic without its linear term on the left, parabola on the right."""

    def __init__(self, a, y):
        n = len(a)
        rows = np.empty((17, n + 1))
        left, right = rows[:10], rows[10:]
        left[:, 0] = right[:, 0] = 0
        left[0, 1:], left[6, 1:] = a, y
        powers(a, left[:6, 1:])
        powers(a, left[6:, 1:])
        b, back = 1 - a[::-1], y[::-1]
        right[0, 1:], right[4, 1:] = b, back
        powers(b, right[:4, 1:])
        powers(b, right[4:, 1:])
        np.cumsum(rows, axis=1, out=rows)
        right[:] = right[:, ::-1].copy()
        self.place, self.table = a, rows
        self.n, self.sum, self.squares = n, float(add(y)), float(y @ y)

    def rest(self, w):
        """Sum of squares with the corner at each of some places, infinite where it is no maximum; and its heights."""
        i = self.place.searchsorted(w)
        p1, p2, p3, p4, p5, p6, q0, q1, q2, q3, r1, r2, r3, r4, s0, s1, s2 = self.table.take(i, axis=1)
        p0, r0, z = i, self.n - i, 1 - w
        l2 = p2 - w * (2 * p1 - w * p0)
        l3 = p3 - w * (3 * p2 - w * (3 * p1 - w * p0))
        l4 = p4 - w * (4 * p3 - w * (6 * p2 - w * (4 * p1 - w * p0)))
        l5 = p5 - w * (5 * p4 - w * (10 * p3 - w * (10 * p2 - w * (5 * p1 - w * p0))))
        l6 = p6 - w * (6 * p5 - w * (15 * p4 - w * (20 * p3 - w * (15 * p2 - w * (6 * p1 - w * p0)))))
        y2 = q2 - w * (2 * q1 - w * q0)
        y3 = q3 - w * (3 * q2 - w * (3 * q1 - w * q0))
        k2 = r2 - z * (2 * r1 - z * r0)
        k4 = r4 - z * (4 * r3 - z * (6 * r2 - z * (4 * r1 - z * r0)))
        yr = s2 - z * (2 * s1 - z * s0)
        share = k2 / k4
        n = self.n - share * k2
        y0 = self.sum - share * yr
        m2, m3 = l2 / n, l3 / n
        a = l4 - l2 * m2
        b = (l5 - m2 * l3) / a
        v2 = y2 - m2 * y0
        cube = (y3 - m3 * y0 - b * v2) / (l6 - l3 * m3 - b * b * a)
        square = v2 / a - b * cube
        height = (y0 - l2 * square - l3 * cube) / n
        falls = (yr - k2 * height) / k4
        rest = self.squares - height * self.sum - square * y2 - cube * y3 - falls * yr
        maximum = (square < 0) & (falls < 0) & (abs(w - 0.5) <= 0.42 + 1e-9)
        return np.where(maximum, np.maximum(rest, 0), np.inf), height


PLACES = np.arange(101) / 100


def necking_corner(x, y):
    """Place and height of the corner that fits best, deviation of its place by the likelihood of all, sum of squares."""
    n = len(x)
    origin, span = float(x[0]), float(x[-1] - x[0])
    mean = float(add(y)) / n
    corner = Corner((x - origin) / span, y - mean)
    low, high = 0.08, 0.92
    # places where the likelihood is not nothing, narrowed until enough of them are
    for _ in range(12):
        places = low + (high - low) * PLACES
        rests, heights = corner.rest(places)
        k = int(rests.argmin())
        least = float(rests[k])
        if least == np.inf:
            return None
        likely = np.exp((5 - n) / 2 * np.log(rests / least))
        inside = np.flatnonzero(likely > 1e-5)
        if inside[-1] - inside[0] >= 30:
            break
        low, high = float(places[max(inside[0] - 1, 0)]), float(places[min(inside[-1] + 1, 100)])
    away = places - places[k]
    total = float(add(likely))
    shift = float(likely @ away) / total
    deviation = max(float(likely @ (away * away)) / total - shift * shift, (high - low) ** 2 / 12e4) ** 0.5
    return origin + span * (float(places[k]) + shift), mean + float(heights[k]), span * deviation, least


def polynomial_rests(x, y):
    """Sums of squares about a cubic and a polynomial of the fourth degree."""
    n = len(x)
    u = (x - (x[0] + x[-1]) / 2) * (2 / (x[-1] - x[0]))
    v = y - float(add(y)) / n
    rows = np.empty((6, n))
    rows[0], rows[5] = 1, v
    powers(u, rows[:5])
    # the last row of the factor: what each power more explains, and what is left
    *_, fourth, rest = np.linalg.cholesky(rows @ rows.T)[5].tolist()
    return fourth * fourth + rest * rest, rest * rest


def necking(strain, stress, maximum, end):
    """True strain and stress at the onset of necking with its uncertainty: the mean of both shapes by their shares of belief."""
    first, last = about(stress, maximum, 0.96 * float(stress[maximum]), end)
    means, force, _ = cell_means(strain, stress, first, last, 150)
    true = np.log1p(means)
    first, last, top = region(force)
    if top >= len(force) - 2 or last - first < 7:
        return None
    x, y = true[first : last + 1], force[first : last + 1]
    smooth = smooth_maximum(x, y, top - first)
    cx, cy, _ = cell_means(x, y, 0, len(x) - 1, 128)
    corner, share = necking_corner(cx, cy), 0.0
    if corner:
        n = len(cx)
        cubic, quartic = polynomial_rests(cx, cy)
        with np.errstate(over="ignore"):
            over = n**0.5 * (cubic / corner[3]) ** (-n / 2) + (quartic / corner[3]) ** (-n / 2)
        share = 1 / (1 + over / 2)
    one, other = smooth or corner, corner or smooth
    if not one:
        return None
    apart = other[0] - one[0]
    place = one[0] + share * apart
    doubt = ((1 - share) * one[2] ** 2 + share * other[2] ** 2 + share * (1 - share) * apart**2) ** 0.5
    return place, (one[1] + share * (other[1] - one[1])) * np.exp(place), doubt


def hollomon(c, first, maximum):
    """K, n, their standard errors and R² by least squares in stress, from 2 % true plastic strain on where the curve reaches twice as far."""
    if maximum - first < 5:
        return None
    strain, stress, _ = cell_means(c.strain, c.stress, first, maximum, 150)
    stress = stress * (1 + strain)
    plastic = np.log1p(strain) - stress / c.line.slope
    flows = (plastic > 1e-12) & (stress > 0)
    plastic, stress = plastic[flows], stress[flows]
    low, high = float(plastic[0]), float(plastic[-1])
    if high - low < 3 * np.hypot(stress[-1] * c.line.error / c.line.slope, c.line.deviation) / c.line.slope:
        return None
    if high > 0.04:
        inside = (plastic >= max(0.02, low)) & (plastic <= high)
        plastic, stress = plastic[inside], stress[inside]
    m = plastic.size
    logs = np.log(plastic)
    about_mean = logs - float(add(logs)) / m
    n = float(about_mean @ np.log(stress)) / float(about_mean @ about_mean)
    power = np.exp(n * logs)
    K = float(power @ stress) / float(power @ power)
    rows = np.empty((3, m))
    for _ in range(50):
        np.multiply(logs, n, out=rows[0])
        np.exp(rows[0], out=rows[0])
        np.multiply(rows[0], logs, out=rows[1])
        np.subtract(stress, K * rows[0], out=rows[2])
        (aa, ab, ar), (_, bb, br), (_, _, rest) = (rows @ rows.T).tolist()
        # the second row lacks the factor K
        determinant = aa * bb - ab * ab
        step_K, step_n = (bb * ar - ab * br) / determinant, (aa * br - ab * ar) / determinant / K
        if step_K * ar + step_n * K * br <= 1e-12 * rest + 1e-29 * m * K * K:
            break
        K, n = K + step_K, n + step_n
    variance = rest / (m - 2)
    errors = (variance * bb / determinant) ** 0.5, (variance * aa / determinant) ** 0.5 / K
    v = stress - stress[0]
    total = float(v @ v) - float(add(v)) ** 2 / m
    return K, n, errors, 1 - rest / total
