import { deviance, stirlingError } from './stirling.js';

/** @internal Both regularised incomplete gamma functions, P and Q = 1 − P, for a above 0 and x of 0 or more. */
export function incompleteGamma(a: number, x: number): { readonly lower: number; readonly upper: number } {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (x === Infinity) return { lower: 1, upper: 0 };
  // x^a e^(-x) / Γ(a)
  const front = Math.sqrt(a / (2 * Math.PI)) * Math.exp(-stirlingError(a) - deviance(a, x));
  return x < a + 1 ? bySeries(a, x, front) : byFraction(a, x, front);
}

/** DLMF 8.11.4. */
function bySeries(a: number, x: number, front: number) {
  let sum = 1;
  for (let k = 1, term = 1; k < 100_000 && term > 1e-17 * sum; k += 1) {
    term *= x / (a + k);
    sum += term;
  }
  const lower = (front * sum) / a;
  return { lower, upper: 1 - lower };
}

/** DLMF 8.9.2, by Lentz's method. */
function byFraction(a: number, x: number, front: number) {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let value = d;
  for (let k = 1; k < 100_000; k += 1) {
    const term = -k * (k - a);
    b += 2;
    d = 1 / (term * d + b || 1e-300);
    c = b + term / c || 1e-300;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  const upper = front * value;
  return { lower: 1 - upper, upper };
}
