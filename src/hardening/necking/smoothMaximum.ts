import { cellMeans, cubicFit, extent, horner, noiseLevel } from '../../numeric/index.js';

/** Widths of the regions that are tried, as shares of the widest, narrowest first. */
const WIDTHS = [0.16, 0.23, 0.32, 0.45, 0.63, 0.8, 1];
const LEAST = 8;
/** @internal About so many means stand for the samples of a region. */
export const CELLS = 128;
/** Regions agree while the intervals of this many standard errors have a point in common. */
const AGREE = 1.5;

/** A maximum of the force without a corner. */
interface SmoothMaximum {
  readonly strain: number;
  readonly force: number;
  readonly standardUncertainty: number;
}

interface Peak {
  readonly strain: number;
  readonly force: number;
  /** By the scatter about the cubic, and by the noise alone, which knows no lack of fit. */
  readonly byScatter: number;
  readonly byNoise: number;
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
 * @internal Maximum of the cubic over the widest region that agrees with all narrower ones within their noise, so that lack of fit does not shift it;
 * undefined where the samples make none. The region reaches as far to one side of the whole region's maximum as to the other.
 */
export function smoothMaximum(strain: Float64Array, force: Float64Array, top: number): SmoothMaximum | undefined {
  const noise = noiseLevel(force);
  const [low, high] = extent(strain);
  const widest = peakBetween(strain, force, low, high, noise);
  const middle = widest?.strain ?? strain[top]!;
  const reach = Math.max(middle - low, high - middle);
  let [from, to] = [-Infinity, Infinity];
  let found: Peak | undefined;
  let moved = 0;
  for (const width of WIDTHS) {
    const peak = width === 1 ? widest : peakBetween(strain, force, middle - width * reach, middle + width * reach, noise);
    if (!peak) continue;
    from = Math.max(from, peak.strain - AGREE * peak.byNoise);
    to = Math.min(to, peak.strain + AGREE * peak.byNoise);
    if (found && from > to) break;
    moved = found ? peak.strain - found.strain : 0;
    found = peak;
  }
  // how far the last widening moved it stands for the lack of fit that no scatter shows
  return found && { strain: found.strain, force: found.force, standardUncertainty: Math.hypot(found.byScatter, moved) };
}
