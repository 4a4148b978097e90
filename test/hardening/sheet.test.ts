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

  test('reasons and bad input', () => {
    const curve = sheet(1, 0);
    const at = { from: 0.08, to: 0.12, modulus: 205_000 };
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
