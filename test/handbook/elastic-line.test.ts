import { describe, expect, test } from 'vitest';
import { lineResiduals } from '../../src/curve/lineResiduals.js';
import { fitModulus, proofStrength, required, slopeScatter } from '../../src/index.js';
import { referenceLine } from '../support/doubleDouble.js';
import { expectPrinted } from '../support/handbook.js';
import { seeded } from '../support/random.js';
import { curveT3 } from '../support/records.js';

describe('S_m(rel) of ISO 6892-1 Annex G', () => {
  // computed from the definition; the second derivation beside it is the line fit itself
  test.each([
    { rSquared: 0.9995, points: 50, printed: '0.32283' },
    { rSquared: 0.999, points: 50, printed: '0.45666' },
    { rSquared: 0.99, points: 30, printed: '1.8993' },
    { rSquared: 0.99999, points: 100, printed: '0.03194' },
  ])('R² $rSquared of $points points: $printed %', ({ rSquared, points, printed }) => {
    expectPrinted(100 * slopeScatter({ rSquared, points }), printed);
  });

  test('five points: slope 1.97, intercept 0.08, standard error 0.0251661, S_m(rel) 1.2775 %', () => {
    const curve = { strain: [0, 1, 2, 3, 4], stress: [0.1, 2.0, 4.1, 5.9, 8.0] };
    const line = required(fitModulus(curve, { window: { by: 'samples', first: 0, last: 4 } }));
    expectPrinted(line.slope, '1.97');
    expectPrinted(line.intercept, '0.08');
    expectPrinted(line.rSquared, '0.999511');
    expectPrinted(line.standardError, '0.0251661');
    expectPrinted(100 * line.relativeStandardError, '1.2775');
    // the same from R² and N alone
    expect(slopeScatter({ rSquared: line.rSquared, points: line.points })).toBeCloseTo(line.relativeStandardError, 12);
  });
});

describe('aluminium test piece, Callister and Rethwisch, Materials Science and Engineering, problem on mechanical properties', () => {
  const load = [0, 7330, 15100, 23100, 30400, 34400, 38400, 41300, 44800, 46200, 47300, 47500, 46100, 44800, 42600, 36400];
  const length = [
    50.8, 50.851, 50.902, 50.952, 51.003, 51.054, 51.308, 51.816, 52.832, 53.848, 54.864, 55.88, 56.896, 57.658, 58.42, 59.182,
  ];
  const area = (Math.PI * 12.8 ** 2) / 4;
  const curve = { strain: length.map((l) => (l - 50.8) / 50.8), stress: load.map((F) => F / area) };

  test.each([
    { last: 3, slope: '60004.8', proof: '277.61' },
    { last: 4, slope: '59618.6', proof: '277.77' },
  ])('first points up to sample $last: slope $slope MPa, Rp0.2 $proof MPa', ({ last, slope, proof }) => {
    const line = required(fitModulus(curve, { window: { by: 'samples', first: 0, last } }));
    expectPrinted(line.slope, slope);
    // the book reads 285 off its graph; linear interpolation of the same data gives this
    expectPrinted(required(proofStrength(curve, { modulus: line.slope, strainShift: line.strainShift })).stress, proof);
  });

  test('intercept and correlation of the first four points', () => {
    const line = required(fitModulus(curve, { window: { by: 'samples', first: 0, last: 3 } }));
    expectPrinted(line.intercept, '-1.610');
    expectPrinted(line.rSquared, '0.999431');
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
