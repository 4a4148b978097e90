import { describe, expect, test } from 'vitest';
import { knownCurve } from '../../bench/scenarios.js';
import { fitModulus, proofStrength, required } from '../../src/index.js';
import { lineResiduals } from '../../src/curve/modulus/lineResiduals.js';
import { polynomialFit } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

describe('residuals', () => {
  const { normal } = seeded(7);
  const strain = Float64Array.from({ length: 60 }, (_, i) => 0.001 + 2e-5 * i + 3e-6 * Math.abs(normal()));
  const noisy = strain.map((e) => 200_000 * e - 3e6 * (e - 0.001) ** 2 + 0.5 * normal());

  test('the change of slope and its standard error are those of a parabola by the general library', () => {
    const line = required(fitModulus({ strain, stress: noisy }, { window: { by: 'samples', first: 5, last: 54 } }));
    const x = strain.subarray(5, 55);
    const parabola = polynomialFit(x, noisy.subarray(5, 55), 2);
    const width = x[x.length - 1]! - x[0]!;
    expect(line.residuals?.slopeChange).toBeCloseTo((2 * parabola.coefficients[2]! * width) / line.slope, 9);
    expect(line.residuals?.slopeChangeError).toBeCloseTo((2 * Math.sqrt(parabola.covariance[2]![2]!) * width) / line.slope, 9);
  });

  test('alternating residuals make the most runs, residuals in two halves the fewest', () => {
    const x = Float64Array.from({ length: 40 }, (_, i) => i);
    const line = { slope: 1, intercept: 0, first: 0, last: 39 };
    const runsOf = (residual: (i: number) => number) => lineResiduals({ strain: x, stress: x.map((v, i) => v + residual(i)) }, line);
    expect(runsOf((i) => (i % 2 === 0 ? 1 : -1))).toMatchObject({ runs: 40, expectedRuns: 21 });
    const halves = runsOf((i) => (i < 20 ? 1 : -1));
    expect(halves?.runs).toBe(2);
    expect(halves?.runsDeviation).toBeLessThan(-5);
  });

  test('none of fewer than five samples or two strains', () => {
    const x = Float64Array.of(0, 0, 1, 1, 1, 1);
    expect(lineResiduals({ strain: x, stress: x }, { slope: 1, intercept: 0, first: 0, last: 3 })).toBeUndefined();
    expect(lineResiduals({ strain: x, stress: x }, { slope: 1, intercept: 0, first: 0, last: 5 })).toBeUndefined();
  });
});

describe('envelope and trust', () => {
  test('a straight part leaves no choice: every window gives the same, and the verdict is robust', () => {
    const strain = Float64Array.from({ length: 3000 }, (_, i) => 5e-6 * i);
    const stress = strain.map((e) => (e < 0.0015 ? 200_000 * e : 300 + 2000 * (e - 0.0015)));
    const { envelope, trust } = required(fitModulus({ strain, stress }));
    expect(envelope?.verdict).toBe('robust');
    expect(envelope?.windows).toBeGreaterThan(20);
    for (const slope of envelope?.slope ?? []) expect(slope).toBeCloseTo(200_000, 3);
    // Rp0.2 of this curve: 200000 (e - 0.002) = 297 + 2000 e, so R = (297 + 4) / 0.99
    for (const proof of envelope?.proofStrength ?? []) expect(proof).toBeCloseTo(301 / 0.99, 6);
    expect(trust?.leverage).toBeCloseTo(301 / 0.99 / 200_000 / 0.002, 6);
    expect(trust?.verdict).toBe('sound');
  });

  test.each([1, 2, 3, 4, 5])(
    'steel %d: the envelope of the others comes near the line, and holds the proof strength that it gives',
    (seed) => {
      const curve = knownCurve('steel', 2000, seed);
      const line = required(fitModulus(curve));
      const { slope, proofStrength: proofs } = line.envelope!;
      expect(slope[0]).toBeLessThanOrEqual(line.slope);
      // the searched window may be steeper than all between the steps, by no more than a robust line is
      expect(slope[1]).toBeGreaterThan(line.slope / 1.05);
      const proof = required(proofStrength(curve, { modulus: line.slope, strainShift: line.strainShift }));
      expect(proofs![0]).toBeLessThan(proof.stress * 1.002);
      expect(proofs![1]).toBeGreaterThan(proof.stress * 0.998);
      expect(line.trust?.leverage).toBeCloseTo(proof.stress / line.slope / 0.002, 2);
    },
  );

  test('soft copper has no straight part: fragile', () => {
    expect(required(fitModulus(knownCurve('soft copper', 2000, 3))).envelope?.verdict).toBe('fragile');
  });

  test('a slope that scatters makes the proof strength doubtful, then unusable', () => {
    const trustAt = (noise: number) => {
      const { normal } = seeded(11);
      const strain = Float64Array.from({ length: 60 }, (_, i) => 0.002 * i);
      const stress = strain.map((e) => Math.min(5_000 * e, 200 + 50 * (e - 0.04)) + noise * normal());
      return required(fitModulus({ strain, stress })).trust;
    };
    // a soft frame: λ = 200 / 5000 / 0.002 = 20
    expect(trustAt(0.01)?.verdict).toBe('sound');
    expect(trustAt(4)?.verdict).toBe('unusable');
    const { verdict, leverage, offsetDoubt } = trustAt(1)!;
    expect(verdict).toBe('doubtful');
    expect(leverage).toBeGreaterThan(19);
    expect(leverage).toBeLessThan(21);
    expect(offsetDoubt).toBeGreaterThan(0.05);
  });

  test('a given window is explained by its residuals, by trust, and by the envelope of other windows', () => {
    const line = required(fitModulus(knownCurve('aluminium', 1000, 1), { window: { by: 'stress', from: 60, to: 150 } }));
    expect(line.envelope).toMatchObject({ verdict: 'robust' });
    expect(line.residuals?.runs).toBeGreaterThan(0);
    expect(line.trust?.verdict).toBe('sound');
    expect(line.criterion).toEqual({ by: 'stress', from: 60, to: 150 });
    expect(line.score).toBeUndefined();
  });
});

test('the criterion stands in the result with its defaults, and what the window and its runners-up reach by it', () => {
  const lines = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => required(fitModulus(knownCurve('steel', 3000, seed))));
  // a best window over the whole lower half leaves none
  const line = lines.find(({ alternatives }) => alternatives.length > 0)!;
  expect(line.criterion).toEqual({ by: 'lower-bound', z: 4, startShare: 0.2, spanShare: 0.2, gap: 0 });
  expect(line.score).toBeCloseTo(line.slope - 4 * line.standardError, 4);
  for (const { score } of line.alternatives) expect(score).toBeLessThanOrEqual(line.score!);
});

test('runners-up lie where windows of the envelope may, never over the yield point', () => {
  let runners = 0;
  for (let seed = 1; seed <= 20; seed += 1) {
    const { normal } = seeded(seed);
    // 200 GPa with a toe, upper yield strength of 320 MPa at sample 320, then a level of 300 MPa
    const strain = Float64Array.from({ length: 700 }, (_, i) => i * 5e-6 + 1e-6 * normal());
    const stress = Float64Array.from({ length: 700 }, (_, i) => (i <= 320 ? i - 15 * (1 - Math.exp(-i / 15)) : 300) + 0.3 * normal());
    const { alternatives, envelope, offsetStress } = required(fitModulus({ strain, stress }));
    for (const { last, slope } of alternatives) {
      expect(stress[last]).toBeLessThan(0.5 * offsetStress! + 2);
      // cells of another lattice than the envelope's: next to its slopes
      expect(slope).toBeGreaterThan(0.95 * envelope!.slope[0]);
      expect(slope).toBeLessThan(1.05 * envelope!.slope[1]);
    }
    runners += alternatives.length;
  }
  expect(runners).toBeGreaterThan(0);
});

test('a bounded gap ends at most so much below the exact bound, and outside 0 to 0.1 it is refused', () => {
  for (let seed = 1; seed <= 20; seed += 1) {
    const curve = knownCurve('yield point', 5000, seed);
    const exact = required(fitModulus(curve)).score!;
    const near = required(fitModulus(curve, { window: { by: 'lower-bound', gap: 1e-4 } })).score!;
    expect(near).toBeLessThanOrEqual(exact * (1 + 1e-12));
    expect(near).toBeGreaterThanOrEqual(exact * (1 - 1e-4));
  }
  const curve = knownCurve('steel', 300, 1);
  for (const gap of [-1e-6, 0.2, NaN])
    expect(thrown(() => fitModulus(curve, { window: { by: 'lower-bound', gap } })).path).toBe('options.window.gap');
});
