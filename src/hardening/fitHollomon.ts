import { failure, requireOneOf, requireOptions, success, type CurveColumns, type Outcome } from '../base/index.js';
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
export type HollomonReason = 'too-few-points' | 'no-spread' | 'not-converged';

const MOST = 100;
const STILL = 1e-14;

/** Sums of a straight line through logarithms. */
function logLog(x: Float64Array, y: Float64Array): { slope: number; intercept: number; rSquared: number; error: number } | undefined {
  const n = x.length;
  let mx = 0;
  let my = 0;
  for (let i = 0; i < n; i += 1) {
    mx += x[i]! / n;
    my += Math.log(y[i]!) / n;
  }
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let i = 0; i < n; i += 1) {
    const u = x[i]! - mx;
    const v = Math.log(y[i]!) - my;
    xx += u * u;
    xy += u * v;
    yy += v * v;
  }
  if (!(xx > 0)) return undefined;
  const slope = xy / xx;
  const rest = Math.max(0, yy - slope * xy);
  return { slope, intercept: my - slope * mx, rSquared: yy > 0 ? 1 - rest / yy : 1, error: Math.sqrt(rest / (n - 2) / xx) };
}

/** For an exponent: the best K, the sum of squares, and the Gauss-Newton step of n with K carried along. */
function project(x: Float64Array, y: Float64Array, n: number) {
  let vv = 0;
  let vy = 0;
  let vl = 0;
  let ll = 0;
  let ly = 0;
  let yy = 0;
  for (let i = 0; i < x.length; i += 1) {
    const v = Math.exp(n * x[i]!);
    const l = v * x[i]!;
    vv += v * v;
    vy += v * y[i]!;
    vl += v * l;
    ll += l * l;
    ly += l * y[i]!;
    yy += y[i]! * y[i]!;
  }
  const K = vy / vv;
  // derivative by n is K l; less its part along v
  const jj = K * K * (ll - (vl * vl) / vv);
  const jr = K * (ly - (vl * vy) / vv);
  return { K, step: jr / jj, vv, vl, ll, rest: yy - K * vy };
}

/** Residuals summed one by one: the difference of large sums would lose them. */
function restOf(x: Float64Array, y: Float64Array, K: number, n: number): { rest: number; total: number } {
  const mean = y.reduce((sum, one) => sum + one, 0) / y.length;
  let rest = 0;
  let total = 0;
  for (let i = 0; i < x.length; i += 1) {
    rest += (y[i]! - K * Math.exp(n * x[i]!)) ** 2;
    total += (y[i]! - mean) ** 2;
  }
  return { rest, total };
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
 * @returns K [MPa], n [1], standard errors, sums, steps; or `too-few-points` (3 are needed), `no-spread`, `not-converged`.
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
  const x = strain.map(Math.log);
  const line = logLog(x, stress);
  if (!line) return failure('no-spread', 'all samples have the same strain');
  if (method === 'log-log') {
    const K = Math.exp(line.intercept);
    const meanSquare = x.reduce((sum, one) => sum + one * one, 0) / points;
    return success({
      strengthCoefficient: K,
      exponent: line.slope,
      standardErrors: { strengthCoefficient: K * line.error * Math.sqrt(meanSquare), exponent: line.error },
      residualSumOfSquares: restOf(x, stress, K, line.slope).rest,
      rSquared: line.rSquared,
      points,
      converged: true,
      iterations: 0,
    });
  }
  let n = line.slope;
  let at = project(x, stress, n);
  let iterations = 0;
  let converged = false;
  while (iterations < MOST && !converged) {
    iterations += 1;
    let step = at.step;
    let next = project(x, stress, n + step);
    for (let halvings = 0; halvings < 40 && !(next.rest <= at.rest * (1 + 1e-12)); halvings += 1) {
      step /= 2;
      next = project(x, stress, n + step);
    }
    converged = Math.abs(step) <= STILL * Math.max(1, Math.abs(n)) || (Math.abs(step) < 1e-10 && Math.abs(next.step) >= Math.abs(step) / 2);
    n += step;
    at = next;
  }
  if (!Number.isFinite(n) || !Number.isFinite(at.K))
    return failure('not-converged', 'the search for the exponent left the range of numbers');
  const { rest, total } = restOf(x, stress, at.K, n);
  const variance = rest / (points - 2);
  const determinant = at.K ** 2 * (at.vv * at.ll - at.vl ** 2);
  return success({
    strengthCoefficient: at.K,
    exponent: n,
    standardErrors: {
      strengthCoefficient: Math.sqrt((variance * at.K ** 2 * at.ll) / determinant),
      exponent: Math.sqrt((variance * at.vv) / determinant),
    },
    residualSumOfSquares: rest,
    rSquared: total > 0 ? 1 - rest / total : 1,
    points,
    converged,
    iterations,
  });
}
