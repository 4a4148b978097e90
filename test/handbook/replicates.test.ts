import { describe, expect, test } from 'vitest';
import {
  analyseBending,
  analyseBrinell,
  analyseReplicates,
  compareBatches,
  rectangular,
  required,
  summariseReplicates,
  type TestResult,
} from '../../src/index.js';
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

describe('tests of other methods', () => {
  // JCGM 100:2008, 4.4.3, twenty readings of a temperature (from memory): mean 100.145, s 1.489, s/√n 0.333; here as strengths
  const readings = [
    96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2, 101.57, 101.84,
    102.36, 102.72,
  ];
  const only = (results: readonly TestResult[], symbol: string) =>
    analyseReplicates(results).properties.find((one) => one.symbol === symbol)!.summary;

  test('as flexural strengths of twenty beams: 3FL/(2bh²) of 10 × 4 mm over 64 mm is 0.6 F', () => {
    const piece = { section: rectangular({ width: 10, thickness: 4 }), setup: { points: 3, span: 64 } } as const;
    const beams = readings.map((R) => {
      // each breaks: one more sample there, without force
      const load = Float64Array.from({ length: 202 }, (_, i) => (Math.min(i, 200) * R) / 0.6 / 200);
      return analyseBending({ force: load.map((F, i) => (i <= 200 ? F : 0)), strain: load.map((F) => (0.6 * F) / 70_000) }, piece);
    });
    const { n, mean, standardDeviation, standardError } = only(beams, 'σfM');
    expect(n).toBe(20);
    expectPrinted(mean, '100.145');
    expectPrinted(standardDeviation!, '1.489');
    expectPrinted(standardError!, '0.333');
  });

  // tables of Brinell hardness 10/3000 (ISO 6506-4, from memory): 3.90 241, 3.95 235, 4.00 229, 4.05 223, 4.10 217; of these five
  // mean 229, s = √(360/4), s/√5, and 2.7764 times that; a table rounds each to one unit
  test('five pieces by the table of Brinell hardness', () => {
    const pieces = [3.9, 3.95, 4, 4.05, 4.1].map((d) =>
      analyseBrinell({ ballDiameter: 10, force: 29_420, indentations: [{ diameters: d }] }),
    );
    const { mean, standardDeviation, standardError, interval } = only(pieces, 'HBW');
    expectPrinted(mean, '229');
    expectPrinted(standardDeviation!, '9.5');
    expectPrinted(standardError!, '4.2');
    expectPrinted(interval!.halfWidth, '11.8');
  });
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
