import { InputError, requireBetween, requireOptions, requireWhole } from '../../base/index.js';

/** What the scatter of a slope follows from. */
export interface Correlation {
  /** Coefficient of determination R² of the line, above 0, at most 1. */
  readonly rSquared: number;
  /** Number of samples, a whole number of at least 3. */
  readonly points: number;
}

/**
 * Relative standard error of a slope from its coefficient of determination.
 *
 * $$ S_{m(rel)} = \sqrt{\frac{1/R^2 - 1}{N - 2}} $$
 *
 * @remarks
 * It tells precision only: a line that a soft frame dominates can have $R^2$ = 0.99999 and a modulus wrong by four times. It falls
 * with N even where the line is biased, and correlated samples flatter it.
 *
 * @param line - `rSquared` above 0 and at most 1; `points` a whole number of 3 or more.
 * @returns Relative standard error [1]; times 100 it is the percentage of the standard.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `not-positive`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * slopeScatter({ rSquared: 0.9995, points: 50 }) * 100; // => 0.32283
 * ```
 *
 * @see ISO 6892-1:2019, Annex G; ASTM E111, coefficient of variation of the slope. Checked in `test/handbook/elastic-line.test.ts`.
 */
export function slopeScatter(line: Correlation): number {
  const from = 'slopeScatter';
  requireOptions(from, line, ['rSquared', 'points'], 'line');
  const rSquared = requireBetween(from, 'line.rSquared', line.rSquared, 0, 1);
  if (rSquared === 0) throw new InputError(from, 'line.rSquared', 'not-positive', 'must be above 0', rSquared);
  const points = requireWhole(from, 'line.points', line.points, 3);
  return Math.sqrt((1 / rSquared - 1) / (points - 2));
}
