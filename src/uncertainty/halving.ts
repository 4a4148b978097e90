/**
 * @internal By what a source must shrink, all else as it is, for a variance to fall to a quarter; undefined where even without it the
 * variance stays above. `variance` gives the variance with the source multiplied by a factor from 0 to 1.
 */
export function halving(variance: (factor: number) => number): number | undefined {
  const target = variance(1) / 4;
  if (!(target > 0) || variance(0) > target) return undefined;
  let low = 0;
  let high = 1;
  // between low, where the variance is small enough, and high, where it is not: as many halvings as a number has binary digits
  for (let k = 0; k < 53; k += 1) {
    const middle = (low + high) / 2;
    if (variance(middle) <= target) low = middle;
    else high = middle;
  }
  return low;
}
