import { expect, test } from 'vitest';
import { convert, currentToPressure, forceResolution, forceToPressure, pistonArea, pressureToForce, round } from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('hydraulics', 'pressureToForce', 'pistonArea', 'forceToPressure', 'fullScaleError', 'forceResolution', 'currentToPressure');

// computed from Pascal's law, which is the second derivation beside each: p A by hand
test('the annulus of bore 40 and rod 20', () => {
  expect(pistonArea({ bore: 40, rod: 20 })).toBeCloseTo(Math.PI * (20 ** 2 - 10 ** 2), 9);
});

test('25 kN on bore 40: 198.944 bar, and back', () => {
  const pressure = forceToPressure(25_000, { bore: 40 });
  expectPrinted(convert(pressure, 'MPa', 'bar'), '198.944');
  expect(pressureToForce(pressure, { bore: 40 })).toBeCloseTo(25_000, 8);
});

test('12 bits over 25 kN: 0.12146 MPa on 8 mm', () => {
  const { step } = forceResolution({ fullScale: 25_000, bits: 12 });
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

test('efficiency 0.97, 8 MPa, bore 40, tare 60 N, and back', () => {
  const chain = { bore: 40, efficiency: 0.97, tareForce: 60 };
  expect(0.97 * 8 * Math.PI * 400 - 60).toBeCloseTo(pressureToForce(8, chain), 9);
  expect(forceToPressure(pressureToForce(8, chain), chain)).toBeCloseTo(8, 12);
});
