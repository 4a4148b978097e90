import { incompleteBeta } from './incompleteBeta.js';
import { symmetricQuantile } from './quantiles.js';

/**
 * @internal Probability that Student's t is at most t, exact far down as well; the upper tail is that of −t. The degrees of freedom need
 * not be whole.
 */
export function studentCdf(t: number, freedom: number): number {
  // by ratios, so that a large t does not overflow in its square
  const ratio = Math.abs(t) / Math.sqrt(freedom);
  const x = ratio > 1 ? 1 / ratio ** 2 / (1 / ratio ** 2 + 1) : 1 / (1 + ratio ** 2);
  const y = ratio > 1 ? 1 / (1 / ratio ** 2 + 1) : ratio ** 2 / (1 + ratio ** 2);
  const tail = incompleteBeta(freedom / 2, 0.5, x, y) / 2;
  return t < 0 ? tail : 1 - tail;
}

/** @internal The value that Student's t does not exceed with probability p, within 0 and 1. */
export function studentQuantile(p: number, freedom: number): number {
  return symmetricQuantile(p, (t) => studentCdf(t, freedom));
}
