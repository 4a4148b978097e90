/** Rounding of a stress, as a share of it: the least size of a residual, also of a perfect fit. */
const ROUNDING = 2 ** -52;

/** @internal Akaike's criterion with the correction for few samples, the scatter counted as a parameter; `size` is that of the stress [MPa]. */
export function aicc(residualSumOfSquares: number, points: number, parameters: number, size: number): number {
  const k = parameters + 1;
  const least = Math.max(residualSumOfSquares, points * (ROUNDING * size) ** 2);
  return points * Math.log(least / points) + 2 * k + (points > k + 1 ? (2 * k * (k + 1)) / (points - k - 1) : 0);
}
