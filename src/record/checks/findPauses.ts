import {
  requireBetween,
  requireColumn,
  requireNonNegative,
  requireOptions,
  InputError,
  type TensionColumns,
  type TensionRecord,
} from '../../base/index.js';
import { maximumIndex } from '../../numeric/index.js';
import { STANDING_STEPS_SHARE, type ClockSurvey } from '../survey/clock.js';
import { motionColumn, ofDrive } from '../survey/motionColumn.js';
import type { ColumnHabit } from '../survey/habit.js';
import { requireColumns } from '../survey/requireColumns.js';
import { findPausesKernel, LEAST_PAUSE, STANDING_SPEED_SHARE, type Pause } from './pauseSearch.js';

/** Options of {@link findPauses}. */
export interface PauseOptions {
  /** Speed below this share of the usual one is standing still; default 0.05. */
  readonly share?: number | undefined;
  /** Least duration [s]; default 0.5. */
  readonly duration?: number | undefined;
}

/** @internal Pauses of a checked record whose clock runs; none where it does not run. The habit of its motion may be known. */
export function pausesOf(record: TensionRecord, clock: ClockSurvey | undefined, highest: number, known?: ColumnHabit): Pause[] {
  const moved = record[motionColumn(record, ofDrive)];
  const runs =
    record.time && clock && clock.backward === 0 && clock.usual > 0 && clock.standing <= STANDING_STEPS_SHARE * record.time.length;
  return runs && moved ? findPausesKernel(record.force, moved, record.time, highest, STANDING_SPEED_SHARE, LEAST_PAUSE, known) : [];
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
  const checked = requireColumns(from, record);
  const { force } = checked;
  const time = requireColumn(from, 'record.time', checked.time);
  const name = motionColumn(checked, ofDrive);
  const motion = requireColumn(from, `record.${name}`, checked[name], { endsEarly: true });
  requireOptions(from, options, ['share', 'duration']);
  const share = requireBetween(from, 'options.share', options.share ?? STANDING_SPEED_SHARE, 0, 1);
  const least = requireNonNegative(from, 'options.duration', options.duration ?? LEAST_PAUSE);

  for (let i = 1; i < force.length; i += 1)
    if (time[i]! < time[i - 1]!) throw new InputError(from, `record.time[${i}]`, 'not-increasing', 'must not go back', time[i]);
  return findPausesKernel(force, motion, time, maximumIndex(force), share, least);
}
