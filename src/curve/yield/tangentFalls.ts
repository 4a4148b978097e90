import type { StressStrainCurve } from '../../base/index.js';
import { cellMeans, noiseLevel, slidingSlope } from '../../numeric/index.js';
import type { CurvePoint } from './proofStrength.js';

/** Standard error that a tangent should have, as a share of the slope; the more noise, the wider the stretch that it is fitted over. */
const TANGENT_ERROR = 0.02;
/** A long record is condensed to about this many means before tangents are fitted. */
const PLACES = 4000;
/** The curve is searched at least until its secant has fallen to this share of the slope: where a curve bends down, the tangent falls before the secant does. */
const SECANT = 0.5;
/** Up to this secant, as a share of the slope, the curve counts as elastic; the noise and the strain per sample are measured there. */
const ELASTIC = 0.9;
/**
 * A tangent is used where its error is at most this many times TANGENT_ERROR. The error is estimated from few tangents and may be wrong by that much by
 * chance; a fall to nine tenths of the slope, the usual share, is then still more than two standard errors away. A larger error means that the hand rests
 * and the strain hardly advances: that tangent is left out.
 */
const AT_MOST = 2;
/** Share of tangents that may be left out because the strain rests. A reading in steps rests once for each tangent that can be used, and this often where a stretch is two thirds of a step; a hand rests less often. */
const IN_TURN = 0.5;
/** Least half-width for a reading in steps, over the half-width found, which is two thirds of a step. Rounding to steps changes the slope of a line over m steps by at most 1.5/m² of it; six steps, nine times two thirds of one, keep that within the accepted error. */
const STEPS = 9;
/** Factor by which the stretches widen from try to try; the result is within this factor of the narrowest that will do. */
const WIDER = 1.2;
/** Relative tolerance for rounding: a tangent of exactly the share has not fallen below it. */
const ROUNDING = 1e-9;

/** @internal The line that tangents are compared with, and between which samples. */
export interface TangentTask {
  /** Slope [MPa]. */
  readonly slope: number;
  /** Strain where it meets zero stress [mm/mm]. */
  readonly shift: number;
  readonly first: number;
  /** One past the highest stress. */
  readonly end: number;
}

/** @internal Where the tangent has fallen. */
export interface TangentFall extends CurvePoint {
  /** Standard uncertainty of the stress, by the width of the stretches and their noise [MPa]. */
  readonly standardUncertainty: number;
  /** Half of the stress over which a tangent is taken [MPa]. */
  readonly reach: number;
}

/** Last sample before the secant falls below a share of the slope for good; the last sample of all where the secant was never above it. */
function lastOf(share: number, strain: Float64Array, stress: Float64Array, { slope, shift, first, end }: TangentTask): number {
  let last = end - 1;
  while (last > first && stress[last]! < share * slope * (strain[last]! - shift)) last -= 1;
  return last > first ? last : end - 1;
}

/** The part of the curve that tangents are looked for in, as samples or means of them, and how many of these are its beginning. */
function partOf({ strain, stress }: StressStrainCurve, task: TangentTask, secant: number) {
  const { first, end } = task;
  const last = lastOf(secant, strain, stress, task);
  // a stretch more, for the tangents at its end
  const beyond = Math.min(end - 1, last + Math.max(4, Math.ceil((last - first) / 4)));
  const long = beyond - first > 2 * PLACES;
  const { x, y, size } = cellMeans(strain, stress, first, beyond, long ? PLACES : Infinity);
  return { strain: x, stress: y, elastic: Math.ceil((lastOf(ELASTIC, strain, stress, { ...task, end: last + 1 }) + 1 - first) / size) };
}

/**
 * Scatter of the tangents over stretches that share no samples, of those in which the strain advances faster than `slowest` per sample. It is infinite where
 * the strain rests and advances in turn, as in a reading whose steps are wider than the stretches. A hand rests less often.
 */
function scatterApart(strain: Float64Array, stress: Float64Array, half: number, slowest: number): number {
  const width = 2 * half + 1;
  const squares = (half * (half + 1) * width) / 3;
  const tangents: number[] = [];
  let rests = 0;
  let advanced = true;
  for (let first = 0; first + width <= stress.length; first += width) {
    let x = 0;
    let y = 0;
    for (let j = -half, i = first; j <= half; j += 1, i += 1) {
      x += j * strain[i]!;
      y += j * stress[i]!;
    }
    const advances = x > slowest * squares;
    if (advances) tangents.push(y / x);
    else if (advanced) rests += 1;
    advanced = advances;
  }
  return rests > IN_TURN * tangents.length ? Infinity : noiseLevel(new Float64Array(tangents));
}

/**
 * Half-width of the stretches in samples, strain per sample and the slowest at which a tangent is used, and the error of a tangent. Stretches are as narrow
 * as TANGENT_ERROR allows with independent noise. Drifting noise and readings in coarse steps show in tangents that share no samples, and widen them further.
 */
function stretchOf(part: ReturnType<typeof partOf>, slope: number) {
  const n = Math.max(2, Math.min(part.elastic, part.stress.length));
  const strain = part.strain.subarray(0, n);
  const stress = part.stress.subarray(0, n);
  // residuals of the line: an uneven hand moves along the line and is no noise
  const beside = new Float64Array(n);
  for (let i = 0; i < n; i += 1) beside[i] = stress[i]! - slope * strain[i]!;
  const noise = noiseLevel(beside);
  const step = (strain[n - 1]! - strain[0]!) / (n - 1);
  const wanted = TANGENT_ERROR * slope;
  const of = (half: number) => {
    const independent = Math.sqrt(12 / (2 * half + 1) ** 3) * noise;
    const slowest = independent / (AT_MOST * wanted);
    return { half, step, slowest, independent: independent / step, apart: scatterApart(strain, stress, half, slowest) };
  };
  // where the strain does not advance, the whole part is one stretch, which gives no tangent either
  const asked = step > 0 ? Math.ceil(0.5 * (12 * (noise / (wanted * step)) ** 2) ** (1 / 3)) : n;
  let one = of(Math.min(n, Math.max(2, asked)));
  let least = 0;
  // infinite from the narrowest stretches on: the reading goes in steps; only later: the hand goes in strokes
  for (let stepped = one.apart === Infinity; ;) {
    // the next wider stretches must agree too: stretches exactly as wide as a step all have it at the same place, and agree by accident
    const next = of(Math.ceil(WIDER * one.half));
    stepped &&= one.apart === Infinity;
    if (stepped) least = STEPS * one.half;
    const fits = one.half >= least && one.apart <= AT_MOST * wanted && next.apart <= AT_MOST * wanted;
    if (fits || 2 * one.half >= n) return { error: Math.max(one.independent, one.apart), ...one };
    one = next;
  }
}

/**
 * @internal Where the local slope falls for good to each of some shares of the line's slope, undefined where it does not; one walk serves all shares. A tangent
 * is the stress per sample over the strain per sample. Noise of the strain would flatten a line of stress over strain, but does not flatten this ratio.
 */
export function tangentFalls(curve: StressStrainCurve, task: TangentTask, shares: readonly number[]): (TangentFall | undefined)[] {
  const { slope } = task;
  const part = partOf(curve, task, Math.min(SECANT, ...shares));
  const { strain, stress } = part;
  const { half, step, slowest, error } = stretchOf(part, slope);
  if (!(step > 0)) return shares.map(() => undefined);
  const [ofStrain, ofStress] = [slidingSlope(strain, half).slope, slidingSlope(stress, half).slope];
  const falls = shares.map((share) => ({
    level: share * slope * (1 - ROUNDING),
    lasting: 0,
    point: undefined as CurvePoint | undefined,
    above: NaN,
    below: NaN,
  }));
  let before = NaN;
  for (let i = half, open = falls.length; open > 0 && i + half < stress.length; i += 1) {
    const told = ofStrain[i]! > slowest;
    const tangent = told ? ofStress[i]! / ofStrain[i]! : before;
    for (const fall of falls) {
      if (fall.lasting > 2 * half) continue;
      if (tangent >= fall.level || Number.isNaN(before)) {
        fall.lasting = 0;
        fall.point = undefined;
        fall.below = NaN;
        if (tangent >= fall.level + error) fall.above = stress[i]!;
        continue;
      }
      if (!fall.point) {
        const part = before > tangent ? (before - fall.level) / (before - tangent) : 1;
        const t = Math.min(1, Math.max(0, part));
        fall.point = {
          stress: stress[i - 1]! + t * (stress[i]! - stress[i - 1]!),
          strain: strain[i - 1]! + t * (strain[i]! - strain[i - 1]!),
        };
      }
      if (Number.isNaN(fall.below) && tangent <= fall.level - error) fall.below = stress[i]!;
      fall.lasting += 1;
      if (fall.lasting > 2 * half) open -= 1;
    }
    before = tangent;
  }
  const reach = half * slope * step;
  return falls.map(({ point, above, below }) => {
    if (!point) return undefined;
    const span = Math.abs((Number.isNaN(below) ? point.stress : below) - (Number.isNaN(above) ? point.stress : above));
    return { reach, standardUncertainty: Math.hypot(reach / Math.sqrt(3), span / 2), ...point };
  });
}
