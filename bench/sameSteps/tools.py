"""What the steps of `reference.py same-steps` have in common: medians, noise, levels, crossings, lines, windows between edges."""

from functools import lru_cache

import numpy as np

add = np.add.reduce
BLOCK = 16384  # samples whose scratch stays in the cache


class Unsound(ValueError):
    """The record is not sound: what the package then does is not written here."""


def median(own):
    """Of values that may be moved about; 0 of nothing."""
    n = own.size
    if n == 0:
        return 0.0
    half = n >> 1
    if n & 1:
        own.partition(half)
        return float(own[half])
    own.partition((half - 1, half))
    return float(own[half - 1] + own[half]) / 2


def noise_level(y, first=0, end=None):
    """Standard deviation of the noise by the median third difference at some 300 places."""
    end = len(y) if end is None else end
    places = end - first - 3
    if places < 1:
        return 0.0
    stride = -(-places // 301)
    stop = first + places
    third = y[first + 1 : stop + 1 : stride] - y[first + 2 : stop + 2 : stride]
    third *= 3
    third += y[first + 3 : stop + 3 : stride]
    third -= y[first:stop:stride]
    return median(np.abs(third, out=third)) / (0.674489750196082 * 20**0.5)


def first_where(test, first, end):
    """First sample in a range that passes a test of slices, by growing blocks; `end` where none does."""
    size = 1024
    while first < end:
        stop = min(first + size, end)
        passed = test(slice(first, stop))
        at = int(passed.argmax())
        if passed[at]:
            return first + at
        first, size = stop, 2 * size
    return end


def last_where(test, first, end):
    """Last sample in a range that passes a test of slices; `first - 1` where none does."""
    size = 1024
    while end > first:
        start = max(end - size, first)
        passed = test(slice(start, end))[::-1]
        at = int(passed.argmax())
        if passed[at]:
            return end - 1 - at
        end, size = start, 2 * size
    return first - 1


def reached(column, levels, first, end):
    """First sample in a range at or above each of ascending levels; `end` where there is none."""
    if end - first <= 2 * BLOCK:
        return first + np.maximum.accumulate(column[first:end]).searchsorted(levels)
    whole = (end - first) >> 10
    highest = column[first : first + (whole << 10)].reshape(whole, 1024).max(axis=1)
    blocks = np.maximum.accumulate(highest).searchsorted(levels)
    return np.array([first_where(lambda at: column[at] >= level, first + (int(k) << 10), end) for k, level in zip(blocks, levels)])


def cumulated(column):
    """Sums before each sample, and of all."""
    sums = np.empty(column.size + 1)
    sums[0] = 0
    np.cumsum(column, out=sums[1:])
    return sums


def about(column, at, least, end=None):
    """First and last sample of the stretch about one in which a column is at or above a level."""
    end = len(column) if end is None else end
    return last_where(lambda s: column[s] < least, 0, at) + 1, first_where(lambda s: column[s] < least, at, end) - 1


def runs(mask):
    """Begin and end (excluded) of the stretches in which a mask is true."""
    edges = np.flatnonzero(mask[1:] != mask[:-1]) + 1
    if mask[0]:
        edges = np.concatenate(([0], edges))
    if edges.size & 1:
        edges = np.concatenate((edges, [mask.size]))
    return edges[::2], edges[1::2]


def lasting(test, first, end, samples, x=None):
    """First sample from which on a test of slices passes for so many samples (or over 0.05 % of x), or to the end; -1 where none."""
    size = 1024
    while first < end:
        stop = min(first + size, end)
        passed = test(slice(first, stop))
        if passed.any():
            edges = (np.flatnonzero(passed[1:] != passed[:-1]) + 1).tolist()
            if passed[0]:
                edges.insert(0, 0)
            open_ = len(edges) & 1
            if open_:
                edges.append(stop - first)
            # one step for each stretch that passes
            for begin, behind in zip(edges[::2], edges[1::2]):
                if behind - begin >= samples or (x is not None and x[first + behind - 1] - x[first + begin] >= 0.0005):
                    return first + begin
            if open_:
                start = first + edges[-2]
                if stop == end:
                    return start if x is None or start < end - 1 else -1
                stop = start
        first, size = stop, 2 * size
    return -1


def sustained(x, y, slope, origin, first, end):
    """First sample from which the curve stays below a line for five samples or 0.05 % strain, or to the end; -1 where none."""
    return lasting(lambda at: y[at] < slope * (x[at] - origin), first, end, 5, x)


def cell_means(x, y, first, last, wanted):
    """Samples first to last as about so many means."""
    size = max(1, (last - first + 1) // wanted)
    if size == 1:
        return x[first : last + 1], y[first : last + 1], 1
    cells = (last - first + 1) // size
    part = slice(first, first + cells * size)
    return add(x[part].reshape(cells, size), axis=1) / size, add(y[part].reshape(cells, size), axis=1) / size, size


def line(x, y):
    """Slope, intercept, standard error, R², residual deviation of a least-squares line."""
    n = x.size
    mean_x, mean_y = float(add(x)) / n, float(add(y)) / n
    u, v = x - mean_x, y - mean_y
    xx, xy, yy = float(u @ u), float(u @ v), float(v @ v)
    slope = xy / xx
    v -= slope * u
    rest = float(v @ v)
    variance = rest / (n - 2) if n > 2 else 0.0
    return slope, mean_y - slope * mean_x, (variance / xx) ** 0.5, 1 - rest / yy, variance**0.5


def slopes(t, *columns):
    """Least-squares slopes of columns over t, row by row, with the sums of squares of t."""
    t = t - add(t, axis=1, keepdims=True) / t.shape[1]
    tt = np.einsum("ij,ij->i", t, t)
    return tt, *(np.einsum("ij,ij->i", t, column) / tt for column in columns)


def powers(u, out):
    """Fills the rows of `out` with powers of u, from the one that its first row holds."""
    for k in range(1, len(out)):
        np.multiply(out[k - 1], u, out=out[k])


def deep(column, first, end, condition):
    """Samples that lie below the highest so far by what a condition on that and the fall asks for, and the highest so far there."""
    part = column[first:end]
    if part.size <= 2 * BLOCK:
        highest = np.maximum.accumulate(part)
        at = np.flatnonzero(condition(highest, highest - part))
        return at + first, highest[at]
    # by blocks at first: the lowest of each against the highest so far
    whole = part.size >> 10
    rows = part[: whole << 10].reshape(whole, 1024)
    so_far = np.maximum.accumulate(rows.max(axis=1))
    flagged = np.flatnonzero(condition(so_far, so_far - rows.min(axis=1)))
    before = np.where(flagged > 0, so_far[flagged - 1], -np.inf)
    highest = np.maximum(np.maximum.accumulate(rows[flagged], axis=1), before[:, None])
    row, column_ = np.nonzero(condition(highest, highest - rows[flagged]))
    tail = np.maximum(np.maximum.accumulate(part[whole << 10 :]), so_far[-1])
    behind = np.flatnonzero(condition(tail, tail - part[whole << 10 :]))
    at = np.concatenate(((flagged[row] << 10) + column_, behind + (whole << 10)))
    return at + first, np.concatenate((highest[row, column_], tail[behind]))


@lru_cache
def pairs(edges, apart):
    """Index of the first and the last edge of every window that spans at least so many cells."""
    return np.triu_indices(edges, apart)


def equal_edges(first, end, cells):
    """Edges of equal cells; of a long range less its last few samples, so that it can be laid out as rows."""
    n = end - first
    cells = min(cells, n)
    if n <= BLOCK:
        return first + np.floor(np.arange(cells + 1) * n / cells + 0.5).astype(int)
    return first + np.arange(cells + 1) * (n // cells)


class Windows:
    """Every window between edges: samples, slope, means, rise, and the sum of squares about its line where it is asked for."""

    def __init__(self, x, y, edges, apart=1, scatter=False):
        first, end, cells = int(edges[0]), int(edges[-1]), len(edges) - 1
        middle = (first + end) >> 1
        x0, y0 = float(x[middle]), float(y[middle])
        rows = 5 if scatter else 4
        if end - first <= BLOCK:
            before = np.empty((rows, end - first + 1))
            before[:, 0] = 0
            part = before[:, 1:]
            u, v = np.subtract(x[first:end], x0, out=part[0]), np.subtract(y[first:end], y0, out=part[1])
            for k, (a, b) in enumerate(((u, u), (u, v), (v, v))[: rows - 2], 2):
                np.multiply(a, b, out=part[k])
            sums = before.cumsum(axis=1).take(edges - first, axis=1)
        else:
            # cell by cell, so that the scratch stays in the cache; one product of matrices gives all sums
            size = (end - first) // cells
            sums, grams, part = np.zeros((rows, cells + 1)), np.empty((cells, 3, 3)), np.ones((3, size))
            for k, at in enumerate(range(first, end, size)):
                np.subtract(x[at : at + size], x0, out=part[1])
                np.subtract(y[at : at + size], y0, out=part[2])
                np.matmul(part, part.T, out=grams[k])
            np.cumsum(grams[:, (0, 0, 1, 1, 2)[:rows], (1, 2, 1, 2, 2)[:rows]].T, axis=1, out=sums[:, 1:])
        self.a, self.b = a, b = pairs(cells + 1, apart)
        part = sums.take(b, axis=1)
        part -= sums.take(a, axis=1)
        self.first, self.end = edges[a], edges[b]
        self.count = n = self.end - self.first
        mean_x, mean_y = part[0] / n, part[1] / n
        self.xx = part[2] - part[0] * mean_x
        xy = part[3] - part[0] * mean_y
        self.slope = xy / self.xx
        self.x, self.y = mean_x + x0, mean_y + y0
        if scatter:
            self.rest = np.maximum(part[4] - part[1] * mean_y - self.slope * xy, 0)
        self.rise = self.slope * (x[np.maximum(self.end - 1, 0)] - x[np.minimum(self.first, end - 1)])
