import { risingRoot } from './findRoot.js';

type Probability = (x: number) => number;

/** Logarithm of a probability; one that underflows is the smallest that there is. */
const log = (p: number): number => Math.log(Math.max(p, Number.MIN_VALUE));

/**
 * @internal The value that a variable does not exceed with probability p, from its two tails: the smaller one is solved by its
 * logarithm, so that the value is as exact far out as in the middle.
 */
export function anyQuantile(p: number, below: Probability, above: Probability, near: number, step: number): number {
  return p < 0.5 ? risingRoot((x) => log(below(x)) - log(p), near, step) : risingRoot((x) => log(1 - p) - log(above(x)), near, step);
}

/** @internal {@link anyQuantile} of a variable above 0. */
export function positiveQuantile(p: number, below: Probability, above: Probability): number {
  if (p <= 0) return 0;
  if (p >= 1) return Infinity;
  return Math.exp(
    anyQuantile(
      p,
      (u) => below(Math.exp(u)),
      (u) => above(Math.exp(u)),
      0,
      1,
    ),
  );
}

/** @internal {@link anyQuantile} of a variable that is symmetric about 0. */
export function symmetricQuantile(p: number, below: Probability): number {
  if (p === 0.5) return 0;
  if (p > 0.5) return -symmetricQuantile(1 - p, below);
  return p <= 0 ? -Infinity : -Math.exp(-risingRoot((u) => log(below(-Math.exp(-u))) - log(p), 0, 1));
}
