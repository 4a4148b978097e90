import { incompleteGamma } from './incompleteGamma.js';
import { positiveQuantile } from './quantiles.js';

/** @internal Probability that a chi-square variable is at most x; its upper tail is {@link chiSquareExceeds}. */
export function chiSquareCdf(x: number, freedom: number): number {
  return incompleteGamma(freedom / 2, x / 2).lower;
}

/** @internal Probability that a chi-square variable exceeds x, exact far out as well. */
export function chiSquareExceeds(x: number, freedom: number): number {
  return incompleteGamma(freedom / 2, x / 2).upper;
}

/** @internal The value that a chi-square variable does not exceed with probability p, within 0 and 1. */
export function chiSquareQuantile(p: number, freedom: number): number {
  return positiveQuantile(
    p,
    (x) => chiSquareCdf(x, freedom),
    (x) => chiSquareExceeds(x, freedom),
  );
}
