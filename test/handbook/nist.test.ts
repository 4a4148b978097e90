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
});
