import { requireArray, type RecordChange, type TensionColumns, type TensionRecord, type TrailStep } from '../../base/index.js';
import { applyChange } from './applyChange.js';
import { ownColumns } from './repaired.js';

/** The changes of a trail; steps without one (a division by the area, a line) changed no column. */
function changesOf(from: string, trail: readonly TrailStep[]): RecordChange[] {
  return requireArray(from, 'trail', trail).flatMap(({ change }) => (change === undefined ? [] : [change]));
}

/**
 * The repairs of a trail made again on the raw record: the same columns to the last bit.
 *
 * @remarks
 * Raw record and trail together are the whole story of a repaired record. Steps of the trail that changed no column are passed over.
 *
 * @param raw - The columns as they were before the first step.
 * @param trail - Steps as a repair, `repairRecord` or a result carries them.
 * @returns New columns.
 * @throws {@link InputError} `missing`, `not-finite`, `out-of-range`, `unequal-lengths`, `wrong-type`.
 *
 * @example
 * ```ts
 * const force = Array.from({ length: 30 }, (_, i) => (i === 12 ? 900 : 10 * i));
 * const raw = { force, travel: force.map((_, i) => 0.1 * i) };
 * const { record, trail } = replaceSpikes(raw);
 * record.force[12]; // => 120
 * reapplySteps(raw, trail).force[12]; // => 120
 * ```
 *
 * @see Common practice: raw file and settings together reproduce a report. Checked in `test/record/repairs.test.ts`.
 */
export function reapplySteps(raw: TensionColumns, trail: readonly TrailStep[]): TensionRecord {
  const from = 'reapplySteps';
  return changesOf(from, trail).reduce(applyChange, ownColumns(from, raw));
}
