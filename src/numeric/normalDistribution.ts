import { incompleteGamma } from './incompleteGamma.js';
import { symmetricQuantile } from './quantiles.js';

/** @internal Probability that a standard normal variable is at most z, exact far down as well; the upper tail is that of −z. */
export function normalCdf(z: number): number {
  const { lower, upper } = incompleteGamma(0.5, (z * z) / 2);
  return z < 0 ? upper / 2 : 0.5 + lower / 2;
}

/** @internal The value that a standard normal variable does not exceed with probability p, within 0 and 1. */
export function normalQuantile(p: number): number {
  return symmetricQuantile(p, normalCdf);
}
