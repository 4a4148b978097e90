import { expect, test } from 'vitest';
import { noIncumbent, offer, tieOf, type Incumbent } from '../../src/curve/window/windowIncumbent.js';

const task = { unit: 0 };
/** A window from sample 5 on that scores 1000 and rises over 50 MPa. */
const held = (): Incumbent => {
  const best = noIncumbent(task, -Infinity);
  offer(task, best, 5, 20, 2, 1000, 50);
  return best;
};
/** What is held after others were offered, each by its first sample, score and rise. */
const after = (...others: readonly (readonly [first: number, score: number, rise: number])[]) => {
  const best = held();
  for (const [first, score, rise] of others) offer(task, best, first, 30, 3, score, rise);
  return best;
};

test('scores tie within a billionth of themselves, or of the unit where that is more', () => {
  expect(tieOf({ unit: 0 }, 1000)).toBeCloseTo(1e-6, 18);
  expect(tieOf({ unit: 0 }, -1000)).toBeCloseTo(1e-6, 18);
  expect(tieOf({ unit: 1 }, -0.001)).toBeCloseTo(1e-9, 21);
});

test('the first window is held, whatever it scores', () => {
  expect(held()).toMatchObject({ first: 5, last: 20, slope: 2, score: 1000, rise: 50, top: 1000, again: false });
  const low = noIncumbent(task, -Infinity);
  expect(low).toEqual({
    first: -1,
    last: -1,
    slope: NaN,
    score: -Infinity,
    rise: -Infinity,
    top: -Infinity,
    floor: -Infinity,
    again: false,
  });
  offer(task, low, 0, 9, 1, -1e9, 0);
  expect(low.first).toBe(0);
});

test('where the highest score is known only what ties with it is held', () => {
  const best = noIncumbent(task, 1000);
  offer(task, best, 5, 20, 2, 1000 - 2e-6, 50);
  expect(best.first).toBe(-1);
  offer(task, best, 5, 20, 2, 1000 - 5e-7, 50);
  expect(best).toMatchObject({ first: 5, score: 1000 - 5e-7, top: 1000 });
});

test('a better score is held though it rises less, a worse one is not though it rises more', () => {
  expect(after([8, 1001, 10])).toMatchObject({ first: 8, last: 30, slope: 3, score: 1001, rise: 10, top: 1001, again: false });
  expect(after([8, 999, 90])).toMatchObject({ first: 5, score: 1000 });
});

test('of scores that tie the wider rise is held, and of equal rises the earlier start', () => {
  expect(after([8, 1000 - 5e-7, 60])).toMatchObject({ first: 8, score: 1000 - 5e-7, top: 1000 });
  expect(after([8, 1000 + 5e-7, 40])).toMatchObject({ first: 5, score: 1000, top: 1000 + 5e-7 });
  expect(after([3, 1000, 50])).toMatchObject({ first: 3 });
  expect(after([8, 1000, 50])).toMatchObject({ first: 5 });
  expect(after([5, 1000, 50])).toMatchObject({ first: 5, last: 20 });
  // what tied once no longer does when the highest has crept up
  expect(after([8, 1000 + 8e-7, 40], [9, 1000 - 5e-7, 90])).toMatchObject({ first: 5 });
});

test('a tie that is lost while the highest score creeps up is looked for once more, one that is beaten by far is not', () => {
  expect(after([8, 1000 + 8e-7, 40], [9, 1000 + 1.6e-6, 45])).toMatchObject({ first: 9, rise: 45, again: true });
  expect(after([8, 1000 + 2.5e-6, 40])).toMatchObject({ first: 8, again: true });
  expect(after([8, 1000 + 3.5e-6, 40])).toMatchObject({ first: 8, again: false });
  // and stays so
  expect(after([8, 1000 + 2.5e-6, 40], [9, 1002, 10])).toMatchObject({ first: 9, again: true });
});
