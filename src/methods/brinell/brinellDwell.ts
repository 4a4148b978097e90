import { failure, success, type Outcome } from '../../base/index.js';
import { cellMeans, maximumIndex, stretchAbove } from '../../numeric/index.js';
import { requireForceColumns, type ForceColumns } from '../common/ForceColumns.js';

/** How a test force was brought on and held. */
export interface BrinellDwell {
  /** Highest force while it was held [N]. */
  readonly force: number;
  /** Lowest force while it was held [N]; both by means over about half a second. */
  readonly lowest: number;
  /** Largest change of the force while it was held, over the highest [1]. */
  readonly change: number;
  /** Time that it was held [s]. */
  readonly duration: number;
  /** Time from the first force to the held one [s]. */
  readonly rise: number;
  /** First and last sample of the held force. */
  readonly range: readonly [number, number];
}

/** The held part lies above this share of the maximum; the first force is above the other. */
const NEAR = 0.9;
const FIRST = 0.01;
/** While the force changes by more than this share of it in a second, it is being brought on or taken off. */
const MOVING = 0.02;
/** Time over which that change is looked at, and over which means are taken [s]. */
const LOOK = 0.2;
const CELL = 0.5;

/**
 * The held part of a record of force over time: how long, how steady, how fast it was reached.
 *
 * $$ \left| \frac{\Delta F}{F \Delta t} \right| \le 2\,\% \text{ per s} \quad\text{above } 0.9\, F_{max} $$
 *
 * @remarks
 * Held is what lies above nine tenths of the maximum, less the ends in which the force still changes by more than 2 % in a second, looked at over
 * 0.2 s or the next sample. Steadiness is judged by means over about half a second, so that noise is not taken for change.
 *
 * @param record - `force` [N] and `time` [s], rising.
 * @returns The held force and its times, or `not-held` where nothing stands out.
 * @throws {@link InputError} `missing`, `not-finite`, `too-few`, `unequal-lengths`, `not-increasing`, `unknown-option`.
 *
 * @example
 * ```ts
 * const time = Array.from({ length: 200 }, (_, i) => i / 10);
 * const force = time.map((t) => 9807 * Math.max(0, Math.min(t / 4, 1, 17 - t)));
 * required(brinellDwell({ force, time })).duration; // => 12.0
 * ```
 *
 * @see ISO 6506-1:2014, procedure: duration of the test force. Checked in `test/methods/brinell.test.ts`.
 */
export function brinellDwell(record: ForceColumns): Outcome<BrinellDwell, 'not-held'> {
  const { force, time } = requireForceColumns('brinellDwell', 'record', record, ['time']);
  const dwell = heldForce(force, time!);
  return dwell ? success(dwell) : failure('not-held', 'the force is not held anywhere near its maximum');
}

/** @internal {@link brinellDwell} on checked columns; undefined where nothing is held. */
export function heldForce(force: Float64Array, time: Float64Array): BrinellDwell | undefined {
  const top = maximumIndex(force);
  const highest = force[top]!;
  if (highest <= 0) return undefined;
  const [first, last] = stretchAbove(force, NEAR * highest, top);
  /** The force still moves by more than a share of itself in a second, over the next or last 0.2 s. */
  const moves = (i: number, way: 1 | -1): boolean => {
    let j = i + way;
    while (j > first && j < last && Math.abs(time[j]! - time[i]!) < LOOK) j += way;
    return force[j]! - force[i]! > MOVING * highest * Math.abs(time[j]! - time[i]!);
  };
  let start = first;
  while (start < last && moves(start, 1)) start += 1;
  let end = last;
  while (end > start && moves(end, -1)) end -= 1;
  if (end <= start) return undefined;
  let zero = start;
  while (zero > 0 && force[zero - 1]! > FIRST * highest) zero -= 1;
  const duration = time[end]! - time[start]!;
  const { y } = cellMeans(time, force, start, end, Math.max(1, Math.round(duration / CELL)));
  const most = y.reduce((a, b) => Math.max(a, b));
  const lowest = y.reduce((a, b) => Math.min(a, b));
  return {
    force: most,
    lowest,
    change: (most - lowest) / most,
    duration,
    rise: time[start]! - time[Math.max(0, zero - 1)]!,
    range: [start, end],
  };
}
