import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { forceToPressure, pistonArea, pressureToForce } from '../../src/force/index.js';
import { thrown } from '../support/thrown.js';

const share = fc.double({ min: 0.5, max: 1, noNaN: true });
const size = fc.double({ min: 1, max: 200, noNaN: true });

test('force to pressure undoes pressure to force', () => {
  fc.assert(
    fc.property(size, size, share, fc.double({ min: 0.05, max: 0.95, noNaN: true }), size, (pressure, bore, efficiency, rod, tareForce) => {
      const chain = { bore, rod: rod * bore, efficiency, tareForce };
      expect(forceToPressure(pressureToForce(pressure, chain), chain) / pressure).toBeCloseTo(1, 10);
    }),
  );
});

test('number, array and record agree, and twice the pressure is twice the force', () => {
  const chain = { bore: 40, rod: 18, efficiency: 0.95 };
  const pressure = Float64Array.of(0, 3, 6);
  const forces = pressureToForce(pressure, chain);
  expect([...forces]).toEqual([...pressure].map((one) => pressureToForce(one, chain)));
  expect(pressureToForce({ pressure }, chain)).toEqual({ force: forces });
  expect(forces[2]).toBeCloseTo(2 * forces[1]!, 9);
  expect([...pressure]).toEqual([0, 3, 6]);
});

test('columns of the result are not those of the record', () => {
  const record = { pressure: [1, 2], travel: Float64Array.of(0, 1), strain: [0, NaN], time: undefined };
  const result = pressureToForce(record, { bore: 40 });
  result.travel![0] = 99;
  expect(record.travel[0]).toBe(0);
  expect(result.strain).toEqual(Float64Array.of(0, NaN));
  expect(result).not.toHaveProperty('time');
  expect(result).not.toHaveProperty('pressure');
});

test('a force column beside the pressure does not hide the computed one', () => {
  const both = { pressure: [1, 2], force: [7, 7] };
  expect(pressureToForce(both, { bore: 40 }).force[1]).toBeCloseTo(2 * pistonArea({ bore: 40 }), 9);
});

describe('tare over travel', () => {
  const tareForce = { travel: [0, 10, 30], force: [50, 70, 170] };

  test('interpolated between its places, met at them', () => {
    const travel = [0, 5, 10, 20, 30];
    const { force } = pressureToForce({ pressure: travel.map(() => 0), travel }, { bore: 40, tareForce });
    expect([...force]).toEqual([-50, -60, -70, -120, -170]);
  });

  test('nothing is invented beyond its ends, and a lone array has no travel', () => {
    const early = thrown(() => pressureToForce({ pressure: [1], travel: [-0.1] }, { bore: 40, tareForce }));
    expect([early.code, early.path]).toEqual(['out-of-range', 'travel[0]']);
    expect(thrown(() => pressureToForce([1, 2], { bore: 40, tareForce })).path).toBe('record.travel');
  });
});

describe('bad input', () => {
  test.each([
    ['wrong-type', 'pressure', () => pressureToForce(null as never, { bore: 40 })],
    ['missing', 'pressure', () => pressureToForce(undefined as never, { bore: 40 })],
    ['not-finite', 'pressure', () => pressureToForce(NaN, { bore: 40 })],
    ['empty', 'pressure', () => pressureToForce([], { bore: 40 })],
    ['missing', 'chain', () => pressureToForce(1, undefined as never)],
    ['missing', 'bore', () => pressureToForce(1, {} as never)],
    ['not-positive', 'rod', () => pressureToForce(1, { bore: 40, rod: 0 })],
    ['out-of-range', 'rod', () => pistonArea({ bore: 40, rod: 41 })],
    ['out-of-range', 'efficiency', () => pressureToForce(1, { bore: 40, efficiency: 0 })],
    ['out-of-range', 'efficiency', () => forceToPressure(1, { bore: 40, efficiency: 97 })],
    ['not-finite', 'tareForce', () => pressureToForce(1, { bore: 40, tareForce: NaN })],
    ['unequal-lengths', 'record.travel', () => pressureToForce({ pressure: [1, 2], travel: [1] }, { bore: 40 })],
    ['not-finite', 'record.travel[1]', () => pressureToForce({ pressure: [1, 2], travel: [1, NaN] }, { bore: 40 })],
    ['not-finite', 'record.extension[0]', () => pressureToForce({ pressure: [1, 2], extension: [NaN, 1] }, { bore: 40 })],
    [
      'too-few',
      'tareForce.travel',
      () => pressureToForce({ pressure: [1], travel: [1] }, { bore: 40, tareForce: { travel: [1], force: [1] } }),
    ],
  ])('%s %s', (code, path, call) => {
    const error = thrown(call);
    expect([error.code, error.path]).toEqual([code, path]);
  });
});
