import { medianOf } from './median.js';

/** @internal How many places of a column are looked at: enough for a median, few enough to cost nothing. */
export const PLACES = 301;
/** @internal Median of the absolute value of a normal deviate. */
export const QUARTILE = 0.674489750196082;

/**
 * That of one independent difference is 1/(4 φ(q) q) = 1.166, q being the quartile; third differences have correlations of −3/4, 3/10 and −1/20, which makes
 * it so much where every place, or every second or third, is looked at.
 */
const OF_ONE = [1.508, 1.206, 1.167] as const;

/** @internal Standard error of a noise level of normal noise in so many samples, as a share of itself: of a median of differences, whose neighbours go together. */
export function noiseLevelError(samples: number): number {
  const stride = Math.ceil((samples - 3) / PLACES);
  return (OF_ONE[stride - 1] ?? 1.166) / Math.sqrt(Math.ceil((samples - 3) / stride));
}

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
