import { describe, expect, test } from 'vitest';
import { required } from '../../src/base/index.js';
import { fitCalibration, type Calibration, type CalibrationOptions } from '../../src/force/index.js';
import { seeded } from '../support/random.js';

const indicated = Array.from({ length: 10 }, (_, k) => 2 + 2 * k);
/** A straight channel of 1180 N for 1 MPa with 20 N of scatter, and what became of its readings. */
function channel(spoil: (i: number, force: number) => number, options: CalibrationOptions = {}, at = indicated): Calibration {
  const { normal } = seeded(3);
  return required(fitCalibration({ indicated: at, reference: at.map((p, i) => spoil(i, 1180 * p - 150 + 20 * normal())) }, options));
}
const codes = ({ findings }: Calibration): string[] => findings.map(({ code }) => code);

describe('doubts about the pairs of a calibration', () => {
  test('ten sound pairs raise none', () => {
    expect(codes(channel((_, F) => F))).toEqual([]);
  });

  test('the highest pair 2000 N too low, which the F-test takes for a curve', () => {
    const { degree, findings } = channel((i, F) => (i === 9 ? F - 2000 : F));
    expect(degree).toBe(3);
    expect(findings.map(({ code }) => code)).toEqual(['calibration-outlier']);
    expect(findings[0]!.values).toMatchObject({ pair: 10, degree: 3, without: 1 });
    expect(findings[0]!.values['off']).toBeCloseTo(-2000, -2);
  });

  test('a decimal sign that slipped, weighted or not, by any degree', () => {
    for (const options of [{}, { weights: 'relative' }, { degree: 1 }, { degree: 2 }] as const) {
      const found = channel((i, F) => (i === 4 ? F / 10 : F), options);
      expect(codes(found)).toContain('calibration-outlier');
      expect(found.findings.find(({ code }) => code === 'calibration-outlier')!.values['pair']).toBe(5);
      expect(found.points).toBe(10); // nothing was taken out
    }
  });

  test('outliers of sound channels are as seldom as their level says', () => {
    // 5 % over all pairs and degrees; 600 channels know that share to 0.9 %
    const found = Array.from({ length: 600 }, (_, seed) => {
      const { normal } = seeded(1000 + seed);
      return required(fitCalibration({ indicated, reference: indicated.map((p) => 1180 * p + 20 * normal()) }));
    }).filter((one) => codes(one).includes('calibration-outlier')).length;
    expect(found / 600).toBeLessThan(0.05 + 3 * 0.009);
  });

  test('so are they where scatter grows with the force, and a pair that is off is still found', () => {
    const at = [1, 2.5, 5, 10, 15, 20, 24];
    const outliers = (spoil: number) =>
      Array.from({ length: 600 }, (_, seed) => {
        const { normal } = seeded(2000 + seed);
        const reference = at.map((p, i) => 1000 * p * (1 + 0.001 * normal()) + (i === seed % 7 ? spoil : 0));
        return required(fitCalibration({ indicated: at, reference }));
      }).filter((one) => codes(one).includes('calibration-outlier')).length / 600;
    expect(outliers(0)).toBeLessThan(0.05 + 3 * 0.009);
    // 300 N are 12 standard deviations of the highest pair and 300 of the lowest
    expect(outliers(300)).toBeGreaterThan(0.9);
  });

  test('a curve that only the highest of six pairs shows', () => {
    const at = [2, 4, 6, 8, 10, 20];
    // by hand: the first five lie on 1200 x with a zigzag of 3 N, the last 60 N above it, which four degrees of freedom do not refuse
    const reference = at.map((p, k) => 1200 * p + (k === 5 ? 60 : 3 * (-1) ** k));
    const found = required(fitCalibration({ indicated: at, reference }));
    expect(found.degree).toBeGreaterThan(1);
    expect(codes(found)).toContain('calibration-degree-by-one');
  });

  test('a way down that reads 120 N more than the way up', () => {
    const both = [...indicated, ...[...indicated].reverse().slice(1)];
    expect(codes(channel((_, F) => F, {}, both))).toEqual([]);
    const found = channel((i, F) => (i > 9 ? F + 120 : F), {}, both).findings.find(({ code }) => code === 'calibration-hysteresis');
    expect(found!.values['difference']).toBeGreaterThan(90);
    expect(found!.values['difference']).toBeLessThan(150);
    // rising runs one after the other are no way down
    const again = [...indicated, ...indicated];
    expect(codes(channel((i, F) => (i > 9 ? F + 120 : F), {}, again))).not.toContain('calibration-hysteresis');
  });

  test('three pairs tell nothing of their scatter', () => {
    expect(codes(required(fitCalibration({ indicated: [2, 10, 20], reference: [2400, 12000, 24000] })))).toEqual([
      'calibration-points-few',
    ]);
    expect(codes(required(fitCalibration({ indicated: [2, 6, 10, 14, 18], reference: [2440, 7420, 12410, 17390, 22380] })))).toEqual([]);
  });

  test('scatter that class 1 does not allow', () => {
    const found = channel((i, F) => F + (i % 2 === 0 ? 400 : -400), { degree: 1 });
    expect(codes(found)).toEqual(['calibration-scatter']);
    expect(found.findings[0]!.values['allowed']).toBe(1);
  });
});
