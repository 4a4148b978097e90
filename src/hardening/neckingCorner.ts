import { cornerAt, cornerSums } from './cornerSums.js';

/** A maximum of the force whose curvature jumps at the onset of necking. */
export interface Corner {
  readonly strain: number;
  readonly force: number;
  /** By the curvature of the sum of squares about its least. */
  readonly standardError: number;
  readonly residualSumOfSquares: number;
}

/** @internal Parameters of the shape: place, height, two on the left, one on the right. */
export const CORNER_PARAMETERS = 5;
/** Places of the corner that are tried, away from both ends of the region by this share of it. */
const PLACES = 40;
const MARGIN = 0.08;

/** @internal The corner that fits best, by a scan of its place and a parabola through the sums about the best; undefined where none does. */
export function neckingCorner(x: Float64Array, y: Float64Array): Corner | undefined {
  const n = x.length;
  if (n <= CORNER_PARAMETERS + 1) return undefined;
  const low = x[0]!;
  const span = x[n - 1]! - low;
  if (!(span > 0)) return undefined;
  let mean = 0;
  for (let i = 0; i < n; i += 1) mean += y[i]! / n;
  const about = y.map((one) => one - mean);
  const sums = cornerSums(x, about, low, span);
  const restAt = (v: number): number => cornerAt(sums, (v - low) / span)?.rest ?? Infinity;
  let step = ((1 - 2 * MARGIN) * span) / PLACES;
  let best = NaN;
  let least = Infinity;
  for (let k = 0; k <= PLACES; k += 1) {
    const v = low + MARGIN * span + k * step;
    const rest = restAt(v);
    if (rest < least) {
      least = rest;
      best = v;
    }
  }
  if (!(least < Infinity)) return undefined;
  // halved steps about the best, down to where the sum no longer tells places apart
  for (; step > 1e-4 * span; step /= 2)
    for (const v of [best - step, best + step]) {
      const rest = restAt(v);
      if (rest < least) {
        least = rest;
        best = v;
      }
    }
  const found = cornerAt(sums, (best - low) / span);
  if (!found) return undefined;
  const wide = 0.02 * span;
  const bend = (restAt(best - wide) - 2 * least + restAt(best + wide)) / (wide * wide);
  const variance = least / (n - CORNER_PARAMETERS);
  return {
    strain: best,
    force: mean + found.height,
    standardError: bend > 0 && bend < Infinity ? Math.sqrt((2 * variance) / bend) : span / Math.sqrt(12),
    residualSumOfSquares: least,
  };
}
