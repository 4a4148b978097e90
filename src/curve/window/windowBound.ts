import { beaten } from './windowBeaten.js';
import { tieOf, type Incumbent } from './windowIncumbent.js';
import { levelExcess } from './windowLevel.js';
import { squaresOfSums } from './windowLine.js';
import { greatest, ROUNDING, type WindowMoments } from './windowMoments.js';
import type { WindowTask } from './windowTask.js';
import type { WindowTree } from './windowTree.js';

/*
 * An upper bound of the score over a box of windows: all that start in one range of blocks and end in another. Only windows whose line
 * rises count.
 *
 *      samples   ......|---- A ----|------ inner ------|---- B ----|......
 *                      |--------------- outer ---------------------|
 *      a window W             [----------------------------]
 *
 * W begins within A and ends within B. The *inner* part lies in every window of the box, the *outer* part is their union; A and B are what outer
 * has beyond inner on the left and on the right. x is strain, r stress less a base line, both about fixed places. Inner is a whole number of
 * blocks, or empty.
 *
 * 1. Squares about the own mean or the own line only grow with more samples: Sxx(inner) <= Sxx(W) <= Sxx(outer) and
 *    RSS(inner) <= RSS(W) <= RSS(outer). Let t^2 = 1 / Sxx(W): t lies between two ends, those of outer and of inner. The standard error is at
 *    least s t, with s^2 = RSS(inner) / (n(outer) - 2).
 * 2. Let e be the residuals of outer about its line. Over W their own line has some slope k, and k^2 Sxx(W) + RSS(W) is the sum of their squares
 *    about their mean, at most RSS(outer). So slope(W) = slope(outer) + k is at most slope(outer) + K t, with K^2 = RSS(outer) - RSS(inner). One root,
 *    and most boxes are dropped.
 * 3. Let r = c + d x + e, with any slope d and with c such that the sum of e over inner vanishes. Then slope(W) = d + N t^2, N being the
 *    sum of (x - m) e over W and m the mean of x over W. Over inner this sum is (slope(inner) - d) Sxx(inner); steps 5 to 7 bound the rest.
 *    The slope d is that which a window with the best score would have if its error were s t with t about that of outer: then N must be positive for
 *    a better one, and samples that raise Sxx lower N at once. Where inner lies at one strain (*level*) it has no slope and t no upper end, yet N < 0 decides.
 * 4. A score that never falls with the slope and never rises with the standard error is thereby at most that of a slope and an error which both
 *    hang on t alone, and this one is greatest at an end of t. For slope - z s t: it is linear in t with 2; with 3 it is convex, or falls where N < 0.
 *    For - s t / slope: with 2 it only falls or only rises; with 3 it falls, then rises, or it does one of both. For with 2 t / slope is
 *    t / (c + K t), whose derivative c / (c + K t)^2 keeps its sign; with 3 it is t / (c + N t^2), whose derivative (c - N t^2) / (c + N t^2)^2 goes
 *    from plus to minus where N > 0, so that the score falls, then rises; either way none in between is above both ends.
 *
 * Steps 5 to 7 hold where all x of A lie at or below the mean of inner and all of B at or above it (always, where x never goes back or inner is level):
 *
 * 5. m is least with all of A at its least x and nothing of B, and greatest with all of B at its greatest.
 * 6. W meets A in its last samples, i to the end of A. With p the middle of the range of x over A the part
 *    of A in N is (p - m) S + T, S being the sum of e over those samples and T that of (x - p) e. S lies between two bounds, least <= 0 <=
 *    most, for the bounds include taking no sample. Let s = r - c' - d' x, the line c' + d' x being that of a good window (windowTree.ts). S is the
 *    sum of s, which lies between the running sum of s at the end of A less its greatest and less its least value within A, less the sum of
 *    (c - c') + (d - d') x, which is between n_A times its least and its greatest value, or 0, taken at the ends of the range of x over A. Where x
 *    never goes back, T is (x_i - p) S plus the sum of each later sample's step of x times the sum of e from that sample on (by parts), at most
 *    w (most - least / 2), w being the width of A: x_i lies at most w/2 to either side of p, and the steps add up to no more
 *    than what is left of w. Where it does, T is at most w/2 times the root of n_A times the sum of e^2 over A, by Cauchy. Likewise for B, met in its
 *    first samples. A running sum of noise grows as the root of the number of samples, not as the number; that is what keeps boxes few.
 * 7. Where A and B are short, their parts of N are summed sample by sample instead, for every place where a window may begin or end. Where inner
 *    is level and A or B as well, N is bounded as a whole (windowLevel.ts): by parts, either would hide that the window must rise.
 *
 * 8. The rise of a line over its window is its slope times its strain, at most the bound of the slope times the range of x; a box whose rise
 *    falls short of the least is dropped. The two end samples alone, D apart, hold D^2 / 2 in Sxx(W) beside Sxx(inner), so that with 2
 *    k D is at most K D / root of (Sxx(inner) + D^2 / 2), which grows with D.
 *    A box whose least error and slope of inner alone, before any N is added, pass both tests is kept at once: to keep a box is never wrong.
 * 9. A box is dropped where its bound does not tie with the highest score found, or where it ties at best and its windows rise over no more than the
 *    incumbent. So the highest score is found to one tie (1e-9), and the widest of the windows that tie with it, as far as running moments
 *    tell scores: to less than a tenth of a tie where there is noise. Where there is none, nothing is left of the residuals but rounding, by
 *    which windows of eight samples may miss 1e-6 of their score; then the search is made again about the line found (windowRounding.ts).
 */

/** Of ranges up to so many samples the residuals are summed one by one. */
const SHORT = 16;

/** Boxes of up to so many blocks a side whose inner part lies at one strain are summed one by one as well. */
const LEVEL = 16;

/** Step 6, in any order of x: the most that T is over part of the samples between two edges, whose x lie within a width. */
const cauchyBound = (sums: Float64Array, from: number, to: number, count: number, c: number, d: number, width: number): number =>
  (width / 2) * Math.sqrt(Math.max(0, count * squaresOfSums(sums, from, to, count, c, d)));

/** Step 7: the most that the samples on one side give to N, counted from inner outwards, from one to the other (excluded). */
function shortExcess(
  { strain, stress }: WindowTask,
  base: WindowMoments['base'],
  from: number,
  stop: number,
  step: -1 | 1,
  place: number,
  c: number,
  d: number,
  lowMean: number,
  highMean: number,
): number {
  let S = 0;
  let T = 0;
  let most = -Infinity;
  for (let i = from; i !== stop; i += step) {
    const x = strain[i]! - base.x0;
    const e = stress[i]! - base.y0 - base.slope * x - c - d * x;
    S += e;
    T += (x - place) * e;
    const part = T + (place - (S > 0 ? lowMean : highMean)) * S;
    if (part > most) most = part;
  }
  return most;
}

/**
 * @internal True where no window that starts within node a and ends within node b, both of `size` blocks, can be the best. In one piece but for step 7, for a call
 * with so many numbers costs more than what it does; the numbers in it are the steps above.
 */
export function hopeless(
  task: WindowTask,
  moments: WindowMoments,
  tree: WindowTree,
  a: number,
  b: number,
  size: number,
  best: Incumbent,
): boolean {
  const { strain, start, points, span, score, slopeFor, perError, gap } = task;
  const { base, sums, size: samples, blocks, leastFrom, greatestUpTo } = moments;
  const { width, lowest, highest } = tree;
  const nodes = width / size; // on this level, the first of them being number `nodes`

  // the box: blocks a0 to a1 and b0 to b1 (excluded), and the strain from end to end
  const a0 = (a - nodes) * size;
  const b0 = (b - nodes) * size;
  if (a0 >= blocks || b0 >= blocks || b0 + size <= a0) return true;
  const a1 = Math.min(a0 + size, blocks);
  const b1 = Math.min(b0 + size, blocks);
  const n = task.end - start;
  const outerEnd = Math.min(b1 * samples, n);
  const outerCount = outerEnd - a0 * samples;
  if (outerCount < points) return true;
  const aLow = leastFrom ? leastFrom[a0]! : strain[start + a0 * samples]! - base.x0;
  const bHigh = greatestUpTo ? greatestUpTo[b1 - 1]! : strain[start + outerEnd - 1]! - base.x0;
  const distance = bHigh - aLow;
  if (!(distance > 0)) return true;

  // 1, 2: the line of outer, and squares about it
  const atA = 5 * a0;
  const afterB = 5 * b1;
  const outerX = sums[afterB]! - sums[atA]!;
  const outerR = sums[afterB + 1]! - sums[atA + 1]!;
  const outerXX = sums[afterB + 2]! - sums[atA + 2]! - (outerX * outerX) / outerCount;
  if (!(outerXX > 0)) return false;
  const outerXR = sums[afterB + 3]! - sums[atA + 3]! - (outerX * outerR) / outerCount;
  const outerD = outerXR / outerXX;
  const outerRest =
    sums[afterB + 4]! - sums[atA + 4]! - (outerR * outerR) / outerCount - outerD * outerXR + ROUNDING * greatest(sums, atA + 4, afterB + 4);
  const innerCount = (b0 - a1) * samples;
  const outer = base.slope + outerD;
  // 2, 8: where inner is too short for a line of its own, the rise alone decides
  if (innerCount < 3) return Math.max(0, outer) * distance + Math.sqrt(2 * outerRest) < span;

  // where x of A, of B and of inner may lie
  const p = 5 * a1;
  const q = 5 * b0;
  const aHigh = greatestUpTo ? greatestUpTo[a1 - 1]! : strain[start + a1 * samples - 1]! - base.x0;
  const bLow = leastFrom ? leastFrom[b0]! : strain[start + b0 * samples]! - base.x0;
  const innerLow = leastFrom ? leastFrom[a1]! : strain[start + a1 * samples]! - base.x0;
  const innerHigh = greatestUpTo ? greatestUpTo[b0 - 1]! : strain[start + b0 * samples - 1]! - base.x0;
  const level = innerLow === innerHigh;

  // 1: the line of inner, and squares about it; the least error s t, and the ends of t
  const ix = level ? innerCount * innerLow : sums[q]! - sums[p]!;
  const ir = sums[q + 1]! - sums[p + 1]!;
  const share = 1 / innerCount;
  const ixx = level ? 0 : sums[q + 2]! - sums[p + 2]! - ix * ix * share;
  if (!level && !(ixx > 0)) return false;
  const ixr = level ? 0 : sums[q + 3]! - sums[p + 3]! - ix * ir * share;
  const rest = Math.max(0, sums[q + 4]! - sums[p + 4]! - ir * ir * share - (level ? 0 : (ixr / ixx) * ixr));
  const s = Math.sqrt(rest / (outerCount - 2));
  const innerT = 1 / Math.sqrt(ixx);
  const outerT = 1 / Math.sqrt(outerXX);
  const limit = best.top + Math.max(gap * Math.abs(best.top), tieOf(task, best.top));

  // 8: the slope of inner alone keeps the box, no need to know how much more it may be
  const slope = base.slope + ixr / ixx;
  if (!level && score(slope, s * outerT) > limit && slope * distance >= span) return false;

  // 2, 8: the rise; 2, 4, 9: the score
  const K = Math.sqrt(outerRest - rest);
  if (Math.max(0, outer) * distance + (K * distance) / Math.sqrt(ixx + (distance * distance) / 2) < span) return true;
  if (!level && beaten(task, best, limit, distance, s, innerT, outer + K * innerT, outerT, outer + K * outerT)) return true;
  // no more can be said where steps 5 to 7 do not hold
  if (!level && (innerCount * aHigh > ix || ix > innerCount * bLow)) return false;

  // 3: the line r = c + d x + e
  let d = slopeFor(best.top) - base.slope + (perError(best.top) * s) / (Math.sqrt(outerXX) + Math.sqrt(ixx));
  if (!level && !(s > 0 && Number.isFinite(d))) d = ixr / ixx;
  if (!Number.isFinite(d)) return false;
  const c = (ir - d * ix) * share;
  const aCount = (a1 - a0) * samples;
  const bCount = outerEnd - b0 * samples;
  // 5: the least and the greatest m
  const lowMean = (ix + aCount * aLow) / (innerCount + aCount);
  const highMean = (ix + bCount * bHigh) / (innerCount + bCount);
  const aWidth = aHigh - aLow;
  const bWidth = bHigh - bLow;
  const aPlace = aLow + aWidth / 2;
  const bPlace = bLow + bWidth / 2;

  // 3: N of inner, and its rounding
  const squares = greatest(sums, atA + 2, afterB + 2);
  let N = ixr - d * ixx + ROUNDING * (Math.sqrt(squares * greatest(sums, atA + 4, afterB + 4)) + Math.abs(d) * squares);
  // 7 where inner is level with a side, or A and B are short; else 6
  const levelLeft = level && aLow === innerLow;
  if (level && (levelLeft || bHigh === innerHigh) && size <= LEVEL)
    N += levelExcess(task, moments, levelLeft ? 1 : -1, a0 * samples, a1 * samples, b0 * samples, outerEnd, c, d);
  else if (aCount <= SHORT) {
    N += shortExcess(task, base, start + a1 * samples - 1, start + a0 * samples - 1, -1, aPlace, c, d, lowMean, highMean);
    N += shortExcess(task, base, start + b0 * samples, start + outerEnd, 1, bPlace, c, d, lowMean, highMean);
  } else {
    // 6: the line of e against the one that running sums are about
    const cc = c - tree.c;
    const dd = d - tree.d;
    const aBegin = cc + dd * aLow;
    const aStop = cc + dd * aHigh;
    const bBegin = cc + dd * bLow;
    const bStop = cc + dd * bHigh;
    const aSum = sums[p + 1]! - tree.c * a1 * samples - tree.d * sums[p]!;
    const bSum = sums[q + 1]! - tree.c * b0 * samples - tree.d * sums[q]!;
    const aLeast = aSum - highest[a]! - aCount * Math.max(0, aBegin, aStop);
    const aMost = aSum - lowest[a]! - aCount * Math.min(0, aBegin, aStop);
    const bLeast = lowest[b]! - bSum - bCount * Math.max(0, bBegin, bStop);
    const bMost = highest[b]! - bSum - bCount * Math.min(0, bBegin, bStop);
    N +=
      Math.max((aPlace - highMean) * aLeast, (aPlace - lowMean) * aMost) +
      Math.max((bPlace - lowMean) * bMost, (bPlace - highMean) * bLeast) +
      (leastFrom ? cauchyBound(sums, atA, p, aCount, c, d, aWidth) : aWidth * (aMost - aLeast / 2)) +
      (leastFrom ? cauchyBound(sums, q, afterB, bCount, c, d, bWidth) : bWidth * (bMost / 2 - bLeast));
  }

  // 3, 4, 9: the score
  if (level && !(N < 0)) return false;
  const target = base.slope + d;
  const mostT = level ? outerT : innerT;
  return beaten(task, best, limit, distance, s, mostT, target + N * mostT * mostT, outerT, target + N * outerT * outerT);
}
