import {
  InputError,
  failure,
  requireArray,
  requireBetween,
  requireColumn,
  requireFinite,
  requireOptions,
  requirePositive,
  type CurveColumns,
  type Outcome,
} from '../../base/index.js';
import { aicc } from './aicc.js';
import { flowRange, type FitRange } from './flowRange.js';
import { lawSearch, type LawColumns, type Limits } from './lawSearch.js';
import type { LawShape } from './lawShape.js';

/** Options that all fits of laws share. */
export interface FitOptions<Name extends string> extends FitRange {
  /** Weight of each sample's squared residual, above 0, one for each sample of the flow curve; default 1. */
  readonly weights?: ArrayLike<number> | undefined;
  /** Parameters that are held at a value. */
  readonly fixed?: Readonly<Partial<Record<Name, number>>> | undefined;
  /** Least and greatest value of a parameter. */
  readonly bounds?: Readonly<Partial<Record<Name, readonly [number, number]>>> | undefined;
  /** True plastic strain at the maximum force [mm/mm]; a range that ends beyond it is refused. */
  readonly uniformStrain?: number | undefined;
}

/** What every fitted law carries beside its parameters. */
export interface FitSummary<Name extends string> {
  /** Standard error of each parameter; 0 where it was held or ended on its bound. */
  readonly standardErrors: Readonly<Record<Name, number>>;
  /** Their correlations, row and column in the order of the standard errors. */
  readonly correlations: readonly (readonly number[])[];
  /** Pairs of parameters that trade off: correlated by more than 0.99, so that neither means much without the other. */
  readonly tradeOffs: readonly (readonly [Name, Name])[];
  /** Weighted sum of squared residuals [MPa²]. */
  readonly residualSumOfSquares: number;
  /** Coefficient of determination [1]. */
  readonly rSquared: number;
  /** Akaike's criterion with the correction for few samples; lower is better, compared on the same samples only. */
  readonly aicc: number;
  /** Number of samples. */
  readonly points: number;
  /** First and last strain of the fit [mm/mm]. */
  readonly range: readonly [number, number];
  /** True where no step lowers the sum. */
  readonly converged: boolean;
  /** Steps taken. */
  readonly iterations: number;
}

/** Why a law was not fitted. */
export type FitReason = 'too-few-points' | 'not-increasing' | 'beyond-maximum' | 'no-hardening' | 'undetermined';

/** @internal A correlation beyond this is a trade-off. */
export const TRADE_OFF = 0.99;
/** Checked limits of every parameter: its own, narrowed by bounds and by what is held. */
function limitsOf<Name extends string>(from: string, { names, lowest }: LawShape<Name>, options: FitOptions<Name>): Limits {
  requireOptions(from, options.fixed ?? {}, names, 'options.fixed');
  requireOptions(from, options.bounds ?? {}, names, 'options.bounds');
  const limits = names.map((name, k): readonly [number, number] => {
    const held = options.fixed?.[name];
    if (held !== undefined) {
      const value = requireBetween(from, `options.fixed.${name}`, held, lowest[k]!, Infinity);
      return [value, value];
    }
    const [low = NaN, high = NaN] = requireArray(from, `options.bounds.${name}`, options.bounds?.[name] ?? [-Infinity, Infinity]);
    if (!(low < high))
      throw new InputError(from, `options.bounds.${name}`, 'out-of-range', 'must be two ascending numbers', `${low}, ${high}`);
    if (high <= lowest[k]!)
      throw new InputError(from, `options.bounds.${name}`, 'out-of-range', `must reach above ${lowest[k]!}`, `${low}, ${high}`);
    return [Math.max(low, lowest[k]!), high];
  });
  return { lowest: limits.map(([low]) => low), highest: limits.map(([, high]) => high) };
}

/** @internal The uniform strain that a range may end at; any where none is given. */
export const uniformStrainOf = (from: string, { uniformStrain }: FitOptions<never>): number =>
  uniformStrain === undefined ? Infinity : requirePositive(from, 'options.uniformStrain', uniformStrain);

/** Weighted mean, and weighted sum of the squares about it: about the first value, which loses no digits, since stresses are of one size. */
function spreadOf(y: Float64Array, weights: Float64Array | undefined): { readonly mean: number; readonly squares: number } {
  const y0 = y[0]!;
  let [count, sum, squares] = [0, 0, 0];
  if (weights)
    for (let i = 0; i < y.length; i += 1) {
      const v = y[i]! - y0;
      count += weights[i]!;
      sum += weights[i]! * v;
      squares += weights[i]! * v * v;
    }
  else
    for (let i = 0; i < y.length; i += 1) {
      const v = y[i]! - y0;
      count += 1;
      sum += v;
      squares += v * v;
    }
  return { mean: y0 + sum / count, squares: Math.max(0, squares - (sum * sum) / count) };
}

/** @internal {@link shapeKernel} of what a caller gives. */
export function fitShape<Name extends string>(
  from: string,
  shape: LawShape<Name>,
  flow: CurveColumns,
  options: FitOptions<Name>,
): Outcome<Readonly<Record<Name, number>> & FitSummary<Name>, FitReason> {
  requireOptions(from, options, ['from', 'to', 'weights', 'fixed', 'bounds', 'uniformStrain']);
  const uniformStrain = uniformStrainOf(from, options);
  const limits = limitsOf(from, shape, options);
  const { strain, stress } = flowRange(from, flow, options);
  let weights: Float64Array | undefined;
  if (options.weights !== undefined) {
    const column = requireColumn(from, 'options.weights', options.weights, { length: flow.strain.length, positive: true });
    weights = flowRange(from, { strain: flow.strain, stress: column }, options).stress;
  }
  return shapeKernel(shape, { strain, stress, weights }, limits, options.fixed, uniformStrain);
}

/** @internal Fits a law by least squares in stress: a scan for the start, then Gauss-Newton steps on all samples, or on what stands for very many. */
export function shapeKernel<Name extends string>(
  shape: LawShape<Name>,
  columns: LawColumns,
  limits: Limits,
  fixed?: FitOptions<Name>['fixed'],
  uniformStrain = Infinity,
): Outcome<Readonly<Record<Name, number>> & FitSummary<Name>, FitReason> {
  const { strain, stress, weights } = columns;
  const n = strain.length;
  const names = shape.names;
  const open = names.filter((_, k) => limits.lowest[k] !== limits.highest[k]).length;
  if (n < open + 1) return failure('too-few-points', `${n} samples lie in the range; ${open + 1} are needed`);
  if (!(strain[n - 1]! > strain[0]!)) return failure('not-increasing', 'the strain does not increase from the first sample to the last');
  if (strain[n - 1]! > uniformStrain * (1 + 1e-9))
    return failure('beyond-maximum', `the range ends at ${strain[n - 1]!}, the maximum force is at ${uniformStrain}`);

  const { end, before } = lawSearch(shape, columns, limits, fixed);
  if (!end) return failure('undetermined', 'no start gives the law a finite stress on all samples');
  const { parameters, inverse } = end;
  if (shape.flat(parameters)) return failure('no-hardening', 'the stress does not rise with strain');
  if (!inverse) return failure('undetermined', 'the samples do not determine all parameters');
  const p = names.length;
  const rest = end.residualSumOfSquares;
  const variance = rest / (n - open);
  const errors: number[] = [];
  const correlations: number[][] = [];
  const tradeOffs: (readonly [Name, Name])[] = [];
  for (let j = 0; j < p; j += 1) {
    errors[j] = Math.sqrt(Math.max(0, variance * inverse[p * j + j]!));
    const row: number[] = [];
    for (let k = 0; k < p; k += 1) {
      const scale = Math.sqrt(inverse[p * j + j]! * inverse[p * k + k]!);
      row[k] = j === k ? 1 : scale > 0 ? inverse[p * j + k]! / scale : 0;
      if (k > j && Math.abs(row[k]!) > TRADE_OFF) tradeOffs.push([names[j]!, names[k]!]);
    }
    correlations[j] = row;
  }
  const named = (values: readonly number[]): Record<Name, number> => {
    const all: Partial<Record<Name, number>> = {};
    for (let k = 0; k < p; k += 1) all[names[k]!] = values[k]!;
    return all as Record<Name, number>;
  };
  const { mean, squares: total } = spreadOf(stress, weights);
  // assigned field by field, because spreading another object costs ten times as much
  return Object.assign({ ok: true as const }, named(parameters), {
    standardErrors: named(errors),
    correlations,
    tradeOffs,
    residualSumOfSquares: rest,
    rSquared: total > 0 ? 1 - rest / total : 1,
    aicc: aicc(rest, n, open, mean),
    points: n,
    range: [strain[0]!, strain[n - 1]!] as const,
    converged: end.converged,
    iterations: end.iterations + before,
  });
}

/** @internal A fixed parameter given by an option of its own. */
export function withFixed<Name extends string>(
  from: string,
  options: FitOptions<Name>,
  name: Name,
  value: number | undefined,
): FitOptions<Name> {
  if (value === undefined) return options;
  const fixed: Partial<Record<Name, number>> = { ...options.fixed };
  fixed[name] = requireFinite(from, `options.${name}`, value);
  return { ...options, fixed };
}
