import { choleskyInverse } from './choleskyInverse.js';

/** @internal A least-squares cubic in u = (x − centre) / scale, which lies within ±1. */
export interface CubicFit {
  readonly centre: number;
  readonly scale: number;
  /** Coefficients of ascending powers of u. */
  readonly coefficients: readonly number[];
  /** Inverse of the normal matrix, row by row: times the variance of y it is the covariance of the coefficients. */
  readonly inverse: readonly number[];
  readonly residualStandardDeviation: number;
}

const ORDER = 4;

/** A row of the inverse times the right side. Takes the sums as arguments: sums in a closure would allocate a number for every sample. */
function product(inverse: readonly number[], row: number, right: readonly number[]): number {
  const at = ORDER * row;
  return inverse[at]! * right[0]! + inverse[at + 1]! * right[1]! + inverse[at + 2]! * right[2]! + inverse[at + 3]! * right[3]!;
}

/**
 * @internal Least-squares cubic through at least five points, or undefined where x takes fewer than four values.
 *
 * Normal equations serve here: u is within ±1 and y is taken about its mean, so they cost few digits. `polynomialFit` does the same
 * for any degree, weights and statistics at many times the cost.
 */
export function cubicFit(x: Float64Array, y: Float64Array): CubicFit | undefined {
  const n = x.length;
  let low = Infinity;
  let high = -Infinity;
  let sum = 0;
  for (let i = 0; i < n; i += 1) {
    if (x[i]! < low) low = x[i]!;
    if (x[i]! > high) high = x[i]!;
    sum += y[i]!;
  }
  const centre = (low + high) / 2;
  const scale = (high - low) / 2;
  const mean = sum / n;
  if (n <= ORDER || !(scale > 0)) return undefined;
  const per = 1 / scale;
  let [s1, s2, s3, s4, s5, s6, t0, t1, t2, t3] = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < n; i += 1) {
    const u = (x[i]! - centre) * per;
    const v = y[i]! - mean;
    const uu = u * u;
    const uuu = uu * u;
    s1 += u;
    s2 += uu;
    s3 += uuu;
    s4 += uu * uu;
    s5 += uu * uuu;
    s6 += uuu * uuu;
    t0 += v;
    t1 += u * v;
    t2 += uu * v;
    t3 += uuu * v;
  }
  const inverse = choleskyInverse([n, s1, s2, s3, s1, s2, s3, s4, s2, s3, s4, s5, s3, s4, s5, s6], ORDER);
  if (!inverse) return undefined;
  const right = [t0, t1, t2, t3];
  const [a, b, c, d] = [product(inverse, 0, right), product(inverse, 1, right), product(inverse, 2, right), product(inverse, 3, right)];
  let rest = 0;
  for (let i = 0; i < n; i += 1) {
    const u = (x[i]! - centre) * per;
    const e = y[i]! - mean - a - u * (b + u * (c + u * d));
    rest += e * e;
  }
  return { centre, scale, coefficients: [mean + a, b, c, d], inverse, residualStandardDeviation: Math.sqrt(rest / (n - ORDER)) };
}
