import { offer, type Incumbent } from './windowIncumbent.js';
import type { FoundWindow, WindowTask } from './windowTask.js';

/** Windows of the lattice begin and end on the edges of so many cells of equal numbers of samples. */
const CELLS = 16;

/** @internal Windows between the edges of a lattice, by samples of the record, with their scores: the first incumbent and the runners-up come from them. */
export interface WindowLattice {
  readonly count: number;
  readonly first: Int32Array;
  readonly last: Int32Array;
  readonly slope: Float64Array;
  readonly score: Float64Array;
}

/** Sums over each cell of x, r, x², xr, r², about the middle sample and a line of the expected slope through it. */
function cellSums({ strain, stress, start, end, slope }: WindowTask, edges: readonly number[]): Float64Array {
  const middle = start + ((end - start) >> 1);
  const x0 = strain[middle]!;
  const y0 = stress[middle]!;
  const sums = new Float64Array(5 * (edges.length - 1));
  for (let k = 0; k < edges.length - 1; k += 1) {
    let sx = 0;
    let sr = 0;
    let sxx = 0;
    let sxr = 0;
    let srr = 0;
    for (let i = edges[k]!; i < edges[k + 1]!; i += 1) {
      const u = strain[i]! - x0;
      const v = stress[i]! - y0 - slope * u;
      sx += u;
      sr += v;
      sxx += u * u;
      sxr += u * v;
      srr += v * v;
    }
    sums[5 * k] = sx;
    sums[5 * k + 1] = sr;
    sums[5 * k + 2] = sxx;
    sums[5 * k + 3] = sxr;
    sums[5 * k + 4] = srr;
  }
  return sums;
}

/** @internal Tries all windows of the lattice, improving `best`. */
export function windowLattice(task: WindowTask, best: Incumbent): WindowLattice {
  const { strain, start, end, points, span, score, slope: base } = task;
  const n = end - start;
  const cells = Math.min(CELLS, n);
  const edges = Array.from({ length: cells + 1 }, (_, k) => start + Math.round((k * n) / cells));
  const sums = cellSums(task, edges);
  const most = (cells * (cells + 1)) / 2;
  const found = {
    count: 0,
    first: new Int32Array(most),
    last: new Int32Array(most),
    slope: new Float64Array(most),
    score: new Float64Array(most),
  };
  for (let a = 0; a < cells; a += 1) {
    let sx = 0;
    let sr = 0;
    let sxx = 0;
    let sxr = 0;
    let srr = 0;
    for (let b = a; b < cells; b += 1) {
      const p = 5 * b;
      sx += sums[p]!;
      sr += sums[p + 1]!;
      sxx += sums[p + 2]!;
      sxr += sums[p + 3]!;
      srr += sums[p + 4]!;
      const first = edges[a]!;
      const last = edges[b + 1]! - 1;
      const count = last - first + 1;
      if (count < points) continue;
      const xx = sxx - (sx * sx) / count;
      const xr = sxr - (sx * sr) / count;
      if (!(xx > 0)) continue;
      const d = xr / xx;
      const rise = (base + d) * (strain[last]! - strain[first]!);
      if (rise < span || base + d <= 0) continue;
      const rest = Math.max(0, srr - (sr * sr) / count - d * xr);
      const value = score(base + d, Math.sqrt(rest / ((count - 2) * xx)));
      if (Number.isNaN(value)) continue;
      offer(task, best, first - start, last - start, base + d, value, rise);
      found.first[found.count] = first;
      found.last[found.count] = last;
      found.slope[found.count] = base + d;
      found.score[found.count] = value;
      found.count += 1;
    }
  }
  return found;
}

/** Whether a window shares less than half of the samples of the longer one with each of others. */
function apart(first: number, last: number, others: readonly FoundWindow[]): boolean {
  for (const other of others) {
    const shared = Math.min(last, other.last) - Math.max(first, other.first) + 1;
    if (shared >= 0.5 * Math.max(last - first + 1, other.last - other.first + 1)) return false;
  }
  return true;
}

/** @internal Good windows that share less than half of their samples with the best and with each other, best first. */
export function runnersUp({ count, first, last, slope, score }: WindowLattice, best: FoundWindow, most: number): FoundWindow[] {
  const chosen = [best];
  while (chosen.length <= most) {
    let next = -1;
    for (let k = 0; k < count; k += 1) {
      if (next >= 0 && score[k]! <= score[next]!) continue;
      if (apart(first[k]!, last[k]!, chosen)) next = k;
    }
    if (next < 0) break;
    chosen.push({ first: first[next]!, last: last[next]!, slope: slope[next]!, score: score[next]! });
  }
  return chosen.slice(1);
}
