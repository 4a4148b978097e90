import {
  InputError,
  requireBetween,
  requireColumn,
  requireNonNegative,
  requireObject,
  requireOptions,
  type TensionColumns,
} from '../base/index.js';
import { noiseLevel } from '../numeric/index.js';

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

/** Places at which the usual speed is measured. */
const PLACES = 400;

/** The usual speed: the median over stretches of the loaded part. */
function usualSpeed(motion: Float64Array, time: Float64Array, first: number, last: number): number {
  const size = Math.max(1, Math.floor((last - first) / PLACES));
  const speeds: number[] = [];
  for (let i = first; i + size <= last; i += size) {
    const dt = time[i + size]! - time[i]!;
    if (dt > 0) speeds.push((motion[i + size]! - motion[i]!) / dt);
  }
  speeds.sort((a, b) => a - b);
  return speeds[speeds.length >> 1] ?? 0;
}

/**
 * Stretches in which the crosshead stood still: pauses of the hand.
 *
 * $$ \left| \frac{\Delta x}{\Delta t} \right| < 0.05 \, \dot x_{usual} \quad\text{for longer than } 0.5\ \text{s, while } \Delta F \le 0 $$
 *
 * @remarks
 * Travel tells, or extension or strain where there is no travel. The force must not rise meanwhile: a stiff piece moves little in its
 * elastic part without standing still. Looked for from 2 % of the maximum force up to the end of the test. One long step between two
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
 * @see Common practice with hand drives. Checked in `test/record/findPauses.test.ts`.
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
  const share = requireBetween(from, 'options.share', options.share ?? 0.05, 0, 1);
  const least = requireNonNegative(from, 'options.duration', options.duration ?? 0.5);

  let top = 0;
  let end = length;
  while (end > 1 && Number.isNaN(motion[end - 1])) end -= 1;
  for (let i = 1; i < end; i += 1) {
    if (force[i]! > force[top]!) top = i;
    if (time[i]! < time[i - 1]!) throw new InputError(from, `record.time[${i}]`, 'not-increasing', 'must not go back', time[i]);
  }
  const loaded = 0.02 * force[top]!;
  let first = 0;
  while (first < top && force[first]! < loaded) first += 1;
  let last = top;
  while (last + 1 < end && force[last + 1]! >= loaded) last += 1;
  const slow = share * usualSpeed(motion, time, first, last);
  if (!(slow > 0)) return [];
  const noise = noiseLevel(force, first, last + 1);

  const pauses: Pause[] = [];
  // both ends of the stretch only move forward, so the record is walked once
  for (let i = first, j = first + 1; i < last;) {
    // the stretch from i that spans the least duration, then as far as it stays slow
    j = Math.max(j, i + 1);
    while (j < last && time[j]! - time[i]! < least) j += 1;
    const still = (to: number): boolean => motion[to]! - motion[i]! < slow * (time[to]! - time[i]!) && force[to]! - force[i]! <= 4 * noise;
    if (time[j]! - time[i]! < least || !still(j)) {
      i += 1;
      continue;
    }
    while (j < last && motion[j + 1]! - motion[j]! < slow * (time[j + 1]! - time[j]!) && still(j + 1)) j += 1;
    pauses.push({ range: [i, j], duration: time[j]! - time[i]!, fall: force[i]! - force[j]! });
    i = j;
  }
  return pauses;
}
