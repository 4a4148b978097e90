"""Upper and lower yield point, and where hardening begins."""

import numpy as np

from .tools import BLOCK, deep, first_where, last_where, median, noise_level


def upper_yield(c, maximum, end):
    """Peak, first sample that has fallen, noise; None where no fall is large and long enough before 0.5 % plastic extension."""
    x, y, slope = c.strain, c.stress, c.line.slope
    # beyond this strain every new peak has more than 0.5 % plastic extension
    beyond = 0.005 + float(y[maximum]) / slope
    stop = first_where(lambda at: x[at] > beyond, 0, end)
    if stop < end:
        highest = float(y[:stop].max())
        stop = min(end, first_where(lambda at: y[at] > highest, stop, end) + 1)
    least = 0.2 * float(y[maximum])
    noise = noise_level(y, 0, end) if end >= 30 else 0.0
    reach = 2 * ((2 * np.log(end)) ** 0.5 + 1) * noise
    at, levels = deep(y, 0, stop, lambda highest, fall: (fall >= np.maximum(0.005 * highest, reach)) & (highest >= least))
    k = 0
    # one step for each peak that such a fall follows
    while k < at.size:
        fallen, level = int(at[k]), float(levels[k])
        peak = first_where(lambda s: y[s] >= level, 0, fallen)
        if float(x[peak]) - level / slope > 0.005:
            return None
        behind = first_where(lambda s: y[s] > level, fallen, end)
        if float(x[fallen:behind].max() - x[peak]) >= 0.0005:
            return peak, fallen, noise
        k = int(at.searchsorted(behind))
    return None


def last_minimum(c, first, above, noise):
    """Sample of the last minimum before the stress rises for good: turning points that stand out, on means that calm the noise."""
    x, y = c.strain, c.stress
    per_sample = max(float(x[above] - x[first]) / max(above - first, 1), 1e-300)
    size = max(1, int(0.0002 / per_sample)) if noise > 1e-4 * y[first] else 1
    step = max(0.005 * float(y[first]), 6 * noise / size**0.5)
    part = y[first:above]
    cells = max(1, part.size // size)
    means = np.add.reduceat(part, np.arange(0, part.size, size))
    means /= size
    if part.size % size:
        means[-1] *= size / (part.size % size)
    # one step for each turning point
    begin, low = 0, 0
    while begin < means.size:
        lowest = np.minimum.accumulate(means[begin:])
        risen = first_where(lambda s: means[begin:][s] > lowest[s] + step, 0, lowest.size)
        low = begin + int(means[begin : begin + risen].argmin())
        if risen == lowest.size:
            break
        begin += risen
        highest = np.maximum.accumulate(means[begin:])
        fallen = first_where(lambda s: means[begin:][s] < highest[s] - step, 0, highest.size)
        begin += fallen
    low = min(low, cells)
    cell = part[low * size : (low + 1) * size]
    return first + low * size + int(cell.argmin())


def after_first_dip(c, last, top, peak, noise):
    """The lowest sample of the level that a first dip recovers to, where it does; else the bottom of the dip."""
    x, y = c.strain, c.stress
    step = max(0.005 * float(y[peak]), 6 * noise)
    end = last + int(x[last : top + 1].searchsorted(x[peak] + 0.0025, side="right"))
    if end <= last:
        return last
    j = x[: top + 1].searchsorted(x[last:end] + 0.0025, side="right")
    highest = np.maximum.accumulate(y[last : int(j[-1])])
    level = highest[j - last - 1] - y[last:end] <= step
    k = int(level.argmax())
    if not level[k]:
        return last
    most = float(highest[j[k] - last - 1])
    if most - y[last] <= step:
        return last
    at = last + int(highest.searchsorted(most))
    leaves = first_where(lambda s: y[s] > most + step, at, top + 1)
    return last if leaves > top else at + int(y[at:leaves].argmin())


def steepest_line(x, y, width):
    """Slope and means of the steepest line over windows of a given width of x."""
    n, best = len(x), (-np.inf, 0.0, 0.0)
    # by blocks that stay in the cache
    for begin in range(0, n, BLOCK):
        stop = min(begin + BLOCK, n)
        end = min(n, max(int(x.searchsorted(x[stop - 1] + width, side="right")), stop + 1))
        before = np.empty((4, end - begin + 1))
        before[:, 0] = 0
        u, v = np.subtract(x[begin:end], x[begin], out=before[0, 1:]), np.subtract(y[begin:end], y[begin], out=before[1, 1:])
        i = np.arange(stop - begin)
        j = np.maximum(u.searchsorted(u[: stop - begin] + width, side="right"), i + 2)
        if end == n:
            # the first window that reaches the last sample is the last one
            whole = int(j.searchsorted(end - begin)) + 1
            i, j = i[:whole], np.minimum(j[:whole], end - begin)
        np.multiply(u, u, out=before[2, 1:])
        np.multiply(u, v, out=before[3, 1:])
        np.cumsum(before, axis=1, out=before)
        sx, sy, sxx, sxy = before.take(j, axis=1) - before[:, : i.size]
        count = j - i
        xx = sxx - sx * sx / count
        slope = np.where(xx > 0, (sxy - sx * sy / count) / xx, -np.inf)
        k = int(slope.argmax())
        if slope[k] > best[0]:
            best = float(slope[k]), float(x[begin] + sx[k] / count[k]), float(y[begin] + sy[k] / count[k])
        if end == n:
            break
    return best


def yield_points(c, maximum, end):
    """Samples of ReH and ReL, Ae, and the first sample of hardening; None where there is no yield point."""
    found = upper_yield(c, maximum, end)
    if not found:
        return None
    x, y = c.strain, c.stress
    peak, fallen, noise = found
    high = float(y[peak])
    top = maximum if maximum >= fallen else fallen + int(y[fallen:end].argmax())
    above = first_where(lambda s: y[s] > high, fallen, top)
    minimum = last_minimum(c, fallen, above, noise)
    if float(y[top] - y[minimum]) < max(0.005 * high, 6 * noise):
        return None
    last = after_first_dip(c, minimum, top, peak, noise)
    leaves = float(y[last]) + max(0.005 * high, 3 * noise)
    rising = last_where(lambda s: y[s] <= leaves, last, top + 1)
    slope, mean_x, mean_y = steepest_line(x[rising : top + 1], y[rising : top + 1], 0.002)
    strain = max(mean_x + (float(y[last]) - mean_y) / slope, float(x[last]))
    start = first_where(lambda s: x[s] >= strain, last, top)

    # the first dip does not count where a level lies above it
    step = max(0.001 * high, 3 * noise)
    level = median(y[fallen : start + 1 : max(1, (start - fallen) // 500)].copy()) - step
    dip = first_where(lambda s: y[s] < level, peak, start)
    back = first_where(lambda s: y[s] >= level, dip, start)
    begin = fallen
    short = float(x[back] - x[peak]) <= min(0.0025, 0.5 * (strain - float(x[peak])))
    if back < start and short and float(x[dip] - x[peak]) <= 0.001:
        stop = first_where(lambda s: x[s] - x[back] > 0.0005, back, start)
        begin = back + int(y[back:stop].argmax())
    return peak, begin + int(y[begin : start + 1].argmin()), strain - float(x[peak]), start
