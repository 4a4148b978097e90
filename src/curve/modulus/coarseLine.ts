import { PROOF_OFFSET } from '../../base/index.js';
import { firstReaching, maximumIndex } from '../../numeric/index.js';
import { clearOf, sustainedCrossing } from '../sustainedCrossing.js';

/** Equal steps of stress between zero and the highest stress; windows of the coarse line begin and end on them. */
const LEVELS = 40;
/** The lowest fifth is left out: seating under friction can start far too steep. */
const LOWEST = 8;
/** Least number of steps of a window. */
const LEAST_STEPS = 5;
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
  let i = firstReaching(stress, (LOWEST * top) / LEVELS, 0, end);
  if (i === end) return undefined;
  // by edge (the first sample that reaches a level, and the end): how many samples lie before it, and their sums of x, y, x², xy
  const edges = LEVELS - LOWEST + 2;
  const sums = new Float64Array(5 * edges);
  const first = i;
  const x0 = strain[i]!;
  const y0 = stress[i]!;
  let next = y0;
  let sx = 0,
    sy = 0,
    sxx = 0,
    sxy = 0;
  for (let k = 0; k < edges; k += 1) {
    for (; i < end && stress[i]! < next; i += 1) {
      const x = strain[i]! - x0;
      const y = stress[i]! - y0;
      sx += x;
      sy += y;
      sxx += x * x;
      sxy += x * y;
    }
    sums[5 * k] = i - first;
    sums[5 * k + 1] = sx;
    sums[5 * k + 2] = sy;
    sums[5 * k + 3] = sxx;
    sums[5 * k + 4] = sxy;
    next = k + 2 < edges ? ((LOWEST + k + 1) * top) / LEVELS : Infinity;
  }
  let slope = 0;
  let origin = 0;
  let last = -1;
  for (let p = 0; p < 5 * edges; p += 5) {
    const before = sums[p]!;
    const xBefore = sums[p + 1]!;
    const yBefore = sums[p + 2]!;
    const xxBefore = sums[p + 3]!;
    const xyBefore = sums[p + 4]!;
    for (let q = p + 5 * LEAST_STEPS; q < 5 * edges; q += 5) {
      const n = sums[q]! - before;
      if (n < 3) continue;
      const x = sums[q + 1]! - xBefore;
      const y = sums[q + 2]! - yBefore;
      const xx = n * (sums[q + 3]! - xxBefore) - x * x;
      const xy = n * (sums[q + 4]! - xyBefore) - x * y;
      if (!(xx > 0) || xy <= slope * xx) continue;
      slope = xy / xx;
      origin = x0 + x / n - (y0 + y / n) / slope;
      last = (first + sums[q]! - 1) | 0;
    }
  }
  return slope > 0 ? { slope, origin, last } : undefined;
}

/** Every so many samples of a column up to `end`. */
function strided(column: Float64Array, end: number, stride: number): Float64Array {
  if (stride === 1) return column;
  const taken = new Float64Array(Math.floor((end - 1) / stride) + 1);
  for (let k = 0; k < taken.length; k += 1) taken[k] = column[k * stride]!;
  return taken;
}

/** Slope of the guard, and its offset at the highest stress, as shares of those of the first offset line. */
const GUARD = 0.9;
/** Less than 1 by more than any rounding. */
const ALMOST = 0.999;

/**
 * @internal A coarse elastic line and where its 0.2 % offset line meets the curve, found twice: the second time without what lies
 * beyond the first crossing.
 *
 * Samples before the first crossing are looked at once, against a guard: a line less steep than the offset line, which it meets above the
 * highest stress. What lies on or above the guard, and no higher than the highest stress, lies above every line that is as steep and
 * passes the guard no lower. So the second offset line need not be held against these samples again.
 */
export function coarseLine(strain: Float64Array, stress: Float64Array, maximum: number): CoarseLine | undefined {
  const top = stress[maximum]!;
  let end = maximum + 1;
  let line: CoarseLine | undefined;
  let guard = { slope: Infinity, at: 0, from: 0, to: 0 };
  for (let round = 0; round < 2; round += 1) {
    const stride = Math.max(1, Math.floor(end / PLACES));
    const places = Math.floor((end - 1) / stride) + 1;
    const x = strided(strain, end, stride);
    const y = strided(stress, end, stride);
    const found = steepest(x, y, places, round === 0 ? top : y[maximumIndex(y, 0, places)]!);
    if (!found) return line;
    const { slope } = found;
    const origin = found.origin + PROOF_OFFSET;
    // the offset line cannot be met below the window that made it
    let first = found.last * stride;
    while (first > 0 && stress[first]! < slope * (strain[first]! - origin)) first -= 1;
    if (round === 0) {
      // strain where the guard reaches the highest stress
      const at = found.origin + GUARD * PROOF_OFFSET + top / slope;
      const to = clearOf(strain, stress, GUARD * slope, at - top / (GUARD * slope), first, maximum + 1);
      guard = { slope: GUARD * slope, at, from: first, to };
      first = to;
    } else if (
      slope >= guard.slope &&
      slope * (guard.at - origin) < ALMOST * top &&
      stress[maximumIndex(stress, guard.from, guard.to)]! <= top
    ) {
      first = clearOf(strain, stress, slope, origin, first, Math.min(guard.from + 3, maximum + 1));
      if (first >= guard.from) first = Math.max(first, guard.to);
    }
    const crossing = sustainedCrossing(strain, stress, slope, origin, first, maximum + 1);
    end = crossing < 0 ? maximum + 1 : crossing;
    line = { slope, origin: found.origin, end, offsetStress: stress[Math.min(end, maximum)]! };
  }
  return line;
}
