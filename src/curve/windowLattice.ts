import { offer, type Incumbent } from './windowIncumbent.js';
import { BLOCK, type WindowMoments } from './windowMoments.js';
import type { FoundWindow, WindowTask } from './windowTask.js';

/** Edges of the lattice of windows that gives the first incumbent and the runners-up. */
const LATTICE = 48;

/** @internal Windows between the edges of a lattice: the first incumbent, and all their scores. */
export function latticeWindows(task: WindowTask, { x, sums, blocks, slope: base }: WindowMoments, best: Incumbent): FoundWindow[] {
  const { start, end, points, span, score } = task;
  const n = end - start;
  const step = Math.max(1, blocks / LATTICE);
  const edges = [...new Set(Array.from({ length: Math.ceil(blocks / step) + 1 }, (_, k) => Math.min(Math.round(k * step), blocks)))];
  const found: FoundWindow[] = [];
  for (let a = 0; a < edges.length - 1; a += 1)
    for (let b = edges.length - 1; b > a; b -= 1) {
      const p = 5 * edges[a]!;
      const q = 5 * edges[b]!;
      const first = edges[a]! * BLOCK;
      const last = Math.min(edges[b]! * BLOCK, n) - 1;
      const count = last - first + 1;
      if (count < points) continue;
      const sx = sums[q]! - sums[p]!;
      const sr = sums[q + 1]! - sums[p + 1]!;
      const xx = sums[q + 2]! - sums[p + 2]! - (sx * sx) / count;
      const xr = sums[q + 3]! - sums[p + 3]! - (sx * sr) / count;
      if (!(xx > 0)) continue;
      const d = xr / xx;
      const rise = (base + d) * (x[last]! - x[first]!);
      if (rise < span) continue;
      const rest = Math.max(0, sums[q + 4]! - sums[p + 4]! - (sr * sr) / count - d * xr);
      const value = score(base + d, Math.sqrt(rest / ((count - 2) * xx)));
      if (Number.isNaN(value)) continue;
      offer(best, first, last, base + d, value, rise);
      found.push({ first: start + first, last: start + last, slope: base + d, score: value });
    }
  return found;
}

/** @internal Good windows that share less than half of their samples with the best and with each other. */
export function runnersUp(windows: readonly FoundWindow[], best: FoundWindow, most: number): FoundWindow[] {
  const chosen = [best];
  for (const one of [...windows].sort((s, t) => t.score - s.score)) {
    const apart = chosen.every((other) => {
      const shared = Math.min(one.last, other.last) - Math.max(one.first, other.first) + 1;
      return shared < 0.5 * Math.max(one.last - one.first + 1, other.last - other.first + 1);
    });
    if (apart) chosen.push(one);
    if (chosen.length > most) break;
  }
  return chosen.slice(1);
}
