import { tryBlocks } from './windowBlocks.js';
import { hopeless } from './windowBound.js';
import { climb } from './windowClimb.js';
import { noIncumbent, type Incumbent } from './windowIncumbent.js';
import { runnersUp, windowLattice } from './windowLattice.js';
import { windowMoments, type BaseLine, type WindowMoments } from './windowMoments.js';
import type { FoundWindow, WindowTask } from './windowTask.js';

/*
 * Exact search for the best window of a straight line: branch and bound over all pairs of first and last sample.
 *
 * A lattice of windows gives the first incumbent. A *box* holds all windows that start in one range of blocks and end in another; where
 * none of them can beat the incumbent (windowBound.ts, with the proof) it is dropped, any other is halved, down to pairs of blocks whose
 * windows are all tried.
 */

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
    // what is pushed last is looked at first: the widest windows
    const half = size >> 1;
    push(2 * a + 1, 2 * b, half);
    push(2 * a + 1, 2 * b + 1, half);
    push(2 * a, 2 * b, half);
    push(2 * a, 2 * b + 1, half);
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
  let found = noIncumbent(task, -Infinity);
  const lattice = windowLattice(task, found);
  const moments = windowMoments(task.strain, task.stress, task.start, task.end, baseLine(task, found));
  if (found.first >= 0) climb(task, moments, found);
  searchBoxes(task, moments, found);
  if (found.again) {
    found = noIncumbent(task, found.top);
    searchBoxes(task, moments, found);
  }
  if (found.first < 0) return undefined;
  const best = { first: task.start + found.first, last: task.start + found.last, slope: found.slope, score: found.score };
  return { best, runnersUp: runnersUp(lattice, best, 3) };
}
