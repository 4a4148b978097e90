import { finding, type Finding } from '../../base/index.js';
import { medianOf } from '../../numeric/index.js';

/** @internal How the clock of a record runs. */
export interface ClockSurvey {
  /** The usual time step [s]. */
  readonly usual: number;
  /** Steps that go back, and the first sample after one; -1 where there is none. */
  readonly backward: number;
  readonly firstBackward: number;
  /** Steps of no time at all. */
  readonly standing: number;
  /** Steps far longer than the usual one (on its side of a change), the longest of them [s] and the sample before it; -1 where there is none. */
  readonly gaps: number;
  readonly longest: number;
  readonly longestAt: number;
  /** Where the usual step changes for good: the sample, by which factor, and the step before [s]; undefined where it does not. */
  readonly change: { readonly at: number; readonly factor: number; readonly before: number } | undefined;
}

/** @internal Usual time steps that a step must exceed to be a gap. */
export const GAP_STEPS = 5;
/** Places at which the usual time step is taken. */
const PLACES = 500;
/** Factor that a change of the unit of time exceeds: that of minutes and seconds is 60, of seconds and milliseconds 1000. */
const FACTOR = 30;
/** @internal Share of the time steps that may be 0; more of them mean a clock that is coarser than the logging. */
export const STANDING_STEPS_SHARE = 0.1;
/** Shortest time of a test by hand [s]. */
const SHORTEST = 1;
/** Longest usual time between two samples [s]. */
const SLOWEST = 5;

/** Pace of a stretch of samples: the median of its fifths, so that a gap does not move it; of all where a coarse clock stands in most of them. */
function paceOf(time: Float64Array, from: number, size: number): number {
  const parts = Math.min(5, size);
  const place = (part: number): number => from + Math.floor((part * size) / parts);
  const paces: number[] = [];
  for (let k = 0; k < parts; k += 1) paces.push((time[place(k + 1)]! - time[place(k)]!) / (place(k + 1) - place(k)));
  return medianOf(paces) || (time[from + size]! - time[from]!) / size;
}

/** Where the step changes by a large factor and stays so: a few hundred places show whether it does, then the sample is looked for. */
function stepChange(time: Float64Array): ClockSurvey['change'] {
  const n = time.length;
  if (n < 40) return undefined;
  // of three steps at least, so that a gap is outvoted
  const blocks = Math.min(20, Math.floor((n - 1) / 3));
  const size = Math.floor((n - 1) / blocks);
  const pace = (k: number): number => paceOf(time, Math.min(k, blocks - 1) * size, size);
  const large = (one: number): boolean => one > FACTOR || one < 1 / FACTOR;
  if (!large(pace(blocks - 1) / pace(0))) return undefined;
  for (let k = 1; k < blocks; k += 1) {
    // the block of the change lies between, or is the next one, so that the one behind that shows by how much
    const before = pace(k - 1);
    const factor = pace(k + 2) / before;
    if (!(before > 0) || !large(pace(k + 1) / before) || !large(factor)) continue;
    const limit = Math.sqrt(factor) * before;
    // the sample that best parts the steps of either kind: a gap among the short ones is not the change
    const start = (k - 1) * size + 1;
    let at = start;
    for (let i = start, sum = 0, best = 0; i < Math.min(n, start + 3 * size); i += 1) {
      sum += time[i]! - time[i - 1]! < limit === factor > 1 ? 1 : -1;
      if (sum > best) [best, at] = [sum, i + 1];
    }
    return { at, factor, before };
  }
  return undefined;
}

/** First sample in a range (from 1 on) whose step stands, goes back or is long, four at a time; `end` where none is. */
function firstUnusual(time: Float64Array, long: number, first: number, end: number): number {
  let i = first;
  let before = time[first - 1]!;
  for (; i + 3 < end; i += 4) {
    const a = time[i]!;
    const b = time[i + 1]!;
    const c = time[i + 2]!;
    const d = time[i + 3]!;
    if (!(a > before && b > a && c > b && d > c && a - before <= long && b - a <= long && c - b <= long && d - c <= long)) break;
    before = d;
  }
  while (i < end && time[i]! > time[i - 1]! && time[i]! - time[i - 1]! <= long) i += 1;
  return i;
}

/** Walks once over the steps: those up to a sample are gaps above one limit [s], those from it on above another. */
function walkSteps(time: Float64Array, longBefore: number, turn = time.length, longBehind = longBefore) {
  let backward = 0;
  let firstBackward = -1;
  let standing = 0;
  let gaps = 0;
  let longest = 0;
  let longestAt = -1;
  const n = time.length;
  for (let i = 1; i < n; i += 1) {
    if (i < turn) i = firstUnusual(time, longBefore, i, Math.min(turn, n));
    if (i >= turn) i = firstUnusual(time, longBehind, i, n);
    if (i === n) break;
    const step = time[i]! - time[i - 1]!;
    if (step === 0) standing += 1;
    else if (step < 0) {
      backward += 1;
      if (firstBackward < 0) firstBackward = i;
    } else {
      gaps += 1;
      if (step > longest) {
        longest = step;
        longestAt = i - 1;
      }
    }
  }
  return { backward, firstBackward, standing, gaps, longest, longestAt };
}

/** @internal How a clock runs, by its steps; a second walk over them where the unit of time changes, for the gaps on either side. */
export function surveyClock(time: Float64Array, gap = GAP_STEPS): ClockSurvey {
  const n = time.length;
  const stride = Math.max(1, Math.floor(n / PLACES));
  // of its full length at once: a list that grows costs more than its values
  const steps = new Array<number>(Math.ceil((n - 1) / stride));
  let advanced = 0;
  for (let i = 1; i < n; i += stride) if (time[i]! > time[i - 1]!) steps[advanced++] = time[i]! - time[i - 1]!;
  steps.length = advanced;
  const usual = medianOf(steps);
  const walked = walkSteps(time, gap * usual);
  const change = walked.backward > 0 ? undefined : stepChange(time);
  if (!change) return { usual, ...walked, change };
  return { usual, ...walkSteps(time, gap * change.before, change.at, gap * change.factor * change.before), change };
}

/** @internal Doubts about the clock. */
export function clockFindings(clock: ClockSurvey | undefined, time: Float64Array | undefined): Finding[] {
  if (!clock || !time) return [finding('time-missing', {})];
  const n = time.length;
  const { usual, backward, firstBackward, standing, gaps, longest, longestAt, change } = clock;
  const found: Finding[] = [];
  if (backward > 0)
    found.push(finding('time-not-increasing', { count: backward, first: firstBackward }, { range: [firstBackward - 1, firstBackward] }));
  if (change) found.push(finding('time-unit-changes', { factor: change.factor, sample: change.at }, { range: [change.at, n - 1] }));
  // a logger that writes by force or extension has no usual step: many long steps are its way, not gaps
  if (gaps > 0 && gaps <= 0.01 * n) {
    const there = !change ? usual : change.before * (longestAt + 1 < change.at ? 1 : change.factor);
    found.push(finding('time-gap', { count: gaps, longest, first: longestAt, usual: there }, { range: [longestAt, longestAt + 1] }));
  }
  if (standing > STANDING_STEPS_SHARE * n) found.push(finding('time-coarse', { share: (100 * standing) / n, step: usual }));
  const duration = time[n - 1]! - time[0]!;
  if (!change && backward === 0 && n >= 50 && usual > 0 && (duration < SHORTEST || usual > SLOWEST))
    found.push(finding('time-unit-unlikely', { duration, samples: n, usual }));
  return found;
}
