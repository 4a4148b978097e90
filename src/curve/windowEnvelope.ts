import type { StressStrainCurve } from '../base/index.js';
import type { WindowLine } from './lineResiduals.js';
import { proofStrengthKernel } from './proofStrength.js';

/** What others would find who chose another window by the same bounds, in the lower half where every practice puts it. */
export interface WindowEnvelope {
  /** How many windows. */
  readonly windows: number;
  /** Lowest and highest slope [MPa]. */
  readonly slope: readonly [number, number];
  /** Lowest and highest 0.2 % proof strength that their lines give [MPa]; absent where the curve reaches none. */
  readonly proofStrength?: readonly [number, number] | undefined;
  /** `robust` where slopes agree within 5 % and proof strengths within 1 % (common practice), else `fragile`. */
  readonly verdict: 'robust' | 'fragile';
}

/** Windows end at or below this share of the 0.2 %-offset stress, or the least that the bounds leave room for. */
const UPPER_SHARE = 0.5;
/** Room above the least end, as a share of the same stress. */
const ROOM = 0.1;
/** Equal steps between the first and the last sample on which windows begin and end. */
const STEPS = 24;
const POINTS = 8;
const OFFSET = 0.002;
/** Below this share of the offset stress no curve crosses its offset line. */
const BELOW_CROSSING = 0.6;
const SLOPES_AGREE = 0.05;
const PROOFS_AGREE = 0.01;

/** @internal Where windows of the envelope may lie. */
export interface EnvelopeBounds {
  readonly startShare: number;
  readonly spanShare: number;
  /** Stress where the 0.2 % offset line meets the curve [MPa], the first sample there, and one past the highest stress. */
  readonly offsetStress: number;
  readonly end: number;
  readonly beyond: number;
}

/** Slope and strain shift of every window between the steps, by sums over the samples before each step. */
function linesOf({ strain, stress }: StressStrainCurve, start: number, end: number, span: number): (readonly [number, number])[] {
  const n = end - start;
  const x0 = strain[start + (n >> 1)]!;
  const y0 = stress[start + (n >> 1)]!;
  const steps = Math.min(STEPS, n);
  const edges = Array.from({ length: steps + 1 }, (_, k) => start + Math.round((k * n) / steps));
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
  const lines: (readonly [number, number])[] = [];
  for (let a = 0; a < steps; a += 1)
    for (let b = a + 1; b <= steps; b += 1) {
      const count = edges[b]! - edges[a]!;
      if (count < POINTS) continue;
      const part = (p: number): number => sums[4 * b + p]! - sums[4 * a + p]!;
      const xx = part(2) - part(0) ** 2 / count;
      const slope = (part(3) - (part(0) * part(1)) / count) / xx;
      if (!(xx > 0) || slope * (strain[edges[b]! - 1]! - strain[edges[a]!]!) < span) continue;
      lines.push([slope, x0 + part(0) / count - (y0 + part(1) / count) / slope]);
    }
  return lines;
}

/** @internal The envelope around a line; undefined where the bounds leave no other window. */
export function windowEnvelope(curve: StressStrainCurve, line: WindowLine, bounds: EnvelopeBounds): WindowEnvelope | undefined {
  const { startShare, spanShare, offsetStress, beyond } = bounds;
  const { strain, stress } = curve;
  const upper = Math.max(UPPER_SHARE, startShare + spanShare + ROOM) * offsetStress;
  let end = bounds.end;
  while (end > 0 && stress[end - 1]! > upper) end -= 1;
  let start = end;
  while (start > 0 && stress[start - 1]! >= startShare * offsetStress) start -= 1;
  const lines = linesOf(curve, start, end, spanShare * offsetStress);
  if (lines.length === 0) return undefined;

  let from = end;
  while (from < bounds.end && stress[from]! < BELOW_CROSSING * offsetStress) from += 1;
  const own = [line.slope, -line.intercept / line.slope] as const;
  const proofOf = ([slope, shift]: readonly [number, number]): number | undefined => {
    const proof = proofStrengthKernel(curve, slope, shift, OFFSET, from, beyond);
    return proof.ok ? proof.stress : undefined;
  };
  // which lines lie extreme: by slope, and by where their offset lines pass the crossing of the chosen one
  const at = strain[Math.min(bounds.end, strain.length - 1)]!;
  const height = ([slope, shift]: readonly [number, number]): number => slope * (at - shift);
  const extreme = [own, own, own, own];
  for (const one of lines) {
    if (one[0] < extreme[0]![0]) extreme[0] = one;
    if (one[0] > extreme[1]![0]) extreme[1] = one;
    if (height(one) < height(extreme[2]!)) extreme[2] = one;
    if (height(one) > height(extreme[3]!)) extreme[3] = one;
  }
  const proofs = [...new Set(extreme)].map(proofOf).filter((one) => one !== undefined);
  const slope = [extreme[0]![0], extreme[1]![0]] as const;
  const proofStrength = proofs.length > 0 ? ([Math.min(...proofs), Math.max(...proofs)] as const) : undefined;
  const agree = ([low, high]: readonly [number, number], share: number): boolean => high - low <= share * low;
  return {
    windows: lines.length,
    slope,
    ...(proofStrength ? { proofStrength } : {}),
    verdict: agree(slope, SLOPES_AGREE) && (!proofStrength || agree(proofStrength, PROOFS_AGREE)) ? 'robust' : 'fragile',
  };
}
