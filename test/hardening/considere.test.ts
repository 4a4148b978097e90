import { describe, expect, test } from 'vitest';
import { required } from '../../src/base/index.js';
import { considere, hockettSherby, hollomon, ludwik, mixedLaw, swift, voce } from '../../src/hardening/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

/** True curve of a law up to a strain. */
function curveOf(law: (strain: number) => number, samples = 2000, to = 0.3) {
  const strain = Float64Array.from({ length: samples }, (_, i) => (to * (i + 1)) / samples);
  return { strain, stress: strain.map(law) };
}
/** Where dσ/dε = σ, of three laws: n; n − ε0; ln[(σs − σ0)(1 + θ)/σs]/θ. */
const laws = [
  { name: 'Hollomon', law: (e: number) => 500 * e ** 0.2, onset: 0.2 },
  { name: 'Swift', law: (e: number) => 500 * (0.01 + e) ** 0.2, onset: 0.19 },
  { name: 'Voce', law: (e: number) => 400 - 250 * Math.exp(-10 * e), onset: Math.log((250 * 11) / 400) / 10 },
];

describe.each(laws)('$name by the curve', ({ law, onset }) => {
  test.each([100, 400, 2000, 60_000])('without noise to 1e-4, %d samples', (samples) => {
    const found = required(considere(curveOf(law, samples)));
    expect(Math.abs(found.strain - onset)).toBeLessThan(1e-4);
    expect(found.stress / law(onset)).toBeCloseTo(1, 4);
    expect(found.method).toBe('curve');
    expect(found.standardUncertainty).toBeLessThan(1e-4);
  });

  test.each([0.001, 0.005])('with noise of %d: no failure, no bias, and the stated uncertainty is the scatter', (noise) => {
    const { normal } = seeded(5);
    const curve = curveOf(law, 2000);
    const errors: number[] = [];
    const inUncertainties: number[] = [];
    for (let k = 0; k < 60; k += 1) {
      const found = required(considere({ ...curve, stress: curve.stress.map((s) => s * (1 + noise * normal())) }));
      errors.push(found.strain - onset);
      inUncertainties.push((found.strain - onset) / found.standardUncertainty);
    }
    const mean = errors.reduce((sum, one) => sum + one, 0) / errors.length;
    const scatter = Math.sqrt(errors.reduce((sum, one) => sum + one * one, 0) / errors.length);
    // 0.5 % and 2 % of the strain are what a cubic can reach at these noises
    expect(scatter / onset).toBeLessThan(noise < 0.002 ? 0.01 : 0.03);
    expect(Math.abs(mean)).toBeLessThan((3 * scatter) / Math.sqrt(errors.length) + 0.002 * onset);
    const rms = Math.sqrt(inUncertainties.reduce((sum, one) => sum + one * one, 0) / inUncertainties.length);
    expect(rms).toBeGreaterThan(0.5);
    expect(rms).toBeLessThan(1.7);
  });
});

test('a corner in the force at the onset is called one as a rule, and its strain has no bias', () => {
  const { normal } = seeded(9);
  const smooth = (e: number): number => 500 * e ** 0.2 * Math.exp(-e);
  const cornered = (e: number): number =>
    (e < 0.2 ? smooth(e) : smooth(0.2) * (1 - 6 * (e - 0.2) ** 2 - 20 * (e - 0.2) ** 3)) * Math.exp(e);
  const curve = curveOf(cornered, 10_000);
  let corners = 0;
  const errors = Array.from({ length: 20 }, () => {
    const found = required(considere({ ...curve, stress: curve.stress.map((s) => s * (1 + 0.001 * normal())) }));
    if (found.shape === 'corner') corners += 1;
    return found.strain / 0.2 - 1;
  });
  const mean = errors.reduce((sum, one) => sum + one, 0) / errors.length;
  expect(Math.abs(mean)).toBeLessThan(0.0035);
  expect(corners).toBeGreaterThanOrEqual(15);
});

describe('a corner and a smooth maximum share the belief', () => {
  /** Force that falls four times as sharply after the onset, and as it would without a neck. */
  const smooth = (e: number): number => 500 * e ** 0.2 * Math.exp(-e);
  const bend = (smooth(0.2 + 1e-4) - 2 * smooth(0.2) + smooth(0.2 - 1e-4)) / 1e-8;
  const cornered = (e: number): number => (e < 0.2 ? smooth(e) : smooth(0.2) + 2 * bend * (e - 0.2) ** 2);
  const curveOfForce = (force: (e: number) => number) => curveOf((e) => force(e) * Math.exp(e), 1000);

  test('without noise each is found as what it is', () => {
    const corner = required(considere(curveOfForce(cornered)));
    expect(corner).toMatchObject({ shape: 'corner' });
    expect(Math.abs(corner.strain - 0.2)).toBeLessThan(2e-4);
    expect(corner.standardUncertainty).toBeLessThan(2e-4);
    const round = required(considere(curveOfForce(smooth)));
    expect(round).toMatchObject({ shape: 'smooth' });
    expect(Math.abs(round.strain - 0.2)).toBeLessThan(1e-4);
  });

  test.each([
    ['a corner, 0.1 %', cornered, 0.001, 0.0035, 0.92],
    ['a corner, 0.5 %', cornered, 0.005, 0.03, 0.68],
    ['smooth, 0.1 %', smooth, 0.001, 0.0035, 0.92],
    ['smooth, 0.5 %', smooth, 0.005, 0.03, 0.92],
  ])('%s: little bias, and the interval holds the onset', (_, force, noise, bias, least) => {
    const curve = curveOfForce(force);
    const { normal } = seeded(77);
    const errors: number[] = [];
    let held = 0;
    for (let k = 0; k < 300; k += 1) {
      const found = required(considere({ ...curve, stress: curve.stress.map((s) => s * (1 + noise * normal())) }));
      errors.push(found.strain / 0.2 - 1);
      if (Math.abs(found.strain - 0.2) <= 1.96 * found.standardUncertainty) held += 1;
    }
    const mean = errors.reduce((sum, one) => sum + one, 0) / errors.length;
    expect(Math.abs(mean)).toBeLessThan(bias);
    expect(Math.abs(errors.sort((a, b) => a - b)[150]!)).toBeLessThan(bias);
    // the choice of one shape alone held 90 % of smooth ones and half of the corners in much noise
    expect(held / 300).toBeGreaterThan(least);
  });

  test.each([
    ['a parabola', (i: number) => 400 - (i - 30) ** 2 / 100],
    ['two parabolas', (i: number) => 400 - (i - 30) ** 2 / (i < 30 ? 100 : 25)],
    ['a cubic', (i: number) => 400 - (i - 30) ** 2 / 100 - (i - 30) ** 3 / 1e5],
    ['two lines', (i: number) => 400 - Math.abs(i - 30) / 10],
  ])('%s without noise gives numbers', (_, force) => {
    const strain = Float64Array.from({ length: 61 }, (__, i) => 0.1 + 0.001 * i);
    const found = required(considere({ strain, stress: strain.map((e, i) => force(i) * Math.exp(e)) }));
    expect(Math.abs(found.strain - 0.13)).toBeLessThan(1e-4);
    expect(Number.isFinite(found.stress) && Number.isFinite(found.standardUncertainty)).toBe(true);
  });
});

test('engineering stress is what has the maximum: its slope changes sign at the strain that was found', () => {
  const { strain } = required(considere(curveOf(laws[0]!.law)));
  const force = (e: number): number => 500 * e ** 0.2 * Math.exp(-e);
  expect(force(strain)).toBeGreaterThan(force(strain - 1e-3));
  expect(force(strain)).toBeGreaterThan(force(strain + 1e-3));
});

describe('by a law', () => {
  const curve = curveOf(laws[0]!.law, 50);

  test('Hollomon necks at n', () => {
    for (const exponent of [0.02, 0.2, 0.5, 1.5]) {
      const law = hollomon({ strengthCoefficient: 500, exponent });
      const found = required(considere(curve, { law }));
      expect(found.strain).toBeCloseTo(exponent, 12);
      expect(law.neckingStrain).toBe(exponent);
      expect(found.stress).toBeCloseTo(law.stress(exponent), 9);
      // the strength in closed form is the engineering stress there
      expect(law.tensileStrength).toBeCloseTo(found.stress * Math.exp(-found.strain), 9);
      expect(found).toMatchObject({ standardUncertainty: 0, method: 'law' });
    }
  });

  test('any other law by its rate', () => {
    const stress = (e: number): number => 400 - 250 * Math.exp(-10 * e);
    const rate = (e: number): number => 2500 * Math.exp(-10 * e);
    expect(required(considere(curve, { law: { stress, rate } })).strain).toBeCloseTo(laws[2]!.onset, 12);
  });

  test('a law whose rate and stress do not cross', () => {
    for (const rate of [() => 1, () => 1e9, () => NaN])
      expect(considere(curve, { law: { stress: () => 400, rate } })).toMatchObject({ ok: false, reason: 'no-crossing' });
  });

  test('the rate of Hollomon is the slope of its stress', () => {
    const law = hollomon({ strengthCoefficient: 500, exponent: 0.2 });
    for (const e of [0.01, 0.1, 0.4]) expect((law.stress(e + 1e-6) - law.stress(e - 1e-6)) / 2e-6 / law.rate(e)).toBeCloseTo(1, 8);
  });

  test('parameters that are no law are refused', () => {
    expect(thrown(() => hollomon({ strengthCoefficient: 500, exponent: 0 }))).toMatchObject({ path: 'exponent', code: 'not-positive' });
    expect(thrown(() => hollomon({ strengthCoefficient: NaN, exponent: 0.2 })).code).toBe('not-finite');
  });

  test.each([
    ['hollomon: exponent', () => hollomon({ strengthCoefficient: 1, exponent: -1 })],
    ['swift: prestrain', () => swift({ strengthCoefficient: 1, prestrain: -0.1, exponent: 1 })],
    ['swift: strengthCoefficient', () => swift({ strengthCoefficient: 0, prestrain: 0, exponent: 1 })],
    ['ludwik: yieldStress', () => ludwik({ yieldStress: -1, strengthCoefficient: 1, exponent: 1 })],
    ['voce: rate', () => voce({ saturationStress: 2, initialStress: 1, rate: 0 })],
    // a law that begins at its saturation does not harden
    ['voce: initialStress', () => voce({ saturationStress: 2, initialStress: 2, rate: 1 })],
    ['hockettSherby: initialStress', () => hockettSherby({ saturationStress: 2, initialStress: 2, rate: 1, power: 1 })],
    ['hockettSherby: power', () => hockettSherby({ saturationStress: 2, initialStress: 1, rate: 1, power: 0 })],
    [
      'mixedLaw: weight',
      () => mixedLaw(hollomon({ strengthCoefficient: 1, exponent: 1 }), hollomon({ strengthCoefficient: 1, exponent: 1 }), 2),
    ],
    ['mixedLaw: second', () => mixedLaw(hollomon({ strengthCoefficient: 1, exponent: 1 }), { stress: () => 1 } as never, 0.5)],
    ['mixedLaw: first', () => mixedLaw({ rate: () => 1 } as never, hollomon({ strengthCoefficient: 1, exponent: 1 }), 0.5)],
  ])('%s is refused by its name', (name, call) => {
    expect(thrown(call).message.startsWith(`${name} `)).toBe(true);
  });
});

describe('no onset', () => {
  test.each([
    ['the curve ends before the maximum', curveOf(laws[0]!.law, 1000, 0.15), 'maximum-at-end'],
    ['the curve ends at the maximum', curveOf(laws[0]!.law, 1000, 0.2), 'maximum-at-end'],
    ['too few samples', curveOf(laws[0]!.law, 6), 'too-few-points'],
    ['the stress falls', curveOf((e) => 400 - 5 * e), 'no-maximum'],
    ['the stress is negative', curveOf(() => -400), 'no-maximum'],
    [
      'all samples at one strain',
      { strain: Array<number>(40).fill(0.1), stress: Array.from({ length: 40 }, (_, i) => 400 - (i - 20) ** 2 / 10) },
      'no-maximum',
    ],
  ])('%s', (_, curve, reason) => {
    expect(considere(curve)).toMatchObject({ ok: false, reason });
  });
});

test('wrong arguments are refused', () => {
  const { strain, stress } = curveOf(laws[0]!.law, 50);
  expect(thrown(() => considere({ strain, stress: stress.slice(1) })).code).toBe('unequal-lengths');
  expect(thrown(() => considere({ strain, stress: stress.map((s, i) => (i === 7 ? NaN : s)) })).path).toBe('curve.stress[7]');
  // @ts-expect-error: an unknown option
  expect(thrown(() => considere({ strain, stress }, { method: 'law' })).code).toBe('unknown-option');
  // @ts-expect-error: a law without its rate
  expect(thrown(() => considere({ strain, stress }, { law: { stress: () => 1 } })).code).toBe('wrong-type');
  // @ts-expect-error: no law is undefined, not null
  expect(thrown(() => considere({ strain, stress }, { law: null })).code).toBe('wrong-type');
});

test('stresses as large and as small as columns may be change neither strain nor its uncertainty; beyond they are refused', () => {
  const { strain, stress } = curveOf(laws[0]!.law);
  const at = (factor: number) => considere({ strain, stress: stress.map((one) => factor * one) });
  const usual = required(at(1));
  for (const factor of [1e97, 1e-97]) {
    const other = required(at(factor));
    expect(other.strain).toBeCloseTo(usual.strain, 9);
    expect(other.standardUncertainty).toBeCloseTo(usual.standardUncertainty, 9);
  }
  for (const factor of [1e150, 1e200, 1e-200]) expect(thrown(() => at(factor)).code).toBe('out-of-range');
});

test('a law whose tensile strength is no number is refused', () => {
  expect(thrown(() => hollomon({ strengthCoefficient: 500, exponent: 1000 }))).toMatchObject({ path: 'parameters', code: 'out-of-range' });
  expect(thrown(() => swift({ strengthCoefficient: 500, prestrain: 0.01, exponent: 1e30 })).code).toBe('out-of-range');
});
