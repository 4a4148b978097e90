import type { StressStrainCurve } from '../base/index.js';
import { sustainedCrossing } from './sustainedCrossing.js';

/** Standard deviations of the line's residuals by which a curve lies above its offset line again. */
const ABOVE = 3;

/** @internal How often a curve crosses the line of a plastic offset for good, from its first crossing up to the highest stress: back above the line and below it again is a yield point, or a slip. */
export function countCrossings(
  { strain, stress }: StressStrainCurve,
  { slope, residualStandardDeviation }: { readonly slope: number; readonly residualStandardDeviation: number },
  offset: number,
  first: number,
  highest: number,
): number {
  const last = Math.min(highest, stress.length - 1);
  // so far out that even the highest stress lies below the line
  const out = 2 * offset + stress[last]! / slope;
  let count = 1;
  let i = first + 1;
  while (i <= last && strain[i]! <= out) {
    if (stress[i]! <= slope * (strain[i]! - offset) + ABOVE * residualStandardDeviation) i += 1;
    else {
      const crossing = sustainedCrossing(strain, stress, slope, offset, i, last + 1);
      if (crossing < 0) break;
      count += 1;
      i = crossing + 1;
    }
  }
  return count;
}
