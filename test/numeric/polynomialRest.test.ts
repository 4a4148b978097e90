import { expect, test } from 'vitest';
import { choleskyInverse, polynomialFit, polynomialRest } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

test.each([1, 2, 3, 4])('the sum of squares about a polynomial of degree %d is that of the general library', (degree) => {
  const { normal } = seeded(degree);
  const x = Float64Array.from({ length: 90 }, (_, i) => 100 + 0.3 * i);
  const y = x.map((v) => Math.sin(v / 5) + 0.1 * normal());
  expect(polynomialRest(x, y, degree)! / polynomialFit(x, y, degree).residualSumOfSquares).toBeCloseTo(1, 10);
});

test('too few places of x: no sum', () => {
  const x = Float64Array.of(1, 1, 2, 2, 2);
  expect(polynomialRest(x, x, 3)).toBeUndefined();
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
