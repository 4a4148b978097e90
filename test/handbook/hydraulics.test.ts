import { expect, test } from 'vitest';
import {
  convert,
  currentToPressure,
  forceResolution,
  forceToPressure,
  fullScaleError,
  pistonArea,
  pressureToForce,
  round,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';

// computed from Pascal's law, which is the second derivation beside each: p A by hand
test('bore 40 at 10 MPa: 12.5664 kN; rod 20: 942.478 mm² and 9.4248 kN', () => {
  expectPrinted(pressureToForce(10, { bore: 40 }) / 1000, '12.5664');
  expectPrinted(pistonArea({ bore: 40, rod: 20 }), '942.478');
  expectPrinted(pressureToForce(10, { bore: 40, rod: 20 }) / 1000, '9.4248');
  expect(pistonArea({ bore: 40, rod: 20 })).toBeCloseTo(Math.PI * (20 ** 2 - 10 ** 2), 9);
});

test('25 kN on bore 40: 19.8944 MPa = 198.944 bar, and back', () => {
  const pressure = forceToPressure(25_000, { bore: 40 });
  expectPrinted(pressure, '19.8944');
  expectPrinted(convert(pressure, 'MPa', 'bar'), '198.944');
  expect(pressureToForce(pressure, { bore: 40 })).toBeCloseTo(25_000, 8);
});

test('0.5 % of 250 bar on bore 40: 157.08 N, 1 % of the reading from 15.708 kN', () => {
  const { force, onePercentFrom } = fullScaleError({ fullScale: 25, accuracy: 0.005, bore: 40 });
  expectPrinted(force, '157.08');
  expectPrinted(onePercentFrom / 1000, '15.708');
});

test('12 bits over 25 kN: 6.1050 N, class 1 from 1.2210 kN, 0.12146 MPa on 8 mm', () => {
  const { step, leastForceClass1 } = forceResolution({ fullScale: 25_000, bits: 12 });
  expectPrinted(step, '6.1050');
  expectPrinted(leastForceClass1 / 1000, '1.2210');
  expectPrinted(step / round({ diameter: 8 }).area, '0.12146');
});

test('12 mA of a 250 bar transmitter: 125 bar; 0 mA is a broken wire', () => {
  const { pressure, faults } = currentToPressure([12], { fullScale: 25 });
  expect(convert(pressure[0]!, 'MPa', 'bar')).toBeCloseTo(125, 12);
  expect(faults).toEqual([]);
  expect(currentToPressure([12, 0, 0, 12, 22], { fullScale: 25 }).faults).toEqual([
    [1, 2],
    [4, 4],
  ]);
});

test('efficiency 0.97, 8 MPa, bore 40, tare 60 N: 9691.50 N', () => {
  const chain = { bore: 40, efficiency: 0.97, tareForce: 60 };
  expectPrinted(pressureToForce(8, chain), '9691.50');
  expect(0.97 * 8 * Math.PI * 400 - 60).toBeCloseTo(pressureToForce(8, chain), 9);
  expect(forceToPressure(pressureToForce(8, chain), chain)).toBeCloseTo(8, 12);
});
