import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fitCalibration, fitHollomon, fitLaw, fitModulus, fitVoce, required } from '../../src/index.js';
import { polynomialFit } from '../../src/numeric/index.js';

interface CertifiedSet {
  readonly certified: Readonly<Record<string, number>>;
  readonly starts?: readonly (readonly number[])[];
  readonly x: readonly number[];
  readonly y: readonly number[];
}
const { sets } = JSON.parse(readFileSync(new URL('nist-strd.json', import.meta.url), 'utf8')) as {
  sets: Readonly<Record<string, CertifiedSet>>;
};

/** Correct digits: minus the logarithm of the relative error. */
const digits = (found: number, certified: number): number => -Math.log10(Math.max(Math.abs(found / certified - 1), 1e-16));

describe('NIST Statistical Reference Datasets: straight lines', () => {
  const { x, y, certified } = sets['Norris']!;

  test('Norris through the calibration line', () => {
    const line = required(fitCalibration({ indicated: x, reference: y }, { degree: 1 }));
    expect(digits(line.coefficients[0]!, certified['b0']!)).toBeGreaterThan(12);
    expect(digits(line.coefficients[1]!, certified['b1']!)).toBeGreaterThan(12);
    expect(digits(line.residualStandardDeviation, certified['residual_sd']!)).toBeGreaterThan(12);
    expect(digits(line.rSquared, certified['r2']!)).toBeGreaterThan(12);
    expect(line.degree).toBe(1);
  });

  test('Norris: standard deviations of both coefficients', () => {
    const { covariance } = polynomialFit(x, y, 1);
    expect(digits(Math.sqrt(covariance[0]![0]!), certified['sd_b0']!)).toBeGreaterThan(11);
    expect(digits(Math.sqrt(covariance[1]![1]!), certified['sd_b1']!)).toBeGreaterThan(12);
  });

  test('Norris through the elastic line', () => {
    const order = x.map((_, i) => i).sort((i, j) => x[i]! - x[j]!);
    const curve = { strain: order.map((i) => x[i]!), stress: order.map((i) => y[i]!) };
    const line = required(fitModulus(curve, { window: { by: 'samples', first: 0, last: x.length - 1 } }));
    expect(digits(line.slope, certified['b1']!)).toBeGreaterThan(12);
    expect(digits(line.intercept, certified['b0']!)).toBeGreaterThan(12);
    expect(digits(line.standardError, certified['sd_b1']!)).toBeGreaterThan(12);
  });

  test('NoInt1: a line through the origin', () => {
    const { x: u, y: v, certified: known } = sets['NoInt1']!;
    const fit = polynomialFit(u, v, 1, undefined, true);
    expect(digits(fit.coefficients[1]!, known['b1']!)).toBeGreaterThan(12);
    expect(digits(Math.sqrt(fit.covariance[1]![1]!), known['sd_b1']!)).toBeGreaterThan(12);
    expect(digits(Math.sqrt(fit.residualSumOfSquares / fit.degreesOfFreedom), known['residual_sd']!)).toBeGreaterThan(12);
  });

  test('a line on a large offset of x keeps its digits', () => {
    const shifted = x.map((one) => one + 1e6);
    expect(digits(polynomialFit(shifted, y, 1).coefficients[1]!, certified['b1']!)).toBeGreaterThan(9);
  });
});

describe('NIST Statistical Reference Datasets: nonlinear least squares', () => {
  test("DanWood has the form of Hollomon's law", () => {
    const { x, y, certified } = sets['DanWood']!;
    const fit = required(fitHollomon({ strain: x, stress: y }));
    expect(digits(fit.strengthCoefficient, certified['b1']!)).toBeGreaterThan(9);
    expect(digits(fit.exponent, certified['b2']!)).toBeGreaterThan(9);
    expect(digits(fit.standardErrors.strengthCoefficient, certified['sd_b1']!)).toBeGreaterThan(8);
    expect(digits(fit.standardErrors.exponent, certified['sd_b2']!)).toBeGreaterThan(8);
    expect(digits(fit.residualSumOfSquares, certified['rss']!)).toBeGreaterThan(9);
    expect(fit.converged).toBe(true);
  });

  test.each(['Misra1a', 'BoxBOD'].flatMap((name) => [0, 1].map((start) => ({ name, start }))))(
    "$name has the form of Voce's law without initial stress, from NIST's start $start",
    ({ name, start }) => {
      const { x, y, certified, starts } = sets[name]!;
      const [b1, b2] = starts![start]!;
      const law = {
        parameters: { b1: b1!, b2: b2! },
        stress: (e: number, p: { b1: number; b2: number }) => p.b1 * (1 - Math.exp(-p.b2 * e)),
        derivatives: (e: number, p: { b1: number; b2: number }) => ({ b1: 1 - Math.exp(-p.b2 * e), b2: p.b1 * e * Math.exp(-p.b2 * e) }),
      };
      const fit = required(fitLaw({ strain: x, stress: y }, law));
      expect(digits(fit.parameters.b1, certified['b1']!)).toBeGreaterThan(8);
      expect(digits(fit.parameters.b2, certified['b2']!)).toBeGreaterThan(8);
      expect(digits(fit.standardErrors.b1, certified['sd_b1']!)).toBeGreaterThan(6);
      expect(digits(fit.standardErrors.b2, certified['sd_b2']!)).toBeGreaterThan(6);
      expect(fit.converged).toBe(true);
    },
  );

  test.each(['Misra1a', 'BoxBOD'])('%s by fitVoce with the initial stress held at 0, without a start', (name) => {
    const { x, y, certified } = sets[name]!;
    const fit = required(fitVoce({ strain: x, stress: y }, { initialStress: 0 }));
    expect(digits(fit.saturationStress, certified['b1']!)).toBeGreaterThan(9);
    expect(digits(fit.rate, certified['b2']!)).toBeGreaterThan(9);
    expect(digits(fit.standardErrors.saturationStress, certified['sd_b1']!)).toBeGreaterThan(6);
    expect(digits(fit.standardErrors.rate, certified['sd_b2']!)).toBeGreaterThan(6);
    expect(fit.initialStress).toBe(0);
    expect(fit.standardErrors.initialStress).toBe(0);
    expect(fit.converged).toBe(true);
  });

  // data, starts and certified values from memory; that both agree to nine digits confirms them
  const misra = {
    x: [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760],
    y: [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78],
  };
  interface Known {
    readonly x: readonly number[];
    readonly y: readonly number[];
    readonly model: (x: number, b: readonly number[]) => number;
    readonly starts: readonly (readonly number[])[];
    readonly certified: readonly number[];
    readonly deviations: readonly number[];
    readonly rest: number;
  }
  const others: Readonly<Record<string, Known>> = {
    Misra1b: {
      ...misra,
      model: (x, [a = 0, b = 0]) => a * (1 - (1 + (b * x) / 2) ** -2),
      starts: [
        [500, 0.0001],
        [300, 0.0002],
      ],
      certified: [3.3799746163e2, 3.9039091287e-4],
      deviations: [3.1643950207, 4.2547321834e-6],
      rest: 7.5464681533e-2,
    },
    Misra1c: {
      ...misra,
      model: (x, [a = 0, b = 0]) => a * (1 - (1 + 2 * b * x) ** -0.5),
      starts: [
        [500, 0.0001],
        [600, 0.0002],
      ],
      certified: [6.3642725809e2, 2.0813627256e-4],
      deviations: [4.6638326572, 1.7728423155e-6],
      rest: 4.0966836971e-2,
    },
    Misra1d: {
      ...misra,
      model: (x, [a = 0, b = 0]) => (a * b * x) / (1 + b * x),
      starts: [
        [500, 0.0001],
        [450, 0.0003],
      ],
      certified: [4.3736970754e2, 3.0227324449e-4],
      deviations: [3.6489174345, 2.9334354479e-6],
      rest: 5.6419295283e-2,
    },
    Rat42: {
      x: [9, 14, 21, 28, 42, 57, 63, 70, 79],
      y: [8.93, 10.8, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08],
      model: (x, [a = 0, b = 0, c = 0]) => a / (1 + Math.exp(b - c * x)),
      starts: [
        [100, 1, 0.1],
        [75, 2.5, 0.07],
      ],
      certified: [7.2462237576e1, 2.6180768402, 6.7359200066e-2],
      deviations: [1.7340283401, 8.8295217536e-2, 3.4465663377e-3],
      rest: 8.0565229338,
    },
    Rat43: {
      x: Array.from({ length: 15 }, (_, i) => i + 1),
      y: [16.08, 33.83, 65.8, 97.2, 191.55, 326.2, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56, 689.96, 637.56, 717.41],
      model: (x, [a = 0, b = 0, c = 0, d = 0]) => a / (1 + Math.exp(b - c * x)) ** (1 / d),
      starts: [
        [100, 10, 1, 1],
        [700, 5, 0.75, 1.3],
      ],
      certified: [6.996415127e2, 5.2771253025, 7.5962938329e-1, 1.2792483859],
      deviations: [1.6302297817e1, 2.0828735829, 1.9566123451e-1, 6.8761936385e-1],
      rest: 8.786404908e3,
    },
    MGH09: {
      x: [4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625],
      y: [0.1957, 0.1947, 0.1735, 0.16, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246],
      model: (x, [a = 0, b = 0, c = 0, d = 0]) => (a * (x * x + x * b)) / (x * x + x * c + d),
      starts: [
        [25, 39, 41.5, 39],
        [0.25, 0.39, 0.415, 0.39],
      ],
      certified: [1.9280693458e-1, 1.9128232873e-1, 1.2305650693e-1, 1.3606233068e-1],
      deviations: [1.1435312227e-2, 1.9633220911e-1, 8.0842031232e-2, 9.0025542308e-2],
      rest: 3.0750560385e-4,
    },
    MGH10: {
      x: Array.from({ length: 16 }, (_, i) => 50 + 5 * i),
      y: [34780, 28610, 23650, 19630, 16370, 13720, 11540, 9744, 8261, 7030, 6005, 5147, 4427, 3820, 3307, 2872],
      model: (x, [a = 0, b = 0, c = 0]) => a * Math.exp(b / (x + c)),
      starts: [
        [2, 400_000, 25_000],
        [0.02, 4000, 250],
      ],
      certified: [5.609636471e-3, 6.1813463463e3, 3.4522363462e2],
      deviations: [1.5687892471e-4, 2.3309021107e1, 7.8486103508e-1],
      rest: 8.7945855171e1,
    },
  };

  test.each(Object.entries(others).flatMap(([name, known]) => known.starts.map((start, k) => ({ name, known, start, k }))))(
    "$name as a law of one's own, without derivatives, from NIST's start $k",
    ({ known: { x, y, model, certified, deviations, rest }, start }) => {
      const names = start.map((_, j) => `b${j}`);
      const law = {
        parameters: Object.fromEntries(start.map((one, j) => [`b${j}`, one])),
        stress: (e: number, p: Readonly<Record<string, number>>) =>
          model(
            e,
            names.map((one) => p[one]!),
          ),
      };
      const fit = required(fitLaw({ strain: x, stress: y }, law));
      names.forEach((one, j) => {
        expect(digits(fit.parameters[one]!, certified[j]!), one).toBeGreaterThan(9);
        expect(digits(fit.standardErrors[one]!, deviations[j]!), one).toBeGreaterThan(6);
      });
      expect(digits(fit.residualSumOfSquares, rest)).toBeGreaterThan(9);
      expect(fit.converged).toBe(true);
    },
  );
});
