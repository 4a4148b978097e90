import { lineFit, localParabola, variedStretches, type BlockExtremes } from '../../numeric/index.js';
import { motionKeepsPace, type ForceAndMotion, type SearchLimits } from './disturbanceSearch.js';
import { LONGEST_AWAY, type Spike } from './spikes.js';

/** Half widths of a bulge that are tried [samples]. */
const HALVES = [6, 12, 25, 50, 100, LONGEST_AWAY];
/** Least samples on either side of it by which the curve is judged; of a wide one as many as half its half width. */
const BESIDE = 10;
/** Least height above a parabola through the curve on either side, as a share of the highest force. */
const SHARE = 0.03;
/** Share of the height within which that parabola fits the curve. */
const FITS = 0.05;
/** Share of the elastic slope that the slopes on either side stay below: the piece yields there. */
const YIELDS = 0.3;
/** Share of the height by which the force falls again. */
const FALLS = 0.5;
/** Standard deviations by which the force leaves the parabola where the bulge begins. */
const LEAVES = 4;

/** The higher of the straight lines through the curve on either side, at a sample: a neck that begins suddenly is no bulge, for its corner lies on both lines. */
function roofOver(
  { force, motion }: ForceAndMotion,
  at: number,
  [begin, left, right, end]: readonly [number, number, number, number],
): number {
  const lines = [lineFit(motion, force, begin, left), lineFit(motion, force, right, end)];
  return Math.max(...lines.map((line) => (line ? line.intercept + line.slope * motion[at]! : Infinity)));
}

/** The bulge around a sample that is the highest of half a width on either side. */
function bulgeAround(samples: ForceAndMotion, limits: SearchLimits, peak: number, half: number): Spike | undefined {
  const { force, motion } = samples;
  const beside = Math.max(BESIDE, half >> 1);
  const [left, right] = [peak - half, peak + half];
  if (left - beside < 0 || right + beside >= force.length) return undefined;
  const sides = (column: Float64Array): Float64Array => {
    const both = new Float64Array(2 * (beside + 1));
    both.set(column.subarray(left - beside, left + 1));
    both.set(column.subarray(right, right + beside + 1), beside + 1);
    return both;
  };
  const x = sides(motion);
  const curve = localParabola(x, sides(force), 0, x.length - 1, motion[peak]!);
  if (!curve) return undefined;
  const off = (i: number): number =>
    force[i]! - curve.value - (motion[i]! - motion[peak]!) * (curve.slope + curve.bend * (motion[i]! - motion[peak]!));
  const height = off(peak);
  const slope = (i: number): number => curve.slope + 2 * curve.bend * (motion[i]! - motion[peak]!);
  const most = YIELDS * limits.stiffness;
  if (height < Math.max(limits.leastHeight, SHARE * limits.highestForce) || Math.abs(slope(left)) > most || Math.abs(slope(right)) > most)
    return undefined;
  if (curve.residualStandardDeviation > Math.max(limits.noise, FITS * height)) return undefined;
  if (force[peak]! - roofOver(samples, peak, [left - beside, left, right, right + beside]) < FALLS * height) return undefined;
  const close = LEAVES * Math.max(limits.noise, curve.residualStandardDeviation);
  let [foot, back] = [peak, peak];
  while (foot > left && off(foot) > close) foot -= 1;
  while (back < right && off(back) > close) back += 1;
  if (foot <= left || back >= right || force[peak]! - force[back]! < FALLS * height) return undefined;
  const stretches = [left - beside, left, foot, peak, back, right, right + beside] as const;
  return motionKeepsPace(samples, limits, stretches) ? { range: [foot + 1, back - 1], height, bulges: true } : undefined;
}

/**
 * @internal Bulges of the force beyond yielding, where a fast motion would let piece and frame rise as steeply: the curve is one parabola before and after and lies below both of its sides made longer, it yields on either side,
 * the motion goes on evenly, and yet the force rises and falls again. A yield point begins on the elastic line, a serration falls first.
 */
export function findBulges(samples: ForceAndMotion, limits: SearchLimits, from: number, end: number, blocks: BlockExtremes): Spike[] {
  const { force } = samples;
  const found: Spike[] = [];
  // of each sample, for there may be as many as a record has room for
  const taken = new Uint8Array(end);
  const least = FALLS * Math.max(limits.leastHeight, SHARE * limits.highestForce);
  const varied = variedStretches(blocks, least, LONGEST_AWAY, 2 * LONGEST_AWAY, end);
  for (const half of HALVES) {
    for (const [first, last] of varied)
      for (let begin = from + Math.max(0, Math.ceil((first - from) / half)) * half; begin < last; begin += half) {
        let peak = begin;
        const stop = Math.min(end, begin + half);
        for (let i = begin + 1; i < stop; i += 1) if (force[i]! > force[peak]!) peak = i;
        const [left, right] = [peak - half, peak + half];
        if (left < from || right >= end || force[peak]! - force[right]! < least || force[peak]! - force[left]! < least) continue;
        let highest = true;
        for (let i = left; i <= right && highest; i += 1) highest = force[i]! <= force[peak]!;
        if (!highest || taken.subarray(left, right + 1).includes(1)) continue;
        const one = bulgeAround(samples, limits, peak, half);
        if (!one) continue;
        found.push(one);
        taken.fill(1, one.range[0], one.range[1] + 1);
      }
  }
  return found;
}
