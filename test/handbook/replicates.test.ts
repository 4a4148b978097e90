import { describe, expect, test } from 'vitest';
import { compareBatches, required, summariseReplicates } from '../../src/index.js';
import { studentQuantile } from '../../src/numeric/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('replicates', 'summariseReplicates', 'compareBatches', 'piecesForInterval');

const class5 = [452.1, 449.8, 455.0, 451.2, 447.6];

// second derivation: worked with a pocket calculator's formulas, s² = (Σx² − (Σx)²/n)/(n − 1)
test('five tests of a class: s by the sum of squares', () => {
  const summary = summariseReplicates(class5);
  expect(summary).toMatchObject({ n: 5, median: 451.2, minimum: 447.6, maximum: 455 });
  const squares = class5.reduce((sum, x) => sum + x * x, 0) - class5.reduce((sum, x) => sum + x, 0) ** 2 / 5;
  expect(summary.standardDeviation).toBeCloseTo(Math.sqrt(squares / 4), 9);
});

// tables of Student's t, for example in JCGM 100:2008, annex G
test.each([
  [1, '12.706'],
  [2, '4.3027'],
  [4, '2.7764'],
  [9, '2.2622'],
  [30, '2.0423'],
  [120, '1.9799'],
])('Student t 0.975 of %d degrees of freedom is %s', (freedom, printed) => {
  expectPrinted(studentQuantile(0.975, freedom), printed);
});

// Student (1908), The probable error of a mean: hours of sleep gained by two drugs; the evaluation as printed by R's t.test (from memory)
describe('two batches: hours of sleep', () => {
  const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];
  const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

  test('Welch: t -1.8608', () => {
    const welch = required(compareBatches(first, second));
    expectPrinted(welch.difference / welch.standardError, '-1.8608');
    expect(welch).toMatchObject({ differs: false, method: 'Welch' });
  });
});

// SciPy 1.17: stats.ttest_ind(a, b, equal_var=False) and stats.t.sf((margin - d) / se, df)
test('equivalence by two one-sided tests', () => {
  const batches = [
    [452.1, 449.8, 455.0],
    [441.2, 439.9, 444.0],
  ] as const;
  const wide = required(compareBatches(...batches, { margin: 25 }));
  expect(wide.pValue).toBeCloseTo(0.006104953340878709, 12);
  expect(wide.interval.low).toBeCloseTo(5.14136094092829, 9);
  expect(wide.equivalence!.pValue).toBeCloseTo(0.0010290376821532308, 12);
  expect(wide.equivalence).toMatchObject({ equivalent: true, margin: 25 });
  const narrow = required(compareBatches(...batches, { margin: 12 })).equivalence!;
  expect(narrow.pValue).toBeCloseTo(0.2551029768584952, 12);
  expect(narrow.equivalent).toBe(false);
  // the interval of 1 − 2α is the same test
  expect(narrow.interval.high).toBeGreaterThan(12);
  expect(wide.interval.confidence).toBe(0.95);
  expect(narrow.interval.confidence).toBeCloseTo(0.9, 12);
});
