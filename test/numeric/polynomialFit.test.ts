import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { horner, polynomialFit } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

const x = [0, 5, 11, 14, 20, 26, 31, 40];

describe('a polynomial that the data follow exactly', () => {
  test.each([1, 2, 3])('degree %d comes back, also from far off zero', (degree) => {
    const truth = [3, -2, 0.5, 0.01].slice(0, degree + 1);
    const fit = polynomialFit(
      x,
      x.map((one) => horner(truth, one)),
      degree,
    );
    fit.coefficients.forEach((c, k) => {
      expect(c).toBeCloseTo(truth[k]!, 9);
    });
    expect(fit.degreesOfFreedom).toBe(x.length - degree - 1);
    expect(fit.rSquared).toBeCloseTo(1, 12);
    expect(fit.residualSumOfSquares).toBeLessThan(1e-18);
  });

  test('as many points as coefficients: no freedom, no covariance', () => {
    const fit = polynomialFit([1, 2, 4], [1, 4, 16], 2);
    expect(fit.coefficients[2]).toBeCloseTo(1, 12);
    expect(fit.degreesOfFreedom).toBe(0);
    expect(fit.covariance.flat().every((one) => one === 0)).toBe(true);
  });

  test('one place of x and a constant y are survived at degree 0', () => {
    const fit = polynomialFit([2, 2, 2], [5, 5, 5], 0);
    expect(fit.coefficients[0]).toBeCloseTo(5, 14);
    expect(fit.rSquared).toBe(1);
  });

  test('all y zero', () => {
    expect(polynomialFit([1, 2, 3], [0, 0, 0], 1).coefficients.map(Math.abs)).toEqual([0, 0]);
  });
});

describe('weights', () => {
  const { normal } = seeded(11);
  const y = x.map((one) => 12 + 3 * one + normal());
  const weights = x.map((_, i) => 1 + (i % 3));

  // a whole weight of k is k copies of the point; the second derivation of weighted least squares
  test('a weight of k is k times the point', () => {
    const weighted = polynomialFit(x, y, 2, weights);
    const repeat = (list: readonly number[]): number[] => list.flatMap((one, i) => Array<number>(weights[i]!).fill(one));
    const repeated = polynomialFit(repeat(x), repeat(y), 2);
    weighted.coefficients.forEach((c, k) => {
      expect(c).toBeCloseTo(repeated.coefficients[k]!, 9);
    });
    expect(weighted.residualSumOfSquares).toBeCloseTo(repeated.residualSumOfSquares, 9);
    expect(weighted.rSquared).toBeCloseTo(repeated.rSquared, 12);
  });

  test('the weighted line against its closed form, with its covariance', () => {
    const fit = polynomialFit(x, y, 1, weights);
    const sum = (of: (i: number) => number): number => x.reduce((all, _, i) => all + weights[i]! * of(i), 0);
    const [w, wx, wxx, wy, wxy] = [sum(() => 1), sum((i) => x[i]!), sum((i) => x[i]! ** 2), sum((i) => y[i]!), sum((i) => x[i]! * y[i]!)];
    const determinant = w * wxx - wx ** 2;
    const slope = (w * wxy - wx * wy) / determinant;
    const intercept = (wxx * wy - wx * wxy) / determinant;
    expect(fit.coefficients[1]).toBeCloseTo(slope, 11);
    expect(fit.coefficients[0]).toBeCloseTo(intercept, 10);
    const variance = sum((i) => (y[i]! - intercept - slope * x[i]!) ** 2) / (x.length - 2);
    expect(fit.covariance[0]![0]).toBeCloseTo((variance * wxx) / determinant, 10);
    expect(fit.covariance[1]![1]).toBeCloseTo((variance * w) / determinant, 12);
    expect(fit.covariance[0]![1]).toBeCloseTo((-variance * wx) / determinant, 11);
    expect(fit.covariance[1]![0]).toBeCloseTo(fit.covariance[0]![1]!, 14);
  });
});

test('scale and offset of x and y do not change what is fitted', () => {
  const size = fc.double({ min: -6, max: 6, noNaN: true });
  const y = x.map((one, i) => 5 + 2 * one - 0.03 * one ** 2 + 0.1 * (i % 2));
  const plain = polynomialFit(x, y, 2);
  fc.assert(
    fc.property(size, size, fc.double({ min: -50, max: 50, noNaN: true }), (p, q, shift) => {
      const a = 10 ** p;
      const b = 10 ** q;
      const fit = polynomialFit(
        x.map((one) => a * (one + shift)),
        y.map((one) => b * one),
        2,
      );
      fit.residuals.forEach((one, i) => {
        expect(one / b).toBeCloseTo(plain.residuals[i]!, 9);
      });
      fit.scaled.forEach((one, k) => {
        expect(one / b).toBeCloseTo(plain.scaled[k]!, 9);
      });
    }),
  );
});

test('the input stays as it was, and typed arrays do as well', () => {
  const u = Float64Array.from(x);
  const v = u.map((one) => one ** 2);
  const before = [...u, ...v];
  expect(polynomialFit(u, v, 2).coefficients[2]).toBeCloseTo(1, 12);
  expect([...u, ...v]).toEqual(before);
});
