/** Lanczos coefficients (g = 7, nine terms) for ln Γ, good to 1e-15. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** ln Γ(z) for z above 0. */
function logGamma(z: number): number {
  if (z < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * z)) - logGamma(1 - z);
  const t = z + 6.5;
  let sum = LANCZOS[0]!;
  for (let k = 1; k < LANCZOS.length; k += 1) sum += LANCZOS[k]! / (z - 1 + k);
  return 0.5 * Math.log(2 * Math.PI) + (z - 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Continued fraction of the incomplete beta function, by Lentz's method (DLMF 8.17.22). */
function betaFraction(a: number, b: number, x: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / Math.max(Math.abs(1 - ((a + b) * x) / (a + 1)), tiny);
  if (1 - ((a + b) * x) / (a + 1) < 0) d = -d;
  let value = d;
  for (let m = 1; m < 500; m += 1) {
    for (const term of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 + term * d || tiny;
      c = 1 + term / c || tiny;
      d = 1 / d;
      value *= d * c;
    }
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return value;
}

/** @internal Regularised incomplete beta function I_x(a, b), a and b above 0, x within 0 and 1. */
export function incompleteBeta(a: number, b: number, x: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(a, b, x)) / a : 1 - (front * betaFraction(b, a, 1 - x)) / b;
}

/** @internal Probability that an F variable with the given degrees of freedom exceeds f. */
export function fExceeds(f: number, numerator: number, denominator: number): number {
  if (!(f > 0)) return 1;
  return incompleteBeta(denominator / 2, numerator / 2, denominator / (denominator + numerator * f));
}
