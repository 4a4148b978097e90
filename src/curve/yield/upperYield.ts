import { failure, success, type Outcome, type StressStrainCurve } from '../../base/index.js';
import { noiseOfCurve, noiseReach, type NoiseOfCurve } from '../../numeric/index.js';
import type { Fall } from './Fall.js';
import type { LowerYieldRule } from './LowerYieldRule.js';
import type { YieldReason } from './YieldPoint.js';

type UpperReason = Exclude<YieldReason, 'no-hardening-after'>;

/** Beyond so much plastic extension a fall of stress is no upper yield point: the piece has yielded before (common practice). */
const PLASTIC_LIMIT = 0.005;
/** Below this share of the maximum a fall of stress is seating, not yield (common practice). */
const LEAST_SHARE = 0.2;
/** The fall must stand out of noise, and out of the steps of the reading: a step of rounding, and one that noise hidden in them makes; the half is for lost digits. */
const STEPS = 2.5;

/** Of fewer samples noise cannot be told from shape: their third differences know it to three tenths, 1.5/√27. */
const NOISE_POINTS = 30;
/** Relaxed stress that has not come back after so much strain stays lower: the samples count again (common practice; elastically it is back far sooner). */
const LONGEST_SPOILT = 0.005;
/** A step over the standard deviation that rounding to it makes, by a rectangular distribution (JCGM 100, F.2.2.1). */
const STEP_OF_DEVIATION = Math.sqrt(12);

/** @internal What the search for yield points needs to know. */
export interface YieldTask {
  readonly pauses: readonly (readonly [number, number])[];
  readonly modulus: number | undefined;
  readonly strainShift: number;
  readonly minimumFall: number;
  readonly minimumStrain: number;
  readonly lowerYield: LowerYieldRule;
  /** One step of the stress reading [MPa]; 0 where it is not stepped. */
  readonly resolution: number;
  /** First samples that count from a zero set under load: the fall before them is none. */
  readonly zeroMoves?: readonly number[] | undefined;
  /** Strain that is not the piece's: what it slipped in the grips [mm/mm]; default 0. */
  readonly slipped?: number | undefined;
  /** Sample of the highest stress. */
  readonly maximum: number;
  /** One past the last sample before the fracture. */
  readonly end: number;
}

/**
 * @internal Marks samples that a pause spoils: from its start until the stress is back where it was (at most 0.5 % strain later).
 */
export function spoiltByPauses({ strain, stress }: StressStrainCurve, pauses: YieldTask['pauses']): Uint8Array | undefined {
  if (pauses.length === 0) return undefined;
  const spoilt = new Uint8Array(stress.length);
  for (const [first, last] of pauses) {
    const level = stress[first]!;
    for (let i = first + 1; i < stress.length; i += 1) {
      if (i > last && (stress[i]! >= level || strain[i]! > strain[first]! + LONGEST_SPOILT)) break;
      spoilt[i] = 1;
    }
  }
  return spoilt;
}

const NONE: NoiseOfCurve = { level: 0, ofMeans: 0 };

/** The noise of a curve, which is no less than that of its rounding. */
function noiseOf({ strain, stress }: StressStrainCurve, end: number, rounding: number): NoiseOfCurve {
  const { level, ofMeans } = end < NOISE_POINTS ? NONE : noiseOfCurve(strain, stress, 0, end);
  return { level: Math.max(level, rounding), ofMeans: Math.max(ofMeans, rounding) };
}

/** Why there is none, where no number tells it. */
const why = {
  'no-fall': 'the stress does not fall by enough after a peak',
  'ends-after-fall': 'the record ends before the fall is long enough to tell a yield point',
  'fall-in-pause': 'the stress fell only while the crosshead stood still',
};

/** @internal The first peak after which the stress falls far enough and stays below it long enough, the noise, and what it and the steps of the reading explain of a fall. */
export function upperYield(
  curve: StressStrainCurve,
  task: YieldTask,
  spoilt: Uint8Array | undefined,
): Outcome<Pick<Fall, 'peak' | 'fallen' | 'noise' | 'reach' | 'step'>, UpperReason> {
  const { strain, stress } = curve;
  const { end, minimumFall, modulus, strainShift, zeroMoves = [] } = task;
  const zeroed = zeroMoves.length > 0;
  const least = LEAST_SHARE * stress[task.maximum]!;
  const farthest = PLASTIC_LIMIT + (task.slipped ?? 0);
  let peak = 0;
  let highest = stress[0]!;
  let fallen = -1;
  let within: UpperReason = 'no-fall';
  // asked for by the first fall that is large enough: most curves have none
  let noise: NoiseOfCurve | undefined;
  let reach = 0;
  const findReach = (): void => {
    // steps hide noise that is finer than they are
    noise = noiseOf(curve, end, task.resolution / STEP_OF_DEVIATION);
    reach = Math.max(noiseReach(end) * noise.level, STEPS * task.resolution);
  };
  for (let i = 1; i < end; i += 1) {
    const value = stress[i]!;
    if (spoilt?.[i] === 1) {
      // a hand that holds lets nothing fall but noise
      if (value < highest * (1 - minimumFall) && highest >= least && within !== 'fall-in-pause') {
        if (!noise) findReach();
        if (highest - value >= reach) within = 'fall-in-pause';
      }
      continue;
    }
    if (value > highest || (zeroed && zeroMoves.includes(i))) {
      peak = i;
      highest = value;
      fallen = -1;
      if (modulus !== undefined && strain[i]! - strainShift - value / modulus > farthest) break;
      continue;
    }
    const fall = highest - value;
    if (fallen < 0 && fall >= minimumFall * highest && highest >= least) {
      if (!noise) findReach();
      if (fall >= reach) fallen = i;
      else if (within === 'no-fall') within = 'fall-within-noise';
    }
    if (fallen >= 0 && strain[i]! - strain[peak]! >= task.minimumStrain)
      return success({ peak, fallen, noise: noise ?? NONE, reach, step: task.resolution });
  }
  // had it been long enough, it would have been returned above
  if (fallen >= 0) within = 'ends-after-fall';
  return failure(
    within,
    within === 'fall-within-noise' ? `falls are within the noise of ${(noise ?? NONE).level.toPrecision(3)} MPa` : why[within],
  );
}
