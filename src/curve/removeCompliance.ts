import { InputError, requireColumn, requireNonNegative, requireObject, type TensionColumns, type TensionRecord } from '../base/index.js';

/** @internal Travel less what the frame gives at each force. */
export function travelWithoutFrame(travel: Float64Array, force: Float64Array, compliance: number): Float64Array {
  const piece = new Float64Array(travel.length);
  for (let i = 0; i < travel.length; i += 1) piece[i] = travel[i]! - compliance * force[i]!;
  return piece;
}

/**
 * Takes the motion of the frame out of the crosshead travel of a record.
 *
 * $$ x_{piece} = x - C_f F $$
 *
 * @remarks
 * Only travel is changed; extension and strain of an extensometer never hold the frame. After a yield drop the corrected travel may
 * run forward where the record stood still: the frame unloads into the piece.
 *
 * @param record - Columns with `force` [N] and `travel` [mm], of the same length.
 * @param compliance - Compliance of the frame [mm/N], 0 or more.
 * @returns The same columns, as `Float64Array`, with corrected travel.
 * @throws {@link InputError} `missing` without travel; `not-finite`, `unequal-lengths`, `out-of-range`.
 *
 * @example
 * ```ts
 * removeCompliance({ force: [0, 1000], travel: [0, 0.05] }, 2e-5).travel; // => [0, 0.03]
 * ```
 *
 * @see Springs in series. Checked in `test/handbook/frame.test.ts`.
 */
export function removeCompliance(record: TensionColumns, compliance: number): TensionRecord {
  const from = 'removeCompliance';
  requireObject(from, 'record', record);
  requireNonNegative(from, 'compliance', compliance);
  const force = requireColumn(from, 'record.force', record.force);
  const length = force.length;
  if (record.travel === undefined) throw new InputError(from, 'record.travel', 'missing', 'must be there to be corrected', undefined);
  const travel = requireColumn(from, 'record.travel', record.travel, { length });
  const copy = (name: 'extension' | 'strain' | 'transverseStrain' | 'time') => {
    const column = record[name];
    const endsEarly = name === 'extension' || name === 'strain';
    return column === undefined ? {} : { [name]: Float64Array.from(requireColumn(from, `record.${name}`, column, { length, endsEarly })) };
  };
  return {
    force: Float64Array.from(force),
    travel: travelWithoutFrame(travel, force, compliance),
    ...copy('extension'),
    ...copy('strain'),
    ...copy('transverseStrain'),
    ...copy('time'),
  };
}
