import { describe, expect, test } from 'vitest';
import { compareBatches, piecesForInterval, required, summariseReplicates } from '../../src/index.js';
import { studentQuantile } from '../../src/numeric/index.js';
import { expectPrinted } from '../support/handbook.js';

const class5 = [452.1, 449.8, 455.0, 451.2, 447.6];

// second derivation: worked with a pocket calculator's formulas, s² = (Σx² − (Σx)²/n)/(n − 1)
test('five tests of a class: mean 451.14, s 2.7455, CV 0.6086 %, ±3.409', () => {
  const summary = summariseReplicates(class5);
  expectPrinted(summary.mean, '451.14');
  expectPrinted(summary.standardDeviation!, '2.7455');
  expectPrinted(100 * summary.coefficientOfVariation!, '0.6086');
  expectPrinted(summary.interval!.halfWidth, '3.409');
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

  test('Welch: ν 17.776, p 0.07939, interval -3.3654832 to 0.2054832', () => {
    const welch = required(compareBatches(first, second));
    expectPrinted(welch.difference, '-1.58');
    expectPrinted(welch.difference / welch.standardError, '-1.8608');
    expectPrinted(welch.freedom, '17.776');
    expectPrinted(welch.pValue, '0.07939');
    expectPrinted(welch.interval.low, '-3.3654832');
    expectPrinted(welch.interval.high, '0.2054832');
    expect(welch).toMatchObject({ differs: false, method: 'Welch' });
  });

  test('pooled: ν 18, p 0.07919, interval -3.363874 to 0.203874', () => {
    const pooled = required(compareBatches(first, second, { pooled: true }));
    expect(pooled.freedom).toBe(18);
    expectPrinted(pooled.pValue, '0.07919');
    expectPrinted(pooled.interval.low, '-3.363874');
    expectPrinted(pooled.interval.high, '0.203874');
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

// second derivation: n by trial with the printed quantiles 4.303 3.182 2.776 2.571 of t
test('pieces for an interval: s 1.4 %, half-width 2 %: 5 pieces (2.776 · 1.4 / √5 = 1.74; with 4, 2.23)', () => {
  expect(piecesForInterval({ standardDeviation: 1.4, halfWidth: 2 })).toBe(5);
  expect(piecesForInterval({ standardDeviation: 1, halfWidth: 2.49 })).toBe(3);
  expect(piecesForInterval({ standardDeviation: 1, halfWidth: 2.48 })).toBe(4);
});
