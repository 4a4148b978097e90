import { expect, test } from 'vitest';
import { poissonRatio, required } from '../../src/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

const stress = Float64Array.from({ length: 200 }, (_, i) => i);
const strain = stress.map((R) => R / 205_000 + 1e-5);
const transverseStrain = strain.map((e) => -0.29 * e + 3e-6);

test('offsets of either strain do not matter', () => {
  const found = required(poissonRatio({ strain, transverseStrain, stress }, { first: 40, last: 160 }));
  expect(found.ratio).toBeCloseTo(0.29, 12);
  expect(found.points).toBe(121);
  expect(found.standardError).toBeLessThan(1e-12);
});

test('noise of both strains: no bias, and the standard error is the scatter', () => {
  const { normal } = seeded(2);
  const errors: number[] = [];
  for (let k = 0; k < 300; k += 1) {
    const noisy = {
      strain: strain.map((e) => e + 5e-6 * normal()),
      transverseStrain: transverseStrain.map((e) => e + 5e-6 * normal()),
      stress,
    };
    const { ratio, standardError } = required(poissonRatio(noisy, { first: 20, last: 180 }));
    errors.push((ratio - 0.29) / standardError);
  }
  const mean = errors.reduce((a, b) => a + b) / errors.length;
  const scatter = Math.sqrt(errors.reduce((a, b) => a + b * b, 0) / errors.length);
  // of 300 standard normal numbers: mean within 4/√300, scatter within 4/√600
  expect(Math.abs(mean)).toBeLessThan(0.24);
  expect(Math.abs(scatter - 1)).toBeLessThan(0.17);
});

test('a ratio that no isotropic metal has is refused, one on the limits or within noise of them is not', () => {
  const of = (nu: number, noise = 0) => {
    const { normal } = seeded(5);
    const across = strain.map((e) => -nu * e + noise * normal());
    return poissonRatio({ strain, transverseStrain: across, stress }, { first: 20, last: 180 });
  };
  expect(of(-0.33)).toMatchObject({
    ok: false,
    reason: 'no-contraction',
    message: 'the width grows with the length: the ratio would be -0.33',
  });
  expect(of(0.8)).toMatchObject({ ok: false, reason: 'contracts-too-much' });
  for (const nu of [0, 0.5]) expect(required(of(nu)).ratio).toBeCloseTo(nu, 12);
  // of strains that reach 9e-4, noise of 1e-4 leaves the slope a standard error of about 0.03
  expect(required(of(0.52, 1e-4)).standardError).toBeGreaterThan(0.02);
});

test('bad input', () => {
  const curve = { strain, transverseStrain, stress };
  expect(poissonRatio({ ...curve, strain: strain.map((e) => -e) }, { first: 0, last: 100 })).toMatchObject({
    ok: false,
    reason: 'no-slope',
  });
  // neither does a strain that stays, nor one over a stress that stays
  for (const still of [{ strain: strain.map(() => 0.001) }, { stress: stress.map(() => 100) }])
    expect(poissonRatio({ ...curve, ...still }, { first: 0, last: 100 })).toMatchObject({ ok: false, reason: 'no-slope' });
  expect(thrown(() => poissonRatio(curve, { first: 1.5, last: 100 })).code).toBe('out-of-range');
  expect(thrown(() => poissonRatio(curve, { first: 10, last: 200 })).path).toBe('window.last');
  expect(thrown(() => poissonRatio(curve, { first: 99, last: 100 })).path).toBe('window.first');
  expect(thrown(() => poissonRatio(curve, { first: 1.5, last: 100 })).path).toBe('window.first');
  expect(thrown(() => poissonRatio({ ...curve, transverseStrain: [0] }, { first: 0, last: 100 })).code).toBe('unequal-lengths');
});
