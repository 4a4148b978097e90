import { offer, type Incumbent } from './windowIncumbent.js';
import { lineOfSums } from './windowLine.js';
import type { WindowMoments } from './windowMoments.js';
import type { WindowTask } from './windowTask.js';

/** Ways to move the first and the last block of a window: one of them, or both. */
const MOVES = [-1, 0, 1, 0, 0, -1, 0, 1, -1, -1, 1, 1] as const;

/** @internal Moves the ends of the best window by ever smaller numbers of blocks while that improves it: the better the incumbent, the fewer boxes. */
export function climb(task: WindowTask, { base, sums, blocks, size }: WindowMoments, best: Incumbent): void {
  const { strain, start, points, span, score } = task;
  const n = task.end - start;
  /** Offers the window of blocks a to b (excluded); true where it is the best now. */
  const better = (a: number, b: number): boolean => {
    if (a < 0 || b > blocks || a >= b) return false;
    const first = a * size;
    const last = Math.min(b * size, n) - 1;
    const count = last - first + 1;
    const { d, xx, rest } = lineOfSums(sums, 5 * a, 5 * b, count);
    const rise = (base.slope + d) * (strain[start + last]! - strain[start + first]!);
    if (count < points || !(xx > 0) || !(rise > 0) || rise < span || base.slope + d <= 0) return false;
    const value = score(base.slope + d, Math.sqrt(rest / ((count - 2) * xx)));
    if (!(value > best.top)) return false;
    offer(task, best, first, last, base.slope + d, value, rise);
    return true;
  };
  let a = Math.round(best.first / size);
  let b = Math.round((best.last + 1) / size);
  for (let step = Math.max(1, blocks >> 5); step > 0; step >>= 1)
    for (let k = 0; k < MOVES.length; k += 2)
      if (better(a + MOVES[k]! * step, b + MOVES[k + 1]! * step)) {
        a += MOVES[k]! * step;
        b += MOVES[k + 1]! * step;
        // from the first of the moves again
        k = -2;
      }
}
