import { failure, success, type Outcome } from '../base/index.js';
import { cellMeans, cubicFit, horner, noiseLevel, polynomialRest } from '../numeric/index.js';
import type { NeckingOnset, NeckingReason } from './considere.js';
import { CORNER_PARAMETERS, neckingCorner, type Corner } from './neckingCorner.js';

/** The widest region: where the force is above this share of its maximum. */
const SHARE = 0.98;
/** Widths of the regions that are tried, as shares of the widest, narrowest first. */
const WIDTHS = [0.16, 0.23, 0.32, 0.45, 0.63, 0.8, 1];
const LEAST = 8;
/** About so many means stand for the samples of a region. */
const CELLS = 128;
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

/** Least and greatest value. */
function limitsOf(values: Float64Array): readonly [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < values.length; i += 1) {
    if (values[i]! < low) low = values[i]!;
    if (values[i]! > high) high = values[i]!;
  }
  return [low, high];
}

/** The samples around the maximum of the running mean, down to the share; the mean is as long as the noise asks for. */
function regionOf(force: Float64Array): { readonly first: number; readonly last: number; readonly top: number } {
  const n = force.length;
  const highest = limitsOf(force)[1];
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
  let first = 0;
  let last = strain.length - 1;
  while (first < last && strain[first]! < low) first += 1;
  while (last > first && strain[last]! > high) last -= 1;
  const { x, y, size } = cellMeans(strain, force, first, last, CELLS);
  if (x.length < LEAST) return undefined;
  const fit = cubicFit(x, y);
  if (!fit) return undefined;
  const u = maximumOf(fit.coefficients);
  if (u === undefined || Math.abs(u) > 1) return undefined;
  const gradient = [0, 1, 2 * u, 3 * u * u];
  let variance = 0;
  for (let j = 0; j < 4; j += 1) for (let k = 0; k < 4; k += 1) variance += gradient[j]! * fit.inverse[4 * j + k]! * gradient[k]!;
  const bend = Math.abs(2 * fit.coefficients[2]! + 6 * fit.coefficients[3]! * u);
  const perScatter = (fit.scale * Math.sqrt(variance)) / bend;
  return {
    strain: fit.centre + fit.scale * u,
    force: horner(fit.coefficients, u),
    byScatter: perScatter * fit.residualStandardDeviation,
    byNoise: (perScatter * noise) / Math.sqrt(size),
  };
}

/**
 * A corner at the onset, where it explains the whole region better than a cubic by the criterion of Bayes and Schwarz, and better than a
 * polynomial of as many parameters: a curve that is merely not cubic has none.
 */
function cornerOf(strain: Float64Array, force: Float64Array): (Corner & { readonly standardUncertainty: number }) | undefined {
  const { x, y } = cellMeans(strain, force, 0, strain.length - 1, CELLS);
  const n = x.length;
  const cubic = cubicFit(x, y);
  const corner = cubic && neckingCorner(x, y);
  if (!corner) return undefined;
  const rest = cubic.residualStandardDeviation ** 2 * (n - 4);
  const gain = n * Math.log(rest / corner.residualSumOfSquares) - (CORNER_PARAMETERS - 4) * Math.log(n);
  if (!(gain > 0) || corner.residualSumOfSquares >= (polynomialRest(x, y, CORNER_PARAMETERS - 1) ?? Infinity)) return undefined;
  // the smooth one has some share of the belief, and another place
  const u = maximumOf(cubic.coefficients);
  const apart = u === undefined ? 0 : cubic.centre + cubic.scale * u - corner.strain;
  return { ...corner, standardUncertainty: Math.hypot(corner.standardError, apart * Math.sqrt(1 / (1 + Math.exp(gain / 2)))) };
}

/** @internal Onset of necking from the samples around the maximum of the force that goes with true values. */
export function neckingByCurve(strain: Float64Array, stress: Float64Array): Outcome<NeckingOnset, NeckingReason> {
  // up to a factor: the original area
  const force = new Float64Array(stress.length);
  for (let i = 0; i < force.length; i += 1) force[i] = stress[i]! * Math.exp(-strain[i]!);
  const { first, last, top } = regionOf(force);
  if (!(force[top]! > 0)) return failure('no-maximum', 'the stress around its maximum is not above 0');
  if (top >= force.length - 2) return failure('maximum-at-end', 'the force does not fall after its highest sample');
  if (last - first + 1 < LEAST) return failure('too-few-points', `${last - first + 1} samples lie around the maximum; ${LEAST} are needed`);
  const x = strain.subarray(first, last + 1);
  const y = force.subarray(first, last + 1);
  const corner = cornerOf(x, y);
  if (corner)
    return success({
      strain: corner.strain,
      stress: corner.force * Math.exp(corner.strain),
      standardUncertainty: corner.standardUncertainty,
      method: 'curve',
      shape: 'corner',
    });
  const noise = noiseLevel(y);
  const [low, high] = limitsOf(x);
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
    shape: 'smooth',
  });
}
