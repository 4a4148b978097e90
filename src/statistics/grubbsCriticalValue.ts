import { requireOneOf, requireOptions, requireProbability, requireWhole } from '../base/index.js';
import { studentQuantile } from '../numeric/index.js';

/** Which values may be the odd one: either end, or only the largest, or only the smallest. */
export type OutlierSide = 'both' | 'largest' | 'smallest';

/** Arguments of {@link grubbsCriticalValue}. */
export interface GrubbsLimit {
  /** Number of values, 3 or more. */
  readonly n: number;
  /** Chance of flagging a value of a sound sample, above 0 and below 1; default 0.05. */
  readonly alpha?: number | undefined;
  /** Which end is looked at; default `both`. */
  readonly side?: OutlierSide | undefined;
}

/**
 * Value that Grubbs's statistic exceeds by chance alone in a share α of all samples.
 *
 * $$ G_c = \frac{n-1}{\sqrt n}\sqrt{\frac{t^2}{n - 2 + t^2}}, \qquad t = t_{1-\alpha/(2n);\,n-2} \text{ (both ends)}, \quad
 * t_{1-\alpha/n;\,n-2} \text{ (one end)} $$
 *
 * @remarks
 * Exact for one end, on the safe side by a trace for both. It never exceeds $(n-1)/\sqrt n$, the most that a single value can reach.
 *
 * @param limit - Number of values, level, side.
 * @returns Critical value [1].
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * grubbsCriticalValue({ n: 5 }); // => 1.7150
 * grubbsCriticalValue({ n: 8, side: 'largest' }); // => 2.0317
 * ```
 *
 * @see Grubbs (1969), Procedures for detecting outlying observations in samples; ASTM E178. Checked in `test/handbook/outliers.test.ts`.
 */
export function grubbsCriticalValue(limit: GrubbsLimit): number {
  const from = 'grubbsCriticalValue';
  requireOptions(from, limit, ['n', 'alpha', 'side'], 'limit');
  const n = requireWhole(from, 'n', limit.n, 3);
  const alpha = requireProbability(from, 'alpha', limit.alpha ?? 0.05);
  const side = requireOneOf(from, 'side', limit.side ?? 'both', ['both', 'largest', 'smallest']);
  return greatestDeviation(alpha / (side === 'both' ? 2 * n : n), n);
}

/** @internal The deviation from the mean of n values, over s, that a given one of them exceeds upwards with probability p. */
export function greatestDeviation(p: number, n: number): number {
  const t = Math.max(0, -studentQuantile(p, n - 2));
  // so that the t of a very small probability may be infinite
  return (n - 1) / Math.sqrt(n * (1 + (n - 2) / t ** 2));
}
