import { expect, it } from 'vitest';
import { fitModulus, slopeDoubt, type WindowChoice } from '../../src/curve/index.js';
import { randomNumbers } from '../../src/numeric/index.js';

const E = 200_000;

/** A straight line of so many samples up to 300 MPa and a plateau, in noise whose neighbours are correlated. */
function straight(seed: number, points: number, correlation: number) {
  const { normal } = randomNumbers(seed);
  let drift = normal();
  const noise = (): number => {
    drift = correlation * drift + Math.sqrt(1 - correlation ** 2) * normal();
    return 0.4 * drift;
  };
  const strain = Array.from({ length: 3 * points }, (_, i) => ((i < points ? i : points + 2 * (i - points)) * 300) / E / points);
  return { strain, stress: strain.map((e) => Math.min(E * e, 300) + e + noise()) };
}

/** Of how many of the records the true slope lies within two of the stated deviations, and within two standard errors. */
function held(points: number, correlation: number, window: WindowChoice) {
  const count = 200;
  let [stated, plain] = [0, 0];
  for (let seed = 1; seed <= count; seed += 1) {
    const line = fitModulus(straight(seed, points, correlation), { window });
    if (!line.ok) throw new Error(line.message);
    const off = Math.abs(line.slope - E);
    if (off <= 2 * slopeDoubt(line, line.residuals)) stated += 1;
    if (off <= 2 * line.standardError) plain += 1;
  }
  return { stated: stated / count, plain: plain / count };
}

it.each([
  [60, 0, 4],
  [200, 0, 4],
  [200, 0, 1],
  [60, 0, 2],
  [200, 0.5, 4],
])(
  'holds the true slope of a straight line of %i samples in noise of correlation %d, %d standard errors taken off',
  (points, correlation, z) => {
    const { stated, plain } = held(points, correlation, { by: 'lower-bound', z });
    // two deviations of a normal distribution hold 95 %, of 200 records 95 ± 1.5 %: four of these
    expect(stated).toBeGreaterThan(0.89);
    expect(plain).toBeLessThan(0.8);
  },
);

it('holds most in noise that drifts over a third of the least window, whose few samples tell it too small', () => {
  const { stated, plain } = held(200, 0.8, { by: 'lower-bound' });
  expect(stated).toBeGreaterThan(0.8);
  expect(plain).toBeLessThan(0.2);
});

it.each([0, 0.5, 0.9])('holds the slope of a window that was given, in noise of correlation %d', (correlation) => {
  const { stated } = held(300, correlation, { by: 'stress', from: 60, to: 240 });
  expect(stated).toBeGreaterThan(0.89);
});

const line = { points: 101, standardError: 1, criterion: { by: 'samples', first: 0, last: 100 } } as const;
const residuals = { runs: 51, expectedRuns: 51, runsDeviation: 0, slopeChange: 0, slopeChangeError: 0.1 };

it('is the standard error where residuals change sign as random ones do', () => {
  expect(slopeDoubt(line, residuals)).toBeCloseTo(1, 12);
  expect(slopeDoubt(line, { ...residuals, runs: 70 })).toBeCloseTo(1, 12);
  expect(slopeDoubt(line, undefined)).toBe(1);
});

it('grows as the standard error of correlated samples', () => {
  // neighbours correlated by 1/2 differ in sign with probability 1/3, two thirds as often as random ones; √((1 + 1/2)/(1 − 1/2)) = √3
  expect(slopeDoubt(line, { ...residuals, runs: 34 })).toBeCloseTo(Math.sqrt(3), 12);
});

it('leaves three independent samples of the slowest drift', () => {
  expect(slopeDoubt(line, { ...residuals, runs: 1 })).toBeCloseTo(Math.sqrt(101 / 3), 12);
});

it('is never less than the standard error, and is one of few samples too', () => {
  expect(slopeDoubt({ ...line, points: 2 }, { ...residuals, runs: 1, expectedRuns: 2 })).toBe(1);
  expect(slopeDoubt({ ...line, points: 2 }, { ...residuals, runs: 1, expectedRuns: 0 })).toBe(1);
});
