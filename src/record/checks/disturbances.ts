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
import { goesOn, type Course, type Known } from './course.js';
import { LONGEST_AWAY, type Spike } from './spikes.js';

/** @internal A rise is none of the piece where it is steeper than so many times its elastic line with the frame, over the motion beside it as well. */
export const STEEPER = 1.25;
const BESIDE = 2;
/** And by this share of the highest force, so many deviations of force and motion, steps of the force and of the motion. */
const SHARE = 0.02;
const DEVIATIONS = 10;
const STEPS = 3;
/** Rises over so many samples are looked at. */
const SCALES = [1, 2, 4, 8, 16, 32, 64];
const WIDEST = 64;
/** The force is back within so many deviations; it comes back by this share of the height at least, and to this share of it. */
const BACK = 4;
const FALLS = 0.5;
const CLOSE = 0.25;
/** Its fall has stopped where it goes on by no more than this share of the height over a quarter as long again. */
const STOPPED = 0.1;
const LONGER = 0.25;
/** Below this share of the highest force nothing is loaded. */
const LOADED = 0.05;
/** More of them are a way of the drive or of the metal. */
const MOST = 5;

/** From a rise that is none of the piece: sample before it leaves, and where its fall has stopped near the level that it left. */
function bulge({ force, motion }: Course, { stiffness, least, close }: Known, rise: number): [number, number] | undefined {
  const n = force.length;
  const beyond = (i: number): number => force[i]! - stiffness * motion[i]!;
  // what the piece bears less its elastic part never rises: the foot is where it is lowest
  let lowest = Infinity;
  for (let i = Math.max(0, rise - LONGEST_AWAY); i <= rise; i += 1) lowest = Math.min(lowest, beyond(i));
  let foot = rise;
  while (beyond(foot) > lowest + close) foot -= 1;
  const level = beyond(foot);
  let peak = rise;
  for (let i = rise; i < Math.min(n, foot + LONGEST_AWAY); i += 1) {
    if (beyond(i) > beyond(peak)) peak = i;
    else if (beyond(i) - level < FALLS * (beyond(peak) - level)) break;
  }
  const height = beyond(peak) - level;
  if (height < least) return undefined;
  for (let i = peak + 1; i < Math.min(n, foot + LONGEST_AWAY + 2); i += 1) {
    if (beyond(i) > level + close) continue;
    const ahead = Math.min(n - 1, i + Math.max(BESIDE, Math.ceil(LONGER * (i - foot))));
    let valley = i;
    for (let j = i; j <= ahead; j += 1) if (force[j]! < force[valley]!) valley = j;
    if (force[i]! - force[valley]! > STOPPED * height + close) continue;
    let back = i;
    while (force[back]! > force[valley]! + close / 2) back += 1;
    return [foot, back];
  }
  return undefined;
}

/** What a rise that is none of the piece belongs to, if the force comes back. */
function disturbanceAt(course: Course, known: Known, rise: number): Spike | undefined {
  const found = bulge(course, known, rise);
  if (!found) return undefined;
  const [foot, back] = found;
  const { force } = course;
  let [height, highest] = [0, force[foot]!];
  for (let i = foot + 1; i < back; i += 1) {
    height = Math.max(height, force[i]! - force[foot]! - ((force[back]! - force[foot]!) * (i - foot)) / (back - foot));
    highest = Math.max(highest, force[i]!);
  }
  const returns = highest - force[back]! >= FALLS * height && force[back]! >= force[foot]! - CLOSE * height;
  return height >= known.least && returns && goesOn(course, known, found, height)
    ? { range: [foot + 1, back - 1], height, bulges: true }
    : undefined;
}

const turned = (column: Float64Array): Float64Array =>
  column
    .slice()
    .reverse()
    .map((value) => -value);

/** Backwards and upside down: there a dip that comes back too steeply is a bulge. */
const turnedCourse = ({ force, motion }: Course): Course => ({ force: turned(force), motion: turned(motion) });

/** A bulge of the turned course, as the dip that it is. */
function dipAt(backwards: Course, known: Known, rise: number): Spike | undefined {
  const last = backwards.force.length - 1;
  const found = disturbanceAt(backwards, known, last - rise);
  return found && { ...found, range: [last - found.range[1], last - found.range[0]] };
}

/**
 * @internal Disturbances of the force of any shape: it rises more steeply over the motion than piece and frame can elastically, and is back on its curve within
 * 200 samples, or it fell before and comes back so; or it bulges where the piece yields evenly. A fall with a rise along the elastic line is the piece's.
 * Of more than five none is told: they are a way of the drive or of the metal.
 */
export function findDisturbances(force: Float64Array, motion: Float64Array, stiffness: number, blocks: BlockExtremes): Spike[] {
  const highest = force[highestSample(force, blocks)]!;
  const end = soundLength(motion);
  const course = { force: force.subarray(0, end), motion: motion.subarray(0, end) };
  // most records have no use for either
  let known: Known | undefined;
  let backwards: Course | undefined;
  const about = (): Known => {
    const noise = Math.hypot(noiseLevel(force), stiffness * noiseLevel(motion, 0, end));
    const step = resolution(motion.subarray(0, end));
    const doubt = Math.max(SHARE * highest, DEVIATIONS * noise, STEPS * resolution(force), STEPS * stiffness * step);
    return { highest, stiffness, noise, least: doubt, close: BACK * noise + resolution(force), still: (BACK * noise) / stiffness + step };
  };
  const found: Spike[] = [];
  const isSteep = (i: number, scale: number): boolean => {
    const rise = force[i + scale]! - force[i]!;
    return rise > SHARE * highest && rise > STEEPER * stiffness * (motion[i + scale]! - motion[i]!) + SHARE * highest;
  };
  // where a rise begins or ends that is none at one scale, none is at another
  const [begun, ended] = [new Set<number>(), new Set<number>()];
  const lookAt = (first: number, last: number): void => {
    if (found.some(({ range }) => range[0] <= last && first <= range[1] + 1)) return;
    known ??= about();
    const [low, high] = extent(motion, Math.max(0, first - BESIDE), Math.min(end, last + BESIDE + 1));
    if (force[last]! - force[first]! <= STEEPER * stiffness * (high - low) + known.least) return;
    let one = begun.has(first) ? undefined : disturbanceAt(course, known, first);
    if (!one && !ended.has(last)) one = dipAt((backwards ??= turnedCourse(course)), known, last);
    begun.add(first);
    ended.add(last);
    if (one && Math.min(force[one.range[0] - 1]!, force[one.range[1] + 1]!) >= LOADED * highest) found.push(one);
  };
  const varied = variedStretches(blocks, SHARE * highest, 0, WIDEST, end);
  for (const scale of SCALES) {
    const stride = Math.max(1, scale >> 1);
    for (const [from, to] of varied)
      // of a record that goes so all along, no more are looked for than it takes to know that
      for (let i = Math.max(1, Math.ceil(from / stride)) * stride; found.length <= MOST && i < to && i + scale < end; i += stride)
        if (isSteep(i, scale)) lookAt(i, i + scale);
    if (found.length > MOST) return [];
  }
  const overlaps = ({ range: [first, last] }: Spike): boolean => found.some(({ range }) => range[0] <= last + 1 && first <= range[1] + 1);
  // most records show no fall by which a bulge could end
  const loaded = firstReaching(force, LOADED * highest, 0, end, blocks);
  const fallen = firstFall(force, SHARE * highest, loaded, end, blocks);
  if (fallen < end) {
    known ??= about();
    found.push(...findBulges(course, known, Math.max(loaded, fallen - 4 * LONGEST_AWAY), end, blocks).filter((one) => !overlaps(one)));
  }
  return found.length > MOST ? [] : found;
}
