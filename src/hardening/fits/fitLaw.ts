import {
  failure,
  InputError,
  requireBetween,
  requireFinite,
  requireFunction,
  requireObject,
  requireOptions,
  success,
  type CurveColumns,
  type Outcome,
} from '../../base/index.js';
import { leastSquares, mean, squaresAbout } from '../../numeric/index.js';
import { flowRange, type FitRange } from './flowRange.js';

/** A law of one's own: its parameters with where to start, and its stress. */
export interface CustomLaw<Name extends string> {
  /** Start value of each parameter. */
  readonly parameters: Readonly<Record<Name, number>>;
  /** Least and greatest value of a parameter; default none. */
  readonly bounds?: Readonly<Partial<Record<Name, readonly [number, number]>>> | undefined;
  /** Stress [MPa] at a strain [mm/mm]. */
  readonly stress: (strain: number, parameters: Readonly<Record<Name, number>>) => number;
  /** Derivatives of the stress by each parameter; default by central differences. */
  readonly derivatives?: ((strain: number, parameters: Readonly<Record<Name, number>>) => Readonly<Record<Name, number>>) | undefined;
}

/** A law fitted to a flow curve. */
export interface LawFit<Name extends string> {
  /** Fitted parameters. */
  readonly parameters: Readonly<Record<Name, number>>;
  /** Their standard errors; 0 for a parameter that ended on its bound, where it was held. */
  readonly standardErrors: Readonly<Record<Name, number>>;
  /** Their correlations, row and column in the order of the parameters. */
  readonly correlations: readonly (readonly number[])[];
  /** Sum of squared residuals [MPa²]. */
  readonly residualSumOfSquares: number;
  /** Coefficient of determination [1]. */
  readonly rSquared: number;
  /** Number of samples. */
  readonly points: number;
  /** True where no small step lowers the sum: an optimum, though maybe not the only one. */
  readonly converged: boolean;
  /** Steps taken. */
  readonly iterations: number;
}

/** Why there is no fit. */
export type LawReason = 'too-few-points' | 'no-start' | 'undetermined';

/** Step of a central difference, relative to the parameter: the cube root of the rounding. */
const STEP = 6e-6;

type Model = (parameters: readonly number[]) => (i: number) => number;

/** Derivatives by each parameter in turn, moved a little up and down. */
function centralDifferences(model: Model, parameters: readonly number[]): (i: number) => number[] {
  const moved = (k: number, by: number) => model(parameters.map((one, j) => (j === k ? one + by : one)));
  const pairs = parameters.map((one, k) => {
    const step = STEP * (Math.abs(one) || 1);
    return { up: moved(k, step), down: moved(k, -step), width: 2 * step };
  });
  return (i) => pairs.map(({ up, down, width }) => (up(i) - down(i)) / width);
}

/** Bounds in the order of the names; the start must lie within. */
function boundsOf<Name extends string>(
  from: string,
  names: readonly Name[],
  start: readonly number[],
  bounds: CustomLaw<Name>['bounds'],
): readonly (readonly [number, number])[] | undefined {
  if (bounds === undefined) return undefined;
  requireOptions(from, bounds, names, 'law.bounds');
  return names.map((name, k) => {
    const path = `law.bounds.${name}`;
    const pair = bounds[name] ?? [-Infinity, Infinity];
    if (!Array.isArray(pair)) throw new InputError(from, path, 'wrong-type', 'must be two numbers', pair);
    const [low, high] = pair;
    if (!(low < high)) throw new InputError(from, path, 'out-of-range', 'must be two ascending numbers', `${low}, ${high}`);
    requireBetween(from, `law.parameters.${name}`, start[k], low, high);
    return [low, high];
  });
}

/**
 * Fits a law of one's own to a flow curve by least squares.
 *
 * $$ \sum \left( \sigma_i - \sigma(\varepsilon_i; p) \right)^2 \to \min $$
 *
 * @remarks
 * Levenberg-Marquardt with parameters scaled to their size, then Gauss-Newton steps until they no longer shrink; `converged` means that the
 * next one would lower the sum by less than 1e-12 of it. A start far from the optimum can end elsewhere: try another where `converged` is false or the sum is large.
 * Standard errors are those of the linearised fit.
 *
 * @param flow - Strain [mm/mm] and stress [MPa], each above 0.
 * @param law - Start values, stress, bounds, and derivatives where they are known.
 * @param range - Range of true plastic strain, `from` below `to` [mm/mm].
 * @returns Parameters, standard errors, correlations, sums; or `too-few-points`, `no-start`, `undetermined`.
 * @throws {@link InputError} `not-finite`, `not-positive`, `unequal-lengths`, `missing`, `empty`, `wrong-type`, `out-of-range`,
 * `unknown-option`.
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
 * @see Levenberg-Marquardt method (textbooks of numerical analysis). Checked in `test/handbook/nist.test.ts` (nine certified sets, from both of their starts).
 */
export function fitLaw<Name extends string>(
  flow: CurveColumns,
  law: CustomLaw<Name>,
  range: FitRange = {},
): Outcome<LawFit<Name>, LawReason> {
  const from = 'fitLaw';
  requireOptions(from, range, ['from', 'to'], 'range');
  const { strain, stress } = flowRange(from, flow, range, 'range');
  requireOptions(from, law, ['parameters', 'stress', 'derivatives', 'bounds'], 'law');
  const names = Object.keys(requireObject(from, 'law.parameters', law.parameters)) as Name[];
  const start = names.map((name) => requireFinite(from, `law.parameters.${name}`, law.parameters[name]));
  if (names.length === 0) throw new InputError(from, 'law.parameters', 'empty', 'must name a parameter', 0);
  const bounds = boundsOf(from, names, start, law.bounds);
  requireFunction(from, 'law.stress', law.stress);
  if (law.derivatives !== undefined) requireFunction(from, 'law.derivatives', law.derivatives);
  const points = strain.length;
  if (points <= names.length) return failure('too-few-points', `${points} samples for ${names.length} parameters; one more is needed`);
  const named = (values: readonly number[]) => Object.fromEntries(names.map((name, k) => [name, values[k]!])) as Record<Name, number>;
  const model = (p: readonly number[]): ((i: number) => number) => {
    const parameters = named(p);
    return (i) => law.stress(strain[i]!, parameters);
  };
  const { derivatives } = law;
  const jacobian = (p: readonly number[]): ((i: number) => readonly number[]) => {
    if (!derivatives) return centralDifferences(model, p);
    const parameters = named(p);
    return (i) => {
      const row = derivatives(strain[i]!, parameters);
      return names.map((name) => row[name]);
    };
  };
  const value = model(start);
  const row = jacobian(start);
  if (!strain.every((_, i) => Number.isFinite(value(i)) && row(i).every(Number.isFinite)))
    return failure('no-start', 'the law or its derivatives are no numbers at the start values');
  const end = leastSquares({ y: stress, start, bounds, model, jacobian });
  const { covariance } = end;
  if (!covariance) return failure('undetermined', 'the samples do not determine all parameters');
  const errors = covariance.map((row, k) => Math.sqrt(row[k]!));
  const total = squaresAbout(mean(stress), stress);
  return success({
    parameters: named(end.parameters),
    standardErrors: named(errors),
    correlations: covariance.map((row, j) =>
      row.map((one, k) => (j === k ? 1 : errors[j]! * errors[k]! > 0 ? one / (errors[j]! * errors[k]!) : 0)),
    ),
    residualSumOfSquares: end.residualSumOfSquares,
    rSquared: total > 0 ? 1 - end.residualSumOfSquares / total : 1,
    points,
    converged: end.converged,
    iterations: end.iterations,
  });
}
