import fc from 'fast-check';
import { expect, test } from 'vitest';
import { currentToPressure, fullScaleError, forceResolution, voltageToPressure } from '../../src/force/index.js';
import { thrown } from '../support/thrown.js';

test('the limits themselves are sound, what lies beyond them is not', () => {
  expect(currentToPressure([3.6, 21], { fullScale: 16 }).faults).toEqual([]);
  expect(currentToPressure([3.599, 4, 21.001, 21.5], { fullScale: 16 }).faults).toEqual([
    [0, 0],
    [2, 3],
  ]);
  // 5 % of the range of 4 V
  const output = { fullScale: 25, low: 0.5, high: 4.5 };
  expect(voltageToPressure([0.31, 4.69], output).faults).toEqual([]);
  expect(voltageToPressure([0.29, 1, 4.71], output).faults).toEqual([
    [0, 0],
    [2, 2],
  ]);
});

test('a record that begins with a broken wire has no pressure, and says where', () => {
  const { pressure, faults } = currentToPressure([0, 12], { fullScale: 25 });
  expect(pressure).toHaveLength(0);
  expect(faults).toEqual([[0, 0]]);
});

test('current, voltage and pressure are one straight line', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 1, max: 100, noNaN: true }), (share, fullScale) => {
      const expected = share * fullScale;
      expect(currentToPressure([4 + 16 * share], { fullScale }).pressure[0]).toBeCloseTo(expected, 9);
      expect(voltageToPressure([10 * share], { fullScale }).pressure[0]).toBeCloseTo(expected, 9);
      expect(voltageToPressure([0.5 + 4 * share], { fullScale, low: 0.5, high: 4.5 }).pressure[0]).toBeCloseTo(expected, 9);
    }),
  );
});

test('the signal stays as it was', () => {
  const current = Float64Array.of(4, 12, 20);
  currentToPressure(current, { fullScale: 25 });
  expect([...current]).toEqual([4, 12, 20]);
});

test.each([
  ['empty', 'current', () => currentToPressure([], { fullScale: 25 })],
  ['not-finite', 'current[1]', () => currentToPressure([4, NaN], { fullScale: 25 })],
  ['not-positive', 'fullScale', () => currentToPressure([4], { fullScale: 0 })],
  ['unknown-option', 'loop.full', () => currentToPressure([4], { fullScale: 25, full: 1 } as never)],
  ['missing', 'loop', () => currentToPressure([4], undefined as never)],
  ['not-finite', 'low', () => voltageToPressure([4], { fullScale: 25, low: NaN })],
  ['out-of-range', 'high', () => voltageToPressure([4], { fullScale: 25, low: 5, high: 4 })],
  ['not-positive', 'accuracy', () => fullScaleError({ fullScale: 25, accuracy: 0, bore: 40 })],
  ['out-of-range', 'bits', () => forceResolution({ fullScale: 25, bits: 33 })],
  ['not-positive', 'fullScale', () => forceResolution({ fullScale: -25, bits: 12 })],
])('%s %s', (code, path, call) => {
  const error = thrown(call);
  expect([error.code, error.path]).toEqual([code, path]);
});

test('an annulus makes less force of the same error', () => {
  const full = fullScaleError({ fullScale: 25, accuracy: 0.005, bore: 40 });
  const annulus = fullScaleError({ fullScale: 25, accuracy: 0.005, bore: 40, rod: 20 });
  expect(annulus.force / full.force).toBeCloseTo(0.75, 12);
});
