import { requireOptions, requirePositive, trailStep, type TensionColumns } from '../../base/index.js';
import { surveyClock } from '../survey/clock.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';

/**
 * Time counted anew in equal steps, where the clock of a logger cannot be trusted.
 *
 * $$ t_i \leftarrow t_0 + i\,\Delta t $$
 *
 * @remarks
 * Only for a logger that writes at a steady rate. Without a rate the usual step of the clock serves, for a clock that restarted or jumped. Nothing is invented where the record has no time: then a rate must be given.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @param options - `rate` of the logger [1/s], above 0.
 * @returns New columns, with `time` [s], and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `not-positive`, `unequal-lengths`, `unknown-option`.
 *
 * @example
 * ```ts
 * rebuildTime({ force: [0, 1, 2, 3], travel: [0, 1, 2, 3], time: [0, 0.1, 0, 0.1] }).record.time; // => [0, 0.1, 0.2, 0.3]
 * ```
 *
 * @see Common practice. Checked in `test/record/repairs.test.ts`.
 */
export function rebuildTime(record: TensionColumns, options: { readonly rate?: number | undefined } = {}): Repaired {
  const from = 'rebuildTime';
  const own = ownColumns(from, record);
  requireOptions(from, options, ['rate']);
  const { time } = own;
  const usual = time ? surveyClock(time).usual : undefined;
  const rate = requirePositive(from, 'options.rate', options.rate ?? (usual === undefined || usual <= 0 ? undefined : 1 / usual));
  const start = time?.[0] ?? 0;
  // a record without a clock is given one
  const clocked = { ...own, time: time ?? new Float64Array(own.force.length) };
  return repairedBy(clocked, [
    trailStep('clock-rebuilt', { start, rate }, { kind: 'clock', start, step: options.rate === undefined ? usual! : 1 / rate }),
  ]);
}
