import { choleskyInverse } from '../numeric/index.js';

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
const TERMS = 4;

/** Least squares for a corner at v: height, square and cube on the left, square on the right, of t = (x − v)/scale; y about its mean. */
function atPlace(
  x: Float64Array,
  y: Float64Array,
  v: number,
  scale: number,
): { readonly height: number; readonly rest: number } | undefined {
  // sums of powers of t, and of y with them, on the left (l) and on the right (r)
  let l2 = 0;
  let l3 = 0;
  let l4 = 0;
  let l5 = 0;
  let l6 = 0;
  let r2 = 0;
  let r4 = 0;
  let y0 = 0;
  let yl2 = 0;
  let yl3 = 0;
  let yr2 = 0;
  let yy = 0;
  for (let i = 0; i < x.length; i += 1) {
    const t = (x[i]! - v) / scale;
    const tt = t * t;
    const value = y[i]!;
    y0 += value;
    yy += value * value;
    if (t < 0) {
      l2 += tt;
      l3 += tt * t;
      l4 += tt * tt;
      l5 += tt * tt * t;
      l6 += tt * tt * tt;
      yl2 += value * tt;
      yl3 += value * tt * t;
    } else {
      r2 += tt;
      r4 += tt * tt;
      yr2 += value * tt;
    }
  }
  const inverse = choleskyInverse([x.length, l2, l3, r2, l2, l4, l5, 0, l3, l5, l6, 0, r2, 0, 0, r4], TERMS);
  if (!inverse) return undefined;
  const c = (j: number): number =>
    inverse[TERMS * j]! * y0 + inverse[TERMS * j + 1]! * yl2 + inverse[TERMS * j + 2]! * yl3 + inverse[TERMS * j + 3]! * yr2;
  const [height, left, cube, right] = [c(0), c(1), c(2), c(3)] as const;
  // a maximum only where both sides fall away from it
  if (!(left < 0 && right < 0)) return undefined;
  return { height, rest: Math.max(0, yy - height * y0 - left * yl2 - cube * yl3 - right * yr2) };
}

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
  const restAt = (v: number): number => atPlace(x, about, v, span)?.rest ?? Infinity;
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
  const found = atPlace(x, about, best, span);
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
