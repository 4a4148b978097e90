/** @internal Arithmetic mean, about the first value: equal values have that very value as their mean. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 1; i < values.length; i += 1) sum += values[i]! - values[0]!;
  return values[0]! + sum / values.length;
}

/** @internal Weighted sum of the squares of y about a number. */
export function squaresAbout(centre: number, y: ArrayLike<number>, weights?: Float64Array): number {
  let sum = 0;
  if (weights) for (let i = 0; i < y.length; i += 1) sum += weights[i]! * (y[i]! - centre) * (y[i]! - centre);
  else for (let i = 0; i < y.length; i += 1) sum += (y[i]! - centre) * (y[i]! - centre);
  return sum;
}

/** Differences from the mean below this share of it are rounding. */
const ROUNDING = 1e-12;

/** @internal Sample standard deviation, over n − 1; 0 of a single value, and of values that differ by rounding alone. */
export function sampleDeviation(values: Float64Array): number {
  const centre = mean(values);
  const most = values.reduce((largest, one) => Math.max(largest, Math.abs(one - centre)), 0);
  if (values.length < 2 || most <= ROUNDING * Math.abs(centre)) return 0;
  return Math.sqrt(squaresAbout(centre, values) / (values.length - 1));
}
