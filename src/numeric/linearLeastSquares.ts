import { choleskyInverse } from './choleskyInverse.js';

/** @internal Least squares in any few columns. */
export interface LinearFit {
  readonly parameters: readonly number[];
  /** Inverse of the normal matrix, row by row: times the variance of y, the covariance of the parameters. */
  readonly inverse: readonly (readonly number[])[];
  /** y less its columns. */
  readonly residuals: Float64Array;
  readonly residualSumOfSquares: number;
}

/**
 * @internal Parameters of y = Σ p_k column_k by normal equations on columns of length 1, refined once by their residuals against the digits that
 * these lose; undefined where the columns depend on each other.
 */
export function linearLeastSquares(columns: readonly Float64Array[], y: Float64Array): LinearFit | undefined {
  const p = columns.length;
  const dot = (a: Float64Array, b: Float64Array): number => {
    let sum = 0;
    for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
    return sum;
  };
  const size = columns.map((one) => Math.sqrt(dot(one, one)));
  if (!size.every((one) => one > 0 && one < Infinity)) return undefined;
  const normal = new Float64Array(p * p);
  for (let j = 0; j < p; j += 1)
    for (let k = 0; k <= j; k += 1) {
      const one = dot(columns[j]!, columns[k]!) / (size[j]! * size[k]!);
      normal[p * j + k] = one;
      normal[p * k + j] = one;
    }
  const flat = choleskyInverse(normal, p);
  if (!flat) return undefined;
  const inverse = size.map((a, j) => size.map((b, k) => flat[p * j + k]! / (a * b)));
  const solve = (rest: Float64Array): number[] => {
    const gradient = columns.map((one) => dot(one, rest));
    return inverse.map((row) => row.reduce((sum, one, k) => sum + one * gradient[k]!, 0));
  };
  const residualsOf = (parameters: readonly number[]): Float64Array => {
    const rest = y.slice();
    columns.forEach((one, k) => {
      const factor = parameters[k]!;
      for (let i = 0; i < rest.length; i += 1) rest[i]! -= factor * one[i]!;
    });
    return rest;
  };
  const first = solve(y);
  const step = solve(residualsOf(first));
  const parameters = first.map((one, k) => one + step[k]!);
  const residuals = residualsOf(parameters);
  return { parameters, inverse, residuals, residualSumOfSquares: dot(residuals, residuals) };
}
