import type { TensionColumns } from '../../base/index.js';
import { requireColumns } from '../../record/index.js';
import type { BendingColumns } from './BendingResult.js';

/**
 * The columns of a bending test from a record as {@link readRecord} gives it: its extension is the deflection at mid-span.
 *
 * @remarks
 * A column that is only called deflection is read as travel, since nobody knows whether a gauge or the crosshead measured it; name it as the `extension`
 * (`options.columns`) where a gauge did.
 *
 * @param record - `force` [N]; `extension` [mm], `strain` [mm/mm], `travel` [mm], `time` [s], as far as they were logged.
 * @returns The same columns, for {@link analyseBending}.
 * @throws {@link InputError} `missing`, `wrong-type`, `not-finite`, `empty`, `unequal-lengths`.
 *
 * @example
 * ```ts
 * const { record } = readRecord('Force [N],Deflection [mm]\n0,0\n10,0.1\n20,0.2\n', { columns: { extension: 'Deflection' } });
 * bendingColumns(record as TensionRecord).deflection; // => [0, 0.1, 0.2]
 * ```
 *
 * @see Checked in `test/methods/bendingColumns.test.ts`.
 */
export function bendingColumns(record: TensionColumns): BendingColumns<Float64Array> {
  const { force, extension, strain, travel, time } = requireColumns('bendingColumns', record, 1);
  return {
    force,
    ...(extension === undefined ? {} : { deflection: extension }),
    ...(strain === undefined ? {} : { strain }),
    ...(travel === undefined ? {} : { travel }),
    ...(time === undefined ? {} : { time }),
  };
}
