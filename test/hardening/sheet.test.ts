import { describe, expect, test } from 'vitest';
import { plasticStrainRatio, plasticStrainRatioFromCurve, required } from '../../src/index.js';
import { seeded } from '../support/random.js';
import { thrown } from '../support/thrown.js';

/** A sheet of known r: plastic width strain is −r/(1 + r) of the plastic length strain. */
function sheet(r: number, noise: number, seed = 1) {
  const { normal } = seeded(seed);
  const strain = Float64Array.from({ length: 400 }, (_, i) => 0.0005 * (i + 1));
  const stress = strain.map((e) => (480 * Math.log1p(e) ** 0.22) / (1 + e));
  const transverseStrain = strain.map((e, i) => {
    const sigma = stress[i]! * (1 + e);
    const width = (-r / (1 + r)) * (Math.log1p(e) - sigma / 205_000) - (0.3 * sigma) / 205_000;
    return Math.expm1(width) + noise * normal();
  });
  return { strain, transverseStrain, stress };
}

describe('plasticStrainRatioFromCurve', () => {
  test.each([0.6, 1, 1.8, 2.5])('r %d comes back from its curve', (r) => {
    const found = required(plasticStrainRatioFromCurve(sheet(r, 0), { from: 0.08, to: 0.12, modulus: 205_000 }));
    expect(found.ratio).toBeCloseTo(r, 9);
    expect(found.range).toEqual([0.08, 0.12]);
    expect(found.standardError).toBeLessThan(1e-9);
  });

  test('noise: within the stated error as often as it should be', () => {
    let inside = 0;
    for (let k = 0; k < 200; k += 1) {
      const { ratio, standardError } = required(
        plasticStrainRatioFromCurve(sheet(1.8, 2e-4, k), { from: 0.08, to: 0.12, modulus: 205_000 }),
      );
      if (Math.abs(ratio - 1.8) < 1.96 * standardError) inside += 1;
    }
    // 95 % of 200 within four standard deviations of a binomial number
    expect(inside).toBeGreaterThan(190 - 4 * Math.sqrt(200 * 0.95 * 0.05));
  });

  test('measures of the unloaded piece say the same', () => {
    const { strain, transverseStrain, stress } = sheet(1.8, 0);
    const i = 199;
    const sigma = stress[i]! * (1 + strain[i]!);
    const length = 80 * Math.exp(Math.log1p(strain[i]!) - sigma / 205_000);
    const width = 20 * Math.exp(Math.log1p(transverseStrain[i]!) + (0.3 * sigma) / 205_000);
    expect(plasticStrainRatio({ originalWidth: 20, width, originalLength: 80, length })).toBeCloseTo(1.8, 9);
  });

  test('slope and error are those of a line through the origin, in closed form', () => {
    const curve = sheet(1.8, 2e-3);
    const at = { from: 0.08, to: 0.0861, modulus: 205_000, poissonRatio: 0.28 };
    const inside = [...curve.strain].flatMap((e, i) => (e >= at.from && e <= at.to ? [i] : []));
    const elastic = (i: number) => (curve.stress[i]! * (1 + curve.strain[i]!)) / 205_000;
    const along = inside.map((i) => Math.log(1 + curve.strain[i]!) - elastic(i));
    const width = inside.map((i) => Math.log(1 + curve.transverseStrain[i]!) + 0.28 * elastic(i));
    const sum = (of: (k: number) => number) => along.reduce((all, _, k) => all + of(k), 0);
    const square = sum((k) => along[k]! ** 2);
    const m = sum((k) => along[k]! * width[k]!) / square;
    const variance = sum((k) => (width[k]! - m * along[k]!) ** 2) / (along.length - 1);
    const found = required(plasticStrainRatioFromCurve(curve, at));
    expect(found.points).toBe(inside.length);
    expect(found.ratio).toBeCloseTo(-m / (1 + m), 12);
    // of r = -m/(1 + m) the derivative is 1/(1 + m)²
    expect(found.standardError / (Math.sqrt(variance / square) / (1 + m) ** 2)).toBeCloseTo(1, 9);
  });

  test('a width that stays, or that takes all the strain, leaves no r, and a width that is gone is no sample', () => {
    const stiff = { from: 0.9, to: 1, modulus: 1e100, poissonRatio: 0 };
    const ones = Array<number>(6).fill(1);
    const curve = { strain: ones, stress: [...ones.slice(1), 2], transverseStrain: ones.map(() => -0.25) };
    // ln 2 along the piece, ln 0.75 across it, and what is left over the thickness
    const r = Math.log(0.75) / (-Math.log(2) - Math.log(0.75));
    expect(required(plasticStrainRatioFromCurve(curve, stiff)).ratio).toBeCloseTo(r, 12);
    const gone = { ...curve, transverseStrain: [-1, ...curve.transverseStrain.slice(1)] };
    expect(required(plasticStrainRatioFromCurve(gone, stiff))).toMatchObject({ points: 5, ratio: expect.closeTo(r, 12) as number });
    for (const still of [0, -0.5])
      expect(plasticStrainRatioFromCurve({ ...curve, transverseStrain: ones.map(() => still) }, stiff)).toMatchObject({
        ok: false,
        reason: 'no-plastic-strain',
      });
  });

  test('reasons and bad input', () => {
    const curve = sheet(1, 0);
    const at = { from: 0.08, to: 0.12, modulus: 205_000 };
    expect(plasticStrainRatioFromCurve(curve, { ...at, modulus: 205 })).toMatchObject({
      ok: false,
      reason: 'no-plastic-strain',
      message: expect.stringContaining('nothing is left after the elastic part by 205 MPa') as string,
    });
    expect(plasticStrainRatioFromCurve(curve, { ...at, to: 0.4 })).toMatchObject({ ok: false, reason: 'beyond-maximum' });
    expect(plasticStrainRatioFromCurve(curve, { ...at, to: 0.081 })).toMatchObject({ ok: false, reason: 'too-few-points' });
    expect(plasticStrainRatioFromCurve({ ...curve, transverseStrain: curve.strain }, at)).toMatchObject({
      ok: false,
      reason: 'no-plastic-strain',
    });
    expect(thrown(() => plasticStrainRatioFromCurve(curve, { ...at, from: 0 })).path).toBe('options.from');
    expect(thrown(() => plasticStrainRatioFromCurve(curve, { ...at, poissonRatio: 0.6 })).path).toBe('options.poissonRatio');
    expect(thrown(() => plasticStrainRatioFromCurve({ ...curve, stress: [1] }, at)).code).toBe('unequal-lengths');
  });
});
