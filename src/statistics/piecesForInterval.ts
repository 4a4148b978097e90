import { InputError, requireOptions, requirePositive, requireProbability } from '../base/index.js';
import { normalQuantile, studentQuantile } from '../numeric/index.js';

/** Arguments of {@link piecesForInterval}. */
export interface WantedInterval {
  /** Scatter of single pieces to plan with: s, or the coefficient of variation, above 0. */
  readonly standardDeviation: number;
  /** Wanted half-width of the interval of the mean, in the same unit (or as a share of the mean), above 0. */
  readonly halfWidth: number;
  /** Confidence, above 0 and below 1; default 0.95. */
  readonly confidence?: number | undefined;
}

/** More pieces than this nobody tests. */
const MOST = 1e6;

/**
 * How many pieces make the interval of their mean as narrow as wanted.
 *
 * $$ n = \min \left\lbrace n \ge 2 : t_{(1+\gamma)/2;\,n-1}\,\frac{s}{\sqrt n} \le w \right\rbrace $$
 *
 * @remarks
 * With the scatter of earlier tests, or the usual one ({@link usualVariation}). The scatter that the pieces will show is not known yet, so the
 * interval comes out narrower or wider than planned about as often.
 *
 * @param wanted - Scatter, half-width, confidence.
 * @returns Number of pieces, 2 or more.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `unknown-option`; `out-of-range` where a million would not do.
 *
 * @example
 * ```ts
 * piecesForInterval({ standardDeviation: 0.014, halfWidth: 0.02 }); // => 5
 * ```
 *
 * @see Textbooks of statistics, sample size for a mean. Checked in `test/handbook/replicates.test.ts`.
 */
export function piecesForInterval(wanted: WantedInterval): number {
  const from = 'piecesForInterval';
  requireOptions(from, wanted, ['standardDeviation', 'halfWidth', 'confidence'], 'wanted');
  const s = requirePositive(from, 'standardDeviation', wanted.standardDeviation);
  const w = requirePositive(from, 'halfWidth', wanted.halfWidth);
  const p = (1 + requireProbability(from, 'confidence', wanted.confidence ?? 0.95)) / 2;
  const known = ((normalQuantile(p) * s) / w) ** 2;
  if (known > MOST) throw new InputError(from, 'halfWidth', 'out-of-range', 'must be wider: a million pieces would not do', w);
  // t exceeds the normal value, so the count of a known scatter is a lower bound; a few steps lead from there
  let n = Math.max(2, Math.ceil(known));
  while ((studentQuantile(p, n - 1) * s) / Math.sqrt(n) > w * (1 + 1e-12)) n += 1;
  return n;
}
