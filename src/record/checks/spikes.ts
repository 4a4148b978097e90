import { firstChange, medianChange, noiseLevel, ranked, resolution, type BlockExtremes } from '../../numeric/index.js';

/** @internal Neighbouring samples that leave the line of a column and come back to it. */
export interface Spike {
  /** First and last sample that is off. */
  readonly range: readonly [number, number];
  /** Greatest distance from the line between its neighbours [unit of the column]. */
  readonly height: number;
  /** True where the signal drops out: it reads next to nothing meanwhile. */
  readonly nothing?: true;
  /** True where it does not jump: a disturbance that is too steep for the motion, or a bulge where the piece yields. */
  readonly bulges?: true;
}

/** @internal Most samples of a spike of any shape. */
export const LONGEST_SPIKE = 3;
/** @internal Most samples of a spike that jumps off and back, or bulges; a signal may drop out for any time. */
export const LONGEST_AWAY = 200;
/** Least change that begins a spike, in standard deviations of the noise. */
const DEVIATIONS = 8;
/** Least change that begins a spike, in steps of the reading. */
const STEPS = 4;
/** Least change that begins a spike, in usual changes. */
const CHANGES = 6;
/** @internal Least change that begins a spike of a force, which may serrate, as a share of the range. */
export const SPIKE_SHARE = 0.02;
/** @internal Share of what a signal read before that it stays below where it reads next to nothing. */
export const NEXT_TO_NOTHING = 0.05;
/** Least share of what it read before to which a signal comes back from nothing: the test went on meanwhile. */
const LEAST_BACK = 0.7;
/** Greatest multiple of what it read before to which it comes back. */
const MOST_BACK = 2;
/** Least jump of a spike, as a multiple of the changes beside it: a peak that the loading ran up to is no spike. */
const TIMES = 3;
/** Share of its jump within which a spike comes back. */
const BACK = 0.25;
/** Share of the samples that spikes may be; more are noise or serrations. */
const MOST = 0.01;
/** Places at which the range and the usual changes are taken. */
const PLACES = 501;
/** Of those places, one in as many serves for a first look at the range. */
const ONE_IN = 8;

/** Least change that begins a spike by noise and usual changes alone. */
function leastByChanges(column: Float64Array, end: number): number {
  const stride = Math.max(1, Math.floor(end / PLACES));
  return Math.max(DEVIATIONS * noiseLevel(column, 0, end), CHANGES * medianChange(column, stride, end, stride));
}

/**
 * Least change that begins a spike by the range: that of some places without its ends, so that one large spike does not hide the smaller ones. As much is
 * cut off of fewer places, so that their range is never larger.
 */
function leastByRange(column: Float64Array, end: number, share: number, oneIn: number): number {
  const stride = Math.max(1, Math.floor(end / PLACES));
  const cut = Math.floor(0.02 * Math.ceil((end - stride) / stride)) + 1;
  const step = oneIn * stride;
  // of its full length at once: a list that grows costs more than its values
  const values = new Array<number>(Math.max(0, Math.ceil(end / step) - 1));
  for (let k = 0, i = step; k < values.length; k += 1, i += step) values[k] = column[i]!;
  return values.length > 2 * cut ? share * (ranked(values, values.length - 1 - cut) - ranked(values, cut)) : 0;
}

/** Whether a sample alone leaves and the next one is back. */
function alone(column: Float64Array, at: number, least: number): boolean {
  if (at < 1 || at + 1 >= column.length) return false;
  const jump = Math.abs(column[at]! - column[at - 1]!);
  return jump > least && Math.abs(column[at + 1]! - column[at - 1]!) <= BACK * jump;
}

/** The greatest of some changes of a column, but for those to and from one sample that is off alone; several are a swinging, not spikes. */
function largestChange(column: Float64Array, from: number, to: number, least: number): number {
  let largest = 0;
  let other = -1;
  for (let j = Math.max(1, from); j < Math.min(column.length, to); j += 1) {
    if (other < 0) other = [j - 1, j].find((at) => alone(column, at, least)) ?? -1;
    if (other < 0 || j > other + 1) largest = Math.max(largest, Math.abs(column[j]! - column[j - 1]!));
  }
  return largest;
}

/** The jump by which a spike of k samples ends: the way back, without what follows. */
const homeOf = (column: Float64Array, at: number, k: number): number => Math.abs(column[at + k]! - column[at + k - 1]!);

/** Samples after which the column jumps back by as much as it jumped off, without another jump between, whatever way it went meanwhile; else 0. */
function backByJump(column: Float64Array, at: number, end: number): number {
  const jump = column[at]! - column[at - 1]!;
  for (let k = 1; k <= LONGEST_AWAY && at + k < end; k += 1) {
    const change = column[at + k]! - column[at + k - 1]!;
    if (TIMES * Math.abs(change) >= Math.abs(jump)) return Math.abs(change + jump) <= BACK * Math.abs(jump) ? k : 0;
  }
  return 0;
}

/** Samples over which a signal drops out to next to nothing, two at the most: a drive does not let off so fast; 0 where it does not. */
function dropsOutIn(column: Float64Array, at: number, least: number): number {
  const before = Math.abs(column[at - 1]!);
  if (before < 5 * least) return 0;
  if (Math.abs(column[at]!) <= NEXT_TO_NOTHING * before) return 1;
  const between = Math.abs(column[at]!) < before && Math.abs(column[Math.min(at + 2, column.length - 1)]!) <= NEXT_TO_NOTHING * before;
  return between && Math.abs(column[at + 1]!) <= NEXT_TO_NOTHING * before ? 2 : 0;
}

/** Samples after which a signal that dropped out is back within two samples, however long it was away; 0 where it is not. */
function backFromNothing(column: Float64Array, at: number, end: number, least: number): number {
  const before = column[at - 1]!;
  const fallen = dropsOutIn(column, at, least);
  if (fallen === 0) return 0;
  let k = fallen;
  while (at + k < end && Math.abs(column[at + k]!) <= NEXT_TO_NOTHING * Math.abs(before)) k += 1;
  const isBack = (i: number): boolean => i < end && column[i]! / before > LEAST_BACK && column[i]! / before < MOST_BACK;
  // what is back within three samples was asked already
  if (k <= LONGEST_SPIKE) return 0;
  return isBack(at + k) ? k : isBack(at + k + 1) ? k + 1 : 0;
}

/** Samples after which the column is back where it was, by another jump; 0 where it does not come back. */
function lengthOf(column: Float64Array, at: number, end: number, least: number): number {
  const before = column[at - 1]!;
  const jump = column[at]! - before;
  for (let k = 1; k <= LONGEST_SPIKE && at + k < end; k += 1) {
    const back = column[at + k]! - before;
    if (Math.abs(back) > BACK * Math.abs(jump)) continue;
    return homeOf(column, at, k) > least / 2 ? k : 0;
  }
  return backFromNothing(column, at, end, least) || backByJump(column, at, end);
}

/** Whether a spike of k samples stands out of the changes before and after it; a signal that drops out does. */
function standsOut(column: Float64Array, at: number, k: number, end: number, least: number): boolean {
  if (k > LONGEST_SPIKE && dropsOutIn(column, at, least) > 0) return true;
  // each side by itself: its samples that are off alone do not borrow the jumps of this one
  const left = largestChange(column.subarray(0, at), at - 3, at, least);
  const right = largestChange(column.subarray(at + k, end), 1, 4, least);
  return TIMES * Math.max(left, right) < Math.min(homeOf(column, at, k), Math.abs(column[at]! - column[at - 1]!));
}

/** Whether the column leaves by more than some least change and comes back, beside whatever; a larger change never finds more. */
function comesBack(column: Float64Array, end: number, least: number, blocks: BlockExtremes | undefined): boolean {
  for (let i = firstChange(column, least, 1, end - 1, blocks); i < end - 1; i = firstChange(column, least, i + 1, end - 1, blocks))
    if (lengthOf(column, i, end, least) > 0) return true;
  return false;
}

/** Spikes that begin with a change above some least one. */
function spikesAbove(column: Float64Array, end: number, least: number): Spike[] {
  const spikes: Spike[] = [];
  for (let i = firstChange(column, least, 1, end - 1); i < end - 1; i = firstChange(column, least, i + 1, end - 1)) {
    const k = lengthOf(column, i, end, least);
    if (k === 0 || !standsOut(column, i, k, end, least)) continue;
    let height = 0;
    for (let j = i; j < i + k; j += 1) {
      const line = column[i - 1]! + ((column[i + k]! - column[i - 1]!) * (j - i + 1)) / (k + 1);
      height = Math.max(height, Math.abs(column[j]! - line));
    }
    spikes.push({ range: [i, i + k - 1], height, ...(k > LONGEST_SPIKE && dropsOutIn(column, i, least) > 0 ? { nothing: true } : {}) });
    i += k;
  }
  return spikes;
}

/** @internal A copy of a column with the straight line between the neighbours in the place of spikes. */
export function straightened(column: Float64Array, spikes: readonly Spike[]): Float64Array {
  const straight = column.slice();
  for (const { range } of spikes) {
    const [before, after] = [range[0] - 1, range[1] + 1];
    for (let i = before + 1; i < after; i += 1)
      straight[i] = column[before]! + ((column[after]! - column[before]!) * (i - before)) / (after - before);
  }
  return straight;
}

/**
 * @internal Spikes of a column, in order; none where there are too many to be spikes. Beside one that was found others may show that stood too
 * near to it: so the column is looked through again without those that were found, until no more come. A column without spikes is looked through
 * once. Four or more single samples in a row, two apart, may be a swinging and are left.
 */
export function findSpikes(column: Float64Array, end = column.length, blocks?: BlockExtremes, share = SPIKE_SHARE): Spike[] {
  // a look at the range from few places: most columns are done here
  if (end < 8 || !comesBack(column, end, leastByRange(column, end, share, ONE_IN), blocks)) return [];
  const least = leastByChanges(column, end);
  if (spikesAbove(column, end, least).length === 0) return [];
  const change = Math.max(least, STEPS * resolution(column.subarray(0, end)), leastByRange(column, end, share, 1));
  const spikes: Spike[] = [];
  const apart = ({ range }: Spike): boolean => spikes.every((one) => range[0] > one.range[1] + 1 || range[1] < one.range[0] - 1);
  for (
    let more = spikesAbove(column, end, change);
    more.length > 0;
    more = spikesAbove(straightened(column, spikes), end, change).filter(apart)
  ) {
    spikes.push(...more);
    if (spikes.length > Math.max(10, MOST * end)) return [];
  }
  return spikes.sort((a, b) => a.range[0] - b.range[0]);
}

/** @internal Whether a column jumps into a sample: by far more than beside it. */
export function jumpsInto(column: Float64Array, at: number): boolean {
  const beside = Math.max(largestChange(column, at - 3, at, Infinity), largestChange(column, at + 1, at + 4, Infinity));
  return Math.abs(column[at]! - column[at - 1]!) > TIMES * beside;
}
