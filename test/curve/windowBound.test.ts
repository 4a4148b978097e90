/** The bound of a box against all windows in it: it never drops a better one, and it drops most of the others. */
import { expect, test } from 'vitest';
import { hopeless } from '../../src/curve/window/windowBound.js';
import { noIncumbent, tieOf, type Incumbent } from '../../src/curve/window/windowIncumbent.js';
import { windowMoments } from '../../src/curve/window/windowMoments.js';
import type { WindowTask } from '../../src/curve/window/windowTask.js';
import { windowTree } from '../../src/curve/window/windowTree.js';
import { lineFit } from '../../src/numeric/index.js';
import { someTask, stairTask } from '../support/windowTasks.js';

interface Best {
  readonly score: number;
  readonly first: number;
  readonly last: number;
}
const none: Best = { score: -Infinity, first: -1, last: -1 };
const better = (a: Best, b: Best): Best => (b.score > a.score ? b : a);

/** Best of the windows that begin in a block and end in another, by both blocks; each line from its own samples. */
function bestOfBlocks({ strain, stress, start, end, points, span, score }: WindowTask, size: number, blocks: number): Best[][] {
  const table = Array.from({ length: blocks }, () => Array.from({ length: blocks }, () => none));
  for (let first = start; first < end; first += 1)
    for (let last = first + points - 1; last < end; last += 1) {
      const line = lineFit(strain, stress, first, last);
      if (!line || !(line.slope > 0) || line.slope * (strain[last]! - strain[first]!) < span) continue;
      const row = table[Math.floor((first - start) / size)]!;
      const column = Math.floor((last - start) / size);
      row[column] = better(row[column]!, { score: score(line.slope, line.standardError), first: first - start, last: last - start });
    }
  return table;
}

/** Every box of a record with the best window in it, and what the search would ask about it when it knows a window of a score. */
function boxesOf(task: WindowTask, about: 'best' | 'base line') {
  const samples = task.end - task.start;
  const moments = windowMoments(task);
  const table = bestOfBlocks(task, moments.size, moments.blocks);
  const best = table.flat().reduce(better, none);
  const { first, last } = about === 'best' ? best : none;
  const tree = windowTree(moments, samples, { first, last } as Incumbent);
  const boxes: { readonly size: number; readonly inside: Best; readonly drops: (top: number) => boolean }[] = [];
  for (let size = tree.width; size >= 1; size /= 2)
    for (let a = tree.width / size; a < (2 * tree.width) / size; a += 1)
      for (let b = a; b < (2 * tree.width) / size; b += 1) {
        const [i, j] = [a * size - tree.width, b * size - tree.width];
        const inside = table
          .slice(i, i + size)
          .flatMap((row) => row.slice(j, j + size))
          .reduce(better, none);
        boxes.push({ size, inside, drops: (top) => hopeless(task, moments, tree, a, b, size, { ...noIncumbent(task, top), first, last }) });
      }
  return { best, boxes };
}

const tasks = Array.from({ length: 80 }, (_, k) => someTask(k + 1, 300)).filter(({ start, end }) => end - start > 40);

test.each(['best', 'base line'] as const)('no box that holds a better window is dropped, sums about the %s', (about) => {
  let asked = 0;
  for (const task of tasks)
    for (const { inside, drops } of boxesOf(task, about).boxes) {
      if (inside.first < 0) continue;
      // what is known is below what the box holds by a little, by a share and by much
      const { score } = inside;
      const scale = Math.max(Math.abs(score), task.unit);
      for (const below of [10 * tieOf(task, score), 1e-3 * scale, scale]) expect(drops(score - below)).toBe(false);
      asked += 3;
    }
  expect(asked).toBeGreaterThan(5000);
});

test('no box that holds a better window is dropped where strain is read in steps', () => {
  let asked = 0;
  for (let seed = 1; seed <= 150; seed += 1)
    for (const { inside, drops } of boxesOf(stairTask(seed, 300), seed % 3 === 0 ? 'base line' : 'best').boxes) {
      if (inside.first < 0) continue;
      const { score } = inside;
      const scale = Math.max(Math.abs(score), 1);
      for (const below of [1e-8 * scale, 1e-3 * scale, scale]) expect([seed, drops(score - below)]).toEqual([seed, false]);
      asked += 3;
    }
  expect(asked).toBeGreaterThan(5000);
});

test('with a gap a box is kept where it is better by more than the gap', () => {
  const gap = 0.01;
  for (const task of tasks.slice(0, 12))
    for (const { inside, drops } of boxesOf({ ...task, gap }, 'best').boxes)
      if (inside.score > 0) expect(drops(inside.score / (1 + 1.01 * gap))).toBe(false);
});

test('of the boxes that hold nothing better most are dropped, the more the smaller they are', () => {
  const shares = [1, 2, 4, 8].map((size) => {
    let [all, dropped] = [0, 0];
    for (const task of tasks) {
      const { best, boxes } = boxesOf(task, 'best');
      if (best.first < 0) continue;
      for (const box of boxes)
        if (box.size === size && box.inside.score < best.score) {
          all += 1;
          if (box.drops(best.score)) dropped += 1;
        }
    }
    return dropped / all;
  });
  // the bound is worth its cost where the search looks through fewer than half of the pairs of blocks
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
  expect(shares[0]).toBeGreaterThan(0.5);
});
