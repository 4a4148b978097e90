import {
  InputError,
  requireBetween,
  requireColumn,
  requireNonNegative,
  requireObject,
  requireOptions,
  soundLength,
  type TensionColumns,
} from '../base/index.js';
import { maximumIndex, median, noiseLevel } from '../numeric/index.js';
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
/** Steps of the reading that the slowest motion must cover, or standing still cannot be told from it. */
const STEPS = 2;
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
  return median(speeds);
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
  // a reading that repeats stands still between its steps: the stretch must be long enough for some of them
  const step = resolution(motion.subarray(first, last + 1));
  const repeats = step > 2 * Math.abs((motion[last]! - motion[first]!) / (last - first));
  const least = repeats ? Math.max(duration, (STEPS * step) / slow) : duration;
  const rise = 4 * noiseLevel(force, first, last + 1);
  /** From i to j the crosshead moved no more than slowly, and the force did not rise. */
  const still = (i: number, j: number): boolean => motion[j]! - motion[i]! < slow * (time[j]! - time[i]!) && force[j]! - force[i]! <= rise;

  // fifty places in the least duration are enough: a faster logger is looked at in strides
  const stride = Math.max(1, Math.floor((least * (last - first)) / (time[last]! - time[first]!) / PLACES_IN_PAUSE));
  const pauses: Pause[] = [];
  // both ends of the stretch only move forward, so the record is walked once
  for (let i = first, j = first + stride; i < last; i += stride) {
    // the stretch from i that spans the least duration, then as far as it stays slow
    if (j <= i) j = Math.min(i + stride, last);
    const from = time[i]! + least;
    while (j < last && time[j]! < from) j = Math.min(j + stride, last);
    if (time[j]! < from || !still(i, j)) continue;
    for (let next = j; next < last; j = next) {
      next = Math.min(j + stride, last);
      if (motion[next]! - motion[j]! >= slow * (time[next]! - time[j]!) || !still(i, next)) break;
    }
    pauses.push({ range: [i, j], duration: time[j]! - time[i]!, fall: force[i]! - force[j]! });
    i = j - stride;
  }
  return pauses;
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
 * const time = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
 * const travel = [0, 1, 2, 3, 4, 4, 4, 5, 6, 7];
 * const force = [0, 10, 20, 30, 40, 39, 38, 50, 60, 70];
 * findPauses({ force, travel, time })[0]?.range; // => [4, 6]
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
  // the other columns are not used, but a record that is none is refused
  for (const other of ['extension', 'strain', 'transverseStrain'] as const)
    if (record[other] !== undefined) requireColumn(from, `record.${other}`, record[other], { length, endsEarly: true });
  requireOptions(from, options, ['share', 'duration']);
  const share = requireBetween(from, 'options.share', options.share ?? SHARE, 0, 1);
  const least = requireNonNegative(from, 'options.duration', options.duration ?? DURATION);

  for (let i = 1; i < length; i += 1)
    if (time[i]! < time[i - 1]!) throw new InputError(from, `record.time[${i}]`, 'not-increasing', 'must not go back', time[i]);
  return findPausesKernel(force, motion, time, maximumIndex(force), share, least);
}
