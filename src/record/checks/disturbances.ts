import { soundLength } from '../../base/index.js';
import {
  extent,
  firstFall,
  firstReaching,
  highestSample,
  noiseLevel,
  resolution,
  variedStretches,
  type BlockExtremes,
} from '../../numeric/index.js';
import { findBulges } from './bulges.js';
import { backWithin, clearOfNoise } from '../survey/habit.js';
import { motionGoesOn, type ForceAndMotion, type SearchLimits } from './disturbanceSearch.js';
import { LONGEST_AWAY, type Spike } from './spikes.js';

/** @internal Multiple of the elastic slope of piece and frame above which a rise is not the piece's. */
export const STEEPER_THAN_ELASTIC = 1.25;
/** Samples beside a rise whose motion counts as well. */
const BESIDE = 2;
/** Least height, as a share of the highest force. */
const SHARE = 0.02;
/** Samples over which rises are looked at. */
const SCALES = [1, 2, 4, 8, 16, 32, 64];
/** The longest of them. */
const WIDEST = 64;
/** Share of its height by which the force comes back at least. */
const FALLS = 0.5;
/** Share of its height within which the force comes back to its level. */
const CLOSE = 0.25;
/** Share of its height by which a fall that has stopped may still go on. */
const STOPPED = 0.1;
/** Samples over which that is asked, as a share of those since the foot. */
const LONGER = 0.25;
/** Share of the highest force below which no disturbance is looked for. */
const LOW = 0.05;
/** Most disturbances; more of them are the way of the drive or of the metal. */
const MOST = 5;

/** From a rise that is none of the piece: sample before it leaves, and where its fall has stopped near the level that it left. */
function bulge(
  { force, motion }: ForceAndMotion,
  { stiffness, leastHeight, forceDoubt }: SearchLimits,
  rise: number,
): [number, number] | undefined {
  const n = force.length;
  const beyond = (i: number): number => force[i]! - stiffness * motion[i]!;
  // what the piece bears less its elastic part never rises: the foot is where it is lowest
  let lowest = Infinity;
  for (let i = Math.max(0, rise - LONGEST_AWAY); i <= rise; i += 1) lowest = Math.min(lowest, beyond(i));
  let foot = rise;
  while (beyond(foot) > lowest + forceDoubt) foot -= 1;
  const level = beyond(foot);
  let peak = rise;
  for (let i = rise; i < Math.min(n, foot + LONGEST_AWAY); i += 1) {
    if (beyond(i) > beyond(peak)) peak = i;
    else if (beyond(i) - level < FALLS * (beyond(peak) - level)) break;
  }
  const height = beyond(peak) - level;
  if (height < leastHeight) return undefined;
  for (let i = peak + 1; i < Math.min(n, foot + LONGEST_AWAY + 2); i += 1) {
    if (beyond(i) > level + forceDoubt) continue;
    const ahead = Math.min(n - 1, i + Math.max(BESIDE, Math.ceil(LONGER * (i - foot))));
    let valley = i;
    for (let j = i; j <= ahead; j += 1) if (force[j]! < force[valley]!) valley = j;
    if (force[i]! - force[valley]! > STOPPED * height + forceDoubt) continue;
    let back = i;
    while (force[back]! > force[valley]! + forceDoubt / 2) back += 1;
    return [foot, back];
  }
  return undefined;
}

/** What a rise that is none of the piece belongs to, if the force comes back. */
function disturbanceAt(samples: ForceAndMotion, limits: SearchLimits, rise: number): Spike | undefined {
  const found = bulge(samples, limits, rise);
  if (!found) return undefined;
  const [foot, back] = found;
  const { force } = samples;
  let [height, highest] = [0, force[foot]!];
  for (let i = foot + 1; i < back; i += 1) {
    height = Math.max(height, force[i]! - force[foot]! - ((force[back]! - force[foot]!) * (i - foot)) / (back - foot));
    highest = Math.max(highest, force[i]!);
  }
  const returns = highest - force[back]! >= FALLS * height && force[back]! >= force[foot]! - CLOSE * height;
  return height >= limits.leastHeight && returns && motionGoesOn(samples, limits, found, height)
    ? { range: [foot + 1, back - 1], height, bulges: true }
    : undefined;
}

const turned = (column: Float64Array): Float64Array =>
  column
    .slice()
    .reverse()
    .map((value) => -value);

/** Backwards and upside down: there a dip that comes back too steeply is a bulge. */
const turnedSamples = ({ force, motion }: ForceAndMotion): ForceAndMotion => ({ force: turned(force), motion: turned(motion) });

/** A bulge of the turned samples, as the dip that it is. */
function dipAt(backwards: ForceAndMotion, limits: SearchLimits, rise: number): Spike | undefined {
  const last = backwards.force.length - 1;
  const found = disturbanceAt(backwards, limits, last - rise);
  return found && { ...found, range: [last - found.range[1], last - found.range[0]] };
}

/** The limits by which a record with its elastic slope is searched. */
function limitsOf(force: Float64Array, motion: Float64Array, highest: number, stiffness: number): SearchLimits {
  const noise = Math.hypot(noiseLevel(force), stiffness * noiseLevel(motion));
  const [forceStep, motionStep] = [resolution(force), resolution(motion)];
  return {
    highestForce: highest,
    stiffness,
    noise,
    leastHeight: clearOfNoise({ noise, step: Math.max(forceStep, stiffness * motionStep) }, SHARE * highest),
    forceDoubt: backWithin({ noise, step: forceStep }),
    motionDoubt: backWithin({ noise: noise / stiffness, step: motionStep }),
  };
}

/** Looks up the disturbance to which a rise from one sample to another belongs. */
function lookup(samples: ForceAndMotion, about: () => SearchLimits): (first: number, last: number) => Spike | undefined {
  const { force, motion } = samples;
  // most records have no use for it
  let backwards: ForceAndMotion | undefined;
  // where a rise begins or ends that is no disturbance at one scale, there is none at another
  const [begun, ended] = [new Set<number>(), new Set<number>()];
  return (first, last) => {
    const limits = about();
    const [low, high] = extent(motion, Math.max(0, first - BESIDE), Math.min(motion.length, last + BESIDE + 1));
    if (force[last]! - force[first]! <= STEEPER_THAN_ELASTIC * limits.stiffness * (high - low) + limits.leastHeight) return undefined;
    const bump = begun.has(first) ? undefined : disturbanceAt(samples, limits, first);
    const one = bump ?? (ended.has(last) ? undefined : dipAt((backwards ??= turnedSamples(samples)), limits, last));
    begun.add(first);
    ended.add(last);
    return one && Math.min(force[one.range[0] - 1]!, force[one.range[1] + 1]!) >= LOW * limits.highestForce ? one : undefined;
  };
}

/**
 * @internal Disturbances of the force of any shape: it rises more steeply over the motion than piece and frame can elastically, and is back on its curve within
 * 200 samples, or it fell before and comes back so; or it bulges where the piece yields evenly. A fall with a rise along the elastic line is the piece's.
 * Where there are more than five, the list is empty: they are the way of the drive or of the metal.
 */
export function findDisturbances(force: Float64Array, motion: Float64Array, stiffness: number, blocks: BlockExtremes): Spike[] {
  const highest = force[highestSample(force, blocks)]!;
  const end = soundLength(motion);
  const samples = { force: force.subarray(0, end), motion: motion.subarray(0, end) };
  // most records have no use for it
  let limits: SearchLimits | undefined;
  const about = (): SearchLimits => (limits ??= limitsOf(force, samples.motion, highest, stiffness));
  const disturbanceOf = lookup(samples, about);
  const isSteep = (i: number, scale: number): boolean => {
    const rise = force[i + scale]! - force[i]!;
    return rise > SHARE * highest && rise > STEEPER_THAN_ELASTIC * stiffness * (motion[i + scale]! - motion[i]!) + SHARE * highest;
  };
  const found: Spike[] = [];
  const isFound = (first: number, last: number): boolean => found.some(({ range }) => range[0] <= last && first <= range[1] + 1);
  const varied = variedStretches(blocks, SHARE * highest, 0, WIDEST, end);
  for (const scale of SCALES) {
    const stride = Math.max(1, scale >> 1);
    for (const [from, to] of varied)
      // of a record that goes so all along, no more are looked for than it takes to know that
      for (let i = Math.max(1, Math.ceil(from / stride)) * stride; found.length <= MOST && i < to && i + scale < end; i += stride) {
        const one = isSteep(i, scale) && !isFound(i, i + scale) ? disturbanceOf(i, i + scale) : undefined;
        if (one) found.push(one);
      }
    if (found.length > MOST) return [];
  }
  // most records show no fall by which a bulge could end
  const loaded = firstReaching(force, LOW * highest, 0, end, blocks);
  const fallen = firstFall(force, SHARE * highest, loaded, end, blocks);
  if (fallen < end) {
    const bulges = findBulges(samples, about(), Math.max(loaded, fallen - 4 * LONGEST_AWAY), end, blocks);
    found.push(...bulges.filter(({ range: [first, last] }) => !isFound(first, last + 1)));
  }
  return found.length > MOST ? [] : found;
}
