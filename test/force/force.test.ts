import { describe, expect, test } from 'vitest';
import {
  applyCalibration,
  calibrationUncertainty,
  currentToPressure,
  fitCalibration,
  forceResolution,
  forceToPressure,
  InputError,
  pistonArea,
  pressureToForce,
  required,
  voltageToPressure,
} from '../../src/index.js';
import { seeded } from '../support/random.js';

const failure = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return `${error.code} ${error.path}`;
    throw error;
  }
  return 'nothing thrown';
};

describe('pressureToForce', () => {
  const pressureRecord = { pressure: [0, 5, 10], travel: [0, 10, 20], time: [0, 1, 2], extension: [0, 0.1, NaN] };

  test('a record keeps its other columns, as copies', () => {
    const record = pressureToForce(pressureRecord, { bore: 40 });
    expect(record.force[2]).toBeCloseTo(12_566.37, 2);
    expect([...record.travel!]).toEqual([0, 10, 20]);
    expect(Number.isNaN(record.extension![2]!)).toBe(true);
    expect('pressure' in record).toBe(false);
  });

  test('a spring keeps back more as it travels', () => {
    const tareForce = { travel: [0, 20], force: [100, 300] };
    const record = pressureToForce(pressureRecord, { bore: 40, tareForce });
    expect(record.force[0]).toBeCloseTo(-100, 9);
    expect(record.force[1]).toBeCloseTo(5 * pistonArea({ bore: 40 }) - 200, 9);
    expect(record.force[2]).toBeCloseTo(10 * pistonArea({ bore: 40 }) - 300, 9);
  });

  test.each([
    ['out-of-range travel[2]', () => pressureToForce(pressureRecord, { bore: 40, tareForce: { travel: [0, 15], force: [0, 1] } })],
    ['missing record.travel', () => pressureToForce({ pressure: [1, 2] }, { bore: 40, tareForce: { travel: [0, 15], force: [0, 1] } })],
    [
      'not-increasing tareForce.travel[1]',
      () => pressureToForce(pressureRecord, { bore: 40, tareForce: { travel: [0, 0], force: [0, 1] } }),
    ],
    ['wrong-type tareForce', () => pressureToForce(1, { bore: 40, tareForce: { travel: [0, 15], force: [0, 1] } })],
    ['out-of-range rod', () => pressureToForce(1, { bore: 20, rod: 20 })],
    ['out-of-range efficiency', () => pressureToForce(1, { bore: 20, efficiency: 1.2 })],
    ['not-finite pressure[1]', () => pressureToForce([1, NaN], { bore: 20 })],
    // @ts-expect-error: no option of that name
    ['unknown-option chain.diameter', () => pressureToForce(1, { bore: 20, diameter: 3 })],
    ['not-positive bore', () => pistonArea({ bore: 0 })],
    ['out-of-range efficiency', () => forceToPressure(1, { bore: 10, efficiency: 0 })],
    ['out-of-range bits', () => forceResolution({ fullScale: 1, bits: 2.5 })],
  ])('%s', (expected, call) => {
    expect(failure(call)).toBe(expected);
  });
});

describe('transmitters', () => {
  test('the pressure ends before the first fault', () => {
    const { pressure, faults } = currentToPressure([4, 8, 3.5, 3.4, 12], { fullScale: 16 });
    expect([...pressure]).toEqual([0, 4]);
    expect(faults).toEqual([[2, 3]]);
  });

  test('a little below zero is a small negative pressure, not a fault', () => {
    expect(currentToPressure([3.8], { fullScale: 16 }).pressure[0]).toBeCloseTo(-0.2, 12);
  });

  test('voltage with and without a live zero', () => {
    expect([...voltageToPressure([0, 5, 10], { fullScale: 40 }).pressure]).toEqual([0, 20, 40]);
    expect(voltageToPressure([0.5, 0, 4.5], { fullScale: 40, low: 0.5, high: 4.5 }).faults).toEqual([[1, 1]]);
    expect(failure(() => voltageToPressure([1], { fullScale: 1, low: 5, high: 5 }))).toBe('out-of-range high');
  });
});

describe('calibration', () => {
  const indicated = Float64Array.from({ length: 21 }, (_, i) => i);

  test('the degree is raised only as far as the data ask', () => {
    const random = seeded(3);
    const noise = indicated.map(() => random.normal());
    const of = (law: (x: number) => number) =>
      required(fitCalibration({ indicated, reference: indicated.map((x, i) => law(x) + noise[i]!) }));
    expect(of((x) => 1200 * x + 15).degree).toBe(1);
    expect(of((x) => 1200 * x + 3 * x * x).degree).toBe(2);
    expect(of((x) => 1200 * x + 0.5 * x ** 3).degree).toBe(3);
    expect(of((x) => 1200 * x).degreeBy).toBe('F-test');
  });

  test('relative weights follow the small forces', () => {
    const reference = indicated.map((x) => 100 + 1000 * x + (x === 20 ? 500 : 0));
    const equal = required(fitCalibration({ indicated, reference }, { degree: 1 }));
    const relative = required(fitCalibration({ indicated, reference }, { degree: 1, weights: 'relative' }));
    expect(Math.abs(relative.residuals[0]!)).toBeLessThan(Math.abs(equal.residuals[0]!));
    expect(failure(() => fitCalibration({ indicated, reference: indicated }, { weights: 'relative' }))).toBe(
      'out-of-range pairs.reference[0]',
    );
  });

  test('a curve that turns within its span is refused, one at its ends is not', () => {
    expect(fitCalibration({ indicated, reference: indicated.map((x) => (x - 10) ** 2) }, { degree: 2 })).toMatchObject({
      ok: false,
      reason: 'not-monotonic',
    });
    expect(fitCalibration({ indicated, reference: indicated.map((x) => (x + 1) ** 2) }, { degree: 2 }).ok).toBe(true);
    expect(fitCalibration({ indicated: [1, 1, 2], reference: [1, 1, 2] }, { degree: 2 })).toMatchObject({
      ok: false,
      reason: 'too-few-points',
    });
  });

  test('nothing is extrapolated unless it is allowed', () => {
    const calibration = required(fitCalibration({ indicated, reference: indicated.map((x) => 1000 * x) }));
    expect(applyCalibration(calibration, 20)).toBeCloseTo(20_000, 6);
    expect(failure(() => applyCalibration(calibration, 20.1))).toBe('out-of-range indicated');
    expect(failure(() => applyCalibration(calibration, [1, -1]))).toBe('out-of-range indicated[1]');
    expect(applyCalibration(calibration, 21, { beyond: 0.1 })).toBeCloseTo(21_000, 6);
    expect([...applyCalibration(calibration, [1, 2])].map(Math.round)).toEqual([1000, 2000]);
  });

  test('its uncertainty is that of the fitted line, also by simulation', () => {
    const random = seeded(11);
    const at = 15;
    const found: number[] = [];
    let stated = 0;
    for (let k = 0; k < 400; k += 1) {
      const calibration = required(
        fitCalibration({ indicated, reference: indicated.map((x) => 1000 * x + 10 * random.normal()) }, { degree: 1 }),
      );
      found.push(applyCalibration(calibration, at));
      stated += calibrationUncertainty(calibration, at) / 400;
    }
    const mean = found.reduce((a, b) => a + b, 0) / found.length;
    const scatter = Math.sqrt(found.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (found.length - 1));
    // 400 trials know a standard deviation to 3.5 %
    expect(Math.abs(stated / scatter - 1)).toBeLessThan(0.11);
  });

  test.each([
    ['out-of-range options.degree', () => fitCalibration({ indicated, reference: indicated }, { degree: 4 as 3 })],
    ['unequal-lengths pairs.reference', () => fitCalibration({ indicated, reference: [1, 2, 3] })],
    ['too-few pairs.indicated', () => fitCalibration({ indicated: [1, 2], reference: [1, 2] })],
    ['out-of-range options.weights', () => fitCalibration({ indicated, reference: indicated }, { weights: 'heavy' as 'equal' })],
    ['not-positive options.weights[0]', () => fitCalibration({ indicated, reference: indicated }, { weights: indicated })],
  ])('%s', (expected, call) => {
    expect(failure(call)).toBe(expected);
  });
});
