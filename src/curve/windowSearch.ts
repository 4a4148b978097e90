import { noIncumbent, offer, TIE, type Incumbent } from './windowIncumbent.js';
import { latticeWindows, runnersUp } from './windowLattice.js';
import { BLOCK, windowMoments, type WindowMoments } from './windowMoments.js';
import type { FoundWindow, WindowTask } from './windowTask.js';

/*
 * Exact search for the best window of a straight line: branch and bound over all pairs of first and last sample.
 *
 * A *box* holds all windows that start in one range of blocks and end in another. Its *inner* part lies in every such window, its
 * *outer* part is their union; A and B are what outer has beyond inner on the left and on the right. For a window W of the box:
 *
 * 1. Squares about the own mean or the own line only grow with more samples: Sxx(inner) <= Sxx(W) <= Sxx(outer) and
 *    RSS(inner) <= RSS(W). Hence SE(W)^2 >= RSS(inner) / ((n(outer) - 2) Sxx(outer)).
 * 2. Let e be the residuals about the line of inner, so that over inner the sums of e and of x e vanish. Then
 *    slope(W) - slope(inner) = (sum of (x - mean x(W)) e over what W has beyond inner) / Sxx(W), and by Cauchy's inequality this is
 *    at most (D_A sqrt(n_A E_A) + D_B sqrt(n_B E_B)) / Sxx(inner): E_A and E_B are the sums of e^2 over A and over B, D_A and D_B
 *    the largest distances from mean x(W) there. Where x never goes back, D_A <= mean x(inner and B) - x(first of A) and
 *    D_B <= x(last of B) - mean x(A and inner); otherwise the whole range of x serves for both.
 * 3. The two end samples alone hold half of (their distance)^2 in Sxx(W), and slope^2 <= Syy(W) / Sxx(W); so the rise of a line over
 *    its window, squared, is at most 2 Syy(W) <= 2 Syy(outer).
 *
 * A score that never falls with the slope and never rises with the standard error is thereby bounded over the whole box. A box that
 * cannot beat the best window found so far is dropped, any other is halved, down to pairs of blocks whose windows are all tried.
 */

/** Tries every window that starts in block a and ends in block b. */
function tryBlocks(task: WindowTask, { x, r, sums, slope: base }: WindowMoments, a: number, b: number, best: Incumbent): void {
  const { points, span, score } = task;
  const n = task.end - task.start;
  const inner = a < b ? 5 * (a + 1) : -1;
  const stop = Math.min((b + 1) * BLOCK, n);
  let ax = 0;
  let ar = 0;
  let axx = 0;
  let axr = 0;
  let arr = 0;
  for (let i = Math.min((a + 1) * BLOCK, n) - 1; i >= a * BLOCK; i -= 1) {
    let sx = 0;
    let sr = 0;
    let sxx = 0;
    let sxr = 0;
    let srr = 0;
    if (inner >= 0) {
      // i to the end of its block, and the blocks between
      const u = x[i]!;
      const v = r[i]!;
      ax += u;
      ar += v;
      axx += u * u;
      axr += u * v;
      arr += v * v;
      const q = 5 * b;
      sx = ax + sums[q]! - sums[inner]!;
      sr = ar + sums[q + 1]! - sums[inner + 1]!;
      sxx = axx + sums[q + 2]! - sums[inner + 2]!;
      sxr = axr + sums[q + 3]! - sums[inner + 3]!;
      srr = arr + sums[q + 4]! - sums[inner + 4]!;
    }
    for (let j = inner >= 0 ? b * BLOCK : i; j < stop; j += 1) {
      const u = x[j]!;
      const v = r[j]!;
      sx += u;
      sr += v;
      sxx += u * u;
      sxr += u * v;
      srr += v * v;
      const count = j - i + 1;
      if (count < points) continue;
      const xx = sxx - (sx * sx) / count;
      if (!(xx > 0)) continue;
      const xr = sxr - (sx * sr) / count;
      const d = xr / xx;
      if (score(base + d, 0) < best.floor) continue; // cheap, and enough for most
      const rise = (base + d) * (u - x[i]!);
      if (rise < span) continue;
      const rest = Math.max(0, srr - (sr * sr) / count - d * xr);
      const value = score(base + d, Math.sqrt(rest / ((count - 2) * xx)));
      if (value >= best.floor) offer(best, i, j, base + d, value, rise);
    }
  }
}

/** True where no window that starts in blocks a0 to a1 and ends in blocks b0 to b1 (upper ends excluded) can be the best. */
function hopeless(task: WindowTask, moments: WindowMoments, a0: number, a1: number, b0: number, b1: number, best: Incumbent): boolean {
  const { x, sums, slope: base, lowest, highest } = moments;
  const { points, span, score, gap } = task;
  const n = task.end - task.start;
  const outerLast = Math.min(b1 * BLOCK, n) - 1;
  const outerCount = outerLast + 1 - a0 * BLOCK;
  if (outerCount < points) return true;
  const o = 5 * a0;
  const z = 5 * b1;
  const ox = sums[z]! - sums[o]!;
  const or = sums[z + 1]! - sums[o + 1]!;
  const oxx = sums[z + 2]! - sums[o + 2]! - (ox * ox) / outerCount;
  const oxr = sums[z + 3]! - sums[o + 3]! - (ox * or) / outerCount;
  const orr = sums[z + 4]! - sums[o + 4]! - (or * or) / outerCount;
  if (2 * (orr + base * (2 * oxr + base * oxx)) < span * span) return true;
  const innerCount = (b0 - a1) * BLOCK;
  if (innerCount < 3) return false;
  const p = 5 * a1;
  const q = 5 * b0;
  const ix = sums[q]! - sums[p]!;
  const ir = sums[q + 1]! - sums[p + 1]!;
  const ixx = sums[q + 2]! - sums[p + 2]! - (ix * ix) / innerCount;
  if (!(ixx > 0)) return false;
  const ixr = sums[q + 3]! - sums[p + 3]! - (ix * ir) / innerCount;
  const d = ixr / ixx;
  const rest = Math.max(0, sums[q + 4]! - sums[p + 4]! - (ir * ir) / innerCount - d * ixr);
  // squares of A and B about the line of inner, r = c + d x
  const c = (ir - d * ix) / innerCount;
  const aCount = (a1 - a0) * BLOCK;
  const bCount = outerLast + 1 - b0 * BLOCK;
  const ax = sums[p]! - sums[o]!;
  const ar = sums[p + 1]! - sums[o + 1]!;
  const axr = sums[p + 3]! - sums[o + 3]!;
  const aSquares =
    sums[p + 4]! - sums[o + 4]! - 2 * c * ar - 2 * d * axr + 2 * c * d * ax + c * c * aCount + d * d * (sums[p + 2]! - sums[o + 2]!);
  const bx = sums[z]! - sums[q]!;
  const br = sums[z + 1]! - sums[q + 1]!;
  const bxr = sums[z + 3]! - sums[q + 3]!;
  const bSquares =
    sums[z + 4]! - sums[q + 4]! - 2 * c * br - 2 * d * bxr + 2 * c * d * bx + c * c * bCount + d * d * (sums[z + 2]! - sums[q + 2]!);
  let left: number;
  let right: number;
  let width: number;
  if (lowest && highest) {
    width = left = right = highest[b1 - 1]! - lowest[a0]!;
  } else {
    const firstX = x[a0 * BLOCK]!;
    const lastX = x[outerLast]!;
    left = (ix + bx) / (innerCount + bCount) - firstX;
    right = lastX - (ax + ix) / (aCount + innerCount);
    width = lastX - firstX;
  }
  const reach = left * Math.sqrt(Math.max(0, aCount * aSquares)) + right * Math.sqrt(Math.max(0, bCount * bSquares));
  const highestSlope = base + d + reach / ixx;
  const widestRise = highestSlope * width;
  if (widestRise < span) return true;
  const bound = score(highestSlope, Math.sqrt(rest / ((outerCount - 2) * oxx)));
  if (bound < best.floor) return true;
  // no more than a tie, and no wider
  return bound <= best.top + Math.max(gap, TIE) * Math.abs(best.top) && (gap > 0 || widestRise <= best.rise);
}

/** Branch and bound over all boxes, improving `best`. */
function searchBoxes(task: WindowTask, moments: WindowMoments, best: Incumbent): void {
  const stack = new Int32Array(4 * 256);
  let depth = 0;
  const push = (a0: number, a1: number, b0: number, b1: number): void => {
    if (a0 >= b1 || hopeless(task, moments, a0, a1, b0, b1, best)) return;
    stack[depth] = a0;
    stack[depth + 1] = a1;
    stack[depth + 2] = b0;
    stack[depth + 3] = b1;
    depth += 4;
  };
  push(0, moments.blocks, 0, moments.blocks);
  while (depth > 0) {
    depth -= 4;
    const a0 = stack[depth]!;
    const a1 = stack[depth + 1]!;
    const b0 = stack[depth + 2]!;
    const b1 = stack[depth + 3]!;
    if (a1 - a0 === 1 && b1 - b0 === 1) {
      if (!hopeless(task, moments, a0, a1, b0, b1, best)) tryBlocks(task, moments, a0, b0, best);
    } else if (b1 - b0 >= a1 - a0) {
      const middle = (b0 + b1) >> 1;
      push(a0, a1, b0, middle);
      push(a0, a1, middle, b1); // the wider half is looked at first
    } else {
      const middle = (a0 + a1) >> 1;
      push(middle, a1, b0, b1);
      push(a0, middle, b0, b1);
    }
  }
}

/** @internal The best window by `task.score`, with runners-up; undefined where no window qualifies. */
export function windowSearch(task: WindowTask): { readonly best: FoundWindow; readonly runnersUp: readonly FoundWindow[] } | undefined {
  if (task.end - task.start < task.points) return undefined;
  const moments = windowMoments(task.strain, task.stress, task.start, task.end, task.slope);
  let found = noIncumbent(-Infinity);
  const lattice = latticeWindows(task, moments, found);
  searchBoxes(task, moments, found);
  if (found.again) {
    found = noIncumbent(found.top);
    searchBoxes(task, moments, found);
  }
  if (found.first < 0) return undefined;
  const best = { first: task.start + found.first, last: task.start + found.last, slope: found.slope, score: found.score };
  return { best, runnersUp: runnersUp(lattice, best, 3) };
}
