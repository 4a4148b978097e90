import { maximumIndex } from '../numeric/index.js';
import { sustainedCrossing } from './sustainedCrossing.js';

/** Equal steps of stress between zero and the highest stress; windows of the coarse line begin and end on them. */
const LEVELS = 40;
/** The lowest fifth is left out: seating under friction can start far too steep. */
const START_SHARE = 0.2;
const SPAN_SHARE = 0.12;
/** @internal The plastic extension that bounds the elastic part and by which other windows are judged. */
export const OFFSET = 0.002;
/** Samples that a coarse line rests on are enough: of a long record they are taken at equal intervals. */
const PLACES = 4000;

/** @internal What the window search starts from. */
export interface CoarseLine {
  /** Slope of the coarse line [MPa]. */
  readonly slope: number;
  /** Strain where it meets zero stress [mm/mm]. */
  readonly origin: number;
  /** First sample at or beyond the 0.2 % offset line; where there is none, one past the highest stress. */
  readonly end: number;
  /** Stress there [MPa]. */
  readonly offsetStress: number;
}

/** Steepest least-squares line between two stress levels, over samples before `end`. */
function steepest(
  strain: Float64Array,
  stress: Float64Array,
  end: number,
  top: number,
): { slope: number; origin: number; last: number } | undefined {
  // edges: the first sample that reaches each level; running sums of the samples before each edge
  const edge = new Int32Array(LEVELS + 2);
  const sum = new Float64Array(4 * (LEVELS + 2));
  const x0 = strain[0]!;
  let level = 0;
  let next = 0;
  let sx = 0,
    sy = 0,
    sxx = 0,
    sxy = 0;
  for (let i = 0; i < end; i += 1) {
    const y = stress[i]!;
    while (level <= LEVELS && y >= next) {
      edge[level] = i;
      sum[4 * level] = sx;
      sum[4 * level + 1] = sy;
      sum[4 * level + 2] = sxx;
      sum[4 * level + 3] = sxy;
      level += 1;
      next = (level * top) / LEVELS;
    }
    const x = strain[i]! - x0;
    sx += x;
    sy += y;
    sxx += x * x;
    sxy += x * y;
  }
  while (level <= LEVELS + 1) {
    edge[level] = end;
    sum[4 * level] = sx;
    sum[4 * level + 1] = sy;
    sum[4 * level + 2] = sxx;
    sum[4 * level + 3] = sxy;
    level += 1;
  }
  let best: { slope: number; origin: number; last: number } | undefined;
  for (let p = Math.ceil(START_SHARE * LEVELS); p <= LEVELS; p += 1)
    for (let q = p + Math.ceil(SPAN_SHARE * LEVELS); q <= LEVELS + 1; q += 1) {
      const n = edge[q]! - edge[p]!;
      if (n < 3) continue;
      const a = 4 * p;
      const b = 4 * q;
      const ux = sum[b]! - sum[a]!;
      const uy = sum[b + 1]! - sum[a + 1]!;
      const xx = sum[b + 2]! - sum[a + 2]! - (ux * ux) / n;
      const xy = sum[b + 3]! - sum[a + 3]! - (ux * uy) / n;
      if (!(xx > 0) || (best && xy <= best.slope * xx)) continue;
      const slope = xy / xx;
      best = { slope, origin: x0 + ux / n - uy / n / slope, last: edge[q]! - 1 };
    }
  return best && best.slope > 0 ? best : undefined;
}

/** Every so many samples of a column up to `end`. */
function strided(column: Float64Array, end: number, stride: number): Float64Array {
  if (stride === 1) return column;
  const taken = new Float64Array(Math.floor((end - 1) / stride) + 1);
  for (let k = 0; k < taken.length; k += 1) taken[k] = column[k * stride]!;
  return taken;
}

/**
 * @internal A coarse elastic line and where its 0.2 % offset line meets the curve, found twice: the second time without what lies
 * beyond the first crossing.
 */
export function coarseLine(strain: Float64Array, stress: Float64Array, maximum: number): CoarseLine | undefined {
  let end = maximum + 1;
  let line: CoarseLine | undefined;
  for (let round = 0; round < 2; round += 1) {
    const stride = Math.max(1, Math.floor(end / PLACES));
    const places = Math.floor((end - 1) / stride) + 1;
    const x = strided(strain, end, stride);
    const y = strided(stress, end, stride);
    const found = steepest(x, y, places, round === 0 ? stress[maximum]! : y[maximumIndex(y, 0, places)]!);
    if (!found) return line;
    // the offset line cannot be met below the window that made it
    let first = found.last * stride;
    while (first > 0 && stress[first]! < found.slope * (strain[first]! - found.origin - OFFSET)) first -= 1;
    const crossing = sustainedCrossing(strain, stress, found.slope, found.origin + OFFSET, first, maximum + 1);
    end = crossing < 0 ? maximum + 1 : crossing;
    line = { slope: found.slope, origin: found.origin, end, offsetStress: stress[Math.min(end, maximum)]! };
  }
  return line;
}
