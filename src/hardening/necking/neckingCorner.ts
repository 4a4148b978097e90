import { cornerAt, cornersAt, cornerSums, type CornerSums } from './cornerSums.js';

/** A maximum of the force whose curvature jumps at the onset of necking. */
export interface Corner {
  readonly strain: number;
  readonly force: number;
  /** Over all places by their likelihood. */
  readonly standardUncertainty: number;
  readonly residualSumOfSquares: number;
}

/** @internal Parameters of the shape: place, height, two on the left, one on the right. */
export const CORNER_PARAMETERS = 5;
/** Places of the corner that are tried, away from both ends of the region by this share of it. */
const PLACES = 40;
const MARGIN = 0.08;
/** Number of places at which the likelihood is evaluated, out to where it is below this share of the greatest. */
const STEPS = 60;
const NOTHING = 1e-5;
/** Resolution of the search for the best place, as a share of the region; and the share of the least sum below which two places count as equally good. */
const NEAREST = 1e-9;
const FLAT = 1e-12;

/** Whether a corner may be at a place: not beyond the margins. */
const inside = (place: number): boolean => Math.abs(place - 0.5) <= 0.5 - MARGIN + NEAREST;

/** Sum of squares with the corner at a place; infinite where there is none. */
function restAt(sums: CornerSums, place: number, found: Float64Array): number {
  if (!inside(place)) return Infinity;
  cornersAt(sums, place, 0, 1, found);
  return found[1]!;
}

/** The place of the least sum, by a scan, and that sum. */
function bestPlace(sums: CornerSums, found: Float64Array): readonly [number, number] {
  let step = (1 - 2 * MARGIN) / PLACES;
  let best = NaN;
  let least = Infinity;
  cornersAt(sums, MARGIN, step, PLACES + 1, found);
  for (let k = 0; k <= PLACES; k += 1)
    if (found[2 * k + 1]! < least) {
      least = found[2 * k + 1]!;
      best = MARGIN + k * step;
    }
  // halved steps about the best, down to where the sum no longer tells places apart
  for (let apart = true; apart && step > NEAREST; step /= 2) {
    const centre = best;
    const before = restAt(sums, centre - step, found);
    const after = restAt(sums, centre + step, found);
    apart = Math.max(before, after) - least > FLAT * least;
    if (before < least) {
      best = centre - step;
      least = before;
    }
    if (after < least) {
      best = centre + step;
      least = after;
    }
  }
  return [best, least];
}

/** Mean distance from the best place and standard deviation of all places, by their likelihood, of so many samples. */
function spreadAbout(sums: CornerSums, best: number, least: number, n: number, found: Float64Array): readonly [number, number] {
  const power = (CORNER_PARAMETERS - n) / 2;
  const likelihoodOf = (rest: number): number => (rest > least ? Math.exp(power * Math.log(rest / least)) : 1);
  const endOf = (side: number): number => {
    const nothing = (away: number): boolean => likelihoodOf(restAt(sums, best + side * away, found)) <= NOTHING;
    let away = 1 / PLACES;
    while (!nothing(away)) away *= 2;
    while (away > NEAREST && nothing(away / 2)) away /= 2;
    return side * away;
  };
  const from = endOf(-1);
  const apart = (endOf(1) - from) / STEPS;
  cornersAt(sums, best + from, apart, STEPS + 1, found);
  let [all, first, second] = [0, 0, 0];
  for (let k = 0; k <= STEPS; k += 1) {
    const away = from + k * apart;
    const likelihood = inside(best + away) ? likelihoodOf(found[2 * k + 1]!) : 0;
    all += likelihood;
    first += likelihood * away;
    second += likelihood * away * away;
  }
  const shift = all > 0 ? first / all : 0;
  // no better than the places tell apart
  return [shift, Math.sqrt(Math.max(all > 0 ? second / all - shift * shift : 0, (apart * apart) / 12))];
}

/**
 * @internal The corner that fits best, by a scan of its place; its own place and the uncertainty of it are the mean and the deviation of all
 * places by their likelihood, which falls unevenly to the two sides and ends at the margins. Undefined where none fits.
 */
export function neckingCorner(x: Float64Array, y: Float64Array): Corner | undefined {
  const n = x.length;
  if (n <= CORNER_PARAMETERS + 1) return undefined;
  const low = x[0]!;
  const span = x[n - 1]! - low;
  if (!(span > 0)) return undefined;
  let mean = 0;
  for (let i = 0; i < n; i += 1) mean += y[i]!;
  mean /= n;
  const sums = cornerSums(x, y, low, span, mean);
  const places = new Float64Array(2 * (STEPS + 1));
  const [best, least] = bestPlace(sums, places);
  if (least === Infinity) return undefined;
  const found = cornerAt(sums, best);
  if (!found) return undefined;
  const [shift, deviation] = spreadAbout(sums, best, least, n, places);
  return {
    strain: low + span * (best + shift),
    force: mean + found.height,
    standardUncertainty: span * deviation,
    residualSumOfSquares: least,
  };
}
