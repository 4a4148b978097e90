import { expect, test } from 'vitest';
import { cubicFit, polynomialFit, quarticRest } from '../../src/numeric/index.js';
import { choleskyInverse } from '../../src/numeric/choleskyInverse.js';
import { seeded } from '../support/random.js';

test.each([0, 0.001, 0.1, 1])('the sum of squares about a quartic is that of the general library, in noise of %d', (noise) => {
  const { normal } = seeded(1);
  const x = Float64Array.from({ length: 90 }, (_, i) => 100 + 0.3 * i);
  const y = x.map((v) => Math.sin(v / 5) + noise * normal());
  expect(quarticRest(x, y, cubicFit(x, y)!)! / polynomialFit(x, y, 4).residualSumOfSquares).toBeCloseTo(1, 10);
});

test('four places of x determine a cubic, but no quartic', () => {
  const x = Float64Array.of(1, 2, 3, 4, 4, 1);
  expect(quarticRest(x, x, cubicFit(x, x)!)).toBeUndefined();
});

test('the inverse of a Hilbert matrix of three rows, and of a singular one', () => {
  const hilbert = [1, 1 / 2, 1 / 3, 1 / 2, 1 / 3, 1 / 4, 1 / 3, 1 / 4, 1 / 5];
  // known in whole numbers
  const inverse = [9, -36, 30, -36, 192, -180, 30, -180, 180];
  choleskyInverse(hilbert, 3)!.forEach((one, k) => {
    expect(one).toBeCloseTo(inverse[k]!, 9);
  });
  expect(choleskyInverse([1, 1, 1, 1], 2)).toBeUndefined();
});
