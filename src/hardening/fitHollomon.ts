import { failure, requireOneOf, requireOptions, success, type CurveColumns, type Outcome } from '../base/index.js';
import { lineFit } from '../numeric/index.js';
import { flowRange, type FitRange } from './flowRange.js';

/** Options of {@link fitHollomon}. */
export interface HollomonOptions extends FitRange {
  /** Least squares in stress, or the straight line through the logarithms; default `least-squares`. */
  readonly method?: 'least-squares' | 'log-log' | undefined;
}

/** Hollomon's law fitted to a flow curve. */
export interface HollomonFit {
  /** Strength coefficient K [MPa]. */
  readonly strengthCoefficient: number;
  /** Exponent n [1]. */
  readonly exponent: number;
  /** Standard errors of both. */
  readonly standardErrors: {
    /** Of K [MPa]. */
    readonly strengthCoefficient: number;
    /** Of n [1]. */
    readonly exponent: number;
  };
  /** Correlation of the estimates of K and n; 0 where nothing scatters. */
  readonly correlation: number;
  /** Sum of squared residuals in stress [MPa²]. */
  readonly residualSumOfSquares: number;
  /** Coefficient of determination of what was fitted: stress, or its logarithm [1]. */
  readonly rSquared: number;
  /** Number of samples. */
  readonly points: number;
  /** True where the last step no longer moved n. */
  readonly converged: boolean;
  /** Steps taken. */
  readonly iterations: number;
}

/** Why there is no fit. */
export type HollomonReason = 'too-few-points' | 'no-spread' | 'no-hardening' | 'not-converged';

const MOST = 100;
const STILL = 1e-15;
const ROUNDING = 1e-13;
/** A constant stress has this exponent by rounding. */
const NO_EXPONENT = 1e-12;

/** For an exponent and logarithms about their mean: the best K, the sum of squares, and the Gauss-Newton step of n with K carried along. */
function project(x: Float64Array, y: Float64Array, n: number) {
  let vv = 0;
  let vy = 0;
  let vl = 0;
  let ll = 0;
  let ly = 0;
  for (let i = 0; i < x.length; i += 1) {
    const v = Math.exp(n * x[i]!);
    const l = v * x[i]!;
    vv += v * v;
    vy += v * y[i]!;
    vl += v * l;
    ll += l * l;
    ly += l * y[i]!;
  }
  // derivative by n is K l; less its part along v
  const K = vy / vv;
  const spread = ll - (vl * vl) / vv;
  return { n, K, step: (ly - (vl * vy) / vv) / (K * spread), vv, vl, ll, fit: K * vy };
}

/** Residuals summed one by one: the difference of large sums would lose them. */
function restOf(x: Float64Array, y: Float64Array, K: number, n: number): { rest: number; total: number } {
  let sum = 0;
  for (let i = 0; i < y.length; i += 1) sum += y[i]!;
  const mean = sum / y.length;
  let rest = 0;
  let total = 0;
  for (let i = 0; i < x.length; i += 1) {
    rest += (y[i]! - K * Math.exp(n * x[i]!)) ** 2;
    total += (y[i]! - mean) ** 2;
  }
  return { rest, total };
}

/** The exponent of least squares, from a start. */
function search(x: Float64Array, y: Float64Array, start: number) {
  let at = project(x, y, start);
  let iterations = 0;
  let converged = false;
  while (iterations < MOST && !converged) {
    iterations += 1;
    let next = project(x, y, at.n + at.step);
    // halved while it makes things worse by more than the sums can tell
    for (let halvings = 1; halvings < 40 && !(next.fit >= at.fit * (1 - ROUNDING)); halvings += 1)
      next = project(x, y, at.n + at.step / 2 ** halvings);
    const step = Math.abs(next.n - at.n);
    // near the optimum steps shrink each time, until rounding makes them all
    converged = step <= STILL * Math.max(1, Math.abs(next.n)) || (step < 1e-10 && Math.abs(next.step) >= step / 2);
    at = next;
  }
  return { ...at, iterations, converged };
}

/**
 * Fits Hollomon's law to a flow curve.
 *
 * $$ \sigma = K \varepsilon_p^{\,n}, \qquad \sum (\sigma_i - K \varepsilon_{p,i}^{\,n})^2 \to \min $$
 *
 * @remarks
 * Least squares in stress: for each exponent the best K is known in closed form, so only n is searched (variable projection), from
 * the straight line through the logarithms; no start is needed. `log-log` is that line itself, as the standards draw it. Valid between
 * the end of yielding and the maximum force; n and K hold for the range they were fitted on.
 *
 * @param flow - True plastic strain [mm/mm] and true stress [MPa], each above 0, as `flowCurve` makes them.
 * @param options - Range of strain and method.
 * @returns K [MPa], n [1], standard errors, sums, steps; or `too-few-points` (3 are needed), `no-spread`, `no-hardening`,
 * `not-converged`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = [0.02, 0.05, 0.1, 0.15];
 * const stress = strain.map((e) => 700 * e ** 0.2);
 * required(fitHollomon({ strain, stress })).exponent; // => 0.2
 * ```
 *
 * @see Hollomon, Trans. AIME 162 (1945) 268. Checked in `test/handbook/nist.test.ts` (DanWood) and `test/handbook/hardening.test.ts`.
 */
export function fitHollomon(flow: CurveColumns, options: HollomonOptions = {}): Outcome<HollomonFit, HollomonReason> {
  const from = 'fitHollomon';
  requireOptions(from, options, ['from', 'to', 'method']);
  const method = requireOneOf(from, 'options.method', options.method ?? 'least-squares', ['least-squares', 'log-log']);
  const { strain, stress } = flowRange(from, flow, options);
  const points = strain.length;
  if (points < 3) return failure('too-few-points', `${points} samples lie in the range; 3 are needed`);
  const logarithms = new Float64Array(points);
  const ofStress = new Float64Array(points);
  for (let i = 0; i < points; i += 1) {
    logarithms[i] = Math.log(strain[i]!);
    ofStress[i] = Math.log(stress[i]!);
  }
  const line = lineFit(logarithms, ofStress, 0, points - 1);
  if (!line) return failure('no-spread', 'all samples have the same strain');
  const middle = logarithms.reduce((sum, one) => sum + one, 0) / points;
  const x = logarithms.map((one) => one - middle);
  const noHardening = (n: number) => failure('no-hardening', `the stress does not rise with strain: the exponent would be ${n}`);
  if (method === 'log-log') {
    if (!(line.slope > NO_EXPONENT)) return noHardening(line.slope);
    const K = Math.exp(line.intercept);
    const spread = x.reduce((sum, one) => sum + one * one, 0);
    // of ln K, which is the line at x = 0, far from the middle
    const error = line.standardError * Math.sqrt(spread / points + middle * middle);
    return success({
      strengthCoefficient: K,
      exponent: line.slope,
      standardErrors: { strengthCoefficient: K * error, exponent: line.standardError },
      correlation: -middle / Math.sqrt(spread / points + middle * middle),
      residualSumOfSquares: restOf(logarithms, stress, K, line.slope).rest,
      rSquared: line.rSquared,
      points,
      converged: true,
      iterations: 0,
    });
  }
  const { n, K, vv, vl, ll, iterations, converged } = search(x, stress, line.slope);
  if (!Number.isFinite(n) || !Number.isFinite(K)) return failure('not-converged', 'the search for the exponent left the range of numbers');
  if (!(n > NO_EXPONENT)) return noHardening(n);
  const { rest, total } = restOf(x, stress, K, n);
  // covariance of ln K at the middle and n, then of ln K at strain 1
  const unit = rest / (points - 2) / (K * K * (vv * ll - vl * vl));
  const ofExponent = unit * vv;
  const between = -unit * vl - middle * ofExponent;
  const ofLogarithm = unit * ll + middle * (2 * unit * vl + middle * ofExponent);
  const strengthCoefficient = K * Math.exp(-n * middle);
  return success({
    strengthCoefficient,
    exponent: n,
    standardErrors: { strengthCoefficient: strengthCoefficient * Math.sqrt(ofLogarithm), exponent: Math.sqrt(ofExponent) },
    correlation: ofExponent > 0 ? between / Math.sqrt(ofLogarithm * ofExponent) : 0,
    residualSumOfSquares: rest,
    rSquared: total > 0 ? 1 - rest / total : 1,
    points,
    converged,
    iterations,
  });
}
