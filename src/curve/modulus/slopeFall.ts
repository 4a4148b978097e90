import type { StressStrainCurve } from '../../base/index.js';
import { lineFit } from '../../numeric/index.js';
import { between } from './between.js';
import type { SlopeFall } from './ModulusFit.js';

/** @internal Bands of stress whose slopes are compared, as shares of the 0.2 %-offset stress. */
export const BANDS = [0.2, 0.3, 0.4] as const;

/** @internal Fall of slope from one stress band to the next above it, and the slope above [MPa]. */
export function slopeFall(
  { strain, stress }: StressStrainCurve,
  offsetStress: number,
  end: number,
): { readonly fall: SlopeFall; readonly above: number } | undefined {
  const band = (low: number, high: number) => {
    const [first, last] = between(stress, low * offsetStress, high * offsetStress, end - 1);
    return last - first < 2 ? undefined : lineFit(strain, stress, first, last);
  };
  const lower = band(BANDS[0], BANDS[1]);
  const upper = band(BANDS[1], BANDS[2]);
  if (!lower || !upper || lower.slope <= 0) return undefined;
  const ratio = upper.slope / lower.slope;
  return {
    fall: {
      value: 1 - ratio,
      standardError: Math.hypot(upper.standardError / lower.slope, (ratio * lower.standardError) / lower.slope),
    },
    above: upper.slope,
  };
}
