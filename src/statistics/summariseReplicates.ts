import { requireColumn, requireOptions, requireProbability } from '../base/index.js';
import { mean, median, sampleDeviation, studentQuantile } from '../numeric/index.js';

/** Interval of a mean or of a difference. */
export interface ConfidenceInterval {
  /** Lower end, in the unit of the values. */
  readonly low: number;
  /** Upper end, in the unit of the values. */
  readonly high: number;
  /** Half of its width, in the unit of the values. */
  readonly halfWidth: number;
  /** Share of such intervals that hold the true value [1]. */
  readonly confidence: number;
}

/** Options of {@link summariseReplicates}. */
export interface ReplicateOptions {
  /** Confidence of the interval, above 0 and below 1; default 0.95. */
  readonly confidence?: number | undefined;
}

/** What repeated results say together, in the unit of the values. */
export interface ReplicateSummary {
  /** Number of values. */
  readonly n: number;
  /** Arithmetic mean. */
  readonly mean: number;
  /** Median. */
  readonly median: number;
  /** Smallest value. */
  readonly minimum: number;
  /** Largest value. */
  readonly maximum: number;
  /** Largest less smallest. */
  readonly range: number;
  /** Sample standard deviation s, over n − 1; absent below three values. */
  readonly standardDeviation?: number;
  /** Coefficient of variation: s over the size of the mean [1]; absent below three values and for a mean of 0. */
  readonly coefficientOfVariation?: number;
  /** Standard error of the mean: s over √n; absent below three values. */
  readonly standardError?: number;
  /** Interval of the mean; absent below three values. */
  readonly interval?: ConfidenceInterval;
}

/**
 * Mean, scatter and interval of repeated results.
 *
 * $$ s = \sqrt{\frac{\sum (x_i - \bar x)^2}{n - 1}}, \qquad CV = \frac{s}{|\bar x|}, \qquad
 * \bar x \pm t_{(1+\gamma)/2;\, n-1}\,\frac{s}{\sqrt n} $$
 *
 * @remarks
 * Two values give their range only: a standard deviation of two means nothing that a reader could use. The interval is that of the
 * mean of a normal scatter; it says nothing of where a single piece lies, for which {@link toleranceLimit} is.
 *
 * @param values - Results of one property, in any one unit; at least 1, finite.
 * @param options - Confidence of the interval.
 * @returns The summary, in the unit of the values.
 * @throws {@link InputError} `missing`, `wrong-type`, `empty`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const { mean, standardDeviation, interval } = summariseReplicates([452.1, 449.8, 455.0, 451.2, 447.6]);
 * mean; // => 451.14
 * standardDeviation; // => 2.7455
 * interval?.halfWidth; // => 3.409
 * ```
 *
 * @see ISO 2602, estimation of the mean; textbooks. Checked in `test/handbook/replicates.test.ts`.
 */
export function summariseReplicates(values: ArrayLike<number>, options: ReplicateOptions = {}): ReplicateSummary {
  const from = 'summariseReplicates';
  const column = requireColumn(from, 'values', values);
  requireOptions(from, options, ['confidence']);
  const confidence = requireProbability(from, 'options.confidence', options.confidence ?? 0.95);
  const n = column.length;
  const centre = mean(column);
  const sorted = Float64Array.from(column).sort();
  const [minimum, maximum] = [sorted[0]!, sorted[n - 1]!];
  const summary = { n, mean: centre, median: median(column), minimum, maximum, range: maximum - minimum };
  if (n < 3) return summary;
  const s = sampleDeviation(column);
  const standardError = s / Math.sqrt(n);
  const halfWidth = studentQuantile((1 + confidence) / 2, n - 1) * standardError;
  return {
    ...summary,
    standardDeviation: s,
    ...(centre === 0 ? {} : { coefficientOfVariation: s / Math.abs(centre) }),
    standardError,
    interval: { low: centre - halfWidth, high: centre + halfWidth, halfWidth, confidence },
  };
}
