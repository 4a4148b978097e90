import { describe, expect, it } from 'vitest';
import {
  fitHockettSherby,
  fitHollomon,
  fitLudwik,
  fitSwift,
  fitVoce,
  hockettSherby,
  hollomon,
  ludwik,
  required,
  swift,
  voce,
  type CurveColumns,
  type FitReason,
  type FitSummary,
  type HardeningLaw,
  type Outcome,
} from '../../src/index.js';
import { randomNumbers } from '../../src/numeric/index.js';

type Fit = (flow: CurveColumns, options?: { readonly weights: Float64Array }) => Outcome<FitSummary<string>, FitReason>;

const kinds: readonly (readonly [string, HardeningLaw, Fit])[] = [
  ['Hollomon', hollomon({ strengthCoefficient: 800, exponent: 0.2 }), fitHollomon],
  ['Ludwik', ludwik({ yieldStress: 250, strengthCoefficient: 500, exponent: 0.5 }), fitLudwik],
  ['Swift', swift({ strengthCoefficient: 800, prestrain: 0.01, exponent: 0.2 }), fitSwift],
  ['Voce', voce({ saturationStress: 550, initialStress: 220, rate: 12 }), fitVoce],
  ['Hockett-Sherby', hockettSherby({ saturationStress: 600, initialStress: 220, rate: 5, power: 0.8 }), fitHockettSherby],
];

describe.each(kinds)('a long curve by %s', (_, law, fit) => {
  const { normal } = randomNumbers(5);
  const n = 20_000;
  const to = Math.max(0.05, law.neckingStrain);
  // many samples where yielding ends, few at the maximum, as a test at growing speed gives them
  const strain = Float64Array.from({ length: n }, (__, i) => 0.001 * (to / 0.001) ** (i / (n - 1)));
  const weights = new Float64Array(n).fill(1);

  it.each([0.005, 0.001, 1e-4, 4e-5, 1e-5])('has its optimum where all samples have it, noise %f', (noise) => {
    const flow = { strain, stress: strain.map((e) => law.stress(e) * (1 + noise * normal())) };
    // with weights, though they are all 1, every sample is visited at every step
    const [few, all] = [required(fit(flow)), required(fit(flow, { weights }))];
    expect(few.residualSumOfSquares / all.residualSumOfSquares).toBeCloseTo(1, 4);
    expect(few.converged).toBe(true);
    for (const [name, error] of Object.entries(all.standardErrors)) {
      const value = (one: FitSummary<string>): number => (one as unknown as Record<string, number>)[name]!;
      expect(Math.abs(value(few) - value(all))).toBeLessThan(0.02 * error);
      expect(few.standardErrors[name]! / error).toBeCloseTo(1, 2);
    }
  });

  it('is found to the last digits without noise', () => {
    const exact = required(fit({ strain, stress: strain.map((e) => law.stress(e)) }));
    expect(exact.rSquared).toBeCloseTo(1, 14);
    expect(exact.residualSumOfSquares).toBeLessThan(1e-12 * n);
  });
});
