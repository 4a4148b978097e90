import type { Incumbent } from './windowIncumbent.js';
import type { WindowTask } from './windowTask.js';

/** @internal Whether windows over no more strain than a distance cannot be the best, with what their slope is at most at either end of t, and the error s t. */
export function beaten(
  { span, score, gap }: WindowTask,
  best: Incumbent,
  limit: number,
  distance: number,
  s: number,
  innerT: number,
  innerSlope: number,
  outerT: number,
  outerSlope: number,
): boolean {
  const highestSlope = Math.max(innerSlope, outerSlope);
  const widestRise = highestSlope * distance;
  if (highestSlope <= 0 || widestRise < span) return true;
  const bound = Math.max(score(innerSlope, s * innerT), score(outerSlope, s * outerT));
  // no more than a tie, and no wider
  return bound < best.floor || (bound <= limit && (gap > 0 || widestRise <= best.rise));
}
