import { offer, type Incumbent } from './windowIncumbent.js';
import { lineOfSums } from './windowLine.js';
import { sumsBefore, type WindowMoments } from './windowMoments.js';
import type { FoundWindow, WindowTask } from './windowTask.js';

/** Windows of the lattice begin and end on the edges of so many cells of equal numbers of samples. */
const CELLS = 16;

/**
 * @internal Windows between the edges of a lattice, for each its first and last sample, slope and score, one after the other: the first
 * incumbent and, of a lattice that may end earlier, the runners-up come from them.
 */
export type WindowLattice = Float64Array;

/** @internal Tries all windows of the lattice, improving `best`. */
export function windowLattice(task: WindowTask, moments: WindowMoments, best: Incumbent): WindowLattice {
  const { strain, start, points, span, score } = task;
  const base = moments.base.slope;
  const n = task.end - start;
  const cells = Math.min(CELLS, n);
  const sums = new Float64Array(5 * (cells + 1));
  const edge = (k: number): number => Math.round((k * n) / cells);
  for (let k = 1; k <= cells; k += 1) sumsBefore(task, moments, edge(k), sums, 5 * k);
  const found = new Float64Array(2 * cells * (cells + 1));
  let at = 0;
  for (let a = 0; a < cells; a += 1) {
    const p = 5 * a;
    const first = edge(a);
    const firstX = strain[start + first]!;
    for (let b = a + 1; b <= cells; b += 1) {
      const q = 5 * b;
      const last = edge(b) - 1;
      const count = last - first + 1;
      if (count < points) continue;
      const { d, xx, rest } = lineOfSums(sums, p, q, count);
      if (!(xx > 0)) continue;
      const slope = base + d;
      const rise = slope * (strain[start + last]! - firstX);
      if (rise < span || slope <= 0) continue;
      const value = score(slope, Math.sqrt(rest / ((count - 2) * xx)));
      if (Number.isNaN(value)) continue;
      offer(task, best, first, last, slope, value, rise);
      found[at] = start + first;
      found[at + 1] = start + last;
      found[at + 2] = slope;
      found[at + 3] = value;
      at += 4;
    }
  }
  return found.subarray(0, at);
}

/** Whether a window shares less than half of the samples of the shorter one with each of others: none lies within another. */
function apart(first: number, last: number, others: readonly FoundWindow[]): boolean {
  for (const other of others) {
    const shared = Math.min(last, other.last) - Math.max(first, other.first) + 1;
    if (shared >= 0.5 * Math.min(last - first + 1, other.last - other.first + 1)) return false;
  }
  return true;
}

/** @internal Good windows of the lattice elsewhere, as a look at what else there is; only the best is searched for exactly: of the shorter of any two, the best among them, less than half of the samples are shared; best first. */
export function runnersUp(lattice: WindowLattice, best: FoundWindow, most: number): FoundWindow[] {
  const chosen = [best];
  while (chosen.length <= most) {
    let next = -1;
    for (let at = 0; at < lattice.length; at += 4)
      if ((next < 0 || lattice[at + 3]! > lattice[next + 3]!) && apart(lattice[at]!, lattice[at + 1]!, chosen)) next = at;
    if (next < 0) break;
    chosen.push({ first: lattice[next]!, last: lattice[next + 1]!, slope: lattice[next + 2]!, score: lattice[next + 3]! });
  }
  return chosen.slice(1);
}
