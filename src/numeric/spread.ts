import { squaresAbout } from './residualSums.js';

/** @internal Arithmetic mean, about the first value: equal values have that very value as their mean. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 1; i < values.length; i += 1) sum += values[i]! - values[0]!;
  return values[0]! + sum / values.length;
}

/** @internal Sample standard deviation, over n − 1; 0 of a single value. */
export function sampleDeviation(values: Float64Array): number {
  return values.length < 2 ? 0 : Math.sqrt(squaresAbout(mean(values), values, undefined) / (values.length - 1));
}
