import { failure, success, type Outcome } from '../base/index.js';
import { horner, noiseLevel, polynomialFit } from '../numeric/index.js';
import type { NeckingOnset, NeckingReason } from './considere.js';

/** The widest region: where the force is above this share of its maximum. */
const SHARE = 0.98;
/** Widths of the regions that are tried, as shares of the widest, narrowest first. */
const WIDTHS = [0.16, 0.23, 0.32, 0.45, 0.63, 0.8, 1];
const LEAST = 8;
/** So many means stand for the samples: the place of the maximum is the same, at a fraction of the work. */
const CELLS = 256;
/** Noise of the running mean that finds the region, as a share of the fall at its ends. */
const CALM = 1 / 12;
/** Regions agree while the intervals of this many standard errors have a point in common. */
const AGREE = 1.5;

interface Peak {
  readonly strain: number;
  readonly force: number;
  /** By the scatter about the cubic, and by the noise alone, which knows no lack of fit. */
  readonly byScatter: number;
  readonly byNoise: number;
}

/** The samples around the maximum of the running mean, down to the share; the mean is as long as the noise asks for. */
function regionOf(force: Float64Array): { readonly first: number; readonly last: number; readonly top: number } {
  const n = force.length;
  const highest = force.reduce((most, one) => Math.max(most, one), -Infinity);
  const wanted = (noiseLevel(force) / (CALM * (1 - SHARE) * highest)) ** 2;
  const half = Math.floor(Math.min(wanted, n / 8) / 2);
  const sums = new Float64Array(n + 1);
  for (let i = 0; i < n; i += 1) sums[i + 1] = sums[i]! + force[i]!;
  const mean = (i: number): number => {
    const begin = Math.max(0, i - half);
    const end = Math.min(n, i + half + 1);
    return half === 0 ? force[i]! : (sums[end]! - sums[begin]!) / (end - begin);
  };
  let top = half;
  for (let i = half; i < n - half; i += 1) if (mean(i) > mean(top)) top = i;
  const least = SHARE * mean(top);
  let first = top;
  let last = top;
  while (first > 0 && mean(first - 1) >= least) first -= 1;
  while (last < n - 1 && mean(last + 1) >= least) last += 1;
  return { first, last, top };
}

/** Means over cells of equal numbers of samples, of those between two strains. */
function cellMeans(strain: Float64Array, force: Float64Array, low: number, high: number) {
  const inside: number[] = [];
  for (let i = 0; i < strain.length; i += 1) if (strain[i]! >= low && strain[i]! <= high) inside.push(i);
  const size = Math.max(1, Math.ceil(inside.length / CELLS));
  const cells = Math.floor(inside.length / size);
  const means = { x: new Float64Array(cells), y: new Float64Array(cells), size };
  for (let k = 0; k < cells * size; k += 1) {
    const cell = Math.floor(k / size);
    means.x[cell]! += strain[inside[k]!]! / size;
    means.y[cell]! += force[inside[k]!]! / size;
  }
  return means;
}

/** Root of a cubic's derivative where the cubic has a maximum, within its region. */
function maximumOf(c: readonly number[]): number | undefined {
  const [, b = 0, two = 0, three = 0] = c;
  const under = two * two - 3 * three * b;
  if (!(under > 0)) return undefined;
  // of both roots the one with negative curvature, in the form that loses no digits
  const root = two < 0 ? b / (Math.sqrt(under) - two) : -(two + Math.sqrt(under)) / (3 * three);
  return Number.isFinite(root) ? root : undefined;
}

/** Maximum of the cubic through the samples between two strains. */
function peakBetween(strain: Float64Array, force: Float64Array, low: number, high: number, noise: number): Peak | undefined {
  const { x, y, size } = cellMeans(strain, force, low, high);
  if (x.length < LEAST) return undefined;
  const fit = polynomialFit(x, y, 3);
  const u = maximumOf(fit.scaled);
  if (u === undefined || Math.abs(u) > 1) return undefined;
  const gradient = [0, 1, 2 * u, 3 * u * u];
  const variance = fit.scaledCovariance.reduce(
    (sum, row, j) => sum + row.reduce((inner, one, k) => inner + gradient[j]! * one * gradient[k]!, 0),
    0,
  );
  const byScatter = (fit.scale * Math.sqrt(Math.max(0, variance))) / Math.abs(2 * fit.scaled[2]! + 6 * fit.scaled[3]! * u);
  const scatter = Math.sqrt(fit.residualSumOfSquares / fit.degreesOfFreedom);
  return {
    strain: fit.centre + fit.scale * u,
    force: horner(fit.scaled, u),
    byScatter,
    byNoise: scatter > 0 ? (byScatter * noise) / Math.sqrt(size) / scatter : 0,
  };
}

/** @internal Onset of necking from the samples around the maximum of the force that goes with true values. */
export function neckingByCurve(strain: Float64Array, stress: Float64Array): Outcome<NeckingOnset, NeckingReason> {
  // up to a factor: the original area
  const force = stress.map((sigma, i) => sigma * Math.exp(-strain[i]!));
  const { first, last, top } = regionOf(force);
  if (!(force[top]! > 0)) return failure('no-maximum', 'the stress around its maximum is not above 0');
  if (top >= force.length - 2) return failure('maximum-at-end', 'the force does not fall after its highest sample');
  if (last - first + 1 < LEAST) return failure('too-few-points', `${last - first + 1} samples lie around the maximum; ${LEAST} are needed`);
  const x = strain.subarray(first, last + 1);
  const y = force.subarray(first, last + 1);
  const noise = noiseLevel(y);
  const low = x.reduce((least, one) => Math.min(least, one), Infinity);
  const high = x.reduce((most, one) => Math.max(most, one), -Infinity);
  const middle = peakBetween(x, y, low, high, noise)?.strain ?? strain[top]!;
  const reach = Math.max(middle - low, high - middle);
  let [from, to] = [-Infinity, Infinity];
  let found: Peak | undefined;
  let moved = 0;
  for (const width of WIDTHS) {
    const peak = peakBetween(x, y, middle - width * reach, middle + width * reach, noise);
    if (!peak) continue;
    from = Math.max(from, peak.strain - AGREE * peak.byNoise);
    to = Math.min(to, peak.strain + AGREE * peak.byNoise);
    if (found && from > to) break;
    moved = found ? peak.strain - found.strain : 0;
    found = peak;
  }
  if (!found) return failure('no-maximum', 'the samples around the maximum do not make one');
  return success({
    strain: found.strain,
    stress: found.force * Math.exp(found.strain),
    // how far the last widening moved it stands for the lack of fit that no scatter shows
    standardUncertainty: Math.hypot(found.byScatter, moved),
    method: 'curve',
  });
}
