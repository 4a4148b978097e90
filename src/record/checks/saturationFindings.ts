import { columnUnits, finding, soundLength, type Finding } from '../../base/index.js';
import { firstReaching } from '../../numeric/index.js';
import type { RecordOutline } from '../survey/recordOutline.js';

/** Multiple of the longest time at any other value that a force at its end stands at its highest. */
const DWELL = 2;
/** Steps or standard deviations by which the change into the end, or out of it, stands out. */
const RUN = 3;
/** Multiple of the least samples that a force at its end stands without having been run into it. */
const LONG = 4;
/** Steps within which a force at its end flickers. */
const STEPS = 2.5;
/** Standard deviations within which it flickers. */
const DEVIATIONS = 6;
/** Multiple of its samples within as much again below that a flickering force at its end has within its band. */
const FLAT = 8;
/** Least samples that a flickering force, or a motion, stands at its end. */
const LEAST_STANDING = 20;
/** Share of its way, or of the highest force, by which the other channel goes on meanwhile. */
const GOES_ON = 0.05;
/** Standard deviations by which a force that goes on stands out of its noise. */
const CLEAR = 6;

/** A run of equal samples: the first of them, and how many. */
interface Run {
  readonly at: number;
  readonly count: number;
}

/** The longest run of equal samples at one of the values that are asked for, the first of equals. */
function longestRun(column: Float64Array, first: number, last: number, isAsked: (value: number) => boolean): Run {
  let longest: Run = { at: first, count: 0 };
  for (let at = first, end = first; at <= last; at = end) {
    while (end <= last && column[end] === column[at]) end += 1;
    if (end - at > longest.count && isAsked(column[at]!)) longest = { at, count: end - at };
  }
  return longest;
}

/** Equal highest samples: a channel at its end, unless the reading is stepped and stays near its top anyway. */
function forceSaturation(outline: RecordOutline, least: number): Finding[] {
  const { force, highest, first, top, last } = outline;
  const { noise, step } = outline.habit;
  let equal = 0;
  for (let i = top; i <= last; i += 1) if (force[i] === highest) equal += 1;
  if (equal < least) return [];
  const { at, count } = longestRun(force, first, last, (F) => F === highest);
  // a coarse reading, or a logger that repeats samples, stays at other values too
  if (count < least || count < DWELL * longestRun(force, first, last, (F) => F !== highest).count) return [];
  const before = highest - (force[at - 1] ?? 0);
  const after = highest - (force[at + count] ?? highest);
  const clear = RUN * Math.max(step, noise);
  // a true maximum is approached by ever smaller steps; a cut one is run into at the pace of the loading
  const isRunInto = before > clear;
  const isLeftSo = before > 0 && after > clear;
  // a noisy reading that stands for long was cut
  const standsLong = count >= LONG * least && noise > 0.5 * step;
  return isRunInto || isLeftSo || standsLong
    ? [finding('force-saturated', { force: highest, count }, { field: 'maximumForce', range: [at, at + count - 1] })]
    : [];
}

/** Samples of the loaded part within a band of the force. */
function samplesIn({ force, blocks, first, last }: RecordOutline, low: number, high: number): number {
  let count = 0;
  for (let i = firstReaching(force, low, first, last + 1, blocks); i <= last; i += 1) {
    if (force[i]! >= low) {
      if (force[i]! < high) count += 1;
    } else i = firstReaching(force, low, i, last + 1, blocks) - 1;
  }
  return count;
}

/**
 * A force at its end whose reading flickers, or is too coarse to show how it was run into: it stays within its noise and its steps of the highest while the
 * motion goes on, and hardly within as much again below. A piece that yields at one level looks the same. Of a round maximum the second band holds √2 - 1 of what the first one does, or more.
 */
function forceStands(outline: RecordOutline): Finding[] {
  const { force, blocks, first, last, highest, motion, habit } = outline;
  const band = Math.max(STEPS * habit.step, DEVIATIONS * habit.noise);
  const from = firstReaching(force, highest - band, first, last + 1, blocks);
  if (!motion || band <= 0 || last - from < LEAST_STANDING) return [];
  const count = samplesIn(outline, highest - band, Infinity);
  if (count < LEAST_STANDING || count < FLAT * samplesIn(outline, highest - 2 * band, highest - band)) return [];
  let to = last;
  while (force[to]! < highest - band) to -= 1;
  const { values } = motion;
  const [begin, end] = [Math.min(from, motion.end), Math.min(to, motion.end)];
  return Math.abs(values[end]! - values[begin]!) > GOES_ON * Math.abs(values[Math.min(last, motion.end)]! - values[first]!)
    ? [finding('force-saturated', { force: highest, count }, { field: 'maximumForce', range: [from, to], severity: 'caution' })]
    : [];
}

/** A motion that stands at its farthest to the end while the force goes on. */
function motionSaturation({ force, motion, last, highest, habit }: RecordOutline): Finding[] {
  if (!motion) return [];
  const { values, column } = motion;
  const end = Math.min(last, soundLength(values) - 1);
  let from = end;
  while (from > 0 && values[from - 1] === values[end]) from -= 1;
  if (end - from < LEAST_STANDING) return [];
  // a pause loses a little force; a test that goes on loses or gains more
  let most = 0;
  for (let i = from; i < end; i += 1) most = Math.max(most, Math.abs(force[i]! - force[from]!));
  return most > Math.max(GOES_ON * highest, CLEAR * habit.noise)
    ? [
        finding(
          'motion-saturated',
          { column, value: values[end]!, unit: columnUnits[column], count: end - from + 1 },
          { range: [from, end] },
        ),
      ]
    : [];
}

/** @internal Channels that stood at their ends; `least` equal samples at its highest mean that the force did. */
export function saturationFindings(outline: RecordOutline, least: number): Finding[] {
  const equal = forceSaturation(outline, least);
  return [...(equal.length > 0 ? equal : forceStands(outline)), ...motionSaturation(outline)];
}
