import type { TensionColumns, TensionRecord, TrailStep } from '../base/index.js';
import { findDrops } from './drops.js';
import { pausesOf } from './findPauses.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { recordOutline } from './recordOutline.js';
import { surveyRecord } from './surveyRecord.js';
import { surveyZeros } from './zeros.js';

/** @internal {@link restoreZero} on a checked record. */
export function restoreZeroKernel(record: TensionRecord): Repaired {
  const outline = recordOutline(record);
  if (!outline) return { record, trail: [] };
  const { force, top } = outline;
  const zeros = surveyZeros(outline);
  const trail: TrailStep[] = [];
  if (zeros.tareStep !== undefined)
    trail.push({
      step: 'force before a late tare counted from the zero after it',
      values: { sample: zeros.from, step: zeros.tareStep },
      change: { kind: 'add', column: 'force', range: [0, zeros.from - 1], amount: zeros.tareStep },
    });
  const pauses = pausesOf(record, surveyRecord(record).clock, top).map(({ range }) => range);
  for (const { kind, range, fall } of findDrops(outline, pauses, zeros.after)) {
    if (kind !== 'zero') continue;
    const [peak, valley] = range;
    // the force would have gone on as it did before
    const usual = force[peak]! - force[peak - 1]!;
    const amount = fall + Math.max(0, usual) * (valley - peak);
    trail.push({
      step: 'zero of the force that was moved during the test put back',
      values: { sample: valley, fall, amount },
      change: { kind: 'add', column: 'force', range: [valley, force.length - 1], amount },
    });
  }
  return repairedBy(record, trail);
}

/**
 * Zeros of the force that were moved put back: a tare pressed after the record began, or during the test.
 *
 * $$ F_i \leftarrow F_i + \Delta F $$
 *
 * @remarks
 * What stands before a late tare is counted from the zero after it; what stands after a zero pressed on the loaded piece is raised again by the drop and the
 * change that the force was about to make. Nothing is done where no such step is found.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * const travel = Array.from({ length: 120 }, (_, i) => (i < 20 ? 0 : 0.01 * (i - 20)));
 * const force = travel.map((x, i) => 10000 * x + (i < 10 ? 150 : 0));
 * restoreZero({ force, travel }).record.force[0]; // => 0
 * ```
 *
 * @see ISO 6892-1:2019, setting the force zero point. Checked in `test/record/repairs.test.ts`.
 */
export function restoreZero(record: TensionColumns): Repaired {
  return restoreZeroKernel(ownColumns('restoreZero', record));
}
