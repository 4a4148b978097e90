import { describe, expect, test } from 'vitest';
import {
  fitRambergOsgood,
  proofStrength,
  proportionalLimit,
  rambergOsgoodFromSecants,
  rambergOsgoodStrain,
  rambergOsgoodStress,
  required,
  totalExtensionStrength,
} from '../../src/index.js';
import { expectPrinted } from '../support/handbook.js';
import { checkVectors } from '../support/vectors.js';

checkVectors('ramberg-osgood', 'rambergOsgoodStrain', 'rambergOsgoodStress', 'rambergOsgoodFromProofStresses', 'rambergOsgoodFromSecants');

// Ramberg and Osgood, NACA TN 902 (1943): all numbers follow from the equation; a bisection of it is the second derivation
const parameters = { modulus: 70_000, proofStress: 300, exponent: 10 };
const stress = Float64Array.from({ length: 7600 }, (_, i) => i * 0.05);
const curve = { strain: stress.map((R) => rambergOsgoodStrain(parameters, R)), stress };

/** Stress at which a function of it reaches a value, by bisection. */
function bisect(f: (R: number) => number, wanted: number): number {
  let [low, high] = [0, 600];
  for (let k = 0; k < 200; k += 1) {
    const middle = (low + high) / 2;
    if (f(middle) < wanted) low = middle;
    else high = middle;
  }
  return low;
}
const plastic = (R: number): number => 0.002 * (R / 300) ** 10;

test('strain at 300 MPa, and back', () => {
  expect(rambergOsgoodStress(parameters, 0.00628571428571)).toBeCloseTo(300, 6);
  expect(rambergOsgoodStress(parameters, -0.00628571428571)).toBeCloseTo(-300, 6);
  expect(rambergOsgoodStress(parameters, 0)).toBe(0);
});

describe('proof strengths of the curve', () => {
  test.each([
    { offset: 0.00005, printed: '207.451' },
    { offset: 0.0001, printed: '222.340' },
    { offset: 0.0005, printed: '261.165' },
    { offset: 0.001, printed: '279.910' },
    { offset: 0.002, printed: '300.000' },
    { offset: 0.01, printed: '352.386' },
  ])('offset $offset: $printed MPa', ({ offset, printed }) => {
    expectPrinted(required(proofStrength(curve, { modulus: 70_000, offset })).stress, printed);
    expectPrinted(bisect(plastic, offset), printed);
  });
});

test('Rt0.5 279.936', () => {
  expectPrinted(required(totalExtensionStrength(curve)).stress, '279.936');
});

test('secants of 0.7 E and 0.85 E: 297.175, 269.274, exponent 10.000', () => {
  const secant = (share: number): number => bisect((R) => (plastic(R) + R / 70_000) * 70_000 * share - R + 1e3, 1e3);
  // the secant meets the curve where R / e = share · E
  const meets = (share: number): number => bisect((R) => (R === 0 ? 1 : -R / rambergOsgoodStrain(parameters, R)), -share * 70_000);
  expectPrinted(meets(0.7), '297.175');
  expectPrinted(meets(0.85), '269.274');
  expect(secant(0.7)).toBeCloseTo(meets(0.7), 3);
  const form = rambergOsgoodFromSecants({ modulus: 70_000, stress70: meets(0.7), stress85: meets(0.85) });
  expectPrinted(form.exponent, '10.000');
  // the form with secants is the same curve
  expect(250 / 70_000 + (3 / 7) * (form.stress70 / 70_000) * (250 / form.stress70) ** form.exponent).toBeCloseTo(
    rambergOsgoodStrain(parameters, 250),
    9,
  );
});

test('at 300 MPa the secant is 47 727 and the tangent 12 353 MPa', () => {
  expectPrinted(300 / rambergOsgoodStrain(parameters, 300), '47727');
  const step = 1e-3;
  expectPrinted((2 * step) / (rambergOsgoodStrain(parameters, 300 + step) - rambergOsgoodStrain(parameters, 300 - step)), '12353');
});

test('the proportional limit depends on the definition: 198.04 (tangent), 222.34 (Rp0.01), 234.07 (Johnson)', () => {
  const limit = (definition: 'tangent' | 'offset' | 'johnson') =>
    required(proportionalLimit(curve, { modulus: 70_000, definition })).stress;
  expectPrinted(limit('tangent'), '198.04');
  expectPrinted(limit('offset'), '222.34');
  expectPrinted(limit('johnson'), '234.07');
  // de/dR = 1/E + n ε_p / R in closed form
  const compliance = (R: number): number => 1 / 70_000 + (10 * plastic(R)) / R;
  expectPrinted(
    bisect((R) => (R === 0 ? 0 : compliance(R)), 1 / (0.9 * 70_000)),
    '198.04',
  );
  expectPrinted(
    bisect((R) => (R === 0 ? 0 : compliance(R)), 1.5 / 70_000),
    '234.07',
  );
});

test('the fit gives back what the curve was made of, with the modulus known and unknown', () => {
  for (const options of [{}, { modulus: 70_000 }]) {
    const fit = required(fitRambergOsgood(curve, options));
    expect(fit.modulus).toBeCloseTo(70_000, 2);
    expect(fit.proofStress).toBeCloseTo(300, 5);
    expect(fit.exponent).toBeCloseTo(10, 5);
    expect(fit.converged).toBe(true);
  }
});
