import type { StressStrainCurve } from '../../base/index.js';
import { aboveSince, reachedSince } from '../../numeric/index.js';
import { LEAST_WINDOW_POINTS } from '../window/windowChoice.js';
import { leastRise } from '../window/windowTask.js';

/** What others would find who chose another window by the same bounds, in the lower half where every practice puts it. */
export interface WindowEnvelope {
  /** How many windows, without the line's own. */
  readonly windows: number;
  /** Lowest and highest slope [MPa]. */
  readonly slope: readonly [number, number];
  /** Lowest and highest 0.2 % proof strength that their lines give [MPa]; absent where the curve reaches none. */
  readonly proofStrength?: readonly [number, number] | undefined;
  /** `robust` where their slopes and the line's own agree within 5 % and the proof strengths within 1 % (common practice), else `fragile`. */
  readonly verdict: 'robust' | 'fragile';
}

/** Windows end at or below this share of the 0.2 %-offset stress, or the least that the bounds leave room for. */
const UPPER_SHARE = 0.5;
/** Room above the least end, as a share of the same stress. */
const ROOM = 0.1;
/** Equal steps between the first and the last sample on which windows begin and end. */
const STEPS = 24;
const SLOPES_AGREE = 0.05;
const PROOFS_AGREE = 0.01;

/** @internal Where windows of the envelope may lie, and where their offset lines meet the curve. */
export interface EnvelopeBounds {
  readonly startShare: number;
  readonly spanShare: number;
  /** Stress where the 0.2 % offset line of a coarse line meets the curve [MPa], and the first sample there. */
  readonly offsetStress: number;
  readonly offsetSample: number;
  /** Where the 0.2 % offset line of a line with this slope and strain shift meets the curve [MPa], if it does. */
  readonly proofOf: (slope: number, shift: number) => number | undefined;
}

/** @internal One past the last sample that others would end a window at: of the envelope, and of the runners-up. */
export const othersEnd = (
  stress: Float64Array,
  { startShare, spanShare, offsetStress, offsetSample }: Omit<EnvelopeBounds, 'proofOf'>,
): number => aboveSince(stress, Math.max(UPPER_SHARE, startShare + spanShare + ROOM) * offsetStress, offsetSample);

/** Slope and strain shift of the line of every window between steps of the stretch, by sums over the samples before each step. */
function linesOf(
  { strain, stress }: StressStrainCurve,
  start: number,
  end: number,
  span: number,
): { readonly slopes: readonly number[]; readonly shifts: readonly number[] } {
  const n = end - start;
  const x0 = strain[start + (n >> 1)]!;
  const y0 = stress[start + (n >> 1)]!;
  const steps = Math.min(STEPS, n);
  const edges = [start];
  for (let k = 1; k <= steps; k += 1) edges.push(start + Math.round((k * n) / steps));
  const sums = new Float64Array(4 * (steps + 1));
  for (let k = 0; k < steps; k += 1) {
    let [sx, sy, sxx, sxy] = [0, 0, 0, 0];
    for (let i = edges[k]!; i < edges[k + 1]!; i += 1) {
      const u = strain[i]! - x0;
      const v = stress[i]! - y0;
      sx += u;
      sy += v;
      sxx += u * u;
      sxy += u * v;
    }
    [sx, sy, sxx, sxy].forEach((one, p) => (sums[4 * (k + 1) + p] = sums[4 * k + p]! + one));
  }
  const slopes: number[] = [];
  const shifts: number[] = [];
  for (let a = 0; a < steps; a += 1)
    for (let b = a + 1; b <= steps; b += 1) {
      const count = edges[b]! - edges[a]!;
      if (count < LEAST_WINDOW_POINTS) continue;
      const x = sums[4 * b]! - sums[4 * a]!;
      const y = sums[4 * b + 1]! - sums[4 * a + 1]!;
      const xx = sums[4 * b + 2]! - sums[4 * a + 2]! - x ** 2 / count;
      const slope = (sums[4 * b + 3]! - sums[4 * a + 3]! - (x * y) / count) / xx;
      if (!(xx > 0) || slope * (strain[edges[b]! - 1]! - strain[edges[a]!]!) < span) continue;
      slopes.push(slope);
      shifts.push(x0 + x / count - (y0 + y / count) / slope);
    }
  return { slopes, shifts };
}

/** @internal The envelope of the windows beside a line; undefined where the bounds leave no other window. */
export function windowEnvelope(
  curve: StressStrainCurve,
  own: { readonly slope: number; readonly strainShift: number },
  bounds: EnvelopeBounds,
): WindowEnvelope | undefined {
  const { startShare, spanShare, offsetStress, offsetSample, proofOf } = bounds;
  const { strain, stress } = curve;
  const end = othersEnd(stress, bounds);
  const start = reachedSince(stress, startShare * offsetStress, end);
  const { slopes, shifts } = linesOf(curve, start, end, leastRise(spanShare, offsetStress));
  if (slopes.length === 0) return undefined;

  // which lines lie extreme: by slope, and by where their offset lines pass the crossing of the chosen one
  const at = strain[Math.min(offsetSample, strain.length - 1)]!;
  const height = (k: number): number => slopes[k]! * (at - shifts[k]!);
  let [flattest, steepest, lowest, highest] = [0, 0, 0, 0];
  for (let k = 1; k < slopes.length; k += 1) {
    if (slopes[k]! < slopes[flattest]!) flattest = k;
    if (slopes[k]! > slopes[steepest]!) steepest = k;
    if (height(k) < height(lowest)) lowest = k;
    if (height(k) > height(highest)) highest = k;
  }
  const ownProof = proofOf(own.slope, own.strainShift);
  const known = [flattest, steepest, lowest, highest].map((k) => proofOf(slopes[k]!, shifts[k]!)).filter((one) => one !== undefined);
  const slope = [slopes[flattest]!, slopes[steepest]!] as const;
  const proofStrength = known.length > 0 ? ([Math.min(...known), Math.max(...known)] as const) : undefined;
  const agree = ([low, high]: readonly [number, number], mine: number, share: number): boolean =>
    Math.max(high, mine) - Math.min(low, mine) <= share * Math.min(low, mine);
  return {
    windows: slopes.length,
    slope,
    ...(proofStrength ? { proofStrength } : {}),
    verdict:
      agree(slope, own.slope, SLOPES_AGREE) && (!proofStrength || agree(proofStrength, ownProof ?? proofStrength[0], PROOFS_AGREE))
        ? 'robust'
        : 'fragile',
  };
}
