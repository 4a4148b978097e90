import { choleskyFactor, cubicFit, horner, medianOf } from '../../numeric/index.js';

/**
 * @internal Noise about a smooth curve whose neighbours are correlated: their correlation, the deviation of a sample from what the one before
 * foretells, and how many samples told it, less the terms of their trends.
 */
export interface NoiseDrift {
  readonly correlation: number;
  readonly fresh: number;
  readonly samples: number;
}

/** A stretch of a record. */
interface Stretch {
  readonly motion: Float64Array;
  readonly force: Float64Array;
}

/** Terms of the trend: a cubic of the motion, so that jerks of the hand are no noise. */
const TERMS = 4;
/** Greatest correlation; beyond it drift and trend are one. */
const MOST = 0.98;
/** So many correlations are tried first, and how near the best is found. */
const TRIED = 14;
const FINE = 0.005;
/** Twice the logarithm of the likelihoods' ratio that chance exceeds once in ten thousand stretches without correlation (χ² of one degree). */
const SURE = 15.1;
/** Stretches are evenly spread, so many at most. */
const STRETCHES = 8;

/**
 * Restricted likelihood of a correlation and the deviation that goes with it, the trend being taken out by generalised least squares: samples less
 * what the one before foretells are independent, the first counts with its share.
 */
function likelihoodOf(place: Float64Array, rest: Float64Array, rho: number): { readonly log: number; readonly fresh: number } | undefined {
  const n = rest.length;
  const order = TERMS + 1;
  const sums = new Float64Array(order * order);
  const row = new Float64Array(order);
  const before = new Float64Array(order);
  const share = Math.sqrt(1 - rho * rho);
  for (let i = 0; i < n; i += 1) {
    const u = place[i]!;
    for (let k = 0, power = 1; k < order; k += 1, power *= u) {
      const value = k === TERMS ? rest[i]! : power;
      row[k] = i === 0 ? share * value : value - rho * before[k]!;
      before[k] = value;
    }
    for (let j = 0; j < order; j += 1) for (let k = 0; k <= j; k += 1) sums[order * j + k]! += row[j]! * row[k]!;
  }
  for (let j = 0; j < order; j += 1) for (let k = 0; k < j; k += 1) sums[order * k + j] = sums[order * j + k]!;
  const factor = choleskyFactor(sums, order);
  if (!factor) return undefined;
  let ofTrend = 0;
  for (let j = 0; j < TERMS; j += 1) ofTrend += Math.log(factor[(order + 1) * j]!);
  const root = factor[order * order - 1]!;
  if (!(root > 0)) return undefined;
  return { log: Math.log(share) - ofTrend - (n - TERMS) * Math.log(root), fresh: root / Math.sqrt(n - TERMS) };
}

/** The likeliest correlation of one stretch, and how much likelier it is than none. */
function driftOf({ motion, force }: Stretch): (NoiseDrift & { readonly gain: number }) | undefined {
  const fit = cubicFit(motion, force);
  if (!fit) return undefined;
  const place = motion.map((x) => (x - fit.centre) / fit.scale);
  // what is left of a cubic, so that few digits are lost
  const rest = force.map((one, i) => one - horner(fit.coefficients, place[i]!));
  const none = likelihoodOf(place, rest, 0);
  if (!none) return undefined;
  let best = { ...none, correlation: 0 };
  const attempt = (correlation: number): void => {
    const found = correlation > 0 && correlation <= MOST ? likelihoodOf(place, rest, correlation) : undefined;
    if (found && found.log > best.log) best = { ...found, correlation };
  };
  for (let k = 1; k <= TRIED; k += 1) attempt((k / TRIED) * MOST);
  for (let step = MOST / TRIED / 2; step > FINE; step /= 2)
    for (const rho of [best.correlation - step, best.correlation + step]) attempt(rho);
  return { correlation: best.correlation, fresh: best.fresh, samples: force.length - TERMS, gain: 2 * (best.log - none.log) };
}

/**
 * @internal Drift of the noise of a force by stretches of a record about smooth curves, the elastic one first; undefined where that one or the middle
 * of all shows none. So neither a pause in the one nor a corner in the others passes for drift.
 */
export function noiseDrift(stretches: readonly Stretch[]): NoiseDrift | undefined {
  const some = stretches.length <= STRETCHES ? stretches : stretches.filter((_, i) => (i * STRETCHES) % stretches.length < STRETCHES);
  const [elastic, ...others] = some.map(driftOf);
  if (!elastic || !(elastic.gain > SURE)) return undefined;
  const found = [elastic, ...others.flatMap((one) => one ?? [])];
  const middle = (of: 'correlation' | 'fresh' | 'gain'): number => medianOf(found.map((one) => one[of]));
  if (!(middle('gain') > SURE)) return undefined;
  return { correlation: middle('correlation'), fresh: middle('fresh'), samples: found.reduce((sum, { samples }) => sum + samples, 0) };
}
