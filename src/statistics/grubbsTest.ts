import { failure, requireColumn, requireOneOf, requireOptions, requireProbability, success, type Outcome } from '../base/index.js';
import { mean, sampleDeviation } from '../numeric/index.js';
import { grubbsCriticalValue, type OutlierSide } from './grubbsCriticalValue.js';

/** Options of {@link grubbsTest}. */
export interface GrubbsOptions {
  /** Chance of flagging a value of a sound sample, above 0 and below 1; default 0.05. */
  readonly alpha?: number | undefined;
  /** Which end is looked at, decided before looking; default `both`. */
  readonly side?: OutlierSide | undefined;
}

/** What Grubbs's test says of the most extreme value. Nothing is ever removed. */
export interface GrubbsResult {
  /** Place of the value in the list. */
  readonly index: number;
  /** The value. */
  readonly value: number;
  /** Its distance from the mean over s, G [1]. */
  readonly statistic: number;
  /** What G exceeds by chance in a share α of all samples [1]. */
  readonly criticalValue: number;
  /** True where G exceeds it. */
  readonly flagged: boolean;
  /** Level α [1]. */
  readonly alpha: number;
  /** Which end was looked at. */
  readonly side: OutlierSide;
}

/** Why there is no test of outliers. */
export type OutlierReason = 'too-few-values' | 'no-scatter';

/** @internal Place of the value farthest from a centre, on the side asked for. */
export function farthest(column: Float64Array, centre: number, side: OutlierSide): number {
  let best = 0;
  const distance = (i: number) => (side === 'both' ? Math.abs(column[i]! - centre) : (column[i]! - centre) * (side === 'largest' ? 1 : -1));
  for (let i = 1; i < column.length; i += 1) if (distance(i) > distance(best)) best = i;
  return best;
}

/**
 * Grubbs's test: whether the most extreme of several results is farther out than chance explains. It flags and never removes.
 *
 * $$ G = \frac{\max |x_i - \bar x|}{s} $$
 *
 * @remarks
 * For one outlier in a normal scatter; two of them can hide each other, for which {@link generalisedEsd} is. A flag is a question: a
 * value is left out only where a physical cause is found and written down.
 *
 * @param values - Results of one property in one unit, finite; at least 3 for an answer.
 * @param options - Level and side.
 * @returns The value, its statistic and the critical value; fails with `too-few-values`, or with `no-scatter` where all are equal.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const test = required(grubbsTest([452.1, 449.8, 455.0, 451.2, 447.6]));
 * test.statistic; // => 1.4059
 * test.flagged; // => false
 * ```
 *
 * @see Grubbs (1969), Procedures for detecting outlying observations in samples; ASTM E178. Checked in `test/handbook/outliers.test.ts`.
 */
export function grubbsTest(values: ArrayLike<number>, options: GrubbsOptions = {}): Outcome<GrubbsResult, OutlierReason> {
  const from = 'grubbsTest';
  const column = requireColumn(from, 'values', values);
  requireOptions(from, options, ['alpha', 'side']);
  const alpha = requireProbability(from, 'options.alpha', options.alpha ?? 0.05);
  const side = requireOneOf(from, 'options.side', options.side ?? 'both', ['both', 'largest', 'smallest']);
  const n = column.length;
  if (n < 3) return failure('too-few-values', `${n} values: an outlier cannot be told from fewer than 3.`);
  const s = sampleDeviation(column);
  if (s === 0) return failure('no-scatter', 'All values are equal.');
  const centre = mean(column);
  const index = farthest(column, centre, side);
  const statistic = Math.abs(column[index]! - centre) / s;
  const criticalValue = grubbsCriticalValue({ n, alpha, side });
  return success({ index, value: column[index]!, statistic, criticalValue, flagged: statistic > criticalValue, alpha, side });
}
