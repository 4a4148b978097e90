import {
  InputError,
  requireBetween,
  requireColumn,
  requireNonNegative,
  requireObject,
  requireOptions,
  soundLength,
  type TensionColumns,
  type TensionRecord,
} from '../base/index.js';
import { maximumIndex, median, noiseLevel } from '../numeric/index.js';
import { STANDING, type ClockSurvey } from './clock.js';
import { resolution } from './resolution.js';

/** Options of {@link findPauses}. */
export interface PauseOptions {
  /** Speed below this share of the usual one is standing still; default 0.05. */
  readonly share?: number | undefined;
  /** Least duration [s]; default 0.5. */
  readonly duration?: number | undefined;
}

/** A stretch in which the crosshead stood still. */
export interface Pause {
  /** First and last sample. */
  readonly range: readonly [number, number];
  /** Duration [s]. */
  readonly duration: number;
  /** Fall of the force over it [N]. */
  readonly fall: number;
}

/** Standing still is slower than this share of the usual speed, for longer than so many seconds. */
const SHARE = 0.05;
const DURATION = 0.5;
/** Places at which the usual speed is measured. */
const PLACES = 400;
/** Standard deviations and steps of the reading within which a motion that stands still stays. */
const BAND = 7;
const BAND_STEPS = 1.5;
/** The speed inside is less than this share of the speed before and after; and at the most that the reading allows, of that share. */
const CONTRAST = 0.2;
const AT_MOST = 0.6;
/** Places at which a stretch of the least duration is looked at. */
const PLACES_IN_PAUSE = 50;

/** The usual speed: the median over stretches of the loaded part. */
function usualSpeed(motion: Float64Array, time: Float64Array, first: number, last: number): number {
  const size = Math.max(1, Math.floor((last - first) / PLACES));
  const speeds: number[] = [];
  for (let i = first; i + size <= last; i += size) {
    const dt = time[i + size]! - time[i]!;
    if (dt > 0) speeds.push((motion[i + size]! - motion[i]!) / dt);
  }
  // a coarse reading shows no motion over most of the short stretches: then the mean over the whole serves
  const whole = (motion[last]! - motion[first]!) / (time[last]! - time[first]!);
  const usual = median(speeds);
  return usual > 0.1 * whole ? usual : whole;
}

/** @internal {@link findPauses} on checked columns; time never goes back, motion may end early with NaN. */
export function findPausesKernel(
  force: Float64Array,
  motion: Float64Array,
  time: Float64Array,
  highest: number,
  share = SHARE,
  duration = DURATION,
): Pause[] {
  const end = Math.max(1, soundLength(motion));
  const top = Math.min(highest, end - 1);
  const loaded = 0.02 * force[top]!;
  let first = 0;
  while (first < top && force[first]! < loaded) first += 1;
  let last = top;
  while (last + 1 < end && force[last + 1]! >= loaded) last += 1;
  const slow = share * usualSpeed(motion, time, first, last);
  if (!(slow > 0)) return [];
  const step = resolution(motion.subarray(first, last + 1));
  const noise = noiseLevel(motion, first, last + 1);
  const band = Math.max(BAND * noise, BAND_STEPS * step);
  const rise = 4 * noiseLevel(force, first, last + 1);
  /** From i to j the crosshead moved no more than slowly, as far as the reading tells, and the force did not rise. */
  const still = (i: number, j: number): boolean =>
    motion[j]! - motion[i]! < slow * (time[j]! - time[i]!) + band && force[j]! - force[i]! <= rise;
  /** Mean speed from one sample to another. */
  const speed = (from: number, to: number): number =>
    time[to]! > time[from]! ? (motion[to]! - motion[from]!) / (time[to]! - time[from]!) : Infinity;
  /** It stood, against how it moved before and after: a slow part of the test, or one step of a coarse reading, is no pause. */
  const stood = (i: number, j: number): boolean => {
    const span = time[j]! - time[i]!;
    const around = Math.min(speed(Math.max(first, 2 * i - j), i), speed(j, Math.min(last, 2 * j - i)));
    const doubt = Math.max(4 * noise, step);
    const moved = Math.abs(motion[j]! - motion[i]!) / span;
    if (moved >= CONTRAST * around || moved + doubt / span >= AT_MOST * around) return false;
    // a crosshead that goes back and on again moved: a frame that unloads at yield does so
    let lowest = Infinity;
    let farthest = -Infinity;
    for (let k = i; k <= j; k += 1) {
      if (motion[k]! < lowest) lowest = motion[k]!;
      if (motion[k]! > farthest) farthest = motion[k]!;
    }
    return farthest - lowest <= slow * span + band;
  };

  // fifty places in the least duration are enough: a faster logger is looked at in strides
  const stride = Math.max(1, Math.floor((duration * (last - first)) / (time[last]! - time[first]!) / PLACES_IN_PAUSE));
  const pauses: Pause[] = [];
  // both ends of the stretch only move forward, so the record is walked once
  for (let i = first, j = first + stride; i < last; i += stride) {
    // the stretch from i that spans the least duration, then as far as it stays slow
    if (j <= i) j = Math.min(i + stride, last);
    const from = time[i]! + duration;
    while (j < last && time[j]! < from) j = Math.min(j + stride, last);
    if (time[j]! < from || !still(i, j)) continue;
    // beside a slow part of the test even the slow speed is motion
    const before = speed(Math.max(first, 2 * i - j), i);
    const creep = before > 0 ? Math.min(slow, 0.5 * CONTRAST * before) : slow;
    for (let next = j; next < last; j = next) {
      next = Math.min(j + stride, last);
      const crept = creep * (time[next]! - time[j]!) + band;
      if (motion[next]! - motion[j]! >= crept || motion[next]! - motion[i]! >= creep * (time[next]! - time[i]!) + band || !still(i, next))
        break;
    }
    if (!stood(i, j)) continue;
    let lowest = i;
    for (let k = i; k <= j; k += 1) if (force[k]! < force[lowest]!) lowest = k;
    pauses.push({ range: [i, j], duration: time[j]! - time[i]!, fall: force[i]! - force[lowest]! });
    i = j - stride;
  }
  return pauses;
}

/** @internal Pauses of a checked record whose clock runs; none where there is no clock that does. */
export function pausesOf(record: TensionRecord, clock: ClockSurvey | undefined, highest: number): Pause[] {
  const moved = record.travel ?? record.extension ?? record.strain;
  const runs = record.time && clock && clock.backward === 0 && clock.usual > 0 && clock.standing <= STANDING * record.time.length;
  return runs && moved ? findPausesKernel(record.force, moved, record.time, highest) : [];
}

/**
 * Stretches in which the crosshead stood still: pauses of the hand.
 *
 * $$ \left| \frac{\Delta x}{\Delta t} \right| < 0.05 \, \dot x_{usual} \quad\text{for longer than } 0.5\ \text{s, while } \Delta F \le 0 $$
 *
 * @remarks
 * Travel tells, or extension or strain where there is no travel. The force must not rise meanwhile: a stiff piece moves little in its
 * elastic part without standing still; and motion read in steps must have time for two of them. Looked for from 2 % of the maximum force up to the end of the test. One long step between two
 * samples counts too. A fall of force in a pause is relaxation, never yield.
 *
 * @param record - `force` [N], `time` [s] never going back, and `travel`, `extension` or `strain`.
 * @param options - Share of the usual speed, least duration [s].
 * @returns The pauses in order, with the fall of force [N].
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `not-increasing`, `out-of-range`, `unknown-option`.
 *
 * @example
 * ```ts
 * const time = Array.from({ length: 40 }, (_, i) => 0.1 * i);
 * const travel = time.map((t, i) => (i < 20 ? t : Math.max(2, t - 1)));
 * const force = travel.map((x, i) => 1000 * x - (i > 20 && x === 2 ? 10 : 0));
 * findPauses({ force, travel, time })[0]?.range; // => [20, 30]
 * ```
 *
 * @see Common practice with hand drives. Checked in `test/record/record.test.ts`.
 */
export function findPauses(record: TensionColumns, options: PauseOptions = {}): Pause[] {
  const from = 'findPauses';
  requireObject(from, 'record', record);
  const force = requireColumn(from, 'record.force', record.force, { least: 2 });
  const length = force.length;
  const time = requireColumn(from, 'record.time', record.time, { length });
  const name = record.travel ? 'travel' : record.extension ? 'extension' : 'strain';
  const motion = requireColumn(from, `record.${name}`, record[name], { length, endsEarly: name !== 'travel' });
  requireOptions(from, options, ['share', 'duration']);
  const share = requireBetween(from, 'options.share', options.share ?? SHARE, 0, 1);
  const least = requireNonNegative(from, 'options.duration', options.duration ?? DURATION);

  for (let i = 1; i < length; i += 1)
    if (time[i]! < time[i - 1]!) throw new InputError(from, `record.time[${i}]`, 'not-increasing', 'must not go back', time[i]);
  return findPausesKernel(force, motion, time, maximumIndex(force), share, least);
}
