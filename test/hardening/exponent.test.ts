import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { required } from '../../src/base/index.js';
import { fitHollomon, hardeningExponent } from '../../src/hardening/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

const strain = [0.01, 0.02, 0.035, 0.05, 0.08, 0.11, 0.15, 0.19];
const stress = [201, 229, 257.5, 275, 301.5, 322, 342, 359];

describe('fitHollomon', () => {
  // SciPy 1.17: curve_fit(lambda x, K, n: K * x**n, strain, stress, p0=[500, 0.2], jac=..., xtol=1e-15, ftol=1e-15, gtol=1e-15)
  test('least squares in stress: parameters, standard errors, correlation and sums of SciPy', () => {
    const fit = required(fitHollomon({ strain, stress }));
    expect(fit.strengthCoefficient).toBeCloseTo(497.76740908516643, 7);
    expect(fit.exponent).toBeCloseTo(0.1975808549945737, 10);
    expect(fit.standardErrors.strengthCoefficient).toBeCloseTo(1.2806869826360943, 8);
    expect(fit.standardErrors.exponent).toBeCloseTo(0.0009508252237499892, 11);
    expect(fit.correlations[0]![1]).toBeCloseTo(0.9493017143772386, 9);
    expect(fit.residualSumOfSquares).toBeCloseTo(2.6502710125654874, 9);
    expect(fit.rSquared).toBeCloseTo(0.9998762040083582, 12);
    expect(fit).toMatchObject({ converged: true, points: 8 });
  });

  // SciPy 1.17: linregress(np.log(strain), np.log(stress)); error of K: K times that of the intercept
  test('log-log: the straight line of SciPy', () => {
    const fit = required(fitHollomon({ strain, stress }, { method: 'log-log' }));
    expect(fit.exponent).toBeCloseTo(0.19725125156008866, 12);
    expect(fit.strengthCoefficient).toBeCloseTo(497.3193728938573, 9);
    expect(fit.standardErrors.exponent).toBeCloseTo(0.0009676818781124403, 12);
    expect(fit.standardErrors.strengthCoefficient).toBeCloseTo(1.4669451924542594, 9);
    expect(fit.rSquared).toBeCloseTo(0.9998556176113428, 12);
    const rest = strain.reduce((sum, e, i) => sum + (stress[i]! - fit.strengthCoefficient * e ** fit.exponent) ** 2, 0);
    expect(fit.residualSumOfSquares).toBeCloseTo(rest, 9);
  });

  test('any law without noise comes back to the last digits', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1.2, noNaN: true }), fc.double({ min: 1, max: 5000, noNaN: true }), (n, K) => {
        const fit = required(fitHollomon({ strain, stress: strain.map((e) => K * e ** n) }));
        expect(Math.abs(fit.exponent - n)).toBeLessThan(1e-12);
        expect(Math.abs(fit.strengthCoefficient / K - 1)).toBeLessThan(1e-12);
        expect(fit.converged).toBe(true);
      }),
    );
  });

  test.each([1e-9, 1e-7, 1e-5, 1e-3, 0.05])('noise of %d: the residuals stand at right angles to both derivatives', (noise) => {
    const { normal } = seeded(2);
    const e = Float64Array.from({ length: 3000 }, (_, i) => 0.01 + 0.00006 * i);
    const s = e.map((one) => 500 * one ** 0.2 * (1 + noise * normal()));
    const { strengthCoefficient: K, exponent: n, residualSumOfSquares: rest, converged } = required(fitHollomon({ strain: e, stress: s }));
    expect(converged).toBe(true);
    for (const column of [(one: number) => one ** n, (one: number) => K * one ** n * Math.log(one)]) {
      let [dot, size] = [0, 0];
      e.forEach((one, i) => {
        dot += column(one) * (s[i]! - K * one ** n);
        size += column(one) ** 2;
      });
      // of the residuals' length; what rounding of stresses of 500 leaves beside residuals of 500 times the noise
      expect(Math.abs(dot) / Math.sqrt(size * rest)).toBeLessThan(1e-9 + 1e-13 / noise);
    }
  });

  test('the unit of stress only scales K', () => {
    const one = required(fitHollomon({ strain, stress }));
    const other = required(fitHollomon({ strain, stress: stress.map((s) => s * 1e-6) }));
    expect(other.exponent).toBeCloseTo(one.exponent, 12);
    expect((other.strengthCoefficient * 1e6) / one.strengthCoefficient).toBeCloseTo(1, 12);
    expect(other.standardErrors.exponent / one.standardErrors.exponent).toBeCloseTo(1, 9);
  });

  test('limits of strain are included', () => {
    const part = required(fitHollomon({ strain, stress }, { from: 0.02, to: 0.15 }));
    expect(part.points).toBe(6);
    expect(part.exponent).toBe(required(fitHollomon({ strain: strain.slice(1, 7), stress: stress.slice(1, 7) })).exponent);
  });

  test('1e5 samples keep their digits, and arrays of any kind are one', () => {
    const e = Float64Array.from({ length: 100_000 }, (_, i) => 0.01 + 1.9e-6 * i);
    const s = e.map((one) => 500 * one ** 0.2);
    const fit = required(fitHollomon({ strain: e, stress: s }));
    expect(fit.exponent).toBeCloseTo(0.2, 13);
    expect(required(fitHollomon({ strain: [...e], stress: [...s] })).exponent).toBe(fit.exponent);
    expect(s[0]).toBe(500 * 0.01 ** 0.2);
  });

  test.each(['least-squares', 'log-log'] as const)('%s: a stress that falls or stays is no hardening', (method) => {
    for (const flat of [stress.map((s) => 600 - s), stress.map(() => 400)])
      expect(fitHollomon({ strain, stress: flat }, { method })).toMatchObject({ ok: false, reason: 'no-hardening' });
  });

  test('a start that stray samples have led astray: the best of all exponents is found', () => {
    const e = [1e-9, 0.02, 0.05, 0.1, 0.15, 0.2];
    const s = [0.5, 230, 380, 300, 345, 900];
    const fit = required(fitHollomon({ strain: e, stress: s }));
    // K in closed form for each exponent of a grid
    const rest = (n: number): number => {
      const K = e.reduce((sum, one, i) => sum + one ** n * s[i]!, 0) / e.reduce((sum, one) => sum + one ** (2 * n), 0);
      return e.reduce((sum, one, i) => sum + (s[i]! - K * one ** n) ** 2, 0);
    };
    const least = Math.min(...Array.from({ length: 4000 }, (_, k) => rest(0.001 * (k + 1))));
    expect(fit.converged).toBe(true);
    expect(fit.residualSumOfSquares).toBeLessThanOrEqual(least * (1 + 1e-9));
  });

  test('too few samples, or all at one strain', () => {
    expect(fitHollomon({ strain: [0.1, 0.2], stress: [300, 350] })).toMatchObject({ ok: false, reason: 'too-few-points' });
    expect(fitHollomon({ strain, stress }, { from: 0.1, to: 0.12 })).toMatchObject({ ok: false, reason: 'too-few-points' });
    expect(fitHollomon({ strain: [0.1, 0.1, 0.1], stress: [300, 350, 320] })).toMatchObject({ ok: false, reason: 'not-increasing' });
  });

  test('wrong arguments are refused', () => {
    const at = (k: number, value: number, of: readonly number[]) => of.map((one, i) => (i === k ? value : one));
    expect(thrown(() => fitHollomon({ strain, stress: at(3, -5, stress) }))).toMatchObject({
      code: 'not-positive',
      path: 'flow.stress[3]',
    });
    expect(thrown(() => fitHollomon({ strain: at(0, 0, strain), stress }))).toMatchObject({ code: 'not-positive', path: 'flow.strain[0]' });
    expect(thrown(() => fitHollomon({ strain, stress: at(2, NaN, stress) })).code).toBe('not-finite');
    expect(thrown(() => fitHollomon({ strain, stress: stress.slice(1) })).code).toBe('unequal-lengths');
    expect(thrown(() => fitHollomon({ strain, stress }, { from: 0.2, to: 0.1 }))).toMatchObject({
      code: 'out-of-range',
      path: 'options.to',
    });
    // @ts-expect-error: an unknown method
    expect(thrown(() => fitHollomon({ strain, stress }, { method: 'guess' })).code).toBe('out-of-range');
    // @ts-expect-error: an unknown option
    expect(thrown(() => fitHollomon({ strain, stress }, { modulus: 1 })).code).toBe('unknown-option');
  });
});

describe('hardeningExponent', () => {
  const curve = { strain: [0.02, 0.04, 0.06, 0.08, 0.1, 0.12, 0.14, 0.18], stress: [300, 330, 348, 360, 368.5, 374, 377, 350] };
  const range = { from: 0.04, to: 0.14 };

  /*
   * SciPy 1.17, E 200 GPa, samples from 4 to 14 %: linregress(np.log(x), np.log(R*(1+e))) with
   * x = log1p(e); log1p(e) - R*(1+e)/E; log1p(e - R/E)
   */
  test.each([
    { strainMeasure: 'total', n: 0.18768532917667777, K: 629.6960727060174, error: 0.0011025529275517903, rSquared: 0.9998619811872996 },
    { strainMeasure: 'plastic', n: 0.1834295358374019, K: 625.9795626289167, error: 0.0012672028023407134, rSquared: 0.9998091330181733 },
    {
      strainMeasure: 'plastic-engineering',
      n: 0.1833667000152887,
      K: 625.4577366554003,
      error: 0.0012672717582035017,
      rSquared: 0.999808981425542,
    },
  ] as const)('$strainMeasure strain: the straight line of SciPy', ({ strainMeasure, n, K, error, rSquared }) => {
    // the same six samples; ISO 10275 counts the limits in plastic extension, which ends at the maximum
    const limits = strainMeasure === 'plastic-engineering' ? { from: 0.038, to: 0.14 - 377 / 200_000 } : range;
    const fit = required(
      hardeningExponent(curve, { ...limits, strainMeasure, ...(strainMeasure === 'total' ? {} : { modulus: 200_000 }) }),
    );
    expect(fit.exponent).toBeCloseTo(n, 12);
    expect(fit.strengthCoefficient).toBeCloseTo(K, 8);
    expect(fit.standardError).toBeCloseTo(error, 12);
    expect(fit.rSquared).toBeCloseTo(rSquared, 12);
    expect(fit).toMatchObject({ points: 6, range: [limits.from, limits.to], strainMeasure });
  });

  /*
   * NumPy 2, the same 3201 samples: polyfit(log(log1p(e - R/E)), log(R*(1+e)), 1) over 2 to 4 % and 4 to 6 % of e - R/E
   */
  test('with `plastic-engineering` the range counts plastic extension, as the index of ISO 10275 does', () => {
    const plastic = Array.from({ length: 3201 }, (_, i) => i * 5e-5);
    const sigma = plastic.map((p) => 150 + 150 * (1 - Math.exp(-12 * p)));
    const strain = plastic.map((p, i) => Math.expm1(p + sigma[i]! / 70_000));
    const stress = sigma.map((one, i) => one / (1 + strain[i]!));
    const exponent = (from: number, to: number) =>
      required(hardeningExponent({ strain, stress }, { from, to, strainMeasure: 'plastic-engineering', modulus: 70_000 })).exponent;
    expect(exponent(0.02, 0.04)).toBeCloseTo(0.18666165644651, 9);
    expect(exponent(0.04, 0.06)).toBeCloseTo(0.22426799163868172, 9);
  });

  test('total strain is the default, and a modulus does nothing to it', () => {
    const total = hardeningExponent(curve, range);
    expect(required(total).strainMeasure).toBe('total');
    expect(hardeningExponent(curve, { ...range, modulus: 2000 })).toEqual(total);
  });

  test('a sample on its elastic line, or without stress, has no logarithm', () => {
    // 0.0625 and 125/2000 are one number
    const strains = [0.0625, 0.1, 0.12, 0.14, 0.16, 0.18];
    const elastic = { strain: strains, stress: [125, 130, 135, 140, 145, 150] };
    const at = { from: 0.0625, to: 0.18 };
    // in plastic extension it lies outside every range
    const points = (modulus: number) =>
      required(hardeningExponent(elastic, { from: 1e-6, to: 0.18 - 150 / modulus, strainMeasure: 'plastic-engineering', modulus })).points;
    expect([points(2000), points(2001)]).toEqual([5, 6]);
    for (const none of [0, -5])
      expect(hardeningExponent({ strain: strains, stress: [none, 130, 135, 140, 145, 150] }, at)).toMatchObject({
        reason: 'no-plastic-strain',
      });
  });

  test('no exponent: too few samples, one strain only, past the maximum, nothing plastic, no hardening', () => {
    expect(hardeningExponent(curve, { from: 0.06, to: 0.12 })).toMatchObject({ reason: 'too-few-points' });
    const still = { strain: [...Array<number>(5).fill(0.1), 0.2], stress: [300, 310, 320, 330, 340, 350] };
    expect(hardeningExponent(still, { from: 0.1, to: 0.1 })).toMatchObject({ reason: 'too-few-points' });
    expect(hardeningExponent(curve, { from: 0.04, to: 0.18 })).toMatchObject({ reason: 'beyond-maximum' });
    expect(hardeningExponent(curve, { ...range, strainMeasure: 'plastic', modulus: 2000 })).toMatchObject({ reason: 'no-plastic-strain' });
    // a true stress that falls, up to the maximum at the end of the curve
    const strains = [0.02, 0.04, 0.06, 0.08, 0.1, 0.12];
    const falling = { strain: strains, stress: [400, 390, 380, 370, 360, 401] };
    expect(hardeningExponent(falling, { from: 0.02, to: 0.1 })).toMatchObject({ ok: false, reason: 'no-hardening' });
  });

  test('wrong arguments are refused', () => {
    expect(thrown(() => hardeningExponent(curve, { from: 0, to: 0.1 }))).toMatchObject({ path: 'options.from', code: 'not-positive' });
    expect(thrown(() => hardeningExponent(curve, { from: 0.1, to: 0.05 }))).toMatchObject({ path: 'options.to', code: 'out-of-range' });
    expect(thrown(() => hardeningExponent(curve, { ...range, strainMeasure: 'plastic' }))).toMatchObject({
      path: 'options.modulus',
      code: 'missing',
    });
    // @ts-expect-error: an unknown measure
    expect(thrown(() => hardeningExponent(curve, { ...range, strainMeasure: 'true' })).code).toBe('out-of-range');
    // @ts-expect-error: an unknown option
    expect(thrown(() => hardeningExponent(curve, { ...range, strain: 'total' })).code).toBe('unknown-option');
    // @ts-expect-error: no range
    expect(thrown(() => hardeningExponent(curve, {})).code).toBe('missing');
  });
});
