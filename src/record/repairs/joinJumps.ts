import { trailStep, type TensionColumns, type TensionRecord, type TrailStep, columnUnits } from '../../base/index.js';
import { findJumps } from '../checks/jumps.js';
import { ofDrive } from '../survey/motionColumn.js';
import { besides, findSlipsBack } from '../checks/slipsBack.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';
import { recordOutline } from '../survey/recordOutline.js';

/** @internal {@link joinJumps} on a checked record. */
export function joinJumpsKernel(record: TensionRecord): Repaired {
  const outline = recordOutline(record);
  const trail = ofDrive.flatMap((column): TrailStep[] => {
    const values = record[column];
    if (!values || !outline) return [];
    const jumps = findJumps(outline, values);
    const slips = column === 'travel' ? [] : besides(findSlipsBack(outline, values), jumps);
    const joined = (at: number, size: number, amount: number): TrailStep =>
      trailStep(
        'jump-joined',
        { column, sample: at, size, unit: columnUnits[column], amount },
        { kind: 'add', column, range: [at, values.length - 1], amount },
      );
    return [
      ...jumps.map(({ at, size }) => {
        // what the motion would have done between the two samples is the mean of the steps beside
        const usual = (values[at - 1]! - values[at - 2]! + values[at + 1]! - values[at]!) / 2;
        return joined(at, size, usual - size);
      }),
      ...slips.map(({ at, size }) => joined(at, size, -size)),
    ];
  });
  return repairedBy(record, trail);
}

/**
 * Jumps of travel, extension or strain joined: the part behind each is moved back by its size.
 *
 * $$ x_j \leftarrow x_j - (x_i - x_{i-1}) + \tfrac12 (\Delta x_{i-1} + \Delta x_{i+1}), \qquad j \ge i $$
 *
 * @remarks
 * A jump is a step of the motion between two samples, far larger than those near it, while the force goes on as before: a sensor that slipped
 * or was set anew. The step that the motion would have made is kept. Only join what is known to be no motion of the piece.
 *
 * In the elastic part smaller steps are found too, by which an extensometer goes back: there the step is that between two straight lines of one slope, by least
 * squares over the samples on either side, of the motion less the force over the stiffness.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * const force = Array.from({ length: 40 }, (_, i) => 100 * i);
 * const raw = { force, extension: force.map((F, i) => F / 50000 - (i >= 20 ? 0.03 : 0)) };
 * joinJumps(raw).record.extension?.[39]; // => 0.078
 * ```
 *
 * @see Common practice. Checked in `test/record/repairs.test.ts`.
 */
export function joinJumps(record: TensionColumns): Repaired {
  return joinJumpsKernel(ownColumns('joinJumps', record));
}
