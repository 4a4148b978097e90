import { trailStep, type TensionColumns, type TensionRecord, type TrailStep } from '../../base/index.js';
import { excursionsOf } from '../checks/excursions.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { recordOutline } from '../survey/recordOutline.js';

/** @internal {@link restoreZero} on a checked record. */
export function restoreZeroKernel(record: TensionRecord): Repaired {
  const outline = recordOutline(record);
  if (!outline) return { record, trail: [] };
  const { force } = outline;
  const { zeros, zeroMoves } = excursionsOf(record, outline);
  const trail: TrailStep[] = [];
  if (zeros.tareStep !== undefined)
    trail.push(
      trailStep(
        'late-tare-carried-back',
        { sample: zeros.from, step: zeros.tareStep },
        { kind: 'add', column: 'force', range: [0, zeros.from - 1], amount: zeros.tareStep },
      ),
    );
  for (const { at, fall } of zeroMoves) {
    // the force would have gone on as it did before
    const amount = fall + Math.max(0, force[at - 1]! - force[at - 2]!);
    trail.push(
      trailStep('zero-put-back', { sample: at, fall, amount }, { kind: 'add', column: 'force', range: [at, force.length - 1], amount }),
    );
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
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`.
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
