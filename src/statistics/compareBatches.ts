import { failure, requireColumn, requireOptions, requirePositive, requireProbability, success, type Outcome } from '../base/index.js';
import { mean, sampleDeviation, studentCdf, studentQuantile } from '../numeric/index.js';
import type { ConfidenceInterval } from './summariseReplicates.js';

/** Options of {@link compareBatches}. */
export interface BatchOptions {
  /** Confidence of the interval, above 0 and below 1; default 0.95. */
  readonly confidence?: number | undefined;
  /** True where both batches are known to scatter alike: one standard deviation for both; default false (Welch). */
  readonly pooled?: boolean | undefined;
  /** Largest difference that does not matter, in the unit of the values, above 0: asks for equivalence as well. */
  readonly margin?: number | undefined;
}

/** Whether a difference is within a margin: two one-sided tests. */
export interface Equivalence {
  /** The margin, in the unit of the values. */
  readonly margin: number;
  /** Interval of the difference at confidence 1 − 2α, which must lie within the margin. */
  readonly interval: ConfidenceInterval;
  /** The larger p-value of the two tests [1]. */
  readonly pValue: number;
  /** True where the difference is shown to be within the margin at level α. */
  readonly equivalent: boolean;
}

/** Two batches beside each other, in the unit of the values. */
export interface BatchComparison {
  /** Mean of the first less mean of the second. */
  readonly difference: number;
  /** Standard error of the difference. */
  readonly standardError: number;
  /** Degrees of freedom, not whole by Welch [1]. */
  readonly freedom: number;
  /** Interval of the difference. */
  readonly interval: ConfidenceInterval;
  /** Two-sided p-value of no difference [1]. */
  readonly pValue: number;
  /** True where the interval leaves out 0. */
  readonly differs: boolean;
  /** How the scatter was taken. */
  readonly method: 'Welch' | 'pooled';
  /** Equivalence within a margin, where asked for. */
  readonly equivalence?: Equivalence;
}

/** Why two batches cannot be compared. */
export type BatchReason = 'too-few-values' | 'no-scatter';

/**
 * Whether two batches differ, and whether they are alike within a margin that matters.
 *
 * $$ \bar x_1 - \bar x_2 \pm t_{(1+\gamma)/2;\,\nu}\sqrt{\frac{s_1^2}{n_1} + \frac{s_2^2}{n_2}}, \qquad
 * \nu = \frac{(s_1^2/n_1 + s_2^2/n_2)^2}{\frac{(s_1^2/n_1)^2}{n_1 - 1} + \frac{(s_2^2/n_2)^2}{n_2 - 1}} $$
 *
 * @remarks
 * "No difference shown" is not "alike": with few pieces almost nothing is shown. Equivalence is a claim of its own, by two one-sided
 * tests at level α = 1 − γ; both batches may differ *and* be equivalent, where the difference is real and too small to matter.
 *
 * @param first - Results of one batch, at least 2, finite.
 * @param second - Results of the other, in the same unit, at least 2, finite.
 * @param options - Confidence, pooled scatter, margin.
 * @returns Difference, interval and verdicts; fails with `too-few-values`, or with `no-scatter` where neither batch scatters.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const both = required(compareBatches([452.1, 449.8, 455.0], [441.2, 439.9, 444.0], { margin: 25 }));
 * both.difference; // => 10.6
 * both.differs; // => true
 * both.equivalence?.equivalent; // => true
 * ```
 *
 * @see Welch (1947), The generalization of Student's problem; Schuirmann (1987), two one-sided tests. Checked in `test/handbook/replicates.test.ts`.
 */
export function compareBatches(
  first: ArrayLike<number>,
  second: ArrayLike<number>,
  options: BatchOptions = {},
): Outcome<BatchComparison, BatchReason> {
  const from = 'compareBatches';
  const [a, b] = [requireColumn(from, 'first', first), requireColumn(from, 'second', second)];
  requireOptions(from, options, ['confidence', 'pooled', 'margin']);
  const confidence = requireProbability(from, 'options.confidence', options.confidence ?? 0.95);
  const margin = options.margin === undefined ? undefined : requirePositive(from, 'options.margin', options.margin);
  if (a.length < 2 || b.length < 2) return failure('too-few-values', `${a.length} and ${b.length} values: each batch needs 2 at least.`);
  const [va, vb] = [sampleDeviation(a) ** 2, sampleDeviation(b) ** 2];
  if (va + vb === 0) return failure('no-scatter', 'Neither batch scatters.');
  const [na, nb] = [a.length - 1, b.length - 1];
  const common = (na * va + nb * vb) / (na + nb);
  const [pa, pb] = options.pooled === true ? [common / a.length, common / b.length] : [va / a.length, vb / b.length];
  const freedom = options.pooled === true ? na + nb : (pa + pb) ** 2 / (pa ** 2 / na + pb ** 2 / nb);
  const standardError = Math.sqrt(pa + pb);
  const difference = mean(a) - mean(b);
  const interval = (share: number): ConfidenceInterval => {
    const halfWidth = studentQuantile((1 + share) / 2, freedom) * standardError;
    return { low: difference - halfWidth, high: difference + halfWidth, halfWidth, confidence: share };
  };
  const alpha = 1 - confidence;
  const pValue = 2 * studentCdf(-Math.abs(difference) / standardError, freedom);
  const equivalence = (limit: number): Equivalence => {
    const p = studentCdf((Math.abs(difference) - limit) / standardError, freedom);
    const share = Math.max(0, 1 - 2 * alpha);
    return { margin: limit, interval: interval(share), pValue: p, equivalent: p <= alpha };
  };
  return success({
    difference,
    standardError,
    freedom,
    interval: interval(confidence),
    pValue,
    differs: pValue < alpha,
    method: options.pooled === true ? 'pooled' : 'Welch',
    ...(margin === undefined ? {} : { equivalence: equivalence(margin) }),
  });
}
