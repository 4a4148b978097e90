import {
  failure,
  InputError,
  requireFinite,
  requireObject,
  requireOptions,
  success,
  type CurveColumns,
  type Outcome,
} from '../base/index.js';
import { leastSquares } from '../numeric/index.js';
import { flowRange, type FitRange } from './flowRange.js';

/** A law of one's own: its parameters with where to start, and its stress. */
export interface CustomLaw<Name extends string> {
  /** Start value of each parameter. */
  readonly parameters: Readonly<Record<Name, number>>;
  /** Stress [MPa] at a strain [mm/mm]. */
  readonly stress: (strain: number, parameters: Readonly<Record<Name, number>>) => number;
  /** Derivatives of the stress by each parameter; default by central differences. */
  readonly derivatives?: ((strain: number, parameters: Readonly<Record<Name, number>>) => Readonly<Record<Name, number>>) | undefined;
}

/** A law fitted to a flow curve. */
export interface LawFit<Name extends string> {
  /** Fitted parameters. */
  readonly parameters: Readonly<Record<Name, number>>;
  /** Their standard errors. */
  readonly standardErrors: Readonly<Record<Name, number>>;
  /** Their correlations, row and column in the order of the parameters. */
  readonly correlations: readonly (readonly number[])[];
  /** Sum of squared residuals [MPa²]. */
  readonly residualSumOfSquares: number;
  /** Coefficient of determination [1]. */
  readonly rSquared: number;
  /** Number of samples. */
  readonly points: number;
  /** True where the last steps no longer moved the parameters. */
  readonly converged: boolean;
  /** Steps taken. */
  readonly iterations: number;
}

/** Why there is no fit. */
export type LawReason = 'too-few-points' | 'no-start' | 'undetermined';

/** Step of a central difference, relative to the parameter: the cube root of the rounding. */
const STEP = 6e-6;

/**
 * Fits a law of one's own to a flow curve by least squares.
 *
 * $$ \sum \left( \sigma_i - \sigma(\varepsilon_i; p) \right)^2 \to \min $$
 *
 * @remarks
 * Levenberg-Marquardt with parameters scaled to their size; converged means that the parameters stand still to 1e-12. A start far from
 * the optimum can end elsewhere: try another where `converged` is false or the sum is large. Standard errors are those of the
 * linearised fit.
 *
 * @param flow - Strain [mm/mm] and stress [MPa], each above 0.
 * @param law - Start values, stress, and derivatives where they are known.
 * @param range - Range of strain.
 * @returns Parameters, standard errors, correlations, sums; or `too-few-points`, `no-start`, `undetermined`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `missing`, `wrong-type`, `unknown-option`.
 *
 * @example
 * ```ts
 * const strain = [0.01, 0.03, 0.06, 0.1, 0.15];
 * const stress = strain.map((e) => 400 - 250 * Math.exp(-10 * e));
 * const law = {
 *   parameters: { top: 350, rise: 200, rate: 5 },
 *   stress: (e: number, p: { top: number; rise: number; rate: number }) => p.top - p.rise * Math.exp(-p.rate * e),
 * };
 * required(fitLaw({ strain, stress }, law)).parameters.rate; // => 10.000
 * ```
 *
 * @see Levenberg-Marquardt method (textbooks of numerical analysis). Checked in `test/handbook/nist.test.ts` (Misra1a, BoxBOD).
 */
export function fitLaw<Name extends string>(
  flow: CurveColumns,
  law: CustomLaw<Name>,
  range: FitRange = {},
): Outcome<LawFit<Name>, LawReason> {
  const from = 'fitLaw';
  requireOptions(from, range, ['from', 'to'], 'range');
  const { strain, stress } = flowRange(from, flow, range);
  requireOptions(from, law, ['parameters', 'stress', 'derivatives'], 'law');
  const names = Object.keys(requireObject(from, 'law.parameters', law.parameters)) as Name[];
  const start = names.map((name) => requireFinite(from, `law.parameters.${name}`, law.parameters[name]));
  if (names.length === 0) throw new InputError(from, 'law.parameters', 'empty', 'must name a parameter', 0);
  if (typeof law.stress !== 'function') throw new InputError(from, 'law.stress', 'wrong-type', 'must be a function', law.stress);
  const points = strain.length;
  if (points <= names.length) return failure('too-few-points', `${points} samples for ${names.length} parameters; one more is needed`);
  const named = (values: readonly number[]) => Object.fromEntries(names.map((name, k) => [name, values[k]!])) as Record<Name, number>;
  const value = (i: number, p: readonly number[]): number => law.stress(strain[i]!, named(p));
  const { derivatives } = law;
  const jacobian = (i: number, p: readonly number[]): number[] => {
    if (derivatives) {
      const found = derivatives(strain[i]!, named(p));
      return names.map((name) => found[name]);
    }
    return p.map((one, k) => {
      const step = STEP * (Math.abs(one) || 1);
      const moved = (by: number): number =>
        value(
          i,
          p.map((other, j) => (j === k ? other + by : other)),
        );
      return (moved(step) - moved(-step)) / (2 * step);
    });
  };
  if (!strain.every((_, i) => Number.isFinite(value(i, start)))) return failure('no-start', 'the law is no number at its start values');
  const end = leastSquares({ y: stress, start, value, jacobian });
  const { covariance } = end;
  if (!covariance) return failure('undetermined', 'the samples do not determine all parameters');
  const errors = covariance.map((row, k) => Math.sqrt(row[k]!));
  const mean = stress.reduce((sum, one) => sum + one, 0) / points;
  const total = stress.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return success({
    parameters: named(end.parameters),
    standardErrors: named(errors),
    correlations: covariance.map((row, j) =>
      row.map((one, k) => (errors[j]! * errors[k]! > 0 ? one / (errors[j]! * errors[k]!) : j === k ? 1 : 0)),
    ),
    residualSumOfSquares: end.residualSumOfSquares,
    rSquared: total > 0 ? 1 - end.residualSumOfSquares / total : 1,
    points,
    converged: end.converged,
    iterations: end.iterations,
  });
}
