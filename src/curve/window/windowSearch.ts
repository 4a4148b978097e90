import { tryBlocks } from './windowBlocks.js';
import { hopeless } from './windowBound.js';
import { climb } from './windowClimb.js';
import { noIncumbent, type Incumbent } from './windowIncumbent.js';
import { runnersUp, windowLattice } from './windowLattice.js';
import { windowMoments, type WindowMoments } from './windowMoments.js';
import { finerMoments } from './windowRounding.js';
import type { FoundWindow, WindowTask } from './windowTask.js';
import { windowTree, type WindowTree } from './windowTree.js';

/*
 * Exact search for the best window of a straight line: branch and bound over all pairs of first and last sample.
 *
 * One walk over the samples gives running moments at the edges of blocks. A lattice of windows gives the first incumbent. A *box* holds all windows that start in one range of blocks and end in another; where
 * none of them can beat the incumbent (windowBound.ts, with the proof) it is dropped, any other is halved, down to pairs of blocks whose
 * windows are all tried.
 */

/** Runners-up that are told. */
const OTHERS = 3;

/** Searches with finer moments at most: each is about a line nearer to the best. */
const ROUNDS = 3;

/** Looks through the windows that start within node a and end within node b, both of `size` blocks, improving `best`. */
function searchBox(task: WindowTask, moments: WindowMoments, tree: WindowTree, a: number, b: number, size: number, best: Incumbent): void {
  if (hopeless(task, moments, tree, a, b, size, best)) return;
  if (size === 1) {
    tryBlocks(task, moments, a - tree.width, b - tree.width, best);
    return;
  }
  // the widest windows first
  const half = size >> 1;
  searchBox(task, moments, tree, 2 * a, 2 * b + 1, half, best);
  searchBox(task, moments, tree, 2 * a, 2 * b, half, best);
  searchBox(task, moments, tree, 2 * a + 1, 2 * b + 1, half, best);
  searchBox(task, moments, tree, 2 * a + 1, 2 * b, half, best);
}

/** Looks through all windows, improving `found`. */
function searchAll(task: WindowTask, moments: WindowMoments, found: Incumbent): void {
  const tree = windowTree(moments, task.end - task.start, found);
  searchBox(task, moments, tree, 1, 1, tree.width, found);
  // A window that was passed over for its lower rise, by one that tied then and no longer does, is found by one more look with the highest
  // score known. It starts from the window held: it ties, and by rounding no box may show it again.
  if (!found.again) return;
  found.again = false;
  searchBox(task, moments, tree, 1, 1, tree.width, found);
}

/** @internal The best window by `task.score`, with runners-up; undefined where no window qualifies. */
export function windowSearch(task: WindowTask): { readonly best: FoundWindow; readonly runnersUp: readonly FoundWindow[] } | undefined {
  const { start, end } = task;
  if (end - start < task.points) return undefined;
  let moments = windowMoments(task);
  let found = noIncumbent(task, -Infinity);
  const lattice = windowLattice(task, moments, found);
  if (found.first >= 0) climb(task, moments, found);
  searchAll(task, moments, found);
  if (found.first < 0) return undefined;
  for (let round = 0; round < ROUNDS; round += 1) {
    const finer = finerMoments(task, moments, found);
    if (!finer) break;
    ({ moments, found } = finer);
    searchAll(task, moments, found);
  }
  const best = { first: start + found.first, last: start + found.last, slope: found.slope, score: found.score };
  const { others = OTHERS, othersEnd = end } = task;
  const within = { ...task, end: Math.max(start, othersEnd) };
  const among = others > 0 && othersEnd < end ? windowLattice(within, moments, noIncumbent(task, -Infinity)) : lattice;
  return { best, runnersUp: runnersUp(among, best, others) };
}
