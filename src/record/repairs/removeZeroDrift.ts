import { trailStep, type TensionColumns, type TensionRecord } from '../../base/index.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { recordOutline } from '../survey/recordOutline.js';
import { surveyZeros } from '../checks/zeros.js';

/** Standard errors of the two zeros below which there is no drift. */
const ERRORS = 6;
/** Share of the highest force below which a drift touches no result. */
const LEAST = 0.0005;

/** @internal {@link removeZeroDrift} on a checked record. */
export function removeZeroDriftKernel(record: TensionRecord): Repaired {
  const outline = recordOutline(record);
  if (!outline) return { record, trail: [] };
  const { force, habit, last, highest } = outline;
  const { before, beforeAt, after, afterAt } = surveyZeros(outline);
  if (before === undefined || after === undefined) return { record, trail: [] };
  const doubt = Math.max(habit.noise, habit.step) / Math.sqrt(Math.min(force.length - last, 25));
  if (Math.abs(after - before) <= Math.max(ERRORS * doubt, LEAST * highest)) return { record, trail: [] };
  // the zeros are those of the middles of two stretches; the ramp is carried on to both ends
  const slope = (after - before) / (afterAt - beforeAt);
  const zeroAt = (sample: number): number => before + slope * (sample - beforeAt);
  return repairedBy(record, [
    trailStep(
      'zero-drift-removed',
      { before, after, beforeAt, afterAt },
      { kind: 'ramp', column: 'force', amounts: [-zeroAt(0), -zeroAt(force.length - 1)] },
    ),
  ]);
}

/**
 * Drift of the zero removed: a straight ramp from the zero before loading to the zero after fracture.
 *
 * $$ F_i \leftarrow F_i - F_{0} - (F_{0}' - F_{0}) \frac{i - i_0}{i_0' - i_0} $$
 *
 * @remarks
 * Needs a stretch before loading and one after fracture; the ramp runs through the middles $i_0$ and $i_0'$ of both. A drift that the noise explains, or below 0.05 % of the highest force, is left. That the drift ran evenly
 * is an assumption: say so with the result.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * const pull = Array.from({ length: 201 }, (_, i) => (i < 20 || i > 180 ? 0 : 50 * (i - 20)));
 * const raw = { force: pull.map((F, i) => F + i / 4), travel: pull.map((_, i) => 0.01 * i) };
 * removeZeroDrift(raw).trail.length; // => 1
 * ```
 *
 * @see Common practice. Checked in `test/record/repairs.test.ts`.
 */
export function removeZeroDrift(record: TensionColumns): Repaired {
  return removeZeroDriftKernel(ownColumns('removeZeroDrift', record));
}
