"""First looks at a record: checks of its columns, survey and outline; and all departures from sound loading, in the order of the package."""

from types import SimpleNamespace

import numpy as np

from .departures import (
    broken_at, channel_lag, extensometer_end, falls, jumps, pauses, readings, saturated, several_tests, slips_back, turns, unloaded, zero_moves, zeros,
)  # fmt: skip
from .tools import Unsound, last_where, median, noise_level, reached

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
    """Steepest of the chords between the first crossings of the levels, nearly the stiffness; and the one that a slip of the motion leaves out."""
    places = places[places <= top]
    F, x = force[places], motion[places]
    way = x[3:] - x[:-3]
    chords = np.divide(F[3:] - F[:-3], way, out=np.zeros_like(way), where=way > 0)
    steep = sorted((0.0, *chords.tolist()), reverse=True)
    return steep[0], steep[min(3, max(0, len(steep) - 2))]


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
    o.stiffness, o.passed = steepest_chord(force, motion, places[1:], top)
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
    slips_back(o, int(places[10]))
    lag = channel_lag(o, int(places[2]), int(places[12]))
    unloaded(o)
    o.broken = broken_at(o)
    late = float(force[0]) > 0.05 * highest
    o.told = (repeated, backward, standing, gaps, unlikely, level, before, dropped, late, *readings(o))
    o.usual, o.lag = usual, lag
    return o
