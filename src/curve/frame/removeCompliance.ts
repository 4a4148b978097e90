import {
  finding,
  InputError,
  requireColumn,
  requireObject,
  type Finding,
  type TensionColumns,
  type TensionRecord,
} from '../../base/index.js';
import { requireCompliance, type Compliance, type FrameMotion } from './frameTravel.js';

/** A record whose travel is that of the piece. */
export interface RecordWithoutFrame extends TensionRecord {
  /** A doubt where the record goes beyond the forces at which the frame was measured. */
  readonly findings: readonly Finding[];
}

/** @internal A record with its travel less what the frame gives at each force, where there is travel and a compliance is known. */
export function withoutFrame<Given extends Pick<TensionRecord, 'force' | 'travel'>>(record: Given, motion: FrameMotion | undefined): Given {
  const { force, travel } = record;
  if (!motion || !travel) return record;
  const { at } = motion;
  const piece = new Float64Array(travel.length);
  for (let i = 0; i < travel.length; i += 1) piece[i] = travel[i]! - at(force[i]!);
  return { ...record, travel: piece };
}

/** @internal A doubt where forces go beyond those at which the frame was measured. */
export function beyondCompliance(force: Float64Array, { range }: FrameMotion): Finding[] {
  if (!range) return [];
  // the last bit of a reading is no reason to doubt
  const limit = range[1];
  let count = 0;
  let highest = limit;
  for (const F of force)
    if (F > limit * (1 + 1e-9)) {
      count += 1;
      highest = Math.max(highest, F);
    }
  return count > 0 ? [finding('force-beyond-compliance', { count, limit, force: highest })] : [];
}

/**
 * Takes the motion of the frame out of the crosshead travel of a record.
 *
 * $$ x_{piece} = x - \delta_f(F), \qquad \delta_f = C_f F \ \text{in the simplest case} $$
 *
 * @remarks
 * Only travel is changed; extension and strain of an extensometer never hold the frame. After a yield drop the corrected travel may
 * run forward where the record stood still: the frame unloads into the piece. Beyond the forces at which the frame was measured its law is carried on, with
 * a finding.
 *
 * @param record - Columns with `force` [N] and `travel` [mm], of the same length.
 * @param compliance - Compliance of the frame: a number [mm/N] of 0 or more, a table, or a power law (see `frameTravel`).
 * @returns The same columns, as `Float64Array`, with corrected travel, and findings.
 * @throws {@link InputError} `missing` without travel; `not-finite`, `unequal-lengths`, `out-of-range`, and those of `frameTravel`.
 *
 * @example
 * ```ts
 * removeCompliance({ force: [0, 1000], travel: [0, 0.05] }, 2e-5).travel; // => [0, 0.03]
 * ```
 *
 * @see Springs in series. Checked in `test/handbook/frame.test.ts`.
 */
export function removeCompliance(record: TensionColumns, compliance: Compliance): RecordWithoutFrame {
  const from = 'removeCompliance';
  requireObject(from, 'record', record);
  const motion = requireCompliance(from, 'compliance', compliance);
  const force = requireColumn(from, 'record.force', record.force);
  const length = force.length;
  if (record.travel === undefined) throw new InputError(from, 'record.travel', 'missing', 'must be there to be corrected', undefined);
  const travel = requireColumn(from, 'record.travel', record.travel, { length });
  const copy = (name: 'extension' | 'strain' | 'transverseStrain' | 'time') => {
    const column = record[name];
    const endsEarly = name === 'extension' || name === 'strain';
    return column === undefined ? {} : { [name]: Float64Array.from(requireColumn(from, `record.${name}`, column, { length, endsEarly })) };
  };
  const copied = {
    force: Float64Array.from(force),
    travel,
    ...copy('extension'),
    ...copy('strain'),
    ...copy('transverseStrain'),
    ...copy('time'),
  };
  return { ...withoutFrame(copied, motion), findings: beyondCompliance(force, motion) };
}
