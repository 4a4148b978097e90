import { trailStep, type TensionColumns, type TensionRecord } from '../../base/index.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';

/** @internal {@link collapseRepeats} on a checked record. */
export function collapseRepeatsKernel(record: TensionRecord): Repaired {
  const { force } = record;
  const motions = [record.extension, record.strain, record.travel].filter((one) => one !== undefined);
  const ranges: [number, number][] = [];
  let left = 0;
  for (let i = 0; i < force.length; i += 1) {
    const repeats = i > 0 && force[i] === force[i - 1] && motions.every((one) => Object.is(one[i], one[i - 1]));
    if (repeats) left += 1;
    else if (ranges.length > 0 && ranges[ranges.length - 1]![1] === i - 1) ranges[ranges.length - 1]![1] = i;
    else ranges.push([i, i]);
  }
  if (left === 0) return { record, trail: [] };
  return repairedBy(record, [trailStep('repeats-left-out', { samples: left }, { kind: 'keep', ranges })]);
}

/**
 * Samples that repeat the one before left out: a logger was faster than its sensor.
 *
 * @remarks
 * A sample goes where force and all motions equal those before to the last bit; time does not count. Repeated samples say nothing new, but
 * flatter the scatter of a slope. The record is shorter afterwards; at a standstill of the whole train only the first sample stays.
 *
 * @param record - `force` [N] and the other columns as logged.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * collapseRepeats({ force: [0, 0, 5, 5, 9], travel: [0, 0, 1, 1, 2] }).record.force; // => [0, 5, 9]
 * ```
 *
 * @see Common practice. Checked in `test/record/repairs.test.ts`.
 */
export function collapseRepeats(record: TensionColumns): Repaired {
  return collapseRepeatsKernel(ownColumns('collapseRepeats', record));
}
