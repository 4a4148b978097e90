"""Where a record may leave its loading: pauses, zeros, falls, jumps, a lag, an extensometer that ends, unloading, fracture."""

import numpy as np

from .tools import Unsound, cumulated, deep, first_where, last_where, median, noise_level, runs


def pauses(o):
    """Stretches of half a second that are level while the force does not rise, between two slopes: the same rule, laid on all samples at once."""
    force, motion, clock = o.force, o.motion, o.clock
    first, last = o.first, first_where(lambda at: force[at] < 0.02 * o.highest, o.top, len(force)) - 1
    size = max(1, (last - first) // 400)
    at = slice(first, last + 1, size)
    x, t = motion[at], clock[at]
    ways, times = x[1:] - x[:-1], t[1:] - t[:-1]
    moving = times > 0
    span = float(clock[last] - clock[first])
    whole = float(motion[last] - motion[first]) / span
    usual = median(ways[moving] / times[moving])
    slow = 0.05 * (usual if usual > 0.1 * whole else whole)
    step, noise = o.motion_step, o.motion_noise
    band = max(7 * noise, 1.5 * step)
    stride = max(1, int(0.5 * (last - first) / span / 50))
    at = slice(first, last + 1, stride)
    x, t, F = motion[at], clock[at], force[at]
    j = t.searchsorted(t + 0.5)
    n = int(j.searchsorted(t.size))
    j = j[:n]
    level = x[j] - x[:n] < slow * (t[j] - t[:n]) + band
    if not level.any():
        return 0
    level &= F[j] - F[:n] <= 4 * noise_level(force, first, last + 1)
    if not level.any():
        return 0
    begin, behind = runs(level)
    end = j[behind - 1]
    length = end - begin
    before, after = np.maximum(begin - length, 0), np.minimum(end + length, t.size - 1)
    speed = lambda a, b: np.where(t[b] > t[a], (x[b] - x[a]) / (t[b] - t[a]), np.inf)
    around = np.minimum(speed(before, begin), speed(end, after))
    moved = np.abs(x[end] - x[begin]) / (t[end] - t[begin])
    stood = (moved < 0.2 * around) & (moved + max(4 * noise, step) / (t[end] - t[begin]) < 0.6 * around)
    for k in np.flatnonzero(stood):
        # a crosshead that goes back and on again moved
        a, b = begin[k], end[k]
        if float(np.ptp(x[a : b + 1])) <= slow * float(t[b] - t[a]) + band:
            raise Unsound("pauses")
    return len(begin)


def several_tests(o, up):
    """Whether the force is gone and comes back: nothing is read after it rose, up to the last loaded sample."""
    if float(o.force[up : o.last + 1].min()) < 0.02 * o.highest:
        raise Unsound("several tests")


def zeros(o):
    """A step of the zero before loading; the level before loading; the level after fracture."""
    force, highest = o.force, o.highest
    tolerance = max(5 * o.noise, 1.5 * o.step, 1e-9 * highest)
    least = max(2 * tolerance, 0.002 * highest)
    end = last_where(lambda at: force[at] <= 0.1 * highest, 0, o.top) + 1
    if end > 10:
        jumps = np.flatnonzero(np.abs(force[5 : end - 4] - force[4 : end - 5]) >= least) + 5
        for i in jumps[::-1]:
            sides = force[i - 5 : i], force[i : i + 5]
            if all(float(np.abs(side - side.mean()).max()) <= tolerance for side in sides):
                raise Unsound("a zero that was set late")
    tolerance = max(5 * o.noise, 1.5 * o.step, 0.001 * highest)
    start = median(force[: min(10, o.top)].copy())
    end = first_where(lambda at: np.abs(force[at] - start) > tolerance, 0, o.top)
    if end >= 10:
        usable = -(-3 * end // 4)
        half = usable >> 1
        drift = abs(float(force[half:usable].mean() - force[:half].mean()))
        if drift <= max(3 * max(o.noise, o.step) / (usable / 4) ** 0.5, 1e-6 * highest):
            return float(force[:usable].mean())
    return None


def zero_moves(o):
    """Falls in one sample, five times the changes beside them."""
    least = max(10 * o.noise, 5 * o.step, 0.02 * o.highest)
    if -o.low[0] < least:
        return
    force = o.force[o.first : o.last]
    fall = force[:-1] - force[1:]
    for i in np.flatnonzero(fall[4:-4] >= least) + 4:
        beside = np.abs(fall[i - 3 : i + 4])
        beside[3] = 0
        if fall[i] >= 5 * beside.max() and abs(force[i + 1]) < 0.02 * o.highest:
            raise Unsound("a zero that was set under load")


def turns(o, least, still):
    """Where the drive went back under load: the motion lies behind its farthest by more than it stands still with."""
    if o.low[1] >= 0:
        return
    x, F = o.motion[: o.last + 1], o.force[: o.last + 1]
    farthest = np.maximum.accumulate(x)
    behind = farthest - x
    at = np.flatnonzero(behind > still)
    if at.size == 0:
        return
    turn = farthest.searchsorted(farthest[at])
    fall = F[turn] - F[at]
    if ((fall >= least) & (behind[at] > 0.5 * fall / o.stiffness)).any():
        raise Unsound("the drive went back")


def falls(o, least, still):
    """Falls from the highest force so far, each with what it looks like: yielding, or a slip."""
    force, motion, first, end = o.force, o.motion, o.first, o.top + 1
    at, levels = deep(force, first, end, lambda highest, fall: fall >= least)
    found, k = 0, 0
    while k < at.size:
        i, level = int(at[k]), float(levels[k])
        peak = last_where(lambda s: force[s] >= level, first, i)
        back = min(first_where(lambda s: force[s] >= level, i, end), end - 1)
        valley = i + int(force[i : back + 1].argmin())
        low, fall = float(force[valley]), level - float(force[valley])
        a = first_where(lambda s: force[s] >= low + 0.2 * fall, valley, back)
        b = first_where(lambda s: force[s] >= low + 0.8 * fall, a, back)
        a = max(valley, a - 1) if a == b else a
        way = float(motion[b] - motion[a])
        recovery = float(force[b] - force[a]) / way if way > 0 else (np.inf if b > a else 0.0)
        # one that comes back as steeply as the piece is stiff: a slip, unless one noisy sample made it, or the piece yielded already
        if recovery >= 0.5 * o.stiffness:
            rise = level - float(force[peak - 1]) - o.stiffness * (float(motion[peak] - motion[peak - 1]) + o.motion_step)
            low = max(last_where(lambda s: force[s] <= 0.8 * level, first, peak), first)
            elastic = level - float(force[low]) >= 0.5 * o.stiffness * float(motion[peak] - motion[low])
            if rise <= 0.75 * fall and elastic:
                raise Unsound("a slip")
        found += 1
        k = int(at.searchsorted(back, side="right"))
    return found


def saturated(o):
    """Equal highest samples, and a motion that stands at its end."""
    force, motion = o.force, o.motion
    if np.count_nonzero(force[o.top : o.last + 1] == o.highest) >= 5:
        part = force[o.first : o.last + 1]
        begin, behind = runs(part[1:] == part[:-1])
        longest, top = (behind - begin + 1), part[begin] == o.highest
        if longest[top].max(initial=0) >= 5 and longest[top].max(initial=0) >= 2 * longest[~top].max(initial=0):
            raise Unsound("saturated")
    if o.last >= 20 and (motion[o.last - 20 : o.last] == motion[o.last]).all():
        raise Unsound("the motion stands")


def jumps(o):
    """Jumps of the motion: no change is larger than 0.3 % of the way, or none stands out of those around it."""
    x = o.motion[o.first : o.last + 1]
    share = 0.003 * abs(float(x[-1] - x[0]))
    if max(o.high[1], -o.low[1]) <= share:
        return
    least = max(share, 10 * noise_level(x), 5 * o.motion_step)
    change = np.abs(x[1:] - x[:-1])
    at = np.flatnonzero(change[5:-6] > least) + 5
    near = np.max([change[at + k] for k in range(-5, 6) if k], axis=0, initial=0)
    if (change[at] >= 5 * near).any():
        raise Unsound("jumps")


def slips_back(o, half):
    """Steps back in the elastic part of the motion, across lines over means: no step is larger than what noise, readings and the curve itself make."""
    if not o.passed > 0:
        return
    motion, first, top = o.motion, o.first, o.top
    far = float(motion[first]) + 4 * o.highest / o.passed
    end = first_where(lambda s: motion[s] >= far, first, top + 1)
    beside = max(6, int((half - first) / 20 + 0.5))
    if end - first < 4 * beside:
        return
    width = beside // 16
    if (width < 2 or step_back(o, first, end, beside, width, 0.5)) and step_back(o, first, end, beside, 1, 1.0):
        raise Unsound("the extensometer slipped back")


def step_back(o, first, end, beside, width, counts):
    """Whether some step, of means of so many samples, is larger than so much of what noise, readings and the curve make."""
    m, cells = beside // width, (end - first) // width
    part = slice(first, first + cells * width)
    F, x = (column[part] if width == 1 else column[part].reshape(cells, width).mean(axis=1) for column in (o.force, o.motion))
    rest = x - float(x[0]) - F / o.passed
    sums, turned = cumulated(rest), cumulated(rest * np.arange(cells))
    squares, share = m * (4 * m * m - 1) / 6, m * m / 2
    before, after = sums[m:-m] - sums[: -2 * m], sums[2 * m :] - sums[m:-m]
    both = turned[2 * m :] - turned[: -2 * m] - (np.arange(m, cells - m + 1) - 0.5) * (before + after)
    step = ((after - before) / 2 - share / squares * both) / (m / 2 - share * share / squares)
    rise, way = F[2 * m - 1 :] - F[: F.size - 2 * m + 1], x[2 * m - 1 :] - x[: x.size - 2 * m + 1]
    elastic = (rise > 16 * o.noise) & (rise > 0.5 * o.passed * (way - step))
    back = -step[elastic]
    floor = max(8 * o.noise * (8 / beside) ** 0.5, 3 * o.step) / o.passed
    if back.size < m or back.max() < counts * floor:
        return False
    noise = np.hypot(noise_level(o.motion, first, first + back.size * width), o.noise / o.passed)
    least = max(8 * noise * (8 / beside) ** 0.5, 8 * median(np.abs(back)) / 0.6745, 3 * o.motion_step, floor)
    large = np.flatnonzero(elastic & (-step >= counts * least)) + m
    # it comes within three samples for the most part, and the motion goes back
    if width == 1:
        large = large[(rest[np.minimum(large + 1, cells - 1)] - rest[large - 2] < 0.5 * step[large - m]) & (x[large] < x[large - 1])]
    return large.size > 0


def channel_lag(o, begin, end):
    """The lag between force and motion, from how their rates pulse together; None where the drive is too even to tell."""
    count = min(end - begin, 4096)
    if count < 100:
        return None
    F, x = o.force[end - count : end + 1], o.motion[end - count : end + 1]
    quiet = 4 * max(o.motion_noise, o.motion_step / 3)
    way = float(x[-1] - x[0]) / count
    width = max(1, count // 200)
    while width <= count / 8:
        moves = x[width:count] - x[: count - width]
        mean = float(moves.sum()) / moves.size
        spread = max(0.0, float(moves @ moves) / moves.size - mean * mean) ** 0.5
        if spread > 0.1 * way * width and spread > quiet:
            pulls = F[width:count] - F[: count - width]
            return best_lag(pulls - pulls.mean(), moves - mean, min(50, count >> 2))
        width *= 2
    return None


def best_lag(pulls, moves, farthest):
    """The lag at which the rates agree best, of equal answers the nearest; None where it is not clearly better than none."""
    n = moves.size
    padded = np.zeros(n + 2 * farthest)
    padded[farthest:-farthest] = pulls
    products = np.correlate(padded, moves, "valid")
    lags = np.arange(-farthest, farthest + 1)
    pulled, moved = np.zeros(n + 1), np.zeros(n + 1)
    np.cumsum(pulls * pulls, out=pulled[1:])
    np.cumsum(moves * moves, out=moved[1:])
    begin, end = np.maximum(0, -lags), np.minimum(n, n - lags)
    found = products / np.sqrt((pulled[end + lags] - pulled[begin + lags]) * (moved[end] - moved[begin]))
    none = best = float(found[farthest])
    samples = 0
    for k in sorted(np.flatnonzero(found > none + 0.01).tolist(), key=lambda k: abs(k - farthest)):
        if found[k] > best + 0.01:
            best, samples = float(found[k]), k - farthest
    return samples if abs(samples) >= 2 and best > 0.6 and best > none + 0.1 else None


def extensometer_end(o):
    """An extensometer that stands while the force goes on, or falls back by more than the piece can."""
    x, first, last = o.motion, o.first, o.last
    if last - first < 40:
        return
    noise = max(o.motion_noise, noise_level(x, last - 40, last + 1))
    band = max(5 * noise, 1.5 * o.motion_step, 0.01 * o.highest / o.stiffness)
    if abs(float(x[last] - x[last - 20])) <= 2 * band:
        level = median(x[last - 20 : last + 1].copy())
        stood = last_where(lambda at: np.abs(x[at] - level) > band, first, last) + 1
        if last - stood >= 20 and float(np.ptp(o.force[stood : last + 1])) / o.stiffness > 2 * band:
            raise Unsound("the extensometer stands")
    if o.low[1] < 0 and float((np.maximum.accumulate(x[first : last + 1]) - x[first : last + 1]).max()) > 4 * band:
        raise Unsound("the extensometer falls back")


def unloaded(o):
    """A drive that let the force go and the motion back with it to the end of the record."""
    until = min(o.last + 1, len(o.force) - 1)
    turn = until if o.low[1] >= 0 else until - int(o.motion[o.top : until + 1][::-1].argmax())
    fall, back = float(o.force[turn] - o.force[until]), float(o.motion[turn] - o.motion[until])
    if fall >= max(10 * o.noise, 3 * o.step, 0.01 * o.highest) and back >= 0.5 * fall / o.stiffness and o.force[turn] >= 0.3 * o.highest:
        raise Unsound("unloaded")


def broken_at(o):
    """Last sample before the force fell away, and how."""
    force, top, highest, n = o.force, o.top, o.highest, len(o.force)
    gone = first_where(lambda at: force[at] < 0.02 * highest, top, n)
    if gone < n or (-o.low[0] > 0.2 * highest and (force[top:] < 0.15 * highest).any()):
        raise Unsound("the record goes on after fracture")
    return n - 1 if force[-1] < 0.99 * highest else None


def readings(o):
    """Steps and noise over the range, of either channel."""
    way = abs(float(o.motion[o.last] - o.motion[o.first]))
    return [
        (step > 0 and round(reach / step) < 2000, noise > max(0.005 * reach, step))
        for step, noise, reach in ((o.step, o.noise, o.highest), (o.motion_step, o.motion_noise, way))
    ]
