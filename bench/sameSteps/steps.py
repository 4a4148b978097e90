"""All steps with numeric work that `analyseTension` does on a sound record of force, extension and time, as NumPy does them fastest.

Left out: the hash of the columns, whose way (32-bit words one after the other) NumPy does not know; texts of findings, trail, names and units of
quantities, provenance; the comparison with families of metals and with nominal dimensions, which look into tables. The window of the elastic line is
the best between the 49 edges of a lattice, not the best of all. Where a first look at a record finds what no sound record has, `Unsound` is raised:
what the package then goes on to do is not written here.
"""

from types import SimpleNamespace

import numpy as np

from .hardening import hollomon, necking
from .line import explain, fit_line
from .record import record_steps
from .strengths import proof_strength, proportional_limits, several_crossings, total_strength
from .tools import about, add, cell_means, last_where, line, noise_level, slopes
from .yielding import yield_points

OFFSET, TOTAL = 0.002, 0.005


def limits(ranges):
    """Least and greatest rates, as columns."""
    return np.array(ranges).T[:, :, None]


# of the controls of either stage: strain rates, stress rates
ELASTIC = limits([(5.6e-5, 8.4e-5), (2e-4, 3e-4), (1.5e-4, 3.5e-4)]), limits([(2, 20), (6, 60), (1.15, 11.5)])
PLASTIC = (limits([(5.6e-5, 8.4e-5), (2e-4, 3e-4), (1.6e-3, 2.4e-3), (5.36e-3, 8.04e-3), (1e-12, 0.0025), (8.3e-4, 8.3e-3)]),)


def maximum_spread(strain, stress, index, end):
    """Width of the neighbourhood of the maximum, and over what width noise alone may move it."""
    top = float(stress[index])
    first, last = about(stress, index, 0.9 * top, end)
    noise = noise_level(stress, first, last + 1)
    x, y, size = cell_means(strain, stress, first, last, 150)
    k = int(y.argmax())
    widths = []
    for depth in (max(0.001 * top, 3 * noise), noise):
        least = float(y[k]) - depth
        inside = y >= least
        a, b = int(inside.argmax()), len(y) - 1 - int(inside[::-1].argmax())
        left = float(x[a] if a == 0 else x[a] + (x[a - 1] - x[a]) * (y[a] - least) / (y[a] - y[a - 1]))
        right = float(x[b] if b == len(y) - 1 else x[b] + (x[b + 1] - x[b]) * (y[b] - least) / (y[b] - y[b + 1]))
        widths.append(right - left)
    return widths[0], widths[1] if noise > 1e-7 * top else 0.0, first + a * size


def loading_rates(clock, strain, stress, wanted):
    """Local rates: slopes over successive stretches of equal numbers of samples, the last one shorter."""
    n = len(strain)
    size = max(5, -(-n // wanted))
    whole = n // size
    cut = whole * size
    laid = [column[:cut].reshape(whole, size) for column in (clock, strain, stress)]
    rates = np.empty((2, whole + (n - cut >= 5)))
    _, rates[0, :whole], rates[1, :whole] = slopes(*laid)
    if n - cut >= 5:
        _, rates[0, whole:], rates[1, whole:] = slopes(*(column[None, cut:] for column in (clock, strain, stress)))
    return rates


def stages(clock, c, yielded, maximum):
    """Median and extreme rates of the elastic window, of yielding and of hardening, and how far each kept to the controls."""
    found = []
    own = c.line
    for first, last, controls in (own.first, own.last, ELASTIC), (own.last, yielded, PLASTIC), (yielded, maximum, PLASTIC):
        part = slice(first, last + 1)
        if last - first < 15:
            continue
        rates = loading_rates(clock[part], c.strain[part], c.stress[part], 40)
        rates.sort(axis=1)
        places = rates.shape[1]
        spread = rates[:, [round(share * (places - 1)) for share in (0.5, 0.05, 0.95)]].tolist()
        within = [np.count_nonzero((row >= low) & (row <= high), axis=1) / places for row, (low, high) in zip(rates, controls)]
        found.append((spread, within))
    return found


def unevenness(motion, clock, first, last):
    """How much the speed varies over the elastic window, less what noise makes of it."""
    size = (last - first + 1) // 20
    if size < 3:
        return None
    t, x = (column[first : first + 20 * size].reshape(20, size) for column in (clock, motion))
    tt, speed = slopes(t, x)
    rest = x - add(x, axis=1, keepdims=True) / size
    noise = (np.einsum("ij,ij->i", rest, rest) - speed * speed * tt) / (size - 2) / tt
    mean = float(add(speed)) / 20
    return max(0.0, float(((speed - mean) ** 2).sum()) / 19 - float(add(noise)) / 20) ** 0.5 / mean


def same_steps(force, extension, clock, area, length):
    o = record_steps(force, extension, clock)
    stress, strain = force / area, extension / length
    top = o.top
    own = fit_line(strain, stress, top)
    strain -= own.shift
    c = SimpleNamespace(strain=strain, stress=stress, line=own, rising=o.low[1] >= 0)
    end = len(stress) if o.broken is None else o.broken + 1

    yielding = yield_points(c, top, end)
    maximum = top
    if yielding and yielding[0] == top:
        maximum = yielding[3] + int(stress[yielding[3] : end].argmax())
    strength = float(stress[maximum])
    plateau = about(stress, maximum, strength - o.step / area)
    at_maximum = float(strain[plateau[0]] + strain[plateau[1]]) / 2
    wide, noisy, _ = maximum_spread(strain, stress, maximum, end)

    proof = proof_strength(c, OFFSET, own.first, top + 1)
    beyond = proof[2] if proof else top
    after = yielding[3] if yielding else proof[2] if proof else own.first
    total = total_strength(c, TOTAL, end)
    limits = proportional_limits(c, top + 1, beyond)
    crossed = several_crossings(c, proof, OFFSET, top + 1) if proof else 0
    # the area under the curve by two products, what both ends leave over between them
    e, R = strain[:end], stress[:end]
    energy = float(e[-1] * R[-1] - e[0] * R[0] + e[1:] @ R[:-1] - e[:-1] @ R[1:]) / 2
    neck = necking(strain, stress, maximum, end) if maximum < end - 1 else None
    law = hollomon(c, after, maximum)
    explained = explain(strain, stress, own, top + 1, o.motion_step / length)

    stride = max(1, end // 20_000)
    places = slice(0, end // stride * stride, stride)
    t = clock[places]
    local, _ = loading_rates(t, strain[places], stress[places], 200)
    size = max(5, -(-len(t) // 200))
    middle = t[: len(local) * size : size]
    started, yielded, ended = (float(clock[k]) for k in (own.first, proof[2] if proof else own.last, maximum))
    fastest = [
        float(local[(middle >= a) & (middle < b)].max(initial=-np.inf)) for a, b in ((started, yielded), (yielded, ended))
    ]
    part = slice(own.first, own.last + 1)
    pace = line(clock[part], stress[part])[0]
    uneven = unevenness(extension, clock, own.first, own.last)
    staged = stages(clock, c, yielding[3] if yielding else beyond, maximum)

    # what is left to do are single numbers
    toe = last_where(lambda at: stress[at] <= 0.02 * strength, 0, own.first + 1)
    toe_strain = float(stress[max(toe, 0)]) / own.slope - float(strain[max(toe, 0)])
    uniform, broken = at_maximum - strength / own.slope, float(e[-1] - R[-1] / own.slope)
    doubt = max(float(strain[plateau[1]] - strain[plateau[0]]), noisy) / 12**0.5
    spike = strength - float(max(stress[maximum - 1], stress[min(maximum + 1, end - 1)])) > 0.01 * strength
    return {
        "slope": own.slope, "shift": own.shift, "slopeError": own.error, "proof": proof and proof[0], "strength": strength, "exponent": law and law[1],
        "energy": energy, "necking": neck and neck[0], "total": total, "limits": limits,
        "upper": yielding and float(stress[yielding[0]]), "lower": yielding and float(stress[yielding[1]]),
        "extension": yielding and yielding[2], "lag": o.lag, "forceNoise": o.noise, "motionNoise": o.motion_noise,
        "forceStep": o.step, "motionStep": o.motion_step, "uniform": uniform, "spread": wide,
        "stressRates": [rates[1][0] for rates, _ in staged], "strainRates": [rates[0][0] for rates, _ in staged],
        "fracture": broken, "doubt": doubt, "pace": pace, "uneven": uneven, "fastest": fastest, "toe": toe_strain,
        "envelope": explained["envelope"], "leverage": explained["leverage"], "runs": explained["runs"], "fall": own.fall and own.fall[0],
        "rest": [o.told, o.usual, spike, crossed, at_maximum, explained["bend"], explained["doubts"], own.runners, law, neck],
    }  # fmt: skip
