import { soundLength } from '../../base/index.js';
import { extent, firstBelow, firstReaching, medianOf, noiseLevel, resolution } from '../../numeric/index.js';
import type { ColumnHabit } from '../survey/habit.js';
import { LOADED } from '../survey/recordOutline.js';

/** A stretch in which the crosshead stood still. */
export interface Pause {
  /** First and last sample. */
  readonly range: readonly [number, number];
  /** Duration [s]. */
  readonly duration: number;
  /** Fall of the force over it [N]. */
  readonly fall: number;
}

/** @internal Share of the usual speed below which the drive stands still. */
export const STANDING_SPEED_SHARE = 0.05;
/** @internal Least duration of a pause [s]. */
export const LEAST_PAUSE = 0.5;
/** Stretches over which the usual speed is measured. */
const PLACES = 400;
/** Standard deviations of the reading within which a motion that stands still stays. */
const BAND = 7;
/** Steps of the reading within which a motion that stands still stays. */
const BAND_STEPS = 1.5;
/** Share of the speed before and after that the speed inside a pause is below. */
const CONTRAST = 0.2;
/** The same for the highest speed inside that noise and steps of the reading leave possible. */
const AT_MOST = 0.6;
/** Places at which a stretch of the least duration is looked at. */
const PLACES_IN_PAUSE = 50;

/** Motion and force over time, first and last loaded sample, and how fine their readings are. */
interface Drive {
  readonly force: Float64Array;
  readonly motion: Float64Array;
  readonly time: Float64Array;
  readonly first: number;
  readonly last: number;
  /** Speed below which the drive counts as standing still. */
  readonly slow: number;
  /** One step and the noise of the motion's reading, and the band within which one that stands still stays. */
  readonly step: number;
  readonly noise: number;
  readonly band: number;
}

/** The usual speed: the median over stretches of the loaded part. */
function usualSpeed(motion: Float64Array, time: Float64Array, first: number, last: number): number {
  const size = Math.max(1, Math.floor((last - first) / PLACES));
  // of its full length at once: a list that grows costs more than its values
  const speeds = new Array<number>(Math.max(0, Math.floor((last - first) / size)));
  let count = 0;
  for (let i = first; i + size <= last; i += size) {
    const dt = time[i + size]! - time[i]!;
    if (dt > 0) speeds[count++] = (motion[i + size]! - motion[i]!) / dt;
  }
  speeds.length = count;
  // a coarse reading shows no motion over most of the short stretches: then the mean over the whole serves
  const whole = (motion[last]! - motion[first]!) / (time[last]! - time[first]!);
  const usual = medianOf(speeds);
  return usual > 0.1 * whole ? usual : whole;
}

/** The loaded part of a record, up to where its motion ends at the latest. */
function loadedPart(force: Float64Array, motion: Float64Array, highest: number): readonly [number, number] {
  const end = Math.max(1, soundLength(motion));
  const top = Math.min(highest, end - 1);
  const loaded = LOADED * force[top]!;
  const first = firstReaching(force, loaded, 0, top);
  return [first, firstBelow(force, loaded, top + 1, end) - 1];
}

function driveOf(
  force: Float64Array,
  motion: Float64Array,
  time: Float64Array,
  highest: number,
  share: number,
  known?: ColumnHabit,
): Drive {
  const [first, last] = loadedPart(force, motion, highest);
  const slow = share * usualSpeed(motion, time, first, last);
  const step = known?.step ?? resolution(motion.subarray(first, last + 1));
  const noise = known?.noise ?? noiseLevel(motion, first, last + 1);
  const band = Math.max(BAND * noise, BAND_STEPS * step);
  return { force, motion, time, first, last, slow, step, noise, band };
}

/** Mean speed from one sample to another. */
const speedOf = ({ motion, time }: Drive, from: number, to: number): number =>
  time[to]! > time[from]! ? (motion[to]! - motion[from]!) / (time[to]! - time[from]!) : Infinity;

/** Mean speed over as long a stretch of samples before i, and after j, as lies between them. */
const speedBefore = (drive: Drive, i: number, j: number): number => speedOf(drive, Math.max(drive.first, 2 * i - j), i);
const speedAfter = (drive: Drive, i: number, j: number): number => speedOf(drive, j, Math.min(drive.last, 2 * j - i));

/** Whether it moved from i to j by less than a speed and the band of the reading allow. */
const within = ({ motion, time, band }: Drive, i: number, j: number, speed: number): boolean =>
  motion[j]! - motion[i]! < speed * (time[j]! - time[i]!) + band;

/** The last sample up to which a stretch that is still from i to j stays so: it moves no more than slowly, and the force rises by no more than noise. */
function extended(drive: Drive, i: number, j: number, stride: number, rise: number): number {
  // beside a slow part of the test even the slow speed is motion
  const before = speedBefore(drive, i, j);
  const creep = before > 0 ? Math.min(drive.slow, 0.5 * CONTRAST * before) : drive.slow;
  let reached = j;
  while (reached < drive.last) {
    const next = Math.min(reached + stride, drive.last);
    if (!within(drive, reached, next, creep) || !within(drive, i, next, creep) || drive.force[next]! - drive.force[i]! > rise) break;
    reached = next;
  }
  return reached;
}

/** Whether it stood, compared with how it moved before and after: a slow part of the test, or one step of a coarse reading, is no pause. */
function stood(drive: Drive, i: number, j: number): boolean {
  const { motion, time, slow, step, noise, band } = drive;
  const span = time[j]! - time[i]!;
  const around = Math.min(speedBefore(drive, i, j), speedAfter(drive, i, j));
  const doubt = Math.max(4 * noise, step);
  const moved = Math.abs(motion[j]! - motion[i]!) / span;
  if (moved >= CONTRAST * around || moved + doubt / span >= AT_MOST * around) return false;
  // a crosshead that goes back and on again moved: a frame that unloads at yield does so
  const [lowest, farthest] = extent(motion, i, j + 1);
  return farthest - lowest <= slow * span + band;
}

function pauseOf({ force, time }: Drive, i: number, j: number): Pause {
  let lowest = i;
  for (let k = i; k <= j; k += 1) if (force[k]! < force[lowest]!) lowest = k;
  return { range: [i, j], duration: time[j]! - time[i]!, fall: force[i]! - force[lowest]! };
}

/**
 * @internal {@link findPauses} on checked columns; time never goes back, motion, whose habit may be known, may end early with NaN.
 *
 * A ruler of the least duration is laid along the motion, from each sample to the first one that lies that much later. Where the motion under it is
 * level, the ruler is drawn out for as long as it stays level; then the motion before and after is looked at: only a level part between
 * two slopes is a pause. The search goes on at its end.
 */
export function findPausesKernel(
  force: Float64Array,
  motion: Float64Array,
  time: Float64Array,
  highest: number,
  share = STANDING_SPEED_SHARE,
  duration = LEAST_PAUSE,
  known?: ColumnHabit,
): Pause[] {
  const drive = driveOf(force, motion, time, highest, share, known);
  const { first, last, slow } = drive;
  if (!(slow > 0)) return [];
  // fifty places in the least duration are enough: a faster logger is looked at in strides
  const stride = Math.max(1, Math.floor((duration * (last - first)) / (time[last]! - time[first]!) / PLACES_IN_PAUSE));
  const pauses: Pause[] = [];
  // rise of the force that noise may make; most records need not know it
  let rise: number | undefined;
  // both ends of the ruler only move forward, so the record is walked once
  for (let i = first, j = first + stride; i < last; i += stride) {
    if (j <= i) j = Math.min(i + stride, last);
    const until = time[i]! + duration;
    while (j < last && time[j]! < until) j = Math.min(j + stride, last);
    if (time[j]! < until || !within(drive, i, j, slow)) continue;
    rise ??= 4 * noiseLevel(force, first, last + 1);
    if (force[j]! - force[i]! > rise) continue;
    j = extended(drive, i, j, stride, rise);
    if (!stood(drive, i, j)) continue;
    pauses.push(pauseOf(drive, i, j));
    i = j - stride;
  }
  return pauses;
}
