import { failure, success, type Outcome } from '../../base/index.js';
import { cellMeans, cubicFit, maximumIndex, noiseLevel, quarticRest, stretchAbove } from '../../numeric/index.js';
import { CORNER_PARAMETERS, neckingCorner, type Corner } from './neckingCorner.js';
import type { NeckingOnset, NeckingReason } from './NeckingOnset.js';
import { CELLS, smoothMaximum } from './smoothMaximum.js';

/** The widest region: where the force is above this share of its maximum. */
const SHARE = 0.98;
const LEAST = 8;
/** Noise of the running mean that finds the region, as a share of the fall at its ends. */
const CALM = 1 / 12;

/** Means over so many samples to either side, as far as there are any. */
function runningMean(values: Float64Array, half: number): Float64Array {
  const n = values.length;
  const sums = new Float64Array(n + 1);
  for (let i = 0; i < n; i += 1) sums[i + 1] = sums[i]! + values[i]!;
  const means = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    const begin = Math.max(0, i - half);
    const end = Math.min(n, i + half + 1);
    means[i] = (sums[end]! - sums[begin]!) / (end - begin);
  }
  return means;
}

/** The samples around the maximum of the running mean, down to the share; the mean is as long as the noise asks for. */
function regionOf(force: Float64Array): { readonly first: number; readonly last: number; readonly top: number } {
  const n = force.length;
  const highest = force[maximumIndex(force)]!;
  const wanted = (noiseLevel(force) / (CALM * (1 - SHARE) * highest)) ** 2;
  const half = Math.floor(Math.min(wanted, n / 8) / 2);
  const means = half === 0 ? force : runningMean(force, half);
  const top = maximumIndex(means, half, n - half);
  const [first, last] = stretchAbove(means, SHARE * means[top]!, top);
  return { first, last, top };
}

/**
 * The corner that fits a region best, and its probability. Before the samples are seen it is one half; a cubic and a quartic, which has as many parameters as the corner, share the other half. The samples change these by the
 * criterion of Bayes and Schwarz. Where a curve is merely not cubic, the quartic fits as well and the corner gets next to nothing.
 */
function cornerOf(strain: Float64Array, force: Float64Array): (Corner & { readonly share: number }) | undefined {
  const { x, y } = cellMeans(strain, force, 0, strain.length - 1, CELLS);
  const n = x.length;
  const cubic = cubicFit(x, y);
  const corner = cubic && neckingCorner(x, y);
  if (!corner) return undefined;
  // probability of a polynomial over that of the corner; each parameter fewer counts as a factor of the root of n
  const over = (rest: number, fewer: number): number => Math.sqrt(n) ** fewer * (rest / corner.residualSumOfSquares) ** (-n / 2);
  const ofCubic = over(cubic.residualStandardDeviation ** 2 * (n - 4), CORNER_PARAMETERS - 4);
  const ofEqual = over(quarticRest(x, y, cubic) ?? Infinity, 0);
  const share = 1 / (1 + (ofCubic + ofEqual) / 2);
  // no number where neither leaves anything
  return Object.assign(corner, { share: share > 0 ? share : 0 });
}

/** @internal Onset of necking from the true strain and the force over the original area, around its maximum. */
export function neckingByCurve(strain: Float64Array, force: Float64Array): Outcome<NeckingOnset, NeckingReason> {
  const { first, last, top } = regionOf(force);
  if (!(force[top]! > 0)) return failure('no-maximum', 'the stress around its maximum is not above 0');
  if (top >= force.length - 2) return failure('maximum-at-end', 'the force does not fall after its highest sample');
  if (last - first + 1 < LEAST) return failure('too-few-points', `${last - first + 1} samples lie around the maximum; ${LEAST} are needed`);
  const x = strain.subarray(first, last + 1);
  const y = force.subarray(first, last + 1);
  const corner = cornerOf(x, y);
  const smooth = smoothMaximum(x, y, top - first);
  const share = corner?.share ?? 0;
  const [one, other] = [smooth ?? corner, corner ?? smooth];
  const shape = share > 0.5 ? 'corner' : 'smooth';
  if (!one || !other || (!smooth && shape === 'smooth')) return failure('no-maximum', 'the samples around the maximum do not make one');
  // mean of both, weighted by their probabilities; its variance is that within each and that between them
  const apart = other.strain - one.strain;
  const mean = one.strain + share * apart;
  return success({
    strain: mean,
    stress: (one.force + share * (other.force - one.force)) * Math.exp(mean),
    standardUncertainty: Math.hypot(
      Math.sqrt(1 - share) * one.standardUncertainty,
      Math.sqrt(share) * other.standardUncertainty,
      Math.sqrt(share * (1 - share)) * apart,
    ),
    method: 'curve',
    shape,
  });
}
