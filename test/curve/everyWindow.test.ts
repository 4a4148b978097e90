/** The search against every window, on short records of any shape: a quick companion of `windowSearch.test.ts`. */
import { expect, test } from 'vitest';
import { everyWindow } from '../../bench/everyWindow.js';
import { lowerBound, relativeError } from '../../bench/searchTask.js';
import { lineFit } from '../../src/numeric/index.js';
import { windowSearch } from '../../src/curve/window/windowSearch.js';
import type { WindowTask } from '../../src/curve/window/windowTask.js';
import { seeded } from '../support/random.js';
import { someTask, stairTask } from '../support/windowTasks.js';

test.each([
  ['any', someTask, 30, 400],
  ['any', someTask, 100, 200],
  ['any', someTask, 400, 30],
  ['stair', stairTask, 30, 400],
  ['stair', stairTask, 100, 200],
  ['stair', stairTask, 400, 60],
] as const)('of %s strain the best of all windows is found', (_, taskOf, most, tasks) => {
  let found = 0;
  for (let seed = 1; seed <= tasks; seed += 1) {
    const task = taskOf(seed, most);
    const [best, expected] = [windowSearch(task)?.best, everyWindow(task)];
    expect([seed, best?.first, best?.last]).toEqual([seed, expected?.first, expected?.last]);
    if (!best || !expected) continue;
    found += 1;
    expect(Math.abs(best.score - expected.score)).toBeLessThan(1e-10 * Math.max(1, Math.abs(expected.score)));
  }
  expect(found).toBeGreaterThan(tasks / 3);
});

test.each([lowerBound, relativeError])('of lines that tie the widest is taken, of equally wide ones the first', (scoring) => {
  // exact in binary: two lines of 2 with a step between them
  const strain = Float64Array.from({ length: 64 }, (_, i) => i / 64);
  const stress = strain.map((e, i) => 2 * e + (i < 32 ? 0 : 8));
  const task: WindowTask = { strain, stress, start: 0, end: 64, slope: 2, span: 0.5, points: 8, gap: 0, ...scoring };
  const { best } = windowSearch({ ...task, slopeFor: () => 0, score: (slope, error) => (error === 0 ? 1 : -1 / slope) })!;
  expect(best).toMatchObject({ first: 0, last: 31, slope: 2 });
  const { best: later } = windowSearch({ ...task, start: 8, slopeFor: () => 0, score: (slope, error) => (error === 0 ? 1 : -1 / slope) })!;
  expect(later).toMatchObject({ first: 32, last: 63, slope: 2 });
});

test('a window reaches its least rise and its least number of samples exactly, and no less', () => {
  const strain = Float64Array.from({ length: 32 }, (_, i) => i / 32);
  const stress = strain.map((e) => 2 * e);
  const task: WindowTask = { strain, stress, start: 0, end: 32, slope: 2, span: 62 / 32, points: 32, gap: 0, ...lowerBound };
  expect(windowSearch(task)!.best).toEqual({ first: 0, last: 31, slope: 2, score: 2 });
  expect(windowSearch({ ...task, span: 62.1 / 32 })).toBeUndefined();
  expect(windowSearch({ ...task, points: 33 })).toBeUndefined();
});

test('runners-up share less than half of the samples of the shorter one with the best and with each other, best first', () => {
  for (let seed = 1; seed <= 100; seed += 1) {
    const result = windowSearch(someTask(seed, 300));
    if (!result) continue;
    const all = [result.best, ...result.runnersUp];
    expect(result.runnersUp.length).toBeLessThanOrEqual(3);
    for (const [k, one] of all.entries()) {
      if (k > 1) expect(one.score).toBeLessThanOrEqual(all[k - 1]!.score);
      for (const other of all.slice(0, k)) {
        const shared = Math.min(one.last, other.last) - Math.max(one.first, other.first) + 1;
        expect(shared).toBeLessThan(0.5 * Math.min(one.last - one.first + 1, other.last - other.first + 1));
      }
    }
  }
});

test('runners-up end before the sample that is named, and the best stays what it is', () => {
  let runners = 0;
  for (let seed = 1; seed <= 100; seed += 1) {
    const task = someTask(seed, 300);
    const result = windowSearch(task);
    if (!result) continue;
    for (const othersEnd of [Math.round((task.start + task.end) / 2), task.start, 0]) {
      const bounded = windowSearch({ ...task, othersEnd })!;
      expect(bounded.best).toEqual(result.best);
      for (const { last } of bounded.runnersUp) expect(last).toBeLessThan(othersEnd);
      runners += bounded.runnersUp.length;
    }
  }
  expect(runners).toBeGreaterThan(0);
});

test('of sixteen samples, all of whose windows are looked at, the runners-up are the next best that lie apart', () => {
  let runners = 0;
  for (let seed = 1; seed <= 40; seed += 1) {
    const { normal } = seeded(seed);
    const strain = Float64Array.from({ length: 20 }, (_, i) => i / 20);
    const stress = strain.map((e) => 100 * e - 20 * e * e + 0.5 * normal());
    const task: WindowTask = { strain, stress, start: 2, end: 18, slope: 90, span: 8, points: 4, gap: 0, ...lowerBound };
    const all: { first: number; last: number; slope: number; score: number }[] = [];
    for (let first = 2; first < 18; first += 1)
      for (let last = first + 3; last < 18; last += 1) {
        const { slope, standardError } = lineFit(strain, stress, first, last)!;
        if (slope * (strain[last]! - strain[first]!) >= 8) all.push({ first, last, slope, score: slope - 4 * standardError });
      }
    all.sort((a, b) => b.score - a.score);
    const chosen: typeof all = [];
    for (const one of all) {
      const apart = chosen.every((other) => {
        const shared = Math.min(one.last, other.last) - Math.max(one.first, other.first) + 1;
        return shared < 0.5 * Math.min(one.last - one.first + 1, other.last - other.first + 1);
      });
      if (apart && chosen.length < 4) chosen.push(one);
    }
    const { best, runnersUp } = windowSearch(task)!;
    const near = ({ first, last, slope, score }: (typeof all)[number]) => ({
      first,
      last,
      slope: expect.closeTo(slope, 8) as number,
      score: expect.closeTo(score, 8) as number,
    });
    expect([best, ...runnersUp]).toEqual(chosen.map(near));
    runners += runnersUp.length;
  }
  expect(runners).toBeGreaterThan(40);
});
