import { MultivariateLinearRegression } from 'ml-regression';

/** @internal A least-squares polynomial. */
export interface PolynomialFit {
  /** Coefficients of ascending powers of x. */
  readonly coefficients: readonly number[];
  /** Their covariance; zero where there are no degrees of freedom. */
  readonly covariance: readonly (readonly number[])[];
  /** Middle and half-width of x: u = (x − centre) / scale lies within ±1. */
  readonly centre: number;
  readonly scale: number;
  /** Coefficients and covariance in ascending powers of u, which evaluate without loss of digits. */
  readonly scaled: readonly number[];
  readonly scaledCovariance: readonly (readonly number[])[];
  /** y less the polynomial, point by point. */
  readonly residuals: Float64Array;
  /** Weighted sum of squared residuals. */
  readonly residualSumOfSquares: number;
  readonly degreesOfFreedom: number;
  readonly rSquared: number;
}

/** @internal Value of Σ c_k u^k. */
export function horner(coefficients: readonly number[], u: number): number {
  let value = 0;
  for (let k = coefficients.length - 1; k >= 0; k -= 1) value = value * u + coefficients[k]!;
  return value;
}

/** Row k: coefficients of u^k, u = (x − c)/h, in ascending powers of x. */
function powersOfX(degree: number, centre: number, scale: number): number[][] {
  const rows: number[][] = [[1, ...Array<number>(degree).fill(0)]];
  for (let k = 1; k <= degree; k += 1) {
    const before = rows[k - 1]!;
    rows.push(before.map((one, p) => ((p > 0 ? before[p - 1]! : 0) - centre * one) / scale));
  }
  return rows;
}

/**
 * @internal Least-squares polynomial of a degree, weights being of the squared residuals; through the origin where asked.
 *
 * The one place that speaks to ml-regression. Its normal equations lose digits on raw x, so x is centred and scaled to ±1 and y to ±1;
 * weights go in by whitened rows. At least degree + 1 points with different x (the caller checks).
 */
export function polynomialFit(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  degree: number,
  weights?: ArrayLike<number>,
  throughOrigin = false,
): PolynomialFit {
  const n = x.length;
  let low = Infinity;
  let high = -Infinity;
  let size = 0;
  for (let i = 0; i < n; i += 1) {
    low = Math.min(low, x[i]!);
    high = Math.max(high, x[i]!);
    size = Math.max(size, Math.abs(y[i]!));
  }
  const centre = throughOrigin ? 0 : (low + high) / 2;
  const scale = (throughOrigin ? Math.max(Math.abs(low), Math.abs(high)) : (high - low) / 2) || 1;
  const unit = size || 1;
  const rows: number[][] = [];
  const values: number[][] = [];
  const first = throughOrigin ? 1 : 0;
  for (let i = 0; i < n; i += 1) {
    const u = (x[i]! - centre) / scale;
    const root = Math.sqrt(weights?.[i] ?? 1);
    rows.push(Array.from({ length: degree + 1 - first }, (_, k) => root * u ** (k + first)));
    values.push([(root * y[i]!) / unit]);
  }
  const degreesOfFreedom = n - (degree + 1 - first);
  const statistics = degreesOfFreedom > 0;
  const model = new MultivariateLinearRegression(rows, values, { intercept: false, statistics });
  const pad = <T>(list: readonly T[], zero: T): T[] => (throughOrigin ? [zero, ...list] : [...list]);
  const scaled = pad(
    model.weights.map(([b]) => b! * unit),
    0,
  );
  const none = scaled.map(() => 0);
  const found = statistics ? model.stdErrorMatrix.to2DArray().map((row) => row.map((v) => v * unit * unit)) : undefined;
  const scaledCovariance = found
    ? pad(
        found.map((row) => pad(row, 0)),
        none,
      )
    : scaled.map(() => none);

  const residuals = new Float64Array(n);
  let rest = 0;
  let total = 0;
  let weight = 0;
  let sum = 0;
  for (let i = 0; i < n; i += 1) {
    const w = weights?.[i] ?? 1;
    weight += w;
    sum += w * y[i]!;
  }
  const mean = throughOrigin ? 0 : sum / weight;
  for (let i = 0; i < n; i += 1) {
    const w = weights?.[i] ?? 1;
    const e = y[i]! - horner(scaled, (x[i]! - centre) / scale);
    residuals[i] = e;
    rest += w * e * e;
    total += w * (y[i]! - mean) ** 2;
  }
  const powers = powersOfX(degree, centre, scale);
  const dot = (p: number, q: number): number =>
    powers.reduce(
      (outer, one, j) => outer + powers.reduce((inner, other, k) => inner + one[p]! * scaledCovariance[j]![k]! * other[q]!, 0),
      0,
    );
  return {
    coefficients: none.map((_, p) => powers.reduce((value, one, k) => value + scaled[k]! * one[p]!, 0)),
    covariance: none.map((_, p) => none.map((__, q) => dot(p, q))),
    centre,
    scale,
    scaled,
    scaledCovariance,
    residuals,
    residualSumOfSquares: rest,
    degreesOfFreedom,
    rSquared: total > 0 ? 1 - rest / total : 1,
  };
}
