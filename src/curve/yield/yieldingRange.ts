import type { StressStrainCurve } from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { MEAN_STRAIN, hardeningOnset, isNoisy, type HardeningOnset } from './hardeningOnset.js';
import { endOfFall, type Level } from './endOfFall.js';
import type { Fall } from './Fall.js';
import { levelOf } from './levelOf.js';
import type { LowerYieldRule } from './LowerYieldRule.js';
import { topOfHardening } from './topOfHardening.js';
import { STANDS_OUT, TRANSIENT_STRAIN } from './yieldRule.js';

/** The short rule for ReL looks this far after ReH, the first transient left out (ISO 6892-1, from memory). */
const SHORT_RANGE = 0.0025;
/** The first dip is a transient where it is over soon enough, and within this share of the yielding range: what fills more of it is its level (common practice). */
const TRANSIENT_SHARE = 0.5;
/** It begins this soon after ReH, as the spring of the frame lets go at once; its recovery may overshoot for as long as no higher stress may follow ReH (common practice). */
const TRANSIENT_START = 0.001;
const TRANSIENT_OVERSHOOT = 0.0005;
/** A dip lies lower than the level by this share of ReH, a fifth of the fall that makes a yield point (common practice), and by more deviations of noise than one sample in 700 does. */
const DIP_SHARE = 0.001;
const DIP_DEVIATIONS = 3;
/** Two samples of one level lie apart by no more deviations of noise: each by as many as tell a dip. */
const LEVEL_DEVIATIONS = 2 * DIP_DEVIATIONS;

/** @internal What {@link yieldingRange} starts from. */
export interface YieldingTask extends Fall {
  readonly lowerYield: LowerYieldRule;
}

/** @internal The range between ReH and uniform hardening. */
export interface YieldingRange {
  /** Sample of ReL. */
  readonly lowest: number;
  /** Where it ends; absent where no hardening follows. */
  readonly onset?: HardeningOnset;
  /** Without hardening: whether the curve ends on its level, or falls from it, and the first sample of the level, a first dip left out. */
  readonly ends?: Level['ends'];
  readonly levelStart?: number;
}

/**
 * The last minimum before the stress rises for good: turning points that stand out by half a per cent of the stress and out of noise are
 * followed; noise is first lowered by means over at most 0.02 % strain.
 */
function lastMinimum({ strain, stress }: StressStrainCurve, first: number, top: number, { noise, reach, spoilt }: YieldingTask): number {
  const perSample = Math.max((strain[top]! - strain[first]!) / Math.max(top - first, 1), Number.MIN_VALUE);
  const size = isNoisy(noise, stress[first]!) ? Math.max(1, Math.floor(MEAN_STRAIN / perSample)) : 1;
  const step = Math.max(STANDS_OUT * stress[first]!, size > 1 ? reach * Math.min(1, noise.ofMeans / noise.level / Math.sqrt(size)) : reach);
  let falling = true;
  let low = first;
  let lowMean = Infinity;
  let high = -Infinity;
  let confirmed = first;
  for (let block = first; block < top; block += size) {
    let sum = 0;
    let count = 0;
    let least = -1;
    for (let i = block; i < Math.min(block + size, top); i += 1) {
      if (spoilt?.[i] === 1) continue;
      sum += stress[i]!;
      count += 1;
      if (least < 0 || stress[i]! < stress[least]!) least = i;
    }
    if (least < 0) continue;
    const mean = sum / count;
    if (falling) {
      if (mean < lowMean) {
        lowMean = mean;
        low = least;
      } else if (mean > lowMean + step) {
        confirmed = low;
        falling = false;
        high = mean;
      }
    } else if (mean > high) high = mean;
    else if (mean < high - step) {
      falling = true;
      lowMean = mean;
      low = least;
    }
  }
  return falling ? low : confirmed;
}

/**
 * The lowest sample of the level that a first dip recovers to, where it does; else `last`, the bottom of the dip. Without it a level that is
 * too even for a minimum of its own would leave the recovery as the steepest rise.
 */
function afterFirstDip(
  { strain, stress }: StressStrainCurve,
  last: number,
  top: number,
  { peak, noise, spoilt }: Pick<YieldingTask, 'peak' | 'noise' | 'spoilt'>,
): number {
  const step = Math.max(STANDS_OUT * stress[peak]!, LEVEL_DEVIATIONS * noise.level);
  for (let i = last, j = last, high = last; strain[i]! - strain[peak]! <= TRANSIENT_STRAIN; i += 1) {
    // the highest of the stretch after i: a level does not rise over it
    while (j <= top && strain[j]! - strain[i]! <= TRANSIENT_STRAIN) {
      if (stress[j]! > stress[high]!) high = j;
      j += 1;
    }
    if (stress[high]! - stress[i]! > step) continue;
    if (stress[high]! - stress[last]! <= step) return last;
    let lowest = high;
    for (let k = high; k <= top; k += 1) {
      if (stress[k]! > stress[high]! + step) return lowest;
      if (stress[k]! < stress[lowest]! && spoilt?.[k] !== 1) lowest = k;
    }
    return lowest;
  }
  return last;
}

/** First sample that ReL is looked for from: after the first dip, if it is short and the range has a level above it; else the first that has fallen. */
function afterTransient(
  { strain, stress }: StressStrainCurve,
  { hardeningStrain, hardeningStart }: HardeningOnset,
  task: YieldingTask,
): number {
  const { peak, fallen, noise, spoilt } = task;
  const level = levelOf(stress, fallen, hardeningStart, spoilt) - Math.max(DIP_SHARE * stress[peak]!, DIP_DEVIATIONS * noise.level);
  const range = hardeningStrain - strain[peak]!;
  let dip = peak;
  while (dip < hardeningStart && stress[dip]! >= level) dip += 1;
  let back = dip;
  while (back < hardeningStart && stress[back]! < level) back += 1;
  const short = strain[back]! - strain[peak]! <= Math.min(TRANSIENT_STRAIN, TRANSIENT_SHARE * range);
  if (back >= hardeningStart || !short || strain[dip]! - strain[peak]! > TRANSIENT_START) return fallen;
  let stop = back;
  while (stop < hardeningStart && strain[stop]! - strain[back]! <= TRANSIENT_OVERSHOOT) stop += 1;
  return maximumIndex(stress, back, stop);
}

/** Sample of ReL: the lowest of the yielding range from a sample on, by the rule that was agreed. */
function lowestOf({ strain, stress }: StressStrainCurve, from: number, end: HardeningOnset, task: YieldingTask): number {
  const limit = strain[task.peak]! + SHORT_RANGE;
  let lowest = -1;
  for (let i = from; i <= end.hardeningStart && (task.lowerYield === 'whole' || strain[i]! <= limit); i += 1)
    if (task.spoilt?.[i] !== 1 && (lowest < 0 || stress[i]! < stress[lowest]!)) lowest = i;
  return lowest < 0 ? from : lowest;
}

/** First sample of a level without hardening: of the fall that leads to it nothing counts. */
function startOfLevel({ stress }: StressStrainCurve, from: number, last: number, { fallen, spoilt }: YieldingTask): number {
  if (from > fallen) return from;
  const level = levelOf(stress, fallen, last, spoilt);
  let start = from;
  while (start < last && stress[start]! > level) start += 1;
  return start;
}

/** @internal The yielding range after an upper yield point; or why there is none, where the curve does not rise again: `fall` or `untold` of {@link endOfFall}. */
export function yieldingRange(curve: StressStrainCurve, task: YieldingTask): YieldingRange | 'fall' | 'untold' {
  const { strain, stress } = curve;
  const { peak, fallen } = task;
  const top = topOfHardening(curve, task);
  if (top === undefined) {
    const level = endOfFall(curve, task);
    if (typeof level === 'string') return level;
    const { last, ends } = level;
    const end = { hardeningStrain: strain[last]!, hardeningStart: last };
    const from = afterTransient(curve, end, task);
    return { lowest: lowestOf(curve, from, end, task), ends, levelStart: startOfLevel(curve, from, last, task) };
  }

  // yielding is over where the stress passes ReH again; a dip later on is none of it
  let above = fallen;
  while (above < top && stress[above]! <= stress[peak]!) above += 1;
  const minimum = lastMinimum(curve, fallen, above, task);
  const onset = hardeningOnset(curve, afterFirstDip(curve, minimum, top, task), top, task);
  return { lowest: lowestOf(curve, afterTransient(curve, onset, task), onset, task), onset };
}
