import { InputError, requireWords, trailStep, type TensionColumns } from '../../base/index.js';
import { ownColumns, repairedBy, type Repaired } from './repaired.js';

/** Columns whose sign may be the other way. */
export type ReversibleColumn = 'force' | 'travel' | 'extension' | 'strain';

/** @internal The same as a list. */
export const reversible: readonly ReversibleColumn[] = ['force', 'travel', 'extension', 'strain'];

/**
 * Columns whose sign is the other way, turned.
 *
 * $$ x_i \leftarrow -x_i $$
 *
 * @param record - `force` [N] and the other columns as logged.
 * @param columns - Which are turned: `force`, `travel`, `extension`, `strain`.
 * @returns New columns and the trail.
 * @throws {@link InputError} `missing`, `not-finite`, `unequal-lengths`, `out-of-range`.
 *
 * @example
 * ```ts
 * reverseSign({ force: [0, -10, -20], travel: [0, 1, 2] }, ['force']).record.force[2]; // => 20
 * ```
 *
 * @see Common practice: pull counts as positive. Checked in `test/record/repairs.test.ts`.
 */
export function reverseSign(record: TensionColumns, columns: readonly ReversibleColumn[]): Repaired {
  const from = 'reverseSign';
  const own = ownColumns(from, record);
  const trail = requireWords(from, 'columns', columns, reversible).map((column, k) => {
    if (!own[column]) throw new InputError(from, `columns[${k}]`, 'missing', 'must name a column of the record', column);
    return trailStep('sign-turned', { column, factor: -1 }, { kind: 'multiply', column, factor: -1 });
  });
  return repairedBy(own, trail);
}
