import { hopeless } from './windowBound.js';
import { noIncumbent, offer, type Incumbent } from './windowIncumbent.js';
import { runnersUp, windowLattice } from './windowLattice.js';
import { BLOCK, windowMoments, type BaseLine, type WindowMoments } from './windowMoments.js';
import type { FoundWindow, WindowTask } from './windowTask.js';

/*
 * Exact search for the best window of a straight line: branch and bound over all pairs of first and last sample.
 *
 * A lattice of windows gives the first incumbent. A *box* holds all windows that start in one range of blocks and end in another; where
 * none of them can beat the incumbent (windowBound.ts, with the proof) it is dropped, any other is halved, down to pairs of blocks whose
 * windows are all tried.
 */

/** Samples of a block, x and r about the base line: written anew by each pair of blocks. */
const scratch = { x: new Float64Array(BLOCK), r: new Float64Array(BLOCK) };

/** Tries every window that starts in block a and ends in block b. */
function tryBlocks(task: WindowTask, { base, sums }: WindowMoments, a: number, b: number, best: Incumbent): void {
  const { strain, stress, start, points, span, score, slopeFor } = task;
  const { slope, x0, y0 } = base;
  const { x, r } = scratch;
  let needed = slopeFor(best.floor) - slope;
  const n = task.end - start;
  const apart = a < b;
  const bFirst = start + b * BLOCK;
  const bCount = Math.min(BLOCK, n - b * BLOCK);
  for (let j = 0; j < bCount; j += 1) {
    x[j] = strain[bFirst + j]! - x0;
    r[j] = stress[bFirst + j]! - y0 - slope * x[j]!;
  }
  // the blocks between, then from the end of block a backwards
  const p = 5 * (a + 1);
  const q = 5 * b;
  let ax = apart ? sums[q]! - sums[p]! : 0;
  let ar = apart ? sums[q + 1]! - sums[p + 1]! : 0;
  let axx = apart ? sums[q + 2]! - sums[p + 2]! : 0;
  let axr = apart ? sums[q + 3]! - sums[p + 3]! : 0;
  let arr = apart ? sums[q + 4]! - sums[p + 4]! : 0;
  for (let i = Math.min((a + 1) * BLOCK, n) - 1; i >= a * BLOCK; i -= 1) {
    const firstX = strain[start + i]! - x0;
    if (apart) {
      const v = stress[start + i]! - y0 - slope * firstX;
      ax += firstX;
      ar += v;
      axx += firstX * firstX;
      axr += firstX * v;
      arr += v * v;
    }
    let sx = ax;
    let sr = ar;
    let sxx = axx;
    let sxr = axr;
    let srr = arr;
    for (let j = apart ? 0 : i - b * BLOCK; j < bCount; j += 1) {
      const u = x[j]!;
      const v = r[j]!;
      sx += u;
      sr += v;
      sxx += u * u;
      sxr += u * v;
      srr += v * v;
      const count = b * BLOCK + j - i + 1;
      // cheap, without a division, and enough for most: the slope alone falls short
      if (count * sxr - sx * sr < needed * (count * sxx - sx * sx) || count < points) continue;
      const xx = sxx - (sx * sx) / count;
      if (!(xx > 0)) continue;
      const xr = sxr - (sx * sr) / count;
      const d = xr / xx;
      const rise = (slope + d) * (u - firstX);
      if (rise < span) continue;
      const rest = Math.max(0, srr - (sr * sr) / count - d * xr);
      const value = score(slope + d, Math.sqrt(rest / ((count - 2) * xx)));
      if (value < best.floor) continue;
      offer(best, i, b * BLOCK + j, slope + d, value, rise);
      needed = slopeFor(best.floor) - slope;
    }
  }
}

/** Branch and bound over all boxes, improving `best`; a box is a node of the tree of blocks for the start and one for the end. */
function searchBoxes(task: WindowTask, moments: WindowMoments, best: Incumbent): void {
  const { width } = moments;
  const stack = new Int32Array(3 * 128);
  let depth = 0;
  const push = (a: number, b: number, size: number): void => {
    stack[depth] = a;
    stack[depth + 1] = b;
    stack[depth + 2] = size;
    depth += 3;
  };
  push(1, 1, width);
  while (depth > 0) {
    depth -= 3;
    const a = stack[depth]!;
    const b = stack[depth + 1]!;
    const size = stack[depth + 2]!;
    if (hopeless(task, moments, a, b, size, best)) continue;
    if (size === 1) {
      tryBlocks(task, moments, a - width, b - width, best);
      continue;
    }
    // the latest start with the earliest end lies last on the stack's bottom: wide windows are looked at first
    const half = size >> 1;
    push(2 * a + 1, 2 * b, half);
    push(2 * a + 1, 2 * b + 1, half);
    push(2 * a, 2 * b, half);
    push(2 * a, 2 * b + 1, half);
  }
}

/** Moves the ends of the best window by ever smaller numbers of blocks while that improves it: the better the incumbent, the fewer boxes. */
function climb(task: WindowTask, { base, sums, blocks }: WindowMoments, best: Incumbent): void {
  const { strain, start, points, span, score } = task;
  const n = task.end - start;
  /** Offers the window of blocks a to b (excluded); true where it is the best now. */
  const better = (a: number, b: number): boolean => {
    if (a < 0 || b > blocks || a >= b) return false;
    const first = a * BLOCK;
    const last = Math.min(b * BLOCK, n) - 1;
    const count = last - first + 1;
    const p = 5 * a;
    const q = 5 * b;
    const sx = sums[q]! - sums[p]!;
    const sr = sums[q + 1]! - sums[p + 1]!;
    const xx = sums[q + 2]! - sums[p + 2]! - (sx * sx) / count;
    const xr = sums[q + 3]! - sums[p + 3]! - (sx * sr) / count;
    const d = xr / xx;
    const rise = (base.slope + d) * (strain[start + last]! - strain[start + first]!);
    if (count < points || !(xx > 0) || rise < span) return false;
    const rest = Math.max(0, sums[q + 4]! - sums[p + 4]! - (sr * sr) / count - d * xr);
    const value = score(base.slope + d, Math.sqrt(rest / ((count - 2) * xx)));
    if (!(value > best.top)) return false;
    offer(best, first, last, base.slope + d, value, rise);
    return true;
  };
  let a = Math.round(best.first / BLOCK);
  let b = Math.round((best.last + 1) / BLOCK);
  for (let step = Math.max(1, blocks >> 6); step > 0; step >>= 1)
    for (let moved = true; moved;) {
      moved = true;
      if (better(a - step, b)) a -= step;
      else if (better(a + step, b)) a += step;
      else if (better(a, b - step)) b -= step;
      else if (better(a, b + step)) b += step;
      else moved = false;
    }
}

/** The line of the best window of the lattice, or the expected one. */
function baseLine({ strain, stress, start, end, slope }: WindowTask, best: Incumbent): BaseLine {
  const middle = start + ((end - start) >> 1);
  if (best.first < 0) return { slope, x0: strain[middle]!, y0: stress[middle]! };
  let x = 0;
  let y = 0;
  const first = start + best.first;
  const last = start + best.last;
  for (let i = first; i <= last; i += 1) {
    x += strain[i]! - strain[middle]!;
    y += stress[i]! - stress[middle]!;
  }
  const count = last - first + 1;
  return { slope: best.slope, x0: strain[middle]!, y0: stress[middle]! + y / count - (best.slope * x) / count };
}

/** @internal The best window by `task.score`, with runners-up; undefined where no window qualifies. */
export function windowSearch(task: WindowTask): { readonly best: FoundWindow; readonly runnersUp: readonly FoundWindow[] } | undefined {
  if (task.end - task.start < task.points) return undefined;
  let found = noIncumbent(-Infinity);
  const lattice = windowLattice(task, found);
  const moments = windowMoments(task.strain, task.stress, task.start, task.end, baseLine(task, found));
  if (found.first >= 0) climb(task, moments, found);
  searchBoxes(task, moments, found);
  if (found.again) {
    found = noIncumbent(found.top);
    searchBoxes(task, moments, found);
  }
  if (found.first < 0) return undefined;
  const best = { first: task.start + found.first, last: task.start + found.last, slope: found.slope, score: found.score };
  return { best, runnersUp: runnersUp(lattice, best, 3) };
}
