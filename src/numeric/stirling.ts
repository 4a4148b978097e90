/** Lanczos coefficients (g = 7, nine terms) for ln Γ, good to 1e-15. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** @internal ln Γ(z) for z above 0. */
export function logGamma(z: number): number {
  if (z < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * z)) - logGamma(1 - z);
  const t = z + 6.5;
  let sum = LANCZOS[0]!;
  for (let k = 1; k < LANCZOS.length; k += 1) sum += LANCZOS[k]! / (z - 1 + k);
  return 0.5 * Math.log(2 * Math.PI) + (z - 0.5) * Math.log(t) - t + Math.log(sum);
}

/**
 * @internal What ln n! exceeds Stirling's formula by, for n above 0: from 15 on by its series (DLMF 5.11.1), since a difference of large
 * logarithms would lose the digits that a tail is made of.
 */
export function stirlingError(n: number): number {
  if (n < 15) return logGamma(n + 1) - (n + 0.5) * Math.log(n) + n - 0.5 * Math.log(2 * Math.PI);
  const r = 1 / (n * n);
  return (1 / 12 - (1 / 360 - (1 / 1260 - (1 / 1680 - r / 1188) * r) * r) * r) / n;
}

/** @internal x ln(x/m) + m − x for x and m above 0, without loss where x is near m (Loader, 2000). */
export function deviance(x: number, m: number): number {
  if (Math.abs(x - m) > 0.1 * (x + m)) return x * Math.log(x / m) + m - x;
  const v = (x - m) / (x + m);
  let sum = (x - m) * v;
  let term = 2 * x * v;
  for (let j = 3; j < 60; j += 2) {
    term *= v * v;
    const next = sum + term / j;
    if (next === sum) break;
    sum = next;
  }
  return sum;
}
