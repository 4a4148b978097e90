import { describe, expect, test } from 'vitest';
import { lineResiduals } from '../../src/curve/modulus/lineResiduals.js';
import { fitModulus, required, slopeScatter } from '../../src/index.js';
import { referenceLine } from '../support/doubleDouble.js';
import { expectPrinted } from '../support/handbook.js';
import { seeded } from '../support/random.js';
import { curveT3 } from '../support/records.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('elastic-line', 'slopeScatter', 'fitModulus', 'proofStrength');

describe('S_m(rel) of ISO 6892-1 Annex G', () => {
  test('five points: the same from R² and N alone', () => {
    const curve = { strain: [0, 1, 2, 3, 4], stress: [0.1, 2.0, 4.1, 5.9, 8.0] };
    const line = required(fitModulus(curve, { window: { by: 'samples', first: 0, last: 4 } }));
    expect(slopeScatter({ rSquared: line.rSquared, points: line.points })).toBeCloseTo(line.relativeStandardError, 12);
  });
});

test('a truly straight part is found to the last digit, whatever the density of samples', () => {
  for (const step of [0.0025, 0.001, 0.0005]) {
    const line = required(fitModulus(curveT3(step)));
    expect(line.slope).toBeCloseTo(210_000, 4);
    expect(line.strainShift).toBeCloseTo(0, 12);
  }
});

test('runs of 30 residuals above and 20 below in 35 runs: 25 expected, 2.98 standard deviations more (Siegel, from memory)', () => {
  // the pattern of signs does not matter, only how many there are and how many runs they make
  const signs = [
    ...Array.from({ length: 34 }, (_, i) => (i % 2 === 0 ? 1 : -1)),
    ...Array.from({ length: 3 }, () => -1),
    ...Array.from({ length: 13 }, () => 1),
  ];
  const strain = Float64Array.from(signs, (_, i) => i);
  const { runs, expectedRuns, runsDeviation } = lineResiduals(
    { strain, stress: Float64Array.from(signs) },
    { slope: 0, intercept: 0, first: 0, last: signs.length - 1 },
  )!;
  expect({ runs, expectedRuns }).toEqual({ runs: 35, expectedRuns: 25 });
  expectPrinted(runsDeviation, '2.98');
});

test('a million samples at an extension of 120 mm, noise a millionth: slope and standard error of sums in pairs of doubles', () => {
  const { normal } = seeded(42);
  const n = 1_000_000;
  const strain = new Float64Array(n);
  const stress = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    const e = (0.02 * i) / n;
    strain[i] = (120 + 50 * e) / 50;
    stress[i] = (e < 0.003 ? 200_000 * e : 600 + 3000 * (e - 0.003)) + 6e-4 * normal();
  }
  const line = required(fitModulus({ strain, stress }));
  expect(line.points).toBeGreaterThan(100_000);
  const reference = referenceLine(strain, stress, line.first, line.last);
  expect(Math.abs(line.slope / reference.slope - 1)).toBeLessThan(1e-9);
  expect(Math.abs(line.standardError / reference.standardError - 1)).toBeLessThan(1e-6);
  // and so does a window given by its samples
  const given = required(fitModulus({ strain, stress }, { window: { by: 'samples', first: 10_000, last: 28_000 } }));
  const other = referenceLine(strain, stress, 10_000, 28_000);
  expect(Math.abs(given.slope / other.slope - 1)).toBeLessThan(1e-9);
  expect(Math.abs(given.standardError / other.standardError - 1)).toBeLessThan(1e-6);
});
