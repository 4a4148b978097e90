import { requireArray, requireWhole, type TensionColumns, type TensionRecord, type TrailStep } from '../../base/index.js';
import { reapplySteps } from './reapplySteps.js';

/**
 * The columns as they were before one step of a trail.
 *
 * @remarks
 * Nothing is computed backwards: the steps before it are made again on the raw record, so the columns are the same to the last bit.
 *
 * @param raw - The columns as they were before the first step.
 * @param trail - Steps as a repair, `repairRecord` or a result carries them.
 * @param step - Which step is undone, with all after it, from 0; default the last.
 * @returns New columns.
 * @throws {@link InputError} `out-of-range` for a step that is not there; `missing`, `not-finite`, `unequal-lengths`, `wrong-type`.
 *
 * @example
 * ```ts
 * const force = Array.from({ length: 30 }, (_, i) => (i === 12 ? 900 : 10 * i));
 * const raw = { force, travel: force.map((_, i) => 0.1 * i) };
 * undoStep(raw, replaceSpikes(raw).trail).force[12]; // => 900
 * ```
 *
 * @see Common practice: a repair that cannot be undone is a loss. Checked in `test/record/repairs.test.ts`.
 */
export function undoStep(raw: TensionColumns, trail: readonly TrailStep[], step?: number): TensionRecord {
  const from = 'undoStep';
  const last = requireArray(from, 'trail', trail).length - 1;
  const undone = requireWhole(from, 'step', step ?? last, 0, last);
  return reapplySteps(raw, trail.slice(0, undone));
}
