import {
  failure,
  InputError,
  requireOneOf,
  requireOptions,
  success,
  type CurveColumns,
  type Outcome,
  type StressStrainCurve,
} from '../../base/index.js';
import { lineFit } from '../../numeric/index.js';
import { aicc } from './aicc.js';
import { fitShape, shapeKernel, TRADE_OFF, uniformStrainOf, type FitOptions, type FitReason, type FitSummary } from './fitShape.js';
import { flowRange } from './flowRange.js';
import { NO_EXPONENT, type HollomonParameters } from '../laws/hollomon.js';
import { lawPoints, projected, type LawPoints, type LawShape } from './lawShape.js';

type Name = keyof HollomonParameters;

/** Options of {@link fitHollomon}. */
export interface HollomonOptions extends FitOptions<Name> {
  /** Least squares in stress, or the straight line through the logarithms, which takes no weights, bounds or held parameters; default `least-squares`. */
  readonly method?: 'least-squares' | 'log-log' | undefined;
}

/** Hollomon's law fitted to a flow curve. */
export interface HollomonFit extends HollomonParameters, FitSummary<Name> {}

/** Why there is no fit. */
export type HollomonReason = FitReason;

/** The line through the logarithms. */
function logLine({ logarithm, stress }: LawPoints) {
  const y = new Float64Array(stress.length);
  for (let i = 0; i < y.length; i += 1) y[i] = Math.log(stress[i]!);
  return { x: logarithm, line: lineFit(logarithm, y, 0, y.length - 1) };
}

/** @internal */
export const hollomonShape: LawShape<Name> = {
  names: ['strengthCoefficient', 'exponent'],
  lowest: [0, -100],
  evaluate: ({ logarithm: logarithms, first, end }, parameters, { stress, rows }) => {
    const K = parameters[0]!;
    const n = parameters[1]!;
    const [d0, d1] = rows;
    for (let i = first, k = 0; i < end; i += 1, k += 1) {
      const logarithm = logarithms[i]!;
      const power = Math.exp(n * logarithm);
      d0[k] = power;
      d1[k] = K * power * logarithm;
      stress[k] = K * power;
    }
  },
  // the one exponent of the logarithms is near enough: beside it there is no other valley
  starts: (points, held) => {
    const n = held?.exponent ?? logLine(points).line?.slope ?? NaN;
    return [[held?.strengthCoefficient ?? projected(points, (_, k) => Math.exp(n * points.logarithm[k]!)), n]];
  },
  flat: ([K, n]) => !(K! > 0) || !(n! > NO_EXPONENT),
};

/** @internal {@link fitHollomon} by least squares on a checked flow curve, nothing held. */
export const hollomonKernel = ({ strain, stress }: StressStrainCurve): Outcome<HollomonFit, HollomonReason> =>
  shapeKernel(hollomonShape, { strain, stress, weights: undefined }, { lowest: hollomonShape.lowest, highest: [Infinity, Infinity] });

/** The straight line through the logarithms, as the standards draw it. */
function byLogarithms(from: string, flow: CurveColumns, options: HollomonOptions): Outcome<HollomonFit, HollomonReason> {
  for (const name of ['weights', 'fixed', 'bounds'] as const)
    if (options[name] !== undefined)
      throw new InputError(from, `options.${name}`, 'unknown-option', 'goes with the method least-squares only', name);
  const cut = flowRange(from, flow, options);
  const points = lawPoints(cut.strain, cut.stress, undefined);
  const n = points.strain.length;
  const uniform = uniformStrainOf(from, options);
  if (n < 3) return failure('too-few-points', `${n} samples lie in the range; 3 are needed`);
  if (points.strain[n - 1]! > uniform * (1 + 1e-9))
    return failure('beyond-maximum', `the range ends at ${points.strain[n - 1]!}, the maximum force is at ${uniform}`);
  const { x, line } = logLine(points);
  if (!line) return failure('not-increasing', 'all samples have the same strain');
  if (!(line.slope > NO_EXPONENT))
    return failure('no-hardening', `the stress does not rise with strain: the exponent would be ${line.slope}`);
  let middle = 0;
  for (let i = 0; i < n; i += 1) middle += x[i]! / n;
  let spread = 0;
  for (let i = 0; i < n; i += 1) spread += (x[i]! - middle) ** 2 / n;
  const K = Math.exp(line.intercept);
  let rest = 0;
  for (let i = 0; i < n; i += 1) rest += (points.stress[i]! - K * Math.exp(line.slope * x[i]!)) ** 2;
  // of ln K, which is the line at x = 0, far from the middle
  const reach = Math.sqrt(spread + middle * middle);
  const correlation = -middle / reach;
  return success({
    strengthCoefficient: K,
    exponent: line.slope,
    standardErrors: { strengthCoefficient: K * line.standardError * reach, exponent: line.standardError },
    correlations: [
      [1, correlation],
      [correlation, 1],
    ],
    tradeOffs: Math.abs(correlation) > TRADE_OFF ? [['strengthCoefficient', 'exponent'] as const] : [],
    residualSumOfSquares: rest,
    rSquared: line.rSquared,
    aicc: aicc(rest, n, 2, points.stress[n - 1]!),
    points: n,
    range: [points.strain[0]!, points.strain[n - 1]!],
    converged: true,
    iterations: 0,
  });
}

/**
 * Fits Hollomon's law to a flow curve.
 *
 * $$ \sigma = K \varepsilon_p^{\,n}, \qquad \sum w_i (\sigma_i - K \varepsilon_{p,i}^{\,n})^2 \to \min $$
 *
 * @remarks
 * Least squares in stress, from the straight line through the logarithms; no start is needed. `log-log` is that line itself, as the standards
 * draw it; its R² is that of the logarithms. Valid between the end of yielding and the maximum force; n and K hold for the range they were fitted
 * on. They trade off as a rule (see `tradeOffs`), since K is the stress at a strain of 1, far from the samples.
 *
 * @param flow - True plastic strain [mm/mm] and true stress [MPa], each above 0, as `flowCurve` makes them.
 * @param options - Range of true plastic strain `from` below `to` [mm/mm]; method; weights above 0 [1]; parameters held or bounded, in their units; uniform strain [mm/mm].
 * @returns K [MPa], n [1], standard errors, correlations, sums; or `too-few-points` (3 are needed), `not-increasing`, `beyond-maximum`,
 * `no-hardening`, `undetermined`.
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
  requireOptions(from, options, ['from', 'to', 'weights', 'fixed', 'bounds', 'uniformStrain', 'method']);
  const { method = 'least-squares', ...rest } = options;
  requireOneOf(from, 'options.method', method, ['least-squares', 'log-log']);
  return method === 'log-log' ? byLogarithms(from, flow, options) : fitShape(from, hollomonShape, flow, rest);
}
