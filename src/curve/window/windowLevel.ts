import type { WindowMoments } from './windowMoments.js';
import type { WindowTask } from './windowTask.js';

/*
 * N of windowBound.ts where inner lies at one strain X and so do all samples on one side of it, the *level* side. A window counts only where
 * it rises, so it begins (or ends) on the other side, the *steep* one, at another strain than X.
 *
 * Let e be the residuals about any line through the mean of inner, h = |x - X|, and f = e where the steep side lies on the left and -e
 * where it lies on the right. As f sums to zero over inner, and h is zero there and on the level side,
 *
 *     N = - sum of h f over the steep side + (sum of h) (sum of f) / n(W).
 *
 * The sum of f over W is that of what W has of both sides. On the level side it is at most the greatest that any number of its samples gives,
 * none included; n(W) is at least that of inner and the steep part. Both are taken for every place where a window may begin (or end).
 */

/** @internal Greatest N of the windows of a box with a level inner part, e = stress - base line - c - d x; side -1 where the left is steep, 1 where the right is. */
export function levelExcess(
  { strain, stress, start }: WindowTask,
  { base }: WindowMoments,
  side: -1 | 1,
  from: number,
  innerFrom: number,
  innerTo: number,
  to: number,
  c: number,
  d: number,
): number {
  const X = strain[start + innerFrom]! - base.x0;
  let greatest = 0;
  for (let i = side < 0 ? innerTo : innerFrom - 1, sum = 0; side < 0 ? i < to : i >= from; i -= side) {
    const x = strain[start + i]! - base.x0;
    sum -= side * (stress[start + i]! - base.y0 - base.slope * x - c - d * x);
    if (sum > greatest) greatest = sum;
  }
  let most = -Infinity;
  let sum = greatest;
  let h = 0;
  let hf = 0;
  let count = innerTo - innerFrom;
  for (let i = side < 0 ? innerFrom - 1 : innerTo; side < 0 ? i >= from : i < to; i += side) {
    const x = strain[start + i]! - base.x0;
    const f = -side * (stress[start + i]! - base.y0 - base.slope * x - c - d * x);
    count += 1;
    sum += f;
    h += side * (x - X);
    hf += side * (x - X) * f;
    // no window with a rise begins (or ends) here
    if (x === X) continue;
    const N = (h * Math.max(0, sum)) / count - hf;
    if (N > most) most = N;
  }
  return most;
}
