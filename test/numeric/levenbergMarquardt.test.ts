import { describe, expect, test } from 'vitest';
import { leastSquares, type FitTask } from '../../src/numeric/index.js';
import { seeded } from '../support/random.js';

const x = Float64Array.from({ length: 50 }, (_, i) => (i + 1) / 50);

/** y = a exp(b x), a law on which a start far off is easily lost. */
function exponential(y: Float64Array, start: readonly number[], bounds?: FitTask['bounds']): FitTask {
  return {
    y,
    start,
    bounds,
    model:
      ([a = 0, b = 0]) =>
      (i) =>
        a * Math.exp(b * x[i]!),
    jacobian:
      ([a = 0, b = 0]) =>
      (i) => {
        const grown = Math.exp(b * x[i]!);
        return [grown, a * x[i]! * grown];
      },
  };
}
const truth = x.map((one) => 2 * Math.exp(3 * one));

describe('a start far off', () => {
  // from each of these the library alone hands its start back, or stops half-way
  test.each([
    [1, 30],
    [1, -5],
    [100, 40],
    [0.001, 0.1],
    [1000, -20],
  ])('a %d, b %d: the optimum is reached, not merely a standstill', (a, b) => {
    const end = leastSquares(exponential(truth, [a, b]));
    expect(end.converged).toBe(true);
    expect(end.parameters[0]).toBeCloseTo(2, 10);
    expect(end.parameters[1]).toBeCloseTo(3, 10);
  });

  test('whoever says converged has a gradient of nothing', () => {
    const { normal, uniform } = seeded(3);
    for (let k = 0; k < 60; k += 1) {
      const noisy = truth.map((one) => one * (1 + 0.02 * normal()));
      const task = exponential(noisy, [10 ** (4 * uniform() - 2), 40 * uniform() - 20]);
      const end = leastSquares(task);
      if (!end.converged) continue;
      const value = task.model(end.parameters);
      const rowOf = task.jacobian(end.parameters);
      const cosine = [0, 1].map((j) => {
        let [dot, column] = [0, 0];
        for (let i = 0; i < x.length; i += 1) {
          dot += rowOf(i)[j]! * (noisy[i]! - value(i));
          column += rowOf(i)[j]! ** 2;
        }
        return Math.abs(dot) / Math.sqrt(column * end.residualSumOfSquares);
      });
      expect(Math.max(...cosine)).toBeLessThan(1e-6);
    }
  });

  test('a model without a number anywhere does not converge', () => {
    const end = leastSquares({ y: truth, start: [1], model: () => () => NaN, jacobian: () => () => [1] });
    expect(end.converged).toBe(false);
    expect(end.parameters).toEqual([1]);
    expect(end.residualSumOfSquares).toBe(Infinity);
  });
});

describe('size does not matter', () => {
  test.each([1e-9, 1, 1e9])('y times %d', (factor) => {
    const end = leastSquares(
      exponential(
        truth.map((one) => one * factor),
        [factor, 1],
      ),
    );
    expect(end.converged).toBe(true);
    expect(end.parameters[0]! / factor).toBeCloseTo(2, 9);
    expect(end.parameters[1]).toBeCloseTo(3, 9);
  });
});

describe('covariance', () => {
  const y = Float64Array.from([1.1, 1.9, 3.2, 3.8, 5.1, 6.2]);
  const line = (start: readonly number[], bounds?: FitTask['bounds']): FitTask => ({
    y,
    start,
    bounds,
    model:
      ([a = 0, b = 0]) =>
      (i) =>
        a + b * i,
    jacobian: () => (i) => [1, i],
  });

  test('of a straight line is that of the textbook', () => {
    const end = leastSquares(line([1, 1]));
    const mean = y.reduce((sum, one) => sum + one, 0) / 6;
    const slope = y.reduce((sum, one, i) => sum + (i - 2.5) * (one - mean), 0) / 17.5;
    const rest = y.reduce((sum, one, i) => sum + (one - mean - slope * (i - 2.5)) ** 2, 0);
    expect(end.parameters[1]).toBeCloseTo(slope, 12);
    expect(end.residualSumOfSquares).toBeCloseTo(rest, 12);
    expect(end.covariance![1]![1]).toBeCloseTo(rest / 4 / 17.5, 12);
    expect(end.covariance![0]![1]).toBeCloseTo((-2.5 * rest) / 4 / 17.5, 12);
    expect(end.covariance![0]![0]).toBeCloseTo((rest / 4) * (1 / 6 + 2.5 ** 2 / 17.5), 12);
  });

  test('is absent where only a combination of parameters acts, one has no effect, or no sample is to spare', () => {
    const product = {
      y,
      start: [1, 1],
      model:
        ([a = 0, b = 0]: readonly number[]) =>
        (i: number) =>
          a * b * i,
    };
    expect(
      leastSquares({
        ...product,
        jacobian:
          ([a = 0, b = 0]) =>
          (i) => [b * i, a * i],
      }).covariance,
    ).toBeUndefined();
    expect(
      leastSquares({
        ...product,
        model:
          ([a = 0]) =>
          (i) =>
            a * i,
        jacobian: () => (i) => [i, 0],
      }).covariance,
    ).toBeUndefined();
    expect(leastSquares({ ...line([1, 1]), y: y.slice(0, 2) }).covariance).toBeUndefined();
  });

  test('a parameter pushed against its bound is held, the other is the optimum that goes with it', () => {
    const end = leastSquares(
      line(
        [0, 0.5],
        [
          [-Infinity, Infinity],
          [0, 0.8],
        ],
      ),
    );
    expect(end.converged).toBe(true);
    expect(end.parameters[1]).toBe(0.8);
    expect(end.parameters[0]).toBeCloseTo(y.reduce((sum, one, i) => sum + one - 0.8 * i, 0) / 6, 12);
    expect(end.covariance![1]).toEqual([0, 0]);
  });

  test('a start on the wrong bound moves off it', () => {
    const end = leastSquares(
      line(
        [0, 0],
        [
          [0, 10],
          [0, 10],
        ],
      ),
    );
    expect(end.converged).toBe(true);
    expect(end.parameters[1]).toBeCloseTo(leastSquares(line([1, 1])).parameters[1]!, 12);
  });

  test('all parameters held', () => {
    const end = leastSquares(
      line(
        [0, 0],
        [
          [-1, 0],
          [-1, 0],
        ],
      ),
    );
    expect(end.parameters).toEqual([0, 0]);
    expect(end.converged).toBe(true);
  });
});
