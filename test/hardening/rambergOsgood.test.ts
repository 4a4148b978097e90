import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { required } from '../../src/base/index.js';
import {
  fitRambergOsgood,
  rambergOsgood,
  rambergOsgoodFromProofStresses,
  rambergOsgoodFromSecants,
  rambergOsgoodStrain,
  rambergOsgoodStress,
} from '../../src/hardening/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

const parameters = { modulus: 70_000, proofStress: 300, exponent: 10 };

describe('the curve', () => {
  test('built from Rp0.2 it gives it back: the plastic strain there is the offset', () => {
    expect(rambergOsgoodStrain(parameters, 300) - 300 / 70_000).toBeCloseTo(0.002, 15);
    expect(rambergOsgoodStrain({ ...parameters, offset: 0.001 }, 300) - 300 / 70_000).toBeCloseTo(0.001, 15);
  });

  test('stress and strain are inverse, for any exponent and strain, in tension and compression', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1000, noNaN: true }), fc.double({ min: -6, max: 0.5, noNaN: true }), (exponent, power) => {
        const strain = 10 ** power;
        const stress = rambergOsgoodStress({ ...parameters, exponent }, strain);
        expect(Math.abs(rambergOsgoodStrain({ ...parameters, exponent }, stress) / strain - 1)).toBeLessThan(1e-11);
        expect(rambergOsgoodStress({ ...parameters, exponent }, -strain)).toBe(-stress);
      }),
    );
  });

  test('a fit is handed to the curve as it is', () => {
    const stress = Float64Array.from({ length: 60 }, (_, i) => 6 * i);
    const strain = stress.map((R) => rambergOsgoodStrain(parameters, R));
    for (const options of [{}, { modulus: 70_000 }]) {
      const fit = required(fitRambergOsgood({ strain, stress }, options));
      expect(rambergOsgood(fit).stress(0.01) / rambergOsgoodStress(parameters, 0.01)).toBeCloseTo(1, 6);
    }
  });

  test.each([
    [{ ...parameters, modulus: 0 }, 'modulus', 'not-positive'],
    [{ ...parameters, proofStress: -1 }, 'proofStress', 'not-positive'],
    [{ ...parameters, exponent: NaN }, 'exponent', 'not-finite'],
    [{ ...parameters, offset: 0 }, 'offset', 'not-positive'],
    [{ ...parameters, n: 5 }, 'parameters.n', 'unknown-option'],
  ])('%o is refused', (wrong, path, code) => {
    expect(thrown(() => rambergOsgoodStrain(wrong, 100))).toMatchObject({ path, code });
    expect(thrown(() => rambergOsgoodStress(wrong, 0.001))).toMatchObject({ path, code });
  });
  test('a stress or strain that is no number is refused', () => {
    expect(thrown(() => rambergOsgoodStrain(parameters, NaN)).path).toBe('stress');
    expect(thrown(() => rambergOsgoodStrain(parameters, 1e50))).toMatchObject({ path: 'stress', code: 'out-of-range' });
    expect(thrown(() => rambergOsgoodStress(parameters, Infinity)).path).toBe('strain');
  });
});

describe('from two points of a curve', () => {
  test('two proof stresses give any curve back', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 60, noNaN: true }), fc.constantFrom(0.0001, 0.0005, 0.001, 0.01), (exponent, otherOffset) => {
        const otherStress = 300 * (otherOffset / 0.002) ** (1 / exponent);
        const found = rambergOsgoodFromProofStresses({ modulus: 70_000, proofStress: 300, otherStress, otherOffset });
        expect(Math.abs(found.exponent / exponent - 1)).toBeLessThan(1e-11);
        expect(found).toMatchObject({ modulus: 70_000, proofStress: 300 });
      }),
    );
  });

  test.each([
    ['a larger stress at the smaller offset', 310, 0.001],
    ['the same stress', 300, 0.001],
    ['the same offset', 290, 0.002],
  ])('%s is refused', (_, otherStress, otherOffset) => {
    const pair = { modulus: 70_000, proofStress: 300, otherStress, otherOffset };
    expect(thrown(() => rambergOsgoodFromProofStresses(pair))).toMatchObject({ path: 'otherStress', code: 'out-of-range' });
  });

  test('secants that do not fall are refused', () => {
    for (const stress85 of [300, 310])
      expect(thrown(() => rambergOsgoodFromSecants({ modulus: 70_000, stress70: 300, stress85 }))).toMatchObject({
        path: 'stress70',
        code: 'out-of-range',
      });
    expect(thrown(() => rambergOsgoodFromSecants({ modulus: 0, stress70: 300, stress85: 280 })).code).toBe('not-positive');
  });
});

describe('fitRambergOsgood', () => {
  // invented readings
  const stress = [40, 80, 120, 160, 200, 230, 255, 275, 290, 305, 315, 325];
  const strain = [0.00058, 0.00113, 0.00173, 0.0023, 0.0029, 0.00343, 0.00405, 0.0048, 0.0056, 0.0067, 0.00775, 0.009];

  // SciPy 1.17: curve_fit(lambda R, P, n, E: R/E + 0.002*(R/P)**n, stress, strain, jac=..., xtol=1e-15, ftol=1e-15, gtol=1e-15)
  test('all three parameters as SciPy finds them', () => {
    const fit = required(fitRambergOsgood({ strain, stress }));
    expect(fit.proofStress).toBeCloseTo(299.83829659068715, 5);
    expect(fit.exponent).toBeCloseTo(9.685382415461605, 6);
    expect(fit.modulus).toBeCloseTo(69974.37954325794, 2);
    expect(fit.standardErrors.proofStress).toBeCloseTo(0.26607299993911404, 6);
    expect(fit.standardErrors.exponent).toBeCloseTo(0.08531208351154021, 6);
    expect(fit.standardErrors.modulus).toBeCloseTo(208.7705287092765, 3);
    expect(fit.residualSumOfSquares / 1.82373694922744e-9).toBeCloseTo(1, 9);
    expect(fit).toMatchObject({ converged: true, points: 12 });
  });

  test('two parameters where the modulus is known', () => {
    const fit = required(fitRambergOsgood({ strain, stress }, { modulus: 70_000 }));
    expect(fit.proofStress).toBeCloseTo(299.8089539211344, 6);
    expect(fit.exponent).toBeCloseTo(9.677612987626956, 7);
    expect(fit.standardErrors.proofStress).toBeCloseTo(0.11008508642980865, 7);
    expect(fit.standardErrors.exponent).toBeCloseTo(0.053902073220977106, 7);
    expect(fit.modulus).toBe(70_000);
    expect('modulus' in fit.standardErrors).toBe(false);
  });

  test.each([1e-6, 1e-5, 1e-4])('strain noise of %d: the fit is never worse than the truth, and says so', (noise) => {
    const { normal, uniform } = seeded(8);
    for (let k = 0; k < 25; k += 1) {
      const truth = { modulus: k % 2 ? 70_000 : 200_000, proofStress: 150 + 400 * uniform(), exponent: 5 + 20 * uniform() };
      const R = Float64Array.from({ length: 400 }, (_, i) => ((i + 1) * 1.15 * truth.proofStress) / 400);
      const e = R.map((one) => rambergOsgoodStrain(truth, one) + noise * normal());
      const fit = required(fitRambergOsgood({ strain: e, stress: R }));
      const rest = e.reduce((sum, one, i) => sum + (one - rambergOsgoodStrain(truth, R[i]!)) ** 2, 0);
      expect(fit.converged).toBe(true);
      expect(fit.residualSumOfSquares).toBeLessThanOrEqual(rest * (1 + 1e-9));
      expect(Math.abs(fit.proofStress - truth.proofStress)).toBeLessThan(5 * fit.standardErrors.proofStress);
    }
  });

  test('a range of strain, also without an elastic part', () => {
    const R = Float64Array.from({ length: 400 }, (_, i) => 0.9 * (i + 1));
    const e = R.map((one) => rambergOsgoodStrain(parameters, one));
    for (const range of [{ to: 0.01 }, { from: 0.003 }, { from: 0.003, to: 0.012 }]) {
      const fit = required(fitRambergOsgood({ strain: e, stress: R }, range));
      expect(fit.points).toBe(e.filter((one) => one >= (range.from ?? 0) && one <= (range.to ?? 1)).length);
      expect(fit.proofStress).toBeCloseTo(300, 5);
      expect(fit.exponent).toBeCloseTo(10, 5);
      expect(fit.modulus / 70_000).toBeCloseTo(1, 6);
    }
  });

  test('limits of the range are in it, the first of two highest stresses is the last sample, five are enough', () => {
    expect(required(fitRambergOsgood({ strain, stress }, { from: strain[3]!, to: strain[10]! })).points).toBe(8);
    const flat = required(fitRambergOsgood({ strain: [...strain, 0.012], stress: [...stress, 325] }));
    expect(flat).toEqual(required(fitRambergOsgood({ strain, stress })));
    expect(required(fitRambergOsgood({ strain: strain.slice(7), stress: stress.slice(7) }, { modulus: 70_000 })).points).toBe(5);
  });

  test('the modulus of the start does not matter: with and without an elastic part, and where it is given', () => {
    const R = Float64Array.from({ length: 60 }, (_, i) => 6 * (i + 1));
    const e = R.map((one) => rambergOsgoodStrain(parameters, one));
    for (const first of [0, 1, 12, 30])
      for (const options of [{}, { modulus: 70_000 }]) {
        const fit = required(fitRambergOsgood({ strain: e.slice(first), stress: R.slice(first) }, options));
        expect(fit.points).toBe(60 - first);
        expect(fit.proofStress).toBeCloseTo(300, 6);
        expect(fit.exponent).toBeCloseTo(10, 6);
        expect(fit.modulus / 70_000).toBeCloseTo(1, 7);
        expect(fit.residualSumOfSquares).toBeLessThan(1e-20);
      }
  });

  test('samples after the highest stress and at or below zero do not count', () => {
    const fit = required(fitRambergOsgood({ strain: [-1e-4, 0, ...strain, 0.01, 0.02], stress: [-7, 0, ...stress, 320, 200] }));
    expect(fit).toEqual(required(fitRambergOsgood({ strain, stress })));
  });

  test('no fit: too few samples, elastic only, falling, known modulus below the curve', () => {
    expect(fitRambergOsgood({ strain: strain.slice(0, 4), stress: stress.slice(0, 4) })).toMatchObject({ reason: 'too-few-points' });
    expect(fitRambergOsgood({ strain, stress }, { to: 0.002 })).toMatchObject({ reason: 'too-few-points' });
    expect(fitRambergOsgood({ strain, stress: [...stress].reverse() })).toMatchObject({ reason: 'too-few-points' });
    expect(fitRambergOsgood({ strain: stress.map((R) => R / 70_000), stress })).toMatchObject({ ok: false, reason: 'no-plastic-part' });
    expect(fitRambergOsgood({ strain, stress }, { modulus: 30_000 })).toMatchObject({ ok: false, reason: 'no-plastic-part' });
    expect(fitRambergOsgood({ strain: strain.map((e) => -e), stress })).toMatchObject({ ok: false, reason: 'no-plastic-part' });
  });

  test('wrong arguments are refused', () => {
    expect(thrown(() => fitRambergOsgood({ strain, stress: stress.slice(1) })).code).toBe('unequal-lengths');
    expect(thrown(() => fitRambergOsgood({ strain: [...strain.slice(1), NaN], stress })).path).toBe('curve.strain[11]');
    expect(thrown(() => fitRambergOsgood({ strain, stress }, { modulus: -1 })).code).toBe('not-positive');
    expect(thrown(() => fitRambergOsgood({ strain, stress }, { from: 1, to: 0 }))).toMatchObject({
      path: 'options.to',
      code: 'out-of-range',
    });
    // @ts-expect-error: an unknown option
    expect(thrown(() => fitRambergOsgood({ strain, stress }, { offset: 0.001 })).code).toBe('unknown-option');
  });
});
