import type { StressStrainCurve } from '../../base/index.js';
import { lineFit } from '../../numeric/index.js';
import { between } from './between.js';
import type { SlopeFall } from './ModulusFit.js';

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
