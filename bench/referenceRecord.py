"""First looks at a record: checks of its columns, survey, outline, and everything that is no sound loading."""

from types import SimpleNamespace

import numpy as np
from referenceTools import Unsound, deep, first_where, last_where, median, noise_level, reached, runs

# samples of three columns whose changes stay in the cache
CHUNK = 8192
LEVELS = 0.05 * np.arange(1, 16)


def check(columns):
    """Finite and of a size that can be squared, by one sum of squares for each column."""
    for column in columns:
        if not 1e-60 < float(column @ column) < 1e60:
            raise ValueError("not finite, or out of range")


def changes(force, motion, clock):
    """Least and greatest change of each column, and how often force and motion repeat, by blocks that stay in the cache."""
    n = len(force)
    scratch = np.empty((3, min(n - 1, CHUNK)))
    low, high = [np.inf] * 3, [-np.inf] * 3
    repeated = 0
    for begin in range(1, n, CHUNK):
        end = min(begin + CHUNK, n)
        rows = scratch[:, : end - begin]
        for k, column in enumerate((force, motion, clock)):
            np.subtract(column[begin:end], column[begin - 1 : end - 1], out=rows[k])
        least, most = rows.min(axis=1).tolist(), rows.max(axis=1).tolist()
        low, high = list(map(min, low, least)), list(map(max, high, most))
        if least[1] <= 0 <= most[1]:
            same = rows[1] == 0
            same &= rows[0] == 0
            repeated += np.count_nonzero(same)
    return low, high, repeated


def resolution(column):
    """One step of a column that was read in steps, else 0."""
    n = len(column)
    stride = max(1, n // 20_000)
    change = column[1::stride] - column[: n - 1 : stride]
    np.abs(change, out=change)
    rounding = 1e-12 * max(abs(float(column[::stride].max())), abs(float(column[::stride].min())))
    step = float(np.min(change, where=change > rounding, initial=np.inf))
    if step == np.inf:
        return 0.0
    change /= step
    # most that are not stepped are told by their first changes
    for part in (change[:1024], change) if n > 4096 else (change,):
        moved = part > 0.5
        whole = np.rint(part)
        whole -= part
        np.abs(whole, out=whole)
        counted = moved & (part <= 1000)
        many = np.count_nonzero(counted)
        near = np.count_nonzero(counted & (whole < 0.02))
        if many - near > 0.01 * n + 1:
            return 0.0
    several = np.count_nonzero(moved[1:] & ((change[1:] > 1.5) | ~moved[:-1])) + int(change[0] > 1.5)
    return step if several >= 5 and many >= 10 and near >= 0.99 * many else 0.0


def spikes(column, low, high):
    """Largest change against what spikes ask for by the range; a change beyond it must not come back within three samples."""
    n = len(column)
    stride = max(1, n // 501)
    cut = int(0.02 * -(-(n - stride) // stride)) + 1
    values = column[8 * stride : n : 8 * stride].copy()
    least = 0.0
    if values.size > 2 * cut:
        values.partition((cut, values.size - 1 - cut))
        least = 0.02 * float(values[values.size - 1 - cut] - values[cut])
    if max(high, -low) <= least:
        return
    if not came_back(column, least)[0].size:
        return
    usual = np.abs(column[stride::stride] - column[stride - 1 : n - 1 : stride])
    at, home = came_back(column, max(8 * noise_level(column), 6 * median(usual)))
    # a spike stands out of three times the changes beside it
    change = np.abs(np.diff(column[np.clip(at[:, None] + np.arange(-3, 8), 0, n - 1)], axis=1))
    beside = np.maximum(change[:, :3].max(axis=1, initial=0), change[:, -3:].max(axis=1, initial=0))
    if (3 * beside < np.minimum(home, change[:, 3])).any():
        raise Unsound("spikes")


def came_back(column, least):
    """Samples before changes above some least one that are made good by another jump within three samples, and the size of that jump."""
    at = np.flatnonzero(np.abs(column[1:-3] - column[:-4]) > least)
    jump = np.abs(column[at + 1] - column[at])
    behind = column[at[:, None] + np.arange(1, 5)]
    back = np.abs(behind[:, 1:] - column[at, None]) <= 0.25 * jump[:, None]
    first, row = back.argmax(axis=1), np.arange(at.size)
    home = np.abs(behind[row, first + 1] - behind[row, first])
    found = back[row, first] & (home > least / 2)
    return at[found], home[found]


def survey_clock(clock, low, high):
    """The usual step, steps that stand, go back or are long, a change of the unit of time."""
    n = len(clock)
    stride = max(1, n // 500)
    steps = clock[1::stride] - clock[: n - 1 : stride]
    usual = median(steps[steps > 0])
    long = 5 * usual
    standing = gaps = 0
    if low < 0:
        raise Unsound("the clock goes back")
    if low == 0 or high > long:
        steps = clock[1:] - clock[:-1]
        standing, gaps = np.count_nonzero(steps == 0), np.count_nonzero(steps > long)
    if n >= 40:
        blocks = min(20, (n - 1) // 3)
        size = (n - 1) // blocks
        first, last = (pace(clock, k * size, size) for k in (0, blocks - 1))
        if not 1 / 30 <= last / first <= 30:
            raise Unsound("the unit of time changes")
    duration = float(clock[-1] - clock[0])
    return usual, standing, gaps, duration < 1 or usual > 5


def pace(clock, first, size):
    """Median of the paces of the fifths of a stretch."""
    parts = min(5, size)
    at = [first + k * size // parts for k in range(parts + 1)]
    t = clock[at].tolist()
    return sorted((t[k + 1] - t[k]) / (at[k + 1] - at[k]) for k in range(parts))[parts >> 1] or (t[-1] - t[0]) / size


def last_loaded(force, noise, top, highest):
    """The last sample before the force is gone for good."""
    tail = force[max(top + 1, len(force) - 8) :].tolist()
    distinct = max(0.02 * highest, 6 * noise)
    ordered = sorted(tail)
    level = (ordered[3] + ordered[4]) / 2 if len(tail) == 8 else 0.0
    zero = level if level < 0.3 * highest and all(abs(one - level) < distinct for one in tail) else 0.0
    return last_where(lambda at: force[at] >= zero + distinct, top, len(force))


def steepest_chord(force, motion, places, top):
    """Steepest of the chords between the first crossings of the levels: nearly the stiffness."""
    places = places[places <= top]
    F, x = force[places], motion[places]
    way = x[3:] - x[:-3]
    chords = np.divide(F[3:] - F[:-3], way, out=np.zeros_like(way), where=way > 0)
    return float(chords.max(initial=0.0))


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
    if stood.any():
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


def record_steps(force, motion, clock):
    """All that is looked at before the curve: an outline, and what a reader would be told."""
    check((force, motion, clock))
    low, high, repeated = changes(force, motion, clock)
    for k, column in enumerate((force, motion)):
        spikes(column, low[k], high[k])
    top = int(force.argmax())
    highest = float(force[top])
    lowest = float(force.min())
    if lowest < 0 and -lowest > 3 * highest:
        raise Unsound("pull is negative")
    usual, standing, gaps, unlikely = survey_clock(clock, low[2], high[2])
    o = SimpleNamespace(force=force, motion=motion, clock=clock, top=top, highest=highest, low=low, high=high)
    o.step, o.motion_step = resolution(force), resolution(motion)
    tolerated = max(3 * o.motion_step, 8 * noise_level(motion))
    backward = low[1] < 0 and bool((np.maximum.accumulate(motion[: top + 1]) - motion[: top + 1] > tolerated).any())
    # first crossings of 2, 5, 10 ... 75 % of the highest force: outline, stiffness, lag and segments all ask for them
    places = reached(force, highest * np.concatenate(([0.02], LEVELS)), 0, top + 1)
    o.first = int(places[0])
    o.last = last_loaded(force, noise_level(force), top, highest)
    o.noise, o.motion_noise = noise_level(force, o.first, o.last + 1), noise_level(motion, o.first, o.last + 1)
    o.stiffness = steepest_chord(force, motion, places[1:], top)
    extensometer_end(o)
    level = pauses(o)
    several_tests(o, int(places[6]))
    before = zeros(o)
    zero_moves(o)
    least, still = max(10 * o.noise, 3 * o.step, 0.01 * highest), max(3 * o.motion_step, 10 * o.motion_noise)
    turns(o, least, still)
    dropped = falls(o, least, still)
    saturated(o)
    jumps(o)
    lag = channel_lag(o, int(places[2]), int(places[12]))
    unloaded(o)
    o.broken = broken_at(o)
    late = float(force[0]) > 0.05 * highest
    o.told = (repeated, backward, standing, gaps, unlikely, level, before, dropped, late, *readings(o))
    o.usual, o.lag = usual, lag
    return o
