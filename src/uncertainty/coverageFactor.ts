import { InputError, requireBetween, requirePositive } from '../base/index.js';
import { normalCdf, normalQuantile, studentCdf, studentQuantile } from '../numeric/index.js';

/** @internal Coverage of two standard deviations of a normal distribution: 0.9545, so that k is 2 where nothing is known better. */
export const TWO_SIGMA = 0.9544997361036416;

/** How an expanded uncertainty is made. */
export interface CoverageOptions {
  /** Coverage probability, above 0 and below 1; default 0.9545 (k = 2 for infinite degrees of freedom). */
  readonly coverage?: number | undefined;
  /** Coverage factor k instead. */
  readonly coverageFactor?: number | undefined;
}

/** @internal Checked: a probability or a factor. */
export function requireCoverage(from: string, options: CoverageOptions, path = 'options'): CoverageOptions {
  if (options.coverage !== undefined && options.coverageFactor !== undefined)
    throw new InputError(from, `${path}.coverageFactor`, 'ambiguous', 'must not be given beside coverage', options.coverageFactor);
  if (options.coverageFactor !== undefined)
    return { coverageFactor: requirePositive(from, `${path}.coverageFactor`, options.coverageFactor) };
  return { coverage: requireBetween(from, `${path}.coverage`, options.coverage ?? TWO_SIGMA, 1e-6, 1 - 1e-9) };
}

/** @internal Factor and probability; degrees of freedom are cut to a whole number, as the Guide does for its table. */
export function coverageOf({ coverage, coverageFactor }: CoverageOptions, freedom: number): { coverage: number; coverageFactor: number } {
  // a sum that is whole but for its last bit is not cut to the number below
  const whole = Math.max(1, Math.floor(freedom * (1 + 1e-12)));
  const below = (t: number): number => (whole === Infinity ? normalCdf(t) : studentCdf(t, whole));
  if (coverageFactor !== undefined) return { coverageFactor, coverage: 1 - 2 * below(-coverageFactor) };
  const p = coverage ?? TWO_SIGMA;
  const tail = (1 - p) / 2;
  return { coverage: p, coverageFactor: -(whole === Infinity ? normalQuantile(tail) : studentQuantile(tail, whole)) };
}
