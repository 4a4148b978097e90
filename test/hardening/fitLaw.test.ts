import { describe, expect, test } from 'vitest';
import { required } from '../../src/base/index.js';
import { fitHollomon, fitLaw } from '../../src/hardening/index.js';
import { thrown } from '../support/thrown.js';

const strain = [0.01, 0.02, 0.035, 0.05, 0.08, 0.11, 0.15, 0.19];
const stress = [201, 229, 257.5, 275, 301.5, 322, 342, 359];
const flow = { strain, stress };
const power = { parameters: { K: 700, n: 0.3 }, stress: (e: number, p: { K: number; n: number }) => p.K * e ** p.n };

describe('a law of one’s own', () => {
  // SciPy 1.17: curve_fit(lambda x, a, b, r: a - b*np.exp(-r*x), strain, stress, p0=[350, 200, 10], xtol=1e-15, ftol=1e-15, gtol=1e-15)
  test('three parameters, standard errors and a correlation as SciPy finds them; derivatives by differences', () => {
    const fit = required(
      fitLaw(flow, {
        parameters: { top: 350, rise: 200, rate: 10 },
        stress: (e: number, p: { top: number; rise: number; rate: number }) => p.top - p.rise * Math.exp(-p.rate * e),
      }),
    );
    // seven digits: SciPy's own derivatives here are differences too
    expect(fit.parameters.top / 370.33582346401556).toBeCloseTo(1, 7);
    expect(fit.parameters.rise / 187.06720711573735).toBeCloseTo(1, 7);
    expect(fit.parameters.rate / 13.08089762089866).toBeCloseTo(1, 6);
    expect(fit.standardErrors.top / 8.464888725368588).toBeCloseTo(1, 5);
    expect(fit.standardErrors.rise / 6.9802491099932205).toBeCloseTo(1, 5);
    expect(fit.standardErrors.rate / 1.659735226830005).toBeCloseTo(1, 5);
    expect(fit.correlations[0]![2]).toBeCloseTo(-0.922431184840765, 5);
    expect(fit.correlations[2]![2]).toBeCloseTo(1, 12);
    expect(fit.residualSumOfSquares).toBeCloseTo(116.13423374227642, 6);
    expect(fit).toMatchObject({ converged: true, points: 8 });
  });

  test('is what the search for the one exponent of Hollomon finds', () => {
    const fit = required(fitLaw(flow, power));
    const other = required(fitHollomon(flow));
    expect(fit.parameters.n).toBeCloseTo(other.exponent, 9);
    expect(fit.parameters.K).toBeCloseTo(other.strengthCoefficient, 6);
    expect(fit.standardErrors.K).toBeCloseTo(other.standardErrors.strengthCoefficient, 6);
    expect(fit.standardErrors.n).toBeCloseTo(other.standardErrors.exponent, 9);
    expect(fit.correlations[0]![1]).toBeCloseTo(other.correlations[0]![1]!, 7);
    expect(fit.rSquared).toBeCloseTo(other.rSquared, 12);
  });

  test('derivatives by differences and in closed form agree', () => {
    const derivatives = (e: number, p: { K: number; n: number }) => ({ K: e ** p.n, n: p.K * e ** p.n * Math.log(e) });
    const closed = required(fitLaw(flow, { ...power, derivatives }));
    expect(required(fitLaw(flow, power)).parameters.n).toBeCloseTo(closed.parameters.n, 9);
  });

  test('a far start comes home, or does not claim to', () => {
    for (const parameters of [
      { K: 1, n: 3 },
      { K: 1e5, n: -2 },
      { K: 0, n: 0 },
    ]) {
      const fit = required(fitLaw(flow, { ...power, parameters }));
      expect(fit.converged).toBe(true);
      expect(fit.parameters.n).toBeCloseTo(0.1975808549945737, 9);
    }
  });

  test('a range of strain', () => {
    const fit = required(fitLaw(flow, power, { from: 0.02, to: 0.15 }));
    expect(fit.points).toBe(6);
    expect(fit.parameters.n).toBeCloseTo(required(fitHollomon(flow, { from: 0.02, to: 0.15 })).exponent, 9);
  });
});

describe('bounds', () => {
  test('that do not matter change nothing', () => {
    const fit = required(fitLaw(flow, { ...power, bounds: { K: [0, 1e5], n: [0, 1] } }));
    expect(fit.parameters.n).toBeCloseTo(0.1975808549945737, 9);
  });

  test('that matter hold the parameter; K is the best one that goes with it, in closed form', () => {
    const fit = required(fitLaw(flow, { ...power, bounds: { n: [0.25, 1] } }));
    const square = strain.reduce((sum, e) => sum + e ** 0.5, 0);
    const K = strain.reduce((sum, e, i) => sum + e ** 0.25 * stress[i]!, 0) / square;
    expect(fit.parameters.n).toBe(0.25);
    expect(fit.parameters.K).toBeCloseTo(K, 6);
    expect(fit.standardErrors.n).toBe(0);
    expect(fit.correlations).toEqual([
      [1, 0],
      [0, 1],
    ]);
    expect(fit.converged).toBe(true);
  });

  test('that are none, or leave the start outside, are refused', () => {
    expect(thrown(() => fitLaw(flow, { ...power, bounds: { n: [1, 0] } }))).toMatchObject({ path: 'law.bounds.n', code: 'out-of-range' });
    expect(thrown(() => fitLaw(flow, { ...power, bounds: { n: [NaN, 1] } })).code).toBe('out-of-range');
    expect(thrown(() => fitLaw(flow, { ...power, bounds: { K: [0, 100] } }))).toMatchObject({
      path: 'law.parameters.K',
      code: 'out-of-range',
    });
    // @ts-expect-error: a bound of no parameter
    expect(thrown(() => fitLaw(flow, { ...power, bounds: { m: [0, 1] } })).code).toBe('unknown-option');
    // @ts-expect-error: a number is no pair
    expect(thrown(() => fitLaw(flow, { ...power, bounds: { n: 1 } })).code).toBe('wrong-type');
  });
});

describe('no fit', () => {
  test('too few samples: one more than parameters is needed', () => {
    const few = { strain: strain.slice(0, 2), stress: stress.slice(0, 2) };
    expect(fitLaw(few, power)).toMatchObject({ ok: false, reason: 'too-few-points' });
  });
  test('a law or derivative that is no number at the start', () => {
    expect(fitLaw(flow, { ...power, stress: () => NaN })).toMatchObject({ ok: false, reason: 'no-start' });
    expect(fitLaw(flow, { ...power, derivatives: () => ({ K: 1, n: NaN }) })).toMatchObject({ ok: false, reason: 'no-start' });
  });
  test('parameters that only act together, or one that does nothing', () => {
    const parameters = { a: 10, b: 20 };
    expect(fitLaw(flow, { parameters, stress: (e, { a, b }) => a * b * e })).toMatchObject({ ok: false, reason: 'undetermined' });
    expect(fitLaw(flow, { parameters, stress: (e, { a, b }) => a * e + b * e })).toMatchObject({ ok: false, reason: 'undetermined' });
    expect(fitLaw(flow, { parameters, stress: (e, { a }) => a * e })).toMatchObject({ ok: false, reason: 'undetermined' });
  });
});

test('a stress that does not change has nothing to explain', () => {
  const fit = required(fitLaw({ strain, stress: stress.map(() => 300) }, { parameters: { a: 1 }, stress: (_, { a }) => a }));
  expect(fit.parameters.a).toBeCloseTo(300, 9);
  expect(fit.rSquared).toBe(1);
});

test('wrong arguments are refused', () => {
  expect(thrown(() => fitLaw({ strain, stress: stress.slice(1) }, power)).code).toBe('unequal-lengths');
  expect(thrown(() => fitLaw({ strain, stress: stress.map((s) => -s) }, power)).code).toBe('not-positive');
  expect(thrown(() => fitLaw(flow, power, { from: 0.2, to: 0.1 })).path).toBe('range.to');
  expect(thrown(() => fitLaw(flow, { ...power, parameters: { K: NaN, n: 1 } }))).toMatchObject({
    path: 'law.parameters.K',
    code: 'not-finite',
  });
  expect(thrown(() => fitLaw(flow, { parameters: {}, stress: () => 1 })).code).toBe('empty');
  // @ts-expect-error: no function
  expect(thrown(() => fitLaw(flow, { ...power, stress: 5 }))).toMatchObject({ path: 'law.stress', code: 'wrong-type' });
  // @ts-expect-error: no function
  expect(thrown(() => fitLaw(flow, { ...power, derivatives: 'x' }))).toMatchObject({ path: 'law.derivatives', code: 'wrong-type' });
  // @ts-expect-error: an unknown name
  expect(thrown(() => fitLaw(flow, { ...power, jacobian: () => [] })).code).toBe('unknown-option');
});
