import type { StressStrainCurve } from '../base/index.js';
import { lineFit } from '../numeric/index.js';
import type { SlopeFall } from './ModulusFit.js';

/** @internal First and last sample whose value lies between two limits on the way up to the maximum. */
export function between(column: Float64Array, from: number, to: number, maximum: number): readonly [number, number] {
  let last = 0;
  while (last <= maximum && column[last]! <= to) last += 1;
  last -= 1;
  let first = last;
  while (first > 0 && column[first - 1]! >= from) first -= 1;
  return [first, last];
}

/** @internal Fall of slope from one stress band to the next above it. */
export function slopeFall({ strain, stress }: StressStrainCurve, offsetStress: number, end: number): SlopeFall | undefined {
  const band = (low: number, high: number) => {
    const [first, last] = between(stress, low * offsetStress, high * offsetStress, end - 1);
    return last - first < 2 ? undefined : lineFit(strain, stress, first, last);
  };
  const lower = band(0.2, 0.3);
  const upper = band(0.3, 0.4);
  if (!lower || !upper || lower.slope <= 0) return undefined;
  const ratio = upper.slope / lower.slope;
  return {
    value: 1 - ratio,
    standardError: Math.hypot(upper.standardError / lower.slope, (ratio * lower.standardError) / lower.slope),
  };
}
