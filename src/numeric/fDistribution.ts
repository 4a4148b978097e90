import { incompleteBeta } from './incompleteBeta.js';
import { positiveQuantile } from './quantiles.js';

/** @internal Probability that an F variable with the given degrees of freedom exceeds f. */
export function fExceeds(f: number, numerator: number, denominator: number): number {
  if (!(f > 0)) return 1;
  if (f === Infinity) return 0;
  const all = denominator + numerator * f;
  return incompleteBeta(denominator / 2, numerator / 2, denominator / all, (numerator * f) / all);
}

/** @internal Probability that an F variable with the given degrees of freedom is at most f; its upper tail is {@link fExceeds}. */
export function fCdf(f: number, numerator: number, denominator: number): number {
  return f > 0 ? fExceeds(1 / f, denominator, numerator) : 0;
}

/** @internal The value that an F variable does not exceed with probability p, within 0 and 1. */
export function fQuantile(p: number, numerator: number, denominator: number): number {
  return positiveQuantile(
    p,
    (f) => fCdf(f, numerator, denominator),
    (f) => fExceeds(f, numerator, denominator),
  );
}
