import { describe, expect, test } from 'vitest';
import {
  considere,
  flowStress,
  hardeningRate,
  hockettSherby,
  hollomon,
  ludwik,
  mixedLaw,
  rambergOsgood,
  required,
  swift,
  voce,
  weightToPoint,
  type HardeningLaw,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('laws', 'swift', 'voce', 'flowStress', 'ludwik', 'hardeningRate');

// computed from the definitions; the second derivation beside each is the check of its identities below
describe('Swift', () => {
  test('instantaneous exponent of Swift: 0.166667 at 0.05, 0.19 at 0.19 where it equals the strain', () => {
    const law = swift({ strengthCoefficient: 500, prestrain: 0.01, exponent: 0.2 });
    const exponentAt = (e: number) => (hardeningRate(law, e) * e) / flowStress(law, e);
    expectPrinted(exponentAt(0.05), '0.166667');
    expectPrinted(exponentAt(0.19), '0.19');
  });
});

const laws: readonly (readonly [string, HardeningLaw])[] = [
  ['Hollomon', hollomon({ strengthCoefficient: 700, exponent: 0.18 })],
  ['Ludwik', ludwik({ yieldStress: 220, strengthCoefficient: 480, exponent: 0.6 })],
  ['Swift', swift({ strengthCoefficient: 640, prestrain: 0.004, exponent: 0.21 })],
  ['Voce', voce({ saturationStress: 520, initialStress: 240, rate: 14 })],
  ['Hockett-Sherby', hockettSherby({ saturationStress: 610, initialStress: 230, rate: 6, power: 0.75 })],
  ['Ramberg-Osgood', rambergOsgood({ modulus: 205_000, proofStress: 420, exponent: 8 })],
  [
    'mixture',
    mixedLaw(
      swift({ strengthCoefficient: 640, prestrain: 0.004, exponent: 0.21 }),
      voce({ saturationStress: 520, initialStress: 240, rate: 14 }),
      0.4,
    ),
  ],
];

describe.each(laws)('%s', (name, law) => {
  const strains = [0.01, 0.05, 0.12, 0.3, 0.45];

  test('carries its name, a mixture those of its laws', () => {
    expect(law.name).toBe(name === 'mixture' ? 'Swift and Voce' : name);
  });

  test('the hardening rate is the derivative of the stress', () => {
    for (const e of strains) {
      const h = 1e-5 * e;
      const slope = (law.stress(e + h) - law.stress(e - h)) / (2 * h);
      expect(law.rate(e) / slope).toBeCloseTo(1, 7);
    }
  });

  test('the inverse gives back the strain', () => {
    const { inverse } = law;
    if (inverse) for (const e of strains) expect(inverse(law.stress(e)) / e).toBeCloseTo(1, 9);
    else expect(law.name).toContain('and');
  });

  test('a neck begins where rate equals stress, which is where the engineering stress is highest', () => {
    const e = law.neckingStrain;
    expect(law.rate(e) / law.stress(e)).toBeCloseTo(1, 9);
    const engineering = (x: number) => law.stress(x) * Math.exp(-x);
    expect(engineering(e)).toBeGreaterThan(engineering(0.99 * e));
    expect(engineering(e)).toBeGreaterThan(engineering(1.01 * e));
    expect(law.tensileStrength).toBeCloseTo(engineering(e), 9);
    const curve = { strain: [0.1], stress: [1] };
    expect(required(considere(curve, { law })).strain).toBeCloseTo(e, 12);
  });
});

test('Hockett-Sherby with power 1 is Voce; Swift without prestrain is Hollomon; Ludwik without yield stress too', () => {
  const at = [0.01, 0.1, 0.4];
  const same = (a: HardeningLaw, b: HardeningLaw) => {
    for (const e of at) expect(a.stress(e)).toBeCloseTo(b.stress(e), 10);
    expect(a.neckingStrain).toBeCloseTo(b.neckingStrain, 12);
  };
  const parameters = { saturationStress: 520, initialStress: 240, rate: 14 };
  same(hockettSherby({ ...parameters, power: 1 }), voce(parameters));
  const hollomons = hollomon({ strengthCoefficient: 700, exponent: 0.2 });
  same(swift({ strengthCoefficient: 700, prestrain: 0, exponent: 0.2 }), hollomons);
  same(ludwik({ yieldStress: 0, strengthCoefficient: 700, exponent: 0.2 }), hollomons);
});

test('a law that necks from the start says 0, and its strength is its first stress', () => {
  const law = voce({ saturationStress: 300, initialStress: 290, rate: 2 });
  expect(law.neckingStrain).toBe(0);
  expect(law.tensileStrength).toBe(290);
  expect(swift({ strengthCoefficient: 500, prestrain: 0.3, exponent: 0.2 }).neckingStrain).toBe(0);
});

test('the mixture goes through the measured point, and outside the laws there is none', () => {
  const [one, other] = [
    swift({ strengthCoefficient: 640, prestrain: 0.004, exponent: 0.21 }),
    voce({ saturationStress: 520, initialStress: 240, rate: 14 }),
  ];
  const { weight, law } = required(weightToPoint(one, other, { strain: 0.8, stress: 560 }));
  expect(law.stress(0.8)).toBeCloseTo(560, 10);
  expect(weight).toBeGreaterThan(0);
  expect(weight).toBeLessThan(1);
  expect(weightToPoint(one, other, { strain: 0.8, stress: 900 })).toMatchObject({ ok: false, reason: 'not-between' });
  expect(weightToPoint(one, one, { strain: 0.8, stress: 600 })).toMatchObject({ ok: false, reason: 'laws-agree' });
});

test('the laws themselves are between the laws; beyond either, and where they agree to 1e-9 of the stress, there is no weight', () => {
  const level = (stress: number) => ludwik({ yieldStress: stress, strengthCoefficient: 100, exponent: 1 });
  const weightAt = (stress: number) => {
    const found = weightToPoint(level(500), level(400), { strain: 0, stress });
    return found.ok ? found.weight : found.reason;
  };
  expect([500, 475, 400].map(weightAt)).toEqual([1, 0.75, 0]);
  expect([500.1, 399.9].map(weightAt)).toEqual(['not-between', 'not-between']);
  expect(weightToPoint(level(500), level(500 + 4e-7), { strain: 0, stress: 500 })).toMatchObject({ ok: false, reason: 'laws-agree' });
  expect(weightToPoint(level(500), level(500 + 1e-6), { strain: 0, stress: 500 })).toMatchObject({ weight: 1 });
});

describe('where rate and stress of a straight line cross: 1 − σ0/K', () => {
  test.each([
    { yieldStress: 400, neck: 0.2 },
    { yieldStress: 250, neck: 0.5 },
    { yieldStress: 499, neck: 0.002 },
    // from the start, and below it
    { yieldStress: 500, neck: 0 },
    { yieldStress: 600, neck: 0 },
  ])('σ0 $yieldStress of K 500: $neck', ({ yieldStress, neck }) => {
    const law = ludwik({ yieldStress, strengthCoefficient: 500, exponent: 1 });
    expect(law.neckingStrain).toBeCloseTo(neck, 14);
    expect(law.tensileStrength).toBeCloseTo((yieldStress + 500 * neck) * Math.exp(-neck), 9);
  });

  test('it is sought up to a strain of 5, where a law that hardens on is said to neck', () => {
    const neckOf = (exponent: number) => ludwik({ yieldStress: 0, strengthCoefficient: 500, exponent }).neckingStrain;
    expect(neckOf(4.9)).toBeCloseTo(4.9, 12);
    expect(neckOf(6)).toBe(5);
  });
});

test('a law at many strains is the law at each', () => {
  const law = voce({ saturationStress: 520, initialStress: 240, rate: 14 });
  expect([...flowStress(law, [0, 0.1])]).toEqual([240, law.stress(0.1)]);
  expect([...hardeningRate(law, Float64Array.from([0, 0.1]))]).toEqual([14 * 280, law.rate(0.1)]);
});
