import { medianOf } from './median.js';

/** @internal How many places of a column are looked at: enough for a median, few enough to cost nothing. */
export const PLACES = 301;
/** @internal Median of the absolute value of a normal deviate. */
export const QUARTILE = 0.674489750196082;

/** @internal Standard error of a noise level by so many samples, of itself: of a median, whose neighbouring differences go together. */
export const noiseLevelError = (samples: number): number => 1.5 / Math.sqrt(Math.min(samples, PLACES));

/**
 * @internal Standard deviation of the noise of a column between two samples, from its third differences, of neighbours or of samples so far apart.
 *
 * Third differences cancel any parabola, so what remains of a smooth curve is its noise; their median is not moved by a kink, a
 * fall or a spike. For independent normal noise the standard deviation of a third difference is √20 times that of a sample, and
 * the median of its absolute value 0.6745 of that.
 */
export function noiseLevel(column: Float64Array, first = 0, end = column.length, apart = 1): number {
  const available = end - first - 3 * apart;
  if (available < 1) return 0;
  const stride = Math.ceil(available / PLACES);
  const differences = new Array<number>(Math.ceil(available / stride));
  for (let k = 0, i = first; k < differences.length; k += 1, i += stride)
    differences[k] = Math.abs(column[i + 3 * apart]! - 3 * column[i + 2 * apart]! + 3 * column[i + apart]! - column[i]!);
  return medianOf(differences) / (QUARTILE * Math.sqrt(20));
}
