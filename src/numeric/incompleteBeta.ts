import { deviance, stirlingError } from './stirling.js';

/** Continued fraction of the incomplete beta function, by Lentz's method (DLMF 8.17.22). */
function betaFraction(a: number, b: number, x: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1) || tiny);
  let value = d;
  for (let m = 1; m < 100_000; m += 1) {
    for (const term of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 / (1 + term * d || tiny);
      c = 1 + term / c || tiny;
      value *= d * c;
    }
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return value;
}

/**
 * @internal Regularised incomplete beta function I_x(a, b), a and b above 0, x within 0 and 1; `y` is 1 − x, where that is known better
 * than by the difference.
 */
export function incompleteBeta(a: number, b: number, x: number, y = 1 - x): number {
  if (x <= 0) return 0;
  if (y <= 0) return 1;
  // the fraction converges below the mean; of both halves exactly one is, whatever rounding does
  if (x * (b + 1) > y * (a + 1)) return 1 - incompleteBeta(b, a, y, x);
  const n = a + b;
  const error = stirlingError(n) - stirlingError(a) - stirlingError(b) - deviance(a, n * x) - deviance(b, n * y);
  return (Math.sqrt((a * b) / (2 * Math.PI * n)) * Math.exp(error) * betaFraction(a, b, x)) / a;
}
