import {
  failure,
  requireBetween,
  requireOptions,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../base/index.js';
import { firstBelow, maximumIndex, medianOf } from '../numeric/index.js';
import { requireCurve } from './requireCurve.js';

/** Options of {@link fracture}. */
export interface FractureOptions {
  /** Below this share of the maximum the piece has broken; default 0.02. */
  readonly share?: number | undefined;
}

/** The fracture point of a curve. */
export interface Fracture {
  /** Last sample before the stress fell away. */
  readonly index: number;
  /** Stress there [MPa]. */
  readonly stress: number;
  /** Strain there as the curve counts it [mm/mm]. */
  readonly strain: number;
  /** A sudden fall, a slow fade below the share, or simply the last sample of a record that had begun to fall. */
  readonly how: 'sudden-fall' | 'faded-away' | 'end-of-record';
}

/** Why there is no fracture point. */
export type FractureReason = 'not-fractured';

/** @internal Below this share of the maximum the piece has broken, where nothing else is said (common practice). */
export const BROKEN_SHARE = 0.02;
/** A step of the fall is sudden where it is so many times the usual step after the maximum, and so much of the maximum. */
const SUDDEN = 5;
const SUDDEN_SHARE = 0.01;
/** The oil behind the piston can hold a little force after fracture: a sudden fall to this share counts as well. */
const HELD_SHARE = 0.15;
/** @internal A record that ends above this share of its maximum has not begun to neck. */
export const NECKED = 0.99;

/** Largest fall between neighbours over a range. */
function largestFall(stress: Float64Array, first: number, end: number): number {
  let at = first;
  let largest = -Infinity;
  for (let i = first; i < end - 1; i += 1) {
    const fall = stress[i]! - stress[i + 1]!;
    if (fall > largest) {
      largest = fall;
      at = i;
    }
  }
  return at;
}

/** @internal Where and how the stress, or the force, fell away. */
export type Break = Pick<Fracture, 'index' | 'how'>;

/** @internal Where the stress, or the force, of a whole record falls away after its maximum. */
export function findBreak(stress: Float64Array, maximum: number, share: number): Outcome<Break, FractureReason> {
  const n = stress.length;
  const top = stress[maximum]!;
  if (top <= 0) return failure('not-fractured', 'the force never rises above zero');
  const at = (index: number, how: Fracture['how']) => success({ index, how });
  // falls of a typical step, from a few hundred places
  const typical = (end: number): number => {
    const stride = Math.max(1, Math.floor((end - maximum) / 300));
    const falls: number[] = [];
    for (let i = maximum; i < end - 1; i += stride) falls.push(Math.abs(stress[i]! - stress[i + 1]!));
    return medianOf(falls);
  };
  const suddenAt = (low: number): number => {
    // back from the first low sample to where the collapse began
    const least = Math.max(SUDDEN * typical(low), SUDDEN_SHARE * top);
    let index = low;
    while (index > maximum && stress[index - 1]! - stress[index]! > least) index -= 1;
    return index;
  };
  const gone = firstBelow(stress, share * top, maximum, n);
  if (gone < n) {
    const index = suddenAt(gone);
    if (index < gone) return at(index, 'sudden-fall');
  }
  // a fall that was sudden, then lingered at a small share
  const fall = largestFall(stress, maximum, Math.min(gone + 1, n));
  if (fall < n - 1 && stress[fall]! - stress[fall + 1]! > 0.2 * top && stress[fall + 1]! < HELD_SHARE * top)
    return at(Math.min(suddenAt(fall + 1), fall), 'sudden-fall');
  if (gone < n) return at(gone - 1, 'faded-away');
  if (stress[n - 1]! < NECKED * top) return at(n - 1, 'end-of-record');
  return failure('not-fractured', `the record ends at ${((100 * stress[n - 1]!) / top).toFixed(1)} % of its maximum`);
}

/** @internal {@link fracture} on a checked curve, with the sample of the maximum known. */
export function fractureKernel({ strain, stress }: StressStrainCurve, maximum: number, share: number): Outcome<Fracture, FractureReason> {
  const broken = findBreak(stress, maximum, share);
  if (!broken.ok) return broken;
  const { index, how } = broken;
  return success({ index, stress: stress[index]!, strain: strain[index]!, how });
}

/**
 * The fracture point of a curve: the last sample before the force fell away.
 *
 * $$ A_t = e(\text{fracture}) $$
 *
 * @remarks
 * Fracture is where a fall of more than five times the usual step, and of 1 % of the maximum, ends below 2 % of the maximum, or where the stress fades
 * below that share. The largest fall between two samples counts too where it is more than 20 % of the maximum and ends below 15 %: oil behind
 * the piston can hold a little force after fracture (common practice). A record that stops while the stress was falling is given its last sample, and says so (`analyseTension` counts that as a fracture only of a piece that was measured broken); one that stops at its maximum has no
 * fracture.
 *
 * @param curve - Strain [mm/mm] and stress [MPa], at least 2 samples, finite.
 * @param options - `share` of the maximum, from 0 to 0.5.
 * @returns Sample, stress, strain and how it was recognised, or `not-fractured`.
 * @throws {@link InputError} `not-finite`, `too-few`, `unequal-lengths`, `unknown-option`, `out-of-range`.
 *
 * @example
 * ```ts
 * required(fracture({ strain: [0, 0.1, 0.2, 0.3, 0.31], stress: [0, 400, 430, 300, 2] })).index; // => 3
 * ```
 *
 * @see ISO 6892-1:2019, Annex A, determination of the fracture. Checked in `test/handbook/tension.test.ts`.
 */
export function fracture(curve: CurveColumns, options: FractureOptions = {}): Outcome<Fracture, FractureReason> {
  const checked = requireCurve('fracture', curve);
  requireOptions('fracture', options, ['share']);
  const share = requireBetween('fracture', 'options.share', options.share ?? BROKEN_SHARE, 0, 0.5);
  return fractureKernel(checked, maximumIndex(checked.stress, 0, checked.stress.length), share);
}
