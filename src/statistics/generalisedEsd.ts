import {
  failure,
  finding,
  InputError,
  requireColumn,
  requireOptions,
  requireProbability,
  requireWhole,
  success,
  type Finding,
  type Outcome,
} from '../base/index.js';
import { mean, sampleDeviation } from '../numeric/index.js';
import { greatestDeviation } from './grubbsCriticalValue.js';
import { farthest, type OutlierReason } from './grubbsTest.js';

/** Options of {@link generalisedEsd}. */
export interface EsdOptions {
  /** Most outliers that are looked for, 1 to n − 2; default a quarter of the values, 1 at least. */
  readonly most?: number | undefined;
  /** Chance of flagging values of a sound sample, above 0 and below 1; default 0.05. */
  readonly alpha?: number | undefined;
}

/** One step: the most extreme value of those that are left. */
export interface EsdStep {
  /** Place of the value in the list as given. */
  readonly index: number;
  /** The value. */
  readonly value: number;
  /** Its distance from the mean of those left, over their s [1]. */
  readonly statistic: number;
  /** Critical value of the step [1]. */
  readonly criticalValue: number;
}

/** What Rosner's test says. Nothing is ever removed. */
export interface EsdResult {
  /** Every step: as many as were asked for, fewer where the rest are equal. */
  readonly steps: readonly EsdStep[];
  /** Places of the flagged values in the list as given, the most extreme first. */
  readonly flagged: readonly number[];
  /** Level α [1]. */
  readonly alpha: number;
  /** `esd-few-values` below 25 values, a caution below 15. */
  readonly findings: readonly Finding[];
}

/** Values from which the limits are good, and fair (Rosner). */
const GOOD = 25;
const FAIR = 15;

/**
 * Rosner's generalised test of extreme deviates: several outliers, also where they hide each other. It flags and never removes.
 *
 * $$ R_i = \frac{\max |x - \bar x|}{s}, \qquad
 * \lambda_i = \frac{(n-i)\,t_p}{\sqrt{(n - i - 1 + t_p^2)(n - i + 1)}}, \quad p = 1 - \frac{\alpha}{2(n - i + 1)},\ \nu = n - i - 1 $$
 *
 * @remarks
 * The most extreme value is set aside and the rest looked at again, as often as asked; the number of outliers is the *last* step at
 * which the statistic exceeds its critical value, so that two that hide each other are found. Good from 25 values on, fair from 15
 * (Rosner), and a finding says so below; for a handful of pieces Grubbs's test of one value is as much as the data bear.
 *
 * @param values - Results of one property in one unit, finite; at least 3 for an answer.
 * @param options - Most outliers, level.
 * @returns Steps and flagged places; fails with `too-few-values`, or with `no-scatter` where all values that are left are equal.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * required(generalisedEsd([10.1, 9.9, 10, 10.2, 9.8, 10, 10.1, 14, 14.2], { most: 3 })).flagged; // => [8, 7]
 * ```
 *
 * @see Rosner (1983), Percentage points for a generalized ESD many-outlier procedure. Checked in `test/handbook/outliers.test.ts`.
 */
export function generalisedEsd(values: ArrayLike<number>, options: EsdOptions = {}): Outcome<EsdResult, OutlierReason> {
  const from = 'generalisedEsd';
  const column = requireColumn(from, 'values', values);
  requireOptions(from, options, ['most', 'alpha']);
  const alpha = requireProbability(from, 'options.alpha', options.alpha ?? 0.05);
  const n = column.length;
  if (n < 3) return failure('too-few-values', `${n} values: an outlier cannot be told from fewer than 3.`);
  const most = requireWhole(from, 'options.most', options.most ?? Math.max(1, Math.floor(n / 4)), 1);
  if (most > n - 2) throw new InputError(from, 'options.most', 'out-of-range', `must be at most ${n - 2} of ${n} values`, most);
  const left = Array.from(column, (value, index) => ({ value, index }));
  const steps: EsdStep[] = [];
  while (steps.length < most) {
    const rest = Float64Array.from(left, ({ value }) => value);
    const s = sampleDeviation(rest);
    if (s === 0) break;
    const centre = mean(rest);
    const [out] = left.splice(farthest(rest, centre, 'both'), 1);
    const criticalValue = greatestDeviation(alpha / (2 * rest.length), rest.length);
    steps.push({ ...out!, statistic: Math.abs(out!.value - centre) / s, criticalValue });
  }
  if (steps.length === 0) return failure('no-scatter', 'All values are equal.');
  const findings = n >= GOOD ? [] : [finding('esd-few-values', { n }, n < FAIR ? { severity: 'caution' } : {})];
  const last = steps.findLastIndex(({ statistic, criticalValue }) => statistic > criticalValue);
  return success({ steps, flagged: steps.slice(0, last + 1).map(({ index }) => index), alpha, findings });
}
